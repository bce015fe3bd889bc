#include "app/paper/sheet_painter.h"

#include "app/paper/sheet_pieces.h"
#include "app/paper/typesetter.h"
#include "core/base/contract.h"

#include <QPageLayout>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace topwire {

namespace {

constexpr int pdfDotsPerInch = 1200;

QPen inkPen(double width) {
  return {Qt::black, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin};
}

void fillBlack(QPainter& painter, const QRectF& rect) {
  painter.fillRect(rect, Qt::black);
}

void frame(QPainter& painter, const QRectF& rect, double edge) {
  painter.setPen(inkPen(edge));
  painter.setBrush(Qt::NoBrush);
  const double half = edge / 2;
  painter.drawRect(rect.adjusted(half, half, -half, -half));
}

void tick(QPainter& painter, const QRectF& box) {
  const auto at = [&box](double x, double y) {
    return QPointF{box.left() + box.width() * x, box.top() + box.height() * y};
  };
  const QPen pen{
      Qt::white, box.width() * 0.14, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin};
  painter.setPen(pen);
  painter.drawPolyline(QPolygonF{{at(0.22, 0.53), at(0.42, 0.73), at(0.79, 0.27)}});
}

struct ItemPainter {
  QPainter& painter;

  void operator()(const TextItem& item) const {
    painter.save();
    painter.translate(item.baseline);
    painter.scale(1.0 / pixelsPerPoint, 1.0 / pixelsPerPoint);
    painter.setFont(fontFor(item.face));
    painter.setPen(item.white ? Qt::white : Qt::black);
    painter.drawText(QPointF{0, 0}, item.text);
    painter.restore();
  }

  void operator()(const RuleItem& item) const {
    painter.setPen(inkPen(item.width));
    painter.drawLine(item.line);
  }

  void operator()(const FrameItem& item) const {
    if (item.filled)
      fillBlack(painter, item.rect);
    else
      frame(painter, item.rect, item.edge);
  }

  void operator()(const RowItem& item) const {
    const QRectF& box = item.box;
    switch (item.mark) {
      case RowMark::absent: {
        QRectF dash{0, 0, box.width() * 0.42, 1.8};
        dash.moveCenter(box.center());
        return fillBlack(painter, dash);
      }
      case RowMark::done:
        fillBlack(painter, box);
        return tick(painter, box);
      case RowMark::partly:
        fillBlack(painter, box.adjusted(0, box.height() / 2, 0, 0));
        break;
      case RowMark::toDo:
        break;
    }
    frame(painter, box, sheet_style::boxEdge);
  }

  void operator()(const DrawingItem& item) const {
    paint(painter, item.drawing, item.rect, Qt::black, Qt::white);
  }
};

QPageLayout layoutOf(const Page& page) {
  const QPageSize size{page.size, QPageSize::Point, {}, QPageSize::FuzzyMatch};
  QPageLayout layout{size, QPageLayout::Portrait, {}, QPageLayout::Point};
  layout.setMode(QPageLayout::FullPageMode);
  return layout;
}

}  // namespace

void paintPage(QPainter& painter, const Page& page, double scale) {
  painter.save();
  painter.scale(scale, scale);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  for (const Item& item : page.items) std::visit(ItemPainter{painter}, item);
  painter.restore();
}

QImage imageOf(const Page& page, double dotsPerInch) {
  const double scale = dotsPerInch / 72;
  QImage image{(page.size * scale).toSize(), QImage::Format_RGB32};
  image.fill(Qt::white);
  QPainter painter{&image};
  paintPage(painter, page, scale);
  return image;
}

Done printPages(QPagedPaintDevice& device, const std::vector<Page>& pages) {
  TOPWIRE_REQUIRE(!pages.empty());
  device.setPageLayout(layoutOf(pages.front()));
  QPainter painter;
  const auto refused = [] {
    return refuse(
        Sentence{phrase("Print",
                        "The sheet was not printed: the printer did not take it. Check "
                        "that it is switched on and has paper, then print again.")});
  };
  if (!painter.begin(&device)) return refused();
  const double scale = device.logicalDpiX() / 72.0;
  for (const Page& page : pages) {
    if (&page != &pages.front() && !device.newPage()) return refused();
    paintPage(painter, page, scale);
  }
  if (!painter.end()) return refused();
  return {};
}

Done writePdf(const QString& path, const std::vector<Page>& pages, const QString& title) {
  QSaveFile file{path};
  const auto refused = [&] {
    auto problem = refuse(
        Sentence{phrase("Print",
                        "The sheet was not written to %1. Choose a folder that can be "
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
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Topwire"));
    if (!printPages(writer, pages)) return refused();
  }
  if (!file.commit()) return refused();
  return {};
}

}  // namespace topwire
