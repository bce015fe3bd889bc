#include "app/windows/weather_file_panel.h"

#include "app/windows/block_panels.h"
#include "app/windows/questions.h"
#include "app/words/say.h"
#include "core/edit/weather_deeds.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QScrollArea>
#include <QSignalBlocker>

namespace topwire {

namespace {

constexpr int asFound = -1;

/// A label over its field, kept together so that both can be hidden.
QWidget* labelled(const QString& words, QWidget* field) {
  auto* box = new QWidget;
  auto* lines = new QVBoxLayout{box};
  lines->setContentsMargins(0, 0, 0, 0);
  lines->setSpacing(4);
  auto* label = new QLabel{words};
  label->setBuddy(field);
  QString plain = words;
  field->setAccessibleName(plain.remove(QLatin1Char('&')));
  lines->addWidget(label);
  lines->addWidget(field);
  return box;
}

QComboBox* combo(const char* name) {
  auto* made = new QComboBox;
  made->setObjectName(QLatin1String(name));
  return made;
}

QLabel* wrappedLabel(const char* name, bool bold = false) {
  QLabel* label = textLabel({}, TypeSize::body, bold);
  label->setObjectName(QLatin1String(name));
  label->setWordWrap(true);
  label->setMinimumWidth(1);
  return label;
}

QString countedText(int count, Phrase one, Phrase many) {
  const auto number = static_cast<std::int64_t>(count);
  return say(Sentence{counted(number, one, many), {number}});
}

QStringList found(const WeatherReport& report) {
  QStringList lines;
  for (const Sentence& sentence : sentencesOf(report)) lines << say(sentence);
  for (const Problem& fault : report.faults) lines << say(fault);
  if (report.furtherFaults > 0)
    lines << countedText(report.furtherFaults,
                         phrase("Weather", "%1 further line like these."),
                         phrase("Weather", "%1 further lines like these."));
  return lines;
}

QString changesText(const MergedWeather& merged) {
  QStringList lines;
  const auto tell = [&lines](int count, Phrase one, Phrase many) {
    if (count > 0) lines << countedText(count, one, many);
  };
  tell(merged.added,
       phrase("Weather", "%1 day comes in."),
       phrase("Weather", "%1 days come in."));
  tell(merged.replaced,
       phrase("Weather", "%1 day gets other figures."),
       phrase("Weather", "%1 days get other figures."));
  tell(merged.forecastDropped,
       phrase("Weather", "%1 day of the earlier forecast goes."),
       phrase("Weather", "%1 days of the earlier forecast go."));
  tell(merged.unchanged,
       phrase("Weather", "%1 day stands already."),
       phrase("Weather", "%1 days stand already."));
  tell(merged.keptBecauseWeightier,
       phrase("Weather", "%1 day stays as it is: what is known of it weighs more."),
       phrase("Weather", "%1 days stay as they are: what is known of them weighs more."));
  if (merged.edits.empty())
    lines.prepend(say(Sentence{phrase("Weather", "Nothing: it tells nothing new.")}));
  return lines.join(QLatin1Char('\n'));
}

QString keepText(const MergedWeather& merged) {
  const int days = merged.added + merged.replaced;
  if (days == 0) return WeatherFilePanel::tr("&Keep it");
  return countedText(
      days, phrase("Weather", "&Keep %1 day"), phrase("Weather", "&Keep %1 days"));
}

}  // namespace

WeatherFilePanel::WeatherFilePanel(Session& session,
                                   Questions& questions,
                                   QWidget* parent)
    : BesidePanel(tr("Bring in a file"),
                  tr("Daily weather: GHCN-Daily, daily summaries, or any table with a "
                     "date, a lowest and a highest temperature."),
                  parent)
    , session_(&session)
    , questions_(&questions)
    , import_(new WeatherImport{this}) {
  setObjectName(QStringLiteral("weatherFile"));
  choose_ = new QPushButton{tr("Choose a f&ile…")};
  choose_->setObjectName(QStringLiteral("chooseFile"));
  problem_ = wrappedLabel("fileProblem", true);
  lines().addWidget(choose_, 0, Qt::AlignLeft);
  lines().addWidget(choices());
  lines().addWidget(waiting_ = waiting());
  lines().addWidget(problem_);
  lines().addWidget(report_ = report(), 1);
  lines().addWidget(deeds_ = deeds());
  lines().addStretch();
  connect(choose_, &QPushButton::clicked, this, &WeatherFilePanel::chooseFile);
  connect(import_, &WeatherImport::progressed, progress_, &QProgressBar::setValue);
  connect(import_, &WeatherImport::read, this, &WeatherFilePanel::showFile);
  connect(import_, &WeatherImport::failed, this, &WeatherFilePanel::showProblems);
  connect(this, &BesidePanel::closed, this, &WeatherFilePanel::giveUp);
  giveUp();
}

QWidget* WeatherFilePanel::choices() {
  auto* box = new QWidget;
  auto* column = new QVBoxLayout{box};
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  kind_ = combo("daysAre");
  kind_->addItem(tr("measured at the station"),
                 static_cast<int>(WeatherSource::measured));
  kind_->addItem(tr("a forecast"), static_cast<int>(WeatherSource::forecast));
  temperature_ = combo("temperatureUnit");
  temperature_->addItem(tr("as found in the file"), asFound);
  for (const auto unit : {TemperatureUnit::celsius,
                          TemperatureUnit::fahrenheit,
                          TemperatureUnit::tenthsOfCelsius})
    temperature_->addItem(say(nameOf(unit)), static_cast<int>(unit));
  rain_ = combo("rainUnit");
  rain_->addItem(tr("as found in the file"), asFound);
  for (const auto unit :
       {RainUnit::millimetres, RainUnit::inches, RainUnit::tenthsOfMillimetres})
    rain_->addItem(say(nameOf(unit)), static_cast<int>(unit));
  station_ = new QLineEdit;
  station_->setObjectName(QStringLiteral("station"));
  column->addWidget(labelled(tr("The days &are"), kind_));
  column->addWidget(units_ = labelled(tr("Temperatures are i&n"), temperature_));
  column->addWidget(rainUnits_ = labelled(tr("&Rain is in"), rain_));
  column->addWidget(stations_ =
                        labelled(tr("Station, where there are se&veral"), station_));
  for (QComboBox* field : {kind_, temperature_, rain_})
    connect(field, &QComboBox::currentIndexChanged, this, &WeatherFilePanel::readAgain);
  connect(station_, &QLineEdit::editingFinished, this, [this] {
    if (station_->isModified()) readAgain();
    station_->setModified(false);
  });
  return box;
}

QWidget* WeatherFilePanel::waiting() {
  auto* box = new QWidget;
  auto* column = new QVBoxLayout{box};
  column->setContentsMargins(0, 4, 0, 4);
  waitingFor_ = wrappedLabel("readingFile");
  progress_ = new QProgressBar;
  progress_->setObjectName(QStringLiteral("readingProgress"));
  progress_->setAccessibleName(tr("Share of the file read"));
  auto* cancel = new QPushButton{tr("Cance&l")};
  cancel->setObjectName(QStringLiteral("cancelReading"));
  auto* line = new QHBoxLayout;
  line->addWidget(progress_, 1);
  line->addWidget(cancel);
  column->addWidget(waitingFor_);
  column->addLayout(line);
  connect(cancel, &QPushButton::clicked, this, [this] {
    giveUp();
    takeFocus();
  });
  return box;
}

QWidget* WeatherFilePanel::report() {
  auto* inner = new QWidget;
  auto* column = new QVBoxLayout{inner};
  column->setContentsMargins(0, 0, 8, 0);
  column->setSpacing(6);
  changes_ = wrappedLabel("fileChanges");
  auto* box = new QWidget;
  box->setObjectName(QStringLiteral("foundInFile"));
  found_ = new QVBoxLayout{box};
  found_->setContentsMargins(0, 0, 0, 0);
  found_->setSpacing(6);
  column->addWidget(textLabel(tr("What it changes"), TypeSize::name, true));
  column->addWidget(changes_);
  column->addSpacing(8);
  column->addWidget(textLabel(tr("Found in it"), TypeSize::name, true));
  column->addWidget(box);
  column->addStretch();
  auto* area = new QScrollArea;
  area->setWidget(inner);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setMinimumHeight(180);
  area->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Ignored);
  area->viewport()->setBackgroundRole(QPalette::Base);
  inner->setAutoFillBackground(false);
  return area;
}

