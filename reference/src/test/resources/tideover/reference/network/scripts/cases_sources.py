"""Generation, several sources, loops, and cables very long or of no length."""

from casebook import Case, FIVE, FOUR, LINES, NOMINAL_V

BOTH = ["opendss", "ngspice"]


def house(name, about, tools=("opendss",), m=80, mm2=16, r=0.08, x=0.05):
    case = Case(name, about, list(tools)).tie("earthed", "S.N", "earth", 1)
    return case.grid("S", r, x).cable("service", "S", "H", m, mm2, FOUR)


def island(name, about, tools=("opendss",), degrees=(0, -120, 120), r=0.1, x=0.05):
    """An inverter that forms the island, its neutral linked to the house's earth."""
    case = Case(name, about, list(tools)).tie("link", "I.N", "I.PE", 0.002).tie("electrode", "I.PE", "earth", 12)
    for line, angle in zip(LINES, degrees):
        case.source(f"inverter{line}", "I.N", f"I.{line}", NOMINAL_V, angle, r, x)
    return case.cable("feeder", "I", "B", 18, 6, FIVE)


def cases():
    yield house("rise-one-line", "Feeding in on one line lifts it and the neutral, and lowers the others.").at("H", "L1", -4600)
    yield house("rise-three-lines", "Feeding in on all lines, with a load on one.").each("H", -3000, id="sun").at("H", "L2", 2500, 300)
    yield house("rise-over-load", "One line feeds out what two others draw.").each("H", (-5000, 2000, 1500), (0, 400, 0))
    yield house("rise-current", "A source of constant current.").at("H", "L3", -3600, 0, "current")
    yield house("rise-reactive", "An inverter that draws reactive power to hold the voltage down.").each("H", -4000, 1900, id="sun")
    case = house("rise-far-barn", "A barn 250 m away feeds in.", mm2=35)
    yield case.cable("barn", "H", "B", 250, 25, FOUR).each("B", -6000, id="sun").at("H", "L1", 900)
    yield house("rise-impedance", "A negative impedance: the same law with its sign turned.", BOTH).each("H", (-1500, 800, 0), law="impedance")

    case = island("island-three-lines", "An island with three different loads.", BOTH)
    yield case.each("B", (2500, 700, 1500), (500, 0, 0), "impedance")
    yield island("island-power", "The same with constant powers and a sun inverter that follows.").each(
        "B", (2500, -1800, 1500), (500, 0, 0))
    yield island("island-bridged", "One voltage on all three lines: the neutral carries their sum.", BOTH, (0, 0, 0)).each(
        "B", (1800, 1200, 900), law="impedance")
    yield island("island-two-lines", "Two inverters of opposite angle share a neutral.", BOTH, (0, 180, 120)).each(
        "B", (1800, 1500, 0), law="impedance")
    case = island("parallel-alike", "Two inverters alike share the load evenly.", BOTH)
    for line, angle in zip(LINES, (0, -120, 120)):
        case.source(f"second{line}", "I.N", f"I.{line}", NOMINAL_V, angle, 0.1, 0.05)
    yield case.each("B", (3000, 1000, 2000), law="impedance")
    case = island("parallel-unlike", "Two inverters of different voltage: current circles between them.")
    for line, angle in zip(LINES, (1, -119, 121)):
        case.source(f"second{line}", "I.N", f"I.{line}", 233, angle, 0.25, 0.2)
    yield case.each("B", (3000, 1000, 2000))
    case = house("parallel-grid-and-generator", "Grid and generator 5 degrees apart on one busbar.", BOTH)
    for line, angle in zip(LINES, (5, -115, 125)):
        case.source(f"generator{line}", "G.N", f"G.{line}", 235, angle, 0.3, 0.6)
    yield case.cable("generator", "G", "H", 30, 10, FOUR).each("H", (3000, 2000, 1000), law="impedance")

    case = Case("loop-ring", "A ring of five places with loads on different lines.", ["opendss"])
    case.tie("earthed", "S.N", "earth", 1).grid("S", 0.03, 0.02)
    for i, (a, b, m) in enumerate([("S", "A", 25), ("A", "B", 40), ("B", "C", 15), ("C", "D", 35), ("D", "S", 50)]):
        case.cable(f"ring{i}", a, b, m, 6, FOUR)
    yield case.at("A", "L1", 2500).at("B", "L2", 3000, 500).each("C", (500, 0, 1800)).at("D", "L1", -2000)
    case = Case("loop-busbar-two-feeds", "A busbar fed over two cables of unequal length.", BOTH)
    case.tie("earthed", "S.N", "earth", 1).grid("S", 0.03, 0.02).cable("long", "S", "A", 90, 10, FOUR).cable("short", "S", "A", 35, 16, FOUR)
    yield case.each("A", (5000, 2500, 0), law="impedance")
    case = Case("loop-parallel-coupled", "Two cables in parallel, one of them with mutual impedances.", BOTH)
    case.tie("earthed", "S.N", "earth", 1).grid("S", 0.03, 0.02).coupled("one", "S", "A", 90, 16, FOUR).cable("two", "S", "A", 90, 16, FOUR)
    yield case.each("A", (5000, 2500, 1000), (800, 0, 0), "impedance")
    case = Case("loop-closed-by-contact", "Two boards joined by closed contacts of no impedance.", ["opendss"])
    case.tie("earthed", "S.N", "earth", 1).grid("S", 0.03, 0.02).cable("one", "S", "A", 30, 10, FOUR).cable("two", "S", "B", 45, 10, FOUR)
    for conductor in FOUR:
        case.tie(f"coupler{conductor}", f"A.{conductor}", f"B.{conductor}")
    yield case.each("A", (4000, 0, 1000), (500, 0, 0)).each("B", (0, 3000, 0))
    case = Case("loop-by-pass", "A by-pass over a device: two contacts side by side share by their resistances.", BOTH)
    case.tie("earthed", "S.N", "earth", 1).source("grid", "S.N", "S.L1", NOMINAL_V, 0, 0.05, 0.03)
    case.tie("device", "S.L1", "A.L1", 0.004).tie("bypass", "S.L1", "A.L1", 0.001).tie("neutral", "S.N", "A.N", 0.002)
    yield case.at("A", "L1", 5000, law="impedance")
    case = Case("loop-mesh", "Six places, nine cables.", ["opendss"])
    case.tie("earthed", "P0.N", "earth", 1).grid("P0", 0.03, 0.02)
    for i, (a, b) in enumerate([(0, 1), (0, 2), (1, 2), (1, 3), (2, 4), (3, 4), (3, 5), (4, 5), (0, 5)]):
        case.cable(f"mesh{i}", f"P{a}", f"P{b}", 20 + 7 * i, 6 if i % 2 else 10, FOUR)
    yield case.at("P2", "L1", 2600).at("P3", "L2", 3100, 700).at("P4", "L3", 1500).each("P5", (900, 1200, 400), 100)

    case = Case("long-10-km", "10 km of overhead line, a heater at its end.", BOTH)
    case.tie("earthed", "S.N", "earth", 1).grid("S", 0.02, 0.02).coupled("line", "S", "A", 10000, 70, FOUR)
    yield case.each("A", (300, 150, 500), law="impedance")
    case = Case("long-10-km-power", "10 km of thin line, constant power near what it can carry.", ["opendss"])
    case.tie("earthed", "S.N", "earth", 1).grid("S", 0.02, 0.02).cable("line", "S", "A", 10000, 50, FOUR)
    yield case.each("A", (1300, 1000, 1150), 100)
    case = Case("long-weak-feed-in", "A weak line of 3 km lifted by feed-in.", ["opendss"])
    case.tie("earthed", "S.N", "earth", 1).grid("S", 0.2, 0.2).cable("line", "S", "A", 3000, 70, FOUR)
    yield case.each("A", (-2500, -1000, 300))
    case = house("zero-length", "Terminals joined without any length between them.")
    for conductor in FOUR:
        case.tie(f"zero{conductor}", f"H.{conductor}", f"A.{conductor}")
    yield case.each("A", (3000, 1000, 200), 100)
    case = house("short-10-cm", "Ten centimetres of thick cable between two boards.")
    yield case.cable("bar", "H", "A", 0.1, 50, FOUR).each("A", (8000, 1000, 3000), 500)
    case = Case("ideal-source", "A source without impedance holds its voltage.", BOTH)
    case.tie("earthed", "S.N", "earth", 1)
    for line, angle in zip(LINES, (0, -120, 120)):
        case.source(f"grid{line}", "S.N", f"S.{line}", NOMINAL_V, angle)
    yield case.cable("main", "S", "A", 35, 4, FOUR).each("A", (3000, 1000, 2000), law="impedance")
    case = Case("chain-thirty", "Thirty places one behind the other, single loads in turn.", ["opendss"])
    case.tie("earthed", "P0.N", "earth", 1).grid("P0", 0.02, 0.015)
    for i in range(30):
        case.cable(f"run{i}", f"P{i}", f"P{i + 1}", 8, 16, FOUR).at(f"P{i + 1}", LINES[i % 3], 250 + 20 * (i % 7), 30 * (i % 4))
    yield case
