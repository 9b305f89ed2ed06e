"""How fast the schedule is, beside two other implementations of its memory model.

In one run, on one core, one after the other:
- `surefoot rehearse`: a year of 30 students, every choice asked for;
- review histories replayed by `surefoot memory`, by the PyPI package `fsrs` and
  by the npm package `ts-fsrs` (fuzz and learning steps off in both; set up in
  DIR, from the registries, at the versions named below).

    python tests/bench/schedule.py --surefoot target/release/surefoot --peers DIR

Prints one JSON object. `surefoot memory` is timed with its reading and writing of
JSON, the other two without.
"""

import argparse
import json
import random
import subprocess
import sys
import tempfile
import time
from pathlib import Path

TS_FSRS = "5.4.2"
FSRS = "6.3.2"
TIMES_OVER = 40
ROOT = Path(__file__).resolve().parents[2]

PYTHON_PEER = """
import json, sys, time
from datetime import datetime, timedelta, timezone
from fsrs import Card, Rating, Scheduler
file = json.load(open(sys.argv[1]))
schedulers = {
    (n, r): Scheduler(parameters=tuple(p), desired_retention=r, learning_steps=(),
                      relearning_steps=(), enable_fuzzing=False)
    for n, p in file["parameter_sets"].items()
    for r in {h["desired_retention"] for h in file["histories"]}
}
start, count = time.perf_counter(), 0
for history in file["histories"]:
    scheduler = schedulers[history["parameter_set"], history["desired_retention"]]
    card, now = Card(), datetime(2026, 9, 1, 8, tzinfo=timezone.utc)
    for review in history["reviews"]:
        now += timedelta(days=review["elapsed_days"])
        card, _ = scheduler.review_card(card, Rating(review["rating"]), now)
        count += 1
print(json.dumps({"reviews": count, "seconds": time.perf_counter() - start}))
"""

NODE_PEER = """
import { readFileSync } from 'node:fs';
import { fsrs } from 'ts-fsrs';
const file = JSON.parse(readFileSync(process.argv[2], 'utf8'));
const models = new Map();
const model = (set, retention) => {
  const key = set + retention;
  if (!models.has(key)) {
    models.set(key, fsrs({ w: file.parameter_sets[set], request_retention: retention,
      enable_fuzz: false, enable_short_term: true }));
  }
  return models.get(key);
};
const start = performance.now();
let count = 0;
for (const history of file.histories) {
  const one = model(history.parameter_set, history.desired_retention);
  let state = null;
  for (const review of history.reviews) {
    state = one.next_state(state, state ? review.elapsed_days : 0, review.rating);
    count += 1;
  }
}
console.log(JSON.stringify({ reviews: count, seconds: (performance.now() - start) / 1000 }));
"""


def histories(folder):
    file = json.loads((ROOT / "shared/vectors/fsrs-histories.json").read_text())
    keep = ("id", "parameter_set", "desired_retention", "reviews")
    one = [{k: h[k] for k in keep} for h in file["histories"]]
    many = {"parameter_sets": file["parameter_sets"], "histories": one * TIMES_OVER}
    path = folder / "histories.json"
    path.write_text(json.dumps(many))
    return path, sum(len(h["reviews"]) for h in many["histories"])


def ours(surefoot, path, reviews):
    start = time.perf_counter()
    subprocess.run(
        [surefoot, "memory", "--histories", str(path)], check=True, stdout=subprocess.DEVNULL
    )
    return {"reviews": reviews, "seconds": time.perf_counter() - start}


def python_peer(peers, path):
    venv = peers / "venv"
    if not venv.exists():
        subprocess.run([sys.executable, "-m", "venv", str(venv)], check=True)
        pip = [str(venv / "bin/pip"), "install", "--quiet", f"fsrs=={FSRS}"]
        subprocess.run(pip, check=True)
    run = [str(venv / "bin/python"), "-c", PYTHON_PEER, str(path)]
    return json.loads(subprocess.run(run, check=True, capture_output=True).stdout)


