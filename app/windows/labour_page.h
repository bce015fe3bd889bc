#pragma once

#include "app/models/session.h"
#include "core/crews/labour_ahead.h"

#include <QCheckBox>
#include <QDateEdit>
#include <QGridLayout>
#include <QLabel>
#include <QSpinBox>
#include <QWidget>

namespace topwire {

class LabourStrip;
class PageHead;

/// Labour wanted against labour there is, by week, half a year ahead; and what would
/// change with more people, days lost, or a late spring, side by side with what is known.
class LabourPage : public QWidget {
  Q_OBJECT

public:
  explicit LabourPage(Session& session, QWidget* parent = nullptr);

  /// As if typed into the fields.
  void suppose(const Supposition& supposed);

protected:
  void showEvent(QShowEvent* event) override;

private:
  QWidget* makeKnown();
  QWidget* makeFields();
  QWidget* makeSupposed();
  void startAnew();
  void fill(const Supposition& supposed);
  void refresh();
  void showComparison();
  Supposition supposition() const;
  CrewPlan planned(const Supposition& supposed) const;
  void putSums(const PlanSum& known, const PlanSum& supposed);

  Session* session_;
  std::vector<WeekOfLabour> weeks_;
  PlanSum known_;
  PageHead* head_;
  QLabel* summary_;
  LabourStrip* strip_;
  QLabel* reading_;
  QSpinBox* workers_;
  QCheckBox* lose_;
  QDateEdit* lostFrom_;
  QDateEdit* lostTo_;
  QSpinBox* later_;
  LabourStrip* supposedStrip_;
  QLabel* supposedReading_;
  QWidget* supposedPart_;
  QLabel* nothingSupposed_;
  QGridLayout* sums_;
  std::vector<QLabel*> knownSums_;
  std::vector<QLabel*> supposedSums_;
  QLabel* empty_;
};

}  // namespace topwire
