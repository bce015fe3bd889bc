#include "app/windows/task_form.h"

#include "app/look/look.h"
#include "app/windows/day_field.h"
#include "app/windows/task_words.h"
#include "app/words/say.h"
#include "core/base/contract.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>

namespace topwire {

namespace {

constexpr int mostSeconds = 3600;
constexpr int usualWindow = 7;

QLabel* labelFor(QWidget* field) {
  QLabel* label = textLabel({}, TypeSize::body);
  label->setForegroundRole(QPalette::PlaceholderText);
  label->setBuddy(field);
  return label;
}

}  // namespace

TaskForm::TaskForm(Session& session, QWidget* parent)
    : Card(QPalette::Base, parent), session_(&session) {
  auto* grid = new QGridLayout{this};
  grid->setContentsMargins(16, 10, 16, 12);
  grid->setHorizontalSpacing(20);
  title_ = textLabel({}, TypeSize::name, true);
  title_->setObjectName(QStringLiteral("formTitle"));
  problem_ = textLabel({}, TypeSize::body, true);
  problem_->setObjectName(QStringLiteral("formProblem"));
  problem_->setWordWrap(true);
  grid->addWidget(title_, 0, 0, 1, 2);
  grid->addWidget(fields(), 1, 0);
  grid->addWidget(deeds(), 1, 1, Qt::AlignTop);
  grid->addWidget(problem_, 2, 0, 1, 2);
  grid->setColumnStretch(0, 1);
}

QWidget* TaskForm::fields() {
  auto* group = new QWidget;
  auto* grid = new QGridLayout{group};
  grid->setContentsMargins(0, 4, 0, 0);
  text_ = new QLineEdit;
  text_->setObjectName(QStringLiteral("formText"));
  planting_ = new QComboBox;
  planting_->setObjectName(QStringLiteral("formPlanting"));
  from_ = dayField();
  from_->setObjectName(QStringLiteral("formFrom"));
  to_ = dayField();
  to_->setObjectName(QStringLiteral("formTo"));
  seconds_ = new QSpinBox;
  seconds_->setObjectName(QStringLiteral("formSeconds"));
  seconds_->setRange(0, mostSeconds);
  seconds_->setSuffix(tr(" s a tree"));
  textLabel_ = labelFor(text_);
  plantingLabel_ = labelFor(planting_);
  plantingLabel_->setText(tr("&Where"));
  fromLabel_ = labelFor(from_);
  fromLabel_->setText(tr("&From"));
  toLabel_ = labelFor(to_);
  toLabel_->setText(tr("&To"));
  secondsLabel_ = labelFor(seconds_);
  secondsLabel_->setText(tr("&Labour"));
  grid->addWidget(textLabel_, 0, 0);
  grid->addWidget(text_, 0, 1, 1, 3);
  grid->addWidget(plantingLabel_, 0, 4);
  grid->addWidget(planting_, 0, 5);
  grid->addWidget(fromLabel_, 1, 0);
  grid->addWidget(from_, 1, 1);
  grid->addWidget(toLabel_, 1, 2);
  grid->addWidget(to_, 1, 3);
  grid->addWidget(secondsLabel_, 1, 4);
  grid->addWidget(seconds_, 1, 5);
  grid->setColumnStretch(1, 1);
  grid->setColumnStretch(3, 1);
  grid->setColumnStretch(5, 1);
  connect(text_, &QLineEdit::returnPressed, this, &TaskForm::act);
  return group;
}

QWidget* TaskForm::deeds() {
  auto* group = new QWidget;
  auto* layout = new QVBoxLayout{group};
  layout->setContentsMargins(0, 4, 0, 0);
  deed_ = new QPushButton;
  deed_->setObjectName(QStringLiteral("formDeed"));
  deed_->setProperty("main", true);
  deed_->setMinimumWidth(180);
  auto* close = new QPushButton{tr("&Close without changing")};
  close->setObjectName(QStringLiteral("formClose"));
  layout->addWidget(deed_);
  layout->addWidget(close);
  connect(deed_, &QPushButton::clicked, this, &TaskForm::act);
  connect(close, &QPushButton::clicked, this, &TaskForm::closed);
  return group;
}

void TaskForm::begin(Asks asks, const QString& title, const QString& deed) {
  asks_ = asks;
  title_->setText(title);
  deed_->setText(deed);
  problem_->hide();
  text_->clear();
  const bool dates = asks != Asks::reason;
  const bool words = asks != Asks::window;
  const bool work = asks == Asks::work;
  textLabel_->setText(work ? tr("&Name") : tr("&Reason"));
  for (QWidget* widget : std::initializer_list<QWidget*>{textLabel_, text_})
    widget->setVisible(words);
  for (QWidget* widget :
       std::initializer_list<QWidget*>{fromLabel_, from_, toLabel_, to_})
    widget->setVisible(dates);
  for (QWidget* widget : std::initializer_list<QWidget*>{
           plantingLabel_, planting_, secondsLabel_, seconds_})
    widget->setVisible(work);
  if (words)
    text_->setFocus(Qt::OtherFocusReason);
  else
    from_->setFocus(Qt::OtherFocusReason);
}

void TaskForm::askReason(const TaskKey& key) {
  task_ = key;
  const auto now = view();
  if (!now) return;
  begin(Asks::reason,
        tr("Set aside: %1").arg(topwire::taskText(*session_, *now->task)),
        tr("&Set aside"));
}

void TaskForm::askWindow(const TaskKey& key) {
  task_ = key;
  const auto now = view();
  if (!now) return;
  from_->setDate(dateOf(now->task->opens));
  to_->setDate(dateOf(now->task->closes));
  begin(Asks::window,
        tr("Move the window: %1").arg(topwire::taskText(*session_, *now->task)),
        tr("&Move the window"));
}

void TaskForm::askWork(Day day) {
  task_.reset();
  fillPlantings();
  from_->setDate(dateOf(day));
  to_->setDate(dateOf(plusDays(day, usualWindow)));
  seconds_->setValue(0);
  begin(Asks::work, tr("Add work"), tr("&Add work"));
}

void TaskForm::fillPlantings() {
  planting_->clear();
  for (const Block* block : blocksInOrder(session_->orchard()))
    for (const Planting* planting : plantingsOf(session_->orchard(), block->id))
      planting_->addItem(topwire::say(Sentence{phrase("Task", "%1, %2"),
                                               {block->name, planting->cultivar}}),
                         QString::fromStdString(idText(planting->id)));
}

std::optional<TaskView> TaskForm::view() const {
  return task_ ? findView(*session_, *task_) : std::nullopt;
}

Checked<Change> TaskForm::change() const {
  const Orchard& orchard = session_->orchard();
  const DaySpan window{dayOf(from_->date()), dayOf(to_->date())};
  const std::string text = text_->text().trimmed().toStdString();
  if (asks_ == Asks::work) {
    const auto planting =
        parseId<PlantingId>(planting_->currentData().toString().toStdString());
    return addWork(
        orchard, planting.value_or(PlantingId{}), text, window, seconds_->value());
  }
  const auto now = view();
  TOPWIRE_REQUIRE(now);
  const Words title = session_->titleOf(*now->task);
  return asks_ == Asks::reason ? setTaskAside(orchard, *now->task, title, text)
                               : moveTask(orchard, *now->task, title, window);
}

void TaskForm::act() {
  if (asks_ != Asks::work && !view()) return Q_EMIT closed();
  const Problems problems = session_->perform(change());
  if (problems.empty()) return Q_EMIT closed();
  problem_->setText(topwire::say(problems.front().sentence));
  problem_->show();
}

void TaskForm::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return Q_EMIT closed();
  Card::keyPressEvent(event);
}

}  // namespace topwire
