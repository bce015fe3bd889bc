#include "core/base/notifier.h"

#include <gmock/gmock.h>

#include <optional>
#include <string>
#include <type_traits>

namespace topwire {

namespace {

using ::testing::ElementsAre;

TEST(Notifier, tellsListenersInTheOrderTheyCame) {
  Notifier<int> notifier;
  std::vector<std::string> heard;
  const auto first = notifier.subscribe(
      [&](int number) { heard.push_back("first " + std::to_string(number)); });
  const auto second = notifier.subscribe(
      [&](int number) { heard.push_back("second " + std::to_string(number)); });
  notifier.tell(7);
  EXPECT_THAT(heard, ElementsAre("first 7", "second 7"));
}

TEST(Notifier, tellsNobodyWhoseSubscriptionIsGone) {
  Notifier<> notifier;
  int heard = 0;
  {
    const auto subscription = notifier.subscribe([&] { ++heard; });
    notifier.tell();
  }
  notifier.tell();
  EXPECT_EQ(heard, 1);
}

TEST(Notifier, bearsAListenerThatEndsItsOwnSubscriptionWhileTold) {
  Notifier<> notifier;
  int heard = 0;
  std::optional<Subscription> own;
  own.emplace(notifier.subscribe([&] {
    ++heard;
    own.reset();
  }));
  notifier.tell();
  notifier.tell();
  EXPECT_EQ(heard, 1);
}

TEST(Notifier, leavesOutOneWhoseSubscriptionEndsWhileOthersAreTold) {
  Notifier<> notifier;
  bool laterHeard = false;
  std::optional<Subscription> later;
  const auto first = notifier.subscribe([&] { later.reset(); });
  later.emplace(notifier.subscribe([&] { laterHeard = true; }));
  notifier.tell();
  EXPECT_FALSE(laterHeard);
}

TEST(Notifier, tellsANewcomerFromTheNextTellingOn) {
  Notifier<> notifier;
  int newcomerHeard = 0;
  std::vector<Subscription> newcomers;
  const auto first = notifier.subscribe([&] {
    if (newcomers.empty())
      newcomers.push_back(notifier.subscribe([&] { ++newcomerHeard; }));
  });
  notifier.tell();
  EXPECT_EQ(newcomerHeard, 0);
  notifier.tell();
  EXPECT_EQ(newcomerHeard, 1);
}

TEST(Notifier, tellsAgainFromInsideATelling) {
  Notifier<int> notifier;
  std::vector<int> heard;
  const auto subscription = notifier.subscribe([&](int depth) {
    heard.push_back(depth);
    if (depth < 2) notifier.tell(depth + 1);
  });
  notifier.tell(0);
  EXPECT_THAT(heard, ElementsAre(0, 1, 2));
}

TEST(Subscription, mayOutliveItsNotifier) {
  Subscription subscription;
  auto listener = std::make_shared<int>(1);
  const std::weak_ptr<int> watched = listener;
  {
    Notifier<> notifier;
    subscription = notifier.subscribe([kept = std::move(listener)] {});
    EXPECT_FALSE(watched.expired());
  }
  EXPECT_TRUE(watched.expired());  // the notifier took its listeners along
}

TEST(Subscription, endsOnceWhenItWasMoved) {
  int ended = 0;
  {
    Subscription first{[&] { ++ended; }};
    const Subscription second{std::move(first)};
    EXPECT_EQ(ended, 0);
  }
  EXPECT_EQ(ended, 1);
}

static_assert(!std::is_copy_constructible_v<Subscription>);
static_assert(!std::is_copy_assignable_v<Subscription>);

}  // namespace

}  // namespace topwire
