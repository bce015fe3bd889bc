#include "app/windows/crew_lanes.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr int leastCard = 152;
constexpr int cardGap = 4;
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
  std::vector<QRect> places;
  setMinimumHeight(layOut(width(), places));
  for (std::size_t i = 0; i < cards_.size(); ++i) {
    cards_[i]->setGeometry(places[i]);
    cards_[i]->fitTo(places[i].width());
  }
}

void LaneCards::setTarget(bool target) {
  if (target_ == target) return;
  target_ = target;
  update();
}

int LaneCards::layOut(int width, std::vector<QRect>& places) const {
  places.clear();
  int top = 0;
  for (std::size_t first = 0; first < cards_.size();) {
    std::size_t end = first;
    std::vector<LaneStretch> stretches;
    for (;
         end < cards_.size() && cards_[end]->place().gang == cards_[first]->place().gang;
         ++end)
      stretches.push_back({axis_.placeOf(cards_[end]->startMinute(), width),
                           axis_.placeOf(cards_[end]->endMinute(), width)});
    const std::vector<CardPlace> cards = placeCards(stretches, width, leastCard, cardGap);
    for (std::size_t i = 0; i < cards.size();) {
      const int line = cards[i].line;
      int height = 0;
      const std::size_t begin = i;
      for (; i < cards.size() && cards[i].line == line; ++i) {
        JobCard* card = cards_[first + i];
        const int wide = static_cast<int>(std::lround(cards[i].width));
        card->fitTo(wide);
        height = std::max(height, card->heightForWidth(wide));
        places.emplace_back(static_cast<int>(std::lround(cards[i].left)), top, wide, 0);
      }
      for (std::size_t k = begin; k < i; ++k) places[first + k].setHeight(height);
      top += height + cardGap;
    }
    first = end;
  }
  return std::max(emptyHeight, top - cardGap);
}

QSize LaneCards::sizeHint() const {
  return {4 * leastCard, minimumHeight()};
}

QSize LaneCards::minimumSizeHint() const {
  return {2 * leastCard, emptyHeight};
}

int LaneCards::heightForWidth(int width) const {
  std::vector<QRect> places;
  const int height = layOut(width, places);
  for (JobCard* card : cards_) card->fitTo(card->width());
  return height;
}

void LaneCards::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  place();
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
  if (!cards_.empty()) return;
  painter.setFont(fontOf(TypeSize::body));
  painter.setPen(base.muted);
  painter.drawText(box.adjusted(14, 0, -14, 0),
                   Qt::AlignVCenter | Qt::AlignLeft | Qt::TextWordWrap,
                   nothing_);
}

}  // namespace topwire
