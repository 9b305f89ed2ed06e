#!/usr/bin/env python3
"""Reads every exercise as a careful bilingual teacher would, by rules.

Each rule is a defect that a reading of the exercises found: feedback that speaks of what
the exercise does not show, stories that cannot be, hints that give the answer away, units,
agreement, words of other countries. Each rule is first tried on an example with its defect,
and has to find it. The numbers that a story may have are listed here, apart from the generators.

    items_lint.py [--surefoot PATH] [--seeds 10] [--concept ID] [--show 2] [--table]

Every concept and level is read with each seed: 10 seeds, or 60 with FULL=1. `--table` also
prints how many different prompts each concept and level has among 100 seeds.
"""
import argparse
import collections
import json
import os
import pathlib
import re
import subprocess
import sys
from concurrent.futures import ProcessPoolExecutor
from fractions import Fraction

RULES = []


def rule(name, example):
    """Registers a rule: a function of an item that yields what is wrong with it, and an
    item, given by what differs from an empty one, in which it finds something."""

    def register(function):
        RULES.append((name, function, example))
        return function

    return register


class Read:
    """An item with its words at hand."""

    def __init__(self, item):
        self.item = item
        self.concept, self.level = item["concept"], item["level"]
        # Another kind of question about a task keeps the task inside.
        self.statement = item["statement"].get("inner", item["statement"])
        self.entry, self.answer = item["entry"], item["answer"]
        self.misconceptions = item["misconceptions"]
        if self.answer["kind"] == "two_parts":
            # The rules read the part that is typed, and its misconceptions.
            part = "first" if self.answer["second"]["kind"] == "one_choice" else "second"
            self.answer, self.entry = self.answer[part], self.entry[part]
            self.misconceptions = [{**m, "answer": m["answer"][part]} for m in self.misconceptions]
        self.en, self.es = item["words"]["en"], item["words"]["es"]
        self.prompt = self.en["prompt"]
        self.told = list(zip((m["code"] for m in self.misconceptions), self.en["misconceptions"]))
        self.drawn = [b["figure"]["drawing"] for b in item["prompt"] if b["kind"] == "figure"]
        self.shown = json.dumps(item["prompt"]) + json.dumps(item["entry"])

    def all_words(self, language):
        words = self.item["words"][language]
        yield words["prompt"]
        yield words["entry"]
        yield words["answer"]
        yield from words["hints"]
        yield from words["steps"]
        yield from words["misconceptions"]

    def sees(self, *kinds):
        return any(f'"kind": "{kind}"' in self.shown for kind in kinds)

    def has_fraction(self):
        return self.sees("fraction", "mixed", "shaded_fraction") or self.answer["kind"] in ("fraction", "mixed")

    def key(self):
        """The key as a number, or None."""
        a = self.answer
        return {
            "whole_number": lambda: Fraction(a["value"]),
            "decimal": lambda: Fraction(a["text"]),
            "fraction": lambda: Fraction(a["top"], a["bottom"]),
            "mixed": lambda: (a["whole"] + Fraction(a["top"], a["bottom"])) * (-1 if a["negative"] else 1),
            "money": lambda: Fraction(a["hundredths"], 100),
            "angle": lambda: Fraction(a["degrees"]),
        }.get(a["kind"], lambda: None)()


NUMBER = re.compile(r"(?<![\d.,/])(?:(\d+) )?(\d[\d,]*(?:\.\d+)?)(?:/(\d+))?(?![\d/])")


def numbers(text):
    """The numbers of a text without signs: whole numbers, decimals, fractions, mixed numbers."""
    found = set()
    for whole, number, bottom in NUMBER.findall(text):
        value = Fraction(number.replace(",", "").rstrip("."))
        if bottom:
            found |= {value, Fraction(bottom)}
            value = value / int(bottom) if int(bottom) else value
            found.add(value)
            if whole:
                found.add(int(whole) + value)
        else:
            found.add(value)
            if whole:
                found.add(Fraction(whole))
    return found


EMPTY_WORDS = {"prompt": "", "entry": "", "answer": "", "hints": [], "steps": [], "misconceptions": []}


def example_item(given):
    """An empty item with what is given; `en` and `es` give words."""
    item = {
        "concept": "g3-example", "level": 1, "seed": 0, "statement": {"task": "none"}, "prompt": [],
        "entry": {"kind": "none"}, "answer": {"kind": "none"}, "misconceptions": [],
    }
    item.update({k: v for k, v in given.items() if k not in ("en", "es", "codes")})
    item["words"] = {tag: EMPTY_WORDS | given.get(tag, {}) for tag in ("en", "es")}
    if "codes" in given:
        item["misconceptions"] = [c if isinstance(c, dict) else {"code": c, "answer": {"kind": "none"}} for c in given["codes"]]
        item["words"]["en"].setdefault("misconceptions", [])
    return item


def words(prompt="", told=(), hints=(), steps=(), entry="", answer=""):
    return {"prompt": prompt, "misconceptions": list(told), "hints": list(hints), "steps": list(steps), "entry": entry, "answer": answer}


def math_prompt(**expr):
    return [{"kind": "math", "expr": expr}]


# Feedback that does not fit.


@rule("feedback: names a fraction that is not there", {"codes": ["x"], "en": words("12 ÷ 3 = □", ["The fraction bar means divide. You took away."])})
def no_fraction(r):
    for code, text in r.told:
        if re.search(r"fraction bar|numerator|denominator|(top|bottom) number|\b(tops|bottoms)\b", text) and not r.has_fraction() and "fraction" not in r.prompt:
            yield f"{code}: {text}"


@rule("feedback: times without a times", {"codes": ["x"], "en": words("5 bags. Each has 4 marbles.", ["Times means multiply. You added."])})
def no_times(r):
    for code, text in r.told:
        if re.search(r"\bTimes means\b|^× means|means times", text) and "×" not in r.prompt and "times" not in r.prompt and not r.sees("product"):
            yield f"{code}: {text}"


