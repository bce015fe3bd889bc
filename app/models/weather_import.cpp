#include "app/models/weather_import.h"

#include "core/weather/read_weather.h"

#include <QFile>
#include <QFileInfo>

#include <utility>

namespace topwire {

namespace {

/// A century of a station's days is a few megabytes.
constexpr qint64 largest = qint64{512} * 1024 * 1024;

Problem unreadable(const QString& path, const QFile& file) {
  return {Sentence{phrase("Weather", "%1 can't be read. Choose a file you may open."),
                   {QFileInfo{path}.fileName().toStdString()}},
          {},
          file.errorString().toStdString()};
}

Result<std::string> textOf(const QString& path) {
  QFile file{path};
  if (!file.open(QIODevice::ReadOnly)) return tl::unexpected{unreadable(path, file)};
  if (file.size() > largest)
    return refuse(Sentence{
        phrase("Weather",
               "%1 is larger than any record of daily weather. Choose another file."),
        {QFileInfo{path}.fileName().toStdString()}});
  const QByteArray bytes = file.readAll();
  if (file.error() != QFileDevice::NoError) return tl::unexpected{unreadable(path, file)};
  return bytes.toStdString();
}

Checked<std::optional<WeatherFile>> readFile(const QString& path,
                                             const WeatherReading& reading,
                                             const ReadingProgress& progress) {
  const Result<std::string> text = textOf(path);
  if (!text) return tl::unexpected{Problems{text.error()}};
  return readWeather(*text, QFileInfo{path}.fileName().toStdString(), reading, progress);
}

}  // namespace

WeatherImport::WeatherImport(QObject* parent) : QObject(parent) {}

WeatherImport::~WeatherImport() {
  cancel();
}

void WeatherImport::start(const QString& path, const WeatherReading& reading) {
  cancel();
  const Stop stop = stop_ = std::make_shared<std::atomic<bool>>(false);
  // Another file's worker has been told to stop, and is waited for here.
  worker_ = std::jthread{[this, stop, path, reading] {
    int told = 0;
    const ReadingProgress progress = [&](double share) {
      const int percent = static_cast<int>(share * 100);
      if (std::exchange(told, percent) != percent)
        QMetaObject::invokeMethod(
            this,
            [this, stop, percent] {
              if (stop == stop_) Q_EMIT progressed(percent);
            },
            Qt::QueuedConnection);
      return !stop->load();
    };
    auto outcome = readFile(path, reading, progress);
    QMetaObject::invokeMethod(
        this,
        [this, stop, outcome = std::move(outcome)] { tell(stop, outcome); },
        Qt::QueuedConnection);
  }};
}

void WeatherImport::tell(const Stop& of,
                         const Checked<std::optional<WeatherFile>>& outcome) {
  if (of != stop_) return;
  stop_.reset();
  if (!outcome) {
    Q_EMIT failed(outcome.error());
  } else if (outcome->has_value()) {
    Q_EMIT read(std::make_shared<const WeatherFile>(**outcome));
  }
}

void WeatherImport::cancel() {
  if (stop_) stop_->store(true);
  stop_.reset();
}

}  // namespace topwire
