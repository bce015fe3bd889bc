#include "app/windows/notice_bar.h"

#include "app/look/card.h"

#include <QHBoxLayout>
#include <QPainter>

namespace topwire {

namespace {

constexpr int markWidth = 4;

QPushButton* slimButton(const char* name) {
  auto* button = new QPushButton;
  button->setObjectName(QLatin1String(name));
  return button;
}

}  // namespace

NoticeBar::NoticeBar(QWidget* parent)
    : QWidget(parent)
    , text_(textLabel({}))
    , remedy_(slimButton("noticeRemedy"))
    , dismiss_(slimButton("noticeDismiss")) {
  setObjectName(QStringLiteral("noticeBar"));
  text_->setObjectName(QStringLiteral("noticeText"));
  text_->setWordWrap(true);
  dismiss_->setText(tr("Put &away"));
  auto* line = new QHBoxLayout{this};
  line->setContentsMargins(measure::pageMargin, 6, measure::pageMargin, 6);
  line->addWidget(text_, 1);
  line->addWidget(remedy_);
  line->addWidget(dismiss_);
  connect(remedy_, &QPushButton::clicked, this, [this] {
    const std::function<void()> deed = deed_;
    clear();
    if (deed) deed();
  });
  connect(dismiss_, &QPushButton::clicked, this, &NoticeBar::clear);
  clear();
}

void NoticeBar::tell(const QString& text, const Remedy& remedy) {
  if (trouble_) return;
  put(text, remedy);
}

void NoticeBar::trouble(const QString& text, const Remedy& remedy) {
  trouble_ = true;
  put(text, remedy);
}

void NoticeBar::put(const QString& text, const Remedy& remedy) {
  text_->setText(text);
  deed_ = remedy.deed;
  remedy_->setText(remedy.words);
  remedy_->setVisible(!remedy.words.isEmpty());
  setVisible(true);
  update();
}

void NoticeBar::clear() {
  trouble_ = false;
  deed_ = nullptr;
  text_->clear();
  setVisible(false);
}

QString NoticeBar::text() const {
  return text_->text();
}

void NoticeBar::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  painter.fillRect(rect(), palette().color(QPalette::Base));
  painter.setPen(palette().color(QPalette::Mid));
  painter.drawLine(rect().topLeft(), rect().topRight());
  if (trouble_)
    painter.fillRect(0, 0, markWidth, height(), palette().color(QPalette::Text));
}

}  // namespace topwire
