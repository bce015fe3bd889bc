#include "app/paper/sheet_painter.h"

#include "app/paper/sheet_layout.h"
#include "app/words/say.h"
#include "tests/app/sheet_samples.h"

#include <QFile>
#include <QGuiApplication>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <gmock/gmock.h>

namespace topwire {

namespace {

using testing::sheetOf;

void needApplication() {
  if (QCoreApplication::instance()) return;
  static int count = 1;
  static char name[] = "app_test";
  static char* arguments[] = {name, nullptr};
  static const QGuiApplication application{count, arguments};
}

class SheetPainter : public ::testing::Test {
protected:
  SheetPainter() {
    needApplication();
    speak(QStringLiteral("en_GB"));
  }

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

TEST_F(SheetPainter, UsesBlackOnWhiteAlone) {
  const auto pages = layOut(sheetOf(2, 10), {}, Language::english);
  const QImage image = imageOf(pages.front(), 100);
  qint64 dark = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) {
      const QRgb pixel = image.pixel(x, y);
      ASSERT_TRUE(qRed(pixel) == qGreen(pixel) && qGreen(pixel) == qBlue(pixel));
      if (pixel == black) ++dark;
    }
  EXPECT_GT(dark, 5000);
}

TEST_F(SheetPainter, LeavesTheMarginsWhite) {
  const auto pages = layOut(sheetOf(4, 60), {}, Language::spanish);
  for (const Page& page : pages) {
    const QImage image = imageOf(page, 144);
    for (int x = 0; x < image.width(); ++x)
      for (int y = 0; y < 54; ++y) {
        ASSERT_EQ(image.pixel(x, y), white);
        ASSERT_EQ(image.pixel(x, image.height() - 1 - y), white);
      }
  }
}

QByteArray outputOf(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  process.waitForFinished();
  return process.readAllStandardOutput();
}

TEST_F(SheetPainter, WritesAPdfWithItsTextFontsAndPages) {
  const QString path = inFolder("week.pdf");
  const auto pages = layOut(sheetOf(7, 36), {Paper::a4}, Language::spanish);
  ASSERT_GT(pages.size(), 1U);
  ASSERT_TRUE(writePdf(path, pages, QStringLiteral("Alder Bend")).has_value());
  QFile file{path};
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_TRUE(file.read(5) == "%PDF-");
  const QString reader = QStandardPaths::findExecutable(QStringLiteral("pdftotext"));
  const QString inspector = QStandardPaths::findExecutable(QStringLiteral("pdfinfo"));
  if (reader.isEmpty() || inspector.isEmpty()) GTEST_SKIP() << "poppler is not installed";
  const std::string text =
      outputOf(reader, {QStringLiteral("-layout"), path, QStringLiteral("-")})
          .toStdString();
  EXPECT_THAT(text, ::testing::HasSubstr("Semana 14, 5–11 de abril de 2027"));
  EXPECT_THAT(text, ::testing::HasSubstr("tercera hoja"));
  const std::string facts = outputOf(inspector, {path}).toStdString();
  EXPECT_THAT(facts,
              ::testing::ContainsRegex("Pages: +" + std::to_string(pages.size()) + "\n"));
  EXPECT_THAT(facts, ::testing::ContainsRegex("Page size: +595.* x 84[12].*A4"));
}

TEST_F(SheetPainter, WritesLetterAsLetter) {
  const QString inspector = QStandardPaths::findExecutable(QStringLiteral("pdfinfo"));
  if (inspector.isEmpty()) GTEST_SKIP() << "poppler is not installed";
  const QString path = inFolder("letter.pdf");
  const auto pages = layOut(sheetOf(1, 10), {Paper::letter}, Language::english);
  ASSERT_TRUE(writePdf(path, pages, {}).has_value());
  EXPECT_THAT(outputOf(inspector, {path}).toStdString(),
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
