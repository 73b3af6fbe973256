"""The timed questions by SciPy and NumPy, written from the formulas alone for an air fork with a port and lower-leg air.

Everything that does not hang on the load is worked out once, before the clock starts: the peers only solve.
Reads one question on standard input, writes times [us] and answers.
"""
import json
import platform
import sys
from math import pi
from time import perf_counter

import numpy as np
import scipy
from scipy.optimize import brentq


def ring(outer, inner=0.0):
    return pi * (outer * outer - inner * inner) / 4


class Fork:
    """Closed gases as amount c = P*V; slow unless an exponent is given, fast from `start`."""

    def __init__(self, s, pressure, ambient):
        self.amb, self.stroke = ambient, s["stroke"]
        self.ap, self.an = ring(s["bore"]), ring(s["bore"], s["shaft"])
        self.vp = s["positiveVolume"] - s["spacers"] * s["spacerVolume"]
        self.vn = s["negativeVolume"]
        port = s["equalisingStroke"]
        self.cp = (pressure + ambient) * self.vp
        self.cn = self.cp / (self.vp - self.ap * port) * (self.vn + self.an * port)
        low = s["lower"]
        self.al = ring(low["stanchion"], low["rod"])
        self.airs = [low["volume"] - leg["oil"] for leg in low["legs"]]
        # ambient pushes back on every area
        self.back = ambient * (self.ap - self.an + self.al * len(self.airs))
        self.end = min([self.stroke] + [0.999 * v / self.al for v in self.airs])

    def force(self, x):
        f = self.cp * self.ap / (self.vp - self.ap * x) - self.cn * self.an / (self.vn + self.an * x) - self.back
        for v in self.airs:
            f = f + self.amb * v * self.al / (v - self.al * x)
        return f

    def slope(self, x):
        f = self.cp * (self.ap / (self.vp - self.ap * x)) ** 2 + self.cn * (self.an / (self.vn + self.an * x)) ** 2
        for v in self.airs:
            f = f + self.amb * v * (self.al / (v - self.al * x)) ** 2
        return f

    def fast(self, x, start, k):
        def gas(amount, at, now):
            return amount / at * (at / now) ** k

        f = gas(self.cp, self.vp - self.ap * start, self.vp - self.ap * x) * self.ap
        f = f - gas(self.cn, self.vn + self.an * start, self.vn + self.an * x) * self.an - self.back
        for v in self.airs:
            f = f + gas(self.amb * v, v - self.al * start, v - self.al * x) * self.al
        return f

    def sag(self, load):
        return brentq(lambda x: self.force(x) - load, 0.0, self.end, xtol=1e-13)

    def sags(self, loads):
        """Newton on all loads at once, kept inside a bracket that closes in."""
        low, high = np.zeros_like(loads), np.full_like(loads, self.end)
        x = np.full_like(loads, 0.25 * self.end)
        for _ in range(60):
            miss = self.force(x) - loads
            low, high = np.where(miss < 0, x, low), np.where(miss < 0, high, x)
            after = x - miss / self.slope(x)
            after = np.where((after <= low) | (after >= high), (low + high) / 2, after)
            moved = np.max(np.abs(after - x))
            x = after
            if moved < 1e-12:
                break
        return x


def timed(work, rounds, calls=1):
    """Wall clock, after 0.3 s of warming up."""
    until = perf_counter() + 0.3
    while perf_counter() < until:
        work()
    took = []
    for _ in range(rounds):
        began = perf_counter()
        for _ in range(calls):
            work()
        took.append(1e6 * (perf_counter() - began) / calls)
    took.sort()
    return {"median": took[rounds // 2], "fastest": took[0], "slowest": took[-1], "rounds": rounds}


def slider(q, pressure):
    s, amb, load, friction = q["spring"], q["ambient"], q["load"], q["friction"]
    fork = Fork(s, pressure, amb)
    x = np.linspace(0.0, fork.end, 61)
    rest = fork.sag(load)
    low, high = fork.sag(load - friction), fork.sag(load + friction)
    # the force at one stroke is a straight line of the filling
    at = q["wantedSag"] * s["stroke"]
    none, one_bar = Fork(s, 0.0, amb).force(at), Fork(s, 1e5, amb).force(at)
    return {
        "slow": fork.force(x),
        "fast": fork.fast(x, rest, q["exponent"]),
        "rest": [rest, low, high],
        "pressure": 1e5 * (load - none) / (one_bar - none),
        "end": fork.force(fork.end),
    }


def main():
    q = json.load(sys.stdin)
    fork = Fork(q["spring"], q["pressure"], q["ambient"])
    brents, newtons = [], []
    for loads in q["batches"]:
        array = np.array(loads)
        calls = max(1, 20_000 // len(loads))
        rounds = 31 if len(loads) <= 10_000 else 11
        brents.append({
            "timing": timed(lambda: [fork.sag(load) for load in loads], rounds),
            "strokes": [fork.sag(load) for load in loads],
        })
        newtons.append({"timing": timed(lambda: fork.sags(array), rounds, calls), "strokes": fork.sags(array).tolist()})
    answer = slider(q, q["pressure"])
    json.dump({
        "versions": {"python": platform.python_version(), "numpy": np.__version__, "scipy": scipy.__version__},
        "brentq": brents,
        "newton": newtons,
        "slider": {
            **answer,
            "slow": answer["slow"].tolist(),
            "fast": answer["fast"].tolist(),
            "timing": timed(lambda: slider(q, q["pressure"]), 31, 100),
        },
    }, sys.stdout)


if __name__ == "__main__":
    main()
