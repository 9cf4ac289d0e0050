#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The statistics of the program beside a second, slow and obvious way, and beside general tools where there are any.

    PROOFWALK_PROGRAM=... secondway.py [CASES [SEED]]

Cases are thrown by the seed, which is printed. The second way uses Python's standard library alone: exact fractions for
the discrete distributions, halving for their limits, Simpson's rule for Student's. SciPy and R are asked as well if they
are installed; if not, that is said.
"""
import json
import math
import os
import random
import shutil
import subprocess
import sys
from fractions import Fraction
from statistics import NormalDist

PROGRAM = os.environ["PROOFWALK_PROGRAM"]
NORMAL = NormalDist()


def worked(topic, **inputs):
    words = [f"{name}={value}" for name, value in inputs.items()]
    ran = subprocess.run([PROGRAM, "work", topic, *words, "--json"], capture_output=True, text=True, check=False)
    if ran.returncode != 0:
        sys.exit(f"work {topic} {' '.join(words)}: {ran.stderr}")
    return json.loads(ran.stdout)["results"]


def at_least(k, n, p):
    """P(X >= k), as a plain sum."""
    return math.fsum(math.comb(n, i) * p**i * (1 - p) ** (n - i) for i in range(k, n + 1))


def halved(rising, wanted):
    """Where a function that rises from 0 to 1 reaches what is wanted."""
    low, high = 0.0, 1.0
    for _ in range(100):
        middle = (low + high) / 2
        low, high = (middle, high) if rising(middle) < wanted else (low, middle)
    return (low + high) / 2


def exact_lower(k, n, tail):
    return 0.0 if k == 0 else halved(lambda p: at_least(k, n, p), tail)


def student_below(t, freedom):
    """Simpson's rule over the density from 0 to t."""
    factor = math.exp(math.lgamma((freedom + 1) / 2) - math.lgamma(freedom / 2)) / math.sqrt(freedom * math.pi)
    steps = 4000
    total = 0.0
    for i in range(steps + 1):
        x = t * i / steps
        weight = 1 if i in (0, steps) else 4 if i % 2 else 2
        total += weight * factor * (1 + x * x / freedom) ** (-(freedom + 1) / 2)
    return 0.5 + total * t / steps / 3


def intervals(dice):
    n = dice.randint(1, 120)
    k, sure = dice.randint(0, n), dice.choice((0.8, 0.9, 0.95, 0.99))
    found = worked("trials", hits=k, tries=n, confidence=sure)
    z = NORMAL.inv_cdf(1 - (1 - sure) / 2)
    half = z * math.sqrt(k * (n - k) / n + z * z / 4)
    tail = (1 - sure) / 2
    return found, {"at_least": exact_lower(k, n, 1 - sure), "exact_lower": exact_lower(k, n, tail),
                   "exact_upper": 1 - exact_lower(n - k, n, tail),
                   "wilson_lower": max(0.0, (k + z * z / 2 - half) / (n + z * z)),
                   "wilson_upper": min(1.0, (k + z * z / 2 + half) / (n + z * z))}


def runs(dice):
    reliability, sure = dice.choice((0.5, 0.8, 0.9, 0.95, 0.99)), dice.choice((0.5, 0.9, 0.95, 0.99))
    chance, n = Fraction(1), 0
    while chance > 1 - Fraction(str(sure)):
        chance *= Fraction(str(reliability))
        n += 1
    return worked("trials", reliability=reliability, confidence=sure), {"tries": n}


def samples(dice):
    lot = dice.randint(2, 400)
    faulty, drawn, sure = dice.randint(1, min(lot, 12)), dice.randint(0, lot), dice.choice((0.9, 0.95))

    def miss(count, bad):
        return Fraction(math.comb(lot - bad, count), math.comb(lot, count))
    enough = next(count for count in range(lot + 1) if 1 - miss(count, faulty) >= Fraction(str(sure)))
    most = max(bad for bad in range(lot - drawn + 1) if miss(drawn, bad) > 1 - Fraction(str(sure)))
    found = worked("trials", what="sample", lot=lot, faulty=faulty, drawn=drawn, confidence=sure)
    return found, {"miss_all": float(miss(drawn, faulty)), "enough": enough, "faulty_at_most": most}


