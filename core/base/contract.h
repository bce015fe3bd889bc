#pragma once

namespace topwire {

/// Ends the program with the condition and the place, in release builds too. A broken
/// contract is a bug of ours; what the world may do wrong is a Problem instead.
[[noreturn]] void contractBroken(const char* condition, const char* file, int line);

}  // namespace topwire

#define TOPWIRE_REQUIRE(condition) \
  (static_cast<bool>(condition)    \
       ? void(0)                   \
       : ::topwire::contractBroken(#condition, __FILE__, __LINE__))
