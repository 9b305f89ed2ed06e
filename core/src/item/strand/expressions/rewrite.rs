//! Expressions with letters: writing, naming parts, rewriting.

use crate::item::FormRule;
use crate::item::expr::{Expr, difference, equal, group, num, side_by_side, sum, var};
use crate::item::make::{Draft, Generator, Make, expression, keep, says, whole};
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g6-write-expressions", 1, write),
    Generator::new("g6-expression-parts", 1, parts),
    Generator::new("g6-equal-expressions", 1, rewrite),
    Generator::new("g6-equivalent-test", 1, always_equal),
    Generator::new("g6-variables-in-stories", 1, stories),
];

const LETTERS: [&str; 6] = ["n", "x", "y", "k", "p", "w"];

fn write(m: &mut Make) -> Option<Draft> {
    let letter = m.dice.pick(&LETTERS);
    let (a, b) = (m.dice.from(2..=12), m.dice.from(2..=20));
    keep(a != b)?;
    let story = m.dice.from(m.level.pick(1..=4, 3..=6, 5..=8));
    let l = letter;
    let (right, turned, other) = match story {
        1 => (format!("{l}+{a}"), format!("{l}*{a}"), format!("{l}-{a}")),
        2 => (format!("{l}-{a}"), format!("{a}-{l}"), format!("{l}+{a}")),
        3 => (format!("{a}{l}"), format!("{l}+{a}"), format!("{l}/{a}")),
        4 => (format!("{l}/{a}"), format!("{a}{l}"), format!("{l}-{a}")),
        5 => (
            format!("{a}{l}+{b}"),
            format!("{a}({l}+{b})"),
            format!("{b}{l}+{a}"),
        ),
        6 => (
            format!("{a}({l}+{b})"),
            format!("{a}{l}+{b}"),
            format!("{l}+{}", a * b),
        ),
        7 => (
            format!("{b}-{a}{l}"),
            format!("{a}{l}-{b}"),
            format!("{a}({b}-{l})"),
        ),
        _ => (
            format!("({l}-{b})/{a}"),
            format!("{l}-{b}/{a}"),
            format!("({l}+{b})/{a}"),
        ),
    };
    let ask = m
        .say(&format!("ask-{story}"))
        .math("letter", var(letter))
        .count("a", a);
    let two = story >= 5;
    let statement = if two {
        json!({"task": "words_to_expression", "form": story, "letter": letter, "a": a, "b": b})
    } else {
        json!({"task": "words_to_expression", "form": story, "letter": letter, "a": a})
    };
    let statement = strip_form(statement, story);
    Some(
        Draft::new(statement)
            .ask(if two { ask.count("b", b) } else { ask })
            .expression(right.clone(), &[letter])
            .hint(m.say("hint-letter").math("letter", var(letter)))
            .hint(m.say("hint-try").math("letter", var(letter)))
            .step(m.say("hint-letter").math("letter", var(letter)))
            .step(m.say("step-answer").text("text", pretty(&right)))
            .mistake(
                if story == 2 || story == 7 {
                    "subtraction-turned-round"
                } else if story >= 5 {
                    "brackets-left-out-or-added"
                } else {
                    "wrong-operation-for-words"
                },
                expression(turned),
            )
            .mistake(
                if story == 5 {
                    "numbers-swapped-in-expression"
                } else {
                    "wrong-sign-for-words"
                },
                expression(other),
            ),
    )
}

/// The form's number is no number of the question; it goes into the statement as a word.
fn strip_form(mut statement: serde_json::Value, story: i64) -> serde_json::Value {
    let name = [
        "more_than",
        "less_than",
        "times",
        "divided_by",
        "times_then_more",
        "sum_times",
        "product_from",
        "less_then_divided",
    ][(story - 1) as usize];
    statement["form"] = json!(name);
    statement
}

/// An expression text with signs for reading.
fn pretty(text: &str) -> String {
    text.replace('*', " × ")
        .replace('/', " ÷ ")
        .replace('+', " + ")
        .replace('-', " − ")
}

