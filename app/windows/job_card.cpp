#include "app/windows/job_card.h"

#include "app/look/icons.h"
#include "app/look/row_strip.h"
#include "app/windows/operation_view.h"
#include "app/windows/task_row.h"
#include "app/words/say.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QPainterPath>
#include <QVBoxLayout>

namespace topwire {

namespace {

constexpr int drawingFrom = 330;  ///< a narrower card has no room for a drawing
constexpr int stripFrom = 170;
constexpr QSize drawingSize{128, 96};
constexpr int edgeWidth = 4;

/// "Pinned", led by a pin.
class PinWord final : public QWidget {
public:
  PinWord() {
    setObjectName(QStringLiteral("pinWord"));
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setAccessibleName(JobCard::tr("pinned"));
  }

  QSize sizeHint() const override {
    const QFontMetrics metrics{fontOf(TypeSize::small, true)};
    return {pinSide + 6 + metrics.horizontalAdvance(accessibleName()),
            metrics.height() + 2};
  }

protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter{this};
    const QColor ink = baseColours(currentTheme()).text;
    const QRectF side{0, (height() - pinSide) / 2.0, pinSide, pinSide};
    paintIcon(painter, side, Icon::pin, ink);
    painter.setFont(fontOf(TypeSize::small, true));
    painter.setPen(ink);
    painter.drawText(
        rect().adjusted(pinSide + 5, 0, 0, 0), Qt::AlignVCenter, accessibleName());
  }

private:
  static constexpr int pinSide = 13;
};

}  // namespace

JobCard::JobCard(Session& session,
                 const TaskView& view,
                 const CrewLane& lane,
                 const LaneJob& job,
                 const DayCaution* wait,
                 QWidget* parent)
    : QWidget(parent)
    , session_(&session)
    , job_(job)
    , place_{lane.crew, job.gang, job.task}
    , words_(jobWords(session, view, lane, job))
    , state_(view.state) {
  setObjectName(QStringLiteral("jobCard"));
  setFocusPolicy(Qt::StrongFocus);
  const QString waits =
      wait == nullptr ? QString{} : say(wait->sentence) + u' ' + say(wait->advice);
  build(view, waits);
  QStringList full{words_.full};
  if (job.pinned) full << tr("pinned to this crew");
  if (!waits.isEmpty()) full << tr("should wait: %1").arg(waits);
  setAccessibleName(full.join(QStringLiteral(", ")));
  const QString keys =
      tr("Enter opens it, Ctrl+Up and Ctrl+Down give it to another crew, W says why, "
         "Delete unpins it, the menu key has more.");
  setAccessibleDescription(keys);
  setToolTip(full.join(QLatin1Char('\n')) + QStringLiteral("\n\n") + keys);
}

void JobCard::build(const TaskView& view, const QString& wait) {
  auto* line = new QHBoxLayout{this};
  line->setContentsMargins(edgeWidth + 9, 9, 10, 9);
  line->setSpacing(12);
  addDrawing(*view.task);
  if (drawing_ != nullptr) line->addWidget(drawing_, 0, Qt::AlignTop);
  line->addLayout(words(view, wait), 1);
}

void JobCard::addDrawing(const Task& task) {
  const Operation* operation = session_->operationOf(task);
  if (operation == nullptr || operation->drawing.empty()) return;
  drawing_ = new OperationDrawing{this};  // it shows itself, so never without a parent
  drawing_->setDrawing(operation->drawing, task.leaf);
  drawing_->setFixedSize(drawingSize);
}

QBoxLayout* JobCard::words(const TaskView& view, const QString& wait) {
  auto* lines = lines_ = new QVBoxLayout;
  name_ = wrapping(textLabel(words_.name, TypeSize::name, true));
  auto* state = new StateWord;
  state->setState(state_, words_.state, words_.brief);
  briefHours_ = textLabel(words_.hours, TypeSize::body, true);
  auto* head = new QHBoxLayout;
  head->setSpacing(8);
  head->addWidget(name_, 1);
  head->addWidget(briefHours_);
  lines->addLayout(head);
  lines->addWidget(wrapping(textLabel(words_.where)));
  amount_ = wrapping(textLabel({}));
  amount_->setTextFormat(Qt::RichText);
  facts_ = new QBoxLayout{QBoxLayout::TopToBottom};
  facts_->setSpacing(2);
  facts_->addWidget(amount_);
  facts_->addWidget(state, 1);
  lines->addLayout(facts_);
  auto* marks = new QHBoxLayout;
  marks->setSpacing(12);
  if (!wait.isEmpty()) marks->addWidget(new WaitWord);
  if (job_.pinned) marks->addWidget(new PinWord);
  marks->addStretch();
  if (marks->count() > 1) lines->addLayout(marks);
  strip_ = new RowStrip;
  const Planting& planting = session_->orchard().plantings.at(view.task->key.planting);
  std::vector<RowCellState> cells =
      rowCells(view, blockOf(session_->orchard(), planting).rows);
  markPlanned(cells, job_.rows);
  strip_->setCells(std::move(cells));
  QSizePolicy asNeeded = strip_->sizePolicy();
  asNeeded.setVerticalPolicy(QSizePolicy::Minimum);  // as many as they need
  strip_->setSizePolicy(asNeeded);
  lines->addWidget(strip_);
  lines->addStretch();
  return lines;
}

