#include "core/crews/crew_pins.h"

#include "core/crews/crew_hands.h"

#include <algorithm>
#include <tuple>

namespace topwire {

namespace {

class Pinning {
public:
  Pinning(CrewQuestion& question, const Orchard& orchard)
      : question_(&question), orchard_(&orchard) {}

  void hold(const Pin& pin) {
    if (const auto job = question_->jobOf(pin.task))
      jobAt(*job).opens = std::max(jobAt(*job).opens, question_->indexOf(pin.day));
  }

  void assign(const Pin& pin) {
    const int day = question_->indexOf(pin.day);
    if (!pin.crew || day < 0 || day >= question_->problem.days) return;
    const auto job = question_->jobOf(pin.task);
    if (!job)
      return note(
          pin,
          phrase("Crew plan",
                 "%1 is pinned to work on %2 that is done, over or not open; take "
                 "the pin out."));
    if (!jobAt(*job).isOpenOn(day))
      return note(pin,
                  phrase("Crew plan",
                         "%1 is pinned on %2 to work that is not open then; take the pin "
                         "out or move it."));
    if (!pinGangs(*pin.crew, *job, day))
      note(pin,
           phrase("Crew plan",
                  "%1 is pinned on %2 but has nobody there that day, or not the skill; "
                  "take the pin out."));
  }

private:
  CrewJob& jobAt(int job) {
    return question_->problem.jobs[static_cast<std::size_t>(job)];
  }

  bool pinGangs(CrewId crew, int job, int day) {
    CrewProblem& problem = question_->problem;
    const auto at = static_cast<std::size_t>(day);
    bool any = false;
    for (std::size_t gang = 0; gang < problem.gangs.size(); ++gang) {
      const Gang& one = problem.gangs[gang];
      if (!isOf(one, crew) || one.workers[at] == 0 || one.length[at] == 0) continue;
      if (!one.skills[static_cast<std::size_t>(jobAt(job).skill)]) continue;
      problem.pins.push_back({static_cast<int>(gang), job, day});
      any = true;
    }
    return any;
  }

  bool isOf(const Gang& gang, CrewId crew) const {
    const auto index = static_cast<std::size_t>(gang.crew);
    return index < question_->crews.size() && question_->crews[index] == crew;
  }

  void note(const Pin& pin, Phrase what) {
    const auto crew = orchard_->crews.find(*pin.crew);
    const std::string name = crew == orchard_->crews.end() ? "?" : crew->second.name;
    question_->notes.push_back({what, {name, pin.day}});
  }

  CrewQuestion* question_;
  const Orchard* orchard_;
};

}  // namespace

void addPins(CrewQuestion& question, const Orchard& orchard) {
  Pinning pinning{question, orchard};
  for (const auto& [id, pin] : orchard.pins)
    if (pin.kind == PinKind::notBefore) pinning.hold(pin);
  for (const auto& [id, pin] : orchard.pins)
    if (pin.kind == PinKind::crewToJob) pinning.assign(pin);
  // In an order that hangs on no random id.
  std::ranges::sort(question.problem.pins, {}, [](const GangPin& pin) {
    return std::tuple{pin.day, pin.gang, pin.job};
  });
}

}  // namespace topwire