@rule("feedback: a sign that is not there", {"codes": ["x"], "en": words("Mei has 300 grams and uses 50.", ["Look at the sign. You added."])})
def no_sign(r):
    for code, text in r.told:
        named = re.search(r"[×÷]", text)
        if re.search(r"Look at the sign|Mira el signo", text) and not re.search(rf" {named.group() if named else '[+−]'} ", r.prompt + r.en["entry"]):
            yield f"{code}: {text}"


@rule("feedback: close that are not", {"codes": ["x"], "statement": {"task": "compare", "left": 7399, "right": 963}, "en": words("7,399 ○ 963", ["They are close, but they are not the same."])})
def not_close(r):
    for code, text in r.told:
        if re.search(r"\bclose\b", text.lower()) and r.statement["task"] in ("compare", "greater_size", "greater_number"):
            yield f"{code}: {text}"


@rule("feedback: the last number is not the whole", {"codes": ["x"], "en": words("Bo read 24 pages. Di read 6 pages.", ["The last number is the whole."])})
def last_number(r):
    for code, text in r.told:
        if re.search(r"last number", text.lower()):
            shown = [Fraction(n.replace(",", "")) for n in re.findall(r"\d[\d,]*", r.prompt)]
            if not shown or shown[-1] != max(shown):
                yield f"{code}: {text}"


@rule("feedback: start at a 0 that is not there", {"codes": ["x"], "en": words("Which value comes most often?", ["Start at 0. The first jump ends at the first mark."])})
def no_zero(r):
    for code, text in r.told:
        if re.search(r"(?<!not )[Ss]tart (counting )?at 0", text):
            lines = [d for d in r.drawn if d["kind"] == "number_line"] + ([r.entry["line"]] if r.entry["kind"] == "number_line_point" else [])
            at_zero = any(line["from"]["top"] <= 0 for line in lines)
            named = re.search(r"(?<![\d.])0(?![\d.])", r.prompt) or any(d["kind"] in ("coordinate_grid", "protractor") for d in r.drawn) or r.entry["kind"] in ("angle", "coordinates")
            if not at_zero and not (named and not lines) and r.concept != "g6-quadrants":
                yield f"{code}: {text}"


@rule("feedback: money that is not there", {"codes": ["x"], "en": words("How long is the row of shells?", ["Find the cost of all of them first."])})
def no_money(r):
    for code, text in r.told:
        if re.search(r"\b(cost|dollars?|cents?)\b", text) and not re.search(r"cost|cents|dollar|\$|price|pays|debt|balance|buys", r.prompt.lower() + r.en["entry"].lower()):
            yield f"{code}: {text}"


@rule("feedback: signs where all is positive", {"codes": ["x"], "en": words("How long is the side from (1, 2) to (5, 2)?", ["Mind the signs."])})
def no_negative(r):
    for code, text in r.told:
        if re.search(r"Mind the signs|signs are misread|of the signs is misread", text) and "−" not in r.prompt and r.concept != "g6-quadrants":
            yield f"{code}: {text}"


def written_sum(a, b):
    """A sum without carrying: only the last column may have two digits, as on paper."""
    x, y = str(a)[::-1], str(b)[::-1]
    size = max(len(x), len(y))
    totals = [int(x[k] if k < len(x) else 0) + int(y[k] if k < len(y) else 0) for k in range(size)]
    return int("".join([str(totals[-1])] + [str(t % 10) for t in reversed(totals[:-1])]))


def written_product(a, b):
    totals = [int(d) * b for d in str(a)]
    return int("".join([str(totals[0])] + [str(t % 10) for t in totals[1:]]))


@rule("slip: not what a child writes", {"codes": [{"code": "carry-forgotten", "answer": {"kind": "whole_number", "value": 1966}}], "statement": {"task": "add", "numbers": [8521, 3445]}, "en": words("", [""])})
def not_written(r):
    for m in r.misconceptions:
        s = r.statement
        if m["code"] == "carry-forgotten" and s["task"] == "add" and all(isinstance(n, int) for n in s["numbers"]):
            if m["answer"]["value"] != written_sum(*s["numbers"]):
                yield f"{s['numbers']}: {m['answer']['value']}"
        if m["code"] == "carry-forgotten-times" and s["task"] == "multiply":
            if m["answer"]["value"] != written_product(*s["numbers"]):
                yield f"{s['numbers']}: {m['answer']['value']}"


@rule("feedback: parentheses that were done first", {"codes": [{"code": "brackets-not-seen", "answer": {"kind": "whole_number", "value": 282}}], "statement": {"task": "evaluate", "expression": "54 - 7 * (2 + 4)"}, "en": words("", ["Do the brackets first."])})
def done_first(r):
    found = re.fullmatch(r"(\d+) - (\d+) \* \((\d+) ([+-]) (\d+)\)", str(r.statement.get("expression")))
    if not found:
        return
    a, b, c, sign, d = found.groups()
    turned = (int(a) - int(b)) * (int(c) + int(d) if sign == "+" else int(c) - int(d))
    for m, text in zip(r.misconceptions, r.en["misconceptions"]):
        if m["answer"].get("value") == turned and re.search(r"(brackets|parentheses) first", text):
            yield text


@rule("feedback: one part that is not", {"codes": [{"code": "x", "answer": {"kind": "angle", "degrees": 50}}], "statement": {"task": "degrees_of_turn", "part": "1/2"}, "en": words("", ["That is one part. Look at the top number too."])})
def not_one_part(r):
    if r.statement["task"] == "degrees_of_turn":
        for m, text in zip(r.misconceptions, r.en["misconceptions"]):
            if "one part" in text and m["answer"]["degrees"] != 360 / int(r.statement["part"].split("/")[1]):
                yield text


@rule("feedback: another number that did not change", {"codes": ["x"], "en": words("The angles make a right angle.", ["The other number changed, so this one must change too."])})
def nothing_changed(r):
    for code, text in r.told:
        if re.search(r"[Tt]he other (number|part of the fraction) changed|other number of the fraction", text):
            if not (r.has_fraction() and "=" in r.prompt) and not any(d["kind"] in ("ratio_table", "double_number_line") for d in r.drawn):
                yield f"{code}: {text}"


