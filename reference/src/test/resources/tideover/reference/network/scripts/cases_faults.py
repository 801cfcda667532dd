"""Faults without loads: largest and smallest after IEC 60909-0, with resistance, over two returns, in two places.

The voltage factor c stands in the e.m.f. of the case: 1.1 and 0.95 as power-grid-model takes it, 1.05 and 0.95 as
pandapower does for a tolerance of 6 % (IEC 60909-0, table of voltage factors).
"""

from casebook import Case, FIVE, FOUR, LINES, NOMINAL_V

BOTH = ["opendss", "ngspice"]
PGM = ["opendss", "ngspice", "power-grid-model"]
PANDAPOWER = ["opendss", "pandapower"]
WITH_PE = LINES + ["PE"]
# Copper at 160 degrees Celsius over copper at about 70, which RHO is for: 0.004 per kelvin from 20 (IEC 60909-0).
HOT = (1 + 0.004 * 140) / (1 + 0.004 * 50)


def net(name, about, tools, c, which="max", conductors=WITH_PE, coupled=False, hot=False):
    """A grid earthed at its star, two cables one behind the other; the fourth conductor is the return."""
    case = Case(name, about, list(tools), "fault")
    back = conductors[3] if len(conductors) > 3 else None
    if back:
        case.tie("earthed", f"S.{back}", "earth", 0.8)
    case.grid("S", 0.02, 0.03, star=f"S.{back}" if back else "earth", volts=c * NOMINAL_V)
    lay = case.coupled if coupled else case.cable
    lay("main", "S", "A", 40, 16 / (HOT if hot else 1), conductors)
    lay("sub", "A", "B", 30, 4 / (HOT if hot else 1), conductors)
    return case.also(iec60909={"case": which, "c": c, "endTempDegC": 160})


def three(case, place, r=0.0, to="PE"):
    for line in LINES:
        case.short(f"fault{line}", f"{place}.{line}", "earth" if to == "earth" else f"{place}.{to}", r)
    return case


def after_iec():
    for which, c in (("max", 1.1), ("min", 0.95)):
        word = {"max": "largest", "min": "smallest"}[which]
        hot = which == "min"
        yield net(f"fault-line-pe-{word}", "Line to PE at the far board.", PGM, c, which, hot=hot).short("fault", "B.L1", "B.PE")
        yield net(f"fault-line-neutral-{word}", "Line to neutral at the far board.", PGM, c, which, FOUR, hot=hot).short(
            "fault", "B.L2", "B.N")
        yield net(f"fault-line-line-{word}", "Line to line at the far board.", PGM, c, which, hot=hot).short("fault", "B.L1", "B.L2")
        yield three(net(f"fault-three-phase-{word}", "All three lines at the far board.", PGM, c, which, hot=hot), "B")
    for which, c in (("max", 1.05), ("min", 0.95)):
        word = {"max": "largest", "min": "smallest"}[which]
        hot = which == "min"
        yield three(net(f"fault-iec-three-phase-{word}", "Voltage tolerance 6 %.", PANDAPOWER, c, which, hot=hot), "B")
        yield net(f"fault-iec-line-line-{word}", "Voltage tolerance 6 %.", PANDAPOWER, c, which, hot=hot).short("fault", "B.L2", "B.L3")
        yield net(f"fault-iec-line-pe-{word}", "Voltage tolerance 6 %.", PANDAPOWER, c, which, hot=hot).short("fault", "B.L1", "B.PE")
    yield net("fault-line-pe-resistance", "An arc of 0.5 ohm.", PGM, 0.95, "min").short("fault", "B.L3", "B.PE", 0.5)
    yield net("fault-line-line-resistance", "0.2 ohm between two lines.", PGM, 0.95, "min").short("fault", "B.L1", "B.L3", 0.2)
    yield three(net("fault-three-phase-resistance", "0.1 ohm in each line.", PGM, 0.95, "min"), "B", 0.1)
    case = net("fault-two-lines-pe", "Two lines and PE at one place.", PGM, 1.1)
    yield case.short("faultL1", "B.L1", "B.PE").short("faultL2", "B.L2", "B.PE")
    yield net("fault-at-first-board", "Line to PE near the source.", PGM, 1.1).short("fault", "A.L1", "A.PE")
    yield net("fault-coupled-line-earth", "Mutual impedances, return through perfect earth.", PGM, 1.1, conductors=LINES,
              coupled=True).short("fault", "B.L1", "earth")
    yield three(net("fault-coupled-three-phase", "Mutual impedances, all lines.", PGM, 1.1, conductors=LINES, coupled=True), "B", to="earth")
    yield net("fault-coupled-line-pe", "Mutual impedances between lines and PE.", PGM, 1.1, coupled=True).short("fault", "B.L2", "B.PE")
    case = net("fault-ring", "A fault in a ring is fed from both sides.", PGM, 1.1).cable("back", "B", "S", 70, 10, WITH_PE)
    yield case.short("fault", "B.L1", "B.PE")
    case = net("fault-two-sources", "Grid and a generator feed the fault.", PGM, 1.1, conductors=LINES)
    case.grid("G", 0.2, 0.4, star="earth", volts=1.1 * NOMINAL_V, id="generator").cable("third", "G", "A", 15, 10, LINES)
    yield case.short("fault", "B.L1", "earth")


