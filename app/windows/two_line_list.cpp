#include "app/windows/two_line_list.h"

#include "app/look/look.h"
#include "app/look/tokens.h"

#include <QPainter>
#include <QStyledItemDelegate>

namespace topwire {

namespace {

constexpr int entryHeight = 46;
constexpr int headingHeight = 30;
constexpr int keyRole = Qt::UserRole;
constexpr int lineRole = Qt::UserRole + 1;

bool isHeading(const QModelIndex& index) {
  return index.data(keyRole).isNull();
}

class EntryDelegate : public QStyledItemDelegate {
public:
  using QStyledItemDelegate::QStyledItemDelegate;

  QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override {
    const int name = QFontMetrics{fontOf(TypeSize::body, true)}.height();
    const int line = QFontMetrics{fontOf(TypeSize::small)}.height();
    return {0,
            isHeading(index) ? qMax(headingHeight, line + 12)
                             : qMax(entryHeight, name + line + 12)};
  }

  void paint(QPainter* painter,
             const QStyleOptionViewItem& option,
             const QModelIndex& index) const override {
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const QRect words = option.rect.adjusted(16, 6, -10, -4);
    if (isHeading(index))
      paintHeading(*painter, option, index.data().toString());
    else
      paintEntry(*painter, option, index, words);
    painter->restore();
  }

private:
  static void paintHeading(QPainter& painter,
                           const QStyleOptionViewItem& option,
                           const QString& words) {
    painter.fillRect(option.rect, option.palette.color(QPalette::Window));
    painter.setFont(fontOf(TypeSize::small, true));
    painter.setPen(option.palette.color(QPalette::PlaceholderText));
    painter.drawText(option.rect.adjusted(16, 0, -10, 0), Qt::AlignVCenter, words);
  }

  static void paintEntry(QPainter& painter,
                         const QStyleOptionViewItem& option,
                         const QModelIndex& index,
                         const QRect& words) {
    paintGround(painter, option);
    const QFont name = fontOf(TypeSize::body, true);
    paintLine(painter, words, index.data().toString(), name, QPalette::Text, option);
    paintLine(painter,
              words.adjusted(0, QFontMetrics{name}.height() + 1, 0, 0),
              index.data(lineRole).toString(),
              fontOf(TypeSize::small),
              QPalette::PlaceholderText,
              option);
  }

  static void paintLine(QPainter& painter,
                        const QRect& where,
                        const QString& text,
                        const QFont& font,
                        QPalette::ColorRole role,
                        const QStyleOptionViewItem& option) {
    painter.setFont(font);
    painter.setPen(option.palette.color(role));
    painter.drawText(where,
                     Qt::AlignLeft | Qt::AlignTop,
                     QFontMetrics{font}.elidedText(text, Qt::ElideRight, where.width()));
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
};

}  // namespace

TwoLineList::TwoLineList(QWidget* parent) : QListWidget(parent) {
  setFrameShape(QFrame::NoFrame);
  setItemDelegate(new EntryDelegate{this});
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(ScrollPerPixel);
  viewport()->setAutoFillBackground(false);
}

void TwoLineList::addHeading(const QString& words) {
  auto* item = new QListWidgetItem{words};
  item->setFlags(Qt::NoItemFlags);
  addItem(item);
}

void TwoLineList::addEntry(const QString& key, const QString& name, const QString& line) {
  auto* item = new QListWidgetItem{name};
  item->setData(keyRole, key);
  item->setData(lineRole, line);
  item->setData(Qt::AccessibleTextRole, name + QStringLiteral(", ") + line);
  item->setToolTip(line);
  addItem(item);
}

QString TwoLineList::chosen() const {
  return currentItem() == nullptr ? QString{} : currentItem()->data(keyRole).toString();
}

bool TwoLineList::choose(const QString& key) {
  for (int i = 0; i < count(); ++i) {
    const QVariant there = item(i)->data(keyRole);
    if (there.isNull() || there.toString() != key) continue;
    setCurrentRow(i);
    return true;
  }
  return false;
}

int TwoLineList::contentHeight() const {
  int height = 0;
  for (int i = 0; i < count(); ++i) height += sizeHintForRow(i);
  return height;
}

}  // namespace topwire
