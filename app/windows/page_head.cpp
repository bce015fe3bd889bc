#include "app/windows/page_head.h"

#include "app/look/card.h"

#include <QVBoxLayout>

namespace topwire {

PageHead::PageHead(QWidget* parent)
    : QWidget(parent)
    , title_(textLabel({}, TypeSize::title, true))
    , subtitle_(mutedLabel({}, TypeSize::body))
    , buttons_(new QHBoxLayout) {
  title_->setObjectName(QStringLiteral("pageTitle"));
  subtitle_->setObjectName(QStringLiteral("pageSubtitle"));
  auto* words = new QVBoxLayout;
  words->setSpacing(0);
  words->addWidget(title_);
  words->addWidget(subtitle_);
  auto* line = new QHBoxLayout{this};
  line->setContentsMargins(0, 0, 0, 0);
  line->addLayout(words, 1);
  line->addLayout(buttons_);
  buttons_->setSpacing(8);
}

void PageHead::say(const QString& title, const QString& subtitle) {
  title_->setText(title);
  subtitle_->setText(subtitle);
}

QPushButton* PageHead::addButton(const QString& words, const char* name) {
  auto* button = new QPushButton{words};
  button->setObjectName(QLatin1String(name));
  buttons_->addWidget(button);
  return button;
}

}  // namespace topwire
