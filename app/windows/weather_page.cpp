#include "app/windows/weather_page.h"

#include "app/look/card.h"
#include "app/look/icons.h"
#include "app/paper/heat_page.h"
#include "app/windows/block_words.h"
#include "app/windows/daily_figures_panel.h"
#include "app/windows/days_ahead_card.h"
#include "app/windows/heat_card.h"
#include "app/windows/page_head.h"
#include "app/windows/past_seasons_panel.h"
#include "app/windows/print_window.h"
#include "app/windows/stages_panel.h"
#include "app/windows/weather_file_panel.h"
#include "core/calendar/iso_week.h"

#include <QFileDialog>
#include <QKeyEvent>
#include <QPrintDialog>
#include <QPrinter>
#include <QStandardPaths>

#include <algorithm>

namespace topwire {

namespace {

constexpr int besideWidth = 344;
constexpr int heightWhereItScrolls = 580;
constexpr int narrowBelow = 1000;  // then what is beside the chart goes under it

QString fileName(const HeatScene& scene) {
  return QStringLiteral("heat-%1.pdf").arg(QString::fromStdString(isoText(scene.today)));
}

}  // namespace

WeatherPage::WeatherPage(Session& session, Questions& questions, QWidget* parent)
    : QWidget(parent), session_(&session), questions_(&questions) {
  setObjectName(QStringLiteral("weatherPage"));
  area_ = new QScrollArea;
  area_->setWidget(content());
  area_->setWidgetResizable(true);
  area_->setFrameShape(QFrame::NoFrame);
  area_->setFocusPolicy(Qt::NoFocus);
  auto* all = new QVBoxLayout{this};
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(area_);
  connect(session_, &Session::changed, this, &WeatherPage::refresh);
  connect(session_, &Session::reset, this, &WeatherPage::startAnew);
  connect(session_, &Session::shifted, this, &WeatherPage::tellShift);
  startAnew();
}

QWidget* WeatherPage::content() {
  auto* content = new QWidget;
  auto* lines = new QVBoxLayout{content};
  lines->setContentsMargins(measure::pageMargin, 12, measure::pageMargin, 20);
  lines->setSpacing(14);
  head_ = new PageHead;
  addWays();
  lines->addWidget(head_);
  lines->addWidget(work_ = work(), 1);
  lines->addWidget(past_ = new PastSeasonsPanel{*session_}, 1);
  addPanel(Part::pastSeasons, past_);
  lines->addWidget(empty_ = emptyPage(), 1);
  return content;
}

void WeatherPage::addWays() {
  plantings_ = new QComboBox;
  plantings_->setObjectName(QStringLiteral("heatOf"));
  plantings_->setAccessibleName(tr("Planting whose season is shown"));
  plantings_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  head_->addChoice(plantings_);
  connect(plantings_, &QComboBox::currentIndexChanged, this, &WeatherPage::showSeason);
  addWay(Part::dailyFigures, tr("&Daily figures"), "dailyFiguresWay");
  addWay(Part::file, tr("&Bring in a file"), "fileWay");
  addWay(Part::pastSeasons, tr("Past &seasons"), "pastSeasonsWay");
}

/// Pressed once more, it leads back to the stages.
void WeatherPage::addWay(Part part, const QString& words, const char* name) {
  QPushButton* button = head_->addButton(words, name);
  button->setCheckable(true);
  ways_[part] = button;
  connect(button, &QPushButton::clicked, this, [this, part](bool open) {
    showPart(open ? part : Part::stages);
  });
}

void WeatherPage::addPanel(Part part, BesidePanel* panel) {
  panels_[part] = panel;
  connect(panel, &BesidePanel::closed, this, [this] { showPart(Part::stages); });
}

QWidget* WeatherPage::work() {
  auto* box = new QWidget;
  body_ = new QBoxLayout{QBoxLayout::LeftToRight, box};
  body_->setContentsMargins(0, 0, 0, 0);
  body_->setSpacing(16);
  heat_ = new HeatCard;
  ahead_ = new DaysAheadCard;
  auto* season = new QVBoxLayout;
  season->setSpacing(16);
  season->addWidget(heat_, 1);
  season->addWidget(ahead_);
  beside_ = new QStackedWidget;
  stages_ = new StagesPanel{*session_};
  figures_ = new DailyFiguresPanel{*session_};
  file_ = new WeatherFilePanel{*session_, *questions_};
  for (QWidget* panel : {static_cast<QWidget*>(stages_),
                         static_cast<QWidget*>(figures_),
                         static_cast<QWidget*>(file_)})
    beside_->addWidget(panel);
  addPanel(Part::dailyFigures, figures_);
  addPanel(Part::file, file_);
  body_->addLayout(season, 1);
  body_->addWidget(beside_);
  connect(heat_, &HeatCard::measureChosen, this, &WeatherPage::showSeason);
  connect(heat_, &HeatCard::printWanted, this, &WeatherPage::print);
  connect(heat_, &HeatCard::pdfWanted, this, &WeatherPage::askForPdf);
  connect(file_, &WeatherFilePanel::kept, this, [this] { showPart(Part::stages); });
  connect(stages_, &StagesPanel::calendarWanted, this, &WeatherPage::calendarWanted);
  return box;
}

QWidget* WeatherPage::emptyPage() {
  auto* page = new QWidget;
  auto* lines = new QVBoxLayout{page};
  lines->setContentsMargins(0, 60, 0, 0);
  lines->setSpacing(12);
  auto* add = new QPushButton{tr("&Add a block")};
  add->setObjectName(QStringLiteral("weatherAddBlock"));
  add->setProperty("main", true);
  lines->addWidget(textLabel(tr("The season's heat stands here once a block is planted."),
                             TypeSize::title,
                             true));
  lines->addWidget(textLabel(
      tr("Each planting's stages are dated from the weather; add a block first.")));
  lines->addWidget(add, 0, Qt::AlignLeft);
  lines->addStretch();
  connect(add, &QPushButton::clicked, this, &WeatherPage::blocksWanted);
  return page;
}

void WeatherPage::startAnew() {
  stages_->tellShift({});
  file_->giveUp();
  showPart(Part::stages);
  refresh();
}

void WeatherPage::showPart(Part part) {
  if (part_ == Part::file && part != Part::file) file_->giveUp();
  part_ = part;
  for (const auto& [way, button] : ways_) button->setChecked(way == part);
  showParts();
  // Where the page is narrow the panel stands below the chart, once it is laid out.
  if (isVisible())
    QMetaObject::invokeMethod(this, &WeatherPage::goToPart, Qt::QueuedConnection);
}

/// Into sight first: a field that takes the keyboard out of sight gets no ring.
void WeatherPage::goToPart() {
  const auto panel = panels_.find(part_);
  if (panel == panels_.end()) {
    area_->ensureVisible(0, 0);
    return stages_->takeFocus();
  }
  const QPoint corner = panel->second->mapTo(area_->widget(), QPoint{});
  area_->ensureVisible(0, corner.y() + panel->second->height(), 0, 20);
  area_->ensureVisible(0, corner.y(), 0, 20);
  panel->second->takeFocus();
}

void WeatherPage::showParts() {
  const bool planted = chosen() != nullptr;
  const bool past = part_ == Part::pastSeasons;
  empty_->setVisible(!planted && !past);
  work_->setVisible(planted && !past);
  past_->setVisible(past);
  if (part_ == Part::stages) beside_->setCurrentWidget(stages_);
  if (part_ == Part::dailyFigures) beside_->setCurrentWidget(figures_);
  if (part_ == Part::file) beside_->setCurrentWidget(file_);
}

const Planting* WeatherPage::chosen() const {
  const int index = plantings_->currentIndex();
  if (!session_->isOpen() || index < 0 || index >= static_cast<int>(ids_.size()))
    return nullptr;
  const auto& all = session_->orchard().plantings;
  const auto found = all.find(ids_[static_cast<std::size_t>(index)]);
  return found == all.end() ? nullptr : &found->second;
}

void WeatherPage::choosePlanting(PlantingId planting) {
  const auto found = std::ranges::find(ids_, planting);
  if (found != ids_.end())
    plantings_->setCurrentIndex(static_cast<int>(found - ids_.begin()));
}

/// Reckoning a season takes a moment, so that it waits until the page is looked at.
void WeatherPage::refresh() {
  stale_ = !isVisible();
  if (stale_ || !session_->isOpen()) return;
  refreshPlantings();
  showSeason();
}

void WeatherPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (stale_) refresh();
}

