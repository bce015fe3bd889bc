#include "app/paper/material_pages.h"
#include "app/paper/sheet_pieces.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace topwire {

namespace {

using namespace sheet_style;

constexpr double squareSide = 21.6;
constexpr std::size_t mostLinesTogether = 3;
constexpr double column = 13;  ///< between the drawing and the words

Sentence sentence(Phrase phrase, std::vector<Value> values = {}) {
  return Sentence{phrase, std::move(values)};
}

std::string text(const QString& value) {
  return value.toStdString();
}

/// "Gala, third leaf", with what sets the planting apart.
QString plantingLine(const SheetJob& job, const Voice& voice) {
  QString line = QString::fromStdString(job.cultivar);
  if (job.kind == PlantingKind::pollinizer)
    line += QStringLiteral(", ") + voice.say(sentence(phrase("Sheet", "pollinizer")));
  if (job.kind == PlantingKind::replant)
    line += QStringLiteral(", ") + voice.say(sentence(phrase("Sheet", "replants")));
  return line + QStringLiteral(", ") + voice.leaf(job.leaf);
}

/// When the job may be done, as short as it can be said, and the hours left.
QString deadlineLine(const SheetJob& job, const Bench& bench) {
  const Voice& voice = bench.voice;
  if (job.state == TaskState::done) return voice.nameOf(TaskState::done);
  const QString hours = QStringLiteral(" · ") + voice.hours(job.hoursLeft);
  if (job.closes < bench.sheet.madeOn)
    return voice.say(sentence(phrase("Sheet", "late, was to be done by %1"),
                              {text(voice.dayOfYear(job.closes))}))
           + hours;
  if (job.opens > bench.sheet.madeOn) return voice.span({job.opens, job.closes}) + hours;
  return voice.say(sentence(phrase("Sheet", "to %1"), {text(voice.shortDay(job.closes))}))
         + hours;
}

QString joined(const std::vector<QString>& parts, const QString& by) {
  QString all;
  for (const QString& part : parts) {
    if (!all.isEmpty() && !part.isEmpty()) all += by;
    all += part;
  }
  return all;
}

/// "secateurs, snips · soft ties: 3,600".
QString takeLine(const SheetJob& job, const Voice& voice) {
  std::vector<QString> tools;
  tools.reserve(job.tools.size());
  for (const Words& tool : job.tools) tools.push_back(voice.say(tool));
  std::vector<QString> parts{joined(tools, QStringLiteral(", "))};
  for (const SheetMaterial& material : job.materials)
    parts.push_back(voice.say(material.name) + QStringLiteral(": ")
                    + amountText(material.count, material.unit, material.units, voice));
  return joined(parts, QStringLiteral(" · "));
}

QString counting(const Voice& voice, std::int64_t count, Phrase one, Phrase many) {
  return voice.say(sentence(counted(count, one, many), {text(voice.count(count))}));
}

/// "22 rows · 2,160 trees": what is left.
QString toDoLine(const SheetJob& job, const Voice& voice) {
  if (job.state == TaskState::done) return {};
  const auto rows = std::ranges::count_if(
      job.rows, [](const SheetRow& row) { return row.cell != RowCell::done; });
  const auto trees = std::int64_t{std::lround(job.treesLeft)};
  std::vector<QString> parts;
  if (rows > 0)
    parts.push_back(
        counting(voice, rows, phrase("Sheet", "%1 row"), phrase("Sheet", "%1 rows")));
  if (trees > 0)
    parts.push_back(
        counting(voice, trees, phrase("Sheet", "%1 tree"), phrase("Sheet", "%1 trees")));
  return joined(parts, QStringLiteral(" · "));
}

Phrase stopPhrase(Avoid avoid) {
  switch (avoid) {
    case Avoid::wet:
      return phrase("Sheet", "it rains or the trees are wet");
    case Avoid::frost:
      return phrase("Sheet", "there is frost");
    case Avoid::heat:
      return phrase("Sheet", "it is very hot");
    case Avoid::wind:
      return phrase("Sheet", "the wind is strong");
    case Avoid::spray:
      break;
  }
  return phrase("Sheet", "the block is closed after a spray");
}

QString stopLine(const SheetJob& job, const Voice& voice) {
  std::vector<QString> parts;
  parts.reserve(job.avoid.size());
  for (const Avoid avoid : job.avoid)
    parts.push_back(voice.say(sentence(stopPhrase(avoid))));
  return joined(parts, QStringLiteral("; "));
}

QString cutOffLine(const SheetJob& job, const Voice& voice) {
  if (!job.cutOff || job.state == TaskState::done) return {};
  const QString day = voice.shortDay(*job.cutOff);
  const QString reason = voice.say(job.cutOffReason);
  return reason.isEmpty() ? day : day + QStringLiteral(": ") + reason;
}

struct Labelled {
  Phrase label;
  QString value;
};

std::vector<Labelled> labelledLines(const SheetJob& job, const Voice& voice, bool brief) {
  std::vector<Labelled> lines;
  const auto add = [&lines](Phrase label, const QString& value) {
    if (!value.isEmpty()) lines.push_back({label, value});
  };
  if (!brief) add(phrase("Sheet", "Done when"), voice.say(job.doneWhen));
  add(phrase("Sheet", "To do"), toDoLine(job, voice));
  add(phrase("Sheet", "Take"), takeLine(job, voice));
  if (!brief) {
    add(phrase("Sheet", "Stop if"), stopLine(job, voice));
    add(phrase("Sheet", "Care"), voice.say(job.caution));
  }
  add(phrase("Sheet", "Last day"), cutOffLine(job, voice));
  return lines;
}

/// Bold labels in a column, their words in the next; returns where they end.
double addLabelled(std::vector<Item>& items,
                   const std::vector<Labelled>& lines,
                   const Voice& voice,
                   QPointF top,
                   double width) {
  double labels = 0;
  for (const Labelled& line : lines)
    labels = std::max(labels, widthOf(voice.say(sentence(line.label)), bold));
  labels += 9;
  double y = top.y();
  for (const Labelled& line : lines) {
    addLine(items, voice.say(sentence(line.label)), bold, {top.x(), y});
    y += addText(items, line.value, body, {top.x() + labels, y}, width - labels);
  }
  return y;
}

double addHow(std::vector<Item>& items,
              const SheetJob& job,
              const Voice& voice,
              QPointF top,
              double width) {
  if (job.how.size() == 1)
    return top.y() + addText(items, voice.say(job.how.front()), body, top, width);
  constexpr double indent = 17;
  double y = top.y();
  for (std::size_t i = 0; i < job.how.size(); ++i) {
    addLine(items, QString::number(i + 1) + u'.', body, {top.x() + 2, y});
    y +=
        addText(items, voice.say(job.how[i]), body, {top.x() + indent, y}, width - indent)
        + 0.8;
  }
  return y;
}

Slab blockHeading(const Bench& bench, const SheetBlock& block) {
  Slab slab;
  double hours = 0;
  for (const SheetJob& job : block.jobs) hours += job.hoursLeft;
  const auto jobs = static_cast<std::int64_t>(block.jobs.size());
  const QString right =
      bench.voice.say(sentence(
          counted(jobs, phrase("Sheet", "%1 job"), phrase("Sheet", "%1 jobs")), {jobs}))
      + QStringLiteral(" · ") + bench.voice.hours(hours);
  if (&block != &bench.sheet.blocks.front())
    slab.divider.emplace_back(RuleItem{{0, 1.1, bench.width, 1.1}, headRule});
  addLine(slab.items, right, beside, {bench.width, 12}, Side::right);
  slab.height = 5
                + addText(slab.items,
                          QString::fromStdString(block.name),
                          sheet_style::block,
                          {0, 5},
                          bench.width - widthOf(right, beside) - column);
  slab.gap = 15;
  slab.keepWithNext = true;
  return slab;
}

void addLead(Slab& slab, const QString& words) {
  slab.leadHeight = addText(slab.lead, words, bold, {0, 0}, 1e6) + 3;
}

}  // namespace

