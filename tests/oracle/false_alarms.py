"""How often the program speaks of a trend or of miscalibration where there is none, and how often
where there is one: simulated ratings and answers, whose truth is known.

Trends: each concept of a class is called rising or falling, or perhaps so. The screen claims that
about one in ten of those called so is by chance. Calibration: a student is called
overconfident if the ratings claim at least .10 more than is right, underconfident if .10 less.

No real children; the numbers of these worlds are guesses, and were not fitted to the program.
Run with SUREFOOT set to the program; ends with `N passed, M failed`.
"""

import os
import sys

import numpy as np

from checks import check, ended
from program import answers

FULL = bool(os.environ.get("FULL"))
CLASSES = 150 if FULL else 12
STUDENTS = 2000 if FULL else 400
CONCEPTS = 40
# Concepts that change, where any do: half of them rise, half fall.
CHANGED = 8

# What differs between the classes. `change` is the change over the year, in standard deviations
# of a rating from one day to another; `day` the same of what all students share on a day, such
# as its problem; `wander` the same of a mood of the class that stays for some passes and means
# nothing.
USUAL = {"students": 25, "passes": 18, "change": 0.0, "day": 0.3, "wander": 0.0}
TRENDS = {
    "nothing changes": {},
    "nothing, days differ much": {"day": 0.7},
    "nothing, 8 students": {"students": 8},
    "nothing, 6 passes": {"passes": 6},
    "nothing, but the class wanders": {"wander": 0.3},
    "change of .25": {"change": 0.25},
    "change of .5": {"change": 0.5},
    "change of 1": {"change": 1.0},
    "change of 1, 8 students": {"change": 1.0, "students": 8},
    "change of 1, 9 passes": {"change": 1.0, "passes": 9},
}


