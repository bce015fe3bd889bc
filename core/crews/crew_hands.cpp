#include "core/crews/crew_hands.h"

#include "core/orchard/working_days.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr int firstBearingLeaf = 3;
constexpr int pickingDays = 14;
constexpr Seconds hour = 3600;

/// Of the usual hours of a day, in percent.
int percentOf(const Orchard& orchard, Day day, const Supposition& supposed) {
  const bool lost = std::ranges::any_of(
      supposed.lost, [day](const DaySpan& span) { return span.contains(day); });
  return lost ? 0 : workablePercent(orchard, day);
}

Seconds lengthOn(const Crew& crew, int percent) {
  return static_cast<Seconds>(std::lround(crew.hoursPerDay * hour)) * percent / 100;
}

std::vector<bool> skillsOf(const Crew& crew, const std::vector<std::string>& skills) {
  std::vector<bool> has;
  has.reserve(skills.size());
  for (const std::string& skill : skills) has.push_back(canDo(crew, skill));
  return has;
}

/// One gang of a crew, without its days.
Gang gangFor(const CrewQuestion& question, const Crew& crew, int crewIndex) {
  Gang gang;
  gang.crew = crewIndex;
  gang.skills = skillsOf(crew, question.skills);
  return gang;
}

class GangDays {
public:
  GangDays(CrewQuestion& question, const Orchard& orchard, const Outlooks& outlooks)
      : question_(&question), orchard_(&orchard), outlooks_(&outlooks) {}

  void add(const Crew& crew, int crewIndex, const Supposition& supposed) {
    const int gangs = gangsOf(*orchard_, crew);
    for (int n = 0; n < gangs; ++n) {
      Gang gang = gangFor(*question_, crew, crewIndex);
      for (int day = 0; day < question_->problem.days; ++day)
        addDay(gang, crew, gangs, n, day, supposed);
      question_->problem.gangs.push_back(std::move(gang));
    }
  }

private:
  void addDay(Gang& gang,
              const Crew& crew,
              int gangs,
              int n,
              int index,
              const Supposition& supposed) const {
    const Day day = question_->dayOf(index);
    const Seconds length = lengthOn(crew, percentOf(*orchard_, day, supposed));
    const int workers = shareOf(workersOn(*orchard_, crew, day), gangs, n);
    gang.workers.push_back(workers);
    gang.length.push_back(length);
    const bool keeps = crew.youngMinutes > 0 && isPickingDay(*orchard_, *outlooks_, day);
    const Seconds kept = keeps ? Seconds{crew.youngMinutes} * 60 / gangs : 0;
    gang.keptForYoung.push_back(std::min(kept, workers * length));
  }

  CrewQuestion* question_;
  const Orchard* orchard_;
  const Outlooks* outlooks_;
};

/// People who are only supposed: able to do anything, there on every working day.
Gang supposedGang(const CrewQuestion& question, int workers) {
  Gang gang;
  gang.crew = static_cast<int>(question.crews.size());
  gang.skills.assign(question.skills.size(), true);
  for (const Seconds length : question.problem.dayLength)
    gang.workers.push_back(length > 0 ? workers : 0);
  gang.length = question.problem.dayLength;
  gang.keptForYoung.assign(gang.workers.size(), 0);
  return gang;
}

}  // namespace

int workersOn(const Orchard& orchard, const Crew& crew, Day day) {
  const auto turned = orchard.turnouts.find({crew.id, day});
  if (turned != orchard.turnouts.end()) return turned->second.workers;
  return isOff(crew, day) ? 0 : crew.workers;
}

int shareOf(int workers, int gangs, int gang) {
  return workers / gangs + (gang < workers % gangs ? 1 : 0);
}

int gangsOf(const Orchard& orchard, const Crew& crew) {
  const int most = std::max(1, orchard.settings.gangAtMost);
  return std::max(1, (crew.workers + most - 1) / most);
}

std::vector<Seconds> dayLengths(const Orchard& orchard,
                                Day first,
                                int days,
                                const Supposition& supposed) {
  std::vector<Seconds> lengths(static_cast<std::size_t>(days), 0);
  for (int index = 0; index < days; ++index) {
    const int percent = percentOf(orchard, plusDays(first, index), supposed);
    Seconds& longest = lengths[static_cast<std::size_t>(index)];
    for (const auto& [id, crew] : orchard.crews)
      longest = std::max(longest, lengthOn(crew, percent));
  }
  return lengths;
}

bool isPickingDay(const Orchard& orchard, const Outlooks& outlooks, Day day) {
  const Season season = seasonOf(day, orchard.settings.hemisphere());
  for (const auto& [id, outlook] : outlooks) {
    const auto planting = orchard.plantings.find(id);
    if (planting == orchard.plantings.end()) continue;
    if (leafOf(orchard, planting->second, season) < firstBearingLeaf) continue;
    const StageEstimate* harvest = outlook.find(stages::harvest);
    if (harvest == nullptr) continue;
    if (DaySpan{harvest->date, plusDays(harvest->date, pickingDays)}.contains(day))
      return true;
  }
  return false;
}

void addGangs(CrewQuestion& question,
              const Orchard& orchard,
              const Outlooks& outlooks,
              const Supposition& supposed) {
  GangDays days{question, orchard, outlooks};
  int index = 0;
  for (const CrewId id : question.crews)
    days.add(orchard.crews.at(id), index++, supposed);
  if (supposed.workersMore > 0)
    question.problem.gangs.push_back(supposedGang(question, supposed.workersMore));
}

}  // namespace topwire
