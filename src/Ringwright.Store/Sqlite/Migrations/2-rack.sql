-- The rack's own fields: a rack document without boards. One row.
CREATE TABLE rack (
  id INTEGER PRIMARY KEY CHECK (id = 1),
  document TEXT NOT NULL
) STRICT;

-- A row for each board in the order they stand; document is a rack that holds just this board, sizes are in mm.
CREATE TABLE board (
  place INTEGER PRIMARY KEY,
  label TEXT NOT NULL COLLATE NOCASE UNIQUE,
  wood TEXT NOT NULL,
  length REAL NOT NULL,
  width REAL NOT NULL,
  thickness REAL NOT NULL,
  document TEXT NOT NULL
) STRICT;

-- What changed the rack, with the rack as it was before. An undone change keeps what it had made.
CREATE TABLE rack_change (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  made INTEGER NOT NULL,
  what TEXT NOT NULL,
  before TEXT NOT NULL,
  undone TEXT
) STRICT;
