#include "app/windows/measurements_panel.h"

#include "app/windows/block_panels.h"
#include "app/windows/block_words.h"
#include "app/windows/day_field.h"
#include "app/windows/form.h"
#include "app/words/say.h"
#include "core/edit/target_deeds.h"
#include "core/orchard/measure_text.h"
#include "core/orchard/measurements.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QResizeEvent>
#include <QSignalBlocker>

#include <ranges>

namespace topwire {

namespace {

constexpr int roomForTwo = 640;
constexpr std::size_t mostShown = 12;

QString hintOf(Measure measure, UnitSystem units) {
  if (measure == Measure::missingTrees)
    return MeasurementsPanel::tr("One number for the whole planting");
  const QString unit = QString::fromStdString(unitText(measure, units));
  if (unit.isEmpty()) return MeasurementsPanel::tr("One a tree, such as 28 31 25");
  return units == UnitSystem::metric
             ? MeasurementsPanel::tr("One a tree, in %1 unless you type the unit")
                   .arg(unit)
             : MeasurementsPanel::tr(
                   "One a tree, in %1 unless you type the unit; 1 5/8 "
                   "will do")
                   .arg(unit);
}

/// "12 trees, mean 38.6 mm".
QString meanText(const Measurement& taken, UnitSystem units) {
  const auto mean = meanOf(taken);
  if (!mean) return {};
  const QString text = QString::fromStdString(measuredText(*mean, taken.measure, units));
  if (taken.measure == Measure::missingTrees) return text;
  return say(
      Sentence{counted(static_cast<std::int64_t>(taken.values.size()),
                       phrase("MeasurementsPanel", "%1 tree, %2"),
                       phrase("MeasurementsPanel", "%1 trees, mean %2")),
               {static_cast<std::int64_t>(taken.values.size()), text.toStdString()}});
}

}  // namespace

MeasurementsPanel::MeasurementsPanel(Session& session, QWidget* parent)
    : BesidePanel(tr("Measurements"),
                  tr("Ten to twenty ordinary trees, spread over the rows; trunks just "
                     "below the first laterals, growth once it has ended."),
                  parent)
    , session_(&session)
    , sides_(new QBoxLayout(QBoxLayout::LeftToRight)) {
  setObjectName(QStringLiteral("measurements"));
  sides_->setSpacing(24);
  sides_->addWidget(entry(), 1);
  sides_->addWidget(earlier(), 1);
  lines().addLayout(sides_);
}

QWidget* MeasurementsPanel::entry() {
  auto* box = new QWidget;
  auto* column = new QVBoxLayout{box};
  column->setContentsMargins(0, 0, 0, 0);
  form_ = new Form;
  measures_ = new QComboBox;
  for (const Measure measure : allMeasures())
    measures_->addItem(capitalised(say(nameOf(measure))));
  day_ = dayField();
  values_ = new QLineEdit;
  note_ = new QLineEdit;
  form_->add(QStringLiteral("measure"), tr("What is meas&ured"), measures_);
  form_->add(QStringLiteral("day"), tr("Da&y"), day_);
  form_->add(QStringLiteral("values"), tr("&Values"), values_);
  form_->add(QStringLiteral("note"), tr("Whe&re"), note_, tr("May stay empty"));
  column->addWidget(form_);
  mean_ = textLabel({}, TypeSize::name, true);
  mean_->setObjectName(QStringLiteral("measuredMean"));
  keep_ = new QPushButton{tr("Keep &this measurement")};
  keep_->setObjectName(QStringLiteral("keepMeasurement"));
  keep_->setProperty("main", true);
  auto* foot = new QHBoxLayout;
  foot->setSpacing(12);
  foot->addWidget(keep_);
  foot->addWidget(mean_, 1);
  column->addLayout(foot);
  column->addStretch();
  connect(form_, &Form::edited, this, &MeasurementsPanel::check);
  connect(measures_, &QComboBox::currentIndexChanged, this, [this] {
    form_->setHint(QStringLiteral("values"),
                   hintOf(measure(), session_->orchard().settings.units));
  });
  connect(keep_, &QPushButton::clicked, this, &MeasurementsPanel::keep);
  for (QLineEdit* field : {values_, note_})
    connect(field, &QLineEdit::returnPressed, this, &MeasurementsPanel::keep);
  return box;
}

QWidget* MeasurementsPanel::earlier() {
  auto* box = new QWidget;
  auto* column = new QVBoxLayout{box};
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(textLabel(tr("Earlier ones"), TypeSize::body, true));
  earlier_ = new QVBoxLayout;
  earlier_->setSpacing(4);
  column->addLayout(earlier_);
  column->addStretch();
  return box;
}

Measure MeasurementsPanel::measure() const {
  const int index = std::max(0, measures_->currentIndex());
  return allMeasures()[static_cast<std::size_t>(index)];
}

void MeasurementsPanel::setPlanting(std::optional<PlantingId> planting) {
  const bool other = planting != planting_;
  planting_ = planting;
  if (other) {
    const QSignalBlocker quiet{form_};
    values_->clear();
    note_->clear();
    day_->setDate(dateOf(session_->today()));
    form_->forgetTouches();
  }
  refresh();
}

void MeasurementsPanel::refresh() {
  form_->setHint(QStringLiteral("values"),
                 hintOf(measure(), session_->orchard().settings.units));
  keep_->setEnabled(planting_ && !session_->isReadOnly());
  tellMean();
  showEarlier();
}

void MeasurementsPanel::showEarlier() {
  emptyOut(*earlier_);
  if (!planting_) return;
  const auto all = measurementsOf(session_->orchard(), *planting_);
  if (all.empty())
    earlier_->addWidget(mutedLabel(tr("Nothing measured yet."), TypeSize::body));
  std::size_t shown = 0;
  for (const Measurement* taken : all | std::views::reverse) {
    if (shown++ == mostShown) break;
    earlier_->addWidget(lineOf(*taken));
  }
}

QWidget* MeasurementsPanel::lineOf(const Measurement& taken) {
  const UnitSystem units = session_->orchard().settings.units;
  const QString name = capitalised(say(nameOf(taken.measure)));
  auto* box = new QWidget;
  auto* grid = new QGridLayout{box};
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setVerticalSpacing(0);
  grid->setColumnStretch(0, 1);
  QLabel* what = textLabel(name + QStringLiteral(": ") + meanText(taken, units));
  what->setWordWrap(true);
  QStringList about{dayText(taken.day)};
  for (const std::string& text : {taken.by, taken.note})
    if (!text.empty()) about << QString::fromStdString(text);
  QLabel* second = mutedLabel(about.join(QStringLiteral(" · ")));
  second->setWordWrap(true);
  grid->addWidget(what, 0, 0);
  grid->addWidget(second, 1, 0);
  auto* remove = new QPushButton{tr("Remove")};
  remove->setObjectName(QStringLiteral("removeMeasurement"));
  remove->setAccessibleName(tr("Remove %1 of %2").arg(name, dayText(taken.day)));
  remove->setEnabled(!session_->isReadOnly());
  grid->addWidget(remove, 0, 1, 2, 1, Qt::AlignTop);
  connect(remove, &QPushButton::clicked, this, [this, id = taken.id] { forget(id); });
  return box;
}

Checked<Change> MeasurementsPanel::deed() const {
  Measurement taken;
  taken.id = session_->ids().next<MeasurementId>();
  taken.planting = planting_.value_or(PlantingId{});
  taken.measure = measure();
  taken.day = dayOf(day_->date());
  taken.note = note_->text().toStdString();
  const auto values = readMeasured(
      values_->text().toStdString(), taken.measure, session_->orchard().settings.units);
  if (!values) return tl::unexpected{Problems{values.error()}};
  taken.values = *values;
  if (taken.day > session_->today())
    return tl::unexpected{Problems{
        {Sentence{phrase("MeasurementsPanel", "%1 is still to come."), {taken.day}},
         "day",
         {}}}};
  return addMeasurement(session_->orchard(), taken);
}

void MeasurementsPanel::tellMean() {
  Measurement typed;
  typed.measure = measure();
  const UnitSystem units = session_->orchard().settings.units;
  if (const auto values =
          readMeasured(values_->text().toStdString(), typed.measure, units))
    typed.values = *values;
  mean_->setText(meanText(typed, units));
}

void MeasurementsPanel::check() {
  if (!planting_) return;
  tellMean();
  const Checked<Change> change = deed();
  form_->showTouched(change ? Problems{} : change.error());
}

void MeasurementsPanel::keep() {
  if (!planting_) return;
  const Problems problems = session_->perform(deed());
  if (!problems.empty()) return form_->showAll(problems);
  const QSignalBlocker quiet{form_};
  values_->clear();
  note_->clear();
  form_->forgetTouches();
  tellMean();
  takeFocus();
}

void MeasurementsPanel::forget(MeasurementId taken) {
  session_->performOrTell(removeMeasurement(session_->orchard(), taken));
}

void MeasurementsPanel::takeFocus() {
  values_->setFocus(Qt::OtherFocusReason);
}

void MeasurementsPanel::resizeEvent(QResizeEvent* event) {
  sides_->setDirection(event->size().width() < roomForTwo ? QBoxLayout::TopToBottom
                                                          : QBoxLayout::LeftToRight);
  BesidePanel::resizeEvent(event);
}

}  // namespace topwire
