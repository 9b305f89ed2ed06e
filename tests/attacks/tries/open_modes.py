"""Another account of the same computer can read the program's files."""

from outcome import got_through, need, stopped
from school import School, Student, tap


def attack(ground):
    school = School(ground, names=["Ottilie Vandenbroucke", "Bo Adeyemi"])
    student = Student(school, 1)
    student.hands_in_honestly({school.concepts()[0]: 2})
    tablet = school.tablet()
    tap(tablet, school.join(tablet, 1))
    tablet.call(
        "save_device_settings", language="en", theme="light", names_covered=False, guides_read=[]
    )
    found = []
    for data in (school.desk.data, tablet.data):
        paths = list(data.rglob("*"))
        need(any(path.suffix == ".sqlite" for path in paths), "there is no store")
        found += [path for path in paths if path.stat().st_mode & 0o077]
    if found:
        modes = sorted(
            {f"{path.name} {path.stat().st_mode & 0o777:o}" for path in found if path.is_file()}
        )
        return got_through(
            f"{len(found)} files and folders are open to others: {', '.join(modes[:4])}"
        )
    return stopped("every folder has 700 and every file 600, with a umask of 022")
