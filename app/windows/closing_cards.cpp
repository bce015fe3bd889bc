#include "app/windows/closing_cards.h"

#include "app/look/shape_mark.h"
#include "app/windows/block_panels.h"
#include "app/windows/block_words.h"
#include "app/words/say.h"
#include "core/closing/review_words.h"
#include "core/orchard/measure_text.h"

#include <QHBoxLayout>
#include <QPushButton>

namespace topwire {

namespace {

constexpr int indent = 20;

bool isToldAlways(const ReviewedTask& task) {
  return task.outcome != TaskOutcome::done && task.outcome != TaskOutcome::ahead;
}

QString rowsLeftText(const ReviewedTask& task) {
  const QString rows = QString::fromStdString(rowsText(task.rowsLeft));
  return task.rowsLeft == task.rows ? DoneCard::tr("none of rows %1").arg(rows)
                                    : DoneCard::tr("rows %1 left").arg(rows);
}

QString detailOf(const ReviewedTask& task) {
  switch (task.outcome) {
    case TaskOutcome::setAside:
      return QString::fromStdString(task.reason);
    case TaskOutcome::missed:
    case TaskOutcome::partDone:
      return rowsLeftText(task);
    case TaskOutcome::ahead:
      return DoneCard::tr("to %1").arg(shortDayText(task.closes));
    case TaskOutcome::done:
      break;
  }
  return task.hoursNoted > 0 ? DoneCard::tr("%1 noted").arg(hoursText(task.hoursNoted))
                             : QString{};
}

QLabel* inked(const QString& words, TaskState state) {
  QLabel* label = textLabel(words, TypeSize::body, true);
  QPalette ink = label->palette();
  ink.setColor(QPalette::WindowText, stateColours(currentTheme(), state).ink);
  label->setPalette(ink);
  return label;
}

/// "Creek 1: Gala · second leaf".
QString headOf(const Orchard& orchard, PlantingId planting, int leaf) {
  return StepCard::tr("%1 · %2").arg(plantingName(orchard, planting), leafText(leaf));
}

}  // namespace

QString plantingName(const Orchard& orchard, PlantingId planting) {
  const Planting& found = orchard.plantings.at(planting);
  const QString name =
      StepCard::tr("%1: %2").arg(QString::fromStdString(blockOf(orchard, found).name),
                                 QString::fromStdString(found.cultivar));
  return found.kind == PlantingKind::main
             ? name
             : StepCard::tr("%1, %2").arg(name, nameOf(found.kind));
}

StepCard::StepCard(int number, const QString& name, const QString& about)
    : Card(QPalette::Light), lines_(new QVBoxLayout{this}) {
  lines_->setContentsMargins(16, 12, 16, 16);
  lines_->setSpacing(8);
  lines_->addWidget(textLabel(tr("%1. %2").arg(number).arg(name), TypeSize::head, true));
  lines_->addWidget(wrapping(mutedLabel(about, TypeSize::body)));
}

DoneCard::DoneCard(Session& session)
    : StepCard(1,
               tr("What was done"),
               tr("Work that was missed, done in part or set aside, by planting."))
    , session_(&session)
    , all_(new QCheckBox(tr("Show what was &done and lies ahead, too")))
    , plantings_(new QVBoxLayout) {
  setObjectName(QStringLiteral("doneCard"));
  all_->setObjectName(QStringLiteral("showAllWork"));
  plantings_->setSpacing(4);
  lines().addWidget(all_);
  lines().addLayout(plantings_);
  connect(all_, &QCheckBox::toggled, this, &DoneCard::fill);
}

void DoneCard::show(const SeasonReview& review) {
  review_ = review;
  fill();
}

void DoneCard::fill() {
  emptyOut(*plantings_);
  for (const PlantingReview& review : review_.plantings) addPlanting(review);
}

void DoneCard::addPlanting(const PlantingReview& review) {
  auto* work = new QWidget;
  auto* lines = new QVBoxLayout{work};
  lines->setContentsMargins(0, 0, 0, 0);
  lines->setSpacing(4);
  for (const ReviewedWork& each : byWork(review))
    if (all_->isChecked() || isToldAlways(each.last)) lines->addWidget(workLine(each));
  const bool any = lines->count() > 0;
  plantings_->addSpacing(6);
  plantings_->addWidget(plantingHead(review, any ? work : nullptr));
  plantings_->addWidget(wrapping(
      mutedLabel(say(countsOf(review)) + QStringLiteral("  ") + say(hoursOf(review)),
                 TypeSize::body)));
  plantings_->addWidget(work);
  work->setVisible(any && open_.contains(review.planting));
}

/// The work of all plantings would push the other steps out of reach, so that each one's
/// is unfolded when it is asked for.
QWidget* DoneCard::plantingHead(const PlantingReview& review, QWidget* work) {
  const QString name = headOf(session_->orchard(), review.planting, review.leaf);
  auto* head = new QWidget;
  auto* line = new QHBoxLayout{head};
  line->setContentsMargins(0, 0, 0, 0);
  line->addWidget(wrapping(textLabel(name, TypeSize::name, true)), 1);
  if (work == nullptr) return head;
  auto* unfold = new QPushButton{tr("Show the work")};
  unfold->setCheckable(true);
  unfold->setChecked(open_.contains(review.planting));
  unfold->setAccessibleName(tr("Show the work of %1").arg(name));
  line->addWidget(unfold);
  connect(
      unfold, &QPushButton::toggled, work, [this, work, id = review.planting](bool on) {
        if (on)
          open_.insert(id);
        else
          open_.erase(id);
        work->setVisible(on);
      });
  return head;
}

QWidget* DoneCard::workLine(const ReviewedWork& work) const {
  const ReviewedTask& task = work.last;
  auto* line = new QWidget;
  auto* parts = new QHBoxLayout{line};
  parts->setContentsMargins(indent, 2, 0, 2);
  parts->setSpacing(8);
  parts->addWidget(new ShapeMark{task.state}, 0, Qt::AlignTop);
  parts->addWidget(inked(say(nameOf(task.outcome)), task.state), 0, Qt::AlignTop);
  const QString detail = detailOf(task);
  QString title = capitalised(say(task.title));
  if (work.visits > 1) title = tr("%1 · %2 visits").arg(title).arg(work.visits);
  parts->addWidget(
      wrapping(textLabel(detail.isEmpty() ? title : tr("%1 · %2").arg(title, detail))),
      1);
  return line;
}

MeasuresCard::MeasuresCard(Session& session)
    : StepCard(2,
               tr("What is still to be measured"),
               tr("Trees measured in dormancy tell next season's class and fruit. "
                  "Closing doesn't wait for them."))
    , session_(&session)
    , plantings_(new QVBoxLayout) {
  setObjectName(QStringLiteral("measuresCard"));
  plantings_->setSpacing(6);
  lines().addLayout(plantings_);
}

void MeasuresCard::show(const SeasonReview& review) {
  emptyOut(*plantings_);
  for (const PlantingReview& planting : review.plantings) {
    QStringList wanted;
    for (const WantedMeasure& measure : planting.measures)
      if (!measure.measured) wanted << say(nameOf(measure.measure));
    if (wanted.isEmpty()) continue;
    auto* line = new QWidget;
    auto* parts = new QHBoxLayout{line};
    parts->setContentsMargins(0, 0, 0, 0);
    const QString name = plantingName(session_->orchard(), planting.planting);
    parts->addWidget(wrapping(textLabel(tr("%1: %2").arg(
                         name, wanted.join(QStringLiteral(", ")).toLower()))),
                     1);
    auto* type = new QPushButton{tr("Measure")};
    type->setAccessibleName(tr("Measure %1").arg(name));
    type->setEnabled(!session_->isReadOnly());
    parts->addWidget(type);
    const PlantingId id = planting.planting;
    connect(type, &QPushButton::clicked, this, [this, id] { Q_EMIT measureWanted(id); });
    plantings_->addWidget(line);
  }
  if (plantings_->count() == 0)
    plantings_->addWidget(textLabel(tr("Everything was measured.")));
}

}  // namespace topwire
