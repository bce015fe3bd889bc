#pragma once

#include "core/crews/crew_question.h"

namespace topwire {

/// Largest number of hours anyone works on a day, by day, with the days off of the week,
/// holidays and days lost taken out; 0 where nobody works.
std::vector<Seconds> dayLengths(const Orchard& orchard,
                                Day first,
                                int days,
                                const Supposition& supposed);

/// Whether fruit is picked on the day, somewhere: from the harvest of the first bearing
/// planting to two weeks after that of the last (common practice).
bool isPickingDay(const Orchard& orchard, const Outlooks& outlooks, Day day);

/// A gang for each crew, or several where it is larger than a gang may be. `question` has
/// its crews, skills and days by now.
void addGangs(CrewQuestion& question,
              const Orchard& orchard,
              const Outlooks& outlooks,
              const Supposition& supposed);

/// How many of the crew there are on a day: who turned out, where that is noted; nobody
/// on a day off.
int workersOn(const Orchard& orchard, const Crew& crew, Day day);

/// Of the crew's workers in one of its gangs, shared out evenly, the first ones getting
/// one more.
int shareOf(int workers, int gangs, int gang);
int gangsOf(const Orchard& orchard, const Crew& crew);

}  // namespace topwire
