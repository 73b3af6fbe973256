"""A press test by SciPy: every hypothesis fitted by least_squares, vectorised over the stops, one start each.

The formulas are those of engine/peer/press.py, written apart from the engine. Everything that does not hang on a parameter
is read before the clock starts; bands are left out. Reads one question on standard input, writes times [us] and fits.
"""
import json
import platform
import sys
from pathlib import Path
from time import perf_counter

import numpy as np
import scipy

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "engine" / "peer"))
from press import Case  # noqa: E402


def main():
    case = Case(json.load(sys.stdin))
    ranges = {"as-sheet": None, **case.faults()}

    def every():
        return [case.fit(name, bounds, starts=(0.3,), tight=1e-9) for name, bounds in ranges.items()]

    until = perf_counter() + 0.3
    while perf_counter() < until:
        every()
    took = []
    for _ in range(31):
        began = perf_counter()
        fits = every()
        took.append(1e6 * (perf_counter() - began))
    took.sort()
    json.dump({
        "versions": {"python": platform.python_version(), "numpy": np.__version__, "scipy": scipy.__version__},
        "timing": {"median": took[15], "fastest": took[0], "slowest": took[-1], "rounds": 31},
        "fits": fits,
    }, sys.stdout)


if __name__ == "__main__":
    main()
