"""Second names for every file of a program, so that what is unlinked can still be read."""

import collections
import os


class Shadow:
    """Keeps a second name of each file in a program's data folder that it ever saw."""

    def __init__(self, program, folder):
        self.program, self.folder = program, folder
        self.seen = set()
        folder.mkdir()

    def look(self):
        for path in self.program.stored():
            number = path.stat().st_ino
            if number not in self.seen:
                self.seen.add(number)
                os.link(path, self.folder / f"{len(self.seen)}-{path.name}")

    def holding(self, words):
        """How many files hold each word, given as bytes: kept ones, and unlinked ones."""
        found = collections.Counter()
        for path in self.folder.iterdir():
            content, where = path.read_bytes(), "unlinked" if path.stat().st_nlink == 1 else "kept"
            found.update((name, where) for name, word in words.items() if word in content)
        return found

    def told(self, found):
        """What `holding` found, in words."""
        parts = (f"{name} in {many} {where}" for (name, where), many in sorted(found.items()))
        return f"of {len(self.seen)} files ever made: {', '.join(parts)}"
