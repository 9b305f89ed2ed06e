"""Checks that there is one window, that it remembers its size, and that its page can
reach only the command `call`."""

import pathlib
import subprocess
import tempfile
import time

from driver import PROGRAM, Checks, Window, environment
from x11 import close_windows

checks = Checks()
folder = tempfile.TemporaryDirectory(prefix="surefoot-window-", ignore_cleanup_errors=True)
home = pathlib.Path(folder.name)

with Window(home) as window:
    window.find("body")

    kind, error = window.call("no_such_call")
    checks.that("an unknown call is refused by its code",
                kind == "error" and error.get("code") == "unknown_call", error)
    kind, error = window.call("today", {"wrong": 1})
    checks.that("arguments that do not fit are refused by their code",
                kind == "error" and error.get("code") == "bad_arguments", error)

    said = window.script("try { return String(eval('1 + 1')) } catch (e) { return e.name }")
    checks.that("the page cannot run text as code", said == "EvalError", said)
    said = window.script(
        "const s = document.createElement('style'); s.textContent = 'body{outline:3px solid red}';"
        "document.head.append(s); const r = getComputedStyle(document.body).outlineStyle;"
        "s.remove(); return r")
    checks.that("a planted style does nothing", said == "none", said)
    said = window.script_async(
        "const done = arguments[arguments.length - 1];"
        "document.addEventListener('securitypolicyviolation', e => done(e.effectiveDirective));"
        "fetch('http://127.0.0.1:9/').then(() => done('reached'), () => {})")
    checks.that("the page reaches no address", said == "connect-src", said)
    said = window.script("return typeof window.__TAURI__")
    checks.that("the page has no global Tauri object", said == "undefined", said)
    for command, arguments in [
        ("plugin:fs|read_text_file", {"path": "/etc/hostname"}),
        ("plugin:fs|write_text_file", {"path": str(home / "planted")}),
        ("plugin:dialog|open", {"options": {}}),
        ("plugin:window|create", {"options": {"label": "second"}}),
    ]:
        said = window.script_async(
            "const done = arguments[arguments.length - 1];"
            "window.__TAURI_INTERNALS__.invoke(arguments[0], arguments[1])"
            ".then(() => done('done'), e => done(String(e)))", command, arguments)
        refused = "not allowed" in said or "not found" in said
        checks.that(f"the page may not {command}", refused, said)

    started = time.monotonic()
    second = subprocess.run([PROGRAM], env=environment(home), timeout=20,
                            stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    took = time.monotonic() - started
    checks.that("a second start ends by itself", second.returncode == 0, second.returncode)
    checks.that("the first window still answers", window.script("return 1 + 1") == 2)
    print(f"        the second start took {took:.2f} s")

    window.request("POST", f"{window.session}/window/rect", {"width": 777, "height": 666})
    size = window.wait(lambda: (lambda s: s if s[0] == 777 else None)(
        window.script("return [innerWidth, innerHeight]")), "the new size")
    checks.that("the window closes when asked", close_windows("Surefoot") == 1)
    window.wait(lambda: any(home.rglob(".window-state.json")), "the window's state on disk")

with Window(home) as window:
    window.find("body")
    found = window.script("return [innerWidth, innerHeight]")
    checks.that("the window comes back in its size", found == size, (found, size))

checks.finish()
