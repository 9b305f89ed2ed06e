"""One foreign file among the hand-ins that are opened with the program loses them all."""

from outcome import got_through, need, stopped
from program import Refused
from school import School, Student


def attack(ground):
    school = School(ground)
    concept = school.concepts()[0]
    students = [Student(school, seat) for seat in school.codes]
    files = school.write(*(student.hand_in(student.ratings({concept: 2})) for student in students))
    school.desk.open_with(files[0])
    need(school.desk.call("opened_files")["hand_ins"] == 1, "an opened hand-in does not wait")
    foreign = ground / "notes.sfclass"
    foreign.write_bytes(b"not ours")
    school.desk.open_with(foreign, *files[1:])
    said = ""
    try:
        school.desk.call("opened_files")
    except Refused as refused:
        said = str(refused)
    waiting = school.desk.call("opened_files")["hand_ins"]
    if waiting < 3:
        return got_through(f"of 3 hand-ins {waiting} wait ({said})")
    return stopped(f"all 3 hand-ins wait ({said or 'no error'})")
