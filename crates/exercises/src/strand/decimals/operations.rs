//! The four operations.

use crate::decimal::Dec;
use crate::expr::{Expr, difference, equal, num, product, quotient, sum};
use crate::make::{Draft, Generator, Make, decimal, keep};
use crate::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g5-decimal-add-subtract", 3, add_subtract),
    Generator::new("g5-decimal-multiply", 3, multiply),
    Generator::new("g5-decimal-divide", 3, divide),
];

fn add_subtract(m: &mut Make) -> Option<Draft> {
    let (pa, pb) = m.level.pick(
        (1, 1),
        m.dice.pick(&[(1, 2), (2, 1), (2, 2)]),
        m.dice.pick(&[(0, 2), (1, 2), (2, 1), (2, 0)]),
    );
    let high = m.level.pick(20, 60, 200);
    let value =
        |m: &mut Make, places: u32| Dec::new(m.dice.from(11..=high * 10_i64.pow(places)), places);
    let (a, b) = (value(m, pa), value(m, pb));
    keep((pa == 0 || a.units() % 10 != 0) && (pb == 0 || b.units() % 10 != 0))?;
    add_subtract_draft(m, a, b)
}

/// A sum or difference of two decimals.
pub(in crate::strand) fn add_subtract_draft(m: &mut Make, a: Dec, b: Dec) -> Option<Draft> {
    let plus = m.dice.one_in(2);
    let result = Dec::exact(if plus {
        a.ratio() + b.ratio()
    } else {
        a.ratio() - b.ratio()
    })?;
    keep(result.units() > 0)?;
    let places = a.places().max(b.places());
    let even = |d: Dec| Dec::new(d.units() * 10_i64.pow(places - d.places()), places);
    // Lined up at the right end instead of at the point.
    let right_aligned = if plus {
        a.units() + b.units()
    } else {
        (a.units() - b.units()).abs()
    };
    let work = if plus {
        sum([num(a), num(b)])
    } else {
        difference(num(a), num(b))
    };
    let lined = if plus {
        sum([num(even(a)), num(even(b))])
    } else {
        difference(num(even(a)), num(even(b)))
    };
    // Where both have the same places, there is nothing to fill.
    let columns = if a.places() == b.places() {
        Say::new("decimal-hint-columns")
    } else {
        Say::new("decimal-hint-zeros").math("work", lined)
    };
    let draft = Draft::new(json!({"task": if plus { "add" } else { "subtract" },
        (if plus { "numbers" } else { "pair" }): [a.to_string(), b.to_string()]}))
    .ask(Say::new("common-work-out"))
    .ask(equal(work.clone(), Expr::Blank))
    .decimal(result)
    .hint(Say::new("decimal-hint-line-up"))
    .hint(columns.clone())
    .step(Say::new("decimal-hint-line-up"))
    .step(columns)
    .step(equal(work, num(result)));
    let other = Dec::exact(if plus {
        a.ratio() - b.ratio()
    } else {
        a.ratio() + b.ratio()
    })?;
    let other = Dec::new(other.units().abs(), other.places());
    Some(
        draft
            .misconception_if(
                a.places() != b.places(),
                "decimals-lined-up-at-the-end",
                decimal(Dec::new(right_aligned, places)),
            )
            .misconception_if(
                a.places() == b.places(),
                "decimal-point-misplaced",
                decimal(Dec::new(
                    even(a).units()
                        + if plus {
                            even(b).units()
                        } else {
                            -even(b).units()
                        },
                    places + 1,
                )),
            )
            .misconception(
                if plus {
                    "subtracted-instead"
                } else {
                    "added-instead"
                },
                decimal(other),
            ),
    )
}

fn multiply(m: &mut Make) -> Option<Draft> {
    // Products to hundredths, as far as the grade goes.
    let a = Dec::new(m.dice.from(m.level.pick(2..=99, 12..=99, 112..=999)), 1);
    let b = m.level.pick(
        Dec::new(m.dice.from(2..=9), 0),
        Dec::new(m.dice.from(2..=9), 1),
        Dec::new(m.dice.from(12..=99), 1),
    );
    multiply_draft(a, b)
}

