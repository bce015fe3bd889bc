#include "app/windows/side_section.h"

#include "app/look/card.h"
#include "app/windows/block_words.h"
#include "app/windows/task_row.h"

#include <QPainter>

namespace topwire {

namespace {

/// A card with its state's colour along the top.
class EdgedCard final : public Card {
public:
  explicit EdgedCard(TaskState state) : Card(QPalette::Light), state_(state) {}

protected:
  void paintEvent(QPaintEvent* event) override {
    Card::paintEvent(event);
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(stateColours(currentTheme(), state_).mark);
    painter.drawRoundedRect(QRectF{0, 0, static_cast<double>(width()), 4}, 2, 2);
  }

private:
  TaskState state_;
};

/// In a state's ink, whichever theme is on.
class FigureLabel final : public QLabel {
public:
  FigureLabel(const QString& text, TaskState state) : QLabel(text), state_(state) {
    setTextFormat(Qt::PlainText);
    setFont(fontOf(TypeSize::figure, true));
    setWordWrap(true);
    setMinimumWidth(1);
    colour();
  }

protected:
  void changeEvent(QEvent* event) override {
    if (event->type() == QEvent::ApplicationPaletteChange) colour();
    QLabel::changeEvent(event);
  }

private:
  void colour() {
    QPalette own;
    own.setColor(QPalette::WindowText, stateColours(currentTheme(), state_).ink);
    setPalette(own);
  }

  TaskState state_;
};

void empty(QLayout& layout) {
  while (QLayoutItem* item = layout.takeAt(0)) {
    if (QWidget* widget = item->widget()) {
      widget->hide();
      widget->deleteLater();
    }
    delete item;
  }
}

}  // namespace

SideSection::SideSection(const QString& title,
                         const char* name,
                         int most,
                         QWidget* parent)
    : QWidget(parent)
    , most_(static_cast<std::size_t>(most))
    , lines_(new QVBoxLayout(this))
    , body_(new QVBoxLayout) {
  setObjectName(QLatin1String(name));
  lines_->setContentsMargins(0, 0, 0, 0);
  lines_->setSpacing(6);
  lines_->addWidget(wrapping(textLabel(title, TypeSize::head, true)));
  body_->setSpacing(8);
  lines_->addLayout(body_);
}

void SideSection::setCards(std::vector<SideCard> cards, bool enabled) {
  setVisible(!cards.empty());
  if (cards == cards_ && enabled == enabled_) return;
  cards_ = std::move(cards);
  enabled_ = enabled;
  refill();
}

void SideSection::refill() {
  empty(*body_);
  const std::size_t shown = unfolded_ ? cards_.size() : std::min(most_, cards_.size());
  for (std::size_t i = 0; i < shown; ++i) body_->addWidget(make(cards_[i]));
  if (cards_.size() > most_) addFold();
}

void SideSection::addFold() {
  const auto more = static_cast<std::int64_t>(cards_.size() - most_);
  QPushButton* fold =
      linkButton(unfolded_ ? tr("Show fewer") : tr("Show %1 more").arg(more));
  fold->setObjectName(QStringLiteral("fold"));
  fold->setFocusPolicy(Qt::StrongFocus);
  connect(fold, &QPushButton::clicked, this, [this] {
    unfolded_ = !unfolded_;
    refill();
  });
  body_->addWidget(fold, 0, Qt::AlignLeft);
}

QWidget* SideSection::make(const SideCard& card) {
  QWidget* box = card.edge ? new EdgedCard{*card.edge} : new QWidget;
  auto* lines = new QVBoxLayout{box};
  if (card.edge)
    lines->setContentsMargins(14, 12, 14, 10);
  else
    lines->setContentsMargins(0, 0, 0, 0);
  lines->setSpacing(3);
  for (const SideLine& line : card.lines) {
    const bool narrow = line.as == SideLine::As::button || line.as == SideLine::As::link
                        || line.as == SideLine::As::state;
    lines->addWidget(make(line), 0, narrow ? Qt::AlignLeft : Qt::Alignment{});
  }
  return box;
}

QWidget* SideSection::make(const SideLine& line) {
  switch (line.as) {
    case SideLine::As::figure:
      return new FigureLabel{line.text, line.state};
    case SideLine::As::name:
      return wrapping(textLabel(line.text, TypeSize::body, true));
    case SideLine::As::words:
      return wrapping(textLabel(line.text));
    case SideLine::As::small:
      return wrapping(mutedLabel(line.text));
    case SideLine::As::state: {
      auto* word = new StateWord;
      word->setState(line.state, line.text);
      return word;
    }
    case SideLine::As::button:
    case SideLine::As::link:
      break;
  }
  return makeButton(line);
}

QPushButton* SideSection::makeButton(const SideLine& line) {
  const bool acts = line.as == SideLine::As::button;
  QPushButton* button = acts ? new QPushButton{line.text} : linkButton(line.text);
  button->setObjectName(line.id);
  button->setFocusPolicy(Qt::StrongFocus);
  button->setEnabled(enabled_ || !acts);  // a link only shows something
  connect(
      button, &QPushButton::clicked, this, [this, id = line.id] { Q_EMIT pressed(id); });
  return button;
}

}  // namespace topwire
