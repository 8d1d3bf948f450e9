# What shapely says of the unions in unions.json: distance, shared volume, depth of the deepest pair, the shortest way out along an axis
# and, for every fifth, along an axis or the normal of a face; -1 for the others.
# The shared volume is that of the unions of all outlines between two heights. Ways out are the cuts of a ray with the Minkowski
# differences (convex hulls of all differences of corners).
import json
from itertools import product
from math import hypot
from shapely.geometry import LineString, MultiPoint, Point, Polygon
from shapely.ops import unary_union

FAR, HAIR = 1e4, 1e-7


def polygon(p):
    return Polygon(p["outline"])


def slab(bodies, low, high):
    return unary_union([polygon(p) for p in bodies if p["low"] <= low and p["high"] >= high])


def shared(a, b):
    levels = sorted({p[k] for p in a + b for k in ("low", "high")})
    return sum((high - low) * slab(a, low, high).intersection(slab(b, low, high)).area for low, high in zip(levels, levels[1:]))


def difference(p, q):
    return MultiPoint([(v[0] - u[0], v[1] - u[1]) for u in p["outline"] for v in q["outline"]]).convex_hull


def free(stretches):
    far = 0.0
    for low, high in sorted(stretches):
        if low < far - HAIR and high > far:
            far = high
    # a stretch that was passed over may begin before the new place
    again = [s for s in stretches if s[0] < far - HAIR and s[1] > far + HAIR]
    assert not again
    return far


def normals(bodies, sign):
    for p in bodies:
        for u, v in zip(p["outline"], p["outline"][1:] + p["outline"][:1]):
            nx, ny = v[1] - u[1], u[0] - v[0]
            yield sign * nx / hypot(nx, ny), sign * ny / hypot(nx, ny)


answers = []
for i, pair in enumerate(json.load(open("unions.json"))):
    a, b = pair["a"], pair["b"]
    distance, deepest = FAR, 0
    beside, above = [], []
    for p, q in product(a, b):
        gap = max(0, q["low"] - p["high"], p["low"] - q["high"])
        distance = min(distance, hypot(polygon(p).distance(polygon(q)), gap))
        minkowski, origin = difference(p, q), Point(0, 0)
        if min(p["high"], q["high"]) > max(p["low"], q["low"]):
            beside.append(minkowski)
            if minkowski.contains(origin):
                deepest = max(deepest, min(minkowski.exterior.distance(origin), q["high"] - p["low"], p["high"] - q["low"]))
        if minkowski.contains(origin):
            above.append((q["low"] - p["high"], q["high"] - p["low"]))

    def along(dx, dy):
        cuts = [LineString([(-FAR * dx, -FAR * dy), (FAR * dx, FAR * dy)]).intersection(m) for m in beside]
        return free([tuple(sorted(x * dx + y * dy for x, y in c.coords)) for c in cuts if c.length > HAIR])

    axes = min([free(above), free([(-h, -l) for l, h in above])] + [along(*d) for d in ((1, 0), (-1, 0), (0, 1), (0, -1))])
    shortest = -1
    if i % 5 == 0:
        shortest = min([axes] + [along(*d) for d in list(normals(a, -1)) + list(normals(b, 1))])
    answers.append([round(distance, 6), round(shared(a, b), 3), round(deepest, 6), round(axes, 6), round(shortest, 6)])
print("[" + ",\n".join(json.dumps(a) for a in answers) + "]")
