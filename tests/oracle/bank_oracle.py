"""Reads question banks and catalogues with Python's csv, xml.etree, json and fractions.

Reads the sample files and random banks by rules written here from
docs/question-bank.md, works out which answers are right, and compares with what
`surefoot bank check --json`, `bank mark` and `bank concepts --json` say.

Sources: RFC 4180 (csv); 1EdTech QTI 3.0.1 response processing templates
match_correct and map_response, and CASE 1.1 CFPackage (both from memory).
"""

import csv
import io
import itertools
import json
import os
import random
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree
import zipfile
from decimal import Decimal
from fractions import Fraction
from pathlib import Path

from checks import check, ended

ROOT = Path(__file__).resolve().parents[2]
SAMPLES = ROOT / "shared" / "samples"
LANGUAGES = [line["tag"] for line in json.loads((SAMPLES.parent / "languages.json").read_text(encoding="utf-8"))]
SUREFOOT = os.environ.get("SUREFOOT", str(ROOT / "target" / "debug" / "surefoot"))
CONCEPT = "g3-facts-multiply"


def surefoot(*args, fails=False):
    done = subprocess.run([SUREFOOT, *map(str, args)], capture_output=True, text=True)
    if not fails and done.returncode != 0:
        raise SystemExit(f"surefoot {args}: {done.stderr}")
    return done.stdout


# Answers as values, by rules of our own.


def number(text):
    """A number, fraction or mixed number as an exact value."""
    text = text.strip().replace("−", "-").replace(",", "").lstrip("$")
    sign, body = (-1, text[1:].strip()) if text.startswith("-") else (1, text)
    whole, _, rest = body.rpartition(" ")
    return sign * ((Fraction(whole) if whole else 0) + Fraction(rest))


def value(kind, text, choices):
    """The value of an answer in a table."""
    if kind in ("whole number", "decimal", "fraction", "mixed number", "money"):
        return number(text)
    if kind == "one choice":
        return {choices.index(text.strip())}
    if kind == "several choices":
        return {choices.index(part.strip()) for part in text.split("|")}
    if kind == "order":
        return [part.strip() for part in text.split("|")]
    if kind == "remainder":
        quotient, _, left = text.lower().partition("r")
        return (int(quotient), int(left or 0))
    if kind == "time":
        return tuple(map(int, text.split(":")))
    return text.strip()


def right_by_table(row):
    kind = row["kind"].strip().lower()
    choices = [part.strip() for part in row.get("choices", "").split("|") if part.strip()]
    return value(kind, row["answer"], choices)


def right_by_program(own):
    """The key that the program holds, as the same kind of value."""
    kind = own["kind"].replace("_", " ")
    if kind == "one choice":
        return {int(own["answer"])}
    if kind == "several choices":
        return {int(part) for part in own["answer"].split()}
    if kind == "order":
        return [own["choices"][int(place)]["en"] for place in own["answer"].split()]
    return value(kind, own["answer"], [])


def rows_of(text):
    """Rows of a table with the line each starts on."""
    reader = csv.reader(io.StringIO(text, newline=""))
    heading = [name.strip().lower() for name in next(reader)]
    before = reader.line_num
    for cells in reader:
        # Blank lines before a row belong to no row.
        if cells:
            yield before + 1, dict(zip(heading, cells))
        before = reader.line_num


# Responses of a student, and what is right about them.


