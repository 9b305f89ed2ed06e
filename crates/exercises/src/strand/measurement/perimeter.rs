//! Perimeter, and what area and perimeter have to do with each other.

use super::area::LENGTHS;
use crate::draw::rectangle;
use crate::expr::{Expr, difference, equal, measure, num, product, quotient, sum};
use crate::make::{Draft, Generator, Make, keep, whole};
use serde_json::json;

/// The generators of this file.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g3-perimeter", 3, perimeter),
    Generator::new("g4-area-perimeter-rules", 3, rules),
];

fn perimeter(m: &mut Make) -> Option<Draft> {
    let (length, _) = m.dice.pick(&LENGTHS);
    let kind = m.level.pick(1, m.dice.from(1..=2), m.dice.from(2..=4));
    if kind == 4 {
        return same_perimeter(m);
    }
    let (w, h) = (
        m.dice.from(m.level.pick(3..=9, 4..=15, 6..=24)),
        m.dice.from(m.level.pick(2..=8, 3..=12, 4..=18)),
    );
    keep(w != h && w * h != 2 * (w + h))?;
    let unit = length;
    Some(match kind {
        1 => Draft::new(json!({"task": "rectangle_perimeter", "width": w, "height": h}))
            .ask(m.say("ask-around").word("unit", unit))
            .ask(rectangle(
                w,
                h,
                [Some(num(w)), Some(num(h))],
                m.say("rectangle").count("width", w).count("height", h),
            ))
            .whole_unit(2 * (w + h), unit)
            .hint(m.say("hint-around"))
            .hint(m.say("hint-opposite"))
            .step(m.say("hint-opposite"))
            .step(equal(
                sum([num(w), num(h), num(w), num(h)]),
                num(2 * (w + h)),
            ))
            .misconception("two-sides-only", whole(w + h))
            .misconception("area-for-perimeter", whole(w * h)),
        2 => {
            Draft::new(json!({"task": "side_from_perimeter", "perimeter": 2 * (w + h), "side": w}))
                .ask(
                    m.say("ask-side")
                        .math("perimeter", measure(num(2 * (w + h)), unit))
                        .math("side", measure(num(w), unit)),
                )
                .whole_unit(h, unit)
                .hint(m.say("hint-half"))
                .hint(m.say("hint-opposite"))
                .step(
                    m.say("step-two")
                        .math("work", equal(sum([num(w), num(w)]), num(2 * w))),
                )
                .step(equal(difference(num(2 * (w + h)), num(2 * w)), num(2 * h)))
                .step(equal(quotient(num(2 * h), num(2)), num(h)))
                .misconception("one-side-taken-from-perimeter", whole(w + 2 * h))
                .misconception("two-sides-not-halved", whole(2 * h))
        }
        _ => {
            let sides = [(); 3].map(|()| m.dice.from(3..=15));
            let missing = m.dice.from(3..=15);
            let known: i64 = sides.iter().sum();
            let total = known + missing;
            keep(missing != sides[2] && known > missing)?;
            Draft::new(json!({"task": "missing_side", "perimeter": total, "sides": sides}))
                .ask(
                    m.say("ask-missing")
                        .math("perimeter", measure(num(total), unit))
                        .math("a", num(sides[0]))
                        .math("b", num(sides[1]))
                        .math("c", measure(num(sides[2]), unit)),
                )
                .whole_unit(missing, unit)
                .hint(m.say("hint-around"))
                .hint(m.say("hint-known").math("work", sum(sides.iter().map(num))))
                .step(equal(sum(sides.iter().map(num)), num(known)))
                .step(equal(difference(num(total), num(known)), num(missing)))
                .misconception("stopped-after-one-step", whole(known))
                .misconception("added-all-numbers", whole(total + known))
        }
    })
}

