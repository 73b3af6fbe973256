"""Springs by SciPy, written from the formulas alone.

Every gas is a closed amount; each question is answered by scipy.optimize.brentq on the force balance.
Reads a JSON list of cases on standard input, writes a JSON list of answers.
"""
import json
import sys
from math import pi

from scipy.optimize import brentq


def ring(outer, inner=0.0):
    return pi * (outer ** 2 - inner ** 2) / 4


class Leg:
    """One spring at one filling; pressures absolute inside."""

    def __init__(self, s, pressure, ambient, k=1.0, start=0.0):
        self.s, self.amb, self.k, self.start = s, ambient, k, start
        if s["kind"] == "air":
            self.ap = ring(s["bore"], s.get("positiveShaft", 0.0))
            self.an = ring(s["bore"], s["shaft"])
            self.vp = s["positiveVolume"] - s.get("spacers", 0) * s.get("spacerVolume", 0.0) - s.get("chamberOil", 0.0)
            self.p0 = pressure + ambient

    # --- slow ------------------------------------------------------------------------------------
    def slow_positive(self, x):
        v = self.vp - self.ap * x
        alone = self.p0 * self.vp / v
        second = self.s.get("second")
        if not second:
            return alone
        ps = second["pressure"] + self.amb
        if alone <= ps:
            return alone
        # volume left behind the floating piston at which both sides have one pressure
        left = brentq(lambda u: ps * second["volume"] / u - self.p0 * self.vp / (v + second["volume"] - u),
                      second["volume"] * 1e-6, second["volume"], xtol=1e-18, rtol=1e-14)
        return ps * second["volume"] / left

    def slow_negative(self, x):
        s = self.s
        neg = s.get("negative", {"kind": "port"})
        if neg["kind"] == "valve":
            return (neg["pressure"] + self.amb) * s["negativeVolume"] / (s["negativeVolume"] + self.an * x)
        xe = s.get("equalisingStroke", 0.0)
        return self.slow_positive(xe) * (s["negativeVolume"] + self.an * xe) / (s["negativeVolume"] + self.an * x)

    # --- slow or fast ----------------------------------------------------------------------------
    def positive(self, x):
        if self.k == 1.0:
            return self.slow_positive(x)
        p = self.slow_positive(self.start)
        second = self.s.get("second")
        total = lambda y: self.vp - self.ap * y
        if not second:
            return p * (total(self.start) / total(x)) ** self.k
        main0 = self.p0 * self.vp / p
        ps = second["pressure"] + self.amb
        behind0 = second["volume"] if p <= ps else ps * second["volume"] / p
        behind_p0 = ps if p <= ps else p
        alone = p * (main0 / total(x)) ** self.k
        rest = behind_p0 * (behind0 / second["volume"]) ** self.k
        if alone <= rest:
            return alone
        u = brentq(lambda w: behind_p0 * (behind0 / w) ** self.k
                   - p * (main0 / (total(x) + second["volume"] - w)) ** self.k,
                   second["volume"] * 1e-6, second["volume"], xtol=1e-18, rtol=1e-14)
        return behind_p0 * (behind0 / u) ** self.k

    def negative(self, x):
        if self.k == 1.0:
            return self.slow_negative(x)
        vn = self.s["negativeVolume"]
        return self.slow_negative(self.start) * ((vn + self.an * self.start) / (vn + self.an * x)) ** self.k

    def shut(self, pressure, volume, area, x):
        """A gas squeezed from `volume` at x = 0; slow to start, fast from there."""
        if self.k == 1.0:
            return pressure * volume / (volume - area * x)
        at_start = pressure * volume / (volume - area * self.start)
        return at_start * ((volume - area * self.start) / (volume - area * x)) ** self.k

    def force(self, x):
        s, amb = self.s, self.amb
        total = 0.0
        if s["kind"] == "coil":
            total += s["rate"] * (x + s.get("preload", 0.0))
        else:
            total += (self.positive(x) - amb) * self.ap
            neg = s.get("negative", {"kind": "port"})
            if neg["kind"] in ("port", "valve"):
                total -= (self.negative(x) - amb) * self.an
            elif neg["kind"] == "coil":
                total -= neg["rate"] * max(0.0, neg["length"] - x)
        low = s.get("lower")
        if low:
            for leg in low["legs"]:
                area = ring(leg.get("stanchion", low["stanchion"]), leg.get("rod", low["rod"]))
                air = leg.get("volume", low["volume"]) - leg["oil"]
                closed, at = low.get("closedAt", amb), low.get("closedStroke", 0.0)
                at_zero = closed * (air - area * at) / air
                total += (self.shut(at_zero, air, area, x) - amb) * area
        gas = s.get("damperGas")
        if gas:
            area = ring(gas["rod"])
            total += (self.shut(gas["pressure"] + amb, gas["volume"], area, x) - amb) * area
        top = s.get("topOut")
        if top:
            total -= top["rate"] * max(0.0, top["length"] - x)
        bumper = s.get("bumper")
        if bumper:
            into = x - (s["stroke"] - bumper["length"])
            if into > 0:
                total += bumper["rate"] * bumper["length"] * (into / bumper["length"]) ** bumper["exponent"]
        return total


