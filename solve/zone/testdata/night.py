# A night in a closed room of 10 m3: two people, a heater that is switched, a window pane and a metal frame on which
# water condenses, airing in the morning until they are dry. The balances of the package solved by scipy to 1e-9, with
# what drives them constant within each hour. Saturation: ISO 13788.
import json, math
from scipy.integrate import solve_ivp

V, AIR, LATENT = 10.0, 1224.0, 2.5e6
LOSS = 6.0
#         capacity J/K, to air W/K, to outside W/K, area m2, transfer m/s, first temperature
BODIES = [(180e3, 150.0, 22.0, 0.0, 0.0), (16e3, 15.4, 24.0, 2.0, 0.0025), (20e3, 10.0, 9.0, 0.8, 0.004)]
OUT = [4, 3, 2, 1, 0, -1, -2, -2, -1, 2, 6, 9]           # C
HUMID = [0.90] * 9 + [0.75, 0.60, 0.50]
HEAT = [900, 700, 144, 144, 144, 144, 744, 744, 600, 300, 0, 0]  # W, people among it
VENT = [20, 20, 15, 15, 15, 15, 15, 20, 30, 120, 200, 200]       # m3/h
VAPOUR = [140, 100, 80, 80, 80, 80, 80, 80, 110, 0, 0, 0]        # g/h
CO2 = [33, 30, 22, 22, 22, 22, 22, 22, 30, 0, 0, 0]              # L/h
SUN = [0] * 9 + [0, 60, 120]                                     # W to the pane

def psat(t):
    return 610.5 * math.exp(21.875 * t / (265.5 + t) if t < 0 else 17.269 * t / (237.3 + t))

def density(t, rh):
    return rh * psat(t) / (461.5 * (t + 273.15))

def rates(hour):
    te, ve = OUT[hour], density(OUT[hour], HUMID[hour])
    q = VENT[hour] / 3600
    def f(_, y):
        y = y.tolist()
        t, v, c = y[0], y[1], y[2]
        n = len(BODIES)
        tb, w = y[3:3 + n], y[3 + n:]
        d = [0.0] * len(y)
        heat = (LOSS + AIR * q) * (te - t) + HEAT[hour]
        vapour = q * (ve - v) + VAPOUR[hour] / 3.6e6
        for k, (cap, ga, ge, area, beta) in enumerate(BODIES):
            m = beta * area * (v - density(tb[k], 1)) if area else 0.0
            if m < 0 and w[k] <= 0:
                m = 0.0
            heat += ga * (tb[k] - t)
            vapour -= m
            d[3 + k] = (ga * (t - tb[k]) + ge * (te - tb[k]) + LATENT * m + (SUN[hour] if k == 1 else 0)) / cap
            d[3 + n + k] = m
        d[0] = heat / (AIR * V)
        d[1] = vapour / V
        d[2] = (q * (420e-6 - c) + CO2[hour] / 3.6e6) / V
        return d
    return f

y = [8.0, density(8, 0.6), 420e-6] + [8.0] * 3 + [0.0] * 3
out = []
for hour in range(12):
    s = solve_ivp(rates(hour), (0, 3600), y, method="RK45", rtol=1e-8, atol=1e-11, max_step=4.0, t_eval=[600 * k for k in range(1, 7)])
    assert s.success
    for k in range(6):
        z = s.y[:, k]
        out.append({"temperature": z[0], "humidity": z[1] / density(z[0], 1), "co2": z[2] * 1e6,
                    "bodies": list(z[3:6]), "water": [max(w, 0.0) * 1000 for w in z[6:9]]})
    y = s.y[:, -1]

def rounded(v):
    return [rounded(e) for e in v] if isinstance(v, list) else {k: rounded(e) for k, e in v.items()} if isinstance(v, dict) else round(float(v), 5)

print("[\n" + ",\n".join(json.dumps(rounded(o)) for o in out) + "\n]")
