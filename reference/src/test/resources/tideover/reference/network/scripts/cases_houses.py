"""Three whole houses, connected and islanded; sections, lengths and loads are invented."""

from casebook import Case, FIVE, FOUR, LINES, NOMINAL_V

LAWS = {"cooker": "impedance", "boiler": "impedance", "oven": "impedance", "lamps": "current"}


def final(case, board, line, name, m, mm2, w, var=0.0):
    """A single-phase final circuit from a board, with its load at the end; a point of the circuit is "circuit.conductor"."""
    place = f"{board}-{name}"
    case.runs.append({"id": name, "from": [f"{board}.{line}", f"{board}.N", f"{board}.PE"],
                      "to": [f"{place}.L", f"{place}.N", f"{place}.PE"],
                      "ohm": [[[round(0.0225 * m / mm2, 9), round(0.00008 * m, 9)] if i == j else [0, 0] for j in range(3)]
                              for i in range(3)]})
    return case.load(name, f"{place}.L", f"{place}.N", w, var, LAWS.get(name.rstrip("0123456789"), "power"))


def supply(case, connected, earthing, volts=NOMINAL_V):
    """The grid with its service cable, or the inverter with its link, both to the main board M."""
    if connected:
        case.tie("gridEarth", "G.N", "earth", 1.2).grid("G", 0.025, 0.02, volts=volts).cable("service", "G", "M", 45, 16, FOUR)
        if earthing == "TN":
            case.tie("split", "M.N", "M.PE", 0.0005)
    else:
        case.tie("link", "M.N", "M.PE", 0.002)
        for line, angle in zip(LINES, (0, -120, 120)):
            case.source(f"inverter{line}", "M.N", f"M.{line}", NOMINAL_V, angle, 0.12, 0.08)
    return case.tie("electrode", "M.PE", "earth", 8 if earthing == "TN" else 30)


def terrace(connected):
    word = "connected" if connected else "islanded"
    case = Case(f"house-terrace-{word}", f"A terraced house, TN, {word}.", ["opendss"])
    supply(case, connected, "TN").cable("riser", "M", "U", 12, 6, FIVE)
    final(case, "M", "L1", "kitchen", 14, 2.5, 1900, 200)
    final(case, "M", "L2", "lamps1", 22, 1.5, 180, 40)
    final(case, "M", "L3", "fridge", 16, 2.5, 140, 60)
    final(case, "U", "L1", "lamps2", 18, 1.5, 120, 20)
    final(case, "U", "L2", "office", 20, 2.5, 650, 90)
    if connected:
        final(case, "M", "L1", "oven", 12, 2.5, 2800).each("M", -1300, id="sun")
    return case


def farm(connected):
    word = "connected" if connected else "islanded"
    case = Case(f"house-farm-{word}", f"A farmhouse with a barn, TT, {word}.", ["opendss"])
    supply(case, connected, "TT").coupled("yard", "M", "B", 95, 16, FIVE).tie("barnElectrode", "B.PE", "earth", 40)
    final(case, "M", "L1", "pump", 60, 2.5, 1100, 700)
    final(case, "M", "L2", "kitchen", 18, 2.5, 1500, 150)
    final(case, "M", "L3", "boiler", 10, 2.5, 2000)
    final(case, "B", "L2", "milking", 25, 2.5, 900, 500)
    final(case, "B", "L3", "lamps", 45, 1.5, 300, 60)
    case.cable("coldRoom", "B", "K", 20, 2.5, FIVE).each("K", 800, 550, id="compressor")
    return case.each("B", -2600, 200, id="sun")


def town(connected):
    word = "connected" if connected else "islanded"
    case = Case(f"house-town-{word}", f"A town house with four storeys, TN, {word}.", ["opendss"])
    supply(case, connected, "TN", 232)
    for storey in range(1, 5):
        below = "M" if storey == 1 else f"S{storey - 1}"
        board = f"S{storey}"
        case.cable(f"riser{storey}", below, board, 4, 10, FIVE)
        for i, (name, m, mm2, w, var) in enumerate([("sockets", 24, 2.5, 700, 120), ("lamps", 30, 1.5, 160, 30), ("kitchen", 15, 2.5, 1300, 100)]):
            if connected or name != "kitchen":
                final(case, board, LINES[(i + storey) % 3], f"{name}{storey}", m + storey, mm2, w + 35 * storey, var)
    case.cable("lift", "S4", "T", 6, 4, FIVE).each("T", 900, 600, id="lift")
    final(case, "M", "L1", "heating", 12, 1.5, 350, 120)
    return case.at("M", "L2", -3000, 0, id="sun") if connected else case.at("M", "L2", -1500, 0, id="sun")


def cases():
    for house in (terrace, farm, town):
        for connected in (True, False):
            yield house(connected)
