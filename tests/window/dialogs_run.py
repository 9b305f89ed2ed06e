"""The system's own dialogs, answered by keys as a person would: a class pack is
saved and picked again, and a folder of hand-ins is imported."""

import pathlib
import shutil
import tempfile

from dialogs import during_dialog, escaped, opened, saved_as, still_dialogs, window_manager
from driver import Checks, Window

checks = Checks()
folder = tempfile.TemporaryDirectory(prefix="surefoot-window-", ignore_cleanup_errors=True)
home = pathlib.Path(folder.name)
manager = window_manager()
still_dialogs(home)

NEW_CLASS = {
    "title": "Room 3",
    "names": ["", ""],
    "year": {"first_day": "2026-08-17", "last_day": "2027-05-28",
             "weekdays": [1, 2, 3, 4, 5], "closures": []},
    "grades": [4],
    "rotation_days": 10,
    "concepts_a_day": 3,
}


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
