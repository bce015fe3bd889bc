#pragma once

#include "app/look/tokens.h"

#include <QApplication>

namespace topwire {

/// Palette, style and font sizes for the whole application; may be called again to change
/// the theme while windows are open.
void applyLook(QApplication& application, Theme theme);
/// Light or dark as the desktop's own palette is: Qt 6.4 cannot be asked, so the
/// lightness of its window colour decides.
Theme desktopTheme();

}  // namespace topwire
