//! Equations and inequalities with one letter, and two changing amounts.

use crate::answer::{Answer, Entry};
use crate::decimal::Dec;
use crate::draw::{Line, balance, cell, first_quadrant, grid, table};
use crate::expr::{
    Expr, Sign, difference, equal, frac, num, pair, product, quotient, relation, side_by_side, sum,
    var,
};
use crate::make::{Draft, Generator, Make, decimal, equation, keep, mixed, shows};
use crate::number::Rational;
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g6-test-solutions", 3, test_solutions),
    Generator::new("g6-solve-equations", 3, solve),
    Generator::new("g6-inequalities", 3, inequalities),
    Generator::new("g6-two-variables", 3, two_variables),
];

fn test_solutions(m: &mut Make) -> Option<Draft> {
    let (a, b, x) = (m.dice.from(2..=9), m.dice.from(1..=20), m.dice.from(2..=12));
    let more = m.level == crate::Level::Stretch;
    if more {
        // An inequality: all numbers of a set that fit.
        let limit = a * x + b;
        let mut set: Vec<i64> = vec![x - 2, x - 1, x, x + 1, x + 3];
        keep(x > 3)?;
        m.dice.shuffle(&mut set);
        let right: Vec<bool> = set.iter().map(|v| a * v + b < limit).collect();
        let indexes = |fits: &dyn Fn(i64) -> bool| Answer::SeveralChoices {
            indexes: (0_u32..)
                .zip(&set)
                .filter(|(_, v)| fits(**v))
                .map(|(i, _)| i)
                .collect(),
        };
        let at_most = indexes(&|v| v <= x);
        let above = indexes(&|v| v > x);
        return Some(
            Draft::new(json!({"task": "which_make_true", "left": format!("{a}*x+{b}"), "sign": "<", "right": limit, "choices": set.clone()}))
                .ask(m.say("ask-all").math("statement", relation(sum([side_by_side([num(a), var("x")]), num(b)]), Sign::Less, num(limit))))
                .all_of(right.iter().zip(&set).map(|(fits, v)| (*fits, shows(num(v)))).collect())
                .hint(m.say("hint-put"))
                .hint(m.say("hint-equal-not"))
                .step(m.say("step-try").number("value", x).math("work", equal(sum([product([num(a), num(x)]), num(b)]), num(limit))))
                .step(m.say("step-below").number("value", x))
                .misconception("limit-taken-in", at_most)
                .misconception("inequality-turned-round", above),
        );
    }
    let c = a * x + b;
    let divide = m.level.pick(false, m.dice.one_in(3), false);
    let (shown, left, right) = if divide {
        (
            equal(quotient(num(a * x), var("x")), num(a)),
            format!("{}/x", a * x),
            a,
        )
    } else {
        (
            equal(sum([side_by_side([num(a), var("x")]), num(b)]), num(c)),
            format!("{a}*x+{b}"),
            c,
        )
    };
    let subtract = if divide { a * x - a } else { c - b };
    let wrong = vec![
        ("did-not-undo-the-times", shows(num(subtract))),
        ("solution-one-off", shows(num(x + 1))),
        ("solution-one-off", shows(num(x - 1))),
    ];
    keep(x > 2 && subtract != x && (subtract - x).abs() > 1)?;
    let mut choices = vec![x, subtract, x + 1, x - 1];
    choices.sort_unstable();
    Some(
        Draft::new(json!({"task": "which_make_true", "left": left, "sign": "=", "right": right, "choices": choices}))
            .ask(m.say("ask-one").math("statement", shown.clone()))
            .one_of(&mut m.dice, shows(num(x)), wrong)
            .hint(m.say("hint-put"))
            .hint(m.say("hint-one").number("value", x + 1))
            .step(m.say("step-put").number("value", x))
            .step(if divide {
                equal(quotient(num(a * x), num(x)), num(a))
            } else {
                equal(sum([product([num(a), num(x)]), num(b)]), num(c))
            }),
    )
}

