#include "core/orchard/skill_words.h"

#include <gtest/gtest.h>

namespace topwire {
namespace {

TEST(SkillWords, SaysTheShippedSkillsInEachLanguage) {
  EXPECT_EQ(skillInWords("pruning").in(Language::spanish), "poda");
  EXPECT_EQ(skillInWords("pruning").in(Language::english), "pruning");
}

TEST(SkillWords, LeavesAnOrchardsOwnAsItStands) {
  EXPECT_EQ(skillInWords("grafting").in(Language::spanish), "grafting");
}

}  // namespace
}  // namespace topwire
