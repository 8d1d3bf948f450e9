"""Makes random vans: banks of batteries with circuits as a builder would write them (vans.json, for this package), and the same
vans as netlists for ngspice (vans.cir), worked out here from the tables apart from the Go code.

    /usr/bin/python3 vans.py

Copper is IEC 60228 class 5 at 30 °C, both cores counted; fuses are the cold resistances of blade fuses, 78 mV at the rating of
larger ones; joints 1 mohm a circuit and 0.5 mohm behind the main fuse; inner resistances 5, 3.5, 5.5 and 3 mohm for 100 Ah of
flooded lead, AGM, gel and lithium. Motors are resistances, all else draws constant power, both for its current at 12.8 V.
"""
import json, random

PER_KM = {1: 19.5, 1.5: 13.3, 2.5: 7.98, 4: 4.95, 6: 3.30, 10: 1.91, 16: 1.21, 25: 0.780, 35: 0.554, 50: 0.386}
BLADES = {3: 31.1, 5: 17.8, 7.5: 10.9, 10: 7.4, 15: 4.6, 20: 3.3, 25: 2.36, 30: 1.9, 40: 1.4}
INNER = {"flooded": 5.0, "agm": 3.5, "gel": 5.5, "lithium": 3.0}
WARM = 1 + 0.00393 * 10
KINDS = ["fridge", "pump", "fan", "heater", "light", "socket", "inverter", "other"]


def fuse_mohm(amps):
    return BLADES.get(amps, 78.0 / amps)


def pair_mohm(mm, area):
    return 2 * mm / 1000 * PER_KM[area] * WARM


def van(rng, number):
    batteries = [{"ID": f"b{k}", "Chemistry": rng.choice(list(INNER)), "AmpHours": rng.choice([80, 100, 110, 200])} for k in range(rng.randint(1, 2))]
    main = {"area": rng.choice([16, 25, 35, 50]), "mm": rng.randint(3, 15) * 100, "fuse": rng.choice([100, 125, 150, 200])}
    circuits = []
    for k in range(rng.randint(3, 9)):
        loads = rng.sample(KINDS, rng.randint(1, 2))
        amps = rng.choice([0.5, 1.5, 2.5, 4, 6] if k else [14, 30])
        circuits.append({"id": f"c{k}", "from": "house" if k < 2 or rng.random() < 0.8 else f"c{rng.randrange(k)}", "mm": rng.randint(8, 60) * 100,
                         "area": rng.choice([1.5, 2.5, 4, 6] if k else [10, 16]), "amps": amps, "fuse": rng.choice([5, 7.5, 10, 15, 20, 25] if k else [40, 60]), "loads": loads})
    return {"name": f"van {number}", "batteries": batteries, "main": main, "circuits": circuits}


def netlist(v, x):
    inner = 1 / sum(b["AmpHours"] / 100 / INNER[b["Chemistry"]] for b in v["batteries"])
    m = v["main"]
    yield f"VBAT{x} {x}oc 0 DC 12.8"
    yield f"RINT{x} {x}oc {x}posts {inner!r}m"
    yield f"RMAIN{x} {x}posts {x}mf {fuse_mohm(m['fuse']) + 0.5!r}m"
    yield f"RTRUNK{x} {x}mf {x}bus {pair_mohm(m['mm'], m['area'])!r}m"
    for c in v["circuits"]:
        i, start = c["id"], x + ("bus" if c["from"] == "house" else c["from"])
        yield f"RF{x}{i} {start} {x}{i}f {fuse_mohm(c['fuse']) + 1!r}m"
        yield f"RC{x}{i} {x}{i}f {x}{i} {pair_mohm(c['mm'], c['area'])!r}m"
        if set(c["loads"]) <= {"pump", "fan"}:
            yield f"RL{x}{i} {x}{i} 0 {12.8 / c['amps']!r}"
        else:
            yield f"BP{x}{i} {x}{i} 0 I = {12.8 * c['amps']!r}/V({x}{i})"
        yield f".nodeset v({x}{i})=12.8"


def inputs(v):
    way = lambda c: {"ID": c["id"], "About": "/power/circuits/" + c["id"], "Length": {"MM": c["mm"], "Known": "measured"}, "Section": c["area"],
                     "Fuse": {"Said": True, "Amps": c["fuse"], "Away": -1, "About": f"/power/circuits/{c['id']}/fuse"}}
    main = {**v["main"], "id": "main"}
    return {"Banks": [{"ID": "house", "About": "/power/batteries/house", "Batteries": v["batteries"], "MainFuse": {"Away": -1, "About": "/power/batteries/house"}}],
            "Circuits": [{**way(c), "From": c["from"], "Current": c["amps"], "Loads": [{"ID": k, "Name": k, "Kind": k} for k in c["loads"]]} for c in v["circuits"]]
                        + [{**way(main), "From": "house"}]}


def main():
    rng = random.Random(20261128)
    vans = [van(rng, k) for k in range(8)]
    with open("vans.json", "w") as f:
        f.write("[\n" + ",\n".join(json.dumps({"Name": v["name"], "Inputs": inputs(v)}, separators=(",", ":")) for v in vans) + "\n]\n")
    lines = ["* random vans; made by vans.py"]
    for k, v in enumerate(vans):
        lines += netlist(v, f"x{k}_")
    lines += [".options reltol=1e-11 abstol=1e-13 vntol=1e-12 gmin=1e-18 itl1=500", ".control", "set numdgt=14", "op"]
    for k, v in enumerate(vans):
        lines += [f"print v(x{k}_posts)", f"print v(x{k}_bus)"] + [f"print v(x{k}_{c['id']})" for c in v["circuits"]]
    with open("vans.cir", "w") as f:
        f.write("\n".join(lines + ["quit", ".endc", ".end"]) + "\n")


main()
