"""The first screen and the groups in the real window, on the sample class and in every language: the
sentences, the groups that one of them opens, what is shown to the class, and what came of a
reteaching. Covered: no name; uncovered: first names at most; never a percentage of a child."""

import json
import pathlib
import re
import tempfile

from driver import TOP, Checks, Window

LANGUAGES = [line["tag"] for line in json.loads((TOP / "shared/languages.json").read_text(encoding="utf-8"))]
# Making the sample class simulates a class over weeks, with real files.
SAMPLE_SECONDS = 240
TEXTS = """
const walk = document.createTreeWalker(
  document.querySelector(arguments[0]), NodeFilter.SHOW_TEXT);
const found = [];
for (let at = walk.nextNode(); at; at = walk.nextNode())
  if (at.textContent.trim() && at.parentElement.checkVisibility()) found.push(at.textContent.trim());
return found;
"""
UNWORDED = "\u27e8"

checks = Checks()
folder = tempfile.TemporaryDirectory(prefix="surefoot-window-", ignore_cleanup_errors=True)
home = pathlib.Path(folder.name)


def texts(window, css):
    return window.script(TEXTS, css)


def harmless(window, name, css, names):
    """No text of an element has one of these names, a percentage, or words that are missing."""
    bad = re.compile("|".join([r"\d\s?%", UNWORDED, *(rf"\b{re.escape(one)}\b" for one in names)]))
    found = texts(window, css)
    harm = [text for text in found if bad.search(text)]
    checks.that(f"{name}: {len(found)} texts, none harms", len(found) > 3 and not harm, harm)


def press(window, name):
    """Presses a button that may lie in a dialog which fills the window."""
    window.hook(name)
    window.script("document.querySelector(`[data-testid=${arguments[0]}]`).click()", name)


def now(window, language):
    _, start = window.call("start")
    the_class = start["classes"][0]["id"]
    _, found = window.call("class_now", {"class": the_class})
    _, setup = window.call("class_setup", {"class": the_class})
    names = [seat["name"] for seat in setup["seats"]]
    checks.that(f"{language}: five sentences", len(found["sentences"]) == 5, found["sentences"])
    return found, names


with Window(home) as window:
    window.press("start-sample")
    window.find("[data-testid=bar-teacher]", SAMPLE_SECONDS)

for language in LANGUAGES:
    with Window(home, ["--sample"]) as window:
        window.find("[data-testid=bar-teacher]", SAMPLE_SECONDS)
        _, start = window.call("start")
        window.call("save_device_settings", {**start["settings"], "language": language, "names_covered": False})
    with Window(home, ["--sample"]) as window:
        window.press("bar-teacher", SAMPLE_SECONDS)
        window.find("[data-testid=now-sentences]")
        found, names = now(window, language)
        harmless(window, f"{language}: the sentences", "[data-testid=now-sentences]", names)
        window.shot(f"now-{language}")
        together = next(one for one in found["sentences"] if one["says"]["kind"] == "together")
        concept = together["concept"]
        with checks.step(f"{language}: groups on the concept of their sentence"):
            window.press(f"now-group-{concept['id']}")
            window.hook("groups-sum")
            first = window.text(window.hook("groups-first"))
            checks.that(f"{language}: the concept is named", concept["title"] in first, first)
            seats = {one["seat"] for one in together["says"]["students"]}
            board = window.text(window.find("main"))
            by_seat = dict(enumerate(names, 1))
            missing = [by_seat[seat] for seat in seats if by_seat[seat] not in board]
            checks.that(f"{language}: its students are there", not missing, missing)
            harmless(window, f"{language}: no share beside a name", "[data-testid=group-0]", [])
            window.shot(f"groups-{language}")
        with checks.step(f"{language}: groups shown to the class"):
            press(window, "groups-show")
            window.find("[data-testid=groups-shown] li")
            whole = [name for name in names if " " in name]
            harmless(window, f"{language}: first names at most", "[data-testid=groups-shown]", whole)
            window.shot(f"groups-wall-{language}")
            press(window, "groups-shown-close")
            window.call("save_device_settings", {**start["settings"], "language": language, "names_covered": True})
    with Window(home, ["--sample"]) as window:
        window.press("bar-teacher", SAMPLE_SECONDS)
        window.press(f"now-group-{concept['id']}")
        window.hook("groups-sum")
        harmless(window, f"{language}: covered groups", "main [data-testid=group-0]", names)
        press(window, "groups-show")
        window.find("[data-testid=groups-shown] li")
        harmless(window, f"{language}: covered on the wall", "[data-testid=groups-shown]", names)
        press(window, "groups-shown-close")
        with checks.step(f"{language}: what was taught again"):
            window.press("taught-open")
            window.find("[data-testid=taught-log] .says")
            harmless(window, f"{language}: covered verdicts", "[data-testid=taught-log]", names)
            window.shot(f"verdict-{language}")
checks.finish()
