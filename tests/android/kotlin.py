#!/usr/bin/env python3
"""Type-checks the Android project's Kotlin with Tauri's, wry's and the plugins', without an SDK.

    kotlin.py TOOLS BUILT
        TOOLS holds what tools.sh fetched: Kotlin's compiler and descriptions of Android's
        classes. BUILT is the folder that check.sh leaves. Ends with "N passed, M failed".

The described classes are a little less strict than the real ones: see stubs.py. The versions of
Android that have a class are not known here, and Gradle's own files are not compiled.
"""

import hashlib
import json
import pathlib
import re
import shutil
import subprocess
import sys

import natives
import stubs

TOP = pathlib.Path(__file__).resolve().parents[2]
OURS = TOP / "src-tauri/gen/android/app/src/main/java"
EXTRA = TOP / "tests/android/kotlin/extra"
JACKSON = [pathlib.Path(f"/usr/share/java/jackson-{part}.jar") for part in ("core", "databind", "annotations")]
# As in the project's build.gradle.kts.
LANGUAGE, JVM = "2.2", "1.8"

# Errors for a copy of our files, as (what, instead, what the compiler must say).
PLANTED = [
    ("moveTaskToBack(true)", 'moveTaskToBack("true")', "argument type mismatch"),
    ('openAssetFileDescriptor(file, "r")?.use', 'openAssetFileDescriptor(file, "r").use',
     "only safe (?.) or non-null asserted (!!.) calls are allowed"),
    ('openFileDescriptor(documentOf(args), "w", signal)', 'openFileDescriptor(documentOf(args), "w", 1)',
     "argument type mismatch"),
]


def compile_kotlin(tools, sources, classes, out):
    """Compiles folders. Returns the errors as the compiler gives them."""
    lib = tools / "node_modules/kotlin-compiler/lib"
    shutil.rmtree(out, ignore_errors=True)
    done = subprocess.run(
        ["java", "-Xmx1500m", "-cp", lib / "kotlin-preloader.jar", "org.jetbrains.kotlin.preloading.Preloader",
         "-cp", lib / "kotlin-compiler.jar", "org.jetbrains.kotlin.cli.jvm.K2JVMCompiler",
         "-nowarn", "-language-version", LANGUAGE, "-Xsuppress-version-warnings", "-jvm-target", JVM,
         "-cp", ":".join(map(str, [*JACKSON, *classes])), "-d", out, *sources],
        capture_output=True, text=True)
    errors = [line for line in done.stderr.splitlines() if " error: " in line or line.startswith("error: ")]
    if done.returncode and not errors:
        errors = [f"the compiler ended with {done.returncode}: {done.stderr[-2000:]}"]
    return errors


def plugin_folders():
    """The Kotlin of Tauri and its plugins, where Cargo has them."""
    found = json.loads(subprocess.run(
        ["cargo", "metadata", "--format-version", "1", "--locked", "--offline"],
        cwd=TOP, check=True, capture_output=True, text=True).stdout)
    reached = {"tauri": "mobile/android", "tauri-plugin-dialog": "android", "tauri-plugin-fs": "android"}
    folders = [pathlib.Path(one["manifest_path"]).parent / reached[one["name"]] / "src/main"
               for one in found["packages"] if one["name"] in reached]
    return [folder for folder in folders if folder.is_dir()]


def planted(tools, work, described):
    """Plants the errors in a copy of our files and compiles it against the classes just made."""
    checks, wanted, copy = {}, [], work / "planted"
    shutil.rmtree(copy, ignore_errors=True)
    shutil.copytree(OURS, copy)
    for what, instead, says in PLANTED:
        holding = [file for file in copy.rglob("*.kt") if what in file.read_text()]
        if len(holding) != 1:
            checks[f"plant {instead}"] = [f"{what} is in {len(holding)} files"]
            continue
        text = holding[0].read_text()
        line = text[:text.index(what)].count("\n") + 1
        holding[0].write_text(text.replace(what, instead, 1))
        wanted.append((f"{holding[0].name}:{line}:", says))
    errors = compile_kotlin(tools, [copy, described], [work / "classes"], work / "of-planted")
    for place, says in wanted:
        caught = any(place in error and says in error for error in errors)
        checks[f"a planted error is caught: {place} {says}"] = [] if caught else [f"{place} gave {errors}"]
    checks["nothing but the planted errors is found"] = errors if len(errors) != len(wanted) else []
    return checks


def main(tools, built):
    work = built / "kotlin-check"
    # They are made anew when their script changes.
    described = tools / f"stubs-{hashlib.sha256(pathlib.Path(stubs.__file__).read_bytes()).hexdigest()[:12]}"
    if not described.is_dir():
        for old in tools.glob("stubs-*"):
            shutil.rmtree(old)
        stubs.main(tools / "wheels", tools / "stubs-part")
        (tools / "stubs-part").rename(described)
    generated = built / "kotlin"
    plugins = plugin_folders()
    checks = {"Tauri and both plugins are there": [] if len(plugins) == 3 else [f"only {plugins}"],
              "the build wrote wry's and Tauri's files": [
                  f"{name} is missing" for name in ("Rust.kt", "WryActivity.kt", "TauriActivity.kt")
                  if not (generated / name).exists()]}

    everything = [OURS, generated, *plugins, EXTRA, described]
    checks["all Kotlin fits Android's types"] = compile_kotlin(tools, everything, [], work / "classes")
    count = len(list((work / "classes").rglob("*.class")))
    checks[f"{count} classes came of it"] = [] if count > 60 else ["too few"]

    checks.update(planted(tools, work, described) if count else {"planted errors": ["nothing to plant them in"]})

    kotlin_files = [file for folder in everything[:-2] for file in folder.rglob("*.kt")]
    asked, faults = natives.compare(kotlin_files, (built / "expanded.rs").read_text())
    checks[f"{asked} native methods are what Rust exports"] = faults or ([] if asked else ["none"])

    failed = 0
    for name, faults in checks.items():
        failed += bool(faults)
        print(f"{'FAILED' if faults else 'ok'}  {name}")
        for fault in faults[:40]:
            print(f"    {re.sub('.*/(?=[^/]*[.](kt|java):)', '', fault)}")
    print(f"{len(checks) - failed} passed, {failed} failed")
    return failed > 0


if __name__ == "__main__":
    sys.exit(main(*map(pathlib.Path, sys.argv[1:])))
