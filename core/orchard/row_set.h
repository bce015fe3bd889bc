#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace topwire {

/// First and last row number, both inclusive.
struct RowRange {
  int first;
  int last;

  friend bool operator==(const RowRange&, const RowRange&) = default;
};

/// Rows of a block as the grower numbers them: "1-12, 15". Kept as sorted ranges that
/// neither overlap nor touch, so that equal sets compare equal.
class RowSet {
public:
  RowSet() = default;
  /// `first` must not be after `last`, and both lie in 1 to 9999.
  static RowSet range(int first, int last);

  bool empty() const { return ranges_.empty(); }

  int count() const;
  bool contains(int row) const;

  bool contains(const RowSet& other) const { return other.without(*this).empty(); }

  const std::vector<RowRange>& ranges() const { return ranges_; }

  std::vector<int> rows() const;

  int first() const { return ranges_.front().first; }

  int last() const { return ranges_.back().last; }

  RowSet with(const RowSet& other) const;
  RowSet without(const RowSet& other) const;
  RowSet inCommonWith(const RowSet& other) const;

  friend bool operator==(const RowSet&, const RowSet&) = default;

private:
  std::vector<RowRange> ranges_;
};

/// What kept a text from being read as rows.
struct RowFault {
  enum class Kind { notRows, backwards, outOfBounds, twice } kind;
  std::string part;  ///< the piece of text it is about
};

struct ParsedRows {
  RowSet rows;
  std::optional<RowFault> fault;
};

/// Reads "1-12, 15"; spaces are free, and the longer dashes people type are taken too. A
/// row named twice is a fault: it is nearly always a slip of the finger.
ParsedRows parseRows(std::string_view text);
/// "1-12, 15".
std::string rowsText(const RowSet& rows);

}  // namespace topwire
