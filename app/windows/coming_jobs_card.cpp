#include "app/windows/coming_jobs_card.h"

#include "app/windows/block_words.h"
#include "app/windows/labour_words.h"
#include "app/windows/plain_table.h"
#include "app/words/say.h"
#include "core/crews/task_names.h"

#include <QStringList>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace topwire {

namespace {

constexpr int fewest = 10;

/// "1 job will be late, 2 may be."; that all are in time where none is.
QString sumText(const std::vector<ComingJob>& jobs) {
  const auto count = [&jobs](Finish finish) {
    return std::ranges::count(jobs, finish, &ComingJob::finish);
  };
  QStringList sentences;
  if (const auto lost = count(Finish::lost); lost > 0)
    sentences << sayCounted(
        lost,
        phrase("Labour", "%1 job will not be finished while it is of use."),
        phrase("Labour", "%1 jobs will not be finished while they are of use."));
  if (const auto late = count(Finish::late); late > 0)
    sentences << sayCounted(late,
                            phrase("Labour", "%1 job will be late."),
                            phrase("Labour", "%1 jobs will be late."));
  if (const auto maybe = count(Finish::maybeLate); maybe > 0)
    sentences << sayCounted(maybe,
                            phrase("Labour", "%1 job may be late."),
                            phrase("Labour", "%1 jobs may be late."));
  if (!sentences.isEmpty()) return sentences.join(QLatin1Char(' '));
  if (jobs.empty()) return say(Sentence{phrase("Labour", "No job begins in this time.")});
  return sayCounted(static_cast<std::int64_t>(jobs.size()),
                    phrase("Labour", "The one job will be done in time."),
                    phrase("Labour", "All %1 jobs will be done in time."));
}

}  // namespace

ComingJobsCard::ComingJobsCard(Session& session, QWidget* parent)
    : Card(QPalette::Base, parent)
    , session_(&session)
    , sum_(wrapping(textLabel({})))
    , table_(new PlainTable(
          {tr("Job"), tr("Hours"), tr("Done"), tr("Window closes"), tr("How it ends")}))
    , all_(new QPushButton) {
  setObjectName(QStringLiteral("comingJobsCard"));
  sum_->setObjectName(QStringLiteral("comingJobsSum"));
  table_->setObjectName(QStringLiteral("comingJobs"));
  table_->setAccessibleName(tr("When each job will be done"));
  all_->setObjectName(QStringLiteral("allComingJobs"));
  all_->setCheckable(true);
  auto* lines = new QVBoxLayout{this};
  lines->addWidget(textLabel(
      tr("When the jobs of the next eight weeks are done"), TypeSize::name, true));
  lines->addWidget(sum_);
  lines->addWidget(wrapping(
      mutedLabel(tr("Between the two days in eight cases of ten, as far as the pace of "
                    "such work is known."))));
  lines->addWidget(table_);
  lines->addWidget(all_, 0, Qt::AlignLeft);
  connect(all_, &QPushButton::toggled, this, &ComingJobsCard::fill);
}

void ComingJobsCard::show(const CrewPlan& plan) {
  jobs_ = comingJobs(plan, session_->views(), crewPlanDaily);
  fill();
}

QString ComingJobsCard::nameOf(const ComingJob& job) const {
  return say(nameWithBlock(session_->orchard(), session_->trade(), job.task));
}

void ComingJobsCard::fill() {
  sum_->setText(sumText(jobs_));
  const int count = static_cast<int>(jobs_.size());
  const int shown = all_->isChecked() ? count : std::min(count, fewest);
  std::vector<PlainTable::Row> rows;
  for (int index = 0; index < shown; ++index) {
    const ComingJob& job = jobs_[static_cast<std::size_t>(index)];
    const bool isCalm = job.finish >= Finish::inTime;
    rows.push_back({{{nameOf(job)},
                     {hoursText(job.hours), false, true},
                     {doneText(job)},
                     {voiceIn(language()).dayOfYear(job.closes)},
                     {finishText(job), !isCalm, false, shapeOf(job.finish)}},
                    wordsOf(job, nameOf(job))});
  }
  table_->setRows(std::move(rows));
  table_->setVisible(count > 0);
  all_->setVisible(count > fewest);
  all_->setText(all_->isChecked() ? tr("Show the first %1").arg(fewest)
                                  : tr("Sho&w all %1 jobs").arg(count));
}

}  // namespace topwire
