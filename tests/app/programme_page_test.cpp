#include "app/windows/operation_editors.h"
#include "app/windows/operation_form.h"
#include "app/windows/programme_words.h"
#include "app/windows/two_line_list.h"
#include "app/words/resources.h"
#include "core/edit/programme_deeds.h"
#include "core/programme/operation_text.h"
#include "tests/app/window_test.h"

#include <QListWidget>

namespace topwire {

namespace {

using ::testing::AllOf;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using testing::orchardOfOne;
using ::testing::SizeIs;

constexpr const char* spindle = "tall-spindle-apple";

class ProgrammePageTest : public testing::WindowTest {
protected:
  static Orchard creek() {
    return orchardOfOne(testing::northernSettings(), dayOf(2024, 4, 1));
  }

  /// With a copy called "mine" that the one planting goes by.
  static Orchard withOwn() {
    Orchard orchard = creek();
    const auto copy = addProgramme(orchard,
                                   testing::shippedProgrammes(),
                                   shippedProgrammeText(spindle).value(),
                                   "mine",
                                   {"Mine", "Mío"});
    apply(orchard, copy.value());
    orchard.plantings.begin()->second.programme = "mine";
    return orchard;
  }

  void startOnProgramme(const Orchard& orchard) {
    start(orchard);
    window.showPage(RailPage::programme);
    settle();
  }

  void choose(const char* operation) {
    ASSERT_TRUE(find<TwoLineList>("operationList")->choose(QLatin1String(operation)));
    settle();
  }

  void chooseProgramme(const char* id) {
    ASSERT_TRUE(find<TwoLineList>("programmeList")->choose(QLatin1String(id)));
    settle();
  }

  /// The field as typed, and the pause after typing.
  void write(const char* field, const char* text) {
    find<QLineEdit>(field)->setText(QString::fromUtf8(text));
    pause();
  }

  static void pause() {
    QTest::qWait(260);
    settle();
  }

  QSpinBox* daysOf(const char* edge) {
    return find<AnchorField>(edge)->findChild<QSpinBox*>(QStringLiteral("days"));
  }

