#pragma once

#include "app/look/tokens.h"

#include <QByteArray>
#include <QSettings>
#include <QStringList>

#include <optional>

namespace topwire {

/// What this person chose on this machine, kept outside the orchard file: theme,
/// language, the files lately open, and where the window stood.
class Preferences {
public:
  explicit Preferences(QSettings& settings) : settings_(&settings) {}

  /// Nothing: as the desktop is.
  std::optional<Theme> theme() const;
  void setTheme(std::optional<Theme> theme);

  /// A locale's name such as "es"; empty: the system's.
  QString language() const;
  void setLanguage(const QString& locale);

  /// Newest first, at most eight.
  QStringList recentFiles() const;
  void remember(const QString& file);
  void forget(const QString& file);

  QByteArray geometry() const;
  void setGeometry(const QByteArray& geometry);

private:
  QSettings* settings_;
};

}  // namespace topwire
