/**
 * The first schema. JSON documents are stored as an export writes them, so that number texts and unknown keys
 * survive; columns that are searched are generated from them. Readings are rows with the cell texts they came with.
 */
export const firstLibrary = `
CREATE TABLE library (
  key TEXT PRIMARY KEY,
  value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE unit (
  id TEXT PRIMARY KEY,
  content TEXT NOT NULL,
  maker TEXT GENERATED ALWAYS AS (content ->> '$.maker') VIRTUAL,
  model TEXT GENERATED ALWAYS AS (content ->> '$.model') VIRTUAL,
  observation_columns TEXT
) STRICT, WITHOUT ROWID;

CREATE TABLE observation (
  unit TEXT NOT NULL REFERENCES unit (id) ON DELETE CASCADE,
  id TEXT NOT NULL,
  position INTEGER NOT NULL,
  cells TEXT NOT NULL,
  PRIMARY KEY (unit, id)
) STRICT, WITHOUT ROWID;

-- version 0 is the run, 1 and up are superseded versions, -1 is an import under way
CREATE TABLE run (
  key INTEGER PRIMARY KEY,
  unit TEXT NOT NULL REFERENCES unit (id) ON DELETE CASCADE,
  id TEXT NOT NULL,
  version INTEGER NOT NULL,
  content TEXT NOT NULL,
  columns TEXT,
  digest TEXT NOT NULL,
  taken TEXT GENERATED ALWAYS AS (content ->> '$.taken') VIRTUAL,
  UNIQUE (unit, id, version)
) STRICT;

CREATE TABLE reading (
  run INTEGER NOT NULL REFERENCES run (key) ON DELETE CASCADE,
  row INTEGER NOT NULL,
  series TEXT NOT NULL,
  stimulus REAL,
  x REAL,
  y REAL,
  luminance REAL,
  cells TEXT NOT NULL,
  PRIMARY KEY (run, row)
) STRICT, WITHOUT ROWID;

CREATE TABLE photo (
  unit TEXT NOT NULL REFERENCES unit (id) ON DELETE CASCADE,
  name TEXT NOT NULL,
  digest TEXT NOT NULL,
  content BLOB NOT NULL,
  PRIMARY KEY (unit, name)
) STRICT;

CREATE TABLE article (
  id TEXT PRIMARY KEY,
  content TEXT NOT NULL,
  markdown TEXT NOT NULL,
  claims TEXT,
  remarks TEXT,
  revision INTEGER NOT NULL,
  saved_at TEXT,
  unit TEXT GENERATED ALWAYS AS (content ->> '$.unit') VIRTUAL
) STRICT;

CREATE TABLE lease (
  article TEXT PRIMARY KEY REFERENCES article (id) ON DELETE CASCADE,
  client TEXT NOT NULL,
  until INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE document (
  path TEXT PRIMARY KEY,
  content TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE other_file (
  path TEXT PRIMARY KEY,
  content BLOB NOT NULL
) STRICT;

CREATE TABLE history (
  number INTEGER PRIMARY KEY,
  line TEXT NOT NULL
) STRICT;

CREATE INDEX history_of ON history (line ->> '$.of', number);

INSERT INTO library (key, value) VALUES ('revision', '0');
`;
