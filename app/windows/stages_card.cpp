#include "app/windows/block_panels.h"
#include "app/windows/block_words.h"
#include "app/windows/day_field.h"
#include "app/words/say.h"

#include <QGridLayout>
#include <QHBoxLayout>

#include <cstdlib>
#include <limits>

namespace topwire {

namespace {

QString kindText(const StageEstimate& stage) {
  switch (stage.kind) {
    case StageKind::observed:
      return StagesCard::tr("seen");
    case StageKind::byOffset:
      return StagesCard::tr("a set number of days from bloom");
    case StageKind::expected:
      break;
  }
  return StagesCard::tr("%1 to %2")
      .arg(shortDayText(stage.early), shortDayText(stage.late));
}

void addStage(QGridLayout& grid, int row, const StageEstimate& estimate, Day today) {
  const Stage* stage = stageByCode(estimate.bbch);
  if (stage == nullptr) return;
  const bool seen = estimate.kind == StageKind::observed;
  const bool next = !seen && estimate.date >= today;
  grid.addWidget(seen || next ? textLabel(say(stage->name), TypeSize::body, seen)
                              : mutedLabel(say(stage->name), TypeSize::body),
                 row,
                 0);
  grid.addWidget(textLabel(shortDayText(estimate.date)), row, 1);
  grid.addWidget(mutedLabel(kindText(estimate)), row, 2);
}

}  // namespace

StagesCard::StagesCard(Session& session, QWidget* parent)
    : Card(QPalette::Light, parent)
    , session_(&session)
    , plantings_(new QComboBox)
    , lines_(new QVBoxLayout)
    , entry_(new QWidget)
    , stage_(new QComboBox)
    , day_(dayField())
    , problem_(textLabel({}, TypeSize::small, true)) {
  setObjectName(QStringLiteral("stagesCard"));
  plantings_->setObjectName(QStringLiteral("stagesOf"));
  plantings_->setAccessibleName(tr("Planting whose stages are shown"));
  stage_->setObjectName(QStringLiteral("seenStage"));
  stage_->setAccessibleName(tr("Stage seen"));
  stage_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  stage_->setMinimumContentsLength(8);
  plantings_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  plantings_->setMinimumContentsLength(14);
  day_->setObjectName(QStringLiteral("seenDay"));
  day_->setAccessibleName(tr("Day it was seen"));
  problem_->setObjectName(QStringLiteral("seenProblem"));
  problem_->setWordWrap(true);
  auto* see = new QPushButton{tr("We saw &it")};
  see->setObjectName(QStringLiteral("seeStage"));

  auto* head = new QHBoxLayout;
  head->addWidget(textLabel(tr("Stages this season"), TypeSize::name, true), 1);
  head->addWidget(plantings_);
  auto* entry = new QHBoxLayout{entry_};
  entry->setContentsMargins(0, 4, 0, 4);
  entry->addWidget(stage_, 1);
  entry->addWidget(day_);
  entry->addWidget(see);
  auto* all = new QVBoxLayout{this};
  all->setContentsMargins(16, 12, 16, 14);
  all->setSpacing(6);
  all->addLayout(head);
  all->addWidget(entry_);
  all->addWidget(problem_);
  all->addLayout(lines_);
  all->addStretch();
  connect(plantings_, &QComboBox::currentIndexChanged, this, &StagesCard::showStages);
  connect(see, &QPushButton::clicked, this, &StagesCard::see);
}

void StagesCard::setBlock(BlockId block) {
  const QSignalBlocker quiet{plantings_};
  const bool same = block == block_;
  const int before = plantings_->currentIndex();
  block_ = block;
  ids_.clear();
  plantings_->clear();
  for (const Planting* planting : plantingsOf(session_->orchard(), block)) {
    ids_.push_back(planting->id);
    plantings_->addItem(stockText(*planting));
  }
  if (same && before >= 0 && before < plantings_->count())
    plantings_->setCurrentIndex(before);
  plantings_->setVisible(plantings_->count() > 1);
  showStages();
}

const Planting* StagesCard::planting() const {
  const int index = plantings_->currentIndex();
  if (index < 0 || index >= static_cast<int>(ids_.size())) return nullptr;
  const auto& all = session_->orchard().plantings;
  const auto found = all.find(ids_[static_cast<std::size_t>(index)]);
  return found == all.end() ? nullptr : &found->second;
}

void StagesCard::showStages() {
  emptyOut(*lines_);
  problem_->setVisible(false);
  const Planting* shown = planting();
  entry_->setVisible(shown != nullptr && !session_->isReadOnly());
  if (shown == nullptr) {
    lines_->addWidget(mutedLabel(tr("Stages come with a planting."), TypeSize::body));
    return;
  }
  const Outlook outlook = session_->outlook(*shown, currentSeason(*session_));
  auto* box = new QWidget;
  auto* grid = new QGridLayout{box};
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setVerticalSpacing(3);
  grid->setHorizontalSpacing(12);
  grid->setColumnStretch(2, 1);
  int row = 0;
  for (const StageEstimate& stage : outlook.stages)
    addStage(*grid, row++, stage, session_->today());
  lines_->addWidget(box);
  if (!outlook.ladderHolds) {
    QLabel* note = mutedLabel(
        tr("The winters at this station are warmer than those the heat sums were "
           "measured in. Give your own dates of three past seasons on the Weather page: "
           "they take the place of these."));
    note->setWordWrap(true);
    lines_->addWidget(note);
  }
  offerStages(outlook);
}

/// The one expected nearest to today stands chosen, so that the usual case is one click.
void StagesCard::offerStages(const Outlook& outlook) {
  stage_->clear();
  int nearest = 0;
  int least = std::numeric_limits<int>::max();
  for (const StageEstimate& estimate : outlook.stages) {
    const Stage* stage = stageByCode(estimate.bbch);
    if (stage == nullptr) continue;
    stage_->addItem(say(stage->name), estimate.bbch);
    const int away = std::abs(daysBetween(session_->today(), estimate.date));
    if (estimate.kind == StageKind::observed || away >= least) continue;
    least = away;
    nearest = stage_->count() - 1;
  }
  stage_->setCurrentIndex(nearest);
  day_->setDate(dateOf(session_->today()));
}

void StagesCard::see() {
  const Planting* shown = planting();
  if (shown == nullptr) return;
  Observation seen;
  seen.id = session_->ids().next<ObservationId>();
  seen.planting = shown->id;
  seen.bbch = stage_->currentData().toInt();
  seen.day = dayOf(day_->date());
  const Problems problems = session_->perform(observeStage(session_->orchard(), seen));
  if (problems.empty()) return;
  problem_->setText(say(problems.front().sentence));
  problem_->setVisible(true);
}

}  // namespace topwire
