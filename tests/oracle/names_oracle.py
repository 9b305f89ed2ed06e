"""Reads names in many scripts from printed join slips with another program.

The test bridge makes a class with a name in each script and prints its slips. Poppler's
pdftotext gives the text, which must have each name letter by letter, and pdftoppm gives the
picture of each name: as many blots of ink as the name needs at least, and not the picture of
question marks. Fonts come from the system (Debian: fonts-dejavu-core, fonts-noto-ui-core and
fonts-wqy-microhei, 13 MB installed). Names and what is expected of their pictures are made up
here; what Arabic letters join and which Devanagari signs combine is from memory of the Unicode
Standard, chapters 9 and 12.
"""

import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile
import unicodedata
import urllib.error
import urllib.request

from checks import check, ended

TOP = pathlib.Path(__file__).resolve().parents[2]
SUREFOOT = pathlib.Path(os.environ.get("SUREFOOT", TOP / "target/debug/surefoot"))
BRIDGE = SUREFOOT.with_name("surefoot-bridge")
NAMES = {
    "Vietnamese": ["Thảo", "Ngọc Đức", "Nguyễn Ánh"],
    "Cyrillic": ["Ольга", "Юрій", "Ђорђе"],
    "Greek": ["Νίκος", "Ευαγγελία"],
    "Arabic": ["محمد", "فاطمة الزهراء"],
    "Hebrew": ["דוד", "נועה כהן"],
    "Chinese": ["李明", "陳嘉欣"],
    "Japanese": ["さくら", "田中ケン"],
    "Korean": ["김민준", "서연"],
    "Devanagari": ["अनिता", "प्रिया"],
    "Latin": ["José", "Łukasz"],
}
RIGHT_TO_LEFT = {"Arabic", "Hebrew"}
# No font has a sign for a code point that is not a character.
NO_SIGN = "Ana\U0010FFFE"
BIDI = dict.fromkeys(map(ord, "\u200e\u200f\u061c\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069"))


def run(*args):
    return subprocess.run(args, check=True, capture_output=True).stdout


class Bridge:
    def __init__(self, folder):
        self.saves = pathlib.Path(folder) / "saves"
        self.process = subprocess.Popen(
            [BRIDGE, "--dist", folder, "--data", folder, "--today", "2026-09-01",
             "--config", TOP / "src-tauri/tauri.conf.json"],
            stdout=subprocess.PIPE, text=True,
        )
        self.url = self.process.stdout.readline().strip()

    def call(self, name, **args):
        asked = urllib.request.Request(
            f"{self.url}call/{name}", data=json.dumps(args).encode(), method="POST")
        with urllib.request.urlopen(asked) as answer:
            return json.loads(answer.read())

    def stop(self):
        self.process.terminate()
        self.process.wait()


def plain(text):
    """The text in canonical form, without marks of direction and with single spaces."""
    return re.sub(r"\s+", " ", unicodedata.normalize("NFC", text.translate(BIDI))).strip()


def grey(pdf, page, box, folder):
    """The picture of a box of a page, in points, as rows of grey values."""
    x, y, wide, high = (round(at * 200 / 72) for at in box)
    out = pathlib.Path(folder) / "part"
    run("pdftoppm", "-r", "200", "-gray", "-f", str(page), "-l", str(page), "-singlefile",
        "-x", str(x), "-y", str(y), "-W", str(wide), "-H", str(high), str(pdf), str(out))
    data = out.with_suffix(".pgm").read_bytes()
    head = re.match(rb"P5\s+(\d+)\s+(\d+)\s+255\s", data)
    wide = int(head.group(1))
    pixels = data[head.end():]
    return [pixels[at:at + wide] for at in range(0, len(pixels), wide)]


def words_of(pdf):
    """Each word with its page and box, by pdftotext."""
    page, found = 0, []
    text = run("pdftotext", "-bbox", str(pdf), "-").decode()
    for line in text.splitlines():
        if "<page " in line:
            page += 1
        match = re.search(
            r'<word xMin="(.*?)" yMin="(.*?)" xMax="(.*?)" yMax="(.*?)">(.*?)</word>', line)
        if match:
            x, y, right, low = map(float, match.groups()[:4])
            found.append((page, (x, y, right - x, low - y), plain(match.group(5))))
    return found


