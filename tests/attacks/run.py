#!/usr/bin/env python3
"""Attacks on the program with our own implementation of its file formats.

    run.py [NAME...]

Each file of `tries` is one attack: `attack(ground)` drives the command and the test bridge
in an empty folder, and returns what it reached or what stopped it. An attack that cannot be
carried out is a failure too: it shows nothing. Ends with "N passed, M failed".
"""

import concurrent.futures
import importlib
import pathlib
import sys
import tempfile
import time
import traceback

HERE = pathlib.Path(__file__).resolve().parent
AT_ONCE = 2

sys.path.insert(0, str(HERE))


def carry_out(name):
    """The kind of end, its proof, and the seconds it took."""
    import program

    started = time.monotonic()
    with tempfile.TemporaryDirectory(prefix="surefoot-attack-") as ground:
        try:
            outcome = importlib.import_module(f"tries.{name}").attack(pathlib.Path(ground))
            kind = "GOT THROUGH" if outcome.got_through else "stopped"
            words = outcome.proof
        except Exception:
            kind, words = "NOT CARRIED OUT", traceback.format_exc()
        finally:
            program.close_all()
    return kind, words, time.monotonic() - started


def main(asked):
    names = asked or sorted(path.stem for path in HERE.glob("tries/[a-z]*.py"))
    kinds = []
    with concurrent.futures.ProcessPoolExecutor(AT_ONCE) as pool:
        for name, (kind, words, seconds) in zip(names, pool.map(carry_out, names), strict=True):
            kinds.append(kind)
            print(f"{kind:<15} {name:<32} {seconds:5.1f} s  {words}", flush=True)
    through, broken = kinds.count("GOT THROUGH"), kinds.count("NOT CARRIED OUT")
    print(f"\n{len(kinds)} attacks tried, {through} got through")
    print(f"{len(kinds) - through - broken} passed, {through + broken} failed")
    return 1 if through or broken or not kinds else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
