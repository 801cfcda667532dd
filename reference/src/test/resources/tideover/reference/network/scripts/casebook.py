"""A reference case: a network of single conductors, written down as the reader of the JSON file finds it.

A point is "place.conductor", or "earth", which is remote earth at 0 V. Impedances are ohm at 50 Hz.
All conductor and source data are invented: round resistivities and reactances, no cable of any maker.
"""

import cmath
import json
import math

NOMINAL_V = 230.0
FIVE = ["L1", "L2", "L3", "N", "PE"]
FOUR = ["L1", "L2", "L3", "N"]
LINES = ["L1", "L2", "L3"]
DEGREES = {"L1": 0.0, "L2": -120.0, "L3": 120.0}

# Copper at about 70 degrees Celsius, ohm mm2 per m, and reactances in ohm per m: own round values.
RHO = 0.0225
X_ALONE = 0.00008
X_SELF = 0.00030
X_MUTUAL = 0.00022
R_EARTH = 0.00005


def rounded(value):
    return round(value, 9)


def phasor(volts, degrees):
    value = cmath.rect(volts, math.radians(degrees))
    return [rounded(value.real), rounded(value.imag)]


def points(place, conductors):
    return [f"{place}.{conductor}" for conductor in conductors]


class Case:
    def __init__(self, name, about, tools, kind="flow"):
        self.name = name
        self.about = about
        self.tools = tools
        self.kind = kind
        self.runs, self.ties, self.sources, self.loads, self.shorts = [], [], [], [], []
        self.more = {}

    def matrix(self, id, a, b, conductors, ohm):
        """A run with its full matrix of impedances between places a and b."""
        self.runs.append({"id": id, "from": points(a, conductors), "to": points(b, conductors), "ohm": ohm})
        return self

    def cable(self, id, a, b, m, mm2, conductors=FIVE, reduced=None):
        """Conductors that do not act on each other; `reduced` is the section of N and PE where it is smaller."""
        def own(conductor):
            section = reduced if reduced and conductor in ("N", "PE") else mm2
            return [rounded(RHO * m / section), rounded(X_ALONE * m)]
        size = len(conductors)
        ohm = [[own(conductors[i]) if i == j else [0, 0] for j in range(size)] for i in range(size)]
        return self.matrix(id, a, b, conductors, ohm)

    def coupled(self, id, a, b, m, mm2, conductors=FIVE, spread=0.0):
        """Conductors with common earth return and mutual reactance; `spread` makes the pairs unequal."""
        size = len(conductors)
        def entry(i, j):
            if i == j:
                return [rounded(RHO * m / mm2 + R_EARTH * m), rounded(X_SELF * m)]
            return [rounded(R_EARTH * m), rounded((X_MUTUAL - spread * abs(i - j) * 0.00001) * m)]
        return self.matrix(id, a, b, conductors, [[entry(i, j) for j in range(size)] for i in range(size)])

    def tie(self, id, a, b, r=0.0, x=0.0):
        self.ties.append({"id": id, "from": a, "to": b, "ohm": [r, x]})
        return self

    def source(self, id, a, b, volts=NOMINAL_V, degrees=0.0, r=0.0, x=0.0):
        self.sources.append({"id": id, "from": a, "to": b, "emfV": phasor(volts, degrees), "ohm": [r, x]})
        return self

    def grid(self, place, r=0.02, x=0.015, star=None, volts=NOMINAL_V, turn=0.0, id="grid"):
        """Three sources in star from `star`, which is the place's neutral where nothing else is said."""
        for line in LINES:
            self.source(f"{id}{line}", star or f"{place}.N", f"{place}.{line}", volts, DEGREES[line] + turn, r, x)
        return self

    def load(self, id, a, b, w, var=0.0, law="power", volts=NOMINAL_V, shares=None):
        power, current, impedance = shares or {"power": (1, 0, 0), "current": (0, 1, 0), "impedance": (0, 0, 1)}[law]
        self.loads.append({"id": id, "from": a, "to": b, "powerW": w, "reactiveVar": var, "voltageV": volts,
                           "powerShare": power, "currentShare": current, "impedanceShare": impedance})
        return self

    def at(self, place, line, w, var=0.0, law="power", shares=None, back="N", id=None):
        """A load between a line and the neutral of one place."""
        b = "earth" if back == "earth" else f"{place}.{back}"
        return self.load(id or f"{place}{line}", f"{place}.{line}", b, w, var, law, shares=shares)

    def each(self, place, w, var=0.0, law="power", shares=None, back="N", id=None):
        """Loads between each line and the neutral; `w` is one number, or one for each line."""
        for i, line in enumerate(LINES):
            watt = w[i] if isinstance(w, (list, tuple)) else w
            reactive = var[i] if isinstance(var, (list, tuple)) else var
            if watt or reactive:
                self.at(place, line, watt, reactive, law, shares, back, f"{id or place}{line}")
        return self

    def short(self, id, a, b, r=0.0):
        self.shorts.append({"id": id, "from": a, "to": b, "ohm": [r, 0.0]})
        return self

    def also(self, **facts):
        self.more.update(facts)
        return self

    def text(self):
        """The JSON file: one line for each element, so that a person can read and compare it."""
        head = {"name": self.name, "about": self.about, "kind": self.kind, "tools": self.tools,
                "nominalVoltageV": NOMINAL_V, **self.more}
        parts = [f"  {json.dumps(key)}: {json.dumps(value)}" for key, value in head.items()]
        for key in ("runs", "ties", "sources", "loads", "shorts"):
            rows = ",\n".join("    " + json.dumps(row) for row in getattr(self, key))
            parts.append(f'  "{key}": [\n{rows}\n  ]' if rows else f'  "{key}": []')
        return "{\n" + ",\n".join(parts) + "\n}\n"