std::vector<Slab> JobWriter::block(const SheetBlock& block) {
  std::vector<Slab> slabs{blockHeading(*bench_, block)};
  for (const SheetJob& each : block.jobs) {
    const bool first = &each == &block.jobs.front();
    for (Slab& slab : job(block, each, first)) slabs.push_back(std::move(slab));
  }
  return slabs;
}

std::vector<Slab> JobWriter::job(const SheetBlock& block,
                                 const SheetJob& job,
                                 bool first) {
  const Voice& voice = bench_->voice;
  std::vector<Slab> slabs{head(job, first), instructions(job)};
  auto rows = rowBoxes(job, bench_->width);
  if (!rows.empty()) rows.front().gap = 6;
  for (std::size_t i = 1; i < rows.size(); ++i)
    addLead(rows[i],
            voice.say(sentence(phrase("Sheet", "Job %1 in %2, continued"),
                               {std::int64_t{job.number}, block.name})));
  if (!first)
    addLead(slabs.front(),
            voice.say(sentence(phrase("Sheet", "%1, continued"), {block.name})));
  slabs[0].keepWithNext = true;
  slabs[1].keepWithNext = !rows.empty();
  // A few lines are not worth parting.
  if (rows.size() <= mostLinesTogether)
    for (std::size_t i = 0; i + 1 < rows.size(); ++i) rows[i].keepWithNext = true;
  for (Slab& row : rows) slabs.push_back(std::move(row));
  return slabs;
}

