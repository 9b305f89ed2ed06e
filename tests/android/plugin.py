"""Compares what the Rust side asks of a Kotlin plugin of ours with what the plugin answers.

Nothing else looks at it: commands, fields and words are names in texts, and a wrong one is found on
a device only when it is used.
"""

import re

# What a rule of Tauri must keep in a release, because it is found by name there.
KEPT = {
    "-keep @app.tauri.annotation.TauriPlugin public class *": (
        "@app.tauri.annotation.Command public <methods>;",
        "@app.tauri.annotation.ActivityCallback <methods>;",
        "public <init>(...);",
    ),
    "-keep @app.tauri.annotation.InvokeArg public class *": ("*;",),
}
# Errors for a copy of the texts, as (which text, what, instead).
PLANTED = [
    ("rust", '"renameDocument"', '"renamesDocument"'),
    ("rust", '"document": id, "name": name', '"doc": id, "name": name'),
    ("rust", '"ClassFolderPlugin"', '"FolderPlugin"'),
    ("rust", 'answer.get("rows")', 'answer.get("row")'),
    ("kotlin", "fun folderPicked(", "fun pickedFolder("),
    ("kotlin", "@Command\n  fun removeDocument", "fun removeDocument"),
    ("kotlin", "@TauriPlugin\nclass", "class"),
    ("kotlin", "@InvokeArg\nclass", "private class"),
    ("kotlin", '-> "denied"', '-> "refused"'),
    ("kotlin", "Uri.encode(name)", "name"),
    ("kotlin", "invoke.reject(fault, fault)", "invoke.reject(e.message)"),
    ("rules", "@app.tauri.annotation.Command public <methods>;", ""),
]


def faults(rust, kotlin, words, rules):
    """What does not fit, of the texts of both sides, of the faults' words, and of Tauri's rules."""
    [(package, name)] = re.findall(r'register_android_plugin\("([\w.]+)", "(\w+)"\)', rust)
    if not re.search(rf"^package {re.escape(package)}$", kotlin, re.M):
        yield f"the plugin is not in {package}"
    if not re.search(rf"^@TauriPlugin\nclass {name}\(", kotlin, re.M):
        yield f"no public plugin is called {name}"
    arguments = re.search(r"^@InvokeArg\nclass (\w+) \{\n(.*?)^\}", kotlin, re.S | re.M)
    if not arguments:
        yield "no public class takes the arguments"
        return
    if f"parseArgs({arguments[1]}::class.java)" not in kotlin:
        yield f"nothing reads {arguments[1]}"

    def compare(what, asked, given):
        for name in sorted(asked - given):
            yield f"Rust asks for the {what} {name}, which Kotlin does not have"
        for name in sorted(given - asked):
            yield f"Kotlin has the {what} {name}, which Rust does not ask for"

    asked = set(re.findall(r'(?:ask\(\s*&?[\w.]+,|\.one\()\s*"(\w+)"', rust))
    yield from compare("command", asked, set(re.findall(r"@Command\n  fun (\w+)\(invoke: Invoke\)", kotlin)))
    sent = set()
    for args in re.findall(r"json!\(\{(.*?)\}\)", rust, re.S):
        sent.update(re.findall(r'"(\w+)":', args))
    yield from compare("argument", sent, set(re.findall(r"^  var (\w+):", arguments[2], re.M)))
    read = set(re.findall(r'\.get\("(\w+)"\)', rust)) | set(re.findall(r'\btext\("(\w+)"\)', rust))
    yield from compare("answer", read, set(re.findall(r'\.put\("(\w+)",', kotlin)))
    said = set(re.findall(r'(?:->|return|fault =) "(\w+)"', kotlin)) & set(re.findall(r'"([a-z_]+)"', kotlin))
    # What a document is; and anything that Rust has no word for.
    said -= {"folder", "file", "other"}
    words_of_faults = re.search(r"^pub fn fault_of(.*?)^\}", words, re.S | re.M)[1]
    yield from compare("fault", set(re.findall(r'^ +"(\w+)" =>', words_of_faults, re.M)), said)
    for callback in re.findall(r'startActivityForResult\(invoke, \w+, "(\w+)"\)', kotlin):
        if not re.search(rf"@ActivityCallback\n  fun {callback}\(invoke: Invoke, result: ActivityResult\)", kotlin):
            yield f"nobody takes the result as {callback}"

    # Signs that Java writes otherwise than UTF-8 would end the program.
    for answer in re.findall(r"invoke\.reject\((.*?)\)(?= *$)", kotlin, re.M):
        if answer not in ("fault, fault", '"other", "other"'):
            yield f"a fault is told as {answer}"
    # A row is made of encoded texts, and of numbers and words of ours.
    for answer in re.findall(r'\.put\("\w+", (.*?)\)(?=\.put|\n| else| *$)', kotlin):
        if not re.fullmatch(r"Uri\.encode\(.*\)|rows\.toString\(\)|row\(cursor\)|more", answer):
            yield f"{answer} is answered as it is"
    row = re.search(r'return "([^"]*)"\n', kotlin[kotlin.index("fun row(cursor"):])[1]
    if row != "${Uri.encode(id)} ${Uri.encode(name)} $kind $renames $size $time":
        yield f"a row is {row}"

    for rule, needs in KEPT.items():
        found = re.search(re.escape(rule) + r" \{(.*?)\}", rules, re.S)
        for need in needs:
            if not found or need not in found[1]:
                yield f"no rule of Tauri has {rule} {{ {need} }}"


def planted(rust, kotlin, words, rules):
    """Errors that are planted and not found."""
    unplanted = list(faults(rust, kotlin, words, rules))
    for which, what, instead in PLANTED:
        texts = {"rust": rust, "kotlin": kotlin, "rules": rules}
        if what not in texts[which]:
            yield f"{what} is not there to be changed"
            continue
        texts[which] = texts[which].replace(what, instead, 1)
        if list(faults(texts["rust"], texts["kotlin"], words, texts["rules"])) == unplanted:
            yield f"{instead} in the place of {what} is not found"