void WeatherPage::refreshPlantings() {
  const QSignalBlocker quiet{plantings_};
  const Planting* before = chosen();
  const std::optional<PlantingId> keep =
      before != nullptr ? std::optional{before->id} : std::nullopt;
  const Orchard& orchard = session_->orchard();
  ids_.clear();
  plantings_->clear();
  for (const Block* block : blocksInOrder(orchard))
    for (const Planting* planting : plantingsOf(orchard, block->id)) {
      ids_.push_back(planting->id);
      plantings_->addItem(plantingName(orchard, *planting));
    }
  if (keep) choosePlanting(*keep);
}

void WeatherPage::showSeason() {
  const Planting* planting = chosen();
  showParts();
  plantings_->setVisible(ids_.size() > 1);
  for (const auto& [way, button] : ways_)
    button->setVisible(planting != nullptr || way == Part::pastSeasons);
  const Day today = session_->today();
  head_->say(tr("Weather"),
             QStringList{weekdayText(today),
                         say(Sentence{phrase("Calendar", "week %1"),
                                      {std::int64_t{isoWeekOf(today).number}}})}
                 .join(QStringLiteral(" · ")));
  past_->refresh();
  if (planting == nullptr) return;
  figures_->refresh();
  file_->refresh();
  const HeatScene scene = heatScene(*session_, *planting, heat_->measure());
  heat_->setScene(scene, measureText(session_->orchard(), heat_->measure()));
  // Without any weather, a file is what the page wants most.
  ways_[Part::file]->setProperty("main", !hasWeather(scene.heat));
  ways_[Part::file]->update();
  stages_->setPlanting(*planting, scene);
  ahead_->setDays(daysAhead(*session_, *planting), session_->orchard().settings.units);
}

