#include "app/paper/typesetter.h"

#include <QFontDatabase>
#include <QFontMetricsF>

#include <algorithm>

namespace topwire {

namespace {

constexpr double leading = 1.36;

QString family() {
  static const QString chosen = [] {
    const QString wanted = QStringLiteral("Noto Sans");
    return QFontDatabase::families().contains(wanted)
               ? wanted
               : QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
  }();
  return chosen;
}

QFontMetricsF metricsOf(Face face) {
  return QFontMetricsF{fontFor(face)};
}

/// How many characters of `word` fit, at least one so that breaking ends.
qsizetype fitting(const QString& word, Face face, double width) {
  qsizetype count = word.size();
  while (count > 1 && widthOf(word.left(count), face) > width) --count;
  return count;
}

/// Rules run level or upright and end flat, so that only their width is added.
QRectF around(const QLineF& line, double width) {
  const double half = width / 2;
  const QRectF bare = QRectF{line.p1(), line.p2()}.normalized();
  return line.dx() == 0 ? bare.adjusted(-half, 0, half, 0)
                        : bare.adjusted(0, -half, 0, half);
}

struct Bounds {
  QRectF operator()(const TextItem& item) const {
    const double ascent = ascentOf(item.face);
    return {item.baseline.x(),
            item.baseline.y() - ascent,
            widthOf(item.text, item.face),
            metricsOf(item.face).descent() / pixelsPerPoint + ascent};
  }

  QRectF operator()(const RuleItem& item) const { return around(item.line, item.width); }

  QRectF operator()(const FrameItem& item) const { return item.rect; }

  QRectF operator()(const RowItem& item) const { return item.box; }

  QRectF operator()(const DrawingItem& item) const { return item.rect; }
};

struct Move {
  QPointF by;

  void operator()(TextItem& item) const { item.baseline += by; }

  void operator()(RuleItem& item) const { item.line.translate(by); }

  void operator()(FrameItem& item) const { item.rect.translate(by); }

  void operator()(RowItem& item) const { item.box.translate(by); }

  void operator()(DrawingItem& item) const { item.rect.translate(by); }
};

}  // namespace

QFont fontFor(Face face) {
  QFont font{family()};
  font.setPixelSize(qRound(face.points * pixelsPerPoint));
  font.setBold(face.bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  font.setKerning(true);
  return font;
}

double widthOf(const QString& text, Face face) {
  return metricsOf(face).horizontalAdvance(text) / pixelsPerPoint;
}

double ascentOf(Face face) {
  return metricsOf(face).ascent() / pixelsPerPoint;
}

double lineHeightOf(Face face) {
  return face.points * leading;
}

QStringList wrapped(const QString& text, Face face, double width) {
  QStringList lines;
  QString line;
  const QStringList words = text.split(u' ', Qt::SkipEmptyParts);
  for (QString word : words) {
    const QString longer = line.isEmpty() ? word : line + u' ' + word;
    if (widthOf(longer, face) <= width) {
      line = longer;
      continue;
    }
    if (!line.isEmpty()) lines.append(line);
    while (widthOf(word, face) > width && word.size() > 1) {
      const qsizetype count = fitting(word, face, width);
      lines.append(word.left(count));
      word = word.mid(count);
    }
    line = word;
  }
  if (!line.isEmpty() || lines.isEmpty()) lines.append(line);
  return lines;
}

void addLine(
    std::vector<Item>& items, const QString& text, Face face, QPointF top, Side side) {
  const double width = side == Side::left ? 0 : widthOf(text, face);
  const double shift = side == Side::centre ? width / 2 : width;
  const double slack =
      (lineHeightOf(face) - metricsOf(face).height() / pixelsPerPoint) / 2;
  items.emplace_back(
      TextItem{{top.x() - shift, top.y() + slack + ascentOf(face)}, text, face});
}

double addText(
    std::vector<Item>& items, const QString& text, Face face, QPointF top, double width) {
  const QStringList lines = wrapped(text, face, width);
  double y = top.y();
  for (const QString& line : lines) {
    addLine(items, line, face, {top.x(), y});
    y += lineHeightOf(face);
  }
  return y - top.y();
}

QRectF boundsOf(const Item& item) {
  return std::visit(Bounds{}, item);
}

Item moved(Item item, QPointF by) {
  std::visit(Move{by}, item);
  return item;
}

}  // namespace topwire