def responses(own, rng):
    """Right and wrong responses with whether each is right."""
    kind, many = own["kind"], len(own["choices"])
    key = right_by_program(own)
    if kind == "one_choice":
        return [({"kind": "one_choice", "index": at}, {at} == key) for at in range(many)]
    if kind == "several_choices":
        sets = [list(places) for size in range(1, many + 1) for places in itertools.combinations(range(many), size)]
        return [({"kind": "several_choices", "indexes": places}, set(places) == key) for places in rng.sample(sets, min(6, len(sets)))] + [
            ({"kind": "several_choices", "indexes": sorted(key)}, True)
        ]
    if kind == "order":
        texts = [choice["en"] for choice in own["choices"]]
        orders = [list(order) for order in itertools.permutations(range(many))]
        chosen = rng.sample(orders, min(5, len(orders))) + [[texts.index(text) for text in key]]
        return [({"kind": "ordering", "order": order}, [texts[at] for at in order] == key) for order in chosen]
    if kind == "comparison":
        words = {"<": "less", "=": "equal", ">": "greater"}
        return [({"kind": "comparison", "sign": word}, sign == key) for sign, word in words.items()]
    if kind == "time":
        hour, minute = key
        return [
            ({"kind": "time", "hour": str(h), "minute": f"{m:02}", "half_day": None}, (h, m) == key)
            for h, m in [(hour, minute), (hour % 12 + 1, minute), (hour, (minute + 5) % 60)]
        ]
    if kind == "remainder":
        quotient, left = key
        return [
            ({"kind": "quotient_remainder", "quotient": str(q), "remainder": str(r)}, (q, r) == key)
            for q, r in [(quotient, left), (quotient + 1, left), (quotient, left + 1)]
        ]
    made = []
    for shift in (Fraction(0), Fraction(1), Fraction(-1, 4), Fraction(1, 10)):
        given = key + shift
        if kind == "money":
            cents = given * 100
            if cents.denominator == 1 and cents >= 0:
                made.append(({"kind": "money", "text": str(Decimal(int(cents)) / 100)}, shift == 0))
            continue
        if kind == "decimal":
            scaled = given * 10**6
            if scaled.denominator == 1:
                made.append(({"kind": "decimal", "text": str(Decimal(int(scaled)) / 10**6)}, shift == 0))
            continue
        if kind == "whole_number":
            if given.denominator == 1:
                made.append(({"kind": "whole_number", "text": str(given)}, shift == 0))
            continue
        # An equal fraction in lowest terms and one that is not; "simplest" takes the first alone.
        for by in (1, 3):
            top, bottom = given.numerator * by, given.denominator * by
            form_kept = own["form"] == "any" or (own["form"] == "simplest" and by == 1)
            if own["form"] == "mixed" and abs(top) >= bottom:
                form_kept = False
            response = {"kind": "mixed", "whole": "", "top": str(top), "bottom": str(bottom)}
            if kind == "fraction":
                response = {"kind": "fraction", "top": str(top), "bottom": str(bottom)}
            if own["form"] in ("any", "simplest"):
                made.append((response, shift == 0 and form_kept))
    return made


def mark(files, taken, rng, name, concept=CONCEPT):
    """Asks the program to mark responses and compares each verdict."""
    asked = []
    for line in taken:
        for response, right in responses(line["exercise"], rng):
            asked.append((line["id"], response, right))
    with tempfile.NamedTemporaryFile("w", suffix=".jsonl", delete=False) as out:
        for identifier, response, _ in asked:
            out.write(json.dumps({"id": identifier, "response": response}) + "\n")
    told = surefoot("bank", "mark", *files, "--concept", concept, "--responses", out.name).splitlines()
    os.unlink(out.name)
    check(f"{name}: every response is marked", len(told) == len(asked), (len(told), len(asked)))
    for (identifier, response, right), line in zip(asked, told):
        marked = json.loads(line)
        check(f"{name}: {identifier} {response}", marked.get("right") == right, (marked, right))
    return len(asked)


def compare_table(path, name, rng):
    text = Path(path).read_text(encoding="utf-8")
    found = json.loads(surefoot("bank", "check", path, "--concept", CONCEPT, "--json"))[0]
    taken = {line["line"]: line["exercise"] for line in found["taken"]}
    refused = {line["line"] for line in found["refused"]}
    for line, row in rows_of(text):
        check(f"{name}: line {line} is taken or refused", (line in taken) != (line in refused), sorted(taken) + sorted(refused))
        if line not in taken:
            continue
        own = taken[line]
        check(f"{name}: line {line} key", right_by_program(own) == right_by_table(row), (own["answer"], row["answer"]))
        check(f"{name}: line {line} question", own["question"]["en"] == row["question"].strip())
        check(f"{name}: line {line} spanish", own["question"].get("es", "") == row.get("question_es", "").strip())
        steps = [part.strip() for part in row.get("steps", "").split("|") if part.strip()]
        check(f"{name}: line {line} steps", [step["en"] for step in own["steps"]] == steps)
        wrong = [row[f"wrong_{n}"] for n in range(1, 5) if row.get(f"wrong_{n}")]
        check(f"{name}: line {line} wrong answers", len(own["wrong"]) == len(wrong))
    return mark([path], found["taken"], rng, name), refused


