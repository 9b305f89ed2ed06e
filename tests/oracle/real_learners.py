"""How well the class estimate predicts answers of real learners, beside plainer ways.

Part of the answers of a class (`learners.py`) is given to the program, which predicts the rest.
Beside it, on the same answers: the share right of the class, of the concept and of the pupil,
and an additive mixed logit (a logistic regression of scikit-learn on pupils and concepts,
whose ridge penalty is a normal prior of variance 1).

Groups too: formed on the answers given, judged by the share of the answers held out that are
wrong, of each member on the concept of the group. More wrong answers mean that those who need
the group are in it. Beside it, with as many groups of the same sizes: random ones, groups by
total score on the concepts with the lowest share, and the same planner with the mixed logit.

Weak concepts: how well the order of the board, and that of the plain shares, predicts which
concepts have the lowest shares among the answers held out.

Run with SUREFOOT set to the program; ends with `N passed, M failed`.
"""

import sys

import numpy as np
from scipy.special import expit
from sklearn.linear_model import LogisticRegression
from sklearn.metrics import roc_auc_score

import learners
from checks import check, ended
from program import answers

# Asked for: see docs/insight.md, "Real learners".
MOST_ABOVE_MIXED_LOGIT = 0.01
# Draws of random groups for each class.
RANDOM = 30


def share(right, of):
    """With one right and one wrong answer more than there are."""
    return (right + 1) / (of + 2)


def mixed_logit(given):
    students, concepts = given.all.shape
    rows, right, weights = [], [], []
    for i, c in zip(*np.nonzero(given.all)):
        row = np.zeros(students + concepts)
        row[[i, students + c]] = 1
        for value, number in ((1, given.right[i, c]), (0, given.all[i, c] - given.right[i, c])):
            if number:
                rows.append(row)
                right.append(value)
                weights.append(number)
    if len(set(right)) < 2:
        return np.full(given.all.shape, share(given.right.sum(), given.all.sum()))
    fit = LogisticRegression(C=1.0, max_iter=1000).fit(rows, right, weights)
    pupils, of = np.split(fit.coef_[0], [students])
    return expit(fit.intercept_ + pupils[:, None] + of[None, :])


def plainer(given):
    shape = given.all.shape
    total = share(given.right.sum(), given.all.sum())
    concept = share(given.right.sum(0), given.all.sum(0))
    pupil = share(given.right.sum(1), given.all.sum(1))
    return {
        "constant": np.full(shape, total),
        "concept share": np.broadcast_to(concept, shape),
        "pupil share": np.broadcast_to(pupil[:, None], shape),
        "mixed logit": mixed_logit(given),
    }


def loss(chance, held):
    """The summed log loss of the answers held out, and their number."""
    chance = np.clip(chance, 1e-6, 1 - 1e-6)
    wrong = held.all - held.right
    return -(held.right * np.log(chance) + wrong * np.log1p(-chance)).sum(), held.all.sum()


# ---- weak concepts ------------------------------------------------------------------------

# A fifth of fewer concepts is no order.
LEAST_CONCEPTS = 10


def finding_weak(parts, found):
    """For each class, how probable it is that one of the fifth of the concepts with the lowest
    share held out ranks above another (AUC): by the board, and by the share given. Concepts of
    which no answer is given are left out: the board does not rank what nobody reported."""
    rows = []
    for (given, held), answer in zip(parts, found, strict=True):
        there = np.flatnonzero((held.all.sum(0) > 0) & (given.all.sum(0) > 0))
        if len(there) < LEAST_CONCEPTS:
            continue
        left = held.right.sum(0)[there] / held.all.sum(0)[there]
        weak = left <= np.quantile(left, 0.2)
        if not weak.all():
            orders = np.array(answer["key"]), 1 - share(given.right.sum(0), given.all.sum(0))
            rows.append([roc_auc_score(weak, order[there]) for order in orders])
    return rows


# ---- groups -------------------------------------------------------------------------------

# What the Groups screen begins with.
WISHES = {"slots": 2, "groups_per_slot": 3, "size_min": 2, "size_max": 5, "copies": 2}


def planned(needs, need_at):
    cases = [WISHES | {"need": need.tolist()} for need in needs]
    found = answers("groups", cases, "--seconds", "0.05", rule={"need_at": need_at})
    return [
        [(group["slot"], group["concept"], group["members"]) for group in one["plan"]]
        for one in found
    ]


def random_groups(rng, plan, shape):
    """Nobody sits in two groups at once or on one concept twice."""
    pupils, concepts = shape
    made, taken = [], {slot: list(rng.permutation(pupils)) for slot, _, _ in plan}
    for slot, _, members in plan:
        chosen = [taken[slot].pop() for _ in members]
        made.append((slot, int(rng.integers(concepts)), chosen))
    return made


