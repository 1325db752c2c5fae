-- SQLite's own: what other databases say in other words.

-- The history is never edited and never deleted.
CREATE TRIGGER revisions_stay_as_written BEFORE UPDATE ON revisions
BEGIN SELECT RAISE(ABORT, 'revisions are never changed'); END;
CREATE TRIGGER revisions_are_kept BEFORE DELETE ON revisions
BEGIN SELECT RAISE(ABORT, 'revisions are never deleted'); END;
CREATE TRIGGER acts_stay_as_written BEFORE UPDATE ON acts
BEGIN SELECT RAISE(ABORT, 'acts are never changed'); END;
CREATE TRIGGER acts_are_kept BEFORE DELETE ON acts
BEGIN SELECT RAISE(ABORT, 'acts are never deleted'); END;

-- One row for each measured length (n animals of that length).
CREATE VIEW lengths AS
SELECT
  t.id AS tally_id,
  t.transect_id,
  t.species_id,
  l.key + 1 AS place,
  json_extract(l.value, '$[0]') AS length_mm,
  json_extract(l.value, '$[1]') AS n,
  json_extract(l.value, '$[2]') AS measure,
  json_extract(l.value, '$[3]') AS photo
FROM tallies t, json_each(t.lengths) l;
