#include "app/windows/day_forms.h"

#include "app/words/say.h"
#include "core/calendar/clock_time.h"
#include "core/edit/crew_deeds.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QVBoxLayout>

namespace topwire {

namespace {

constexpr int daysOffered = 60;
constexpr int quarter = 25;
constexpr int dateWidth = 170;
constexpr int hourWidth = 96;

}  // namespace

DayForm::DayForm(Session& session, const char* name, QWidget* parent)
    : Card(QPalette::Base, parent)
    , session_(&session)
    , title_(textLabel({}, TypeSize::name, true))
    , fields_(new QGridLayout)
    , lines_(new QVBoxLayout)
    , deeds_(new QHBoxLayout)
    , problem_(textLabel({}, TypeSize::body, true))
    , close_(new QPushButton{tr("Close without chan&ging")}) {
  setObjectName(QLatin1String(name));
  problem_->setObjectName(QStringLiteral("dayFormProblem"));
  problem_->setWordWrap(true);
  close_->setObjectName(QStringLiteral("dayFormClose"));
  fields_->setHorizontalSpacing(16);
  fields_->setVerticalSpacing(4);
  auto* all = new QVBoxLayout{this};
  all->setContentsMargins(16, 10, 16, 12);
  all->setSpacing(8);
  all->addWidget(title_);
  all->addLayout(fields_);
  all->addLayout(lines_);
  all->addWidget(problem_);
  all->addLayout(deeds_);
  deeds_->setSpacing(8);
  deeds_->addStretch();
  deeds_->addWidget(close_);
  connect(close_, &QPushButton::clicked, this, &DayForm::closed);
}

void DayForm::addField(const QString& label, QWidget* field, int stretch) {
  const int column = fields_->columnCount();
  QLabel* words = mutedLabel(label, TypeSize::body);
  words->setBuddy(field);
  field->setMinimumHeight(measure::buttonHeight);
  fields_->addWidget(words, 0, column);
  fields_->addWidget(field, 1, column);
  fields_->setColumnStretch(column, stretch);
}

QPushButton* DayForm::addDeed(const QString& words, const char* name, bool main) {
  auto* button = new QPushButton{words};
  button->setObjectName(QLatin1String(name));
  button->setProperty("main", main);
  const int beforeClose = deeds_->count() - 1;
  deeds_->insertWidget(beforeClose, button);
  return button;
}

void DayForm::setTitle(const QString& title) {
  title_->setText(title);
}

void DayForm::addNote(const QString& note) {
  QLabel* words = mutedLabel(note, TypeSize::body);
  words->setWordWrap(true);
  words->setMinimumWidth(1);
  lines_->addWidget(words);
}

void DayForm::addWide(QWidget* part) {
  lines_->addWidget(part);
}

void DayForm::clearProblem() {
  problem_->hide();
}

void DayForm::settle(const Problems& problems) {
  if (problems.empty()) return Q_EMIT closed();
  say(topwire::say(problems.front().sentence));
}

void DayForm::say(const QString& problem) {
  problem_->setText(problem);
  problem_->show();
}

void DayForm::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return Q_EMIT closed();
  Card::keyPressEvent(event);
}

CloseBlockForm::CloseBlockForm(Session& session, QWidget* parent)
    : DayForm(session, "closeBlockForm", parent)
    , block_(new QComboBox)
    , until_(new QComboBox)
    , hour_(new QLineEdit)
    , reason_(new QLineEdit) {
  setTitle(tr("Close a block"));
  block_->setObjectName(QStringLiteral("closedBlock"));
  until_->setObjectName(QStringLiteral("closedUntil"));
  hour_->setObjectName(QStringLiteral("closedHour"));
  hour_->setPlaceholderText(QStringLiteral("00:00"));
  until_->setMinimumWidth(dateWidth);
  hour_->setFixedWidth(hourWidth);
  reason_->setObjectName(QStringLiteral("closedReason"));
  addField(tr("B&lock"), block_, 1);
  addField(tr("Un&til"), until_);
  addField(tr("at &hour"), hour_);
  addField(tr("&Reason"), reason_, 2);
  addNote(
      tr("How long people stay out after a spray is on its label and in local law; that "
         "is what to enter here. Topwire only keeps work out of the block until then."));
  QPushButton* deed = addDeed(tr("Close the bloc&k"), "closeBlockDeed", true);
  connect(deed, &QPushButton::clicked, this, &CloseBlockForm::act);
  for (QLineEdit* field : {hour_, reason_})
    connect(field, &QLineEdit::returnPressed, this, &CloseBlockForm::act);
}

