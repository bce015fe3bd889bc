#pragma once

#include "core/edit/orchard_files.h"
#include "core/orchard/orchard.h"

#include <functional>
#include <set>
#include <string>
#include <vector>

namespace topwire::testing {

/// A folder of its own for each test, gone with everything in it at the end.
class TemporaryFolder {
public:
  TemporaryFolder();
  ~TemporaryFolder();
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;

  const std::string& path() const { return path_; }

  std::string file(const std::string& name) const { return path_ + '/' + name; }

  std::set<std::string> names() const;

private:
  std::string path_;
};

std::string bytesOf(const std::string& path);
void writeBytes(const std::string& path, const std::string& bytes);

/// What `work` answers in a process of its own, which ends without tidying up. The text
/// ends where the process was killed.
std::string inChild(const std::function<std::string()>& work);

/// The problem's sentence in English, or "done".
std::string outcome(const Done& done);
std::string outcome(const Result<OpenedOrchard>& opened);

/// An orchard with records of every kind, values at their edges and text in Spanish. Its
/// first tick takes back the second.
Orchard orchardOfEverything();

/// An invented station's record without gaps, from 1 January 1876: 54,750 days are 150
/// years. Figures to 0.01, as files are read.
std::vector<DatedWeather> longRecord(int days = 54'750);

}  // namespace topwire::testing
