"""Reference cases solved by OpenDSS, through its Python bindings OpenDSSDirect.py.

Each place is a bus, each of its conductors a node of it. Runs, ties and shorts are reactors, which carry a full matrix
and, other than lines, no hidden capacitance. OpenDSS knows no impedance of zero: 0.1 microohm stands for it, 0.01
microohm in faults. Loads with several laws become several loads; one below 0.7 of its rated voltage becomes the
impedance it is there, as our law says.
"""

import math

import opendssdirect as dss

from elements import LOW_SHARE, all_points, conductors, current, number, place, voltage

# Change of any voltage over twenty rounds, below which a solution is one.
STILL_V = 1e-9
MODELS = (("powerShare", 1), ("currentShare", 5), ("impedanceShare", 2))


class Refused(Exception):
    pass


def command(text):
    answer = dss.Text.Command(text)
    if answer:
        raise Refused(f"{text}: {answer}")


def version():
    return dss.__version__


class Circuit:
    def __init__(self, case):
        self.case = case
        self.zero = 1e-8 if case["kind"] == "fault" else 1e-7
        self.nodes = {"earth": "earth.0"}
        counts = {}
        for point in all_points(case):
            bus = place(point).lower()
            counts[bus] = counts.get(bus, 0) + 1
            self.nodes[point] = f"{bus}.{counts[bus]}"
        self.buses = counts
        self.names = {}

    def ohm(self, pair):
        value = number(pair)
        return value if value else complex(self.zero, 0)

    def element(self, kind, name):
        self.names.setdefault((kind, name), f"e{len(self.names)}")
        return self.names[kind, name]

    def terminal(self, ends):
        """bus.node.node of points that lie on one bus."""
        buses = {self.nodes[end].split(".")[0] for end in ends if end != "earth"}
        if len(buses) > 1:
            raise Refused(f"{ends} lie on several buses")
        bus = buses.pop() if buses else "earth"
        return ".".join([bus] + [self.nodes[end].split(".")[1] for end in ends])

    def build(self, low):
        command("clear")
        command("set DefaultBaseFrequency=50")
        command("new circuit.case bus1=unused basekv=1 phases=1")
        for run in self.case["runs"]:
            rows = [[self.ohm(z) if i == j else number(z) for j, z in enumerate(row)] for i, row in enumerate(run["ohm"])]
            r = "|".join(" ".join(repr(z.real) for z in row) for row in rows)
            x = "|".join(" ".join(repr(z.imag) for z in row) for row in rows)
            command(f"new reactor.{self.element('run', run['id'])} phases={len(rows)} bus1={self.terminal(run['from'])} "
                    f"bus2={self.terminal(run['to'])} rmatrix=[{r}] xmatrix=[{x}]")
        for kind in ("tie", "short"):
            for one in self.case[kind + "s"]:
                z = self.ohm(one["ohm"])
                self.reactor(self.element(kind, one["id"]), one["from"], one["to"], z)
        for one in self.case["sources"]:
            emf, z = number(one["emfV"]), self.ohm(one["ohm"])
            degrees = math.degrees(math.atan2(emf.imag, emf.real))
            command(f"new vsource.{self.element('source', one['id'])} phases=1 bus1={self.nodes[one['to']]} "
                    f"bus2={self.nodes[one['from']]} basekv={abs(emf) / 1000!r} pu=1 angle={degrees!r} "
                    f"r1={z.real!r} x1={z.imag!r} r0={z.real!r} x0={z.imag!r}")
        for one in self.case["loads"]:
            self.load(one, one["id"] in low)

    def reactor(self, name, a, b, z):
        command(f"new reactor.{name} phases=1 bus1={self.nodes[a]} bus2={self.nodes[b]} r={z.real!r} x={z.imag!r}")

    def load(self, one, low):
        name = self.element("load", one["id"])
        a, b = one["from"], one["to"]
        if "earth" not in (a, b) and place(a) != place(b):
            # A load of OpenDSS has one bus: a joint of no impedance brings the far end to it.
            helper = f"{place(a).lower()}.{90 + len(self.names)}"
            command(f"new reactor.{name}far phases=1 bus1={helper} bus2={self.nodes[b]} r={self.zero!r} x=0")
            ends = f"{self.nodes[a]}.{helper.split('.')[1]}"
        else:
            ends = self.terminal([a, b])
        shares = {key: one[key] for key, _ in MODELS}
        if low:
            ratio = (shares["powerShare"] + LOW_SHARE * (shares["currentShare"] + LOW_SHARE * shares["impedanceShare"]))
            shares = {"impedanceShare": ratio / LOW_SHARE**2}
        for key, model in MODELS:
            share = shares.get(key, 0)
            if share and (one["powerW"] or one["reactiveVar"]):
                command(f"new load.{name}m{model} phases=1 bus1={ends} kv={one['voltageV'] / 1000!r} "
                        f"kw={one['powerW'] * share / 1000!r} kvar={one['reactiveVar'] * share / 1000!r} model={model} "
                        f"vminpu=0.02 vlowpu=0.01 vmaxpu=5")

    def solve(self):
        """OpenDSS's own test of convergence is relative and never met by a neutral at 0 V; so its rounds are watched here."""
        command("set tolerance=1e-12")
        command("set maxiterations=20")
        before = None
        for _ in range(500):
            dss.Solution.Solve()
            flat = dss.Circuit.AllBusVolts()
            if before and max(abs(a - b) for a, b in zip(flat, before)) < STILL_V:
                break
            before = flat
        else:
            raise Refused("OpenDSS does not come to rest")
        names = dss.Circuit.AllNodeNames()
        volts = {name: complex(flat[2 * i], flat[2 * i + 1]) for i, name in enumerate(names)}
        self.volts = {point: volts[node] for point, node in self.nodes.items() if point != "earth"}
        self.volts["earth"] = 0j

    def currents(self, kind, name, prefix):
        dss.Circuit.SetActiveElement(f"{prefix}.{self.names[kind, name]}")
        flat = dss.CktElement.Currents()
        half = len(flat) // 4
        return [complex(flat[2 * i], flat[2 * i + 1]) for i in range(half)]


def solve(case):
    circuit = Circuit(case)
    low = set()
    for _ in range(8):
        circuit.build(low)
        try:
            circuit.solve()
        except Refused:
            # Where constant powers find no voltage at all, impedances show which of them have sunk.
            if low:
                raise
            low = {one["id"] for one in case["loads"] if one["impedanceShare"] < 1}
            continue
        sunk = {one["id"] for one in case["loads"] if one["impedanceShare"] < 1
                and abs(circuit.volts[one["from"]] - circuit.volts[one["to"]]) < LOW_SHARE * one["voltageV"]}
        if sunk == low:
            break
        low = sunk
    else:
        raise Refused("the loads below 0.7 of their rated voltage do not settle")
    rows = [voltage(point, circuit.volts[point]) for point in all_points(case)]
    for run in case["runs"]:
        for i, value in enumerate(circuit.currents("run", run["id"], "reactor")):
            rows.append(current("run", f"{run['id']}/{i + 1}", value))
    for kind in ("tie", "short"):
        for one in case[kind + "s"]:
            rows.append(current(kind, one["id"], circuit.currents(kind, one["id"], "reactor")[0]))
    for one in case["sources"]:
        # The first terminal of the source is where the e.m.f. points to; the current out of it flows from `from` to `to`.
        rows.append(current("source", one["id"], -circuit.currents("source", one["id"], "vsource")[0]))
    return rows