@rule("feedback: needless parentheses told as left out", {"codes": [{"code": "x", "answer": {"kind": "expression", "text": "3*(4+5)"}}], "answer": {"kind": "expression", "text": "3*4+5"}, "en": words("", ["Without brackets, times comes first. Put brackets where they are needed."])})
def needless(r):
    if r.answer["kind"] == "expression" and "(" not in r.answer["text"]:
        for m, text in zip(r.misconceptions, r.en["misconceptions"]):
            if "(" in m["answer"].get("text", "") and re.search(r"(Put|left out).*(brackets|parentheses)|(brackets|parentheses).*(left out|needed)\b", text):
                yield text


@rule("feedback: less than 1 for a factor that is not", {"codes": ["x"], "statement": {"task": "product_against_factor", "factor": "3/3"}, "en": words("", ["Times a number less than 1 makes a number smaller."])})
def not_below_one(r):
    if "factor" in r.statement and "/" in str(r.statement["factor"]):
        for code, text in r.told:
            if re.search(r"^Times a number less than 1|factor is less than 1", text) and Fraction(r.statement["factor"]) >= 1:
                yield f"{code}: {text}"
            if "A fraction can be more than 1" in text and Fraction(r.statement["factor"]) <= 1:
                yield f"{code}: {text}"


@rule("help: quotes a word that the exercise does not have", {"en": words("One batch needs 2 cups of oats. Uma makes 3 batches.", hints=['Here "of" means times.'])})
def quoted(r):
    for text in r.en["hints"] + r.en["misconceptions"] + r.en["steps"]:
        for word in re.findall(r'"([^"]+)"', text):
            if word == "of":
                if not re.search(r"\d/\d of (it|that|the|a)\b", r.prompt):
                    yield text
            elif word.lower() not in (r.prompt + " " + r.en["entry"]).lower():
                yield text


# Stories that cannot be, and numbers nobody believes.


def value(text):
    parts = text.replace(",", "").replace("−", "-").split()
    return sum((Fraction(p) for p in parts), Fraction(0))


N = r"(−?[\d,]+(?:\.\d+)?(?: \d+/\d+)?|\d+/\d+)"
# What a number in a sentence may be: sentence, least, greatest.
PLAUSIBLE = [
    (rf"It is {N} degrees? below", 1, 60), (rf"It is {N} degrees? above", 1, 120),
    (rf"diver is (?:at )?{N} f", -400, 400), (rf"hut is {N} f", 20, 14500), (rf"(?:lift|elevator) is {N} ", 1, 60),
    (rf"(?:lift|elevator) is at {N}\b", -10, 60), (rf"thermometer shows {N}", -60, 120),
    (rf"{N}% of (?:a|the) (?:school|tank)", 0, 100), (rf"are {N}% of the", 0, 100),
    (rf"walk is {N} k", 1, 40), (rf"walk is {N} mi", Fraction(1, 4), 25), (rf"be over {N} inches tall", 36, 60),
    (rf"be {N} years old or", 5, 21), (rf"may hold {N} pounds or", 5, 70),
    (rf"bush is {N} f", 2, 10), (rf"tree is {N} f", 6, 120), (rf"ribbon is {N} c", 3, 200), (rf"tank holds {N} l", 20, 2000),
    (rf"garden is {N} by \d+ (?:in|inches)\b", 1, 0), (rf"garden is {N} by \d+ (?:cm|centimeters)\b", 1, 0),
    (rf"rug is {N} by \d+ (?:cm|centimeters)\b", 30, 400), (rf"wall is {N} by \d+ (?:cm|centimeters|in|inches)\b", 1, 0),
    (rf"hours and {N} minutes", 1, 59), (rf"card is {N} by \d+ inches", 1, 8), (rf"fill {N} glasses", 1, 0),
    (rf"has {N} mL\b", 50, 3000), (rf"It was (?:warmer|colder) than {N} deg", -60, 110),
]


@rule("story: a number nobody believes", {"en": words("It is 1,374 degrees below zero.")})
def unbelievable(r):
    for sentence, least, most in PLAUSIBLE:
        for found in re.findall(sentence, r.prompt):
            if not least <= value(found) <= most:
                yield f"{found} in {r.prompt!r}"
    # Rates by what they are of: dollars an hour, cents a pen, speed of a car, price of rice.
    s = r.statement
    if "amount" in s and "for" in s:
        rate = Fraction(str(s["amount"])) / Fraction(str(s["for"]))
        for sentence, least, most in (
            (r"hours? of work", 7, 60), (r"pens cost", 20, 500), (r"drives", 40, 120), (r"rides", 8, 30),
            (r"rice cost", 1, 10), (r"out of a faucet", 2, 30), (r"pump moves", 5, 200),
        ):
            if re.search(sentence, r.prompt) and not least <= rate <= most:
                yield f"{rate} in {r.prompt!r}"
    if re.search(r"of a cup|cups? of milk", r.prompt):
        for bottom in re.findall(r"\d/(\d+)", r.prompt):
            if int(bottom) not in (2, 3, 4, 6, 8):
                yield f"cup in parts of {bottom}: {r.prompt!r}"


@rule("story: more than the whole", {"statement": {"task": "join_parts", "one": "6/10", "two": "7/10"}, "en": words("Ivo ate 6/10 of a pie. Later, Ivo ate 7/10 of the same pie.")})
def more_than_whole(r):
    s = r.statement
    if s["task"] == "join_parts" and re.search(r"same|of the (book|fence|pan|tank|garden)", r.prompt):
        if Fraction(s["one"]) + Fraction(s["two"]) > 1:
            yield r.prompt
    if s["task"] == "whole_from_percent" and s["percent"] > 100 and re.search(r"school|tank|class|book", r.prompt):
        yield r.prompt


# English.

MANY = "weeks|days|hours|minutes|seconds|cups|dollars|cents|miles|inches|feet|yards|pounds|ounces|meters|centimeters|millimeters|kilometers|grams|kilograms|liters|milliliters|pints|quarts|gallons|units|degrees|rows|parts|groups|pages|students|boxes|bags"


@rule("English: one with a plural", {"en": words("1 weeks = □ days")})
def one_many(r):
    for text in r.all_words("en"):
        for found in re.findall(rf"(?<![\d.,/:−+×÷=] )(?<![\d.,/:−\-(])\b1 (?:{MANY})\b", text):
            yield f"{found} in {text!r}"


