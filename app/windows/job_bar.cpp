#include "app/windows/job_bar.h"

#include "app/look/icons.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QVBoxLayout>

namespace topwire {

JobBar::JobBar(Session& session, QWidget* parent)
    : Card(QPalette::Base, parent)
    , session_(&session)
    , title_(textLabel({}, TypeSize::name, true))
    , reasons_(textLabel({}))
    , crews_(new QMenu{this}) {
  setObjectName(QStringLiteral("jobBar"));
  title_->setObjectName(QStringLiteral("jobTitle"));
  title_->setWordWrap(true);
  title_->setMinimumWidth(1);
  reasons_->setObjectName(QStringLiteral("jobReasons"));
  reasons_->setWordWrap(true);
  reasons_->setMinimumWidth(1);
  reasons_->hide();
  auto* line = new QHBoxLayout;
  line->setSpacing(8);
  line->addWidget(title_, 1);
  pin_ = addButton(*line, "pinJob");
  pin_->setIcon(iconFor(Icon::pin));
  give_ = addButton(*line, "giveJob");
  give_->setMenu(crews_);
  later_ = addButton(*line, "notToday");
  why_ = addButton(*line, "whyJob");
  why_->setText(tr("Wh&y"));
  why_->setCheckable(true);
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(16, 8, 12, 8);
  lines->setSpacing(6);
  lines->addLayout(line);
  lines->addWidget(reasons_);
  connect(pin_, &QPushButton::clicked, this, [this] {
    if (job_.pinned)
      Q_EMIT unpinWanted();
    else
      Q_EMIT pinWanted();
  });
  connect(later_, &QPushButton::clicked, this, &JobBar::notTodayWanted);
  connect(why_, &QPushButton::clicked, this, &JobBar::unfoldReasons);
}

QPushButton* JobBar::addButton(QBoxLayout& to, const char* name) {
  auto* button = new QPushButton;
  button->setObjectName(QLatin1String(name));
  to.addWidget(button);
  return button;
}

void JobBar::setJob(const Job& job) {
  job_ = job;
  const QString crew = crewName(session_->orchard(), job.place.crew);
  const QString name = nameOfTask(*session_, job.place.task);
  title_->setText(job.waits ? name : tr("%1 · %2").arg(name, crew));
  reasons_->setText(job.reasons);
  pin_->setText(job.pinned ? tr("Un&pin from %1").arg(crew) : tr("&Pin to %1").arg(crew));
  later_->setText(tr("&Not today"));
  later_->setToolTip(tr("Not before %1.").arg(job.nextDay));
  pin_->setVisible(!job.waits);
  later_->setVisible(!job.waits);
  give_->setVisible(job.waits);
  give_->setText(tr("&Give it to"));
  give_->setEnabled(!session_->isReadOnly());
  offerCrews();
  pin_->setEnabled(!session_->isReadOnly());
  later_->setEnabled(!session_->isReadOnly() && !job.nextDay.isEmpty());
}

void JobBar::offerCrews() {
  crews_->clear();
  for (const auto& [id, crew] : session_->orchard().crews) {
    const QAction* to = crews_->addAction(QString::fromStdString(crew.name));
    connect(to, &QAction::triggered, this, [this, id = id] { Q_EMIT crewWanted(id); });
  }
}

void JobBar::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return Q_EMIT closed();
  Card::keyPressEvent(event);
}

void JobBar::unfoldReasons(bool open) {
  why_->setChecked(open);
  reasons_->setVisible(open);
}

}  // namespace topwire
