# A section of a van by scipy's cubic, walls carried on up and down, and the true parallel line 60 inside it by shapely's buffer:
# its half-breadth at ten heights.
import json
import numpy as np
from scipy.interpolate import PchipInterpolator
from shapely.geometry import LineString, Polygon

heights = [0, 300, 600, 900, 1200, 1500, 1680]
half = [904, 929, 939, 934, 910, 851, 755]
side = PchipInterpolator(heights, half)
z = np.linspace(0, 1680, 1681)
y = side(z)
foot = [(y[0] - 500 * side(0, 1), -500.0)]
head = [(y[-1] + 500 * side(1680, 1), 2180.0)]
line = foot + list(zip(y, z)) + head
inner = Polygon([(0, -500)] + line + [(0, 2180)]).buffer(-60, resolution=64)
out = []
for at in [100, 300, 450, 600, 750, 900, 1050, 1200, 1350, 1500]:
    cut = inner.intersection(LineString([(0, at), (2000, at)]))
    out.append([at, cut.bounds[2]])
print(json.dumps({"heights": heights, "half": half, "inside": out}))
