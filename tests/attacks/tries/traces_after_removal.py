"""What is left of a student on the disk after the seat was removed, in files that went too."""

import time

from cells import reading
from outcome import got_through, need, stopped
from school import School, Student
from shadow import Shadow

NAME = "Ottilie Vandenbroucke"
DAYS = [f"2026-11-{day:02}" for day in range(16, 28)]


def attack(ground):
    school = School(ground, names=[NAME, "Bo Adeyemi", "Cy Okonkwo"], today=DAYS[0])
    desk = school.desk
    shadow = Shadow(desk, ground / "shadow")
    concepts = school.concepts()
    folder = ground / "class folder"
    folder.mkdir()
    desk.pick(folder)
    desk.call("name_class_folder")
    students = [Student(school, seat) for seat in school.codes]
    removed = students[0]
    file_name = f"{removed.token.lower()}-of-ottilie.sfhandin"
    for at, day in enumerate(DAYS):
        desk.go_to(day)
        shadow.look()
        for student in students:
            school.bring(student.hand_in(student.ratings({concepts[at % len(concepts)]: at % 4})))
            shadow.look()
    (folder / file_name).write_bytes(removed.hand_in(removed.ratings({concepts[0]: 1})))
    (folder / f"broken-{file_name}").write_bytes(b"not ours")
    for _ in range(200):
        if job := desk.call("class_folder")["job"]:
            desk.job(job)
            break
        time.sleep(0.02)
    need(file_name in str(desk.call("imports", before=None)), "the file of the class folder was not imported")
    shadow.look()
    # Names, tokens and file names are sealed: their cells are looked for.
    with reading(desk.desk_path) as store:
        name, token = store.execute("SELECT name, token FROM seat WHERE number = 1").fetchone()
        files = store.execute("SELECT file_name FROM import_file WHERE seat = 1").fetchall()
    words = {
        "the name": name,
        "the device id": removed.device.encode(),
        "the signing key": removed.signer.public.encode(),
        "the token": token,
        "the file's name": files[-1][0],
    }
    before = {name for name, _ in shadow.holding(words)}
    need(before == set(words), f"before the removal only {before}")
    school.ask("remove_seat", seat=1)
    desk.call("discard_removed", number=desk.call("start")["removed"][0]["number"])
    shadow.look()
    if left := shadow.holding(words):
        return got_through(f"after the removal, {shadow.told(left)}")
    return stopped(
        f"none of {len(words)} traces in {len(shadow.seen)} files, unlinked ones included"
    )
