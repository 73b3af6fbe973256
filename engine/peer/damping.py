"""Return times, drops and adjuster laws by SciPy, written from the formulas alone.

Motion in absolute heights by scipy.integrate.solve_ivp (DOP853, 1e-10); laws by scipy.stats.linregress and Student's t.
Reads a JSON list of cases on standard input, writes a JSON list of answers.
"""
import json
import sys
from math import exp, log, sqrt

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq
from scipy.stats import linregress
from scipy.stats import t as student

from springs import Leg, full_stroke

G = 9.80665


def leg_of(case):
    return Leg(case["spring"], case.get("pressure", 0.0), case["ambient"], case["exponent"], case["startStroke"])


def returning(case, damping):
    leg, m, friction, load = leg_of(case), case["mass"], case["friction"], case["load"]

    def rates(t, y):
        return [y[1], (-(leg.force(y[0]) - load) + friction - damping * y[1]) / m]

    def there(t, y):
        return y[0] - case["to"]

    def stopped(t, y):
        return y[1]

    there.terminal, there.direction = True, -1
    stopped.terminal, stopped.direction = True, 1
    run = solve_ivp(rates, (0.0, 60.0), [case["from"], 0.0], method="DOP853", rtol=1e-10, atol=1e-12,
                    events=[there, stopped])
    return float(run.t_events[0][0]) if len(run.t_events[0]) else None


def back(case):
    time = returning(case, case["damping"])
    if time is None:
        return {"time": None}
    # the inverse, to a time of its own
    wanted = 1.3 * time
    upper = case["damping"] * 4 + 100
    found = brentq(lambda c: (returning(case, c) or 1e3) - wanted, case["damping"], upper, xtol=1e-6, rtol=1e-9) \
        if case["inverse"] else None
    return {"time": time, "wanted": wanted, "damping": found}


def dropped(case):
    leg, ms, mw = leg_of(case), case["sprungMass"], case["wheelMass"]
    c1, c2, kt = case["linear"], case["orifice"], case["tyre"]
    end = full_stroke(case["spring"])
    inside = lambda x: min(max(x, 0.0), end)

    def legforce(x, v):
        return leg.force(inside(x)) + c1 * v + c2 * v * abs(v)

    # heights above where each stands with the leg long and the tyre just touching: sprung a, wheel b; stroke = b - a
    def tyre(b):
        return kt * max(0.0, -b)

    def loose(t, y):
        a, va, b, vb = y
        f = legforce(b - a, vb - va)
        return [va, f / ms - G, vb, (tyre(b) - f) / mw - G]

    def tight(t, y):
        acc = tyre(y[2]) / (ms + mw) - G
        return [y[1], acc, y[3], acc]

    # what the leg must carry to keep both together: the sprung mass is moved by it alone
    def carried(b):
        return ms * tyre(b) / (ms + mw)

    def long_end(t, y):
        return y[2] - y[0]

    def short_end(t, y):
        return y[2] - y[0] - end

    # a hair's breadth, so that a leg that holds nothing at all in the air counts as held
    def lets_go(t, y):
        return carried(y[2]) - leg.force(0.0) - 1e-7

    def comes_off(t, y):
        return leg.force(end) - carried(y[2]) - 1e-7

    for event, direction in ((long_end, -1), (short_end, 1), (lets_go, 1), (comes_off, 1)):
        event.terminal, event.direction = True, direction

    t, y, kind = 0.0, np.array([case["dropHeight"], 0.0, case["dropHeight"], 0.0]), "long"
    deepest = peak = 0.0
    bottomed = False
    times, strokes = [], []
    while t < 3.0 - 1e-12:
        if kind == "long" and lets_go(t, y) > 0 or kind == "short" and comes_off(t, y) > 0:
            kind = "loose"
        events = {"loose": [long_end, short_end], "long": [lets_go], "short": [comes_off]}[kind]
        run = solve_ivp(loose if kind == "loose" else tight, (t, 3.0), y, method="DOP853", rtol=1e-9, atol=1e-11,
                        max_step=0.01, events=events, dense_output=True)
        last = run.t[-1]
        at = np.unique(np.concatenate([np.arange(t, last, 2e-4), [last]]))
        ya = run.sol(at)
        x = ya[2] - ya[0]
        f = [legforce(p, q) for p, q in zip(x, ya[3] - ya[1])] if kind == "loose" else [carried(b) for b in ya[2]]
        deepest, peak = max(deepest, float(x.max())), max(peak, float(max(f)))
        times.extend(at)
        strokes.extend(x)
        t, y = float(last), run.y[:, -1].copy()
        if kind != "loose":
            kind = "loose"
            continue
        if run.status != 1:
            break
        together = (ms * y[1] + mw * y[3]) / (ms + mw)
        y[1] = y[3] = together
        if len(run.t_events[1]):
            kind, bottomed = "short", True
            y[0] = y[2] - end
        else:
            kind = "long"
            y[0] = y[2]
    weight = ms * G
    rest = 0.0 if leg.force(0.0) >= weight else end if leg.force(end) < weight else \
        brentq(lambda s: leg.force(s) - weight, 0.0, end, xtol=1e-14)
    out = np.abs(np.array(strokes) - rest) > 0.05 * case["spring"]["stroke"]
    settling = None if out[-1] else float(times[np.nonzero(out)[0][-1]]) if out.any() else 0.0
    grid = np.interp(np.arange(601) * 0.005, times, strokes)
    return {"deepest": deepest, "peakForce": peak, "settling": settling, "bottomed": bottomed,
            "strokes": grid[::20].tolist()}


def law(case):
    n = [s["clicks"] for s in case["settings"]]
    fit = linregress(n, [log(s["damping"]) for s in case["settings"]])
    clicks = (log(case["wanted"]) - fit.intercept) / fit.slope
    mean, spread = np.mean(n), np.sum((np.array(n) - np.mean(n)) ** 2)
    # linregress gives the slope's deviation, s/sqrt(spread)
    s = fit.stderr * sqrt(spread)
    half = student.ppf(0.95, len(n) - 2) * s / abs(fit.slope) * sqrt(1 / len(n) + (clicks - mean) ** 2 / spread)
    return {"clicks": clicks, "half": half, "closed": exp(fit.intercept), "perClick": 1 - exp(fit.slope)}


def main():
    answers = {"return": back, "drop": dropped, "law": law}
    json.dump([answers[case["ask"]](case) for case in json.load(sys.stdin)], sys.stdout)


if __name__ == "__main__":
    main()
