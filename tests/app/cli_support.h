#pragma once

#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <map>
#include <string>
#include <vector>

namespace topwire::testing {

using Words = std::vector<std::string>;
using Row = std::map<std::string, std::string>;

/// What the program answered.
struct Said {
  int code = -1;
  std::string out;
  std::string err;
};

/// Runs the real topwire-cli; `extra` goes on top of this process's environment.
Said cli(const Words& words, const std::map<std::string, std::string>& extra = {});
/// Its standard output goes to that file or device instead of into `out`.
Said cliInto(const std::string& output, const Words& words);

/// The rows of a CSV by column.
std::vector<Row> rowsOf(const std::string& csv);
std::string firstLine(const std::string& text);

void write(const std::string& path, const std::string& text);
std::string contentOf(const std::string& path);
bool exists(const std::string& path);

/// One sentence on standard error, nothing on standard output.
void expectRefused(const Said& said, int code, const std::string& part);

/// An orchard of two blocks: "Creek 1" of 12 rows of Gala in fourth leaf, "Quarry" of 6
/// rows of Fuji in fifth leaf.
extern const char* const orchardText;

/// That orchard in a file of its own folder, looked at on 6 April 2027.
class CliTest : public ::testing::Test {
protected:
  void SetUp() override;

  /// A path in the folder.
  std::string in(const std::string& name) const;
  /// The words with the fixed day at their end.
  Said onTheDay(Words words) const;
  std::vector<Row> tasks(const Words& more = {}) const;
  Row task(const std::string& text) const;
  Said tick(const std::string& rows) const;

  QTemporaryDir dir_;
  std::string file_;
  std::string pruning_ = "creek-1-gala:dormant-pruning:2027:1";
};

}  // namespace topwire::testing
