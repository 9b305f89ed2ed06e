//! Expressions that are always equal.

use super::write::LETTERS;
use crate::FormRule;
use crate::expr::{Expr, difference, equal, group, num, side_by_side, sum, var};
use crate::make::{Draft, Generator, Make, expression, keep, says};
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g6-equal-expressions", 3, rewrite),
    Generator::new("g6-equivalent-test", 3, always_equal),
];

fn rewrite(m: &mut Make) -> Option<Draft> {
    let letter = m.dice.pick(&LETTERS);
    let l = letter;
    let (a, b, c) = (m.dice.from(2..=9), m.dice.from(2..=9), m.dice.from(2..=9));
    let kind = m.level.pick(
        m.dice.pick(&[1, 3]),
        m.dice.from(1..=3),
        m.dice.pick(&[2, 4]),
    );
    Some(match kind {
        1 => {
            // a(b + cx) without brackets.
            keep(b != c || a != b)?;
            let shown =
                side_by_side([num(a), group(sum([num(b), side_by_side([num(c), var(l)])]))]);
            Draft::new(json!({"task": "expand", "expression": format!("{a}*({b}+{c}*{l})")}))
                .ask(m.say("ask-expand"))
                .ask(shown.clone())
                .expression(format!("{}+{}{l}", a * b, a * c), &[letter])
                .form(FormRule::Expanded)
                .hint(m.say("hint-both"))
                .hint(m.say("hint-first").math(
                    "work",
                    equal(crate::expr::product([num(a), num(b)]), num(a * b)),
                ))
                .step(equal(crate::expr::product([num(a), num(b)]), num(a * b)))
                .step(equal(
                    crate::expr::product([num(a), side_by_side([num(c), var(l)])]),
                    side_by_side([num(a * c), var(l)]),
                ))
                .step(equal(
                    shown,
                    sum([num(a * b), side_by_side([num(a * c), var(l)])]),
                ))
                .misconception(
                    "factor-taken-to-first-only",
                    expression(format!("{}+{c}{l}", a * b)),
                )
                .misconception(
                    "unlike-terms-joined",
                    expression(format!("{}{l}", a * b + a * c)),
                )
        }
        2 => {
            // ax + b as a product.
            let g = a;
            let (x, y) = (b, c);
            keep(num_integer::gcd(x, y) == 1 && x != y)?;
            let shown = sum([side_by_side([num(g * x), var(l)]), num(g * y)]);
            Draft::new(json!({"task": "factor", "expression": format!("{}*{l}+{}", g * x, g * y)}))
                .ask(m.say("ask-factor"))
                .ask(shown.clone())
                .expression(format!("{g}({x}{l}+{y})"), &[letter])
                .form(FormRule::Factored)
                .hint(m.say("hint-common").count("a", g * x).count("b", g * y))
                .hint(m.say("hint-form").math(
                    "form",
                    crate::expr::product([
                        Expr::Blank,
                        group(sum([side_by_side([Expr::Blank, var(l)]), Expr::Blank])),
                    ]),
                ))
                .step(m.say("step-common").count("g", g))
                .step(equal(
                    shown,
                    side_by_side([num(g), group(sum([side_by_side([num(x), var(l)]), num(y)]))]),
                ))
                .misconception(
                    "factor-taken-from-first-only",
                    expression(format!("{g}({x}{l}+{})", g * y)),
                )
                .misconception(
                    "unlike-terms-joined",
                    expression(format!("{}{l}", g * x + g * y)),
                )
        }
        3 => {
            // ax + b + cx.
            keep(a != c)?;
            let shown = sum([
                side_by_side([num(a), var(l)]),
                num(b),
                side_by_side([num(c), var(l)]),
            ]);
            Draft::new(json!({"task": "expand", "expression": format!("{a}*{l}+{b}+{c}*{l}")}))
                .ask(m.say("ask-collect"))
                .ask(shown.clone())
                .expression(format!("{}{l}+{b}", a + c), &[letter])
                .form(FormRule::Expanded)
                .hint(m.say("hint-like").math("letter", var(l)))
                .hint(m.say("hint-groups").math(
                    "work",
                    sum([
                        side_by_side([num(a), var(l)]),
                        side_by_side([num(c), var(l)]),
                    ]),
                ))
                .step(equal(
                    sum([
                        side_by_side([num(a), var(l)]),
                        side_by_side([num(c), var(l)]),
                    ]),
                    side_by_side([num(a + c), var(l)]),
                ))
                .step(equal(
                    shown,
                    sum([side_by_side([num(a + c), var(l)]), num(b)]),
                ))
                .misconception(
                    "unlike-terms-joined",
                    expression(format!("{}{l}", a + b + c)),
                )
                .misconception(
                    "like-terms-multiplied",
                    expression(format!("{}{l}+{b}", a * c)),
                )
        }
        _ => {
            // a(x + b) + cx.
            let shown = sum([
                side_by_side([num(a), group(sum([var(l), num(b)]))]),
                side_by_side([num(c), var(l)]),
            ]);
            Draft::new(json!({"task": "expand", "expression": format!("{a}*({l}+{b})+{c}*{l}")}))
                .ask(m.say("ask-expand"))
                .ask(shown.clone())
                .expression(format!("{}{l}+{}", a + c, a * b), &[letter])
                .form(FormRule::Expanded)
                .hint(m.say("hint-both"))
                .hint(m.say("hint-like").math("letter", var(l)))
                .step(equal(
                    side_by_side([num(a), group(sum([var(l), num(b)]))]),
                    sum([side_by_side([num(a), var(l)]), num(a * b)]),
                ))
                .step(equal(
                    shown,
                    sum([side_by_side([num(a + c), var(l)]), num(a * b)]),
                ))
                .misconception(
                    "factor-taken-to-first-only",
                    expression(format!("{}{l}+{b}", a + c)),
                )
                .misconception(
                    "unlike-terms-joined",
                    expression(format!("{}{l}", a + c + a * b)),
                )
        }
    })
}

