"""Worked examples of a published source, as check values for the tasks.

Source: Common Core State Standards for Mathematics (2010), the examples in the text of the
standard named beside each.
"""
from tasks import Typed

WORKED = [
    ("3.OA.B.6", {"task": "same_missing_number", "divide": [32, 8], "choices": ["□ × 8 = 32", "32 × □ = 8", "8 + □ = 32"]}, "□ × 8 = 32"),
    ("3.NF.A.3.b", {"task": "which_equal_to", "fraction": "1/2", "choices": ["2/4", "4/6", "2/3"]}, {"2/4"}),
    ("3.NF.A.3.b", {"task": "which_equal_to", "fraction": "4/6", "choices": ["2/4", "2/3", "1/2"]}, {"2/3"}),
    ("3.NF.A.3.c", {"task": "value_of", "fraction": "6/1"}, 6),
    ("3.NF.A.3.c", {"task": "top_for_whole", "whole": 3, "bottom": 1}, 3),
    ("4.OA.A.1", {"task": "times_as_much", "large": 35, "small": 7}, 5),
    ("4.MD.A.1", {"task": "convert", "amount": 4, "from": "ft", "to": "in"}, 48),
    ("4.NF.B.4.a", {"task": "copies_of_unit", "fraction": "5/4", "unit": "1/4"}, 5),
    ("4.NF.B.4.c", {"task": "copies_of", "count": 5, "each": "3/8"}, "15/8"),
    ("5.NF.B.3", {"task": "share_between", "amount": 50, "shares": 9}, [5, 6]),
    ("5.NF.B.7.a", {"task": "divide_fractions", "left": "1/3", "right": 4}, "1/12"),
    ("5.NF.B.7.b", {"task": "divide_fractions", "left": 4, "right": "1/5"}, 20),
    ("5.NF.B.7.c", {"task": "share_equally", "amount": "1/2", "shares": 3}, "1/6"),
    ("5.NF.B.7.c", {"task": "how_many_fit", "part": "1/3", "amount": 2}, 6),
    ("6.NS.B.4", {"task": "factor_out", "numbers": [36, 8]}, Typed("4*(9+2)")),
    ("6.NS.C.7.c", {"task": "absolute_value", "number": -30}, 30),
    ("6.EE.A.2.c", {"task": "evaluate_at", "expression": "6 * s^2", "values": {"s": "1/2"}}, "3/2"),
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
