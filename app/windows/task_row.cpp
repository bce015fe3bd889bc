#include "app/windows/task_row.h"

#include "app/look/card.h"
#include "app/look/icons.h"
#include "app/look/look.h"
#include "app/look/state_shape.h"
#include "app/look/tokens.h"
#include "app/windows/task_words.h"
#include "app/words/say.h"

#include <QContextMenuEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QStringList>
#include <QVBoxLayout>

namespace topwire {

namespace {

/// Longer words in another language wrap; they never push the row out of sight.
constexpr int narrowestText = 60;

constexpr int hitSide = 40;
constexpr int boxSide = 22;
constexpr double shapeSide = 13;

CellMark markOf(const TaskView& view) {
  if (view.state == TaskState::done) return CellMark::done;
  return view.progress.rowsDone() > 0 ? CellMark::partly : CellMark::toDo;
}

bool hasPersonsWord(const Session& session, const TaskKey& task) {
  return session.orchard().marks.contains(task);
}

void setLine(QHBoxLayout& line) {
  line.setContentsMargins(0, 0, 0, 0);
  line.setSpacing(8);
}

}  // namespace

StateWord::StateWord(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void StateWord::setState(TaskState state, const QString& words, const QString& brief) {
  state_ = state;
  words_ = words;
  brief_ = brief;
  setSizePolicy(brief.isEmpty() ? QSizePolicy::Fixed : QSizePolicy::Preferred,
                QSizePolicy::Fixed);
  setAccessibleName(words);
  updateGeometry();
  update();
}

QSize StateWord::sizeFor(const QString& words) const {
  const QFontMetrics metrics{fontOf(TypeSize::body, true)};
  return {static_cast<int>(shapeSide) + 6 + metrics.horizontalAdvance(words),
          metrics.height() + 2};
}

QSize StateWord::sizeHint() const {
  return sizeFor(words_);
}

QSize StateWord::minimumSizeHint() const {
  return sizeFor(brief_.isEmpty() ? words_ : brief_);
}

void StateWord::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  paintShape(painter, {0, (height() - shapeSide) / 2, shapeSide, shapeSide}, state_);
  painter.setFont(fontOf(TypeSize::body, true));
  painter.setPen(stateColours(currentTheme(), state_).ink);
  painter.drawText(rect().adjusted(static_cast<int>(shapeSide) + 5, 0, 0, 0),
                   Qt::AlignVCenter,
                   brief_.isEmpty() || width() >= sizeHint().width() ? words_ : brief_);
}

WaitWord::WaitWord(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("waitWord"));
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  setAccessibleName(tr("should wait"));
}

QSize WaitWord::sizeHint() const {
  const QFontMetrics metrics{fontOf(TypeSize::small, true)};
  return {static_cast<int>(shapeSide) + 6 + metrics.horizontalAdvance(accessibleName()),
          metrics.height() + 2};
}

void WaitWord::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  const QColor ink = baseColours(currentTheme()).text;
  paintIcon(
      painter, {0, (height() - shapeSide) / 2, shapeSide, shapeSide}, Icon::wait, ink);
  painter.setFont(fontOf(TypeSize::small, true));
  painter.setPen(ink);
  painter.drawText(rect().adjusted(static_cast<int>(shapeSide) + 5, 0, 0, 0),
                   Qt::AlignVCenter,
                   accessibleName());
}

TickBox::TickBox(QWidget* parent) : QAbstractButton(parent) {
  setFocusPolicy(Qt::NoFocus);
  setCursor(Qt::PointingHandCursor);
}

void TickBox::setMark(CellMark mark) {
  mark_ = mark;
  update();
}

QSize TickBox::sizeHint() const {
  return {hitSide, hitSide};
}

void TickBox::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  painter.setRenderHint(QPainter::Antialiasing);
  const BaseColours& base = baseColours(currentTheme());
  const QColor done = stateColours(currentTheme(), TaskState::done).mark;
  const double inset = (hitSide - boxSide) / 2.0;
  const QRectF box{inset, inset, boxSide, boxSide};
  if (mark_ == CellMark::done) return paintRowCell(painter, box, CellMark::done);
  painter.setPen(QPen{underMouse() ? base.text : base.outline, 2});
  painter.setBrush(base.raised);
  painter.drawRoundedRect(box.adjusted(1, 1, -1, -1), 4, 4);
  if (mark_ == CellMark::partly)
    painter.fillRect(QRectF{box.left() + 5, box.center().y() - 2, boxSide - 10, 4}, done);
}

