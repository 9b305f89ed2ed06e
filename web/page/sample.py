"""Writes the store of the first student of a sample class into one file without a log.

sample.py FOLDER INTO
"""

import pathlib
import sqlite3
import sys


def main():
    folder, into = map(pathlib.Path, sys.argv[1:])
    students = sorted(folder.rglob("students/*.sqlite"))
    if not students:
        sys.exit(f"{folder} has no student")
    into.unlink(missing_ok=True)
    connection = sqlite3.connect(students[0])
    connection.execute("VACUUM INTO ?", [str(into)])
    connection.close()


if __name__ == "__main__":
    main()
