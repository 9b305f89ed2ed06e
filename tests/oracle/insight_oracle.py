#!/usr/bin/env python3
"""Checks the class insight over random cases against scipy, statsmodels,
scikit-learn, numpy and HiGHS.

Nothing here is taken from the program: trends, calibration and plans are
worked out from their published definitions (docs/insight.md), share-safe
tables are audited by linear programming, and the best groups are found by
scipy's mixed-integer solver on a model written here.

    insight_oracle.py [--bin PATH] [--seed 1] [--tables 150] [--groups 8]

With FULL=1 there are 1,000 tables and 25 classes to group.
"""
import argparse
import itertools
import json
import math
import os
import pathlib
import subprocess
import sys
import tempfile
import time

import numpy as np
from scipy import optimize, sparse, stats
from sklearn.metrics import brier_score_loss
import statsmodels.api as sm
from statsmodels.stats.inter_rater import cohens_kappa
from statsmodels.stats.multitest import multipletests
from statsmodels.stats.proportion import proportion_confint

from checks import check, ended


def close(a, b, tolerance=1e-9):
    if a is None or b is None:
        return a is None and b is None
    return abs(a - b) <= tolerance * max(1.0, abs(b))


def ask(binary, method, file, key="cases"):
    with tempfile.NamedTemporaryFile("w", suffix=".json") as handle:
        json.dump(file, handle)
        handle.flush()
        done = subprocess.run([binary, "insight", method, "--instances", handle.name],
                              capture_output=True, text=True)
    if done.returncode:
        sys.exit(f"{method}: {done.stderr.strip()}")
    answers = json.loads(done.stdout)[key]
    assert len(answers) == len(file[key])
    return [a["answer"] for a in answers]


# ---- statistics building blocks ------------------------------------------

def pairs_of(table):
    """Concordant and discordant pairs, by going through all pairs of entries."""
    items = [(i, j) for i, row in enumerate(table) for j, n in enumerate(row) for _ in range(n)]
    c = d = 0
    for (a, b), (e, f) in itertools.combinations(items, 2):
        product = (a - e) * (b - f)
        c += product > 0
        d += product < 0
    return c, d


def gamma_error(table):
    """Standard error by the delta method with numerical derivatives."""
    counts = np.array(table, float)
    n = counts.sum()

    def gamma(p):
        c = sum(p[i, j] * p[i + 1:, j + 1:].sum() for i in range(p.shape[0]) for j in range(p.shape[1]))
        d = sum(p[i, j] * p[i + 1:, :j].sum() for i in range(p.shape[0]) for j in range(p.shape[1]))
        return (c - d) / (c + d)

    p = counts / n
    slopes = np.zeros_like(p)
    for index in np.ndindex(p.shape):
        step = np.zeros_like(p)
        step[index] = 1e-6
        slopes[index] = (gamma(p + step) - gamma(p - step)) / 2e-6
    mean = (p * slopes).sum()
    return math.sqrt(max(0.0, ((p * slopes ** 2).sum() - mean ** 2) / n))


