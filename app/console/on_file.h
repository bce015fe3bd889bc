#pragma once

#include "app/console/commands.h"

#include <functional>
#include <string>

namespace topwire {

/// Opens the file without its writing place and answers what `ask` makes of it.
Answer askFile(Surroundings& surroundings,
               const Arguments& arguments,
               const std::function<Answer(const OpenedOrchard&)>& ask);

/// Opens the file for writing, lets `deed` act, plans anew as of today, and answers the
/// deed's sentence with a line on what the new plan moved.
Answer changeFile(Surroundings& surroundings,
                  const Arguments& arguments,
                  const std::function<Checked<Sentence>(Workbench&)>& deed);

/// The change performed, and its name.
Checked<Sentence> perform(Workbench& bench, const Checked<Change>& change);

/// The task in the seasons kept planned today, or in the one its text names.
Result<Task> findTask(const Orchard& orchard,
                      const Trade& trade,
                      const std::string& text,
                      Day today);
Words titleIn(const Orchard& orchard, const Trade& trade, const Task& task);
Result<const Block*> findBlock(const Orchard& orchard, const std::string& name);
Result<const Planting*> findPlanting(const Orchard& orchard, const std::string& code);
/// A day for a record: the one given, else today; none that is still to come.
Result<Day> dayOfRecord(const Arguments& arguments);

Result<std::string> textOfFile(const std::string& path);

}  // namespace topwire
