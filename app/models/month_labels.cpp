#include "app/models/month_labels.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr int daysInWeek = 7;
constexpr double bracketWidth = 8;

/// Finds the words of one segment their room.
class Labeller {
public:
  Labeller(const MonthMeasures& measures, const MonthBar& bar)
      : measures_(&measures), bar_(&bar) {}

  /// `freeUntil`: the first day after the segment that another bar of its lane takes.
  BarLabel label(const MonthSegment& segment, int freeUntil) const {
    const std::vector<BarLabel> texts = this->texts();
    const auto full = texts.begin();
    const auto shorter = full + 1;
    for (const auto& text : {*full, *shorter})
      if (const auto found = inside(segment, text)) return *found;
    for (const auto& text : {*full, *shorter})
      if (const auto found = beyond(segment, text, freeUntil)) return *found;
    return inside(segment, texts.back()).value_or(BarLabel{});
  }

private:
  std::vector<BarLabel> texts() const {
    std::vector<BarLabel> made{text(bar_->name, bar_->place),
                               text(bar_->shortName, bar_->place),
                               text(bar_->shortName, {})};
    return made;
  }

  BarLabel text(const std::string& name, const std::string& place) const {
    BarLabel made;
    made.name = name;
    made.place = place;
    made.width = measures_->textWidth(name, place);
    return made;
  }

  std::optional<BarLabel> inside(const MonthSegment& segment, BarLabel label) const {
    if (!segment.body) return std::nullopt;
    const double left = edge(segment.body->first) + measures_->labelStart;
    const bool cutOffHere = segment.bracket == segment.body->last;
    const double end = measures_->labelEnd + (cutOffHere ? bracketWidth : 0);
    if (left + label.width + end > edge(segment.body->last + 1)) return std::nullopt;
    return at(LabelAt::inside, left, label);
  }

  /// On the tail, whose line it interrupts; else right of it all where the lane is free.
  std::optional<BarLabel> beyond(const MonthSegment& segment,
                                 BarLabel label,
                                 int freeUntil) const {
    const double fromBody = segment.body
                                ? edge(segment.body->last + 1) + 2 * measures_->labelEnd
                                : edge(segment.tail->first) + measures_->labelStart;
    if (segment.tail && !segment.bracket && fits(fromBody, label, edge(freeUntil)))
      return at(LabelAt::onTail, fromBody, label);
    const double cutOff = segment.bracket ? edge(*segment.bracket + 1) : 0;
    if (segment.tail && segment.bracket && fits(fromBody, label, cutOff - bracketWidth))
      return at(LabelAt::onTail, fromBody, label);
    if (!segment.body) return std::nullopt;
    const double after = edge(segment.span().last + 1) + 2 * measures_->labelEnd;
    if (!fits(after, label, edge(freeUntil))) return std::nullopt;
    return at(LabelAt::after, after, label);
  }

  bool fits(double left, const BarLabel& label, double right) const {
    return left + label.width + measures_->labelEnd <= right;
  }

  static BarLabel at(LabelAt where, double left, BarLabel label) {
    label.at = where;
    label.left = left;
    return label;
  }

  double edge(int day) const { return day * measures_->columnWidth; }

  const MonthMeasures* measures_;
  const MonthBar* bar_;
};

}  // namespace

void labelSegments(MonthWeek& week,
                   const std::vector<MonthBar>& bars,
                   const MonthMeasures& measures) {
  std::ranges::sort(week.segments, {}, [](const MonthSegment& segment) {
    return std::pair{segment.lane, segment.span().first};
  });
  for (std::size_t i = 0; i < week.segments.size(); ++i) {
    MonthSegment& segment = week.segments[i];
    const bool followed =
        i + 1 < week.segments.size() && week.segments[i + 1].lane == segment.lane;
    const int freeUntil = followed ? week.segments[i + 1].span().first : daysInWeek;
    segment.label = Labeller{measures, bars[segment.bar]}.label(segment, freeUntil);
  }
}

void nameStages(MonthWeek& week,
                const std::vector<MonthStage>& stages,
                const MonthMeasures& measures) {
  double takenTo = 0;
  for (StageMark& mark : week.stages) {
    const MonthStage& stage = stages[mark.stage];
    const bool diamondLater = stage.date > plusDays(week.monday, mark.span.last);
    if (!mark.diamond && !(mark.startsHere && diamondLater)) continue;
    const double at = mark.diamond.value_or(mark.span.first) * measures.columnWidth;
    const double wide = measures.textWidth({}, stage.name) + measures.labelEnd;
    const double right = at + measures.labelStart + wide;
    if (at >= takenTo && right <= daysInWeek * measures.columnWidth) {
      mark.name = StageMark::Name::after;
      takenTo = right;
    } else if (mark.diamond && at - wide >= takenTo) {
      mark.name = StageMark::Name::before;
      takenTo = at + measures.labelStart;
    }
  }
}

}  // namespace topwire
