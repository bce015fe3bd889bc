#pragma once

#include "app/paper/heat_chart.h"
#include "app/paper/sheet_layout.h"
#include "core/base/result.h"

class QPagedPaintDevice;

namespace topwire {

/// The chart on a sheet of paper that lies on its side.
struct HeatPage {
  HeatScene scene;
  QString title;     ///< whose heat, of which season
  QString subtitle;  ///< what the figures are
  QString foot;      ///< how far the weather reaches, and when this was made
  Paper paper = Paper::a4;
};

/// Paints the page with its top left corner in the painter's origin, at `scale` of the
/// painter's units a point.
void paint(QPainter& painter, const HeatPage& page, const Voice& voice, double scale);

Done print(QPagedPaintDevice& device, const HeatPage& page, const Voice& voice);
/// What stood at `path` stays until all is written.
Done writePdf(const QString& path, const HeatPage& page, const Voice& voice);

}  // namespace topwire
