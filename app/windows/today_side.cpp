#include "app/windows/today_side.h"

#include "app/look/card.h"
#include "app/windows/block_words.h"
#include "app/windows/task_words.h"
#include "app/windows/worth_strip.h"
#include "app/words/say.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

using As = SideLine::As;

constexpr int risksShown = 2;
constexpr int waitingShown = 3;
constexpr int pastShown = 2;
constexpr int blocksShown = 4;
constexpr int worthDays = 14;
const QString reopenId = QStringLiteral("reopen:");
const QString whyId = QStringLiteral("why:");
const QString releaseId = QStringLiteral("release:");

SideLine words(const QString& text) {
  return {As::words, text, {}, {}};
}

SideLine name(const QString& text) {
  return {As::name, text, {}, {}};
}

SideLine button(const QString& text, const QString& id) {
  return {As::button, text, {}, id};
}

SideLine figure(const WindowAtRisk& risk, TaskState state) {
  const auto hours = static_cast<std::int64_t>(std::llround(risk.hoursMissing));
  const QString text =
      risk.lost
          ? sayCounted(
              hours, phrase("Today", "%1 hour short"), phrase("Today", "%1 hours short"))
          : sayCounted(
              hours, phrase("Today", "%1 hour late"), phrase("Today", "%1 hours late"));
  return {As::figure, text, state, {}};
}

const MissedWindow* missedOf(const std::vector<MissedWindow>& missed,
                             const std::vector<TaskKey>& tasks) {
  for (const MissedWindow& window : missed)  // the most often missed first
    if (std::ranges::find(tasks, window.task) != tasks.end()) return &window;
  return nullptr;
}

QString inPastYears(const MissedWindow& window) {
  const std::int64_t years = window.years;
  if (window.missed == window.years)
    return say(Sentence{
        phrase("Today", "Missed in all %1 past years' weather: the plan lets it slip."),
        {years}});
  return say(Sentence{phrase("Today", "Missed in %1 of %2 past years' weather."),
                      {std::int64_t{window.missed}, years}});
}

bool isShort(const DayWorth& day) {
  constexpr double nothing = 0.005;
  return day.saves >= nothing;
}

/// Whatever its days say, a window the plan cannot meet closes too soon.
SideLine closingLine(const Session& session, TaskView view) {
  if (view.state == TaskState::open) view.state = TaskState::closing;
  return {As::state, stateText(view, session.today()), view.state, {}};
}

std::vector<SideCard> riskCards(Session& session,
                                const CrewPlan& plan,
                                const std::vector<MissedWindow>& missed) {
  std::vector<SideCard> cards;
  for (const WindowAtRisk& risk : windowsAtRisk(plan)) {
    SideCard card{risk.lost ? TaskState::late : TaskState::closing, {}};
    if (cards.empty()) card.lines.push_back(figure(risk, TaskState::late));
    if (!risk.tasks.empty())
      if (const TaskView* view = session.view(risk.tasks.front())) {
        card.lines.push_back(name(taskText(session, *view->task)));
        card.lines.push_back(closingLine(session, *view));
      }
    for (const Sentence& sentence : wordsOf(session.orchard(), session.trade(), risk))
      card.lines.push_back(words(sayNear(session, sentence)));
    if (const MissedWindow* window = missedOf(missed, risk.tasks))
      card.lines.push_back(words(inPastYears(*window)));
    cards.push_back(std::move(card));
  }
  if (cards.empty())
    cards.push_back(
        {std::nullopt,
         {words(say(Sentence{phrase("Today", "Every window can be met.")}))}});
  return cards;
}

/// Windows the plan meets that a wet year would not.
std::vector<SideCard> pastYearCards(Session& session,
                                    const CrewPlan& plan,
                                    const std::vector<MissedWindow>& missed) {
  std::vector<SideCard> cards;
  const std::vector<WindowAtRisk> risks = windowsAtRisk(plan);
  for (const MissedWindow& window : missed) {
    const TaskView* view = session.view(window.task);
    const bool told = std::ranges::any_of(risks, [&](const WindowAtRisk& risk) {
      return std::ranges::find(risk.tasks, window.task) != risk.tasks.end();
    });
    if (told || view == nullptr) continue;
    cards.push_back({std::nullopt,
                     {name(taskText(session, *view->task)), words(inPastYears(window))}});
  }
  return cards;
}

