"""How well the class estimate foretells real learners, beside plainer ways.

Part of the answers of a class is given to the program; the rest is foretold. Beside it, on
the same answers: the share right of the class, of the concept and of the pupil, and an
additive mixed logit (a logistic regression of scikit-learn on pupils and concepts, whose
ridge penalty is a normal prior of variance 1).

The data are fetched from Debian's archive for the run and never kept in the tree:

- mathematics: psychotools, `MathExam14W`, 729 students, 13 problems of a first-year
  examination (Zeileis and others; GPL-2 or 3)
- general knowledge: psychotree, `SPISA`, 1,075 students, 5 topics of 9 questions
  (Trepte & Verbeet 2010; GPL-2 or 3)

Where SUREFOOT_REAL_LEARNERS names a folder, its files are taken as well: fraction
subtraction of 536 pupils (Tatsuoka 1984, 2002) and of 191 (Stefanutti & de Chiusole 2017),
TIMSS 2007 of fourth graders (IEA; Lee, Park & Taylan 2011), probability before instruction
(Heller & Wickelmaier 2013).

Classes are random draws of pupils from one set, not classes of a school. With FULL=1 there
are more of them. Run with SUREFOOT set to the program; ends with `N passed, M failed`.
"""

import csv
import json
import os
import pathlib
import subprocess
import sys
import tempfile
import warnings

import numpy as np
import rdata
from scipy import stats
from scipy.special import expit, logit
from sklearn.linear_model import LogisticRegression

from checks import check, ended

FULL = bool(os.environ.get("FULL"))
CLASSES = 20 if FULL else 8
SIZES = (8, 15, 25, 35) if FULL else (8, 25)
# Asked for: see docs/insight.md, "Measured".
MOST_ABOVE_MIXED_LOGIT = 0.01
COVERAGE = (0.75, 0.92)


# ---- the sets: answers by pupil and problem (1, 0 or missing), and each problem's concept --


def r_data(package, name):
    """A data set of an R package of Debian, without R."""
    with tempfile.TemporaryDirectory() as folder:
        fetch = ["apt-get", "download", "-qq", package]
        if subprocess.run(fetch, cwd=folder, check=False).returncode:
            # The system does not know its packages yet.
            root = ["sudo", "-n"] if os.getuid() else []
            subprocess.run([*root, "apt-get", "update", "-qq"], check=True)
            subprocess.run(fetch, cwd=folder, check=True)
        (file,) = pathlib.Path(folder).glob("*.deb")
        subprocess.run(["dpkg-deb", "-x", str(file), folder], check=True)
        (found,) = pathlib.Path(folder).rglob(f"{name}.rda")
        plain = {kind: lambda value, _: value for kind in ("data.frame", "itemresp")}
        known = rdata.conversion.DEFAULT_CLASS_MAP | plain
        with warnings.catch_warnings():
            # Attributes of R that a plain array has no place for.
            warnings.simplefilter("ignore")
            return rdata.conversion.convert(rdata.parser.parse_file(found), known)[name]


