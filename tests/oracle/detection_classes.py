"""How well truly weak concepts are found in freshly simulated classes (`worlds.py`).

The truth, the twelve concepts with the lowest mean probability in the class on a date, stays
here. Also, how often the program says that a class is sure and wrong: of the concepts where
that is so, and of those where most could do it.

Run with SUREFOOT set to the program; ends with `N passed, M failed`.
"""

import os
import sys

import numpy as np

from checks import check, ended
from program import answers, ask
from worlds import DATES, SETTINGS, simulate

FULL = bool(os.environ.get("FULL"))
CLASSES = int(os.environ.get("CLASSES", "20" if FULL else "4"))

# Required on the base setting; on the harder ones our order only has to be the best.
LEAST_AUC, LEAST_FIRST_FIVE = 0.970, 0.96
# Of the concepts that are sure and wrong, so many are named at the year's end at least; of
# the others, where at least half of the class can do it, so few on any date.
LEAST_NAMED, MOST_NAMED_FALSELY = 0.9, 0.005


def named(made):
    """Of how many concepts the program says that the class is sure and wrong: those that are,
    at the end of the year, and those that most can do, on all dates (a sample: at the end)."""
    rightly, falsely = [], []
    for upto in DATES if FULL else DATES[-1:]:
        found = answers("class-estimate", [case | {"upto": upto} for case, _ in made])
        for (case, chance), answer in zip(made, found, strict=True):
            said = np.array(answer["sure_and_wrong"])
            if upto == DATES[-1]:
                rightly += said[case["sure_wrong"]].tolist()
            falsely += said[chance[:, :, upto].mean(axis=0) >= 0.5].tolist()
    return np.mean(rightly) if rightly else None, np.mean(falsely)


def main():
    for nth, (name, setting) in enumerate(SETTINGS.items()):
        rng = np.random.default_rng(9000 + nth)
        made = [simulate(rng, **setting) for _ in range(CLASSES)]
        found = ask("detection", [case for case, _ in made], "--table", "--json")
        ways = {way["way"]: (way["auc"], way["first_five"]) for way in found["ways"]}
        told = ", ".join(f"{way} {auc:.3f} / {first:.3f}" for way, (auc, first) in ways.items())
        print(f"{name}, {found['classes']} classes, {found['dates']} dates: {told}")
        rightly, falsely = named(made)
        print(f"{name}: sure and wrong is said of {falsely:.4f} of the concepts that most can do")
        check(f"{name}: {falsely:.4f} falsely sure and wrong", falsely <= MOST_NAMED_FALSELY)
        if rightly is not None:
            print(f"{name}: and of {rightly:.3f} of those where it is so, at the year's end")
            check(f"{name}: {rightly:.3f} named", rightly >= LEAST_NAMED)
        ours = ways.pop("Surefoot")
        if name == "base":
            check(f"{name}: AUC {ours[0]:.3f}", ours[0] >= LEAST_AUC)
            check(f"{name}: first five {ours[1]:.3f}", ours[1] >= LEAST_FIRST_FIVE)
        for way, (auc, _) in ways.items():
            check(f"{name}: AUC beside {way}", ours[0] > auc)
    return ended()


if __name__ == "__main__":
    sys.exit(main())