# Random tables.


def random_row(rng):
    kind = rng.choice(["whole number", "decimal", "fraction", "mixed number", "one choice", "several choices", "order", "money", "remainder", "comparison", "time"])
    row = {"kind": kind, "level": rng.choice(["", "1", "2", "3"]), "form": "", "choices": ""}
    row["question"] = f'Number {rng.randrange(10**9)}, "so", it\nsays' if rng.random() < 0.3 else f"Number {rng.randrange(10**9)}"
    row["question_es"] = rng.choice(["", f"Número {rng.randrange(99)}"])
    bottom = rng.randrange(2, 13)
    if kind == "whole number":
        row["answer"] = str(rng.randrange(-50, 5000))
    elif kind == "decimal":
        row["answer"] = str(Decimal(rng.randrange(1, 99999)) / 10 ** rng.randrange(1, 4))
    elif kind == "fraction":
        top = rng.randrange(1, 30)
        row["answer"] = f"{top}/{bottom}"
        if Fraction(top, bottom).denominator == bottom:
            row["form"] = rng.choice(["", "simplest"])
    elif kind == "mixed number":
        row["answer"] = f"{rng.randrange(1, 9)} {rng.randrange(1, bottom)}/{bottom}"
    elif kind == "money":
        row["answer"] = f"{rng.randrange(1, 50)}.{rng.randrange(100):02}"
    elif kind == "remainder":
        row["answer"] = f"{rng.randrange(1, 20)} r {rng.randrange(9)}"
    elif kind == "comparison":
        row["answer"] = rng.choice("<=>")
    elif kind == "time":
        row["answer"] = f"{rng.randrange(1, 13)}:{rng.randrange(60):02}"
    else:
        things = [str(n) for n in rng.sample(range(100), rng.randrange(2, 6))]
        row["choices"] = " | ".join(things)
        if kind == "one choice":
            row["answer"] = rng.choice(things)
        elif kind == "several choices":
            row["answer"] = " | ".join(rng.sample(things, rng.randrange(1, len(things) + 1)))
        else:
            row["answer"] = " | ".join(sorted(things, key=int))
            row["choices"] = rng.choice(["", row["choices"]])
    # Some lines have a fault that shows in the answer.
    row["faulty"] = rng.random() < 0.15
    if row["faulty"]:
        row["answer"] = rng.choice(["", "not an answer"])
    return row


def random_tables(rng):
    columns = ["kind", "level", "question", "question_es", "choices", "answer", "form"]
    for turn in range(6):
        rows = [random_row(rng) for _ in range(60)]
        with tempfile.NamedTemporaryFile("w", suffix=".csv", delete=False, encoding="utf-8-sig" if turn % 2 else "utf-8", newline="") as out:
            writer = csv.DictWriter(out, columns, extrasaction="ignore", delimiter=";" if turn % 3 == 2 else ",", lineterminator="\r\n" if turn % 2 else "\n")
            writer.writeheader()
            writer.writerows(rows)
        found = json.loads(surefoot("bank", "check", out.name, "--concept", CONCEPT, "--json"))[0]
        good = [row for row in rows if not row["faulty"]]
        check(f"random table {turn}: all lines without a fault are taken", len(found["taken"]) == len(good), (len(found["taken"]), len(good)))
        check(f"random table {turn}: as many are refused", len(found["refused"]) == len(rows) - len(good))
        for row, line in zip(good, found["taken"]):
            own = line["exercise"]
            check(f"random table {turn}: line {line['line']}", right_by_program(own) == right_by_table(row), (own, row))
        mark([out.name], found["taken"], rng, f"random table {turn}")
        os.unlink(out.name)


