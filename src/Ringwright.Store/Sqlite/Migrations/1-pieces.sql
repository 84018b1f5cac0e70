-- What the library of pieces shows of each; the documents are in version.
CREATE TABLE piece (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  name TEXT NOT NULL,
  kind TEXT,
  woods TEXT NOT NULL,
  rings INTEGER NOT NULL,
  words TEXT NOT NULL,
  created INTEGER NOT NULL,
  changed INTEGER NOT NULL,
  removed INTEGER
) STRICT;

-- States of a piece; the one with the greatest id is how it is now.
CREATE TABLE version (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  piece INTEGER NOT NULL REFERENCES piece (id) ON DELETE CASCADE,
  begun INTEGER NOT NULL,
  saved INTEGER NOT NULL,
  name TEXT,
  opening TEXT NOT NULL,
  document TEXT NOT NULL
) STRICT;

CREATE INDEX version_of_piece ON version (piece, id);

-- Apart from the version, so that a keystroke writes only what was typed.
CREATE TABLE draft (
  version INTEGER PRIMARY KEY REFERENCES version (id) ON DELETE CASCADE,
  content TEXT NOT NULL
) STRICT;

CREATE TABLE thumbnail (
  piece INTEGER PRIMARY KEY REFERENCES piece (id) ON DELETE CASCADE,
  image BLOB NOT NULL
) STRICT;

CREATE VIRTUAL TABLE piece_words USING fts5 (words, tokenize = 'unicode61 remove_diacritics 2', prefix = '2 3');

CREATE TABLE shop (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  name TEXT NOT NULL,
  document TEXT NOT NULL,
  created INTEGER NOT NULL,
  changed INTEGER NOT NULL,
  removed INTEGER,
  current INTEGER
) STRICT;

CREATE UNIQUE INDEX one_shop_is_current ON shop (current) WHERE current = 1;

CREATE TABLE setting (
  name TEXT PRIMARY KEY,
  value TEXT NOT NULL
) STRICT;
