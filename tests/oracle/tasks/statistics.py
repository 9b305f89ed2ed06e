"""Statistics with Python's own library, on exact fractions."""
import statistics as stats
from fractions import Fraction

from tasks import task
from tasks.data import values

VARYING = {
    "tall": "How tall are the students in my class?",
    "books": "How many books did each student read this month?",
    "sleep": "How long do the children on my team sleep at night?",
    "pets": "How many pets does each family on my street have?",
    "walk": "How far do students walk to my school?",
    "rain": "How much rain falls here on a day in May?",
    "seeds": "How many seeds are in each apple of a box?",
    "mass": "How heavy are the dogs in the park?",
}


@task("statistical_questions")
def statistical_questions(s):
    """A statistical question asks about many that differ."""
    return {VARYING[c.split("-")[1]] for c in s["choices"] if c.endswith("-vary")}


@task("plot_peak")
def plot_peak(s):
    return stats.mode(values(s))


@task("plot_shape")
def plot_shape(s):
    data = values(s)
    mean, middle = stats.mean(data), stats.median(data)
    third = sum((v - mean) ** 3 for v in data)
    if third == 0:
        assert s["dots"] == s["dots"][::-1]
        return "About the same on both sides of the middle"
    if third > 0:
        assert mean > middle
        return "Most values are low, with a tail to the right"
    return "Most values are high, with a tail to the left"


def quartiles(data):
    data = sorted(map(Fraction, data))
    half = len(data) // 2
    return stats.median(data[:half]), stats.median(data[-half:])


MEASURES = {
    "median": lambda d: stats.median(map(Fraction, d)),
    "mean": lambda d: stats.mean(map(Fraction, d)),
    "range": lambda d: max(d) - min(d),
    "interquartile": lambda d: quartiles(d)[1] - quartiles(d)[0],
}


@task("measures_after_change")
def measures_after_change(s):
    data = s["data"]
    top = max(data)
    after = [v + s["by"] if s["grows"] == "all" or v == top else v for v in data]
    names = {"median": "median", "mean": "mean", "range": "range", "interquartile": "interquartile range"}
    wanted = s["asked"] == "change"
    return {names[name] for name, of in MEASURES.items() if (of(data) != of(after)) == wanted}


@task("plot_median")
def plot_median(s):
    return stats.median(values(s))


@task("histogram_at_least")
def histogram_at_least(s):
    return sum(n for k, n in enumerate(s["counts"]) if s["from"] + k * s["width"] >= s["at_least"])


@task("box_plot_range")
def box_plot_range(s):
    return s["five"][4] - s["five"][0]


@task("box_plot_iqr")
def box_plot_iqr(s):
    return s["five"][3] - s["five"][1]


@task("plot_count")
def plot_count(s):
    return sum(s["dots"])


@task("median")
def median(s):
    return stats.median(map(Fraction, s["data"]))


@task("mean")
def mean(s):
    return stats.mean(map(Fraction, s["data"]))


@task("interquartile_range")
def interquartile_range(s):
    low, high = quartiles(s["data"])
    return high - low


@task("mean_absolute_deviation")
def mean_absolute_deviation(s):
    data = list(map(Fraction, s["data"]))
    centre = stats.mean(data)
    return stats.mean([abs(v - centre) for v in data])


@task("dots_of_data")
def dots_of_data(s):
    return [Fraction(s["data"].count(v)) for v in range(s["first"], s["last"] + 1)]


@task("plot_missing")
def plot_missing(s):
    return s["collected"] - sum(s["dots"])


@task("plot_from")
def plot_from(s):
    return sum(n for k, n in enumerate(s["dots"]) if s["first"] + k >= s["from"])
