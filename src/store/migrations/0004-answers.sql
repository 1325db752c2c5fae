-- What people answered to the questions of the checks. One answer stands for each question; earlier ones are in the history.
CREATE TABLE answers (
  id TEXT NOT NULL PRIMARY KEY,
  problem_key TEXT NOT NULL UNIQUE,
  code TEXT NOT NULL,
  value TEXT,
  answer TEXT NOT NULL,
  who TEXT NOT NULL,
  why TEXT NOT NULL,
  answered_at TEXT NOT NULL
);
