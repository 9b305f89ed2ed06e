"""Something else is built in: packages, actions and programs that nothing pins by their content."""

import json
import re
import subprocess
import tomllib

from outcome import got_through, need, stopped
from program import TOP

# What the tree may hold beside text: pictures, and samples that a reader must refuse or read.
PROGRAMS = (".jar", ".class", ".so", ".dll", ".exe", ".wasm", ".whl", ".a", ".o", ".pyc", ".node")


def attack(_ground):
    npm = json.loads((TOP / "ui/package-lock.json").read_text())["packages"]
    npm = {name: one for name, one in npm.items() if name and not one.get("link")}
    loose = [name for name, one in npm.items() if "integrity" not in one]

    crates = tomllib.loads((TOP / "Cargo.lock").read_text())["package"]
    crates = [one for one in crates if "source" in one]
    loose += [one["name"] for one in crates if "checksum" not in one]
    loose += [one["name"] for one in crates if not one["source"].startswith("registry+")]

    asked = (TOP / "tests/oracle/requirements.txt").read_text().replace(".syntax", "-syntax").split()
    lock = (TOP / "tests/oracle/requirements.lock").read_text()
    python = re.split(r"\n(?=[A-Za-z])", lock)[1:]
    loose += [one.split()[0] for one in python if "--hash=sha256:" not in one]
    loose += [one for one in asked if f"\n{one} " not in lock]
    need(min(len(npm), len(crates), len(python)) > 20, "a lock lists no packages")
    # All of Python's is installed by that lock.
    steps = "".join(path.read_text() for path in (TOP / "tests/steps").glob("*.sh"))
    loose += re.findall(r"pip install(?! [^\n]*--require-hashes).*", steps)

    workflows = [*(TOP / ".github/workflows").iterdir()]
    runs = "".join(path.read_text() for path in workflows)
    need("./test" in runs, "the workflow runs nothing")
    loose += re.findall(r"uses: *(?!\./)(\S+)", runs)
    loose += re.findall(r"(?:curl|wget) .*", runs + steps)

    tracked = subprocess.run(["git", "ls-files"], cwd=TOP, capture_output=True, text=True).stdout
    need("Cargo.lock" in tracked, "the files of the tree are not known")
    loose += [name for name in tracked.split("\n") if name.endswith(PROGRAMS)]
    if loose:
        return got_through(f"{len(loose)} are pinned by nothing, such as {loose[0]}")
    return stopped(
        f"{len(npm)} packages of the screens, {len(crates)} crates and {len(python)} of Python "
        f"have their sums; no action of others, no program in the tree"
    )
