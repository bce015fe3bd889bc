#pragma once

#include "core/sheet/work_sheet.h"

#include <string>

namespace topwire::testing {

/// A week-14 sheet of 2027 without any block.
inline WorkSheet emptySheet() {
  return {"Alder Bend",
          {2027, 14},
          {dayOf(2027, 4, 5), dayOf(2027, 4, 11)},
          dayOf(2027, 4, 6),
          {},
          0,
          {}};
}

/// An open job with three lines of instruction and rows from `first` to `last`.
inline SheetJob sheetJob(int number, const std::string& operation, int first, int last) {
  SheetJob job{};
  job.number = number;
  job.operation = operation;
  job.drawing = operation;
  job.title = {"Rub rivals " + std::to_string(number), "Quitar yemas"};
  job.cultivar = "Gala";
  job.leaf = 3;
  job.state = TaskState::open;
  job.opens = dayOf(2027, 4, 1);
  job.closes = dayOf(2027, 4, 18);
  job.how = {{"Keep the top bud.", "Deje la yema de la punta."},
             {"Rub off the second and third bud.", "Quite la segunda y la tercera."},
             {"Leave all buds lower down.", "Deje las de más abajo."}};
  job.doneWhen = {"one bud leads", "una yema manda"};
  job.tools = {{"snips", "tijeras"}};
  job.materials = {{{"soft ties", "amarres"}, 3600}};
  job.avoid = {Avoid::frost};
  for (int row = first; row <= last; ++row) job.rows.push_back({row, RowCell::toDo});
  job.treesLeft = 100.0 * (last - first + 1);
  job.hoursLeft = 18;
  return job;
}

/// Blocks "Block 1", "Block 2" ... of one job each.
inline WorkSheet sheetOf(int jobs, int rowsEach) {
  WorkSheet sheet = emptySheet();
  for (int i = 1; i <= jobs; ++i) {
    SheetJob job = sheetJob(i, "rub-rivals", 1, rowsEach);
    job.operation += std::to_string(i);
    sheet.blocks.push_back({"Block " + std::to_string(i), {job}});
    sheet.hoursLeft += job.hoursLeft;
  }
  return sheet;
}

}  // namespace topwire::testing
