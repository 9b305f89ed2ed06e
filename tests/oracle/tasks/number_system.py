import math

from tasks import Typed, bound, exact, task


@task("greatest_common_factor")
def greatest_common_factor(s):
    return math.gcd(*s["numbers"])


@task("least_common_multiple")
def least_common_multiple(s):
    return math.lcm(*s["numbers"])


@task("factor_out")
def factor_out(s):
    a, b = s["numbers"]
    g = math.gcd(a, b)
    return Typed(f"{g}*({a // g}+{b // g})", "same_steps")


@task("signed_number")
def signed_number(s):
    return -s["size"] if s["side"] == "below" else s["size"]


ZERO = {
    "temperature": "The point between degrees below zero and degrees above zero",
    "sea": "Sea level",
    "money": "Owing nothing and having nothing",
    "floor": "The ground floor",
}


@task("meaning_of_zero")
def meaning_of_zero(s):
    return ZERO[s["setting"]]


@task("opposite")
def opposite(s):
    return -exact(s["number"])


@task("opposite_twice")
def opposite_twice(s):
    return -(-exact(s["number"]))


@task("quadrant_of")
def quadrant_of(s):
    angle = math.degrees(math.atan2(s["y"], s["x"])) % 360
    return ["first", "second", "third", "fourth"][int(angle // 90)] + " quadrant"


@task("reflect")
def reflect(s):
    x, y = s["x"], s["y"]
    if s["axes"] in ("x", "both"):
        y = -y
    if s["axes"] in ("y", "both"):
        x = -x
    return (x, y)


@task("order_from_least")
def order_from_least(s):
    return sorted(s["numbers"])


@task("absolute_value")
def absolute_value(s):
    return abs(exact(s["number"]))


@task("greater_size")
def greater_size(s):
    return "the same" if abs(s["two"]) == abs(s["one"]) else "more" if abs(s["two"]) > abs(s["one"]) else "less"


@task("greater_number")
def greater_number(s):
    return "the same" if s["two"] == s["one"] else "more" if s["two"] > s["one"] else "less"


@task("grid_distance")
def grid_distance(s):
    (x1, y1), (x2, y2) = s["from"], s["to"]
    assert x1 == x2 or y1 == y2
    return abs(x1 - x2) + abs(y1 - y2)


@bound("g6-greatest-common-factor")
def up_to_100(s):
    return all(n <= 100 for n in s["numbers"])


@bound("g6-least-common-multiple")
def up_to_12(s):
    return all(n <= 12 for n in s["numbers"])


@bound("g6-common-factor-sum")
def sums_up_to_100(s):
    return all(1 <= n <= 100 for n in s["numbers"])


SIDES = {
    "owes": ("Owing {} dollars", -1), "below-zero": ("{} degrees below zero", -1), "below-sea": ("{} feet below sea level", -1),
    "spends": ("Spending {} dollars", -1), "colder": ("A change to {} degrees colder", -1), "loses": ("Losing {} points in a game", -1),
    "saves": ("Saving {} dollars", 1), "above-zero": ("{} degrees above zero", 1), "above-sea": ("{} feet above sea level", 1),
    "earns": ("Earning {} dollars", 1), "warmer": ("A change to {} degrees warmer", 1), "wins": ("Winning {} points in a game", 1),
}


@task("which_are_signed")
def which_are_signed(s):
    size = abs(s["value"])
    return {text.format(size) for text, side in (SIDES[c] for c in s["choices"]) if side * size == s["value"]}


@task("inequality_of_context")
def inequality_of_context(s):
    which = "first" if s["left"] > s["right"] else "second"
    words = {"warmer": "The {} town is warmer.", "higher": "The {} place is higher.", "more": "The {} account has more."}
    return ("<" if s["left"] < s["right"] else ">", words[s["story"]].format(which))
