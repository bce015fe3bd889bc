-- Weather at the station, a row a day; a day of which nothing is known has no row.
CREATE TABLE weather (
  day TEXT PRIMARY KEY NOT NULL CHECK (day GLOB '????-??-??'),
  minimum REAL CHECK (minimum BETWEEN -100 AND 100),  -- degrees Celsius
  maximum REAL CHECK (maximum BETWEEN -100 AND 100),
  rain REAL CHECK (rain >= 0),                        -- mm
  source TEXT NOT NULL CHECK (source IN ('forecast', 'typed', 'measured')),
  CHECK (minimum <= maximum),
  CHECK (coalesce(minimum, maximum, rain) IS NOT NULL)
) STRICT, WITHOUT ROWID;

-- When a cultivar reached a stage here in a season before the records began.
CREATE TABLE past_stage (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 32),
  cultivar TEXT NOT NULL,
  bbch INTEGER NOT NULL CHECK (bbch BETWEEN 0 AND 99),
  day TEXT NOT NULL CHECK (day GLOB '????-??-??')
) STRICT;

-- How much later a planting in its first leaf blooms.
ALTER TABLE settings ADD COLUMN first_leaf_delay_days INTEGER NOT NULL DEFAULT 10
  CHECK (first_leaf_delay_days >= 0);

-- Degrees Celsius added to the station's figures, beside the correction for elevation.
ALTER TABLE block ADD COLUMN minimum_correction REAL NOT NULL DEFAULT 0;
ALTER TABLE block ADD COLUMN maximum_correction REAL NOT NULL DEFAULT 0;
