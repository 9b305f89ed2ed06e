"""How well the memory model predicts real reviews, and whether a fit helps.

Forgetting curve: the seven shares of work saved that Ebbinghaus (1885, "Über das Gedächtnis",
chapter 7; the numbers are from memory) found 20 minutes to 31 days after learning. The curve of
`surefoot memory` with its one free number fitted, beside an exponential with one.

Where SUREFOOT_REAL_LEARNERS names a folder with `review_log_12580_reviews_1205_cards.csv` (one
adult's reviews: card, day, answer 1 to 4), its histories are replayed by whole calendar days.
Each review at least a day after the one before is predicted from those before it. The
parameters are also fitted by `surefoot memory --fit`, which takes the first two thirds of the
days with reviews and judges on the last third, beside the usual ones, one half-life for all, and the
share remembered.

Run with SUREFOOT set to the program; ends with `N passed, M failed`.
"""

import csv
import json
import os
import pathlib
import subprocess
import sys
import tempfile
from collections import defaultdict

import numpy as np
from checks import check, ended
from fsrs import Scheduler
from scipy.optimize import minimize_scalar
from sklearn.metrics import roc_auc_score

# Hours after learning, and the share of the work saved.
EBBINGHAUS = ((0.33, 0.582), (1, 0.442), (8.8, 0.358), (24, 0.337), (48, 0.278), (144, 0.254), (744, 0.211))
LOG = "review_log_12580_reviews_1205_cards.csv"
USUAL = list(Scheduler().parameters)


def recall(days, stability, decay):
    """The power curve of the sixth version: .9 after the stability."""
    factor = 0.9 ** (-1 / decay) - 1
    return (1 + factor * days / stability) ** -decay


def ask(histories, sets, *more, retention=0.9, first_days=None):
    """Histories are lists of (answer, whole days since the one before)."""
    asked = [
        {
            "id": str(nth),
            "parameter_set": name,
            "desired_retention": retention,
            "reviews": [{"rating": r, "elapsed_days": gap} for r, gap in reviews],
            "first_day": first_days[nth] if first_days else 0,
        }
        for nth, (name, reviews) in enumerate(histories)
    ]
    with tempfile.NamedTemporaryFile("w", suffix=".json") as file:
        json.dump({"parameter_sets": sets, "histories": asked}, file)
        file.flush()
        command = [os.environ["SUREFOOT"], "memory", "--histories", file.name, *more]
        return json.loads(subprocess.run(command, check=True, capture_output=True).stdout)


def forgetting_curve():
    hours, saved = np.array(EBBINGHAUS).T
    # The program gives gaps to a recall from .70 to .97, by the same curve.
    for retention in (0.7, 0.8, 0.9, 0.97):
        asked = ask([("usual", [(3, 0), (3, 5)])], {"usual": USUAL}, retention=retention)
        (history,) = asked["histories"]
        last = history["after_each_review"][-1]
        found = recall(last["interval"], last["stability"], USUAL[20])
        check(f"curve at {retention}: {found}", abs(found - retention) < 1e-4)

    def miss(curve):
        """Root mean square, at the best of one number."""
        error = lambda log: np.sqrt(np.mean((curve(np.exp(log)) - saved) ** 2))
        return min(error(log) for log in np.linspace(-25, 15, 4001))

    power = miss(lambda stability: recall(hours, stability, USUAL[20]))
    exponential = miss(lambda mean: np.exp(-hours / mean))
    print(f"Ebbinghaus: the curve misses by {power:.3f}, an exponential by {exponential:.3f}")
    check(f"shape of forgetting: {power:.3f}, {exponential:.3f}", power < 0.03 < exponential / 3)


def log_loss(chance, right):
    chance = np.clip(chance, 1e-6, 1 - 1e-6)
    return -np.mean(np.where(right, np.log(chance), np.log1p(-chance)))


def read(path):
    """Of each card: (day, answer), in order."""
    cards = defaultdict(list)
    with open(path, encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            cards[row["card"]].append((int(float(row["day"])), int(row["rating"])))
    return list(cards.values())


def gaps(card):
    days = [day for day, _ in card]
    return [(answer, day - before) for (day, answer), before in zip(card, [days[0], *days])]


def predicted(cards, parameters):
    """Of each review a day or more after the one before: its day, the days since, the recall
    predicted, and whether it was remembered."""
    asked = ask([("one", gaps(card)) for card in cards], {"one": parameters})
    rows = []
    for card, history in zip(cards, asked["histories"], strict=True):
        after = history["after_each_review"]
        for nth, (answer, gap) in enumerate(gaps(card)):
            if nth and gap:
                chance = recall(gap, after[nth - 1]["stability"], parameters[20])
                rows.append((card[nth][0], gap, chance, answer > 1))
    return np.array(rows).T


def review_log(path):
    cards = read(path)
    days, since, usual, right = predicted(cards, USUAL)
    right = right > 0
    share = np.full(len(right), right.mean())
    print(
        f"review log, all {len(right)} reviews: log loss {log_loss(usual, right):.4f}, "
        f"AUC {roc_auc_score(right, usual):.3f}; the share remembered {log_loss(share, right):.4f}"
    )
    check("better than the share remembered", log_loss(usual, right) < log_loss(share, right) - 0.03)

    with_reviews = sorted({day for card in cards for day, _ in card})
    cut = with_reviews[-(len(with_reviews) // 3)]
    whole = [("one", gaps(card)) for card in cards]
    fit = ask(whole, {"one": USUAL}, "--fit", first_days=[card[0][0] for card in cards])
    before, last = days < cut, days >= cut
    halving = lambda log: 0.5 ** (since / np.exp(log))
    best = minimize_scalar(lambda log: log_loss(halving(log)[before], right[before]), (0, 3))
    ways = {
        "usual parameters": usual,
        "one half-life for all": halving(best.x),
        "share remembered until then": np.full(len(right), right[before].mean()),
    }
    if fit["code"] == "better":
        _, _, ways["fitted parameters"], _ = predicted(cards, fit["parameters"])
    kept = {key: value for key, value in fit.items() if key != "parameters"}
    print(f"fit to {before.sum()} reviews before day {cut}: {kept}")
    check("the fit is judged on the last third", fit["held_back"] == last.sum())
    own = fit["usual"] - log_loss(usual[last], right[last])
    check(f"its loss under the usual parameters: {own}", abs(own) < 1e-4)
    losses = {way: log_loss(chance[last], right[last]) for way, chance in ways.items()}
    for way, loss in losses.items():
        auc = roc_auc_score(right[last], ways[way][last])
        print(f"the last third, {last.sum()} reviews, {way}: log loss {loss:.4f}, AUC {auc:.3f}")
    ours = losses.pop("fitted parameters", None)
    check("the usual parameters are the best without a fit", min(losses.values()) == losses["usual parameters"])
    # A fit that is offered must win on days that it has not seen.
    check(f"a fit that is offered wins: {ours}", ours is None or ours < losses["usual parameters"])


def main():
    forgetting_curve()
    folder = os.environ.get("SUREFOOT_REAL_LEARNERS")
    if folder:
        review_log(pathlib.Path(folder) / LOG)
    else:
        print("SUREFOOT_REAL_LEARNERS is not set: no review log")
    return ended()


if __name__ == "__main__":
    sys.exit(main())