std::vector<SideCard> closedCards(Session& session, Day day) {
  const Orchard& orchard = session.orchard();
  std::vector<SideCard> cards;
  for (const Sentence& sentence : keptOut(orchard, day))
    cards.push_back({std::nullopt, {words(sayNear(session, sentence))}});
  if (cards.empty())
    cards.push_back(
        {std::nullopt, {words(say(Sentence{phrase("Today", "No block is closed.")}))}});
  SideCard deeds;
  for (const BlockClosure* closure : closuresOn(orchard, day))
    deeds.lines.push_back(button(say(Sentence{phrase("Today", "Reopen %1"),
                                              {orchard.blocks.at(closure->block).name}}),
                                 reopenId + QString::fromStdString(idText(closure->id))));
  deeds.lines.push_back(button(say(Sentence{phrase("Today", "Close a &block…")}),
                               QStringLiteral("closeBlock")));
  cards.push_back(std::move(deeds));
  return cards;
}

SideLine nameWithHours(Session& session, const TaskView& view, double hours) {
  return name(say(Sentence{
      phrase("Today", "%1 · %2"),
      {taskText(session, *view.task).toStdString(), hoursInOne(hours).toStdString()}}));
}

/// What a person held back, with the way to take that back.
std::vector<SideCard> heldCards(Session& session, Day day) {
  std::vector<SideCard> cards;
  for (const auto& [id, pin] : session.orchard().pins) {
    const TaskView* view = session.view(pin.task);
    if (pin.kind != PinKind::notBefore || pin.day <= day || view == nullptr) continue;
    cards.push_back(
        {std::nullopt,
         {nameWithHours(session, *view, view->hoursLeft),
          words(sayNear(session, Sentence{phrase("Today", "Not before %1."), {pin.day}})),
          button(say(Sentence{phrase("Today", "Let it be planned again")}),
                 releaseId + QString::fromStdString(idText(id)))}});
  }
  return cards;
}

std::vector<SideCard> waitingCards(Session& session,
                                   const CrewPlan& plan,
                                   Day day,
                                   std::vector<TaskKey>& asked) {
  const Orchard& orchard = session.orchard();
  std::vector<SideCard> cards = heldCards(session, day);
  for (const WaitingTask& task : waitingOn(orchard, session.trade(), plan, day)) {
    const TaskView* view = session.view(task.task);
    if (view == nullptr || waitPinOf(orchard, task.task, day) != nullptr) continue;
    cards.push_back({std::nullopt,
                     {nameWithHours(session, *view, task.hours),
                      words(sayNear(session, task.why)),
                      {As::link,
                       say(Sentence{phrase("Today", "Why, or give it to a crew…")}),
                       {},
                       whyId + QString::number(asked.size())}}});
    asked.push_back(task.task);
  }
  return cards;
}

std::vector<SideCard> yesterdayCards(Session& session, std::optional<Day> planned) {
  if (!planned) return {};
  SideCard card;
  bool missing = false;
  for (const PlanAndDone& job : planAndDone(session.orchard(), *planned)) {
    card.lines.push_back(name(nameOfTask(session, job.planned.task)));
    card.lines.push_back(words(doneText(session, job)));
    missing = missing || job.hoursMissing;
  }
  if (missing)
    card.lines.push_back(button(say(Sentence{phrase("Today", "Enter hour&s…")}),
                                QStringLiteral("enterHours")));
  return {std::move(card)};
}

std::vector<SideCard> wholeCards(Session& session, const CrewPlan& plan) {
  return {{std::nullopt, {words(sayNear(session, wordsOfWhole(plan)))}}};
}

std::vector<SideCard> noteCards(Session& session, const CrewPlan& plan) {
  std::vector<SideCard> cards;
  for (const Sentence& note : plan.question.notes)
    cards.push_back({std::nullopt, {words(sayNear(session, note))}});
  for (const TaskKey& task : plan.question.uncounted)
    if (const TaskView* view = session.view(task))
      cards.push_back(
          {std::nullopt,
           {words(taskText(session, *view->task)),
            {As::state, stateText(*view, session.today()), view->state, {}}}});
  return cards;
}

}  // namespace

