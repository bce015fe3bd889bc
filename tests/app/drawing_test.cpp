#include "app/paper/drawing.h"

#include "app/paper/pen.h"

#include <QImage>
#include <QPainter>
#include <QXmlStreamReader>

#include <gmock/gmock.h>

#include <array>
#include <set>

namespace topwire {

namespace {

constexpr int scale = 2;

/// The drawing at two pixels a unit, with ten units of paper all round.
QImage pictureOf(const Drawing& drawing) {
  QImage image{180 * scale, 140 * scale, QImage::Format_RGB32};
  image.fill(Qt::white);
  QPainter painter{&image};
  paint(painter,
        drawing,
        {10.0 * scale, 10.0 * scale, 160.0 * scale, 120.0 * scale},
        Qt::black,
        Qt::white);
  return image;
}

/// Where anything but white was painted.
QRect inkOf(const QImage& image) {
  QRect ink;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x)
      if (image.pixel(x, y) != qRgb(255, 255, 255)) ink |= QRect{x, y, 1, 1};
  return ink;
}

bool isGrey(QRgb pixel) {
  return qRed(pixel) == qGreen(pixel) && qGreen(pixel) == qBlue(pixel);
}

/// Smoothed edges are grey; colours would be a second ink.
bool hasOneInk(const QImage& image) {
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x)
      if (!isGrey(image.pixel(x, y))) return false;
  return true;
}

/// A new tree, a growing one, a grown one.
constexpr std::array someLeaves{0, 3, 7};

class OperationDrawing : public ::testing::TestWithParam<std::string_view> {};

TEST_P(OperationDrawing, FillsItsViewBoxAndStaysInsideItInOneInk) {
  for (const int leaf : someLeaves) {
    const QImage picture = pictureOf(*drawingFor(GetParam(), leaf));
    const QRect ink = inkOf(picture);
    const QRect viewBox{10 * scale, 10 * scale, 160 * scale, 120 * scale};
    EXPECT_TRUE(viewBox.contains(ink)) << leaf << ": " << ink.left() << ' ' << ink.top()
                                       << ' ' << ink.right() << ' ' << ink.bottom();
    EXPECT_GT(ink.width(), 140 * scale) << leaf;
    EXPECT_GT(ink.height(), 95 * scale) << leaf;
    EXPECT_TRUE(hasOneInk(picture)) << leaf;
  }
}

/// At 3 cm a unit is 0.19 mm; thinner than 0.9 of one does not print.
TEST_P(OperationDrawing, ShowsWhereAndWhatInLinesThatPrint) {
  for (const int leaf : someLeaves) {
    const Drawing drawing = *drawingFor(GetParam(), leaf);
    ASSERT_TRUE(drawing.lens.has_value());
    const auto inLens = std::ranges::count(drawing.strokes, true, &Stroke::inLens);
    EXPECT_GT(inLens, 4);
    EXPECT_GT(static_cast<std::ptrdiff_t>(drawing.strokes.size()) - inLens, 4);
    for (const Stroke& stroke : drawing.strokes)
      if (stroke.width > 0 && stroke.fill != Shade::ink) {
        EXPECT_GE(stroke.width, 0.9);
      }
  }
}

TEST_P(OperationDrawing, IsWellFormedSvgWithEveryStroke) {
  const Drawing drawing = *drawingFor(GetParam(), 3);
  const QString svg = toSvg(drawing, Qt::black, Qt::white);
  QXmlStreamReader reader{svg};
  std::size_t paths = 0;
  QString viewBox;
  while (!reader.atEnd()) {
    if (reader.readNext() != QXmlStreamReader::StartElement) continue;
    if (reader.name() == QLatin1String("svg"))
      viewBox = reader.attributes().value(QStringLiteral("viewBox")).toString();
    if (reader.name() == QLatin1String("path")) ++paths;
  }
  EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
  EXPECT_EQ(viewBox, QStringLiteral("0 0 160 120"));
  EXPECT_EQ(paths, drawing.strokes.size() + 1);  // and the lens's clip
  EXPECT_FALSE(svg.contains(QStringLiteral("nan")));
  EXPECT_FALSE(svg.contains(QStringLiteral("href")));
}

std::string testName(const ::testing::TestParamInfo<std::string_view>& info) {
  std::string name{info.param};
  std::ranges::replace(name, '-', '_');
  return name;
}

