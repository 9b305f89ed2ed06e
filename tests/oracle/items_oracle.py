#!/usr/bin/env python3
"""Checks every exercise against answers worked out here.

Each exercise carries a neutral statement: a task name and the numbers shown.
The answer is worked out from that statement alone, with Python's fractions and
with sympy; the program's own answer is only compared, never used. Also checked:
each misconception's answer is wrong and unlike the others; every number of the
statement is in the prompt, in every language, or in its figure or entry;
denominators keep the bounds of the grade.

    items_oracle.py [--surefoot PATH] [--seeds 20] [--concept ID] [--report FILE]

Every concept and level is tried with each seed: 20 seeds, or 1,000 with FULL=1.
"""
import argparse
import collections
import importlib
import json
import os
import pathlib
import pkgutil
import re
import subprocess
import sys
from concurrent.futures import ProcessPoolExecutor
from fractions import Fraction

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent))
import tasks  # noqa: E402
from tasks import TASKS, misconceptions, published  # noqa: E402

for module in pkgutil.iter_modules(tasks.__path__):
    importlib.import_module(f"tasks.{module.name}")

# Common Core State Standards for Mathematics (2010), footnotes to grades 3 and
# 4 fractions; grade 5 and 6 bounds as in the standards' own examples (2 to 12).
DENOMINATORS = {
    3: {1, 2, 3, 4, 6, 8},
    4: {1, 2, 3, 4, 5, 6, 8, 10, 12, 100},
    # Results shown in a prompt (1/4 ÷ □ = 1/12) may go to 12 × 12.
    5: set(range(1, 13)) | {a * b for a in range(2, 13) for b in range(2, 13)} | {100, 1000},
    6: set(range(1, 13)) | {16, 20, 25, 50, 100},
}


def exact(text):
    return Fraction(str(text).replace(",", "").replace("−", "-"))


def expr_value(e):
    """The value of a shown expression, or None when it is not a number."""
    kind = e["kind"]
    if kind == "number":
        return exact(e["text"])
    if kind == "fraction":
        top, bottom = expr_value(e["top"]), expr_value(e["bottom"])
        return None if None in (top, bottom) else top / bottom
    if kind == "mixed":
        parts = [expr_value(e[k]) for k in ("whole", "top", "bottom")]
        return None if None in parts else parts[0] + parts[1] / parts[2]
    if kind in ("negative", "absolute", "group", "percent", "degrees"):
        inner = expr_value(e["inner"])
        if inner is None:
            return None
        return {"negative": -inner, "absolute": abs(inner), "percent": inner / 100}.get(kind, inner)
    if kind == "measure":
        return expr_value(e["amount"])
    if kind == "money":
        return Fraction(e["hundredths"], 100)
    return None


def units_of(choices):
    return {
        c["shows"]["expr"]["unit"]
        for c in choices
        if c["shows"]["kind"] == "math" and c["shows"]["expr"]["kind"] == "measure"
    }


def choice_content(choice, text, with_unit=False):
    """What a choice says: a number where it is one (with its unit if the choices
    differ in units), else its words."""
    block = choice["shows"]
    if block["kind"] == "math":
        if with_unit:
            unit = block["expr"]["unit"].removeprefix("unit-").replace("-", " ")
            return (expr_value(block["expr"]), unit)
        value = expr_value(block["expr"])
        if value is not None:
            return value
    return text.strip().lower()


def answer_value(answer, item):
    """An answer of the program in the shape the tasks give back."""
    kind = answer["kind"]
    if kind == "whole_number":
        return Fraction(answer["value"])
    if kind == "decimal":
        return exact(answer["text"])
    if kind == "fraction":
        return Fraction(answer["top"], answer["bottom"])
    if kind == "mixed":
        size = answer["whole"] + Fraction(answer["top"], answer["bottom"])
        return -size if answer["negative"] else size
    if kind == "money":
        return Fraction(answer["hundredths"], 100)
    if kind == "time":
        return (answer["hour"], answer["minute"])
    if kind == "duration":
        return Fraction(answer["minutes"])
    if kind == "comparison":
        return {"less": "<", "equal": "=", "greater": ">"}[answer["sign"]]
    if kind in ("one_choice", "several_choices", "ordering"):
        entry = item["entry"]
        choices = entry.get("choices") or entry.get("things")
        lines = item["words"]["en"]["entry"].split("\n")
        if kind == "ordering":
            lines = lines[2:]
        with_unit = len(units_of(choices)) > 1
        contents = [choice_content(c, line, with_unit) for c, line in zip(choices, lines)]
        if len(lines) != len(choices):
            contents = [choice_content(c, "") for c in choices]
        if kind == "one_choice":
            return contents[answer["index"]]
        if kind == "several_choices":
            return frozenset(contents[i] for i in answer["indexes"])
        return [contents[i] for i in answer["order"]]
    if kind in ("expression", "equation"):
        return tasks.Typed(answer["text"], item["form"]["kind"])
    if kind == "coordinates":
        return tuple(Fraction(answer[k]["top"], answer[k]["bottom"]) for k in "xy")
    if kind == "number_line_point":
        return Fraction(answer["at"]["top"], answer["at"]["bottom"])
    if kind == "number_line_ray":
        at = answer["from"]
        return (Fraction(at["top"], at["bottom"]), answer["open"], answer["rightward"])
    if kind == "angle":
        return Fraction(answer["degrees"])
    if kind == "shaded_fraction":
        return Fraction(answer["count"])
    if kind == "plot":
        return [Fraction(h) for h in answer["heights"]]
    if kind == "grid_area":
        return tuple(sorted((answer["rows"], answer["columns"])))
    if kind == "quotient_remainder":
        return (answer["quotient"], answer["remainder"])
    if kind == "several_numbers":
        return [exact(t) for t in answer["texts"]]
    if kind == "boxes":
        return tuple(exact(t) for t in answer["texts"])
    if kind == "two_parts":
        return tuple(answer_value(answer[part], part_of(item, part)) for part in ("first", "second"))
    raise ValueError(kind)