def ratings(rng, students, passes, change, day, wander):
    """Rows of ratings by concept and student, and the direction of each concept's change."""
    direction = np.zeros(CONCEPTS, int)
    if change:
        direction[:CHANGED] = [1, -1] * (CHANGED // 2)
    mood = np.zeros((CONCEPTS, passes))
    for t in range(1, passes):
        mood[:, t] = 0.7 * mood[:, t - 1] + rng.normal(0, wander, CONCEPTS)
    shared = mood + rng.normal(0, day, mood.shape)
    shared += change * direction[:, None] * np.linspace(-0.5, 0.5, passes)
    felt = rng.normal(0.3, 0.8, students)[None, :, None] + rng.normal(0, 0.8, (CONCEPTS, students, 1))
    felt = felt + shared[:, None, :] + rng.normal(0, 1, (CONCEPTS, students, passes))
    there = rng.random((students, passes)) > 0.1
    there[rng.random(students) < 0.1] = False
    rating = np.digitize(felt, (-0.8, 0.3, 1.4))
    rows = [
        ["".join(str(r) if t else "." for r, t in zip(row, of, strict=True)) for row, of in zip(rows, there, strict=True)]
        for rows in rating
    ]
    return rows, direction


def trends():
    print(f"{'trends':<34}{'called':>9}{'perhaps':>9}{'by chance':>11}{'found':>8}{'wrong way':>11}")
    for nth, (name, setting) in enumerate(TRENDS.items()):
        rng = np.random.default_rng([9500, nth])
        of = USUAL | setting
        made = [ratings(rng, **of) for _ in range(CLASSES)]
        cases = [{"rotations": of["passes"], "ratings": rows} for rows, _ in made]
        called, perhaps, chance, found, turned = [], [], [], [], []
        for (_, direction), answer in zip(made, answers("trends", cases), strict=True):
            said = np.array([one["say"] for one in answer["concepts"]])
            way = np.select([said == "rising", said == "falling"], [1, -1], 0)
            still = direction == 0
            called.append(np.mean(way[still] != 0))
            perhaps.append(np.mean(np.char.startswith(said[still], "maybe")))
            chance.append(np.sum(way[still] != 0) / max(1, np.sum(way != 0)))
            if not still.all():
                found.append(np.mean(way[~still] == direction[~still]))
                turned.append(np.mean(way[~still] == -direction[~still]))
        cells = [f"{np.mean(one):.3f}" if one else "-" for one in (called, perhaps, chance, found, turned)]
        print(f"{name:<34}{cells[0]:>9}{cells[1]:>9}{cells[2]:>11}{cells[3]:>8}{cells[4]:>11}", flush=True)
        # Three standard errors, as there are many checks.
        noise = lambda one: 3 * np.std(one, ddof=1) / np.sqrt(len(one))
        if not of["wander"]:
            # A class without a call has none by chance.
            check(f"{name}: by chance {cells[2]}", np.mean(chance) <= 0.10 + noise(chance))
            alone = np.add(called, perhaps)
            check(f"{name}: called or perhaps {alone.mean():.3f}", alone.mean() <= 0.05 + noise(alone) + 1e-9)
        if name == "change of 1":
            check(f"{name}: found {cells[3]}", np.mean(found) >= 0.65)
        if turned:
            check(f"{name}: wrong way {cells[4]}", np.mean(turned) <= 0.01)


# ---- calibration --------------------------------------------------------------------------

CLAIMS = np.array([0.10, 0.40, 0.80, 0.95])
# How much the share right of one concept differs from that of another: standard deviation.
APART = (0.0, 0.15)


def student(rng, number, bias, apart):
    """A student with so many answers on ten concepts whose ratings claim `bias` too much."""
    concept = rng.integers(0, 10, number)
    rating = rng.choice(4, number, p=(0.15, 0.3, 0.35, 0.2))
    # The ratings whose share cannot be so far from their claim carry less of the bias, so the
    # others carry more.
    share = np.clip(CLAIMS - bias, 0, 1)
    for _ in range(20):
        left = bias - (CLAIMS - share) @ (0.15, 0.3, 0.35, 0.2)
        share = np.clip(share - left, 0, 1)
    of_concept = rng.normal(0, apart, 10)
    right = rng.random(number) < np.clip(share[rating] + of_concept[concept], 0, 1)
    counts = np.zeros((2, 10, 4), int)
    np.add.at(counts, (right.astype(int), concept, rating), 1)
    return {"wrong": counts[0].tolist(), "right": counts[1].tolist()}


def calibrations():
    print(f"\n{'calibration':<34}{'over':>9}{'under':>9}{'near':>9}{'unclear':>9}")
    nth = 0
    for apart in APART:
        for number in (20, 40, 100, 300):
            for bias in (0.0, 0.1, 0.2, 0.3):
                nth += 1
                rng = np.random.default_rng([9600, nth])
                cases = [student(rng, number, bias, apart) for _ in range(STUDENTS)]
                said = np.array([one["say"] for one in answers("calibration", cases)])
                over, under, near, unclear = (np.mean(said == word) for word in ("over", "under", "near", "unclear"))
                name = f"{number} answers, too sure by {bias:.1f}" + (", concepts apart" if apart else "")
                print(f"{name:<34}{over:9.3f}{under:9.3f}{near:9.3f}{unclear:9.3f}", flush=True)
                noise = 2 * np.sqrt(0.05 / STUDENTS)
                if bias <= 0.1:
                    # Ten concepts that differ are few clusters: the interval is a little short.
                    most = 0.04 if apart else 0.025
                    check(f"{name}: over {over:.3f}", over <= most + noise)
                check(f"{name}: under {under:.3f}", under <= 0.025 + noise)
                if bias == 0.3:
                    check(f"{name}: near {near:.3f}", near <= 0.025 + noise)
                    check(f"{name}: found {over:.3f}", over >= (0.8 if number >= 100 else 0.2))


def main():
    trends()
    calibrations()
    return ended()


if __name__ == "__main__":
    sys.exit(main())