def rules(dice):
    n = dice.randint(1, 40)
    k, p = dice.randint(1, n), round(dice.random(), 3)
    return worked("trials", needed=k, tries=n, chance=p), {"kept": at_least(k, n, p)}


def conformities(dice):
    u, lower, wide = round(dice.uniform(0.1, 2), 2), round(dice.uniform(-5, 5), 2), round(dice.uniform(0.5, 5), 2)
    value, upper = round(dice.uniform(lower - 2, lower + wide + 2), 2), round(lower + wide, 2)
    found = worked("conformity", value_v=value, expanded_v=round(2 * u, 2), lower_v=lower, upper_v=upper)
    below = NormalDist(value, round(2 * u, 2) / 2)
    return found, {"p_conform": below.cdf(upper) - below.cdf(lower)}


def guards(dice):
    u, risk = round(dice.uniform(0.1, 2), 2), dice.choice((0.2, 0.05, 0.025, 0.001))
    return (worked("conformity", what="guard", standard_v=u, lower_v=3, risk=risk),
            {"guard_v": u * NORMAL.inv_cdf(1 - risk)})


def means(dice):
    readings = [round(dice.gauss(30, 0.2), 2) for _ in range(dice.randint(3, 12))]
    found = worked("conformity", readings_s=",".join(map(str, readings)), half_width_s=0.1)
    n = len(readings)
    mean = math.fsum(readings) / n
    a = math.sqrt(math.fsum((x - mean) ** 2 for x in readings) / (n - 1) / n)
    b = 0.1 / math.sqrt(3)
    u = math.hypot(a, b)
    freedom = math.floor(u**4 / (a**4 / (n - 1)))
    if freedom > 300:  # the density's own factor loses its digits
        return found, {"mean_s": mean, "standard_s": u}
    low, high = 1.0, 20.0
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if student_below(middle, freedom) < 0.97725 else (low, middle)
    return found, {"mean_s": mean, "standard_s": u, "coverage": low}


def compared(found, wanted, name, seed):
    wrong = 0
    for key, value in wanted.items():
        if not math.isclose(found[key], value, rel_tol=1e-7, abs_tol=1e-10):
            print(f"{name}, seed {seed}: {key} is {found[key]!r}, the second way has {value!r}")
            wrong += 1
    return wrong


def by_scipy():
    try:
        from scipy import stats
    except ImportError:
        print("skipped: SciPy is not installed")
        return 0
    found = worked("trials", hits=7, tries=50)
    interval = stats.binomtest(7, 50).proportion_ci(method="exact")
    return compared(found, {"exact_lower": interval.low, "exact_upper": interval.high}, "SciPy", "-")


def by_r():
    program = shutil.which("Rscript")
    if program is None:
        print("skipped: R is not installed")
        return 0
    ran = subprocess.run([program, "-e", "cat(format(binom.test(7,50)$conf.int,digits=15))"], capture_output=True,
                         text=True, check=True)
    lower, upper = map(float, ran.stdout.split())
    return compared(worked("trials", hits=7, tries=50), {"exact_lower": lower, "exact_upper": upper}, "R", "-")


def main(arguments):
    cases = int(arguments[0]) if arguments else 10
    seed = int(arguments[1]) if len(arguments) > 1 else 20261125
    wrong = by_scipy() + by_r()
    for way in (intervals, runs, samples, rules, conformities, guards, means):
        dice = random.Random(f"{seed} {way.__name__}")
        for _ in range(cases):
            wrong += compared(*way(dice), way.__name__, seed)
    print(f"7 kinds, {cases} cases each, seed {seed}: {wrong} differ")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
