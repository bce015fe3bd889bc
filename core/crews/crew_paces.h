#pragma once

#include "core/crews/crew_question.h"
#include "core/labour/learned_rates.h"

#include <map>
#include <string>
#include <tuple>
#include <vector>

namespace topwire {

/// How long a tree takes the fastest crew, and how much longer the others.
struct JobPace {
  int seconds = 0;
  std::vector<int> byCrew;  ///< as CrewJob::pace
};

/// Paces of an orchard's crews, each kind of work looked up once.
class CrewPaces {
public:
  /// `supposed` for a crew that is only supposed, which goes at the pace of all.
  CrewPaces(const Orchard& orchard,
            const Trade& trade,
            const std::vector<CrewId>& crews,
            bool supposed);

  const JobPace& of(const std::string& programme, const Operation& operation, int leaf);

private:
  JobPace workedOut(const std::string& programme,
                    const Operation& operation,
                    int leaf) const;

  const LearnedRates rates_;
  std::vector<std::string> crews_;
  bool supposed_;
  std::map<std::tuple<std::string, std::string, int>, JobPace> known_;
};

}  // namespace topwire
