// How well first bloom is dated: each season of a record with its own date left out.
//
//   stage_accuracy [BLOOM.csv WEATHER.csv [LATITUDE]]
//
// BLOOM.csv has the columns cultivar, year and first_bloom_doy; WEATHER.csv is any daily
// file that Topwire reads. Without them the open record beside the project is taken,
// where it lies there: nine cultivars at Klein-Altendorf, 1998-2010 (University of Bonn;
// MIT licence, GitHub larscaspersen/phenoflex_meets_bayes).

#include "core/weather/read_weather.h"
#include "tests/support/bloom_trials.h"

#include <cstdio>
#include <fstream>
#include <iterator>

namespace topwire::testing {

namespace {

const char* const line = "  %-18s %7d %6.2f %+6.2f %7.0f %%%s\n";

void print(const BloomScore& score) {
  std::printf(line,
              score.cultivar.c_str(),
              score.seasons,
              score.rmse,
              score.bias,
              100.0 * score.held / score.seasons,
              score.seasons < 10 ? "  (too few seasons; not in the mean)" : "");
}

void print(const BloomRecord& record, const BloomTrial& trial) {
  std::printf("\n%s\n  %-18s %7s %6s %6s %9s\n",
              trial.name.c_str(),
              "cultivar",
              "seasons",
              "RMSE",
              "bias",
              "in span");
  const auto scores = scoresOf(record, trial);
  for (const BloomScore& score : scores) print(score);
  print(meanOf(scores));
}

std::vector<BloomTrial> trials() {
  const auto every = [](const std::string&) { return true; };
  const auto none = [](const std::string&) { return false; };
  const auto two = [](const std::string& cultivar) {
    return cultivar == "Golden Delicious" || cultivar == "Roter Boskoop";
  };
  return {
      {"True weather, own dates of the other seasons", every},
      {"As on 31 March, the rest from other years", every, 3, 31},
      {"As on 15 April, the rest from other years", every, 4, 15},
      {"True weather, own dates of Golden Delicious and Roter Boskoop only", two},
      {"True weather, no own dates: published sums and offsets", none},
      {"As on 31 March, no other years: monthly normals", every, 3, 31, false},
      {"As on 15 April, no other years: monthly normals", every, 4, 15, false},
  };
}

std::string textOf(const std::string& path) {
  std::ifstream file{path, std::ios::binary};
  return {std::istreambuf_iterator<char>{file}, {}};
}

int run(const std::string& bloomFile, const std::string& weatherFile, double latitude) {
  WeatherReading reading;
  reading.today = dayOf(2100, 1, 1);
  const auto weather = readWeather(textOf(weatherFile), weatherFile, reading);
  if (!weather) {
    std::fprintf(stderr, "%s\n", inEnglish(weather.error().front()).c_str());
    return 1;
  }
  const BloomRecord record{readBlooms(textOf(bloomFile)), (*weather)->days, latitude};
  std::printf("First bloom in days against what was observed, leave one year out.\n");
  for (const BloomTrial& trial : trials()) print(record, trial);
  return 0;
}

}  // namespace

}  // namespace topwire::testing

int main(int count, char** words) {
  const std::string folder = TOPWIRE_SOURCE_DIR "/../shared/data/";
  if (count > 2)
    return topwire::testing::run(
        words[1], words[2], count > 3 ? std::stod(words[3]) : 50);
  return topwire::testing::run(folder + "apple_first_bloom_day_of_year.csv",
                               folder + "daily_temperature_1998_2010.csv",
                               50.6);
}
