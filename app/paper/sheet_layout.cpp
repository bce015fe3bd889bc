#include "app/paper/sheet_layout.h"

#include "app/paper/sheet_pieces.h"

#include <algorithm>
#include <array>

namespace topwire {

namespace {

/// Widths a drawing may have, in centimetres, the best first.
constexpr std::array drawingWidths{5.2, 5.0, 4.8, 4.5, 4.2, 3.8, 3.4};

/// Pages and how well they are filled.
struct Attempt {
  std::vector<Page> pages;
  double blank = 0;  ///< the most paper left over on any page but the last, in points
};

/// Fills pages from the top with slabs, which are never divided.
class Pager {
public:
  Pager(PageFormat format, const Bench& bench) : format_(format), bench_(&bench) {
    footerHeight_ = footer(bench, 99, 99).height;
  }

  /// Adds `slabs` in order; those that hang together go to one page where it can hold
  /// them.
  void add(const std::vector<Slab>& slabs) {
    for (std::size_t i = 0; i < slabs.size();) {
      std::size_t end = i + 1;
      double height = slabs[i].gap + slabs[i].height;
      for (; end < slabs.size() && slabs[end - 1].keepWithNext; ++end)
        height += slabs[end].gap + slabs[end].height;
      if (pages_.empty() || y_ + height > bottom()) begin();
      for (; i < end; ++i) place(slabs[i]);
    }
  }

  Attempt finished() {
    const int count = static_cast<int>(pages_.size());
    for (int i = 0; i < count; ++i)
      put(pages_[static_cast<std::size_t>(i)],
          footer(*bench_, i + 1, count).items,
          bottom() + 8);
    return {std::move(pages_), blank_};
  }

private:
  double bottom() const { return format_.content().bottom() - footerHeight_ - 8; }

  static void put(Page& page, const std::vector<Item>& items, double y) {
    for (const Item& item : items)
      page.items.push_back(moved(item, {PageFormat::margin, y}));
  }

  void begin() {
    if (!pages_.empty()) blank_ = std::max(blank_, bottom() - y_);
    const Slab head = pages_.empty() ? sheetHead(*bench_) : shortHead(*bench_);
    pages_.push_back({format_.size(), {}});
    y_ = format_.content().top();
    put(pages_.back(), head.items, y_);
    y_ += head.height;
    fresh_ = true;
  }

  void place(const Slab& slab) {
    if (y_ + slab.gap + slab.height > bottom() && !fresh_) begin();
    if (fresh_ && pages_.size() > 1 && !slab.lead.empty()) {
      y_ += 8;
      put(pages_.back(), slab.lead, y_);
      y_ += slab.leadHeight;
    }
    y_ += fresh_ ? std::min(slab.gap, 8.0) : slab.gap;
    if (!fresh_) put(pages_.back(), slab.divider, y_);
    put(pages_.back(), slab.items, y_);
    y_ += slab.height;
    fresh_ = false;
  }

  PageFormat format_;
  const Bench* bench_;
  double footerHeight_;
  double y_ = 0;
  double blank_ = 0;
  bool fresh_ = true;
  std::vector<Page> pages_;
};

Attempt laidOut(const Bench& bench, PageFormat format) {
  Pager pager{format, bench};
  pager.add({cautionBox(bench)});
  if (!bench.sheet.cautions.empty()) pager.add({weatherLines(bench)});
  JobWriter writer{bench};
  for (const SheetBlock& block : bench.sheet.blocks) pager.add(writer.block(block));
  if (bench.sheet.blocks.empty()) {
    pager.add({emptyWeek(bench)});
    return pager.finished();
  }
  std::vector<Slab> closing = recordTable(bench);
  closing.push_back(closingLines(bench));
  pager.add(closing);
  return pager.finished();
}

/// Another page is never worth it; a centimetre of drawing is worth a hundred points of
/// blank paper.
double costOf(const Attempt& attempt, double drawingWidth) {
  return 1000.0 * static_cast<double>(attempt.pages.size()) + attempt.blank / 100
         - drawingWidth;
}

}  // namespace

QSizeF PageFormat::size() const {
  return paper == Paper::letter ? QSizeF{8.5 * 72, 11.0 * 72}
                                : QSizeF{millimetres(210), millimetres(297)};
}

QRectF PageFormat::content() const {
  return QRectF{{0, 0}, size()}.adjusted(margin, margin, -margin, -margin);
}

std::vector<Page> layOut(const WorkSheet& sheet, PageFormat format, Language language) {
  const Voice voice = voiceIn(language);
  Attempt best;
  double leastCost = 0;
  for (const double width : drawingWidths) {
    const Bench bench{sheet, voice, format.content().width(), millimetres(width * 10)};
    Attempt attempt = laidOut(bench, format);
    const double cost = costOf(attempt, width);
    if (!best.pages.empty() && cost >= leastCost) continue;
    best = std::move(attempt);
    leastCost = cost;
  }
  return std::move(best.pages);
}

}  // namespace topwire
