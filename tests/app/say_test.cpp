#include "app/words/say.h"

#include <QFile>

#include <gmock/gmock.h>

namespace topwire {

namespace {

std::string text(const QString& said) {
  return said.toStdString();
}

Voice british() {
  return {Language::english, QLocale{QStringLiteral("en_GB")}};
}

Voice american() {
  return {Language::english, QLocale{QStringLiteral("en_US")}};
}

Voice mexican() {
  return {Language::spanish, QLocale{QStringLiteral("es_MX")}};
}

Voice castilian() {
  return {Language::spanish, QLocale{QStringLiteral("es_ES")}};
}

const Day tuesday = dayOf(2027, 4, 6);

/// The order of day and month and the lower-case Spanish names are those of the Unicode
/// Common Locale Data Repository (CLDR), "long" date formats of en-GB, en-US and es.
struct DayRow {
  const char* locale;
  const char* day;
  const char* shortDay;
  const char* weekday;
  const char* month;
};

class DaysInLocales : public ::testing::TestWithParam<DayRow> {};

TEST_P(DaysInLocales, AreWrittenAsReadersExpect) {
  const DayRow& row = GetParam();
  const QLocale locale{QString::fromLatin1(row.locale)};
  const bool spanish = locale.language() == QLocale::Spanish;
  const Voice voice{spanish ? Language::spanish : Language::english, locale};
  EXPECT_EQ(text(voice.day(tuesday)), row.day);
  EXPECT_EQ(text(voice.shortDay(tuesday)), row.shortDay);
  EXPECT_EQ(text(voice.weekday(tuesday)), row.weekday);
  EXPECT_EQ(text(voice.month(tuesday)), row.month);
}

INSTANTIATE_TEST_SUITE_P(
    Say,
    DaysInLocales,
    ::testing::Values(
        DayRow{"en_GB", "6 April 2027", "Tue 6 April", "Tuesday 6 April", "April 2027"},
        DayRow{
            "en_US", "April 6, 2027", "Tue, April 6", "Tuesday, April 6", "April 2027"},
        DayRow{"es_ES",
               "6 de abril de 2027",
               "mar 6 de abril",
               "martes 6 de abril",
               "Abril de 2027"},
        DayRow{"es_MX",
               "6 de abril de 2027",
               "mar 6 de abril",
               "martes 6 de abril",
               "Abril de 2027"},
        DayRow{"C", "6 April 2027", "Tue 6 April", "Tuesday 6 April", "April 2027"},
        DayRow{"de_DE", "6 April 2027", "Tue 6 April", "Tuesday 6 April", "April 2027"}));

TEST(Say, WritesASpanOfDaysWithoutSayingAMonthTwice) {
  const DaySpan week{dayOf(2027, 4, 5), dayOf(2027, 4, 11)};
  EXPECT_EQ(text(british().spanWithYear(week)), "5–11 April 2027");
  EXPECT_EQ(text(american().spanWithYear(week)), "April 5–11, 2027");
  EXPECT_EQ(text(mexican().spanWithYear(week)), "5–11 de abril de 2027");
  const DaySpan acrossMonths{dayOf(2027, 3, 29), dayOf(2027, 4, 4)};
  EXPECT_EQ(text(british().spanWithYear(acrossMonths)), "29 March – 4 April 2027");
  EXPECT_EQ(text(american().span(acrossMonths)), "March 29 – April 4");
  const DaySpan acrossYears{dayOf(2026, 12, 28), dayOf(2027, 1, 3)};
  EXPECT_EQ(text(british().spanWithYear(acrossYears)),
            "28 December 2026 – 3 January 2027");
  EXPECT_EQ(text(british().span({tuesday, tuesday})), "6 April");
}

TEST(Say, UsesTheLocalesDecimalSign) {
  const Sentence sentence{phrase("Test", "%1 of %2 rows"),
                          {Figure{5.5, 1}, std::int64_t{28}}};
  EXPECT_EQ(text(british().say(sentence)), "5.5 of 28 rows");
  EXPECT_EQ(text(castilian().say(sentence)), "5,5 of 28 rows");
  EXPECT_EQ(text(mexican().say(sentence)), "5.5 of 28 rows");
}

TEST(Say, LeavesAYearAndARowInOnePiece) {
  const Sentence sentence{phrase("Test", "%1, row %2"),
                          {std::int64_t{2027}, std::int64_t{1204}}};
  EXPECT_EQ(text(american().say(sentence)), "2027, row 1204");
  EXPECT_EQ(text(american().count(3600)), "3,600");
}

TEST(Say, PutsWordsAndDaysIntoASentenceInItsLanguage) {
  const Sentence sentence{phrase("Sheet", "made %1"), {tuesday}};
  EXPECT_EQ(text(american().say(sentence)), "made April 6, 2027");
  EXPECT_EQ(text(mexican().say(sentence)), "hecha el 6 de abril de 2027");
  EXPECT_EQ(text(mexican().say(Words{"pliers", "pinzas"})), "pinzas");
  const Sentence ofWords{phrase("Test", "<%1>"), {Words{"pliers", "pinzas"}}};
  EXPECT_EQ(text(mexican().say(ofWords)), "<pinzas>");
  EXPECT_EQ(text(british().say(ofWords)), "<pliers>");
}

TEST(Say, KeepsEnglishWhereATranslationIsMissing) {
  EXPECT_EQ(text(mexican().say(Sentence{phrase("Test", "No such phrase.")})),
            "No such phrase.");
}

TEST(Say, LeadsAProblemWithItsPlace) {
  const Problem placed{Sentence{phrase("Test", "There is no row 29.")}, "rows", {}};
  EXPECT_EQ(text(british().say(placed)), "rows: There is no row 29.");
  const Problem free{Sentence{phrase("Test", "There is no row 29.")}, {}, {}};
  EXPECT_EQ(text(british().say(free)), "There is no row 29.");
}

TEST(Say, DoesNotReadAValueAsAPlaceholder) {
  const Sentence sentence{phrase("Test", "%1 and %2"), {std::string{"%2"}, tuesday}};
  EXPECT_EQ(text(british().say(sentence)), "%2 and 6 April 2027");
}

struct LeafRow {
  int leaf;
  const char* english;
  const char* spanish;
};

class Leaves : public ::testing::TestWithParam<LeafRow> {};

TEST_P(Leaves, AreCountedInWordsToTheTwelfth) {
  EXPECT_EQ(text(british().leaf(GetParam().leaf)), GetParam().english);
  EXPECT_EQ(text(mexican().leaf(GetParam().leaf)), GetParam().spanish);
}

INSTANTIATE_TEST_SUITE_P(
    Say,
    Leaves,
    ::testing::Values(LeafRow{-2, "before planting", "antes de plantar"},
                      LeafRow{0, "before planting", "antes de plantar"},
                      LeafRow{1, "first leaf", "primera hoja"},
                      LeafRow{3, "third leaf", "tercera hoja"},
                      LeafRow{12, "twelfth leaf", "duodécima hoja"},
                      LeafRow{13, "13th leaf", "hoja 13"},
                      LeafRow{21, "21st leaf", "hoja 21"},
                      LeafRow{22, "22nd leaf", "hoja 22"},
                      LeafRow{33, "33rd leaf", "hoja 33"},
                      LeafRow{111, "111th leaf", "hoja 111"}));

TEST(Say, WritesHoursWithNoMoreFiguresThanHelp) {
  EXPECT_EQ(text(british().hours(8.5)), "8.5 h");
  EXPECT_EQ(text(british().hours(18)), "18 h");
  EXPECT_EQ(text(british().hours(0)), "0 h");
  EXPECT_EQ(text(british().hours(0.25)), "0.3 h");
  EXPECT_EQ(text(british().hours(0.1)), "6 min");
  EXPECT_EQ(text(british().hours(0.001)), "1 min") << "some work is never none";
  EXPECT_EQ(text(british().hours(9.96)), "10 h");
  EXPECT_EQ(text(british().hours(242.4)), "242 h");
  EXPECT_EQ(text(castilian().hours(8.5)), "8,5 h");
}

TEST(Say, WritesLengthsInTheUnitsOfTheOrchard) {
  EXPECT_EQ(text(british().say(Length::centimetres(90), UnitSystem::metric)), "0.9 m");
  EXPECT_EQ(text(castilian().say(Length::centimetres(90), UnitSystem::metric)), "0,9 m");
  EXPECT_EQ(text(american().say(Length::inches(42), UnitSystem::usCustomary)), "3.5 ft");
  EXPECT_EQ(text(mexican().say(Length::feet(1300), UnitSystem::usCustomary)),
            "1300 pies");
}

TEST(Say, NamesStatesAndVigourInBothLanguages) {
  EXPECT_EQ(text(british().nameOf(TaskState::setAside)), "set aside");
  EXPECT_EQ(text(mexican().nameOf(TaskState::late)), "atrasado");
  EXPECT_EQ(text(british().nameOf(Vigour::weak)), "weak");
  EXPECT_EQ(text(mexican().nameOf(Vigour::strong)), "fuerte");
}

class Speaking : public ::testing::Test {
protected:
  ~Speaking() override { speak(QStringLiteral("en_GB")); }
};

TEST_F(Speaking, ChangesTheVoiceAndTheDefaultLocale) {
  speak(QStringLiteral("es_MX"));
  EXPECT_EQ(language(), Language::spanish);
  EXPECT_EQ(text(dayText(tuesday)), "6 de abril de 2027");
  EXPECT_EQ(text(leafText(2)), "segunda hoja");
  EXPECT_EQ(QLocale{}.language(), QLocale::Spanish);
  speak(QStringLiteral("en_US"));
  EXPECT_EQ(language(), Language::english);
  EXPECT_EQ(text(dayText(tuesday)), "April 6, 2027");
}

TEST_F(Speaking, AnswersAnyOtherLanguageInEnglishWithItsFigures) {
  speak(QStringLiteral("de_DE"));
  EXPECT_EQ(language(), Language::english);
  EXPECT_EQ(text(monthText(tuesday)), "April 2027");
  EXPECT_EQ(text(hoursText(8.5)), "8,5 h");
}

TEST_F(Speaking, LendsThePageAnotherLanguageOfTheSameCountry) {
  speak(QStringLiteral("en_US"));
  const Voice spanish = voiceIn(Language::spanish);
  EXPECT_EQ(text(spanish.day(tuesday)), "6 de abril de 2027");
  EXPECT_EQ(text(spanish.hours(8.5)), "8.5 h");
  EXPECT_EQ(text(voiceIn(Language::english).day(tuesday)), "April 6, 2027");
}

TEST(ShippedResources, AreLinkedIntoAProgramThatLinksTheStaticLibrary) {
  for (const char* path : {":/translations/topwire_es.qm",
                           ":/tables/cultivars.toml",
                           ":/tables/frost_kill.toml",
                           ":/tables/rootstocks.toml",
                           ":/tables/stations.toml",
                           ":/programmes/planar-wall-apple.toml",
                           ":/programmes/tall-spindle-apple.toml"})
    EXPECT_TRUE(QFile::exists(QString::fromLatin1(path))) << path;
}

}  // namespace

}  // namespace topwire