/// The stages that moved say it best; where none did, how much moved.
void WeatherPage::tellShift(const std::vector<PlanDifference>& differences,
                            const std::vector<Sentence>& why) {
  QStringList texts;
  for (const Sentence& sentence : why.empty() ? summaryOf(differences) : why)
    texts << say(sentence);
  stages_->tellShift(texts.join(QLatin1Char(' ')));
}

void WeatherPage::arrange() {
  const bool narrow = width() < narrowBelow;
  body_->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
  beside_->setMinimumWidth(narrow ? 0 : besideWidth);
  beside_->setMaximumWidth(narrow ? QWIDGETSIZE_MAX : besideWidth);
  heat_->setMinimumHeight(narrow ? heightWhereItScrolls : 0);
  stages_->setScrolling(!narrow);
}

void WeatherPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

HeatPage WeatherPage::pageOf() const {
  const HeatScene& scene = heat_->view().sceneShown();
  HeatPage page;
  page.scene = scene;
  page.title = say(Sentence{
      phrase("Weather", "Heat since %1, %2"),
      {scene.days.first, plantingName(session_->orchard(), *chosen()).toStdString()}});
  page.subtitle = measureText(session_->orchard(), heat_->measure());
  page.foot = say(Sentence{phrase("Weather", "%1 As of %2. %3"),
                           {coverageText(scene.heat).toStdString(),
                            scene.today,
                            session_->orchard().settings.name}});
  page.paper = usualPaper();
  return page;
}

void WeatherPage::print() {
  if (chosen() == nullptr) return;
  QPrinter printer{QPrinter::HighResolution};
  printer.setDocName(fileName(heat_->view().sceneShown()));
  QPrintDialog dialog{&printer, this};
  if (dialog.exec() != QDialog::Accepted) return;
  tell(topwire::print(printer, pageOf(), voiceIn(language())));
}

void WeatherPage::askForPdf() {
  if (chosen() == nullptr) return;
  const QString folder =
      QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  const QString path = QFileDialog::getSaveFileName(
      this,
      tr("Save the chart as PDF"),
      folder + QLatin1Char('/') + fileName(heat_->view().sceneShown()),
      tr("PDF (*.pdf)"));
  if (!path.isEmpty()) tell(savePdf(path));
}

Done WeatherPage::savePdf(const QString& path) const {
  return writePdf(path, pageOf(), voiceIn(language()));
}

void WeatherPage::tell(const Done& done) {
  if (!done) Q_EMIT session_->troubled(done.error());
}

}  // namespace topwire