# QTI items, read with xml.etree.

NS = "{http://www.imsglobal.org/xsd/imsqtiasi_v3p0}"
QUESTIONS = ["qti-choice-interaction", "qti-text-entry-interaction", "qti-order-interaction"]


def score(declaration, chosen):
    """The points of a response by map_response."""
    mapping = declaration.find(f"{NS}qti-mapping")
    entries = {e.get("map-key"): Fraction(e.get("mapped-value")) for e in mapping.iter(f"{NS}qti-map-entry")}
    default = Fraction(mapping.get("default-value", "0"))
    total = sum((entries.get(part, default) for part in chosen), Fraction(0))
    if mapping.get("lower-bound"):
        total = max(total, Fraction(mapping.get("lower-bound")))
    if mapping.get("upper-bound"):
        total = min(total, Fraction(mapping.get("upper-bound")))
    return total


def right_by_item(root):
    """The right response of an item: a set of identifiers, a list, or a number; None when there is none of its own."""
    template = root.find(f"{NS}qti-response-processing").get("template")
    question = next(e for tag in QUESTIONS for e in root.iter(f"{NS}{tag}"))
    declaration = next(d for d in root.iter(f"{NS}qti-response-declaration") if d.get("identifier") == question.get("response-identifier"))
    correct = [v.text.strip() for v in declaration.findall(f"{NS}qti-correct-response/{NS}qti-value")]
    choices = [c.get("identifier") for c in question.iter(f"{NS}qti-simple-choice")]
    if question.tag.endswith("order-interaction"):
        return correct
    if "match_correct" in template:
        return set(correct) if choices else number(correct[0])
    if not choices:
        keys = [e.get("map-key") for e in declaration.iter(f"{NS}qti-map-entry")]
        most = max(score(declaration, [key]) for key in keys)
        best = {number(key) for key in keys if score(declaration, [key]) == most}
        return best.pop() if len(best) == 1 and most > 0 else None
    limit = int(question.get("max-choices", "0")) or len(choices)
    sets = [frozenset(s) for size in range(0, limit + 1) for s in itertools.combinations(choices, size)]
    most = max(score(declaration, s) for s in sets)
    best = [s for s in sets if score(declaration, s) == most]
    return set(best[0]) if len(best) == 1 and most > 0 else None


def compare_item(root, line, name):
    own = line["exercise"]
    key = right_by_item(root)
    question = next(e for tag in QUESTIONS for e in root.iter(f"{NS}{tag}"))
    names = {"".join(c.itertext()).strip(): c.get("identifier") for c in question.iter(f"{NS}qti-simple-choice")}
    if isinstance(key, Fraction):
        check(f"{name}: number", right_by_program(own) == key, (own["answer"], key))
        return
    # Choices with fractions differ in their figures alone.
    plain = {"".join(ch for ch in text if ch.isalnum()): identifier for text, identifier in names.items()}
    shown = [plain["".join(ch for ch in choice["en"] if ch.isalnum())] for choice in own["choices"]]
    if isinstance(key, list):
        check(f"{name}: order", [shown[int(at)] for at in own["answer"].split()] == key, (own, key))
    else:
        check(f"{name}: choices", {shown[int(at)] for at in own["answer"].split()} == key, (own, key))