/// Under the place, or in the brief form the hours after the name and the start after the
/// state.
void JobCard::showAmount(Form form) {
  const bool brief = form == Form::brief;
  briefHours_->setVisible(brief);
  amount_->setWordWrap(!brief);
  amount_->setText(
      brief ? words_.from.toHtmlEscaped()
            : QStringLiteral("<b>%1</b> %2")
                  .arg(words_.hours.toHtmlEscaped(), words_.when.toHtmlEscaped()));
}

void JobCard::fitTo(int width, Form form) {
  const bool brief = form == Form::brief;
  if (drawing_ != nullptr) drawing_->setVisible(!brief && width >= drawingFrom);
  strip_->setVisible(!brief && width >= stripFrom);
  name_->setText(!brief && width >= stripFrom ? words_.name : words_.shortName);
  facts_->setDirection(brief ? QBoxLayout::RightToLeft : QBoxLayout::TopToBottom);
  facts_->setSpacing(brief ? 8 : 2);
  lines_->setSpacing(brief ? 0 : 2);
  const int margin = brief ? 4 : 9;
  layout()->setContentsMargins(edgeWidth + 9, margin, 10, margin);
  showAmount(form);
  layout()->activate();
}

void JobCard::setChosen(bool chosen) {
  chosen_ = chosen;
  update();
}

void JobCard::openMenu(QPoint where) {
  QMenu menu{this};
  const auto add = [&](const QString& words, JobDeed deed, bool enabled) {
    QAction* action = menu.addAction(words);
    action->setEnabled(enabled);
    connect(action, &QAction::triggered, this, [this, deed] { Q_EMIT asked(deed); });
  };
  const bool mayChange = !session_->isReadOnly();
  add(tr("&Tick rows\tEnter"), JobDeed::open, mayChange);
  add(tr("&Why\tW"), JobDeed::why, true);
  menu.addSeparator();
  add(tr("To the crew a&bove\tCtrl+Up"), JobDeed::toCrewAbove, mayChange);
  add(tr("To the crew be&low\tCtrl+Down"), JobDeed::toCrewBelow, mayChange);
  add(tr("&Unpin\tDelete"), JobDeed::unpin, mayChange && job_.pinned);
  add(tr("&Not today\tN"), JobDeed::notToday, mayChange);
  menu.exec(where);
}

void JobCard::contextMenuEvent(QContextMenuEvent* event) {
  openMenu(event->reason() == QContextMenuEvent::Mouse ? event->globalPos()
                                                       : mapToGlobal(QPoint{40, 40}));
}

void JobCard::keyPressEvent(QKeyEvent* event) {
  const bool control = (event->modifiers() & Qt::ControlModifier) != 0;
  switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
      return Q_EMIT asked(JobDeed::open);
    case Qt::Key_W:
      return Q_EMIT asked(JobDeed::why);
    case Qt::Key_N:
      return Q_EMIT asked(JobDeed::notToday);
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
      return Q_EMIT asked(JobDeed::unpin);
    case Qt::Key_Up:
    case Qt::Key_Down:
      if (control)
        return Q_EMIT asked(event->key() == Qt::Key_Up ? JobDeed::toCrewAbove
                                                       : JobDeed::toCrewBelow);
      [[fallthrough]];
    case Qt::Key_Left:
    case Qt::Key_Right:
      return Q_EMIT stepWanted(static_cast<Qt::Key>(event->key()));
    default:
      QWidget::keyPressEvent(event);
  }
}

void JobCard::mousePressEvent(QMouseEvent* event) {
  setFocus(Qt::MouseFocusReason);
  if (event->button() == Qt::LeftButton) pressed_ = event->position().toPoint();
}

void JobCard::mouseMoveEvent(QMouseEvent* event) {
  if (!pressed_ || session_->isReadOnly()) return;
  const QPoint way = event->position().toPoint() - *pressed_;
  if (!carrying_ && way.manhattanLength() < QApplication::startDragDistance()) return;
  carrying_ = true;
  setCursor(Qt::ClosedHandCursor);
  update();
  Q_EMIT carried(mapToGlobal(event->position().toPoint()), false);
}

void JobCard::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !pressed_) return;
  const bool wasCarried = std::exchange(carrying_, false);
  pressed_.reset();
  unsetCursor();
  update();
  if (wasCarried)
    Q_EMIT carried(mapToGlobal(event->position().toPoint()), true);
  else if (rect().contains(event->position().toPoint()))
    Q_EMIT asked(JobDeed::open);
}

void JobCard::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  painter.setRenderHint(QPainter::Antialiasing);
  const BaseColours& base = baseColours(currentTheme());
  const QRectF box = QRectF{rect()}.adjusted(2.5, 2.5, -2.5, -2.5);
  QPainterPath outline;
  outline.addRoundedRect(box, measure::cardRadius, measure::cardRadius);
  painter.fillPath(outline, chosen_ ? base.accentTint : base.raised);
  painter.save();
  painter.setClipPath(outline);
  painter.fillRect(QRectF{box.left(), box.top(), edgeWidth, box.height()},
                   stateColours(currentTheme(), state_).mark);
  painter.restore();
  painter.setPen(carrying_ ? QPen{base.text, 2, Qt::DashLine} : QPen{base.hairline, 1});
  painter.drawPath(outline);
  if (!hasFocus()) return;
  painter.setPen(QPen{base.focus, 2});
  painter.drawRoundedRect(QRectF{rect()}.adjusted(1, 1, -1, -1), 8, 8);
}

void JobCard::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
  parentWidget()->update();  // its place on the hours
  Q_EMIT focused();
}

void JobCard::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
  if (parentWidget() != nullptr) parentWidget()->update();
}

}  // namespace topwire
