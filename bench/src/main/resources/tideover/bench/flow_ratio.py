"""Solves circuits written by the benchmark with OpenDSS and says how long one set of loads takes.

flow_ratio.py FILE ROUNDS PER_ROUND CHECKED TOLERANCE
The loads follow shapes in the file, so that the loop over the sets runs inside the library. Prints for each of the first
CHECKED sets one line 'node real imaginary ...', then 'iterations N' of the last set and one line 'us TIME' a round.
"""

import sys
import time

import opendssdirect as dss


def command(text):
    answer = dss.Text.Command(text)
    if answer:
        sys.exit(f"{text}: {answer}")


file, rounds, per_round, checked, tolerance = sys.argv[1], int(sys.argv[2]), int(sys.argv[3]), int(sys.argv[4]), sys.argv[5]
command(f"redirect '{file}'")
command("set voltagebases=[0.4]")
command("calcvoltagebases")
command("set controlmode=off maxiterations=100")
command(f"set mode=daily stepsize=1h tolerance={tolerance}")

command("set number=1")
names = dss.Circuit.AllNodeNames()
for _ in range(checked):
    dss.Solution.Solve()
    volts = dss.Circuit.AllBusVolts()
    print(" ".join(f"{name} {volts[2 * i]!r} {volts[2 * i + 1]!r}" for i, name in enumerate(names)))

command(f"set number={per_round}")
dss.Solution.Solve()
if not dss.Solution.Converged():
    sys.exit("OpenDSS finds no solution")
print(f"iterations {dss.Solution.Iterations()}")
for _ in range(rounds):
    begin = time.perf_counter()
    dss.Solution.Solve()
    print(f"us {(time.perf_counter() - begin) * 1e6 / per_round!r}")
