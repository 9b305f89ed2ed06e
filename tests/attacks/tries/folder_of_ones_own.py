"""On a shared tablet a student chooses a folder of their own with a copy of the class pack, so that
the hand-ins of the others go there; and stops the class folder."""

import shutil

from class_folder import ClassFolder, rate
from outcome import got_through, need, stopped


def attack(ground):
    folder = ClassFolder(ground)
    school = folder.school
    tablet = school.tablet()
    wren, bo = folder.join(tablet, 1), folder.join(tablet, 2, "Bo")
    elsewhere = ground / "elsewhere"
    shutil.copytree(folder.path, elsewhere)
    tablet.pick(elsewhere)
    tablet.call("show_folder", student=bo)
    for number, student in enumerate((wren, bo)):
        rate(tablet, student, number)
    folder.visit(tablet)
    need(list(elsewhere.glob("*.sfhandin")), "the classmate's own hand-in does not go there")
    folder.look()
    if school.reports(1) != 1:
        return got_through("the hand-in of the other student went elsewhere")
    tablet.call("stop_shown_folder", student=bo)
    rate(tablet, wren, 2)
    folder.visit(tablet)
    folder.look()
    if school.reports(1) != 2:
        return got_through("the class folder stopped for the other student")
    need(school.reports(2) == 0, "the classmate's hand-in came by itself")
    return stopped("only the classmate's own hand-ins go to the other folder")
