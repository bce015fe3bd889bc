#pragma once

#include "core/base/phrase.h"

#include <nlohmann/json.hpp>

namespace topwire {

/// A sentence with its values, each as what it is. Reading throws what the library does,
/// or std::runtime_error for a day that is none.
nlohmann::json toJson(const Sentence& sentence);
void read(const nlohmann::json& json, Sentence& sentence);

}  // namespace topwire
