#!/usr/bin/env python3
"""Tries smoke.py's hand and eye on a stand-in for a tablet: screens as uiautomator tells them.

Ends with "N passed, M failed". It shows that the script finds, taps and types what it should and
that it fails if something is missing, not that a real tablet shows these screens.
"""

import pathlib
import sys
import tempfile
from xml.sax.saxutils import quoteattr

import smoke
from smoke import said

SHEET = "com.android.intentresolver"


class StandIn:
    """Screens in the order of a student's way; each leads on by its buttons."""

    def __init__(self, code, without=None):
        self.code, self.without, self.at, self.typed, self.log = code, without, "pack", {}, []
        self.rated, self.swiped = False, False

    def screen(self):
        """(text, class, package, clickable, checked) from top to bottom."""
        own = smoke.PROGRAM
        button = lambda name: (said(name), "android.widget.Button", own, True, False)
        label = lambda name: (said(name), "android.widget.TextView", own, False, False)
        field = ("", "android.widget.EditText", own, True, False)
        good = [label("join-code-good")] if self.typed.get("code") == self.code else []
        # The last button is below the end of the screen.
        finish = [button("join-finish")] if self.swiped else []
        rating = (said("confidence-2"), "android.widget.RadioButton", own, True, self.rated)
        all_screens = {
            "pack": [button("action-next")],
            "code": [label("join-code"), field, *good, button("action-next")],
            "you": [field, button("avatar-heron"), *finish],
            "today": [rating, rating[:4] + (False,), button("student-handin")],
            "handin": [label("student-handin"), button("handin-share")],
            "sheet": [("Files", "android.widget.TextView", SHEET, True, False)],
        }
        return [one for one in all_screens[self.at] if one[0] != self.without or not one[0]]

    def run(self, *words):
        self.log.append(words)
        match words:
            case ("exec-out", "uiautomator", *_):
                nodes = "".join(
                    f'<node text={quoteattr(text)} content-desc="" class="{kind}" package="{package}" '
                    f'clickable="{str(taps).lower()}" checked="{str(on).lower()}" bounds="[10,{50 * n}][90,{50 * n + 40}]" />'
                    for n, (text, kind, package, taps, on) in enumerate(self.screen()))
                told = f"<?xml version='1.0'?><hierarchy>{nodes}</hierarchy>UI hierchary dumped to: /dev/tty"
                return told.encode()
            case ("shell", "input", "tap", _, y):
                text = self.screen()[(int(y) - 20) // 50][0]
                ways = {("pack", "action-next"): "code", ("code", "action-next"): "you", ("you", "join-finish"): "today",
                        ("today", "student-handin"): "handin", ("handin", "handin-share"): "sheet"}
                for (at, name), leads in ways.items():
                    if at == self.at and said(name) == text:
                        self.at = leads
                        break
                self.rated |= text == said("confidence-2")
            case ("shell", "input", "text", text):
                self.typed[self.at] = text
            case ("shell", "input", "swipe", *_):
                self.swiped = True
        return b""


def way(without=None, patience=0.3):
    tablet = StandIn("ABC-DEF", without)
    with tempfile.TemporaryDirectory() as pictures:
        hand = smoke.Tablet(tablet.run, pathlib.Path(pictures), patience=patience)
        try:
            smoke.joins(hand, "ABC-DEF")
            smoke.marks(hand)
            smoke.hands_in(hand)
        except smoke.Missing as fault:
            return tablet, str(fault)
        return tablet, sorted(path.stem for path in pathlib.Path(pictures).iterdir())


def main():
    done, pictures = way(patience=20)
    checks = {"the whole way": done.at == "sheet" and pictures == ["hand-in", "join", "today"],
              "what is typed": done.typed == {"code": "ABC-DEF", "you": "Wren"},
              "the button below the end of the screen": done.swiped}
    for name in ("action-next", "join-code-good", "avatar-heron", "confidence-2", "handin-share"):
        _, fault = way(without=said(name))
        checks[f"it fails without {said(name)!r}"] = isinstance(fault, str) and "is not on the screen" in fault
    failed = sum(not passed for passed in checks.values())
    for name, passed in checks.items():
        print(f"{'ok' if passed else 'FAILED'}  {name}")
    print(f"{len(checks) - failed} passed, {failed} failed")
    return failed > 0


if __name__ == "__main__":
    sys.exit(main())