def statistics(binary, rng):
    cases, expected = [], []

    def add(case, value, tolerance=1e-9):
        cases.append(case)
        expected.append((value, tolerance))

    for _ in range(60):
        n = int(rng.integers(1, 300))
        hits = int(rng.integers(0, n + 1))
        add({"kind": "wilson", "hits": hits, "n": n, "z": 1.959963984540054},
            proportion_confint(hits, n, 0.05, "wilson"))
    for _ in range(40):
        k = int(rng.integers(2, 6))
        table = rng.integers(0, 12, (k, k)) + np.eye(k, dtype=int)
        for name, weights in (("equal", None), ("linear", "linear"), ("quadratic", "quadratic")):
            found = cohens_kappa(table, wt=weights)
            add({"kind": "kappa", "table": table.tolist(), "weights": name},
                [found.kappa, math.sqrt(found.var_kappa)])
    for _ in range(40):
        table = rng.integers(0, 5, (2, 4)).tolist()
        c, d = pairs_of(table)
        add({"kind": "gamma", "table": table},
            [c, d, (c - d) / (c + d), gamma_error(table)] if c + d else None, 1e-5)
    for _ in range(40):
        n = int(rng.integers(2, 60))
        right = rng.random(n) < 0.6
        if right.all() or not right.any():
            continue
        f = rng.random(n)
        add({"kind": "brier", "forecasts": f.tolist(), "outcomes": right.tolist()},
            brier_score_loss(right, f))
    for _ in range(60):
        n = int(rng.integers(3, 25))
        y = rng.integers(0, int(rng.integers(2, 12)), n).astype(float)
        s = sum(np.sign(b - a) for a, b in itertools.combinations(y, 2))
        ties = np.unique(y, return_counts=True)[1]
        v = (n * (n - 1) * (2 * n + 5) - sum(t * (t - 1) * (2 * t + 5) for t in ties)) / 18
        z = np.sign(s) * (abs(s) - 1) / math.sqrt(v) if v > 0 else 0.0
        add({"kind": "mann_kendall", "values": y.tolist()}, [s, v, z, 2 * stats.norm.sf(abs(z))])
        tau = stats.kendalltau(np.arange(n), y).statistic
        if not math.isnan(tau):
            # tau-b ties S to the library's own count.
            pairs = n * (n - 1) / 2
            tied = sum(t * (t - 1) / 2 for t in ties)
            check("S and kendalltau", close(tau * math.sqrt(pairs * (pairs - tied)), s))
        x = np.sort(rng.random(n))
        add({"kind": "theil_sen", "points": list(zip(x.tolist(), y.tolist()))},
            list(stats.theilslopes(y, x)[:1]) + list(stats.theilslopes(y, x)[2:4]))
    for _ in range(40):
        p = (rng.random(int(rng.integers(1, 60))) ** 3).tolist()
        add({"kind": "benjamini_hochberg", "p": p, "rate": 0.1},
            multipletests(p, 0.1, "fdr_bh")[0].astype(float).tolist())
    for _ in range(20):
        shares = rng.beta(2, 3, int(rng.integers(3, 80)))
        m, v = shares.mean(), shares.var(ddof=1)
        t = max(m * (1 - m) / v - 1, 1e-6)
        add({"kind": "beta_moments", "shares": shares.tolist()}, [m * t, (1 - m) * t])
    for z in rng.normal(0, 3, 40):
        add({"kind": "normal", "z": float(z)}, [stats.norm.cdf(z), 2 * stats.norm.sf(abs(z))])
    for case, (value, tolerance), answer in zip(cases, expected, ask(binary, "statistics", {"cases": cases})):
        flat = lambda v: [v] if v is None or np.isscalar(v) else list(v)
        a, b = flat(answer), flat(value)
        check(f"{case} gave {answer}, not {value}",
              len(a) == len(b) and all(close(x, y, tolerance) for x, y in zip(a, b)))


# ---- trends -----------------------------------------------------------------

def random_ratings(rng, students, passes, slope, gaps):
    rows = []
    for _ in range(students):
        base = rng.normal(1.5, 0.8)
        row = ""
        for t in range(passes):
            if rng.random() < gaps:
                row += "."
            else:
                row += str(int(np.clip(round(base + slope * t + rng.normal(0, 0.7)), 0, 3)))
        rows.append(row)
    return rows


def s_of(matrix):
    """Rises minus falls inside each student; a missing value is nan."""
    total = 0
    for s, t in itertools.combinations(range(matrix.shape[1]), 2):
        total += np.nansum(np.sign(matrix[:, t] - matrix[:, s]))
    return total


