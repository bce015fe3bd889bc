#include "app/paper/sheet_painter.h"

#include "app/paper/sheet_layout.h"
#include "app/words/say.h"
#include "tests/app/sheet_samples.h"

#include <QFile>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <gmock/gmock.h>

namespace topwire {

namespace {

using testing::sheetOf;

class SheetPainter : public ::testing::Test {
protected:
  SheetPainter() { speak(QStringLiteral("en_GB")); }

  QString inFolder(const char* name) const {
    return folder_.filePath(QString::fromLatin1(name));
  }

private:
  QTemporaryDir folder_;
};

Page pageOfRow(RowMark mark) {
  return {{72, 72}, {RowItem{{18, 18, 36, 36}, 1, 1, 1, mark}}};
}

QRgb at(const QImage& image, double x, double y) {
  return image.pixel(static_cast<int>(x * image.width()),
                     static_cast<int>(y * image.height()));
}

constexpr QRgb black = qRgb(0, 0, 0);
constexpr QRgb white = qRgb(255, 255, 255);

/// The tick lies across the middle, so corners and the lower edge are looked at.
TEST_F(SheetPainter, ShowsHowFarARowIs) {
  const QImage toDo = imageOf(pageOfRow(RowMark::toDo), 288);
  EXPECT_EQ(at(toDo, 0.5, 0.5), white);
  EXPECT_EQ(at(toDo, 0.5, 0.255), black);

  const QImage partly = imageOf(pageOfRow(RowMark::partly), 288);
  EXPECT_EQ(at(partly, 0.5, 0.4), white);
  EXPECT_EQ(at(partly, 0.5, 0.6), black);

  const QImage done = imageOf(pageOfRow(RowMark::done), 288);
  EXPECT_EQ(at(done, 0.3, 0.3), black);
  EXPECT_EQ(at(done, 0.7, 0.7), black);
  EXPECT_EQ(at(done, 0.46, 0.615), white);

  const QImage absent = imageOf(pageOfRow(RowMark::absent), 288);
  EXPECT_EQ(at(absent, 0.5, 0.5), black);
  EXPECT_EQ(at(absent, 0.5, 0.255), white);
}

TEST_F(SheetPainter, PaintsAPageAtTheAskedResolution) {
  const auto pages = layOut(sheetOf(1, 10), {Paper::letter}, Language::english);
  EXPECT_EQ(imageOf(pages.front(), 100).size(), QSize(850, 1100));
  EXPECT_EQ(imageOf(pages.front(), 50).size(), QSize(425, 550));
}

bool isGrey(QRgb pixel) {
  return qRed(pixel) == qGreen(pixel) && qGreen(pixel) == qBlue(pixel);
}

template <class Test>
int pixelsThat(Test test, const QImage& image, const QRect& area) {
  int count = 0;
  for (int y = area.top(); y <= area.bottom(); ++y)
    for (int x = area.left(); x <= area.right(); ++x)
      if (test(image.pixel(x, y))) ++count;
  return count;
}

TEST_F(SheetPainter, UsesBlackOnWhiteAlone) {
  const auto pages = layOut(sheetOf(2, 10), {}, Language::english);
  const QImage image = imageOf(pages.front(), 100);
  const auto coloured = [](QRgb pixel) { return !isGrey(pixel); };
  const auto dark = [](QRgb pixel) { return pixel == black; };
  EXPECT_EQ(pixelsThat(coloured, image, image.rect()), 0);
  EXPECT_GT(pixelsThat(dark, image, image.rect()), 5000);
}

TEST_F(SheetPainter, LeavesTheMarginsWhite) {
  const auto marked = [](QRgb pixel) { return pixel != white; };
  for (const Page& page : layOut(sheetOf(4, 60), {}, Language::spanish)) {
    const QImage image = imageOf(page, 144);
    const QRect whole = image.rect();
    const QRect printed = whole.adjusted(54, 54, -54, -54);
    EXPECT_EQ(pixelsThat(marked, image, whole), pixelsThat(marked, image, printed));
    EXPECT_GT(pixelsThat(marked, image, printed), 0);
  }
}

std::string outputOf(const char* program, const QStringList& arguments) {
  QProcess process;
  process.start(QString::fromLatin1(program), arguments);
  process.waitForFinished();
  return process.readAllStandardOutput().toStdString();
}

QByteArray startOf(const QString& path, qint64 bytes) {
  QFile file{path};
  return file.open(QIODevice::ReadOnly) ? file.read(bytes) : QByteArray{};
}

TEST_F(SheetPainter, WritesAPdf) {
  const QString path = inFolder("week.pdf");
  const auto pages = layOut(sheetOf(1, 10), {}, Language::english);
  ASSERT_TRUE(writePdf(path, pages, QStringLiteral("Alder Bend")).has_value());
  EXPECT_EQ(startOf(path, 5).toStdString(), "%PDF-");
}

/// Poppler reads the PDF back.
class PdfReadBack : public SheetPainter {
protected:
  void SetUp() override {
    for (const char* tool : {"pdftotext", "pdfinfo"})
      if (QStandardPaths::findExecutable(QString::fromLatin1(tool)).isEmpty())
        FAIL() << tool << " is not installed; tests/run installs poppler-utils";
  }

