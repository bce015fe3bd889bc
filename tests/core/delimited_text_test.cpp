#include "core/exchange/delimited_text.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using ::testing::ElementsAre;
using ::testing::SizeIs;

std::vector<std::string> linesOf(std::string_view text) {
  TextLines lines{text};
  std::vector<std::string> all;
  while (const auto line = lines.next()) {
    all.emplace_back(*line);
    EXPECT_EQ(lines.number(), all.size());
  }
  EXPECT_EQ(lines.offset(), text.size());
  return all;
}

TEST(TextLines, EndInAnyOfTheThreeWays) {
  EXPECT_THAT(linesOf("a\nb\n"), ElementsAre("a", "b"));
  EXPECT_THAT(linesOf("a\r\nb\r\n"), ElementsAre("a", "b"));
  EXPECT_THAT(linesOf("a\rb\r"), ElementsAre("a", "b"));
  EXPECT_THAT(linesOf("a\nb"), ElementsAre("a", "b"));
  EXPECT_THAT(linesOf("\n\na"), ElementsAre("", "", "a"));
  EXPECT_THAT(linesOf(""), ElementsAre());
}

std::vector<std::string> split(std::string_view line, char separator = ',') {
  std::vector<std::string_view> fields;
  splitFields(line, separator, fields);
  std::vector<std::string> texts;
  for (const std::string_view field : fields) texts.push_back(undoubled(field));
  return texts;
}

// Rules 4 to 7 of section 2 of RFC 4180; blanks around fields go besides.
TEST(SplitFields, FollowsRfc4180WithinALine) {
  EXPECT_THAT(split("a,b,c"), ElementsAre("a", "b", "c"));
  EXPECT_THAT(split("a,,c,"), ElementsAre("a", "", "c", ""));
  EXPECT_THAT(split(""), ElementsAre(""));
  EXPECT_THAT(split(R"("a, b",c)"), ElementsAre("a, b", "c"));
  EXPECT_THAT(split(R"("say ""ah""",c)"), ElementsAre("say \"ah\"", "c"));
  EXPECT_THAT(split(R"("",""""  ,  "  28" )"), ElementsAre("", "\"", "28"));
  EXPECT_THAT(split("a;b,c", ';'), ElementsAre("a", "b,c"));
  EXPECT_THAT(split("a\tb c", '\t'), ElementsAre("a", "b c"));
}

TEST(SplitFields, AnOpenQuoteEndsWithItsLine) {
  EXPECT_THAT(split(R"(a,"b,c)"), ElementsAre("a", "b,c"));
  EXPECT_THAT(split(R"(a,"b""")"), ElementsAre("a", "b\""));
  EXPECT_THAT(split(R"("a"junk,b)"), ElementsAre("a", "b"));
  EXPECT_THAT(split(R"(a"b,c)"), ElementsAre("a\"b", "c"));
}

TEST(SplitFields, LeavesOutWhatNoTableHas) {
  EXPECT_THAT(split(std::string(100'000, ',')), SizeIs(1000));
}

TEST(ParseNumber, TakesAPointOrACommaAndNothingElse) {
  EXPECT_EQ(parseNumber("12.5"), 12.5);
  EXPECT_EQ(parseNumber("12,5"), 12.5);
  EXPECT_EQ(parseNumber("-0.25"), -0.25);
  EXPECT_EQ(parseNumber("+3"), 3);
  for (const char* text : {"",
                           "+",
                           "-",
                           "+-1",
                           "++1",
                           "1.2.3",
                           "1,2,3",
                           "1,234.5",
                           "12.5 C",
                           "inf",
                           "-infinity",
                           "nan",
                           "1e999",
                           "0x10"})
    EXPECT_EQ(parseNumber(text), std::nullopt) << text;
  EXPECT_EQ(parseNumber(std::string(1000, '1')), std::nullopt);
}

TEST(Excerpt, IsShortAndValidUtf8) {
  EXPECT_EQ(excerpt("Muñoz"), "Muñoz");
  EXPECT_EQ(excerpt("a\tb\x01"), "a?b?");
  EXPECT_EQ(excerpt("m\xednima"), "m?nima");
  EXPECT_EQ(excerpt("\xc3"), "?");
  EXPECT_EQ(excerpt("\xed\xa0\x80"), "???") << "half of a pair of UTF-16";
  EXPECT_EQ(excerpt("\xc0\xaf"), "??") << "longer than need be";
  EXPECT_EQ(excerpt("abcdef", 5), "abcde...");
  EXPECT_EQ(excerpt("abcdñ", 5), "abcd...") << "not half a letter";
}

}  // namespace
}  // namespace topwire
