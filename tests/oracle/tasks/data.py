from fractions import Fraction

from tasks import exact, task


def mixed(text):
    """A mixed number such as 2 1/4."""
    return sum(Fraction(part) for part in text.split())


def scaled(s, key):
    return s[key] * s.get("step", 1)


@task("graph_difference")
def graph_difference(s):
    return scaled(s, "large") - scaled(s, "small")


@task("graph_total")
def graph_total(s):
    return scaled(s, "large") + scaled(s, "small")


@task("graph_two_step")
def graph_two_step(s):
    return scaled(s, "large") + scaled(s, "other") - scaled(s, "small")


@task("bar_heights")
def bar_heights(s):
    return list(s["values"])


@task("dot_heights")
def dot_heights(s):
    """The line has five marks from the first to the last, equally far apart."""
    first, last = mixed(s["first"]), mixed(s["last"])
    data = [mixed(length) for length in s["lengths"]]
    return [data.count(first + k * (last - first) / 4) for k in range(5)]


@task("ruler_length")
def ruler_length(s):
    return s["whole"] + Fraction(s["marks"], s["parts"]) - s["from"]


def values(s):
    """The data of a dot plot, one entry a dot."""
    first, step = exact(s.get("first", 0)), exact(s.get("step", 1))
    return [first + k * step for k, dots in enumerate(s["dots"]) for _ in range(dots)]


@task("dots_at")
def dots_at(s):
    return sum(v == exact(s["at"]) for v in values(s))


@task("dots_above")
def dots_above(s):
    return sum(v > exact(s["at"]) for v in values(s))


@task("plot_range")
def plot_range(s):
    return max(values(s)) - min(values(s))


@task("plot_total_of_most")
def plot_total_of_most(s):
    data = values(s)
    most = max(set(data), key=data.count)
    return most * data.count(most)


@task("equal_share_of_plot")
def equal_share_of_plot(s):
    data = values(s)
    return sum(data) / len(data)
