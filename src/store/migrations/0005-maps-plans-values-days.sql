-- Areas on the map (strata, zones, masks), plans with their draws, the officer's own values, and boat days.
-- What is inside them is JSON that the words of the house check; the columns are what names them among people.
CREATE TABLE map_areas (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  role TEXT NOT NULL,
  content TEXT NOT NULL,
  UNIQUE (role, name)
);
CREATE TABLE plans (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL UNIQUE,
  content TEXT NOT NULL
);
CREATE TABLE own_values (
  id TEXT NOT NULL PRIMARY KEY,
  species_id TEXT NOT NULL REFERENCES species (id) DEFERRABLE INITIALLY DEFERRED,
  what TEXT NOT NULL,
  source TEXT NOT NULL,
  content TEXT NOT NULL,
  UNIQUE (species_id, what, source)
);
CREATE TABLE days (
  id TEXT NOT NULL PRIMARY KEY,
  survey_id TEXT NOT NULL REFERENCES surveys (id) DEFERRABLE INITIALLY DEFERRED,
  date TEXT NOT NULL,
  content TEXT NOT NULL,
  UNIQUE (survey_id, date)
);