@rule("English: a part with a plural", {"en": words("A path is 1/2 miles long.")})
def part_many(r):
    for text in r.all_words("en"):
        for top, bottom, unit in re.findall(rf"(?<!\d )(?<![\d.,/])(\d+)/(\d+) ({MANY})\b", text):
            if int(top) <= int(bottom) and unit not in ("parts", "groups", "rows", "bags", "boxes"):
                yield f"{top}/{bottom} {unit} in {text!r}"


@rule("English: a mixed number of a unit", {"en": words("has 1 1/2 of a pound of nuts")})
def mixed_of(r):
    for text in r.all_words("en"):
        if re.search(r"\d \d+/\d+ of an? (mile|pound|yard|cup|pint|hour|foot|gallon)", text):
            yield text


@rule("English: a doubled word", {"en": words("What is the perimeter in in?")})
def doubled(r):
    for text in r.all_words("en"):
        if re.search(r"\b(in|is|the|of|a|and) \1\b", text):
            yield text


@rule("English: not the word of a school in the United States", {"en": words("A lift is 3 steps below the ground.")})
def not_american(r):
    for text in r.all_words("en"):
        for found in re.findall(r"\b(brackets?|lift|notes|top numbers?|bottom numbers?|tops|bottoms|just (?:two|one|\d+)|centimetres?|metres?|litres?|film|tap|fields|[Oo]pen(?:ed)? (?:one|a) whole)\b", text):
            yield f"{found} in {text!r}"
        if re.search(r"[Dd]ot plot", text) and r.concept[1] in "345":
            yield f"dot plot in {text!r}"


@rule("English: as many, without as what", {"en": words("If they have as many digits, look from the left.")})
def as_many(r):
    for text in r.all_words("en"):
        for found in re.finditer(r"(?<!times )(?<!tenth )\bas (many|much|far|long|large|high|tall)\b(?![^.?!]*\bas\b)", text):
            yield f"{found.group()!r} in {text!r}"


PEOPLE = "Amara|Bruno|Chidi|Dana|Elif|Farid|Goran|Hana|Ivo|Jaya|Kofi|Lucía|Mei|Nadia|Omar|Priya|Quinn|Rosa|Sami|Tala|Uma|Viktor|Yara|Zoe"


@rule("English: a thing of a person", {"en": words("The plant of Mei is 1/2 foot tall.")})
def of_person(r):
    for text in r.all_words("en"):
        if re.search(rf"\b[Tt]he [a-z]+ of ({PEOPLE})\b", text):
            yield text


SIGNS = r"mm|cm|km|kg|mL|lb|lbs|oz|gal|qt|pt|yd|ft|mi|min|pulg|ct"


@rule("units: a sign instead of a word", {"en": words("How many cm are left?")})
def unit_sign(r):
    for language in ("en", "es"):
        for text in r.all_words(language):
            signs = SIGNS if language == "en" else SIGNS.replace("|mi|", "|")
            for found in re.findall(rf"(?<![A-Za-zÀ-ÿ])(?:{signs})(?![A-Za-zÀ-ÿ'’])|(?<=\d )(?:m|g|L|h|s|in)(?![A-Za-z'’/])(?= |\.|,|$|\n|\))", text):
                if found == "in" and not re.search(r"\d in(?=[.,?)\n]|$)|How many in\b", text):
                    continue
                yield f"{found} in {text!r}"
                break


# Spanish.

SPANISH = [
    ("a la 1, not a las 1", r"\b[Aa] las 1[: ]|[Ss]on las 1:"),
    ("a place by its name", r"la unidad de [\d,]+"),
    ("cuántas veces", r"¿Cuántas veces [\d.,]+ es "),
    ("veces más", r"\bveces más\b"),
    ("cuántos before a feminine or a sign", r"¿Cuántos (libras|pulgadas|millas|yardas|onzas|tazas|pintas|horas|semanas|unidades|lb|pulg|mi|yd|oz)\b"),
    ("a mixed number with de", r"\d \d+/\d+ de (milla|libra|taza|yarda|hora|pie|pinta|galón)"),
    ("a las n horas", r"a las \d+ (horas|semanas)"),
    ("article before a percentage", r"\b(son|es) [\d.,]+%"),
    ("one term: máximo común divisor", r"máximo factor común"),
    ("the answer in the name", r"diferencia entre (cuartiles|el mayor)"),
    ("phrases that are not Spanish", r"Solo justo|No cada lado|no hacen nada|no es por el exponente|Hizo más calor que|dieces|le quedan\?"),
    ("masculine only", r"\bestar seguro\b"),
    ("y before the sound i", r"\by (i|hi)(?!e)\w"),
    ("o before the sound o", r"\bo (o|ho)\w"),
    ("contraction", r"\b(de|a) el (?!\d)"),
    ("numerador y denominador", r"número (?:de |mayor |menor )?(?:arriba|abajo)\b|\bAbajo sigue"),
    ("as many, not the same ones", r"las mismas cifras|los mismos lugares"),
    ("one shaded", r"\b1 (?:sombreadas|filas están|columnas)\b"),
    ("one with a plural", r"(?<![\d.,/:+−×÷=] )(?<![\d.,/:−\-(])\b1 (semanas|horas|minutos|días|tazas|millas|libras|pulgadas|pies|yardas|metros|litros|gramos|dólares|centavos|partes|veces|unidades)\b"),
]


@rule("Spanish: a rule of grammar or terms", {"es": words("Un paseo empieza a las 1:55.")})
def spanish(r):
    for text in r.all_words("es"):
        for name, pattern in SPANISH:
            found = re.search(pattern, text)
            if found:
                yield f"{name}: {found.group()!r} in {text!r}"


@rule("Spanish: y or o as a letter", {"entry": {"kind": "expression", "letters": ["y"]}})
def spanish_letters(r):
    for letter in ("y", "o", "e", "u", "a"):
        if letter in ("y", "o", "e", "u") and letter in r.entry.get("letters", []):
            yield f"letter {letter}"
    if r.sees("variable") and re.search(r'"kind": "variable", "name": "[youe]"', r.shown):
        yield "a letter of the prompt"


