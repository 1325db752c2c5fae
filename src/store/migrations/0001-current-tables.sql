-- The survey book as it stands now: one table per kind of record, the unit last in each column name.
-- Portable SQL (SQLite and PostgreSQL). Identities are UUIDs as text; yes/no is 1/0;
-- dates are YYYY-MM-DD and times HH:MM as the team wrote them; lists are JSON text.
-- References are checked at the end of a transaction, so that the records of one act may come in any order.

CREATE TABLE book (
  book_id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  invented SMALLINT NOT NULL CHECK (invented IN (0, 1)),
  created_at TEXT NOT NULL
);

-- The digest behind the data version; kept with every write, so that reading it is free.
CREATE TABLE data_digest (
  digest TEXT NOT NULL
);
INSERT INTO data_digest (digest) VALUES ('00000000000000000000000000000000');

CREATE TABLE strata (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL UNIQUE,
  habitat TEXT,
  area_ha DOUBLE PRECISION CHECK (area_ha > 0),
  depth_min_m DOUBLE PRECISION,
  depth_max_m DOUBLE PRECISION
);

CREATE TABLE protocols (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL UNIQUE,
  layout TEXT,
  transects_per_station INTEGER CHECK (transects_per_station > 0),
  length_m DOUBLE PRECISION CHECK (length_m > 0),
  width_m DOUBLE PRECISION CHECK (width_m > 0),
  gap_m DOUBLE PRECISION CHECK (gap_m >= 0),
  measure_first INTEGER CHECK (measure_first > 0),
  length_unit TEXT CHECK (length_unit IN ('mm', 'cm'))
);

CREATE TABLE species (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL UNIQUE,
  group_name TEXT,
  code TEXT,
  common_name TEXT,
  local_name TEXT,
  aliases TEXT NOT NULL,
  min_length_mm DOUBLE PRECISION CHECK (min_length_mm > 0),
  max_length_mm DOUBLE PRECISION CHECK (max_length_mm > 0),
  depth_min_m DOUBLE PRECISION,
  depth_max_m DOUBLE PRECISION,
  habitats TEXT NOT NULL
);

CREATE TABLE surveys (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL UNIQUE,
  protocol_id TEXT REFERENCES protocols (id) DEFERRABLE INITIALLY DEFERRED,
  starts TEXT,
  ends TEXT,
  purpose TEXT
);

CREATE TABLE stations (
  id TEXT NOT NULL PRIMARY KEY,
  survey_id TEXT NOT NULL REFERENCES surveys (id) DEFERRABLE INITIALLY DEFERRED,
  code TEXT NOT NULL,
  site TEXT,
  stratum_id TEXT NOT NULL REFERENCES strata (id) DEFERRABLE INITIALLY DEFERRED,
  zone TEXT,
  "date" TEXT NOT NULL,
  time_start TEXT,
  time_end TEXT,
  latitude_deg DOUBLE PRECISION CHECK (latitude_deg BETWEEN -90 AND 90),
  longitude_deg DOUBLE PRECISION CHECK (longitude_deg BETWEEN -180 AND 180),
  end_latitude_deg DOUBLE PRECISION CHECK (end_latitude_deg BETWEEN -90 AND 90),
  end_longitude_deg DOUBLE PRECISION CHECK (end_longitude_deg BETWEEN -180 AND 180),
  planned_latitude_deg DOUBLE PRECISION CHECK (planned_latitude_deg BETWEEN -90 AND 90),
  planned_longitude_deg DOUBLE PRECISION CHECK (planned_longitude_deg BETWEEN -180 AND 180),
  position_source TEXT,
  waypoint TEXT,
  bearing_deg DOUBLE PRECISION CHECK (bearing_deg BETWEEN 0 AND 360),
  depth_m DOUBLE PRECISION,
  mode TEXT,
  night SMALLINT CHECK (night IN (0, 1)),
  visibility_m DOUBLE PRECISION CHECK (visibility_m >= 0),
  tide TEXT,
  "current" TEXT,
  recorder TEXT,
  navigator TEXT,
  selection TEXT,
  note TEXT,
  UNIQUE (survey_id, code)
);
CREATE INDEX stations_of_stratum ON stations (stratum_id);

CREATE TABLE transects (
  id TEXT NOT NULL PRIMARY KEY,
  station_id TEXT NOT NULL REFERENCES stations (id) DEFERRABLE INITIALLY DEFERRED,
  code TEXT NOT NULL,
  swim INTEGER NOT NULL CHECK (swim > 0),
  scope TEXT NOT NULL,
  length_m DOUBLE PRECISION CHECK (length_m > 0),
  width_m DOUBLE PRECISION CHECK (width_m > 0),
  depth_start_m DOUBLE PRECISION,
  depth_end_m DOUBLE PRECISION,
  cover TEXT NOT NULL,
  status TEXT NOT NULL,
  reason TEXT,
  none_seen SMALLINT NOT NULL CHECK (none_seen IN (0, 1)),
  note TEXT,
  UNIQUE (station_id, code, swim)
);

-- `lengths` is JSON: [[length_mm, n], ...] or, where they are known, [length_mm, n, measure, photo].
-- It stays the last column, so that counts are read without reading past it. The view `lengths` unfolds it.
CREATE TABLE tallies (
  id TEXT NOT NULL PRIMARY KEY,
  transect_id TEXT NOT NULL REFERENCES transects (id) DEFERRABLE INITIALLY DEFERRED,
  species_id TEXT NOT NULL REFERENCES species (id) DEFERRABLE INITIALLY DEFERRED,
  "count" INTEGER NOT NULL CHECK ("count" >= 0),
  lengths TEXT NOT NULL,
  UNIQUE (transect_id, species_id)
);

CREATE TABLE weights (
  id TEXT NOT NULL PRIMARY KEY,
  survey_id TEXT NOT NULL REFERENCES surveys (id) DEFERRABLE INITIALLY DEFERRED,
  station_code TEXT,
  species_id TEXT NOT NULL REFERENCES species (id) DEFERRABLE INITIALLY DEFERRED,
  ordinal INTEGER NOT NULL CHECK (ordinal > 0),
  length_mm DOUBLE PRECISION NOT NULL CHECK (length_mm > 0),
  weight_g DOUBLE PRECISION NOT NULL CHECK (weight_g > 0),
  state TEXT,
  drain_minutes DOUBLE PRECISION CHECK (drain_minutes >= 0)
);
-- An animal weighed at no named station is still one animal: two empty station codes are equal here.
CREATE UNIQUE INDEX weights_natural_key ON weights (survey_id, coalesce(station_code, ''), species_id, ordinal);

CREATE TABLE targets (
  id TEXT NOT NULL PRIMARY KEY,
  survey_id TEXT NOT NULL REFERENCES surveys (id) DEFERRABLE INITIALLY DEFERRED,
  species_id TEXT NOT NULL REFERENCES species (id) DEFERRABLE INITIALLY DEFERRED,
  UNIQUE (survey_id, species_id)
);

CREATE TABLE size_limits (
  id TEXT NOT NULL PRIMARY KEY,
  species_id TEXT NOT NULL REFERENCES species (id) DEFERRABLE INITIALLY DEFERRED,
  minimum_mm DOUBLE PRECISION NOT NULL CHECK (minimum_mm > 0),
  source TEXT NOT NULL,
  UNIQUE (species_id, source)
);

CREATE TABLE mappings (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL UNIQUE,
  content TEXT NOT NULL
);
