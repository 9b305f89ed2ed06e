//! What an expression does, read without working it out.

use crate::answer::Entry;
use crate::draw::first_quadrant;
use crate::expr::{difference, group, num, pair, product, quotient, sum};
use crate::make::{Draft, Make, keep, point};
use serde_json::json;

/// An expression against what is in its parentheses (5.OA.A.2).
pub(super) fn read_expression(m: &mut Make) -> Option<Draft> {
    let (a, b) = (
        m.dice
            .from(m.level.pick(120..=999, 1_200..=9_999, 12_000..=99_999)),
        m.dice.from(m.level.pick(11..=99, 100..=999, 100..=9_999)),
    );
    let n = m.dice.from(2..=9);
    let kind = m.dice.from(0..=3) as usize;
    let minus = m.dice.one_in(2);
    let (inside, inside_text) = if minus {
        (difference(num(a), num(b)), format!("{a} - {b}"))
    } else {
        (sum([num(a), num(b)]), format!("{a} + {b}"))
    };
    keep(a % 10 != 0 && b % 10 != 0 && (a % n != 0 || b % n != 0))?;
    let grouped = group(inside.clone());
    let (work, text) = match kind {
        0 => (product([num(n), grouped]), format!("{n} * ({inside_text})")),
        1 => (sum([grouped, num(n)]), format!("({inside_text}) + {n}")),
        2 => (
            difference(grouped, num(n)),
            format!("({inside_text}) - {n}"),
        ),
        _ => (quotient(grouped, num(n)), format!("({inside_text}) / {n}")),
    };
    let ids = ["read-times", "read-more", "read-less", "read-part"];
    let choices = ids
        .into_iter()
        .map(|id| ("expression-misread", m.say(id).count("n", n).into()))
        .collect();
    Some(
        Draft::new(
            json!({"task": "read_expression", "expression": text, "inside": inside_text, "by": n}),
        )
        .ask(
            m.say("ask-read")
                .math("work", work.clone())
                .math("inside", inside.clone()),
        )
        .one_of_listed(choices, kind)
        .hint(m.say("hint-inside"))
        .hint(m.say("hint-done"))
        .step(m.say("step-inside").math("inside", inside))
        .step(m.say(ids.get(kind)?).count("n", n)),
    )
}

/// A pair of terms of two patterns, to be marked on the grid (5.OA.B.3).
pub(super) fn plot_paired_terms(m: &mut Make) -> Option<Draft> {
    let (a, b) = (m.dice.from(1..=5), m.dice.from(1..=5));
    let start = m.level.pick(0, m.dice.from(0..=2), m.dice.from(0..=3));
    let n = m.dice.from(3..=m.level.pick(4, 4, 5));
    let at = |k: i64| (start + a * (k - 1), start + b * (k - 1));
    let ((x, y), beyond, before) = (at(n), at(n + 1), at(n - 1));
    keep(a != b && x <= 10 && y <= 10)?;
    let far = if beyond.0 <= 10 && beyond.1 <= 10 {
        ("pattern-one-step-too-far", beyond)
    } else {
        ("pattern-one-step-short", before)
    };
    Some(
        Draft::new(json!({"task": "plot_paired_terms", "start": start, "add": [a, b], "place": n}))
            .ask(
                m.say("ask")
                    .count("start", start)
                    .count("a", a)
                    .count("b", b),
            )
            .ask(m.say("ask-plot").count("n", n))
            .answer(
                Entry::Coordinates {
                    frame: Some(first_quadrant(10)),
                },
                point(x, y),
            )
            .hint(
                m.say("hint-first")
                    .math("pair", pair(num(start), num(start))),
            )
            .hint(m.say("hint-across"))
            .step(m.say("step-x").numbers("terms", (1..=n).map(|k| at(k).0)))
            .step(m.say("step-y").numbers("terms", (1..=n).map(|k| at(k).1)))
            .step(pair(num(x), num(y)))
            .misconception(far.0, point(far.1.0, far.1.1))
            .misconception_unless_same("coordinates-swapped", point(y, x)),
    )
}
