"""Reads reports and tables of an invented class with other programs.

`surefoot demo` makes the class. Poppler reads the pages: tagged, the paper
asked for, one page for a family, no other student's name (names are read from
the desk's SQLite file by `desk_cells`), the caution in every language. openpyxl reads the
workbook and Python's csv module, in strict mode, the CSV: same cells, numbers
as numbers, no formula. The share-safe table is compared with the ratings in
SQLite: bands in the manner of the U.S. EDFacts public files (from memory), rows
of fewer than ten withheld (NCES 2011-603), and no name anywhere. The join slips
hold every seat once, each with a code and PIN signs of its own whose check characters
python-stdnum confirms (ISO/IEC 7064 MOD 37,36), and names only where asked for.
"""

import csv
import io
import json
import os
import pathlib
import re
import sqlite3
import subprocess
import sys
import tempfile

import desk_cells
import openpyxl
from stdnum.iso7064 import mod_37_36

from checks import check, ended

SUREFOOT = os.environ.get("SUREFOOT", "target/debug/surefoot")
TODAY = "2026-11-25"
# ISO 216 and ANSI/ASME Y14.1, in points of 1/72 inch.
PAPERS = {"a4": (595.28, 841.89), "letter": (612.0, 792.0)}
SHARED = pathlib.Path(__file__).resolve().parents[2] / "shared"
LANGUAGES = [
    line["tag"] for line in json.loads((SHARED / "languages.json").read_text(encoding="utf-8"))
]
CAUTION = {"en": "not a grade and not a diagnosis", "es": "No es una calificación ni un diagnóstico"}
FAMILY_CAUTION = {
    "en": "They are not a grade and not a diagnosis",
    "es": "No es una calificación ni un diagnóstico",
}


def run(*args):
    return subprocess.run(args, check=True, capture_output=True, text=True).stdout


def one_line(text):
    return re.sub(r"\s+", " ", text)


class Desk:
    def __init__(self, folder, students, weeks, seed=3):
        folder = os.path.join(folder, f"class-of-{students}")
        os.mkdir(folder)
        plan = ("--students", str(students), "--weeks", str(weeks), "--seed", str(seed), "--today", TODAY)
        made = json.loads(run(SUREFOOT, "demo", "--dir", os.path.join(folder, "demo"), *plan, "--json"))
        self.path = made["summary"]["desk"]
        self.board = made["board"]
        self.folder = folder
        with sqlite3.connect(f"file:{self.path}?mode=ro", uri=True) as store:
            self.names = desk_cells.names(store)
            self.last = last_ratings(store)

    def report(self, of, *more, name="out"):
        out = os.path.join(self.folder, name)
        run(SUREFOOT, "report", "--desk", self.path, "--today", TODAY, "--of", of, "--out", out, *more)
        return out


def last_ratings(store):
    """The last rating of each seat on each concept, by the order of the student's taps.

    Each of these seats has one device, so its rows are in that order already.
    """
    lines = store.execute(
        "SELECT d.seat, c.concept, c.confidence FROM check_in c JOIN device d ON d.id = c.brought_by"
        " WHERE school_date <= ? AND confidence IS NOT NULL ORDER BY confidence_at",
        (TODAY,),
    )
    return {(seat, concept): confidence for seat, concept, confidence in lines}


def text_of(pdf):
    return one_line(run("pdftotext", "-raw", pdf, "-"))


def named_in(text, names):
    return [n for n in names if re.search(rf"(?<!\w){re.escape(n)}(?!\w)", text)]


