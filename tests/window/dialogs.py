"""Answers the system's own dialogs by keys, as a person would."""

import subprocess

from x11 import screen


def window_manager():
    """Starts a window manager: without one no window gets the keys."""
    return subprocess.Popen(["openbox"], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)


def still_dialogs(home):
    """Keeps the picture of a dialog that waits for keys as it is."""
    gtk = home / "config/gtk-3.0/settings.ini"
    gtk.parent.mkdir(parents=True)
    gtk.write_text("[Settings]\ngtk-cursor-blink=false\ngtk-enable-animations=false\n")


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


def answered(window, name, answer):
    """Answers the dialog that `name` shows."""
    shown = window.wait(dialogs, f"the dialog of {name}").pop()
    xdotool("windowfocus", "--sync", shown)
    settle(window)
    answer(window)


def during_dialog(window, name, arguments, answer):
    """Makes a call that shows a dialog, answers it, and returns what came back."""
    window.script(
        "window.__came = null;"
        "window.__TAURI_INTERNALS__.invoke('call', { name: arguments[0], args: arguments[1] })"
        ".then(v => { window.__came = ['ok', v] }, e => { window.__came = ['error', e] });",
        name, arguments)
    answered(window, name, answer)
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
