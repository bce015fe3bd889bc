#include "app/windows/crew_lanes.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr int leastCard = 152;
constexpr int leastAlike = 196;
constexpr int barHeight = 10;
constexpr int cardGap = 4;
constexpr int alikeGap = 0;  // the cards' own edges leave enough
constexpr int emptyHeight = 108;

}  // namespace

LaneCards::LaneCards(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("laneCards"));
  QSizePolicy policy{QSizePolicy::Expanding, QSizePolicy::Preferred};
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void LaneCards::setCards(std::vector<JobCard*> cards,
                         const DayAxis& axis,
                         const QString& nothing) {
  for (JobCard* old : cards_) {
    old->hide();
    old->setParent(nullptr);
    old->deleteLater();
  }
  cards_ = std::move(cards);
  axis_ = axis;
  nothing_ = nothing;
  for (JobCard* card : cards_) {
    card->setParent(this);
    card->show();
  }
  setAccessibleName(cards_.empty() ? nothing_ : QString{});
  updateGeometry();
  place();
  update();
}

void LaneCards::place() {
  Plan plan = layOut(width());
  setMinimumHeight(plan.height);
  for (std::size_t i = 0; i < cards_.size(); ++i) cards_[i]->setGeometry(plan.cards[i]);
  gangs_ = std::move(plan.gangs);
  update();
}

void LaneCards::setTarget(bool target) {
  if (target_ == target) return;
  target_ = target;
  update();
}

std::size_t LaneCards::gangEnd(std::size_t first) const {
  std::size_t end = first;
  while (end < cards_.size() && cards_[end]->place().gang == cards_[first]->place().gang)
    ++end;
  return end;
}

LaneCards::Plan LaneCards::layOut(int width) const {
  Plan plan;
  plan.cards.resize(cards_.size());
  int top = 0;
  for (std::size_t first = 0; first < cards_.size(); first = gangEnd(first)) {
    Gang gang{first, gangEnd(first), -1};
    const bool crowded =
        static_cast<int>(gang.end - gang.first) > mostInLine(width, leastCard, cardGap);
    if (crowded) {
      gang.barTop = top;
      top = layOutAlike(gang, width, top + barHeight + 2, plan);
    } else {
      top = layOutOnHours(gang, width, top, plan);
    }
    plan.gangs.push_back(gang);
  }
  plan.height = std::max(emptyHeight, top - cardGap);
  return plan;
}

int LaneCards::layOutOnHours(const Gang& gang, int width, int top, Plan& plan) const {
  std::vector<LaneStretch> stretches;
  for (std::size_t i = gang.first; i < gang.end; ++i)
    stretches.push_back({axis_.placeOf(cards_[i]->startMinute(), width),
                         axis_.placeOf(cards_[i]->endMinute(), width)});
  const std::vector<CardPlace> places = placeCards(stretches, width, leastCard, cardGap);
  for (std::size_t i = 0; i < places.size(); ++i) {
    const int wide = static_cast<int>(std::lround(places[i].width));
    cards_[gang.first + i]->fitTo(wide, JobCard::Form::whole);
    plan.cards[gang.first + i] = {
        static_cast<int>(std::lround(places[i].left)), top, wide, 0};
  }
  return top + levelLine(gang.first, gang.end, plan) + cardGap;
}

int LaneCards::layOutAlike(const Gang& gang, int width, int top, Plan& plan) const {
  const auto columns = static_cast<std::size_t>(mostInLine(width, leastAlike, cardGap));
  const double wide = (width + cardGap) / static_cast<double>(columns) - cardGap;
  for (std::size_t first = gang.first; first < gang.end; first += columns) {
    const std::size_t end = std::min(gang.end, first + columns);
    for (std::size_t i = first; i < end; ++i) {
      cards_[i]->fitTo(static_cast<int>(wide), JobCard::Form::brief);
      const double left = static_cast<double>(i - first) * (wide + cardGap);
      plan.cards[i] = {
          static_cast<int>(std::lround(left)), top, static_cast<int>(wide), 0};
    }
    top += levelLine(first, end, plan) + alikeGap;
  }
  return top + cardGap;
}

/// All as high as the highest, which it answers.
int LaneCards::levelLine(std::size_t first, std::size_t end, Plan& plan) const {
  int height = 0;
  for (std::size_t i = first; i < end; ++i)
    height = std::max(height, cards_[i]->heightForWidth(plan.cards[i].width()));
  for (std::size_t i = first; i < end; ++i) plan.cards[i].setHeight(height);
  return height;
}

QSize LaneCards::sizeHint() const {
  return {4 * leastCard, minimumHeight()};
}

QSize LaneCards::minimumSizeHint() const {
  return {2 * leastCard, emptyHeight};
}

int LaneCards::heightForWidth(int width) const {
  const int height = layOut(width).height;
  layOut(this->width());  // the cards are as they stand
  return height;
}

void LaneCards::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  place();
}

/// The jobs on the hours, the one with the keyboard filled.
void LaneCards::paintBar(QPainter& painter, const Gang& gang) const {
  const BaseColours& base = baseColours(currentTheme());
  for (std::size_t i = gang.first; i < gang.end; ++i) {
    const double from = axis_.placeOf(cards_[i]->startMinute(), width());
    const double to = axis_.placeOf(cards_[i]->endMinute(), width());
    const QRectF box{
        from + 1, gang.barTop + 1.0, std::max(2.0, to - from - 2), barHeight};
    painter.setPen(QPen{base.outline, 1});
    painter.setBrush(cards_[i]->hasFocus() || cards_[i]->isChosen() ? base.accent
                                                                    : base.accentTint);
    painter.drawRoundedRect(box, 3, 3);
  }
}

void LaneCards::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  painter.setRenderHint(QPainter::Antialiasing);
  const BaseColours& base = baseColours(currentTheme());
  const QRectF box = QRectF{rect()}.adjusted(1, 1, -1, -1);
  if (cards_.empty() || target_) {
    painter.setPen(target_ ? QPen{base.accent, 2} : QPen{base.hairline, 1});
    painter.setBrush(target_ ? base.accentTint : base.window);
    painter.drawRoundedRect(box, measure::cardRadius, measure::cardRadius);
  }
  for (const Gang& gang : gangs_)
    if (gang.barTop >= 0) paintBar(painter, gang);
  if (!cards_.empty()) return;
  painter.setFont(fontOf(TypeSize::body));
  painter.setPen(base.muted);
  painter.drawText(box.adjusted(14, 0, -14, 0),
                   Qt::AlignVCenter | Qt::AlignLeft | Qt::TextWordWrap,
                   nothing_);
}

}  // namespace topwire
