"""A classmate at the tablet guesses the PIN signs of a slip, as their tries do not wait."""

import random
import time

import formats
from outcome import got_through, need, stopped
from program import Refused
from school import School, locked, tap

TRIES = 20
TYPING_SECONDS = 3
FEWEST_DAYS = 90


def attack(ground):
    dice = random.Random(3)
    school = School(ground)
    tablet = school.tablet()
    student = school.join(tablet, 1)
    tap(tablet, student)
    school.set_pin(tablet, student, "4711")
    signs = school.pin_signs[1].replace("-", "")
    need(len(signs) == 6, f"the slip has {len(signs)} PIN signs")
    started = time.monotonic()
    for _ in range(TRIES):
        try:
            guess = "".join(dice.choices(formats.SIGNS, k=6))
            tablet.call("reset_pin", student=student, pin_signs=guess)
        except Refused:
            continue
        need(not locked(tablet, student), "a wrong guess is not refused")
        return got_through(f"{guess} opens, the slip says {signs}")
    each = (time.monotonic() - started) / TRIES
    # The sixth sign is a check character, so that guesses need not try it.
    days = (each + TYPING_SECONDS) * 32**5 / 2 / 3600 / 24
    proof = f"25 bits at {each + TYPING_SECONDS:.2f} s a try, typing included: {days:.0f} days"
    if days < FEWEST_DAYS:
        return got_through(proof)
    school.take_pin_by_slip(tablet, student, 1)
    need(not locked(tablet, student), "after wrong guesses the slip does not open")
    return stopped(proof)
