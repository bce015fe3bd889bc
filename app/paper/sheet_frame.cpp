#include "app/paper/sheet_pieces.h"

#include <algorithm>
#include <array>

namespace topwire {

namespace {

using namespace sheet_style;

constexpr double pad = 6;
/// Lines of the record table that surely fit on one page of either paper.
constexpr std::size_t rowsAtOnce = 20;

QString said(const Bench& bench, Phrase phrase, std::vector<Value> values = {}) {
  return bench.voice.say(Sentence{phrase, std::move(values)});
}

QString weekText(const Bench& bench) {
  return said(bench,
              phrase("Sheet", "Week %1, %2"),
              {std::int64_t{bench.sheet.week.number},
               bench.voice.spanWithYear(bench.sheet.days).toStdString()});
}

std::size_t jobCount(const WorkSheet& sheet) {
  std::size_t jobs = 0;
  for (const SheetBlock& block : sheet.blocks) jobs += block.jobs.size();
  return jobs;
}

QString summaryText(const Bench& bench) {
  const auto jobs = static_cast<std::int64_t>(jobCount(bench.sheet));
  const auto blocks = static_cast<std::int64_t>(bench.sheet.blocks.size());
  return said(bench,
              counted(jobs, phrase("Sheet", "%1 job"), phrase("Sheet", "%1 jobs")),
              {jobs})
         + QStringLiteral(" · ")
         + said(
             bench,
             counted(blocks, phrase("Sheet", "%1 block"), phrase("Sheet", "%1 blocks")),
             {blocks})
         + QStringLiteral(" · ") + bench.voice.hours(bench.sheet.hoursLeft);
}

/// Columns of the record table: where each begins, and the right edge.
struct Columns {
  std::array<double, 8> edge;
};

constexpr std::array headings{phrase("Sheet", "Job"),
                              phrase("Sheet", "Rows done"),
                              phrase("Sheet", "Start"),
                              phrase("Sheet", "Stop"),
                              phrase("Sheet", "Workers"),
                              phrase("Sheet", "Hours")};

Columns columnsFor(const Bench& bench) {
  constexpr double least = 50;
  Columns columns{};
  columns.edge[7] = bench.width;
  for (std::size_t i = 6; i >= 3; --i)
    columns.edge.at(i) =
        columns.edge.at(i + 1)
        - std::max(least, widthOf(said(bench, headings.at(i - 1)), bold) + 2 * pad);
  columns.edge[1] = 30;
  columns.edge[2] = columns.edge[1] + (columns.edge[3] - columns.edge[1]) * 0.55;
  return columns;
}

void addCellEdges(Slab& slab, const Columns& columns, double top, double bottom) {
  slab.items.emplace_back(RuleItem{{0.55, bottom, columns.edge[7] - 0.55, bottom}, rule});
  for (std::size_t i = 0; i < columns.edge.size(); ++i) {
    if (i == 1) continue;
    const double x = std::clamp(columns.edge.at(i), 0.55, columns.edge[7] - 0.55);
    slab.items.emplace_back(RuleItem{{x, top, x, bottom}, rule});
  }
}

double addHeadings(const Bench& bench, Slab& slab, const Columns& columns) {
  constexpr double height = 19;
  const double y = 0.55 + (height - lineHeightOf(bold)) / 2;
  slab.items.emplace_back(RuleItem{{0.55, 0.55, bench.width - 0.55, 0.55}, rule});
  for (std::size_t i = 0; i < headings.size(); ++i) {
    const double left = columns.edge.at(i == 0 ? 0 : i + 1);
    addLine(slab.items, said(bench, headings.at(i)), bold, {left + pad, y});
  }
  addCellEdges(slab, columns, 0.55, height);
  return height;
}

struct NamedJob {
  const SheetBlock* block;
  const SheetJob* job;
};

double addRecord(
    const Bench& bench, Slab& slab, const Columns& columns, double top, NamedJob named) {
  // "Creek 1" does not break before its number.
  const QString name =
      bench.voice.say(named.job->title) + QStringLiteral(", ")
      + QString::fromStdString(named.block->name).replace(u' ', QChar::Nbsp);
  const double width = columns.edge[2] - columns.edge[1] - pad;
  const QStringList lines = wrapped(name, small, width);
  const double text = lineHeightOf(small) * static_cast<double>(lines.size());
  const double height = std::max(22.0, text + 4);
  double y = top + (height - text) / 2;
  for (const QString& line : lines) {
    addLine(slab.items, line, small, {columns.edge[1], y});
    y += lineHeightOf(small);
  }
  addLine(slab.items,
          QString::number(named.job->number),
          bold,
          {pad, top + (height - lineHeightOf(bold)) / 2});
  addCellEdges(slab, columns, top, top + height);
  return top + height;
}

/// "Rain, 4.2 mm. Jobs 3-5, 8 should wait."
QString weatherText(const Bench& bench, const SheetCaution& caution) {
  const QString text = bench.voice.say(caution.sentence);
  if (caution.jobs.empty()) return text;
  return text + u' '
         + said(bench,
                counted(caution.jobs.count(),
                        phrase("Sheet", "Job %1 should wait."),
                        phrase("Sheet", "Jobs %1 should wait.")),
                {rowsText(caution.jobs)});
}

/// A line a day.
std::vector<std::pair<Day, QString>> weatherByDay(const Bench& bench) {
  std::vector<std::pair<Day, QString>> days;
  for (const SheetCaution& caution : bench.sheet.cautions)
    if (days.empty() || days.back().first != caution.day)
      days.emplace_back(caution.day, weatherText(bench, caution));
    else
      days.back().second += u' ' + weatherText(bench, caution);
  return days;
}

}  // namespace

Slab sheetHead(const Bench& bench) {
  Slab slab;
  const QString week = weekText(bench);
  const double most = bench.width * 0.6;
  const QStringList weekLines = wrapped(week, title, most);
  double weekWidth = 0;
  for (const QString& line : weekLines)
    weekWidth = std::max(weekWidth, widthOf(line, title));
  const double name = addText(slab.items,
                              QString::fromStdString(bench.sheet.orchard),
                              orchard,
                              {0, 0},
                              bench.width - weekWidth - 16);
  const double weekHeight = lineHeightOf(title) * static_cast<double>(weekLines.size());
  const double foot = std::max(name - 4, weekHeight);
  double y = foot - weekHeight;
  for (const QString& line : weekLines) {
    addLine(slab.items, line, title, {bench.width, y}, Side::right);
    y += lineHeightOf(title);
  }
  addLine(slab.items, summaryText(bench), body, {0, foot});
  addLine(slab.items,
          said(bench, phrase("Sheet", "made %1"), {bench.sheet.madeOn}),
          body,
          {bench.width, foot},
          Side::right);
  const double ruleAt = foot + lineHeightOf(body) + 6;
  slab.items.emplace_back(RuleItem{{0, ruleAt, bench.width, ruleAt}, headRule});
  slab.height = ruleAt + headRule / 2;
  return slab;
}

Slab shortHead(const Bench& bench) {
  Slab slab;
  const QString week = weekText(bench);
  addLine(slab.items, week, bold, {bench.width, 0}, Side::right);
  const double name = addText(slab.items,
                              QString::fromStdString(bench.sheet.orchard),
                              bold,
                              {0, 0},
                              bench.width - widthOf(week, bold) - 16);
  slab.items.emplace_back(RuleItem{{0, name + 4, bench.width, name + 4}, headRule});
  slab.height = name + 4 + headRule / 2;
  return slab;
}

Slab cautionBox(const Bench& bench) {
  Slab slab;
  slab.gap = 8;
  const auto cautions = sheetCautions(bench.sheet);
  if (cautions.empty()) return slab;
  const double cell = bench.width / static_cast<double>(cautions.size());
  double tallest = 0;
  for (std::size_t i = 0; i < cautions.size(); ++i)
    tallest = std::max(tallest,
                       addText(slab.items,
                               bench.voice.say(cautions[i]),
                               body,
                               {cell * static_cast<double>(i) + 9, 4.5},
                               cell - 18));
  slab.height = tallest + 9;
  slab.items.emplace_back(FrameItem{{0, 0, bench.width, slab.height}, 1.8});
  for (std::size_t i = 1; i < cautions.size(); ++i) {
    const double x = cell * static_cast<double>(i);
    slab.items.emplace_back(RuleItem{{x, 0, x, slab.height}, rule});
  }
  return slab;
}

Slab weatherLines(const Bench& bench) {
  Slab slab;
  slab.gap = 8;
  const auto days = weatherByDay(bench);
  double indent = 0;
  for (const auto& [day, text] : days)
    indent = std::max(indent, widthOf(bench.voice.shortDay(day), bold) + 8);
  double y = 0;
  for (const auto& [day, text] : days) {
    addLine(slab.items, bench.voice.shortDay(day), bold, {0, y});
    y += addText(slab.items, text, body, {indent, y}, bench.width - indent);
  }
  slab.height =
      y
      + addText(
          slab.items, bench.voice.say(cautionAdvice()), small, {0, y + 2}, bench.width)
      + 2;
  return slab;
}

Slab emptyWeek(const Bench& bench) {
  Slab slab;
  slab.gap = 40;
  const double y = addText(slab.items,
                           said(bench, phrase("Sheet", "No work is open this week.")),
                           title,
                           {0, 0},
                           bench.width);
  slab.height =
      y
      + addText(slab.items,
                said(bench,
                     phrase("Sheet",
                            "The calendar shows which weeks have work; print one "
                            "of those.")),
                body,
                {0, y + 4},
                bench.width);
  return slab;
}

std::vector<Slab> recordTable(const Bench& bench) {
  std::vector<NamedJob> jobs;
  for (const SheetBlock& each : bench.sheet.blocks)
    for (const SheetJob& job : each.jobs) jobs.push_back({&each, &job});
  const Columns columns = columnsFor(bench);
  std::vector<Slab> parts;
  for (std::size_t from = 0; from < jobs.size(); from += rowsAtOnce) {
    Slab slab;
    slab.gap = parts.empty() ? 16 : 6;
    double y = addHeadings(bench, slab, columns);
    for (std::size_t i = from; i < std::min(from + rowsAtOnce, jobs.size()); ++i)
      y = addRecord(bench, slab, columns, y, jobs[i]);
    slab.height = y + rule / 2;
    parts.push_back(std::move(slab));
  }
  if (!parts.empty()) parts.back().keepWithNext = true;
  return parts;
}

Slab closingLines(const Bench& bench) {
  Slab slab;
  slab.gap = 26;
  const double signature = bench.width * 0.6;
  const double words = addText(
      slab.items,
      said(bench,
           phrase("Sheet", "Stop and tell the crew leader if anything is not safe.")),
      body,
      {0, 0},
      signature - 24);
  const double lineAt = std::max(words - lineHeightOf(body), 0.6);
  slab.items.emplace_back(RuleItem{{signature, lineAt, bench.width, lineAt}, rule});
  addLine(slab.items,
          said(bench, phrase("Sheet", "Crew leader")),
          body,
          {signature, lineAt + 1});
  slab.height = std::max(words, lineAt + 1 + lineHeightOf(body));
  return slab;
}

Slab footer(const Bench& bench, int page, int pages) {
  Slab slab;
  const QString right = said(
      bench, phrase("Sheet", "page %1 of %2"), {std::int64_t{page}, std::int64_t{pages}});
  addLine(slab.items, right, small, {bench.width, 0}, Side::right);
  const QString legend =
      said(bench,
           phrase("Sheet",
                  "Black with a tick: done. Lower half black: partly done. "
                  "A dash: not in this job."));
  slab.height = addText(
      slab.items, legend, small, {0, 0}, bench.width - widthOf(right, small) - 16);
  return slab;
}

}  // namespace topwire
