#pragma once

#include "core/crews/crew_question.h"

namespace topwire {

/// Puts a person's pins into the question; those that contradict what is known are noted
/// and left out.
void addPins(CrewQuestion& question, const Orchard& orchard);

}  // namespace topwire
