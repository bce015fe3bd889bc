#include "app/windows/past_seasons_panel.h"

#include "app/windows/block_words.h"
#include "app/windows/day_field.h"
#include "app/windows/form.h"
#include "app/words/say.h"
#include "core/edit/weather_deeds.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QShortcut>
#include <QSignalBlocker>

#include <set>

namespace topwire {

namespace {

constexpr int rowHeight = 32;
constexpr int headHeight = 28;
constexpr int narrowestColumn = 84;
constexpr int formWidth = 560;

}  // namespace

PastSeasonsPanel::PastSeasonsPanel(Session& session, QWidget* parent)
    : BesidePanel(tr("Past seasons"),
                  tr("When each cultivar reached its stages here. The more seasons a "
                     "cultivar has, the closer its dates follow them."),
                  parent)
    , session_(&session)
    , model_(new PastSeasonsModel{this}) {
  setObjectName(QStringLiteral("pastSeasons"));
  empty_ =
      textLabel(tr("No dates yet. Add those of your own book; what you note this season "
                   "joins them next year."));
  empty_->setObjectName(QStringLiteral("noPastSeasons"));
  empty_->setWordWrap(true);
  lines().addWidget(empty_);
  lines().addWidget(table(), 1);
  lines().addWidget(hairline());
  lines().addWidget(entry());
  lines().addStretch();
}

QWidget* PastSeasonsPanel::table() {
  dates_ = new QTableView;
  dates_->setObjectName(QStringLiteral("pastDates"));
  dates_->setAccessibleName(tr("Dates of past seasons"));
  dates_->setModel(model_);
  dates_->setSelectionMode(QAbstractItemView::SingleSelection);
  dates_->setTabKeyNavigation(false);
  dates_->setFrameShape(QFrame::NoFrame);
  dates_->setMinimumHeight(160);
  dates_->verticalHeader()->hide();
  dates_->verticalHeader()->setDefaultSectionSize(rowHeight);
  dates_->horizontalHeader()->setHighlightSections(false);
  dates_->horizontalHeader()->setMinimumSectionSize(narrowestColumn);
  dates_->horizontalHeader()->setMinimumHeight(headHeight);
  dates_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  connect(dates_->selectionModel(),
          &QItemSelectionModel::currentChanged,
          this,
          &PastSeasonsPanel::takeCell);
  auto* erase = new QShortcut{QKeySequence::Delete, dates_};
  erase->setContext(Qt::WidgetShortcut);
  connect(erase, &QShortcut::activated, this, &PastSeasonsPanel::remove);
  return dates_;
}

QWidget* PastSeasonsPanel::entry() {
  auto* box = new QWidget;
  box->setMaximumWidth(formWidth);
  box->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
  auto* column = new QVBoxLayout{box};
  column->setContentsMargins(0, 0, 0, 0);
  form_ = new Form;
  cultivar_ = new QComboBox;
  cultivar_->setEditable(true);
  cultivar_->setInsertPolicy(QComboBox::NoInsert);
  stage_ = new QComboBox;
  day_ = dayField();
  form_->add(QStringLiteral("cultivar"), tr("C&ultivar"), cultivar_);
  form_->add(QStringLiteral("stage"), tr("S&tage"), stage_);
  form_->add(QStringLiteral("day"),
             tr("Da&y"),
             day_,
             tr("A date of the same cultivar, stage and season is replaced"));
  column->addWidget(form_);
  auto* buttons = new QHBoxLayout;
  add_ = new QPushButton{tr("&Add the date")};
  add_->setObjectName(QStringLiteral("addPastDate"));
  add_->setProperty("main", true);
  remove_ = new QPushButton{tr("Ta&ke the chosen one away")};
  remove_->setObjectName(QStringLiteral("removePastDate"));
  buttons->addWidget(add_);
  buttons->addWidget(remove_);
  buttons->addStretch();
  column->addLayout(buttons);
  connect(add_, &QPushButton::clicked, this, &PastSeasonsPanel::add);
  connect(remove_, &QPushButton::clicked, this, &PastSeasonsPanel::remove);
  return box;
}

/// Cultivars that stand here come first: it is their dates that are looked for.
void PastSeasonsPanel::fillChoices() {
  const QSignalBlocker quiet{form_};
  const QString before = cultivar_->currentText();
  const int stageBefore = stage_->currentIndex();
  std::set<std::string> standing;
  for (const auto& [id, planting] : session_->orchard().plantings)
    standing.insert(planting.cultivar);
  cultivar_->clear();
  for (const std::string& name : standing)
    cultivar_->addItem(QString::fromStdString(name));
  for (const Cultivar& cultivar : session_->tables().cultivars)
    if (!standing.contains(cultivar.name))
      cultivar_->addItem(QString::fromStdString(cultivar.name));
  if (!before.isEmpty()) cultivar_->setCurrentText(before);
  stage_->clear();
  for (const Stage& stage : allStages()) stage_->addItem(say(stage.name), stage.bbch);
  const int bloom = stage_->findData(stages::fullBloom);
  stage_->setCurrentIndex(stageBefore < 0 ? bloom : stageBefore);
  if (stageBefore < 0) day_->setDate(dateOf(session_->today()).addYears(-1));
}

void PastSeasonsPanel::refresh() {
  const QModelIndex chosen = dates_->currentIndex();
  const Hemisphere hemisphere = session_->orchard().settings.hemisphere();
  model_->setSeasons(pastSeasons(session_->orchard(), currentSeason(*session_)),
                     hemisphere);
  const bool any = model_->rowCount() > 0;
  empty_->setVisible(!any);
  dates_->setVisible(any);
  fillChoices();
  add_->setEnabled(!session_->isReadOnly());
  dates_->setCurrentIndex(model_->index(chosen.row(), chosen.column()));
  takeCell(dates_->currentIndex());
}

/// What the chosen cell is about stands in the fields, to be corrected.
void PastSeasonsPanel::takeCell(const QModelIndex& index) {
  const PastDate* date = model_->dateAt(index);
  remove_->setEnabled(date != nullptr && date->past && !session_->isReadOnly());
  if (!index.isValid()) return;
  const QSignalBlocker quiet{form_};
  cultivar_->setCurrentText(QString::fromStdString(model_->at(index.row()).cultivar));
  if (const auto stage = model_->stageAt(index.column()))
    stage_->setCurrentIndex(stage_->findData(*stage));
  if (date != nullptr) day_->setDate(dateOf(date->day));
}

PastStage PastSeasonsPanel::typed() const {
  PastStage past;
  past.id = session_->ids().next<PastStageId>();
  past.cultivar = cultivar_->currentText().simplified().toStdString();
  past.bbch = stage_->currentData().toInt();
  past.day = dayOf(day_->date());
  return past;
}

void PastSeasonsPanel::add() {
  const PastStage past = typed();
  const Problems problems = session_->perform(
      addPastStage(session_->orchard(), session_->tables(), past, session_->today()));
  if (!problems.empty()) return form_->showAll(problems);
  form_->forgetTouches();
  const Season season = seasonOf(past.day, session_->orchard().settings.hemisphere());
  if (const auto index = model_->indexOf(season, past.cultivar, past.bbch);
      index.isValid())
    dates_->setCurrentIndex(index);
}

void PastSeasonsPanel::remove() {
  const PastDate* date = model_->dateAt(dates_->currentIndex());
  if (date == nullptr || !date->past || session_->isReadOnly()) return;
  const Problems problems =
      session_->perform(removePastStage(session_->orchard(), *date->past));
  if (!problems.empty()) form_->showAll(problems);
}

void PastSeasonsPanel::takeFocus() {
  day_->setFocus(Qt::OtherFocusReason);
}

}  // namespace topwire
