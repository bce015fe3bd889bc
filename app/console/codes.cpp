#include "app/console/arguments.h"

namespace topwire {

std::string codeOf(TaskState state) {
  switch (state) {
    case TaskState::waiting:
      return "waiting";
    case TaskState::open:
      return "open";
    case TaskState::closing:
      return "closing";
    case TaskState::late:
      return "late";
    case TaskState::lapsed:
      return "lapsed";
    case TaskState::done:
      return "done";
    case TaskState::setAside:
      break;
  }
  return "set-aside";
}

std::string codeOf(Vigour vigour) {
  if (vigour == Vigour::weak) return "weak";
  return vigour == Vigour::moderate ? "moderate" : "strong";
}

std::string codeOf(PlantingKind kind) {
  if (kind == PlantingKind::main) return "main";
  return kind == PlantingKind::pollinizer ? "pollinizer" : "replant";
}

std::string codeOf(WeatherSource source) {
  if (source == WeatherSource::forecast) return "forecast";
  return source == WeatherSource::typed ? "typed" : "measured";
}

std::string codeOf(StageKind kind) {
  if (kind == StageKind::observed) return "observed";
  return kind == StageKind::expected ? "expected" : "by-offset";
}

}  // namespace topwire