QPushButton* linkButton(const QString& words) {
  auto* button = new QPushButton{words};
  button->setFlat(true);
  button->setCursor(Qt::PointingHandCursor);
  button->setFont(fontOf(TypeSize::small));
  button->setStyleSheet(QStringLiteral(
      "QPushButton { border: none; background: transparent; padding: 1px 0px;"
      " min-height: 0px; color: palette(link); text-align: right; }"
      "QPushButton:hover { text-decoration: underline; }"));
  button->setFocusPolicy(Qt::NoFocus);
  return button;
}

TaskRow::TaskRow(Session& session,
                 const TaskView& view,
                 const DayCaution* wait,
                 QWidget* parent)
    : QWidget(parent)
    , wait_(wait == nullptr ? QString{} : say(wait->sentence) + u' ' + say(wait->advice))
    , session_(&session)
    , task_(view.task->key)
    , settled_(isSettled(view.state))
    , done_(view.state == TaskState::done)
    , marked_(hasPersonsWord(session, view.task->key)) {
  setFocusPolicy(Qt::StrongFocus);
  setToolTip(
      tr("Space ticks all rows left, Enter opens the rows, W says why this date, "
         "the menu key has more."));
  build(view);
  describe(view);
}

void TaskRow::build(const TaskView& view) {
  auto* grid = new QGridLayout{this};
  grid->setContentsMargins(7, 2, 16, 4);
  grid->setHorizontalSpacing(3);
  grid->setVerticalSpacing(2);
  box_ = new TickBox;
  box_->setObjectName(QStringLiteral("tickBox"));
  box_->setMark(markOf(view));
  box_->setEnabled(!session_->isReadOnly());
  box_->setAccessibleName(tr("Tick the whole task"));
  connect(box_, &TickBox::clicked, this, [this] { Q_EMIT tickWanted(task_); });
  grid->addWidget(box_, 0, 0, 3, 1, Qt::AlignTop);
  grid->addWidget(headLine(view), 0, 1);
  auto* strip = new RowStrip;
  const Planting& planting = session_->orchard().plantings.at(task_.planting);
  strip->setCells(rowCells(view, blockOf(session_->orchard(), planting).rows));
  grid->addWidget(strip, 1, 1);
  grid->addWidget(footLine(view), 2, 1);
  grid->setColumnStretch(1, 1);
}

QWidget* TaskRow::headLine(const TaskView& view) {
  auto* line = new QWidget;
  auto* layout = new QHBoxLayout{line};
  setLine(*layout);
  QLabel* name = textLabel(say(session_->titleOf(*view.task)), TypeSize::name, true);
  name->setWordWrap(true);
  name->setMinimumWidth(narrowestText);
  layout->addWidget(name, 1, Qt::AlignTop);
  auto* state = new StateWord;
  state->setState(view.state, urgencyText(view, session_->today()));
  auto* marks = new QVBoxLayout;
  marks->setContentsMargins(0, 0, 0, 0);
  marks->setSpacing(1);
  marks->addWidget(state, 0, Qt::AlignRight);
  if (!wait_.isEmpty()) {
    auto* wait = new WaitWord;
    wait->setToolTip(wait_);
    marks->addWidget(wait, 0, Qt::AlignRight);
  }
  marks->addStretch(1);
  layout->addLayout(marks);
  return line;
}

QWidget* TaskRow::footLine(const TaskView& view) {
  auto* line = new QWidget;
  auto* layout = new QHBoxLayout{line};
  setLine(*layout);
  layout->setSpacing(10);
  QLabel* progress = mutedLabel(progressText(view));
  progress->setWordWrap(true);
  progress->setMinimumWidth(narrowestText);
  layout->addWidget(progress, 1);
  whyLink_ = linkButton(tr("Why this date"));
  whyLink_->setIcon(iconFor(Icon::why, palette().color(QPalette::Link)));
  whyLink_->setIconSize({13, 13});
  whyLink_->setObjectName(QStringLiteral("why"));
  connect(whyLink_, &QPushButton::clicked, this, [this] { unfoldWhy(!isWhyOpen()); });
  layout->addWidget(whyLink_);
  QPushButton* more = linkButton(tr("More"));
  more->setAccessibleName(tr("More for this task"));
  connect(more, &QPushButton::clicked, this, [this, more] {
    openMenu(more->mapToGlobal(QPoint{0, more->height()}));
  });
  layout->addWidget(more);
  return line;
}

