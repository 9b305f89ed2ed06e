"""What a misconception leads to, worked out from the statement: a child's work on paper.

Source: common practice, as in collections of children's errors; the digits of written
computation follow the columns on paper.
"""
from fractions import Fraction

from tasks import exact

MISTAKES = {}


def misconception(code, *names):
    """Registers what a misconception leads to in these tasks."""

    def register(function):
        for name in names:
            MISTAKES[code, name] = function
        return function

    return register


def answer_of(code, statement):
    """The answer that the misconception leads to, or None where it is not worked out here."""
    function = MISTAKES.get((code, statement["task"]))
    if function is None:
        return None
    try:
        return function(statement)
    except (KeyError, ValueError, TypeError):
        return None


def columns(a, b):
    """The digits of two whole numbers, the ones first."""
    if not (isinstance(a, int) and isinstance(b, int)):
        raise ValueError
    x, y = str(a)[::-1], str(b)[::-1]
    for k in range(max(len(x), len(y))):
        yield int(x[k]) if k < len(x) else 0, int(y[k]) if k < len(y) else 0


def joined(digits):
    return int("".join(str(d) for d in reversed(digits)))


@misconception("carry-forgotten", "add")
def carry_forgotten(s):
    totals = [a + b for a, b in columns(*s["numbers"])]
    return joined([t % 10 for t in totals[:-1]] + [totals[-1]])


@misconception("carry-written-in-place", "add")
def carry_written_in_place(s):
    return joined([a + b for a, b in columns(*s["numbers"])])


@misconception("smaller-from-larger", "subtract")
def smaller_from_larger(s):
    return joined([abs(a - b) for a, b in columns(s["from"], s["take"])])


@misconception("trade-not-taken-away", "subtract")
def trade_not_taken_away(s):
    return joined([a - b if a >= b else a + 10 - b for a, b in columns(s["from"], s["take"])])


@misconception("subtracted-instead", "add")
def subtracted_instead(s):
    a, b = map(exact, s["numbers"])
    return abs(a - b)


@misconception("added-instead", "subtract")
def added_instead(s):
    return exact(s["from"]) + exact(s["take"])


@misconception("added-all-numbers", "missing_addend")
def added_all_numbers(s):
    return s["total"] + s["part"]


@misconception("added-instead-of-multiplied", "multiply", "equal_groups", "scale_up")
def added_instead_of_multiplied(s):
    numbers = s.get("numbers") or [v for k, v in s.items() if k != "task"]
    a, b = map(exact, numbers)
    return a + b


@misconception("one-group-left-out", "equal_groups")
def one_group_left_out(s):
    return s["groups"] * s["each"] - s["each"]


@misconception("multiplied-all-numbers", "share_equally", "how_many_fit", "scale_down")
def multiplied_all_numbers(s):
    a, b = [v for k, v in s.items() if k != "task"]
    return exact(a) * exact(b)


@misconception("subtracted-instead-of-divided", "share_equally", "how_many_fit", "divide")
def subtracted_instead_of_divided(s):
    a, b = [v for k, v in s.items() if k != "task"]
    return abs(exact(a) - exact(b))


@misconception("perimeter-for-area", "rectangle_area")
def perimeter_for_area(s):
    return 2 * (exact(s["width"]) + exact(s["height"]))


@misconception("area-for-perimeter", "rectangle_perimeter")
def area_for_perimeter(s):
    return exact(s["width"]) * exact(s["height"])


@misconception("two-sides-only", "rectangle_perimeter")
def two_sides_only(s):
    return exact(s["width"]) + exact(s["height"])


@misconception("added-sides", "rectangle_area")
def added_sides(s):
    return exact(s["width"]) + exact(s["height"])


@misconception("triangle-not-halved", "triangle_area")
def triangle_not_halved(s):
    return s["base"] * s["height"]


@misconception("volume-for-surface", "box_surface")
def volume_for_surface(s):
    a, b, c = s["edges"]
    return a * b * c


@misconception("three-faces-only", "box_surface")
def three_faces_only(s):
    a, b, c = s["edges"]
    return a * b + a * c + b * c


@misconception("added-tops-and-bottoms", "add_fractions")
def added_tops_and_bottoms(s):
    (a, b), (c, d) = (map(int, s[side].split("/")) for side in ("left", "right"))
    return Fraction(a + c, b + d)


@misconception("percent-as-the-amount", "percent_of")
def percent_as_the_amount(s):
    return s["percent"]


@misconception("percent-taken-away", "percent_of")
def percent_taken_away(s):
    return abs(s["amount"] - s["percent"])


@misconception("percent-added-to-part", "whole_from_percent")
def percent_added_to_part(s):
    return s["part"] + s["percent"]


@misconception("coordinates-swapped", "name_point", "walk_to_point")
def coordinates_swapped(s):
    x, y = [v for k, v in s.items() if k != "task"]
    return (y, x)


@misconception("sum-for-mean", "mean")
def sum_for_mean(s):
    return sum(map(exact, s["data"]))


@misconception("middle-without-ordering", "median")
def middle_without_ordering(s):
    data = list(map(exact, s["data"]))
    half = len(data) // 2
    return data[half] if len(data) % 2 else (data[half - 1] + data[half]) / 2


@misconception("base-times-exponent", "evaluate")
def base_times_exponent(s):
    base, exponent = s["expression"].split("^")
    return int(base) * int(exponent)


@misconception("first-turn-only", "turns_and_more", "turns_to_full")
def first_turn_only(s):
    return s["turns"]
