"""The system's own dialogs, answered by keys as a person would: a class pack is
saved and picked again, and a folder of hand-ins is imported."""

import pathlib
import shutil
import subprocess
import tempfile

from driver import Checks, Window
from x11 import screen

checks = Checks()
folder = tempfile.TemporaryDirectory(prefix="surefoot-window-", ignore_cleanup_errors=True)
home = pathlib.Path(folder.name)
# Without a window manager no window gets the keys.
manager = subprocess.Popen(["openbox"], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
# A dialog that waits for keys must not change its picture.
gtk = home / "config/gtk-3.0/settings.ini"
gtk.parent.mkdir(parents=True)
gtk.write_text("[Settings]\ngtk-cursor-blink=false\ngtk-enable-animations=false\n")

NEW_CLASS = {
    "title": "Room 3",
    "names": ["", ""],
    "year": {"first_day": "2026-08-17", "last_day": "2027-05-28",
             "weekdays": [1, 2, 3, 4, 5], "closures": []},
    "grades": [4],
    "rotation_days": 10,
    "concepts_a_day": 3,
}


def xdotool(*words):
    return subprocess.run(["xdotool", *map(str, words)], capture_output=True, text=True).stdout


def dialogs():
    """Windows that are not the program's own."""
    own = set(xdotool("search", "--onlyvisible", "--name", "^Surefoot$").split())
    seen = set(xdotool("search", "--onlyvisible", "--class", "surefoot").split())
    return seen - own


def settle(window):
    """Waits until the screen is the same in four looks."""
    looks = []

    def same():
        looks.append(screen())
        return len(looks) >= 4 and len(set(looks[-4:])) == 1

    window.wait(same, "the screen to settle")


def keys(window, *words):
    """Sends keys, and waits until the screen has changed and settled."""
    before = screen()
    xdotool(*words)
    window.wait(lambda: screen() != before, f"an answer to {words}")
    settle(window)


def during_dialog(window, name, arguments, answer):
    """Makes a call that shows a dialog, answers it, and returns what came back."""
    window.script(
        "window.__came = null;"
        "window.__TAURI_INTERNALS__.invoke('call', { name: arguments[0], args: arguments[1] })"
        ".then(v => { window.__came = ['ok', v] }, e => { window.__came = ['error', e] });",
        name, arguments)
    shown = window.wait(dialogs, f"the dialog of {name}").pop()
    xdotool("windowfocus", "--sync", shown)
    settle(window)
    answer(window)
    return window.wait(lambda: window.script("return window.__came"), f"the end of {name}")


def saved_as(path):
    def answer(window):
        keys(window, "key", "ctrl+a", "type", "--delay", "15", path)
        keys(window, "key", "Return")
    return answer


def opened(path):
    def answer(window):
        xdotool("key", "alt+Home")  # out of the list of recent files, where paths do nothing
        settle(window)
        keys(window, "key", "ctrl+l")  # opens the line for a path
        keys(window, "key", "ctrl+a", "type", "--delay", "15", path)
        keys(window, "key", "Return")
        if dialogs():  # the first one only closed the list of completions
            keys(window, "key", "Return")
    return answer


def escaped(window):
    keys(window, "key", "Escape")


try:
    with Window(home) as window:
        window.find("body")
        kind, made = window.call("create_class", {"class": NEW_CLASS})
        checks.that("a class is made", kind == "ok", made)
        class_id = made["id"]
        place = home / "room-3.sfclass"

        kind, saved = during_dialog(window, "save_class_pack", {"class": class_id}, escaped)
        checks.that("going back from saving saves nothing",
                    kind == "ok" and saved["place"] is None and not place.exists(), saved)

        kind, saved = during_dialog(window, "save_class_pack", {"class": class_id}, saved_as(place))
        checks.that("the class pack is saved where the person says",
                    kind == "ok" and saved["place"] == str(place)
                    and place.read_bytes().startswith(b"SFPACK1\n"), saved)

        kind, offer = during_dialog(window, "pick_class_pack", {}, escaped)
        checks.that("going back from picking picks nothing", (kind, offer) == ("ok", None), offer)

        kind, offer = during_dialog(window, "pick_class_pack", {}, opened(place))
        checks.that("the picked class pack is read",
                    kind == "ok" and offer["class_title"] == "Room 3", offer)

        inbox = home / "inbox"
        inbox.mkdir()
        shutil.copy(place, inbox / "not-a-hand-in.sfhandin")
        kind, job = during_dialog(window, "import_hand_ins", {"from": "folder"}, opened(inbox))
        state = window.wait(
            lambda: (lambda s: s if s["result"] else None)(window.call("job", job)[1]),
            "the import") if kind == "ok" and job else job
        files = state["result"]["report"]["files"] if state else []
        checks.that("the picked folder is imported, and a wrong file has its reason",
                    [f["verdict"]["kind"] for f in files] == ["refused"], state)
finally:
    manager.terminate()

checks.finish()