TodaySide::TodaySide(Session& session, QWidget* parent)
    : QWidget(parent), session_(&session), lines_(new QVBoxLayout(this)) {
  setObjectName(QStringLiteral("todaySide"));
  lines_->setContentsMargins(0, 0, 0, 0);
  lines_->setSpacing(18);
  risk_ = addSection(tr("At risk"), "atRisk", risksShown);
  pastYears_ = addSection(tr("In past years' weather"), "pastYears", pastShown);
  closed_ = addSection(tr("Keep out"), "keepOut", blocksShown);
  yesterday_ = addSection(tr("As it was planned last"), "fromYesterday", 1);
  waiting_ = addSection(tr("What waits"), "waiting", waitingShown);
  whole_ = addSection(tr("The whole plan"), "wholePlan", 1);
  lines_->addWidget(worthBox());
  notes_ = addSection(tr("Not in the plan"), "notPlanned", waitingShown);
  lines_->addStretch();
}

SideSection* TodaySide::addSection(const QString& title, const char* name, int most) {
  auto* section = new SideSection{title, name, most};
  lines_->addWidget(section);
  connect(section, &SideSection::pressed, this, &TodaySide::takePress);
  return section;
}

QWidget* TodaySide::worthBox() {
  auto* box = new QWidget;
  auto* lines = new QVBoxLayout{box};
  lines->setContentsMargins(0, 0, 0, 0);
  lines->setSpacing(4);
  worth_ = new WorthStrip;
  worthWords_ = textLabel({});
  worthWords_->setObjectName(QStringLiteral("worthWords"));
  worthWords_->setWordWrap(true);
  worthWords_->setMinimumWidth(1);
  lines->addWidget(mutedLabel(tr("One more worker-hour, day by day"), TypeSize::body));
  lines->addWidget(worth_);
  lines->addWidget(worthWords_);
  connect(worth_, &WorthStrip::chosenChanged, this, [this] {
    worthWords_->setText(worth_->text());
  });
  return box;
}

void TodaySide::fillWorth(const CrewPlan& plan) {
  std::vector<DayWorth> days = worthOfDays(plan, worthDays);
  std::vector<QString> words;
  for (const DayWorth& worth : days)
    words.push_back(sayNear(*session_, wordsOfWorth(worth)));
  const bool anyShort = std::ranges::any_of(days, isShort);
  worth_->setVisible(anyShort);
  worth_->setDays(std::move(days), std::move(words));
  worthWords_->setText(anyShort ? worth_->text()
                                : say(Sentence{phrase("Today",
                                                      "Time in hand on each of the next "
                                                      "%1 days: it would save nothing."),
                                               {std::int64_t{worthDays}}}));
}

void TodaySide::setPlan(const CrewPlan& plan,
                        const std::vector<MissedWindow>& missed,
                        Day day) {
  const bool mayChange = !session_->isReadOnly();
  lastPlanned_ = lastPlanned(session_->orchard(), session_->today());
  risk_->setCards(riskCards(*session_, plan, missed), mayChange);
  pastYears_->setCards(pastYearCards(*session_, plan, missed), mayChange);
  waitingTasks_.clear();
  closed_->setCards(closedCards(*session_, day), mayChange);
  waiting_->setCards(waitingCards(*session_, plan, day, waitingTasks_), mayChange);
  yesterday_->setCards(yesterdayCards(*session_, lastPlanned_), mayChange);
  whole_->setCards(wholeCards(*session_, plan), mayChange);
  fillWorth(plan);
  notes_->setCards(noteCards(*session_, plan), mayChange);
}

void TodaySide::takePress(const QString& id) {
  if (id == QStringLiteral("closeBlock")) return Q_EMIT closeBlockWanted();
  if (id == QStringLiteral("enterHours")) return Q_EMIT hoursWanted(*lastPlanned_);
  if (id.startsWith(whyId)) {
    const auto at = static_cast<std::size_t>(id.mid(whyId.size()).toInt());
    if (at < waitingTasks_.size()) Q_EMIT whyWanted(TaskKey{waitingTasks_[at]});
  }
  if (id.startsWith(reopenId)) {
    const auto closure = parseId<ClosureId>(id.mid(reopenId.size()).toStdString());
    if (closure) Q_EMIT reopenWanted(*closure);
  }
  if (id.startsWith(releaseId)) {
    const auto pin = parseId<PinId>(id.mid(releaseId.size()).toStdString());
    if (pin) Q_EMIT releaseWanted(*pin);
  }
}

}  // namespace topwire
