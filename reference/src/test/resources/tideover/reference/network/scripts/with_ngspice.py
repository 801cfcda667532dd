"""Reference cases solved by ngspice: at 50 Hz (.ac), or in time (.tran) with the steady state read off its last cycle.

Only linear loads. An impedance is a resistor and a coil in series behind an ammeter (a source of 0 V); mutual reactance
is a coupling of coils, mutual resistance a current-controlled source. No impedance is a plain ammeter.
"""

import cmath
import math
import pathlib
import re
import subprocess
import tempfile

from elements import all_points, current, number, voltage

HERTZ = 50.0
OMEGA = 2 * math.pi * HERTZ
STEP_S = 5e-6
END_S = 0.6
# Share of the e.m.f. per second that one ampere too much takes away: settles within some periods.
CONTROL = 0.1


class Refused(Exception):
    pass


def version():
    text = subprocess.run(["ngspice", "--version"], capture_output=True, text=True, check=True).stdout
    return re.search(r"ngspice-(\d+)", text).group(1)


class Deck:
    def __init__(self, case, in_time):
        self.case = case
        self.in_time = in_time
        self.lines = ["* " + case["name"]]
        self.nodes = {"earth": "0"}
        for i, point in enumerate(all_points(case)):
            self.nodes[point] = f"p{i + 1}"
        self.count = 0
        self.meters = []

    def fresh(self):
        self.count += 1
        return f"x{self.count}"

    def series(self, a, b, z):
        """An impedance between two nodes."""
        if z.real and z.imag:
            middle = self.fresh()
            self.part("R", a, middle, z.real)
            a = middle
        elif z.real:
            self.part("R", a, b, z.real)
        if z.imag > 0:
            self.part("L", a, b, z.imag / OMEGA)
        elif z.imag < 0:
            self.part("C", a, b, -1 / (z.imag * OMEGA))
        if not z:
            self.part("V", a, b, 0)

    def part(self, letter, a, b, value):
        self.count += 1
        self.lines.append(f"{letter}{self.count} {a} {b} {value!r}")
        return f"{letter}{self.count}"

    def meter(self, row, a):
        """An ammeter behind node a; the node behind it."""
        behind = self.fresh()
        self.meters.append((row, self.part("V", a, behind, 0)))
        return behind

    def switched(self, id, a):
        """A contact behind node a, if the element moves at the time of the case; the node behind it."""
        if not self.in_time or id not in self.case["time"]["closing"]:
            return a
        return self.contact(a, 4, -8)

    def contact(self, a, before, after):
        """A resistance that goes from one power of ten of an ohm to another within a tenth of a millisecond."""
        behind = self.fresh()
        moved = f"min(1,max(0,(time-{self.case['time']['atS']})/1e-4))"
        self.lines.append(f"R{behind} {a} {behind} R='exp({math.log(10)!r}*({before}+({after - before})*{moved}))'")
        return behind

    def write(self):
        for run in self.case["runs"]:
            self.run(run)
        for kind in ("tie", "short"):
            for one in self.case[kind + "s"]:
                a = self.switched(one["id"], self.nodes[one["from"]])
                a = self.meter((kind, one["id"]), a)
                self.series(a, self.nodes[one["to"]], number(one["ohm"]))
        for one in self.case["sources"]:
            self.source(one)
        for one in self.case["loads"]:
            if one["impedanceShare"] != 1:
                raise Refused(f"load {one['id']} is not linear")
            power = complex(one["powerW"], one["reactiveVar"])
            if power:
                a = self.switched(one["id"], self.nodes[one["from"]])
                self.series(a, self.nodes[one["to"]], one["voltageV"] ** 2 / power.conjugate())
        if self.in_time:
            for one in self.case["time"].get("opening", []):
                a = self.contact(self.nodes[one["from"]], -6, 9)
                self.series(a, self.nodes[one["to"]], number(one["ohm"]))

    def run(self, run):
        """Coils coupled to each other; mutual resistance as a voltage that the ammeter of the other conductor controls."""
        size = len(run["from"])
        ohm = [[number(z) for z in row] for row in run["ohm"]]
        starts = [self.meter(("run", f"{run['id']}/{i + 1}"), self.nodes[run["from"][i]]) for i in range(size)]
        meters = [self.meters[i - size][1] for i in range(size)]
        coils = {}
        for i in range(size):
            a = starts[i]
            for j in range(size):
                if i != j and ohm[i][j].real:
                    behind = self.fresh()
                    self.count += 1
                    self.lines.append(f"H{self.count} {a} {behind} {meters[j]} {ohm[i][j].real!r}")
                    a = behind
            z = ohm[i][i]
            self.series(a, self.nodes[run["to"][i]], z)
            coils[i] = self.lines[-1].split()[0]
        for i in range(size):
            for j in range(i):
                if ohm[i][j].imag:
                    self.count += 1
                    k = ohm[i][j].imag / math.sqrt(ohm[i][i].imag * ohm[j][j].imag)
                    self.lines.append(f"K{self.count} {coils[i]} {coils[j]} {k!r}")

    def source(self, one):
        emf = number(one["emfV"])
        degrees = math.degrees(cmath.phase(emf))
        a = self.meter(("source", one["id"]), self.nodes[one["from"]])
        behind = self.fresh()
        name = f"V{self.fresh()}"
        if self.in_time and one["id"] == self.case.get("limit", {}).get("source"):
            self.control(behind, a, abs(emf), math.radians(degrees))
        elif self.in_time:
            self.lines.append(f"{name} {behind} {a} SIN(0 {math.sqrt(2) * abs(emf)!r} {HERTZ} 0 0 {degrees + 90!r})")
        else:
            self.lines.append(f"{name} {behind} {a} DC 0 AC {abs(emf)!r} {degrees!r}")
        self.series(behind, self.nodes[one["to"]], number(one["ohm"]))

    def control(self, behind, a, volts, angle):
        """Lowers the e.m.f. until the current is at its limit: an integrator, held at 1 while there is less.

        A sine and its derivative over omega are at right angles, so their squares add up to twice that of the r.m.s.
        """
        most, meter = self.case["limit"]["currentA"], self.meters[-1][1]
        copy, ratio = self.fresh(), self.fresh()
        self.lines.append(f"F{copy} 0 {copy} {meter} 1")
        self.lines.append(f"L{copy} {copy} 0 {1 / OMEGA!r}")
        size = f"sqrt((i({meter})*i({meter})+v({copy})*v({copy}))/2+1e-12)"
        self.lines.append(f"B{ratio} 0 {ratio} I={CONTROL}*min({most}-{size},1000*(1-v({ratio})))")
        self.lines.append(f"C{ratio} {ratio} 0 1 IC=1")
        self.lines.append(f"R{ratio} {ratio} 0 1e12")
        self.lines.append(f".ic v({ratio})=1")
        self.lines.append(f"B{behind} {behind} {a} V=v({ratio})*{math.sqrt(2) * volts!r}*cos({OMEGA!r}*time+{angle!r})")

    def vectors(self):
        return [f"v({self.nodes[p]})" for p in all_points(self.case)] + [f"i({m})" for _, m in self.meters]

    def rows(self, values):
        points = all_points(self.case)
        rows = [voltage(point, values[i]) for i, point in enumerate(points)]
        return rows + [current(kind, name, values[len(points) + i]) for i, ((kind, name), _) in enumerate(self.meters)]


