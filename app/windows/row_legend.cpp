#include "app/look/look.h"
#include "app/windows/row_picture.h"

#include <QPainter>

#include <algorithm>

namespace topwire {

namespace {

constexpr int markWidth = 12;
constexpr int markHeight = 14;
constexpr int markGap = 6;
constexpr int entryGap = 18;
constexpr int lineHeight = 22;

RowSet rowsWhere(const std::vector<RowLane>& lanes, bool (*wanted)(const RowLane&)) {
  RowSet rows;
  for (const RowLane& lane : lanes)
    if (wanted(lane)) rows = rows.with(RowSet::range(lane.row, lane.row));
  return rows;
}

QString textOf(const RowSet& rows) {
  return QString::fromStdString(rowsText(rows));
}

}  // namespace

RowLegend::RowLegend(QWidget* parent) : QWidget(parent) {
  setFont(fontOf(TypeSize::small));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void RowLegend::setLanes(const std::vector<RowLane>& lanes) {
  entries_.clear();
  const auto add = [this](Mark mark, const QString& words) {
    entries_.push_back({mark, words});
  };
  const auto any = [&lanes](bool (*wanted)(const RowLane&)) {
    return std::ranges::any_of(lanes, wanted);
  };
  if (any([](const RowLane& lane) { return lane.percent >= 100; }))
    add(Mark::done, tr("done"));
  if (any([](const RowLane& lane) { return lane.percent > 0 && lane.percent < 100; }))
    add(Mark::partly, tr("partly"));
  if (any([](const RowLane& lane) { return lane.percent < 100 && lane.kind; }))
    add(Mark::toDo, tr("to do"));
  if (any([](const RowLane& lane) { return !lane.kind; }))
    add(Mark::outside, tr("nothing planted"));
  const RowSet replants =
      rowsWhere(lanes, [](const RowLane& lane) { return lane.replants > 0; });
  if (!replants.empty())
    add(Mark::replant, tr("replants: rows %1").arg(textOf(replants)));
  const RowSet pollinizers = rowsWhere(
      lanes, [](const RowLane& lane) { return lane.kind == PlantingKind::pollinizer; });
  if (!pollinizers.empty())
    add(Mark::pollinizer, tr("pollinizer: rows %1").arg(textOf(pollinizers)));
  setAccessibleName(text());
  updateGeometry();
  update();
}

QString RowLegend::text() const {
  QStringList words;
  for (const Entry& entry : entries_) words << entry.words;
  return words.join(QStringLiteral(", "));
}

QSize RowLegend::sizeHint() const {
  int width = 0;
  for (const Entry& entry : entries_)
    width +=
        markWidth + markGap + entryGap + fontMetrics().horizontalAdvance(entry.words);
  return {width, lineHeight};
}

void RowLegend::paintMark(QPainter& painter, const QRectF& where, Mark mark) const {
  const QColor done = stateColours(currentTheme(), TaskState::done).mark;
  const QColor text = palette().color(QPalette::Text);
  const QRectF box = where.adjusted(0.6, 0.6, -0.6, -0.6);
  painter.setBrush(Qt::NoBrush);
  switch (mark) {
    case Mark::done:
      painter.setPen(Qt::NoPen);
      painter.setBrush(done);
      painter.drawRoundedRect(where, 2, 2);
      break;
    case Mark::partly:
      painter.setPen(QPen{done, 1.2});
      painter.drawRoundedRect(box, 2, 2);
      painter.fillRect(box.adjusted(0, box.height() / 2, 0, 0), done);
      break;
    case Mark::toDo:
      painter.setPen(QPen{palette().color(QPalette::Dark), 1.2});
      painter.drawRoundedRect(box, 2, 2);
      break;
    case Mark::outside:
      painter.setPen(QPen{palette().color(QPalette::Dark), 1.2, Qt::DotLine});
      painter.drawRoundedRect(box, 2, 2);
      break;
    case Mark::replant:
      painter.setPen(QPen{text, 1.6});
      painter.drawEllipse(where.center(), 4, 4);
      break;
    case Mark::pollinizer:
      painter.setPen(text);
      painter.drawText(where.adjusted(-2, -2, 2, 2),
                       Qt::AlignCenter,
                       RowPicture::tr("P", "a pollinizer's row"));
      break;
  }
}

void RowLegend::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  painter.setRenderHint(QPainter::Antialiasing);
  double x = 2;
  for (const Entry& entry : entries_) {
    paintMark(
        painter, {x, (height() - markHeight) / 2.0, markWidth, markHeight}, entry.mark);
    x += markWidth + markGap;
    const double wide = fontMetrics().horizontalAdvance(entry.words);
    painter.setPen(palette().color(QPalette::PlaceholderText));
    painter.drawText(
        QRectF(x, 0, wide + 4, height()), Qt::AlignVCenter | Qt::AlignLeft, entry.words);
    x += wide + entryGap;
  }
}

}  // namespace topwire
