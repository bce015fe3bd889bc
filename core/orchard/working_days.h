#pragma once

#include "core/orchard/orchard.h"

#include <string_view>

namespace topwire {

/// How much of the usual hours can be worked on a day, in percent: what was said of it,
/// else whether its weekday is worked.
int workablePercent(const Orchard& orchard, Day day);

bool isOff(const Crew& crew, Day day);
/// What is asked of nobody in particular, anyone can do; a crew without skills does all.
bool canDo(const Crew& crew, std::string_view skill);

/// The block's closing that leaves nothing of this day's hours, `endMinute` being their
/// end; nothing where there is none.
const BlockClosure* closedAllDay(const Orchard& orchard,
                                 BlockId block,
                                 Day day,
                                 int endMinute);

}  // namespace topwire
