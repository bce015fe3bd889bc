#pragma once

#include "core/base/phrase.h"

#include <string_view>

namespace topwire {

/// A skill as programmes and crews write it, in words to read: those of the shipped
/// programmes in each language, an orchard's own as it stands.
Words skillInWords(std::string_view skill);

}  // namespace topwire
