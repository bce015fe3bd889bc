#include "app/windows/daily_figures_panel.h"

#include "app/windows/block_words.h"
#include "app/windows/day_field.h"
#include "app/windows/field_reader.h"
#include "app/windows/form.h"
#include "core/edit/weather_deeds.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QSignalBlocker>

#include <algorithm>

namespace topwire {

namespace {

constexpr int leastDaysBack = 30;
constexpr int mostDaysAhead = 16;
constexpr int rowHeight = 28;

}  // namespace

DailyFiguresPanel::DailyFiguresPanel(Session& session, QWidget* parent)
    : BesidePanel(tr("Daily figures"),
                  tr("The lowest and highest temperature of a day, midnight to midnight, "
                     "at the station."),
                  parent)
    , session_(&session)
    , model_(new WeatherDaysModel{this}) {
  setObjectName(QStringLiteral("dailyFigures"));
  lines().addWidget(entry());
  lines().addWidget(table(), 1);
}

QWidget* DailyFiguresPanel::entry() {
  auto* box = new QWidget;
  auto* column = new QVBoxLayout{box};
  column->setContentsMargins(0, 0, 0, 0);
  form_ = new Form;
  day_ = dayField();
  minimum_ = new QLineEdit;
  maximum_ = new QLineEdit;
  rain_ = new QLineEdit;
  form_->add(QStringLiteral("day"), tr("Da&y"), day_);
  form_->add(QStringLiteral("rain"), tr("&Rain"), rain_);
  form_->add(QStringLiteral("minimum"), tr("&Lowest"), minimum_);
  form_->add(QStringLiteral("maximum"), tr("Highes&t"), maximum_);
  column->addWidget(form_);
  auto* buttons = new QHBoxLayout;
  keep_ = new QPushButton{tr("&Keep this day")};
  keep_->setObjectName(QStringLiteral("keepDay"));
  keep_->setProperty("main", true);
  forget_ = new QPushButton{tr("F&orget it")};
  forget_->setObjectName(QStringLiteral("forgetDay"));
  forget_->setToolTip(tr("Takes this day's figures away"));
  buttons->addWidget(keep_);
  buttons->addWidget(forget_);
  buttons->addStretch();
  column->addLayout(buttons);
  connect(form_, &Form::edited, this, &DailyFiguresPanel::check);
  connect(day_, &QDateEdit::dateChanged, this, [this] { fillFields(dayTyped()); });
  connect(keep_, &QPushButton::clicked, this, &DailyFiguresPanel::keep);
  connect(forget_, &QPushButton::clicked, this, &DailyFiguresPanel::forget);
  for (QLineEdit* field : {minimum_, maximum_, rain_})
    connect(field, &QLineEdit::returnPressed, this, &DailyFiguresPanel::keep);
  return box;
}

QWidget* DailyFiguresPanel::table() {
  days_ = new QTableView;
  days_->setObjectName(QStringLiteral("daysTable"));
  days_->setAccessibleName(tr("Days and their figures"));
  days_->setModel(model_);
  days_->setSelectionBehavior(QAbstractItemView::SelectRows);
  days_->setSelectionMode(QAbstractItemView::SingleSelection);
  days_->setTabKeyNavigation(false);
  days_->setShowGrid(false);
  days_->setFrameShape(QFrame::NoFrame);
  days_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  days_->verticalHeader()->hide();
  days_->verticalHeader()->setDefaultSectionSize(rowHeight);
  days_->horizontalHeader()->setHighlightSections(false);
  days_->horizontalHeader()->setMinimumHeight(rowHeight);
  days_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  days_->horizontalHeader()->setSectionResizeMode(WeatherDaysModel::day,
                                                  QHeaderView::Stretch);
  days_->setMinimumHeight(200);
  days_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Ignored);
  const auto take = [this](const QModelIndex& index) {
    if (index.isValid()) choose(model_->at(index.row()).day);
  };
  connect(days_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, take);
  connect(days_, &QTableView::activated, this, [this, take](const QModelIndex& index) {
    take(index);
    takeFocus();
  });
  return days_;
}

Day DailyFiguresPanel::dayTyped() const {
  return dayOf(day_->date());
}

