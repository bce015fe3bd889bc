#pragma once

#include "app/look/tokens.h"

#include <QApplication>
#include <QFont>
#include <QPalette>

namespace topwire {

/// Palette, style and font sizes for the whole application; may be called again to change
/// the theme while windows are open.
void applyLook(QApplication& application, Theme theme);
/// Light or dark as the desktop's own palette is: Qt 6.4 cannot be asked, so the
/// lightness of its window colour decides.
Theme desktopTheme();

/// The theme's colours in the roles widgets read them from. Beside the usual ones: Mid is
/// the hairline, Dark the outline, Midlight the accent's tint, Light the raised surface.
QPalette paletteFor(Theme theme);

/// Sizes of type, in points before the reader's text size: 9 for second lines, 10 for
/// body, 11 for names, 13 for section heads, 17 for page titles, 22 for the one figure a
/// page may have.
enum class TypeSize { small, body, name, head, title, figure };
QFont fontOf(TypeSize size, bool bold = false);

namespace measure {
inline constexpr int cardRadius = 6;
inline constexpr int buttonHeight = 36;
inline constexpr int ringGap = 2;
inline constexpr int ringWidth = 2;
inline constexpr int pageMargin = 20;
inline constexpr int railWidth = 148;
}  // namespace measure

}  // namespace topwire
