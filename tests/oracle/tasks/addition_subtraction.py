from tasks import bound, exact, task


@task("add")
def add(s):
    return sum(exact(n) for n in s["numbers"])


@task("subtract")
def subtract(s):
    if "pair" in s:
        left, right = map(exact, s["pair"])
        return left - right
    return exact(s["from"]) - exact(s["take"])


@task("missing_addend")
def missing_addend(s):
    return s["total"] - s["part"]


@bound("g3-add-within-1000")
def within_1000(s):
    return sum(s.get("numbers", [])) <= 1000 and s.get("total", 0) <= 1000


@bound("g3-subtract-within-1000")
def from_within_1000(s):
    return s["from"] <= 1000


@bound("g4-add-large")
def within_million(s):
    return sum(s["numbers"]) <= 1_000_000


@bound("g4-subtract-large")
def from_within_million(s):
    return s["from"] <= 1_000_000