# What is shown as it was typed, who speaks, and numbers that lost their sense.


@rule("answer: as it was typed", {"en": words("Amara answers this:\n11*(3+8)")})
def as_typed(r):
    for language in ("en", "es"):
        for text in r.all_words(language):
            found = re.search(r"[\d)][*+<>=-][\d(a-z]|\b[a-z][*+<>=][\d(a-z-]|\b[a-z]/\d", text)
            if found:
                yield f"{found.group()!r} in {text!r}"


@rule("story: somebody of the story answers it", {"en": words("Chidi stops at 4/6. Put a point there.\nChidi answers this:\n2/3")})
def speaks_of_themselves(r):
    for found in re.finditer(rf"({PEOPLE}) answers this|answer that ({PEOPLE}) gives|({PEOPLE}) says the answer", r.prompt):
        name = next(filter(None, found.groups()))
        if re.search(rf"\b{name}\b", r.prompt[: found.start()]):
            yield f"{name} in {r.prompt!r}"


@rule("feedback: both sides of what has none", {"codes": ["x"], "en": words("One balance is −15 dollars. Another is −15 dollars.", ["Work out both sides. They have the same value."])})
def no_sides(r):
    for code, text in r.told:
        if "both sides" in text and "○" not in r.prompt and "=" not in r.prompt + r.en["entry"]:
            yield f"{code}: {text}"


@rule("story: parts in which nobody counts or measures", {"en": words("Viktor buys 2 1/7 bags.")})
def no_such_parts(r):
    # Who walks or answers something may be wrong: only the story itself is read.
    story = re.split(rf"(?:{PEOPLE}) answers this|answer that (?:{PEOPLE}) gives|(?:{PEOPLE}) says the answer", r.prompt)[0]
    for bottom in re.findall(r"\d \d+/(\d+) (?:bags|boards|trips|batches)\b", story):
        if int(bottom) not in (2, 3, 4):
            yield f"parts of {bottom}: {r.prompt!r}"
    for bottom in re.findall(r"\d/(\d+) of an? (?:yard|mile|pound|hour|gallon|foot|pint|kilogram)\b", story):
        if int(bottom) not in (2, 3, 4, 5, 6, 8, 10, 12):
            yield f"parts of {bottom}: {r.prompt!r}"


@rule("grade: boxes take denominators of a later grade", {"statement": {"task": "fill_boxes", "sentence": "(6/8) = (_/_)", "least": 7, "greatest": 32}})
def later_denominators(r):
    s = r.item["statement"]
    if r.concept[1] == "3" and s["task"] == "fill_boxes" and "_/_" in s["sentence"] and s.get("greatest", 0) > 8:
        yield f"up to {s['greatest']}: {s['sentence']}"


@rule("grade: parentheses left out of the question", {"concept": "g5-brackets", "statement": {"task": "missing_number", "sentence": "31 - _ = 7"}})
def lost_parentheses(r):
    s = r.item["statement"]
    if r.concept == "g5-brackets" and s["task"] == "missing_number":
        yield s["sentence"]


@rule("steps: nothing changes", {"en": words("", steps=["Left: 6/12 = 6/12."])})
def nothing_happens(r):
    for text in r.en["steps"]:
        if re.search(r"(?:^|: )([\d/ ]+) = \1\.?$", text):
            yield text


@rule("help: zeros where no place is empty", {"en": words("12.9 − 7.7 = □", hints=["Fill empty places with zeros: 12.9 − 7.7."])})
def no_empty_place(r):
    for text in r.en["hints"]:
        found = re.search(r"Fill empty places with zeros: (.*)\.$", text)
        if found and found.group(1) in r.prompt:
            yield text


@rule("slip: a quotient that is none", {"codes": [{"code": "divided-instead-of-multiplied", "answer": {"kind": "whole_number", "value": 1}}], "statement": {"task": "solve_for_x", "equation": "x / 6 = 9"}, "en": words("", [""])})
def no_quotient(r):
    found = re.fullmatch(r"x / (\d+) = (\d+)", str(r.statement.get("equation")))
    for m in r.misconceptions:
        if found and m["code"] == "divided-instead-of-multiplied":
            a, b = sorted(map(int, found.groups()))
            if a * m["answer"].get("value", 0) != b:
                yield f"{r.statement['equation']}: {m['answer']}"


# A mistake is named, and the name has to be true of the answer, alone of the two.

# Names that say the same, or of which one is a case of the other.
SAID_ALIKE = {
    frozenset(pair.split())
    for pair in """
brackets-left-out operations-swapped
compared-bottoms-only compared-tops-only
compared-sizes-without-signs negatives-ordered-by-size
decimal-point-as-in-adding decimal-point-misplaced
decimal-point-left-out decimal-point-misplaced
decimal-point-misplaced moved-point-in-divisor-only
fact-one-off fact-one-short
fact-question-as-statistical one-answer-question-as-statistical
factors-for-multiples factors-with-multiples
factors-with-multiples multiples-for-factors
first-amount-as-answer used-one-only
multiples-for-factors only-one-factor-found
multiplied-instead-of-divided multiplied-instead-of-shared
not-the-least-multiple product-for-least-multiple
odd-means-prime one-taken-as-prime
odd-means-prime two-left-out-of-primes
one-zero-left-out zeros-left-out
place-gap-off-by-one place-gap-too-many
place-gap-off-by-one zeros-left-out
rounded-down rounded-to-larger-place
rounded-down rounded-to-other-place
rounded-to-larger-place rounded-up
rounded-to-other-place rounded-up
saw-a-tail-in-even-data tail-on-the-wrong-side
second-amount-as-answer used-one-only
wrong-operation-for-words wrong-sign-for-words
""".strip().splitlines()
}


@rule("which mistake: both names are true", {"statement": {"task": "name_the_misconception", "misconceptions": ["odd-means-prime", "one-taken-as-prime"]}})
def both_true(r):
    s = r.item["statement"]
    if s["task"] == "name_the_misconception" and frozenset(s["misconceptions"]) in SAID_ALIKE:
        yield " and ".join(s["misconceptions"])