QWidget* WeatherFilePanel::deeds() {
  auto* box = new QWidget;
  auto* line = new QHBoxLayout{box};
  line->setContentsMargins(0, 0, 0, 0);
  keep_ = new QPushButton;
  keep_->setObjectName(QStringLiteral("keepFile"));
  keep_->setProperty("main", true);
  auto* leave = new QPushButton{tr("&Leave it")};
  leave->setObjectName(QStringLiteral("leaveFile"));
  line->addWidget(keep_);
  line->addWidget(leave);
  line->addStretch();
  connect(keep_, &QPushButton::clicked, this, &WeatherFilePanel::keep);
  connect(leave, &QPushButton::clicked, this, [this] {
    giveUp();
    takeFocus();
  });
  return box;
}

void WeatherFilePanel::takeFocus() {
  (choose_->isEnabled() ? static_cast<QWidget*>(choose_) : this)
      ->setFocus(Qt::OtherFocusReason);
}

void WeatherFilePanel::chooseFile() {
  const QString path = questions_->weatherToOpen(this);
  if (!path.isEmpty()) bringIn(path);
}

void WeatherFilePanel::bringIn(const QString& path) {
  startOver();
  path_ = path;
  readAgain();
}

void WeatherFilePanel::giveUp() {
  import_->cancel();
  startOver();
}

