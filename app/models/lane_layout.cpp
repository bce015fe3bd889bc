#include "app/models/lane_layout.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace topwire {

namespace {

/// To the right as far as the card before needs, keeping the end where it was if it can.
void pushRight(std::vector<CardPlace>& cards,
               const std::vector<LaneStretch>& stretches,
               std::size_t first,
               std::size_t end,
               double least,
               double gap) {
  double free = 0;
  for (std::size_t i = first; i < end; ++i) {
    cards[i].left = std::max(stretches[i].from, free);
    cards[i].width = std::max(least, stretches[i].to - cards[i].left);
    free = cards[i].left + cards[i].width + gap;
  }
}

/// Back inside the line: narrower first, and only then further left.
void pullInside(std::vector<CardPlace>& cards,
                std::size_t first,
                std::size_t end,
                double width,
                double least,
                double gap) {
  double limit = width;
  for (std::size_t i = end; i-- > first;) {
    CardPlace& card = cards[i];
    card.width = std::max(least, std::min(card.width, limit - card.left));
    card.left = std::max(0.0, std::min(card.left, limit - card.width));
    limit = card.left - gap;
  }
}

}  // namespace

double DayAxis::placeOf(int minute, double width) const {
  if (to <= from) return 0;
  return width * std::clamp(minute - from, 0, to - from) / (to - from);
}

int mostInLine(double width, double least, double gap) {
  return static_cast<int>(
      std::max(1.0, std::floor((width + gap) / (std::min(least, width) + gap))));
}

std::vector<CardPlace> placeCards(const std::vector<LaneStretch>& stretches,
                                  double width,
                                  double least,
                                  double gap) {
  std::vector<CardPlace> cards(stretches.size());
  if (cards.empty()) return cards;
  const double narrowest = std::min(least, width);
  const auto most = static_cast<std::size_t>(mostInLine(width, least, gap));
  const std::size_t lines = (cards.size() + most - 1) / most;
  const std::size_t perLine = (cards.size() + lines - 1) / lines;
  for (std::size_t first = 0; first < cards.size(); first += perLine) {
    const std::size_t end = std::min(cards.size(), first + perLine);
    for (std::size_t i = first; i < end; ++i)
      cards[i].line = static_cast<int>(first / perLine);
    pushRight(cards, stretches, first, end, narrowest, gap);
    pullInside(cards, first, end, width, narrowest, gap);
  }
  return cards;
}

}  // namespace topwire
