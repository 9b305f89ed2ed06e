"""Compares `surefoot memory` with the PyPI package `fsrs` on random review histories.

Independent of our code: the expected states come from the Python package alone.
Known differences: the package floors 24-hour spans (reviews are whole days
apart here), rounds its whole days half to even and keeps no unrounded gap (the
interval is worked out here from its stability by the published curve), and
has learning steps and fuzz, both switched off.

    SUREFOOT=target/debug/surefoot python tests/oracle/memory_oracle.py
"""

import json
import os
import random
import subprocess
import sys
import tempfile
from datetime import datetime, timedelta, timezone

from fsrs import Card, Rating, Scheduler

HISTORIES = 300
RELATIVE = 2e-5  # single against double precision


def histories(rng, default):
    gentle = [p * (1.0 if i in (7, 17, 18, 19, 20) else 1.1) for i, p in enumerate(default)]
    sets = {"default": default, "other": gentle}
    made = []
    for n in range(HISTORIES):
        reviews = []
        for i in range(rng.randint(1, 14)):
            gap = 0 if i == 0 else rng.choice([0, 1, 1, 2, 3, 5, 8, 14, 30, 75, 200, 365])
            reviews.append({"rating": rng.randint(1, 4), "elapsed_days": gap})
        made.append(
            {
                "id": f"r{n}",
                "parameter_set": rng.choice(sorted(sets)),
                "desired_retention": rng.choice([0.8, 0.85, 0.9, 0.95]),
                "reviews": reviews,
            }
        )
    return sets, made


def expected(history, parameters):
    scheduler = Scheduler(
        parameters=tuple(parameters),
        desired_retention=history["desired_retention"],
        learning_steps=(),
        relearning_steps=(),
        enable_fuzzing=False,
    )
    decay = -parameters[20]
    factor = 0.9 ** (1 / decay) - 1
    card, now, states = Card(), datetime(2026, 9, 1, 8, tzinfo=timezone.utc), []
    for review in history["reviews"]:
        now += timedelta(days=review["elapsed_days"])
        card, _ = scheduler.review_card(card, Rating(review["rating"]), now)
        interval = card.stability / factor * (history["desired_retention"] ** (1 / decay) - 1)
        states.append((card.stability, card.difficulty, interval))
    return states


def main():
    program = os.environ.get("SUREFOOT", "target/debug/surefoot")
    rng = random.Random(20260901)
    sets, made = histories(rng, list(Scheduler().parameters))
    with tempfile.NamedTemporaryFile("w", suffix=".json") as file:
        json.dump({"parameter_sets": sets, "histories": made}, file)
        file.flush()
        run = subprocess.run(
            [program, "memory", "--histories", file.name], capture_output=True, check=True
        )
    found = {h["id"]: h["after_each_review"] for h in json.loads(run.stdout)["histories"]}
    passed = failed = 0
    for history in made:
        ours = found.get(history["id"], [])
        theirs = expected(history, sets[history["parameter_set"]])
        ok = len(ours) == len(theirs)
        for mine, (stability, difficulty, interval) in zip(ours, theirs):
            for name, value in (("stability", stability), ("difficulty", difficulty), ("interval", interval)):
                ok &= abs(mine[name] - value) <= RELATIVE * abs(value)
            # A gap at the half day may round either way in single precision.
            if abs(interval % 1 - 0.5) > 1e-3 * max(1.0, interval / 100):
                ok &= mine["whole_days"] == max(1, int(interval + 0.5))
        passed += ok
        failed += not ok
        if not ok:
            print(f"history {history['id']} differs: {history}")
    print(f"{passed} passed, {failed} failed")
    return failed != 0


if __name__ == "__main__":
    sys.exit(main())
