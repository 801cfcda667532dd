"""Reference cases solved by power-grid-model: load flow of each phase, and short circuits after IEC 60909.

See three_wire.py for what such a tool sees of a case. In faults the voltage factor c is the tool's own (1.1 largest, 0.95
smallest), so that the e.m.f. of the case is checked too.
"""

import cmath
import math

import numpy as np
import power_grid_model as pgm
from power_grid_model import ComponentType as Kind

import three_wire
from elements import between, current, number, voltage

RATED_V = 230.0 * math.sqrt(3)
PHASES = {"L1": 0, "L2": 1, "L3": 2}
LAWS = (("powerShare", pgm.LoadGenType.const_power), ("currentShare", pgm.LoadGenType.const_current),
        ("impedanceShare", pgm.LoadGenType.const_impedance))
SIDES = {("L1",): pgm.FaultPhase.a, ("L2",): pgm.FaultPhase.b, ("L3",): pgm.FaultPhase.c,
         ("L1", "L2"): pgm.FaultPhase.ab, ("L1", "L3"): pgm.FaultPhase.ac, ("L2", "L3"): pgm.FaultPhase.bc,
         ("L1", "L2", "L3"): pgm.FaultPhase.abc}


def version():
    import importlib.metadata
    return importlib.metadata.version("power-grid-model")


def table(kind, rows, direction=pgm.DatasetType.input):
    data = pgm.initialize_array(direction, kind, len(rows))
    for i, row in enumerate(rows):
        for key, value in row.items():
            data[key][i] = value
    return data


class Grid:
    def __init__(self, case):
        self.case = case
        self.back = three_wire.back(case)
        self.places = three_wire.places(case)
        self.ids = {}
        self.data = {}

    def id(self, *key):
        return self.ids.setdefault(key, len(self.ids) + 1)

    def build(self):
        self.data[Kind.node] = table(Kind.node, [
            {"id": self.id("node", place), "u_rated": RATED_V} for place in self.places])
        lines = []
        for run in self.case["runs"]:
            one, zero = three_wire.sequences(run)
            lines.append({"id": self.id("line", run["id"]), "from_status": 1, "to_status": 1,
                          "from_node": self.id("node", run["from"][0].split(".")[0]),
                          "to_node": self.id("node", run["to"][0].split(".")[0]),
                          "r1": one.real, "x1": one.imag, "c1": 0, "tan1": 0,
                          "r0": zero.real, "x0": zero.imag, "c0": 0, "tan0": 0, "i_n": 100})
        self.data[Kind.line] = table(Kind.line, lines)
        sources = []
        for place, (z, emf, _) in three_wire.sources(self.case).items():
            sources.append({"id": self.id("source", place), "node": self.id("node", place), "status": 1,
                            "u_ref": abs(emf) * math.sqrt(3) / RATED_V, "u_ref_angle": cmath.phase(emf),
                            "sk": RATED_V**2 / abs(z), "rx_ratio": z.real / z.imag, "z01_ratio": 1})
        self.data[Kind.source] = table(Kind.source, sources)
        if self.case["loads"]:
            self.loads()

    def loads(self):
        rows = []
        for one in self.case["loads"]:
            place, line = one["from"].split(".")
            if one["to"] != three_wire.point(place, self.back):
                raise three_wire.Refused(f"load {one['id']} does not return through {self.back}")
            for share, law in LAWS:
                if one[share]:
                    p, q = np.zeros(3), np.zeros(3)
                    p[PHASES[line]] = one["powerW"] * one[share]
                    q[PHASES[line]] = one["reactiveVar"] * one[share]
                    rows.append({"id": self.id("load", one["id"], share), "node": self.id("node", place), "status": 1,
                                 "type": law, "p_specified": p, "q_specified": q})
        self.data[Kind.asym_load] = table(Kind.asym_load, rows)

    def row_of(self, output, kind, *key):
        rows = output[kind]
        return rows[list(rows["id"]).index(self.id(*key))]

    def voltages(self, output):
        for place in self.places:
            row = self.row_of(output, Kind.node, "node", place)
            for line, phase in PHASES.items():
                value = cmath.rect(row["u"][phase], row["u_angle"][phase])
                if self.back == "earth":
                    yield voltage(f"{place}.{line}", value)
                else:
                    yield between(f"{place}.{line}", f"{place}.{self.back}", value)


def flow(case):
    grid = Grid(case)
    grid.build()
    output = pgm.PowerGridModel(grid.data, system_frequency=50.0).calculate_power_flow(
        symmetric=False, error_tolerance=1e-13, max_iterations=200)
    rows = list(grid.voltages(output))
    for run in case["runs"]:
        row = grid.row_of(output, Kind.line, "line", run["id"])
        node = grid.row_of(output, Kind.node, "node", run["from"][0].split(".")[0])
        for phase in range(3):
            power = complex(row["p_from"][phase], row["q_from"][phase])
            value = (power / cmath.rect(node["u"][phase], node["u_angle"][phase])).conjugate()
            rows.append(current("run", f"{run['id']}/{phase + 1}", value))
    return rows


def fault(case):
    grid = Grid(case)
    grid.build()
    shorts = case["shorts"]
    place = shorts[0]["from"].split(".")[0]
    ends = sorted({end.split(".")[1] for one in shorts for end in (one["from"], one["to"]) if "." in end} - {grid.back})
    through = any(three_wire.point(place, grid.back) == one["to"] for one in shorts)
    if len(ends) == 3:
        kind = pgm.FaultType.three_phase
    elif len(ends) == 2:
        kind = pgm.FaultType.two_phase_to_ground if through else pgm.FaultType.two_phase
    else:
        kind = pgm.FaultType.single_phase_to_ground
    grid.data[Kind.fault] = table(Kind.fault, [
        {"id": grid.id("fault"), "status": 1, "fault_object": grid.id("node", place), "fault_type": kind,
         "fault_phase": SIDES[tuple(ends)], "r_f": number(shorts[0]["ohm"]).real, "x_f": 0}])
    scaling = pgm.ShortCircuitVoltageScaling[case["iec60909"]["case"] + "imum"]
    output = pgm.PowerGridModel(grid.data, system_frequency=50.0).calculate_short_circuit(
        short_circuit_voltage_scaling=scaling)
    rows = list(grid.voltages(output))
    row = grid.row_of(output, Kind.fault, "fault")
    for one in shorts:
        phase = PHASES[one["from"].split(".")[1]]
        rows.append(current("short", one["id"], cmath.rect(row["i_f"][phase], row["i_f_angle"][phase])))
    for run in case["runs"]:
        row = grid.row_of(output, Kind.line, "line", run["id"])
        for phase in range(3):
            rows.append(current("run", f"{run['id']}/{phase + 1}",
                                cmath.rect(row["i_from"][phase], row["i_from_angle"][phase])))
    return rows


def solve(case):
    return fault(case) if case["kind"] == "fault" else flow(case)
