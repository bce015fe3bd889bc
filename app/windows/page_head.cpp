#include "app/windows/page_head.h"

#include "app/look/card.h"

#include <QVBoxLayout>

namespace topwire {

PageHead::PageHead(QWidget* parent)
    : QWidget(parent)
    , line_(new QBoxLayout(QBoxLayout::LeftToRight, this))
    , title_(textLabel({}, TypeSize::title, true))
    , subtitle_(mutedLabel({}, TypeSize::body))
    , buttons_(new QHBoxLayout) {
  title_->setObjectName(QStringLiteral("pageTitle"));
  subtitle_->setObjectName(QStringLiteral("pageSubtitle"));
  subtitle_->setWordWrap(true);
  auto* words = new QVBoxLayout;
  words->setSpacing(0);
  words->addWidget(title_);
  words->addWidget(subtitle_);
  line_->setContentsMargins(0, 0, 0, 0);
  line_->addLayout(words, 1);
  line_->addLayout(buttons_);
  buttons_->setSpacing(8);
  // Narrower than both side by side: they then stand below each other.
  setMinimumWidth(1);
}

void PageHead::arrange() {
  const int beside =
      title_->sizeHint().width() + buttons_->sizeHint().width() + 2 * measure::pageMargin;
  line_->setDirection(width() < beside ? QBoxLayout::TopToBottom
                                       : QBoxLayout::LeftToRight);
}

void PageHead::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

void PageHead::say(const QString& title, const QString& subtitle) {
  title_->setText(title);
  subtitle_->setText(subtitle);
  arrange();
}

void PageHead::addChoice(QWidget* choice) {
  buttons_->addWidget(choice);
}

QPushButton* PageHead::addButton(const QString& words, const char* name) {
  auto* button = new QPushButton{words};
  button->setObjectName(QLatin1String(name));
  buttons_->addWidget(button);
  return button;
}

}  // namespace topwire
