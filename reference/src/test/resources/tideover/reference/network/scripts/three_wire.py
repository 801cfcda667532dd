"""A case as tools without an own neutral see it: three lines, given by positive and zero sequence impedance.

That is exact where the lines of a run are alike and all current that leaves a line comes back on one conductor (or
through earth): the return is then part of the zero sequence, Z0 = z + 2m - 6w + 3r, with z a line's own impedance, m
between lines, w between line and return, r the return's own. Voltages count from the local return.
"""

from elements import number

LINES = ["L1", "L2", "L3"]


class Refused(Exception):
    pass


def same(values, what):
    first = values[0]
    if any(abs(value - first) > 1e-9 for value in values):
        raise Refused(f"{what} are not alike: {values}")
    return first


def sequences(run):
    """Positive and zero sequence impedance of a run."""
    names = [point.split(".")[1] for point in run["from"]]
    if names[:3] != LINES or len(names) > 4:
        raise Refused(f"run {run['id']} has conductors {names}")
    ohm = [[number(z) for z in row] for row in run["ohm"]]
    z = same([ohm[i][i] for i in range(3)], "own impedances")
    m = same([ohm[i][j] for i in range(3) for j in range(3) if i != j], "mutual impedances")
    zero = z + 2 * m
    if len(names) == 4:
        w = same([ohm[i][3] for i in range(3)], "impedances to the return")
        zero += 3 * ohm[3][3] - 6 * w
    return z - m, zero


def back(case):
    """The conductor that is the return everywhere: N or PE, or earth itself."""
    names = {run["from"][3].split(".")[1] if len(run["from"]) > 3 else "earth" for run in case["runs"]}
    if len(names) != 1:
        raise Refused(f"several returns: {names}")
    return names.pop()


def places(case):
    seen = {}
    for run in case["runs"]:
        for end in ("from", "to"):
            seen[run[end][0].split(".")[0]] = True
    return list(seen)


def sources(case):
    """For each place with sources its impedance and the e.m.f. of L1."""
    found = {}
    for one in case["sources"]:
        place, line = one["to"].split(".")
        found.setdefault(place, {})[line] = one
    answer = {}
    for place, lines in found.items():
        z = same([number(lines[line]["ohm"]) for line in LINES], "source impedances")
        answer[place] = (z, number(lines["L1"]["emfV"]), [lines[line]["id"] for line in LINES])
    return answer


def point(place, conductor):
    return "earth" if conductor == "earth" else f"{place}.{conductor}"
