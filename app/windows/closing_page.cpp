#include "app/windows/closing_page.h"

#include "app/look/card.h"
#include "app/windows/block_words.h"
#include "app/windows/closing_cards.h"
#include "app/windows/labour_bars.h"
#include "app/windows/page_head.h"
#include "app/words/say.h"
#include "core/closing/review_words.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace topwire {

namespace {

constexpr int widest = 980;
constexpr int nameWidth = 220;
/// Planning a season takes a moment, so it waits until a person stops changing things.
constexpr int labourDelay = 120;

QString joined(const std::vector<Sentence>& sentences) {
  QStringList texts;
  for (const Sentence& sentence : sentences) texts << say(sentence);
  return texts.join(u' ');
}

/// Problems that no planting's line shows.
QString ofTheWhole(const Problems& problems) {
  QStringList texts;
  for (const Problem& problem : problems)
    if (problem.place.find('.') == std::string::npos) texts << say(problem.sentence);
  if (texts.isEmpty() && !problems.empty())
    texts << ClosingPage::tr("Something above is out of range; it is named there.");
  return texts.join(u' ');
}

}  // namespace

ClosingPage::ClosingPage(Session& session, QWidget* parent)
    : QWidget(parent)
    , session_(&session)
    , head_(new PageHead)
    , area_(new QScrollArea)
    , done_(new DoneCard(session))
    , measures_(new MeasuresCard(session))
    , nextLeaf_(new NextLeafCard(session))
    , replants_(new ReplantsCard(session))
    , labour_(new LabourBars)
    , effects_(textLabel({}))
    , problem_(textLabel({}, TypeSize::body, true))
    , by_(new QLineEdit)
    , close_(new QPushButton) {
  setObjectName(QStringLiteral("closingPage"));
  auto* back = head_->addButton(tr("Back to the &blocks"), "backToBlocks");
  area_->setFrameShape(QFrame::NoFrame);
  area_->setWidgetResizable(true);
  area_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area_->setFocusPolicy(Qt::NoFocus);
  area_->setWidget(steps_ = makeSteps());
  area_->viewport()->setAutoFillBackground(false);
  steps_->setAutoFillBackground(false);
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(measure::pageMargin, 12, measure::pageMargin, 20);
  lines->setSpacing(14);
  lines->addWidget(head_);
  lines->addWidget(area_, 1);
  labourLater_.setSingleShot(true);
  labourLater_.setInterval(labourDelay);
  connect(&labourLater_, &QTimer::timeout, this, &ClosingPage::showLabour);
  connect(back, &QPushButton::clicked, this, &ClosingPage::blocksWanted);
  connect(close_, &QPushButton::clicked, this, &ClosingPage::closeIt);
  connect(measures_, &MeasuresCard::measureWanted, this, &ClosingPage::measureWanted);
  connect(nextLeaf_, &NextLeafCard::chosen, this, [this](const SeasonTarget& target) {
    choose(target);
  });
  connect(replants_, &ReplantsCard::chosen, this, [this](const ProposedReplant& replant) {
    choose(replant);
  });
  connect(session_, &Session::changed, this, &ClosingPage::refresh);
  connect(session_, &Session::reset, this, &ClosingPage::startAnew);
}

QWidget* ClosingPage::makeSteps() {
  auto* inner = new QWidget;
  inner->setMaximumWidth(widest);
  auto* cards = new QVBoxLayout{inner};
  cards->setContentsMargins(0, 0, 0, 0);
  cards->setSpacing(16);
  for (QWidget* card : {static_cast<QWidget*>(done_),
                        static_cast<QWidget*>(measures_),
                        static_cast<QWidget*>(nextLeaf_),
                        static_cast<QWidget*>(replants_),
                        makeLabour(),
                        makeDeed()})
    cards->addWidget(card);
  cards->addStretch();
  return inner;
}

QWidget* ClosingPage::makeLabour() {
  auto* card =
      new StepCard{5,
                   tr("Next season's work by month"),
                   tr("Worker-hours planned, against those of the season that ends: the "
                      "outline is what was planned, the filling what was noted.")};
  card->lines().addWidget(labour_);
  return card;
}