fn solve(m: &mut Make) -> Option<Draft> {
    let letter = m.dice.pick(&["x", "n", "m", "k"]);
    let plus = m.dice.one_in(2);
    if m.level == crate::Level::Stretch && m.dice.one_in(2) {
        // Fractions: x + a/b = c/d or (a/b) x = c.
        let b = m.dice.from(2..=8);
        let a = m.dice.from(1..=b - 1);
        let c = m.dice.from(2..=9);
        keep(num_integer::gcd(a, b) == 1)?;
        let p = Ratio::new(a, b);
        let value = if plus {
            Ratio::from(c) - p
        } else {
            Ratio::from(c) / p
        };
        let shown = |x: Expr| {
            if plus {
                equal(sum([x, frac(a, b)]), num(c))
            } else {
                equal(product([frac(a, b), x]), num(c))
            }
        };
        return Some(
            Draft::new(json!({"task": "solve_for_x", "equation": if plus { format!("x + {a}/{b} = {c}") } else { format!("({a}/{b}) * x = {c}") }}))
                .ask(m.say("ask").math("letter", var(letter)))
                .ask(shown(var(letter)))
                .mixed(value)
                .hint(m.say(if plus { "hint-take" } else { "hint-divide" }))
                .hint(m.say("hint-balance"))
                .step(m.say(if plus { "hint-take" } else { "hint-divide" }))
                .step(equal(var(letter), if plus { difference(num(c), frac(a, b)) } else { quotient(num(c), frac(a, b)) }))
                .step(equal(var(letter), crate::expr::rational(value, true)))
                .misconception("operation-not-undone", mixed(if plus { Ratio::from(c) + p } else { Ratio::from(c) * p }))
                .misconception("right-side-taken-as-solution", mixed(Ratio::from(c))),
        );
    }
    let places = m
        .level
        .pick(0, m.dice.from(0..=1) as u32, m.dice.from(1..=2) as u32);
    let x = Dec::new(m.dice.from(2..=m.level.pick(20, 150, 900)), places);
    let p = Dec::new(
        m.dice.from(2..=m.level.pick(12, 12, 12)),
        if plus { places } else { 0 },
    );
    keep(places == 0 || x.units() % 10 != 0 && (!plus || p.units() % 10 != 0))?;
    let q = Dec::exact(if plus {
        x.ratio() + p.ratio()
    } else {
        x.ratio() * p.ratio()
    })?;
    keep(x.ratio() != p.ratio() && q.units() != 0)?;
    let shown = |v: Expr| {
        if plus {
            equal(sum([v, num(p)]), num(q))
        } else {
            equal(side_by_side([num(p), v]), num(q))
        }
    };
    let undone = Dec::exact(if plus {
        q.ratio() + p.ratio()
    } else {
        q.ratio() * p.ratio()
    })?;
    // Now and then a story with whole numbers instead of the equation.
    let story = places == 0 && m.dice.one_in(2);
    let which = m.dice.from(1..=3);
    // The third is of an age, and of miles walked in a week.
    keep(!story || which != 3 || x.ratio() <= Ratio::from(30))?;
    let draft = Draft::new(
        json!({"task": "solve_for_x", "equation": if plus { format!("x + {p} = {q}") } else { format!("{p} * x = {q}") }}),
    );
    let mut draft = if story {
        draft.ask(
            m.say(&format!(
                "ask-{}-{which}",
                if plus { "more" } else { "times" }
            ))
            .text("name", m.dice.name())
            .math("letter", var(letter))
            .number("p", p)
            .number("q", q),
        )
    } else {
        draft
            .ask(m.say("ask").math("letter", var(letter)))
            .ask(shown(var(letter)))
    };
    draft = draft
        .decimal(x)
        .hint(m.say(if plus { "hint-take" } else { "hint-divide" }));
    draft = if plus {
        draft.hint(balance(
            vec![(var(letter), 1), (num(p), 1)],
            vec![(num(q), 1)],
            shown(var(letter)),
        ))
    } else {
        draft.hint(balance(
            vec![(var(letter), p.units())],
            vec![(num(q), 1)],
            shown(var(letter)),
        ))
    };
    let other = if plus {
        x.ratio() * p.ratio()
    } else {
        q.ratio() - p.ratio()
    };
    Some(
        draft
            .step(m.say(if plus { "hint-take" } else { "hint-divide" }))
            .step(equal(
                var(letter),
                if plus {
                    difference(num(q), num(p))
                } else {
                    quotient(num(q), num(p))
                },
            ))
            .step(equal(var(letter), num(x)))
            .step(m.say("step-check").math(
                "work",
                if plus {
                    equal(sum([num(x), num(p)]), num(q))
                } else {
                    equal(product([num(p), num(x)]), num(q))
                },
            ))
            .misconception("operation-not-undone", decimal(undone))
            .misconception_if(
                !plus,
                "subtracted-instead-of-divided",
                decimal(Dec::exact(other)?),
            )
            .misconception_if(plus, "right-side-taken-as-solution", decimal(q)),
    )
}

