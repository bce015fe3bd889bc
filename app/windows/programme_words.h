#pragma once

#include "core/orchard/orchard.h"
#include "core/programme/programme.h"
#include "core/units/length.h"

#include <QString>
#include <QStringList>

namespace topwire {

class Session;

/// What a programme's operations say, in words for a person.

/// "3 days after green tip", "2 weeks before the planting day".
QString anchorText(const Anchor& anchor,
                   const Programme& programme,
                   Hemisphere hemisphere);
/// "From green tip to pink".
QString windowText(const Operation& operation,
                   const Programme& programme,
                   Hemisphere hemisphere);
/// "leaf 1 to 3", "from leaf 4 on", "once per planting".
QString leavesText(const Operation& operation);
/// "strong trees only, not on replants"; empty where it is for all.
QString reachText(const Operation& operation);
/// "every 14 days", "every 28 days on weak trees, ..."; empty where it is done once.
QString repeatText(const Operation& operation, UnitSystem units);
QString conditionText(const Condition& condition, UnitSystem units);
/// "15 in", "38 mm": as a ruler has it.
QString rulerText(Length length, UnitSystem units);
QString needsText(const Operation& operation, const Programme& programme);
QString avoidText(const Operation& operation);
/// "24 s", "24 s from leaf 1, 30 s from leaf 3".
QString secondsText(const Operation& operation);
QString materialsText(const Operation& operation);
QString delayText(const Operation& operation);
QString nameOf(Avoid avoid);
QString nameOf(DelayCost cost);
/// "weak, strong", for a list of choices.
QString joinedWords(const QStringList& words);

/// Where an operation stands among others in a list: work before the trees, the planting
/// itself, then by the first leaf it is done in.
enum class LeafGroup { before, planting, first, second, third, fourth, later };
LeafGroup groupOf(const Operation& operation);
QString nameOf(LeafGroup group);

/// "shipped, used by 12 plantings".
QString programmeLine(const Session& session, const std::string& id);

}  // namespace topwire
