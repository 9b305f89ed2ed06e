import math
from fractions import Fraction

from tasks import bound, exact, task


PLACES = {
    "ten": Fraction(10), "hundred": Fraction(100), "thousand": Fraction(1000), "ten thousand": Fraction(10_000),
    "hundred thousand": Fraction(100_000), "whole": Fraction(1), "tenth": Fraction(1, 10), "hundredth": Fraction(1, 100),
}


@task("round")
def round_half_up(s):
    n, place = exact(s["number"]), PLACES[s["place"]]
    return (n / place + Fraction(1, 2)).__floor__() * place


@task("times_as_much")
def times_as_much(s):
    return exact(s["large"]) / exact(s["small"])


@task("scale_up")
def scale_up(s):
    return s["small"] * s["factor"]


@task("scale_by")
def scale_by(s):
    return exact(s["value"]) * exact(s["factor"])


UNITS = "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split()
TENS = "_ _ twenty thirty forty fifty sixty seventy eighty ninety".split()


@task("from_words")
def from_words(s):
    total = group = 0
    for word in s["words"].replace(",", "").replace("-", " ").split():
        if word == "hundred":
            group *= 100
        elif word in ("thousand", "million"):
            total += group * {"thousand": 1000, "million": 10**6}[word]
            group = 0
        else:
            group += UNITS.index(word) if word in UNITS else 10 * TENS.index(word)
    return total + group


@task("from_parts")
def from_parts(s):
    return sum(s["parts"])


@task("compare")
def compare(s):
    left, right = exact(s["left"]), exact(s["right"])
    return "<" if left < right else ">" if left > right else "="


@task("times_power")
def times_power(s):
    return exact(s["value"]) * s["base"] ** s["exponent"]


@task("divide_by_power")
def divide_by_power(s):
    return exact(s["value"]) / s["base"] ** s["exponent"]


@bound("g3-round-10-100")
def grade_3_rounding(s):
    return all(10 <= n <= 999 for n in s.get("choices", [s.get("number", 10)])) and s["place"] in ("ten", "hundred")


@bound("g4-round")
def grade_4_rounding(s):
    return s["number"] <= 1_000_000


@bound("g5-powers-of-ten")
def powers(s):
    return 0 <= s["exponent"] <= 6


@task("which_round_to")
def which_round_to(s):
    place = PLACES[s["place"]]
    return {n for n in s["choices"] if math.floor(n / place + Fraction(1, 2)) * place == s["to"]}


@task("compare_with_parts")
def compare_with_parts(s):
    return compare({"left": s["number"], "right": sum(s["parts"])})


@task("name_of_number")
def name_of_number(s):
    """The name that is the number when read; `id` has the names."""
    (right,) = [words for words in s["id"] if from_words({"words": words}) == s["number"]]
    return right
