#include "app/windows/row_grid.h"

#include "app/look/look.h"
#include "app/look/tokens.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <array>
#include <vector>

namespace topwire {

namespace {

constexpr int cellSide = 44;
constexpr int cellPitch = 48;
constexpr int margin = 3;  // room for the focus ring
constexpr int sampleSide = 12;
constexpr int sampleGap = 14;

struct Sample {
  RowCellState cell;
  QString words;
};

std::array<Sample, 4> samples() {
  return {Sample{{1, CellMark::toDo, true}, CellLegend::tr("chosen")},
          Sample{{1, CellMark::toDo, false}, CellLegend::tr("to do")},
          Sample{{1, CellMark::partly, false}, CellLegend::tr("partly")},
          Sample{{1, CellMark::done, false}, CellLegend::tr("done")}};
}

Sample plannedSample() {
  return {{1, CellMark::toDo, false, true}, CellLegend::tr("planned")};
}

std::vector<Sample> samplesWith(bool planned) {
  const auto all = samples();
  std::vector<Sample> shown(all.begin(), all.end());
  if (planned) shown.insert(shown.begin() + 1, plannedSample());
  return shown;
}

}  // namespace

RowGrid::RowGrid(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Rows"));
  setToolTip(
      tr("Click or drag over rows. Arrows move, Space chooses, Shift extends, "
         "Ctrl+A takes all that are left."));
  QSizePolicy policy{QSizePolicy::Expanding, QSizePolicy::Preferred};
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void RowGrid::setCells(std::vector<RowCellState> cells) {
  cells_ = std::move(cells);
  cursor_ = 0;
  dragFrom_.reset();
  updateGeometry();
  update();
}

void RowGrid::setChosen(const RowSet& rows) {
  for (RowCellState& cell : cells_)
    cell.chosen = cell.mark != CellMark::notInTask && rows.contains(cell.number);
  update();
}

RowSet RowGrid::chosen() const {
  RowSet rows;
  for (const RowCellState& cell : cells_)
    if (cell.chosen) rows = rows.with(RowSet::range(cell.number, cell.number));
  return rows;
}

int RowGrid::perLine(int width) const {
  return std::max(1, (width - 2 * margin + cellPitch - cellSide) / cellPitch);
}

QSize RowGrid::sizeHint() const {
  const int cells = std::clamp(static_cast<int>(cells_.size()), 1, 14);
  const int wide = cells * cellPitch + 2 * margin;
  return {wide, heightForWidth(wide)};
}

QSize RowGrid::minimumSizeHint() const {
  return {5 * cellPitch + 2 * margin, cellSide + 2 * margin};
}

int RowGrid::heightForWidth(int width) const {
  const int line = perLine(width);
  const int lines = std::max(1, (static_cast<int>(cells_.size()) + line - 1) / line);
  return (lines - 1) * cellPitch + cellSide + 2 * margin;
}

QRectF RowGrid::boxOf(std::size_t index) const {
  const auto line = static_cast<std::size_t>(perLine(width()));
  return {static_cast<double>(index % line) * cellPitch + margin,
          static_cast<double>(index / line) * cellPitch + margin,
          cellSide,
          cellSide};
}

std::optional<std::size_t> RowGrid::cellAt(QPointF where) const {
  for (std::size_t i = 0; i < cells_.size(); ++i)
    if (boxOf(i).adjusted(-2, -2, 2, 2).contains(where)) return i;
  return std::nullopt;
}

void RowGrid::choose(std::size_t index, bool chosen) {
  RowCellState& cell = cells_[index];
  if (cell.mark == CellMark::notInTask) return;
  cell.chosen = chosen;
}

void RowGrid::chooseTo(std::size_t index) {
  const std::size_t from = dragFrom_.value_or(index);
  for (std::size_t i = std::min(from, index); i <= std::max(from, index); ++i)
    choose(i, choosing_);
  cursor_ = index;
  update();
  Q_EMIT chosenChanged();
}

void RowGrid::mousePressEvent(QMouseEvent* event) {
  const auto cell = cellAt(event->position());
  if (!cell || event->button() != Qt::LeftButton) return;
  if ((event->modifiers() & Qt::ShiftModifier) != 0) {
    dragFrom_ = cursor_;
    choosing_ = true;
  } else {
    dragFrom_ = cell;
    choosing_ = !cells_[*cell].chosen;
  }
  chooseTo(*cell);
}

void RowGrid::mouseMoveEvent(QMouseEvent* event) {
  if (!dragFrom_) return;
  if (const auto cell = cellAt(event->position())) chooseTo(*cell);
}

void RowGrid::mouseReleaseEvent(QMouseEvent*) {
  dragFrom_.reset();
}

void RowGrid::moveTo(std::size_t index, bool extend) {
  const std::size_t from = cursor_;
  cursor_ = index;
  if (extend) {
    dragFrom_ = from;
    choosing_ = true;
    chooseTo(index);
    dragFrom_.reset();
  }
  tellReader();
  update();
}

void RowGrid::keyPressEvent(QKeyEvent* event) {
  if (cells_.empty()) return QWidget::keyPressEvent(event);
  if (event->matches(QKeySequence::SelectAll)) {
    for (std::size_t i = 0; i < cells_.size(); ++i)
      choose(i, cells_[i].mark != CellMark::done);
    update();
    return Q_EMIT chosenChanged();
  }
  const int line = perLine(width());
  int steps = 0;
  switch (event->key()) {
    case Qt::Key_Left:
      steps = -1;
      break;
    case Qt::Key_Right:
      steps = 1;
      break;
    case Qt::Key_Up:
      steps = -line;
      break;
    case Qt::Key_Down:
      steps = line;
      break;
    case Qt::Key_Space:
      choosing_ = !cells_[cursor_].chosen;
      dragFrom_.reset();
      return chooseTo(cursor_);
    default:
      return QWidget::keyPressEvent(event);
  }
  const int next = static_cast<int>(cursor_) + steps;
  if (next >= 0 && next < static_cast<int>(cells_.size()))
    moveTo(static_cast<std::size_t>(next), (event->modifiers() & Qt::ShiftModifier) != 0);
}

void RowGrid::tellReader() {
  const RowCellState& cell = cells_[cursor_];
  const auto all = samples();
  const QString mark = cell.mark == CellMark::toDo     ? all[1].words
                       : cell.mark == CellMark::partly ? all[2].words
                       : cell.mark == CellMark::done   ? all[3].words
                                                       : tr("not in this task");
  QString words = tr("Row %1, %2").arg(cell.number).arg(mark);
  if (cell.planned) words += QStringLiteral(", ") + plannedSample().words;
  if (cell.chosen) words += QStringLiteral(", ") + all[0].words;
  setAccessibleDescription(words);
  QAccessibleEvent event{this, QAccessible::DescriptionChanged};
  QAccessible::updateAccessibility(&event);
}

void RowGrid::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  for (std::size_t i = 0; i < cells_.size(); ++i)
    paintNumberedCell(painter, boxOf(i), cells_[i]);
  if (!hasFocus() || cells_.empty()) return;
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen{baseColours(currentTheme()).focus, 2});
  painter.drawRoundedRect(boxOf(cursor_).adjusted(-2, -2, 2, 2), 6, 6);
}

