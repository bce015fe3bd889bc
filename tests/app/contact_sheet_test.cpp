#include "app/paper/contact_sheet.h"

#include "app/paper/sheet_painter.h"
#include "app/words/resources.h"

#include <QXmlStreamReader>

#include <gmock/gmock.h>

#include <set>

namespace topwire {

namespace {

const Programme& spindleProgramme() {
  static const Shipped shipped = loadShipped().value();
  return shipped.programmes.at("tall-spindle-apple");
}

int leafOf(const char* id) {
  return firstLeafOf(*spindleProgramme().find(id));
}

TEST(ContactSheet, TakesEachOperationInItsFirstLeaf) {
  EXPECT_EQ(leafOf("order-trees"), 0);
  EXPECT_EQ(leafOf("plant"), 1);
  EXPECT_EQ(leafOf("nematode-sample"), -1);
  EXPECT_EQ(leafOf("rub-rivals"), 1);
  EXPECT_EQ(leafOf("dormant-pruning"), 3);
  EXPECT_EQ(artOf(spindleProgramme()).size(), spindleProgramme().operations.size());
}

TEST(ContactSheet, LeavesOutWhatIsNotDoneInTheLeaf) {
  std::set<std::string> ids;
  for (const OperationArt& one : artOf(spindleProgramme(), 4)) {
    EXPECT_EQ(one.leaf, 4);
    ids.insert(one.operation->id);
  }
  EXPECT_TRUE(ids.contains("renewal-cuts"));
  EXPECT_FALSE(ids.contains("plant"));
  EXPECT_FALSE(ids.contains("rub-rivals"));
  EXPECT_FALSE(ids.contains("order-trees"));
}

TEST(ContactSheet, HoldsEveryDrawingAtThreeCentimetresAboveItsName) {
  const auto art = artOf(spindleProgramme());
  const Page page = contactSheet(art, Language::english);
  std::size_t drawings = 0;
  std::string words;
  const QRectF paper{{0, 0}, page.size};
  for (const Item& item : page.items) {
    EXPECT_TRUE(paper.contains(boundsOf(item)));
    if (const auto* drawing = std::get_if<DrawingItem>(&item)) {
      ++drawings;
      EXPECT_NEAR(drawing->rect.width(), millimetres(30), 0.01);
    } else {
      words += std::get<TextItem>(item).text.toStdString() + ' ';
    }
  }
  EXPECT_EQ(drawings, art.size());
  EXPECT_THAT(words, ::testing::HasSubstr("Rub off the leader's"));
}

TEST(ContactSheet, OverlapsNothing) {
  const Page page = contactSheet(artOf(spindleProgramme()), Language::spanish);
  for (std::size_t i = 0; i < page.items.size(); ++i)
    for (std::size_t j = i + 1; j < page.items.size(); ++j) {
      const QRectF both = boundsOf(page.items[i]) & boundsOf(page.items[j]);
      EXPECT_LE(std::min(both.width(), both.height()), 3) << i << ' ' << j;
    }
}

TEST(ContactSheet, IsOneSelfContainedSvg) {
  const auto art = artOf(spindleProgramme());
  const QString svg = toSvg(contactSheet(art, Language::english));
  QXmlStreamReader reader{svg};
  std::set<QString> ids;
  std::size_t drawings = 0;
  while (!reader.atEnd()) {
    if (reader.readNext() != QXmlStreamReader::StartElement) continue;
    const auto attributes = reader.attributes();
    if (const auto id = attributes.value(QStringLiteral("id")); !id.isEmpty()) {
      EXPECT_TRUE(ids.insert(id.toString()).second) << id.toString().toStdString();
    }
    if (reader.name() == QLatin1String("svg")) {
      EXPECT_TRUE(attributes.hasAttribute(QStringLiteral("viewBox")));
      ++drawings;
    }
    if (const auto clip = attributes.value(QStringLiteral("clip-path"));
        !clip.isEmpty()) {
      EXPECT_TRUE(ids.contains(clip.mid(5).chopped(1).toString()));
    }
  }
  EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
  EXPECT_EQ(drawings, art.size() + 1);
  EXPECT_FALSE(svg.contains(QStringLiteral("href")));
}

TEST(ContactSheet, OfNothingIsAnEmptyPage) {
  const Page page = contactSheet({}, Language::english);
  EXPECT_TRUE(page.items.empty());
  EXPECT_GT(page.size.width(), 0);
  EXPECT_GE(page.size.height(), 0);
}

}  // namespace

}  // namespace topwire
