-- A paper is a name with a chain of states. Nothing is ever overwritten or deleted.
CREATE TABLE paper (
  id INTEGER PRIMARY KEY,
  uid TEXT NOT NULL UNIQUE,
  sort TEXT NOT NULL CHECK (sort IN ('recipe', 'kitchen', 'note', 'ingredient')),
  name TEXT NOT NULL,
  now INTEGER REFERENCES state(id),
  grown_from INTEGER REFERENCES state(id),
  taken_away TEXT,
  UNIQUE (sort, name)
) STRICT;

-- A text is stored once, whatever number of states have it.
CREATE TABLE body (
  hash TEXT PRIMARY KEY,
  text TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE state (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  paper INTEGER NOT NULL REFERENCES paper(id),
  before INTEGER REFERENCES state(id),
  hash TEXT NOT NULL REFERENCES body(hash),
  at TEXT NOT NULL,
  did TEXT NOT NULL
) STRICT;
CREATE INDEX state_of_paper ON state(paper, id);
CREATE INDEX state_after ON state(before);

-- Where a paper's mark has been: what is taken back comes again along it.
CREATE TABLE step_back (
  paper INTEGER NOT NULL REFERENCES paper(id),
  state INTEGER NOT NULL REFERENCES state(id),
  onward INTEGER NOT NULL REFERENCES state(id),
  PRIMARY KEY (paper, state)
) STRICT, WITHOUT ROWID;

-- A state that has a name. A published one is frozen: what is put right afterwards is told in corrections.
CREATE TABLE kept (
  id INTEGER PRIMARY KEY,
  state INTEGER NOT NULL REFERENCES state(id),
  at TEXT NOT NULL,
  name TEXT NOT NULL,
  note TEXT NOT NULL,
  published INTEGER NOT NULL DEFAULT 0 CHECK (published IN (0, 1))
) STRICT;
CREATE INDEX kept_of_state ON kept(state);

-- What an author says of a recipe, each time it is said: idea, trying, came out right, published.
CREATE TABLE said (
  id INTEGER PRIMARY KEY,
  paper INTEGER NOT NULL REFERENCES paper(id),
  at TEXT NOT NULL,
  what TEXT NOT NULL CHECK (what IN ('standing', 'baked', 'family', 'season')),
  value TEXT NOT NULL
) STRICT;
CREATE INDEX said_of_paper ON said(paper, what, id);

CREATE TABLE correction (
  id INTEGER PRIMARY KEY,
  kept INTEGER NOT NULL REFERENCES kept(id),
  at TEXT NOT NULL,
  text TEXT NOT NULL,
  place TEXT NOT NULL,
  done TEXT
) STRICT;

CREATE TABLE photo (
  hash TEXT PRIMARY KEY,
  type TEXT NOT NULL,
  bytes BLOB NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE photo_of (
  paper INTEGER NOT NULL REFERENCES paper(id),
  hash TEXT NOT NULL REFERENCES photo(hash),
  at TEXT NOT NULL,
  words TEXT NOT NULL,
  PRIMARY KEY (paper, hash)
) STRICT, WITHOUT ROWID;
