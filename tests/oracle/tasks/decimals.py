from fractions import Fraction

from tasks import exact, task


@task("decimal_on_line")
def decimal_on_line(s):
    start, end = exact(s["from"]), exact(s["to"])
    return start + (end - start) * s["steps"] / s["parts"]


@task("mark_decimal")
def mark_decimal(s):
    at = exact(s["at"])
    assert exact(s["from"]) <= at <= exact(s["to"])
    return at


@task("sum_of_parts")
def sum_of_parts(s):
    return sum((exact(p) for p in s["parts"]), Fraction(0))
