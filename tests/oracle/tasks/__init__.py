"""Tasks of exercises: from a neutral statement to its answer.

A task takes the statement and returns a Fraction, an int, a sign, a text
(a choice's English words), a tuple, a list, a set or a Typed expression.
"""
import functools
from fractions import Fraction

TASKS = {}
BOUNDS = {}


def task(name):
    """Registers the function that works out the answers of a task."""

    def register(function):
        if name in TASKS:
            raise ValueError(f"there are two tasks {name}")
        TASKS[name] = function
        return function

    return register


def bound(concept):
    """Registers what a concept's standard says about its numbers."""

    def register(function):
        BOUNDS[concept] = function
        return function

    return register


def exact(text):
    """A number of a statement: an int, a decimal text, a fraction or mixed number text."""
    text = str(text).strip()
    if " " in text:
        whole, part = text.split()
        value = abs(Fraction(whole)) + Fraction(part)
        return -value if whole.startswith("-") else value
    return Fraction(text)


class Typed:
    """An expression or equation in the notation of the number pad."""

    def __init__(self, text, form="any_equal"):
        self.text = text
        self.form = form

    def __repr__(self):
        return f"Typed({self.text!r})"


@functools.lru_cache(maxsize=20000)
def _sympy(text, evaluate=True):
    from sympy.parsing.sympy_parser import (
        convert_xor,
        implicit_multiplication,
        parse_expr,
        rationalize,
        split_symbols,
        standard_transformations,
    )
    from sympy import Symbol

    rules = standard_transformations + (convert_xor, split_symbols, implicit_multiplication, rationalize)
    text = text.replace("×", "*").replace("÷", "/").replace("−", "-")
    names = {letter: Symbol(letter) for letter in "abcdefghijklmnopqrstuvwxyz"}
    return parse_expr(text, local_dict=names, transformations=rules, evaluate=evaluate)


@functools.lru_cache(maxsize=20000)
def _difference(text):
    import sympy

    for sign in ("<=", ">=", "≤", "≥", "=", "<", ">"):
        if sign in text:
            left, right = text.split(sign)
            whole = sympy.expand(_sympy(left) - _sympy(right))
            sign = {"≤": "<=", "≥": ">="}.get(sign, sign)
            return whole, sign
    return sympy.expand(_sympy(text)), ""


TURNED = {"<": ">", ">": "<", "<=": ">=", ">=": "<=", "=": "=", "": ""}


def _same_typed(one, two):
    if one.text == two.text:
        return True
    import sympy

    if "same_steps" in (one.form, two.form):
        return _steps(one.text) == _steps(two.text)
    a, sign_a = _difference(one.text)
    b, sign_b = _difference(two.text)
    if sign_a == "":
        return sign_b == "" and a == b
    if b == 0 or a == 0:
        return a == b and sign_a == sign_b
    ratio = sympy.simplify(a / b)
    if not ratio.is_number:
        return False
    return sign_a == (sign_b if ratio > 0 else TURNED[sign_b])


def _steps(text):
    """An order-free form of the operations written, with Python's own parser."""
    import ast
    import re

    text = text.replace("×", "*").replace("÷", "/").replace("−", "-")
    text = re.sub(r"(?<=[\d)])(?=\()", "*", text)

    def walk(node):
        if isinstance(node, ast.Expression):
            return walk(node.body)
        if isinstance(node, ast.Constant):
            return str(Fraction(str(node.value)))
        if isinstance(node, ast.BinOp):
            name = type(node.op).__name__
            left, right = walk(node.left), walk(node.right)
            if name in ("Add", "Mult"):
                parts = []
                for part in (left, right):
                    parts += part[1] if isinstance(part, tuple) and part[0] == name else [part]
                return (name, sorted(parts, key=repr))
            return (name, [left, right])
        raise ValueError(ast.dump(node))

    return walk(ast.parse(text, mode="eval"))


def normal(value):
    """A task's answer in the shape of an answer of the program."""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, (int, Fraction)):
        return Fraction(value)
    if isinstance(value, str):
        return value.strip().lower()
    if isinstance(value, (set, frozenset)):
        return frozenset(normal(v) for v in value)
    if isinstance(value, list):
        return [normal(v) for v in value]
    if isinstance(value, tuple) and any(isinstance(v, str) for v in value):
        return tuple(normal(v) for v in value)
    return value


class Fillings:
    """All fillings of boxes that are true."""

    def __init__(self, fillings):
        self.fillings = set(fillings)

    def __repr__(self):
        return f"one of {sorted(self.fillings)[:5]}"


def same(one, two):
    if isinstance(one, Fillings):
        return two in one.fillings
    if isinstance(one, Typed) and isinstance(two, Typed):
        return _same_typed(one, two)
    if isinstance(one, Typed) or isinstance(two, Typed):
        return False
    if isinstance(one, tuple) and isinstance(two, tuple):
        return len(one) == len(two) and all(a == b or same(a, b) for a, b in zip(one, two))
    return type(one) is type(two) and one == two
