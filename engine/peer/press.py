"""Press tests by SciPy, written from the formulas alone.

Each hypothesis is fitted by scipy.optimize.least_squares from several starts: with sigma^2 = forceSd^2 + slope^2*strokeSd^2
never below forceSd^2, ln(sigma^2/forceSd^2) is a square too, so that -2 ln L is a sum of squares up to a constant.
Bands come from the posterior integrated over scale and friction on a grid, without any approximation of its shape.
Reads a JSON list of cases on standard input, writes a JSON list of answers.
"""
import json
import sys
from math import log, pi

import numpy as np
from scipy.optimize import least_squares, minimize_scalar


def ring(outer, inner=0.0):
    return pi * (outer ** 2 - inner ** 2) / 4


class Case:
    def __init__(self, case):
        self.s, self.amb = case["spring"], case["ambient"]
        self.coil = self.s["kind"] == "coil"
        self.presses = case["presses"]
        self.x = [np.array([r["stroke"] for r in p["readings"]]) for p in self.presses]
        self.down = np.concatenate([[r["pressing"] for r in p["readings"]] for p in self.presses])
        self.up = np.concatenate([[r["releasing"] for r in p["readings"]] for p in self.presses])
        self.last = max(x.max() for x in self.x)
        self.fsd, self.xsd, self.gsd = case["forceSd"], case["strokeSd"], case["gaugeSd"]
        self.n = 2 * len(self.down)

    # --- the spring under a hypothesis ---------------------------------------------------------------
    def at(self, x, gauge, scale, name, value):
        """Force and slope at strokes x; `scale` is what is really there over what the gauge showed."""
        s, amb = self.s, self.amb
        force, slope = np.zeros_like(x), np.zeros_like(x)

        def push(pressure, volume, area):
            nonlocal force, slope
            v = volume - area * x
            force = force + (pressure * volume / v - amb) * area
            slope = slope + pressure * volume * area * area / v ** 2

        if self.coil:
            rate = s["rate"] * (value if name == "rate-off" else 1.0)
            force, slope = force + rate * (x + s.get("preload", 0.0)), slope + rate
        else:
            p0 = gauge * scale + amb
            vp = s["positiveVolume"] - s.get("spacers", 0) * s.get("spacerVolume", 0.0) - s.get("chamberOil", 0.0)
            vp += {"volume-less": -1, "volume-more": 1}.get(name, 0) * value
            ap = ring(s["bore"], s.get("positiveShaft", 0.0))
            push(p0, vp, ap)
            neg = s.get("negative", {"kind": "port"})
            if neg["kind"] in ("port", "valve"):
                an, vn = ring(s["bore"], s["shaft"]), s["negativeVolume"]
                if neg["kind"] == "valve":
                    there = neg["pressure"] * scale
                else:
                    xe = s.get("equalisingStroke", 0.0)
                    there = p0 * vp / (vp - ap * xe) * (vn + an * xe) / vn - amb
                if name == "negative-off":
                    there *= value
                v = vn + an * x
                force = force - ((there + amb) * vn / v - amb) * an
                slope = slope + (there + amb) * vn * an * an / v ** 2
        low = s.get("lower")
        if low:
            for leg in low["legs"]:
                oil = leg["oil"] + (value if name == "bath-over" else 0.0)
                push(amb, leg.get("volume", low["volume"]) - oil,
                     ring(leg.get("stanchion", low["stanchion"]), leg.get("rod", low["rod"])))
        gas = s.get("damperGas")
        if gas:
            push(gas["pressure"] + amb, gas["volume"], ring(gas["rod"]))
        return force, slope

    def all(self, scale, name, value):
        both = [self.at(x, p.get("pressure", 0.0), scale, name, value) for x, p in zip(self.x, self.presses)]
        return np.concatenate([f for f, _ in both]), np.concatenate([k for _, k in both])

    # --- ranges ----------------------------------------------------------------------------------------
    def faults(self):
        s = self.s
        low = s.get("lower")
        ranges = {}
        if self.coil:
            ranges["rate-off"] = (0.7, 1.4)
        else:
            ranges["pressure-off"] = (1 - 7 * 0.12, 1 + 7 * 0.12)
            if s.get("negative", {"kind": "port"})["kind"] in ("port", "valve"):
                ranges["negative-off"] = (0.0, 1.8)
            vp = s["positiveVolume"] - s.get("spacers", 0) * s.get("spacerVolume", 0.0) - s.get("chamberOil", 0.0)
            spare = vp - ring(s["bore"], s.get("positiveShaft", 0.0)) * self.last
            ranges["volume-less"] = (0.0, min(60e-6, 0.999 * spare))
            ranges["volume-more"] = (0.0, 40e-6)
        if low:
            spare = min(leg.get("volume", low["volume"]) - leg["oil"]
                        - ring(leg.get("stanchion", low["stanchion"]), leg.get("rod", low["rod"])) * self.last / 0.999
                        for leg in low["legs"])
            ranges["bath-over"] = (0.0, min(80e-6, 0.999 * spare))
        return ranges

    # --- likelihood ------------------------------------------------------------------------------------
    def residuals(self, scale, friction, name, value):
        force, slope = self.all(scale, name, value)
        var = self.fsd ** 2 + (slope * self.xsd) ** 2
        wide = np.sqrt(np.log(var / self.fsd ** 2))
        sd = np.sqrt(var)
        parts = [(self.down - force - friction) / sd, (self.up - force + friction) / sd, wide, wide]
        if not self.coil:
            parts.append([(scale - 1) / self.sd_of(name)])
        return np.concatenate(parts)

    def sd_of(self, name):
        return 0.12 if name == "pressure-off" else self.gsd

    def bic(self, squares, name):
        constant = self.n * (log(2 * pi) + 2 * log(self.fsd))
        if not self.coil:
            constant += log(2 * pi) + 2 * log(self.sd_of(name))
        return squares + constant + (0 if name == "as-sheet" else log(self.n))

    def fit(self, name, bounds, starts=(0.02, 0.3, 0.6, 0.9), tight=1e-13):
        """Parameters: [scale (not for a coil)], friction, [value (not for as-sheet and pressure-off)]."""
        has_value = bounds is not None and name != "pressure-off"
        scales = [] if self.coil else [0.05 if name != "pressure-off" else bounds[0]]
        tops = [] if self.coil else [3.0 if name != "pressure-off" else bounds[1]]
        unpack = lambda q: (1.0 if self.coil else q[0], q[len(scales)], q[len(scales) + 1] if has_value else 0.0)
        size = (bounds[1] - bounds[0]) if has_value else 1.0

        def squares(q):
            scale, friction, value = unpack(q)
            return self.residuals(scale, friction, name, bounds[0] + value * size if has_value else 0.0)

        best = None
        for start in (starts if has_value else [0.0]):
            first = ([] if self.coil else [1.0]) + [20.0] + ([start] if has_value else [])
            low = scales + [0.0] + ([0.0] if has_value else [])
            high = tops + [np.inf] + ([1.0] if has_value else [])
            found = least_squares(squares, first, bounds=(low, high), x_scale="jac", xtol=tight, ftol=tight, gtol=tight,
                                  max_nfev=400)
            if best is None or found.cost < best.cost:
                best = found
        scale, friction, value = unpack(best.x)
        estimate = scale if name == "pressure-off" else (bounds[0] + value * size if has_value else None)
        return {"name": name, "estimate": estimate, "friction": friction, "scale": scale,
                "bic": self.bic(2 * best.cost, name)}

    # --- posterior -------------------------------------------------------------------------------------
    def band(self, name, bounds, fit):
        """Shortest 90 % interval of the value; scale and friction integrated out on a grid."""
        sd_f = 12 * self.fsd / np.sqrt(self.n)
        frictions = np.linspace(max(0.0, fit["friction"] - sd_f), fit["friction"] + sd_f, 121)

        def log_over_friction(scale, value):
            force, slope = self.all(scale, name, value)
            var = self.fsd ** 2 + (slope * self.xsd) ** 2
            d = (self.down - force)[None, :] - frictions[:, None]
            u = (self.up - force)[None, :] + frictions[:, None]
            logs = -0.5 * ((d * d + u * u) / var + 2 * np.log(var)).sum(axis=1)
            if not self.coil:
                logs = logs - 0.5 * ((scale - 1) / self.sd_of(name)) ** 2
            top = logs.max()
            return top + log(np.trapz(np.exp(logs - top), frictions))

        def log_density(value):
            if self.coil:
                return log_over_friction(1.0, value)
            if name == "pressure-off":
                return log_over_friction(value, 0.0)
            peak = minimize_scalar(lambda s: -log_over_friction(s, value), bounds=(0.5, 1.6), method="bounded",
                                   options={"xatol": 1e-7})
            h = 1e-4
            bend = (log_over_friction(peak.x + h, value) + log_over_friction(peak.x - h, value) + 2 * peak.fun) / h ** 2
            wide = 7 / np.sqrt(max(-bend, 1e-9))
            grid = np.linspace(peak.x - wide, peak.x + wide, 41)
            logs = np.array([log_over_friction(s, value) for s in grid])
            return logs.max() + log(np.trapz(np.exp(logs - logs.max()), grid))

        top = log_density(fit["estimate"])

        def reach(end):
            share = 1 / 1024
            while share < 1:
                x = fit["estimate"] + share * (end - fit["estimate"])
                if top - log_density(x) > 10:
                    return x
                share *= 1.4
            return end
        low, high = reach(bounds[0]), reach(bounds[1])
        grid = np.linspace(low, high, 81)
        logs = np.array([log_density(v) for v in grid])
        # finer in between: a smooth logarithm
        fine = np.linspace(low, high, 40_001)
        from scipy.interpolate import CubicSpline
        dens = np.exp(CubicSpline(grid, logs)(fine) - logs.max())
        order = np.sort(dens)[::-1]
        level = order[np.searchsorted(np.cumsum(order), 0.9 * order.sum())]
        inside = fine[dens >= level]
        return [float(inside[0]), float(inside[-1])]


def answer(case):
    c = Case(case)
    ranges = c.faults()
    fits = [c.fit("as-sheet", None)] + [c.fit(name, bounds) for name, bounds in ranges.items()]
    if case["bands"]:
        for fit in fits[1:]:
            fit["band"] = c.band(fit["name"], ranges[fit["name"]], fit)
    return fits


if __name__ == "__main__":
    json.dump([answer(case) for case in json.load(sys.stdin)], sys.stdout)
