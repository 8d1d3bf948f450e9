# Reads a build's file without a line of ours: with Python's own sqlite3, hashlib
# and json. Follows every patch as RFC 7396 has it, and works out every digest and
# seal again from what internal/store/seal.go says of them.
import hashlib, json, sqlite3, struct

db = sqlite3.connect("file:format-2.tumblehome?mode=ro&immutable=1", uri=True)


def load(text):
    """JSON whose scalars are texts, as they were written."""
    return json.loads(text, parse_int=str, parse_float=str)


def number(n):
    return struct.pack(">q", n)


def text(s):
    raw = s.encode()
    return number(len(raw)) + raw


SCALAR, MAP, LIST = 0, 1, 2


def said(node):
    if isinstance(node, dict):
        out = number(MAP) + text("") + number(0) + number(len(node))
        for key in sorted(node, key=str.encode):
            out += text(key) + said(node[key])
        return out
    if isinstance(node, list):
        return number(LIST) + text("") + number(len(node)) + b"".join(map(said, node)) + number(0)
    if isinstance(node, bool):
        node = "true" if node else "false"
    return number(SCALAR) + text(node) + number(0) + number(0)


def merge(doc, patch):
    """RFC 7396, section 2."""
    if not isinstance(patch, dict):
        return patch
    doc = dict(doc) if isinstance(doc, dict) else {}
    for key, value in patch.items():
        if value is None:
            doc.pop(key, None)
        else:
            doc[key] = merge(doc.get(key), value)
    return doc


def sha(raw):
    return hashlib.sha256(raw).hexdigest()


def history():
    doc, seal = load(open("first.json", encoding="utf-8").read()), ""
    rows = db.execute("SELECT r.n, coalesce(r.parent, 0), made, kind, words, maker, patch, inverse, digest, seal FROM revision r JOIN seal s ON s.n = r.n ORDER BY r.n")
    count = 0
    for n, parent, made, kind, words, maker, patch, inverse, digest, kept in rows:
        before = doc
        doc = merge(doc, load(patch))
        assert sha(said(doc)) == digest, f"digest of revision {n}"
        assert n == 1 or said(merge(doc, load(inverse))) == said(before), f"way back of revision {n}"
        seal = sha(text(seal) + number(n) + number(parent) + b"".join(map(text, (made, kind, words, maker, patch, inverse, digest))))
        assert seal == kept, f"seal of revision {n}"
        count += 1
    return count, doc, seal


def photos():
    sizes = {}
    for id, name, kind, made, size, digest, seal in db.execute("SELECT id, name, kind, made, size, digest, seal FROM attachment"):
        content = b"".join(piece for piece, in db.execute("SELECT content FROM piece WHERE attachment = ? ORDER BY n", (id,)))
        assert len(content) == size and sha(content) == digest, f"content of {id}"
        assert sha(b"".join(map(text, (id, name, kind, made, digest))) + number(size)) == seal, f"seal of {id}"
        sizes[name] = size
    return sizes


count, newest, seal = history()
print(json.dumps({
    "integrity": db.execute("PRAGMA integrity_check").fetchone()[0],
    "mark": db.execute("PRAGMA application_id").fetchone()[0],
    "format": db.execute("PRAGMA user_version").fetchone()[0],
    "revisions": count,
    "seal": seal,
    "newest": sha(said(newest)),
    "width": newest["fittings"]["settle"]["size"]["y"],
    "photos": photos(),
}, sort_keys=True))
