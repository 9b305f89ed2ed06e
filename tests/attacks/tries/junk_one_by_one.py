"""Junk comes file by file, so that each makes an import: the journal fills, the last import that can be
undone is junk, and "Who has not" has thousands of lines."""

from class_folder import ClassFolder, rate
from outcome import got_through, need, stopped

ONE_BY_ONE, AT_ONCE = 30, 4_000
MOST_ANSWER_BYTES = 20_000


def attack(ground):
    folder = ClassFolder(ground)
    school = folder.school
    tablet = school.tablet()
    rate(tablet, folder.join(tablet, 1), 0)
    folder.visit(tablet)
    folder.look()
    need(school.reports(1) == 1, "the honest hand-in did not come")
    for number in range(ONE_BY_ONE):
        (folder.path / f"a{number}.sfhandin").write_bytes(b"%d" % number)
        folder.look(6)
    journal = school.desk.call("imports", before=None)
    refused = sum(one["tally"]["refused"] for one in journal["imports"])
    need(refused == ONE_BY_ONE, f"{refused} files of junk were looked at")
    if len(journal["imports"]) > 2:
        return got_through(f"{len(journal['imports'])} imports in the journal")
    if journal["undoable"]["files"] != 1:
        return got_through("junk is what can be undone")
    for number in range(AT_ONCE):
        (folder.path / f"b{number}.sfhandin").write_bytes(b"more %d" % number)
    folder.look(24)
    answer = school.ask("who_has_not", school_days=5)
    (one,) = answer["lacking"]
    need(one["what"]["files"] == ONE_BY_ONE + AT_ONCE, one)
    if len(str(answer)) > MOST_ANSWER_BYTES:
        return got_through(f"an answer of {len(str(answer))} bytes")
    return stopped(f"{ONE_BY_ONE} files one by one are one import, {one['what']['files']} one line")
