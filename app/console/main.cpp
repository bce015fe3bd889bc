#include "app/console/commands.h"
#include "app/words/resources.h"
#include "core/phenology/weather_forecaster.h"
#include "storage/orchard_file.h"

#include <QGuiApplication>

#include <chrono>
#include <cstdlib>
#include <iostream>

namespace topwire {
namespace {

std::int64_t secondsNow() {
  const auto now = std::chrono::system_clock::now().time_since_epoch();
  return std::chrono::duration_cast<std::chrono::seconds>(now).count();
}

/// The local day, which is what a person calls today. Here and nowhere else is the clock
/// asked for it.
Day localToday() {
  const std::time_t now = std::time(nullptr);
  std::tm local{};
  localtime_r(&now, &local);
  return dayOf(local.tm_year + 1900,
               static_cast<unsigned>(local.tm_mon) + 1,
               static_cast<unsigned>(local.tm_mday));
}

/// What Qt has to warn of is for us, not for the person at the command line.
void dropWarnings(QtMsgType type, const QMessageLogContext&, const QString& text) {
  if (type == QtFatalMsg) std::cerr << text.toStdString() << '\n';
}

int run(int argc, char** argv) {
  const auto shipped = loadShipped();
  if (!shipped) {
    for (const Problem& problem : shipped.error())
      std::cerr << inEnglish(problem) << '\n';
    return static_cast<int>(ExitCode::problem);
  }
  const WeatherForecaster forecaster{shipped->tables};
  SqliteOrchardFiles files;
  ProgrammesAtHand programmes{shipped->programmes};
  Surroundings surroundings{{shipped->tables, programmes.all(), forecaster},
                            programmes,
                            files,
                            secondsNow,
                            IdSource::fromSystem(),
                            localToday()};
  return runConsole({argv + 1, argv + argc}, surroundings, std::cout, std::cerr);
}

}  // namespace
}  // namespace topwire

int main(int argc, char** argv) {
  // Pages are painted without a screen, whatever the desktop is set to.
  qputenv("QT_QPA_PLATFORM", "offscreen");
  qInstallMessageHandler(topwire::dropWarnings);
  const QGuiApplication application{argc, argv};
  return topwire::run(argc, argv);
}
