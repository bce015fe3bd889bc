#pragma once

#include <QColor>
#include <QIcon>
#include <QPainter>

namespace topwire {

/// Line icons on a grid of 20, drawn in one colour: strokes of 1.7 with round ends.
enum class Icon {
  today,
  calendar,
  blocks,
  weather,
  labour,
  material,
  programme,
  settings,
  undo,
  redo,
  print,
  previous,
  next,
  minus,
  plus,
  why,
  down,
  edit,
  wait,
  pin
};

void paintIcon(QPainter& painter, const QRectF& where, Icon icon, const QColor& colour);
/// Sharp at every device pixel ratio; grey of the palette where disabled, and in the
/// colour of words on the accent where selected, as a main button paints it.
QIcon iconFor(Icon icon, const QColor& colour);
/// In the colour of a button's words, whatever the theme is when it is drawn.
QIcon iconFor(Icon icon);

}  // namespace topwire
