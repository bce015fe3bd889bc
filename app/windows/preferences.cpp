#include "app/windows/preferences.h"

namespace topwire {

namespace {

constexpr int recentLimit = 8;

QString themeKey() {
  return QStringLiteral("look/theme");
}

QString languageKey() {
  return QStringLiteral("look/language");
}

QString recentKey() {
  return QStringLiteral("files/recent");
}

QString geometryKey() {
  return QStringLiteral("window/geometry");
}

}  // namespace

std::optional<Theme> Preferences::theme() const {
  const QString name = settings_->value(themeKey()).toString();
  if (name == QLatin1String("light")) return Theme::light;
  if (name == QLatin1String("dark")) return Theme::dark;
  return std::nullopt;
}

void Preferences::setTheme(std::optional<Theme> theme) {
  if (!theme) return settings_->remove(themeKey());
  settings_->setValue(
      themeKey(),
      *theme == Theme::dark ? QStringLiteral("dark") : QStringLiteral("light"));
}

QString Preferences::language() const {
  return settings_->value(languageKey()).toString();
}

void Preferences::setLanguage(const QString& locale) {
  settings_->setValue(languageKey(), locale);
}

QStringList Preferences::recentFiles() const {
  return settings_->value(recentKey()).toStringList();
}

void Preferences::remember(const QString& file) {
  QStringList files = recentFiles();
  files.removeAll(file);
  files.prepend(file);
  settings_->setValue(recentKey(), files.mid(0, recentLimit));
}

void Preferences::forget(const QString& file) {
  QStringList files = recentFiles();
  files.removeAll(file);
  settings_->setValue(recentKey(), files);
}

QByteArray Preferences::geometry() const {
  return settings_->value(geometryKey()).toByteArray();
}

void Preferences::setGeometry(const QByteArray& geometry) {
  settings_->setValue(geometryKey(), geometry);
}

}  // namespace topwire
