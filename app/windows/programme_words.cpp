#include "app/windows/programme_words.h"

#include "app/models/session.h"
#include "app/windows/block_words.h"
#include "app/words/say.h"
#include "core/calendar/season.h"
#include "core/phenology/stage.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

/// A phrase with its places still open.
QString words(Phrase phrase) {
  return say(Sentence{phrase});
}

QString pointText(const AnchorPoint& point,
                  const Programme& programme,
                  Hemisphere hemisphere) {
  if (const auto* on = std::get_if<OnStage>(&point)) {
    const Stage* stage = stageByCode(on->bbch);
    return stage ? say(stage->name) : QString::number(on->bbch);
  }
  if (std::holds_alternative<OnPlanting>(point))
    return words(phrase("ProgrammeWords", "the planting day"));
  if (const auto* other = std::get_if<OnCompletion>(&point)) {
    const Operation* operation = programme.find(other->operation);
    return words(phrase("ProgrammeWords", "“%1” is done"))
        .arg(operation ? say(operation->name) : QString::fromStdString(other->operation));
  }
  const auto& month = std::get<OnMonth>(point);
  constexpr int anySeason = 2026;
  const QString day = voiceIn(language())
                          .dayOfYear(localSeasonDay(
                              Season{anySeason}, hemisphere, month.month, month.day));
  if (month.seasonsLater == 0) return day;
  return month.seasonsLater < 0
             ? words(phrase("ProgrammeWords", "%1 of the season before")).arg(day)
             : words(phrase("ProgrammeWords", "%1 of the season after")).arg(day);
}

QString lengthOfTime(int months, int days) {
  const bool weeks = days % 7 == 0 && std::abs(days) >= 14;
  const int count = std::abs(weeks ? days / 7 : days);
  const QString ofDays = weeks ? sayCounted(count,
                                            phrase("ProgrammeWords", "%1 week"),
                                            phrase("ProgrammeWords", "%1 weeks"))
                               : sayCounted(count,
                                            phrase("ProgrammeWords", "%1 day"),
                                            phrase("ProgrammeWords", "%1 days"));
  const QString ofMonths = sayCounted(std::abs(months),
                                      phrase("ProgrammeWords", "%1 month"),
                                      phrase("ProgrammeWords", "%1 months"));
  if (months == 0) return ofDays;
  return days == 0 ? ofMonths
                   : words(phrase("ProgrammeWords", "%1 and %2")).arg(ofMonths, ofDays);
}

QString withOffset(const QString& point, const Anchor& anchor, bool isDone) {
  const auto& [unused, months, days] = anchor;
  const bool alike = (months >= 0) == (days >= 0) || months == 0 || days == 0;
  if (!alike)
    return words(phrase("ProgrammeWords", "%1, %2 months and %3 days on"))
        .arg(point)
        .arg(months)
        .arg(days);
  if (months == 0 && days == 0)
    return isDone ? words(phrase("ProgrammeWords", "once %1")).arg(point) : point;
  const QString time = lengthOfTime(months, days);
  return months > 0 || days > 0
             ? words(phrase("ProgrammeWords", "%1 after %2")).arg(time, point)
             : words(phrase("ProgrammeWords", "%1 before %2")).arg(time, point);
}

bool oneUnit(const Anchor& anchor) {
  return anchor.months == 0 || anchor.days == 0;
}

int sizeOf(const Anchor& anchor) {
  return anchor.months != 0 ? anchor.months : anchor.days;
}

