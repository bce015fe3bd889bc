#include "app/windows/notice_bar.h"
#include "tests/app/window_test.h"

#include <QAction>
#include <QComboBox>
#include <QStackedWidget>

namespace topwire {

namespace {

using testing::block;
using ::testing::HasSubstr;
using testing::northernSettings;
using ::testing::Not;
using testing::orchardOfOne;

class MainWindowTest : public testing::WindowTest {
protected:
  static Orchard creek() { return orchardOfOne(northernSettings(), dayOf(2025, 4, 10)); }

  std::string notice() { return find<NoticeBar>("noticeBar")->text().toStdString(); }

  QString actionText(const char* name) { return find<QAction>(name)->text(); }
};

TEST_F(MainWindowTest, aFirstStartMakesAnOrchardAndInvitesToAddABlock) {
  const QString data = folder.filePath(QStringLiteral("data"));
  ASSERT_TRUE(window.openAtStart({}, data));
  window.show();
  EXPECT_EQ(session.path(), QDir{data}.filePath(QStringLiteral("Orchard.topwire")));
  EXPECT_EQ(window.page(), RailPage::blocks);
  EXPECT_TRUE(find<QPushButton>("addFirstBlock")->isVisible());
  EXPECT_TRUE(answers.asked.isEmpty()) << "nobody is asked for anything";
}

TEST_F(MainWindowTest, theNextStartOpensTheFileOpenedLast) {
  const QString path = lay(QStringLiteral("last.topwire"), creek());
  preferences.remember(path);
  ASSERT_TRUE(window.openAtStart({}, folder.path()));
  EXPECT_EQ(session.path(), path);
}

TEST_F(MainWindowTest, aLastFileThatIsGoneIsSaidAndTheDefaultOneOpens) {
  preferences.remember(folder.filePath(QStringLiteral("gone.topwire")));
  ASSERT_TRUE(window.openAtStart({}, folder.path()));
  EXPECT_EQ(session.path(), folder.filePath(QStringLiteral("Orchard.topwire")));
  EXPECT_THAT(notice(), HasSubstr("gone.topwire"));
}

TEST_F(MainWindowTest, theRailSaysWhoseOrchardItIsAndThatTodayIsGiven) {
  start(creek());
  EXPECT_EQ(textOf("orchardName"), "Alder Bend");
  EXPECT_EQ(textOf("orchardHolds"), "1 block");
  EXPECT_EQ(textOf("railNote"), "Today is taken as 6 April 2027");
}

TEST_F(MainWindowTest, pagesAreReachedByKeys) {
  start(creek());
  press(Qt::Key_2, Qt::ControlModifier);
  EXPECT_EQ(window.page(), RailPage::calendar);
  press(Qt::Key_3, Qt::ControlModifier);
  EXPECT_EQ(window.page(), RailPage::blocks);
  press(Qt::Key_4, Qt::ControlModifier);
  EXPECT_EQ(window.page(), RailPage::weather);
  press(Qt::Key_5, Qt::ControlModifier);
  EXPECT_EQ(window.page(), RailPage::settings);
  press(Qt::Key_1, Qt::ControlModifier);
  EXPECT_EQ(window.page(), RailPage::today);
}

TEST_F(MainWindowTest, undoNamesWhatItTakesBack) {
  start(creek());
  EXPECT_FALSE(find<QAction>("actionUndo")->isEnabled());
  session.perform(addBlock(session.orchard(), block(9, "Quarry", "1-4")));
  EXPECT_THAT(actionText("actionUndo").toStdString(), HasSubstr("Quarry"));
  EXPECT_THAT(notice(), HasSubstr("Quarry"));

  press(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(session.orchard().blocks.size(), 1);
  EXPECT_THAT(notice(), HasSubstr("Undone"));
  press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(session.orchard().blocks.size(), 2);
}

TEST_F(MainWindowTest, theLineForWhatHappenedUndoesIt) {
  start(creek());
  session.perform(addBlock(session.orchard(), block(9, "Quarry", "1-4")));
  click("noticeRemedy");
  EXPECT_EQ(session.orchard().blocks.size(), 1);
}

TEST_F(MainWindowTest, troubleStaysUntilItIsPutAway) {
  start(creek());
  files.journal->refuses = true;
  session.perform(addBlock(session.orchard(), block(9, "Quarry", "1-4")));
  EXPECT_THAT(notice(), HasSubstr("The disk is full."));
  files.journal->refuses = false;
  session.perform(addBlock(session.orchard(), block(10, "Long Acre", "1-4")));
  EXPECT_THAT(notice(), HasSubstr("The disk is full.")) << "news does not cover it";
  click("noticeDismiss");
  EXPECT_FALSE(find<NoticeBar>("noticeBar")->isVisible());
}

TEST_F(MainWindowTest, aFileHeldElsewhereMayBeLookedAt) {
  const QString path = lay(QStringLiteral("held.topwire"), creek());
  files.heldElsewhere = path.toStdString();
  answers.agrees = true;
  window.show();
  window.openFile(path);
  ASSERT_EQ(answers.asked.size(), 1);
  EXPECT_TRUE(session.isReadOnly());
  EXPECT_TRUE(find<QWidget>("lookOnly")->isVisible());
  EXPECT_FALSE(find<QPushButton>("addBlock")->isEnabled());
}

TEST_F(MainWindowTest, aFileHeldElsewhereAndNotWantedLeavesThePresentOne) {
  start(creek());
  const QString present = session.path();
  const QString path = lay(QStringLiteral("held.topwire"), creek());
  files.heldElsewhere = path.toStdString();
  answers.agrees = false;
  window.openFile(path);
  EXPECT_EQ(session.path(), present);
  EXPECT_FALSE(session.isReadOnly());
}

TEST_F(MainWindowTest, aFileThatIsNoOrchardIsSaidAndThePresentOneStays) {
  start(creek());
  const QString present = session.path();
  const QString foreign = folder.filePath(QStringLiteral("letter.txt"));
  QFile{foreign}.open(QIODevice::WriteOnly);
  window.openFile(foreign);
  EXPECT_EQ(session.path(), present);
  EXPECT_THAT(notice(), HasSubstr("is not an orchard file"));
  EXPECT_THAT(preferences.recentFiles(), Not(::testing::Contains(foreign)));
}

TEST_F(MainWindowTest, aNewOrchardIsMadeWhereOneIsNamed) {
  start(creek());
  answers.file = folder.filePath(QStringLiteral("new.topwire"));
  find<QAction>("actionNew")->trigger();
  EXPECT_EQ(session.path(), answers.file);
  EXPECT_TRUE(session.orchard().blocks.empty());
  EXPECT_EQ(preferences.recentFiles().front(), answers.file);
}

TEST_F(MainWindowTest, aCopyIsSavedWhileTheOrchardStaysOpen) {
  start(creek());
  answers.file = folder.filePath(QStringLiteral("copy.topwire"));
  find<QAction>("actionSaveCopy")->trigger();
  EXPECT_TRUE(files.orchards.contains(answers.file.toStdString()));
  EXPECT_NE(session.path(), answers.file);
}

TEST_F(MainWindowTest, thinkingBetterOfAFileChangesNothing) {
  start(creek());
  const QString present = session.path();
  find<QAction>("actionOpen")->trigger();
  find<QAction>("actionNew")->trigger();
  EXPECT_EQ(session.path(), present);
}

TEST_F(MainWindowTest, keysAreListed) {
  start(creek());
  press(Qt::Key_F1);
  ASSERT_EQ(answers.shown.size(), 1);
  EXPECT_THAT(answers.shown.front().toStdString(), HasSubstr("Ctrl+Z: Undo"));
}

TEST_F(MainWindowTest, aboutSaysTheLicenceAndTheCaution) {
  start(creek());
  find<QAction>("actionAbout")->trigger();
  ASSERT_EQ(answers.shown.size(), 1);
  EXPECT_THAT(answers.shown.front().toStdString(), HasSubstr("MIT licence"));
  EXPECT_THAT(answers.shown.front().toStdString(), HasSubstr("local rules"));
}

TEST_F(MainWindowTest, anotherThemeTakesHoldAtOnceAndIsRemembered) {
  start(creek());
  window.showPage(RailPage::settings);
  auto* theme = find<QComboBox>("field-theme");
  theme->setCurrentIndex(2);
  Q_EMIT theme->activated(2);
  EXPECT_EQ(currentTheme(), Theme::dark);
  EXPECT_EQ(QApplication::palette().color(QPalette::Window),
            baseColours(Theme::dark).window);
  EXPECT_EQ(preferences.theme(), Theme::dark);
}

TEST_F(MainWindowTest, anotherLanguageKeepsThePageOpen) {
  start(creek());
  window.showPage(RailPage::settings);
  auto* language = find<QComboBox>("field-language");
  language->setCurrentIndex(2);
  Q_EMIT language->activated(2);
  settle();
  EXPECT_EQ(window.page(), RailPage::settings);
  EXPECT_EQ(preferences.language(), QStringLiteral("es"));
  EXPECT_TRUE(find<QPushButton>("saveSettings")->isVisible());
}

TEST_F(MainWindowTest, theWindowsPlaceIsRemembered) {
  start(creek());
  window.resize(1100, 700);
  window.close();
  MainWindow next{session, answers, preferences};
  EXPECT_EQ(next.size(), QSize(1100, 700));
}

TEST_F(MainWindowTest, recentFilesAreNewestFirstAndEight) {
  for (int i = 0; i < 10; ++i) preferences.remember(QString::number(i));
  preferences.remember(QStringLiteral("5"));
  EXPECT_EQ(preferences.recentFiles().size(), 8);
  EXPECT_EQ(preferences.recentFiles().front(), QStringLiteral("5"));
  EXPECT_EQ(preferences.recentFiles().count(QStringLiteral("5")), 1);
}

}  // namespace

}  // namespace topwire
