from fractions import Fraction

from tasks import bound, exact, task


@task("round")
def round_half_up(s):
    n, place = exact(s["number"]), exact(s["place"])
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
    return 10 <= s["number"] <= 9999 and s["place"] in (10, 100)


@bound("g4-round")
def grade_4_rounding(s):
    return s["number"] <= 1_000_000


@bound("g5-powers-of-ten")
def powers(s):
    return 0 <= s["exponent"] <= 6
