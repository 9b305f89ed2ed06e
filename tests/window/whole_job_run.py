"""The whole job in the real window, on the sample class: first start, a
student's check-in, practice and hand-in, the teacher's import, and the board
that shows it."""

import pathlib
import re
import subprocess
import tempfile

from driver import PROGRAM, Checks, Window, environment

# Making the sample class simulates a class over weeks, with real files.
SAMPLE_SECONDS = 300
# Tonight's queue mixes kinds of exercises.
EXERCISES_TRIED = 8
# The screens show this in place of a missing message.
UNWORDED = "\u27e8"

checks = Checks()
folder = tempfile.TemporaryDirectory(prefix="surefoot-window-", ignore_cleanup_errors=True)
home = pathlib.Path(folder.name)


def picture(window, name):
    """Takes a picture, and checks that no word on it is missing."""
    window.shot(name)
    words = window.script("return document.body.innerText")
    checks.that(f"no word is missing on {name}", UNWORDED not in words,
                re.findall(f"{UNWORDED}[^ ]*", words))


def hooks(window, start):
    """Returns the names of the hooks on the page that begin with `start`."""
    return window.script(
        "return [...document.querySelectorAll('[data-testid]')].map(e => e.dataset.testid)"
        ".filter(n => n.startsWith(arguments[0]))", start)


def wait_hooks(window, start, seconds=20):
    return window.wait(lambda: hooks(window, start), f"{start}…", seconds)


def hand_ins():
    """Returns each hand-in on disk with the time of its last change."""
    return {p: p.stat().st_mtime_ns for p in home.rglob("*.sfhandin")}


def board_row(window, concept):
    window.press("bar-teacher")
    window.press("tab-board")
    return window.text(window.hook(f"board-row-{concept}"))


def import_report(window):
    """Returns the text of the latest import report; empty before the first."""
    return window.script(
        "return document.querySelector('[data-testid=import-report]')?.innerText ?? ''")


def chosen(window, hook):
    """Returns whether a rating or an outcome is chosen for a screen reader."""
    element = window.hook(hook)
    return "true" in (window.attribute(element, "aria-pressed"),
                      window.attribute(element, "aria-checked"))


def all_chosen(window, concepts):
    """Returns whether every concept is marked as this run marked it."""
    return all(chosen(window, f"rate-{c}-0") and chosen(window, f"outcome-{c}-wrong")
               for c in concepts)


def answer_one(window):
    """Answers one exercise, right or wrong, and returns the feedback. Skips exercises
    that are answered in a drawing or in two parts."""
    for _ in range(EXERCISES_TRIED):
        wait_hooks(window, "practice-sure-")
        window.press("practice-sure-1")
        wait_hooks(window, "answer-submit")
        fields, choices = hooks(window, "answer-field-"), hooks(window, "answer-choice-")
        if (fields or choices) and not hooks(window, "answer-first"):
            for field in fields:
                window.type(window.hook(field), "1")
            if choices:
                window.press(choices[0])
            window.press("answer-submit")
            return window.text(window.hook("practice-feedback"))
        window.press("practice-show-steps")
        window.press("practice-next")
    raise AssertionError("no exercise with a field or a choice")


with Window(home) as window:
    with checks.step("the first start asks who is there"):
        for name in ("start-student", "start-teacher", "start-sample"):
            window.hook(name)
        picture(window, "1-first-start")

    with checks.step("the sample class opens"):
        window.press("start-sample")
        window.hook("bar-student", SAMPLE_SECONDS)
        picture(window, "2-sample-class")

    with checks.step("Today shows the student's day"):
        window.press("bar-student")
        window.press("tab-today")
        rates = wait_hooks(window, "rate-")
    concepts = sorted({re.fullmatch(r"rate-(.+)-[0-3]", r)[1] for r in rates})
    checks.that("each concept of the day has its four ratings",
                len(rates) == 4 * len(concepts) and concepts, rates)
    concept = concepts[0]
    before = board_row(window, concept)
    picture(window, "3-board-before")

    with checks.step("a check-in is stored at the tap"):
        window.press("bar-student")
        window.press("tab-today")
        for name in concepts:
            window.press(f"rate-{name}-0")
            window.press(f"outcome-{name}-wrong")
        window.wait(lambda: all_chosen(window, concepts), "all chosen")
        picture(window, "4-check-in")

    with checks.step("practice takes an answer and shows feedback"):
        window.press("tab-practice")
        wait_hooks(window, "practice-sure-")
        picture(window, "5-practice")
        said = answer_one(window)
        picture(window, "6-feedback")
        assert said.strip(), "feedback without words"

    held = hand_ins()
    with checks.step("a hand-in is made and is on disk"):
        window.press("tab-handin")
        window.press("hand-in-make")
        window.wait(lambda: hand_ins() != held, "a new hand-in")
        picture(window, "7-hand-in")

    with checks.step("the teacher imports it"):
        window.press("bar-teacher")
        window.press("tab-files")
        window.hook("import-start")
        earlier = import_report(window)
        window.press("import-start")
        window.wait(lambda: import_report(window) not in ("", earlier), "the import report", SAMPLE_SECONDS)
        print(f"        {import_report(window).splitlines()[0]}")
        picture(window, "8-import")

    with checks.step("the board shows it"):
        window.press("tab-board")
        window.wait(lambda: board_row(window, concept) != before, "a changed row")
        picture(window, "9-board-after")
    print(f"        {concept}\n        before: {before!r}\n        after:  {board_row(window, concept)!r}")

packs = sorted(home.rglob("*.sfclass"))
with Window(home, [str(packs[0])]) as window:
    with checks.step("a class pack that starts the program leads to its class"):
        window.hook("join-next")
        window.press("join-back")
    with checks.step("after a new start every rating and outcome is still there"):
        window.press("start-sample")
        window.press("bar-student")
        window.press("tab-today")
        window.wait(lambda: hooks(window, "rate-"), "the day")
        window.wait(lambda: all_chosen(window, concepts), "all as marked")
        picture(window, "10-after-a-new-start")
    with checks.step("a class pack opened while the window is there leads to its class"):
        subprocess.run([PROGRAM, packs[-1]], env=environment(home), timeout=20, check=True)
        window.hook("join-next")
        picture(window, "11-opened-pack")

with Window(home, ["--sample"]) as window:
    with checks.step("a start with --sample opens the sample class"):
        window.hook("bar-teacher")

checks.finish()
