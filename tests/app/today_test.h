#pragma once

#include "app/windows/crew_lanes.h"
#include "app/windows/today_page.h"
#include "tests/app/crew_orchard.h"
#include "tests/app/window_test.h"

#include <algorithm>
#include <functional>

namespace topwire::testing {

/// Kestrel of three and Wren of four, two blocks, 6 April 2027, a Tuesday.
class TodayPageTest : public testing::WindowTest {
protected:
  TodayPageTest() {
    window.planner().setRuns(CrewPlanner::Runs::atOnce);
    window.planner().setMostTrades(trades);
  }

  static constexpr int trades = 2000;  ///< enough for a plan, soon there

  void startOn(const Orchard& orchard) {
    start(orchard);
    window.showPage(RailPage::today);
    settle();
  }

  TodayPage& page() { return *window.findChild<TodayPage*>(); }

  CrewLanes& lanes() { return *window.findChild<CrewLanes*>(); }

  std::vector<JobCard*> cardsOf(CrewId crew) {
    std::vector<JobCard*> cards;
    for (JobCard* card : lanes().findChildren<JobCard*>())
      if (card->place().crew == crew && card->isVisible()) cards.push_back(card);
    std::ranges::sort(cards, {}, &JobCard::startMinute);
    return cards;
  }

  JobCard* focusedCard() { return qobject_cast<JobCard*>(QApplication::focusWidget()); }

  JobCard& focusCardOf(CrewId crew) {
    const auto cards = cardsOf(crew);
    if (cards.empty()) throw std::runtime_error{"no card in the lane"};
    cards.front()->setFocus(Qt::TabFocusReason);
    return *cards.front();
  }

  CrewHead& headOf(std::size_t lane) {
    return *lanes().findChildren<CrewHead*>().at(static_cast<int>(lane));
  }

  /// On with Tab, as a person without a mouse does.
  void tabTo(const std::function<bool(const QWidget*)>& isIt) {
    for (int steps = 0; steps < 200; ++steps) {
      press(Qt::Key_Tab);
      if (QApplication::focusWidget() != nullptr && isIt(QApplication::focusWidget()))
        return;
    }
    FAIL() << "Tab never comes there";
  }

  static auto named(const char* name) {
    return [name](const QWidget* widget) {
      return widget->objectName() == QLatin1String(name);
    };
  }

  int acceptedJobs() { return static_cast<int>(session.orchard().plannedJobs.size()); }
};

}  // namespace topwire::testing
