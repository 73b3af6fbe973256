"""The doubt of a sag by NumPy: every draw at once, Newton over all of them, percentiles, shares by sorted classes.

The fork is that of peers.py, written apart from the engine. Reads one question on standard input, writes times [us].
"""
import json
import sys

import numpy as np

from peers import Fork, timed


def share(x, y, classes=30):
    """Var(E[y|x])/Var(y) by the means of equal classes, less what scatter in them makes of itself."""
    groups = np.array_split(y[np.argsort(x)], classes)
    inside = sum(g.var() * len(g) for g in groups)
    total = y.var() * len(y)
    return 1 - inside / total - (classes - 1) * inside / (len(y) - classes) / total


def main():
    q = json.load(sys.stdin)
    rng = np.random.default_rng(1)

    def study():
        pressures = rng.normal(q["pressure"], q["uPressure"], q["draws"])
        loads = rng.normal(q["load"], q["uLoad"], q["draws"])
        strokes = Fork(q["spring"], pressures, q["ambient"]).sags(loads)
        return np.quantile(strokes, [0.5, 0.05, 0.95]), share(pressures, strokes), share(loads, strokes)

    spread, of_pressure, of_load = study()
    json.dump({
        "timing": timed(study, 31),
        "spread": spread.tolist(),
        "shares": [float(of_pressure), float(of_load)],
    }, sys.stdout)


if __name__ == "__main__":
    main()
