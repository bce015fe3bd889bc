#include "app/windows/row_picture.h"

#include "app/look/look.h"
#include "app/windows/block_words.h"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr double widestPitch = 30;
constexpr double narrowestPitch = 9;
constexpr double laneShare = 14.0 / 22.0;  ///< of the pitch
constexpr double widestLane = 14;
constexpr int sideMargin = 2;
constexpr int markRoom = 16;    ///< above a band, for a pollinizer's letter
constexpr int numberRoom = 20;  ///< below a band
constexpr double treesPerDot = 12;
constexpr int mostDots = 24;

const StateColours& doneColours() {
  return stateColours(currentTheme(), TaskState::done);
}

/// Places along a lane where replants are drawn; where in the row they stand is not
/// known, so they are spread.
std::vector<double> replantPlaces(int count) {
  constexpr int most = 4;
  const int drawn = std::min(count, most);
  std::vector<double> places;
  for (int i = 0; i < drawn; ++i) places.push_back((i + 1.0) / (drawn + 1.0));
  return places;
}

void paintTick(QPainter& painter, const QRectF& lane, const QColor& colour) {
  const double w = lane.width();
  painter.setPen(QPen{colour, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
  painter.drawPolyline(QPolygonF{{lane.left() + w * 0.22, lane.top() + 11},
                                 {lane.left() + w * 0.43, lane.top() + 14},
                                 {lane.left() + w * 0.78, lane.top() + 8}});
}

}  // namespace

RowPicture::RowPicture(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("rowPicture"));
  QSizePolicy policy{QSizePolicy::Expanding, QSizePolicy::Fixed};
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void RowPicture::setLanes(std::vector<RowLane> lanes) {
  if (lanes == lanes_) return;
  lanes_ = std::move(lanes);
  const auto done = std::ranges::count(lanes_, 100, &RowLane::percent);
  const auto wanted = std::ranges::count(lanes_, true, &RowLane::inTask);
  setAccessibleName(
      tr("%1 rows, %2 of %3 done").arg(lanes_.size()).arg(done).arg(wanted));
  updateGeometry();
  update();
}

RowPicture::Bands RowPicture::bandsAt(int width) const {
  const int rows = std::max(1, static_cast<int>(lanes_.size()));
  const double room = width - 2.0 * sideMargin;
  const int fit = std::max(1, static_cast<int>(room / narrowestPitch));
  const int count = (rows + fit - 1) / fit;
  const int inBand = (rows + count - 1) / count;
  const double pitch = std::clamp(room / inBand, narrowestPitch, widestPitch);
  constexpr int tall = 168;
  constexpr int low = 92;
  return {inBand, count, pitch, count == 1 ? tall : low};
}

int RowPicture::heightForWidth(int width) const {
  const Bands bands = bandsAt(width);
  return bands.count * (bands.height + markRoom + numberRoom);
}

QSize RowPicture::sizeHint() const {
  constexpr int usualWidth = 600;
  return {usualWidth, heightForWidth(width() > 0 ? width() : usualWidth)};
}

QRectF RowPicture::laneRect(const Bands& bands, int index) const {
  const int band = index / bands.rows;
  const double x = sideMargin + (index % bands.rows) * bands.pitch;
  const double y = markRoom + band * (bands.height + markRoom + numberRoom);
  return {x,
          y,
          std::min(widestLane, std::round(bands.pitch * laneShare)),
          static_cast<double>(bands.height)};
}

bool RowPicture::numberShown(const Bands& bands, int index) const {
  const int row = lanes_[static_cast<std::size_t>(index)].row;
  const bool last = index + 1 == static_cast<int>(lanes_.size());
  const int step = bands.pitch < 14 ? 10 : 5;
  if (row % step == 0 || index % bands.rows == 0) return true;
  return last && row % step > 1;
}

void RowPicture::paintLane(QPainter& painter,
                           const QRectF& lane,
                           const RowLane& row) const {
  const bool done = row.percent >= 100;
  const QColor fill = doneColours().mark;
  const QColor ground = palette().color(QPalette::Base);
  const QColor edge = palette().color(QPalette::Dark);
  painter.setPen(done ? QPen{fill, 1.2}
                      : QPen{edge, 1.2, row.kind ? Qt::SolidLine : Qt::DotLine});
  painter.setBrush(done ? fill : ground);
  painter.drawRoundedRect(lane.adjusted(0.6, 0.6, -0.6, -0.6), 2, 2);
  if (row.percent > 0 && !done) {
    QRectF part = lane;
    part.setTop(lane.bottom() - lane.height() * row.percent / 100);
    painter.fillRect(part.adjusted(0.6, 0, -0.6, -0.6), fill);
  }
  const bool broad = lane.width() >= 10;
  if (done && broad) paintTick(painter, lane, palette().color(QPalette::Light));
  const QColor ink = done ? palette().color(QPalette::Light)
                          : palette().color(QPalette::PlaceholderText);
  const int dots = std::clamp(
      static_cast<int>(std::lround(row.trees / treesPerDot)), row.kind ? 1 : 0, mostDots);
  painter.setPen(Qt::NoPen);
  painter.setBrush(ink);
  const double radius = row.inTask || !row.kind ? 1.3 : 1.0;
  for (int dot = 1; dot <= dots; ++dot) {
    const double y = lane.top() + lane.height() * dot / (dots + 1.0);
    if (done && broad && y < lane.top() + 20) continue;
    painter.drawEllipse(QPointF{lane.center().x(), y}, radius, radius);
  }
  painter.setBrush(done ? fill : ground);
  painter.setPen(QPen{done ? ink : palette().color(QPalette::Text), 1.6});
  const double ring = std::min(3.6, lane.width() / 2 - 1);
  for (const double place : replantPlaces(row.replants))
    painter.drawEllipse(
        QPointF{lane.center().x(), lane.top() + lane.height() * place}, ring, ring);
}

void RowPicture::paintEvent(QPaintEvent* event) {
  QPainter painter{this};
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(fontOf(TypeSize::small));
  const Bands bands = bandsAt(width());
  for (int i = 0; i < static_cast<int>(lanes_.size()); ++i) {
    const RowLane& row = lanes_[static_cast<std::size_t>(i)];
    const QRectF lane = laneRect(bands, i);
    const QRectF column{lane.center().x() - 16,
                        lane.top() - markRoom,
                        32,
                        lane.height() + markRoom + numberRoom};
    if (!event->rect().intersects(column.toAlignedRect())) continue;
    paintLane(painter, lane, row);
    painter.setPen(palette().color(QPalette::PlaceholderText));
    if (numberShown(bands, i))
      painter.drawText(QRectF{column.left(), lane.bottom() + 2, 32, numberRoom - 2.0},
                       Qt::AlignHCenter | Qt::AlignTop,
                       QString::number(row.row));
    painter.setPen(palette().color(QPalette::Text));
    if (row.kind == PlantingKind::pollinizer)
      painter.drawText(QRectF{column.left(), column.top(), 32, markRoom},
                       Qt::AlignCenter,
                       tr("P", "a pollinizer's row"));
  }
}

QString RowPicture::laneText(const RowLane& lane) const {
  QString text = tr("Row %1").arg(lane.row);
  if (!lane.kind) return text + tr(": nothing planted");
  if (lane.percent >= 100)
    text += tr(": done");
  else if (lane.percent > 0)
    text += tr(": %1 % done").arg(lane.percent);
  else
    text += lane.inTask ? tr(": to do") : tr(": not in this task");
  if (lane.kind == PlantingKind::pollinizer) text += tr(", pollinizer");
  if (lane.replants > 0)
    text += sayCounted(lane.replants,
                       phrase("Blocks", ", %1 replant"),
                       phrase("Blocks", ", %1 replants"));
  return text;
}

bool RowPicture::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const Bands bands = bandsAt(width());
  for (int i = 0; i < static_cast<int>(lanes_.size()); ++i)
    if (laneRect(bands, i).adjusted(-3, 0, 3, 0).contains(help->pos())) {
      QToolTip::showText(
          help->globalPos(), laneText(lanes_[static_cast<std::size_t>(i)]), this);
      return true;
    }
  QToolTip::hideText();
  return true;
}

}  // namespace topwire
