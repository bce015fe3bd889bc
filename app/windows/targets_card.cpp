#include "app/windows/targets_card.h"

#include "app/models/measure_scene.h"
#include "app/windows/block_panels.h"
#include "app/windows/block_words.h"
#include "app/windows/measure_view.h"
#include "app/words/say.h"
#include "core/edit/target_deeds.h"
#include "core/orchard/measure_text.h"

#include <QHBoxLayout>

#include <algorithm>

namespace topwire {

namespace {

constexpr int roomForFigure = 190;

QString textOf(Length length, Measure measure, UnitSystem units) {
  return QString::fromStdString(
      measuredText(static_cast<double>(length.inMicrometres()), measure, units));
}

QString fruitText(const FruitRange& range) {
  if (range.to == 0) return TargetsCard::tr("none");
  if (range.from == range.to) return countText(range.to);
  return TargetsCard::tr("%1 to %2").arg(countText(range.from), countText(range.to));
}

QString aboutFruit(const FruitTarget& fruit, UnitSystem units) {
  if (fruit.byGrower) return TargetsCard::tr("a tree; your own figure");
  if (fruit.keep.to == 0) return TargetsCard::tr("in the %1").arg(leafText(fruit.leaf));
  if (!fruit.trunk) return TargetsCard::tr("a tree, by leaf and class");
  return TargetsCard::tr("a tree, with a trunk of %1")
      .arg(textOf(fruit.trunk->diameter, Measure::trunkDiameter, units));
}

QString nitrogenText(const Nutrition& nitrogen, UnitSystem units) {
  return QString::fromStdString(amountText(nitrogen, units));
}

}  // namespace

TargetsCard::TargetsCard(Session& session, QWidget* parent)
    : Card(QPalette::Light, parent)
    , session_(&session)
    , plantings_(new QComboBox)
    , measure_(new QPushButton(tr("&Measurements")))
    , why_(new QPushButton(tr("Why these fi&gures")))
    , nothing_(wrapping(mutedLabel({}, TypeSize::body)))
    , body_(new QWidget)
    , figures_(new QGridLayout)
    , class_(wrapping(textLabel({})))
    , keep_(new QPushButton)
    , change_(new QPushButton)
    , reasons_(new QWidget)
    , reasonLines_(new QVBoxLayout(reasons_))
    , chart_(new MeasureView) {
  setObjectName(QStringLiteral("targetsCard"));
  plantings_->setObjectName(QStringLiteral("targetsOf"));
  measure_->setObjectName(QStringLiteral("measureWay"));
  why_->setObjectName(QStringLiteral("targetsWhy"));
  class_->setObjectName(QStringLiteral("classSuggested"));
  keep_->setObjectName(QStringLiteral("keepClass"));
  change_->setObjectName(QStringLiteral("changeClass"));
  reasons_->setObjectName(QStringLiteral("targetReasons"));
  reasonLines_->setContentsMargins(0, 0, 0, 0);
  reasonLines_->setSpacing(2);
  figures_->setHorizontalSpacing(20);
  figures_->setVerticalSpacing(12);
  auto* classLine = new QHBoxLayout;
  classLine->setSpacing(8);
  classLine->addWidget(class_, 1);
  classLine->addWidget(keep_, 0, Qt::AlignTop);
  classLine->addWidget(change_, 0, Qt::AlignTop);
  auto* body = new QVBoxLayout{body_};
  body->setContentsMargins(0, 0, 0, 0);
  body->setSpacing(12);
  body->addLayout(figures_);
  body->addWidget(reasons_);
  body->addWidget(hairline());
  body->addLayout(classLine);
  body->addWidget(hairline());
  body->addWidget(chart_);
  auto* all = new QVBoxLayout{this};
  all->setContentsMargins(16, 12, 16, 14);
  all->setSpacing(10);
  all->addLayout(head());
  all->addWidget(nothing_);
  all->addWidget(body_);
  reasons_->setVisible(false);
  connect(
      keep_, &QPushButton::clicked, this, [this] { settleClass(suggestion_.current); });
  connect(change_, &QPushButton::clicked, this, [this] {
    settleClass(suggestion_.suggested);
  });
}

QLayout* TargetsCard::head() {
  plantings_->setAccessibleName(tr("Planting whose targets are shown"));
  plantings_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  plantings_->setMinimumContentsLength(14);
  measure_->setCheckable(true);
  why_->setCheckable(true);
  auto* title = new QHBoxLayout;
  title->setSpacing(8);
  title->addWidget(textLabel(tr("Targets this season"), TypeSize::name, true), 1);
  title->addWidget(plantings_);
  // A line of their own: beside the title they would not fit a window 1024 wide.
  auto* ways = new QHBoxLayout;
  ways->setSpacing(8);
  ways->addWidget(why_);
  ways->addWidget(measure_);
  ways->addStretch();
  auto* lines = new QVBoxLayout;
  lines->setSpacing(8);
  lines->addLayout(title);
  lines->addLayout(ways);
  connect(plantings_, &QComboBox::currentIndexChanged, this, [this] {
    refresh();
    Q_EMIT chosenChanged();
  });
  connect(measure_, &QPushButton::clicked, this, &TargetsCard::measureWanted);
  connect(why_, &QPushButton::toggled, reasons_, &QWidget::setVisible);
  return lines;
}

void TargetsCard::setMeasuring(bool open) {
  measure_->setChecked(open);
}

void TargetsCard::setBlock(BlockId block) {
  const QSignalBlocker quiet{plantings_};
  const auto before = block == block_ ? chosen() : std::nullopt;
  block_ = block;
  ids_.clear();
  plantings_->clear();
  for (const Planting* planting : plantingsOf(session_->orchard(), block)) {
    ids_.push_back(planting->id);
    plantings_->addItem(stockText(*planting));
    if (before == planting->id) plantings_->setCurrentIndex(plantings_->count() - 1);
  }
  plantings_->setVisible(plantings_->count() > 1);
  refresh();
}

std::optional<PlantingId> TargetsCard::chosen() const {
  const int index = plantings_->currentIndex();
  if (index < 0 || index >= static_cast<int>(ids_.size())) return std::nullopt;
  return ids_[static_cast<std::size_t>(index)];
}

const Planting* TargetsCard::planting() const {
  const auto id = chosen();
  if (!id) return nullptr;
  const auto found = session_->orchard().plantings.find(*id);
  return found == session_->orchard().plantings.end() ? nullptr : &found->second;
}

/// Reckoning the seasons takes a moment, so that it waits until the card is looked at.
void TargetsCard::refresh() {
  stale_ = !isVisible();
  if (stale_) return;
  const Planting* shown = planting();
  const bool standing =
      shown != nullptr && leafOf(session_->orchard(), *shown, session_->season()) >= 1;
  nothing_->setText(shown == nullptr ? tr("Targets come with a planting.")
                                     : tr("Targets begin with the first leaf, once the "
                                          "trees are planted."));
  nothing_->setVisible(!standing);
  body_->setVisible(standing);
  why_->setVisible(standing);
  measure_->setVisible(standing);
  if (!standing) return;
  const PlantingTargets aim = targetsOf(*session_, *shown);
  showFigures(*shown, aim);
  showReasons(*shown, aim);
  showClass(aim);
  chart_->setScene(measureScene(*session_, *shown));
}

void TargetsCard::addFigure(const QString& name,
                            const QString& figure,
                            const QString& about) {
  auto* cell = new QWidget;
  auto* lines = new QVBoxLayout{cell};
  lines->setContentsMargins(0, 0, 0, 0);
  lines->setSpacing(1);
  lines->addWidget(mutedLabel(name));
  lines->addWidget(wrapping(textLabel(figure, TypeSize::head, true)));
  lines->addWidget(wrapping(mutedLabel(about)));
  lines->addStretch();
  cells_.push_back(cell);
}

void TargetsCard::showFigures(const Planting& planting, const PlantingTargets& aim) {
  emptyOut(*figures_);
  cells_.clear();
  const UnitSystem units = session_->orchard().settings.units;
  if (aim.fruit)
    addFigure(
        tr("Fruit to keep"), fruitText(aim.fruit->keep), aboutFruit(*aim.fruit, units));
  if (aim.leader)
    addFigure(
        tr("Leader wanted today"),
        textOf(aim.leader->wantedOn(session_->today()), Measure::leaderHeight, units),
        aim.leaderStanding ? say(sentenceOf(*aim.leaderStanding, units))
                           : tr("Not measured yet."));
  if (aim.trunk)
    addFigure(
        tr("Trunk"),
        textOf(aim.trunk->diameter, Measure::trunkDiameter, units),
        tr("%1 cm² of wood, measured on %2")
            .arg(QLocale().toString(aim.trunk->area, 'f', 1), dayText(aim.trunk->day)));
  if (aim.nitrogen)
    addFigure(tr("Nitrogen, as nutrient"),
              nitrogenText(*aim.nitrogen, units),
              tr("a tree; a soil or leaf test goes first"));
  if (aim.matureHeight)
    addFigure(tr("Height once grown"),
              textOf(aim.matureHeight->from, Measure::leaderHeight, units),
              tr("nine tenths of the row spacing"));
  if (aim.density)
    addFigure(tr("Trees"),
              densityText(units,
                          blockOf(session_->orchard(), planting).rowSpacing,
                          planting.treeSpacing),
              tr("by row and tree spacing"));
  arrangeFigures();
}

/// As many beside each other as there is room for.
void TargetsCard::arrangeFigures() {
  const int columns = std::clamp(width() / roomForFigure, 1, 3);
  for (QWidget* cell : cells_) figures_->removeWidget(cell);
  for (int column = 0; column < 3; ++column)
    figures_->setColumnStretch(column, column < columns ? 1 : 0);
  for (int i = 0; i < static_cast<int>(cells_.size()); ++i)
    figures_->addWidget(cells_[static_cast<std::size_t>(i)], i / columns, i % columns);
}

void TargetsCard::resizeEvent(QResizeEvent* event) {
  Card::resizeEvent(event);
  arrangeFigures();
}

void TargetsCard::showEvent(QShowEvent* event) {
  Card::showEvent(event);
  if (stale_ && session_->isOpen()) refresh();
}

void TargetsCard::showClass(const PlantingTargets& aim) {
  suggestion_ = aim.suggestion;
  const auto told = reasonsOf(suggestion_,
                              session_->orchard().settings.hemisphere(),
                              session_->orchard().settings.units);
  QStringList lines;
  for (const Sentence& sentence : told) lines << say(sentence);
  class_->setText(lines.join(QLatin1Char('\n')));
  const bool asks = suggestion_.changes() && !session_->isReadOnly();
  keep_->setText(tr("&Keep %1").arg(nameOf(suggestion_.current)));
  change_->setText(tr("C&hange to %1").arg(nameOf(suggestion_.suggested)));
  keep_->setVisible(asks);
  change_->setVisible(asks);
}

void TargetsCard::showReasons(const Planting& planting, const PlantingTargets& aim) {
  emptyOut(*reasonLines_);
  const UnitSystem units = session_->orchard().settings.units;
  const auto tell = [this](const QString& name, const std::vector<Sentence>& reasons) {
    reasonLines_->addWidget(textLabel(name, TypeSize::body, true));
    for (const Sentence& reason : reasons)
      reasonLines_->addWidget(wrapping(textLabel(say(reason))));
    reasonLines_->addSpacing(6);
  };
  if (aim.fruit) tell(tr("Fruit to keep"), reasonsOf(*aim.fruit, planting, units));
  if (aim.leader) tell(tr("Leader"), reasonsOf(*aim.leader, session_->today(), units));
  if (aim.nitrogen) tell(tr("Nitrogen, as nutrient"), reasonsOf(*aim.nitrogen));
}

/// What else was settled of the season stays.
void TargetsCard::settleClass(Vigour vigour) {
  const auto id = chosen();
  if (!id) return;
  SeasonTarget target;
  target.of = {*id, suggestion_.from};
  const auto held = session_->orchard().targets.find(target.of);
  if (held != session_->orchard().targets.end()) target = held->second;
  target.vigour = vigour;
  target.vigourReason = classReason().toStdString();
  session_->performOrTell(setSeasonTarget(session_->orchard(), target));
}

QString TargetsCard::classReason() const {
  const auto told = reasonsOf(suggestion_,
                              session_->orchard().settings.hemisphere(),
                              session_->orchard().settings.units);
  return say(told.front()).left(120);
}

}  // namespace topwire
