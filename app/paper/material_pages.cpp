#include "app/paper/material_pages.h"

#include "app/paper/typesetter.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr Face head{17, true};
constexpr Face body{10.5};
constexpr Face strong{10.5, true};
constexpr Face small{9.6};
constexpr double boxSize = 12;
constexpr double pad = 6;
constexpr double rule = 1.1;
constexpr double footRoom = 20;

/// Where the columns begin; the last runs to the right edge.
struct Columns {
  double name = boxSize + 10;
  double needed;  ///< right edge of the figures
  double buy;
  double work;
  double right;

  explicit Columns(double width)
      : needed(width * 0.42), buy(width * 0.45), work(width * 0.66), right(width) {}
};

class SheetWriter {
public:
  SheetWriter(const MaterialSheet& sheet,
              const Orchard& orchard,
              PageFormat format,
              const Voice& voice)
      : sheet_(&sheet)
      , orchard_(&orchard)
      , format_(format)
      , voice_(&voice)
      , columns_(format.content().width()) {}

  std::vector<Page> make() && {
    begin();
    if (sheet_->list.empty())
      put(textSlab(said(phrase("Material", "Nothing is to be picked up."))));
    for (const MaterialLine& line : sheet_->list.lines) put(lineSlab(line));
    for (const Sentence& note : sheet_->list.notes) put(textSlab(voice_->say(note)));
    addFeet();
    return std::move(pages_);
  }

private:
  QString said(Phrase phrase, std::vector<Value> values = {}) const {
    return voice_->say(Sentence{phrase, std::move(values)});
  }

  double width() const { return columns_.right; }

  void begin() {
    pages_.push_back({format_.size(), {}});
    y_ = format_.content().top();
    place(headSlab());
    place(headingsSlab());
  }

  Slab headSlab() const {
    Slab slab;
    const QString title = said(phrase("Material", "To pick up: %1"), {sheet_->orchard});
    slab.height += addText(slab.items, title, head, {0, 0}, width());
    slab.height += addText(slab.items, sheet_->span, body, {0, slab.height}, width());
    slab.height += 10;
    return slab;
  }

  Slab headingsSlab() const {
    Slab slab;
    addLine(slab.items, said(phrase("Material", "Item")), small, {columns_.name, 0});
    addLine(slab.items,
            said(phrase("Material", "Needed")),
            small,
            {columns_.needed, 0},
            Side::right);
    addLine(slab.items, said(phrase("Material", "Buy")), small, {columns_.buy, 0});
    addLine(slab.items, said(phrase("Material", "For")), small, {columns_.work, 0});
    slab.height = lineHeightOf(small) + 3;
    slab.items.emplace_back(RuleItem{{0, slab.height, width(), slab.height}, rule});
    return slab;
  }

  Slab lineSlab(const MaterialLine& line) const {
    Slab slab;
    slab.items.emplace_back(FrameItem{{0, pad, boxSize, boxSize}, 1.4});
    const double nameWidth = columns_.needed - columns_.name - 60;
    double height = addText(
        slab.items, voice_->say(line.name), strong, {columns_.name, pad}, nameWidth);
    addLine(slab.items,
            amountText(line.needed, line.unit, orchard_->settings.units, *voice_),
            strong,
            {columns_.needed, pad},
            Side::right);
    if (line.packs > 0)
      height = std::max(height,
                        addText(slab.items,
                                voice_->say(packsText(line)),
                                body,
                                {columns_.buy, pad},
                                columns_.work - columns_.buy - pad));
    height = std::max(height,
                      addText(slab.items,
                              workText(*orchard_, line, *voice_),
                              small,
                              {columns_.work, pad},
                              width() - columns_.work));
    slab.height = std::max(height, boxSize) + 2 * pad;
    slab.items.emplace_back(RuleItem{{0, slab.height, width(), slab.height}, 0.55});
    return slab;
  }

  Slab textSlab(const QString& text) const {
    Slab slab;
    slab.height = pad + addText(slab.items, text, body, {0, pad}, width()) + pad;
    return slab;
  }

  void put(const Slab& slab) {
    if (y_ + slab.height > format_.content().bottom() - footRoom) begin();
    place(slab);
  }

  void place(const Slab& slab) {
    for (const Item& item : slab.items)
      pages_.back().items.push_back(moved(item, {PageFormat::margin, y_}));
    y_ += slab.height;
  }

  void addFeet() {
    const auto count = static_cast<std::int64_t>(pages_.size());
    for (std::int64_t i = 0; i < count; ++i) {
      std::vector<Item> items;
      addLine(items,
              said(phrase("Material", "Made on %1. Pack sizes are for planning."),
                   {sheet_->madeOn}),
              small,
              {0, 0});
      addLine(items,
              said(phrase("Material", "Page %1 of %2"), {i + 1, count}),
              small,
              {width(), 0},
              Side::right);
      const double y = format_.content().bottom() - lineHeightOf(small);
      for (const Item& item : items)
        pages_[static_cast<std::size_t>(i)].items.push_back(
            moved(item, {PageFormat::margin, y}));
    }
  }

  const MaterialSheet* sheet_;
  const Orchard* orchard_;
  PageFormat format_;
  const Voice* voice_;
  Columns columns_;
  std::vector<Page> pages_;
  double y_ = 0;
};

}  // namespace

QString amountText(double amount,
                   MaterialUnit unit,
                   UnitSystem units,
                   const Voice& voice) {
  return unit == MaterialUnit::piece ? voice.count(std::llround(amount))
                                     : voice.say(amountText(amount, unit, units));
}

QString workText(const Orchard& orchard, const MaterialLine& line, const Voice& voice) {
  QStringList texts;
  for (const MaterialWork& work : workOf(line)) {
    QStringList places;
    for (const std::string& place : placeNames(orchard, work.plantings))
      places << QString::fromStdString(place);
    texts << voice.say(
        Sentence{phrase("Material", "%1 (%2)"),
                 {work.title, places.join(QStringLiteral(", ")).toStdString()}});
  }
  return texts.join(QStringLiteral("; "));
}

std::vector<Page> layOut(const MaterialSheet& sheet,
                         const Orchard& orchard,
                         PageFormat format,
                         const Voice& voice) {
  return SheetWriter{sheet, orchard, format, voice}.make();
}

}  // namespace topwire