def node_peer(peers, path):
    folder = peers / "node"
    folder.mkdir(parents=True, exist_ok=True)
    (folder / "package.json").write_text('{"private": true, "type": "module"}')
    (folder / "peer.mjs").write_text(NODE_PEER)
    if not (folder / "node_modules/ts-fsrs").exists():
        npm = ["npm", "install", "--no-audit", "--no-fund", "--silent", f"ts-fsrs@{TS_FSRS}"]
        subprocess.run(npm, check=True, cwd=folder)
    run = ["node", "peer.mjs", str(path.resolve())]
    return json.loads(subprocess.run(run, check=True, capture_output=True, cwd=folder).stdout)


def rehearse(surefoot):
    """A year of 30 students; about seven in ten evenings are practised."""
    rng = random.Random(5)
    students, concepts, days, minutes = 30, 60, 180, 8.0
    calendar, day = [], 0
    for school_day in range(days):
        day += 0 if school_day == 0 else (3 if school_day % 5 == 0 else 1)
        calendar.append(day)
    taught = [c * 144 // concepts for c in range(concepts)]
    slots = [c % 10 for c in range(concepts)]
    program = subprocess.Popen(
        [surefoot, "rehearse"], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
    )

    def tell(line):
        program.stdin.write(json.dumps(line) + "\n")
        program.stdin.flush()

    choices, start = 0, time.perf_counter()
    tell(
        {
            "type": "start",
            "students": students,
            "concepts": concepts,
            "calendar": calendar,
            "taught": taught,
            "ready": [min(t + 2, days - 1) for t in taught],
            "class_slot": slots,
            "rotation": 10,
            "strand": [c % 5 for c in range(concepts)],
            "prerequisites": [[c - 5] if c >= 5 else [] for c in range(concepts)],
            "minutes": minutes,
        }
    )
    assert json.loads(program.stdout.readline()) == {"ok": True}
    for school_day, calendar_day in enumerate(calendar):
        at = {"school_day": school_day, "calendar_day": calendar_day}
        met = [c for c in range(concepts) if slots[c] == school_day % 10]
        records = [
            [s, c, rng.randint(1, 4), rng.choice([1, 1, 0, -1])] for s in range(students) for c in met
        ]
        tell({"type": "class", **at, "records": records})
        spent = {s: 0.0 for s in range(students) if rng.random() < 0.7}
        while spent:
            asked = sorted(spent)
            tell({"type": "choose", **at, "students": asked})
            chosen = json.loads(program.stdout.readline())["concepts"]
            choices += len(asked)
            records = []
            for student, concept in zip(asked, chosen):
                if concept < 0:
                    del spent[student]
                    continue
                took = rng.uniform(0.5, 2.0)
                records.append([student, concept, rng.choice([2, 2, 1, 0]), took])
                spent[student] += took
                if spent[student] >= minutes:
                    del spent[student]
            tell({"type": "result", **at, "records": records})
    tell({"type": "end"})
    assert program.wait() == 0
    return {"choices": choices, "seconds": time.perf_counter() - start}


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--surefoot", required=True)
    parser.add_argument("--peers", required=True, type=Path)
    args = parser.parse_args()
    peers = args.peers.resolve()
    peers.mkdir(parents=True, exist_ok=True)
    found = {"rehearse a year of 30 students": rehearse(args.surefoot)}
    with tempfile.TemporaryDirectory() as folder:
        path, reviews = histories(Path(folder))
        found["surefoot memory"] = ours(args.surefoot, path, reviews)
        found[f"PyPI fsrs {FSRS}"] = python_peer(peers, path)
        found[f"npm ts-fsrs {TS_FSRS}"] = node_peer(peers, path)
    own = found["surefoot memory"]
    for name, one in found.items():
        if "reviews" in one:
            one["per_second"] = round(one["reviews"] / one["seconds"])
            one["times_ours"] = round(one["seconds"] / own["seconds"], 2)
    print(json.dumps(found, indent=1))


if __name__ == "__main__":
    main()
