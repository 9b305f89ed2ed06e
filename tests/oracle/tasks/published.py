"""Worked examples of a published source, as check values for the tasks.

Source: Common Core State Standards for Mathematics (2010), the examples in the text of the
standard named beside each.
"""
from tasks import Typed

WORKED = [
    ("3.OA.D.9", {"task": "pattern_feature", "start": 4, "by": 4}, "They are all even"),
    ("4.OA.C.5", {"task": "pattern_feature", "start": 1, "by": 3}, "Even and odd take turns"),
    ("4.NF.C.5", {"task": "add_fractions", "left": "3/10", "right": "4/100"}, "34/100"),
    ("5.OA.A.2", {"task": "read_expression", "expression": "3 * (18932 + 921)", "inside": "18932 + 921", "by": 3}, "It is 3 times as large."),
    ("5.OA.B.3", {"task": "patterns_relation", "first": [0, 3, 6, 9], "second": [0, 6, 12, 18]}, 2),
    ("5.NF.A.1", {"task": "add_fractions", "left": "2/3", "right": "5/4"}, "23/12"),
    ("5.NF.B.4.a", {"task": "multiply_fractions", "left": "2/3", "right": "4/5"}, "8/15"),
    ("5.MD.A.1", {"task": "convert", "amount": 5, "from": "cm", "to": "m"}, "0.05"),
    ("6.RP.A.2", {"task": "unit_rate", "amount": 75, "for": 15}, 5),
    ("6.NS.A.1", {"task": "divide_fractions", "left": "2/3", "right": "3/4"}, "8/9"),
    ("6.NS.C.7.b", {"task": "inequality_of_context", "left": -3, "right": -7, "story": "warmer"}, (">", "The first town is warmer.")),
    ("6.EE.A.3", {"task": "expand", "expression": "3*(2+x)"}, Typed("6+3*x")),
    ("6.EE.A.3", {"task": "factor", "expression": "24*x+18*z"}, Typed("6*(4*x+3*z)")),
    ("6.EE.C.9", {"task": "equation_of_graph", "independent": "t", "dependent": "d", "pairs": [[1, 65], [2, 130], [3, 195]]}, Typed("d=65*t")),
]
