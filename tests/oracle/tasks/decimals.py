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


ONES = "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split()
TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split()


def counted(words):
    """The number, less than 1,000, of English words."""
    total = 0
    for word in words.replace("-", " ").split():
        if word == "hundred":
            total *= 100
        elif word in TENS:
            total += 20 + 10 * TENS.index(word)
        else:
            total += ONES.index(word)
    return total


@task("decimal_of_words")
def decimal_of_words(s):
    whole, part = s["words"].split(" and ")
    count, size = part.rsplit(" ", 1)
    return counted(whole) + Fraction(counted(count), {"hundredths": 100, "thousandths": 1000}[size])
