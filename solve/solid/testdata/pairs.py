# What shapely says of the pairs in pairs.json: distance, shared volume, and how deep they overlap.
# The depth is worked out another way than by separating axes: as the distance of the origin from the border of the
# Minkowski difference, which is the convex hull of all differences of corners, and from the two ends in z.
import json
from math import hypot
from shapely.geometry import MultiPoint, Point, Polygon

answers = []
for pair in json.load(open("pairs.json")):
    a, b = pair["a"], pair["b"]
    p, q = Polygon(a["outline"]), Polygon(b["outline"])
    gap = max(0, b["low"] - a["high"], a["low"] - b["high"])
    height = min(a["high"], b["high"]) - max(a["low"], b["low"])
    shared = p.intersection(q).area * max(0, height)
    depth = 0
    if height > 0:
        hull = MultiPoint([(u[0] - v[0], u[1] - v[1]) for u in a["outline"] for v in b["outline"]]).convex_hull
        origin = Point(0, 0)
        if hull.contains(origin):
            depth = min(hull.exterior.distance(origin), b["high"] - a["low"], a["high"] - b["low"])
    answers.append([round(hypot(p.distance(q), gap), 6), round(shared, 3), round(depth, 6)])
print("[" + ",\n".join(json.dumps(a) for a in answers) + "]")
