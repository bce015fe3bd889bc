#pragma once

#include "app/look/tokens.h"
#include "app/windows/main_window.h"
#include "core/calendar/day.h"

#include <QSize>
#include <QString>
#include <QStringList>

#include <optional>

namespace topwire {

/// What the command line asked for.
struct DesktopOptions {
  QString file;
  std::optional<Day> today;
  QString language;
  std::optional<Theme> theme;
  std::optional<RailPage> page;
  std::optional<Day> day;
  QString grabTo;  ///< a PNG of the window, then the program ends
  QSize size{1280, 800};
};

/// The options; else one sentence that says what could not be read.
Result<DesktopOptions> readOptions(const QStringList& arguments);

}  // namespace topwire