Slab JobWriter::head(const SheetJob& job, bool first) const {
  Slab slab;
  const double top = first ? 3 : 10;
  if (!first) slab.divider.emplace_back(RuleItem{{0, 0.55, bench_->width, 0.55}, rule});
  const QString number = QString::number(job.number);
  const double square = std::max(squareSide, widthOf(number, title) + 8);
  slab.items.emplace_back(FrameItem{{0, top, square, squareSide}, 0, true});
  addLine(slab.items, number, title, {square / 2, top}, Side::centre);
  std::get<TextItem>(slab.items.back()).white = true;

  const QString right = deadlineLine(job, *bench_);
  addLine(slab.items, right, deadline, {bench_->width, top + 3.4}, Side::right);
  const double left = square + 8.6;
  const double room = bench_->width - left - widthOf(right, deadline) - column;
  const QStringList lines = wrapped(bench_->voice.say(job.title), title, room);
  double y = top;
  for (const QString& line : lines) {
    addLine(slab.items, line, title, {left, y});
    y += lineHeightOf(title);
  }
  const QString planting = plantingLine(job, bench_->voice);
  const double after = left + widthOf(lines.back(), title) + 9;
  if (after + widthOf(planting, beside) <= left + room)
    addLine(slab.items, planting, beside, {after, y - lineHeightOf(title) + 3.9});
  else
    y += addText(slab.items, planting, beside, {left, y}, bench_->width - left);
  slab.height = std::max(y, top + squareSide);
  slab.gap = first ? 0 : 9;
  return slab;
}

Slab JobWriter::instructions(const SheetJob& job) {
  Slab slab;
  slab.gap = 4;
  const Voice& voice = bench_->voice;
  if (job.state == TaskState::done) return slab;
  const auto told = inFull_.find(job.operation);
  if (job.sameAs && told != inFull_.end()) {
    const QString as =
        voice.say(sentence(phrase("Sheet", "As job %1."), {std::int64_t{told->second}}));
    const double y = addText(slab.items, as, body, {0, 0}, bench_->width);
    slab.height = addLabelled(
        slab.items, labelledLines(job, voice, true), voice, {0, y}, bench_->width);
    return slab;
  }
  inFull_.emplace(job.operation, job.number);
  std::optional<Drawing> drawing = drawingFor(job.drawing, job.leaf);
  double left = 0;
  double artHeight = 0;
  if (drawing) {
    const double art = bench_->drawingWidth;
    artHeight = art * Drawing::height / Drawing::width;
    slab.items.emplace_back(DrawingItem{{0, 0, art, artHeight}, std::move(*drawing)});
    left = art + column;
  }
  const double width = bench_->width - left;
  double y = job.how.empty() ? 0 : addHow(slab.items, job, voice, {left, 0}, width) + 2;
  y = addLabelled(slab.items, labelledLines(job, voice, false), voice, {left, y}, width);
  slab.height = std::max(y, artHeight);
  return slab;
}

}  // namespace topwire