def sample_items(rng):
    paths = sorted((SAMPLES / "bank" / "qti").glob("*.xml"))
    found = json.loads(surefoot("bank", "check", *paths, "--concept", CONCEPT, "--json"))
    check("every item has a report", [f["file"] for f in found] == [p.name for p in paths])
    for path, file in zip(paths, found):
        root = ElementTree.parse(path).getroot()
        if any(e.tag == f"{NS}img" for e in root.iter()):
            check(f"{path.name}: the picture is refused", file["refused"][0]["fault"]["code"] == "unknown_element")
            continue
        check(f"{path.name}: taken", len(file["taken"]) == 1, file["refused"])
        compare_item(root, file["taken"][0], path.name)
        mark([path], file["taken"], rng, path.name)
    with tempfile.TemporaryDirectory() as folder:
        package = Path(folder) / "package.zip"
        with zipfile.ZipFile(package, "w", zipfile.ZIP_DEFLATED) as out:
            out.writestr("imsmanifest.xml", "<manifest/>")
            for path in paths:
                out.write(path, f"items/{path.name}")
        zipped = json.loads(surefoot("bank", "check", package, "--concept", CONCEPT, "--json"))
        same = [[line["id"] for line in file["taken"]] for file in zipped] == [[line["id"] for line in file["taken"]] for file in found]
        check("a zip gives the same exercises as its files", same)


def random_item(rng, number_of):
    """A choice item with a random mapping."""
    choices = [chr(65 + at) for at in range(rng.randrange(2, 6))]
    entries = {choice: rng.choice(["1", "0.5", "-1", "0", "2", "-0.5"]) for choice in rng.sample(choices, rng.randrange(1, len(choices) + 1))}
    several = rng.random() < 0.7
    bounds = "".join(f' {name}="{bound}"' for name, bound in [("lower-bound", "0"), ("upper-bound", rng.choice(["1", "2", "3"]))] if rng.random() < 0.4)
    return f"""<qti-assessment-item xmlns="{NS[1:-1]}" identifier="i{number_of}" title="t">
<qti-response-declaration identifier="R" cardinality="{'multiple' if several else 'single'}" base-type="identifier">
<qti-mapping default-value="{rng.choice(['0', '-1', '-2', '0.5'])}"{bounds}>{''.join(f'<qti-map-entry map-key="{k}" mapped-value="{v}"/>' for k, v in entries.items())}</qti-mapping>
</qti-response-declaration>
<qti-item-body><qti-choice-interaction response-identifier="R" max-choices="{rng.choice([0, 0, 1, 2]) if several else 1}"><qti-prompt>Item {number_of}?</qti-prompt>
{''.join(f'<qti-simple-choice identifier="{c}">choice {c}</qti-simple-choice>' for c in choices)}
</qti-choice-interaction></qti-item-body>
<qti-response-processing template="https://purl.imsglobal.org/spec/qti/v3p0/rptemplates/map_response.xml"/>
</qti-assessment-item>"""


def random_items(rng):
    texts = [random_item(rng, n) for n in range(250)]
    taken = 0
    with tempfile.TemporaryDirectory() as folder:
        paths = []
        for place, text in enumerate(texts):
            path = Path(folder) / f"{place:03}.xml"
            path.write_text(text, encoding="utf-8")
            paths.append(path)
        found = json.loads(surefoot("bank", "check", *paths, "--concept", CONCEPT, "--json"))
        good = []
        for path, text, file in zip(paths, texts, found):
            root = ElementTree.fromstring(text)
            key = right_by_item(root)
            check(f"random item {path.name}: taken only if one response is best", (key is not None) == (len(file["taken"]) == 1), (key, file, text))
            if file["taken"] and key is not None:
                taken += 1
                compare_item(root, file["taken"][0], f"random item {path.name}")
                good.append((path, file))
        for path, file in good[:20]:
            mark([path], file["taken"], rng, path.name)
    check("enough random items have a best response", taken > 40, taken)


# Catalogues.


def sample_catalogue():
    path = SAMPLES / "catalogue" / "stream-lab.csv"
    found = json.loads(surefoot("bank", "concepts", path, "--json"))
    rows = list(rows_of(path.read_text(encoding="utf-8")))
    check("catalogue: as many drafts as lines", len(found["drafts"]) == len(rows))
    for (line, row), draft in zip(rows, found["drafts"]):
        texts = [{tag: row[name] for tag, name in (("en", part), ("es", f"{part}_es")) if row[name]} for part in ("title", "i_can")]
        same = (draft["line"], [draft["title"], draft["i_can"]], draft["strand"], draft["grade"]) == (line, texts, row["strand"], int(row["grade"]))
        check(f"catalogue: line {line}", same, draft)
    path = SAMPLES / "catalogue" / "water-studies.case.json"
    compare_package(json.loads(path.read_text(encoding="utf-8")), path, "package")


