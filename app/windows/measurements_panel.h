#pragma once

#include "app/models/session.h"
#include "app/windows/beside_panel.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QDateEdit>
#include <QLineEdit>

#include <optional>

namespace topwire {

class Form;

/// What was measured on sample trees of a planting: typed here, with the mean told while
/// typing, and the earlier ones below, each to be taken off the record.
class MeasurementsPanel : public BesidePanel {
  Q_OBJECT

public:
  explicit MeasurementsPanel(Session& session, QWidget* parent = nullptr);

  void setPlanting(std::optional<PlantingId> planting);
  void takeFocus() override;

protected:
  void resizeEvent(QResizeEvent* event) override;

private:
  QWidget* entry();
  QWidget* earlier();
  void refresh();
  void showEarlier();
  QWidget* lineOf(const Measurement& taken);
  Checked<Change> deed() const;
  void check();
  void keep();
  void tellMean();
  void forget(MeasurementId taken);
  Measure measure() const;

  Session* session_;
  std::optional<PlantingId> planting_;
  QBoxLayout* sides_;
  Form* form_ = nullptr;
  QComboBox* measures_ = nullptr;
  QDateEdit* day_ = nullptr;
  QLineEdit* values_ = nullptr;
  QLineEdit* note_ = nullptr;
  QLabel* mean_ = nullptr;
  QPushButton* keep_ = nullptr;
  QVBoxLayout* earlier_ = nullptr;
};

}  // namespace topwire