def columns(path, wanted):
    """The names and the numbers of some columns of a CSV file; empty is missing."""
    with open(path, encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    names = [name for name in rows[0] if wanted(name)]
    table = [[float(row[name]) if row[name] else np.nan for name in names] for row in rows]
    return names, np.array(table)


def of_each(answers):
    """Every problem is a concept of its own."""
    return answers, np.arange(answers.shape[1])


def of_group(answers, groups):
    """Problems of one group are one concept; problems without a group are left out."""
    names = sorted({group for group in groups if group is not None})
    kept = [place for place, group in enumerate(groups) if group is not None]
    return answers[:, kept], np.array([names.index(groups[place]) for place in kept])


def from_debian():
    exam = np.asarray(r_data("r-cran-psychotools", "MathExam14W")["solved"], float)
    quiz = np.asarray(r_data("r-cran-psychotree", "SPISA")["spisa"], float)
    yield "exam, problems", *of_each(exam)
    yield "quiz, topics", quiz, np.repeat(np.arange(5), 9)
    yield "quiz, problems", *of_each(quiz)


def skills_of(path):
    """The skills of each problem of a table of problems by skills."""
    with open(path, encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            marked = [name for name, value in row.items() if value == "1"]
            yield "+".join(marked) or None


def from_folder(folder):
    _, fractions = columns(folder / "fractions_536x20.csv", lambda name: name != "student")
    yield "fractions 536, problems", *of_each(fractions)
    skills = list(skills_of(folder / "fractions_qmatrix_20x8.csv"))
    yield "fractions 536, skills", *of_group(fractions, skills)
    _, fractions = columns(folder / "fractions_191x23.csv", lambda name: name != "student")
    yield "fractions 191, problems", *of_each(fractions)
    names, fourth = columns(
        folder / "timss07_g4_698x25.csv", lambda name: name.startswith("M0")
    )
    with open(folder / "timss07_g4_skills.csv", encoding="utf-8", newline="") as file:
        part = {row["skill"]: row["subcontent"] for row in csv.DictReader(file)}
    skills = dict(zip(names, skills_of(folder / "timss07_g4_qmatrix_25x15.csv"), strict=True))
    first = [part[skills[name].split("+")[0]] for name in names]
    yield "TIMSS 2007, parts", *of_group(fourth, first)
    names, probability = columns(
        folder / "probability_504_before_after.csv", lambda name: name.startswith("right_before")
    )
    skills = list(skills_of(folder / "probability_qmatrix_12x4.csv"))
    yield "probability, skills", *of_group(probability, skills)


# ---- what is given and what is held out ---------------------------------------------------


def half_of_cells(rng, answers, concept):
    return rng.random(answers.shape) < 0.5


def half_of_problems(rng, answers, concept):
    given = np.zeros(answers.shape[1], bool)
    for one in np.unique(concept):
        places = rng.permutation(np.flatnonzero(concept == one))
        given[places[: len(places) // 2]] = True
    return np.broadcast_to(given, answers.shape)


def answers_a_cell(number):
    def given(rng, answers, concept):
        found = np.zeros(answers.shape, bool)
        for pupil in range(len(answers)):
            for one in np.unique(concept):
                there = (concept == one) & ~np.isnan(answers[pupil])
                found[pupil, rng.permutation(np.flatnonzero(there))[:number]] = True
        return found

    return given


def ways_of(concept):
    """How the answers of a set are parted, and whether other problems are held out."""
    if len(np.unique(concept)) == len(concept):
        return {"half of the cells": (half_of_cells, False)}
    ways = {"half of the problems": (half_of_problems, True)}
    for number in (1, 2):
        # There is something to hold out.
        if np.bincount(concept).max() > number:
            ways[f"{number} answers a cell"] = (answers_a_cell(number), False)
    return ways


# ---- one class ----------------------------------------------------------------------------


class Part:
    """Right answers and all answers of some problems, by pupil and concept."""

    def __init__(self, answers, concept, chosen):
        concepts = concept.max() + 1
        there = chosen & ~np.isnan(answers)
        self.all = np.zeros((len(answers), concepts))
        self.right = np.zeros((len(answers), concepts))
        for problem, one in enumerate(concept):
            self.all[:, one] += there[:, problem]
            self.right[:, one] += there[:, problem] * np.nan_to_num(answers[:, problem])


def case_of(given):
    """What the program is told: practice of one pass."""
    students, concepts = given.all.shape
    empty = [["."] * concepts for _ in range(students)]
    right, wrong = given.right.astype(int).tolist(), (given.all - given.right).astype(int).tolist()
    return {
        "students": students,
        "concepts": concepts,
        "rotations": 1,
        "ratings": empty,
        "results": empty,
        "practice": [
            [i, c, 0, None, right[i][c], wrong[i][c]]
            for i in range(students)
            for c in range(concepts)
        ],
    }


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


POINTS, WEIGHTS = np.polynomial.hermite_e.hermegauss(21)
WEIGHTS = WEIGHTS / WEIGHTS.sum()


def in_middle(rng, right, pmf):
    """Whether a number is in the middle 80% of its distribution. Equal numbers are parted by
    chance, so that few answers are no bias."""
    return 0.1 <= pmf[:right].sum() + rng.random() * pmf[right] <= 0.9


def of_class(rng, answer, held, problems):
    """For each concept: the number right of all answers held out. The logits of the pupils are
    moved together, so that their mean varies as the share of the class does and, if other
    problems are held out, as these problems do."""
    sd, chance = np.array(answer["sd"]), np.array(answer["phat"])
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


def of_pupils(rng, answer, held):
    """For each cell: the number right of the answers held out, binomial over its logit."""
    middle, spread = np.array(answer["M"]), np.array(answer["h"])
    for i, c in zip(*np.nonzero(held.all)):
        number = int(held.all[i, c])
        chances = expit(middle[i, c] + spread[i, c] * POINTS)
        pmf = stats.binom.pmf(np.arange(number + 1)[:, None], number, chances) @ WEIGHTS
        yield in_middle(rng, int(held.right[i, c]), pmf)


# ---- all of it ----------------------------------------------------------------------------


def ask(method, cases):
    with tempfile.NamedTemporaryFile("w", suffix=".json") as file:
        json.dump({"cases": cases}, file)
        file.flush()
        asked = [os.environ["SUREFOOT"], "insight", method, "--instances", file.name]
        done = subprocess.run(asked, check=True, capture_output=True)
    return [answer["answer"] for answer in json.loads(done.stdout)["cases"]]


def measure(seed, answers, concept, way, other_problems, size):
    rng = np.random.default_rng(seed)
    parts = []
    for _ in range(CLASSES):
        pupils = answers[rng.choice(len(answers), size, replace=False)]
        given = way(rng, pupils, concept)
        problems = np.array([(concept == c).sum() for c in range(concept.max() + 1)])
        problems = problems - problems // 2 if other_problems else None
        parts.append((Part(pupils, concept, given), Part(pupils, concept, ~given), problems))
    found = ask("weakspots", [case_of(given) for given, _, _ in parts])
    losses, shares, counts = {}, [], []
    for (given, held, problems), answer in zip(parts, found, strict=True):
        chances = plainer(given) | {"Surefoot": np.array(answer["phat"])}
        for name, chance in chances.items():
            losses.setdefault(name, []).append(loss(chance, held))
        shares += of_class(rng, answer, held, problems)
        counts += of_pupils(rng, answer, held)
    mean = {name: sum(a for a, _ in all) / sum(n for _, n in all) for name, all in losses.items()}
    return mean, shares, counts


def main():
    sets = list(from_debian())
    folder = os.environ.get("SUREFOOT_REAL_LEARNERS")
    if folder:
        sets += from_folder(pathlib.Path(folder))
    else:
        print("SUREFOOT_REAL_LEARNERS is not set: only what comes from Debian's archive")
    names = ("constant", "concept share", "pupil share", "mixed logit", "Surefoot")
    print(f"{'log loss of an answer':<60}", *(f"{name:>13}" for name in names), "   class  pupil")
    total = {name: [] for name in names}
    for nth, (name, answers, concept) in enumerate(sets):
        of_set = ([], [])
        for way, (given, other_problems) in ways_of(concept).items():
            above = []
            for size in SIZES:
                seed = [7100, nth, len(total["Surefoot"])]
                mean, *ranges = measure(seed, answers, concept, given, other_problems, size)
                for list_, new in zip(of_set, ranges, strict=True):
                    list_ += new
                words = f"{name}, {way}, class of {size}"
                covers = " ".join(f"{np.mean(one):7.2f}" for one in ranges)
                print(f"{words:<60}", *(f"{mean[one]:13.4f}" for one in names), covers)
                for one in names:
                    total[one].append(mean[one])
                above.append(mean["Surefoot"] - mean["mixed logit"])
            above = np.mean(above)
            check(f"{name}, {way}: {above:.4f} above", above <= MOST_ABOVE_MIXED_LOGIT)
        for what, inside in zip(("class", "pupil"), of_set, strict=True):
            cover = np.mean(inside)
            # Two standard errors of so many draws.
            noise = 2 * np.sqrt(cover * (1 - cover) / len(inside))
            fits = COVERAGE[0] - noise <= cover <= COVERAGE[1] + noise
            print(f"{name}: {what} ranges hold {cover:.3f}")
            check(f"{name}: {what} ranges hold {cover:.3f}", fits)
    mean = {name: np.mean(all) for name, all in total.items()}
    print(f"{'mean of all settings':<60}", *(f"{mean[one]:13.4f}" for one in names))
    check("mean of all settings", mean["Surefoot"] <= mean["mixed logit"])
    return ended()


if __name__ == "__main__":
    sys.exit(main())
