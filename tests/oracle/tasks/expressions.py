import re
from fractions import Fraction

import sympy

from tasks import Typed, _sympy, bound, exact, task


def value(expression, **letters):
    """The value of an expression with exact numbers, by Python's own arithmetic."""
    text = re.sub(r"\d+(\.\d+)?", lambda m: f"Fraction('{m.group()}')", expression).replace("^", "**")
    text = re.sub(r"\*\*Fraction\('(\d+)'\)", r"**\1", text)
    return eval(text, {"Fraction": Fraction, **letters})  # our own statement


@task("evaluate")
def evaluate(s):
    return value(s["expression"])


@task("evaluate_at")
def evaluate_at(s):
    return value(s["expression"], **{k: exact(v) for k, v in s["values"].items()})


def steps(text):
    return Typed(text, "same_steps")


@task("add_then_times")
def add_then_times(s):
    return steps(f"({s['a']}+{s['b']})*{s['c']}")


@task("subtract_then_times")
def subtract_then_times(s):
    return steps(f"({s['a']}-{s['b']})*{s['c']}")


@task("times_then_add")
def times_then_add(s):
    return steps(f"{s['a']}*{s['b']}+{s['c']}")


@task("add_then_divide")
def add_then_divide(s):
    return steps(f"({s['a']}+{s['b']})/{s['c']}")


@task("take_product_from")
def take_product_from(s):
    return steps(f"{s['from']}-{s['b']}*{s['c']}")


@task("divide_then_add")
def divide_then_add(s):
    return steps(f"{s['a']}/{s['b']}+{s['c']}")


@task("paired_terms")
def paired_terms(s):
    x = y = s["start"]
    for _ in range(s["place"] - 1):
        x, y = x + s["add"][0], y + s["add"][1]
    return (x, y)


WORDS = {
    "more_than": "{l}+{a}",
    "less_than": "{l}-{a}",
    "times": "{a}*{l}",
    "divided_by": "{l}/{a}",
    "times_then_more": "{l}*{a}+{b}",
    "sum_times": "({l}+{b})*{a}",
    "product_from": "{b}-{a}*{l}",
    "less_then_divided": "({l}-{b})/{a}",
}


@task("words_to_expression")
def words_to_expression(s):
    return Typed(WORDS[s["form"]].format(l=s["letter"], a=s["a"], b=s.get("b")))


STORIES = {
    "cost_each": "{l}*{a}",
    "more": "{l}+{a}",
    "fewer": "{l}-{a}",
    "shared": "{l}/{a}",
    "each_and_once": "{a}*{l}+{b}",
    "left_after": "{b}-{l}*{a}",
    "each_has_more": "({l}+{b})*{a}",
}


@task("story_to_expression")
def story_to_expression(s):
    return Typed(STORIES[s["story"]].format(l=s["letter"], a=s["a"], b=s.get("b")))


@task("coefficient_of")
def coefficient_of(s):
    return int(sympy.Poly(_sympy("+".join(s["terms"]))).coeff_monomial(sympy.Symbol(s["letter"])))


@task("constant_of")
def constant_of(s):
    return next(int(t) for t in s["terms"] if t.isdigit())


@task("count_terms")
def count_terms(s):
    return len(s["terms"])


@task("name_parts")
def name_parts(s):
    return {"whole": "factors", "inside": "terms", "fronts": "coefficients"}[s["of"]]


@task("expand")
def expand(s):
    return Typed(str(sympy.expand(_sympy(s["expression"]))))


@task("factor")
def factor(s):
    return Typed(str(sympy.factor(_sympy(s["expression"]))))


@task("always_equal")
def always_equal(s):
    gap = sympy.expand(_sympy(s["left"]) - _sympy(s["right"]))
    if gap == 0:
        return "always equal"
    return "equal for one number only" if gap.free_symbols else "never equal"


@task("which_make_true")
def which_make_true(s):
    right = exact(s["right"])
    fits = set()
    for x in s["choices"]:
        left = value(s["left"], x=Fraction(x))
        if left == right if s["sign"] == "=" else left < right:
            fits.add(x)
    if s["sign"] == "=":
        (only,) = fits
        return only
    return fits


SIGNS = {"over": ">", "under": "<", "at_least": ">=", "at_most": "<="}


@task("write_inequality")
def write_inequality(s):
    return Typed(f"{s['letter']}{SIGNS[s['condition']]}{s['limit']}")


@task("graph_inequality")
def graph_inequality(s):
    return (Fraction(s["limit"]), "=" not in s["sign"], ">" in s["sign"])


@task("equation_of_story")
def equation_of_story(s):
    right = f"{s['independent']}+{s['k']}" if s["relation"] == "more" else f"{s['k']}*{s['independent']}"
    return Typed(f"{s['dependent']}={right}")


@task("equation_of_graph")
@task("equation_of_table")
def equation_of_table(s):
    gaps = {y - x for x, y in s["pairs"]}
    factors = {Fraction(y, x) for x, y in s["pairs"]}
    assert (len(gaps) == 1) != (len(factors) == 1)
    if len(gaps) == 1:
        return Typed(f"{s['dependent']}={s['independent']}+{gaps.pop()}")
    return Typed(f"{s['dependent']}={factors.pop()}*{s['independent']}")


@bound("g6-powers")
def small_powers(s):
    if "factors" in s:
        return max(s["factors"]) <= 12 and len(s["factors"]) <= 4
    powers = re.findall(r"(\d+)\^(\d+)", s["expression"])
    return all(int(b) <= 12 and int(e) <= 4 for b, e in powers)


@task("patterns_relation")
def patterns_relation(s):
    factors = {Fraction(b, a) for a, b in zip(s["first"], s["second"]) if a}
    (factor,) = factors
    return factor


@task("power_of_product")
def power_of_product(s):
    (base,) = set(s["factors"])
    return [base, len(s["factors"])]


@task("read_expression")
def read_expression(s):
    """By the values, which the student does not need."""
    numbers = re.compile(r"\d+")
    work, inside = (eval(numbers.sub(lambda m: f"Fraction({m.group()})", s[part]), {"Fraction": Fraction}) for part in ("expression", "inside"))
    by = s["by"]
    fitting = {
        f"It is {by} times as large.": work == by * inside,
        f"It is {by} more.": work == inside + by,
        f"It is {by} less.": work == inside - by,
        f"It is one of {by} equal parts of it.": work * by == inside,
    }
    (words,) = [words for words, fits in fitting.items() if fits]
    return words


@task("plot_paired_terms")
def plot_paired_terms(s):
    x = y = s["start"]
    for _ in range(s["place"] - 1):
        x, y = x + s["add"][0], y + s["add"][1]
    return (x, y)
