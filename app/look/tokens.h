#pragma once

#include "core/planning/progress.h"

#include <QColor>

namespace topwire {

enum class Theme { light, dark };

/// The colours of the frame. Every ratio between text and ground is at least 4.5, between
/// mark and ground 3 (WCAG 2); tests/app checks them.
struct BaseColours {
  QColor window, surface, raised, text, muted, hairline, outline;
  QColor accent, onAccent, accentTint, focus;
  QColor rail, railText, railMuted;
};

/// The four uses of a state's hue: `ink` for its word, `mark` for shape and edge, `tint`
/// for the fill, `hatch` for lines on the fill.
struct StateColours {
  QColor ink, mark, tint, hatch;
};

const BaseColours& baseColours(Theme theme);
const StateColours& stateColours(Theme theme, TaskState state);

/// The theme in force; set by applyLook, read by everything that paints.
Theme currentTheme();
void setCurrentTheme(Theme theme);

}  // namespace topwire
