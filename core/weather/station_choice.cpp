#include "core/weather/station_choice.h"

#include "core/exchange/delimited_text.h"

#include <algorithm>
#include <cstddef>

namespace topwire {

namespace {

/// More than anyone reads through; a year of the whole world holds tens of thousands.
constexpr std::size_t mostRemembered = 200;
constexpr std::size_t mostListed = 20;
constexpr std::size_t longestShown = 60;

char lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

bool sameCapitalsAside(std::string_view one, std::string_view other) {
  return std::ranges::equal(one, other, {}, lower, lower);
}

}  // namespace

bool StationChoice::takes(std::string_view id, std::string_view name) {
  if (last_ == id) return lastTaken_;
  last_ = id;
  lastTaken_ = isWanted(id, name);
  if (!lastTaken_) {
    remember(id);
  } else if (!found_) {
    found_ = true;
    id_ = excerpt(id, longestShown);
    name_ = excerpt(undoubled(name), longestShown);
  }
  return lastTaken_;
}

bool StationChoice::isWanted(std::string_view id, std::string_view name) const {
  if (wanted_)
    return sameCapitalsAside(id, *wanted_)
           || (!name.empty() && sameCapitalsAside(name, *wanted_));
  return !found_ || id_ == excerpt(id, longestShown);
}

void StationChoice::remember(std::string_view id) {
  const std::string shown = excerpt(id, longestShown);
  if (others_.contains(shown)) return;
  if (others_.size() < mostRemembered)
    others_.insert(shown);
  else
    furtherOthers_ = true;
}

std::string StationChoice::listed() const {
  std::string text = found_ ? id_ : std::string{};
  std::size_t count = found_ ? 1 : 0;
  for (const std::string& other : others_) {
    if (count++ == mostListed) break;
    text += (text.empty() ? "" : ", ") + other;
  }
  return text + (furtherOthers_ || count > mostListed ? ", ..." : "");
}

std::optional<Problem> StationChoice::problem(const std::string& file) const {
  if (wanted_ && !found_)
    return others_.empty()
               ? Problem{{phrase("Weather file",
                                 "The file does not name its station, so \"%1\" cannot "
                                 "be looked for; leave the station open."),
                          {*wanted_}},
                         file,
                         {}}
               : Problem{
                   {phrase("Weather file", "The file has no station \"%1\"; it has %2."),
                    {*wanted_, listed()}},
                   file,
                   {}};
  if (wanted_ || others_.empty()) return std::nullopt;
  return Problem{{phrase("Weather file",
                         "The file holds several stations; say which one to read: %1."),
                  {listed()}},
                 file,
                 {}};
}

}  // namespace topwire
