"""The sealed cells of a desk, opened by our own library: the one of the oracles."""

import contextlib
import pathlib
import sqlite3
import sys

sys.path.append(str(pathlib.Path(__file__).resolve().parents[1] / "oracle"))

from desk_cells import data_key, open_cell  # noqa: E402, F401


def reading(path):
    """The store at `path`, opened to read."""
    return contextlib.closing(sqlite3.connect(f"file:{path}?mode=ro", uri=True))


def column(path, table, column):
    """The cells of a column, as they are in the file."""
    with reading(path) as store:
        return [cell for (cell,) in store.execute(f"SELECT {column} FROM {table}") if cell]
