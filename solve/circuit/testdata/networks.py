"""Makes the networks that are solved here and by ngspice: five cases of a branched one drawn by hand, 50 random trees.

    /usr/bin/python3 networks.py

writes networks.json (for this package), networks.cir (all of them side by side, for ngspice: node p3 of network 7 is
x7_p3), and fifty.json and fifty.cir, the tree of 50 nodes alone, whose whole process is timed. A constant power is a
behavioural current source I = P/V, begun at the source's voltage. A tree in which any load has less than 0.6 of that is
thinned out, so that no network stands near the lower of its two solutions; for this ngspice (39.3 was used) is run on
each tree.
"""
import json, random, re, subprocess

BEGIN = ".options reltol=1e-11 abstol=1e-13 vntol=1e-12 gmin=1e-18 itl1=500\n.control\nset numdgt=14\nop"
END = "quit\n.endc\n.end\n"


def parts(net, x):
    """The lines of one network, each of its nodes and parts marked with x."""
    node = lambda n: "0" if n == net["Reference"] else x + n
    for k, s in enumerate(net["Sources"]):
        yield f"V{x}{k} {x}e{k} {node(s['From'])} DC {s['Voltage']!r}"
        yield f"RS{x}{k} {x}e{k} {node(s['To'])} {s['Resistance']!r}"
    for k, c in enumerate(net["Conductors"]):
        yield f"RC{x}{k} {node(c['From'])} {node(c['To'])} {c['Resistance']!r}"
    for k, l in enumerate(net["Loads"]):
        a, b = node(l["From"]), node(l["To"])
        if l.get("Resistance"):
            yield f"RL{x}{k} {a} {b} {l['Resistance']!r}"
        if l.get("Current"):
            yield f"IL{x}{k} {a} {b} DC {l['Current']!r}"
        if l.get("Power"):
            yield f"BP{x}{k} {a} {b} I = {l['Power']!r}/V({a},{b})"
    returns = net["Name"].startswith("tree")
    for n in nodes(net):
        yield f".nodeset v({x}{n})={0 if returns and n[0] == 'm' else net['Sources'][0]['Voltage']}"


def prints(net, x):
    return [f"print v({x}{n})" for n in nodes(net)] + [f"print i(v{x}{k})" for k in range(len(net["Sources"]))]


def deck(title, nets, wanted=prints):
    marked = [(f"x{k}_", net) for k, net in enumerate(nets)]
    lines = ["* " + title + "; made by networks.py"] + [line for x, net in marked for line in parts(net, x)] + [BEGIN]
    return "\n".join(lines + [line for x, net in marked for line in wanted(net, x)] + [END])


def nodes(net):
    ends = [n for part in net["Sources"] + net["Conductors"] + net["Loads"] for n in (part["From"], part["To"])]
    return [n for n in dict.fromkeys(ends) if n != net["Reference"]]


def voltages(net):
    out = subprocess.run(["ngspice", "-b", "/dev/stdin"], input=deck("one", [net]), capture_output=True, text=True).stdout
    found = {k: float(v) for k, v in re.findall(r"^v\(x0_(\w+)\) = (\S+)", out, re.M)}
    return {net["Reference"]: 0, **{n: found[n] for n in nodes(net)}}


def branched(name, inverter=440, charger=0, cable=1, volts=12.8, inside=0.005):
    c = lambda name, a, b, r: {"Name": name, "From": a, "To": b, "Resistance": r}
    w = lambda name, a, b, r: c(name, a, b, r * cable)
    load = lambda name, a, **what: {"Name": name, "From": a, "To": "zero", **what}
    return {"Name": "branched network, case " + name, "Reference": "zero", "Sources": [
        {"Name": "battery", "From": "zero", "To": "bat", "Voltage": volts, "Resistance": inside}],
        "Conductors": [c("main fuse", "bat", "mf", 0.0012), w("main", "mf", "bus", 0.00234),
            c("fuse 1", "bus", "f1", 0.0178), w("wire 1", "f1", "n1", 0.1596), c("fuse 2", "bus", "f2", 0.0046),
            w("wire 2", "f2", "n2", 0.04455), c("fuse 3", "bus", "f3", 0.0074), w("wire 3", "f3", "n3", 0.0798),
            w("wire 3b", "n3", "n3b", 0.0532), c("fuse 4", "bus", "f4", 0.0013), w("wire 4", "f4", "n4", 0.001872)],
        "Loads": [load("lights", "n1", Power=18), load("fridge", "n2", Power=55), load("pump", "n3", Resistance=2.4),
            load("fan", "n3b", Resistance=9), load("inverter", "n4", Power=inverter), load("charger", "bus", Current=-charger)]}


