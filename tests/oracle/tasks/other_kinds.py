"""Kinds of question about another task: whose answer is right, which estimate is closest."""
import math
from fractions import Fraction

from tasks import TASKS, exact, normal, task


def inner_value(s):
    value = normal(TASKS[s["inner"]["task"]](s["inner"]))
    assert isinstance(value, Fraction)
    return value


@task("who_is_right")
def who_is_right(s):
    right = inner_value(s)
    said = [exact(text) for text in s["says"]]
    assert said[0] != said[1] and s["names"][0] != s["names"][1]
    for name, value in zip(s["names"], said):
        if value == right:
            return name
    return "neither of them"


@task("closest_estimate")
def closest_estimate(s):
    """The choice with the least distance; in size it is the closest too."""
    right = inner_value(s)
    choices = [exact(text) for text in s["choices"]]
    nearest = min(choices, key=lambda choice: abs(choice - right))
    assert nearest == min(choices, key=lambda choice: abs(math.log(choice / right)))
    return nearest
