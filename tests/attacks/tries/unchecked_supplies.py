"""Something else is built in: packages, actions and tools that nothing pins by their content."""

import json
import re

from outcome import got_through, need, stopped
from program import TOP


def attack(_ground):
    packages = json.loads((TOP / "ui/package-lock.json").read_text())["packages"]
    fetched = {name: one for name, one in packages.items() if name and not one.get("link")}
    need(len(fetched) > 50, "the lock lists no packages")
    loose = [name for name, one in fetched.items() if "integrity" not in one]
    workflows = "".join(
        path.read_text() for path in sorted((TOP / ".github/workflows").glob("*.y*ml"))
    )
    actions = re.findall(r"uses: *(\S+@\S+)", workflows)
    need(actions, "the workflows use no action")
    by_tag = [action for action in actions if not re.search("@[0-9a-f]{40}$", action)]
    wrapper = TOP / "src-tauri/gen/android/gradle/wrapper/gradle-wrapper.properties"
    need("distributionUrl" in wrapper.read_text(), "the Gradle wrapper names no distribution")
    unsummed = "distributionSha256Sum" not in wrapper.read_text()
    if loose or by_tag or unsummed:
        return got_through(
            f"{len(loose)} of {len(fetched)} packages without integrity, "
            f"{len(by_tag)} of {len(actions)} actions by a tag, Gradle's sum "
            f"{'missing' if unsummed else 'given'}"
        )
    return stopped(
        f"{len(fetched)} packages, {len(actions)} actions and Gradle are pinned by content"
    )