void TaskRow::describe(const TaskView& view) {
  QStringList said{taskText(*session_, *view.task),
                   nameOf(view.state),
                   urgencyText(view, session_->today()),
                   progressText(view)};
  if (!wait_.isEmpty()) said << tr("should wait: %1").arg(wait_);
  setAccessibleName(said.join(QStringLiteral(", ")));
  setAccessibleDescription(toolTip());
}

void TaskRow::unfoldWhy(bool open) {
  if (open == isWhyOpen()) return;
  if (open) {
    const auto view = findView(*session_, task_);
    if (!view) return;
    QStringList lines;
    for (const Sentence& sentence :
         explain(session_->orchard(), session_->trade(), *view->task))
      lines << say(sentence);
    why_ = textLabel(lines.join(QLatin1Char('\n')), TypeSize::small);
    why_->setWordWrap(true);
    why_->setObjectName(QStringLiteral("whyText"));
    why_->setContentsMargins(10, 1, 0, 4);
    static_cast<QGridLayout*>(layout())->addWidget(why_, 3, 1);
  } else {
    delete why_;
    why_ = nullptr;
  }
  whyLink_->setText(open ? tr("Hide why") : tr("Why this date"));
  Q_EMIT whyFolded(task_, open);
}

void TaskRow::openMenu(QPoint where) {
  QMenu menu{this};
  const bool mayChange = !session_->isReadOnly();
  const auto add = [&](const QString& words, bool enabled, auto signal) {
    QAction* action = menu.addAction(words);
    action->setEnabled(enabled);
    connect(action, &QAction::triggered, this, [this, signal] {
      Q_EMIT(this->*signal)(task_);
    });
  };
  add(done_ ? tr("&Take back all rows\tSpace") : tr("&Tick all rows left\tSpace"),
      mayChange,
      &TaskRow::tickWanted);
  add(tr("Tick some &rows\tEnter"), mayChange, &TaskRow::rowsWanted);
  QAction* why = menu.addAction(tr("&Why this date\tW"));
  connect(why, &QAction::triggered, this, [this] { unfoldWhy(!isWhyOpen()); });
  menu.addSeparator();
  add(tr("Set &aside with a reason"), mayChange && !settled_, &TaskRow::asideWanted);
  add(tr("&Move its window"), mayChange && !done_, &TaskRow::moveWanted);
  add(tr("Back to the &plan"), mayChange && marked_, &TaskRow::restoreWanted);
  menu.exec(where);
}

void TaskRow::contextMenuEvent(QContextMenuEvent* event) {
  openMenu(event->reason() == QContextMenuEvent::Mouse ? event->globalPos()
                                                       : mapToGlobal(QPoint{40, 40}));
}

void TaskRow::keyPressEvent(QKeyEvent* event) {
  const bool mayChange = !session_->isReadOnly();
  switch (event->key()) {
    case Qt::Key_Space:
      if (mayChange) Q_EMIT tickWanted(task_);
      return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (mayChange) Q_EMIT rowsWanted(task_);
      return;
    case Qt::Key_W:
      return unfoldWhy(!isWhyOpen());
    case Qt::Key_Up:
      return Q_EMIT stepWanted(-1);
    case Qt::Key_Down:
      return Q_EMIT stepWanted(1);
    default:
      QWidget::keyPressEvent(event);
  }
}

void TaskRow::mousePressEvent(QMouseEvent* event) {
  setFocus(Qt::MouseFocusReason);
  const bool onRows = childAt(event->position().toPoint()) != nullptr;
  if (event->button() == Qt::LeftButton && onRows && !session_->isReadOnly())
    Q_EMIT rowsWanted(task_);
}

void TaskRow::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  const BaseColours& base = baseColours(currentTheme());
  if (why_ != nullptr)
    painter.fillRect(QRect{why_->x(), why_->y() + 1, 3, why_->height() - 4},
                     base.hairline);
  if (!hasFocus()) return;
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen{base.focus, 2});
  painter.drawRoundedRect(QRectF{rect()}.adjusted(5, 1, -5, -1), 6, 6);
}

void TaskRow::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

void TaskRow::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

}  // namespace topwire
