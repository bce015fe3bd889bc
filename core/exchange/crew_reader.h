#pragma once

#include "core/exchange/toml_fields.h"
#include "core/orchard/orchard.h"

namespace topwire {

/// What an orchard's file says of crews, their days and the plans for them. A field at
/// fault is noted and left as a new record has it; what deeds check is not checked here.

/// All of [[crew]] but its id.
Crew readCrew(TableFields& fields);
/// Of [orchard]: workdays, start, move-minutes, move-minutes-per-km, keep-together,
/// gang-at-most.
void readWorkingDay(TableFields& fields, Settings& settings);
/// Of [[block]]: workers-at-most, latitude, longitude.
void readPlaceOf(TableFields& fields, Block& block);

/// [[work-day]]: day, percent, reason.
WorkDay readWorkDay(TableFields& fields);
/// [[turnout]]: crew, day, workers.
Turnout readTurnout(TableFields& fields, const Orchard& orchard);
/// [[closure]] but for its id: block, from, until, reason.
BlockClosure readClosure(TableFields& fields, const Orchard& orchard);

/// A pin whose task only a plan can tell.
struct WantedPin {
  std::string task;  ///< "creek-1-gala:rub-rivals:2027:1"
  Pin pin;           ///< but for its id and task
  int line = 0;      ///< where it stands in the text
};

/// [[pin]]: task, and either crew and day or not-before; reason.
WantedPin readPin(TableFields& fields, const Orchard& orchard);

}  // namespace topwire
