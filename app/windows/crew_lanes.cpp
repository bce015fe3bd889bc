#include "app/windows/crew_lanes.h"

#include <QHBoxLayout>

#include <algorithm>
#include <cstdlib>

namespace topwire {

CrewLanes::CrewLanes(Session& session, QWidget* parent)
    : QWidget(parent), session_(&session), lines_(new QVBoxLayout(this)) {
  setObjectName(QStringLiteral("crewLanes"));
  lines_->setContentsMargins(0, 0, 0, 0);
  lines_->setSpacing(8);
}

void CrewLanes::rebuild(const std::vector<CrewLane>& lanes) {
  const auto same = [](const Lane& one, const CrewLane& other) {
    return one.crew == other.crew;
  };
  if (std::ranges::equal(lanes_, lanes, same)) return;
  while (QLayoutItem* item = lines_->takeAt(0)) {
    item->widget()->hide();
    item->widget()->deleteLater();
    delete item;
  }
  lanes_.clear();
  for (const CrewLane& lane : lanes) {
    auto* row = new QWidget;
    auto* line = new QHBoxLayout{row};
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(crewHeadGap);
    auto* head = new CrewHead;
    auto* cards = new LaneCards;
    line->addWidget(head);
    line->addWidget(cards, 1);
    lines_->addWidget(row);
    lanes_.push_back({lane.crew, head, cards});
    connect(head, &CrewHead::turnoutWanted, this, [this, crew = lane.crew](int workers) {
      Q_EMIT turnoutWanted(crew, workers);
    });
  }
}

void CrewLanes::setLanes(const std::vector<CrewLane>& lanes,
                         const DayAxis& axis,
                         const CautionsByPlanting& cautions) {
  const std::optional<JobPlace> focused = focusedPlace();
  rebuild(lanes);
  for (std::size_t i = 0; i < lanes.size(); ++i) {
    const QString name = crewName(session_->orchard(), lanes[i].crew);
    lanes_[i].head->setLane(name, lanes[i], !session_->isReadOnly());
    const QString nothing = lanes[i].workers == 0 ? tr("Nobody works in this crew.")
                                                  : tr("No work for this crew.");
    lanes_[i].cards->setCards(makeCards(lanes[i], cautions), axis, nothing);
  }
  orderTabs();
  choose(chosen_);
  if (!focused) return;
  if (JobCard* card = cardAt(*focused)) card->setFocus(Qt::OtherFocusReason);
}

void CrewLanes::orderTabs() {
  QWidget* last = nullptr;
  for (const Lane& lane : lanes_) {
    for (QWidget* stop : lane.head->stops()) {
      if (last != nullptr) setTabOrder(last, stop);
      last = stop;
    }
    for (JobCard* card : lane.cards->cards()) {
      setTabOrder(last, card);
      last = card;
    }
    if (!lane.cards->cards().empty()) makeTabStop(*lane.cards->cards().front());
  }
}

/// Tab stops at this card of its lane, and at no other.
void CrewLanes::makeTabStop(const JobCard& card) {
  for (const Lane& lane : lanes_) {
    const auto& cards = lane.cards->cards();
    if (std::ranges::find(cards, &card) == cards.end()) continue;
    for (JobCard* one : cards)
      one->setFocusPolicy(one == &card ? Qt::StrongFocus : Qt::ClickFocus);
  }
}

std::vector<JobCard*> CrewLanes::makeCards(const CrewLane& lane,
                                           const CautionsByPlanting& cautions) {
  std::vector<JobCard*> cards;
  for (const LaneJob& job : lane.jobs) {
    const TaskView* view = session_->view(job.task);
    if (view == nullptr) continue;
    const Operation* operation = session_->operationOf(*view->task);
    const auto own = cautions.find(job.task.planting);
    const DayCaution* wait = operation == nullptr || own == cautions.end()
                                 ? nullptr
                                 : shouldWait(*operation, own->second);
    cards.push_back(new JobCard{*session_, *view, lane, job, wait});
    listenTo(*cards.back());
  }
  return cards;
}

void CrewLanes::listenTo(JobCard& card) {
  connect(&card, &JobCard::asked, this, [this, place = card.place()](JobDeed deed) {
    Q_EMIT asked(place, deed);
  });
  connect(&card, &JobCard::focused, this, [this, &card] { makeTabStop(card); });
  connect(&card, &JobCard::stepWanted, this, [this, &card](Qt::Key arrow) {
    step(card, arrow);
  });
  connect(&card,
          &JobCard::carried,
          this,
          [this, place = card.place()](QPoint where, bool dropped) {
            carry(place, where, dropped);
          });
}

void CrewLanes::choose(const std::optional<JobPlace>& place) {
  chosen_ = place;
  for (const Lane& lane : lanes_)
    for (JobCard* card : lane.cards->cards())
      card->setChosen(place && card->place() == *place);
}

JobCard* CrewLanes::cardAt(const JobPlace& place) const {
  JobCard* ofTask = nullptr;
  for (const Lane& lane : lanes_)
    for (JobCard* card : lane.cards->cards()) {
      if (card->place() == place) return card;
      if (card->place().task == place.task) ofTask = card;
    }
  return ofTask;
}

std::optional<JobPlace> CrewLanes::focusedPlace() const {
  for (const Lane& lane : lanes_)
    for (const JobCard* card : lane.cards->cards())
      if (card->hasFocus()) return card->place();
  return std::nullopt;
}

void CrewLanes::step(const JobCard& from, Qt::Key arrow) {
  if (arrow == Qt::Key_Left || arrow == Qt::Key_Right)
    return stepAlong(from, arrow == Qt::Key_Left ? -1 : 1);
  stepAcross(from, arrow == Qt::Key_Up ? -1 : 1);
}

void CrewLanes::stepAlong(const JobCard& from, int steps) {
  for (const Lane& lane : lanes_) {
    const auto& cards = lane.cards->cards();
    const auto at = std::ranges::find(cards, &from);
    if (at == cards.end()) continue;
    const auto next = (at - cards.begin()) + steps;
    if (next >= 0 && next < static_cast<std::ptrdiff_t>(cards.size()))
      cards[static_cast<std::size_t>(next)]->setFocus(Qt::OtherFocusReason);
    return;
  }
}

/// To the card of the next lane with any that begins nearest in time.
void CrewLanes::stepAcross(const JobCard& from, int lanes) {
  const auto at = std::ranges::find(lanes_, from.place().crew, &Lane::crew);
  for (auto next = (at - lanes_.begin()) + lanes;
       next >= 0 && next < static_cast<std::ptrdiff_t>(lanes_.size());
       next += lanes) {
    const auto& cards = lanes_[static_cast<std::size_t>(next)].cards->cards();
    if (cards.empty()) continue;
    const auto nearest = std::ranges::min_element(cards, {}, [&](const JobCard* card) {
      return std::abs(card->startMinute() - from.startMinute());
    });
    return (*nearest)->setFocus(Qt::OtherFocusReason);
  }
}

void CrewLanes::carry(const JobPlace& place, QPoint where, bool dropped) {
  std::optional<CrewId> over;
  for (const Lane& lane : lanes_) {
    const QWidget* row = lane.cards->parentWidget();
    const bool isOver = row->rect().contains(row->mapFromGlobal(where));
    lane.cards->setTarget(isOver && !dropped && lane.crew != place.crew);
    if (isOver) over = lane.crew;
  }
  if (dropped && over && *over != place.crew) Q_EMIT carriedTo(place, *over);
}

}  // namespace topwire
