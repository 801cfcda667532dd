"""What the scripts of all tools need: complex numbers out of the file, rows for expected.csv."""

import copy

LOW_SHARE = 0.7


def number(pair):
    return complex(pair[0], pair[1])


def place(point):
    return point.rsplit(".", 1)[0]


def all_points(case):
    """Every point but earth, in the order in which the file names them."""
    seen = {}
    for run in case["runs"]:
        for point in run["from"] + run["to"]:
            seen[point] = True
    for kind in ("ties", "sources", "loads", "shorts"):
        for one in case[kind]:
            seen[one["from"]] = True
            seen[one["to"]] = True
    seen.pop("earth", None)
    return list(seen)


def conductors(case):
    """Each conductor of each run as (name, from, to)."""
    return [(f"{run['id']}/{i + 1}", run["from"][i], run["to"][i])
            for run in case["runs"] for i in range(len(run["from"]))]


def voltage(name, value):
    return ("voltage", name, value, "V")


def between(name, reference, value):
    return ("voltageBetween", f"{name} {reference}", value, "V")


def current(kind, name, value):
    """`kind` is run, tie, source or short; from the beginning of the element to its end."""
    return (kind + "Current", name, value, "A")


def magnitude(kind, name, value):
    """Where a tool gives no angle."""
    return (kind + "CurrentMagnitude", name, value, "A")


def limited(case, solve):
    """The case with its e.m.f. lowered until the limited source gives its limit: twice solved by the tool itself."""
    if "limit" not in case:
        return solve(case)
    most, name = case["limit"]["currentA"], case["limit"]["source"]
    given = {(quantity, who): value for quantity, who, value, _ in solve(case)}["sourceCurrent", name]
    ratio = min(1.0, most / abs(given))
    lowered = copy.deepcopy(case)
    for one in lowered["sources"]:
        one["emfV"] = [part * ratio for part in one["emfV"]]
    return solve(lowered)