/// "36 to 24 months before the planting day": where both edges hang on one point, in one
/// unit, on one side of it. Empty elsewhere.
QString shortWindow(const Anchor& opens, const Anchor& closes, const QString& point) {
  const bool months = opens.months != 0 && closes.months != 0;
  const bool days = opens.months == 0 && closes.months == 0;
  if (opens.point != closes.point || !oneUnit(opens) || !oneUnit(closes)) return {};
  if (!months && !days) return {};
  const int from = sizeOf(opens);
  const int to = sizeOf(closes);
  if (from == 0 || to == 0 || (from < 0) != (to < 0)) return {};
  const QString time = lengthOfTime(closes.months, closes.days);
  const bool weeks = days && (from % 7 == 0) != (to % 7 == 0);
  if (weeks || (days && std::abs(to) >= 14 && to % 7 == 0)) return {};
  const QString span =
      words(phrase("ProgrammeWords", "%1 to %2")).arg(std::abs(from)).arg(time);
  return from < 0 ? words(phrase("ProgrammeWords", "%1 before %2")).arg(span, point)
                  : words(phrase("ProgrammeWords", "%1 after %2")).arg(span, point);
}

QString nameOf(Measure measure) {
  switch (measure) {
    case Measure::trunkDiameter:
      return words(phrase("ProgrammeWords", "the trunk's diameter"));
    case Measure::trunkGirth:
      return words(phrase("ProgrammeWords", "the trunk's girth"));
    case Measure::leaderHeight:
      return words(phrase("ProgrammeWords", "the leader's height"));
    case Measure::leaderGrowth:
      return words(phrase("ProgrammeWords", "the leader's growth"));
    case Measure::shootGrowth:
      return words(phrase("ProgrammeWords", "the shoots' growth"));
    case Measure::fruitPerTree:
      return words(phrase("ProgrammeWords", "the fruit per tree"));
    case Measure::spaceFilled:
      return words(phrase("ProgrammeWords", "the space filled"));
    case Measure::missingTrees:
      break;
  }
  return words(phrase("ProgrammeWords", "the missing trees"));
}

QString boundText(const Condition& condition, UnitSystem units) {
  if (condition.topWire) return words(phrase("ProgrammeWords", "the top wire"));
  switch (condition.measure) {
    case Measure::fruitPerTree:
    case Measure::missingTrees:
      return countText(condition.value);
    case Measure::spaceFilled:
      return words(phrase("ProgrammeWords", "%1 %")).arg(condition.value);
    default:
      return rulerText(Length::micrometres(condition.value), units);
  }
}

QString rangeText(const LeafRange& range) {
  if (range.first == range.last)
    return words(phrase("ProgrammeWords", "leaf %1")).arg(range.first);
  if (range.last == LeafRange::open)
    return words(phrase("ProgrammeWords", "from leaf %1 on")).arg(range.first);
  return words(phrase("ProgrammeWords", "leaf %1 to %2"))
      .arg(range.first)
      .arg(range.last);
}

QString perText(Per per) {
  switch (per) {
    case Per::tree:
      return words(phrase("ProgrammeWords", "a tree"));
    case Per::post:
      return words(phrase("ProgrammeWords", "a post"));
    case Per::rowEnd:
      return words(phrase("ProgrammeWords", "a row's end"));
    case Per::metreOfRow:
      return words(phrase("ProgrammeWords", "a metre of row"));
    case Per::metreOfWire:
      break;
  }
  return words(phrase("ProgrammeWords", "a metre of wire"));
}

}  // namespace

QString anchorText(const Anchor& anchor,
                   const Programme& programme,
                   Hemisphere hemisphere) {
  return withOffset(pointText(anchor.point, programme, hemisphere),
                    anchor,
                    std::holds_alternative<OnCompletion>(anchor.point));
}

QString windowText(const Operation& operation,
                   const Programme& programme,
                   Hemisphere hemisphere) {
  const QString brief =
      shortWindow(operation.opens,
                  operation.closes,
                  pointText(operation.opens.point, programme, hemisphere));
  if (!brief.isEmpty()) return brief;
  return words(phrase("ProgrammeWords", "From %1 to %2"))
      .arg(anchorText(operation.opens, programme, hemisphere),
           anchorText(operation.closes, programme, hemisphere));
}

