#pragma once

#include "app/console/arguments.h"

#include <CLI/CLI.hpp>

#include <string>

namespace topwire {

/// Thrown to the command line's parser, which ends the reading; caught in commands.cpp.
CLI::ValidationError notUsable(Phrase why, const std::string& typed);

Day readDay(const std::string& typed);
double readFigure(const std::string& typed);

template <class T, class Read>
CLI::Option* takeRead(
    CLI::App& command, const char* name, T& into, Read read, const char* help) {
  return command.add_option_function<std::string>(
      name, [&into, read](const std::string& typed) { into = read(typed); }, help);
}

}  // namespace topwire
