#include "storage/backups.h"

#include "core/calendar/day.h"
#include "storage/file_steps.h"

#include <algorithm>
#include <filesystem>
#include <vector>

namespace topwire {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t copiesKept = 5;
constexpr std::size_t dayLength = 10;

/// "creek 2027-04-06 000123.topwire"
std::string copyName(const fs::path& file, Day day, std::int64_t number) {
  std::string digits = std::to_string(number);
  digits.insert(0, 6 - std::min<std::size_t>(6, digits.size()), '0');
  return file.stem().string() + ' ' + isoText(day) + ' ' + digits
         + file.extension().string();
}

/// The day in a copy's name; nothing for a file that is none of ours.
std::optional<Day> dayIn(const fs::path& copy, const fs::path& file) {
  const std::string name = copy.filename().string();
  const std::string start = file.stem().string() + ' ';
  if (!name.starts_with(start) || copy.extension() != file.extension())
    return std::nullopt;
  return parseDay(std::string_view{name}.substr(start.size(), dayLength));
}

struct Copy {
  Day day;
  fs::path path;
};

/// Newest first: names sort by day, then by number.
std::vector<Copy> copiesIn(const fs::path& folder, const fs::path& file) {
  std::vector<Copy> copies;
  for (const auto& entry : fs::directory_iterator{folder})
    if (const auto day = dayIn(entry.path(), file))
      copies.push_back({*day, entry.path()});
  std::ranges::sort(copies, std::greater<>{}, &Copy::path);
  return copies;
}

/// One copy a day, and no more than are kept.
void dropOldCopies(const fs::path& folder, const fs::path& file) {
  std::size_t kept = 0;
  std::optional<Day> last;
  for (const Copy& copy : copiesIn(folder, file)) {
    const bool surplus = kept == copiesKept || last == copy.day;
    last = copy.day;
    if (surplus)
      fs::remove(copy.path);
    else
      ++kept;
  }
}

void makeBackup(Connection& connection, const fs::path& file) {
  const std::int64_t number =
      connection.number("SELECT COALESCE(MAX(number), 0) FROM journal");
  if (number == 0) return;
  const std::int64_t at =
      connection.number("SELECT at FROM journal ORDER BY number DESC LIMIT 1");
  const Day day = plusDays(Day{}, static_cast<int>(at / 86'400));
  const fs::path folder = backupFolderOf(file.string());
  fs::create_directory(folder);
  const fs::path copy = folder / copyName(file, day, number);
  if (fs::exists(copy)) return;
  writeWhole(copy.string(), [&](const std::string& path) { connection.copyTo(path); });
  dropOldCopies(folder, file);
}

}  // namespace

std::optional<Sentence> keepBackups(Connection& connection, const std::string& path) {
  try {
    makeBackup(connection, fs::path{path});
    return std::nullopt;
  } catch (const std::exception&) {
    return Sentence{
        phrase("File",
               "No backup of %1 could be made in %2. Check that there is room "
               "and that you may write there."),
        {path, backupFolderOf(path)}};
  }
}

std::string backupFolderOf(const std::string& path) {
  const fs::path file{path};
  return (file.parent_path() / (file.stem().string() + " backups")).string();
}

}  // namespace topwire
