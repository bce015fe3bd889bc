#include "app/windows/crew_head.h"

#include "app/look/card.h"
#include "app/look/icons.h"
#include "app/windows/today_words.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace topwire {

namespace {

constexpr int largeTarget = 44;
constexpr int mostWorkers = 99;

}  // namespace

CrewHead::CrewHead(QWidget* parent)
    : QWidget(parent)
    , name_(textLabel({}, TypeSize::head, true))
    , count_(textLabel({}, TypeSize::title, true))
    , words_(mutedLabel({})) {
  setFixedWidth(crewHeadWidth);
  name_->setWordWrap(true);
  name_->setMinimumWidth(1);
  words_->setWordWrap(true);
  words_->setMinimumWidth(1);
  count_->setObjectName(QStringLiteral("turnout"));
  count_->setAlignment(Qt::AlignCenter);
  auto* steps = new QHBoxLayout;
  steps->setSpacing(0);
  fewer_ = addStep(*steps, false);
  steps->addWidget(count_, 1);
  more_ = addStep(*steps, true);
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(0, 4, 0, 0);
  lines->setSpacing(4);
  lines->addWidget(name_);
  lines->addLayout(steps);
  lines->addWidget(words_);
  lines->addStretch();
}

QPushButton* CrewHead::addStep(QBoxLayout& to, bool up) {
  auto* button = new QPushButton;
  button->setObjectName(up ? QStringLiteral("turnoutMore")
                           : QStringLiteral("turnoutFewer"));
  button->setIcon(iconFor(up ? Icon::plus : Icon::minus));
  button->setFixedSize(largeTarget, largeTarget);
  to.addWidget(button);
  connect(button, &QPushButton::clicked, this, [this, up] {
    Q_EMIT turnoutWanted(workers_ + (up ? 1 : -1));
  });
  return button;
}

void CrewHead::setLane(const QString& name, const CrewLane& lane, bool mayChange) {
  workers_ = lane.workers;
  name_->setText(name);
  count_->setText(QString::number(lane.workers));
  words_->setText(turnoutText(lane));
  fewer_->setEnabled(mayChange && lane.workers > 0);
  more_->setEnabled(mayChange && lane.workers < mostWorkers);
  const auto describe = [&](QPushButton& button, const QString& deed) {
    button.setAccessibleName(deed);
    button.setToolTip(deed);
    button.setAccessibleDescription(
        tr("%1 turned out, %2").arg(lane.workers).arg(words_->text()));
  };
  describe(*fewer_, tr("One fewer in %1").arg(name));
  describe(*more_, tr("One more in %1").arg(name));
}

}  // namespace topwire