Day DailyFiguresPanel::firstShown() const {
  const Hemisphere hemisphere = session_->orchard().settings.hemisphere();
  return std::min(firstDayOf(currentSeason(*session_), hemisphere),
                  plusDays(session_->today(), -leastDaysBack));
}

void DailyFiguresPanel::refresh() {
  const UnitSystem units = session_->orchard().settings.units;
  const Day today = session_->today();
  form_->setHint(QStringLiteral("minimum"), temperatureUnit(units));
  form_->setHint(QStringLiteral("maximum"), temperatureUnit(units));
  form_->setHint(QStringLiteral("rain"), tr("%1; may stay empty").arg(rainUnit(units)));
  model_->setDays(dayFigures(session_->orchard(), firstShown(), today), units, today);
  const Day last = plusDays(today, mostDaysAhead);
  const bool unset = dayTyped() > last || dayTyped() < plusDays(today, -400);
  choose(unset ? plusDays(today, -1) : dayTyped());
}

void DailyFiguresPanel::choose(Day day) {
  const QSignalBlocker quiet{day_};
  day_->setDate(dateOf(day));
  fillFields(day);
}

void DailyFiguresPanel::fillFields(Day day) {
  const QSignalBlocker quiet{form_};
  const UnitSystem units = session_->orchard().settings.units;
  const WeatherDay* known = weatherOn(session_->orchard(), day);
  shown_ = known != nullptr ? std::optional{*known} : std::nullopt;
  const auto temperature = [units](const std::optional<double>& celsius) {
    return celsius ? temperatureText(*celsius, units) : QString{};
  };
  minimum_->setText(shown_ ? temperature(shown_->minimum) : QString{});
  maximum_->setText(shown_ ? temperature(shown_->maximum) : QString{});
  rain_->setText(shown_ && shown_->rain ? rainAmountText(*shown_->rain, units)
                                        : QString{});
  form_->forgetTouches();
  const bool writable = !session_->isReadOnly();
  keep_->setEnabled(writable);
  forget_->setEnabled(writable && shown_.has_value());
  // A row that becomes current asks for its day again, which then changes nothing.
  if (const int row = model_->rowOf(day); row >= 0 && row != days_->currentIndex().row())
    days_->selectRow(row);
}

Checked<Change> DailyFiguresPanel::deed(FieldReader& fields) const {
  const auto before = [this](auto member) {
    return shown_ ? (*shown_).*member : std::optional<double>{};
  };
  DatedWeather typed;
  typed.day = dayTyped();
  typed.weather.source =
      typed.day > session_->today() ? WeatherSource::forecast : WeatherSource::typed;
  typed.weather.minimum =
      fields.temperatureIfAny("minimum", minimum_->text(), before(&WeatherDay::minimum));
  typed.weather.maximum =
      fields.temperatureIfAny("maximum", maximum_->text(), before(&WeatherDay::maximum));
  typed.weather.rain = fields.rainIfAny("rain", rain_->text(), before(&WeatherDay::rain));
  Checked<Change> change = typeWeather(session_->orchard(), typed, session_->today());
  if (fields.problems().empty()) return change;
  return tl::unexpected{
      firstOfEach(fields.problems(), change ? Problems{} : change.error())};
}

void DailyFiguresPanel::check() {
  FieldReader fields{session_->orchard().settings.units};
  const Checked<Change> change = deed(fields);
  form_->showTouched(change ? Problems{} : change.error());
}

void DailyFiguresPanel::keep() {
  FieldReader fields{session_->orchard().settings.units};
  const Day kept = dayTyped();
  const Problems problems = session_->perform(deed(fields));
  if (!problems.empty()) return form_->showAll(problems);
  // The next day someone still has to type, if there is one.
  for (Day day = plusDays(kept, 1); day < session_->today(); day = plusDays(day, 1)) {
    const int row = model_->rowOf(day);
    if (row < 0 || !model_->at(row).isGap) continue;
    choose(day);
    break;
  }
  takeFocus();
}

void DailyFiguresPanel::forget() {
  const Day day = dayTyped();
  const Problems problems =
      session_->perform(removeWeather(session_->orchard(), {day, day}));
  if (!problems.empty()) form_->showAll(problems);
}

void DailyFiguresPanel::takeFocus() {
  minimum_->setFocus(Qt::OtherFocusReason);
  minimum_->selectAll();
}

}  // namespace topwire
