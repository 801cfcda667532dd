"""Neutrals that are interrupted, linked to earth once or twice, or on the wrong side of a switch; two earths."""

from casebook import Case, FOUR, LINES, NOMINAL_V

BOTH = ["opendss", "ngspice"]


def broken(name, about, tools=BOTH, pe=False):
    """The service's neutral is interrupted before the house: only lines (and PE) arrive."""
    case = Case(name, about, list(tools)).tie("earthed", "S.N", "earth", 1).grid("S", 0.03, 0.02)
    case.cable("service", "S", "H", 40, 10, LINES + (["PE"] if pe else []))
    if pe:
        case.tie("pen", "S.N", "S.PE", 0.0005)
    return case


def wrong_side(name, about, ra, rb, w=2300, law="impedance", tools=BOTH):
    """A grid-only circuit's neutral behind the open switch; the island's return goes over two electrodes."""
    case = Case(name, about, list(tools)).source("island", "I.N", "I.L1").tie("link", "I.N", "I.PE", 0.0)
    case.tie("houseElectrode", "I.PE", "earth", ra).tie("gridElectrode", "G.N", "earth", rb)
    return case.load("boiler", "I.L1", "G.N", w, 0, law)


def cases():
    yield broken("open-neutral-two", "Two heaters of 2300 W and 230 W in series between two lines: the small one gets 360 V.").each(
        "H", (2300, 230, 0), law="impedance")
    yield broken("open-neutral-three", "Three unequal heaters: the star point moves.").each("H", (3000, 400, 1200), law="impedance")
    yield broken("open-neutral-lagging", "Three unequal lagging impedances.").each(
        "H", (3000, 400, 1200), (1500, 100, 0), "impedance")
    yield broken("open-neutral-balanced", "Three loads alike: nobody notices.").each("H", 2000, 300, "impedance")
    # Constant powers alone have no star point of their own: the voltages of three alike could be shared out anyhow.
    yield broken("open-neutral-mixed", "Mixtures that stay above 0.7 of rated voltage.", ["opendss"]).each(
        "H", (2000, 1600, 1850), 200, shares=(0.3, 0.2, 0.5))
    case = broken("open-neutral-sunk", "A constant power sinks below 0.7, where it is an impedance.", ["opendss"])
    yield case.at("H", "L1", 4000).each("H", (0, 500, 700), law="impedance")
    yield broken("open-neutral-electrode", "The house's own electrode takes over part of the neutral.").each(
        "H", (3000, 400, 1200), law="impedance").tie("electrode", "H.N", "earth", 20)
    yield broken("open-neutral-pe-returns", "Behind a second neutral-earth link the PE carries the neutral's current.", pe=True).each(
        "H", (3000, 400, 1200), law="impedance").tie("link", "H.N", "H.PE", 0.001)
    case = broken("open-neutral-feed-in", "Behind the interruption one line feeds in as a negative impedance.")
    yield case.each("H", (2500, 1200, -400), law="impedance")
    case = Case("open-neutral-of-board", "Interrupted between two boards: the first keeps its neutral.", BOTH)
    case.tie("earthed", "S.N", "earth", 1).grid("S", 0.03, 0.02).cable("service", "S", "H", 40, 10, FOUR)
    case.cable("lines", "H", "B", 20, 4, LINES).each("H", (1000, 1000, 500), law="impedance")
    yield case.each("B", (2000, 500, 300), law="impedance")
    case = Case("open-pen", "The PEN of a TN-C-S supply is interrupted: the house's earth rises with it.", BOTH)
    case.tie("earthed", "S.N", "earth", 2).grid("S", 0.03, 0.02).cable("service", "S", "H", 40, 10, LINES)
    case.tie("link", "H.N", "H.PE", 0.001).tie("electrode", "H.PE", "earth", 25)
    yield case.each("H", (3000, 0, 500), law="impedance")

    case = Case("link-one", "One neutral-earth link: it carries nothing.", BOTH)
    case.source("island", "I.N", "I.L1", NOMINAL_V, 0, 0.2, 0.1).tie("link", "I.N", "I.PE", 0.002).tie("electrode", "I.PE", "earth", 15)
    yield case.cable("feeder", "I", "B", 30, 4, ["L1", "N", "PE"]).at("B", "L1", 2500, law="impedance")
    case = Case("link-two", "A second link at the sub-board: neutral and PE share the return.", BOTH)
    case.source("island", "I.N", "I.L1", NOMINAL_V, 0, 0.2, 0.1).tie("link", "I.N", "I.PE", 0.002).tie("electrode", "I.PE", "earth", 15)
    yield case.cable("feeder", "I", "B", 30, 4, ["L1", "N", "PE"]).tie("second", "B.N", "B.PE", 0.002).at("B", "L1", 2500, law="impedance")
    case = Case("link-two-power", "Two links, three lines, constant powers.", ["opendss"])
    case.tie("earthed", "S.N", "earth", 1).grid("S", 0.03, 0.02).tie("link", "S.N", "S.PE", 0.001).tie("second", "B.N", "B.PE", 0.005)
    yield case.cable("service", "S", "A", 30, 10).cable("sub", "A", "B", 25, 4).each("A", (1000, 0, 2000), 100).each("B", (3000, 200, 0))
    case = Case("link-left-closed", "Grid back while the island's link is still closed: the neutral's current divides over earth.", BOTH)
    case.tie("gridEarth", "S.N", "earth", 1.5).grid("S", 0.03, 0.02).cable("service", "S", "H", 60, 10, FOUR)
    case.tie("link", "H.N", "H.PE", 0.002).tie("electrode", "H.PE", "earth", 9)
    yield case.each("H", (5000, 1000, 0), law="impedance")
    case = Case("link-switch-open", "All links open: the island hangs on a megohm.", BOTH)
    case.source("island", "I.N", "I.L1", NOMINAL_V, 0, 0.2, 0.1).tie("insulationL", "I.L1", "earth", 1e6).tie("insulationN", "I.N", "earth", 3e6)
    yield case.cable("feeder", "I", "B", 30, 4, ["L1", "N"]).at("B", "L1", 2500, law="impedance")

    yield wrong_side("two-earths-30-2", "2.3 kW, RA 30 ohm, RB 2 ohm: some 125 V on all exposed parts.", 30.0, 2.0)
    yield wrong_side("two-earths-100-2", "A poor electrode of the house.", 100.0, 2.0)
    yield wrong_side("two-earths-5-2", "A good electrode of the house.", 5.0, 2.0)
    yield wrong_side("two-earths-30-02", "A good electrode of the grid.", 30.0, 0.2)
    yield wrong_side("two-earths-small-load", "The small test load of 60 W: 7.6 V already tell.", 30.0, 2.0, 60)
    yield wrong_side("two-earths-large-load", "9 kW: 182 V on all exposed parts.", 30.0, 2.0, 9000)
    yield wrong_side("two-earths-power", "A constant power that stays above 0.7 of rated voltage.", 3.0, 2.0, 2000, "power", ["opendss"])
    yield wrong_side("two-earths-sunk", "2.3 kW constant power over 32 ohm sinks below 0.7 of rated voltage.", 30.0, 2.0, 2300, "power", ["opendss"])
    case = wrong_side("two-earths-tn", "TN: the return goes over the PEN split, nearly without impedance.", 30.0, 2.0)
    yield case.tie("pen", "I.PE", "G.N", 0.05)
    case = wrong_side("two-earths-neighbour", "A neighbour's earth on the same grid neutral lowers the grid's side.", 30.0, 2.0)
    yield case.tie("neighbour", "G.N", "earth", 8)
    case = Case("two-earths-connected", "A circuit that stays on with its neutral on the grid side, connected: the by-passed return.", BOTH)
    case.tie("gridEarth", "S.N", "earth", 2).grid("S", 0.03, 0.02).cable("service", "S", "H", 40, 10, FOUR).tie("electrode", "H.PE", "earth", 30)
    yield case.tie("switchN", "H.N", "I.N", 0.001).tie("switchL", "H.L1", "I.L1", 0.001).load("boiler", "I.L1", "H.N", 2300, 0, "impedance").load(
        "heater", "I.L1", "I.N", 1000, 0, "impedance")
    case = Case("two-earths-three-lines", "Three misplaced neutrals on three lines: their sum returns over earth.", BOTH)
    case.tie("link", "I.N", "I.PE", 0.001).tie("houseElectrode", "I.PE", "earth", 30).tie("gridElectrode", "G.N", "earth", 2)
    for line, angle in zip(LINES, (0, -120, 120)):
        case.source(f"island{line}", "I.N", f"I.{line}", NOMINAL_V, angle, 0.2, 0.1).load(
            f"boiler{line}", f"I.{line}", "G.N", {"L1": 2300, "L2": 1000, "L3": 500}[line], 0, "impedance")
    yield case
    case = Case("tt-leak", "A heater with 500 ohm to its PE in a TT house.", BOTH)
    case.tie("gridEarth", "S.N", "earth", 1.5).source("grid", "S.N", "S.L1", NOMINAL_V, 0, 0.05, 0.03).tie("electrode", "H.PE", "earth", 40)
    yield case.cable("service", "S", "H", 50, 10, ["L1", "N"]).at("H", "L1", 2000, law="impedance").tie("leak", "H.L1", "H.PE", 500)
