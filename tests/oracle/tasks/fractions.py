from fractions import Fraction

from tasks import bound, exact, task


@task("shaded_of_parts")
def shaded_of_parts(s):
    return Fraction(s["shaded"], s["parts"])


@task("parts_to_shade")
def parts_to_shade(s):
    return exact(s["fraction"]) * s["parts"]


@task("first_mark")
def first_mark(s):
    return s["from"] + Fraction(s["to"] - s["from"], s["parts"])


@task("parts_for_unit")
def parts_for_unit(s):
    return 1 / exact(s["fraction"])


@task("mark_at")
def mark_at(s):
    at = exact(s["at"])
    assert exact(s["from"]) <= at <= exact(s["to"])
    return at


@task("point_on_line")
def point_on_line(s):
    return s["from"] + Fraction(s["steps"], s["parts_in_one"])


@task("steps_of")
def steps_of(s):
    return sum(exact(s["step"]) for _ in range(s["steps"]))


@task("same_size_of")
def same_size_of(s):
    fits = [exact(c) for c in s["choices"] if exact(c) == exact(s["fraction"])]
    assert len(fits) == 1
    return fits[0]


@task("which_equal_to")
def which_equal_to(s):
    fits = {c for c in s["choices"] if exact(c) == exact(s["fraction"])}
    assert fits and s["fraction"] not in s["choices"] and len(set(s["choices"])) == len(s["choices"])
    return fits


@task("equal_top")
def equal_top(s):
    return exact(s["fraction"]) * s["given"]


@task("equal_bottom")
def equal_bottom(s):
    return s["given"] / exact(s["fraction"])


@task("value_of")
def value_of(s):
    return exact(s["fraction"])


@task("top_for_whole")
def top_for_whole(s):
    return s["whole"] * s["bottom"]


@task("add_fractions")
def add_fractions(s):
    return exact(s["left"]) + exact(s["right"])


@task("subtract_fractions")
def subtract_fractions(s):
    return exact(s["left"]) - exact(s["right"])


@task("multiply_fractions")
def multiply_fractions(s):
    return exact(s["left"]) * exact(s["right"])


@task("divide_fractions")
def divide_fractions(s):
    return exact(s["left"]) / exact(s["right"])


@task("missing_top_of_sum")
def missing_top_of_sum(s):
    return (exact(s["total"]) - sum(map(exact, s["known"]))) * s["bottom"]


@task("join_parts")
def join_parts(s):
    return exact(s["one"]) + exact(s["two"])


@task("take_part")
def take_part(s):
    return exact(s["one"]) - exact(s["two"])


@task("unit_fraction_bottom")
def unit_fraction_bottom(s):
    return int(s["fraction"].split("/")[1])


@task("copies_of_unit")
def copies_of_unit(s):
    top, bottom = map(int, s["fraction"].split("/"))
    return exact(s["fraction"]) / Fraction(1, bottom)


@task("copies_of")
def copies_of(s):
    return s["count"] * exact(s["each"])


@task("share_equally")
def share_equally(s):
    return exact(s["amount"]) / s["shares"]


@task("rectangle_area")
def rectangle_area(s):
    return exact(s["width"]) * exact(s["height"])


@task("product_against_factor")
def product_against_factor(s):
    product = exact(s["factor"]) * exact(s["number"])
    number = exact(s["number"])
    return "less" if product < number else "more" if product > number else "equal"


@task("why_product_changes")
def why_product_changes(s):
    product = exact(s["factor"]) * s["number"]
    grows = "more" if product > s["number"] else "less"
    size = "more" if exact(s["factor"]) > 1 else "less"
    return f"It is {grows} than {s['number']}, because {s['factor']} is {size} than 1."


@task("part_of_amount")
def part_of_amount(s):
    return exact(s["part"]) * exact(s["amount"])


@task("shares_of_unit")
def shares_of_unit(s):
    return exact(s["unit"]) / exact(s["share"])


@task("dividend_for_unit")
def dividend_for_unit(s):
    return exact(s["unit"]) * s["quotient"]


@task("how_many_fit")
def how_many_fit(s):
    return exact(s["amount"]) / exact(s["part"])


@bound("g5-unit-fraction-divided")
@bound("g5-divide-by-unit-fraction")
@bound("g5-unit-fraction-stories")
def unit_fractions_only(s):
    """5.NF.B.7: one of the two numbers is a unit fraction, the other whole."""
    texts = [str(v) for k, v in s.items() if k != "task"]
    return any(t.startswith("1/") for t in texts)


@bound("g3-fraction-compare")
def same_top_or_bottom(s):
    """3.NF.A.3.d: the same numerator or the same denominator."""
    if s["task"] == "compare_with_sum":
        return len({f.split("/")[1] for f in [s["fraction"], *s["parts"]]}) == 1
    a, b = s["left"].split("/")
    c, d = s["right"].split("/")
    return a == c or b == d


@task("copies_to_whole")
def copies_to_whole(s):
    return (s["whole"] - exact(s["fraction"])) / exact(s["unit"])


@task("compare_with_sum")
def compare_with_sum(s):
    one, two = exact(s["fraction"]), sum(map(exact, s["parts"]))
    return "<" if one < two else ">" if one > two else "="


@task("share_between")
def share_between(s):
    share = Fraction(s["amount"], s["shares"])
    assert share.denominator > 1
    return [Fraction(share.__floor__()), Fraction(share.__ceil__())]


@task("equal_and_why")
def equal_and_why(s):
    top, bottom = map(int, s["fraction"].split("/"))
    times = Fraction(s["given"], bottom)
    assert times.denominator == 1
    return (top * times, f"There are {times} times as many parts, and {times} times as many are taken")


@task("picture_of_comparison")
def picture_of_comparison(s):
    """The picture whose bars show both fractions, in parts of their own size."""
    wanted = [tuple(map(int, s[side].split("/"))) for side in ("left", "right")]
    (right,) = [n for n, rows in enumerate(s["pictures"], 1) if [(shaded, parts) for parts, shaded in rows] == wanted]
    return f"Picture {right}"


@task("tiles_to_cover")
def tiles_to_cover(s):
    counts = [exact(edge) / exact(tile) for edge, tile in zip(s["edges"], s["tile"])]
    assert all(n.denominator == 1 for n in counts)
    return counts[0] * counts[1]


@task("tile_area")
def tile_area(s):
    return exact(s["edges"][0]) * exact(s["edges"][1])
