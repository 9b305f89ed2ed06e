"""Asks the program. It is named by SUREFOOT."""

import json
import os
import subprocess
import tempfile


def ask(method, cases, *more, **of_file):
    """What `surefoot insight` prints for some cases."""
    with tempfile.NamedTemporaryFile("w", suffix=".json") as file:
        json.dump({"cases": cases} | of_file, file)
        file.flush()
        asked = [os.environ["SUREFOOT"], "insight", method, "--instances", file.name, *more]
        return json.loads(subprocess.run(asked, check=True, capture_output=True).stdout)


def answers(method, cases, *more, **of_file):
    return [found["answer"] for found in ask(method, cases, *more, **of_file)["cases"]]


class Tally:
    """Counts checks, and prints those that fail."""

    def __init__(self):
        self.passed = self.failed = 0

    def __call__(self, words, fits):
        self.passed, self.failed = self.passed + bool(fits), self.failed + (not fits)
        if not fits:
            print("FAILED", words)

    def end(self):
        """The exit code: a run that checks nothing has failed."""
        print(f"{self.passed} passed, {self.failed} failed")
        return self.failed > 0 or self.passed == 0
