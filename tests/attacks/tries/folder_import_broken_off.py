"""An import of the class folder that fails, is stopped, or is lost with the desk."""

import sqlite3

from class_folder import ClassFolder, rate
from outcome import got_through, need, stopped
from program import Program

FLOOD = 300


def attack(ground):
    folder = ClassFolder(ground)
    school = folder.school
    tablet = school.tablet()
    wren = folder.join(tablet, 1)

    earlier = school.desk.desk_path.with_name("earlier")
    school.desk.close()
    source = sqlite3.connect(school.desk.desk_path)
    source.execute("VACUUM INTO ?", (str(earlier),))
    source.close()
    school.desk = Program(school.desk.data.parent, school.desk.today)

    # Another program holds the desk.
    rate(tablet, wren, 0)
    folder.visit(tablet)
    other = sqlite3.connect(school.desk.desk_path, isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    failed = school.desk.job(folder.next_job())
    other.execute("ROLLBACK")
    other.close()
    need(failed["kind"] == "failed", failed)
    folder.look_after_pause()
    if school.reports(1) != 1:
        return got_through("an import that failed was not tried again")

    # The teacher stops a long one.
    rate(tablet, wren, 1)
    folder.visit(tablet)
    for number in range(FLOOD):
        (folder.path / f"a{number}.sfhandin").write_bytes(b"%d" % number)
    job = folder.next_job()
    school.desk.call("cancel_job", **job)
    need(school.desk.job(job)["report"]["cancelled"], "it was not stopped")
    folder.look_after_pause()
    if school.reports(1) != 2:
        return got_through("an import that was stopped was not tried again")

    # An earlier desk is put back while the program is closed.
    path = school.desk.desk_path
    school.desk.close()
    for end in ("-wal", "-shm"):
        path.with_name(path.name + end).unlink(missing_ok=True)
    earlier.replace(path)
    school.desk = Program(path.parents[2], school.desk.today)
    need(school.reports(1) == 0, "the desk is not the earlier one")
    folder.look()
    if school.reports(1) != 2:
        return got_through("an earlier desk lacks what the later one had imported")
    return stopped("each was imported again")