def tree(number, count):
    """A tree of count nodes. Every third has a return of its own kind: a second tree from the reference."""
    r = random.Random(number)
    volts = r.choice([12, 24, 48]) * r.uniform(0.95, 1.15)
    spread = lambda low, high: float(f"{low * (high / low) ** r.random():.6g}")
    net = {"Name": f"tree {number} of {count} nodes", "Reference": "zero", "Conductors": [], "Loads": [],
           "Sources": [{"Name": "s", "From": "zero", "To": "p0", "Voltage": round(volts, 3), "Resistance": spread(0.001, 0.02)}]}
    pairs = number % 3 == 0
    for k in range(1, count // 2 if pairs else count):
        up = r.randrange(max(0, k - 8), k)
        net["Conductors"].append({"Name": f"w{k}", "From": f"p{up}", "To": f"p{k}", "Resistance": spread(0.0005, 0.1)})
        if pairs:
            net["Conductors"].append({"Name": f"r{k}", "From": f"m{k}", "To": f"m{up}" if up else "zero", "Resistance": spread(0.0005, 0.1)})
        if r.random() < 0.7:
            kind, size = r.randrange(4), volts * volts * spread(0.0005, 0.2)
            what = {"Power": size} if kind == 0 else {"Current": size / volts} if kind == 1 else {"Resistance": volts * volts / size}
            if kind == 3:
                what = {"Power": size / 2, "Current": size / 4 / volts, "Resistance": 4 * volts * volts / size}
            what = {k: float(f"{v:.6g}") for k, v in what.items()}
            net["Loads"].append({"Name": f"l{k}", "From": f"p{k}", "To": f"m{k}" if pairs else "zero", **what})
    if r.random() < 0.3:  # a second source somewhere, or something that puts a current in
        k = r.randrange(1, count // 2 if pairs else count)
        end = f"m{k}" if pairs else "zero"
        if r.random() < 0.5:
            net["Sources"].append({"Name": "t", "From": end, "To": f"p{k}", "Voltage": round(volts * r.uniform(0.97, 1.03), 3), "Resistance": spread(0.005, 0.1)})
        else:
            net["Loads"].append({"Name": "in", "From": f"p{k}", "To": end, "Current": -spread(1, 20)})
    return net


def thin(net):
    for l in net["Loads"]:
        for key, by in (("Power", 0.7), ("Current", 0.7), ("Resistance", 1 / 0.7)):
            if l.get(key, 0) > 0:
                l[key] = float(f"{l[key] * by:.6g}")


def easy(net):
    try:
        v = voltages(net)
    except KeyError:  # no convergence
        return False
    return all(v[l["From"]] - v[l["To"]] > 0.6 * net["Sources"][0]["Voltage"] for l in net["Loads"])


networks = [branched("A"), branched("B", inverter=0), branched("C", inverter=0, charger=20), branched("D", cable=1.1572),
            branched("E", volts=11.9, inside=0.025)]
for k in range(1, 51):
    networks.append(tree(k, 50 if k == 50 else random.Random(-k).randrange(4, 60)))
    while not easy(networks[-1]):
        thin(networks[-1])
texts = [json.dumps(n, separators=(",", ":")) for n in networks]
open("networks.json", "w").write("[\n" + ",\n".join(texts) + "\n]\n")
open("fifty.json", "w").write(texts[-1] + "\n")
open("networks.cir", "w").write(deck("networks.json", networks))
open("fifty.cir", "w").write(deck("fifty.json", networks[-1:], lambda net, x: [f"print v({x}{nodes(net)[-1]})"]))
