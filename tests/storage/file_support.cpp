#include "tests/storage/file_support.h"

#include "core/base/contract.h"
#include "tests/support/builders.h"

#include <sys/wait.h>
#include <unistd.h>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <numbers>
#include <random>
#include <sstream>

namespace topwire::testing {

namespace {

std::string readAll(int descriptor) {
  std::string text;
  char piece[4096];
  for (ssize_t got = 0; (got = read(descriptor, piece, sizeof piece)) > 0;)
    text.append(piece, static_cast<std::size_t>(got));
  return text;
}

[[noreturn]] void answerFromChild(int descriptor,
                                  const std::function<std::string()>& work) {
  const std::string answer = work();
  const ssize_t sent = write(descriptor, answer.data(), answer.size());
  _exit(sent == static_cast<ssize_t>(answer.size()) ? 0 : 1);
}

void addTicks(Orchard& orchard, const TaskKey& key) {
  Tick tick;
  tick.id = {5, 1};
  tick.task = key;
  tick.rows = parseRows("1-4, 7").rows;
  tick.percent = 50;
  tick.minutes = 90;
  tick.by = "Cuadrilla Ñ";
  tick.day = dayOf(2028, 2, 29);
  orchard.ticks[tick.id] = tick;
  Tick back = tick;
  back.id = {0, 1};
  back.takesBack = tick.id;
  orchard.ticks[back.id] = back;
}

void addWeather(Orchard& orchard) {
  WeatherMonth leap{{2028, 2}, {}};
  leap.days[0] = WeatherDay{-1.1, 0.1 + 0.2, 12.7, WeatherSource::measured};
  leap.days[1] = WeatherDay{std::nullopt, 1.0 / 3, std::nullopt, WeatherSource::typed};
  leap.days[28] = WeatherDay{-20, 1e-300, 0, WeatherSource::forecast};
  WeatherMonth old{{1878, 12}, {}};
  old.days[30] = WeatherDay{std::nullopt, std::nullopt, 4, WeatherSource::measured};
  for (const WeatherMonth& month : {leap, old}) orchard.weather[month.month] = month;
}

void addCrewDays(Orchard& orchard, const TaskKey& key) {
  Crew& crew = orchard.crews.at({0, 3});
  crew.skills = {"pruning", "poda, ñ"};
  crew.members = {"Ana \"la jefa\"", ""};
  crew.daysOff = {{dayOf(2027, 5, 3), dayOf(2027, 5, 9)},
                  {dayOf(2028, 2, 29), dayOf(2028, 2, 29)}};
  crew.youngMinutes = 120;
  const Day day = dayOf(2027, 9, 3);
  orchard.workDays[day] = {day, 50, "lluvia"};
  orchard.workDays[plusDays(day, 2)] = {plusDays(day, 2), 100, ""};
  orchard.turnouts[{crew.id, day}] = {{crew.id, day}, 0};
  orchard.turnouts[{crew.id, plusDays(day, 1)}] = {{crew.id, plusDays(day, 1)}, 9};
  orchard.pins[{0, 9}] = {{0, 9}, PinKind::crewToJob, key, crew.id, day, "'ya'"};
  orchard.pins[{0, 10}] = {{0, 10}, PinKind::notBefore, key, std::nullopt, day, ""};
  orchard.closures[{0, 11}] = {{0, 11}, {0, 1}, day, plusDays(day, 1), 1440, "etiqueta"};
  for (const int order : {1, 2})
    orchard.plannedJobs[{day, crew.id, order}] = {
        {day, crew.id, order}, key, parseRows("1-4, 7").rows, 390 + order, 480, 6};
}

void addWorkingDay(Orchard& orchard) {
  Settings& settings = orchard.settings;
  settings.workdays = {false, true, true, true, true, true, true};
  settings.startMinute = 345;
  settings.moveMinutes = 15;
  settings.moveMinutesPerKm = 4;
  settings.keepTogether = 80;
  settings.gangAtMost = 5;
  Block& creek = orchard.blocks.at({0, 1});
  creek.workersAtMost = 12;
  creek.latitude = -39.1234567;
  creek.longitude = 0.1 + 0.2;
}

}  // namespace

TemporaryFolder::TemporaryFolder() {
  std::string pattern = "/tmp/topwire-test-XXXXXX";
  TOPWIRE_REQUIRE(mkdtemp(pattern.data()) != nullptr);
  path_ = pattern;
}

TemporaryFolder::~TemporaryFolder() {
  std::error_code code;
  std::filesystem::permissions(path_, std::filesystem::perms::owner_all, code);
  std::filesystem::remove_all(path_, code);
}

std::set<std::string> TemporaryFolder::names() const {
  std::set<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator{path_})
    names.insert(entry.path().filename().string());
  return names;
}

