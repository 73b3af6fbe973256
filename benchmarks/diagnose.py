"""The timed diagnoses by NumPy: inclusion-exclusion over all subsets of the positive signs, all subsets at once.

Causes that are not linked to anything given keep their prior. Reads the network and the cases on standard input, writes
times [us] of one diagnosis with its next tests, posteriors and gains [bit/min].
"""
import json
import sys
from time import perf_counter

import numpy as np


def entropy(p):
    p = np.clip(p, 1e-300, 1 - 1e-16)
    return float(-(p * np.log2(p) + (1 - p) * np.log2(1 - p)).sum())


class Network:
    def __init__(self, n):
        self.causes = n["causes"]
        self.priors = np.array(n["priors"])
        self.signs = {k: (1 - s["leak"], 1 - np.array(s["links"])) for k, s in n["signs"].items()}
        self.tests = [
            (t["id"], t["minutes"], 1 - t["leak"], 1 - np.array(t["links"]), set(t["pairs"])) for t in n["tests"]
        ]

    def weights(self, present):
        """Per subset of the signs: sign and leaks, and what is left of each cause."""
        factor, quiet = np.ones(1), np.ones((1, len(self.causes)))
        for sign in present:
            leak, links = self.signs[sign]
            factor = np.concatenate([factor, -leak * factor])
            quiet = np.concatenate([quiet, quiet * links])
        return factor, quiet

    def posterior(self, factor, quiet, priors):
        there = priors * quiet
        each = there + (1 - priors)
        terms = factor * each.prod(axis=1)
        evidence = terms.sum()
        return evidence, (terms[:, None] * there / each).sum(axis=0) / evidence

    def diagnose(self, present):
        factor, quiet = self.weights(present)
        evidence, now = self.posterior(factor, quiet, self.priors)
        before, gains = entropy(now), {}
        for name, minutes, leak, links, pairs in self.tests:
            kept = self.priors * links + (1 - self.priors)
            after = self.priors * links / kept
            chance = leak * kept.prod()
            no_evidence, no = self.posterior(factor, quiet, after)
            no_chance = chance * no_evidence / evidence
            base, base_no_chance = now, no_chance
            if pairs & set(present):
                f, q = self.weights([s for s in present if s not in pairs])
                base_evidence, base = self.posterior(f, q, self.priors)
                no_evidence, no = self.posterior(f, q, after)
                base_no_chance = chance * no_evidence / base_evidence
            yes = np.clip((base - no * base_no_chance) / (1 - base_no_chance), 0, 1)
            left = (1 - no_chance) * entropy(yes) + no_chance * entropy(no)
            gains[name] = (before - left) / minutes
        return now, gains


def main():
    q = json.load(sys.stdin)
    network = Network(q["network"])
    answers = [network.diagnose(case) for case in q["cases"]]
    until = perf_counter() + 0.3
    while perf_counter() < until:
        network.diagnose(q["cases"][0])
    took = []
    for _ in range(31):
        began = perf_counter()
        for case in q["cases"]:
            network.diagnose(case)
        took.append(1e6 * (perf_counter() - began) / len(q["cases"]))
    took.sort()
    json.dump({
        "timing": {"median": took[15], "fastest": took[0], "slowest": took[-1], "rounds": 31},
        "answers": [{"posteriors": dict(zip(network.causes, p.tolist())), "gains": g} for p, g in answers],
    }, sys.stdout)


if __name__ == "__main__":
    main()