def simulate(deck, commands):
    with tempfile.TemporaryDirectory() as folder:
        out = pathlib.Path(folder, "out.txt")
        deck.lines += [".control", "set numdgt=15", "set wr_singlescale"] + commands
        deck.lines += [f"wrdata {out} {' '.join(deck.vectors())}", "quit", ".endc", ".end"]
        source = pathlib.Path(folder, "case.cir")
        source.write_text("\n".join(deck.lines) + "\n")
        done = subprocess.run(["ngspice", "-b", str(source)], capture_output=True, text=True)
        if not out.exists():
            raise Refused(f"ngspice: {done.stdout[-800:]}{done.stderr[-800:]}")
        return [[float(word) for word in line.split()] for line in out.read_text().splitlines()]


def solve(case):
    deck = Deck(case, False)
    deck.write()
    # With reltol at its smallest the one linear solution is kept as it is.
    row = simulate(deck, [f"ac lin 1 {HERTZ} {HERTZ}"])[-1]
    return deck.rows([complex(row[1 + 2 * i], row[2 + 2 * i]) for i in range(len(deck.vectors()))])


def solve_in_time(case):
    deck = Deck(case, True)
    deck.write()
    deck.lines.append(".options reltol=1e-4 abstol=1e-6 vntol=1e-6 chgtol=1e-9 method=trap")
    begin = END_S - 1 / HERTZ
    samples = simulate(deck, [f"tran {STEP_S} {END_S} {begin - 10 * STEP_S!r} {STEP_S}", "linearize"])
    cycle = round(1 / HERTZ / STEP_S)
    kept = samples[-cycle - 1:-1]
    values = []
    for i in range(len(deck.vectors())):
        turned = sum(row[1 + i] * cmath.exp(-1j * OMEGA * row[0]) for row in kept)
        values.append(turned * math.sqrt(2) / cycle)
    return deck.rows(values)
