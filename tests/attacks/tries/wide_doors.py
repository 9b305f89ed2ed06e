"""Pages of the web open the program on Android, its screens are recorded, its page inspected."""

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
    window, android_too = (
        json.loads((TOP / f"src-tauri/tauri.{name}conf.json").read_text()) for name in ("", "android.")
    )
    need(window["bundle"]["fileAssociations"], "no file associations")
    open_doors = [
        name
        for name, is_open in {
            "BROWSABLE": "android.intent.category.BROWSABLE" in manifest,
            # From each of them, Tauri makes an intent filter that is BROWSABLE.
            "associations": android_too["bundle"].get("fileAssociations", True) is not None,
            "devtools": any(one["devtools"] for one in window["app"]["windows"]),
            "no FLAG_SECURE": "FLAG_SECURE" not in code,
            "core:default": any("core:default" in one["permissions"] for one in capabilities),
            "INTERNET": 'android.permission.INTERNET" />' in manifest,
        }.items()
        if is_open
    ]
    return got_through(", ".join(open_doors)) if open_doors else stopped("six doors are closed")
