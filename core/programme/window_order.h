#pragma once

#include "core/programme/programme.h"

#include <optional>

namespace topwire {

/// The most days `later` can lie after `earlier` in any season, negative where it surely
/// comes first; nothing where that can't be told, because the two hang on different
/// things. A stage counts as later than the ones before it by an unknown number of days.
std::optional<int> mostDaysBetween(const Anchor& earlier, const Anchor& later);

}  // namespace topwire
