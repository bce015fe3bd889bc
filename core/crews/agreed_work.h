#pragma once

#include "core/crews/crew_question.h"

namespace topwire {

/// Holds the gangs to the plan of the first day that was accepted for them, as far as
/// they are as many as it counted on. `question` has its jobs and gangs by now.
void addAgreed(CrewQuestion& question, const Orchard& orchard);

}  // namespace topwire