QWidget* ClosingPage::makeDeed() {
  auto* card = new Card{QPalette::Light};
  effects_->setWordWrap(true);
  problem_->setWordWrap(true);
  effects_->setObjectName(QStringLiteral("closingEffects"));
  problem_->setObjectName(QStringLiteral("closingProblem"));
  close_->setObjectName(QStringLiteral("closeSeason"));
  close_->setProperty("main", true);
  by_->setObjectName(QStringLiteral("closedBy"));
  by_->setFixedWidth(nameWidth);
  auto* name = textLabel(tr("Closed b&y"));
  name->setBuddy(by_);
  name->setTextFormat(Qt::AutoText);
  auto* deed = new QHBoxLayout;
  deed->setSpacing(12);
  deed->addWidget(name);
  deed->addWidget(by_);
  deed->addWidget(close_);
  deed->addStretch();
  auto* lines = new QVBoxLayout{card};
  lines->setContentsMargins(16, 12, 16, 16);
  lines->setSpacing(10);
  lines->addWidget(effects_);
  lines->addWidget(problem_);
  lines->addLayout(deed);
  return card;
}

void ClosingPage::startAnew() {
  draft_.forget();
  refresh();
}

void ClosingPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

/// A page out of sight plans nothing.
void ClosingPage::refresh() {
  if (!isVisible() || !session_->isOpen()) return;
  const Season wanted = seasonToClose(session_->orchard(), session_->today());
  const bool justClosed = session_->orchard().closes.contains(season_);
  if (!justClosed) season_ = wanted;
  draft_.take(*session_, season_);
  const QString name =
      QString::fromStdString(nameOf(season_, session_->orchard().settings.hemisphere()));
  head_->say(tr("Close season %1").arg(name), say(countsOf(draft_.review())));
  close_->setText(tr("&Close %1").arg(name));
  done_->show(draft_.review());
  measures_->show(draft_.review());
  nextLeaf_->show(draft_);
  replants_->show(draft_);
  sayWhatFollows();
  showLabour();
}

void ClosingPage::choose(const SeasonTarget& target) {
  draft_.choose(target);
  sayWhatFollows();
  labourLater_.start();
}

void ClosingPage::choose(const ProposedReplant& replant) {
  draft_.choose(replant);
  sayWhatFollows();
  labourLater_.start();
}

void ClosingPage::sayWhatFollows() {
  // Never performed, so the ids of the orchard are left for what is.
  IdSource ids = IdSource::countingFrom(std::uint64_t{1} << 63);
  const Checked<Change> change = draft_.change(*session_, {}, ids);
  const Problems problems = change ? Problems{} : change.error();
  nextLeaf_->tell(problems);
  replants_->tell(problems);
  problem_->setText(ofTheWhole(problems));
  problem_->setVisible(!problems.empty());
  effects_->setText(joined(effectsOf(session_->orchard(), draft_.proposal()))
                    + QLatin1Char(' ') + tr("Undo takes all of it back."));
  effects_->setVisible(problems.empty());
  const bool open = !draft_.isClosed(*session_);
  for (QWidget* step : {static_cast<QWidget*>(nextLeaf_),
                        static_cast<QWidget*>(replants_),
                        static_cast<QWidget*>(measures_)})
    step->setVisible(open);
  close_->setEnabled(problems.empty() && !session_->isReadOnly());
}

void ClosingPage::showLabour() {
  if (!session_->isOpen()) return;
  const Hemisphere hemisphere = session_->orchard().settings.hemisphere();
  labour_->setMonths(draft_.labour(*session_),
                     QString::fromStdString(nameOf(season_, hemisphere)),
                     QString::fromStdString(nameOf(season_.plus(1), hemisphere)));
}

void ClosingPage::closeIt() {
  const std::string by = by_->text().trimmed().toStdString();
  const Problems problems =
      session_->perform(draft_.change(*session_, by, session_->ids()));
  if (problems.empty()) return;
  problem_->setText(ofTheWhole(problems));
  problem_->setVisible(true);
}

}  // namespace topwire
