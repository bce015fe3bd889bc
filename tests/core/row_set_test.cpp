#include "core/orchard/row_set.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <iterator>
#include <set>

namespace topwire {

namespace {

struct ReadRow {
  const char* text;
  const char* normal;
};

TEST(ParseRows, readsWhatPeopleType) {
  for (const ReadRow& row : {ReadRow{"1-12, 15", "1-12, 15"},
                             ReadRow{"", ""},
                             ReadRow{"   ", ""},
                             ReadRow{"7", "7"},
                             ReadRow{" 3 - 5 ,1", "1, 3-5"},
                             ReadRow{"1,2,3", "1-3"},
                             ReadRow{"4-6,1-3", "1-6"},
                             ReadRow{"2-2", "2"},
                             ReadRow{"1–4", "1-4"},  // en dash
                             ReadRow{"1−4", "1-4"},  // minus sign
                             ReadRow{"1—4", "1-4"},  // em dash
                             ReadRow{"007", "7"},
                             ReadRow{"9999", "9999"}}) {
    const ParsedRows read = parseRows(row.text);
    EXPECT_FALSE(read.fault) << row.text;
    EXPECT_EQ(rowsText(read.rows), row.normal) << row.text;
  }
}

struct FaultRow {
  const char* text;
  RowFault::Kind kind;
  const char* part;
};

TEST(ParseRows, namesThePartItCouldNotRead) {
  using Kind = RowFault::Kind;
  for (const FaultRow& row :
       {FaultRow{"a", Kind::notRows, "a"},
        FaultRow{"1,,2", Kind::notRows, ""},
        FaultRow{"1,", Kind::notRows, ""},
        FaultRow{"1-", Kind::notRows, "1-"},
        FaultRow{"-3", Kind::notRows, "-3"},
        FaultRow{"1-2-3", Kind::notRows, "1-2-3"},
        FaultRow{"1.5", Kind::notRows, "1.5"},
        FaultRow{"1; 2", Kind::notRows, "1; 2"},
        FaultRow{"1, 9-4", Kind::backwards, "9-4"},
        FaultRow{"0", Kind::outOfBounds, "0"},
        FaultRow{"1-10000", Kind::outOfBounds, "1-10000"},
        FaultRow{"99999999999999999999", Kind::outOfBounds, "99999999999999999999"},
        FaultRow{"1-5, 5", Kind::twice, "5"},
        FaultRow{"2, 1-3", Kind::twice, "1-3"}}) {
    const ParsedRows read = parseRows(row.text);
    ASSERT_TRUE(read.fault) << row.text;
    EXPECT_EQ(read.fault->kind, row.kind) << row.text;
    EXPECT_EQ(read.fault->part, row.part) << row.text;
    EXPECT_TRUE(read.rows.empty()) << row.text;
  }
}

TEST(RowSet, joinsRangesThatTouchSoThatEqualSetsAreEqual) {
  EXPECT_EQ(RowSet::range(1, 3).with(RowSet::range(4, 6)), RowSet::range(1, 6));
}

TEST(RowSet, losesItsMiddle) {
  const RowSet left = RowSet::range(1, 9).without(RowSet::range(4, 6));
  EXPECT_EQ(rowsText(left), "1-3, 7-9");
  EXPECT_EQ(left.count(), 6);
  EXPECT_EQ(left.first(), 1);
  EXPECT_EQ(left.last(), 9);
}

RowSet rowSetOf(const std::set<int>& rows) {
  RowSet made;
  for (const int row : rows) made = made.with(RowSet::range(row, row));
  return made;
}

std::set<int> asSet(const RowSet& rows) {
  const auto all = rows.rows();
  return {all.begin(), all.end()};
}

/// Few and small row numbers, so that sets overlap and touch often.
std::set<int> anyRows() {
  return *rc::gen::container<std::set<int>>(rc::gen::inRange(1, 25));
}

template <class Operation>
std::set<int> combined(const std::set<int>& a,
                       const std::set<int>& b,
                       Operation operation) {
  std::set<int> result;
  operation(a.begin(), a.end(), b.begin(), b.end(), std::inserter(result, result.end()));
  return result;
}

RC_GTEST_PROP(RowSetProperty, agreesWithASetOfNumbers, ()) {
  const auto a = anyRows();
  const auto b = anyRows();
  const RowSet rowsA = rowSetOf(a);
  const RowSet rowsB = rowSetOf(b);
  const auto unite = [](auto... at) { return std::set_union(at...); };
  const auto subtract = [](auto... at) { return std::set_difference(at...); };
  const auto intersect = [](auto... at) { return std::set_intersection(at...); };
  RC_ASSERT(asSet(rowsA.with(rowsB)) == combined(a, b, unite));
  RC_ASSERT(asSet(rowsA.without(rowsB)) == combined(a, b, subtract));
  RC_ASSERT(asSet(rowsA.inCommonWith(rowsB)) == combined(a, b, intersect));
  RC_ASSERT(rowsA.contains(rowsB) == std::ranges::includes(a, b));
  RC_ASSERT(rowsA.count() == static_cast<int>(a.size()));
}

RC_GTEST_PROP(RowSetProperty, isKeptInOneFormHoweverItWasMade, ()) {
  const auto a = anyRows();
  const auto b = anyRows();
  const RowSet made = rowSetOf(a).without(rowSetOf(b)).with(rowSetOf(b));
  RC_ASSERT(made == rowSetOf(a).with(rowSetOf(b)));
  for (std::size_t i = 1; i < made.ranges().size(); ++i)
    RC_ASSERT(made.ranges()[i - 1].last + 1 < made.ranges()[i].first);
}

RC_GTEST_PROP(RowSetProperty, isReadBackFromItsText, ()) {
  const RowSet rows = rowSetOf(anyRows());
  const ParsedRows read = parseRows(rowsText(rows));
  RC_ASSERT(!read.fault);
  RC_ASSERT(read.rows == rows);
}

}  // namespace

}  // namespace topwire