def look_at_page(pdf, paper, what):
    info = run("pdfinfo", pdf)
    check(f"{what}: not tagged", re.search(r"^Tagged:\s+yes", info, re.M))
    size = tuple(map(float, re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", info).groups()))
    check(f"{what}: paper {size}", all(abs(a - b) < 0.5 for a, b in zip(size, PAPERS[paper])))
    return int(re.search(r"^Pages:\s+(\d+)", info, re.M).group(1))


def families(desk):
    for n, (seat, own) in enumerate(desk.names.items()):
        paper = ("a4", "letter")[n % 2]
        language = LANGUAGES[n // 2 % len(LANGUAGES)]
        for of in ("family", "conference"):
            what = f"{of} {seat} {paper} {language}"
            pdf = desk.report(of, "--seat", str(seat), "--paper", paper, "--lang", language)
            check(f"{what}: one page", look_at_page(pdf, paper, what) == 1)
            text = text_of(pdf)
            check(f"{what}: the name", named_in(text, [own]) == [own])
            others = [name for s, name in desk.names.items() if s != seat]
            check(f"{what}: others {named_in(text, others)}", named_in(text, others) == [])
            caution = (FAMILY_CAUTION if of == "family" else CAUTION)[language]
            check(f"{what}: the caution", caution in text)


def nameless(desk):
    for of in ("class-summary", "talk", "share-safe"):
        for language in LANGUAGES:
            pdf = desk.report(of, "--lang", language)
            look_at_page(pdf, "letter", of)
            text = text_of(pdf)
            check(f"{of} {language}: a name", named_in(text, desk.names.values()) == [])
            check(f"{of} {language}: caution", of == "talk" or CAUTION[language] in text or "no una calificación" in text)


def band_of(low, raters):
    """EDFacts manner: halves to 15, fifths to 30, tens to 60, with open ends."""
    if raters < 10:
        return None
    if raters <= 15:
        return "<50%" if 2 * low < raters else "≥50%"
    step = 20 if raters <= 30 else 10
    share = 100 * low / raters
    if share <= step:
        return f"≤{step}%"
    if share >= 100 - step:
        return f"≥{100 - step}%"
    floor = int(share // step) * step
    return f"{floor + 1 if floor == step else floor}–{floor + step - 1}%"


def wanted_band(low, raters):
    """The band a row may show: ten raters, and three counts possible even for a reader who knows how many rated."""
    band = band_of(low, raters)
    counts = [n for n in range(raters + 1) if band_of(n, raters) == band]
    return band if len(counts) >= 3 else None


def rows_of(desk, by_strand):
    """Title, low and raters of each row, from the ratings in the store."""
    taught = {r["concept"]["id"]: r["concept"] for r in desk.board["rows"] if r["phase"] != "preview"}
    counts = {
        concept: [c <= 1 for (_, at), c in desk.last.items() if at == concept] for concept in taught
    }
    if not by_strand:
        return {c: (taught[c]["title"], sum(low), len(low)) for c, low in counts.items()}
    strands = {}
    for concept, low in counts.items():
        if low:
            strands.setdefault(taught[concept]["strand"], []).append(low)
    found = {}
    for strand, lists in strands.items():
        # As many students as rated its best known concept, at the mean share, rounded.
        raters = max(map(len, lists))
        share = sum(map(sum, lists)) / sum(map(len, lists))
        found[strand] = (None, int(share * raters + 0.5), raters)
    return found


def share_table(desk, step, handed_out):
    text = run(SUREFOOT, "share-table", "--desk", desk.path, "--today", TODAY, "--json")
    table = json.loads(text)
    check("share-table: a name", named_in(text, desk.names.values()) == [])
    check(f"step {table['step']}", table["step"] == step)
    check("the audit", table["audit"]["safe"])
    check(f"release {table['release']}", table["release"]["kind"] == "allowed")
    page = text_of(desk.report("share-safe"))
    for sign in "≤≥<":
        page = page.replace(f"{sign} ", sign)
    by_strand = step == "strand_bands"
    wanted = rows_of(desk, by_strand)
    check(f"{len(table['rows'])} rows, {len(wanted)} wanted", len(wanted) == len(table["rows"]))
    withheld = 0
    for row in table["rows"]:
        key = row["strand"] if by_strand else row["concept"]["id"]
        title, low, raters = wanted[key]
        name, band, shown = f"{key} {low} of {raters}", wanted_band(low, raters), row["shown"]
        if shown["kind"] == "withheld":
            withheld += 1
            check(f"{name}: withheld", band is None)
            continue
        check(f"{name}: shown", band is not None)
        to, share = shown["to_percent"], 100 * low / raters
        fits = shown["from_percent"] <= share and (share <= to if shown["to_included"] else share < to)
        check(f"{name}: {shown}", fits)
        check(f"{name}: raters", shown["fewest_reporters"] <= raters <= (shown["most_reporters"] or 10**6))
        check(f"{name}: {band} on paper", band in page and (title is None or title in page))
    check(f"{withheld} withheld", withheld == table["audit"]["withheld"])
    with sqlite3.connect(f"file:{desk.path}?mode=ro", uri=True) as store:
        (noted,) = store.execute("SELECT count(*) FROM share_release").fetchone()
        marks = store.execute("SELECT DISTINCT place, seat_mark FROM share_release_rating").fetchall()
    check(f"{noted} tables noted as handed out", noted == handed_out)
    check(f"{len(marks)} marks", len(marks) == handed_out * len(desk.names))
    print(f"share-table: {step}, {len(table['rows'])} rows, {withheld} withheld, audit {table['audit']}")


def tables(desk):
    rows = desk.board["rows"]
    for language in LANGUAGES:
        book = openpyxl.load_workbook(desk.report("workbook", "--lang", language, name="b.xlsx"))
        board, summary = book.worksheets
        cells = [cell for sheet in book.worksheets for line in sheet.iter_rows() for cell in line]
        check(f"{language}: a formula in the workbook", all(cell.data_type != "f" for cell in cells))
        for sheet, kind in ((board, "board-csv"), (summary, "summary-csv")):
            raw = open(desk.report(kind, "--lang", language, name="t.csv"), "rb").read()
            check(f"{kind}: byte order mark", raw.startswith(b"\xef\xbb\xbf"))
            text = raw.decode("utf-8-sig")
            check(f"{kind}: lines end in CRLF", text.count("\r\n") == text.count("\n") == len(rows) + 1)
            lines = list(csv.reader(io.StringIO(text, newline=""), strict=True))
            check(f"{kind}: as many fields in each line", len({len(line) for line in lines}) == 1)
            check(f"{kind}: {len(lines)} lines", len(lines) == len(rows) + 1)
            texts = [f for line in lines for f in line if f and not re.fullmatch(r"-?\d+(\.\d+)?", f)]
            check(f"{kind}: begins like a formula", not any(f[0] in "=+-@\t\r" for f in texts))
            values = [["" if v is None else v for v in line] for line in sheet.iter_rows(values_only=True)]
            same = len(values) == len(lines) and all(
                str(v) == f or (f and not isinstance(v, str) and float(f) == float(v))
                for there, here in zip(values, lines)
                for v, f in zip(there, here)
            )
            check(f"{kind} {language}: CSV and workbook differ", same)
        for n, row in enumerate(rows, 2):
            line = [cell.value for cell in board[n]]
            check(f"{line[0]}: its row", line[0] == row["concept"]["id"])
            for place, cell in enumerate(row["passes"]):
                there = tuple(line[6 + 2 * place : 8 + 2 * place])
                check(f"{line[0]} pass {place + 1}: {there}", there == (cell["rated"], cell["needs"]))
            line = [cell.value for cell in summary[n]]
            check(f"{line[0]}: ratings {line[12:16]}", line[12:16] == row["latest"])
            results, practice = row["results"], row["practice"]
            check(f"{line[0]}: results", line[16:18] == [results["right"], results["wrong"]])
            sums = [practice["alone"], practice["with_help"], practice["wrong"]]
            check(f"{line[0]}: practice", line[18:21] == sums)
            for value, wanted in zip(line[8:11], (row["has_it"], row["low"], row["high"])):
                fits = value is None if wanted is None else abs(value - wanted) <= 0.0005 + 1e-12
                check(f"{line[0]}: {value} for {wanted}", fits)
            counts = [
                sum(1 for (_, at), c in desk.last.items() if at == row["concept"]["id"] and c == r)
                for r in range(4)
            ]
            check(f"{line[0]}: {line[12:16]} for {counts} in the store", line[12:16] == counts)


def slips(desk):
    for n, paper in enumerate(PAPERS):
        language = LANGUAGES[n % len(LANGUAGES)]
        more = ("--paper", paper, "--lang", language)
        pdf = desk.report("slips", *more)
        what = f"slips {paper} {language}"
        check(f"{what}: two or three sheets", look_at_page(pdf, paper, what) in (2, 3))
        text = text_of(pdf)
        seat = {"en": "Seat", "es": "Asiento"}[language]
        numbers = sorted(int(found) for found in re.findall(rf"· {seat} (\d+)", text))
        check(f"{what}: seats {numbers}", numbers == sorted(desk.names))
        codes = re.findall(r"(?<![\w-])(?:[0-9A-Z]{3}-){4}[0-9A-Z]{3}(?![\w-])", text)
        check(f"{what}: {len(codes)} codes", len(codes) == len(set(codes)) == len(desk.names))
        signs = re.findall(r"(?<![\w-])[0-9A-Z]{3}-[0-9A-Z]{3}(?![\w-])", text)
        check(f"{what}: {len(signs)} PIN signs", len(signs) == len(set(signs)) == len(desk.names))
        plain = [code.replace("-", "") for code in codes]
        for code in plain:
            check(f"{what}: check character of {code}", mod_37_36.is_valid(code))
        # The token is part of what the check character of the PIN signs covers.
        for pin in (one.replace("-", "") for one in signs):
            owners = [code for code in plain if mod_37_36.is_valid(code[8:14] + pin)]
            check(f"{what}: check character of {pin}", owners)
        for name in desk.names.values():
            check(f"{what}: {name} is on a slip", len(named_in(text, [name])) == 1)
        check(f"{what}: no names", named_in(text_of(desk.report("slips", "--no-names", *more)), desk.names.values()) == [])


def main():
    with tempfile.TemporaryDirectory() as folder:
        desk = Desk(folder, 24, 8)
        check("24 names", len(desk.names) == 24 and all(desk.names.values()))
        families(desk)
        nameless(desk)
        slips(desk)
        share_table(desk, "concept_bands", handed_out=3)
        tables(desk)
        # A small class early on: many concepts that fewer than ten have rated. The seed
        # is one of a class whose strands have enough of them.
        share_table(Desk(folder, 11, 2, seed=1), "strand_bands", handed_out=1)
    return ended()


if __name__ == "__main__":
    sys.exit(main())
