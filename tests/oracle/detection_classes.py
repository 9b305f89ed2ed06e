"""How well truly weak concepts are found in freshly simulated classes.

A world of our own, apart from the program: every student has an ability, every
concept an ease, and a hidden probability of success that grows with lessons. Students
rate what they feel, which is shifted, flattened and noisy; some always give
the same rating, some never hand in; many are absent, skip what they are unsure of,
or mark themselves too well. The program gets only the reports. The truth, the twelve
concepts with the lowest mean probability in the class on a date, stays here. It is also
what the likely ranges (80%) should hold: the mean probability of the class, and each
student's.

No real children; the numbers of the world are guesses, and were not fitted to the
program. Run with SUREFOOT set to the program; ends with `N passed, M failed`.
"""

import json
import os
import subprocess
import sys
import tempfile

import numpy as np

from checks import check, ended

CONCEPTS = 60
ROTATIONS = 18
DATES = (2, 5, 11, 17)
WEAK = 12
CLASSES = int(os.environ.get("CLASSES", "20"))

SETTINGS = {
    "base": {},
    "noisy ratings": {"noise": 2.2, "resolution": 0.35},
    "very overconfident": {"shift": 1.6},
    "thin reporting": {"absent": 0.45, "never": 0.25, "skip": 0.35},
}
# Required on the base setting; on the harder ones our order only has to be the best.
LEAST_AUC, LEAST_FIRST_FIVE = 0.970, 0.96
COVERAGE = (0.75, 0.92)
Z = 1.2815515655446004


def logistic(x):
    return 1.0 / (1.0 + np.exp(-x))


def simulate(rng, noise=1.2, resolution=0.6, shift=0.7, absent=0.1, never=0.1, skip=0.15):
    students = int(rng.integers(20, 36))
    ability = rng.normal(0, 0.8, students)
    ease = rng.normal(0.6, 1.0, CONCEPTS)
    own = rng.normal(0, 0.6, (students, CONCEPTS))
    taught = rng.integers(0, 13, CONCEPTS)
    passes = np.arange(ROTATIONS)
    growth = 0.9 * logistic((passes[None, :] - taught[:, None]) / 1.5)
    chance = logistic(
        ability[:, None, None] + ease[None, :, None] + own[:, :, None] + growth[None] - 0.4
    )
    felt = np.log(chance / (1 - chance)) * resolution
    felt += rng.normal(shift, 0.6, students)[:, None, None]
    felt += rng.normal(0, 0.35, (CONCEPTS, ROTATIONS))[None]  # the day's problem
    felt += rng.normal(0, noise, chance.shape)
    rating = np.digitize(felt, (-0.8, 0.3, 1.6))
    same = rng.random(students) < 0.08
    rating[same] = rng.integers(1, 4, students)[same][:, None, None]
    right = rng.random(chance.shape) < chance
    kind = rng.random(chance.shape) < 0.08
    marked = right | kind
    gone = rng.random((students, ROTATIONS)) < absent
    seen = np.repeat(~gone[:, None, :], CONCEPTS, axis=1)
    seen &= ~((rng.random(chance.shape) < skip) & (felt < 0))
    seen[rng.random(students) < never] = False
    unmarked = rng.random(chance.shape) < 0.3
    practice = []
    for student in np.flatnonzero(seen.any(axis=(1, 2))):
        for concept in rng.choice(CONCEPTS, 25, replace=False):
            rotation = int(rng.integers(0, ROTATIONS))
            count = int(rng.integers(1, 5))
            hits = int(rng.binomial(count, chance[student, concept, rotation]))
            before = [r for r in range(rotation + 1) if seen[student, concept, r]]
            rated = int(rating[student, concept, before[-1]]) if before else None
            practice.append([int(student), int(concept), rotation, rated, hits, count - hits])

    def rows(values, there):
        return [
            [
                "".join(
                    str(int(v)) if t else "." for v, t in zip(values[s, c], there[s, c], strict=True)
                )
                for c in range(CONCEPTS)
            ]
            for s in range(students)
        ]

    mean = chance.mean(axis=0)
    case = {
        "students": students,
        "concepts": CONCEPTS,
        "rotations": ROTATIONS,
        "ratings": rows(rating, seen),
        "results": rows(marked, seen & ~unmarked),
        "practice": practice,
        "truth": [
            {"upto": upto, "weakest12": [int(c) for c in np.argsort(mean[:, upto])[:WEAK]]}
            for upto in DATES
        ],
    }
    return case, chance


def ask(method, cases, *more):
    with tempfile.NamedTemporaryFile("w", suffix=".json") as file:
        json.dump({"cases": cases}, file)
        file.flush()
        asked = [os.environ["SUREFOOT"], "insight", method, "--instances", file.name, *more]
        return json.loads(subprocess.run(asked, check=True, capture_output=True).stdout)


def coverage(made):
    """The share of class shares and of students' chances that lie in their likely ranges."""
    of_class, of_student = [], []
    for upto in DATES:
        found = ask("weakspots", [case | {"upto": upto} for case, _ in made])["cases"]
        for (_, chance), one in zip(made, found, strict=True):
            answer = {key: np.array(value) for key, value in one["answer"].items()}
            truth = chance[:, :, upto]
            share = truth.mean(axis=0)
            of_class.append((answer["lo"] <= share) & (share <= answer["hi"]))
            low, high = (logistic(answer["M"] + z * answer["h"]) for z in (-Z, Z))
            of_student.append(((low <= truth) & (truth <= high)).ravel())
    return np.mean(np.concatenate(of_class)), np.mean(np.concatenate(of_student))


def main():
    for nth, (name, setting) in enumerate(SETTINGS.items()):
        rng = np.random.default_rng(9000 + nth)
        made = [simulate(rng, **setting) for _ in range(CLASSES)]
        found = ask("detection", [case for case, _ in made], "--table", "--json")
        ways = {way["way"]: (way["auc"], way["first_five"]) for way in found["ways"]}
        told = ", ".join(f"{way} {auc:.3f} / {first:.3f}" for way, (auc, first) in ways.items())
        print(f"{name}, {found['classes']} classes, {found['dates']} dates: {told}")
        covers = coverage(made)
        print(f"{name}: ranges hold {covers[0]:.3f} of class shares, {covers[1]:.3f} of students'")
        for what, cover in zip(("class", "student"), covers, strict=True):
            fits = COVERAGE[0] <= cover <= COVERAGE[1]
            check(f"{name}: {what} ranges hold {cover:.3f}", fits)
        ours = ways.pop("Surefoot")
        if name == "base":
            check(f"{name}: AUC {ours[0]:.3f}", ours[0] >= LEAST_AUC)
            check(f"{name}: first five {ours[1]:.3f}", ours[1] >= LEAST_FIRST_FIVE)
        for way, (auc, _) in ways.items():
            check(f"{name}: AUC beside {way}", ours[0] > auc)
    return ended()


if __name__ == "__main__":
    sys.exit(main())
