#!/usr/bin/env python3
"""Writes Java stubs of Android's and androidx's classes, for type checks by Kotlin's compiler.

    stubs.py WHEELS OUT
        WHEELS holds Python packages that describe Java classes as Python stubs; their
        classes are written to OUT as Java source without bodies.

The Python stubs do not say what is an interface, and call a `long` that is returned an
`int`. `is_interface` and `LONGS` are what we guess instead.
"""

import ast
import pathlib
import re
import sys
import zipfile

KEYWORDS = set(
    "abstract assert boolean break byte case catch char class const continue default do double else "
    "enum extends final finally float for goto if implements import instanceof int interface long "
    "native new package private protected public return short static strictfp super switch "
    "synchronized this throw throws transient try void volatile while true false null".split()
)
# Java's own classes and Kotlin's are described too, but the compiler knows them.
KNOWN = ("java", "javax", "kotlin", "kotlinx")
PRIMITIVES = {"jint": "int", "jlong": "long", "jboolean": "boolean", "jfloat": "float", "jbyte": "byte",
              "jdouble": "double", "jshort": "short", "jchar": "char", "jvoid": "void"}
PYTHON = {"int": "int", "bool": "boolean", "float": "float", "str": "java.lang.String", "None": "void",
          "object": "java.lang.Object", "typing.Any": "java.lang.Object"}
BOXED = {"int": "Integer", "boolean": "Boolean", "float": "Float", "void": "Void"}
# Methods that return a `long`, and interfaces whose methods have bodies.
LONGS = {"getLong", "getItemId", "getDuration", "getContentLength", "getLastModified", "getStatSize",
         "android.content.res.AssetFileDescriptor.getLength"}
WITH_BODIES = {"androidx.lifecycle.DefaultLifecycleObserver"}
BODIES = {"onPointerCaptureChanged"}
NULLABLE = "@org.jetbrains.annotations.Nullable "


class Class:
    def __init__(self, package, outer, node):
        self.package, self.outer, self.node = package, outer, node
        self.name = f"{outer.name if outer else package}.{node.name}"
        self.parameters, self.bases = [], []

    def methods(self):
        return [one for one in self.node.body if isinstance(one, ast.FunctionDef)]


def is_static(method):
    return any(dotted(one) == "staticmethod" for one in method.decorator_list)


def dotted(node):
    """`a.b.C` of a name, else None."""
    if isinstance(node, ast.Name):
        return node.id
    if isinstance(node, ast.Attribute):
        return f"{dotted(node.value)}.{node.attr}"
    return "None" if isinstance(node, ast.Constant) and node.value is None else None


def alternatives(node):
    if isinstance(node, ast.BinOp):
        return alternatives(node.left) + alternatives(node.right)
    return [node]


def raw(java_type):
    return java_type.split("<")[0]