/// A product of two decimals.
pub(in crate::strand) fn multiply_draft(a: Dec, b: Dec) -> Option<Draft> {
    keep(a.units() % 10 != 0 && b.units() % 10 != 0 && a.units() != b.units() && b.units() > 1)?;
    let places = a.places() + b.places();
    let full = Dec::new(a.units() * b.units(), places);
    let result = full.trimmed();
    let work = product([num(a), num(b)]);
    let aligned = Dec::new(full.units(), a.places().max(b.places()));
    keep(places > 0)?;
    Some(
        Draft::new(json!({"task": "multiply", "numbers": [a.to_string(), b.to_string()]}))
            .ask(Say::new("common-work-out"))
            .ask(equal(work.clone(), Expr::Blank))
            .decimal(result)
            .hint(
                Say::new("decimal-hint-as-wholes")
                    .math("work", product([num(a.units()), num(b.units())])),
            )
            .hint(Say::new("decimal-hint-places-together").count("places", i64::from(places)))
            .step(equal(
                product([num(a.units()), num(b.units())]),
                num(full.units()),
            ))
            .step(Say::new("decimal-hint-places-together").count("places", i64::from(places)))
            .step(equal(work, num(result)))
            .misconception_if(
                b.places() > 0,
                "decimal-point-as-in-adding",
                decimal(aligned),
            )
            .misconception("decimal-point-left-out", decimal(Dec::new(full.units(), 0)))
            .misconception(
                "decimal-point-misplaced",
                decimal(Dec::new(full.units(), places + 1)),
            ),
    )
}

fn divide(m: &mut Make) -> Option<Draft> {
    let q = Dec::new(
        m.dice.from(m.level.pick(11..=99, 11..=999, 12..=499)),
        m.level.pick(1, m.dice.pick(&[1, 2]), m.dice.pick(&[0, 1])),
    );
    let by = m.level.pick(
        Dec::new(m.dice.from(2..=9), 0),
        Dec::new(m.dice.from(2..=9), 0),
        Dec::new(m.dice.from(2..=25), m.dice.pick(&[1, 2])),
    );
    divide_draft(q, by, 2)
}

/// A quotient of two decimals: the quotient and the divisor are given, the
/// dividend has at most `most_places`.
pub(in crate::strand) fn divide_draft(q: Dec, by: Dec, most_places: u32) -> Option<Draft> {
    let total = Dec::exact(q.ratio() * by.ratio())?;
    keep(
        total.places() <= most_places
            && by.units() % 10 != 0
            && q.units() % 10 != 0
            && total.ratio() != by.ratio()
            && by.ratio() != Ratio::from(1),
    )?;
    keep(total.places() > 0 || by.places() > 0)?;
    let shift = by.places();
    let factor = 10_i64.pow(shift);
    let (big, small) = (Dec::exact(total.ratio() * factor)?, Dec::new(by.units(), 0));
    let work = quotient(num(total), num(by));
    let mut draft =
        Draft::new(json!({"task": "divide", "total": total.to_string(), "by": by.to_string()}))
            .ask(Say::new("common-work-out"))
            .ask(equal(work.clone(), Expr::Blank))
            .decimal(q)
            .hint(Say::new(if shift > 0 {
                "decimal-hint-whole-divisor"
            } else {
                "decimal-hint-point-up"
            }))
            .hint(
                Say::new("decimal-hint-check")
                    .math("work", equal(product([num(by), Expr::Blank]), num(total))),
            );
    draft = if shift > 0 {
        draft.step(
            Say::new("decimal-step-both")
                .number("factor", factor)
                .math("work", quotient(num(big), num(small))),
        )
    } else {
        draft.step(Say::new("decimal-hint-point-up"))
    };
    let left_alone = Dec::exact(q.ratio() / factor)?;
    Some(
        draft
            .step(equal(work, num(q)))
            .step(
                Say::new("common-check")
                    .math("work", equal(product([num(by), num(q)]), num(total))),
            )
            .misconception_if(
                shift > 0 || q.places() != 1,
                "decimal-point-misplaced",
                decimal(Dec::exact(q.ratio() * 10)?),
            )
            .misconception_if(
                q.places() == 1 && shift == 0,
                "divided-too-far",
                decimal(Dec::exact(q.ratio() / 10)?),
            )
            .misconception_if(
                shift > 0,
                "moved-point-in-divisor-only",
                decimal(left_alone),
            )
            .misconception_if(
                shift == 0,
                "decimal-point-left-out",
                decimal(Dec::new(q.units(), 0)),
            ),
    )
}
