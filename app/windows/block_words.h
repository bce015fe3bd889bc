#pragma once

#include "app/models/session.h"

#include <QString>

namespace topwire {

/// What the Blocks page says of blocks and plantings, in the reader's language.

/// "Gala, third leaf", "Gala and Braeburn", "planting in 2029".
QString blockLine(const Session& session, const Block& block);
/// "Gala on M.9 · third leaf · strong · 36 rows · 3,086 trees a hectare".
QString blockSubtitle(const Session& session, const Block& block);
/// "Gala on M.9 T337".
QString stockText(const Planting& planting);
/// "third leaf", or the year where planting lies ahead.
QString ageText(const Session& session, const Planting& planting);
/// "planted 12 April 2023" or "planned for ...".
QString plantedText(const Session& session, const Planting& planting);
/// "strong: Fuji +1, M.9 0", or that it is the grower's word.
QString vigourText(const Session& session, const Planting& planting);
/// "3,086 a hectare · 1,249 an acre", the orchard's own unit first.
QString densityText(UnitSystem units, Length rowSpacing, Length treeSpacing);
QString nameOf(PlantingKind kind);
/// "closes Sat 10 April", "3 days late".
QString stateText(const TaskView& view, Day today);
/// One phrase for one, another for more, with the count as %1.
QString sayCounted(std::int64_t count, Phrase one, Phrase many);
/// With a capital first letter, as a sentence begins.
QString capitalised(const QString& text);
/// A count in the reader's locale.
QString countText(std::int64_t count);

Season currentSeason(const Session& session);

}  // namespace topwire
