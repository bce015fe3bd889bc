#include "app/windows/paces_card.h"

#include "app/windows/block_words.h"
#include "app/windows/labour_words.h"
#include "app/windows/plain_table.h"
#include "app/words/say.h"

#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace topwire {

namespace {

QString sumText(std::int64_t learned, std::int64_t all) {
  if (all == 0)
    return say(
        Sentence{phrase("Labour", "No planting has work counted by the tree yet.")});
  if (learned == 0)
    return say(Sentence{
        phrase("Labour",
               "Nothing is learned yet: the plan goes by the programme's figures. Tick "
               "rows with the hours they took, and your crews' own pace stands here.")});
  return say(
      Sentence{counted(learned,
                       phrase("Labour", "%1 of %2 kinds of work has hours noted."),
                       phrase("Labour", "%1 of %2 kinds of work have hours noted.")),
               {learned, all}});
}

PlainTable::Row rowOf(const LearnedPace& pace, const QString& work) {
  const bool learned = pace.isLearned();
  return {{{work},
           {treesText(pace)},
           {secondsText(pace.rate.programme), false, true},
           {learned ? secondsText(pace.rate.seconds())
                    : say(Sentence{phrase("Labour", "nothing yet")}),
            learned,
            true},
           {learned ? hoursText(pace.rate.hours) : QString{}, false, true},
           {crewsText(pace)}},
          wordsOf(pace)};
}

}  // namespace

PacesCard::PacesCard(Session& session, QWidget* parent)
    : Card(QPalette::Base, parent)
    , session_(&session)
    , sum_(wrapping(textLabel({})))
    , table_(new PlainTable({tr("Work"),
                             tr("Trees"),
                             tr("Programme"),
                             tr("Learned"),
                             tr("From hours"),
                             tr("By crew")}))
    , all_(new QPushButton) {
  setObjectName(QStringLiteral("pacesCard"));
  sum_->setObjectName(QStringLiteral("pacesSum"));
  table_->setObjectName(QStringLiteral("paces"));
  table_->setAccessibleName(tr("Time a tree takes"));
  all_->setObjectName(QStringLiteral("allPaces"));
  all_->setCheckable(true);
  auto* lines = new QVBoxLayout{this};
  lines->addWidget(textLabel(tr("Time a tree takes"), TypeSize::name, true));
  lines->addWidget(sum_);
  lines->addWidget(wrapping(mutedLabel(
      tr("Seconds of one worker. The programme's figure counts as much as %1 hours of "
         "ticks; a crew's own is drawn toward that of all.")
          .arg(LearnedRates::hoursOfPrior))));
  lines->addWidget(table_);
  lines->addWidget(all_, 0, Qt::AlignLeft);
  connect(all_, &QPushButton::toggled, this, &PacesCard::fill);
}

void PacesCard::refresh() {
  paces_ = learnedPaces(session_->orchard(), session_->programmes(), session_->season());
  fill();
}

/// The programme's name only where there are several.
QString PacesCard::workOf(const LearnedPace& pace) const {
  const QString work = say(pace.name);
  const bool several = std::ranges::any_of(paces_, [&pace](const LearnedPace& other) {
    return other.programme != pace.programme;
  });
  const auto programme = session_->programmes().find(pace.programme);
  if (!several || programme == session_->programmes().end()) return work;
  return QStringLiteral("%1\n%2").arg(work, say(programme->second.name));
}

void PacesCard::fill() {
  const auto learned = std::ranges::count_if(paces_, &LearnedPace::isLearned);
  const auto count = static_cast<std::int64_t>(paces_.size());
  sum_->setText(sumText(learned, count));
  std::vector<PlainTable::Row> rows;
  for (const LearnedPace& pace : paces_)
    if (pace.isLearned() || all_->isChecked()) rows.push_back(rowOf(pace, workOf(pace)));
  table_->setVisible(!rows.empty());
  table_->setRows(std::move(rows));
  all_->setVisible(learned < count);
  all_->setText(all_->isChecked() ? tr("Show what was learned alone")
                                  : tr("Show all %1 fi&gures").arg(count));
}

}  // namespace topwire
