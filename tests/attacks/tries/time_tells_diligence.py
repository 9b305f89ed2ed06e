"""The times of the files in the class folder tell how often each student has handed in."""

import datetime

from class_folder import ClassFolder, rate
from outcome import got_through, need, stopped

NOON = datetime.datetime(2026, 11, 25, 12, tzinfo=datetime.timezone.utc).timestamp()
STEP_SECONDS = 2


def attack(ground):
    folder = ClassFolder(ground)
    tablet = folder.school.tablet()
    eager = folder.join(tablet, 1)
    for place in range(4):
        rate(tablet, eager, place)
        folder.visit(tablet)
    (first,) = folder.files("hand-in-*")
    late = folder.join(tablet, 2, "Bo")
    rate(tablet, late, 0)
    folder.visit(tablet)
    second = next(path for path in folder.files("hand-in-*") if path != first)
    after = [round(path.stat().st_mtime - NOON) for path in (first, second)]
    need(all(0 <= one < 3600 and one % STEP_SECONDS == 0 for one in after), after)
    guessed = [one // STEP_SECONDS for one in after]
    if guessed == [4, 1]:
        return got_through(f"read off the times: {guessed}, where it was 4 and 1")
    return stopped(f"the times would say {guessed}, where it was 4 and 1")
