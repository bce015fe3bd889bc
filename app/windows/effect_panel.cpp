#include "app/windows/effect_panel.h"

#include "app/windows/block_words.h"
#include "app/words/say.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <map>
#include <tuple>

namespace topwire {

namespace {

using Kind = PlanDifference::Kind;

constexpr int mostLines = 6;

QString daysOn(int days) {
  const QString count = sayCounted(
      std::abs(days), phrase("EffectPanel", "%1 day"), phrase("EffectPanel", "%1 days"));
  return days > 0 ? EffectPanel::tr("%1 later").arg(count)
                  : EffectPanel::tr("%1 earlier").arg(count);
}

QString moveText(int opens, int closes) {
  if (opens == closes) return EffectPanel::tr("moves, %1").arg(daysOn(opens));
  if (closes == 0) return EffectPanel::tr("opens %1").arg(daysOn(opens));
  if (opens == 0) return EffectPanel::tr("closes %1").arg(daysOn(closes));
  return EffectPanel::tr("opens %1, closes %2").arg(daysOn(opens), daysOn(closes));
}

QString changeText(const PlanDifference& difference) {
  switch (difference.kind) {
    case Kind::appeared:
      return EffectPanel::tr("comes");
    case Kind::dropped:
      return EffectPanel::tr("goes");
    case Kind::keptUnasked:
      return EffectPanel::tr("stays for its ticks alone");
    case Kind::moved:
      break;
  }
  return moveText(difference.opensShift, difference.closesShift);
}

}  // namespace

EffectPanel::EffectPanel(Session& session, const QString& keep, QWidget* parent)
    : Card(QPalette::Base, parent)
    , session_(&session)
    , summary_(textLabel({}, TypeSize::body, true))
    , list_(textLabel({}, TypeSize::small))
    , keep_(new QPushButton(keep))
    , leave_(new QPushButton(tr("Leave it as it &was"))) {
  setObjectName(QStringLiteral("effectPanel"));
  summary_->setObjectName(QStringLiteral("effectSummary"));
  list_->setObjectName(QStringLiteral("effectList"));
  keep_->setObjectName(QStringLiteral("keepChange"));
  leave_->setObjectName(QStringLiteral("leaveChange"));
  keep_->setProperty("main", true);
  for (QLabel* label : {summary_, list_}) {
    label->setWordWrap(true);
    label->setMinimumWidth(1);
  }
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(keep_);
  buttons->addWidget(leave_);
  buttons->addStretch();
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(16, 10, 16, 12);
  lines->setSpacing(6);
  lines->addWidget(summary_);
  lines->addWidget(list_);
  lines->addLayout(buttons);
  connect(keep_, &QPushButton::clicked, this, &EffectPanel::kept);
  connect(leave_, &QPushButton::clicked, this, &EffectPanel::left);
}

void EffectPanel::showNothing(const QString& words) {
  summary_->setText(words);
  list_->setVisible(false);
  keep_->setEnabled(false);
  leave_->setEnabled(false);
}

void EffectPanel::showFault(const QString& words) {
  showNothing(words);
  leave_->setEnabled(true);
}

void EffectPanel::show(const PlanEffect& effect, const Programme& after) {
  QStringList parts;
  for (const Sentence& part : summaryOf(effect)) parts << say(part);
  summary_->setText(parts.join(QStringLiteral(", ")) + QLatin1Char('.'));
  const QStringList lines = linesOf(effect, after);
  list_->setText(lines.join(QLatin1Char('\n')));
  list_->setVisible(!lines.isEmpty());
  keep_->setEnabled(!session_->isReadOnly());
  leave_->setEnabled(true);
}

/// A line for all tasks of one operation to which the same happens.
QStringList EffectPanel::linesOf(const PlanEffect& effect, const Programme& after) const {
  using Same = std::tuple<std::string, Kind, int, int>;
  std::map<Same, int> counts;
  std::vector<const PlanDifference*> firsts;
  for (const PlanDifference& one : effect.differences) {
    const Same same{one.task.operation, one.kind, one.opensShift, one.closesShift};
    if (++counts[same] == 1) firsts.push_back(&one);
  }
  QStringList lines;
  for (const PlanDifference* one : firsts) {
    const Operation* operation = after.find(one->task.operation);
    if (operation == nullptr)
      operation =
          topwire::operationOf(session_->orchard(), session_->programmes(), one->task);
    const QString name =
        operation ? say(operation->name) : QString::fromStdString(one->task.operation);
    const int count =
        counts[{one->task.operation, one->kind, one->opensShift, one->closesShift}];
    lines << (count == 1
                  ? tr("%1: %2").arg(name, changeText(*one))
                  : tr("%1, %2 times: %3").arg(name, countText(count), changeText(*one)));
  }
  if (lines.size() <= mostLines) return lines;
  const auto more = lines.size() - mostLines;
  lines.resize(mostLines);
  return lines << tr("and %1 more").arg(countText(more));
}

}  // namespace topwire
