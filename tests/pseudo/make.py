"""Makes a pseudo-language from English: accents, brackets, 40 % longer.

    make.py FOLDER

FOLDER then holds what a folder of `shared/messages` holds, and `language.json`, the line of
the language. It is for tests alone and never shipped: the bridge takes it by
`--extra-language FOLDER`, the build of the screens by `EXTRA_LANGUAGE=FOLDER`.

In this language every vowel, n, c and y has an accent. So a word with a plain one was not
translated. Brackets show where a text begins and ends. Placeables do not change.
"""

import json
import math
import re
import sys
from pathlib import Path

from fluent.syntax import FluentParser, FluentSerializer, ast
from fluent.syntax.visitor import Transformer

SHARED = Path(__file__).resolve().parents[2] / "shared"
SOURCE = "en"
TAG = "en-XA"
LONGER = 0.4
VOWELS = "aeiouAEIOU"
ACCENTS = str.maketrans("aeiouyncAEIOUYNC", "áéíóúýñçÁÉÍÓÚÝÑÇ")


def accented(text):
    return text.translate(ACCENTS)


def longer(text):
    """The text with its vowels doubled until it has 40 % more letters."""
    letters = sum(c.isalpha() for c in text)
    missing = math.ceil(letters * LONGER)
    while missing > 0 and any(c in VOWELS for c in text):
        made = []
        last = ""
        for c in text:
            made.append(c)
            # Each run of a vowel grows by one in each round.
            if missing > 0 and c in VOWELS and c != last:
                made.append(c.lower())
                missing -= 1
            last = c
        text = "".join(made)
    return text


def pseudo(text):
    return accented(longer(text))


class Pseudo(Transformer):
    """Changes the words of a pattern, and brackets the pattern of a message as a whole."""

    def visit_TextElement(self, node):
        node.value = pseudo(node.value)
        return node

    def visit_Message(self, node):
        self.generic_visit(node)
        for part in [node, *node.attributes]:
            if part.value is not None:
                bracket(part.value)
        return node


def bracket(pattern):
    def text_at(place):
        element = pattern.elements[place]
        if not isinstance(element, ast.TextElement):
            element = ast.TextElement("")
            pattern.elements.insert(0 if place == 0 else len(pattern.elements), element)
        return element

    first = text_at(0)
    first.value = "[" + first.value
    last = text_at(-1)
    last.value += "]"


def main(folder):
    folder.mkdir(parents=True, exist_ok=True)
    source = SHARED / "messages" / SOURCE
    count = 0
    for path in sorted(source.iterdir()):
        text = path.read_text(encoding="utf-8")
        if path.suffix == ".ftl":
            resource = FluentParser().parse(text)
            junk = [entry for entry in resource.body if isinstance(entry, ast.Junk)]
            if junk:
                raise SystemExit(f"{path}: {junk[0].content}")
            count += sum(isinstance(entry, ast.Message) for entry in resource.body)
            text = FluentSerializer().serialize(Pseudo().visit(resource))
        else:
            # The rules that spell numbers: their words get accents, the names of sets do not.
            parts = re.split(r"(%[a-z-]+|#.*)", text)
            text = "".join(part if part.startswith(("%", "#")) else accented(part) for part in parts)
        (folder / path.name).write_text(text, encoding="utf-8")
    lines = json.loads((SHARED / "languages.json").read_text(encoding="utf-8"))
    line = next(line for line in lines if line["tag"] == SOURCE)
    made = {**line, "tag": TAG, "name": f"[{pseudo(line['name'])}]",
            **{key: pseudo(line[key]) for key in ("no_words", "too_old")}}
    (folder / "language.json").write_text(json.dumps(made, ensure_ascii=False), encoding="utf-8")
    print(f"{count} messages in {folder}")


if __name__ == "__main__":
    if len(sys.argv) != 2:
        raise SystemExit(__doc__)
    main(Path(sys.argv[1]))
