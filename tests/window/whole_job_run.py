"""The whole job in the real window, on the sample class: first start, a
student's check-in, practice and hand-in, the teacher's import, and the board
that shows it."""

import pathlib
import re
import tempfile

from driver import Checks, Window

# Making the sample class simulates a class over weeks, with real files.
SAMPLE_SECONDS = 180

checks = Checks()
folder = tempfile.TemporaryDirectory(prefix="surefoot-window-", ignore_cleanup_errors=True)
home = pathlib.Path(folder.name)


def hooks(window, start):
    """The names of the hooks on the page that begin so."""
    return window.script(
        "return [...document.querySelectorAll('[data-testid]')].map(e => e.dataset.testid)"
        ".filter(n => n.startsWith(arguments[0]))", start)


def wait_hooks(window, start, seconds=20):
    return window.wait(lambda: hooks(window, start), f"{start}…", seconds)


def hand_ins():
    """Every hand-in on disk with what identifies its content."""
    return {p: p.stat().st_mtime_ns for p in home.rglob("*.sfhandin")}


def board_row(window, concept):
    window.press("bar-teacher")
    window.press("tab-board")
    return window.text(window.hook(f"board-row-{concept}"))


def chosen(window, hook):
    """Whether a rating or an outcome stands as chosen, as a screen reader hears it."""
    element = window.hook(hook)
    return "true" in (window.attribute(element, "aria-pressed"),
                      window.attribute(element, "aria-checked"))


def answer_one(window):
    """Says how sure, fills in something, gives the answer."""
    if hooks(window, "practice-sure-"):
        window.press("practice-sure-1")
    window.wait(lambda: hooks(window, "answer-"), "the way to answer")
    choices = hooks(window, "answer-choice-")
    if choices:
        window.press(choices[0])
    for field in hooks(window, "answer-field-"):
        window.type(window.hook(field), "1")
    window.press("answer-submit")


with Window(home) as window:
    with checks.step("the first start asks who is there"):
        for name in ("start-student", "start-teacher", "start-sample"):
            window.hook(name)
        window.shot("1-first-start")

    with checks.step("the sample class opens"):
        window.press("start-sample")
        window.hook("bar-student", SAMPLE_SECONDS)
        window.shot("2-sample-class")

    with checks.step("the student's day stands there"):
        window.press("bar-student")
        window.press("tab-today")
        rates = wait_hooks(window, "rate-")
    concepts = sorted({re.fullmatch(r"rate-(.+)-[0-3]", r)[1] for r in rates})
    checks.that("each concept of the day has its four ratings",
                len(rates) == 4 * len(concepts) and concepts, rates)
    concept = concepts[0]
    before = board_row(window, concept)
    window.shot("3-board-before")

    with checks.step("the check-in is taken at the tap"):
        window.press("bar-student")
        window.press("tab-today")
        for name in concepts:
            window.press(f"rate-{name}-0")
            window.press(f"outcome-{name}-wrong")
        window.wait(lambda: all(chosen(window, f"rate-{n}-0") for n in concepts), "all chosen")
        window.shot("4-check-in")

    with checks.step("practice takes an answer and says what it makes of it"):
        window.press("tab-practice")
        wait_hooks(window, "practice-")
        words = window.text(window.find("main"))
        window.shot("5-practice")
        answer_one(window)
        window.wait(lambda: window.text(window.find("main")) != words, "feedback")
        window.shot("6-feedback")

    held = hand_ins()
    with checks.step("a hand-in is made and stands on disk"):
        window.press("tab-handin")
        window.press("hand-in-make")
        window.wait(lambda: hand_ins() != held, "a new hand-in")
        window.shot("7-hand-in")

    with checks.step("the teacher takes it in"):
        window.press("bar-teacher")
        window.press("tab-files")
        window.press("import-start")
        window.wait(lambda: window.script("return document.body.innerText") and
                    hooks(window, "import-account"), "the account", SAMPLE_SECONDS)
        window.shot("8-import")

    with checks.step("the board shows it"):
        window.press("tab-board")
        window.wait(lambda: board_row(window, concept) != before, "a changed row")
        window.shot("9-board-after")
    print(f"        {concept}\n        before: {before!r}\n        after:  {board_row(window, concept)!r}")

with Window(home) as window:
    with checks.step("after a new start the check-in is still there"):
        window.press("bar-student")
        window.press("tab-today")
        window.wait(lambda: chosen(window, f"rate-{concept}-0"), "the rating")

checks.finish()
