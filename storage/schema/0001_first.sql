-- One orchard. Made to be read with the sqlite3 shell too: days are ISO 8601 text, rows
-- are text ranges such as 1-12, 15, ids are 32 hexadecimal digits. Lengths are whole
-- micrometres, in which metric and US customary lengths are both exact.

CREATE TABLE settings (
  only INTEGER PRIMARY KEY CHECK (only = 1),
  name TEXT NOT NULL,
  latitude REAL NOT NULL CHECK (latitude BETWEEN -90 AND 90),
  elevation_um INTEGER NOT NULL,
  units TEXT NOT NULL CHECK (units IN ('metric', 'us')),
  station TEXT NOT NULL,
  station_elevation_um INTEGER NOT NULL,
  records_from TEXT NOT NULL CHECK (records_from GLOB '????-??-??')
) STRICT;

CREATE TABLE normal (
  month INTEGER PRIMARY KEY CHECK (month BETWEEN 1 AND 12),
  minimum REAL NOT NULL,  -- degrees Celsius, at the station
  maximum REAL NOT NULL
) STRICT;

CREATE TABLE block (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 32),
  name TEXT NOT NULL,
  rows TEXT NOT NULL,
  row_spacing_um INTEGER NOT NULL CHECK (row_spacing_um > 0),
  row_length_um INTEGER CHECK (row_length_um > 0),
  elevation_um INTEGER,
  notes TEXT NOT NULL
) STRICT;

CREATE TABLE planting (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 32),
  block TEXT NOT NULL REFERENCES block (id),
  code TEXT NOT NULL,
  cultivar TEXT NOT NULL,
  rootstock TEXT NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('main', 'pollinizer', 'replant')),
  planted TEXT NOT NULL CHECK (planted GLOB '????-??-??'),
  rows TEXT NOT NULL,
  tree_spacing_um INTEGER NOT NULL CHECK (tree_spacing_um > 0),
  trees_per_row INTEGER CHECK (trees_per_row > 0),
  trees INTEGER CHECK (trees > 0),
  vigour TEXT CHECK (vigour IN ('weak', 'moderate', 'strong')),
  vigour_reason TEXT NOT NULL,
  programme TEXT NOT NULL
) STRICT;
CREATE INDEX planting_by_block ON planting (block);

CREATE TABLE crew (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 32),
  name TEXT NOT NULL,
  workers INTEGER NOT NULL CHECK (workers > 0),
  hours_per_day REAL NOT NULL CHECK (hours_per_day > 0)
) STRICT;

CREATE TABLE observation (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 32),
  planting TEXT NOT NULL REFERENCES planting (id),
  bbch INTEGER NOT NULL CHECK (bbch BETWEEN 0 AND 99),
  day TEXT NOT NULL CHECK (day GLOB '????-??-??'),
  who TEXT NOT NULL
) STRICT;
CREATE INDEX observation_by_planting ON observation (planting);

-- What a person said of a task. A task is named by planting, operation, season and pass.
CREATE TABLE mark (
  planting TEXT NOT NULL REFERENCES planting (id),
  operation TEXT NOT NULL,
  season INTEGER NOT NULL,
  pass INTEGER NOT NULL CHECK (pass > 0),
  moved_first TEXT CHECK (moved_first GLOB '????-??-??'),
  moved_last TEXT CHECK (moved_last GLOB '????-??-??'),
  set_aside_reason TEXT NOT NULL,
  hand_title TEXT NOT NULL,
  hand_seconds_per_tree INTEGER NOT NULL CHECK (hand_seconds_per_tree >= 0),
  PRIMARY KEY (planting, operation, season, pass),
  CHECK ((moved_first IS NULL) = (moved_last IS NULL))
) STRICT, WITHOUT ROWID;

-- A record that rows were done. Only ever added; takes_back names the tick that a later
-- one withdraws.
CREATE TABLE tick (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 32),
  planting TEXT NOT NULL REFERENCES planting (id),
  operation TEXT NOT NULL,
  season INTEGER NOT NULL,
  pass INTEGER NOT NULL CHECK (pass > 0),
  rows TEXT NOT NULL CHECK (rows <> ''),
  percent INTEGER NOT NULL CHECK (percent BETWEEN 1 AND 100),
  minutes INTEGER NOT NULL CHECK (minutes >= 0),
  who TEXT NOT NULL,
  day TEXT NOT NULL CHECK (day GLOB '????-??-??'),
  takes_back TEXT REFERENCES tick (id)
) STRICT;
CREATE INDEX tick_by_planting ON tick (planting);
CREATE INDEX tick_by_taken_back ON tick (takes_back);

CREATE TRIGGER tick_is_never_changed BEFORE UPDATE ON tick
BEGIN SELECT RAISE(ABORT, 'ticks are only ever added'); END;
CREATE TRIGGER tick_is_never_deleted BEFORE DELETE ON tick
BEGIN SELECT RAISE(ABORT, 'ticks are only ever added'); END;
-- INSERT OR REPLACE would delete without asking the trigger above.
CREATE TRIGGER tick_is_never_replaced BEFORE INSERT ON tick
WHEN EXISTS (SELECT 1 FROM tick WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'ticks are only ever added'); END;

-- The dated tasks as the plan last reconciled; derived, so they go with their planting.
CREATE TABLE task (
  planting TEXT NOT NULL REFERENCES planting (id) ON DELETE CASCADE,
  operation TEXT NOT NULL,
  season INTEGER NOT NULL,
  pass INTEGER NOT NULL CHECK (pass > 0),
  opens TEXT NOT NULL CHECK (opens GLOB '????-??-??'),
  closes TEXT NOT NULL CHECK (closes GLOB '????-??-??'),
  cut_off TEXT CHECK (cut_off GLOB '????-??-??'),
  no_longer_asked INTEGER NOT NULL CHECK (no_longer_asked IN (0, 1)),
  PRIMARY KEY (planting, operation, season, pass)
) STRICT, WITHOUT ROWID;

-- Who changed what and when; undo is taken up from here. `number` is this file's own
-- order.
CREATE TABLE journal (
  number INTEGER PRIMARY KEY,
  kind TEXT NOT NULL CHECK (kind IN ('did', 'undid', 'redid')),
  at INTEGER NOT NULL,   -- seconds since 1970, UTC
  who TEXT NOT NULL,
  name TEXT NOT NULL,    -- the change's name in English, for reading
  change TEXT NOT NULL   -- JSON
) STRICT;

CREATE TRIGGER journal_is_never_changed BEFORE UPDATE ON journal
BEGIN SELECT RAISE(ABORT, 'the journal is only ever added to'); END;
CREATE TRIGGER journal_is_never_deleted BEFORE DELETE ON journal
BEGIN SELECT RAISE(ABORT, 'the journal is only ever added to'); END;
CREATE TRIGGER journal_is_never_replaced BEFORE INSERT ON journal
WHEN EXISTS (SELECT 1 FROM journal WHERE number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'the journal is only ever added to'); END;
