"""The warm-up in the real window, in every language: what is projected, text by text, and the
same exercises on the screen, on the projector and after a restart."""

import json
import pathlib
import re
import tempfile

from driver import TOP, Checks, Window

LANGUAGES = [line["tag"] for line in json.loads((TOP / "shared/languages.json").read_text(encoding="utf-8"))]
NAMES = ["Amina", "Bao", "Cosmin", "Dalia"]
NEW_CLASS = {
    "title": "Room 3",
    "names": NAMES,
    "year": {"first_day": "2020-08-17", "last_day": "2021-05-28",
             "weekdays": [1, 2, 3, 4, 5, 6, 7], "closures": []},
    "grades": [4],
    "rotation_days": 10,
    "concepts_a_day": 6,
}
# Names, seats, shares, and the class.
HARM = re.compile(r"Amina|Bao|Cosmin|Dalia|Room 3|Seat \d|Asiento \d|\d\s?%")
TEXTS = """
const walk = document.createTreeWalker(
  document.querySelector('[data-testid=projector]'), NodeFilter.SHOW_TEXT);
const found = [];
for (let at = walk.nextNode(); at; at = walk.nextNode())
  if (at.textContent.trim()) found.push(at.textContent.trim());
return found;
"""
UNWORDED = "\u27e8"

checks = Checks()
folder = tempfile.TemporaryDirectory(prefix="surefoot-window-", ignore_cleanup_errors=True)


def harmless(window, name):
    texts = window.script(TEXTS)
    bad = [text for text in texts if HARM.search(text) or UNWORDED in text]
    checks.that(f"{name}: {len(texts)} texts, none harms", len(texts) > 5 and not bad, bad)


def prompts(window, css):
    return window.script(
        "return [...document.querySelectorAll(arguments[0])]"
        ".map(e => e.innerText.replace(/\\s+/g, ' ').trim())", css)


def press(window, name):
    """Presses a button of the wall, which fills the window."""
    window.hook(name)
    window.script(f"document.querySelector('[data-testid={name}]').click()")


def opened(window):
    window.press("start-teacher")
    window.press("tab-talk")
    window.press("warm-up-open")
    window.find("[data-testid^=warm-up-swap-]")


def year_of(today):
    """A year around the computer's date, with school on every day."""
    first = int(today[:4]) - (int(today[5:7]) < 8)
    return {**NEW_CLASS["year"], "first_day": f"{first}-08-01", "last_day": f"{first + 1}-07-31"}


for language in LANGUAGES:
    home = pathlib.Path(folder.name) / language
    with Window(home) as window:
        window.find("body")
        _, start = window.call("start")
        made = {**NEW_CLASS, "year": year_of(start["today"])}
        kind, summary = window.call("create_class", {"class": made})
        checks.that(f"{language}: a class is made", kind == "ok", summary)
        window.call("save_device_settings", {**start["settings"], "language": language})
    with Window(home) as window:
        opened(window)
        at_desk = prompts(window, "[data-testid=warm-up] .what")
        checks.that(f"{language}: an exercise of each concept", 4 <= len(at_desk) <= 8, at_desk)
        window.press("warm-up-all")
        window.find("[data-testid=projector] section")
        harmless(window, f"{language}: all at once")
        press(window, "wall-answers")
        window.find("[data-testid^=wall-answer-]")
        harmless(window, f"{language}: all answers")
        window.shot(f"warm-up-all-{language}")
        press(window, "projector-close")
        window.press("warm-up-one")
        for step in range(17):
            harmless(window, f"{language}: step {step}")
            if window.attribute(window.hook("projector-next"), "disabled"):
                break
            press(window, "projector-next")
        window.shot(f"warm-up-one-{language}")
    with Window(home) as window:
        opened(window)
        again = prompts(window, "[data-testid=warm-up] .what")
        checks.that(f"{language}: the same after a restart", again == at_desk, again)
checks.finish()
