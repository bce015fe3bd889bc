#include "app/windows/crew_form.h"

#include "app/look/card.h"
#include "app/windows/field_reader.h"
#include "core/edit/crew_deeds.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>
#include <set>

namespace topwire {

namespace {

/// Beyond any day's worker-hours, for the deed to refuse.
constexpr double mostYoungHours = 1e6;

QString figureOf(double figure) {
  return QLocale::c().toString(figure, 'g', 6);
}

int minutesOf(double hours) {
  return static_cast<int>(std::lround(std::clamp(hours, -1.0, mostYoungHours) * 60));
}

}  // namespace

CrewForm::CrewForm(Session& session, QWidget* parent)
    : QWidget(parent)
    , session_(&session)
    , title_(textLabel({}, TypeSize::body, true))
    , form_(new Form)
    , name_(new QLineEdit)
    , workers_(new QLineEdit)
    , hours_(new QLineEdit)
    , youngHours_(new QLineEdit)
    , skills_(new QLineEdit)
    , members_(new QLineEdit)
    , daysOff_(new QLineEdit)
    , save_(new QPushButton(tr("Sa&ve crew"))) {
  setObjectName(QStringLiteral("crewForm"));
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(0, 8, 0, 0);
  lines->setSpacing(8);
  lines->addWidget(hairline());
  lines->addWidget(title_);
  lines->addWidget(form_);
  addFields();
  addButtons();
  connect(form_, &Form::edited, this, &CrewForm::check);
  connect(save_, &QPushButton::clicked, this, &CrewForm::save);
  for (QLineEdit* field : findChildren<QLineEdit*>())
    connect(field, &QLineEdit::returnPressed, this, &CrewForm::save);
}

void CrewForm::addFields() {
  form_->add(QStringLiteral("name"), tr("Crew's na&me"), name_);
  form_->add(QStringLiteral("workers"),
             tr("&Workers"),
             workers_,
             tr("As a rule; who turned out is said on the day"));
  form_->add(QStringLiteral("hoursPerDay"), tr("&Hours a day"), hours_);
  form_->add(QStringLiteral("youngMinutes"),
             tr("Hours kept for &young trees"),
             youngHours_,
             tr("Worker-hours a day for first and second leaf, while fruit is picked"));
  form_->addWide(QStringLiteral("skills"), tr("S&kills"), skills_);
  form_->addWide(QStringLiteral("members"),
                 tr("Mem&bers"),
                 members_,
                 tr("Names with commas between; may stay empty"));
  form_->addWide(QStringLiteral("daysOff"),
                 tr("Days o&ff"),
                 daysOff_,
                 tr("With commas between: 2027-05-03, 2027-07-05 – 2027-07-17"));
}

void CrewForm::addButtons() {
  save_->setProperty("main", true);
  save_->setObjectName(QStringLiteral("saveCrew"));
  auto* leave = new QPushButton{tr("Close w&ithout saving")};
  leave->setObjectName(QStringLiteral("leaveCrew"));
  connect(leave, &QPushButton::clicked, this, &CrewForm::left);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(save_);
  buttons->addWidget(leave);
  buttons->addStretch();
  static_cast<QVBoxLayout*>(layout())->addLayout(buttons);
}

void CrewForm::startNew() {
  Crew crew;
  crew.id = session_->ids().next<CrewId>();
  isNew_ = true;
  title_->setText(tr("A new crew"));
  fill(crew);
}

void CrewForm::startEdit(CrewId crew) {
  isNew_ = false;
  const Crew& stands = session_->orchard().crews.at(crew);
  title_->setText(tr("Edit %1").arg(QString::fromStdString(stands.name)));
  fill(stands);
}

bool CrewForm::isAbout(const Orchard& orchard) const {
  return isNew_ || orchard.crews.contains(start_.id);
}

QString CrewForm::skillsHint() const {
  std::set<std::string> asked;
  for (const auto& [id, programme] : session_->programmes())
    for (const Operation& operation : programme.operations)
      if (!operation.skill.empty()) asked.insert(operation.skill);
  const QString known = namesText({asked.begin(), asked.end()});
  return known.isEmpty()
             ? tr("Beside general work; empty: whatever is asked")
             : tr("Beside general work; empty: whatever is asked. Programmes ask for: %1")
                   .arg(known);
}

void CrewForm::fill(const Crew& crew) {
  const QSignalBlocker quiet{form_};
  start_ = crew;
  name_->setText(QString::fromStdString(crew.name));
  workers_->setText(QString::number(crew.workers));
  hours_->setText(figureOf(crew.hoursPerDay));
  youngHours_->setText(figureOf(crew.youngMinutes / 60.0));
  skills_->setText(namesText(crew.skills));
  members_->setText(namesText(crew.members));
  daysOff_->setText(daySpansText(crew.daysOff));
  form_->setHint(QStringLiteral("skills"), skillsHint());
  form_->forgetTouches();
  name_->setFocus(Qt::OtherFocusReason);
}

Checked<Change> CrewForm::deed() const {
  FieldReader read{session_->orchard().settings.units};
  Crew crew = start_;
  crew.name = read.text(name_->text());
  crew.workers = read.whole("workers", workers_->text());
  crew.hoursPerDay = read.number("hoursPerDay", hours_->text());
  if (youngHours_->text() != figureOf(start_.youngMinutes / 60.0))
    crew.youngMinutes = minutesOf(read.number("youngMinutes", youngHours_->text()));
  crew.skills = read.names(skills_->text());
  crew.members = read.names(members_->text());
  crew.daysOff = read.daySpans("daysOff", daysOff_->text());
  const Orchard& orchard = session_->orchard();
  Checked<Change> change = isNew_ ? addCrew(orchard, crew) : editCrew(orchard, crew);
  if (read.problems().empty()) return change;
  return tl::unexpected{
      firstOfEach(read.problems(), change ? Problems{} : change.error())};
}

void CrewForm::check() {
  const Checked<Change> change = deed();
  form_->showTouched(change ? Problems{} : change.error());
}

void CrewForm::save() {
  const Problems problems = session_->perform(deed());
  if (problems.empty())
    Q_EMIT saved();
  else
    form_->showAll(problems);
}

}  // namespace topwire
