#include "app/windows/settings_page.h"

#include "app/look/card.h"
#include "app/models/fresh_orchard.h"
#include "app/windows/crews_card.h"
#include "app/windows/day_field.h"
#include "app/windows/field_reader.h"
#include "app/windows/normals_table.h"
#include "app/windows/page_head.h"
#include "app/windows/preferences.h"
#include "app/windows/working_day_card.h"
#include "app/words/say.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace topwire {

namespace {

constexpr int widest = 860;

QVBoxLayout* cardLines(Card* card) {
  auto* lines = new QVBoxLayout{card};
  lines->setContentsMargins(16, 12, 16, 16);
  lines->setSpacing(8);
  return lines;
}

QString textOf(Length length, UnitSystem units) {
  return QString::fromStdString(lengthText(length, units));
}

/// The figure as it is held, not rounded for show, so that saving changes nothing else.
QString degreesText(double degrees) {
  return QLocale::c().toString(degrees, 'g', QLocale::FloatingPointShortest);
}

}  // namespace

SettingsPage::SettingsPage(Session& session,
                           Questions& questions,
                           Preferences& preferences,
                           QWidget* parent)
    : QWidget(parent)
    , session_(&session)
    , preferences_(&preferences)
    , form_(new Form)
    , name_(new QLineEdit)
    , latitude_(new QLineEdit)
    , elevation_(new QLineEdit)
    , units_(new QComboBox)
    , station_(new QComboBox)
    , stationElevation_(new QLineEdit)
    , recordsFrom_(dayField())
    , firstLeafDelay_(new QLineEdit)
    , normals_(new NormalsTable)
    , normalsProblem_(textLabel({}, TypeSize::small, true))
    , save_(new QPushButton(tr("&Save settings"))) {
  setObjectName(QStringLiteral("settingsPage"));
  auto* head = new PageHead;
  head->say(tr("Settings"),
            tr("Where the orchard lies, who works in it, and how it is shown here"));
  auto* inner = new QWidget;
  inner->setMaximumWidth(widest);
  auto* cards = new QVBoxLayout{inner};
  cards->setContentsMargins(0, 0, 0, 0);
  cards->setSpacing(16);
  cards->addWidget(makeOrchardCard());
  cards->addWidget(new CrewsCard{session, questions});
  cards->addWidget(new WorkingDayCard{session});
  cards->addWidget(makeScreenCard());
  cards->addStretch();
  auto* area = new QScrollArea;
  area->setFrameShape(QFrame::NoFrame);
  area->setWidgetResizable(true);
  area->setFocusPolicy(Qt::NoFocus);
  area->setWidget(inner);
  area->viewport()->setAutoFillBackground(false);
  inner->setAutoFillBackground(false);
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(measure::pageMargin, 12, measure::pageMargin, 20);
  lines->setSpacing(14);
  lines->addWidget(head);
  lines->addWidget(area, 1);
  connect(session_, &Session::changed, this, &SettingsPage::fill);
  fill();
}

QWidget* SettingsPage::makeOrchardCard() {
  form_->add(QStringLiteral("name"), tr("Orchard's &name"), name_);
  form_->add(QStringLiteral("units"), tr("&Units"), units_);
  form_->add(QStringLiteral("latitude"),
             tr("&Latitude, degrees"),
             latitude_,
             tr("Negative south of the equator"));
  form_->add(QStringLiteral("elevation"), tr("&Elevation"), elevation_);
  form_->add(QStringLiteral("station"), tr("Weather s&tation"), station_);
  form_->add(QStringLiteral("stationElevation"),
             tr("Ele&vation of the station"),
             stationElevation_);
  form_->add(QStringLiteral("recordsFrom"),
             tr("&Records begin on"),
             recordsFrom_,
             tr("Work that closed before this day is not asked for"));
  form_->add(QStringLiteral("firstLeafDelay"),
             tr("First leaf &blooms later by, days"),
             firstLeafDelay_,
             tr("Trees just planted wake after the others, by one to two weeks"));
  units_->addItem(tr("metric"), static_cast<int>(UnitSystem::metric));
  units_->addItem(tr("US customary"), static_cast<int>(UnitSystem::usCustomary));
  normalsProblem_->setObjectName(QStringLiteral("message-normals"));
  normalsProblem_->setVisible(false);
  save_->setObjectName(QStringLiteral("saveSettings"));
  save_->setProperty("main", true);

  auto* card = new Card{QPalette::Light};
  auto* lines = cardLines(card);
  lines->addWidget(textLabel(tr("The orchard"), TypeSize::name, true));
  lines->addWidget(form_);
  lines->addWidget(textLabel(tr("Monthly normals at the station")));
  lines->addWidget(normals_);
  lines->addWidget(normalsProblem_);
  lines->addWidget(save_, 0, Qt::AlignLeft);
  connect(units_, &QComboBox::activated, this, &SettingsPage::changeUnits);
  connect(station_, &QComboBox::activated, this, &SettingsPage::takeStation);
  connect(form_, &Form::edited, this, &SettingsPage::check);
  connect(normals_, &NormalsTable::edited, this, &SettingsPage::check);
  connect(save_, &QPushButton::clicked, this, &SettingsPage::save);
  return card;
}

