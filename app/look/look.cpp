#include "app/look/look.h"

#include "app/look/flat_style.h"
#include "app/look/focus_ring.h"

namespace topwire {

namespace {

constexpr double bodyPoints = 10;

double pointsOf(TypeSize size) {
  switch (size) {
    case TypeSize::small:
      return 9;
    case TypeSize::body:
      return bodyPoints;
    case TypeSize::name:
      return 11;
    case TypeSize::head:
      return 13;
    case TypeSize::title:
      return 17;
    case TypeSize::figure:
      return 22;
  }
  return bodyPoints;
}

/// Taken before the first palette of ours replaces it.
const QPalette& desktopPalette() {
  static const QPalette palette = QApplication::palette();
  return palette;
}

void setDisabled(QPalette& palette, const BaseColours& colours) {
  for (const auto role :
       {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::Link})
    palette.setColor(QPalette::Disabled, role, colours.outline);
  palette.setColor(QPalette::Disabled, QPalette::Highlight, colours.outline);
}

}  // namespace

QPalette paletteFor(Theme theme) {
  const BaseColours& c = baseColours(theme);
  QPalette palette{c.raised, c.window};
  palette.setColor(QPalette::Window, c.window);
  palette.setColor(QPalette::AlternateBase, c.window);
  palette.setColor(QPalette::Base, c.surface);
  palette.setColor(QPalette::Button, c.raised);
  palette.setColor(QPalette::Light, c.raised);
  for (const auto role : {QPalette::WindowText,
                          QPalette::Text,
                          QPalette::ButtonText,
                          QPalette::BrightText,
                          QPalette::Shadow,
                          QPalette::ToolTipText})
    palette.setColor(role, c.text);
  palette.setColor(QPalette::PlaceholderText, c.muted);
  palette.setColor(QPalette::Mid, c.hairline);
  palette.setColor(QPalette::Dark, c.outline);
  palette.setColor(QPalette::Midlight, c.accentTint);
  palette.setColor(QPalette::Highlight, c.accent);
  palette.setColor(QPalette::HighlightedText, c.onAccent);
  palette.setColor(QPalette::Link, c.accent);
  palette.setColor(QPalette::LinkVisited, c.accent);
  palette.setColor(QPalette::ToolTipBase, c.raised);
  setDisabled(palette, c);
  return palette;
}

void applyLook(QApplication& application, Theme theme) {
  desktopPalette();
  setCurrentTheme(theme);
  if (!application.property("topwireLook").toBool()) {
    application.setProperty("topwireLook", true);
    QApplication::setStyle(new FlatStyle);
    QFont font = QApplication::font();
    font.setPointSizeF(bodyPoints);
    QApplication::setFont(font);
    new FocusRing{application};
  }
  QApplication::setPalette(paletteFor(theme));
}

Theme desktopTheme() {
  constexpr int middle = 128;
  return desktopPalette().color(QPalette::Window).lightness() < middle ? Theme::dark
                                                                       : Theme::light;
}

QFont fontOf(TypeSize size, bool bold) {
  QFont font = QApplication::font();
  font.setPointSizeF(font.pointSizeF() * pointsOf(size) / bodyPoints);
  font.setBold(bold);
  return font;
}

}  // namespace topwire
