"""Solves every reference case anew with the general libraries and compares with what is committed."""

import argparse
import csv
import importlib
import json
import pathlib
import sys

from elements import limited

HERE = pathlib.Path(__file__).resolve().parent
HOME = HERE.parent
CASES = HOME / "cases"
COLUMNS = ["case", "quantity", "name", "re", "im", "unit", "tool", "version"]
MODULES = {"opendss": "with_opendss", "pandapower": "with_pandapower", "power-grid-model": "with_power_grid_model",
           "ngspice": "with_ngspice", "ngspice-time": "with_ngspice"}
# Tools are given twelve digits; machines and processors differ in the last ones, long sums in time in more.
SAME_PER_UNIT = 1e-9
SAME_IN_TIME_PER_UNIT = 1e-7
NOMINAL_V = 230.0


def casebook():
    """All cases as the scripts write them, by name."""
    cases = {}
    for module in sorted(HERE.glob("cases_*.py")):
        for case in importlib.import_module(module.stem).cases():
            if case.name in cases:
                raise SystemExit(f"two cases are called {case.name}")
            cases[case.name] = case.text()
    return cases


def solved(case):
    rows = []
    for tool in case["tools"]:
        module = importlib.import_module(MODULES[tool])
        try:
            answer = module.solve_in_time(case) if tool == "ngspice-time" else limited(case, module.solve)
        except Exception as trouble:
            raise SystemExit(f"{case['name']}, {tool}: {type(trouble).__name__}: {trouble}") from trouble
        for quantity, name, value, unit in answer:
            value = complex(value)
            im = "" if quantity.endswith("Magnitude") else digits(value.imag)
            rows.append([case["name"], quantity, name, digits(value.real), im, unit, tool, module.version()])
    return rows


def digits(value):
    # Below a thousandth of a microvolt or microampere there is only rounding.
    return format(0.0 if abs(value) < 1e-9 else value, ".12g")


def read(path):
    with open(path, newline="", encoding="utf-8") as file:
        rows = list(csv.reader(file))
    return rows[1:]


def write(path, rows):
    with open(path, "w", newline="", encoding="utf-8") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(COLUMNS)
        writer.writerows(rows)


def bases(rows):
    """What one per unit is: 230 V, and the largest current of the case, at least 1 A."""
    base = {}
    for row in rows:
        if row[5] == "A":
            size = abs(complex(float(row[3]), float(row[4] or 0)))
            base[row[0]] = max(base.get(row[0], 1.0), size)
    return lambda row: NOMINAL_V if row[5] == "V" else base[row[0]]


def differences(old, new):
    before = {(row[0], row[1], row[2], row[6]): row for row in old}
    after = {(row[0], row[1], row[2], row[6]): row for row in new}
    for key in before.keys() - after.keys():
        yield f"{' '.join(key)}: no longer given"
    base = bases(new)
    for key, row in after.items():
        if key not in before:
            yield f"{' '.join(key)}: new"
            continue
        one, two = (complex(float(r[3]), float(r[4] or 0)) for r in (before[key], row))
        off = abs(one - two) / base(row)
        if not off <= (SAME_IN_TIME_PER_UNIT if row[6] == "ngspice-time" else SAME_PER_UNIT):
            yield f"{' '.join(key)}: was {one:.9g}, is {two:.9g} {row[5]}, {off:.1e} per unit ({row[7]}, was {before[key][7]})"


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--write", action="store_true", help="renew the committed cases and values")
    parser.add_argument("--out", required=True, type=pathlib.Path, help="folder for the new values")
    parser.add_argument("--only", default="", help="only cases whose names begin so; nothing is written")
    arguments = parser.parse_args()
    texts = {name: text for name, text in casebook().items() if name.startswith(arguments.only)}
    rows = []
    for name, text in texts.items():
        if sys.stderr.isatty():
            print(f"\r{len(rows):6d} values  {name:48s}", end="", file=sys.stderr, flush=True)
        rows += solved(json.loads(text))
    if sys.stderr.isatty():
        print(file=sys.stderr)
    arguments.out.mkdir(parents=True, exist_ok=True)
    write(arguments.out / "expected.csv", rows)
    committed = {path.stem: path.read_text(encoding="utf-8") for path in CASES.glob("*.json")}
    if arguments.write and not arguments.only:
        CASES.mkdir(exist_ok=True)
        for name in committed.keys() - texts.keys():
            (CASES / f"{name}.json").unlink()
        for name, text in texts.items():
            (CASES / f"{name}.json").write_text(text, encoding="utf-8")
        write(HOME / "expected.csv", rows)
        print(f"{len(texts)} cases, {len(rows)} values written")
        return 0
    if arguments.only:
        committed = {name: text for name, text in committed.items() if name.startswith(arguments.only)}
    found = [f"{name}: no script writes this case any more" for name in committed.keys() - texts.keys()]
    found += [f"{name}: the case itself differs" for name, text in texts.items() if committed.get(name) != text]
    old = [row for row in read(HOME / "expected.csv") if row[0].startswith(arguments.only)] if (HOME / "expected.csv").exists() else []
    found += differences(old, rows)
    for line in found:
        print(line)
    print(f"{len(texts)} cases, {len(rows)} values, {len(found)} differ; the new ones lie in {arguments.out}")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