QWidget* SettingsPage::makeScreenCard() {
  auto* theme = new QComboBox;
  theme->setObjectName(QStringLiteral("themeChoice"));
  theme->addItem(tr("as the desktop is"), QString{});
  theme->addItem(tr("light"), QStringLiteral("light"));
  theme->addItem(tr("dark"), QStringLiteral("dark"));
  const auto current = preferences_->theme();
  theme->setCurrentIndex(!current ? 0 : *current == Theme::light ? 1 : 2);
  auto* language = new QComboBox;
  language->setObjectName(QStringLiteral("languageChoice"));
  language->addItem(tr("as the system is"), QString{});
  language->addItem(QStringLiteral("English"), QStringLiteral("en"));
  language->addItem(QStringLiteral("Español"), QStringLiteral("es"));
  language->setCurrentIndex(qMax(0, language->findData(preferences_->language())));

  auto* screen = new Form;
  screen->add(QStringLiteral("theme"), tr("&Colours"), theme);
  screen->add(QStringLiteral("language"), tr("Lan&guage"), language);
  auto* card = new Card{QPalette::Light};
  auto* lines = cardLines(card);
  lines->addWidget(textLabel(tr("On this machine"), TypeSize::name, true));
  lines->addWidget(screen);
  connect(theme, &QComboBox::activated, this, [this, theme](int index) {
    const Theme wanted = index == 1 ? Theme::light : Theme::dark;
    preferences_->setTheme(index == 0 ? std::nullopt : std::optional{wanted});
    Q_EMIT themeChosen();
  });
  connect(language, &QComboBox::activated, this, [this, language] {
    preferences_->setLanguage(language->currentData().toString());
    Q_EMIT languageChosen();
  });
  return card;
}

UnitSystem SettingsPage::units() const {
  return static_cast<UnitSystem>(units_->currentData().toInt());
}

void SettingsPage::fillStations() {
  station_->clear();
  for (const Station& station : session_->tables().stations)
    station_->addItem(QString::fromStdString(station.name));
  const QString current = QString::fromStdString(shown_.station);
  if (station_->findText(current) < 0) station_->addItem(current);
  station_->setCurrentIndex(station_->findText(current));
}

void SettingsPage::fill() {
  if (!session_->isOpen()) return;
  const Settings& settings = session_->orchard().settings;
  save_->setEnabled(!session_->isReadOnly());
  takeWorkingDay(shown_, settings);
  if (settings == shown_) return;
  const QSignalBlocker quiet{form_};
  shown_ = typed_ = settings;
  name_->setText(QString::fromStdString(settings.name));
  latitude_->setText(degreesText(settings.latitude));
  units_->setCurrentIndex(units_->findData(static_cast<int>(settings.units)));
  elevation_->setText(textOf(settings.elevation, settings.units));
  stationElevation_->setText(textOf(settings.stationElevation, settings.units));
  recordsFrom_->setDate(dateOf(settings.recordsFrom));
  firstLeafDelay_->setText(QString::number(settings.firstLeafDelayDays));
  normals_->fill(settings.normals, settings.units);
  fillStations();
  form_->forgetTouches();
  sayStation();
}

void SettingsPage::changeUnits() {
  FieldReader fields{typed_.units};
  const Settings typed = read(fields);
  if (!fields.problems().empty()) return;
  typed_ = typed;
  elevation_->setText(textOf(typed.elevation, units()));
  stationElevation_->setText(textOf(typed.stationElevation, units()));
  normals_->fill(typed.normals, units());
  check();
}

void SettingsPage::takeStation() {
  const Station* station =
      session_->tables().station(station_->currentText().toStdString());
  if (station == nullptr) return;
  typed_.stationElevation = station->elevation;
  stationElevation_->setText(textOf(station->elevation, units()));
  normals_->fill(station->normals, units());
  sayStation();
  check();
}

void SettingsPage::sayStation() {
  const Station* station =
      session_->tables().station(station_->currentText().toStdString());
  form_->setHint(QStringLiteral("station"),
                 station == nullptr ? tr("Normals of your own")
                                    : tr("%1. Source: %2")
                                          .arg(QString::fromStdString(station->period),
                                               QString::fromStdString(station->source)));
}

Settings SettingsPage::read(FieldReader& fields) const {
  Settings settings = session_->orchard().settings;
  settings.name = fields.text(name_->text());
  settings.latitude = fields.number("latitude", latitude_->text());
  settings.units = units();
  settings.elevation = fields.length("elevation", elevation_->text(), typed_.elevation);
  settings.station = station_->currentText().toStdString();
  settings.stationElevation = fields.length(
      "stationElevation", stationElevation_->text(), typed_.stationElevation);
  settings.normals = normals_->normals();
  settings.recordsFrom = dayOf(recordsFrom_->date());
  settings.firstLeafDelayDays = fields.days("firstLeafDelay", firstLeafDelay_->text());
  return settings;
}

Checked<Change> SettingsPage::deed() const {
  FieldReader fields{units()};
  const Settings settings = read(fields);
  Checked<Change> change = changeSettings(session_->orchard(), settings);
  Problems unread = fields.problems();
  if (!normals_->unreadable().isEmpty())
    unread.push_back(
        {Sentence{phrase("Form", "%1 is not a temperature. Write it as 4.5."),
                  {normals_->unreadable().toStdString()}},
         "normals",
         {}});
  if (unread.empty()) return change;
  return tl::unexpected{firstOfEach(unread, change ? Problems{} : change.error())};
}

void SettingsPage::check() {
  const Checked<Change> change = deed();
  const Problems problems = change ? Problems{} : change.error();
  form_->showTouched(problems);
  normalsProblem_->setVisible(false);
  for (const Problem& problem : problems)
    if (problem.place == "normals") {
      normalsProblem_->setText(say(problem.sentence));
      normalsProblem_->setVisible(true);
    }
}

void SettingsPage::save() {
  const Problems problems = session_->perform(deed());
  if (!problems.empty()) form_->showAll(problems);
}

}  // namespace topwire
