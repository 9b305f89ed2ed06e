//! Unit fractions and whole numbers divided by each other, grade 5.

use super::grade_5::in_measures;
use crate::draw::{strip, strips};
use crate::expr::{Expr, equal, frac, num, product, quotient};
use crate::figure::PartShape;
use crate::make::{Draft, Generator, Make, keep, mixed, whole};
use crate::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// The generators of this file.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g5-unit-fraction-divided", 3, unit_divided),
    Generator::new("g5-divide-by-unit-fraction", 3, divide_by_unit),
    Generator::new("g5-unit-fraction-stories", 3, unit_stories),
];

fn unit_divided(m: &mut Make) -> Option<Draft> {
    let (b, n) = (
        m.dice.from(2..=m.level.pick(9, 10, 12)),
        m.dice.from(2..=m.level.pick(9, 10, 12)),
    );
    keep(b != n)?;
    let missing = m.level.pick(false, false, m.dice.one_in(2));
    if missing {
        // The number of shares is asked for.
        return Some(
            Draft::new(json!({"task": "shares_of_unit", "unit": format!("1/{b}"), "share": format!("1/{}", b * n)}))
                .ask(Say::new("common-box"))
                .ask(equal(quotient(frac(1, b), Expr::Blank), frac(1, b * n)))
                .whole(n)
                .hint(m.say("hint-cut"))
                .hint(m.say("hint-how-many").math("small", frac(1, b * n)).math("large", frac(1, b)))
                .step(m.say("step-times").math("work", equal(product([num(b), num(n)]), num(b * n))))
                .step(equal(quotient(frac(1, b), num(n)), frac(1, b * n)))
                .misconception("subtracted-bottoms", whole(b * n - b))
                .misconception("took-bottom-only", whole(b * n)),
        );
    }
    Some(
        Draft::new(json!({"task": "divide_fractions", "left": format!("1/{b}"), "right": n}))
            .ask(Say::new("common-work-out"))
            .ask(equal(quotient(frac(1, b), num(n)), Expr::Blank))
            .fraction(1, b * n)
            .hint(m.say("hint-cut"))
            .hint_with(
                m.say("hint-share").count("n", n).math("part", frac(1, b)),
                strip(b, 1),
            )
            .step(m.say("step-each").count("n", n).count("parts", b))
            .step(
                m.say("step-times")
                    .math("work", equal(product([num(b), num(n)]), num(b * n))),
            )
            .step(equal(quotient(frac(1, b), num(n)), frac(1, b * n)))
            .misconception("multiplied-instead-of-divided", crate::make::fraction(n, b))
            .misconception(
                "multiplied-instead-of-shared",
                crate::make::fraction(b * n, 1),
            )
            .misconception(
                "divided-bottom",
                crate::make::fraction(1, (b - n).abs().max(1)),
            ),
    )
}

fn divide_by_unit(m: &mut Make) -> Option<Draft> {
    let (b, n) = (
        m.dice.from(2..=m.level.pick(9, 10, 12)),
        m.dice.from(2..=m.level.pick(9, 10, 12)),
    );
    keep(b != n)?;
    let right = n * b;
    let missing = m.level.pick(false, false, m.dice.one_in(2));
    let shown = |answer: Expr| {
        if missing {
            equal(quotient(answer, frac(1, b)), num(right))
        } else {
            equal(quotient(num(n), frac(1, b)), answer)
        }
    };
    let draft = if missing {
        Draft::new(
            json!({"task": "dividend_for_unit", "unit": format!("1/{b}"), "quotient": right}),
        )
        .ask(Say::new("common-box"))
        .ask(shown(Expr::Blank))
        .whole(n)
        .misconception("multiplied-instead-of-divided", whole(right * b))
        .misconception("took-bottom-only", whole(b))
    } else {
        Draft::new(json!({"task": "divide_fractions", "left": n, "right": format!("1/{b}")}))
            .ask(Say::new("common-work-out"))
            .ask(shown(Expr::Blank))
            .mixed(Ratio::from(right))
            .misconception("divided-by-bottom", mixed(Ratio::new(n, b)))
            .misconception("divided-the-other-way", mixed(Ratio::new(1, n * b)))
    };
    Some(
        draft
            .hint(m.say("hint-how-many").math("part", frac(1, b)))
            .hint_with(
                m.say("hint-one").count("parts", b),
                strips(PartShape::Bar, &[(b, 1)]),
            )
            .step(m.say("step-one").count("parts", b).math("part", frac(1, b)))
            .step(
                m.say("step-all")
                    .math("work", equal(product([num(n), num(b)]), num(right))),
            )
            .step(shown(num(if missing { n } else { right }))),
    )
}

fn unit_stories(m: &mut Make) -> Option<Draft> {
    let (b, n) = (
        m.dice.from(2..=m.level.pick(5, 8, 12)),
        m.dice.from(2..=m.level.pick(6, 10, 12)),
    );
    keep(b != n)?;
    // Stories 1 to 3 ask how many parts; 4 to 6 share a part.
    let share = m.level.pick(false, m.dice.one_in(2), m.dice.one_in(2));
    let story = m.dice.from(1..=3) + if share { 3 } else { 0 };
    // A scoop is a usual part of a cup.
    keep(if story == 1 {
        matches!(b, 2 | 3 | 4 | 8)
    } else {
        in_measures(b)
    })?;
    let ask = m
        .say(&format!("ask-{story}"))
        .text("name", m.dice.name())
        .count("n", n)
        .math("part", frac(1, b));
    Some(if share {
        Draft::new(json!({"task": "share_equally", "amount": format!("1/{b}"), "shares": n}))
            .ask(ask)
            .mixed(Ratio::new(1, b * n))
            .hint(m.say("hint-share"))
            .hint_with(m.say("hint-cut").count("n", n), strip(b, 1))
            .step(m.say("hint-share"))
            .step(equal(quotient(frac(1, b), num(n)), frac(1, b * n)))
            .misconception("multiplied-instead-of-divided", mixed(Ratio::new(n, b)))
            .misconception("divided-the-other-way", mixed(Ratio::from(n * b)))
    } else {
        Draft::new(json!({"task": "how_many_fit", "part": format!("1/{b}"), "amount": n}))
            .ask(ask)
            .mixed(Ratio::from(n * b))
            .hint(m.say("hint-fit"))
            .hint_with(m.say("hint-one").math("part", frac(1, b)), strip(b, 1))
            .step(m.say("step-one").count("parts", b))
            .step(equal(quotient(num(n), frac(1, b)), num(n * b)))
            .misconception("divided-by-bottom", mixed(Ratio::new(n, b)))
            .misconception("added-instead-of-multiplied", mixed(Ratio::from(n + b)))
    })
}
