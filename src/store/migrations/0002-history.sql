-- Every change that was ever made. Portable SQL.
-- An act is one signature (an import, a saved sheet, an answer); its revisions are what it changed.
-- A revision is known everywhere by the identity of its act and its place in it.
-- The rows before and after are JSON, with the columns of the current table of that kind:
-- before_row is empty for a new record, after_row for a withdrawn one.

CREATE TABLE acts (
  number INTEGER NOT NULL PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  who TEXT NOT NULL,
  "at" TEXT NOT NULL,
  device TEXT NOT NULL,
  why TEXT NOT NULL
);

CREATE TABLE revisions (
  seq INTEGER NOT NULL PRIMARY KEY,
  act_number INTEGER NOT NULL REFERENCES acts (number) DEFERRABLE INITIALLY DEFERRED,
  place_in_act INTEGER NOT NULL,
  kind TEXT NOT NULL,
  record_id TEXT NOT NULL,
  before_row TEXT,
  after_row TEXT
);
CREATE INDEX revisions_of_record ON revisions (record_id);

-- For people who open the book with a database browser.
CREATE VIEW history AS
SELECT r.seq, a."at", a.who, a.device, a.why, r.kind, r.record_id, r.before_row, r.after_row
FROM revisions r JOIN acts a ON a.number = r.act_number;