def trend_of(rows, passes):
    matrix = np.array([[np.nan if ch == "." else float(ch) for ch in row] for row in rows])
    variance = 0.0
    for row in matrix:
        seen = row[~np.isnan(row)]
        n = len(seen)
        ties = np.unique(seen, return_counts=True)[1]
        variance += (n * (n - 1) * (2 * n + 5) - sum(u * (u - 1) * (2 * u + 5) for u in ties)) / 18
    shared = np.mean([s_of(matrix[:, list(order)]) ** 2
                      for order in itertools.permutations(range(passes))])
    many = matrix[(~np.isnan(matrix)).sum(axis=1) >= 2]
    moved = many - np.nanmean(many, axis=1, keepdims=True) if len(many) else many
    usable = [t for t in range(passes) if len(many) and (~np.isnan(moved[:, t])).sum() >= 3]
    slope = (stats.theilslopes([np.nanmean(moved[:, t]) for t in usable], usable).slope
             if len(usable) > 1 else None)
    raters = (~np.isnan(matrix)).sum(axis=0)
    return dict(S=s_of(matrix), V=variance, VP=shared, slope=slope, rotations=int((raters >= 3).sum()))


def trends(binary, rng, number):
    """Six passes: all 720 orders of the passes give the shared variance."""
    cases = []
    for number in range(number):
        slope = [0, 0, 0.4, -0.4][number % 4]
        cases.append({"id": number, "rotations": 6, "ratings": [
            random_ratings(rng, int(rng.integers(4, 9)), 6, slope, 0.12) for _ in range(4)]})
    for case, answer in zip(cases, ask(binary, "trends", {"cases": cases, "fdr": 0.1})):
        own = [trend_of(rows, 6) for rows in case["ratings"]]
        phi = max(1.0, float(np.median([c["VP"] / c["V"] for c in own if c["V"] > 0])))
        check(f"trend {case['id']} phi {answer['phi']} not {phi}", close(answer["phi"], phi))
        for c in own:
            s, v = c["S"], c["V"]
            c["z"] = np.sign(s) * (abs(s) - 1) / math.sqrt(phi * v) if v > 0 else 0.0
            c["p"] = 2 * stats.norm.sf(abs(c["z"]))
        tested = [c for c in own if c["rotations"] >= 6]
        clear = stats.false_discovery_control([c["p"] for c in tested]) <= 0.1 if tested else []
        for c in own:
            c["say"] = "too soon"
        for c, sure in zip(tested, clear):
            way = "rising" if c["S"] > 0 else "falling"
            if sure and c["S"]:
                c["say"] = way
            else:
                c["say"] = f"maybe {way}" if c["p"] < 0.05 and c["S"] else "no clear change"
        for c, found in zip(own, answer["concepts"]):
            for key, value in c.items():
                ok = found[key] == value if key == "say" else close(found[key], value)
                check(f"trend {case['id']} {key}: {found[key]} not {value}", ok)


# ---- calibration ----------------------------------------------------------------

CLAIMS = [0.1, 0.4, 0.8, 0.95]


