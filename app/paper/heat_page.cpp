#include "app/paper/heat_page.h"

#include "app/paper/sheet_painter.h"
#include "app/paper/typesetter.h"

#include <QPageLayout>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace topwire {

namespace {

constexpr int pdfDotsPerInch = 1200;
constexpr double pointsAPixel = 0.75;
constexpr Face title{17, true};
constexpr Face small{9.6};

/// Fonts as the typesetter has them, so many pixels to a point.
HeatType typeOnPaper() {
  return {fontFor(small),
          fontFor({10.4}),
          fontFor({10.4, true}),
          fontFor({22, true}),
          pixelsPerPoint * pointsAPixel};
}

QSizeF sizeOf(const HeatPage& page) {
  return PageFormat{page.paper}.size().transposed();
}

QPageLayout layoutOf(const HeatPage& page) {
  const QPageSize size{
      PageFormat{page.paper}.size(), QPageSize::Point, {}, QPageSize::FuzzyMatch};
  QPageLayout layout{size, QPageLayout::Landscape, {}, QPageLayout::Point};
  layout.setMode(QPageLayout::FullPageMode);
  return layout;
}

/// In points from the page's corner; answers what it leaves for the chart.
QRectF addWords(Page& page, const HeatPage& heat) {
  constexpr double margin = PageFormat::margin;
  constexpr double beforeChart = 14;
  QRectF room = QRectF{QPointF{}, page.size}.adjusted(margin, margin, -margin, -margin);
  addLine(page.items, heat.title, title, room.topLeft());
  room.adjust(0, lineHeightOf(title), 0, 0);
  room.adjust(
      0, addText(page.items, heat.subtitle, small, room.topLeft(), room.width()), 0, 0);
  addLine(
      page.items, heat.foot, small, {room.left(), room.bottom() - lineHeightOf(small)});
  return room.adjusted(0, beforeChart, 0, -lineHeightOf(small) - beforeChart);
}

}  // namespace

void paint(QPainter& painter, const HeatPage& heat, const Voice& voice, double scale) {
  Page page;
  page.size = sizeOf(heat);
  const QRectF room = addWords(page, heat);
  paintPage(painter, page, scale);
  painter.save();
  painter.scale(scale, scale);
  painter.translate(room.topLeft());
  painter.scale(1.0 / pixelsPerPoint, 1.0 / pixelsPerPoint);
  const HeatType type = typeOnPaper();
  const HeatChart chart = layOut(heat.scene, room.size() * pixelsPerPoint, type, voice);
  paint(painter, chart, type, heatColoursOnPaper());
  painter.restore();
}

Done print(QPagedPaintDevice& device, const HeatPage& page, const Voice& voice) {
  device.setPageLayout(layoutOf(page));
  QPainter painter;
  const auto refused = [] {
    return refuse(
        Sentence{phrase("Print",
                        "The chart was not printed: the printer did not take it. Check "
                        "that it is switched on and has paper, then print again.")});
  };
  if (!painter.begin(&device)) return refused();
  paint(painter, page, voice, device.logicalDpiX() / 72.0);
  if (!painter.end()) return refused();
  return {};
}

Done writePdf(const QString& path, const HeatPage& page, const Voice& voice) {
  QSaveFile file{path};
  const auto refused = [&] {
    auto problem = refuse(
        Sentence{phrase("Print",
                        "The chart was not written to %1. Choose a folder that can be "
                        "written to and has room."),
                 {path.toStdString()}},
        path.toStdString());
    problem.value().detail = file.errorString().toStdString();
    return problem;
  };
  if (!file.open(QIODevice::WriteOnly)) return refused();
  {
    QPdfWriter writer{&file};
    writer.setResolution(pdfDotsPerInch);
    writer.setTitle(page.title);
    writer.setCreator(QStringLiteral("Topwire"));
    if (!print(writer, page, voice)) return refused();
  }
  if (!file.commit()) return refused();
  return {};
}

}  // namespace topwire