@rule("slip: a tail on the wrong side of what has none", {"codes": ["tail-on-the-wrong-side"], "statement": {"task": "plot_shape", "dots": [2, 3, 7, 3, 2]}, "en": words("", [""])})
def no_tail(r):
    dots = r.statement.get("dots")
    if r.statement["task"] == "plot_shape" and dots == dots[::-1]:
        for code, _ in r.told:
            if code == "tail-on-the-wrong-side":
                yield f"{dots}: {code}"


@rule("slip: not the largest is left out", {"codes": [{"code": "largest-multiple-left-out", "answer": {"kind": "several_choices", "indexes": [0, 1]}}], "statement": {"task": "which_are_multiples", "number": 5, "choices": [45, 5, 15]}, "en": words("", [""])})
def not_the_largest(r):
    s = r.statement
    if s["task"] == "which_are_multiples":
        right = {n for n in s["choices"] if n % s["number"] == 0}
        for m in r.misconceptions:
            if m["code"] == "largest-multiple-left-out":
                chosen = {s["choices"][k] for k in m["answer"]["indexes"]}
                if chosen != right - {max(right)}:
                    yield f"{s['choices']}: {sorted(chosen)}"


@rule("slip: more than one factor, or a multiple", {"codes": [{"code": "only-one-factor-found", "answer": {"kind": "several_choices", "indexes": [0]}}], "statement": {"task": "which_are_factors", "number": 28, "choices": [28, 4, 7]}, "en": words("", [""])})
def itself_as_factor(r):
    s = r.statement
    for m in r.misconceptions:
        if s["task"] == "which_are_factors" and m["code"] == "only-one-factor-found":
            if [s["choices"][k] for k in m["answer"]["indexes"]] == [s["number"]]:
                yield f"{s['number']} as a factor of itself"


def places(text):
    return len(str(text).partition(".")[2])


@rule("feedback: another place than the one used", {"codes": [{"code": "x", "answer": {"kind": "decimal", "text": "58"}}], "statement": {"task": "round", "number": "57.89", "place": "tenth"}, "answer": {"kind": "decimal", "text": "57.9"}, "en": words("", ["Look at the place you round to. You used a smaller place."])})
def other_place_than_used(r):
    if r.statement["task"] != "round" or r.answer["kind"] != "decimal":
        return
    asked = {"whole": 0, "tenth": 1, "hundredth": 2}.get(r.statement["place"])
    for m, text in zip(r.misconceptions, r.en["misconceptions"]):
        said = re.search(r"You used a (smaller|larger) place", text)
        if asked is None or not said:
            continue
        number, given = Fraction(r.statement["number"]), Fraction(m["answer"].get("text", m["answer"].get("value", 0)))
        finer = any((given * 10**k).denominator == 1 and abs(given - number) * 10**k * 2 <= 1 for k in range(asked + 1, 4))
        if given == number or finer != (said.group(1) == "smaller"):
            yield f"{r.statement['number']} to the {r.statement['place']}, {given}: {text}"


@rule("feedback: zeros left out of what has one more", {"codes": [{"code": "zeros-left-out", "answer": {"kind": "decimal", "text": "2.019"}}], "answer": {"kind": "decimal", "text": "2.19"}, "en": words("", [""])})
def zero_put_in(r):
    for m in r.misconceptions:
        if m["code"] == "zeros-left-out" and r.answer["kind"] == m["answer"]["kind"] == "decimal":
            if places(m["answer"]["text"]) >= places(r.answer["text"]):
                yield f"{r.answer['text']}: {m['answer']['text']}"


@rule("feedback: the fraction of a whole number", {"codes": ["x"], "en": words("9 − 7 1/6 = □", ["The first fraction is too small. Trade one whole."])})
def whole_has_no_fraction(r):
    for code, text in r.told:
        if "first fraction" in text and re.search(r"(?<![\d/,.] )(?<![\d/,.])\d+ − (\d+ )?\d+/\d+", r.prompt):
            yield f"{code}: {text}"


@rule("feedback: added, where the numbers are smaller", {"codes": [{"code": "same-difference", "answer": {"kind": "whole_number", "value": 1}}], "statement": {"task": "equal_top", "fraction": "3/4", "given": 2}, "en": words("", ["Adding the same number to both does not keep the size."])})
def subtracted(r):
    s = r.statement
    for m in r.misconceptions:
        if m["code"] != "same-difference" or not re.fullmatch(r"\d+/\d+", str(s.get("fraction"))):
            continue
        top, bottom = map(int, s["fraction"].split("/"))
        if s["task"] == "equal_top" and s["given"] < bottom or s["task"] == "equal_bottom" and s["given"] < top:
            yield f"{s['fraction']}, {s['given']}"
        if s["task"] == "which_equal_to":
            for k in m["answer"]["indexes"]:
                if int(s["choices"][k].split("/")[1]) < bottom:
                    yield f"{s['fraction']}, {s['choices'][k]}"


@rule("feedback: a sign for what was not multiplied", {"codes": [{"code": "wrong-sign-for-words", "answer": {"kind": "expression", "text": "k+21"}}], "answer": {"kind": "expression", "text": "7(k+3)"}, "en": words("", ["Check the sign you chose."])})
def sign_of_another(r):
    for m in r.misconceptions:
        if m["code"] == "wrong-sign-for-words" and r.answer["kind"] == "expression":
            swap = str.maketrans("+-", "-+")
            if m["answer"]["text"].translate(swap) != r.answer["text"]:
                yield f"{r.answer['text']}: {m['answer']['text']}"


@rule("slip: another pair of strokes", {"codes": [{"code": "ray-and-line-mixed-up", "answer": {"kind": "one_choice", "index": 1}}], "statement": {"task": "stroke_kind", "ends": 2}, "en": words("", [""])})
def other_strokes(r):
    if r.statement["task"] == "stroke_kind":
        names = ["segment", "ray", "line"]
        for m in r.misconceptions:
            pair = {names[2 - r.statement["ends"]], names[m["answer"]["index"]]}
            if not all(name in m["code"] for name in pair):
                yield f"{sorted(pair)}: {m['code']}"


