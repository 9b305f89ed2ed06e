"""Somebody looks over the shoulder of a teacher who types the desk's passphrase in a terminal, lists
the processes, or tries the command without it."""

import os
import pathlib
import pty
import select
import subprocess
import time

from outcome import got_through, need, stopped
from program import BINARIES, command
from school import School

WORDS = "seven green kettles"


def typed(arguments, words):
    """Runs the command in a terminal and types `words`. Returns its status, what the terminal
    showed, and whether the words were among its arguments or variables."""
    ours, theirs = pty.openpty()
    ran = subprocess.Popen(
        [BINARIES / "surefoot", *arguments],
        stdin=theirs,
        stdout=theirs,
        stderr=theirs,
        close_fds=True,
        start_new_session=True,
    )
    os.close(theirs)
    shown, sent, listed, until = b"", False, False, time.monotonic() + 120
    while time.monotonic() < until:
        ready, _, _ = select.select([ours], [], [], 0.1)
        if ready:
            try:
                more = os.read(ours, 4096)
            except OSError:
                break
            if not more:
                break
            shown += more
        if not sent and b"Passphrase" in shown:
            time.sleep(0.2)
            os.write(ours, words.encode() + b"\n")
            sent = True
        if sent and ran.poll() is None:
            for what in ("cmdline", "environ"):
                try:
                    text = pathlib.Path(f"/proc/{ran.pid}/{what}").read_bytes()
                except OSError:
                    continue
                listed = listed or words.encode() in text
    os.close(ours)
    need(sent, f"the terminal was not asked: {shown[:300]}")
    return ran.wait(60), shown.decode(errors="replace"), listed


def attack(ground):
    school = School(ground, seats=2)
    desk = school.desk
    desk.call("set_desk_lock", current=None, passphrase=WORDS)
    today, path = desk.today, desk.desk_path
    desk.close()
    arguments = ["board", "--desk", path, "--today", today]
    status, shown, listed = typed(arguments, WORDS)
    need(status == 0, f"status {status}: {shown[:300]}")
    if WORDS in shown or listed:
        return got_through("the passphrase is shown or listed with the process")
    for words in ("seven green kettle", ""):
        status, shown, _ = typed(arguments, words)
        if status == 0:
            return got_through(f"{words!r} opens the desk")
    silent = command(*arguments)
    if silent.returncode == 0:
        return got_through("without a terminal the desk opens")
    return stopped("typed without being shown; wrong, empty and missing passphrases are refused")