fn parts(m: &mut Make) -> Option<Draft> {
    let (x, y) = m.dice.pick(&[("x", "y"), ("a", "b"), ("n", "m")]);
    let (a, b, c) = (
        m.dice.from(2..=12),
        m.dice.from(2..=12),
        m.dice.from(13..=30),
    );
    keep(a != b)?;
    let (ax, by) = (
        side_by_side([num(a), var(x)]),
        side_by_side([num(b), var(y)]),
    );
    let shown = m.level.pick(
        sum([ax.clone(), num(c)]),
        sum([ax.clone(), by.clone(), num(c)]),
        sum([ax.clone(), by.clone(), num(c)]),
    );
    let three = m.level != crate::item::Level::Entry;
    let terms: Vec<String> = if three {
        vec![format!("{a}{x}"), format!("{b}{y}"), c.to_string()]
    } else {
        vec![format!("{a}{x}"), c.to_string()]
    };
    let kind = m.dice.from(m.level.pick(1..=2, 1..=3, 2..=4));
    let base = |task: &str| json!({"task": task, "terms": terms, "letter": x});
    let draft = match kind {
        1 => Draft::new(base("coefficient_of"))
            .ask(
                m.say("ask-coefficient")
                    .math("letter", var(x))
                    .math("expression", shown),
            )
            .whole(a)
            .mistake("constant-for-coefficient", whole(c))
            .mistake("term-number-for-coefficient", whole(1)),
        2 => Draft::new(base("constant_of"))
            .ask(m.say("ask-constant").math("expression", shown))
            .whole(c)
            .mistake("coefficient-for-constant", whole(a))
            .mistake_if(three, "counted-terms-for-constant", whole(1))
            .mistake_if(!three, "sum-for-constant", whole(a + c)),
        3 => Draft::new(base("count_terms"))
            .ask(m.say("ask-terms").math("expression", shown))
            .whole(terms.len() as i64)
            .mistake("counted-letters-for-terms", whole(terms.len() as i64 - 1))
            .mistake("counted-signs-and-numbers", whole(terms.len() as i64 + 2)),
        _ => {
            let inner = sum([var(x), num(c)]);
            let name = ["part-factors", "part-terms"];
            let ask_factors = m.dice.one_in(2);
            Draft::new(json!({"task": "name_parts", "outside": a, "inside": [x, c], "of": if ask_factors { "whole" } else { "inside" }}))
                .ask(m.say(if ask_factors { "ask-name-factors" } else { "ask-name-terms" }).math("one", if ask_factors { num(a) } else { var(x) }).math("two", if ask_factors { group(inner.clone()) } else { num(c) }).math("expression", side_by_side([num(a), group(inner)])))
                .one_of_listed(vec![("terms-and-factors-mixed-up", says(name[0])), ("terms-and-factors-mixed-up", says(name[1])), ("called-parts-coefficients", says("part-coefficients"))], usize::from(!ask_factors))
        }
    };
    Some(
        draft
            .hint(m.say("hint-terms"))
            .hint(m.say("hint-coefficient"))
            .step(m.say(match kind {
                1 => "step-coefficient",
                2 => "step-constant",
                3 => "step-terms",
                _ => "step-factors",
            }))
            .step(m.say("step-list").text(
                "terms",
                if kind == 4 {
                    format!("{a}({x} + {c})")
                } else {
                    terms.join(", ")
                },
            )),
    )
}

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
                    equal(crate::item::expr::product([num(a), num(b)]), num(a * b)),
                ))
                .step(equal(
                    crate::item::expr::product([num(a), num(b)]),
                    num(a * b),
                ))
                .step(equal(
                    crate::item::expr::product([num(a), side_by_side([num(c), var(l)])]),
                    side_by_side([num(a * c), var(l)]),
                ))
                .step(equal(
                    shown,
                    sum([num(a * b), side_by_side([num(a * c), var(l)])]),
                ))
                .mistake(
                    "factor-taken-to-first-only",
                    expression(format!("{}+{c}{l}", a * b)),
                )
                .mistake(
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
                    crate::item::expr::product([
                        Expr::Blank,
                        group(sum([side_by_side([Expr::Blank, var(l)]), Expr::Blank])),
                    ]),
                ))
                .step(m.say("step-common").count("g", g))
                .step(equal(
                    shown,
                    side_by_side([num(g), group(sum([side_by_side([num(x), var(l)]), num(y)]))]),
                ))
                .mistake(
                    "factor-taken-from-first-only",
                    expression(format!("{g}({x}{l}+{})", g * y)),
                )
                .mistake(
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
                .mistake(
                    "unlike-terms-joined",
                    expression(format!("{}{l}", a + b + c)),
                )
                .mistake(
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
                .mistake(
                    "factor-taken-to-first-only",
                    expression(format!("{}{l}+{b}", a + c)),
                )
                .mistake(
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
    let kind = m.dice.from(m.level.pick(1..=4, 1..=6, 3..=8));
    let ax = || side_by_side([num(a), var(l)]);
    // Left, right, both as text.
    let (left, right, lt, rt) = match kind {
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
        _ => (
            side_by_side([num(a), group(sum([side_by_side([num(b), var(l)]), num(1)]))]),
            sum([side_by_side([num(a * b), var(l)]), num(1)]),
            format!("{a}*({b}*{l}+1)"),
            format!("{}*{l}+1", a * b),
        ),
    };
    let yes = matches!(kind, 1 | 3 | 5 | 7);
    let v = m.dice.from(2..=9);
    Some(
        Draft::new(json!({"task": "always_equal", "left": lt, "right": rt}))
            .ask(
                m.say("ask")
                    .math("left", left.clone())
                    .math("right", right.clone()),
            )
            .one_of_listed(
                vec![
                    ("thought-always-equal", says("equal-always")),
                    ("thought-not-equal", says("equal-not")),
                    ("one-value-is-enough", says("equal-one-value")),
                ],
                usize::from(!yes),
            )
            .hint(m.say("hint-try").math("letter", var(l)).count("value", v))
            .hint(m.say("hint-rewrite"))
            .step(m.say(match kind {
                1 | 2 | 8 => "step-brackets",
                3 | 4 | 5 | 7 => "step-like",
                _ => "step-turned",
            }))
            .step(m.say(if yes { "step-yes" } else { "step-no" })),
    )
}

fn stories(m: &mut Make) -> Option<Draft> {
    let a = m.dice.from(2..=12);
    let b = m.dice.from(3..=25);
    keep(a != b)?;
    let story = m.dice.from(m.level.pick(1..=4, 3..=6, 5..=7));
    let name = m.dice.name();
    let (letter, right, wrong, other, task) = match story {
        1 => (
            "p",
            format!("{a}p"),
            format!("{a}+p"),
            format!("p/{a}"),
            "cost_each",
        ),
        2 => (
            "d",
            format!("d+{a}"),
            format!("{a}d"),
            format!("d-{a}"),
            "more",
        ),
        3 => (
            "m",
            format!("m-{a}"),
            format!("{a}-m"),
            format!("m+{a}"),
            "fewer",
        ),
        4 => (
            "s",
            format!("s/{a}"),
            format!("{a}s"),
            format!("{a}/s"),
            "shared",
        ),
        5 => (
            "h",
            format!("{a}h+{b}"),
            format!("{b}h+{a}"),
            format!("{a}+h+{b}"),
            "each_and_once",
        ),
        6 => (
            "t",
            format!("{}-{a}t", b * a),
            format!("{a}t-{}", b * a),
            format!("{}-t", b * a),
            "left_after",
        ),
        _ => (
            "k",
            format!("{a}(k+{b})"),
            format!("{a}k+{b}"),
            format!("k+{}", a * b),
            "each_has_more",
        ),
    };
    let shown_b = if story == 6 { b * a } else { b };
    let ask = m
        .say(&format!("ask-{story}"))
        .text("name", name)
        .math("letter", var(letter))
        .count("a", a);
    let statement = if story >= 5 {
        json!({"task": "story_to_expression", "story": task, "letter": letter, "a": a, "b": shown_b})
    } else {
        json!({"task": "story_to_expression", "story": task, "letter": letter, "a": a})
    };
    Some(
        Draft::new(statement)
            .ask(if story >= 5 {
                ask.count("b", shown_b)
            } else {
                ask
            })
            .expression(right.clone(), &[letter])
            .hint(m.say("hint-number").math("letter", var(letter)))
            .hint(m.say("hint-same"))
            .step(m.say("hint-same"))
            .step(m.say("step-answer").text("text", pretty(&right)))
            .mistake(
                match story {
                    3 | 6 => "subtraction-turned-round",
                    7 => "brackets-left-out-or-added",
                    5 => "numbers-swapped-in-expression",
                    _ => "wrong-operation-for-words",
                },
                expression(wrong),
            )
            .mistake("wrong-sign-for-words", expression(other)),
    )
}
