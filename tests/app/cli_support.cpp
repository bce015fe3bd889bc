#include "tests/app/cli_support.h"

#include <QFile>
#include <QProcess>
#include <QRegularExpression>

#include <gmock/gmock.h>

#include <algorithm>

namespace topwire::testing {

using ::testing::HasSubstr;

const char* const orchardText = R"([orchard]
name = "Alder Bend"
latitude = 46.9
elevation = "1620 ft"
units = "us-customary"
station = "Ellensburg"
records-from = 2027-01-01

[[block]]
name = "Creek 1"
rows = "1-12"
row-spacing = 11
row-length = 300

[[block.planting]]
cultivar = "Gala"
rootstock = "M.9 T337"
planted = 2024-04-17
tree-spacing = 3

[[block]]
name = "Quarry"
rows = "1-6"
row-spacing = 12
row-length = 300

[[block.planting]]
cultivar = "Fuji"
rootstock = "M.9 T337"
planted = 2023-04-17
tree-spacing = 3
)";

namespace {

QStringList inQt(const Words& words) {
  QStringList list;
  for (const std::string& word : words) list << QString::fromStdString(word);
  return list;
}

Said run(QProcess& process, const Words& words) {
  process.start(QStringLiteral(TOPWIRE_CLI), inQt(words));
  EXPECT_TRUE(process.waitForFinished(60'000));
  EXPECT_EQ(process.exitStatus(), QProcess::NormalExit);
  return {process.exitCode(),
          process.readAllStandardOutput().toStdString(),
          process.readAllStandardError().toStdString()};
}

/// The fields of one line without line ends inside quotes.
std::vector<std::string> fieldsOf(const QString& line) {
  static const QRegularExpression field{
      QStringLiteral("(?:^|,)(?:\"((?:[^\"]|\"\")*)\"|([^,]*))")};
  std::vector<std::string> values;
  for (auto match = field.globalMatch(line); match.hasNext();) {
    const auto one = match.next();
    values.push_back((one.captured(1) + one.captured(2)).toStdString());
  }
  return values;
}

}  // namespace

Said cli(const Words& words, const std::map<std::string, std::string>& extra) {
  QProcess process;
  auto environment = QProcessEnvironment::systemEnvironment();
  for (const auto& [name, value] : extra)
    environment.insert(QString::fromStdString(name), QString::fromStdString(value));
  process.setProcessEnvironment(environment);
  return run(process, words);
}

Said cliInto(const std::string& output, const Words& words) {
  QProcess process;
  process.setStandardOutputFile(QString::fromStdString(output));
  return run(process, words);
}

std::vector<Row> rowsOf(const std::string& csv) {
  std::vector<Row> rows;
  auto lines = QString::fromStdString(csv).split(QLatin1Char{'\n'}, Qt::SkipEmptyParts);
  if (lines.isEmpty()) return rows;
  const auto columns = fieldsOf(lines.takeFirst());
  for (const QString& line : lines) {
    const auto values = fieldsOf(line);
    EXPECT_EQ(values.size(), columns.size()) << line.toStdString();
    Row& row = rows.emplace_back();
    for (std::size_t i = 0; i < std::min(values.size(), columns.size()); ++i)
      row[columns[i]] = values[i];
  }
  return rows;
}

std::string firstLine(const std::string& text) {
  return text.substr(0, text.find('\n'));
}

void write(const std::string& path, const std::string& text) {
  QFile file{QString::fromStdString(path)};
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(QByteArray::fromStdString(text));
}

std::string contentOf(const std::string& path) {
  QFile file{QString::fromStdString(path)};
  EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path;
  return file.readAll().toStdString();
}

bool exists(const std::string& path) {
  return QFile::exists(QString::fromStdString(path));
}

/// One sentence on standard error, nothing on standard output.
void expectRefused(const Said& said, int code, const std::string& part) {
  EXPECT_EQ(said.code, code) << said.err;
  EXPECT_EQ(said.out, "");
  EXPECT_THAT(said.err, HasSubstr(part));
  EXPECT_EQ(std::ranges::count(said.err, '\n'), 1) << said.err;
  EXPECT_TRUE(said.err.ends_with(".\n")) << said.err;
}

void CliTest::SetUp() {
  file_ = in("alder.topwire");
  write(in("orchard.toml"), orchardText);
  const Said made = onTheDay({"new", file_, "--from", in("orchard.toml")});
  ASSERT_EQ(made.code, 0) << made.err;
  ASSERT_THAT(made.out, HasSubstr("Alder Bend"));
}

std::string CliTest::in(const std::string& name) const {
  return dir_.filePath(QString::fromStdString(name)).toStdString();
}

Said CliTest::onTheDay(Words words) const {
  words.insert(words.end(), {"--today", "2027-04-06"});
  return cli(words);
}

std::vector<Row> CliTest::tasks(const Words& more) const {
  Words words{"tasks", file_, "--csv"};
  words.insert(words.end(), more.begin(), more.end());
  const Said said = onTheDay(words);
  EXPECT_EQ(said.code, 0) << said.err;
  return rowsOf(said.out);
}

Row CliTest::task(const std::string& text) const {
  for (const Row& row : tasks())
    if (row.at("task") == text) return row;
  ADD_FAILURE() << "no task " << text;
  return {};
}

Said CliTest::tick(const std::string& rows) const {
  return onTheDay({"tick",
                   file_,
                   pruning_,
                   "--rows",
                   rows,
                   "--minutes",
                   "90",
                   "--by",
                   "Heron",
                   "--day",
                   "2027-04-05"});
}

}  // namespace topwire::testing
