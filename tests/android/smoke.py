#!/usr/bin/env python3
"""Joins a class, marks a concept and hands in on a tablet or an emulator, as a student would.

    smoke.py ADB APK PICTURES
        Needs one device that `adb root` works on, an emulator for example, and the desktop's
        `surefoot` and `surefoot-bridge`. The desk makes the class, and imports what the tablet
        hands in. Ends with "N passed, M failed"; a picture of each step is in PICTURES.

It finds buttons by their words in the program's messages, as the system tells them to people
who cannot see the screen.
"""

import datetime
import functools
import json
import pathlib
import re
import subprocess
import sys
import tempfile
import time
import xml.etree.ElementTree as xml

TOP = pathlib.Path(__file__).resolve().parents[2]
PROGRAM = "org.surefoot.app"
CACHE = f"/data/data/{PROGRAM}/cache"
# An emulator without acceleration is slow.
PATIENCE_SECONDS = 120
LOOKS_BEFORE_A_SWIPE = 3


@functools.cache
def said(name):
    """The English words of a message."""
    for path in sorted((TOP / "shared/messages/en").glob("*.ftl")):
        if found := re.search(rf"^{name} = (.+)$", path.read_text(), re.M):
            return found[1]
    raise KeyError(name)


class Missing(Exception):
    """Something that the screen should show and does not."""


