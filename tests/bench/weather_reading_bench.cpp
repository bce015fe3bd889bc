// How long a station of 150 years takes to read in each format, and how the formats
// compare with the leanest in the same run: times differ between machines and moments,
// their ratios hardly do.

#include "core/weather/read_weather.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <iomanip>
#include <map>
#include <numbers>
#include <sstream>
#include <string>

namespace topwire {
namespace {

const Day firstDay = dayOf(1877, 1, 1);
const Day lastDay = dayOf(2026, 12, 31);
constexpr const char* station = "XX000000001";

/// Whole tenths of a degree: a year's wave with weather on it, the same in every run.
int tenthsOn(Day day, int level) {
  const int since = daysBetween(firstDay, day);
  const double wave = -std::cos(2 * std::numbers::pi * since / 365.25);
  return level + static_cast<int>(120 * wave) + since * 7919 % 97 - 48;
}

struct DaysElement {
  const char* name;
  int level;
};

constexpr std::array elements{DaysElement{"TMAX", 150},
                              DaysElement{"TMIN", 50},
                              DaysElement{"PRCP", 170},
                              DaysElement{"SNOW", 170},
                              DaysElement{"SNWD", 170},
                              DaysElement{"TOBS", 90}};

int valueOn(Day day, const DaysElement& element) {
  const int value = tenthsOn(day, element.level);
  return element.name[0] == 'T' ? value : std::max(0, value);
}

Day monthAfter(Day day) {
  return plusMonthsCapToMonthEnd(day, 1);
}

std::string fixedWidth() {
  std::ostringstream text;
  for (Day month = firstDay; month <= lastDay; month = monthAfter(month))
    for (const DaysElement& element : elements) {
      const std::string iso = isoText(month);
      text << station << iso.substr(0, 4) << iso.substr(5, 2) << element.name;
      for (int day = 0; day < 31; ++day) {
        const Day on = plusDays(month, day);
        const bool exists = on < monthAfter(month);
        text << std::setw(5) << (exists ? valueOn(on, element) : -9999) << "  S";
      }
      text << '\n';
    }
  return text.str();
}

/// The text of every day, written by `write(day, text)` under the headings.
template <class Write>
std::string everyDay(const char* headings, Write write) {
  std::ostringstream text;
  text << headings << std::fixed << std::setprecision(1);
  for (Day day = firstDay; day <= lastDay; day = plusDays(day, 1)) write(day, text);
  return text.str();
}

std::string byStation() {
  return everyDay("", [](Day day, std::ostream& text) {
    const std::string iso = isoText(day);
    for (const DaysElement& element : elements)
      text << station << ',' << iso.substr(0, 4) << iso.substr(5, 2) << iso.substr(8, 2)
           << ',' << element.name << ',' << valueOn(day, element) << ",,,S,0700\n";
  });
}

std::string dailySummaries() {
  return everyDay(
      "\"STATION\",\"NAME\",\"LATITUDE\",\"LONGITUDE\",\"ELEVATION\",\"DATE\",\"PRCP\","
      "\"PRCP_ATTRIBUTES\",\"TMAX\",\"TMAX_ATTRIBUTES\",\"TMIN\",\"TMIN_ATTRIBUTES\"\n",
      [](Day day, std::ostream& text) {
        text << '"' << station << "\",\"ALDER BEND, XX\",\"46.9\",\"-120.5\",\"450.0\",\""
             << isoText(day);
        for (const std::size_t element : {2U, 0U, 1U})
          text << "\",\"" << valueOn(day, elements[element]) / 10.0 << "\",\",,S";
        text << "\"\n";
      });
}

std::string plainTable() {
  return everyDay("date,tmin,tmax,rain\n", [](Day day, std::ostream& text) {
    text << isoText(day);
    for (const std::size_t element : {1U, 0U, 2U})
      text << ',' << valueOn(day, elements[element]) / 10.0;
    text << '\n';
  });
}

void read(benchmark::State& state, const std::string& text) {
  WeatherReading reading;
  reading.today = dayOf(2027, 4, 6);
  for ([[maybe_unused]] auto round : state) {
    auto file = readWeather(text, "station", reading);
    if (!file || !*file
        || (*file)->report.wholeDays != daysBetween(firstDay, lastDay) + 1) {
      state.SkipWithError("the station was not read whole");
      return;
    }
    benchmark::DoNotOptimize(file);
  }
  state.SetBytesProcessed(static_cast<std::int64_t>(text.size())
                          * static_cast<std::int64_t>(state.iterations()));
  state.counters["MB"] = static_cast<double>(text.size()) / 1e6;
}

/// Shows what the library shows, and at the end each format's share of the leanest.
class Ratios : public benchmark::ConsoleReporter {
public:
  Ratios() : ConsoleReporter(OO_Tabular) {}

  void ReportRuns(const std::vector<Run>& runs) override {
    ConsoleReporter::ReportRuns(runs);
    for (const Run& run : runs)
      if (run.run_type == Run::RT_Iteration)
        times_[run.benchmark_name()] = run.GetAdjustedRealTime();
  }

  void tell() const {
    double least = HUGE_VAL;
    for (const auto& [name, time] : times_) least = std::min(least, time);
    for (const auto& [name, time] : times_)
      std::printf("%-16s %5.1f times the leanest\n", name.c_str(), time / least);
  }

private:
  std::map<std::string, double> times_;
};

int run(int argc, char** argv) {
  const std::map<std::string, std::string> texts{{"fixed width", fixedWidth()},
                                                 {"by station", byStation()},
                                                 {"daily summaries", dailySummaries()},
                                                 {"plain table", plainTable()}};
  for (const auto& [name, text] : texts)
    benchmark::RegisterBenchmark(name.c_str(), [&text](benchmark::State& state) {
      read(state, text);
    })->Unit(benchmark::kMillisecond);
  benchmark::Initialize(&argc, argv);
  Ratios ratios;
  benchmark::RunSpecifiedBenchmarks(&ratios);
  ratios.tell();
  return 0;
}

}  // namespace
}  // namespace topwire

int main(int argc, char** argv) {
  return topwire::run(argc, argv);
}
