"""Somebody tries keys until a forged class has the class signs of a real slip."""

import time

import formats
from outcome import Outcome, need
from school import School

TRIALS = 8
FEWEST_YEARS = 300


def attack(ground):
    school = School(ground)
    signs = school.codes[1].replace("-", "")[: formats.CLASS_SIGNS]
    need(formats.class_signs(school.pack["class_id"]) == signs, "the class signs of a real slip")
    started = time.process_time()
    for _ in range(TRIALS):
        formats.class_signs(formats.new_id())
    each = (time.process_time() - started) / TRIALS
    years = each * 2 ** (5 * formats.CLASS_SIGNS - 1) / 3600 / 24 / 365
    bits = 5 * formats.CLASS_SIGNS
    proof = f"{bits} bits at {each * 1000:.3g} ms a trial: {years:.2g} years on one core"
    return Outcome(years < FEWEST_YEARS, proof)
