-- What a crew can do (empty: whatever is asked) and who is in it, a name a line; when it is
-- off, 2027-05-03 to 2027-05-09; worker-minutes a day kept for young trees at harvest.
ALTER TABLE crew ADD COLUMN skills TEXT NOT NULL DEFAULT '';
ALTER TABLE crew ADD COLUMN members TEXT NOT NULL DEFAULT '';
ALTER TABLE crew ADD COLUMN days_off TEXT NOT NULL DEFAULT '';
ALTER TABLE crew ADD COLUMN young_minutes INTEGER NOT NULL DEFAULT 0
  CHECK (young_minutes >= 0);

-- Workers in a block at one time (one a row where absent), and where it lies.
ALTER TABLE block ADD COLUMN workers_at_most INTEGER CHECK (workers_at_most > 0);
ALTER TABLE block ADD COLUMN latitude REAL CHECK (latitude BETWEEN -90 AND 90);
ALTER TABLE block ADD COLUMN longitude REAL CHECK (longitude BETWEEN -180 AND 180);

-- The working week, Monday first; minutes from midnight; minutes to go to another block
-- and set up; percent; workers.
ALTER TABLE settings ADD COLUMN workdays TEXT NOT NULL DEFAULT '1111110'
  CHECK (workdays GLOB '[01][01][01][01][01][01][01]');
ALTER TABLE settings ADD COLUMN start_minute INTEGER NOT NULL DEFAULT 390
  CHECK (start_minute BETWEEN 0 AND 1439);
ALTER TABLE settings ADD COLUMN move_minutes INTEGER NOT NULL DEFAULT 20
  CHECK (move_minutes >= 0);
ALTER TABLE settings ADD COLUMN move_minutes_per_km INTEGER NOT NULL DEFAULT 0
  CHECK (move_minutes_per_km >= 0);
ALTER TABLE settings ADD COLUMN keep_together INTEGER NOT NULL DEFAULT 50
  CHECK (keep_together BETWEEN 0 AND 100);
ALTER TABLE settings ADD COLUMN gang_at_most INTEGER NOT NULL DEFAULT 8
  CHECK (gang_at_most > 0);

-- A day on which more or less can be worked than on others of its weekday.
CREATE TABLE work_day (
  day TEXT PRIMARY KEY NOT NULL CHECK (day GLOB '????-??-??'),
  percent INTEGER NOT NULL CHECK (percent BETWEEN 0 AND 100),
  reason TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- How many of a crew turned out, where that is not its usual number.
CREATE TABLE turnout (
  crew TEXT NOT NULL REFERENCES crew (id),
  day TEXT NOT NULL CHECK (day GLOB '????-??-??'),
  workers INTEGER NOT NULL CHECK (workers >= 0),
  PRIMARY KEY (crew, day)
) STRICT, WITHOUT ROWID;

-- A crew set to a task on a day, or a task not to be begun before a day.
CREATE TABLE pin (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 32),
  kind TEXT NOT NULL CHECK (kind IN ('crew to job', 'not before')),
  planting TEXT NOT NULL REFERENCES planting (id),
  operation TEXT NOT NULL,
  season INTEGER NOT NULL,
  pass INTEGER NOT NULL CHECK (pass > 0),
  crew TEXT REFERENCES crew (id),
  day TEXT NOT NULL CHECK (day GLOB '????-??-??'),
  reason TEXT NOT NULL,
  CHECK ((kind = 'crew to job') = (crew IS NOT NULL))
) STRICT;
CREATE INDEX pin_by_planting ON pin (planting);
CREATE INDEX pin_by_crew ON pin (crew);

-- A block in which nobody works, until that minute of its last day.
CREATE TABLE closure (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 32),
  block TEXT NOT NULL REFERENCES block (id),
  first_day TEXT NOT NULL CHECK (first_day GLOB '????-??-??'),
  last_day TEXT NOT NULL CHECK (last_day GLOB '????-??-??'),
  until_minute INTEGER NOT NULL CHECK (until_minute BETWEEN 0 AND 1440),
  reason TEXT NOT NULL,
  CHECK (first_day <= last_day)
) STRICT;
CREATE INDEX closure_by_block ON closure (block);

-- The morning's plans that were accepted: a crew's jobs of a day, by their place in it.
CREATE TABLE planned_job (
  day TEXT NOT NULL CHECK (day GLOB '????-??-??'),
  crew TEXT NOT NULL REFERENCES crew (id),
  place INTEGER NOT NULL CHECK (place > 0),
  planting TEXT NOT NULL REFERENCES planting (id),
  operation TEXT NOT NULL,
  season INTEGER NOT NULL,
  pass INTEGER NOT NULL CHECK (pass > 0),
  rows TEXT NOT NULL CHECK (rows <> ''),
  start_minute INTEGER NOT NULL CHECK (start_minute BETWEEN 0 AND 1440),
  worker_minutes INTEGER NOT NULL CHECK (worker_minutes >= 0),
  workers INTEGER NOT NULL CHECK (workers >= 0),
  PRIMARY KEY (day, crew, place)
) STRICT, WITHOUT ROWID;
CREATE INDEX planned_job_by_crew ON planned_job (crew);
CREATE INDEX planned_job_by_planting ON planned_job (planting);