  const Operation& own(const char* operation) const {
    return *session.programmes().at("mine").find(operation);
  }
};

TEST_F(ProgrammePageTest, AShippedOneIsReadAndNotChanged) {
  startOnProgramme(creek());
  chooseProgramme(spindle);
  choose("plant");
  EXPECT_EQ(textOf("operationName"), "Plant");
  EXPECT_THAT(textOf("operationHow"), HasSubstr("graft union"));
  EXPECT_FALSE(isShown(*find<QWidget>("operationForm")));
  EXPECT_FALSE(find<QPushButton>("removeProgramme")->isVisible());
}

TEST_F(ProgrammePageTest, EveryOperationIsListedOnceWithItsWindow) {
  startOnProgramme(creek());
  for (const auto& [id, programme] : session.programmes()) {
    chooseProgramme(id.c_str());
    for (const Operation& operation : programme.operations) {
      choose(operation.id.c_str());
      EXPECT_THAT(windowText(operation, programme, Hemisphere::north).toStdString(),
                  AllOf(Not(IsEmpty()), Not(HasSubstr("%")), Not(HasSubstr("  "))));
    }
  }
}

TEST_F(ProgrammePageTest, ACopyIsMadeAndOpensToBeChanged) {
  startOnProgramme(creek());
  chooseProgramme(spindle);
  click("copyProgramme");
  click("makeCopy");
  ASSERT_TRUE(session.orchard().programmes.contains("my-tall-spindle-apple"));
  EXPECT_EQ(find<TwoLineList>("programmeList")->chosen().toStdString(),
            "my-tall-spindle-apple");
  EXPECT_TRUE(find<QWidget>("operationForm")->isVisible());
  window.undo();
  settle();
  EXPECT_THAT(session.orchard().programmes, IsEmpty());
  EXPECT_FALSE(isShown(*find<QWidget>("operationForm")));
}

TEST_F(ProgrammePageTest, WhatAChangeDoesIsSaidBeforeItIsKept) {
  startOnProgramme(withOwn());
  chooseProgramme("mine");
  choose("dormant-pruning");
  EXPECT_FALSE(find<QPushButton>("keepChange")->isEnabled());
  const int before = own("dormant-pruning").closes.days;
  daysOf("field-closes")->setValue(before - 4);
  pause();
  EXPECT_THAT(textOf("effectSummary"), HasSubstr("tasks move"));
  EXPECT_THAT(textOf("effectList"), HasSubstr("4 days earlier"));
  EXPECT_EQ(own("dormant-pruning").closes.days, before) << "nobody said yes yet";
  EXPECT_FALSE(find<TwoLineList>("programmeList")->isEnabled());

  click("keepChange");
  EXPECT_EQ(own("dormant-pruning").closes.days, before - 4);
  EXPECT_FALSE(find<QPushButton>("keepChange")->isEnabled());
  window.undo();
  settle();
  EXPECT_EQ(own("dormant-pruning").closes.days, before);
  EXPECT_EQ(daysOf("field-closes")->value(), before);
}

TEST_F(ProgrammePageTest, LeavingItDropsWhatWasTyped) {
  startOnProgramme(withOwn());
  chooseProgramme("mine");
  choose("dormant-pruning");
  const QString before = find<QLineEdit>("field-seconds-per-tree")->text();
  write("field-seconds-per-tree", "900");
  EXPECT_THAT(textOf("effectSummary"), HasSubstr("worker-hours more this season"));
  click("leaveChange");
  EXPECT_EQ(find<QLineEdit>("field-seconds-per-tree")->text(), before);
  EXPECT_TRUE(find<TwoLineList>("programmeList")->isEnabled());
  EXPECT_EQ(session.undoName(), nullptr);
}

TEST_F(ProgrammePageTest, AFaultStandsAtItsFieldAndHoldsTheChoice) {
  startOnProgramme(withOwn());
  chooseProgramme("mine");
  choose("leader-tie");
  write("field-leaves", "3-1");
  EXPECT_THAT(textOf("message-leaves"), HasSubstr("names no leaves"));
  EXPECT_FALSE(find<TwoLineList>("operationList")->isEnabled());
  EXPECT_FALSE(find<QPushButton>("keepChange")->isEnabled());
  write("field-leaves", "1-3");
  EXPECT_TRUE(find<TwoLineList>("operationList")->isEnabled());
  find<WordsField>("field-done-when")->setWords({"Tied", ""});
  pause();
  EXPECT_THAT(textOf("message-done-when"), HasSubstr("fill in both"));
}

TEST_F(ProgrammePageTest, ChangesOfSeveralOperationsAreKeptTogether) {
  startOnProgramme(withOwn());
  chooseProgramme("mine");
  choose("leader-tie");
  find<QLineEdit>("field-seconds-per-tree")->setText(QStringLiteral("11"));
  choose("dormant-pruning");
  write("field-seconds-per-tree", "12");
  click("keepChange");
  EXPECT_EQ(own("leader-tie").secondsPerTree, (std::map<int, int>{{1, 11}}));
  EXPECT_EQ(own("dormant-pruning").secondsPerTree, (std::map<int, int>{{1, 12}}));
}

TEST_F(ProgrammePageTest, TheFormGivesBackEveryShippedOperationAsItIs) {
  OperationForm form;
  for (const auto& [id, programme] : testing::shippedProgrammes())
    for (const Operation& operation : programme.operations) {
      form.fill(operation, programme);
      EXPECT_TRUE(sameOperation(form.operation(), operation)) << id << operation.id;
      EXPECT_THAT(form.unreadable(), IsEmpty()) << operation.id;
    }
}

TEST_F(ProgrammePageTest, WorkIsCopiedAndTakenOut) {
  startOnProgramme(withOwn());
  chooseProgramme("mine");
  choose("leader-tie");
  click("copyOperation");
  EXPECT_EQ(find<TwoLineList>("operationList")->chosen().toStdString(), "leader-tie-2");
  EXPECT_THAT(textOf("effectSummary"), HasSubstr("come"));
  click("removeOperation");
  EXPECT_FALSE(find<QPushButton>("keepChange")->isEnabled());
}

TEST_F(ProgrammePageTest, PlantingsAreChosenWithWhatThatDoes) {
  startOnProgramme(creek());
  chooseProgramme("planar-wall-apple");
  click("choosePlantings");
  EXPECT_FALSE(find<QPushButton>("keepChange")->isEnabled());
  find<QListWidget>("plantingChoices")->item(0)->setCheckState(Qt::Checked);
  settle();
  EXPECT_THAT(textOf("effectSummary"), AllOf(HasSubstr("come"), HasSubstr("go")));
  click("keepChange");
  EXPECT_EQ(session.orchard().plantings.begin()->second.programme, "planar-wall-apple");
}

TEST_F(ProgrammePageTest, AFileIsSavedAndBroughtIn) {
  startOnProgramme(withOwn());
  chooseProgramme("mine");
  answers.file = folder.filePath(QStringLiteral("mine.toml"));
  click("saveProgramme");
  QFile file{answers.file};
  ASSERT_TRUE(file.open(QIODevice::ReadWrite));
  QByteArray text = file.readAll();
  EXPECT_EQ(text.toStdString(), session.orchard().programmes.at("mine").text);
  text.replace("id = \"mine\"", "id = \"ours\"");
  file.resize(0);
  file.write(text);
  file.flush();
  click("bringInProgramme");
  EXPECT_TRUE(session.programmes().contains("ours"));
  EXPECT_EQ(find<TwoLineList>("programmeList")->chosen().toStdString(), "ours");
  file.resize(0);
  file.write("format = 1\nid = \"bad\"\n");
  file.flush();
  click("bringInProgramme");
  EXPECT_THAT(textOf("faultList"), HasSubstr("mine.toml:1: In the programme, name is"));
  click("closeFaults");
  EXPECT_TRUE(find<QWidget>("operationForm")->isVisible());
}

TEST_F(ProgrammePageTest, AUsedOneIsNotRemoved) {
  startOnProgramme(withOwn());
  chooseProgramme("mine");
  click("removeProgramme");
  EXPECT_THAT(answers.asked, SizeIs(1));
  EXPECT_TRUE(session.orchard().programmes.contains("mine"));
}

}  // namespace

}  // namespace topwire
