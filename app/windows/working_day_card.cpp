#include "app/windows/working_day_card.h"

#include "app/windows/field_reader.h"
#include "app/windows/operation_editors.h"
#include "core/calendar/clock_time.h"
#include "core/edit/deeds.h"

#include <QLocale>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace topwire {

namespace {

constexpr int weekdayColumns = 4;

QStringList weekdayNames() {
  QStringList names;
  for (int day = Qt::Monday; day <= Qt::Sunday; ++day)
    names << QLocale{}.standaloneDayName(day);
  return names;
}

}  // namespace

void takeWorkingDay(Settings& into, const Settings& from) {
  into.workdays = from.workdays;
  into.startMinute = from.startMinute;
  into.moveMinutes = from.moveMinutes;
  into.moveMinutesPerKm = from.moveMinutesPerKm;
  into.keepTogether = from.keepTogether;
  into.gangAtMost = from.gangAtMost;
}

WorkingDayCard::WorkingDayCard(Session& session, QWidget* parent)
    : Card(QPalette::Light, parent)
    , session_(&session)
    , form_(new Form)
    , workdays_(new ChoicesField(weekdayNames(), weekdayColumns))
    , start_(new QLineEdit)
    , moveMinutes_(new QLineEdit)
    , minutesPerKm_(new QLineEdit)
    , keepTogether_(new QLineEdit)
    , gangAtMost_(new QLineEdit)
    , save_(new QPushButton(tr("Save w&orking day"))) {
  setObjectName(QStringLiteral("workingDayCard"));
  save_->setObjectName(QStringLiteral("saveWorkingDay"));
  save_->setProperty("main", true);
  addFields();
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(16, 12, 16, 16);
  lines->setSpacing(8);
  lines->addWidget(textLabel(tr("The working day"), TypeSize::name, true));
  lines->addWidget(form_);
  lines->addWidget(save_, 0, Qt::AlignLeft);
  connect(form_, &Form::edited, this, &WorkingDayCard::check);
  connect(save_, &QPushButton::clicked, this, &WorkingDayCard::save);
  connect(session_, &Session::changed, this, &WorkingDayCard::fill);
  fill();
}

void WorkingDayCard::addFields() {
  form_->addWide(QStringLiteral("workdays"),
                 tr("&Days worked"),
                 workdays_,
                 tr("Holidays and days lost to weather are said on the day"));
  form_->add(QStringLiteral("start"), tr("Wor&k begins at"), start_, tr("Such as 06:30"));
  form_->add(QStringLiteral("gangAtMost"),
             tr("Workers in a group, at most"),
             gangAtMost_,
             tr("Larger crews are split for planning"));
  form_->add(QStringLiteral("moveMinutes"),
             tr("&Minutes to another block"),
             moveMinutes_,
             tr("To go there and set up"));
  form_->add(QStringLiteral("moveMinutesPerKm"),
             tr("And for each kilometre"),
             minutesPerKm_,
             tr("Where both blocks have coordinates"));
  form_->add(QStringLiteral("keepTogether"),
             tr("Keep crews toget&her, percent"),
             keepTogether_,
             tr("Higher: they finish a block before they move on"));
}

void WorkingDayCard::fill() {
  if (!session_->isOpen()) return;
  const Settings& settings = session_->orchard().settings;
  save_->setEnabled(!session_->isReadOnly());
  Settings shown = shown_;
  takeWorkingDay(shown, settings);
  if (shown == shown_ && filled_) return;
  filled_ = true;
  const QSignalBlocker quiet{form_};
  shown_ = shown;
  for (std::size_t day = 0; day < settings.workdays.size(); ++day)
    workdays_->setChosen(day, settings.workdays.at(day));
  start_->setText(QString::fromStdString(clockText(settings.startMinute)));
  moveMinutes_->setText(QString::number(settings.moveMinutes));
  minutesPerKm_->setText(QString::number(settings.moveMinutesPerKm));
  keepTogether_->setText(QString::number(settings.keepTogether));
  gangAtMost_->setText(QString::number(settings.gangAtMost));
  form_->forgetTouches();
}

Checked<Change> WorkingDayCard::deed() const {
  const Orchard& orchard = session_->orchard();
  Settings settings = orchard.settings;
  FieldReader read{settings.units};
  for (std::size_t day = 0; day < settings.workdays.size(); ++day)
    settings.workdays.at(day) = workdays_->isChosen(day);
  settings.startMinute = read.timeOfDay("start", start_->text());
  settings.moveMinutes = read.whole("moveMinutes", moveMinutes_->text());
  settings.moveMinutesPerKm = read.whole("moveMinutesPerKm", minutesPerKm_->text());
  settings.keepTogether = read.whole("keepTogether", keepTogether_->text());
  settings.gangAtMost = read.whole("gangAtMost", gangAtMost_->text());
  Checked<Change> change = changeSettings(orchard, settings);
  if (read.problems().empty()) return change;
  return tl::unexpected{
      firstOfEach(read.problems(), change ? Problems{} : change.error())};
}

void WorkingDayCard::check() {
  const Checked<Change> change = deed();
  form_->showTouched(change ? Problems{} : change.error());
}

void WorkingDayCard::save() {
  const Problems problems = session_->perform(deed());
  if (!problems.empty()) form_->showAll(problems);
}

}  // namespace topwire
