#!/usr/bin/env python3
"""Counts checks and keeps their times.

    tally.py check RECORD NAME SECONDS STATUS LOG
        Prints how many tests of a finished check passed and failed, and adds the
        check to the record. LOG is what it printed; a report of Vitest or Playwright
        is the file of the same name that ends in .json.
    tally.py end RECORD SECONDS
        Prints the ten slowest tests or checks, the total time, and
        "N passed, M failed". Exits with 0 only if something passed and nothing failed.
"""

import json
import pathlib
import re
import sys

SLOWEST = 10


def of_vitest(report):
    tests = [test for file in report["testResults"] for test in file["assertionResults"]]
    times = [(test["fullName"], (test.get("duration") or 0) / 1000) for test in tests]
    # A file that cannot be loaded has no tests.
    broken = sum(file["status"] == "failed" and not file["assertionResults"]
                 for file in report["testResults"])
    return report["numPassedTests"], report["numFailedTests"] + broken, times


def of_playwright(report):
    def specs(suite):
        yield from suite.get("specs", [])
        for inner in suite.get("suites", []):
            yield from specs(inner)

    times = [
        (f"{spec['file']} {spec['title']}", sum(r["duration"] for r in test["results"]) / 1000)
        for suite in report["suites"] for spec in specs(suite) for test in spec["tests"]
    ]
    counts = report["stats"]
    return counts["expected"], counts["unexpected"] + counts["flaky"] + len(report["errors"]), times


def of_cargo(log):
    passed = failed = 0
    times, name = [], "?"
    for line in log.splitlines():
        if found := re.match(r" +Running .*\(.*/(.+)-[0-9a-f]+\)$", line):
            name = found[1]
        elif found := re.match(r" +Doc-tests (\S+)", line):
            name = f"{found[1]} documentation"
        elif found := re.match(r"test result: .* (\d+) passed; (\d+) failed;.* in ([\d.]+)s", line):
            passed, failed = passed + int(found[1]), failed + int(found[2])
            times.append((name, float(found[3])))
    return passed, failed, times


def counted(log_path, status):
    """Passed, failed, and (name, seconds) of what was timed by itself."""
    log = log_path.read_text(errors="replace")
    report = log_path.with_suffix(".json")
    said = re.findall(r"^(\d+) passed, (\d+) failed$", log, re.M)
    if report.exists():
        report = json.loads(report.read_text())
        found = of_playwright(report) if "suites" in report else of_vitest(report)
    elif "\ntest result: " in log:
        found = of_cargo(log)
    elif said:
        found = int(said[-1][0]), int(said[-1][1]), []
    else:
        found = int(status == 0), int(status != 0), []
    passed, failed, times = found
    # A run that looked at nothing proves nothing.
    if failed == 0 and (status != 0 or passed == 0):
        failed = 1
    return passed, failed, times


def check(record, name, seconds, status, log):
    passed, failed, times = counted(pathlib.Path(log), int(status))
    line = {"name": name, "passed": passed, "failed": failed, "seconds": int(seconds),
            "parts": times}
    # In one piece, as another check may end at the same time.
    with open(record, "ab", buffering=0) as file:
        file.write(json.dumps(line).encode() + b"\n")
    print(passed, failed)


def end(record, seconds):
    checks = [json.loads(line) for line in pathlib.Path(record).read_text().splitlines()]
    passed, failed = (sum(c[kind] for c in checks) for kind in ("passed", "failed"))
    times = [(seconds, f"{c['name']}: {name}") for c in checks for name, seconds in c["parts"]]
    times += [(c["seconds"], c["name"]) for c in checks if not c["parts"]]
    print(f"\nThe {SLOWEST} slowest:")
    for took, name in sorted(times, reverse=True)[:SLOWEST]:
        print(f"  {took:7.1f} s  {name}")
    minutes, rest = divmod(int(seconds), 60)
    print(f"\ntook {minutes} min {rest} s")
    print(f"{passed} passed, {failed} failed")
    return failed > 0 or passed == 0


if __name__ == "__main__":
    sys.exit({"check": check, "end": end}[sys.argv[1]](*sys.argv[2:]))
