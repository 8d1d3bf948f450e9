# A battery through twelve days, hour by hour, by scipy: charge is integrated as a differential equation instead of in closed form, tables are
# read by numpy. The weather is made up of sines, rounded to the steps in which the years are kept. Written beside it: days.answer.json.
#
#   python3 days.py > days.answer.json
import json
import numpy as np
from scipy.integrate import solve_ivp

DAYS = 12
COLD_LEAD = ([-20, -10, 0, 10, 25], [0.55, 0.725, 0.85, 0.92, 1.0])
COLD_LITHIUM = ([-20, 0, 25], [0.70, 0.85, 1.0])
# chemistry: usable, Peukert, kept of a charge, V given, V taken, C taken, taper from, share lost a month, table
KINDS = {
    "lithium iron phosphate": (0.8, 1.05, 0.99, 12.8, 13.5, 0.5, 0.95, 0.025, COLD_LITHIUM),
    "AGM lead": (0.5, 1.10, 0.92, 12.5, 14.0, 0.30, 0.80, 0.03, COLD_LEAD),
    "flooded lead": (0.5, 1.25, 0.85, 12.5, 14.0, 0.15, 0.80, 0.06, COLD_LEAD),
}

def weather(bright, mean):
    light, air = [], []
    for h in range(24 * (DAYS + 1)):
        day, hour = divmod(h, 24)
        cloud = 0.55 + 0.45 * np.sin(2.1 * day + 0.4)
        g = max(0.0, bright * cloud * np.sin(np.pi * (hour + 0.5 - 7) / 10)) if 7 <= hour < 17 else 0.0
        light.append(round(g / 0.025) * 0.025)
        t = mean + 5 * np.sin(0.9 * day) + 4 * np.sin(2 * np.pi * (hour - 9) / 24)
        air.append(round(t / 0.5) * 0.5)
    return light, air

def cold_charge(t):
    if t < 0 or t > 60: return 0.0
    for upto, c in ((5, 0.1), (10, 0.2), (25, 1.0), (50, 0.75)):
        if t < upto: return c
    return 0.1

def panel(watts, light, air, losses, pwm_best, amps, taking):
    cell = air + (47 - 20) / 800 * light
    p = watts * light / 1000 * np.prod([1 - l for l in losses]) * (1 - 0.0037 * (cell - 25))
    if pwm_best:
        p *= min(1.0, 13.3 / (pwm_best * (1 - 0.0035 * (cell - 25))))
    else:
        p *= 0.95
    return max(0.0, min(p, amps * taking))

def go(case):
    usable, k, kept, gives, takes, c_rate, taper, lost, table = KINDS[case["chemistry"]]
    holds, up = case["holds"], 7
    light, air = weather(case["bright"], case["mean"])
    losses = [0.05, 0.03, 0.02, 0.005, 0.015, 0.01]
    x, out, flat = 0.0, [], 0
    lead = "lead" in case["chemistry"]
    for day in range(DAYS):
        out_of_doors = round(np.mean(air[24 * day:24 * day + 24]) / 0.5) * 0.5
        # the cabin follows the day's weather in all hours but those that are heated: 18 to 24 and 0 to 7
        off = out_of_doors - case["mean"]
        warmth = case["cabin"] + off * (11 / 24)
        bottom = usable * holds * np.interp(warmth, *table)
        most = np.inf if lead else cold_charge(warmth) * holds
        x += (holds - x) * lost / 30.4 * 2 ** ((warmth - 20) / 10)
        empty = False
        for i in range(24):
            hour, h = (up + i) % 24, 24 * day + up + i
            load = case["load"] * (1 + 0.5 * np.cos(hour))
            cabin = case["cabin"] + (off if 7 <= hour < 18 else 0)
            load += min(45.0, max(0.0, 0.6 * (cabin - 5)) + 3)
            gain = panel(case["watts"], light[h], air[h], losses, case["pwm"], case["amps"], takes) if case["watts"] else 0.0
            gain += case["engine"] * takes * (0.75 if hour == 8 else 0)
            net = gain - load
            if net >= 0:
                offered = min(net / takes, most)
                def rate(t, y):
                    return -kept * min(offered, c_rate * holds, c_rate * holds * max(y[0], 0) / ((1 - taper) * holds))
                x = float(solve_ivp(rate, (0, 1), [x], rtol=1e-9, atol=1e-10, max_step=0.002).y[0, -1])
            else:
                was, i_out, rated = x, -net / gives, holds / 20
                x += i_out if i_out <= rated else rated * (i_out / rated) ** k
                if x > bottom:
                    x, empty = max(was, bottom), True
        flat += empty
        out.append(x)
    return dict(case, light=light, air=air, missing=out, flat=flat)

CASES = [
    {"name": "lithium with sun and engine, colder than freezing on some days", "chemistry": "lithium iron phosphate", "holds": 100, "watts": 180, "pwm": 0, "amps": 20, "engine": 30, "load": 14, "cabin": 3, "bright": 260, "mean": -1},
    {"name": "an AGM battery that runs flat under a PWM controller", "chemistry": "AGM lead", "holds": 58, "watts": 100, "pwm": 18, "amps": 20, "engine": 0, "load": 15, "cabin": 14, "bright": 420, "mean": 8},
    {"name": "flooded lead in summer, bright days and a clipped panel", "chemistry": "flooded lead", "holds": 110, "watts": 360, "pwm": 0, "amps": 10, "engine": 16, "load": 22, "cabin": 24, "bright": 900, "mean": 20},
    {"name": "lead without a panel, filled by the engine alone", "chemistry": "flooded lead", "holds": 90, "watts": 0, "pwm": 0, "amps": 0, "engine": 30, "load": 6, "cabin": 12, "bright": 0, "mean": 10},
]
print(json.dumps([go(c) for c in CASES]))
