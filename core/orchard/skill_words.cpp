#include "core/orchard/skill_words.h"

#include <algorithm>
#include <array>

namespace topwire {

namespace {

struct Known {
  std::string_view en;
  std::string_view es;
};

constexpr std::array shipped{Known{"pruning", "poda"},
                             Known{"spraying", "aplicaciones"},
                             Known{"tractor", "tractor"}};

}  // namespace

Words skillInWords(std::string_view skill) {
  const auto known = std::ranges::find(shipped, skill, &Known::en);
  const std::string_view es = known == shipped.end() ? skill : known->es;
  return {std::string{skill}, std::string{es}};
}

}  // namespace topwire