/// No file, and nothing said of one.
void WeatherFilePanel::startOver() {
  path_.clear();
  file_.reset();
  for (QComboBox* field : {kind_, temperature_, rain_}) {
    const QSignalBlocker quiet{field};
    field->setCurrentIndex(0);
  }
  station_->clear();
  for (QWidget* part : {units_,
                        rainUnits_,
                        stations_,
                        waiting_,
                        static_cast<QWidget*>(problem_),
                        report_,
                        deeds_})
    part->hide();
  choose_->setEnabled(session_->isOpen() && !session_->isReadOnly());
}

WeatherReading WeatherFilePanel::reading() const {
  WeatherReading reading;
  reading.today = session_->today();
  reading.source = static_cast<WeatherSource>(kind_->currentData().toInt());
  if (const int unit = temperature_->currentData().toInt(); unit != asFound)
    reading.temperatureUnit = static_cast<TemperatureUnit>(unit);
  if (const int unit = rain_->currentData().toInt(); unit != asFound)
    reading.rainUnit = static_cast<RainUnit>(unit);
  if (const QString name = station_->text().trimmed(); !name.isEmpty())
    reading.station = name.toStdString();
  return reading;
}

void WeatherFilePanel::readAgain() {
  if (path_.isEmpty()) return;
  file_.reset();
  for (QWidget* part : {static_cast<QWidget*>(problem_), report_, deeds_}) part->hide();
  waitingFor_->setText(tr("Reading %1").arg(QFileInfo{path_}.fileName()));
  progress_->setValue(0);
  waiting_->show();
  import_->start(path_, reading());
}

void WeatherFilePanel::showProblems(const Problems& problems) {
  QStringList lines;
  for (const Problem& problem : problems) lines << say(problem);
  waiting_->hide();
  problem_->setText(lines.join(QLatin1Char('\n')));
  problem_->show();
  units_->show();
  stations_->show();
}

void WeatherFilePanel::showUnits(const WeatherReport& report) {
  const auto open = [](UnitOrigin origin) {
    return origin == UnitOrigin::inferred || origin == UnitOrigin::told;
  };
  units_->setVisible(open(report.unitOrigin));
  rainUnits_->setVisible(report.hasRain && open(report.rainUnitOrigin));
  stations_->setVisible(!station_->text().isEmpty());
  temperature_->setItemText(0, tr("as found: %1").arg(say(nameOf(report.unit))));
  rain_->setItemText(0, tr("as found: %1").arg(say(nameOf(report.rainUnit))));
}

void WeatherFilePanel::showFile(const std::shared_ptr<const WeatherFile>& file) {
  file_ = file;
  waiting_->hide();
  showUnits(file->report);
  emptyOut(*found_);
  for (const QString& line : found(file->report)) {
    QLabel* label = wrappedLabel("foundLine");
    label->setText(line);
    found_->addWidget(label);
  }
  report_->show();
  deeds_->show();
  refresh();
  keep_->setFocus(Qt::OtherFocusReason);
}

void WeatherFilePanel::refresh() {
  choose_->setEnabled(session_->isOpen() && !session_->isReadOnly());
  if (!file_) return;
  const MergedWeather merged = mergeWeather(session_->orchard(), file_->days);
  changes_->setText(changesText(merged));
  keep_->setText(keepText(merged));
  keep_->setEnabled(!merged.edits.empty() && !session_->isReadOnly());
}

void WeatherFilePanel::keep() {
  const std::string name = QFileInfo{path_}.fileName().toStdString();
  const Problems problems =
      session_->perform(importWeather(session_->orchard(), file_->days, name));
  if (!problems.empty()) return showProblems(problems);
  giveUp();
  Q_EMIT kept();
}

}  // namespace topwire
