#pragma once

#include "app/models/session.h"
#include "app/models/weather_import.h"
#include "app/windows/beside_panel.h"

#include <QComboBox>
#include <QLineEdit>
#include <QProgressBar>

namespace topwire {

class Questions;

/// A file of daily weather on its way in: read beside the window, told what was found and
/// what it would change, and kept only then. Cancelling or closing leaves nothing behind.
class WeatherFilePanel : public BesidePanel {
  Q_OBJECT

public:
  WeatherFilePanel(Session& session, Questions& questions, QWidget* parent = nullptr);

  /// Asks for a file.
  void chooseFile();
  void bringIn(const QString& path);
  /// As if no file had been chosen.
  void giveUp();
  /// The orchard changed: what the file would change is reckoned again.
  void refresh();
  void takeFocus() override;

Q_SIGNALS:
  void kept();

private:
  QWidget* choices();
  QWidget* waiting();
  QWidget* report();
  QWidget* deeds();
  void readAgain();
  WeatherReading reading() const;
  void startOver();
  void showFile(const std::shared_ptr<const WeatherFile>& file);
  void showUnits(const WeatherReport& report);
  void showProblems(const Problems& problems);
  void keep();

  Session* session_;
  Questions* questions_;
  WeatherImport* import_;
  QString path_;
  std::shared_ptr<const WeatherFile> file_;
  QPushButton* choose_ = nullptr;
  QComboBox* kind_ = nullptr;
  QWidget* units_ = nullptr;
  QComboBox* temperature_ = nullptr;
  QWidget* rainUnits_ = nullptr;
  QComboBox* rain_ = nullptr;
  QWidget* stations_ = nullptr;
  QLineEdit* station_ = nullptr;
  QWidget* waiting_ = nullptr;
  QLabel* waitingFor_ = nullptr;
  QProgressBar* progress_ = nullptr;
  QLabel* problem_ = nullptr;
  QWidget* report_ = nullptr;
  QVBoxLayout* found_ = nullptr;
  QLabel* changes_ = nullptr;
  QWidget* deeds_ = nullptr;
  QPushButton* keep_ = nullptr;
};

}  // namespace topwire