def compare_package(package, path, name):
    found = json.loads(surefoot("bank", "concepts", path, "--json", fails=True))
    by_place = {draft["at"]: draft for draft in found["drafts"]}
    refused = {line["at"].split(".")[0] for line in found["refused"]}
    seen = set()
    for place, item in enumerate(package["CFItems"]):
        at = f"CFItems[{place}]"
        statement = " ".join(item.get("fullStatement", "").split())
        # The language of the item or else of its document; that of a region is its language.
        language = (item.get("language") or package["CFDocument"].get("language") or "en").split("-")[0]
        good = bool(item.get("identifier")) and item["identifier"] not in seen and 1 <= len(statement) <= 300 and language in LANGUAGES
        seen.add(item.get("identifier"))
        check(f"{name}: {at} is a draft or refused", (at in by_place) == good and (at in refused) == (not good), (at, item))
        if at not in by_place:
            continue
        draft = by_place[at]
        check(f"{name}: {at} words", draft["i_can"] == {language: statement} and draft["codes"] == [c for c in [item.get("humanCodingScheme", "")] if c])
        levels = item.get("educationLevel", [])
        grade = int(levels[0]) if len(levels) == 1 and levels[0].isdigit() and 1 <= int(levels[0]) <= 12 else None
        check(f"{name}: {at} grade", draft["grade"] == grade, (draft["grade"], levels))
        before = [l["originNodeURI"]["identifier"] for l in package["CFAssociations"] if l["associationType"] == "precedes" and l["destinationNodeURI"]["identifier"] == item["identifier"]]
        check(f"{name}: {at} before", sorted(draft["before"]) == sorted(before))


def random_packages(rng):
    for turn in range(5):
        items, links = [], []
        for n in range(80):
            item = {"identifier": f"id-{n if rng.random() > 0.05 else 0}", "fullStatement": "word " * rng.choice([1, 5, 30, 70]), "humanCodingScheme": rng.choice(["", f"A.{n}"]), "educationLevel": rng.choice([[], ["04"], ["04", "05"], ["KG"], ["13"]]), "extra": {"nested": [1]}}
            if rng.random() < 0.05:
                item["fullStatement"] = " "
            if rng.random() < 0.3:
                item["language"] = rng.choice(["", "en", "en-GB", "es", "es-MX", "xx"])
            items.append(item)
            if n:
                links.append({"associationType": rng.choice(["isChildOf", "precedes", "isRelatedTo"]), "originNodeURI": {"identifier": f"id-{n}"}, "destinationNodeURI": {"identifier": f"id-{rng.randrange(n)}"}})
        package = {"CFDocument": {"title": f"Random {turn}", "language": rng.choice(["", "en-US", "es"])}, "CFItems": items, "CFAssociations": links}
        with tempfile.NamedTemporaryFile("w", suffix=".json", delete=False, encoding="utf-8") as out:
            json.dump(package, out)
        compare_package(package, out.name, f"random package {turn}")
        os.unlink(out.name)


def main():
    rng = random.Random(20260914)
    _, refused = compare_table(SAMPLES / "bank" / "otter-ford.csv", "otter-ford.csv", rng)
    check("otter-ford.csv: nothing is refused", not refused, refused)
    _, refused = compare_table(SAMPLES / "bank" / "with-faults.csv", "with-faults.csv", rng)
    check("with-faults.csv: the lines with faults", refused == {3, 4, 6, 7, 8, 9, 10, 11, 12, 13, 14}, refused)
    random_tables(rng)
    sample_items(rng)
    random_items(rng)
    sample_catalogue()
    random_packages(rng)
    return ended()


if __name__ == "__main__":
    sys.exit(main())
