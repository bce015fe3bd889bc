#include "app/windows/rail.h"

#include "app/look/card.h"

#include <QEvent>
#include <QPainter>

namespace topwire {

namespace {

constexpr int buttonHeight = 44;
constexpr int iconSide = 20;
constexpr int leftMargin = 8;

/// A page's place in the rail. The chosen one is cut out of it, in the page's own ground.
class RailButton final : public QAbstractButton {
public:
  RailButton(Icon icon, const QString& name, QWidget* parent)
      : QAbstractButton(parent), icon_(icon) {
    setText(name);
    setCheckable(true);
    setFocusPolicy(Qt::TabFocus);
    setFixedHeight(buttonHeight);
    setAttribute(Qt::WA_Hover);
    setProperty("ownFocus", true);
  }

  QSize sizeHint() const override { return {measure::railWidth, buttonHeight}; }

protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    if (isChecked()) paintCutOut(painter);
    const QColor ink = inkOf();
    const QRectF where{
        leftMargin + 14.0, (height() - iconSide) / 2.0, iconSide, iconSide};
    paintIcon(painter, where, icon_, ink);
    painter.setPen(ink);
    painter.setFont(fontOf(TypeSize::body, isChecked()));
    painter.drawText(rect().adjusted(static_cast<int>(where.right()) + 10, 0, 0, 0),
                     Qt::AlignVCenter | Qt::TextShowMnemonic,
                     text());
    if (hasFocus() && window()->testAttribute(Qt::WA_KeyboardFocusChange))
      paintFocus(painter);
  }

private:
  QColor inkOf() const {
    const BaseColours& colours = baseColours(currentTheme());
    if (isChecked()) return colours.text;
    return colours.railText;
  }

  void paintCutOut(QPainter& painter) const {
    const BaseColours& colours = baseColours(currentTheme());
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours.window);
    painter.drawRoundedRect(QRectF{rect()}.adjusted(leftMargin, 0, 12, 0),
                            measure::cardRadius,
                            measure::cardRadius);
    painter.setBrush(colours.accent);
    painter.drawRoundedRect(QRectF(leftMargin, 6, 4, height() - 12), 2, 2);
  }

  void paintFocus(QPainter& painter) const {
    const BaseColours& colours = baseColours(currentTheme());
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{isChecked() ? colours.focus : colours.railText, 2});
    painter.drawRoundedRect(QRectF{rect()}.adjusted(leftMargin + 3, 3, -3, -3), 4, 4);
  }

  Icon icon_;
};

QLabel* railLabel(TypeSize size, bool bold, const char* name) {
  QLabel* label = textLabel({}, size, bold);
  label->setObjectName(QLatin1String(name));
  label->setWordWrap(true);
  return label;
}

}  // namespace

Rail::Rail(QWidget* parent)
    : QWidget(parent)
    , name_(railLabel(TypeSize::name, true, "orchardName"))
    , holds_(railLabel(TypeSize::small, false, "orchardHolds"))
    , note_(railLabel(TypeSize::small, false, "railNote"))
    , pages_(new QVBoxLayout)
    , below_(new QVBoxLayout)
    , group_(new QButtonGroup(this)) {
  setFixedWidth(measure::railWidth);
  auto* words = new QVBoxLayout;
  words->setContentsMargins(20, 14, 8, 12);
  words->setSpacing(2);
  words->addWidget(name_);
  words->addWidget(holds_);
  words->addWidget(note_);
  auto* all = new QVBoxLayout{this};
  all->setContentsMargins(0, 0, 0, 12);
  all->setSpacing(0);
  all->addLayout(words);
  all->addLayout(pages_);
  all->addStretch();
  all->addLayout(below_);
  pages_->setSpacing(4);
  colourWords();
  connect(group_, &QButtonGroup::idClicked, this, &Rail::chosen);
}

QAbstractButton* Rail::makeButton(int page, Icon icon, const QString& name) {
  auto* button = new RailButton{icon, name, this};
  button->setObjectName(QStringLiteral("page%1").arg(page));
  group_->addButton(button, page);
  return button;
}

void Rail::addPage(int page, Icon icon, const QString& name) {
  pages_->addWidget(makeButton(page, icon, name));
}

void Rail::addPageBelow(int page, Icon icon, const QString& name) {
  below_->addWidget(makeButton(page, icon, name));
}

void Rail::choose(int page) {
  if (QAbstractButton* button = group_->button(page)) button->setChecked(true);
}

void Rail::describe(const QString& name, const QString& holds, const QString& note) {
  name_->setText(name);
  holds_->setText(holds);
  note_->setText(note);
  note_->setVisible(!note.isEmpty());
}

void Rail::colourWords() {
  const BaseColours& colours = baseColours(currentTheme());
  for (QLabel* label : {name_, holds_, note_}) {
    QPalette words = label->palette();
    words.setColor(QPalette::WindowText,
                   label == name_ ? colours.railText : colours.railMuted);
    label->setPalette(words);
  }
}

void Rail::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) colourWords();
  QWidget::changeEvent(event);
}

void Rail::paintEvent(QPaintEvent*) {
  QPainter{this}.fillRect(rect(), baseColours(currentTheme()).rail);
}

}  // namespace topwire
