-- What is known of each photo of the book; its bytes lie beside the database, in photos/, under their checksum.
CREATE TABLE photos (
  id TEXT NOT NULL PRIMARY KEY,
  sha256 TEXT NOT NULL UNIQUE,
  survey_id TEXT REFERENCES surveys (id) DEFERRABLE INITIALLY DEFERRED,
  station_id TEXT REFERENCES stations (id) DEFERRABLE INITIALLY DEFERRED,
  content TEXT NOT NULL
);
CREATE INDEX photos_of_survey ON photos (survey_id);
CREATE INDEX photos_of_station ON photos (station_id);