void CloseBlockForm::offerDays() {
  until_->clear();
  for (int ahead = 0; ahead <= daysOffered; ++ahead)
    until_->addItem(shortDayText(plusDays(day_, ahead)));
  until_->setPlaceholderText(tr("choose a day"));
  until_->setCurrentIndex(-1);
}

std::optional<int> CloseBlockForm::hour() const {
  return parseClock(hour_->text().trimmed().toStdString());
}

void CloseBlockForm::open(Day day) {
  day_ = day;
  clearProblem();
  block_->clear();
  for (const Block* block : blocksInOrder(session().orchard()))
    block_->addItem(QString::fromStdString(block->name),
                    QString::fromStdString(idText(block->id)));
  offerDays();
  hour_->clear();
  reason_->clear();
  block_->setFocus(Qt::OtherFocusReason);
}

void CloseBlockForm::act() {
  const auto minute = hour();
  if (until_->currentIndex() < 0) {
    until_->setFocus(Qt::OtherFocusReason);
    return say(tr("Choose the day on which people may go in again."));
  }
  if (!minute) {
    hour_->setFocus(Qt::OtherFocusReason);
    return say(tr("Type the hour at which people may go in again, as 14:30."));
  }
  BlockClosure closure;
  closure.id = session().ids().next<ClosureId>();
  closure.block = parseId<BlockId>(block_->currentData().toString().toStdString())
                      .value_or(BlockId{});
  closure.from = day_;
  closure.until = plusDays(day_, until_->currentIndex());
  closure.untilMinute = *minute;
  closure.reason = reason_->text().trimmed().toStdString();
  settle(session().perform(closeBlock(session().orchard(), closure)));
}

LostDayForm::LostDayForm(Session& session, QWidget* parent)
    : DayForm(session, "lostDayForm", parent)
    , percent_(new QSpinBox)
    , reason_(new QLineEdit) {
  percent_->setObjectName(QStringLiteral("lostPercent"));
  percent_->setRange(0, 100);
  percent_->setSingleStep(quarter);
  percent_->setSuffix(QStringLiteral(" %"));
  percent_->setMinimumWidth(110);
  reason_->setObjectName(QStringLiteral("lostReason"));
  addField(tr("Of the usual hours"), percent_);
  addField(tr("&Reason"), reason_, 1);
  addNote(
      tr("0 % on a holiday or a day lost to weather, 100 % to work on a day of rest."));
  QPushButton* deed = addDeed(tr("Se&t the hours"), "lostDayDeed", true);
  usual_ = addDeed(tr("A usua&l day again"), "usualDay", false);
  connect(deed, &QPushButton::clicked, this, &LostDayForm::act);
  connect(usual_, &QPushButton::clicked, this, &LostDayForm::makeUsual);
  connect(reason_, &QLineEdit::returnPressed, this, &LostDayForm::act);
}

void LostDayForm::open(Day day) {
  day_ = day;
  clearProblem();
  setTitle(tr("The hours of %1").arg(weekdayText(day)));
  const auto& days = session().orchard().workDays;
  const auto known = days.find(day);
  usual_->setVisible(known != days.end());
  percent_->setValue(known == days.end() ? 0 : known->second.percent);
  reason_->setText(known == days.end() ? QString{}
                                       : QString::fromStdString(known->second.reason));
  percent_->setFocus(Qt::OtherFocusReason);
  percent_->selectAll();
}

void LostDayForm::act() {
  WorkDay work;
  work.day = day_;
  work.percent = percent_->value();
  work.reason = reason_->text().trimmed().toStdString();
  settle(session().perform(setWorkDay(session().orchard(), work)));
}

void LostDayForm::makeUsual() {
  settle(session().perform(clearWorkDay(session().orchard(), day_)));
}

}  // namespace topwire
