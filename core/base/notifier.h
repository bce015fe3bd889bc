#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <utility>

namespace topwire {

/// Holds a listener's place with a Notifier; gives it up when destroyed. May outlive the
/// notifier.
class [[nodiscard]] Subscription {
public:
  Subscription() = default;

  explicit Subscription(std::function<void()> end) : end_(std::move(end)) {}

  Subscription(Subscription&& other) noexcept
      : end_(std::exchange(other.end_, nullptr)) {}

  Subscription& operator=(Subscription&& other) noexcept {
    std::swap(end_, other.end_);
    return *this;
  }

  Subscription(const Subscription&) = delete;
  Subscription& operator=(const Subscription&) = delete;

  ~Subscription() {
    if (end_) end_();
  }

private:
  std::function<void()> end_;
};

/// Tells every listener. A listener may subscribe or end a subscription while being told;
/// newcomers hear from the next telling on.
template <class... Arguments>
class Notifier {
public:
  using Listener = std::function<void(const Arguments&...)>;

  Subscription subscribe(Listener listener) {
    const std::uint64_t key = next_++;
    listeners_->emplace(key, std::make_shared<Listener>(std::move(listener)));
    return Subscription{[weak = std::weak_ptr{listeners_}, key] {
      if (const auto listeners = weak.lock()) listeners->erase(key);
    }};
  }

  void tell(const Arguments&... arguments) const {
    const auto told = *listeners_;
    for (const auto& [key, listener] : told)
      if (listeners_->contains(key)) (*listener)(arguments...);
  }

private:
  using Listeners = std::map<std::uint64_t, std::shared_ptr<Listener>>;
  std::shared_ptr<Listeners> listeners_ = std::make_shared<Listeners>();
  std::uint64_t next_ = 0;
};

}  // namespace topwire
