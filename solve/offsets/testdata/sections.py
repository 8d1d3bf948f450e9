# Three sections of odd shape as polygons of the readings and, between them, of scipy's cubic at 400 points a side: area, outline length and
# the height over three places, from shapely.
import json
import numpy as np
from scipy.interpolate import PchipInterpolator
from shapely.geometry import LineString, Polygon

heights = [0, 300, 600, 900, 1200, 1500, 1680]
shapes = {
    "a small van": [896, 921, 931, 926, 902, 842, 744],
    "pinched at the waist": [700, 640, 560, 610, 720, 690, 500],
    "a tent": [900, 780, 640, 500, 360, 190, 40],
}
out = []
for name, half in shapes.items():
    side = PchipInterpolator(heights, half)
    z = np.linspace(0, 1680, 400)
    y = side(z)
    # the readings alone close flat at the last height
    ring = list(zip(y, z)) + list(zip(-y[::-1], z[::-1]))
    body = Polygon(ring)
    side_line = LineString(zip(y, z))
    window = Polygon([(-300, 200), (650, 200), (650, 1600), (-300, 1600)])
    over = []
    for q in (100.0, half[-1] + 20.0, half[0] - 10.0):
        cut = body.intersection(LineString([(q, -10), (q, 5000)]))
        over.append([q, cut.bounds[3] if not cut.is_empty else 0])
    out.append({"name": name, "half": half, "area": body.area, "side": side_line.length,
                "window": body.intersection(window).area, "centre": body.centroid.y, "over": over})
print(json.dumps({"heights": heights, "sections": out}))