std::string bytesOf(const std::string& path) {
  std::ifstream file{path, std::ios::binary};
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

void writeBytes(const std::string& path, const std::string& bytes) {
  std::ofstream{path, std::ios::binary} << bytes;
}

std::string inChild(const std::function<std::string()>& work) {
  int ends[2];
  TOPWIRE_REQUIRE(pipe(ends) == 0);
  const pid_t child = fork();
  TOPWIRE_REQUIRE(child >= 0);
  if (child == 0) answerFromChild(ends[1], work);
  close(ends[1]);
  std::string answer = readAll(ends[0]);
  close(ends[0]);
  waitpid(child, nullptr, 0);
  return answer;
}

std::string outcome(const Done& done) {
  return done ? "done" : inEnglish(done.error());
}

std::string outcome(const Result<OpenedOrchard>& opened) {
  return opened ? "done" : inEnglish(opened.error());
}

Orchard orchardOfEverything() {
  Orchard orchard = orchardOfOne(southernSettings(), dayOf(2024, 2, 29));
  orchard.settings.normals.minimum[0] = 0.1 + 0.2;  // no short decimal
  orchard.settings.firstLeafDelayDays = 7;
  Block& creek = orchard.blocks.at({0, 1});
  creek.name = "Río 'Ñandú'";
  creek.rowLength = Length::inches(1);
  creek.elevation = Length::metres(-3);
  creek.minimumCorrection = -1.7;
  creek.maximumCorrection = 0.1 + 0.2;
  creek.wires = {Length::inches(30), Length::centimetres(152)};
  creek.postSpacing = Length::metres(10);
  creek.notes = "dos\nlíneas; \"citas\"";
  Planting& gala = orchard.plantings.at({0, 2});
  gala.vigour = Vigour::strong;
  gala.vigourReason = "brotes de 60 cm";
  Planting replant = gala;
  replant.id = {0xffffffffffffffff, 0xfedcba9876543210};
  replant.code = "p3";
  replant.kind = PlantingKind::replant;
  replant.rows = parseRows("1-2, 9").rows;
  replant.treesPerRow.reset();
  replant.trees = 7;
  replant.vigour.reset();
  orchard.plantings[replant.id] = replant;
  orchard.crews[{0, 3}] = {{0, 3}, "Cuadrilla Ñ", 6, 7.75};
  orchard.observations[{0, 4}] = {{0, 4}, {0, 2}, 53, dayOf(2027, 9, 20), "Ana"};
  const TaskKey key{{0, 2}, "leader-tie", {2027}, 2};
  addTicks(orchard, key);
  orchard.marks[key] = {
      key, DaySpan{dayOf(2027, 9, 1), dayOf(2027, 9, 9)}, "lluvia", "", 0};
  const TaskKey byHand{{0, 2}, "by-hand", {2027}, 1};
  orchard.marks[byHand] = {byHand, std::nullopt, "", "Mend wire", 4};
  orchard.pastStages[{0, 6}] = {{0, 6}, "Gala", 65, dayOf(2019, 10, 2)};
  orchard.measurements[{0, 7}] = {{0, 7},
                                  {0, 2},
                                  Measure::trunkGirth,
                                  dayOf(2027, 7, 1),
                                  {120'000'000, 0, 99},
                                  "Ana",
                                  "60 cm"};
  orchard.measurements[{0, 8}] = {
      {0, 8}, {0, 2}, Measure::missingTrees, dayOf(2027, 7, 2), {3}, "", ""};
  orchard.targets[{{0, 2}, {2027}}] = {
      {{0, 2}, {2027}}, Vigour::weak, "brotes de 10 cm", 15, 20, "menos"};
  orchard.targets[{{0, 2}, {2028}}] = {
      {{0, 2}, {2028}}, std::nullopt, "", std::nullopt, std::nullopt, ""};
  orchard.closes[{2026}] = {{2026}, dayOf(2027, 6, 3), "Ana"};
  orchard.programmes["mío"] = {"mío", "format = 1\n# 'así'"};
  addWeather(orchard);
  addCrewDays(orchard, key);
  addWorkingDay(orchard);
  orchard.tasks[key] = {key, dayOf(2027, 9, 1), dayOf(2027, 9, 9), std::nullopt, true};
  return orchard;
}

std::vector<DatedWeather> longRecord(int days) {
  std::mt19937 random{1876};
  const auto hundredths = [](double figure) { return std::round(figure * 100) / 100; };
  const auto any = [&random](double most) {
    return most * static_cast<double>(random() % 1000) / 1000;
  };
  std::vector<DatedWeather> record;
  record.reserve(static_cast<std::size_t>(days));
  for (int i = 0; i < days; ++i) {
    const Day day = plusDays(dayOf(1876, 1, 1), i);
    const double warmth = 10 - 12 * std::cos(2 * std::numbers::pi * i / 365.25);
    const double minimum = warmth - 3 - any(8);
    record.push_back({day,
                      {hundredths(minimum),
                       hundredths(minimum + 4 + any(12)),
                       hundredths(random() % 3 == 0 ? any(20) : 0),
                       WeatherSource::measured}});
  }
  return record;
}

}  // namespace topwire::testing
