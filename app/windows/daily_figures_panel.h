#pragma once

#include "app/models/session.h"
#include "app/models/weather_days.h"
#include "app/windows/beside_panel.h"

#include <QDateEdit>
#include <QLineEdit>
#include <QTableView>

namespace topwire {

class FieldReader;
class Form;

/// One day's lowest, highest and rain by hand, above the table of the season's days and
/// the forecast's. A day chosen in the table stands in the fields, to be corrected.
class DailyFiguresPanel : public BesidePanel {
  Q_OBJECT

public:
  explicit DailyFiguresPanel(Session& session, QWidget* parent = nullptr);

  void refresh();
  /// Puts a day's figures into the fields.
  void choose(Day day);
  void takeFocus() override;

private:
  QWidget* entry();
  QWidget* table();
  void fillFields(Day day);
  Checked<Change> deed(FieldReader& fields) const;
  void check();
  void keep();
  void forget();
  Day firstShown() const;
  Day dayTyped() const;

  Session* session_;
  WeatherDaysModel* model_;
  /// As the fields were filled: a text left alone gives back just what it showed.
  std::optional<WeatherDay> shown_;
  Form* form_ = nullptr;
  QDateEdit* day_ = nullptr;
  QLineEdit* minimum_ = nullptr;
  QLineEdit* maximum_ = nullptr;
  QLineEdit* rain_ = nullptr;
  QPushButton* keep_ = nullptr;
  QPushButton* forget_ = nullptr;
  QTableView* days_ = nullptr;
};

}  // namespace topwire
