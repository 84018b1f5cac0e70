-- The data file as version 1 of the format wrote it. Never changed.
PRAGMA journal_mode = WAL;

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

INSERT INTO piece VALUES (1, 'Two-wood disc', 'disc', 'maple' || char(10) || 'padauk', 1, 'Two-wood disc maple padauk', 1796000000000, 1796000600000, NULL);
INSERT INTO piece_words (rowid, words) VALUES (1, 'Two-wood disc maple padauk');
INSERT INTO version VALUES (1, 1, 1796000000000, 1796000100000, 'first try', 'a', '{
  "format": "ringwright/piece",
  "version": 1,
  "name": "Two-wood disc",
  "units": "mm",
  "notes": "A first disc for a pen: two woods in turn, bored for a 7 mm tube.",
  "rings": [
    {
      "construction": "wedge disc",
      "name": "Disc",
      "segments": 24,
      "diameter": "19 mm",
      "thickness": "30 mm",
      "allowance": "0 mm",
      "woods": ["maple", "padauk"],
      "bore": "7 mm"
    }
  ]
}
');
INSERT INTO version VALUES (2, 1, 1796000500000, 1796000600000, NULL, 'a', '{
  "format": "ringwright/piece",
  "version": 1,
  "name": "Two-wood disc",
  "units": "mm",
  "notes": "A first disc for a pen: two woods in turn, bored for a 7 mm tube.",
  "rings": [
    {
      "construction": "wedge disc",
      "name": "Disc",
      "segments": 24,
      "diameter": "19 mm",
      "thickness": "30 mm",
      "allowance": "0 mm",
      "woods": ["maple", "padauk"],
      "bore": "7 mm"
    }
  ]
}
');
INSERT INTO draft VALUES (2, '19 mm or so');
INSERT INTO thumbnail VALUES (1, x'010203');
INSERT INTO shop VALUES (1, 'Small shop', '{
  "format": "ringwright/shop",
  "version": 1,
  "name": "Small shop with a bandsaw",
  "units": "mm",
  "saw": { "kerf": "0.9 mm", "lean": "0°", "kerfSd": "0.02 mm", "endTrim": "5 mm", "holdingLength": "75 mm" },
  "sled": { "kind": "two fences", "ruleDistance": "300 mm", "sineBar": "127 mm" },
  "boards": { "length": "400 mm" },
  "sanding": { "perFace": "0.05 mm", "unevenness": "0.01 mm", "flattening": "0.25 mm" },
  "hands": {
    "angleSd": "0.05°",
    "settingSd": "0.02°",
    "stopSd": "0.05 mm",
    "angleBias": "0°",
    "loss": 0.05,
    "minutesPerCut": 0.5,
    "minutesPerFace": 0.5
  },
  "wanted": {
    "jointGap": "0.1 mm",
    "confidence": 0.95,
    "allowance": "1.5 mm",
    "leastRimEdge": "1.5 mm",
    "boreWander": "0.5 mm"
  },
  "climate": {
    "shop": { "winter": { "temperature": "12 °C", "humidity": 55 }, "summer": { "temperature": "24 °C", "humidity": 60 } },
    "home": { "winter": { "temperature": "21 °C", "humidity": 35 }, "summer": { "temperature": "24 °C", "humidity": 55 } },
    "woodMoisture": 8.5
  },
  "joint": { "tension": 10, "stressKept": 0.5, "speedSafety": 10 }
}
', 1796000000000, 1796000000000, NULL, 1);
INSERT INTO setting VALUES ('units', 'in');

PRAGMA application_id = 1380861783;
PRAGMA user_version = 1;