@rule("slip: none of the chosen has the property", {"codes": [{"code": "wider-family-property-forgotten", "answer": {"kind": "several_choices", "indexes": [0]}}], "answer": {"kind": "several_choices", "indexes": [1]}, "statement": {"task": "families_with"}, "en": words("", [""])})
def not_part_of_key(r):
    for m in r.misconceptions:
        if m["code"] == "wider-family-property-forgotten" and not set(m["answer"]["indexes"]) < set(r.answer["indexes"]):
            yield f"{m['answer']['indexes']}, key {r.answer['indexes']}"


@rule("answer: two choices are right", {"statement": {"task": "name_parts", "of": "fronts"}, "en": words("", entry="( Factors | Terms | Coefficients )")})
def coefficients_are_factors(r):
    if r.statement["task"] == "name_parts" and r.statement["of"] == "fronts" and "Factors" in r.en["entry"]:
        yield r.en["entry"]


# Help.


@rule("hint: a fraction that is the answer", {"statement": {"task": "part_of_turn", "degrees": 225}, "answer": {"kind": "fraction", "top": 5, "bottom": 8}, "en": words("What part of a turn is 225 degrees?", hints=["Write 225/360 and make it simpler."])})
def fraction_given_away(r):
    if r.statement["task"] in ("part_of_turn", "share_equally") and r.answer["kind"] in ("fraction", "mixed"):
        for hint in r.en["hints"]:
            for top, bottom in re.findall(r"(\d+)/(\d+)", hint):
                if Fraction(int(top), int(bottom)) == r.key():
                    yield hint


@rule("hint: shows that both are equal", {"answer": {"kind": "comparison", "sign": "equal"}, "en": words("3.0 ○ 3.00", hints=["Write the same number of places in both: 3.00 and 3.00."])})
def shows_equal(r):
    if r.answer["kind"] == "comparison":
        for hint in r.en["hints"]:
            found = re.search(r": ([\d.,]+) and ([\d.,]+?)\.?$", hint)
            if found and found.group(1) == found.group(2):
                yield hint




@rule("hint: gives the answer away", {"answer": {"kind": "whole_number", "value": 90}, "en": words("5 × □ = 450", hints=["90 is 9 tens."])})
def given_away(r):
    key = r.key()
    shown = numbers(r.prompt) | numbers(r.en["entry"])
    if key is None or abs(key) in shown or abs(key) <= 1:
        return
    # Rounding: one of the two ends is the answer, and both are drawn.
    if r.statement["task"] == "round":
        return
    for at, hint in enumerate(r.en["hints"]):
        # The words; what a picture states is checked apart.
        said = numbers(re.sub(r"\[[^\]]*\]", "", hint))
        if abs(key) in said:
            yield f"hint {at + 1}: {hint!r}, answer {key}"


STEP = re.compile(r"(\d[\d,]*(?:\.\d+)?(?:/\d+)?) ([×÷+−]) (\d[\d,]*(?:\.\d+)?(?:/\d+)?)")
RESULTS = {"×": lambda a, b: a * b, "÷": lambda a, b: a / b if b else None, "+": lambda a, b: a + b, "−": lambda a, b: a - b}
# First hints of other kinds of question: they name a step that the student is to judge.
OF_ANOTHER_QUESTION = ("Find your own answer", "Think of easy numbers")


@rule("hint: the first is one step from the answer", {"answer": {"kind": "whole_number", "value": 90}, "en": words("A row has some trees. There are two rows.", hints=["Work out 15 × 6."])})
def one_step_away(r):
    key, hints = r.key(), [h for h in r.en["hints"] if not h.startswith(OF_ANOTHER_QUESTION)]
    if key is None or not hints:
        return
    for a, sign, b in STEP.findall(re.sub(r"\[[^\]]*\]", "", hints[0])):
        result = RESULTS[sign](*(Fraction(n.replace(",", "")) for n in (a, b)))
        if result == key and f"{a} {sign} {b}" not in r.prompt:
            yield f"hint 1: {hints[0]!r}, answer {key}"


@rule("hint: a picture that states the answer", {"answer": {"kind": "whole_number", "value": 6}, "en": words("24 chairs are put in 4 rows.", hints=["[Dots in 4 rows, 6 in each row.]"])})
def pictured(r):
    key = r.key()
    if key is None or key in numbers(r.prompt) or key <= 1:
        return
    for hint in r.en["hints"]:
        for alt in re.findall(r"\[(Dots[^\]]*|Unit squares[^\]]*|Base-ten[^\]]*)\]", hint):
            if key in numbers(alt):
                yield alt


@rule("steps: division without taking away", {"statement": {"task": "divide_with_remainder", "total": 97, "by": 4}, "concept": "g4-divide-one-digit", "en": words("", steps=["2 × 4 = 8", "4 × 4 = 16"])})
def no_taking_away(r):
    if r.concept in ("g4-divide-one-digit", "g5-divide-two-digit", "g6-divide-multi-digit"):
        # Lines of a method of their own, and estimates, need no steps of division.
        other = r.item["statement"]["task"] in ("closest_estimate", "wrong_line")
        if not other and r.statement["task"] in ("divide_with_remainder", "divide") and not any("−" in s or "take away" in s for s in r.en["steps"]):
            yield "steps " + " / ".join(r.en["steps"])


@rule("steps: a number from nowhere", {"concept": "g3-scaled-graphs", "en": words("[Bars with heights 10, 20, 30.]", steps=["apples: 20", "pears: 10", "20 + 25 − 10 = 35"])})
def from_nowhere(r):
    known = numbers(r.prompt) | numbers(r.en["entry"])
    for b in r.item["prompt"]:
        if b["kind"] == "figure":
            known |= numbers(json.dumps(b))
    if r.concept in ("g3-scaled-graphs",):
        if r.en["steps"]:
            for step in r.en["steps"][:-1]:
                known |= numbers(step)
            left = r.en["steps"][-1].split("=")[0]
            for n in numbers(left) - known:
                yield f"{n} in {r.en['steps'][-1]!r}"


