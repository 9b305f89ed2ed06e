"""A class folder on two devices in the real window: a teacher's computer and a tablet, one after the
other. The folder is chosen in the system's own dialog; "No school today" and "we are on day 3" travel
by it."""

import datetime
import pathlib
import tempfile

from dialogs import answered, opened, still_dialogs, window_manager
from driver import Checks, Missing, Window

# A round through the folder is made every five seconds.
TRAVEL_SECONDS = 90
UNWORDED = "\u27e8"

checks = Checks()
ground = tempfile.TemporaryDirectory(prefix="surefoot-window-", ignore_cleanup_errors=True)
desk, tablet, shared = (pathlib.Path(ground.name) / name for name in ("desk", "tablet", "shared"))
today = datetime.date.today()
# Every day of the week has school, so that the run means the same on each.
NEW_CLASS = {
    "title": "Room 3",
    "names": ["", ""],
    "year": {"first_day": str(today - datetime.timedelta(30)),
             "last_day": str(today + datetime.timedelta(200)),
             "weekdays": [1, 2, 3, 4, 5, 6, 7], "closures": []},
    "grades": [4],
    "rotation_days": 10,
    "concepts_a_day": 3,
}


def picture(window, name):
    window.shot(f"class-folder-{name}")
    words = window.script("return document.body.innerText")
    checks.that(f"no word is missing on {name}", UNWORDED not in words)


def choose(window, hook, folder):
    """Presses a button that opens the dialog for folders, and chooses one."""
    window.press(hook)
    answered(window, hook, opened(folder))


def shows(window, hook, words, seconds=TRAVEL_SECONDS):
    # In one step, because the element may be made anew at any time.
    text = f'return document.querySelector(\'[data-testid="{hook}"]\')?.innerText ?? ""'

    def seen():
        return words in window.script(text)
    return window.wait(seen, f"{words!r} in {hook}", seconds)


def called(window, name, **arguments):
    kind, value = window.call(name, arguments)
    if kind != "ok":
        raise Missing(f"{name}: {value}")
    return value


def files(end):
    return sorted(shared.glob(f"*.{end}"))


for home in (desk, tablet):
    home.mkdir(parents=True, mode=0o700)
    still_dialogs(home)
shared.mkdir()
manager = window_manager()
try:
    with Window(desk) as window:
        with checks.step("the desk names the class folder, and puts the class pack there"):
            window.find("body")
            class_id = called(window, "create_class", **{"class": NEW_CLASS})["id"]
            code = called(window, "join_slips", **{"class": class_id})[0]["code"]
            window.script("location.reload()")
            window.press("start-teacher")
            window.press("tab-files")
            choose(window, "class-folder-name", shared)
            shows(window, "class-folder-line", "up to date")
            picture(window, "named")
            assert len(files("sfclass")) == 1, files("sfclass")

    with Window(tablet) as window:
        with checks.step("a student joins from the folder"):
            window.press("start-student")
            choose(window, "join-folder", shared)
            window.press("join-next")
            window.type(window.hook("join-code"), code)
            window.press("join-next")
            window.type(window.hook("join-nickname"), "Wren")
            window.press("join-avatar-heron")
            window.press("join-finish")
            window.find("[data-testid^=rate-]")
        with checks.step("the student says that the class is on day 3"):
            window.press("say-day")
            window.press("say-day-3")
            window.wait(lambda: "Day 3 of 10" in window.script("return document.body.innerText"),
                        "day 3")
            picture(window, "day-3")
        with checks.step("a tap goes to the folder by itself"):
            window.click(window.find("[data-testid^=rate-]"))
            window.wait(lambda: files("sfhandin"), "the hand-in", TRAVEL_SECONDS)
    first_hand_in = files("sfhandin")[0].read_bytes()

    with Window(desk) as window:
        with checks.step("the desk imports it, whatever screen is open"):
            window.press("start-teacher")
            window.hook("day-close")

            def reports():
                return called(window, "seat_holdings", **{"class": class_id, "seat": 1})["reports"]

            window.wait(lambda: reports() == 1, "the report", TRAVEL_SECONDS)
        with checks.step("no school today: said at the desk, and put into the folder"):
            before = files("sfclass")[0].read_bytes()
            window.press("day-close")
            shows(window, "day-number", "No school")
            shows(window, "day-unaware", "class folder")
            window.wait(lambda: files("sfclass")[0].read_bytes() != before, "the new pack",
                        TRAVEL_SECONDS)
            picture(window, "no-school-desk")

    with Window(tablet) as window:
        with checks.step("the tablet takes the pack, shows no school, and tells the desk"):
            window.click(window.find("[data-testid^=student-]"))
            window.wait(
                lambda: "No school today" in window.script("return document.body.innerText"),
                "no school", TRAVEL_SECONDS)
            picture(window, "no-school-tablet")
            window.wait(lambda: files("sfhandin")[0].read_bytes() != first_hand_in,
                        "a new hand-in", TRAVEL_SECONDS)

    with Window(desk) as window:
        with checks.step("the open board follows: the device knows"):
            window.press("start-teacher")
            shows(window, "day-number", "No school")
            window.wait(lambda: not window.elements('[data-testid="day-unaware"]'),
                        "that the device knows", TRAVEL_SECONDS)
            assert reports() == 1, "the work of the day stays"
            picture(window, "known")
finally:
    manager.terminate()

checks.finish()
