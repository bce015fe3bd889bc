#include "app/windows/block_list.h"

#include "app/look/look.h"
#include "app/look/state_shape.h"
#include "app/windows/block_words.h"
#include "app/words/say.h"

#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

namespace topwire {

namespace {

constexpr int rowHeight = 56;
constexpr int shapeSide = 15;

class BlockDelegate final : public QStyledItemDelegate {
public:
  BlockDelegate(const BlockRowsModel& model, QObject* parent)
      : QStyledItemDelegate(parent), model_(&model) {}

  QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override {
    return {0, rowHeight};
  }

  void paint(QPainter* painter,
             const QStyleOptionViewItem& option,
             const QModelIndex& index) const override {
    const BlockRow& row = model_->at(index.row());
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    paintGround(*painter, option);
    const QRect words = option.rect.adjusted(15, 8, -36, -6);
    paintLine(*painter,
              words,
              0,
              row.name,
              fontOf(TypeSize::body, true),
              option.palette.color(QPalette::Text));
    paintLine(*painter,
              words,
              20,
              row.line,
              fontOf(TypeSize::small),
              option.palette.color(QPalette::PlaceholderText));
    if (row.hasTasks)
      paintShape(*painter,
                 QRectF(option.rect.right() - 28,
                        option.rect.center().y() - shapeSide / 2.0,
                        shapeSide,
                        shapeSide),
                 row.state);
    painter->restore();
  }

private:
  static void paintLine(QPainter& painter,
                        const QRect& words,
                        int down,
                        const QString& text,
                        const QFont& font,
                        const QColor& colour) {
    painter.setFont(font);
    painter.setPen(colour);
    painter.drawText(words.adjusted(0, down, 0, 0),
                     Qt::AlignLeft | Qt::AlignTop,
                     QFontMetrics{font}.elidedText(text, Qt::ElideRight, words.width()));
  }

  static void paintGround(QPainter& painter, const QStyleOptionViewItem& option) {
    if ((option.state & QStyle::State_Selected) == 0) return;
    painter.fillRect(option.rect, option.palette.color(QPalette::Midlight));
    painter.fillRect(QRect{option.rect.topLeft(), QSize{4, option.rect.height()}},
                     option.palette.color(QPalette::Highlight));
    if ((option.state & QStyle::State_HasFocus) == 0) return;
    painter.setPen(QPen{baseColours(currentTheme()).focus, 2});
    painter.drawRoundedRect(QRectF{option.rect}.adjusted(6, 3, -3, -3), 4, 4);
  }

  const BlockRowsModel* model_;
};

/// Views come by urgency, so a block's first one is its most urgent.
const TaskView* mostUrgent(const Session& session, BlockId block) {
  const auto found = std::ranges::find_if(session.views(), [&](const TaskView& view) {
    const auto planting = session.orchard().plantings.find(view.task->key.planting);
    return planting != session.orchard().plantings.end()
           && planting->second.block == block;
  });
  return found == session.views().end() ? nullptr : &*found;
}

}  // namespace

std::vector<BlockRow> blockRows(const Session& session) {
  std::vector<BlockRow> rows;
  for (const Block* block : blocksInOrder(session.orchard())) {
    BlockRow row{
        block->id, QString::fromStdString(block->name), blockLine(session, *block)};
    if (const TaskView* view = mostUrgent(session, block->id)) {
      row.state = view->state;
      row.hasTasks = true;
    }
    rows.push_back(std::move(row));
  }
  return rows;
}

void BlockRowsModel::setRows(std::vector<BlockRow> rows) {
  const bool sameBlocks =
      std::ranges::equal(rows, rows_, {}, &BlockRow::id, &BlockRow::id);
  if (!sameBlocks) {
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
    return;
  }
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (rows[i] == rows_[i]) continue;
    rows_[i] = std::move(rows[i]);
    const QModelIndex place = index(static_cast<int>(i));
    Q_EMIT dataChanged(place, place);
  }
}

int BlockRowsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant BlockRowsModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
  const BlockRow& row = at(index.row());
  switch (role) {
    case Qt::DisplayRole:
      return row.name;
    case Qt::AccessibleTextRole:
      return row.hasTasks ? tr("%1, %2, %3").arg(row.name, row.line, nameOf(row.state))
                          : tr("%1, %2").arg(row.name, row.line);
    case Qt::ToolTipRole:
      return row.hasTasks ? nameOf(row.state) : QVariant{};
    default:
      return {};
  }
}

QModelIndex BlockRowsModel::indexOf(BlockId block) const {
  const auto found = std::ranges::find(rows_, block, &BlockRow::id);
  return found == rows_.end() ? QModelIndex{}
                              : index(static_cast<int>(found - rows_.begin()));
}

BlockList::BlockList(QWidget* parent)
    : QListView(parent), model_(new BlockRowsModel(this)) {
  setObjectName(QStringLiteral("blockList"));
  setAccessibleName(tr("Blocks"));
  setFrameShape(QFrame::NoFrame);
  setModel(model_);
  setItemDelegate(new BlockDelegate{*model_, this});
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(ScrollPerPixel);
  viewport()->setAutoFillBackground(false);
}

void BlockList::setRows(std::vector<BlockRow> rows) {
  const std::optional<BlockId> before = chosen();
  model_->setRows(std::move(rows));
  if (chosen()) return;
  const QModelIndex kept = before ? model_->indexOf(*before) : QModelIndex{};
  setCurrentIndex(kept.isValid() ? kept : model_->index(0));
}

std::optional<BlockId> BlockList::chosen() const {
  const QModelIndex current = currentIndex();
  if (!current.isValid()) return std::nullopt;
  return model_->at(current.row()).id;
}

void BlockList::choose(BlockId block) {
  setCurrentIndex(model_->indexOf(block));
}

void BlockList::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QListView::currentChanged(current, previous);
  Q_EMIT chosenChanged();
}

}  // namespace topwire
