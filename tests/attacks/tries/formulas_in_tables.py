"""Names that are formulas, markup or control codes act in tables, workbooks and prints."""

import csv
import io
import re
import zipfile

from outcome import got_through, need, stopped
from program import Refused
from school import School, Student

NAMES = [
    "=HYPERLINK(1)",
    "+1+1",
    "-2+3",
    "@SUM(1)",
    "\u202ecod.exe",
    "<b>Bo</b>",
    "a]]>b",
    "\uff1d1+1",
    "\t=1+1",
    "Cy\u0000Oko",
]

# What a spreadsheet takes for a formula at the start of a cell.
FORMULA = ("=", "+", "-", "@", "\t", "\r", "\uff1d")


def number(cell):
    return re.fullmatch(r"-?[0-9.,]+", cell)


def attack(ground):
    taken = []
    for name in NAMES:
        try:
            School(ground / str(len(taken)), names=[name])
            taken.append(name)
        except Refused:
            pass
    need("=HYPERLINK(1)" in taken, "no name like a formula can be given")
    school = School(ground / "class", names=taken)
    concepts = school.concepts()
    for seat in school.codes:
        Student(school, seat).hands_in_honestly({concepts[0]: seat % 4})
    options = {"language": "en", "paper": "letter", "roomy": True}
    made, bad = 0, []
    known = {
        "seat": {"seat": 1},
        "group": {"concept": concepts[0], "seats": [1, 2]},
        "minutes": {"minutes": 5},
        "concepts": {"concepts": concepts[:1]},
        "level": {"level": 1},
        "count": {"count": 2},
        "key": {"with_key": True},
        "names": {"with_names": True},
        "numbers": {"seed": 7},
    }
    for report in school.desk.call("reports"):
        values = {}
        for field in report["fields"]:
            values |= known.get(field["kind"], {})
        try:
            file = school.ask("print", report=report["name"], values=values, options=options)
        except Refused as refused:
            need(refused.error.get("field") == "share_table", refused)
            continue
        content = school.desk.saved(file).read_bytes()
        made += 1
        if content.startswith(b"PK"):
            with zipfile.ZipFile(io.BytesIO(content)) as book:
                sheets = {one: book.read(one) for one in book.namelist()}
            bad += [one for one, xml in sheets.items() if b"<f>" in xml or b"<b>Bo" in xml]
        elif content.startswith(b"%PDF"):
            bad += [word for word in (b"/JavaScript", b"/Launch", b"/URI") if word in content]
        else:
            rows = csv.reader(io.StringIO(content.decode("utf-8-sig")))
            cells = [cell for row in rows for cell in row]
            bad += [cell for cell in cells if cell.startswith(FORMULA) and not number(cell)]
            bad += [cell for cell in cells if "\0" in cell or "\u202e" in cell]
    need(made > 5, f"only {made} tables and prints were made")
    if bad:
        return got_through(f"{len(bad)} cells of {made} files: {ascii(bad[:3])}")
    return stopped(f"{len(taken)} of {len(NAMES)} names are taken; {made} files hold them as text")
