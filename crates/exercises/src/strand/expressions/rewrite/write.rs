//! Expressions written from words and their parts.

use crate::expr::{group, num, side_by_side, sum, var};
use crate::make::{Draft, Generator, Make, expression, keep, says, whole};
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g6-write-expressions", 3, write),
    Generator::new("g6-expression-parts", 3, parts),
    Generator::new("g6-variables-in-stories", 3, stories),
];

/// No y, e, o or u: they are words in Spanish.
pub(super) const LETTERS: [&str; 6] = ["n", "x", "k", "p", "t", "w"];

fn write(m: &mut Make) -> Option<Draft> {
    let letter = m.dice.pick(&LETTERS);
    let (a, b) = (m.dice.from(2..=12), m.dice.from(2..=20));
    keep(a != b)?;
    let story = m.dice.from(m.level.pick(1..=4, 3..=6, 5..=8));
    let l = letter;
    // The statement names the form in a word: it must hold no number but those shown.
    let (form, right, turned, other) = match story {
        1 => (
            "more_than",
            format!("{l}+{a}"),
            format!("{l}*{a}"),
            format!("{l}-{a}"),
        ),
        2 => (
            "less_than",
            format!("{l}-{a}"),
            format!("{a}-{l}"),
            format!("{l}+{a}"),
        ),
        3 => (
            "times",
            format!("{a}{l}"),
            format!("{l}+{a}"),
            format!("{l}/{a}"),
        ),
        4 => (
            "divided_by",
            format!("{l}/{a}"),
            format!("{a}{l}"),
            format!("{l}-{a}"),
        ),
        5 => (
            "times_then_more",
            format!("{a}{l}+{b}"),
            format!("{a}({l}+{b})"),
            format!("{b}{l}+{a}"),
        ),
        6 => (
            "sum_times",
            format!("{a}({l}+{b})"),
            format!("{a}{l}+{b}"),
            format!("{l}+{}", a * b),
        ),
        7 => (
            "product_from",
            format!("{b}-{a}{l}"),
            format!("{a}{l}-{b}"),
            format!("{a}({b}-{l})"),
        ),
        _ => (
            "less_then_divided",
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
        json!({"task": "words_to_expression", "form": form, "letter": letter, "a": a, "b": b})
    } else {
        json!({"task": "words_to_expression", "form": form, "letter": letter, "a": a})
    };
    Some(
        Draft::new(statement)
            .ask(if two { ask.count("b", b) } else { ask })
            .expression(right.clone(), &[letter])
            .hint(m.say("hint-letter").math("letter", var(letter)))
            .hint(m.say("hint-try").math("letter", var(letter)))
            .step(m.say("hint-letter").math("letter", var(letter)))
            .step(m.say("step-answer").text("text", pretty(&right)))
            .misconception(
                if story == 2 || story == 7 {
                    "subtraction-turned-round"
                } else if story >= 5 {
                    "brackets-left-out-or-added"
                } else {
                    "wrong-operation-for-words"
                },
                expression(turned),
            )
            .misconception(
                match story {
                    3 | 4 => "wrong-operation-for-words",
                    5 => "numbers-swapped-in-expression",
                    6 => "letter-not-multiplied",
                    7 => "brackets-left-out-or-added",
                    // Plus for minus, or minus for plus.
                    _ => "wrong-sign-for-words",
                },
                expression(other),
            ),
    )
}

/// An expression text with signs for reading.
fn pretty(text: &str) -> String {
    text.replace('*', " × ")
        .replace('/', " ÷ ")
        .replace('+', " + ")
        .replace('-', " − ")
}

fn parts(m: &mut Make) -> Option<Draft> {
    let (x, y) = m.dice.pick(&[("x", "z"), ("c", "d"), ("n", "m")]);
    let (a, b, c) = (
        m.dice.from(2..=30),
        m.dice.from(2..=12),
        m.dice.from(2..=30),
    );
    keep(a != b && a != c && b != c)?;
    let (ax, by) = (
        side_by_side([num(a), var(x)]),
        side_by_side([num(b), var(y)]),
    );
    let shown = m.level.pick(
        sum([ax.clone(), num(c)]),
        sum([ax.clone(), by.clone(), num(c)]),
        sum([ax.clone(), by.clone(), num(c)]),
    );
    let three = m.level != crate::Level::Entry;
    let terms: Vec<String> = if three {
        vec![format!("{a}{x}"), format!("{b}{y}"), c.to_string()]
    } else {
        vec![format!("{a}{x}"), c.to_string()]
    };
    let kind = m.dice.from(m.level.pick(1..=2, 1..=3, 2..=4));
    // The number of terms is nearly always the same.
    keep(kind != 3 || m.dice.one_in(3))?;
    let base = |task: &str| json!({"task": task, "terms": terms, "letter": x});
    let mut factors = false;
    let draft = match kind {
        1 => Draft::new(base("coefficient_of"))
            .ask(
                m.say("ask-coefficient")
                    .math("letter", var(x))
                    .math("expression", shown),
            )
            .whole(a)
            .misconception("constant-for-coefficient", whole(c))
            .misconception("term-number-for-coefficient", whole(1)),
        2 => Draft::new(base("constant_of"))
            .ask(m.say("ask-constant").math("expression", shown))
            .whole(c)
            .misconception("coefficient-for-constant", whole(a))
            .misconception_if(three, "counted-terms-for-constant", whole(1))
            .misconception_if(!three, "sum-for-constant", whole(a + c)),
        3 => Draft::new(base("count_terms"))
            .ask(m.say("ask-terms").math("expression", shown))
            .whole(terms.len() as i64)
            .misconception("counted-letters-for-terms", whole(terms.len() as i64 - 1))
            .misconception("counted-signs-and-numbers", whole(terms.len() as i64 + 2)),
        _ => {
            if m.third == 2 {
                return Some(name_coefficients(m, (a, x), (b, y)));
            }
            let inner = sum([var(x), num(c)]);
            let name = ["part-factors", "part-terms"];
            let ask_factors = m.third == 0;
            factors = ask_factors;
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
            .step(match kind {
                1 => m
                    .say("step-result-coefficient")
                    .math("term", ax)
                    .count("n", a),
                2 => m.say("step-result-constant").count("n", c),
                3 => m
                    .say("step-result-terms")
                    .text("terms", terms.join(", "))
                    .count("n", terms.len() as i64),
                _ if factors => m.say("step-result-factors"),
                _ => m.say("step-result-added"),
            }),
    )
}

/// What the numbers in front of two letters are called.
fn name_coefficients(m: &Make, (a, x): (i64, &'static str), (b, y): (i64, &'static str)) -> Draft {
    let shown = sum([
        side_by_side([num(a), var(x)]),
        side_by_side([num(b), var(y)]),
    ]);
    Draft::new(json!({
        "task": "name_parts", "outside": a, "inside": [x, b, y], "of": "fronts",
    }))
    .ask(
        m.say("ask-name-factors")
            .math("one", num(a))
            .math("two", num(b))
            .math("expression", shown),
    )
    .one_of_listed(
        vec![
            ("coefficients-called-otherwise", says("part-constants")),
            ("coefficients-called-otherwise", says("part-terms")),
            ("", says("part-coefficients")),
        ],
        2,
    )
    .hint(m.say("hint-terms"))
    .hint(m.say("hint-coefficient"))
    .step(m.say("step-coefficient"))
    .step(m.say("step-result-fronts"))
}

fn stories(m: &mut Make) -> Option<Draft> {
    let a = m.dice.from(2..=12);
    let b = m.dice.from(3..=25);
    keep(a != b)?;
    let story = m.dice.from(m.level.pick(1..=4, 3..=6, 5..=7));
    // No hour on a boat for 2 dollars.
    let a = if story == 5 { a + 10 } else { a };
    keep(a != b)?;
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
            .misconception(
                match story {
                    3 | 6 => "subtraction-turned-round",
                    7 => "brackets-left-out-or-added",
                    5 => "numbers-swapped-in-expression",
                    _ => "wrong-operation-for-words",
                },
                expression(wrong),
            )
            .misconception(
                match story {
                    1 => "wrong-operation-for-words",
                    4 => "operation-order-turned-round",
                    5..=7 => "letter-not-multiplied",
                    _ => "wrong-sign-for-words",
                },
                expression(other),
            ),
    )
}
