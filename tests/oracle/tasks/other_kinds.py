"""Kinds of question about another task: whose answer is right, which estimate is closest,
boxes to fill, reasons, mistakes to mend, ways to judge, equations of stories."""
import itertools
import math
import re
from fractions import Fraction

from tasks import TASKS, Fillings, exact, normal, task


def inner_value(s):
    value = normal(TASKS[s["inner"]["task"]](s["inner"]))
    assert isinstance(value, Fraction)
    return value


@task("who_is_right")
def who_is_right(s):
    right = inner_value(s)
    said = [exact(text) for text in s["says"]]
    assert said[0] != said[1] and s["names"][0] != s["names"][1]
    for name, value in zip(s["names"], said):
        if value == right:
            return name
    return "neither of them"


@task("closest_estimate")
def closest_estimate(s):
    """The choice with the least distance; in size it is the closest too."""
    right = inner_value(s)
    choices = [exact(text) for text in s["choices"]]
    nearest = min(choices, key=lambda choice: abs(choice - right))
    assert nearest == min(choices, key=lambda choice: abs(math.log(choice / right)))
    return nearest


NUMBER = re.compile(r"\d+(?:\.\d+)?")


def worked(text, **letters):
    """The value or truth of a sentence, with exact numbers, by Python's own arithmetic."""
    text = NUMBER.sub(lambda m: f"Fraction('{m.group()}')", text)
    return eval(text.replace("=", "==").replace("%", "/100"), {"Fraction": Fraction, "abs": abs, **letters})  # our own statement


@task("fill_boxes")
def fill_boxes(s):
    """Tries every filling; there have to be two that differ in more than the order."""
    boxes = s["sentence"].count("_")
    names = iter("abcdefgh")
    sentence = re.sub("_", lambda _: next(names), s["sentence"])
    code = compile(
        NUMBER.sub(lambda m: f"Fraction('{m.group()}')", sentence).replace("=", "==").replace("%", "/100"),
        "sentence", "eval",
    )
    if "cards" in s:
        cards = [exact(card) for card in s["cards"]]
        assert len(set(cards)) == len(cards)
        tried = itertools.permutations(cards, boxes)
    else:
        tried = itertools.product([Fraction(n) for n in range(s["least"], s["greatest"] + 1)], repeat=boxes)
    found, count = [], 0
    for filling in tried:
        count += 1
        try:
            if eval(code, {"Fraction": Fraction, **dict(zip("abcdefgh", filling))}):
                found.append(filling)
        except ZeroDivisionError:
            continue
    assert len({tuple(sorted(filling)) for filling in found}) >= 2, f"{len(found)} fillings"
    assert len(found) * 2 < count, "half of all fillings are true"
    return Fillings(found)


PLACES = {
    "hundred-thousands": 100000, "ten-thousands": 10000, "thousands": 1000, "hundreds": 100,
    "tens": 10, "ones": 1, "tenths": Fraction(1, 10), "hundredths": Fraction(1, 100),
}


def first_difference(left, right):
    """The name of the first place from the left in which two numbers differ, or None."""
    for name, place in PLACES.items():
        if left // place % 10 != right // place % 10:
            return name
    return None


def is_true(reason, s):
    left, right = exact(s["left"]), exact(s["right"])
    less, more = min(left, right), max(left, right)
    if reason.startswith("differ-"):
        return first_difference(left, right) == reason.removeprefix("differ-")
    tops, bottoms = zip(*((t.split("/") + ["1"])[:2] for t in (s["left"], s["right"])))
    missing = [int(b) - int(t) for t, b in zip(tops, bottoms)] if "/" in s["left"] else []
    return {
        "same-parts": lambda: bottoms[0] == bottoms[1],
        "same-count": lambda: tops[0] == tops[1],
        "half-between": lambda: less < Fraction(1, 2) < more,
        "one-between": lambda: less < 1 < more,
        "one-part-missing": lambda: missing == [1, 1],
        "same-point": lambda: left == right,
        "zero-between": lambda: less < 0 < more,
        "both-below-zero": lambda: more < 0,
        "both-above-zero": lambda: less > 0,
        "same-distance": lambda: left == -right,
        "same-in-each-place": lambda: left == right,
    }[reason]()


