"""Damping from return times by SciPy: solve_ivp (RK45, 1e-7) to the mark, brentq about it.

The spring is that of engine/peer/springs.py, written apart from the engine. The bracket is given: from a tenth to ten times
what a slow leg would need. Reads one question on standard input, writes times [us] a damping and the dampings.
"""
import json
import sys
from pathlib import Path
from time import perf_counter

from scipy.integrate import solve_ivp
from scipy.optimize import brentq

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "engine" / "peer"))
from springs import Leg  # noqa: E402


def main():
    q = json.load(sys.stdin)
    leg = Leg(q["spring"], q["pressure"], q["ambient"])
    m, friction = q["mass"], q["friction"]

    def there(t, y, c):
        return y[0] - q["to"]

    there.terminal, there.direction = True, -1

    def needs(c):
        run = solve_ivp(lambda t, y, c: (y[1], -(leg.force(y[0]) - friction + c * y[1]) / m), (0.0, 30.0),
                        (q["from"], 0.0), args=(c,), rtol=1e-7, atol=1e-9, events=there)
        return run.t_events[0][0]

    # what a slow leg would need: time over the integral of 1/force along the way
    panels = 50
    step = (q["from"] - q["to"]) / panels
    slowness = sum(step / (leg.force(q["to"] + (i + 0.5) * step) - friction) for i in range(panels))

    def damping(time):
        slow = time / slowness
        return brentq(lambda c: needs(c) - time, slow / 10, slow * 10, rtol=1e-7, xtol=1e-4)

    dampings = [damping(time) for time in q["times"]]
    took = []
    for _ in range(3):
        for time in q["times"]:
            began = perf_counter()
            damping(time)
            took.append(1e6 * (perf_counter() - began))
    took.sort()
    json.dump({
        "timing": {"median": took[len(took) // 2], "fastest": took[0], "slowest": took[-1], "rounds": len(took)},
        "dampings": dampings,
    }, sys.stdout)


if __name__ == "__main__":
    main()