def by_score(plan, given):
    """The pupils with the lowest total score first, neighbours together; the concepts with the
    lowest share first, others in the next slot."""
    order = np.argsort(share(given.right.sum(1), given.all.sum(1)), kind="stable")
    weakest = np.argsort(share(given.right.sum(0), given.all.sum(0)), kind="stable")
    made, taken = [], {slot: list(order) for slot, _, _ in plan}
    for nth, (slot, _, members) in enumerate(plan):
        chosen = [taken[slot].pop(0) for _ in members]
        made.append((slot, int(weakest[nth % len(weakest)]), chosen))
    return made


def wrong(plan, held):
    """The share of wrong answers held out, of the members on the concepts of their groups."""
    places = [(pupil, concept) for _, concept, members in plan for pupil in members]
    of = sum(held.all[place] for place in places)
    return 1 - sum(held.right[place] for place in places) / of if of else np.nan


def groups(seed, parts, found):
    """For each class, how much the members of each kind of group get wrong."""
    rng = np.random.default_rng(seed)
    ours = planned([np.array(one["need"]) for one in found], 0.5)
    # Pupils whose probability of success is below .6 may join, as in our planner.
    logit = planned([1 - mixed_logit(given) for given, _ in parts], 0.4)
    rows = []
    for (given, held), plan, other in zip(parts, ours, logit, strict=True):
        if plan:
            draws = (random_groups(rng, plan, given.all.shape) for _ in range(RANDOM))
            chance = np.nanmean([wrong(draw, held) for draw in draws])
            rows.append((wrong(plan, held), wrong(other, held), wrong(by_score(plan, given), held), chance))
    return [row for row in rows if not np.isnan(row).any()]


# ---- all of it ----------------------------------------------------------------------------

WAYS = ("constant", "concept share", "pupil share", "mixed logit", "Surefoot")
GROUPS = ("Surefoot", "mixed logit", "total score", "random")


def losses(parts, found):
    sums = {}
    for (given, held), answer in zip(parts, found, strict=True):
        chances = plainer(given) | {"Surefoot": np.array(answer["phat"])}
        for name, chance in chances.items():
            sums.setdefault(name, []).append(loss(chance, held))
    return [sum(a for a, _ in sums[way]) / sum(n for _, n in sums[way]) for way in WAYS]


def main():
    print(f"{'log loss of an answer':<56}", *(f"{way:>13}" for way in WAYS))
    all_losses, of_way, of_set, weak = [], {}, {}, []
    for nth, (name, way, size, parts, _) in enumerate(learners.settings(learners.all_sets())):
        found = answers("class-estimate", [learners.case_of(given) for given, _ in parts])
        row = losses(parts, found)
        all_losses.append(row)
        print(f"{f'{name}, {way}, class of {size}':<56}", *(f"{one:13.4f}" for one in row))
        weak += finding_weak(parts, found)
        of_way.setdefault((name, way), []).append(row[-1] - row[-2])
        if size > 8:
            of_set.setdefault((name, way), []).extend(groups([7200, nth], parts, found))
    mean = np.mean(all_losses, axis=0)
    print(f"{'mean of all settings':<56}", *(f"{one:13.4f}" for one in mean))
    check("mean of all settings", mean[-1] <= mean[-2])
    for setting, above in of_way.items():
        fits = np.mean(above) <= MOST_ABOVE_MIXED_LOGIT
        check(f"{setting}: {np.mean(above):.4f} above the mixed logit", fits)

    weak = np.array(weak)
    more = weak[:, 0] - weak[:, 1]
    error = more.std(ddof=1) / np.sqrt(len(more))
    ours, plain = weak.mean(axis=0)
    print(f"\nweak concepts, {len(weak)} classes: AUC {ours:.3f}, share given {plain:.3f} ({more.mean():+.3f} ± {error:.3f})")
    check(f"weak concepts: {more.mean():+.3f} ± {error:.3f}", more.mean() > -2 * error)

    print(f"\n{'wrong answers held out, of groups':<56}", *(f"{way:>13}" for way in GROUPS))
    every = []
    for setting, rows in of_set.items():
        if rows:
            every += rows
            print(f"{', '.join(setting):<56}", *(f"{one:13.3f}" for one in np.mean(rows, axis=0)))
    every = np.array(every)
    print(f"{f'mean of {len(every)} classes':<56}", *(f"{one:13.3f}" for one in every.mean(axis=0)))
    for at, way in enumerate(GROUPS[1:], 1):
        more = every[:, 0] - every[:, at]
        error = more.std(ddof=1) / np.sqrt(len(more))
        print(f"Surefoot, more than {way}: {more.mean():+.3f} ± {error:.3f}")
        # Better than chance and than the total score; no worse than the other model.
        least = 2 * error if way == "random" else -2 * error
        check(f"groups beside {way}: {more.mean():+.3f} ± {error:.3f}", more.mean() > least)
    return ended()


if __name__ == "__main__":
    sys.exit(main())
