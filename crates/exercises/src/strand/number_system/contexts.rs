//! Inequalities of a context: a sign, and what it means (6.NS.C.7.b).

use super::order::{order_in_context, zero_line};
use crate::answer::{Choice, Entry};
use crate::expr::{Sign, num, relation};
use crate::make::{Draft, Generator, Make, choice, compare, keep, two_parts};
use num_rational::Ratio;
use serde_json::json;

/// The generators of this file.
pub const GENERATORS: &[Generator] = &[Generator::new(
    "g6-order-in-context",
    3,
    order_or_inequality,
)];

fn order_or_inequality(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(2) {
        inequality(m)
    } else {
        order_in_context(m)
    }
}

/// The sign between two amounts of a story, and which is warmer, higher or more.
fn inequality(m: &mut Make) -> Option<Draft> {
    let story = m.dice.from(1..=3);
    let reach = m.level.pick(12, 20, 40);
    let (a, b) = (m.dice.from(-reach..=reach), m.dice.from(-reach..=reach));
    // After 1 a unit has another form.
    keep(a != b && a.min(b) < 0 && a.abs() > 1 && b.abs() > 1 && a != -b)?;
    let sign = Sign::of(a.cmp(&b));
    let turned = Sign::of(b.cmp(&a));
    let at = u32::from(a < b);
    let choices = ["first", "second"]
        .into_iter()
        .map(|which| Choice {
            shows: m.say(&format!("means-{story}-{which}")).into(),
        })
        .collect();
    let by_size = Sign::of(a.abs().cmp(&b.abs()));
    let meaning = ["warmer", "higher", "more"].get(story as usize - 1)?;
    let draft = Draft::new(json!({}))
        .ask(
            m.say(&format!("ask-two-{story}"))
                .number("a", a)
                .number("b", b),
        )
        .ask(relation(num(a), Sign::Blank, num(b)))
        .hint(m.say("hint-line"))
        .hint(zero_line(Ratio::from(a), Ratio::from(b))?)
        .step(m.say("hint-negative"))
        .step(relation(num(a), sign, num(b)))
        .step(m.say(&format!(
            "means-{story}-{}",
            if a > b { "first" } else { "second" }
        )));
    Some(two_parts(
        draft,
        json!({
            "task": "inequality_of_context", "left": a, "right": b,
            "story": meaning,
        }),
        (
            Entry::Comparison,
            compare(sign),
            vec![
                (
                    if by_size == turned {
                        "compared-sizes-without-signs"
                    } else {
                        "sign-turned-round"
                    },
                    compare(turned),
                ),
                ("took-as-equal", compare(Sign::Equal)),
            ],
        ),
        m.say(&format!("ask-means-{story}")),
        (
            Entry::OneChoice { choices },
            choice(at),
            vec![("size-and-order-mixed-up", choice(1 - at))],
        ),
    ))
}