@rule("grade: a method of a later grade", {"concept": "g3-fraction-equivalent", "en": words("", hints=["Multiply top and bottom by the same number."])})
def later(r):
    if r.concept == "g3-fraction-equivalent":
        for text in r.en["hints"] + r.en["steps"] + r.en["misconceptions"]:
            if re.search(r"[Mm]ultipl|[Dd]ivide", text):
                yield text
    s = r.statement
    if r.answer["kind"] == "one_choice":
        return
    if r.concept == "g4-area-perimeter-rules" and "area" in s and s["side"] > 12:
        yield f"{s['area']} ÷ {s['side']}"
    if r.concept == "g5-powers-of-ten" and r.answer["kind"] == "decimal" and len(r.answer.get("text", "").partition(".")[2]) > 3:
        yield f"past thousandths: {r.answer['text']}"
    if r.concept == "g5-decimal-multiply" and len(r.answer.get("text", "").partition(".")[2]) > 2:
        yield f"past hundredths: {r.answer['text']}"
    if r.concept == "g3-round-10-100" and s.get("number", 0) > 1000:
        yield f"four digits: {s['number']}"
    if r.concept == "g6-inequalities" and re.search(r"[<>]=|≤|≥", json.dumps(s)):
        yield "at most, at least"
    if r.concept == "g5-line-plot" and s["task"] == "equal_share_of_plot":
        bottom = int(s["step"].split("/")[1])
        total = sum(Fraction(k + 1, bottom) * n for k, n in enumerate(s["dots"]))
        if total.denominator > 1 and total.numerator > 1:
            yield f"{total} shared"


@rule("figure: words that do not fit the drawing", {"en": words("[One is in 8 equal parts with 9 shaded.]")})
def drawn_otherwise(r):
    for text in list(r.en["hints"]) + [r.prompt] + list(r.en["steps"]):
        for parts, shaded in re.findall(r"in (\d+) equal parts with (\d+) shaded", text):
            if int(shaded) > int(parts):
                yield text


@rule("answer: a form that the grade does not use", {"concept": "g4-decimal-on-line", "answer": {"kind": "number_line_point"}, "en": words(answer="27/50")})
def other_form(r):
    if "decimal" in r.concept and "/" in r.en["answer"] and r.concept[1] == "4" and r.answer["kind"] in ("decimal", "number_line_point"):
        yield r.en["answer"]
    if r.concept in ("g3-fraction-on-line", "g3-fraction-unit-on-line") and re.search(r"\d \d+/\d+", r.en["answer"]):
        yield r.en["answer"]


def faults_of(item):
    read = Read(item)
    for name, function, _ in RULES:
        for what in function(read):
            yield name, what
            break  # one finding of a rule in an item


def lint_concept(job):
    surefoot, concept, seeds, table = job
    count = max(seeds, 100) if table else seeds
    run = subprocess.Popen(
        [surefoot, "exercises", "--concept", concept, "--seed", "0", "--count", str(count)],
        stdout=subprocess.PIPE,
        text=True,
    )
    found, read, prompts, shapes = [], 0, collections.defaultdict(set), set()
    signs = collections.Counter()
    for line in run.stdout:
        item = json.loads(line)
        prompts[item["level"]].add(item["words"]["en"]["prompt"] + item["words"]["en"]["entry"] if item["seed"] < 100 else "")
        shapes.add(re.sub(r"\d[\d,./ ]*", "#", item["words"]["en"]["prompt"]))
        if item["answer"]["kind"] == "comparison":
            signs[item["answer"]["sign"]] += 1
        if item["seed"] >= seeds:
            continue
        read += 1
        for name, what in faults_of(item):
            found.append((name, item["concept"], item["level"], item["seed"], what))
    if run.wait() != 0:
        found.append(("the program failed", concept, 0, 0, ""))
    return concept, read, found, {level: len(seen) for level, seen in prompts.items()}, len(shapes), signs


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    root = pathlib.Path(__file__).resolve().parents[2]
    parser.add_argument("--surefoot", default=os.environ.get("SUREFOOT", str(root / "target" / "debug" / "surefoot")))
    parser.add_argument("--seeds", type=int, default=60 if os.environ.get("FULL") else 10)
    parser.add_argument("--concept", action="append")
    parser.add_argument("--show", type=int, default=2)
    parser.add_argument("--table", action="store_true")
    args = parser.parse_args()
    passed = failed = 0
    for name, function, example in RULES:
        if any(True for _ in function(Read(example_item(example)))):
            passed += 1
        else:
            failed += 1
            print(f"FAIL the rule does not find its example: {name}")
    listed = json.loads(subprocess.check_output([args.surefoot, "catalogue", "--json"]))
    concepts = args.concept or [c["id"] for c in listed if c["exercises"]]
    counts, where, table, all_read = collections.Counter(), collections.defaultdict(list), {}, 0
    signs = collections.Counter()
    with ProcessPoolExecutor(max_workers=2) as pool:
        jobs = [(args.surefoot, concept, args.seeds, args.table) for concept in concepts]
        for concept, read, found, prompts, shapes, seen in pool.map(lint_concept, jobs):
            all_read += read
            signs += seen
            table[concept] = (prompts, shapes)
            for name, *place in found:
                counts[name] += 1
                where[name].append(place)
    for name, count in counts.most_common():
        print(f"FAIL {count:5} {name} ({len({place[0] for place in where[name]})} concepts)")
        for place in where[name][: args.show]:
            print("        ", *place)
    if args.table:
        print(f"{'concept':34} different prompts among 100 seeds, level 1 to 3; kinds of prompt")
        for concept, (prompts, shapes) in table.items():
            print(f"{concept:34} {' '.join(f'{prompts.get(level, 0):4}' for level in (1, 2, 3))} {shapes:5}")
    if signs:
        print("signs of comparisons:", ", ".join(f"{sign} {count}" for sign, count in sorted(signs.items())))
    passed += all_read - len({tuple(place[:3]) for places in where.values() for place in places})
    failed += sum(counts.values())
    print(f"{len(RULES)} rules, {all_read} exercises read, {sum(counts.values())} findings")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or not all_read else 0


if __name__ == "__main__":
    sys.exit(main())
