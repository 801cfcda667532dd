"""In time: what a switch does at 0.1 s; compared is the steady state that is left at the end.

`closing` are elements of the case that a contact closes at that moment; `opening` ones that are there before it and
therefore no longer in the case. Loads are impedances: a coil and a resistor each.
"""

from casebook import Case, FIVE, FOUR, LINES, NOMINAL_V

TOOLS = ["opendss", "ngspice-time"]
AT = 0.1


def grid(name, about, kind="flow", conductors=FOUR):
    case = Case(name, about, TOOLS, kind).tie("earthed", "S.N", "earth", 1).grid("S", 0.06, 0.05)
    return case.cable("service", "S", "H", 50, 10, conductors)


def cases():
    case = grid("time-fault-line-neutral", "The direct current of a fault dies away; what is left is the steady fault.", "fault")
    yield case.short("fault", "H.L1", "H.N").also(time={"atS": AT, "closing": ["fault"]})
    case = grid("time-fault-line-line", "Two lines.", "fault")
    yield case.short("fault", "H.L1", "H.L2", 0.02).also(time={"atS": AT, "closing": ["fault"]})
    case = grid("time-fault-three-phase", "Three lines, each with another share of direct current.", "fault")
    for line in LINES:
        case.short(f"fault{line}", f"H.{line}", "H.N")
    yield case.also(time={"atS": AT, "closing": [f"fault{line}" for line in LINES]})
    case = Case("time-fault-coupled", "Mutual impedances and two returns.", TOOLS, "fault").tie("earthed", "S.N", "earth", 1)
    case.grid("S", 0.06, 0.05).tie("link", "S.N", "S.PE", 0.002).tie("second", "H.N", "H.PE", 0.002).coupled("service", "S", "H", 50, 10, FIVE)
    yield case.short("fault", "H.L1", "H.PE").also(time={"atS": AT, "closing": ["fault"]})
    case = grid("time-motor-start", "A motor standing still is a lagging impedance; the dip at a lamp beside it.")
    case.at("H", "L1", 4000, 8500, "impedance", id="motor").at("H", "L1", 300, 20, "impedance", id="lamp")
    yield case.also(time={"atS": AT, "closing": ["motor"]})
    case = Case("time-motor-start-island", "The same on an island's softer source, three lines.", TOOLS)
    case.tie("link", "I.N", "I.PE", 0.002).tie("electrode", "I.PE", "earth", 12)
    for line, angle in zip(LINES, (0, -120, 120)):
        case.source(f"inverter{line}", "I.N", f"I.{line}", NOMINAL_V, angle, 0.3, 0.4)
    case.cable("feeder", "I", "B", 18, 6, FIVE).each("B", 1500, 3000, "impedance", id="motor").at("B", "L2", 600, 60, "impedance", id="lamp")
    yield case.also(time={"atS": AT, "closing": [f"motor{line}" for line in LINES]})
    case = grid("time-neutral-breaks", "The neutral breaks under load: two loads find themselves in series.", conductors=LINES)
    case.at("H", "L1", 2300, 150, "impedance").at("H", "L2", 400, 40, "impedance").at("H", "L3", 900, 100, "impedance")
    yield case.also(time={"atS": AT, "closing": [], "opening": [{"id": "neutral", "from": "S.N", "to": "H.N", "ohm": [0.1125, 0.004]}]})
    case = Case("time-limited-source", "A control lowers the inverter's voltage until its current is at its limit.", TOOLS, "fault")
    case.source("inverter", "I.N", "I.L1", NOMINAL_V, 0, 0.1, 0.15).tie("link", "I.N", "I.PE", 0.002).tie("electrode", "I.PE", "earth", 15)
    case.cable("final", "I", "F", 25, 2.5, ["L1", "N", "PE"]).short("fault", "F.L1", "F.PE", 0.05)
    yield case.also(limit={"source": "inverter", "currentA": 40.0}, time={"atS": AT, "closing": ["fault"]})
