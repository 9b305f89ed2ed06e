"""What a kill in the middle of work leaves in the folders can be read by somebody later."""

import random
import threading
import time

from outcome import got_through, need, stopped
from program import Refused
from school import School, Student, tap

NAME = "Ottilie Vandenbroucke"
KILLS = 12


def attack(ground):
    school = School(ground, names=[NAME, "Bo Adeyemi", "Cy Okonkwo"])
    concepts = school.concepts()
    for seat in school.codes:
        student = Student(school, seat)
        student.hands_in_honestly(dict.fromkeys(concepts[:20], seat % 4))
    tablet = school.tablet()
    tap(tablet, school.join(tablet, 1))
    usual = {path.suffix for path in school.desk.stored()}
    dice, seen, desk = random.Random(3), set(), school.desk
    store = {"kind": "desk"}

    def work(program):
        try:
            while True:
                program.call("back_up", store=store, passphrase="seven green kettles")
                copies = program.call("copies", **store)["copies"]
                program.call("restore_copy", store=store, name=copies[-1]["name"])
        except (OSError, Refused, ValueError):
            pass

    for _ in range(KILLS):
        busy = threading.Thread(target=work, args=(desk,))
        busy.start()
        until = time.monotonic() + 0.05 + dice.random() * 0.6
        while time.monotonic() < until:
            seen |= {path.suffix for path in desk.stored()}
        desk.close()
        busy.join()
        left = [path for path in desk.stored() if path.suffix == ".part"]
        seen |= {path.suffix for path in left}
        desk = type(desk)(ground / "desk", school.desk.today)
        school.desk = desk
        need(school.ask("board")["rows"], "the desk is gone")
        parts = [path.name for path in desk.stored() if ".part" in path.name]
        if parts:
            return got_through(f"after the next start there still is {parts[0]}")
        loose = [path.name for path in desk.stored() if path.stat().st_mode & 0o077]
        if loose:
            return got_through(f"open to other accounts: {loose[0]}")
    need(".part" in seen, f"no work was under way: {seen - usual}")
    return stopped(f"{KILLS} kills in the middle of backups and restores leave no part of a file")