def calibration(binary, rng, number):
    cases = []
    for i in range(number):
        concepts = int(rng.integers(1, 30))
        chance = np.clip(np.array(CLAIMS) + rng.normal(0, 0.3), 0.05, 0.95)
        n = rng.integers(0, int(rng.integers(2, 5)), (concepts, 4))
        right = rng.binomial(n, chance)
        cases.append({"id": i, "right": right.tolist(), "wrong": (n - right).tolist()})
    for case, answer in zip(cases, ask(binary, "calibration", {"cases": cases})):
        right, wrong = np.array(case["right"]), np.array(case["wrong"])
        rows = []  # concept, claim, level, right
        for c in range(len(right)):
            for k in range(4):
                rows += [(c, CLAIMS[k], k, 1)] * int(right[c, k]) + [(c, CLAIMS[k], k, 0)] * int(wrong[c, k])
        n = len(rows)
        want = {"n": n}
        if n >= 20:
            concept, claim, _, y = map(np.array, zip(*rows))
            excess = claim - y
            bias = excess.mean()
            per_level = right.sum(0) + wrong.sum(0)
            p = (right.sum(0) + 1) / (per_level + 2)
            variance = (per_level * p * (1 - p)).sum() / n ** 2
            if len(set(concept)) > 1:
                # Cluster-robust variance of a mean, by statsmodels.
                fit = sm.OLS(excess, np.ones(n)).fit(cov_type="cluster", cov_kwds={"groups": concept})
                variance = max(variance, float(fit.cov_params()[0, 0]))
            se = math.sqrt(variance)
            want |= dict(bias=bias, lo=bias - 1.96 * se, hi=bias + 1.96 * se)
            want["say"] = ("over" if want["lo"] > 0.1 else "under" if want["hi"] < -0.1 else
                           "near" if want["lo"] >= -0.25 and want["hi"] <= 0.25 else "unclear")
        else:
            want["say"] = "too little"
        table = [wrong.sum(0).tolist(), right.sum(0).tolist()]
        if right.sum() >= 10 and wrong.sum() >= 10:
            c, d = pairs_of(table)
            if c + d and gamma_error(table) <= 0.25:
                want |= dict(gamma=(c - d) / (c + d), ase=gamma_error(table))
        if n >= 60 and ((right + wrong).sum(0) >= 5).sum() >= 2:
            _, claim, level, y = map(np.array, zip(*rows))
            base = y.mean()
            want["brier"] = brier_score_loss(y, claim, pos_label=1)
            groups = [y[level == k] for k in range(4) if (level == k).any()]
            claims = [CLAIMS[k] for k in range(4) if (level == k).any()]
            rel = sum(len(g) * (f - g.mean()) ** 2 for g, f in zip(groups, claims)) / n
            res = sum(len(g) * (g.mean() - base) ** 2 for g in groups) / n
            # Corrections of Ferro & Fricker 2012 by sample variances.
            k1 = sum(g.var(ddof=1) for g in groups if len(g) > 1) / n
            k2 = base * (1 - base) / (n - 1)
            want |= dict(rel=rel, res=res, unc=base * (1 - base), rel_c=rel - k1,
                         res_c=res - k1 + k2, unc_c=base * (1 - base) + k2)
        check(f"calibration {case['id']} shows {set(answer) ^ set(want)}", set(answer) == set(want))
        for key in set(answer) & set(want):
            ok = answer[key] == want[key] if key == "say" else close(answer[key], want[key], 1e-5)
            check(f"calibration {case['id']} {key}: {answer[key]} not {want[key]}", ok)


# ---- talk plans --------------------------------------------------------------------

def plans(binary, rng, number):
    cases = []
    for i in range(number):
        cases.append({"id": i, "minutes": int(rng.integers(0, 9)), "today": [
            {"id": int(j), "q": float(rng.random()), "expected_wrong": float(20 * rng.random()),
             "sure_wrong": float(6 * rng.random()), "falling": bool(rng.random() < 0.3),
             "discussed_last": bool(rng.random() < 0.3), "dependants_soon": int(rng.integers(0, 3))}
            for j in rng.permutation(60)[: int(rng.integers(0, 9))]]})
    for case, answer in zip(cases, ask(binary, "talk-plan", {"cases": cases})):
        offers = []
        for t in case["today"]:
            minutes, effect = ((4, .45) if t["q"] < .35 else (2, .5) if t["q"] <= .7 else (1, .3))
            value = (t["expected_wrong"] + .5 * t["sure_wrong"]) * effect * (1.2 if t["falling"] else 1)
            value *= (.5 if t["discussed_last"] else 1) * (1 + .25 * t["dependants_soon"])
            offers.append((round(1000 * value), minutes))
        sets = [s for k in range(3) for s in itertools.combinations(range(len(offers)), k)
                if sum(offers[p][1] for p in s) <= case["minutes"]]
        best = max(sets, key=lambda s: (sum(offers[p][0] for p in s), -sum(offers[p][1] for p in s)))
        check(f"plan {case['id']}: {answer}", answer["chosen"] == [case["today"][p]["id"] for p in best]
              and answer["value"] == sum(offers[p][0] for p in best))