def part_of(item, part):
    """One of two parts, as an item of its own; the words of the entry are those of the first
    part, the question of the second, and the words of the second."""
    entry = item["entry"]
    lines = item["words"]["en"]["entry"].split("\n")
    count = len(entry["first"].get("choices") or ([1] if entry["first"].get("unit") else []))
    lines = lines[:count] if part == "first" else lines[count + 1:]
    return {**item, "entry": entry[part], "words": {"en": {"entry": "\n".join(lines)}}}


NUMBER = re.compile(r"\d+(?:\.\d+)?")


def numbers_in(value):
    """Every number in a JSON value or text, without sign, as exact fractions."""
    if isinstance(value, bool) or value is None:
        return
    if isinstance(value, int):
        yield Fraction(abs(value))
    elif isinstance(value, str):
        text = re.sub(r"(?<=\d),(?=\d{3})", "", value)
        for found in NUMBER.findall(text):
            yield Fraction(found)
    elif isinstance(value, list):
        for inner in value:
            yield from numbers_in(inner)
    elif isinstance(value, dict):
        for key, inner in value.items():
            # A given answer is shown in its own words, not by its places, and a misconception
            # by its name.
            if key not in ("id", "task", "said", "misconceptions"):
                yield from numbers_in(inner)


def denominators(value):
    if isinstance(value, dict):
        if value.get("kind") == "fraction" or value.get("kind") == "mixed":
            bottom = value["bottom"]
            if isinstance(bottom, dict) and bottom.get("kind") == "number":
                yield int(Fraction(bottom["text"]))
        for inner in value.values():
            yield from denominators(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from denominators(inner)


def plain(value, statement):
    """The ends of a range without the signs of money, degrees and thousands."""
    if statement["task"] == "between_then_answer":
        return (re.sub(r"[$°,]", "", value[0]), *value[1:])
    return value


def misconception_named(statement, right, said, item, given):
    """The name of the misconception that leads to what is said, or none. If the misconceptions
    are not worked out here, the name given is taken, unless what is said is right."""
    names = [line.strip().lower() for line in item["words"]["en"]["entry"].split("\n")[:3]]
    if tasks.same(right, said):
        return names[2]
    inner = statement["inner"]
    worked = [misconceptions.answer_of(code, inner) for code in statement["misconceptions"]]
    fitting = [name for name, value in zip(names, worked) if value is not None and tasks.same(tasks.normal(value), said)]
    if fitting:
        (name,) = fitting
        return name
    unknown = [name for name, value in zip(names, worked) if value is None]
    return given[0] if given[0] in unknown else "none of the mistakes that are named"


def fault_of(item):
    """What is wrong with an item, or None."""
    statement = item["statement"]
    inner = statement["inner"] if "said" in statement else statement
    task = TASKS.get(inner["task"])
    if task is None:
        return f"no task {inner['task']}"
    wanted = tasks.normal(task(inner))
    if statement["task"] == "right_or_mend":
        said = answer_value(statement["said"], part_of(item, "second"))
        wanted = ("yes" if tasks.same(wanted, said) else "no", wanted)
    if statement["task"] == "who_then_answer":
        said = [answer_value(one, part_of(item, "second")) for one in statement["said"]]
        (name,) = [n for n, one in zip(statement["names"], said) if tasks.same(wanted, one)]
        wanted = (name.lower(), wanted)
    given = plain(answer_value(item["answer"], item), statement)
    if statement["task"] == "name_the_misconception":
        said = answer_value(statement["said"], part_of(item, "second"))
        wanted = (misconception_named(statement, wanted, said, item, given), wanted)
    if not tasks.same(wanted, given):
        return f"answer {given!r}, worked out {wanted!r}"
    if item["answer"]["kind"] == "one_choice":
        entry = item["entry"]
        lines = item["words"]["en"]["entry"].split("\n")
        with_unit = len(units_of(entry["choices"])) > 1
        contents = [choice_content(c, line, with_unit) for c, line in zip(entry["choices"], lines)]
        if sum(tasks.same(wanted, c) for c in contents) != 1:
            return "the right choice is there more than once"
    wrong = []
    for misconception in item["misconceptions"]:
        value = plain(answer_value(misconception["answer"], item), statement)
        if tasks.same(wanted, value):
            return f"misconception {misconception['code']} is right"
        if any(tasks.same(value, other) for other in wrong):
            return f"misconception {misconception['code']} equals another"
        wrong.append(value)
    drawn = [b for b in item["prompt"] if b["kind"] == "figure"]
    shown_structured = set(numbers_in(drawn)) | set(numbers_in(item["entry"]))
    for language, words in item["words"].items():
        shown = shown_structured | set(numbers_in(words["prompt"])) | set(numbers_in(words["entry"]))
        for number in numbers_in(statement):
            if number not in shown:
                return f"{number} of the statement is not shown in {language}"
    grade = int(item["concept"][1])
    # Answers of which one is wrong may have any denominator.
    judged = ("who_is_right", "right_or_mend", "who_then_answer", "compare_answer", "wrong_line", "name_the_misconception")
    own = [] if statement["task"] in judged else item["prompt"]
    for bottom in denominators(own):
        if bottom not in DENOMINATORS[grade]:
            return f"denominator {bottom} is out of bounds for grade {grade}"
    bound = tasks.BOUNDS.get(item["concept"])
    # Boxes have numbers of their own, and so has a sentence with its result.
    if statement["task"] in ("fill_boxes", "missing_number"):
        bound = None
    if bound is not None and not bound(statement.get("inner", statement)):
        return "out of the bounds of its standard"
    return None


def check_concept(job):
    surefoot, concept, seeds = job
    run = subprocess.Popen(
        [surefoot, "exercises", "--concept", concept, "--seed", "0", "--count", str(seeds)],
        stdout=subprocess.PIPE,
        text=True,
    )
    passed, faults, kinds = 0, [], collections.Counter()
    misconceptions = 0
    for line in run.stdout:
        item = json.loads(line)
        try:
            fault = fault_of(item)
        except Exception as error:  # an exception in a task is a failure of the item
            fault = f"{type(error).__name__}: {error}"
        if fault is None:
            passed += 1
            misconceptions += len(item["misconceptions"])
            kinds[item["answer"]["kind"]] += 1
        else:
            faults.append((item["concept"], item["level"], item["seed"], fault, item["statement"]))
    if run.wait() != 0:
        faults.append((concept, 0, 0, "the program failed", {}))
    return concept, passed, faults, kinds, misconceptions


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    root = pathlib.Path(__file__).resolve().parents[2]
    parser.add_argument("--surefoot", default=str(root / "target" / "debug" / "surefoot"))
    parser.add_argument("--seeds", type=int, default=1000 if os.environ.get("FULL") else 20)
    parser.add_argument("--concept", action="append")
    parser.add_argument("--report")
    args = parser.parse_args()
    listed = json.loads(subprocess.check_output([args.surefoot, "catalogue", "--json"]))
    concepts = args.concept or [c["id"] for c in listed if c["exercises"]]
    passed = misconceptions = 0
    for code, statement, answer in published.WORKED:
        answer = tasks.exact(answer) if isinstance(answer, str) and answer[0].isdigit() else answer
        worked = tasks.normal(TASKS[statement["task"]](statement))
        if not tasks.same(worked, tasks.normal(answer)):
            print(f"FAIL the worked example of {code} gives {worked!r}")
            return 1
        passed += 1
    faults, kinds, rows = [], collections.Counter(), []
    with ProcessPoolExecutor(max_workers=2) as pool:
        for concept, good, bad, seen, wrong in pool.map(
            check_concept, [(args.surefoot, c, args.seeds) for c in concepts]
        ):
            passed += good
            faults += bad
            kinds += seen
            misconceptions += wrong
            rows.append({"concept": concept, "passed": good, "failed": len(bad), "misconceptions": wrong})
            for fault in bad[:3]:
                print("FAIL", *fault, sep=" | ")
    if args.report:
        report = {
            "seeds": args.seeds,
            "passed": passed,
            "failed": len(faults),
            "misconceptions_checked": misconceptions,
            "answer_kinds": dict(sorted(kinds.items())),
            "concepts": rows,
        }
        pathlib.Path(args.report).write_text(json.dumps(report, indent=1) + "\n")
    print(f"{len(concepts)} concepts, {len(kinds)} answer kinds, {misconceptions} misconceptions checked")
    print(f"{passed} passed, {len(faults)} failed")
    return 1 if faults or passed == 0 else 0


if __name__ == "__main__":
    sys.exit(main())
