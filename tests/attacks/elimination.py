"""What sums over sets give away: linear elimination over all combinations of the sums."""

import collections
import random

# Elimination modulo this prime is exact: no minor of twenty rows of 0 and 1 reaches it.
PRIME = 2**61 - 1
MOST_SETS = 20
ORDERS = 40


def _reduced(rows, order):
    """The reduced rows for one order of the columns: no smaller one is inside any of them."""
    left, reduced = [list(row) for row in rows], []
    for column in order:
        pivot = next((row for row in left if row[column]), None)
        if pivot is None:
            continue
        left.remove(pivot)
        inverse = pow(pivot[column], -1, PRIME)
        pivot = [value * inverse % PRIME for value in pivot]
        left, reduced = (
            [
                [(a - row[column] * b) % PRIME for a, b in zip(row, pivot, strict=True)]
                for row in some
            ]
            for some in (left, reduced)
        )
        reduced.append(pivot)
    return reduced


def smallest_group(sets):
    """The fewest students found whose values, combined, follow from the sums over the sets.

    A member of a set is (student, version). Members of the same sets cannot be told apart, so
    they are one column. Small groups are searched in many orders of the columns.
    """
    assert len(sets) <= MOST_SETS
    belongs = collections.defaultdict(set)
    for at, members in enumerate(sets):
        for member in members:
            belongs[member].add(at)
    students = collections.defaultdict(set)
    for (student, _), where in belongs.items():
        students[frozenset(where)].add(student)
    columns = list(students)
    rows = [[int(at in where) for where in columns] for at in range(len(sets))]
    dice = random.Random(1)
    by_size = sorted(range(len(columns)), key=lambda at: -len(students[columns[at]]))
    orders = [by_size] + [dice.sample(by_size, len(by_size)) for _ in range(ORDERS)]
    sizes = (
        len(set().union(*(students[columns[at]] for at, value in enumerate(row) if value)))
        for order in orders
        for row in _reduced(rows, order)
    )
    return min(sizes)