  QString written(const std::vector<Page>& pages) const {
    QString path = inFolder("week.pdf");
    EXPECT_TRUE(writePdf(path, pages, QStringLiteral("Alder Bend")).has_value());
    return path;
  }
};

TEST_F(PdfReadBack, FindsTheTextAsText) {
  const QString path = written(layOut(sheetOf(7, 36), {Paper::a4}, Language::spanish));
  const std::string text =
      outputOf("pdftotext", {QStringLiteral("-layout"), path, QStringLiteral("-")});
  EXPECT_THAT(text, ::testing::HasSubstr("Semana 14, 5–11 de abril de 2027"));
  EXPECT_THAT(text, ::testing::HasSubstr("tercera hoja"));
}

TEST_F(PdfReadBack, FindsEveryPageAtItsSize) {
  const auto pages = layOut(sheetOf(7, 36), {Paper::a4}, Language::english);
  const std::string facts = outputOf("pdfinfo", {written(pages)});
  EXPECT_THAT(facts,
              ::testing::ContainsRegex("Pages: +" + std::to_string(pages.size()) + "\n"));
  EXPECT_THAT(facts, ::testing::ContainsRegex("Page size: +595.* x 84[12].*A4"));
}

TEST_F(PdfReadBack, FindsLetterAsLetter) {
  const auto pages = layOut(sheetOf(1, 10), {Paper::letter}, Language::english);
  EXPECT_THAT(outputOf("pdfinfo", {written(pages)}),
              ::testing::ContainsRegex("Page size: +612 x 792"));
}

TEST_F(SheetPainter, SaysWhereItCouldNotWrite) {
  const QString path = inFolder("no/such/folder/week.pdf");
  const auto pages = layOut(sheetOf(1, 10), {}, Language::english);
  const Done done = writePdf(path, pages, {});
  ASSERT_FALSE(done.has_value());
  EXPECT_THAT(inEnglish(done.error().sentence), ::testing::HasSubstr(path.toStdString()));
  EXPECT_FALSE(done.error().detail.empty());
}

TEST_F(SheetPainter, KeepsTheOldFileWhenTheNewOneCannotBeWritten) {
  const QString path = inFolder("folder.pdf");
  ASSERT_TRUE(QDir{}.mkpath(path));
  const auto pages = layOut(sheetOf(1, 10), {}, Language::english);
  EXPECT_FALSE(writePdf(path, pages, {}).has_value());
  EXPECT_TRUE(QDir{path}.exists());
}

}  // namespace

}  // namespace topwire
