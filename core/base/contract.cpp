#include "core/base/contract.h"

#include <cstdio>
#include <cstdlib>

namespace topwire {

void contractBroken(const char* condition, const char* file, int line) {
  std::fprintf(stderr, "%s:%d: contract broken: %s\n", file, line, condition);
  std::abort();
}

}  // namespace topwire
