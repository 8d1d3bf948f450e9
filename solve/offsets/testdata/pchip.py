# The shape-preserving cubic of scipy through readings with a hump, a flat, uneven steps and a turn at the end.
import json
import numpy as np
from scipy.interpolate import PchipInterpolator

cases = {
    "half-breadths of a section": ([0, 300, 600, 900, 1200, 1500, 1680], [896, 921, 931, 926, 902, 842, 744]),
    "half-breadths along a body": ([0, 700, 1475, 2250, 2950], [896, 902, 904, 898, 846]),
    "two points only": ([0, 2], [1, 5]),
    "a flat, a step and uneven intervals": ([0, 1, 1.5, 4, 4.2, 9], [2, 2, 2, 7, 3, 3.5]),
    "an end that turns at once": ([0, 1, 2, 3], [0, 10, 9, 20]),
}
out = []
for name, (x, y) in cases.items():
    p = PchipInterpolator(x, y)
    at = np.linspace(x[0], x[-1], 41)
    out.append({"name": name, "x": x, "y": y, "at": list(at), "value": list(p(at)), "slope": list(p(at[:-1], 1))})
print(json.dumps(out))
