#include "app/look/tokens.h"

#include <gmock/gmock.h>

#include <cmath>
#include <set>
#include <vector>

namespace topwire {

namespace {

/// Relative luminance and contrast as Web Content Accessibility Guidelines 2.1 define
/// them (https://www.w3.org/TR/WCAG21/#dfn-relative-luminance and #dfn-contrast-ratio).
double channel(int value) {
  const double c = value / 255.0;
  return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
  return 0.2126 * channel(colour.red()) + 0.7152 * channel(colour.green())
         + 0.0722 * channel(colour.blue());
}

double contrast(const QColor& a, const QColor& b) {
  const double la = luminance(a);
  const double lb = luminance(b);
  return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

constexpr double forText = 4.5;   ///< success criterion 1.4.3
constexpr double forMarks = 3.0;  ///< success criterion 1.4.11

constexpr TaskState states[] = {TaskState::waiting,
                                TaskState::open,
                                TaskState::closing,
                                TaskState::late,
                                TaskState::lapsed,
                                TaskState::done,
                                TaskState::setAside};

struct Pair {
  const char* name;
  QColor mark;
  QColor ground;
};

void expectAtLeast(double wanted, const std::vector<Pair>& pairs) {
  for (const Pair& pair : pairs)
    EXPECT_GE(contrast(pair.mark, pair.ground), wanted) << pair.name;
}

class TokensTest : public ::testing::TestWithParam<Theme> {
protected:
  const BaseColours& base = baseColours(GetParam());
};

INSTANTIATE_TEST_SUITE_P(Themes,
                         TokensTest,
                         ::testing::Values(Theme::light, Theme::dark),
                         [](const auto& theme) {
                           return theme.param == Theme::light ? "light" : "dark";
                         });

TEST(ContrastTest, agreesWithTheDefinitionsOwnEnds) {
  EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-9);
  EXPECT_NEAR(contrast(Qt::white, Qt::white), 1, 1e-9);
}

TEST_P(TokensTest, wordsStandOutFromEveryGroundTheyAreOn) {
  expectAtLeast(forText,
                {{"text on window", base.text, base.window},
                 {"text on surface", base.text, base.surface},
                 {"text on raised", base.text, base.raised},
                 {"text on accent tint", base.text, base.accentTint},
                 {"muted on window", base.muted, base.window},
                 {"muted on surface", base.muted, base.surface},
                 {"muted on raised", base.muted, base.raised},
                 {"muted on accent tint", base.muted, base.accentTint},
                 {"words on the main button", base.onAccent, base.accent},
                 {"link on window", base.accent, base.window},
                 {"link on raised", base.accent, base.raised},
                 {"rail text", base.railText, base.rail},
                 {"rail muted", base.railMuted, base.rail}});
}

TEST_P(TokensTest, edgesAndRingsStandOutFromEveryGroundTheyAreOn) {
  expectAtLeast(forMarks,
                {{"outline on window", base.outline, base.window},
                 {"outline on surface", base.outline, base.surface},
                 {"outline on raised", base.outline, base.raised},
                 {"focus on window", base.focus, base.window},
                 {"focus on surface", base.focus, base.surface},
                 {"focus on raised", base.focus, base.raised},
                 {"accent on window", base.accent, base.window},
                 {"accent on accent tint", base.accent, base.accentTint}});
}

TEST_P(TokensTest, aStatesWordStandsOutFromEveryGround) {
  for (const TaskState state : states) {
    SCOPED_TRACE(static_cast<int>(state));
    const StateColours& colours = stateColours(GetParam(), state);
    expectAtLeast(forText,
                  {{"ink on window", colours.ink, base.window},
                   {"ink on surface", colours.ink, base.surface},
                   {"ink on raised", colours.ink, base.raised},
                   {"ink on its tint", colours.ink, colours.tint},
                   {"text on its tint", base.text, colours.tint},
                   {"text on its hatch", base.text, colours.hatch}});
  }
}

TEST_P(TokensTest, aStatesShapeStandsOutFromEveryGround) {
  for (const TaskState state : states) {
    SCOPED_TRACE(static_cast<int>(state));
    const StateColours& colours = stateColours(GetParam(), state);
    expectAtLeast(forMarks,
                  {{"mark on window", colours.mark, base.window},
                   {"mark on surface", colours.mark, base.surface},
                   {"mark on raised", colours.mark, base.raised},
                   {"mark on its tint", colours.mark, colours.tint}});
  }
}

TEST_P(TokensTest, noTwoStatesShareAMark) {
  std::set<QRgb> marks;
  for (const TaskState state : states)
    EXPECT_TRUE(marks.insert(stateColours(GetParam(), state).mark.rgb()).second)
        << static_cast<int>(state);
}

}  // namespace

}  // namespace topwire