QString leavesText(const Operation& operation) {
  if (operation.oncePerPlanting())
    return words(phrase("ProgrammeWords", "once per planting"));
  QStringList ranges;
  for (const LeafRange& range : operation.leaves) ranges << rangeText(range);
  return joinedWords(ranges);
}

QString reachText(const Operation& operation) {
  QStringList said;
  if (operation.vigours.size() < 3) {
    QStringList vigours;
    for (const Vigour vigour : operation.vigours) vigours << nameOf(vigour);
    said << words(phrase("ProgrammeWords", "on %1 trees")).arg(joinedWords(vigours));
  }
  if (operation.kinds.size() < 3) {
    QStringList kinds;
    for (const PlantingKind kind : operation.kinds) kinds << nameOf(kind);
    said << words(phrase("ProgrammeWords", "only for: %1")).arg(joinedWords(kinds));
  }
  return joinedWords(said);
}

QString repeatText(const Operation& operation, UnitSystem units) {
  if (!operation.repeat) return {};
  const auto& [days, growth, until] = *operation.repeat;
  QString said =
      days[0] == days[1] && days[1] == days[2]
          ? words(phrase("ProgrammeWords", "every %1 days")).arg(days[0])
          : words(phrase("ProgrammeWords",
                         "every %1 days on weak trees, %2 on moderate, %3 on strong"))
                .arg(days[0])
                .arg(days[1])
                .arg(days[2]);
  if (growth)
    said = words(phrase("ProgrammeWords", "%1; sooner after %2 of growth"))
               .arg(said, rulerText(*growth, units));
  if (until)
    said = words(phrase("ProgrammeWords", "%1; until %2"))
               .arg(said, conditionText(*until, units));
  return said;
}

QString conditionText(const Condition& condition, UnitSystem units) {
  const QString measure = nameOf(condition.measure);
  const QString bound = boundText(condition, units);
  return condition.side == Condition::Side::atLeast
             ? words(phrase("ProgrammeWords", "%1 is at least %2")).arg(measure, bound)
             : words(phrase("ProgrammeWords", "%1 is below %2")).arg(measure, bound);
}