INSTANTIATE_TEST_SUITE_P(All,
                         OperationDrawing,
                         ::testing::ValuesIn(drawingNames()),
                         testName);

TEST(Drawing, IsFoundByNameAndOnlyByName) {
  EXPECT_TRUE(drawingFor("rub-rivals", 2).has_value());
  EXPECT_FALSE(drawingFor("no-such-job", 2).has_value());
  EXPECT_FALSE(drawingFor("wall-no-such-job", 2).has_value());
  EXPECT_FALSE(drawingFor("wall-", 2).has_value());
  EXPECT_FALSE(drawingFor("", 2).has_value());
}

std::string svgOf(std::string_view name, int leaf) {
  return toSvg(drawingFor(name, leaf).value(), Qt::black, Qt::white).toStdString();
}

TEST(Drawing, LooksDifferentForEveryOperation) {
  std::set<std::string> seen;
  for (const std::string_view name : drawingNames())
    EXPECT_TRUE(seen.insert(svgOf(name, 3)).second) << name;
}

TEST(Drawing, ShowsSharedWorkOnTheWallToo) {
  EXPECT_NE(svgOf("wall-suckers", 3), svgOf("suckers", 3));
  EXPECT_NE(svgOf("wall-suckers", 3), svgOf("wall-suckers", 4));
}

TEST(Drawing, ShowsPlantingWorkOnTheTreeFromTheNursery) {
  EXPECT_EQ(svgOf("plant", 0), svgOf("plant", 1));
  EXPECT_NE(svgOf("rub-rivals", 0), svgOf("rub-rivals", 1));
}

TEST(Drawing, TakesInkAndPaperFromTheScreen) {
  QImage image{160, 120, QImage::Format_RGB32};
  image.fill(QColor{0x25, 0x30, 0x31});
  QPainter painter{&image};
  paint(painter,
        *drawingFor("first-tie", 1),
        image.rect(),
        QColor{0xE8, 0xEE, 0xEB},
        QColor{0x25, 0x30, 0x31});
  painter.end();
  bool sawInk = false;
  for (int x = 0; x < image.width(); ++x) {
    EXPECT_NE(image.pixel(x, 60), qRgb(0, 0, 0));
    sawInk |= image.pixel(x, 56) == qRgb(0xE8, 0xEE, 0xEB);
  }
  EXPECT_TRUE(sawInk);
}

TEST(Drawing, KeepsItsShapeInAnyFrame) {
  QImage image{400, 120, QImage::Format_RGB32};
  image.fill(Qt::white);
  QPainter painter{&image};
  paint(painter, *drawingFor("first-tie", 1), image.rect(), Qt::black, Qt::white);
  painter.end();
  const QRect ink = inkOf(image);
  EXPECT_GE(ink.left(), 120);
  EXPECT_LE(ink.right(), 280);
}

TEST(Drawing, LeavesThePaintersClipAsItWas) {
  QImage image{160, 120, QImage::Format_RGB32};
  image.fill(Qt::white);
  QPainter painter{&image};
  painter.setClipRect(0, 0, 40, 120);
  paint(painter, *drawingFor("first-tie", 1), image.rect(), Qt::black, Qt::white);
  painter.end();
  EXPECT_LE(inkOf(image).right(), 40);
}

TEST(Pen, ReadsAPathOfLinesAndCurves) {
  const QPainterPath path = pathOf("M1 2L3.5 -4C1 1 2 2 9 9Z");
  ASSERT_EQ(path.elementCount(), 6);
  EXPECT_EQ(QPointF(path.elementAt(1)), QPointF(3.5, -4));
  EXPECT_EQ(QPointF(path.elementAt(4)), QPointF(9, 9));
  EXPECT_EQ(path.currentPosition(), QPointF(1, 2));
}

TEST(PenDeathTest, RefusesAPathItDoesNotKnow) {
  EXPECT_DEATH(pathOf("M1 2A3 4"), "");
  EXPECT_DEATH(pathOf("M1"), "");
}

TEST(Pen, TapersWoodFromBaseToTip) {
  Pen pen;
  pen.wood({{0, 0}, {10, 0}, {20, 0}, {30, 0}}, 8, 2, 1);
  const QRectF bounds = pen.finished().strokes.front().path.boundingRect();
  EXPECT_DOUBLE_EQ(bounds.height(), 8);
  EXPECT_DOUBLE_EQ(bounds.width(), 30);
}

}  // namespace

}  // namespace topwire
