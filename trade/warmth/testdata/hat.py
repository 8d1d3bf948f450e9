# Half a hat of 0.8 mm sheet, 45 deep and 50 wide, between 40 mm of wool, under 20 mm of air and 5.5 mm of plywood: how much heat passes a metre of it
# and how cold is the board over it. Finite volumes on a graded grid of the rectangles below, solved by scipy; inside 20 C (0.13), outside 0 C (0.04).
import json, sys
import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve

T = 0.8
HALF, WIDE, DEPTH = 25.0, 275.0, 45.0
def air(d, b=None):  # ISO 6946, level flow, emissivities 0.9, mean 10 C: conductivity of a gap d, b in m
    hr = 4 * 5.67e-8 * 283.15 ** 3 / (1 / 0.9 + 1 / 0.9 - 1)
    if b:
        r = d / b
        hr = hr / 2 * (1 + (1 + r * r) ** 0.5 - r)
    return d * (max(1.25, 0.025 / d) + hr)

# x0 y0 x1 y1 conductivity, later over earlier; mm from the outer face
R = [(0, 0, WIDE, T, 50),
     (HALF, T, WIDE, T + 40, 0.04),
     (HALF, T + 40, WIDE, T + 65, air(0.025)),
     (0, T, HALF - T, DEPTH, air(0.045, 0.050)),
     (HALF - T, T, HALF, T + DEPTH, 50),
     (0, DEPTH, HALF, T + DEPTH, 50),
     (0, T + DEPTH, HALF, T + 65, air(0.020)),
     (0, T + 65, WIDE, T + 70.5, 0.13)]

def lines(edges, fine):
    out = []
    for a, b in zip(edges, edges[1:]):
        n = max(4, int(round((b - a) / fine)))
        u = np.linspace(0, 1, n + 1)[:-1]
        out += list(a + (b - a) * (0.5 - 0.5 * np.cos(np.pi * u)))  # close together at both ends
    return np.array(out + [edges[-1]])

def solve(fine):
    x = lines(sorted({v for r in R for v in (r[0], r[2])}), 5 * fine)
    y = lines(sorted({v for r in R for v in (r[1], r[3])}), fine)
    cx, cy = (x[1:] + x[:-1]) / 2, (y[1:] + y[:-1]) / 2
    dx, dy = np.diff(x) / 1000, np.diff(y) / 1000
    k = np.zeros((len(cx), len(cy)))
    for x0, y0, x1, y1, lam in R:
        k[np.ix_((cx > x0) & (cx < x1), (cy > y0) & (cy < y1))] = lam
    nx, ny = k.shape
    at = lambda i, j: i * ny + j
    rows, cols, vals, rhs = [], [], [], np.zeros(nx * ny)
    def link(a, b, g):
        rows.extend([a, a, b, b]); cols.extend([a, b, b, a]); vals.extend([g, -g, g, -g])
    for i in range(nx):
        for j in range(ny):
            if i + 1 < nx:
                link(at(i, j), at(i + 1, j), dy[j] / (dx[i] / 2 / k[i, j] + dx[i + 1] / 2 / k[i + 1, j]))
            if j + 1 < ny:
                link(at(i, j), at(i, j + 1), dx[i] / (dy[j] / 2 / k[i, j] + dy[j + 1] / 2 / k[i, j + 1]))
    out = [dx[i] / (0.04 + dy[0] / 2 / k[i, 0]) for i in range(nx)]
    inn = [dx[i] / (0.13 + dy[-1] / 2 / k[i, -1]) for i in range(nx)]
    for i in range(nx):
        for cell, g, t in ((at(i, 0), out[i], 0.0), (at(i, ny - 1), inn[i], 20.0)):
            rows.append(cell); cols.append(cell); vals.append(g); rhs[cell] += g * t
    t = spsolve(coo_matrix((vals, (rows, cols)), shape=(nx * ny,) * 2).tocsr(), rhs).reshape(nx, ny)
    heat = sum(inn[i] * (20 - t[i, -1]) for i in range(nx))
    surface = [20 - inn[i] * (20 - t[i, -1]) / dx[i] * 0.13 for i in range(nx)]
    return heat / 20, min(surface) / 20

a, b = solve(1.0), solve(0.5)
print(json.dumps({"coupling": b[0], "factor": b[1], "coupling_coarse": a[0], "factor_coarse": a[1]}))