# ---- share-safe tables ------------------------------------------------------------------

def lp_bounds(table, withheld):
    """Least and most of every withheld cell by linear programming."""
    cells = [tuple(c) for c in np.argwhere(withheld)]
    if not cells:
        return []
    rows, columns = table.shape
    a = np.zeros((rows + columns, len(cells)))
    for k, (i, j) in enumerate(cells):
        a[i, k] = a[rows + j, k] = 1
    hidden = np.where(withheld, table, 0)
    b = np.concatenate([hidden.sum(1), hidden.sum(0)])
    keep = a.any(axis=1)
    bounds = []
    for k, (i, j) in enumerate(cells):
        c = np.zeros(len(cells))
        c[k] = 1
        ends = [optimize.linprog(sign * c, A_eq=a[keep], b_eq=b[keep], method="highs").fun * sign
                for sign in (1, -1)]
        bounds.append([int(i), int(j), round(ends[0]), round(ends[1])])
    return bounds


def share_safe(binary, rng, number):
    cases = []
    for i in range(number):
        n, width = [(10, 5), (5, 3)][i % 2]
        shape = (int(rng.integers(2, 9)), int(rng.integers(2, 6)))
        table = np.clip(rng.lognormal(3.1, 0.9, shape), 0, 150).astype(int)
        cases.append({"id": i, "n": n, "width": width, "table": table.tolist()})
    extra = unsafe = recovered = 0
    for case, answer in zip(cases, ask(binary, "share-safe", {"cases": cases})):
        table = np.array(case["table"])
        primary = table < case["n"]
        bounds = lp_bounds(table, primary)
        check(f"table {case['id']} bounds", answer["bounds_primary_only"] == bounds)
        check(f"table {case['id']} recoverable",
              answer["recoverable"] == [b[:2] for b in bounds if b[2] == b[3]])
        recovered += sum(b[2] == b[3] for b in bounds)
        withheld = np.array(answer["withheld"], bool)
        check(f"table {case['id']} mask", withheld.shape == table.shape and (withheld | ~primary).all())
        narrow = [b for b in lp_bounds(table, withheld)
                  if primary[b[0], b[1]] and b[3] - b[2] < case["width"]]
        if narrow:
            # Only allowed when withholding everything does not help either.
            unsafe += 1
            check(f"table {case['id']} leaves {narrow}", withheld.all() and not answer["safe"])
        else:
            check(f"table {case['id']} is safe", answer["safe"])
        extra += int((withheld & ~primary).sum())
    print(f"share-safe: {number} tables, {recovered} small cells recoverable before, "
          f"{extra} further cells withheld, {unsafe} tables too coarse to protect")


def fewest(binary, rng, number):
    """Tries on small tables that no smaller set of further cells protects."""
    cases = []
    while len(cases) < number:
        table = np.clip(rng.lognormal(2.8, 1, (3, 4)), 0, 90).astype(int)
        if 1 <= (table < 5).sum() <= 4:
            cases.append({"id": len(cases), "n": 5, "width": 3, "table": table.tolist()})
    ours = best = 0
    for case, answer in zip(cases, ask(binary, "share-safe", {"cases": cases})):
        table = np.array(case["table"])
        primary = table < 5
        if not answer["safe"]:
            continue
        shown = [tuple(c) for c in np.argwhere(~primary)]
        least = None
        for k in range(len(shown) + 1):
            for choice in itertools.combinations(shown, k):
                mask = primary.copy()
                for cell in choice:
                    mask[cell] = True
                # A line with one withheld cell reveals it, without a solver.
                if any(line.sum() == 1 for line in itertools.chain(mask, mask.T)):
                    continue
                if all(b[3] - b[2] >= 3 for b in lp_bounds(table, mask) if primary[b[0], b[1]]):
                    least = k
                    break
            if least is not None:
                break
        used = int((np.array(answer["withheld"], bool) & ~primary).sum())
        ours, best = ours + used, best + least
        check(f"table {case['id']} withholds {used}, {least} would do", used <= 1.2 * least)
    print(f"share-safe: {ours} further cells withheld on {number} small tables, fewest possible {best}")


