"""Compares the methods that Kotlin calls in Rust with the functions that Rust exports for them.

A method without its function is found on a device only when it is called. Names are mangled as
the JNI specification says ("Resolving Native Method Names").
"""

import re

# What a Kotlin type is for JNI, and how the Rust side writes it.
KOTLIN = {"Int": "i32", "Long": "i64", "Boolean": "i32", "Float": "f32", "Double": "f64"}
RUST = {"jint": "i32", "jlong": "i64", "jboolean": "i32", "u8": "i32", "jfloat": "f32", "jdouble": "f64",
        "i32": "i32", "i64": "i64"}


def mangled(name):
    return name.replace("_", "_1").replace("$", "_00024").replace(".", "_")


def of_kotlin(text):
    """{function: parameters} of the external methods of a file."""
    package = re.search(r"^package ([\w.]+)", text, re.M)[1].replace("`", "")
    found = {}
    for method in re.finditer(r"external fun (\w+)\(([^)]*)\)", text):
        # The last class or object that begins before it.
        before = re.findall(r"^(?:\w+ )*(?:class|object) (\w+)", text[: method.start()], re.M)
        types = [one.split(":")[1].strip().rstrip("?") for one in method[2].split(",") if ":" in one]
        name = "_".join(["Java", mangled(package), mangled(before[-1]), mangled(method[1])])
        found[name] = [KOTLIN.get(one, "object") for one in types]
    return found


def of_rust(text):
    """{function: parameters} of the exported functions, without environment and class."""
    found = {}
    for function in re.finditer(r'extern "C" fn (Java_\w+)(?:<[^>]*>)?\(([^)]*)\)', text):
        types = [one.split(":", 1)[1].strip() for one in re.split(r",(?![^<]*>)", function[2]) if ":" in one]
        types = [re.sub(r"<.*", "", one).split("::")[-1] for one in types]
        found[function[1]] = [RUST.get(one, "object") for one in types[2:]]
    return found


def compare(kotlin_files, expanded):
    """Returns how many methods Kotlin calls, and what does not fit."""
    wanted, have = {}, of_rust(expanded)
    for file in kotlin_files:
        wanted.update(of_kotlin(file.read_text()))
    faults = [f"Rust does not export {name}" for name in wanted.keys() - have.keys()]
    faults += [f"Kotlin does not declare {name}" for name in have.keys() - wanted.keys()]
    faults += [f"{name} takes {wanted[name]} in Kotlin and {have[name]} in Rust"
               for name in wanted.keys() & have.keys() if wanted[name] != have[name]]
    return len(wanted), faults
