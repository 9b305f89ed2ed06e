import math
from fractions import Fraction

from tasks import bound, exact, task


@task("simplest_ratio")
def simplest_ratio(s):
    g = math.gcd(s["first"], s["second"])
    return [s["first"] // g, s["second"] // g]


@task("ratio_to_all")
def ratio_to_all(s):
    part = Fraction(s["first"], s["first"] + s["second"])
    return [part.numerator, part.denominator]


@task("unit_rate")
def unit_rate(s):
    return Fraction(s["amount"], s["for"])


@task("equal_ratio")
def equal_ratio(s):
    a, b = s["ratio"]
    value = Fraction(b, a) if s["given_is"] == "upper" else Fraction(a, b)
    return value * s["given"]


@task("same_rate_amount")
def same_rate_amount(s):
    return Fraction(s["amount"], s["for"]) * s["given"]


@task("same_rate_time")
def same_rate_time(s):
    return Fraction(s["given"]) / Fraction(s["amount"], s["for"])


@task("percent_of")
def percent_of(s):
    return Fraction(s["percent"], 100) * s["amount"]


@task("whole_from_percent")
def whole_from_percent(s):
    return Fraction(s["part"]) / Fraction(s["percent"], 100)


@task("convert_with_rate")
def convert_with_rate(s):
    rate, amount = exact(s["rate"]), exact(s["amount"])
    return amount / rate if s["direction"] == "back" else amount * rate


@bound("g6-percent-of")
@bound("g6-percent-whole")
def percents(s):
    return 1 <= s["percent"] <= 200


@task("better_buy")
def better_buy(s):
    one, two = (Fraction(price, count) for count, price in s["packs"])
    return "the first pack" if one < two else "the second pack" if two < one else "both cost the same for each"


@task("plot_ratio")
def plot_ratio(s):
    first, second = s["ratio"]
    return (s["across"], Fraction(s["across"] * second, first))


@task("compare_ratios")
def compare_ratios(s):
    one, two = (Fraction(first, second) for first, second in s["mixes"])
    return "A" if one > two else "B" if two > one else "Both are the same"
