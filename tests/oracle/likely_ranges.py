"""How many of the likely ranges (80%) hold, in one table: of the class's shares and of each
student's probabilities, on answers of real learners (`learners.py`) and in simulated classes
(`worlds.py`), wherever the program says that the level is known. Classes of real learners mostly
have fewer answers than that; their ranges are judged from 100 answers on, shown or not. Where
other problems are held out, the class met the same problems, so these are entered as results.

For real learners the truth is not known. What is held out must lie in the middle 80% of the
distribution that the estimate gives it: the number right of all answers held out of a concept,
and of each cell. In simulated classes the hidden probabilities must lie in the ranges
themselves. Answers held out vary by chance as well, so the same is done with ranges half as
wide: where nearly as many of these hold, the set can hardly tell.

Run with SUREFOOT set to the program; ends with `N passed, M failed`.
"""

import itertools
import os
import sys

import numpy as np
from scipy import stats
from scipy.special import expit, logit

import learners
from checks import check, ended
from program import answers
from worlds import DATES, SETTINGS, simulate, with_few_answers, without_ratings

CLASSES = int(os.environ.get("CLASSES", "20" if learners.FULL else "3"))
# An 80% range that holds more often than .92 is wider than it need be: see docs/insight.md.
COVERAGE = (0.75, 0.92)
# Weight of the results in a whole class: as few as a level needs, and twice as many.
FEW = (351, 700)
LEAST_ANSWERS = 100
HARDEST = ("noisy ratings", f", results of {FEW[0]}")
Z = 1.2815515655446004

POINTS, WEIGHTS = np.polynomial.hermite_e.hermegauss(21)
WEIGHTS = WEIGHTS / WEIGHTS.sum()


def in_middle(rng, right, pmf):
    """Whether a number is in the middle 80% of its distribution. Equal numbers are parted by
    chance, so that few answers are no bias."""
    return 0.1 <= pmf[:right].sum() + rng.random() * pmf[right] <= 0.9


def of_class(rng, answer, held, problems, width=1.0):
    """For each concept: the number right of all answers held out. The logits of the pupils are
    moved together, so that their mean varies as the share of the class does and, if other
    problems are held out, as these problems do."""
    sd, chance = width * np.array(answer["sd"]), np.array(answer["phat"])
    for c in np.flatnonzero(held.all.sum(0)):
        variance = (sd[c] / (chance[:, c] * (1 - chance[:, c])).mean()) ** 2
        if problems is not None:
            variance += answer["problem_variance"] / problems[c]
        pupils = np.repeat(logit(chance[:, c]), held.all[:, c].astype(int))
        moved = expit(pupils[:, None] + np.sqrt(variance) * POINTS)
        pmf = np.ones((1, len(POINTS)))
        for one in moved:
            pmf = np.pad(pmf * (1 - one), ((0, 1), (0, 0))) + np.pad(pmf * one, ((1, 0), (0, 0)))
        yield in_middle(rng, int(held.right[:, c].sum()), pmf @ WEIGHTS)


def of_pupils(rng, answer, held, width=1.0):
    """For each cell: the number right of the answers held out, binomial over its logit."""
    middle, spread = np.array(answer["M"]), width * np.array(answer["h"])
    for number in np.unique(held.all[held.all > 0]).astype(int):
        cells = held.all == number
        chances = expit(middle[cells][:, None] + spread[cells][:, None] * POINTS)
        numbers = np.arange(number + 1)[:, None, None]
        pmf = stats.binom.pmf(numbers, number, chances) @ WEIGHTS
        for right, of_cell in zip(held.right[cells].astype(int), pmf.T, strict=True):
            yield in_middle(rng, right, of_cell)


# ---- all of it ----------------------------------------------------------------------------


def of_real_learners():
    """For each set: whether each range of the class and of a pupil holds, and each half range."""
    found = {}
    for nth, (name, _, _, parts, problems) in enumerate(learners.settings(learners.all_sets())):
        rng = np.random.default_rng([7300, nth])
        lists = found.setdefault(name, ([], [], [], []))
        told = learners.case_of if problems is None else learners.shared_problems
        asked = answers("class-estimate", [told(given) for given, _ in parts])
        for (given, held), answer in zip(parts, asked, strict=True):
            if given.all.sum() >= LEAST_ANSWERS:
                for width, (shares, pupils) in ((1.0, lists[:2]), (0.5, lists[2:])):
                    shares.append(list(of_class(rng, answer, held, problems, width)))
                    pupils.append(list(of_pupils(rng, answer, held, width)))
    return found


def of_worlds(nth, setting, change):
    lists = [], [], [], []
    rng = np.random.default_rng([7400, nth])
    made = [simulate(rng, **setting) for _ in range(CLASSES)]
    for upto in DATES if learners.FULL else DATES[1::2]:
        cases = [change(rng, case | {"upto": upto}) for case, _ in made]
        for (_, chance), answer in zip(made, answers("class-estimate", cases), strict=True):
            if not answer["level_known"]:
                continue
            answer = {key: np.array(value) for key, value in answer.items()}
            truth = chance[:, :, upto]
            share = truth.mean(axis=0)
            middle = logit(answer["q"])
            for width, (shares, pupils) in ((1.0, lists[:2]), (0.5, lists[2:])):
                low, high = (expit(middle + width * (logit(answer[end]) - middle)) for end in ("lo", "hi"))
                shares.append(((low <= share) & (share <= high)).tolist())
                low, high = (expit(answer["M"] + z * width * answer["h"]) for z in (-Z, Z))
                pupils.append(((low <= truth) & (truth <= high)).ravel().tolist())
    return lists


def simulated():
    """Each world with all reports, without ratings, and with few results."""
    number = 0
    for name, setting in SETTINGS.items():
        ways = {"": lambda rng, case: case, ", without ratings": lambda rng, case: without_ratings(case)}
        for few in FEW:
            ways[f", results of {few}"] = lambda rng, case, few=few: with_few_answers(rng, case, few)
        ways[f", without ratings, {FEW[0]}"] = lambda rng, case: without_ratings(
            with_few_answers(rng, case, FEW[0])
        )
        for words, change in ways.items():
            # A sample: all ways of one world, all worlds in one way, and the hardest.
            if learners.FULL or name == "base" or not words or (name, words) == HARDEST:
                yield f"simulated: {name}{words}", of_worlds(number, setting, change)
            number += 1


def main():
    heads = ("class", "student", "half: class", "student", "ranges")
    print(f"{'share of ranges that hold':<52}", *(f"{head:>11}" for head in heads))
    rows = [(f"real: {name}", found) for name, found in of_real_learners().items()]
    for name, lists in itertools.chain(rows, simulated()):
        flat = [[one for of_one in of for one in of_one] for of in lists]
        cells = [f"{np.mean(one):11.3f}" if one else f"{'-':>11}" for one in flat]
        print(f"{name:<52}", *cells, f"{len(flat[0]):5}/{len(flat[1])}", flush=True)
        for what, inside, classes in zip(("class", "student"), flat, lists, strict=False):
            # The ranges of one class err together: two standard errors over classes.
            means = [np.mean(one) for one in classes if one]
            noise = 2 * np.std(means, ddof=1) / np.sqrt(len(means)) if len(means) > 1 else np.nan
            cover = np.mean(inside) if inside else np.nan
            fits = COVERAGE[0] - noise <= cover <= COVERAGE[1] + noise
            check(f"{name}: {what} ranges {cover:.3f} ± {noise:.3f}", fits)
    return ended()


if __name__ == "__main__":
    sys.exit(main())
