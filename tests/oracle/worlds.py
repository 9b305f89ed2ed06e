"""Simulated classes whose truth is known.

A world of our own, apart from the program: every student has an ability, every concept an
ease, and a hidden probability of success that grows with lessons. Students rate what they
feel, which is shifted, flattened and noisy; some always give the same rating, some never hand
in; many are absent, skip what they are unsure of, or mark themselves too well. The program
gets only the reports.

No real children; the numbers of the worlds are guesses, and were not fitted to the program.
"""

import numpy as np

CONCEPTS = 60
ROTATIONS = 18
DATES = (2, 5, 11, 17)
WEAK = 12

SETTINGS = {
    "base": {},
    "noisy ratings": {"noise": 2.2, "resolution": 0.35},
    "very overconfident": {"shift": 1.6},
    "thin reporting": {"absent": 0.45, "never": 0.25, "skip": 0.35},
    # Three concepts that everyone rates high and hardly anyone can do.
    "sure and wrong": {"sure_wrong": 3},
    # Each concept gets easier or harder for the class, by a standard deviation of .2 a pass on
    # the logit, so by .85 over the year.
    "real drift": {"drift": 0.2},
    # A fifth of the students copies the homework: practice is right whatever they know.
    "copied homework": {"copy": 0.2},
}


def logistic(x):
    return 1.0 / (1.0 + np.exp(-x))


def simulate(
    rng, noise=1.2, resolution=0.6, shift=0.7, absent=0.1, never=0.1, skip=0.15, sure_wrong=0, drift=0.0, copy=0.0,
    size=None, problems=0.0, lift=None,
):
    """A class, and the probability of success of each student, concept and pass. `problems` is how
    much the day's problems differ for the class, `lift` is added to the logit of success."""
    students = int(rng.integers(20, 36))
    students = size or students
    ability = rng.normal(0, 0.8, students)
    ease = rng.normal(0.6, 1.0, CONCEPTS)
    own = rng.normal(0, 0.6, (students, CONCEPTS))
    taught = rng.integers(0, 13, CONCEPTS)
    passes = np.arange(ROTATIONS)
    growth = 0.9 * logistic((passes[None, :] - taught[:, None]) / 1.5)
    if drift:
        growth += np.cumsum(rng.normal(0, drift, growth.shape), axis=1)
    wrong = rng.choice(CONCEPTS, sure_wrong, replace=False)
    ease[wrong] = -3.0
    level = ability[:, None, None] + ease[None, :, None] + own[:, :, None] + growth[None] - 0.4
    if lift is not None:
        level = level + lift
    chance = logistic(level)
    felt = np.log(chance / (1 - chance)) * resolution
    felt += rng.normal(shift, 0.6, students)[:, None, None]
    felt += rng.normal(0, 0.35, (CONCEPTS, ROTATIONS))[None]  # the day's problem
    felt += rng.normal(0, noise, chance.shape)
    if sure_wrong:
        felt[:, wrong] = rng.normal(2.0, 0.8, felt[:, wrong].shape)
    rating = np.digitize(felt, (-0.8, 0.3, 1.6))
    same = rng.random(students) < 0.08
    rating[same] = rng.integers(1, 4, students)[same][:, None, None]
    in_class = chance
    if problems:
        # From a stream of its own, so that all else stays as it is.
        of_day = rng.spawn(1)[0].normal(0, problems, growth.shape)
        in_class = logistic(level + of_day[None])
    right = rng.random(chance.shape) < in_class
    kind = rng.random(chance.shape) < 0.08
    marked = right | kind
    gone = rng.random((students, ROTATIONS)) < absent
    seen = np.repeat(~gone[:, None, :], CONCEPTS, axis=1)
    seen &= ~((rng.random(chance.shape) < skip) & (felt < 0))
    seen[rng.random(students) < never] = False
    unmarked = rng.random(chance.shape) < 0.3
    at_home = chance
    if copy:
        at_home = np.where((rng.random(students) < copy)[:, None, None], 0.95, chance)
    practice = []
    for student in np.flatnonzero(seen.any(axis=(1, 2))):
        for concept in rng.choice(CONCEPTS, 25, replace=False):
            rotation = int(rng.integers(0, ROTATIONS))
            count = int(rng.integers(1, 5))
            hits = int(rng.binomial(count, at_home[student, concept, rotation]))
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
        "sure_wrong": [int(c) for c in wrong],
        "taught": taught.tolist(),
    }
    return case, chance


def without_ratings(case):
    return case | {"ratings": [["." * len(row) for row in rows] for rows in case["ratings"]]}


def with_few_answers(rng, case, weight):
    """The same class with no practice and only so many of its results up to its date that they
    weigh so much; a result loses half its weight in three passes."""
    places = [
        (student, concept, rotation)
        for student, rows in enumerate(case["results"])
        for concept, row in enumerate(rows)
        for rotation, mark in enumerate(row)
        if mark != "." and rotation <= case["upto"]
    ]
    kept = set()
    for at in rng.permutation(len(places)):
        if weight <= 0:
            break
        kept.add(places[at])
        weight -= 2 ** ((places[at][2] - case["upto"]) / 3)
    left = [
        [
            "".join(
                mark if (student, concept, rotation) in kept else "."
                for rotation, mark in enumerate(row)
            )
            for concept, row in enumerate(rows)
        ]
        for student, rows in enumerate(case["results"])
    ]
    return case | {"results": left, "practice": []}
