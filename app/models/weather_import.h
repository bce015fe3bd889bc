#pragma once

#include "core/weather/weather_file.h"

#include <QObject>
#include <QString>

#include <atomic>
#include <memory>
#include <thread>

namespace topwire {

/// Reads a weather file beside the window's own thread, so that a long one neither holds
/// it up nor has to be waited for. One at a time: starting another gives up the first.
class WeatherImport : public QObject {
  Q_OBJECT

public:
  explicit WeatherImport(QObject* parent = nullptr);
  ~WeatherImport() override;

  void start(const QString& path, const WeatherReading& reading);
  /// Nothing of it is told any more; the orchard was never touched.
  void cancel();

  bool isRunning() const { return stop_ != nullptr; }

Q_SIGNALS:
  /// From 0 to 100.
  void progressed(int percent);
  void read(std::shared_ptr<const topwire::WeatherFile> file);
  void failed(const topwire::Problems& problems);

private:
  using Stop = std::shared_ptr<std::atomic<bool>>;

  void tell(const Stop& of, const Checked<std::optional<WeatherFile>>& outcome);

  Stop stop_;  ///< of the reading that is wanted, if any
  std::jthread worker_;
};

}  // namespace topwire
