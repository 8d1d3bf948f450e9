# A body through five stations and seven heights by scipy's cubics: first up each station, then along x at 400 heights.
# Its volume under the top row, the area of one side and of the floor, and half-breadths at a few places.
import json
import numpy as np
from scipy.interpolate import PchipInterpolator

xs = [0, 700, 1475, 2250, 2950]
heights = [0, 300, 600, 900, 1200, 1500, 1680]
half = [
    [896, 921, 931, 926, 902, 842, 744],
    [902, 927, 937, 932, 908, 849, 752],
    [904, 929, 939, 934, 910, 851, 755],
    [898, 923, 933, 928, 904, 844, 746],
    [846, 874, 884, 878, 852, 790, 690],
]
z = np.linspace(0, 1680, 421)
up = np.array([PchipInterpolator(heights, row)(z) for row in half])
x = np.linspace(0, 2950, 591)
y = PchipInterpolator(xs, up, axis=0)(x)
yx, yz = np.gradient(y, x, z)
element = np.sqrt(1 + yx**2 + yz**2)
points = [[350, 150], [1100, 450], [1800, 1050], [2600, 1350], [2800, 1600], [2950, 800]]
at = [float(PchipInterpolator(xs, [PchipInterpolator(heights, row)(q) for row in half])(p)) for p, q in points]
print(json.dumps({
    "x": xs, "heights": heights, "half": half,
    "volume": 2 * np.trapz(np.trapz(y, z, axis=1), x),
    "side": np.trapz(np.trapz(element, z, axis=1), x),
    "floor": 2 * np.trapz(y[:, 0], x),
    "points": points, "at": at,
}))
