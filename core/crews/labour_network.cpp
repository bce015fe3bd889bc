#include "core/crews/labour_network.h"

#include <algorithm>
#include <map>

namespace topwire {

namespace {

std::vector<bool> skillsOf(const Gang& gang, int skills) {
  std::vector<bool> has(static_cast<std::size_t>(skills));
  for (int skill = 0; skill < skills; ++skill)
    has[static_cast<std::size_t>(skill)] = gang.hasSkill(skill);
  return has;
}

/// What one job can do in a range, and at the least cost.
struct Opening {
  Seconds room = 0;
  Loss cost = 0;
};

Opening openingOf(const CrewProblem& problem, const CrewJob& job, DayRange range) {
  Opening opening;
  const int last = std::min(range.last, job.last);
  for (int day = std::max(range.first, job.opens); day <= last; ++day) {
    const Seconds room = problem.roomFor(job, day);
    if (room > 0 && opening.room == 0) opening.cost = job.lateOn(day);
    opening.room += room;
  }
  return opening;
}

}  // namespace

std::vector<GangClass> gangClasses(const CrewProblem& problem,
                                   const std::vector<DayRange>& ranges) {
  std::map<std::vector<bool>, GangClass> classes;
  for (const Gang& gang : problem.gangs) {
    auto skills = skillsOf(gang, problem.skills);
    GangClass& same = classes[skills];
    same.skills = std::move(skills);
    same.capacity.resize(ranges.size());
    same.kept.resize(ranges.size());
    for (std::size_t range = 0; range < ranges.size(); ++range)
      for (int day = ranges[range].first; day <= ranges[range].last; ++day) {
        const Seconds all = gang.workersOn(day) * problem.lengthOf(gang, day);
        same.capacity[range] += all;
        same.kept[range] += std::clamp<Seconds>(gang.keptOn(day), 0, all);
      }
  }
  std::vector<GangClass> found;
  for (auto& [skills, same] : classes) found.push_back(std::move(same));
  return found;
}

int LabourNetwork::skillNode(int skill, int range, bool young) const {
  return (young ? firstYoung_ : firstSkill_) + skill * ranges + range;
}

namespace {

class NetworkMaker {
public:
  NetworkMaker(const CrewProblem& problem,
               const std::vector<DayRange>& ranges,
               LabourNetwork& network)
      : problem_{problem}
      , ranges_{ranges}
      , network_{network}
      , classes_{gangClasses(problem, ranges)} {}

  void make(int firstSkill, bool split);
  bool anyKept() const;

private:
  void jobArcs(int job, bool split);
  void skillArcs(int firstClass, bool young);
  void classArcs(int firstClass, int firstWhole);

  int count() const { return static_cast<int>(ranges_.size()); }

  const CrewProblem& problem_;
  const std::vector<DayRange>& ranges_;
  LabourNetwork& network_;
  std::vector<GangClass> classes_;
};

bool NetworkMaker::anyKept() const {
  return std::ranges::any_of(classes_, [](const GangClass& gangs) {
    return std::ranges::any_of(gangs.kept, [](Seconds kept) { return kept > 0; });
  });
}

void NetworkMaker::jobArcs(int job, bool split) {
  const CrewJob& asked = problem_.jobs[static_cast<std::size_t>(job)];
  const Seconds work = asked.work();
  for (int range = 0; range < count(); ++range) {
    const DayRange days = ranges_[static_cast<std::size_t>(range)];
    if (days.last < asked.opens || days.first > asked.last) continue;
    const Opening opening = openingOf(problem_, asked, days);
    if (opening.room == 0 || opening.cost > asked.leftUndone) continue;
    network_.jobArcs.push_back({static_cast<int>(network_.arcs.size()), job, range});
    const int to = network_.skillNode(asked.skill, range, split && asked.young);
    network_.arcs.push_back({job, to, std::min(opening.room, work), opening.cost});
  }
  network_.undoneArc.push_back(static_cast<int>(network_.arcs.size()));
  network_.arcs.push_back({job, network_.sink, work, asked.leftUndone});
}

void NetworkMaker::skillArcs(int firstClass, bool young) {
  for (int skill = 0; skill < problem_.skills; ++skill)
    for (int range = 0; range < count(); ++range)
      for (std::size_t gangs = 0; gangs < classes_.size(); ++gangs) {
        const Seconds room = classes_[gangs].capacity[static_cast<std::size_t>(range)];
        if (!classes_[gangs].skills[static_cast<std::size_t>(skill)] || room == 0)
          continue;
        network_.arcs.push_back({network_.skillNode(skill, range, young),
                                 firstClass + static_cast<int>(gangs) * count() + range,
                                 room,
                                 0});
      }
}

/// To the sink; for all but young trees, through a node that leaves out what is kept.
void NetworkMaker::classArcs(int firstClass, int firstWhole) {
  const bool toSink = firstClass == firstWhole;
  for (std::size_t gangs = 0; gangs < classes_.size(); ++gangs)
    for (int range = 0; range < count(); ++range) {
      const int at = static_cast<int>(gangs) * count() + range;
      const auto days = static_cast<std::size_t>(range);
      const Seconds kept = toSink ? 0 : classes_[gangs].kept[days];
      network_.arcs.push_back({firstClass + at,
                               toSink ? network_.sink : firstWhole + at,
                               classes_[gangs].capacity[days] - kept,
                               0});
    }
}

void NetworkMaker::make(int firstSkill, bool split) {
  const int skillNodes = problem_.skills * count();
  const int classNodes = static_cast<int>(classes_.size()) * count();
  const int firstClass = firstSkill + (split ? 2 : 1) * skillNodes;
  const int firstWhole = split ? firstClass + classNodes : firstClass;
  network_.sink = firstWhole + classNodes;
  network_.nodes = network_.sink + 1;
  for (int job = 0; job < firstSkill; ++job) jobArcs(job, split);
  skillArcs(firstClass, false);
  if (split) {
    skillArcs(firstWhole, true);
    classArcs(firstClass, firstWhole);
  }
  classArcs(firstWhole, firstWhole);
}

}  // namespace

LabourNetwork labourNetwork(const CrewProblem& problem,
                            const std::vector<DayRange>& ranges) {
  LabourNetwork network;
  NetworkMaker maker{problem, ranges, network};
  const bool split = maker.anyKept();
  network.ranges = static_cast<int>(ranges.size());
  network.firstSkill_ = static_cast<int>(problem.jobs.size());
  network.firstYoung_ =
      network.firstSkill_ + (split ? problem.skills * network.ranges : 0);
  maker.make(network.firstSkill_, split);
  return network;
}

}  // namespace topwire
