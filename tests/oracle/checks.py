"""Counts what an oracle checks."""

SHOWN = 50

passed = failed = 0


def check(what, holds, detail=""):
    """Counts one check. Prints it if it fails, up to SHOWN of them."""
    global passed, failed
    if not isinstance(what, str):
        raise TypeError("the words come first")
    if holds:
        passed += 1
        return
    failed += 1
    if failed <= SHOWN:
        print("FAILED", what, detail)


def ended():
    """Prints the counts. Returns the exit code: 0 if something was checked and all of it held."""
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or not passed else 0
