-- What a revision says is sealed: digest is the SHA-256 of the document it makes, seal that of all it says and of the seal before it.
CREATE TABLE seal (
  n      INTEGER PRIMARY KEY REFERENCES revision (n),
  digest TEXT NOT NULL,
  seal   TEXT NOT NULL
) STRICT;

-- Photos are kept in pieces, so that none is ever in memory twice; what is said of them is sealed too.
CREATE TABLE piece (
  attachment TEXT NOT NULL REFERENCES attachment (id),
  n          INTEGER NOT NULL,
  content    BLOB NOT NULL,
  UNIQUE (attachment, n)
) STRICT;

ALTER TABLE attachment ADD COLUMN size INTEGER NOT NULL DEFAULT 0;
ALTER TABLE attachment ADD COLUMN digest TEXT NOT NULL DEFAULT '';
ALTER TABLE attachment ADD COLUMN seal TEXT NOT NULL DEFAULT '';