void RowGrid::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  if (!cells_.empty()) tellReader();
  update();
}

void RowGrid::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

CellLegend::CellLegend(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void CellLegend::setPlanned(bool planned) {
  planned_ = planned;
  updateGeometry();
  update();
}

QSize CellLegend::sizeHint() const {
  const QFontMetrics metrics{fontOf(TypeSize::small)};
  int wide = 0;
  for (const Sample& sample : samplesWith(planned_))
    wide += sampleSide + 6 + metrics.horizontalAdvance(sample.words) + sampleGap;
  return {wide, metrics.height() + 2};
}

void CellLegend::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  painter.setRenderHint(QPainter::Antialiasing);
  const BaseColours& base = baseColours(currentTheme());
  const QFontMetrics metrics{fontOf(TypeSize::small)};
  double x = 0;
  for (const Sample& sample : samplesWith(planned_)) {
    const QRectF box{x, (height() - sampleSide) / 2.0, sampleSide, sampleSide};
    if (sample.cell.chosen) {
      painter.setPen(Qt::NoPen);
      painter.setBrush(base.accent);
      painter.drawRoundedRect(box, 2, 2);
    } else {
      paintRowCell(painter, box, sample.cell.mark, sample.cell.planned);
    }
    painter.setFont(fontOf(TypeSize::small));
    painter.setPen(base.muted);
    const int wide = metrics.horizontalAdvance(sample.words);
    painter.drawText(QRectF{x + sampleSide + 6, 0, wide + 2.0, double(height())},
                     Qt::AlignVCenter,
                     sample.words);
    x += sampleSide + 6 + wide + sampleGap;
  }
}

}  // namespace topwire