class Tablet:
    """What a hand and an eye do. `run` passes words to adb and returns what it prints."""

    def __init__(self, run, pictures, patience=PATIENCE_SECONDS):
        self.run, self.pictures, self.patience = run, pictures, patience

    def nodes(self):
        """What is on the screen; nothing while it moves."""
        told = self.run("exec-out", "uiautomator", "dump", "/dev/tty").decode(errors="replace")
        text = re.search(r"<\?xml.*</hierarchy>", told, re.S)
        return list(xml.fromstring(text[0]).iter("node")) if text else []

    def find(self, what, fits):
        """The first thing on the screen that fits, one that can be tapped before another."""
        until = time.monotonic() + self.patience
        looks = 0
        while time.monotonic() < until:
            found = [node for node in self.nodes() if fits(node) and node.get("bounds") != "[0,0][0,0]"]
            if found:
                return max(found, key=lambda node: node.get("clickable") == "true")
            looks += 1
            if looks % LOOKS_BEFORE_A_SWIPE == 0:
                self.run("shell", "input", "swipe", "400", "900", "400", "500")
        raise Missing(f"{what} is not on the screen")

    def words(self, text):
        return self.find(f'"{text}"', lambda node: text in (node.get("text"), node.get("content-desc")))

    def field(self):
        return self.find("a field to type in", lambda node: node.get("class") == "android.widget.EditText")

    def tap(self, node):
        left, top, right, bottom = map(int, re.findall(r"-?\d+", node.get("bounds")))
        self.run("shell", "input", "tap", str((left + right) // 2), str((top + bottom) // 2))

    def type(self, text):
        self.tap(self.field())
        self.run("shell", "input", "text", text.replace(" ", "%s"))

    def picture(self, name):
        (self.pictures / f"{name}.png").write_bytes(self.run("exec-out", "screencap", "-p"))


def joins(tablet, code):
    tablet.tap(tablet.words(said("action-next")))
    tablet.type(code)
    tablet.words(said("join-code-good"))
    tablet.tap(tablet.words(said("action-next")))
    tablet.type("Wren")
    tablet.tap(tablet.words(said("avatar-heron")))
    tablet.picture("join")
    tablet.tap(tablet.words(said("join-finish")))


def marks(tablet):
    rating = said("confidence-2")
    tablet.tap(tablet.words(rating))
    tablet.find("a marked concept", lambda node: node.get("text") == rating and node.get("checked") == "true")
    tablet.picture("today")


def hands_in(tablet):
    tablet.tap(tablet.words(said("student-handin")))
    tablet.tap(tablet.words(said("handin-share")))
    tablet.find("the share sheet", lambda node: node.get("package") not in (PROGRAM, "com.android.systemui"))
    tablet.picture("hand-in")


def install(tablet, apk, pack):
    """Installs the program and opens a class pack with it, one whose name says nothing."""
    tablet.run("root")
    tablet.run("wait-for-device")
    # A real keyboard would hide nothing; the one on the screen does.
    tablet.run("shell", "settings", "put", "secure", "show_ime_with_hard_keyboard", "0")
    tablet.run("install", "-r", str(apk))
    tablet.run("shell", "pm", "clear", PROGRAM)
    owner = tablet.run("shell", "stat", "-c", "%u", f"/data/data/{PROGRAM}").decode().strip()
    tablet.run("shell", "mkdir", "-p", f"{CACHE}/opened")
    tablet.run("push", str(pack), f"{CACHE}/opened/7")
    tablet.run("shell", "chown", "-R", f"{owner}:{owner}", CACHE)
    tablet.run("shell", "restorecon", "-R", CACHE)
    tablet.run("shell", "am", "start", "-W", "-n", f"{PROGRAM}/.MainActivity", "-a", "android.intent.action.VIEW",
               "-t", "application/octet-stream", "-d", f"file://{CACHE}/opened/7")


def finds_files(tablet):
    """The system offers the program for a file with dots in its name."""
    told = tablet.run("shell", "cmd", "package", "query-activities", "--brief", "-a", "android.intent.action.VIEW",
                      "-c", "android.intent.category.DEFAULT", "-t", "application/unknown",
                      "-d", "content://org.example/a.b.sfhandin").decode()
    if PROGRAM not in told:
        raise Missing(f"{PROGRAM} among those that open a hand-in: {told}")


def takes(tablet, school, folder):
    """The desk imports what the tablet gave to the share sheet."""
    from program import command

    listed = tablet.run("shell", "find", f"{CACHE}/share", "-name", "*.sfhandin").decode().split()
    if len(listed) != 1:
        raise Missing(f"one shared hand-in; there are {listed}")
    file = folder / "shared.sfhandin"
    tablet.run("pull", listed[0], str(file))
    done = command("import", "--desk", school.desk_path, "--json", file)
    report = json.loads(done.stdout)
    if report["files"][0]["new_entries"] != 1:
        raise Missing(f"the marked concept at the desk: {report}")


class School:
    """A desk with one class whose days are all school days, so that today is one."""

    def __init__(self, folder):
        from program import Program

        today = datetime.date.today()
        self.desk = Program(folder / "desk", today.isoformat())
        year = {"first_day": str(today - datetime.timedelta(days=40)), "last_day": str(today + datetime.timedelta(days=200)),
                "weekdays": [1, 2, 3, 4, 5, 6, 7], "closures": []}
        made = self.desk.call("create_class", **{"class": {
            "title": "Room 3", "names": ["", ""], "year": year, "grades": [4, 5], "rotation_days": 10,
            "concepts_a_day": 7}})
        of_class = {"class": made["id"]}
        self.code = self.desk.call("join_slips", **of_class)[0]["code"]
        self.pack = self.desk.saved(self.desk.call("save_class_pack", **of_class))
        self.desk_path = self.desk.desk_path


def report(steps):
    """Carries out (what, step) until one fails, and says what came of each."""
    passed = failed = 0
    for name, step in steps:
        try:
            step()
            passed += 1
            print(f"ok  {name}")
        except (Missing, subprocess.CalledProcessError) as fault:
            failed = len(steps) - passed
            print(f"FAILED  {name}\n    {fault}")
            break
    print(f"{passed} passed, {failed} failed")
    return failed > 0


def main(adb, apk, pictures):
    sys.path.insert(0, str(TOP / "tests/attacks"))
    import program

    pictures = pathlib.Path(pictures)
    pictures.mkdir(parents=True, exist_ok=True)

    def run(*words):
        return subprocess.run([adb, *words], check=True, capture_output=True, timeout=300).stdout

    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        tablet = Tablet(run, pictures)
        try:
            school = School(folder)
            return report([
                ("the program is installed and opens a class pack without a name", lambda: install(tablet, apk, school.pack)),
                ("the system offers it for a hand-in", lambda: finds_files(tablet)),
                ("a student joins", lambda: joins(tablet, school.code)),
                ("a concept is marked", lambda: marks(tablet)),
                ("the share sheet shows the hand-in", lambda: hands_in(tablet)),
                ("the desk takes it", lambda: takes(tablet, school, folder)),
            ])
        finally:
            (pictures / "log.txt").write_bytes(run("logcat", "-d"))
            program.close_all()


if __name__ == "__main__":
    if len(sys.argv) != 4:
        raise SystemExit(__doc__)
    sys.exit(main(*sys.argv[1:]))
