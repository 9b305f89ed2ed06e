"""Reads printed practice sheets with another program.

Poppler's pdfinfo and pdftotext open the files that `surefoot sheet` writes: a
sheet is tagged, has the paper asked for and its language's words; its exercises
are in order; its key begins on a page of its own and gives the answers of the
same seeds in order, with fractions as `3/4`. items_oracle.py checks that the answers
are right; this checks that they are on paper.
"""

import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile

from checks import check, ended

SUREFOOT = os.environ.get("SUREFOOT", "target/debug/surefoot")
# ISO 216 and ANSI/ASME Y14.1, in points of 1/72 inch.
PAPERS = {"a4": (595.28, 841.89), "letter": (612.0, 792.0)}
SHARED = pathlib.Path(__file__).resolve().parents[2] / "shared"
LANGUAGES = [
    line["tag"] for line in json.loads((SHARED / "languages.json").read_text(encoding="utf-8"))
]
KEY = {"en": "Answer key", "es": "Respuestas:"}


def run(*args):
    return subprocess.run(args, check=True, capture_output=True, text=True).stdout


def squeezed(text):
    return re.sub(r"\s+", "", text)


def items(concept, level):
    text = run(SUREFOOT, "exercises", "--concept", concept, "--level", str(level), "--count", "60")
    return [json.loads(line) for line in text.splitlines()]


def words(item, language):
    """An item's answer as the terminal gives it."""
    return item["words"][language]["answer"].replace("\n", "; ")


def expected(concept, level, count):
    """The first `count` different questions from seed 1 on."""
    chosen = []
    for item in items(concept, level):
        if all((item["prompt"], item["entry"]) != (c["prompt"], c["entry"]) for c in chosen):
            chosen.append(item)
    return chosen[:count]


def sheet(folder, concept, level, count, paper, density, language):
    out = os.path.join(folder, "sheet.pdf")
    run(
        SUREFOOT, "sheet", "--concept", concept, "--level", str(level), "--count", str(count),
        "--paper", paper, "--density", density, "--lang", language, "--out", out,
    )
    return out


def look_at(folder, concept, nth):
    level, count = nth % 3 + 1, 5
    paper = ("a4", "letter")[nth % 2]
    density = ("compact", "roomy")[nth // 2 % 2]
    language = LANGUAGES[nth // 4 % len(LANGUAGES)]
    name = f"{concept} level {level} {paper} {density} {language}"
    out = sheet(folder, concept, level, count, paper, density, language)
    info = run("pdfinfo", out)
    check(f"{name}: not tagged", re.search(r"^Tagged:\s+yes", info, re.M))
    size = re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", info)
    there = tuple(float(v) for v in size.groups())
    check(f"{name}: paper {there}", all(abs(a - b) < 0.5 for a, b in zip(there, PAPERS[paper])))
    pages = run("pdftotext", "-raw", out, "-").split("\f")
    starts = [n for n, page in enumerate(pages) if page.lstrip().startswith(KEY[language])]
    check(f"{name}: key on a page apart, found {starts}", len(starts) == 1 and starts[0] > 0)
    if not starts:
        return
    exercises = "\n".join(pages[: starts[0]])
    places = [re.search(rf"^{n}\.\s", exercises, re.M) for n in range(1, count + 1)]
    check(f"{name}: numbers of the exercises", all(places))
    # The key: number and answer, one after the other.
    key = squeezed("\n".join(pages[starts[0] :]))
    at = 0
    for n, item in enumerate(expected(concept, level, count), 1):
        answer = squeezed(words(item, language))
        found = key.find(f"{n}.{answer}", at)
        check(f"{name}: answer {n} {answer!r} in {key[at:at + 120]!r}", found >= 0)
        at = max(at, found)


def main():
    catalogue = run(SUREFOOT, "exercises", "--concept", "all", "--level", "1", "--count", "1")
    concepts = [json.loads(line)["concept"] for line in catalogue.splitlines()]
    check(f"{len(concepts)} concepts with exercises", len(concepts) >= 140)
    with tempfile.TemporaryDirectory() as folder:
        for nth, concept in enumerate(concepts):
            look_at(folder, concept, nth)
    return ended()


if __name__ == "__main__":
    sys.exit(main())
