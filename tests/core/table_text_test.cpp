#include "core/exchange/table_text.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace topwire {
namespace {

Table sample() {
  return {{"block", "trees", "hours", "opens", "cut_off"},
          {{std::string{"Creek 1"},
            std::int64_t{1320},
            Figure{7.25, 1},
            dayOf(2027, 4, 6),
            Cell{}},
           {std::string{"Muñoz, \"low\""},
            std::int64_t{9},
            Figure{10, 1},
            dayOf(2027, 12, 31),
            dayOf(2028, 1, 2)}}};
}

// The quoting rules are RFC 4180, section 2, rules 5 to 7.
TEST(TableText, csvQuotesCommasQuotesAndLineEnds) {
  EXPECT_EQ(toCsv(sample()),
            "block,trees,hours,opens,cut_off\n"
            "Creek 1,1320,7.2,2027-04-06,\n"
            "\"Muñoz, \"\"low\"\"\",9,10.0,2027-12-31,2028-01-02\n");
  EXPECT_EQ(toCsv({{"a"}, {{std::string{"two\nlines"}}}}), "a\n\"two\nlines\"\n");
}

TEST(TableText, jsonKeepsTypesAndOrder) {
  const auto json = nlohmann::ordered_json::parse(toJson(sample()));
  ASSERT_EQ(json.size(), 2U);
  EXPECT_EQ(json[0]["trees"], 1320);
  EXPECT_TRUE(json[0]["cut_off"].is_null());
  EXPECT_EQ(json[1]["block"], "Muñoz, \"low\"");
  EXPECT_EQ(json[1]["hours"], 10.0);
  EXPECT_EQ(json[0].begin().key(), "block");
}

TEST(TableText, jsonOfNoRowsIsAnEmptyArray) {
  EXPECT_EQ(toJson({{"a"}, {}}), "[]\n");
}

TEST(TableText, textAlignsByLettersAndNumbersAtTheRight) {
  EXPECT_EQ(toText(sample()),
            "block         trees  hours  opens       cut_off\n"
            "Creek 1        1320    7.2  2027-04-06\n"
            "Muñoz, \"low\"      9   10.0  2027-12-31  2028-01-02\n");
}

}  // namespace
}  // namespace topwire