QString rulerText(Length length, UnitSystem units) {
  const double micrometres = static_cast<double>(length.inMicrometres());
  const QLocale locale;
  if (units == UnitSystem::usCustomary)
    return length < Length::feet(4)
               ? words(phrase("ProgrammeWords", "%1 in"))
                     .arg(locale.toString(micrometres / 25'400, 'g', 4))
               : words(phrase("ProgrammeWords", "%1 ft"))
                     .arg(locale.toString(micrometres / 304'800, 'g', 4));
  if (length < Length::millimetres(100))
    return words(phrase("ProgrammeWords", "%1 mm"))
        .arg(locale.toString(micrometres / 1'000, 'g', 3));
  return length < Length::metres(1)
             ? words(phrase("ProgrammeWords", "%1 cm"))
                   .arg(locale.toString(micrometres / 10'000, 'g', 3))
             : words(phrase("ProgrammeWords", "%1 m"))
                   .arg(locale.toString(micrometres / 1'000'000, 'g', 3));
}

QString needsText(const Operation& operation, const Programme& programme) {
  QStringList names;
  for (const std::string& id : operation.needs) {
    const Operation* other = programme.find(id);
    names << (other ? say(other->name) : QString::fromStdString(id));
  }
  return joinedWords(names);
}

QString avoidText(const Operation& operation) {
  QStringList names;
  for (const Avoid avoid : operation.avoid) names << nameOf(avoid);
  return joinedWords(names);
}

QString secondsText(const Operation& operation) {
  const auto& byLeaf = operation.secondsPerTree;
  const bool none =
      std::ranges::all_of(byLeaf, [](const auto& entry) { return entry.second == 0; });
  if (none) return words(phrase("ProgrammeWords", "not counted by the tree"));
  if (byLeaf.size() == 1)
    return words(phrase("ProgrammeWords", "%1 s a tree")).arg(byLeaf.begin()->second);
  QStringList said;
  for (const auto& [leaf, seconds] : byLeaf)
    said
        << words(phrase("ProgrammeWords", "%1 s from leaf %2 on")).arg(seconds).arg(leaf);
  return joinedWords(said);
}

QString materialsText(const Operation& operation) {
  QStringList said;
  for (const Material& material : operation.materials)
    said << words(phrase("ProgrammeWords", "%1 %2 %3"))
                .arg(QLocale{}.toString(material.amount, 'g', 4),
                     say(material.name),
                     perText(material.per));
  return said.join(QStringLiteral("; "));
}

QString delayText(const Operation& operation) {
  const QString cost = nameOf(operation.delayCost);
  const QString why = say(operation.delayReason);
  return why.isEmpty() ? cost : words(phrase("ProgrammeWords", "%1: %2")).arg(cost, why);
}

QString nameOf(Avoid avoid) {
  switch (avoid) {
    case Avoid::wet:
      return words(phrase("ProgrammeWords", "wet"));
    case Avoid::frost:
      return words(phrase("ProgrammeWords", "frost"));
    case Avoid::heat:
      return words(phrase("ProgrammeWords", "heat"));
    case Avoid::wind:
      return words(phrase("ProgrammeWords", "wind"));
    case Avoid::spray:
      break;
  }
  return words(phrase("ProgrammeWords", "closed after a spray"));
}

QString nameOf(DelayCost cost) {
  switch (cost) {
    case DelayCost::low:
      return words(phrase("ProgrammeWords", "low"));
    case DelayCost::medium:
      return words(phrase("ProgrammeWords", "medium"));
    case DelayCost::high:
      return words(phrase("ProgrammeWords", "high"));
    case DelayCost::veryHigh:
      break;
  }
  return words(phrase("ProgrammeWords", "very high"));
}

QString joinedWords(const QStringList& words) {
  return words.join(QStringLiteral(", "));
}

LeafGroup groupOf(const Operation& operation) {
  if (operation.oncePerPlanting()) {
    const bool ahead = operation.closes.months < 0
                       || (operation.closes.months == 0 && operation.closes.days < 0);
    return ahead ? LeafGroup::before : LeafGroup::planting;
  }
  const int first =
      std::ranges::min_element(operation.leaves, {}, &LeafRange::first)->first;
  if (first < 1) return LeafGroup::before;
  if (first > 4) return LeafGroup::later;
  return static_cast<LeafGroup>(static_cast<int>(LeafGroup::first) + first - 1);
}

QString nameOf(LeafGroup group) {
  switch (group) {
    case LeafGroup::before:
      return words(phrase("ProgrammeWords", "Before planting"));
    case LeafGroup::planting:
      return words(phrase("ProgrammeWords", "At planting"));
    case LeafGroup::first:
      return words(phrase("ProgrammeWords", "From the first leaf"));
    case LeafGroup::second:
      return words(phrase("ProgrammeWords", "From the second leaf"));
    case LeafGroup::third:
      return words(phrase("ProgrammeWords", "From the third leaf"));
    case LeafGroup::fourth:
      return words(phrase("ProgrammeWords", "From the fourth leaf"));
    case LeafGroup::later:
      break;
  }
  return words(phrase("ProgrammeWords", "Later"));
}

QString programmeLine(const Session& session, const std::string& id) {
  const bool own = session.orchard().programmes.contains(id);
  const auto count =
      static_cast<std::int64_t>(plantingsUsing(session.orchard(), id).size());
  const QString plantings =
      count == 0 ? words(phrase("ProgrammeWords", "no planting goes by it"))
                 : sayCounted(count,
                              phrase("ProgrammeWords", "%1 planting goes by it"),
                              phrase("ProgrammeWords", "%1 plantings go by it"));
  return (own ? words(phrase("ProgrammeWords", "Your own, %1"))
              : words(phrase("ProgrammeWords", "Shipped, %1")))
      .arg(plantings);
}

}  // namespace topwire