REASONS = {
    "same-parts": "Both are made of parts of the same size.",
    "same-count": "Both take the same number of parts.",
    "half-between": "One is less than one half, and one is more.",
    "one-between": "One is less than 1, and one is more than 1.",
    "one-part-missing": "Each is one part less than 1.",
    "same-point": "Both are at the same point of the number line.",
    "zero-between": "One is less than 0, and one is more than 0.",
    "both-below-zero": "Both are less than 0. So closer to 0 is greater.",
    "both-above-zero": "Both are more than 0. So closer to 0 is less.",
    "same-distance": "They are at the same distance from 0, on its two sides.",
    "same-in-each-place": "No place differs.",
}


@task("compare_and_why")
def compare_and_why(s):
    left, right = exact(s["left"]), exact(s["right"])
    (reason,) = [r for r in s["reasons"] if is_true(r, s)]
    place = reason.removeprefix("differ-").replace("-", " ")
    words = REASONS.get(reason, f"From the left, they first differ in the {place}.")
    return ("<" if left < right else ">" if left > right else "=", words)


@task("wrong_line")
def wrong_line(s):
    """The only line that is not true, and the value of its left side. Each later line uses
    what is written, and the last line leads to the answer of the task but for the mistake."""
    wrong = [n for n, line in enumerate(s["lines"]) if not worked(line)]
    assert len(wrong) == 1, wrong
    written = [exact(line.rpartition("=")[2].strip(" ()")) for line in s["lines"]]
    # Mended, with what follows from it, the work ends with the answer.
    mended = []
    for n, line in enumerate(s["lines"]):
        left = line.rpartition("=")[0]
        for before in range(n):
            old, new = as_written(s["lines"][before]), mended[before]
            left = re.sub(rf"(?<![\d./]){re.escape(old)}(?![\d./])", f"({new.numerator}/{new.denominator})", left)
        mended.append(worked(left))
    assert mended[-1] == inner_value(s), f"{mended} for {inner_value(s)}"
    right = worked(s["lines"][wrong[0]].rpartition("=")[0])
    assert right != written[wrong[0]]
    return (f"Line {wrong[0] + 1}", right)


def as_written(line):
    return line.rpartition("=")[2].strip()


@task("two_ways")
def two_ways(s):
    right = inner_value(s)
    assert worked(s["work"]) == right and s["ways"][0] != s["ways"][1]
    good = [worked(way) == right for way in s["ways"]]
    first, second = s["names"]
    words = {
        (True, False): f"Only {first} is right", (False, True): f"Only {second} is right",
        (True, True): "Both are right", (False, False): "Neither is right",
    }
    return (words[tuple(good)], right)


@task("estimate_then_answer")
def estimate_then_answer(s):
    return (closest_estimate(s), inner_value(s))


@task("equation_of_words")
def equation_of_words(s):
    """Each choice gives n as a sum, product and so on; one gives the answer of the story."""
    right = inner_value(s)
    fitting = []
    for choice in s["choices"]:
        left, letter = choice.split(" = ")
        assert letter == "n"
        if worked(left) == right:
            fitting.append(left)
    (left,) = fitting
    left = NUMBER.sub(lambda m: f"{int(m.group()):,}", left)
    return (left.replace("*", "×").replace("/", "÷").replace("-", "−") + " = n", right)


@task("compare_answer")
def compare_answer(s):
    right, other = inner_value(s), exact(s["with"])
    return "<" if right < other else ">" if right > other else "="


@task("between_then_answer")
def between_then_answer(s):
    """The only range that has the answer inside; the ranges go on from one another."""
    right = inner_value(s)
    ranges = [tuple(map(exact, pair)) for pair in s["ranges"]]
    assert all(one[1] == two[0] for one, two in zip(ranges, ranges[1:]))
    assert len({high - low for low, high in ranges}) == 1
    (place,) = [n for n, (low, high) in enumerate(ranges) if low < right < high]
    return (" and ".join(s["ranges"][place]), right)


SENTENCE = re.compile(r"(\S+) ([-+*/]) (\S+) = (\S+)")


@task("missing_number")
def missing_number(s):
    """Undoes the operation, and puts the number in to check."""
    a, sign, b, result = SENTENCE.fullmatch(s["sentence"]).groups()
    result = exact(result)
    if a == "_":
        b = exact(b)
        value = {"+": lambda: result - b, "-": lambda: result + b, "*": lambda: result / b, "/": lambda: result * b}[sign]()
    else:
        a = exact(a)
        value = {"+": lambda: result - a, "-": lambda: a - result, "*": lambda: result / a, "/": lambda: a / result}[sign]()
    assert worked(s["sentence"].replace("_", f"({value.numerator}/{value.denominator})"))
    return value
