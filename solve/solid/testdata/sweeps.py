# How well the covers in sweeps.json fit: the area [mm2] of turned copies that is outside of the cover by more than 0.001 mm, and how far
# [mm] the cover's pieces reach beyond the copies. Copies stand no more than 6 mm apart at the far corner, so the second is
# too large by no more than sqrt(e*e + 9(1 + e/far)) - e for an excess e.
import json
from math import ceil, hypot
from shapely.affinity import rotate
from shapely.geometry import Point, Polygon
from shapely.ops import unary_union
from shapely.prepared import prep

answers = []
for case in json.load(open("sweeps.json")):
    about, angle = tuple(case["about"]), case["angle"]
    body = Polygon(case["outline"])
    far = max(hypot(x - about[0], y - about[1]) for x, y in case["outline"])
    n = ceil(abs(angle) * far / 6)
    copies = unary_union([rotate(body, angle * i / n, origin=about, use_radians=True) for i in range(n + 1)])
    pieces = [Polygon(p) for p in case["cover"]]
    missing = copies.difference(unary_union([p.buffer(1e-3, 1) for p in pieces])).area
    places = [p.exterior.interpolate(s) for p in pieces for s in range(0, int(p.length), 40)]
    places += [Point(q) for p in case["cover"] for q in p]
    prepared = prep(copies)
    excess = max([q.distance(copies) for q in places if not prepared.contains(q)], default=0)
    answers.append([round(missing, 6), round(excess, 6), round(far, 3)])
print("[" + ",\n".join(json.dumps(a) for a in answers) + "]")
