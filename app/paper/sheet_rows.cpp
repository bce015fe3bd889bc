#include "app/paper/sheet_pieces.h"

#include <algorithm>
#include <utility>

namespace topwire {

namespace {

using namespace sheet_style;

constexpr double between = 1.4;
constexpr double lineGap = 3;
/// Up to this many missing rows get a dash each; more share one.
constexpr int mostDashes = 3;

struct Cell {
  int first;
  int last;
  RowMark mark;
  QString label;
  double width;
};

RowMark markOf(RowCell cell) {
  switch (cell) {
    case RowCell::partly:
      return RowMark::partly;
    case RowCell::done:
      return RowMark::done;
    case RowCell::toDo:
      break;
  }
  return RowMark::toDo;
}

Cell cellFor(int first, int last, RowMark mark) {
  QString label = QString::number(first);
  if (last != first) label += u'–' + QString::number(last);
  const double width = std::max(boxSide, widthOf(label, small) + 1.6);
  return {first, last, mark, std::move(label), width};
}

void addGap(std::vector<Cell>& cells, int first, int last) {
  if (last - first >= mostDashes) {
    cells.push_back(cellFor(first, last, RowMark::absent));
    return;
  }
  for (int row = first; row <= last; ++row)
    cells.push_back(cellFor(row, row, RowMark::absent));
}

std::vector<Cell> cellsOf(const SheetJob& job) {
  std::vector<Cell> cells;
  for (const SheetRow& row : job.rows) {
    if (!cells.empty() && row.number > cells.back().last + 1)
      addGap(cells, cells.back().last + 1, row.number - 1);
    cells.push_back(cellFor(row.number, row.number, markOf(row.cell)));
  }
  return cells;
}

/// Where each line ends, filling lines up to `width`.
std::vector<std::size_t> lineEnds(const std::vector<Cell>& cells, double width) {
  std::vector<std::size_t> ends;
  double used = 0;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    if (used > 0 && used + cells[i].width > width) {
      ends.push_back(i);
      used = 0;
    }
    used += cells[i].width + between;
  }
  ends.push_back(cells.size());
  return ends;
}

/// The ends of as few lines as fit, as even as they can be.
std::vector<std::size_t> balancedEnds(const std::vector<Cell>& cells, double width) {
  std::vector<std::size_t> best = lineEnds(cells, width);
  if (best.size() == 1) return best;
  const std::size_t lines = best.size();
  // Ever narrower, until it would take another line.
  for (int step = 1; width - step * boxSide > 2 * boxSide; ++step) {
    auto ends = lineEnds(cells, width - step * boxSide);
    if (ends.size() != lines) break;
    best = std::move(ends);
  }
  return best;
}

Slab lineOf(const std::vector<Cell>& cells, std::size_t from, std::size_t to, int job) {
  Slab slab;
  const double numbers = lineHeightOf(small) - 0.6;
  double x = 0;
  for (std::size_t i = from; i < to; ++i) {
    const Cell& cell = cells[i];
    const double middle = x + cell.width / 2;
    addLine(slab.items, cell.label, small, {middle, 0}, Side::centre);
    slab.items.emplace_back(RowItem{{middle - boxSide / 2, numbers, boxSide, boxSide},
                                    job,
                                    cell.first,
                                    cell.last,
                                    cell.mark});
    x += cell.width + between;
  }
  slab.height = numbers + boxSide;
  slab.gap = lineGap;
  return slab;
}

}  // namespace

std::vector<Slab> rowBoxes(const SheetJob& job, double width) {
  std::vector<Slab> lines;
  const auto cells = cellsOf(job);
  if (cells.empty()) return lines;
  std::size_t from = 0;
  for (const std::size_t to : balancedEnds(cells, width)) {
    lines.push_back(lineOf(cells, from, to, job.number));
    from = to;
  }
  return lines;
}

}  // namespace topwire
