"""What an attack returns. Anything it raises means that it could not be carried out."""

import dataclasses


@dataclasses.dataclass(frozen=True)
class Outcome:
    got_through: bool
    # What it reached, or what stopped it.
    proof: str


def got_through(proof):
    return Outcome(True, proof)


def stopped(by):
    return Outcome(False, str(by))


class NotCarriedOut(Exception):
    """The attack's own preconditions do not hold, so it shows nothing."""


def need(holds, words):
    if not holds:
        raise NotCarriedOut(words)