/// The stories of inequalities: letter, above or below the limit, least and greatest limit.
const LIMITS: [(&str, bool, i64, i64); 6] = [
    ("h", true, 36, 60),
    ("t", false, 10, 90),
    ("s", true, 5, 95),
    ("w", false, 5, 70),
    ("p", true, 20, 300),
    ("n", false, 6, 120),
];

fn inequalities(m: &mut Make) -> Option<Draft> {
    let story = m.dice.from(1..=6);
    let (letter, up, low, high) = *LIMITS.get((story - 1) as usize)?;
    // At stretch the limit is a temperature below zero.
    let cold = m.level == crate::Level::Stretch;
    let c = if cold {
        m.dice.from(-25..=-1)
    } else {
        m.dice.from(low..=high)
    };
    let letter = if cold { "t" } else { letter };
    let ask = if cold {
        m.say(if up { "ask-cold-1" } else { "ask-cold-2" })
    } else {
        m.say(&format!("ask-{story}"))
    };
    let (sign, typed, condition) = if up {
        (Sign::Greater, ">", "over")
    } else {
        (Sign::Less, "<", "under")
    };
    let (turned, with_limit) = if up { ("<", ">=") } else { (">", "<=") };
    if m.level == crate::Level::Entry || m.dice.one_in(2) {
        return Some(
            Draft::new(json!({"task": "write_inequality", "letter": letter, "condition": condition, "limit": c}))
                .ask(ask.number("limit", c).math("letter", var(letter)))
                .equation(format!("{letter}{typed}{c}"), &[letter], &[Sign::Less, Sign::Greater, Sign::AtMost, Sign::AtLeast])
                .hint(m.say("hint-values"))
                .hint(m.say("hint-limit").number("limit", c))
                .step(m.say(if up { "step-more" } else { "step-less" }).math("letter", var(letter)).number("limit", c))
                .step(relation(var(letter), sign, num(c)))
                .misconception("inequality-turned-round", equation(format!("{letter}{turned}{c}")))
                .misconception("limit-taken-in", equation(format!("{letter}{with_limit}{c}"))),
        );
    }
    let line = Line::new(c - 8, c + 8, 1).label_every(Ratio::from(2));
    let ray = |from: i64, open: bool, rightward: bool| Answer::NumberLineRay {
        from: Rational::from(from),
        open,
        rightward,
    };
    Some(
        Draft::new(
            json!({"task": "graph_inequality", "letter": letter, "sign": typed, "limit": c}),
        )
        .ask(
            m.say("ask-graph")
                .math("statement", relation(var(letter), sign, num(c))),
        )
        .answer(
            Entry::NumberLineRay {
                line: line.into_line(),
            },
            ray(c, true, up),
        )
        .hint(m.say("hint-values"))
        .hint(m.say("hint-circle"))
        .step(m.say("step-open").number("limit", c))
        .step(m.say(if up { "step-right" } else { "step-left" }))
        .misconception("inequality-turned-round", ray(c, true, !up))
        .misconception("limit-taken-in", ray(c, false, up)),
    )
}

