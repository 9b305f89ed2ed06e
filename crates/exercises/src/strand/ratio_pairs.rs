//! Pairs of equal ratios on the grid, and two ratios compared (6.RP.A.3.a).

use crate::answer::Entry;
use crate::draw::first_quadrant;
use crate::expr::{equal, num, pair, product, quotient};
use crate::make::{Draft, Make, keep, point, says};
use serde_json::json;

/// A pair of a ratio, to be marked on the grid.
pub(super) fn plot_ratio(m: &mut Make) -> Option<Draft> {
    let (a, b) = (m.dice.from(1..=5), m.dice.from(1..=5));
    let k = m.dice.from(2..=5);
    let (x, y) = (a * k, b * k);
    keep(a != b && x <= 10 && y <= 10)?;
    let story = m.dice.from(1..=3);
    let added = b + x - a;
    Some(
        Draft::new(json!({"task": "plot_ratio", "ratio": [a, b], "across": x}))
            .ask(
                m.say(&format!("ask-plot-{story}"))
                    .count("a", a)
                    .count("b", b)
                    .count("given", x),
            )
            .answer(
                Entry::Coordinates {
                    frame: Some(first_quadrant(10)),
                },
                point(x, y),
            )
            .hint(m.say("hint-times"))
            .hint(m.say("hint-across"))
            .step(equal(product([num(a), num(k)]), num(x)))
            .step(equal(product([num(b), num(k)]), num(y)))
            .step(pair(num(x), num(y)))
            .misconception("coordinates-swapped", point(y, x))
            .misconception_if(
                (1..=10).contains(&added) && added != y && (added, x) != (x, y),
                "same-difference-in-ratio",
                point(x, added),
            ),
    )
}

/// Two mixtures: which has more of the first part?
pub(super) fn compare_ratios(m: &mut Make) -> Option<Draft> {
    // Each of the three answers is as likely.
    let right = m.third;
    let (a, b) = (m.dice.from(1..=9), m.dice.from(2..=9));
    let (c, d) = if right == 2 {
        let k = m.dice.from(2..=4);
        (a * k, b * k)
    } else {
        (m.dice.from(1..=12), m.dice.from(2..=12))
    };
    // Turned round where the other mixture is to have more.
    let turned = match right {
        0 => a * d < c * b,
        1 => a * d > c * b,
        _ => false,
    };
    let ((a, b), (c, d)) = if turned {
        ((c, d), (a, b))
    } else {
        ((a, b), (c, d))
    };
    keep((a * d == c * b) == (right == 2) && a != b && c != d && (a, b) != (c, d) && b != d)?;
    let flipped = right == 2 && m.dice.one_in(2);
    let ((a, b), (c, d)) = if flipped {
        ((c, d), (a, b))
    } else {
        ((a, b), (c, d))
    };
    let story = m.dice.from(1..=3);
    let code = |at: usize| match (right, at) {
        (2, _) => "took-as-different",
        (_, 2) => "took-as-equal",
        _ => "compared-one-number-of-ratio",
    };
    Some(
        Draft::new(json!({"task": "compare_ratios", "mixes": [[a, b], [c, d]]}))
            .ask(
                m.say(&format!("ask-mix-{story}"))
                    .count("a", a)
                    .count("b", b)
                    .count("c", c)
                    .count("d", d),
            )
            .one_of_listed(
                ["mix-first", "mix-second", "mix-same"]
                    .into_iter()
                    .enumerate()
                    .map(|(at, id)| (code(at), says(id)))
                    .collect(),
                right,
            )
            .hint(m.say("hint-same-amount"))
            .hint(
                m.say("hint-for-one")
                    .math("one", quotient(num(a), num(b)))
                    .math("two", quotient(num(c), num(d))),
            )
            .step(
                m.say("step-as-much")
                    .math("work", equal(product([num(a), num(d)]), num(a * d))),
            )
            .step(
                m.say("step-as-much")
                    .math("work", equal(product([num(c), num(b)]), num(c * b))),
            )
            .step(m.say(match right {
                0 => "step-mix-first",
                1 => "step-mix-second",
                _ => "step-mix-same",
            })),
    )
}
