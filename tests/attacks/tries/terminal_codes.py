"""Names of files and fields of a hand-in send control codes to the teacher's terminal."""

from outcome import got_through, need, stopped
from program import command
from school import School, Student

BAD = ("\x1b[2J", "\x9b2J", "\u202e", "\u2066", "\r")


def attack(ground):
    school = School(ground)
    concept = school.concepts()[0]
    student = Student(school, 1)
    student.hands_in_honestly({concept: 2})
    names = [f"a{code}b{at}.sfhandin" for at, code in enumerate(BAD)]
    honest = student.hand_in(student.ratings({concept: 1}))
    odd_field = student.hand_in(extra={f"\x1b]0;owned\x07{BAD[2]}": 1})
    paths = school.write(*[honest] * len(BAD), odd_field, names=[*names, "field.sfhandin"])
    ran = command("import", "--desk", school.desk.desk_path, "--today", school.desk.today, *paths)
    bank = school.write(b"concept,kind\n", names=[f"bank{BAD[0]}.csv"])
    checked = command("bank", "check", *bank)
    shown = (ran.stdout + ran.stderr + checked.stdout).decode(errors="replace")
    need(ran.returncode == 0 and "field.sfhandin" in shown, f"the import failed: {shown}")
    need(b"bank" in checked.stdout, "the bank's file is not named")
    found = [code for code in (*BAD, "\x1b]", "\x07") if code in shown]
    if found:
        return got_through(f"raw on the terminal: {', '.join(ascii(code) for code in found)}")
    return stopped(f"none of {len(BAD) + 2} codes reaches the terminal")
