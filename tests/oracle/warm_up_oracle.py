"""Checks the warm-up of every day of a rotation, on the screen's side and on paper.

`surefoot demo` makes an invented class, `surefoot warm-up` prints the exercises that the
projector shows. The answer of each is worked out as in items_oracle.py, from its statement
alone. Poppler reads the prints: a page has the title of each concept twice, once for each
half-sheet; the key, on a page of its own, gives the answers of the same exercises; a whole
sheet has each once. The next pass has other exercises, and the same day always the same.
"""

import datetime
import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile

from checks import check, ended
from items_oracle import fault_of

SUREFOOT = os.environ.get("SUREFOOT", "target/debug/surefoot")
TODAY = datetime.date(2026, 11, 25)
# Two passes of ten school days and more.
DAYS_AHEAD = 31
SHARED = pathlib.Path(__file__).resolve().parents[2] / "shared"
LANGUAGES = [
    line["tag"] for line in json.loads((SHARED / "languages.json").read_text(encoding="utf-8"))
]
KEY = {"en": "Answer key", "es": "Respuestas:"}
PAPERS = ("a4", "letter")


def run(*args):
    return subprocess.run(args, check=True, capture_output=True, text=True).stdout


def squeezed(text):
    return re.sub(r"\s+", "", text)


closed = []


def warm_up(desk, date):
    """The exercises of a date; none on a day without school."""
    asked = subprocess.run(
        [SUREFOOT, "warm-up", "--desk", desk, "--today", str(TODAY), "--date", str(date)],
        capture_output=True,
        text=True,
    )
    if asked.returncode:
        closed.append(date)
        check(f"{date}: why it is refused", asked.stderr.startswith("surefoot: "), asked.stderr)
        return []
    return [json.loads(line) for line in asked.stdout.splitlines()]


def printed(desk, folder, date, paper, language, *more):
    out = os.path.join(folder, "warm-up.pdf")
    run(
        SUREFOOT, "report", "--desk", desk, "--today", str(TODAY), "--of", "warm-up",
        "--date", str(date), "--paper", paper, "--lang", language, "--out", out, *more,
    )
    info = run("pdfinfo", out)
    check(f"{date} {language}: tagged", re.search(r"^Tagged:\s+yes", info, re.M))
    return run("pdftotext", "-raw", out, "-").split("\f")


def look_at_paper(desk, folder, date, items, nth, titles):
    paper, language = PAPERS[nth % 2], LANGUAGES[nth // 2 % len(LANGUAGES)]
    for halves in (True, False):
        name = f"{date} {paper} {language} {'halves' if halves else 'whole'}"
        pages = printed(desk, folder, date, paper, language, *([] if halves else ["--whole"]))
        starts = [n for n, page in enumerate(pages) if page.lstrip().startswith(KEY[language])]
        check(f"{name}: the key on a page apart, found {starts}", len(starts) == 1 and starts[0] > 0)
        if not starts:
            continue
        sheets, key = squeezed("".join(pages[: starts[0]])), squeezed("".join(pages[starts[0]:]))
        at = 0
        for item in items:
            title = squeezed(titles[language][item["concept"]])
            times = sheets.count(title)
            check(f"{name}: {title} {times} times", times >= (2 if halves else 1))
            answer = squeezed(item["words"][language]["answer"].replace("\n", "; "))
            found = key.find(answer, at)
            check(f"{name}: {answer!r} in {key[at:at + 90]!r}", found >= 0)
            at = max(at, found)


def main():
    catalogue = json.loads(run(SUREFOOT, "catalogue", "--json"))
    with tempfile.TemporaryDirectory() as folder:
        plan = ("--students", "11", "--weeks", "2", "--seed", "3", "--today", str(TODAY))
        made = json.loads(run(SUREFOOT, "demo", "--dir", os.path.join(folder, "demo"), *plan, "--json"))
        desk = made["summary"]["desk"]
        titles = {tag: {} for tag in LANGUAGES}
        for concept in catalogue:
            for tag in LANGUAGES:
                titles[tag][concept["id"]] = titles_of(concept, tag)
        before = {}
        nth = 0
        for ahead in range(DAYS_AHEAD):
            date = TODAY + datetime.timedelta(days=ahead)
            items = warm_up(desk, date)
            check(f"{date}: on every opening the same", items == warm_up(desk, date))
            for item in items:
                fault = fault_of(item)
                check(f"{date} {item['concept']} {item['level']} {item['seed']}: {fault}", fault is None)
                shown = (item["prompt"], item["entry"])
                check(f"{date} {item['concept']}: as in the pass before", before.get(item["concept"]) != shown)
                before[item["concept"]] = shown
            if items:
                look_at_paper(desk, folder, date, items, nth, titles)
                nth += 1
        check(f"{nth} school days", nth >= 20)
        # The invented class has one closure.
        weekdays = {date for date in closed if date.weekday() < 5}
        check(f"refused on weekdays: {weekdays}", len(weekdays) <= 1)
        check(f"{len(before)} concepts", len(before) >= 40)
    return ended()


def titles_of(concept, tag):
    title = concept["title"]
    return title[tag] if isinstance(title, dict) else title


if __name__ == "__main__":
    sys.exit(main())
