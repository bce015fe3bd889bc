#pragma once

#include "app/look/card.h"
#include "app/models/session.h"
#include "app/windows/form.h"

#include <QLineEdit>
#include <QPushButton>

namespace topwire {

class ChoicesField;

/// When the orchard works and how its crews move, saved as one change.
class WorkingDayCard : public Card {
  Q_OBJECT

public:
  explicit WorkingDayCard(Session& session, QWidget* parent = nullptr);

private:
  void addFields();
  void fill();
  void check();
  void save();
  Checked<Change> deed() const;

  Session* session_;
  Settings shown_;  ///< as saved, of what stands here
  bool filled_ = false;
  Form* form_;
  ChoicesField* workdays_;
  QLineEdit* start_;
  QLineEdit* moveMinutes_;
  QLineEdit* minutesPerKm_;
  QLineEdit* keepTogether_;
  QLineEdit* gangAtMost_;
  QPushButton* save_;
};

/// Copies what this card shows from one set of settings into another.
void takeWorkingDay(Settings& into, const Settings& from);

}  // namespace topwire
