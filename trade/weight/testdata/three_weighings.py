# The same van three times on the scale, worked another way than the program does: the masses of the bare van on each axle
# are unknown with an almost flat prior, every weighing (the base too) is a reading, all unknowns are solved at once in
# information form (weighted least squares). Items: mean and deviation [kg], middle from the front axle [mm].
import csv
import json
import numpy as np

L, D = 3350.0, 1290.0
DIESEL, TANK = 0.84, 80.0
items = []  # (name, mean, dev, x from the front axle, today)
for row in csv.reader(line for line in open("three_vans.csv") if not line.startswith("#")):
    if row[0] == "dipper" and row[1] != "gear":
        items.append((row[2], float(row[3]), 0.12 * float(row[3]), float(row[4]) + D, row[6] == "yes"))
items.append(("old-linings", 48.0, 10.0, 1475.0 + D, False))
index = {name: i + 2 for i, (name, *_) in enumerate(items)}
n = len(items) + 2

info, vector = np.zeros((n, n)), np.zeros(n)


def observe(h, value, variance):
    global info, vector
    info = info + np.outer(h, h) / variance
    vector = vector + h * value / variance


def shares(names):
    front, rear = np.zeros(n), np.zeros(n)
    front[0] = rear[1] = 1
    for name in names:
        x = items[index[name] - 2][3]
        front[index[name]], rear[index[name]] = 1 - x / L, x / L
    return front, rear


for k in (0, 1):
    e = np.zeros(n)
    e[k] = 1
    observe(e, 1000.0, 1e9)
for name, mean, dev, *_ in items:
    e = np.zeros(n)
    e[index[name]] = 1
    observe(e, mean, dev ** 2)

FUEL = (0.5 * TANK * DIESEL, 560.0 + D)
lined = ["floor/0", "sides/0", "roof/0", "doors/0", "fan", "window"]
for front, rear, times, aboard, fixed in [
    (1110, 875, 2, ["old-linings"], [FUEL, (22.0, 0.0 + D), (36.0, 1500.0 + D)]),
    (1080, 800, 2, [], [FUEL]),
    (1110, 980, 1, lined, [FUEL, (25.0, 2400.0 + D)]),
]:
    hf, hr = shares(aboard)
    observe(hf, front - sum(m * (1 - x / L) for m, x in fixed), 20.0 ** 2 / 12 / times)
    observe(hr, rear - sum(m * x / L for m, x in fixed), 20.0 ** 2 / 12 / times)

cov = np.linalg.inv(info)
mean = cov @ vector


def load(h, fixed):
    return {"mean": float(h @ mean + fixed), "dev": float(np.sqrt(h @ cov @ h))}


answer = {}
for name, chosen in [("finished", [i[0] for i in items[:-1]]), ("today", [i[0] for i in items if i[4]])]:
    hf, hr = shares(chosen)
    m, x = FUEL
    answer[name] = {"total": load(hf + hr, m), "front": load(hf, m * (1 - x / L)), "rear": load(hr, m * x / L)}
print(json.dumps(answer))
