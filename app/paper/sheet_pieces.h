#pragma once

#include "app/paper/typesetter.h"
#include "app/words/say.h"
#include "core/sheet/work_sheet.h"

namespace topwire {

/// Type and rules of the sheet, in points.
namespace sheet_style {
constexpr Face orchard{29, true};
constexpr Face block{19, true};
constexpr Face title{16, true};
constexpr Face beside{12.2, false};
constexpr Face deadline{12.2, true};
constexpr Face body{11.2, false};
constexpr Face bold{11.2, true};
constexpr Face small{9.6, false};
constexpr double headRule = 2.2;
constexpr double rule = 1.1;
constexpr double boxSide = millimetres(6.2);
constexpr double boxEdge = 1.4;
}  // namespace sheet_style

/// What every piece of a sheet is made with.
struct Bench {
  const WorkSheet& sheet;
  const Voice& voice;
  double width;         ///< of the content, in points
  double drawingWidth;  ///< in points
};

Slab sheetHead(const Bench& bench);
/// The head of the second page and those after it.
Slab shortHead(const Bench& bench);
Slab cautionBox(const Bench& bench);
/// What the weather of the week's days gives reason to think of; empty where nothing.
Slab weatherLines(const Bench& bench);
Slab emptyWeek(const Bench& bench);
/// The table to fill in, in parts that fit on a page, and the lines to sign.
std::vector<Slab> recordTable(const Bench& bench);
Slab closingLines(const Bench& bench);
/// The line at the foot of a page.
Slab footer(const Bench& bench, int page, int pages);

/// A block's heading and its jobs.
class JobWriter {
public:
  explicit JobWriter(const Bench& bench) : bench_(&bench) {}

  std::vector<Slab> block(const SheetBlock& block);

private:
  std::vector<Slab> job(const SheetBlock& block, const SheetJob& job, bool first);
  Slab head(const SheetJob& job, bool first) const;
  Slab instructions(const SheetJob& job);

  const Bench* bench_;
  std::map<std::string, int> inFull_;  ///< operation to the job that tells it in full
};

/// A job's rows as lines of boxes with their numbers above; rows between its first and
/// last that are not in it show as dashes. The lines are about equally long.
std::vector<Slab> rowBoxes(const SheetJob& job, double width);

}  // namespace topwire
