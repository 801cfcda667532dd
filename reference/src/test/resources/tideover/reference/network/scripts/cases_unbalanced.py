"""Lines that carry different things, and the laws by which loads follow their voltage."""

import math

from casebook import Case, FIVE, FOUR, LINES, NOMINAL_V

LINE_TO_LINE_V = NOMINAL_V * math.sqrt(3)
BOTH = ["opendss", "ngspice"]
THREE_WIRE = ["opendss", "power-grid-model"]
MIXED = (0.2, 0.3, 0.5)


def feeder(name, about, tools=("opendss",), m=50, mm2=10):
    """One cable of four conductors from a star-earthed grid."""
    case = Case(name, about, list(tools)).tie("earthed", "S.N", "earth", 1)
    return case.grid("S", 0.03, 0.02).cable("main", "S", "A", m, mm2, FOUR)


def single(name, about, law, tools=("opendss",), shares=None, var=800):
    case = Case(name, about, list(tools)).tie("earthed", "S.N", "earth", 1)
    case.source("grid", "S.N", "S.L1", NOMINAL_V, 0, 0.05, 0.03).cable("main", "S", "A", 40, 2.5, ["L1", "N"])
    return case.at("A", "L1", 3200, var, law, shares)


def earth_return(name, about, law, shares=None):
    """Three lines over perfect earth, each loaded for itself: what a tool without a neutral sees."""
    case = Case(name, about, THREE_WIRE).grid("S", 0.04, 0.03, star="earth")
    case.coupled("main", "S", "A", 200, 35, LINES).coupled("sub", "A", "B", 80, 16, LINES)
    case.each("A", (4000, 1000, 2500), (800, 0, 300), law, shares, back="earth")
    return case.each("B", (500, 3500, 0), (0, 900, 0), law, shares, back="earth")


def cases():
    yield feeder("unbalanced-one-line", "A heater on L1 alone: its current comes back in the neutral.", BOTH).at(
        "A", "L1", 4600, law="impedance")
    yield feeder("unbalanced-two-lines", "L1 and L2 loaded, L3 empty.", BOTH).each("A", (3000, 2000, 0), law="impedance")
    yield feeder("unbalanced-three-lines", "Three different constant powers.", [*THREE_WIRE]).each(
        "A", (4500, 1200, 2600), (1000, 100, -300))
    yield feeder("unbalanced-impedances", "Three different impedances, lagging.", [*BOTH, "power-grid-model"]).each(
        "A", (4500, 1200, 2600), (1000, 100, 600), "impedance")
    yield feeder("unbalanced-currents", "Three different constant currents.", THREE_WIRE).each(
        "A", (4500, 1200, 2600), (1000, 100, -300), "current")
    yield feeder("unbalanced-mixed", "Three different mixtures of all laws.", THREE_WIRE).each(
        "A", (4500, 1200, 2600), (1000, 100, -300), shares=MIXED)
    case = feeder("unbalanced-line-to-line", "One load from L1 to L2 and one from L3 to the neutral.")
    yield case.load("welder", "A.L1", "A.L2", 5000, 2500, volts=LINE_TO_LINE_V).at("A", "L3", 1500)
    case = feeder("unbalanced-open-delta", "Two heaters between three lines.", BOTH)
    case.load("left", "A.L1", "A.L2", 3000, law="impedance", volts=LINE_TO_LINE_V)
    yield case.load("right", "A.L2", "A.L3", 2000, 500, "impedance", LINE_TO_LINE_V)
    case = Case("unbalanced-coupled", "Mutual impedances that differ from pair to pair.", BOTH)
    case.tie("earthed", "S.N", "earth", 1).grid("S", 0.02, 0.015).coupled("main", "S", "A", 250, 25, FOUR, spread=1.0)
    yield case.each("A", (6000, 500, 2500), (1500, 0, 400), "impedance")
    case = Case("unbalanced-coupled-power", "The same cable with constant powers, one of them feeding.", ["opendss"])
    case.tie("earthed", "S.N", "earth", 1).grid("S", 0.02, 0.015).coupled("main", "S", "A", 250, 25, FOUR, spread=1.0)
    yield case.each("A", (6000, -2500, 2500), (1500, 0, 400))
    case = Case("unbalanced-coupled-with-pe", "PE carries what the neutral's current induces in the loop over two links.", BOTH)
    case.tie("earthed", "S.N", "earth", 1).tie("link", "S.N", "S.PE", 0.0005).tie("second", "A.PE", "earth", 8)
    case.grid("S", 0.02, 0.015).coupled("main", "S", "A", 150, 16, FIVE)
    yield case.each("A", (7000, 200, 1000), (2000, 0, 0), "impedance")
    yield earth_return("earth-return-power", "Constant powers between lines and perfect earth.", "power")
    yield earth_return("earth-return-current", "Constant currents between lines and perfect earth.", "current")
    yield earth_return("earth-return-impedance", "Impedances between lines and perfect earth.", "impedance")
    yield earth_return("earth-return-mixed", "Mixtures between lines and perfect earth.", "power", MIXED)
    case = Case("unbalanced-voltages", "A grid whose own voltages differ in size and angle.", BOTH)
    case.tie("earthed", "S.N", "earth", 1)
    for line, volts, degrees in (("L1", 236, 0), ("L2", 221, -118), ("L3", 229, 123)):
        case.source(f"grid{line}", "S.N", f"S.{line}", volts, degrees, 0.03, 0.02)
    yield case.cable("main", "S", "A", 60, 10, FOUR).each("A", (2000, 2000, 2000), (500, 500, 500), "impedance")

    yield single("law-power", "Single-phase constant power.", "power")
    yield single("law-current", "Single-phase constant current.", "current")
    yield single("law-impedance", "Single-phase impedance.", "impedance", BOTH)
    yield single("law-mixed", "Single-phase mixture.", "power", shares=(0.25, 0.25, 0.5))
    yield single("law-leading", "Single-phase constant power, leading.", "power", var=-2000)
    case = single("law-tiny", "A tenth of a milliwatt beside a load: nothing gets lost.", "power")
    yield case.load("tiny", "A.L1", "A.N", 0.0001)
    case = single("law-reactive-only", "A coil without losses beside the load.", "impedance", BOTH)
    yield case.load("coil", "A.L1", "A.N", 0, 1500, "impedance")
    case = single("law-sunk", "Long thin cable: voltage below 0.7 of rated, where a constant power is an impedance.", "power")
    yield case.cable("thin", "A", "B", 150, 1.5, ["L1", "N"]).load("start", "B.L1", "B.N", 9000, 6000)
    case = single("law-sunk-mixed", "The same with a mixture of laws.", "power")
    yield case.cable("thin", "A", "B", 150, 1.5, ["L1", "N"]).load("start", "B.L1", "B.N", 12000, 6000, shares=(0.3, 0.5, 0.2))
    case = feeder("law-three-phase-motor", "A three-phase motor, constant power, beside single-phase loads.")
    case.each("A", 2500, 1600, id="motor")
    yield case.at("A", "L2", 1800, law="impedance", id="heater").at("A", "L3", 700, 100, "current", id="lamps")
    yield feeder("law-no-load", "Nothing is switched on.", BOTH)
