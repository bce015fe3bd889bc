#include "app/look/shape_mark.h"
#include "app/windows/block_panels.h"
#include "app/windows/block_words.h"
#include "app/words/say.h"

#include <QHBoxLayout>
#include <QLocale>

#include <algorithm>

namespace topwire {

RowsCard::RowsCard(Session& session, QWidget* parent)
    : Card(QPalette::Light, parent)
    , session_(&session)
    , tasks_(new QComboBox)
    , shape_(new ShapeMark)
    , state_(textLabel({}, TypeSize::body, true))
    , left_(mutedLabel({}, TypeSize::body))
    , toCalendar_(new QPushButton(tr("Show on the ca&lendar")))
    , picture_(new RowPicture)
    , legend_(new RowLegend) {
  tasks_->setObjectName(QStringLiteral("blockTask"));
  tasks_->setAccessibleName(tr("Task shown in the rows"));
  tasks_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  tasks_->setMinimumContentsLength(20);
  toCalendar_->setObjectName(QStringLiteral("taskOnCalendar"));
  auto* head = new QHBoxLayout;
  head->addWidget(tasks_, 1);
  head->addStretch(1);
  head->addWidget(toCalendar_);
  auto* state = new QHBoxLayout;
  state->setSpacing(8);
  state->addWidget(shape_);
  state->addWidget(state_);
  state->addWidget(left_, 1);
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(16, 12, 16, 10);
  lines->setSpacing(6);
  lines->addLayout(head);
  lines->addLayout(state);
  lines->addWidget(picture_);
  lines->addWidget(legend_);
  connect(tasks_, &QComboBox::currentIndexChanged, this, &RowsCard::showTask);
  connect(toCalendar_, &QPushButton::clicked, this, [this] {
    if (const TaskView* view = task())
      Q_EMIT dayWanted(
          std::clamp(session_->today(), view->task->opens, view->task->closes));
  });
}

void RowsCard::setBlock(BlockId block) {
  if (block != block_) keys_.clear();
  block_ = block;
  fillTasks();
  showTask();
}

void RowsCard::fillTasks() {
  const QSignalBlocker quiet{tasks_};
  const int index = tasks_->currentIndex();
  const std::optional<TaskKey> before =
      index >= 0 && index < static_cast<int>(keys_.size())
          ? std::optional{keys_[static_cast<std::size_t>(index)]}
          : std::nullopt;
  const Orchard& orchard = session_->orchard();
  const bool several = plantingsOf(orchard, block_).size() > 1;
  const Season season = currentSeason(*session_);
  tasks_->clear();
  keys_.clear();
  for (const TaskView& view : session_->views()) {
    const auto planting = orchard.plantings.find(view.task->key.planting);
    if (planting == orchard.plantings.end() || planting->second.block != block_) continue;
    if (view.task->key.season != season) continue;
    QString title = say(session_->titleOf(*view.task));
    if (view.task->key.pass > 1)
      title = tr("%1, pass %2").arg(title).arg(view.task->key.pass);
    if (several)
      title = tr("%1, %2").arg(title, QString::fromStdString(planting->second.cultivar));
    keys_.push_back(view.task->key);
    tasks_->addItem(title);
  }
  const auto kept = before ? std::ranges::find(keys_, *before) : keys_.end();
  if (kept != keys_.end())
    tasks_->setCurrentIndex(static_cast<int>(kept - keys_.begin()));
}

const TaskView* RowsCard::task() const {
  const int index = tasks_->currentIndex();
  if (index < 0 || index >= static_cast<int>(keys_.size())) return nullptr;
  return session_->view(keys_[static_cast<std::size_t>(index)]);
}

void RowsCard::showTask() {
  const TaskView* view = task();
  for (QWidget* part : {static_cast<QWidget*>(tasks_),
                        shape_,
                        static_cast<QWidget*>(state_),
                        static_cast<QWidget*>(toCalendar_)})
    part->setVisible(view != nullptr);
  if (view == nullptr) {
    left_->setText(tr("No work is planned here this season."));
  } else {
    static_cast<ShapeMark*>(shape_)->setState(view->state);
    QPalette ink = state_->palette();
    ink.setColor(QPalette::WindowText, stateColours(currentTheme(), view->state).ink);
    state_->setPalette(ink);
    state_->setText(stateText(*view, session_->today()));
    left_->setText(tr("· %1 of %2 rows, %3 left")
                       .arg(QLocale().toString(view->progress.rowsDone(), 'g', 3))
                       .arg(view->task->rows.count())
                       .arg(hoursText(view->hoursLeft)));
  }
  const std::vector<RowLane> lanes = rowLanes(session_->orchard(), block_, view);
  picture_->setLanes(lanes);
  legend_->setLanes(lanes);
}

}  // namespace topwire
