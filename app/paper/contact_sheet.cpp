#include "app/paper/contact_sheet.h"

#include "app/paper/typesetter.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr int columns = 8;
constexpr double art = millimetres(30);
constexpr double artHeight = art * Drawing::height / Drawing::width;
constexpr double gap = millimetres(4);
constexpr double margin = millimetres(6);
constexpr Face caption{6.4};
constexpr int captionLines = 2;

double pitchDown() {
  return artHeight + millimetres(1) + captionLines * lineHeightOf(caption) + gap;
}

void addCell(Page& page, const OperationArt& one, QPointF corner, Language language) {
  page.items.emplace_back(
      DrawingItem{{corner.x(), corner.y(), art, artHeight}, one.drawing});
  double y = corner.y() + artHeight + millimetres(1);
  const QString name = QString::fromStdString(one.operation->name.in(language));
  for (const QString& line : wrapped(name, caption, art + gap * 0.7)) {
    addLine(page.items, line, caption, {corner.x() + art / 2, y}, Side::centre);
    y += lineHeightOf(caption);
  }
}

/// What each kind of item is in SVG; sheets' rules and boxes are not drawn there.
struct SvgWriter {
  QString& text;
  int drawings = 0;

  void operator()(const DrawingItem& item) {
    ++drawings;
    text += toSvgElement(item.drawing,
                         Qt::black,
                         Qt::white,
                         item.rect,
                         QStringLiteral("drawing-%1").arg(drawings));
  }

  void operator()(const TextItem& item) const {
    text += QStringLiteral("<text x=\"%1\" y=\"%2\" font-size=\"%3\">%4</text>\n")
                .arg(QString::number(item.baseline.x(), 'f', 1),
                     QString::number(item.baseline.y(), 'f', 1),
                     QString::number(item.face.points, 'f', 1),
                     item.text.toHtmlEscaped());
  }

  template <class Other>
  void operator()(const Other&) const {}
};

/// Work that hangs on the planting day and opens in the months before it.
bool isBeforePlanting(const Operation& operation) {
  return operation.opens.months < 0 || operation.opens.days < 0;
}

bool isDoneIn(const Operation& operation, int leaf) {
  if (operation.oncePerPlanting())
    return isBeforePlanting(operation) ? leaf < 1 : leaf == 1;
  return std::ranges::any_of(
      operation.leaves, [leaf](const LeafRange& range) { return range.contains(leaf); });
}

}  // namespace

int firstLeafOf(const Operation& operation) {
  if (operation.oncePerPlanting()) return isBeforePlanting(operation) ? 0 : 1;
  return std::ranges::min_element(operation.leaves, {}, &LeafRange::first)->first;
}

std::vector<OperationArt> artOf(const Programme& programme, std::optional<int> leaf) {
  std::vector<OperationArt> all;
  for (const Operation& operation : programme.operations) {
    if (leaf && !isDoneIn(operation, *leaf)) continue;
    const int shown = leaf.value_or(firstLeafOf(operation));
    if (auto drawing = drawingFor(operation.drawing, shown))
      all.push_back({&operation, shown, std::move(*drawing)});
  }
  return all;
}

Page contactSheet(const std::vector<OperationArt>& all, Language language) {
  Page page;
  const auto count = static_cast<int>(all.size());
  const int rows = (count + columns - 1) / columns;
  page.size = {2 * margin + columns * (art + gap) - gap,
               2 * margin + rows * pitchDown() - gap};
  for (int i = 0; i < count; ++i)
    addCell(page,
            all[static_cast<std::size_t>(i)],
            {margin + (i % columns) * (art + gap), margin + (i / columns) * pitchDown()},
            language);
  return page;
}

QString toSvg(const Page& page) {
  QString text = QStringLiteral(
                     "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %1 %2\" "
                     "font-family=\"Noto Sans, sans-serif\">\n"
                     "<rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n")
                     .arg(QString::number(page.size.width(), 'f', 1),
                          QString::number(page.size.height(), 'f', 1));
  SvgWriter writer{text};
  for (const Item& item : page.items) std::visit(writer, item);
  return text + QStringLiteral("</svg>\n");
}

}  // namespace topwire