fn always_equal(m: &mut Make) -> Option<Draft> {
    let letter = m.dice.pick(&LETTERS);
    let l = letter;
    let (a, b) = (m.dice.from(2..=9), m.dice.from(2..=9));
    keep(a != b)?;
    // Always equal, never, or for one number only: each as likely.
    let kind = match m.dice.from(0..=2) {
        0 => m
            .dice
            .pick(m.level.pick(&[1, 3][..], &[1, 3, 5][..], &[1, 3, 7][..])),
        1 => m
            .dice
            .pick(m.level.pick(&[2][..], &[2, 8][..], &[8, 9][..])),
        _ => m
            .dice
            .pick(m.level.pick(&[4][..], &[4, 6][..], &[6, 10][..])),
    };
    let ax = || side_by_side([num(a), var(l)]);
    // Left, right, both as text.
    let (left, right_side, lt, rt) = match kind {
        1 => (
            side_by_side([num(a), group(sum([var(l), num(b)]))]),
            sum([ax(), num(a * b)]),
            format!("{a}*({l}+{b})"),
            format!("{a}*{l}+{}", a * b),
        ),
        2 => (
            side_by_side([num(a), group(sum([var(l), num(b)]))]),
            sum([ax(), num(b)]),
            format!("{a}*({l}+{b})"),
            format!("{a}*{l}+{b}"),
        ),
        3 => (
            sum([ax(), var(l)]),
            side_by_side([num(a + 1), var(l)]),
            format!("{a}*{l}+{l}"),
            format!("{}*{l}", a + 1),
        ),
        4 => (
            sum([ax(), num(b)]),
            side_by_side([num(a + b), var(l)]),
            format!("{a}*{l}+{b}"),
            format!("{}*{l}", a + b),
        ),
        5 => (
            sum([var(l), var(l), var(l)]),
            side_by_side([num(3), var(l)]),
            format!("{l}+{l}+{l}"),
            format!("3*{l}"),
        ),
        6 => (
            difference(var(l), num(a)),
            difference(num(a), var(l)),
            format!("{l}-{a}"),
            format!("{a}-{l}"),
        ),
        7 => (
            sum([ax(), side_by_side([num(b), var(l)]), num(a)]),
            sum([side_by_side([num(a + b), var(l)]), num(a)]),
            format!("{a}*{l}+{b}*{l}+{a}"),
            format!("{}*{l}+{a}", a + b),
        ),
        // Never equal: the numbers alone differ.
        9 => (
            sum([ax(), side_by_side([num(b), var(l)]), num(a)]),
            sum([side_by_side([num(a + b), var(l)]), num(a + b)]),
            format!("{a}*{l}+{b}*{l}+{a}"),
            format!("{}*{l}+{}", a + b, a + b),
        ),
        // Equal for one number only.
        10 => (
            sum([ax(), num(a * b)]),
            sum([side_by_side([num(a + 1), var(l)]), num(a * b - b)]),
            format!("{a}*{l}+{}", a * b),
            format!("{}*{l}+{}", a + 1, a * b - b),
        ),
        _ => (
            side_by_side([num(a), group(sum([side_by_side([num(b), var(l)]), num(1)]))]),
            sum([side_by_side([num(a * b), var(l)]), num(1)]),
            format!("{a}*({b}*{l}+1)"),
            format!("{}*{l}+1", a * b),
        ),
    };
    let right = match kind {
        1 | 3 | 5 | 7 => 0,
        2 | 8 | 9 => 1,
        _ => 2,
    };
    let v = m.dice.from(2..=9);
    let codes = match right {
        0 => ["", "thought-not-equal", "thought-not-equal"],
        1 => ["thought-always-equal", "", "thought-equal-for-some"],
        _ => ["one-value-is-enough", "value-not-found", ""],
    };
    let choices = ["equal-always", "equal-never", "equal-sometimes"];
    Some(
        Draft::new(json!({"task": "always_equal", "left": lt, "right": rt}))
            .ask(
                m.say("ask")
                    .math("left", left.clone())
                    .math("right", right_side.clone()),
            )
            .one_of_listed(codes.into_iter().zip(choices.map(says)).collect(), right)
            .hint(m.say("hint-try").math("letter", var(l)).count("value", v))
            .hint(m.say("hint-rewrite"))
            .step(m.say(match kind {
                1 | 2 | 8 => "step-brackets",
                3 | 4 | 5 | 7 | 9 | 10 => "step-like",
                _ => "step-turned",
            }))
            .step(m.say(["step-yes", "step-never", "step-sometimes"].get(right)?)),
    )
}
