#include "app/windows/tick_panel.h"

#include "app/look/look.h"
#include "app/windows/field_reader.h"
#include "app/windows/figure_field.h"
#include "app/windows/task_words.h"
#include "app/words/say.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>

namespace topwire {

namespace {

constexpr int cellsShown = 3;  // lines of cells before they scroll
constexpr int cellsShownNarrow = 2;
constexpr int largeTarget = 44;
constexpr int narrowBelow = 1000;

QLabel* labelFor(const QString& words, QWidget* field) {
  QLabel* label = textLabel(words, TypeSize::body);
  label->setForegroundRole(QPalette::PlaceholderText);
  label->setBuddy(field);
  return label;
}

QLineEdit* lineEdit(const char* name) {
  auto* edit = new QLineEdit;
  edit->setObjectName(QLatin1String(name));
  edit->setMinimumSize(96, measure::buttonHeight);
  return edit;
}

}  // namespace

TickPanel::TickPanel(Session& session, QWidget* parent)
    : Card(QPalette::Base, parent), session_(&session) {
  grid_ = new QGridLayout{this};
  grid_->setContentsMargins(16, 10, 16, 12);
  grid_->setHorizontalSpacing(20);
  grid_->setVerticalSpacing(8);
  head_ = headLine();
  grid_->addWidget(head_, 0, 0, 1, 3);
  cells_ = new RowGrid;
  cells_->setObjectName(QStringLiteral("cells"));
  area_ = new QScrollArea;
  area_->setWidget(cells_);
  area_->setWidgetResizable(true);
  area_->setFrameShape(QFrame::NoFrame);
  area_->setFocusPolicy(Qt::NoFocus);
  area_->viewport()->setBackgroundRole(QPalette::Base);
  cells_->setAutoFillBackground(false);
  area_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  fields_ = fields();
  deeds_ = deeds();
  problem_ = textLabel({}, TypeSize::body, true);
  problem_->setWordWrap(true);
  problem_->setObjectName(QStringLiteral("tickProblem"));
  placeFields(false);
  connectFields();
}

/// In three lines, or where the page is narrow in two.
void TickPanel::placeIn(QGridLayout& grid, bool narrow) {
  for (QWidget* widget :
       fields_->findChildren<QWidget*>(QString{}, Qt::FindDirectChildrenOnly))
    grid.removeWidget(widget);
  grid.addWidget(labels_[0], 0, 0);
  grid.addWidget(rows_, 0, 1);
  grid.addWidget(labels_[1], 0, 2);
  grid.addWidget(hours_, 0, 3);
  if (narrow) {
    grid.addWidget(labels_[2], 0, 4);
    grid.addWidget(who_, 0, 5);
    grid.addWidget(partly_, 1, 0, 1, 3);
    grid.addWidget(percent_, 1, 3);
  } else {
    grid.addWidget(labels_[2], 1, 0);
    grid.addWidget(who_, 1, 1, 1, 3);
    grid.addWidget(partly_, 2, 0, 1, 3);
    grid.addWidget(percent_, 2, 3);
  }
}

void TickPanel::setTitled(bool titled) {
  head_->setVisible(titled);
}

/// Beside the cells, or under them where the page is narrow.
void TickPanel::placeFields(bool narrow) {
  if (narrow_ == narrow) return;
  narrow_ = narrow;
  placeIn(*fieldGrid_, narrow);
  for (QWidget* widget :
       {static_cast<QWidget*>(area_), fields_, deeds_, static_cast<QWidget*>(problem_)})
    grid_->removeWidget(widget);
  grid_->removeWidget(legend_);
  if (narrow) {
    grid_->addWidget(legend_, 1, 0, 1, 3);
    grid_->addWidget(area_, 2, 0, 1, 3);
    grid_->addWidget(fields_, 3, 0, 1, 2);
    grid_->addWidget(deeds_, 3, 2, Qt::AlignTop);
    grid_->addWidget(problem_, 4, 0, 1, 3);
  } else {
    grid_->addWidget(legend_, 0, 0, 1, 3, Qt::AlignRight | Qt::AlignTop);
    grid_->addWidget(area_, 1, 0, 2, 1);
    grid_->addWidget(fields_, 1, 1, Qt::AlignTop);
    grid_->addWidget(deeds_, 1, 2, Qt::AlignTop);
    grid_->addWidget(problem_, 2, 1, 1, 2);
  }
  grid_->setColumnStretch(0, 1);
}

void TickPanel::resizeEvent(QResizeEvent* event) {
  Card::resizeEvent(event);
  placeFields(width() < narrowBelow);
}

QWidget* TickPanel::headLine() {
  auto* line = new QWidget;
  auto* layout = new QHBoxLayout{line};
  layout->setContentsMargins(0, 0, 0, 0);
  title_ = textLabel({}, TypeSize::name, true);
  title_->setObjectName(QStringLiteral("tickTitle"));
  when_ = mutedLabel({}, TypeSize::body);
  layout->addWidget(title_);
  layout->addWidget(when_, 1);
  legend_ = new CellLegend;
  return line;
}

QWidget* TickPanel::fields() {
  auto* group = new QWidget;
  fieldGrid_ = new QGridLayout{group};
  fieldGrid_->setContentsMargins(0, 2, 0, 0);
  fieldGrid_->setVerticalSpacing(8);
  rows_ = lineEdit("tickRows");
  rows_->setPlaceholderText(QStringLiteral("1-4, 7"));
  hours_ = lineEdit("tickHours");
  hours_->setToolTip(tr("Worker-hours it took, all workers together."));
  who_ = new QComboBox;
  who_->setObjectName(QStringLiteral("tickWho"));
  who_->setEditable(true);
  who_->setMinimumSize(96, measure::buttonHeight);
  partly_ = new QCheckBox{tr("&Only part of each row")};
  partly_->setObjectName(QStringLiteral("tickPartly"));
  percent_ = new QSpinBox;
  percent_->setObjectName(QStringLiteral("tickPercent"));
  percent_->setRange(1, 99);
  percent_->setSingleStep(10);
  percent_->setValue(50);
  percent_->setSuffix(QStringLiteral(" %"));
  percent_->setEnabled(false);
  percent_->setMinimumSize(84, measure::buttonHeight);
  percent_->setAccessibleName(tr("How much of each row is done"));
  labels_ = {labelFor(tr("&Rows"), rows_),
             labelFor(tr("&Hours"), hours_),
             labelFor(tr("&Who"), who_)};
  for (QWidget* field : {static_cast<QWidget*>(labels_[0]),
                         static_cast<QWidget*>(rows_),
                         static_cast<QWidget*>(labels_[1]),
                         static_cast<QWidget*>(hours_),
                         static_cast<QWidget*>(labels_[2]),
                         static_cast<QWidget*>(who_),
                         static_cast<QWidget*>(partly_),
                         static_cast<QWidget*>(percent_)})
    field->setParent(group);
  return group;
}

QWidget* TickPanel::deeds() {
  auto* group = new QWidget;
  auto* layout = new QVBoxLayout{group};
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  tick_ = new QPushButton;
  tick_->setObjectName(QStringLiteral("tickDeed"));
  tick_->setProperty("main", true);
  tick_->setFont(fontOf(TypeSize::name, true));
  takeBack_ = new QPushButton;
  takeBack_->setObjectName(QStringLiteral("takeBackDeed"));
  close_ = new QPushButton{tr("&Close without ticking")};
  close_->setObjectName(QStringLiteral("tickClose"));
  for (QPushButton* button : {tick_, takeBack_, close_}) {
    button->setMinimumSize(180, button == tick_ ? largeTarget : measure::buttonHeight);
    layout->addWidget(button);
  }
  return group;
}

void TickPanel::connectFields() {
  connect(rows_, &QLineEdit::textEdited, this, &TickPanel::readField);
  connect(rows_, &QLineEdit::returnPressed, this, &TickPanel::tick);
  connect(hours_, &QLineEdit::returnPressed, this, &TickPanel::tick);
  connect(who_->lineEdit(), &QLineEdit::returnPressed, this, &TickPanel::tick);
  connect(cells_, &RowGrid::chosenChanged, this, &TickPanel::followCells);
  connect(partly_, &QCheckBox::toggled, this, [this](bool on) {
    percent_->setEnabled(on);
    offerDeeds();
  });
  connect(tick_, &QPushButton::clicked, this, &TickPanel::tick);
  connect(takeBack_, &QPushButton::clicked, this, &TickPanel::takeBack);
  connect(close_, &QPushButton::clicked, this, &TickPanel::closed);
}

std::optional<TaskView> TickPanel::view() const {
  return task_ ? findView(*session_, *task_) : std::nullopt;
}

void TickPanel::open(const TaskKey& task, Day day, const RowSet& planned) {
  task_ = task;
  day_ = day;
  planned_ = planned;
  legend_->setPlanned(!planned.empty());
  rows_->clear();
  hours_->clear();
  partly_->setChecked(false);
  const QString lastWho = who_->currentText().isEmpty()
                              ? QString::fromStdString(usualWorker(session_->orchard()))
                              : who_->currentText();
  who_->clear();
  for (const auto& [id, crew] : session_->orchard().crews)
    who_->addItem(QString::fromStdString(crew.name));
  who_->setCurrentText(lastWho);
  refresh();
  rows_->setFocus(Qt::OtherFocusReason);
}

void TickPanel::askWho() {
  const auto now = view();
  if (!now) return;
  rows_->setText(QString::fromStdString(topwire::rowsText(now->rowsLeft())));
  readField();
  who_->setFocus(Qt::OtherFocusReason);
}

void TickPanel::refresh() {
  const auto now = view();
  if (!now) {
    task_.reset();
    return Q_EMIT closed();
  }
  title_->setText(topwire::say(Sentence{
      phrase("TickPanel", "Tick: %1"), {taskText(*session_, *now->task).toStdString()}}));
  when_->setText(topwire::say(
      Sentence{phrase("TickPanel", "· done on %1"), {shortDayText(day_).toStdString()}}));
  const Planting& planting = session_->orchard().plantings.at(task_->planting);
  std::vector<RowCellState> cells =
      rowCells(*now, blockOf(session_->orchard(), planting).rows);
  markPlanned(cells, planned_);
  cells_->setCells(std::move(cells));
  const int wide = std::max(area_->width(), 480);
  const int most = narrow_ == true ? cellsShownNarrow : cellsShown;
  const int lines = std::min(cells_->heightForWidth(wide), most * 48 + 6);
  area_->setMinimumHeight(lines);
  readField();
}

void TickPanel::readField() {
  const ParsedRows read = parseRows(rows_->text().toStdString());
  const bool empty = rows_->text().trimmed().isEmpty();
  cells_->setChosen(empty || read.fault ? RowSet{} : read.rows);
  say(empty || !read.fault ? QString{} : topwire::say(rowFaultSentence(*read.fault)));
  const auto now = view();
  if (!now || empty || read.fault) return offerDeeds();
  const RowSet strange = read.rows.without(now->task->rows);
  if (!strange.empty())
    say(topwire::say(Sentence{
        counted(strange.count(),
                phrase("TickPanel", "Row %1 is not in this task. It has rows %2."),
                phrase("TickPanel", "Rows %1 are not in this task. It has rows %2.")),
        {topwire::rowsText(strange), topwire::rowsText(now->task->rows)}}));
  offerDeeds();
}

void TickPanel::followCells() {
  rows_->setText(QString::fromStdString(topwire::rowsText(cells_->chosen())));
  say({});
  offerDeeds();
}

RowSet TickPanel::tickable() const {
  const auto now = view();
  return !now ? RowSet{} : cells_->chosen().inCommonWith(now->rowsLeft());
}

RowSet TickPanel::takeable() const {
  const auto now = view();
  if (!now) return {};
  return cells_->chosen().inCommonWith(
      now->progress.wholeRows().with(now->progress.partRows()));
}

void TickPanel::offerDeeds() {
  const int rows = tickable().count();
  const Phrase one = phrase("TickPanel", "Tick %1 row");
  const Phrase many = phrase("TickPanel", "Tick %1 rows");
  tick_->setText(topwire::say(Sentence{counted(rows, one, many), {std::int64_t{rows}}}));
  tick_->setEnabled(rows > 0 && problem_->text().isEmpty());
  const int back = takeable().count();
  takeBack_->setVisible(back > 0);
  takeBack_->setText(
      topwire::say(Sentence{counted(back,
                                    phrase("TickPanel", "Take back %1 row"),
                                    phrase("TickPanel", "Take back %1 rows")),
                            {std::int64_t{back}}}));
}

void TickPanel::say(const QString& problem) {
  problem_->setText(problem);
  problem_->setVisible(!problem.isEmpty());
  rows_->setProperty("fault", !problem.isEmpty());
  rows_->update();
}

std::optional<int> TickPanel::minutes() const {
  const QString text = hours_->text().trimmed();
  return text.isEmpty() ? 0 : readHours(text);
}

void TickPanel::tick() {
  const auto now = view();
  if (!now || !tick_->isEnabled()) return;
  const auto took = minutes();
  if (!took) return say(topwire::say(noHoursSentence(hours_->text())));
  Tick tick;
  tick.id = session_->ids().next<TickId>();
  tick.task = *task_;
  tick.rows = tickable();
  tick.percent = partly_->isChecked() ? percent_->value() : 100;
  tick.minutes = *took;
  tick.by = who_->currentText().trimmed().toStdString();
  tick.day = day_;
  settle(session_->perform(
      tickRows(session_->orchard(), *now->task, session_->titleOf(*now->task), tick)));
}

void TickPanel::takeBack() {
  const auto now = view();
  if (!now) return;
  settle(session_->perform(untickRows(session_->orchard(),
                                      *now->task,
                                      session_->titleOf(*now->task),
                                      takeable(),
                                      session_->ids(),
                                      day_)));
}

void TickPanel::settle(const Problems& problems) {
  if (!problems.empty()) return say(topwire::say(problems.front().sentence));
  rows_->clear();
  hours_->clear();
  const auto now = view();
  if (!now || now->state == TaskState::done) return Q_EMIT closed();
  readField();
  rows_->setFocus(Qt::OtherFocusReason);
}

void TickPanel::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return Q_EMIT closed();
  Card::keyPressEvent(event);
}

}  // namespace topwire
