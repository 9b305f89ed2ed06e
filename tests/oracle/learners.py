"""Answers of real learners, and classes drawn from them.

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
are more of them.
"""

import csv
import os
import pathlib
import subprocess
import tempfile
import warnings

import numpy as np
import rdata

FULL = bool(os.environ.get("FULL"))
CLASSES = 20 if FULL else 4
SIZES = (8, 15, 25, 35) if FULL else (8, 25)


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


def all_sets():
    """Name, answers and concepts of each set there is."""
    sets = list(from_debian())
    folder = os.environ.get("SUREFOOT_REAL_LEARNERS")
    if folder:
        sets += from_folder(pathlib.Path(folder))
    else:
        print("SUREFOOT_REAL_LEARNERS is not set: only what comes from Debian's archive")
    return sets


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
        self.answers, self.concept, self.chosen = answers, concept, chosen
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


def shared_problems(given):
    """The same answers as results: the whole class met the same problems, one of each concept
    in a pass, so that the problems of a concept can be compared with one another."""
    answers, concept, chosen = given.answers, given.concept, given.chosen
    students, concepts = given.all.shape
    kept = np.flatnonzero(chosen.any(0))
    passes = max(np.bincount(concept[kept], minlength=1).max(), 1)
    empty = ["." * passes] * concepts
    results = [[["."] * passes for _ in range(concepts)] for _ in range(students)]
    for one in range(concepts):
        of = kept[concept[kept] == one]
        for rotation, problem in enumerate(of, start=passes - len(of)):
            for student in np.flatnonzero(chosen[:, problem] & ~np.isnan(answers[:, problem])):
                results[student][one][rotation] = str(int(answers[student, problem]))
    return {
        "students": students,
        "concepts": concepts,
        "rotations": int(passes),
        "ratings": [empty] * students,
        "results": [["".join(row) for row in rows] for rows in results],
        "practice": [],
    }


def classes(seed, answers, concept, way, size):
    """What is given of each drawn class, and what is held out."""
    rng = np.random.default_rng(seed)
    for _ in range(CLASSES):
        pupils = answers[rng.choice(len(answers), size, replace=False)]
        given = way(rng, pupils, concept)
        yield Part(pupils, concept, given), Part(pupils, concept, ~given)


def settings(sets):
    """A seed and words for each set, way and size, with its classes."""
    number = 0
    for nth, (name, answers, concept) in enumerate(sets):
        for way, (given, other_problems) in ways_of(concept).items():
            for size in SIZES:
                seed = [7100, nth, number]
                number += 1
                parts = list(classes(seed, answers, concept, given, size))
                problems = np.bincount(concept)
                problems = problems - problems // 2 if other_problems else None
                yield name, way, size, parts, problems
