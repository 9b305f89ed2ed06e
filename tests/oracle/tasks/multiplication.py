import math
import re
from fractions import Fraction

import sympy

from tasks import bound, exact, task


@task("equal_groups")
def equal_groups(s):
    return sum(s["each"] for _ in range(s["groups"]))


@task("array_to_mark")
def array_to_mark(s):
    return tuple(sorted((s["rows"], s["each"])))


@task("multiply")
def multiply(s):
    return math.prod(exact(n) for n in s["numbers"])


@task("divide")
def divide(s):
    return exact(s["total"]) / exact(s["by"])


@task("solve_for_x")
def solve_for_x(s):
    """The x of an equation, from its text; both sides are linear in x or 1/x."""
    left, right = s["equation"].split("=")

    def side(text, x):
        exact_text = re.sub(r"\d+(\.\d+)?", lambda m: f"Fraction('{m.group()}')", text)
        return eval(exact_text, {"Fraction": Fraction, "x": x})  # our own statement

    # a/x or a plain multiple: two probes tell a linear equation's solution.
    if "/ x" not in left:
        at_one, at_two = (side(left, Fraction(x)) - side(right, Fraction(x)) for x in (1, 2))
        slope = at_two - at_one
        return 1 - at_one / slope
    x = sympy.Symbol("x")
    found = sympy.solve(sympy.sympify(left, rational=True) - sympy.sympify(right, rational=True), x)
    assert len(found) == 1
    return Fraction(int(found[0].p), int(found[0].q))


@task("left_after_buying")
def left_after_buying(s):
    return s["have"] - s["count"] * s["each"]


@task("groups_and_more")
def groups_and_more(s):
    return s["groups"] * s["each"] + s["more"]


@task("join_then_share")
def join_then_share(s):
    return Fraction(s["one"] + s["two"], s["shares"])


@task("share_then_use")
def share_then_use(s):
    return Fraction(s["amount"], s["shares"]) - s["used"]


@task("scale_down")
def scale_down(s):
    return Fraction(s["large"], s["factor"])


@task("how_many_more")
def how_many_more(s):
    return exact(s["large"]) - exact(s["small"])


@task("groups_for_all")
def groups_for_all(s):
    return math.ceil(Fraction(sum(s["amounts"]), s["size"]))


@task("full_groups")
def full_groups(s):
    return sum(s["amounts"]) // s["size"]


@task("left_over")
def left_over(s):
    return sum(s["amounts"]) % s["size"]


@task("parity")
def parity(s):
    value = math.prod(s["numbers"]) if s["operation"] == "times" else sum(s["numbers"])
    return "odd" if value % 2 else "even"


@task("next_in_pattern")
def next_in_pattern(s):
    terms = s["terms"]
    gaps = {b - a for a, b in zip(terms, terms[1:])}
    assert len(gaps) == 1
    return terms[-1] + gaps.pop()


@task("count_factor_pairs")
def count_factor_pairs(s):
    return math.ceil(len(sympy.divisors(s["number"])) / 2)


@task("same_missing_number")
def same_missing_number(s):
    """The equation whose box takes the quotient; a box is tried with every number up to 200."""
    total, by = s["divide"]

    def takes(text, number):
        left, right = text.replace("□", str(number)).replace("×", "*").replace("−", "-").split("=")
        return eval(left) == eval(right)  # our own statement

    fits = [c for c in s["choices"] if [n for n in range(201) if takes(c, n)] == [total // by]]
    assert total % by == 0
    (right,) = fits
    return right


@task("which_are_factors")
def which_are_factors(s):
    divisors = sympy.divisors(s["number"])
    return {c for c in s["choices"] if c in divisors}


@task("which_are_multiples")
def which_are_multiples(s):
    return {c for c in s["choices"] if math.gcd(c, s["number"]) == s["number"]}


@task("prime_or_composite")
def prime_or_composite(s):
    return "prime" if sympy.isprime(s["number"]) else "composite" if s["number"] > 1 else "neither one"


@task("which_are_prime")
def which_are_prime(s):
    return {c for c in s["choices"] if sympy.isprime(c)}


@task("pattern_term")
def pattern_term(s):
    term = s["start"]
    for _ in range(s["place"] - 1):
        term = term * s["by"] if s["rule"] == "times" else term + s["by"]
    return term


@task("divide_with_remainder")
def divide_with_remainder(s):
    return divmod(s["total"], s["by"])


@bound("g3-facts-multiply")
def facts_within_100(s):
    return all(0 <= n <= 10 for n in s["numbers"])


@bound("g4-multiply-one-digit")
def four_by_one(s):
    a, b = s["numbers"]
    return a <= 9999 and b <= 9


@bound("g4-multiply-two-digit")
def two_by_two(s):
    return all(10 <= n <= 99 for n in s["numbers"])


@bound("g4-divide-one-digit")
def four_by_one_division(s):
    return s["total"] <= 9999 and 2 <= s["by"] <= 9


@bound("g5-multiply-whole")
def up_to_four_by_two(s):
    sizes = sorted(len(str(n)) for n in s["numbers"])
    return sizes in ([2, 3], [2, 4], [3, 3])


@bound("g5-divide-two-digit")
def four_by_two_division(s):
    return s["total"] <= 9999 and 10 <= s["by"] <= 99


@bound("g4-factor-pairs")
def within_100(s):
    return 1 <= s["number"] <= 100


@task("turned_fact")
def turned_fact(s):
    a, b, product = s["fact"]
    assert a * b == product and sorted(s["asked"]) == sorted((a, b))
    return math.prod(s["asked"])


@task("parity_of_unknown")
def parity_of_unknown(s):
    """Even and odd numbers in the box give different parities."""
    n = s["number"]
    found = {(n * x if s["operation"] == "times" else n + x) % 2 for x in range(2, 12)}
    assert len(found) == 2
    return "you cannot know"


@task("pattern_rule")
def pattern_rule(s):
    (step,) = {b - a for a, b in zip(s["terms"], s["terms"][1:])}
    return f"The rule is: add {step}." if step > 0 else f"The rule is: take away {-step}."


@task("make_use_share")
def make_use_share(s):
    left, rest = divmod(s["groups"] * s["each"] - s["used"], s["shares"])
    assert rest == 0
    return left


@task("start_earn_spend")
def start_earn_spend(s):
    return s["start"] + sum([s["each"]] * s["weeks"]) - s["spent"]


@task("pattern_feature")
def pattern_feature(s):
    odd = [(s["start"] + s["by"] * k) % 2 for k in range(20)]
    if len(set(odd)) == 1:
        return "They are all odd" if odd[0] else "They are all even"
    assert all(a != b for a, b in zip(odd, odd[1:]))
    return "Even and odd take turns"
