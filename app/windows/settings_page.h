#pragma once

#include "app/models/session.h"
#include "app/windows/form.h"

#include <QComboBox>
#include <QDateEdit>
#include <QLineEdit>
#include <QPushButton>

namespace topwire {

class NormalsTable;
class Preferences;
class Questions;

/// The orchard's place and weather station, saved as one change, its crews and working
/// day, and how this machine
/// shows things, which takes hold at once and is no part of the orchard.
class SettingsPage : public QWidget {
  Q_OBJECT

public:
  SettingsPage(Session& session,
               Questions& questions,
               Preferences& preferences,
               QWidget* parent = nullptr);

Q_SIGNALS:
  void themeChosen();
  void languageChosen();

private:
  QWidget* makeOrchardCard();
  QWidget* makeScreenCard();
  void fill();
  void fillStations();
  void takeStation();
  void changeUnits();
  void sayStation();
  void check();
  void save();
  Settings read(class FieldReader& fields) const;
  Checked<Change> deed() const;
  UnitSystem units() const;

  Session* session_;
  Preferences* preferences_;
  Settings shown_;  ///< as saved
  Settings typed_;  ///< what the fields were last filled from
  Form* form_;
  QLineEdit* name_;
  QLineEdit* latitude_;
  QLineEdit* elevation_;
  QComboBox* units_;
  QComboBox* station_;
  QLineEdit* stationElevation_;
  QDateEdit* recordsFrom_;
  QLineEdit* firstLeafDelay_;
  NormalsTable* normals_;
  QLabel* normalsProblem_;
  QPushButton* save_;
};

}  // namespace topwire
