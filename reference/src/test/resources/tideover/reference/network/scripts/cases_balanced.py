"""Three lines alike: what a tool of the positive sequence can say too."""

import math

from casebook import Case, FOUR, LINES, NOMINAL_V

LINE_TO_LINE_V = NOMINAL_V * math.sqrt(3)
ALL = ["opendss", "pandapower", "power-grid-model"]
MIXED = (0.3, 0.2, 0.5)


def feeder(name, about, tools=ALL):
    """A star-earthed grid, 60 m of cable to a board, 25 m further to a second one."""
    case = Case(name, about, tools).tie("earthed", "S.N", "earth", 0.5)
    case.grid("S", 0.03, 0.02).cable("main", "S", "A", 60, 16, FOUR).cable("sub", "A", "B", 25, 6, FOUR)
    return case


def cases():
    yield feeder("balanced-impedance", "Three heaters alike at each of two boards.").each(
        "A", 3000, law="impedance").each("B", 2000, law="impedance")
    yield feeder("balanced-power", "Constant power, lagging, alike on three lines.").each("A", 3500, 900).each("B", 2200, 700)
    yield feeder("balanced-current", "Constant current, lagging, alike on three lines.").each(
        "A", 3500, 900, "current").each("B", 2200, 700, "current")
    yield feeder("balanced-mixed", "A mixture of constant power, current and impedance.").each(
        "A", 3500, 900, shares=MIXED).each("B", 2200, 700, shares=MIXED)
    yield feeder("balanced-capacitive", "Leading loads lift the voltage over the reactance.").each("A", 500, -2500).each(
        "B", 100, -1200)
    yield feeder("balanced-feed-in", "Three lines feed in alike: the voltage rises towards the house.").each(
        "B", -5000).each("A", 600, 100)
    case = feeder("balanced-line-to-line", "Loads from line to line, alike.", ["opendss", "pandapower"])
    for i, line in enumerate(LINES):
        case.load(f"delta{line}", f"B.{line}", f"B.{LINES[(i + 1) % 3]}", 1500, 400, volts=LINE_TO_LINE_V)
    yield case
    case = Case("balanced-coupled", "A long cable with mutual impedances between all conductors.", ALL)
    case.tie("earthed", "S.N", "earth", 0.5).grid("S", 0.02, 0.01).coupled("main", "S", "A", 300, 35, FOUR)
    yield case.each("A", 5000, 1500)
    case = Case("balanced-chain", "Eight places one behind the other, a load at each.", ALL)
    case.tie("earthed", "P0.N", "earth", 1).grid("P0", 0.01, 0.01)
    for i in range(8):
        case.cable(f"run{i}", f"P{i}", f"P{i + 1}", 20 + 3 * i, 25 - 2 * i, FOUR)
        case.each(f"P{i + 1}", 400 + 90 * i, 60 * i, shares=MIXED if i % 2 else None)
    yield case
    case = Case("balanced-ring", "A ring of four places: current takes both ways round.", ALL)
    case.tie("earthed", "S.N", "earth", 1).grid("S", 0.02, 0.01)
    for i, (a, b, m) in enumerate([("S", "A", 30), ("A", "B", 45), ("B", "C", 20), ("C", "S", 60)]):
        case.cable(f"ring{i}", a, b, m, 10, FOUR)
    yield case.each("A", 1800, 300).each("B", 2600, 500).each("C", 900)
    case = Case("balanced-two-grids", "Two sources of different voltage and angle feed one busbar.", ALL)
    case.tie("earthed", "S.N", "earth", 1).grid("S", 0.05, 0.03, volts=232).grid("T", 0.08, 0.02, volts=228, turn=1.5, id="second")
    yield case.cable("left", "S", "A", 40, 16, FOUR).cable("right", "T", "A", 55, 16, FOUR).each("A", 4000, 800)
