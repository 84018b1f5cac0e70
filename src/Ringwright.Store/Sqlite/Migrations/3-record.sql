-- Runs of real measurements in the order they were made; document is a record that holds just this run.
CREATE TABLE run (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  added INTEGER NOT NULL,
  document TEXT NOT NULL,
  removed INTEGER
) STRICT;