fn two_variables(m: &mut Make) -> Option<Draft> {
    let graph = m.dice.one_in(3);
    let k = m.dice.from(if graph {
        2..=7
    } else {
        m.level.pick(2..=15, 3..=18, 4..=25)
    });
    let story = m.dice.from(1..=4);
    let add = story > 2;
    let (x, y) = *[("t", "c"), ("h", "d"), ("a", "b"), ("n", "p")].get((story - 1) as usize)?;
    let text = if add {
        format!("{y}={x}+{k}")
    } else {
        format!("{y}={k}{x}")
    };
    let at = |v: i64| if add { v + k } else { v * k };
    let start = m.dice.from(1..=3);
    let shows_table = m.level.pick(false, m.dice.one_in(2), true);
    let rows: Vec<Vec<_>> = (start..start + 3)
        .map(|v| vec![cell(num(v)), cell(num(at(v)))])
        .collect();
    let pairs: Vec<[i64; 2]> = (start..start + 3).map(|v| [v, at(v)]).collect();
    let header = [
        ["g6-two-variables-head-t", "g6-two-variables-head-c"],
        ["g6-two-variables-head-h", "g6-two-variables-head-d"],
        ["g6-two-variables-head-a", "g6-two-variables-head-b"],
        ["g6-two-variables-head-n", "g6-two-variables-head-p"],
    ]
    .get((story - 1) as usize)?;
    let figure = table(
        header,
        rows,
        m.say("table")
            .number("x1", start)
            .number("y1", at(start))
            .number("x2", start + 1)
            .number("y2", at(start + 1))
            .number("x3", start + 2)
            .number("y3", at(start + 2)),
    );
    let mut draft = if graph {
        keep(at(3) <= 10)?;
        let names = ["A", "B", "C"];
        let points: Vec<(&'static str, i64, i64)> = names
            .into_iter()
            .zip(1..)
            .map(|(name, v)| (name, v, at(v)))
            .collect();
        let pairs: Vec<[i64; 2]> = (1..=3).map(|v| [v, at(v)]).collect();
        Draft::new(
            json!({"task": "equation_of_graph", "independent": x, "dependent": y, "pairs": pairs}),
        )
        .ask(
            m.say(&format!("ask-graph-{story}"))
                .math("x", var(x))
                .math("y", var(y)),
        )
        .ask(grid(
            first_quadrant(10),
            &points,
            Vec::new(),
            m.say("graph")
                .math("a", pair(num(1), num(at(1))))
                .math("b", pair(num(2), num(at(2))))
                .math("c", pair(num(3), num(at(3)))),
        ))
    } else if shows_table {
        Draft::new(
            json!({"task": "equation_of_table", "independent": x, "dependent": y, "pairs": pairs}),
        )
        .ask(
            m.say(&format!("ask-table-{story}"))
                .math("x", var(x))
                .math("y", var(y)),
        )
        .ask(figure)
    } else {
        Draft::new(json!({"task": "equation_of_story", "relation": if add { "more" } else { "each" }, "independent": x, "dependent": y, "k": k}))
            .ask(m.say(&format!("ask-{story}")).count("k", k).math("x", var(x)).math("y", var(y)))
    };
    draft = draft
        .equation(text, &[y, x], &[Sign::Equal])
        .hint(m.say("hint-one").math("x", var(x)))
        .hint(m.say(if add { "hint-more" } else { "hint-times" }))
        .step(m.say("step-one").math(
            "work",
            equal(
                if add {
                    sum([num(1), num(k)])
                } else {
                    product([num(k), num(1)])
                },
                num(at(1)),
            ),
        ))
        .step(equal(
            var(y),
            if add {
                sum([var(x), num(k)])
            } else {
                side_by_side([num(k), var(x)])
            },
        ));
    Some(
        draft
            .misconception(
                "letters-swapped-in-equation",
                equation(if add {
                    format!("{x}={y}+{k}")
                } else {
                    format!("{x}={k}{y}")
                }),
            )
            .misconception(
                if add {
                    "multiplied-instead-of-added"
                } else {
                    "added-instead-of-multiplied"
                },
                equation(if add {
                    format!("{y}={k}{x}")
                } else {
                    format!("{y}={x}+{k}")
                }),
            ),
    )
}