# ---- groups --------------------------------------------------------------------------------

def group_case(rng, students, concepts, slots, id_):
    need = rng.random((students, concepts)) * (rng.random((students, concepts)) < 0.55)
    weight = np.where(need >= 0.3, (600 + 900 * rng.random((students, concepts))).astype(int), 0)
    pair = lambda n: [sorted(rng.choice(students, 2, replace=False).tolist()) for _ in range(n)]
    lo = int(rng.integers(2, 4))
    return {"id": id_, "students": students, "concepts": concepts, "slots": slots,
            "groups_per_slot": int(rng.integers(2, 5)), "size_min": lo,
            "size_max": lo + int(rng.integers(1, 3)), "copies": 2, "coverage": 300,
            "weight": weight.tolist(), "prereq": [], "apart": pair(int(rng.integers(0, 4))),
            "join": pair(int(rng.integers(0, 3))),
            "absent": [[int(i), s] for i in range(students) for s in range(slots) if rng.random() < 0.06]}


def best_groups(case, seconds):
    """Optimum (or None) and bound by HiGHS, every group of every copy a variable."""
    absent = {tuple(a) for a in case["absent"]}
    w = case["weight"]
    index, worth, integer = {}, [], []

    def variable(key, value, whole=1):
        index[key] = len(worth)
        worth.append(value)
        integer.append(whole)

    lessons = [(c, s, k) for c in range(case["concepts"]) for s in range(case["slots"]) for k in range(case["copies"])]
    for c, s, k in lessons:
        variable(("y", c, s, k), 0)
        for i in range(case["students"]):
            if w[i][c] and (i, s) not in absent:
                variable(("x", i, c, s, k), w[i][c])
    for i in range(case["students"]):
        variable(("z", i), case["coverage"])
    rows, low, high = [], [], []

    def row(terms, least, most):
        rows.append([(index[key], value) for key, value in terms if key in index])
        low.append(least)
        high.append(most)

    for i in range(case["students"]):
        for s in range(case["slots"]):
            row([(("x", i, c, s, k), 1) for c, t, k in lessons if t == s], -np.inf, 1)
        for c in range(case["concepts"]):
            row([(("x", i, c, s, k), 1) for d, s, k in lessons if d == c], -np.inf, 1)
        row([(("z", i), 1)] + [(("x", i, *lesson), -1) for lesson in lessons], -np.inf, 0)
    for c, s, k in lessons:
        members = [(("x", i, c, s, k), 1) for i in range(case["students"])]
        row(members + [(("y", c, s, k), -case["size_max"])], -np.inf, 0)
        row(members + [(("y", c, s, k), -case["size_min"])], 0, np.inf)
        for a, b in case["apart"]:
            row([(("x", a, c, s, k), 1), (("x", b, c, s, k), 1)], -np.inf, 1)
        for a, b in case["join"]:
            if (a, s) not in absent and (b, s) not in absent:
                row([(("x", a, c, s, k), 1), (("x", b, c, s, k), -1)], 0, 0)
        if k:
            row([(("y", c, s, k), 1), (("y", c, s, k - 1), -1)], -np.inf, 0)
    for s in range(case["slots"]):
        row([(("y", c, t, k), 1) for c, t, k in lessons if t == s], -np.inf, case["groups_per_slot"])
    data = [(r, j, v) for r, terms in enumerate(rows) for j, v in terms]
    r, j, v = zip(*data)
    matrix = sparse.csr_matrix((v, (r, j)), shape=(len(rows), len(worth)))
    done = optimize.milp(-np.array(worth, float), constraints=optimize.LinearConstraint(matrix, low, high),
                         bounds=optimize.Bounds(0, 1), integrality=integer,
                         options={"time_limit": seconds, "mip_rel_gap": 0})
    return round(-done.fun) if done.status == 0 else None