def full_stroke(s):
    end, low = s["stroke"], s.get("lower")
    if low:
        for leg in low["legs"]:
            area = ring(leg.get("stanchion", low["stanchion"]), leg.get("rod", low["rod"]))
            end = min(end, 0.999 * (leg.get("volume", low["volume"]) - leg["oil"]) / area)
    return end


def resting(leg, load):
    end = full_stroke(leg.s)
    free = 0.0
    if leg.force(0.0) < 0:
        free = end if leg.force(end) <= 0 else brentq(leg.force, 0.0, end, xtol=1e-15, rtol=1e-14)
    if load <= leg.force(free):
        return free
    if load > leg.force(end):
        return end
    return brentq(lambda x: leg.force(x) - load, free, end, xtol=1e-15, rtol=1e-14)


def warmed(s, here, there, ratio):
    """The same spring elsewhere: amounts of gas kept, temperature changed."""
    moved = json.loads(json.dumps(s))
    gauge = lambda p: (p + here) * ratio - there
    if "lower" in moved:
        moved["lower"]["closedAt"] = moved["lower"].get("closedAt", here) * ratio
    if "damperGas" in moved:
        moved["damperGas"]["pressure"] = gauge(moved["damperGas"]["pressure"])
    if moved.get("negative", {}).get("kind") == "valve":
        moved["negative"]["pressure"] = gauge(moved["negative"]["pressure"])
    if "second" in moved:
        moved["second"]["pressure"] = gauge(moved["second"]["pressure"])
    return moved


def spring(case):
    s, p, amb, load = case["spring"], case["pressure"], case["ambient"], case["load"]
    slow = Leg(s, p, amb)
    sag = resting(slow, load)
    fast = Leg(s, p, amb, case["exponent"], sag)
    end = full_stroke(s)
    there, ratio = case["there"], case["warmer"]
    gauge = (p + amb) * ratio - there
    answer = {
        "sag": sag,
        "low": resting(slow, load - case["friction"]),
        "high": resting(slow, load + case["friction"]),
        "slow": [slow.force(end * i / 10) for i in range(11)],
        "fast": [fast.force(end * i / 10) for i in range(11)],
        "gaugeThere": gauge,
        "strokeThere": resting(Leg(warmed(s, amb, there, ratio), gauge, there), load),
    }
    wanted = case["sagWanted"] * s["stroke"]
    top = s["second"]["pressure"] if "second" in s else 2e7
    answer["pressure"] = brentq(lambda q: Leg(s, q, amb).force(wanted) - load, 0.0, top, xtol=1e-6, rtol=1e-14)
    return answer


def leak(case):
    v, vh, amb = case["volume"], case["hose"], case["ambient"]
    r_gas = 8.314462618
    # amounts of gas, by counting: the end reading stands for chamber and hose less the air that was in the hose
    n0 = (case["start"] + amb) * v / (r_gas * case["startTemperature"])
    te = case["endTemperature"]
    if case["how"] == "attached":
        n1 = ((case["end"] + amb) * (v + vh) - amb * vh) / (r_gas * te)
    else:
        n1 = (case["end"] + amb) * v / (r_gas * te)
    ts = case["startTemperature"]
    end_there = n1 * r_gas * ts / v - amb
    lost = case["start"] - end_there
    flow = (n0 - n1) / case["duration"]
    return {
        "pressureEnd": end_there,
        "leak": flow * r_gas * ts,
        "standardFlow": flow * r_gas * 273.15 / 101325.0,
        "lost": lost,
    }


def main():
    cases = json.load(sys.stdin)
    json.dump([spring(c) if c["kind"] == "spring" else leak(c) for c in cases], sys.stdout)


if __name__ == "__main__":
    main()
