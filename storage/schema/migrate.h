#pragma once
#include <string>
#include <vector>

namespace topwire {
const std::vector<std::string>& schemaSteps();
}
