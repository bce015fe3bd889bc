#include "core/edit/weather_deeds.h"
#include "core/edit/workbench.h"
#include "storage/orchard_file.h"
#include "tests/storage/file_support.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <functional>

namespace topwire {
namespace {

constexpr int rounds = 7;

/// Milliseconds that `work` takes: the middle one of several rounds.
void report(const char* what, const std::function<double()>& work) {
  std::array<double, rounds> times{};
  for (double& time : times) time = work();
  std::ranges::sort(times);
  std::printf("%-44s %7.1f ms\n", what, times[rounds / 2]);
}

double timed(const std::function<void()>& work) {
  const auto start = std::chrono::steady_clock::now();
  work();
  const std::chrono::duration<double, std::milli> taken =
      std::chrono::steady_clock::now() - start;
  return taken.count();
}

/// A file with the record in it, made through the journal.
class ImportBench {
public:
  void run();

private:
  double perform();
  double open(Access access);
  double openWithHistory();

  testing::TemporaryFolder folder_;
  std::string path_ = folder_.file("creek.topwire");
  SqliteOrchardFiles files_;
  Orchard orchard_ = testing::orchardOfEverything();
  std::vector<DatedWeather> record_ = testing::longRecord();
  Change change_ = *importWeather(orchard_, record_, "station.csv");
};

Workbench benchOver(const OpenedOrchard& opened) {
  return {opened.orchard, *opened.journal, [] { return 0; }, IdSource::countingFrom(1)};
}

double ImportBench::perform() {
  std::filesystem::remove(path_);
  const auto opened = files_.create(path_, orchard_);
  Workbench bench = benchOver(*opened);
  return timed([&] { (void)bench.perform(change_); });
}

double ImportBench::open(Access access) {
  return timed([&] { (void)files_.open(path_, access); });
}

double ImportBench::openWithHistory() {
  return timed([&] {
    const auto opened = files_.open(path_, Access::write);
    const Workbench bench = benchOver(*opened);
  });
}

void ImportBench::run() {
  const std::string json = toJson(change_);
  std::printf("%zu days in %zu months, %.2f MB of JSON\n",
              record_.size(),
              change_.edits.size(),
              static_cast<double>(json.size()) / 1e6);
  report("merge into an orchard without weather",
         [&] { return timed([&] { (void)mergeWeather(orchard_, record_); }); });
  report("write the change as JSON",
         [&] { return timed([&] { (void)toJson(change_); }); });
  report("read it back", [&] { return timed([&] { (void)changeFromJson(json); }); });
  report("perform: journal, rows, commit, apply", [&] { return perform(); });
  // The first opening keeps a backup.
  open(Access::write);
  report("open to look", [&] { return open(Access::look); });
  report("open to write", [&] { return open(Access::write); });
  report("open to write, with its history", [&] { return openWithHistory(); });
  Orchard known = orchard_;
  apply(known, change_);
  report("merge again, all of it known",
         [&] { return timed([&] { (void)mergeWeather(known, record_); }); });
  std::printf("file %.1f MB\n",
              static_cast<double>(std::filesystem::file_size(path_)) / 1e6);
}

}  // namespace
}  // namespace topwire

int main() {
  topwire::ImportBench{}.run();
}
