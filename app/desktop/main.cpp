#include "app/desktop/options.h"
#include "app/look/application_icon.h"
#include "app/look/look.h"
#include "app/windows/day_field.h"
#include "app/windows/main_window.h"
#include "app/words/resources.h"
#include "app/words/say.h"
#include "core/phenology/weather_forecaster.h"
#include "storage/orchard_file.h"

#include <QApplication>
#include <QDateTime>
#include <QSettings>
#include <QStandardPaths>
#include <QTimer>

#include <cstdio>

namespace topwire {

namespace {

constexpr int problemExit = 3;
constexpr int usageExit = 2;

int giveUp(const Problem& problem, int code) {
  std::fputs((inEnglish(problem) + '\n').c_str(), stderr);
  return code;
}

/// The one place that asks the clock what day it is.
Day dayByClock() {
  return dayOf(QDate::currentDate());
}

/// Looks at the clock again just after each midnight.
void followMidnight(QTimer& timer, Session& session) {
  const QDateTime now = QDateTime::currentDateTime();
  const QDateTime midnight = now.date().addDays(1).startOfDay();
  constexpr int pastMidnight = 1000;
  timer.setSingleShot(true);
  timer.start(static_cast<int>(now.msecsTo(midnight)) + pastMidnight);
  QObject::connect(&timer, &QTimer::timeout, &timer, [&timer, &session] {
    session.setToday(dayByClock());
    timer.disconnect();
    followMidnight(timer, session);
  });
}

/// The picture waits for the whole plan.
int grab(MainWindow& window, const DesktopOptions& options) {
  window.resize(options.size);
  window.planAtOnce();
  window.show();
  QApplication::processEvents();
  QApplication::processEvents();
  if (window.grab().save(options.grabTo, "PNG")) return 0;
  return giveUp(
      {Sentence{phrase("Desktop", "%1 could not be written. Name another file."),
                {options.grabTo.toStdString()}},
       {},
       {}},
      problemExit);
}

int run(QApplication& application, const DesktopOptions& options) {
  QSettings settings;
  Preferences preferences{settings};
  speak(options.language.isEmpty() ? preferences.language() : options.language);
  const Theme chosen = preferences.theme().value_or(desktopTheme());
  applyLook(application, options.theme.value_or(chosen));
  const Checked<Shipped> shipped = loadShipped();
  if (!shipped) return giveUp(shipped.error().front(), problemExit);

  const WeatherForecaster forecaster{shipped->tables};
  SqliteOrchardFiles files;
  const auto clock = [] { return QDateTime::currentSecsSinceEpoch(); };
  Session session{shipped->tables, shipped->programmes, forecaster, files, clock};
  session.setToday(options.today.value_or(dayByClock()));
  DialogQuestions questions;
  MainWindow window{
      session,
      questions,
      preferences,
      options.today ? MainWindow::TodayFrom::given : MainWindow::TodayFrom::clock};
  window.openAtStart(options.file,
                     QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
  if (options.page) window.showPage(*options.page);
  if (options.day) window.showDay(*options.day);
  if (!options.grabTo.isEmpty()) return grab(window, options);
  QTimer midnight;
  if (!options.today) followMidnight(midnight, session);
  window.show();
  return QApplication::exec();
}

}  // namespace

}  // namespace topwire

int main(int argc, char** argv) {
  QApplication application{argc, argv};
  QApplication::setApplicationName(QStringLiteral("Topwire"));
  QApplication::setApplicationVersion(QStringLiteral("0.1.0"));
  QApplication::setDesktopFileName(QStringLiteral("topwire"));
  QApplication::setWindowIcon(topwire::applicationIcon());
  const auto options = topwire::readOptions(QApplication::arguments());
  if (!options) return topwire::giveUp(options.error(), topwire::usageExit);
  return topwire::run(application, *options);
}