def blots(rows):
    """How many columns of ink are apart from each other."""
    wide = len(rows[0])
    dark = [any(row[x] < 128 for row in rows) for x in range(wide)]
    return sum(dark[x] and not (x > 0 and dark[x - 1]) for x in range(wide))


def look(bridge, folder):
    names = [name for of in NAMES.values() for name in of] + [NO_SIGN]
    # Names written with their accents apart must come out the same.
    written = [unicodedata.normalize("NFD", name) if nth % 2 else name
               for nth, name in enumerate(names)]
    made = bridge.call("create_class", **{"class": {
        "title": "Room 5 (invented)", "names": written,
        "year": {"first_day": "2026-08-31", "last_day": "2027-05-07",
                 "weekdays": [1, 2, 3, 4, 5], "closures": []},
        "grades": [4], "rotation_days": 10, "concepts_a_day": 6}})
    told = bridge.call("without_font", **{"class": made["id"]})
    check(f"signs without a font are told: {told}", [one["words"] for one in told] == [NO_SIGN])
    options = {"language": "en", "paper": "letter", "roomy": True}
    printed = bridge.call("print", **{
        "class": made["id"], "report": "slips", "values": {"with_names": True}, "options": options})
    check(printed["file_name"], printed["file_name"] == "room-5--invented-join-slips.pdf")
    pdf = bridge.saves / printed["file_name"]
    if keep := os.environ.get("KEEP_PDF"):
        pathlib.Path(keep).write_bytes(pdf.read_bytes())
    text = plain(run("pdftotext", "-layout", str(pdf), "-").decode())
    raw = plain(run("pdftotext", "-raw", str(pdf), "-").decode())
    fonts = run("pdffonts", str(pdf)).decode().splitlines()[2:]
    check(f"fonts are embedded: {fonts}", all(" yes yes yes " in line for line in fonts))
    words = words_of(pdf)
    for script, of in NAMES.items():
        for name in of:
            check(f"{script}: {name} is in the text", name in text)
            for part in name.split():
                check(f"{script}: {part} is in the text as it is drawn", part in raw)
                # The list of boxes has letters as they are drawn, from left to right.
                seen = part[::-1] if script in RIGHT_TO_LEFT else part
                at = next(((page, box) for page, box, word in words if word == seen), None)
                check(f"{script}: {part} is a word of the page", at is not None)
                if at is None:
                    continue
                page, box = at
                rows = grey(pdf, page, box, folder)
                ink = sum(value < 128 for row in rows for value in row)
                check(f"{script}: {part} has ink: {ink}", ink > 40)
                count = blots(rows)
                if script in ("Vietnamese", "Cyrillic", "Greek", "Latin", "Hebrew"):
                    letters = len(part)
                    check(f"{script}: {part} has {count} blots", letters // 2 <= count <= letters + 1)
                if script == "Arabic":
                    # Joined letters make fewer blots than letters.
                    check(f"{script}: {part} is joined: {count} blots", count < len(part))
                if script == "Devanagari":
                    # A line at the top joins the whole word.
                    check(f"{script}: {part} has its line: {count} blots", count <= 3)
    one = bridge.call("print", **{
        "class": made["id"], "report": "slips", "values": {"with_names": True, "seat": 3},
        "options": options})
    alone = plain(run("pdftotext", str(bridge.saves / one["file_name"]), "-").decode())
    check("one slip is printed alone", "Nguyễn Ánh" in alone and "Thảo" not in alone)
    check(one["file_name"], one["file_name"].endswith("join-slips-seat-3.pdf"))


def main():
    with tempfile.TemporaryDirectory() as folder:
        bridge = Bridge(folder)
        try:
            look(bridge, folder)
        finally:
            bridge.stop()
    return ended()


if __name__ == "__main__":
    sys.exit(main())
