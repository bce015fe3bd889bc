#include "core/base/phrase.h"

#include <gmock/gmock.h>

namespace topwire {

namespace {

TEST(FillIn, putsValuesWhereTheirNumberStands) {
  struct Row {
    const char* text;
    std::vector<std::string> values;
    const char* filled;
  };

  for (const Row& row : {Row{"%2 before %1", {"a", "b"}, "b before a"},
                         Row{"%1 and %1", {"a"}, "a and a"},
                         Row{"no value for %2", {"a"}, "no value for %2"},
                         Row{"50 % of %1", {"rows"}, "50 % of rows"},
                         Row{"ends in %", {"a"}, "ends in %"},
                         Row{"%0 is none", {"a"}, "%0 is none"},
                         Row{"%12", {"a", "b"}, "a2"},
                         Row{"", {"a"}, ""}})
    EXPECT_EQ(fillIn(row.text, row.values), row.filled) << row.text;
}

TEST(FillIn, leavesPlaceholdersInsideValuesAlone) {
  EXPECT_EQ(fillIn("%1 %2", {"%2", "x"}), "%2 x");
}

TEST(InEnglish, writesEachKindOfValue) {
  const Sentence sentence{phrase("Test", "%1|%2|%3|%4|%5|%6"),
                          {std::string{"text"},
                           std::int64_t{-1234},
                           Figure{2.5, 2},
                           Figure{1234.5, 0},
                           dayOf(2027, 4, 6),
                           Words{"row", "hilera"}}};
  EXPECT_EQ(inEnglish(sentence), "text|-1234|2.50|1234|6 April 2027|row");
}

TEST(InEnglish, writesTheFirstAndTheLastMonth) {
  EXPECT_EQ(inEnglish(Value{dayOf(2028, 2, 29)}), "29 February 2028");
  EXPECT_EQ(inEnglish(Value{dayOf(1999, 12, 31)}), "31 December 1999");
  EXPECT_EQ(inEnglish(Value{dayOf(2000, 1, 1)}), "1 January 2000");
}

TEST(Counted, takesTheSingularForOneOnly) {
  constexpr Phrase one = phrase("Test", "%1 row");
  constexpr Phrase many = phrase("Test", "%1 rows");
  EXPECT_STREQ(counted(1, one, many).text, "%1 row");
  for (const std::int64_t count : {0, 2, -1, 11, 101})
    EXPECT_STREQ(counted(count, one, many).text, "%1 rows") << count;
}

TEST(Words, areGivenInTheLanguageAskedFor) {
  const Words words{"leader", "guía"};
  EXPECT_EQ(words.in(Language::english), "leader");
  EXPECT_EQ(words.in(Language::spanish), "guía");
}

TEST(Sentence, keepsItsPhraseForLookingItUpInAnotherLanguage) {
  const Sentence sentence{phrase("Rows", "Row %1"), {std::int64_t{3}}};
  EXPECT_EQ(sentence.context, "Rows");
  EXPECT_EQ(sentence.text, "Row %1");
  EXPECT_EQ(sentence, (Sentence{phrase("Rows", "Row %1"), {std::int64_t{3}}}));
  EXPECT_NE(sentence, (Sentence{phrase("Rows", "Row %1"), {std::int64_t{4}}}));
}

}  // namespace

}  // namespace topwire
