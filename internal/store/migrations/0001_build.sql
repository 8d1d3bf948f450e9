-- One file holds one build. Every edit is a row of revision and is never changed afterwards.
CREATE TABLE revision (
  n       INTEGER PRIMARY KEY,
  parent  INTEGER REFERENCES revision (n),
  made    TEXT NOT NULL,                        -- RFC 3339, UTC
  kind    TEXT NOT NULL CHECK (kind IN ('begin', 'edit', 'undo', 'redo')),
  words   TEXT NOT NULL,                        -- what was done, for people
  maker   TEXT NOT NULL,                        -- who did it
  patch   TEXT NOT NULL,                        -- RFC 7396, from the parent to this revision
  inverse TEXT NOT NULL                         -- RFC 7396, from this revision to the parent
) STRICT;

-- The whole document of some revisions, so that opening a build replays few patches.
CREATE TABLE whole (
  n        INTEGER PRIMARY KEY REFERENCES revision (n),
  document TEXT NOT NULL
) STRICT;

CREATE TABLE attachment (
  id      TEXT PRIMARY KEY,
  name    TEXT NOT NULL,
  kind    TEXT NOT NULL,
  made    TEXT NOT NULL,
  content BLOB NOT NULL
) STRICT;
