-- What was measured on sample trees: lengths in whole micrometres, fruit as a count, space
-- filled in percent, missing trees as one count for the planting.
CREATE TABLE measurement (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 32),
  planting TEXT NOT NULL REFERENCES planting (id),
  measure TEXT NOT NULL CHECK (measure IN (
    'trunk diameter', 'trunk girth', 'leader height', 'leader growth', 'shoot growth',
    'fruit per tree', 'space filled', 'missing trees')),
  day TEXT NOT NULL CHECK (day GLOB '????-??-??'),
  sample TEXT NOT NULL CHECK (sample <> ''),  -- 38100000, 36512500, one a tree
  who TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT;
CREATE INDEX measurement_by_planting ON measurement (planting);

-- What was settled on for a planting's season; the class holds until a later one.
CREATE TABLE season_target (
  planting TEXT NOT NULL REFERENCES planting (id),
  season INTEGER NOT NULL,
  vigour TEXT CHECK (vigour IN ('weak', 'moderate', 'strong')),
  vigour_reason TEXT NOT NULL,
  fruit_from INTEGER CHECK (fruit_from >= 0),
  fruit_to INTEGER CHECK (fruit_to >= fruit_from),
  note TEXT NOT NULL,
  PRIMARY KEY (planting, season)
) STRICT, WITHOUT ROWID;

CREATE TABLE season_close (
  season INTEGER PRIMARY KEY NOT NULL,
  day TEXT NOT NULL CHECK (day GLOB '????-??-??'),
  who TEXT NOT NULL
) STRICT;

-- Programmes of this orchard's own, as their files' text.
CREATE TABLE programme (
  id TEXT PRIMARY KEY NOT NULL,
  text TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Heights of the wires, lowest first: 762000, 1524000. Empty where nobody said.
ALTER TABLE block ADD COLUMN wires_um TEXT NOT NULL DEFAULT '';
ALTER TABLE block ADD COLUMN post_spacing_um INTEGER CHECK (post_spacing_um > 0);
