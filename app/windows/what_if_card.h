#pragma once

#include "app/look/card.h"
#include "app/models/session.h"
#include "core/crews/labour_ahead.h"

#include <QCheckBox>
#include <QDateEdit>
#include <QPushButton>
#include <QSpinBox>

#include <vector>

class QGridLayout;
class QVBoxLayout;

namespace topwire {

class LabourStrip;

/// What is supposed: more people, days lost, a spring that comes later; and what that
/// makes of the season, beside what is known.
class WhatIfCard : public Card {
  Q_OBJECT

public:
  explicit WhatIfCard(QWidget* parent = nullptr);

  /// Nothing supposed; the days that could be lost are the fortnight from `today` on.
  void startAnew(Day today);
  /// As if typed into the fields.
  void suppose(const Supposition& supposed);
  Supposition supposition() const;
  /// `most`: as for the strip of what is known, so that the two compare.
  void compare(const PlanSum& known,
               const PlanSum& supposed,
               const std::vector<WeekOfLabour>& weeks,
               double most);
  void compareNothing();
  void setPlanning(bool planning);

Q_SIGNALS:
  void supposed();

private:
  void addPresets(QVBoxLayout& lines);
  void addFields(QVBoxLayout& lines);
  void addComparison(QVBoxLayout& lines);
  void fill(const Supposition& supposed);
  bool isAnything() const;
  void putSums(const PlanSum& known, const PlanSum& supposed);

  Day today_{};
  QPushButton* asKnown_;
  QSpinBox* workers_;
  QSpinBox* later_;
  QCheckBox* lose_;
  QDateEdit* lostFrom_;
  QDateEdit* lostTo_;
  QLabel* nothing_;
  QWidget* part_;
  QLabel* planning_;
  LabourStrip* strip_;
  QLabel* reading_;
  QGridLayout* sums_;
  std::vector<QLabel*> knownSums_;
  std::vector<QLabel*> supposedSums_;
};

}  // namespace topwire
