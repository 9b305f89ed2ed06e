"""The program as the package installed it: it opens by itself, and with a file."""

import pathlib
import tempfile

from driver import Checks, Window

checks = Checks()
folder = tempfile.TemporaryDirectory(prefix="surefoot-installed-", ignore_cleanup_errors=True)
home = pathlib.Path(folder.name)

with Window(home / "first") as window:
    heading = window.find("h1")
    checks.that("the first page has its heading", bool(window.text(heading)), window.text(heading))
    kind, answer = window.call("start")
    checks.that("the calls answer", kind == "ok", (kind, answer))

broken = home / "broken.sfclass"
broken.write_bytes(b"no class pack")
with Window(home / "second", [str(broken)]) as window:
    window.find("h1")
    said = window.wait(lambda: "not a Surefoot file" in window.script("return document.body.innerText"),
                       "what is said of the file")
    checks.that("a file it was opened with is read and described by its content", bool(said))
checks.that("and is unchanged", broken.read_bytes() == b"no class pack")

checks.finish()
