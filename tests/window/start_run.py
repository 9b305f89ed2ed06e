"""How long the window takes to its first usable screen and how much memory it
holds then, as ratios to an empty window of the same parts in the same run. The
ratios are printed beside their targets. The run checks only that every start ends in
a usable screen."""

import contextlib
import os
import pathlib
import statistics
import tempfile
import time

from driver import PROGRAM, Checks, Window

EMPTY = PROGRAM.parent / "examples/empty_window"
STARTS = int(os.environ.get("STARTS", "3"))
TARGET = 1.3
# At rest: the processes together use at most one tick of the clock in this time.
REST_SECONDS = 0.3
USABLE = "h1"

checks = Checks()


def descendants(pid):
    """Process numbers of everything started under `pid`."""
    children = {}
    for entry in pathlib.Path("/proc").iterdir():
        if entry.name.isdigit():
            try:
                stat = (entry / "stat").read_text()
            except OSError:
                continue
            children.setdefault(int(stat.rsplit(")", 1)[1].split()[1]), []).append(int(entry.name))
    found, left = [], [pid]
    while left:
        for child in children.get(left.pop(), []):
            found.append(child)
            left.append(child)
    return found


def memory_mib(pid):
    """Proportional share of memory of everything started under `pid`, in MiB."""
    kib = 0
    for process in descendants(pid):
        try:
            lines = pathlib.Path(f"/proc/{process}/smaps_rollup").read_text().splitlines()
        except OSError:
            continue
        kib += sum(int(line.split()[1]) for line in lines if line.startswith("Pss:"))
    return kib / 1024


def ticks(pid):
    """Ticks of processor time used by everything started under `pid`."""
    used = 0
    for process in descendants(pid):
        with contextlib.suppress(OSError):
            stat = pathlib.Path(f"/proc/{process}/stat").read_text()
            used += sum(map(int, stat.rsplit(")", 1)[1].split()[11:13]))
    return used


def at_rest(pid):
    before = ticks(pid)
    time.sleep(REST_SECONDS)
    return ticks(pid) - before <= 1


def start(program, home):
    """Seconds to a usable screen, and MiB held when the start has come to rest."""
    window = Window(home, program=program)
    with window:
        while not window.elements(USABLE):
            time.sleep(0.005)
        seconds = time.monotonic() - window.asked
        window.wait(lambda: at_rest(window.driver.pid), "the start to come to rest")
        return seconds, memory_mib(window.driver.pid)


with tempfile.TemporaryDirectory(prefix="surefoot-start-", ignore_cleanup_errors=True) as folder:
    homes = {name: pathlib.Path(folder) / name for name in ("empty", "ours")}
    programs = {"empty": EMPTY, "ours": PROGRAM}
    found = {name: [] for name in homes}
    # The first start of each makes folders and caches, and is not counted.
    for turn in range(STARTS + 1):
        for name in homes:
            with checks.step(f"{name}, start {turn}"):
                measured = start(programs[name], homes[name])
                if turn:
                    found[name].append(measured)

for place, what, unit in [(0, "start to a usable screen", "s"), (1, "memory", "MiB")]:
    middle = {name: statistics.median(m[place] for m in found[name]) for name in found}
    ratio = middle["ours"] / middle["empty"]
    said = "" if ratio <= TARGET else "   OVER TARGET"
    print(f"        {what}: empty {middle['empty']:.2f} {unit}, ours {middle['ours']:.2f} {unit}, "
          f"ratio {ratio:.2f} (target: at most {TARGET}; median of {STARTS}){said}")

checks.finish()
