#include "app/windows/plain_table.h"

#include "app/look/look.h"
#include "app/look/state_shape.h"

#include <QEvent>
#include <QHeaderView>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>
#include <utility>

namespace topwire {

namespace {

constexpr int rowPadding = 14;
constexpr int headHeight = 32;
constexpr int shapeSide = 15;
constexpr int besideWords = 8;
/// What the style leaves beside the words of a cell.
constexpr int insideCell = 5;

/// With room beside the words, as the heads have it.
class RoomyCells : public QStyledItemDelegate {
public:
  using QStyledItemDelegate::QStyledItemDelegate;

  QSize sizeHint(const QStyleOptionViewItem& option,
                 const QModelIndex& index) const override {
    return QStyledItemDelegate::sizeHint(option, index) + QSize{2 * besideWords, 0};
  }

protected:
  void initStyleOption(QStyleOptionViewItem* option,
                       const QModelIndex& index) const override {
    QStyledItemDelegate::initStyleOption(option, index);
    option->rect.adjust(besideWords, 0, -besideWords, 0);
  }
};

/// Muted words over a hairline.
class PlainHead : public QHeaderView {
public:
  using QHeaderView::QHeaderView;

protected:
  QSize sectionSizeFromContents(int section) const override {
    const QString words = model()->headerData(section, orientation()).toString();
    const int wide = QFontMetrics{fontOf(TypeSize::small)}.horizontalAdvance(words);
    return {wide + 2 * (besideWords + insideCell) + 2, headHeight};
  }

  void paintSection(QPainter* painter, const QRect& rect, int section) const override {
    painter->save();
    painter->fillRect(rect, palette().base());
    painter->setFont(fontOf(TypeSize::small));
    painter->setPen(palette().color(QPalette::PlaceholderText));
    const QVariant set =
        model()->headerData(section, orientation(), Qt::TextAlignmentRole);
    painter->drawText(
        rect.adjusted(besideWords + insideCell, 0, -besideWords - insideCell, 0),
        set.isValid() ? set.toInt() : Qt::AlignLeft | Qt::AlignVCenter,
        model()->headerData(section, orientation()).toString());
    painter->setPen(palette().color(QPalette::Mid));
    painter->drawLine(rect.bottomLeft(), rect.bottomRight());
    painter->restore();
  }
};

}  // namespace

PlainTable::PlainTable(const QStringList& heads, QWidget* parent)
    : QTableWidget(0, static_cast<int>(heads.size()), parent) {
  setHorizontalHeader(new PlainHead{Qt::Horizontal, this});
  setItemDelegate(new RoomyCells{this});
  setHorizontalHeaderLabels(heads);
  setSelectionBehavior(QAbstractItemView::SelectRows);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setTabKeyNavigation(false);
  setFrameShape(QFrame::NoFrame);
  setShowGrid(false);
  setWordWrap(true);
  setIconSize({shapeSide, shapeSide});
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  verticalHeader()->hide();
  verticalHeader()->setMinimumSectionSize(1);
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setMinimumHeight(headHeight);
  horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
}

QIcon PlainTable::shapeIcon(TaskState state) const {
  QPixmap picture{QSize{shapeSide, shapeSide} * devicePixelRatioF()};
  picture.setDevicePixelRatio(devicePixelRatioF());
  picture.fill(Qt::transparent);
  QPainter painter{&picture};
  painter.setRenderHint(QPainter::Antialiasing);
  paintShape(painter, {0, 0, shapeSide, shapeSide}, state);
  QIcon icon;
  for (const QIcon::Mode mode : {QIcon::Normal, QIcon::Selected})
    icon.addPixmap(picture, mode);
  return icon;
}

void PlainTable::putRow(int row, const Row& words) {
  qsizetype lines = 1;
  for (int column = 0; column < static_cast<int>(words.cells.size()); ++column) {
    const Cell& cell = words.cells[static_cast<std::size_t>(column)];
    auto* item = new QTableWidgetItem{cell.text};
    item->setFont(fontOf(TypeSize::body, cell.bold));
    item->setTextAlignment((cell.isFigure ? Qt::AlignRight : Qt::AlignLeft)
                           | Qt::AlignVCenter);
    if (cell.shape) item->setIcon(shapeIcon(*cell.shape));
    item->setToolTip(cell.text);
    if (column == 0) item->setData(Qt::AccessibleTextRole, words.whole);
    lines = std::max(lines, cell.text.count(QLatin1Char('\n')) + 1);
    setItem(row, column, item);
  }
  setRowHeight(row, static_cast<int>(lines) * fontMetrics().height() + rowPadding);
}

void PlainTable::setRows(std::vector<Row> rows) {
  rows_ = std::move(rows);
  fill();
}

/// The shapes are drawn in the theme's colours.
void PlainTable::changeEvent(QEvent* event) {
  QTableWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) fill();
}

/// A figure's head stands over it.
void PlainTable::fill() {
  setRowCount(0);
  setRowCount(static_cast<int>(rows_.size()));
  for (int row = 0; row < rowCount(); ++row)
    putRow(row, rows_[static_cast<std::size_t>(row)]);
  for (int column = 0; rowCount() > 0 && column < columnCount(); ++column)
    if (const QTableWidgetItem* first = item(0, column))
      horizontalHeaderItem(column)->setTextAlignment(
          Qt::Alignment{first->textAlignment()});
  updateGeometry();
}

QSize PlainTable::sizeHint() const {
  return minimumSizeHint();
}

QSize PlainTable::minimumSizeHint() const {
  constexpr int narrowest = 360;
  const int head = std::max(headHeight, horizontalHeader()->sizeHint().height());
  return {narrowest, head + verticalHeader()->length()};
}

}  // namespace topwire
