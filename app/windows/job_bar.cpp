#include "app/windows/job_bar.h"

#include "app/look/icons.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace topwire {

JobBar::JobBar(Session& session, QWidget* parent)
    : Card(QPalette::Base, parent)
    , session_(&session)
    , title_(textLabel({}, TypeSize::name, true))
    , reasons_(textLabel({})) {
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
  title_->setText(tr("%1 · %2").arg(nameOfTask(*session_, job.place.task), crew));
  reasons_->setText(job.reasons);
  pin_->setText(job.pinned ? tr("Un&pin from %1").arg(crew) : tr("&Pin to %1").arg(crew));
  later_->setText(tr("&Not today"));
  later_->setToolTip(tr("Not before %1.").arg(job.nextDay));
  pin_->setEnabled(!session_->isReadOnly());
  later_->setEnabled(!session_->isReadOnly() && !job.nextDay.isEmpty());
}

void JobBar::unfoldReasons(bool open) {
  why_->setChecked(open);
  reasons_->setVisible(open);
}

}  // namespace topwire
