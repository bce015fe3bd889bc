#pragma once

#include "core/base/result.h"
#include "storage/file_steps.h"
#include "storage/record_rows.h"
#include "storage/sqlite/sqlite_error.h"

#include <string>
#include <utility>

namespace topwire {

/// What went wrong with the file at `path`, as a sentence for a person.
Problem problemOf(const std::string& path, const SqliteError& error);
Problem problemOf(const std::string& path, const FileRefused& refused);
Problem problemOf(const std::string& path, const UnreadableRow& row);
Problem problemOf(const std::string& path, const StaleRecord& record);
Problem damaged(const std::string& path, const std::string& detail);

/// The public edge of storage: nothing thrown inside gets past it.
template <class Work>
auto guarded(const std::string& path, Work&& work) -> decltype(work()) {
  try {
    return std::forward<Work>(work)();
  } catch (const SqliteError& error) {
    return tl::unexpected{problemOf(path, error)};
  } catch (const FileRefused& refused) {
    return tl::unexpected{problemOf(path, refused)};
  } catch (const UnreadableRow& row) {
    return tl::unexpected{problemOf(path, row)};
  } catch (const StaleRecord& record) {
    return tl::unexpected{problemOf(path, record)};
  } catch (const std::exception& other) {
    return tl::unexpected{damaged(path, other.what())};
  }
}

}  // namespace topwire
