"""Pipes, links, devices and folders named like hand-ins hold the import up, or lead it elsewhere."""

import os
import time

from outcome import got_through, need, stopped
from program import command
from school import School, Student

MOST_SECONDS = 60


def attack(ground):
    school = School(ground)
    concept = school.concepts()[0]
    student = Student(school, 1)
    folder = ground / "inbox"
    folder.mkdir()
    (folder / "m.sfhandin").write_bytes(student.hand_in(student.ratings({concept: 1})))
    secret = ground / "secret.sfhandin"
    secret.write_bytes(Student(school, 2).hand_in(Student(school, 2).ratings({concept: 1})))
    os.mkfifo(folder / "a-pipe.sfhandin")
    os.mkfifo(folder / "pipe.zip")
    os.symlink("/dev/zero", folder / "b-zero.sfhandin")
    os.symlink("/dev/zero", folder / "zero.zip")
    os.symlink(folder, folder / "c-circle")
    os.symlink("d-self.sfhandin", folder / "d-self.sfhandin")
    os.symlink(secret, folder / "e-secret.sfhandin")
    os.symlink("/", folder / "root")
    (folder / "f-folder.sfhandin").mkdir()
    deep = folder
    for _ in range(120):
        deep = deep / "deep"
        deep.mkdir()
    (folder / ("x" * 240 + ".sfhandin")).write_bytes(b"not ours")
    (folder / os.fsdecode(b"\xff\xfe.sfhandin")).write_bytes(b"not ours")
    started = time.monotonic()
    school.desk.pick(folder)
    school.desk.job(school.desk.call("import_hand_ins", **{"from": "folder"}))
    ran = command("import", "--desk", school.desk.desk_path, "--today", school.desk.today, folder)
    took = time.monotonic() - started
    need(school.reports(1) == 1, "the honest hand-in in the folder does not count")
    if took > MOST_SECONDS or ran.returncode not in (0, 1):
        return got_through(f"the two imports take {took:.0f} s, the command ends with {ran.returncode}")
    if school.reports(2):
        return got_through("a link out of the folder is followed")
    return stopped(f"12 odd entries, two imports in {took:.1f} s; no link is followed")
