"""A student's own hand-ins make the sums of the class overflow, and its screens fail."""

import formats
from outcome import got_through, need, stopped
from program import Refused, command
from school import School, Student

FILES = 5


def attack(ground):
    school = School(ground)
    concept = school.concepts()[0]
    student = Student(school, 1)
    student.hands_in_honestly({concept: 2})
    files = []
    for _ in range(FILES):
        entries = [
            formats.practice(
                formats.new_id(),
                "2026-09-14",
                concept,
                [(sure, *[formats.MOST_COUNT] * 3) for sure in range(4)],
            )
            for _ in range(formats.MOST_ENTRIES)
        ]
        files.append(student.hand_in(practised=entries))
    found = school.verdicts(*files)
    need(found[0] in ("updated", "too_many_entries", "bad_content"), found)
    size = sum(map(len, files)) // 1024
    failed = []
    for call, arguments in (("board", {}), ("talk", {"minutes": 5}), ("student_page", {"seat": 1})):
        try:
            school.ask(call, **arguments)
        except Refused as refused:
            failed.append(str(refused))
    shown = command("board", "--desk", school.desk.desk_path, "--today", school.desk.today)
    if shown.returncode:
        failed.append(f"surefoot board: {' '.join(shown.stderr.decode().split())[:140]}")
    if failed:
        return got_through(f"{FILES} files of {size} KiB in all; {'; '.join(failed)}")
    return stopped(f"{FILES} files are {found}; board, talk and page come")
