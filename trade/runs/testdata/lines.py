"""Lengths and bends of random ways by numpy, and how much of a straight leg lies in an upright prism by shapely. Seeded."""
import json
import numpy as np
from shapely.geometry import LineString, MultiPoint
from shapely.geometry.polygon import orient

rng = np.random.RandomState(7)
ways = []
for _ in range(40):
    n = rng.randint(3, 8)
    p = np.round(rng.uniform([0, -900, 0], [3000, 900, 1800], (n, 3)), 1)
    plan = [LineString(p[i:i + 2, :2]).length for i in range(n - 1)]
    length = float(sum(np.hypot(a, p[i + 1, 2] - p[i, 2]) for i, a in enumerate(plan)))
    v = np.diff(p, axis=0)
    turns, radii = [], []
    for i in range(n - 2):
        a, b = v[i], v[i + 1]
        t = float(np.degrees(np.arctan2(np.linalg.norm(np.cross(a, b)), a @ b)))
        la = np.linalg.norm(a) * (1 if i == 0 else 0.5)
        lb = np.linalg.norm(b) * (1 if i == n - 3 else 0.5)
        turns.append(round(t, 9))
        radii.append(round(float(min(la, lb) / np.tan(np.radians(t) / 2)), 6))
    ways.append({"points": p.tolist(), "length": round(length, 6), "turns": turns, "radii": radii})

prisms = []
for _ in range(60):
    outline = orient(MultiPoint(np.round(rng.uniform(-400, 400, (7, 2)), 1)).convex_hull)
    low = round(float(rng.uniform(0, 300)), 1)
    high = low + round(float(rng.uniform(100, 600)), 1)
    a, b = np.round(rng.uniform([-600, -600, -100], [600, 600, 900], (2, 3)), 1)
    line = LineString([a[:2], b[:2]])
    cut = line.intersection(outline)
    inside = 0.0
    if cut.length > 0:
        t = sorted(line.project(type(cut.centroid)(c)) / line.length for c in cut.coords)
        z = sorted([(low - a[2]) / (b[2] - a[2]), (high - a[2]) / (b[2] - a[2])])
        inside = max(0.0, min(t[-1], z[1], 1) - max(t[0], z[0], 0)) * float(np.linalg.norm(b - a))
    prisms.append({"outline": [list(c) for c in outline.exterior.coords[:-1]], "low": low, "high": high,
                   "a": a.tolist(), "b": b.tolist(), "inside": round(inside, 6)})
print(json.dumps({"ways": ways, "prisms": prisms}))