def cases():
    yield from after_iec()
    case = Case("fault-parallel-return", "Neutral and PE joined at both ends: the fault comes back on both.", BOTH, "fault")
    case.tie("earthed", "S.N", "earth", 1).grid("S", 0.02, 0.03).tie("link", "S.N", "S.PE", 0.0005).tie("second", "B.N", "B.PE", 0.001)
    yield case.cable("main", "S", "A", 40, 16, FIVE).cable("sub", "A", "B", 30, 4, FIVE).short("fault", "B.L1", "B.PE")
    case = Case("fault-parallel-earth", "Part of the fault current returns over the house's electrode.", BOTH, "fault")
    case.tie("earthed", "S.N", "earth", 0.5).grid("S", 0.02, 0.03).coupled("service", "S", "H", 60, 16, FOUR).tie("split", "H.N", "H.PE", 0.001)
    case.tie("electrode", "H.PE", "earth", 3)
    yield case.cable("final", "H", "F", 35, 2.5, ["L1", "N", "PE"]).short("fault", "F.L1", "F.PE", 0.05)
    case = Case("fault-tt", "TT: the fault returns over both electrodes.", BOTH, "fault")
    case.tie("earthed", "S.N", "earth", 2).grid("S", 0.02, 0.03).cable("service", "S", "H", 60, 16, FOUR).tie("electrode", "H.PE", "earth", 30)
    yield case.cable("final", "H", "F", 35, 2.5, ["L1", "N", "PE"]).short("fault", "F.L1", "F.PE")
    case = Case("fault-tt-island", "TT house islanded: the link makes it a loop of copper.", BOTH, "fault")
    case.source("inverter", "I.N", "I.L1", NOMINAL_V, 0, 1.5, 0.8).tie("link", "I.N", "I.PE", 0.002).tie("electrode", "I.PE", "earth", 30)
    yield case.cable("final", "I", "F", 35, 2.5, ["L1", "N", "PE"]).short("fault", "F.L1", "F.PE")
    case = Case("fault-island-no-link", "TT house islanded, link open: hardly any current, the neutral takes over the line's voltage.", BOTH, "fault")
    case.source("inverter", "I.N", "I.L1", NOMINAL_V, 0, 1.5, 0.8).tie("insulation", "I.N", "I.PE", 1e6).tie("electrode", "I.PE", "earth", 30)
    yield case.cable("final", "I", "F", 35, 2.5, ["L1", "N", "PE"]).short("fault", "F.L1", "F.PE")
    case = Case("fault-double", "Two lines to PE in two circuits at once.", BOTH, "fault")
    case.tie("earthed", "S.PE", "earth", 1).grid("S", 0.02, 0.03, star="S.PE").cable("main", "S", "A", 40, 16, WITH_PE)
    case.cable("one", "A", "B", 30, 2.5, ["L1", "PE"]).cable("two", "A", "C", 50, 4, ["L2", "PE"])
    yield case.short("first", "B.L1", "B.PE").short("second", "C.L2", "C.PE", 0.1)
    case = Case("fault-double-unearthed", "Unearthed island: the second fault makes the first a short circuit between lines.", BOTH, "fault")
    case.grid("S", 0.5, 0.3).tie("insulation", "S.N", "earth", 1e6).tie("electrode", "S.PE", "earth", 10)
    case.cable("one", "S", "B", 30, 2.5, ["L1", "PE"]).cable("two", "S", "C", 50, 4, ["L2", "PE"])
    yield case.short("first", "B.L1", "B.PE").short("second", "C.L2", "C.PE")
    case = Case("fault-neutral-interrupted", "Line to neutral behind an interrupted neutral: the second link still closes the loop.", BOTH, "fault")
    case.tie("earthed", "S.N", "earth", 1).grid("S", 0.02, 0.03).tie("pe", "S.N", "S.PE", 0.0005).cable("service", "S", "H", 40, 10, WITH_PE)
    yield case.tie("link", "H.N", "H.PE", 0.002).cable("final", "H", "F", 20, 2.5, ["L1", "N", "PE"]).short("fault", "F.L1", "F.N")
    case = Case("fault-neutral-interrupted-electrode", "The same where only an electrode is left: a few amperes.", BOTH, "fault")
    case.tie("earthed", "S.N", "earth", 2).grid("S", 0.02, 0.03).cable("service", "S", "H", 40, 10, LINES)
    yield case.tie("electrode", "H.N", "earth", 30).cable("final", "H", "F", 20, 2.5, ["L1", "N"]).short("fault", "F.L1", "F.N")
    case = Case("fault-island-to-grid-neutral", "Line of the island to the grid's neutral: both electrodes in the loop.", BOTH, "fault")
    case.source("island", "I.N", "I.L1", NOMINAL_V, 0, 0.2, 0.1).tie("link", "I.N", "I.PE", 0.002).tie("houseElectrode", "I.PE", "earth", 30)
    yield case.tie("gridElectrode", "G.N", "earth", 2).short("fault", "I.L1", "G.N")
    case = Case("fault-10-km", "Line to neutral at the end of 10 km: no more than a load.", BOTH, "fault")
    yield case.tie("earthed", "S.N", "earth", 1).grid("S", 0.02, 0.03).coupled("line", "S", "A", 10000, 70, FOUR).short("fault", "A.L1", "A.N")
    case = Case("fault-limited", "An inverter that gives 40 A and no more lowers its voltage until that is so.", BOTH, "fault")
    case.source("inverter", "I.N", "I.L1", NOMINAL_V, 0, 0.1, 0.15).tie("link", "I.N", "I.PE", 0.002).tie("electrode", "I.PE", "earth", 15)
    case.cable("final", "I", "F", 25, 2.5, ["L1", "N", "PE"]).short("fault", "F.L1", "F.PE", 0.05)
    yield case.also(limit={"source": "inverter", "currentA": 40.0})
    case = Case("fault-limited-two-links", "The same with a second link: neutral and PE share the 40 A.", BOTH, "fault")
    case.source("inverter", "I.N", "I.L1", NOMINAL_V, 0, 0.1, 0.15).tie("link", "I.N", "I.PE", 0.002).tie("second", "F.N", "F.PE", 0.01)
    case.tie("electrode", "I.PE", "earth", 15).cable("final", "I", "F", 25, 2.5, ["L1", "N", "PE"]).short("fault", "F.L1", "F.PE")
    yield case.also(limit={"source": "inverter", "currentA": 40.0})