def worth_if_valid(case, plan):
    """The worth of a plan, or None when it breaks a rule."""
    absent = {tuple(a) for a in case["absent"]}
    seats, lessons, worth, placed = {}, set(), 0, set()
    for number, group in enumerate(plan):
        slot, concept, members = group["slot"], group["concept"], group["members"]
        if not case["size_min"] <= len(members) <= case["size_max"]:
            return None
        for i in members:
            if (i, slot) in absent or (i, slot) in seats or (i, concept) in lessons or not case["weight"][i][concept]:
                return None
            seats[i, slot] = number
            lessons.add((i, concept))
            placed.add(i)
            worth += case["weight"][i][concept]
        if any(a in members and b in members for a, b in case["apart"]):
            return None
    for s in range(case["slots"]):
        if sum(g["slot"] == s for g in plan) > case["groups_per_slot"]:
            return None
        for c in range(case["concepts"]):
            if sum(g["slot"] == s and g["concept"] == c for g in plan) > case["copies"]:
                return None
        for a, b in case["join"]:
            if (a, s) not in absent and (b, s) not in absent and seats.get((a, s)) != seats.get((b, s)):
                return None
    return worth + case["coverage"] * len(placed)


def groups(binary, rng, number):
    cases = [group_case(rng, int(rng.integers(6, 19)), int(rng.integers(2, 8)), int(rng.integers(1, 4)), i)
             for i in range(number)]
    started = time.monotonic()
    answers = ask(binary, "groups", {"cases": cases})
    seconds = (time.monotonic() - started) / max(1, number)
    shares = []
    for case, answer in zip(cases, answers):
        worth = worth_if_valid(case, answer["plan"])
        check(f"groups {case['id']}: worth {worth}, said {answer['value']}", worth == answer["value"])
        best = best_groups(case, 60)
        if best is None or worth is None:
            continue
        share = worth / best if best else 1.0
        shares.append(share)
        check(f"groups {case['id']}: {worth} of {best}", 0.99 <= share <= 1)
        check(f"groups {case['id']} gap is too small", worth >= best * (1 - answer["proven_gap"]) - 1e-6)
    check(f"groups mean {np.mean(shares)}", bool(shares) and float(np.mean(shares)) >= 0.998)
    print(f"groups: {len(shares)} optima proved, mean {np.mean(shares):.5f}, "
          f"least {min(shares):.5f}, {seconds:.2f} s a case")


def main():
    root = pathlib.Path(__file__).resolve().parents[2]
    full = bool(os.environ.get("FULL"))
    arguments = argparse.ArgumentParser(description=__doc__)
    arguments.add_argument("--bin", default=os.environ.get("SUREFOOT", str(root / "target/debug/surefoot")))
    arguments.add_argument("--seed", type=int, default=1)
    arguments.add_argument("--tables", type=int, default=1000 if full else 150)
    arguments.add_argument("--groups", type=int, default=25 if full else 8)
    options = arguments.parse_args()
    rng = np.random.default_rng(options.seed)
    statistics(options.bin, rng)
    trends(options.bin, rng, 15)
    calibration(options.bin, rng, 150)
    plans(options.bin, rng, 200)
    share_safe(options.bin, rng, options.tables)
    fewest(options.bin, rng, 20)
    groups(options.bin, rng, options.groups)
    sys.exit(ended())


if __name__ == "__main__":
    main()
