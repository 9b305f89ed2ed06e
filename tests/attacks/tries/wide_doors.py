"""On Android pages of the web open the program, and its screens can be recorded."""

import json

from outcome import got_through, need, stopped
from program import TOP


def attack(_ground):
    android = TOP / "src-tauri/gen/android/app/src/main"
    manifest = (android / "AndroidManifest.xml").read_text()
    need("android.intent.action.MAIN" in manifest, "no manifest")
    files = [*android.rglob("*.kt"), *(TOP / "src-tauri/src").glob("*android*.rs")]
    code = "".join(path.read_text() for path in files)
    need("class MainActivity" in code, "no activity")
    capabilities = [
        json.loads(path.read_text()) for path in (TOP / "src-tauri/capabilities").glob("*.json")
    ]
    need(capabilities, "no capabilities")
    open_doors = [
        name
        for name, is_open in {
            "BROWSABLE": "android.intent.category.BROWSABLE" in manifest,
            "no FLAG_SECURE": "FLAG_SECURE" not in code,
            "core:default": any("core:default" in one["permissions"] for one in capabilities),
            "INTERNET": 'android.permission.INTERNET" />' in manifest,
        }.items()
        if is_open
    ]
    return got_through(", ".join(open_doors)) if open_doors else stopped("four doors are closed")
