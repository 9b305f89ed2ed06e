//! Mixed numbers of like fractions, grade 4.

use super::grade_4::BOTTOMS;
use crate::draw::{strip, strips};
use crate::expr::{Expr, difference, equal, frac, mixed as mixed_expr, num, sum};
use crate::figure::PartShape;
use crate::make::{Draft, Generator, Make, keep, mixed};
use crate::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// The generators of this file.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g4-mixed-add-like", 3, mixed_add),
    Generator::new("g4-mixed-subtract-like", 3, mixed_subtract),
];

fn mixed_text(whole: i64, top: i64, bottom: i64) -> String {
    if top == 0 {
        whole.to_string()
    } else {
        format!("{whole} {top}/{bottom}")
    }
}

fn mixed_add(m: &mut Make) -> Option<Draft> {
    let b = m.dice.pick(&BOTTOMS[1..]);
    let high = m.level.pick(5, 9, 15);
    let (w, x) = (m.dice.from(1..=high), m.dice.from(1..=high));
    let (a, c) = (m.dice.from(1..=b - 1), m.dice.from(1..=b - 1));
    let regroups = a + c >= b;
    keep(m.level.pick(a + c < b, regroups && a + c > b, regroups))?;
    let value = Ratio::from(w + x) + Ratio::new(a + c, b);
    let work = sum([mixed_expr(w, a, b), mixed_expr(x, c, b)]);
    let draft = Draft::new(
        json!({"task": "add_fractions", "left": mixed_text(w, a, b), "right": mixed_text(x, c, b)}),
    )
    .ask(Say::new("common-work-out"))
    .ask(equal(work.clone(), Expr::Blank))
    .mixed(value)
    .hint(Say::new("mixed-hint-apart"))
    .hint_with(
        Say::new("mixed-hint-over"),
        strips(PartShape::Bar, &[(b, a), (b, c)]),
    )
    .step(Say::new("mixed-step-wholes").math("work", equal(sum([num(w), num(x)]), num(w + x))))
    .step(
        Say::new("mixed-step-parts")
            .math("work", equal(sum([frac(a, b), frac(c, b)]), frac(a + c, b))),
    );
    let draft = if regroups {
        draft.step(Say::new("mixed-step-trade").math(
            "work",
            equal(
                frac(a + c, b),
                crate::expr::rational(Ratio::new(a + c, b), true),
            ),
        ))
    } else {
        draft
    };
    Some(
        draft
            .step(equal(work, crate::expr::rational(value, true)))
            .misconception(
                "added-tops-and-bottoms",
                mixed(Ratio::from(w + x) + Ratio::new(a + c, 2 * b)),
            )
            .misconception_if(
                regroups,
                "new-whole-forgotten",
                mixed(Ratio::from(w + x) + Ratio::new(a + c - b, b)),
            )
            .misconception_if(!regroups, "added-wholes-only", mixed(Ratio::from(w + x))),
    )
}

fn mixed_subtract(m: &mut Make) -> Option<Draft> {
    let b = m.dice.pick(&BOTTOMS[1..]);
    let high = m.level.pick(6, 9, 15);
    let (w, x) = (m.dice.from(3..=high), m.dice.from(1..=high - 2));
    let a = m.level.pick(
        m.dice.from(1..=b - 1),
        m.dice.from(1..=b - 1),
        m.dice.from(0..=b - 2),
    );
    let c = m.dice.from(1..=b - 1);
    let regroups = a < c;
    keep(w > x + 1 && a != c && regroups == m.level.pick(false, true, true))?;
    keep(m.level.pick(true, a > 0, true))?;
    let value = Ratio::from(w - x) + Ratio::new(a - c, b);
    let left = if a == 0 { num(w) } else { mixed_expr(w, a, b) };
    let work = difference(left, mixed_expr(x, c, b));
    let mut draft = Draft::new(json!({"task": "subtract_fractions", "left": mixed_text(w, a, b), "right": mixed_text(x, c, b)}))
        .ask(Say::new("common-work-out"))
        .ask(equal(work.clone(), Expr::Blank))
        .mixed(value)
        .hint(Say::new("mixed-hint-apart"))
        .hint_with(Say::new("mixed-hint-trade").math("one", equal(num(1), frac(b, b))), strip(b, b));
    let (w2, a2) = if regroups { (w - 1, a + b) } else { (w, a) };
    if regroups {
        draft = draft.step(
            Say::new("mixed-step-open")
                .math("work", frac(a2, b))
                .count("whole", w2),
        );
    }
    draft = draft
        .step(
            Say::new("mixed-step-wholes")
                .math("work", equal(difference(num(w2), num(x)), num(w2 - x))),
        )
        .step(Say::new("mixed-step-parts").math(
            "work",
            equal(difference(frac(a2, b), frac(c, b)), frac(a2 - c, b)),
        ))
        .step(equal(work, crate::expr::rational(value, true)));
    Some(if regroups {
        draft
            .misconception(
                if a == 0 {
                    "fraction-kept-from-whole"
                } else {
                    "smaller-fraction-from-larger"
                },
                mixed(Ratio::from(w - x) + Ratio::new(c - a, b)),
            )
            .misconception("traded-whole-not-taken-away", mixed(value + 1))
    } else {
        draft
            .misconception(
                "subtracted-wholes-only",
                mixed(Ratio::from(w - x) + Ratio::new(a, b)),
            )
            .misconception(
                "added-instead",
                mixed(Ratio::from(w + x) + Ratio::new(a + c, b)),
            )
    })
}