/// Two rectangles with the same perimeter: the area of the second.
fn same_perimeter(m: &mut Make) -> Option<Draft> {
    let (length, square) = m.dice.pick(&LENGTHS);
    let (w, h) = (m.dice.from(4..=10), m.dice.from(2..=8));
    let side = m.dice.from(2..=9);
    let other = w + h - side;
    keep(w != h && side != w && side != h && (2..=10).contains(&other) && other != side)?;
    keep(side * other != w * h)?;
    Some(
        Draft::new(json!({"task": "area_with_same_perimeter", "rectangle": [w, h], "side": side}))
            .ask(
                m.say("ask-same")
                    .count("w", w)
                    .math("h", measure(num(h), length))
                    .math("side", measure(num(side), length)),
            )
            .whole_unit(side * other, square)
            .hint(m.say("hint-same"))
            .hint(m.say("hint-half"))
            .step(equal(
                sum([num(w), num(h), num(w), num(h)]),
                num(2 * (w + h)),
            ))
            .step(equal(difference(num(w + h), num(side)), num(other)))
            .step(equal(product([num(side), num(other)]), num(side * other)))
            .misconception("same-perimeter-same-area", whole(w * h))
            .misconception("perimeter-for-area", whole(2 * (w + h))),
    )
}

fn rules(m: &mut Make) -> Option<Draft> {
    let (w, h) = (
        m.dice.from(m.level.pick(3..=9, 5..=12, 6..=12)),
        m.dice.from(m.level.pick(2..=9, 4..=12, 6..=20)),
    );
    keep(w != h && w * h != 2 * (w + h) && h != 2)?;
    let (length, square) = m.dice.pick(&LENGTHS);
    let kind = m.level.pick(1, m.dice.from(1..=2), m.dice.from(2..=3));
    Some(match kind {
        1 => Draft::new(json!({"task": "side_from_area", "area": w * h, "side": w}))
            .ask(
                m.say("ask-area")
                    .math("area", measure(num(w * h), square))
                    .math("side", measure(num(w), length)),
            )
            .whole_unit(h, length)
            .hint(m.say("hint-area"))
            .hint(
                m.say("hint-work")
                    .math("work", equal(product([num(w), Expr::Blank]), num(w * h))),
            )
            .step(m.say("hint-area"))
            .step(equal(quotient(num(w * h), num(w)), num(h)))
            .misconception("subtracted-instead-of-divided", whole(w * h - w))
            .misconception("multiplied-all-numbers", whole(w * h * w)),
        2 => {
            Draft::new(json!({"task": "side_from_perimeter", "perimeter": 2 * (w + h), "side": w}))
                .ask(
                    m.say("ask-perimeter")
                        .math("perimeter", measure(num(2 * (w + h)), length))
                        .math("side", measure(num(w), length)),
                )
                .whole_unit(h, length)
                .hint(m.say("hint-perimeter"))
                .hint(m.say("hint-work").math(
                    "work",
                    equal(
                        sum([num(2 * w), Expr::Blank, Expr::Blank]),
                        num(2 * (w + h)),
                    ),
                ))
                .step(equal(difference(num(2 * (w + h)), num(2 * w)), num(2 * h)))
                .step(equal(quotient(num(2 * h), num(2)), num(h)))
                .misconception("one-side-taken-from-perimeter", whole(w + 2 * h))
                .misconception("two-sides-not-halved", whole(2 * h))
        }
        _ => Draft::new(json!({"task": "perimeter_from_area", "area": w * h, "side": w}))
            .ask(
                m.say("ask-both")
                    .math("area", measure(num(w * h), square))
                    .math("side", measure(num(w), length)),
            )
            .whole_unit(2 * (w + h), length)
            .hint(m.say("hint-area"))
            .hint(m.say("hint-then"))
            .step(equal(quotient(num(w * h), num(w)), num(h)))
            .step(equal(
                sum([num(w), num(h), num(w), num(h)]),
                num(2 * (w + h)),
            ))
            .misconception("stopped-after-one-step", whole(h))
            .misconception("two-sides-only", whole(w + h)),
    })
}