class Stubs:
    def __init__(self):
        self.classes = {}
        self.later_bases = set()
        self.interfaces = {"java.lang.Object": False}

    def read(self, wheel):
        with zipfile.ZipFile(wheel) as files:
            for name in files.namelist():
                if not name.endswith(".pyi"):
                    continue
                *folders, last = name.split("/")
                folders[:1] = [folders[0].removesuffix("-stubs")]
                package = ".".join(folders if last == "__init__.pyi" else [*folders, last[:-4]])
                self.walk(package, None, ast.parse(files.read(name)).body)

    def walk(self, package, outer, body):
        for node in body:
            if isinstance(node, ast.ClassDef):
                found = Class(package, outer, node)
                self.classes.setdefault(found.name, found)
                self.walk(package, found, node.body)

    def settle(self):
        """Finds the bases of each class, when all classes are known."""
        for one in self.classes.values():
            for base in one.node.bases:
                if isinstance(base, ast.Subscript) and dotted(base.value) == "typing.Generic":
                    of = base.slice.elts if isinstance(base.slice, ast.Tuple) else [base.slice]
                    one.parameters = [re.sub(r"^_.*__", "", dotted(it)) for it in of]
                else:
                    name = self.type_of(base, one, boxed=True)
                    # A class of a library that is not described has no part in these checks.
                    if raw(name) in self.classes:
                        one.bases.append(name)
            self.later_bases.update(raw(base) for base in one.bases[1:])

    def resolve(self, name, within):
        """The full name of a class that is named inside another."""
        while within:
            if f"{within.name}.{name}" in self.classes:
                return f"{within.name}.{name}"
            package, within = within.package, within.outer
            if not within and f"{package}.{name}" in self.classes:
                return f"{package}.{name}"
        return name

    def type_of(self, node, within, boxed=False, used=None):
        """The Java type of a Python type; adds the type variables in it to `used`."""
        if isinstance(node, ast.Constant) and isinstance(node.value, str):
            node = ast.parse(node.value, mode="eval").body
        found = [one for one in alternatives(node) if dotted(one) != "None"] or [node]
        names = [dotted(one) for one in found]
        if len(found) > 1:
            # `int | java.jlong | java.lang.Long` is what a `long` accepts.
            for name in names:
                if name and name.removeprefix("java.") in PRIMITIVES:
                    return PRIMITIVES[name.removeprefix("java.")]
            if "str" in names:
                return "java.lang.String" if "java.lang.Object" not in names else "java.lang.Object"
        node, name = found[0], names[0]
        if isinstance(node, ast.Subscript):
            of = node.slice.elts if isinstance(node.slice, ast.Tuple) else [node.slice]
            base = dotted(node.value)
            if base == "typing.ClassVar":
                return self.type_of(of[0], within, boxed, used)
            inner = [self.type_of(one, within, True, used) for one in of]
            if base == "java.chaquopy.JavaArray":
                return f"{inner[0]}[]"
            if base in ("typing.Type", "type", "java.lang.Class"):
                return "java.lang.Class<?>"
            return f"{self.resolve(base, within)}<{', '.join(inner)}>"
        if name is None:
            return "java.lang.Object"
        if array := re.fullmatch(r"java\.chaquopy\.JavaArrayJ(\w+)", name):
            return array[1].lower() + "[]"
        if name.startswith("java.j"):
            return PRIMITIVES.get(name[5:], name)
        if name in PYTHON:
            java = PYTHON[name]
            return f"java.lang.{BOXED[java]}" if boxed and java in BOXED else java
        if name in ("type", "typing.Type"):
            return "java.lang.Class<?>"
        if variable := re.fullmatch(r"_.*__(\w+)", name):
            if used is not None:
                used.add(variable[1])
            return variable[1]
        return self.resolve(name, within)

    def is_interface(self, name):
        """Guesses it: nobody makes one, and it extends no class."""
        if name not in self.classes:
            return False
        if name not in self.interfaces:
            one = self.classes[name]
            self.interfaces[name] = False
            if any(method.name == "__init__" for method in one.methods()):
                answer = False
            elif name in self.later_bases:
                answer = True
            elif any(is_static(method) for method in one.methods()):
                answer = False
            else:
                answer = all(self.is_interface(raw(base)) for base in one.bases if base != "java.lang.Object")
            self.interfaces[name] = answer
        return self.interfaces[name]

    def write_method(self, one, method, interface):
        """Its Java source, or None for what Java cannot have."""
        static, used = is_static(method), set()
        given = method.args.posonlyargs + method.args.args
        parameters = []
        for at in given if static else given[1:]:
            parameters.append(f"{self.type_of(at.annotation, one, used=used)} {at.arg.strip('_')}_")
        if rest := method.args.vararg:
            parameters.append(f"{self.type_of(rest.annotation, one, True, used)}... {rest.arg}_")
        parameters = ", ".join(parameters)
        if method.name == "__init__":
            return None if interface else f"public {one.node.name}({parameters}) {{}}"
        if method.name.startswith("__") or method.name in KEYWORDS:
            return None
        optional = len(alternatives(method.returns)) > 1
        returns = self.type_of(method.returns, one, optional, used)
        if returns == "int" and not LONGS.isdisjoint({method.name, f"{one.name}.{method.name}"}):
            returns = "long"
        own = sorted(used - (set() if static else set(one.parameters)))
        head = f"<{', '.join(own)}> " if own else ""
        head = (NULLABLE if optional else "") + f"public {'static ' if static else ''}{head}"
        body = " { throw null; }"
        if interface and not static:
            has_body = one.name in WITH_BODIES or method.name in BODIES
            head, body = (f"{head}default ", body) if has_body else (head, ";")
        return f"{head}{returns} {method.name}({parameters}){body}"

    def write_class(self, one):
        interface = self.is_interface(one.name)
        annotation = "java.lang.annotation.Annotation" in one.bases
        head = f"public {'static ' if one.outer else ''}"
        parameters = f"<{', '.join(one.parameters)}>" if one.parameters else ""
        bases = [base for base in one.bases if base != "java.lang.Object"]
        if annotation:
            yield f"{head}@interface {one.node.name} {{"
        elif interface:
            more = f" extends {', '.join(bases)}" if bases else ""
            yield f"{head}interface {one.node.name}{parameters}{more} {{"
        else:
            classes = [base for base in bases if not self.is_interface(raw(base))][:1]
            others = [base for base in bases if self.is_interface(raw(base))]
            more = (f" extends {classes[0]}" if classes else "") + (
                f" implements {', '.join(others)}" if others else "")
            yield f"{head}class {one.node.name}{parameters}{more} {{"
        written = set()
        for node in one.node.body:
            if isinstance(node, ast.AnnAssign) and not annotation:
                java = self.type_of(node.annotation, one)
                constant = ast.unparse(node.annotation).startswith("typing.ClassVar")
                if node.target.id in KEYWORDS or java == "void" or (interface and not constant):
                    continue
                value = {"int": "0", "boolean": "false", "float": "0f", "java.lang.String": '""'}.get(java, "null")
                yield f"public static final {java} {node.target.id} = {value};" if constant else (
                    f"public {java} {node.target.id};")
            elif isinstance(node, ast.FunctionDef) and annotation:
                yield f"{self.type_of(node.returns, one)} {node.name}();"
            elif isinstance(node, ast.FunctionDef):
                line = self.write_method(one, node, interface)
                if line and line not in written:
                    written.add(line)
                    yield line
            elif isinstance(node, ast.ClassDef):
                yield from self.write_class(self.classes[f"{one.name}.{node.name}"])
        yield "}"

    def write(self, out):
        count = 0
        for one in self.classes.values():
            if one.outer or one.package.split(".")[0] in KNOWN:
                continue
            folder = out / one.package.replace(".", "/")
            folder.mkdir(parents=True, exist_ok=True)
            text = "\n".join([f"package {one.package};", *self.write_class(one), ""])
            (folder / f"{one.node.name}.java").write_text(text)
            count += 1
        return count


def main(wheels, out):
    stubs = Stubs()
    for wheel in sorted(pathlib.Path(wheels).glob("*.whl")):
        stubs.read(wheel)
    stubs.settle()
    print(f"{stubs.write(pathlib.Path(out))} classes described")


if __name__ == "__main__":
    main(*sys.argv[1:])
