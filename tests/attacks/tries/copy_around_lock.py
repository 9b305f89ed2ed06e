"""A copy from before the lock, or a backup of another desk, opens a locked desk."""

from outcome import got_through, need, stopped
from program import Refused
from school import School, Student

NAME = "Ottilie Vandenbroucke"
WORDS = "seven green kettles"


def attack(ground):
    school = School(ground, names=[NAME, "Bo Adeyemi"], today="2026-11-24")
    desk = school.desk
    Student(school, 1).hands_in_honestly({school.concepts()[0]: 2})
    desk.go_to("2026-11-25")
    desk.call("start")
    copies = desk.call("copies", kind="desk")["copies"]
    need(copies, "there is no copy of the desk")
    school.lock(WORDS)
    whys = []
    for copy in copies:
        try:
            desk.call("restore_copy", store={"kind": "desk"}, name=copy["name"])
            if NAME in str(school.ask("class_setup")):
                return got_through(f"{copy['name']} is restored and shows the names")
            whys.append(f"{copy['name']} stays locked")
        except Refused as refused:
            whys.append(str(refused))
    return stopped("; ".join(whys))
