//! Rational numbers on the line and in order; the four quadrants.

use crate::answer::{Answer, Entry};
use crate::decimal::Dec;
use crate::draw::{Line, first_quadrant, frame, grid};
use crate::expr::{Sign, difference, equal, num, pair, rational, relation, sum};
use crate::make::{Draft, Generator, Make, compare, keep, point, says, shows, whole};
use crate::number::Rational;
use crate::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g6-quadrants", 3, quadrants),
    Generator::new("g6-rational-on-line", 3, rational_on_line),
    Generator::new("g6-compare-rational", 3, compare_rational),
    Generator::new("g6-coordinate-distance", 3, coordinate_distance),
];

/// An integer, half, quarter or tenth, not zero, by level.
pub(super) fn rational_number(m: &mut Make) -> Ratio<i64> {
    let bottom = m
        .level
        .pick(1, m.dice.pick(&[1, 2, 10]), m.dice.pick(&[2, 4, 10]));
    loop {
        let top = m.dice.from(-20 * bottom..=20 * bottom);
        let value = Ratio::new(top, bottom);
        if top != 0 && (*value.denom() == bottom || bottom == 1) {
            return value;
        }
    }
}

/// A rational as a decimal.
pub(super) fn dec(value: Ratio<i64>) -> Option<Dec> {
    Dec::exact(value)
}

fn quadrants(m: &mut Make) -> Option<Draft> {
    let (x, y) = (m.dice.from(-9..=9), m.dice.from(-9..=9));
    keep(x != 0 && y != 0 && x != y && x != -y)?;
    if m.level == crate::Level::Entry {
        let right = match (x > 0, y > 0) {
            (true, true) => 0,
            (false, true) => 1,
            (false, false) => 2,
            (true, false) => 3,
        };
        let swapped = match right {
            1 => 3,
            3 => 1,
            _ => 9,
        };
        let code = |i: usize| {
            if i == swapped {
                "coordinates-swapped"
            } else if i % 2 != right % 2 {
                "one-sign-misread"
            } else {
                "both-signs-misread"
            }
        };
        // Two wrong quadrants may have the same code.
        return Some(
            Draft::new(json!({"task": "quadrant_of", "x": x, "y": y}))
                .ask(m.say("ask-quadrant").math("point", pair(num(x), num(y))))
                .one_of_listed(
                    ["quadrant-1", "quadrant-2", "quadrant-3", "quadrant-4"]
                        .into_iter()
                        .enumerate()
                        .map(|(i, id)| (code(i), says(id)))
                        .collect(),
                    right,
                )
                .hint(m.say("hint-signs"))
                .hint_with(
                    m.say("hint-order"),
                    grid(frame(-10, 10, -10, 10, 2), &[], Vec::new(), m.say("grid")),
                )
                .step(m.say(if x > 0 { "step-right" } else { "step-left" }))
                .step(m.say(if y > 0 { "step-up" } else { "step-down" })),
        );
    }
    let across_x = m.dice.one_in(2);
    let both = m.level == crate::Level::Stretch && m.dice.one_in(2);
    let (rx, ry) = if both {
        (-x, -y)
    } else if across_x {
        (x, -y)
    } else {
        (-x, y)
    };
    let wrong = if both {
        (x, -y)
    } else if across_x {
        (-x, y)
    } else {
        (x, -y)
    };
    let id = if both {
        "ask-both"
    } else if across_x {
        "ask-x"
    } else {
        "ask-y"
    };
    Some(
        Draft::new(json!({"task": "reflect", "x": x, "y": y, "axes": if both { "both" } else if across_x { "x" } else { "y" }}))
            .ask(m.say(id).math("point", pair(num(x), num(y))))
            .answer(Entry::Coordinates { frame: Some(frame(-10, 10, -10, 10, 1)) }, point(rx, ry))
            .hint(m.say("hint-mirror"))
            .hint_with(m.say("hint-order"), grid(frame(-10, 10, -10, 10, 2), &[("P", x, y)], Vec::new(), m.say("grid-point").number("x", x).number("y", y)))
            .step(m.say(if both { "step-both" } else if across_x { "step-x" } else { "step-y" }))
            .step(pair(num(rx), num(ry)))
            .misconception("reflected-across-other-axis", point(wrong.0, wrong.1))
            .misconception("coordinates-swapped", point(ry, rx)),
    )
}

fn rational_on_line(m: &mut Make) -> Option<Draft> {
    let bottom = m.level.pick(1, m.dice.pick(&[2, 4]), m.dice.pick(&[4, 10]));
    let reach = m.level.pick(8, 4, 2);
    let top = m.dice.from(-reach * bottom + 1..=-1);
    let value = Ratio::new(top, bottom);
    keep(bottom == 1 || !value.is_integer())?;
    keep(value != Ratio::new(-3, 2) || m.dice.one_in(3))?;
    let decimal_form = bottom == 10 || m.dice.one_in(2);
    let shown = if decimal_form {
        num(dec(value)?)
    } else {
        rational(value, true)
    };
    let text = if decimal_form {
        dec(value)?.to_string()
    } else {
        text_of(value)
    };
    let line = Line::new(-reach, reach, Ratio::new(1, bottom)).label_wholes();
    let floor_side = value.floor() * 2 - value;
    let spot = |r: Ratio<i64>| Answer::NumberLinePoint {
        at: Rational::from(r),
    };
    let draft =
        Draft::new(json!({"task": "mark_decimal", "at": text, "from": -reach, "to": reach}))
            .ask(m.wording("ask", 3).math("value", shown))
            .answer(
                Entry::NumberLinePoint {
                    line: line.clone().into_line(),
                },
                spot(value),
            )
            .hint(m.say("hint-left"))
            .hint_with(m.say("hint-parts").count("parts", bottom), line.figure())
            .step(m.say("hint-left"))
            .misconception("sign-ignored-on-line", spot(-value));
    let high = value.ceil().to_integer();
    let draft = if bottom == 1 {
        draft.step(m.say("step-wholes").count("n", -top))
    } else {
        draft
            .step(
                m.say("step-between")
                    .number("low", high - 1)
                    .number("high", high),
            )
            .step(
                m.say("step-parts")
                    .number("high", high)
                    .count("n", high * bottom - top),
            )
    };
    Some(if bottom > 1 && floor_side >= Ratio::from(-reach) {
        // −2.5 put between −2 and −1, or counted onward from −3 the wrong way.
        draft.misconception_unless_same(
            "negative-part-counted-wrong-way",
            spot(value.ceil() * 2 - value),
        )
    } else {
        draft.misconception(
            "counted-marks-not-steps",
            spot(value + Ratio::new(1, bottom)),
        )
    })
}

/// A rational as fraction text with mixed numbers, `-2 1/2`.
fn text_of(value: Ratio<i64>) -> String {
    let (top, bottom) = (value.numer().abs(), *value.denom());
    let sign = if *value.numer() < 0 { "-" } else { "" };
    match (top / bottom, top % bottom) {
        (w, 0) => format!("{sign}{w}"),
        (0, t) => format!("{sign}{t}/{bottom}"),
        (w, t) => format!("{sign}{w} {t}/{bottom}"),
    }
}

fn compare_rational(m: &mut Make) -> Option<Draft> {
    let (a, b) = (rational_number(m), rational_number(m));
    if m.equal {
        return equal_rationals(m, a);
    }
    keep(a != b && (a < Ratio::from(0) || b < Ratio::from(0)))?;
    keep(
        m.level
            .pick(true, a < Ratio::from(0) && b < Ratio::from(0), true),
    )?;
    let size = |r: Ratio<i64>| if r < Ratio::from(0) { -r } else { r };
    keep(size(a - b) <= Ratio::from(m.level.pick(30, 6, 3)))?;
    let sign = Sign::of(a.cmp(&b));
    let wrong = Sign::of(b.cmp(&a));
    let by_size = Sign::of(size(a).cmp(&size(b)));
    let (da, db) = (dec(a)?, dec(b)?);
    let draft =
        Draft::new(json!({"task": "compare", "left": da.to_string(), "right": db.to_string()}))
            .ask(Say::new("common-sign"))
            .ask(relation(num(da), Sign::Blank, num(db)))
            .compare(sign)
            .hint(m.say("hint-left"))
            .hint_with(m.say("hint-line"), zero_line(a, b)?)
            .step(
                m.say("step-left")
                    .number("less", if a < b { da } else { db }),
            )
            .step(relation(num(da), sign, num(db)));
    Some(
        draft
            .misconception(
                if by_size == wrong {
                    "compared-sizes-without-signs"
                } else {
                    "sign-turned-round"
                },
                compare(wrong),
            )
            .misconception("took-as-equal", compare(Sign::Equal)),
    )
}

/// A negative number as a decimal and as a fraction: equal.
fn equal_rationals(m: &mut Make, a: Ratio<i64>) -> Option<Draft> {
    let size = if a < Ratio::from(0) { -a } else { a };
    let times = if size.is_integer() || *size.denom() < 5 {
        m.dice.from(2..=3)
    } else {
        1
    };
    let (top, bottom) = (size.numer() * times, size.denom() * times);
    let shown = dec(-size)?;
    let flipped = m.dice.one_in(2);
    let pair = |sign: Sign| {
        let fraction = crate::expr::negative(crate::expr::frac(top, bottom));
        if flipped {
            relation(fraction, sign, num(shown))
        } else {
            relation(num(shown), sign, fraction)
        }
    };
    Some(
        Draft::new(json!({"task": "compare", "left": shown.to_string(), "right": format!("-{top}/{bottom}")}))
            .ask(Say::new("common-sign"))
            .ask(pair(Sign::Blank))
            .compare(Sign::Equal)
            .hint(m.say("hint-form"))
            .hint(m.say("hint-divide").math("work", crate::expr::quotient(num(top), num(bottom))))
            .step(equal(crate::expr::frac(top, bottom), num(dec(size)?)))
            .step(pair(Sign::Equal))
            .misconception("sign-turned-round", compare(Sign::Less))
            .misconception("took-as-different", compare(Sign::Greater)),
    )
}

pub(super) fn zero_line(a: Ratio<i64>, b: Ratio<i64>) -> Option<crate::Figure> {
    let low = a.min(b).min(Ratio::from(0)).floor() - 1;
    let high = a.max(b).max(Ratio::from(0)).ceil() + 1;
    Some(
        Line::new(low, high, 1)
            .label(0, num(0))
            .label(low, num(dec(low)?))
            .label(high, num(dec(high)?))
            .figure(),
    )
}

pub(super) fn order_in_context(m: &mut Make) -> Option<Draft> {
    let count = m.level.pick(3, 4, 4);
    let reach = m.level.pick(12, 20, 30);
    let mut values = m.dice.different(count, -reach..=reach);
    keep(values.iter().filter(|v| **v < 0).count() >= 2 && values.iter().any(|v| *v > 0))?;
    let sizes: std::collections::BTreeSet<i64> = values.iter().map(|v| v.abs()).collect();
    keep(sizes.len() == count)?;
    m.dice.shuffle(&mut values);
    let story = m.dice.from(1..=3);
    let order_by = |key: &dyn Fn(i64) -> i64| {
        let mut places: Vec<(u32, i64)> = (0..).zip(values.iter().copied()).collect();
        places.sort_by_key(|(_, value)| key(*value));
        Answer::Ordering {
            order: places.into_iter().map(|(place, _)| place).collect(),
        }
    };
    let right = order_by(&|v| v);
    let (unit, first, last) = match story {
        1 => ("unit-degrees", "order-coldest", "order-warmest"),
        2 => ("unit-m", "order-lowest", "order-highest"),
        _ => ("unit-dollars", "order-least", "order-greatest"),
    };
    let things = values
        .iter()
        .map(|v| crate::Choice {
            shows: shows(crate::expr::measure(num(v), unit)),
        })
        .collect();
    let sorted = {
        let mut s = values.clone();
        s.sort_unstable();
        s
    };
    Some(
        Draft::new(json!({"task": "order_from_least", "numbers": values}))
            .ask(m.say(&format!("ask-{story}")))
            .answer(
                Entry::Ordering {
                    things,
                    first: Say::new(first),
                    last: Say::new(last),
                },
                right,
            )
            .hint(m.say("hint-line"))
            .hint(m.say("hint-negative"))
            .step(m.say("hint-negative"))
            .step(m.say("step-order").numbers("order", &sorted))
            .misconception("compared-sizes-without-signs", order_by(&|v| v.abs()))
            .misconception("ordered-from-greatest", order_by(&|v| -v))
            .misconception_unless_same(
                "negatives-ordered-by-size",
                order_by(&|v| if v < 0 { -100 - v } else { v }),
            ),
    )
}

fn coordinate_distance(m: &mut Make) -> Option<Draft> {
    let shared = m.dice.from(-9..=9);
    let (a, b) = m.level.pick(
        (m.dice.from(1..=9), m.dice.from(1..=9)),
        (m.dice.from(-9..=-1), m.dice.from(1..=9)),
        (m.dice.from(-10..=-1), m.dice.from(-10..=10)),
    );
    let flat = m.dice.one_in(2);
    keep((a - b).abs() >= 2 && a != -b && shared != 0 && b != 0)?;
    let at = |v: i64| if flat { (v, shared) } else { (shared, v) };
    let (p, q) = (at(a), at(b));
    let right = (a - b).abs();
    let window = if a > 0 && b > 0 && shared > 0 {
        first_quadrant(10)
    } else {
        frame(-10, 10, -10, 10, 2)
    };
    let mixed_sign = (a > 0) != (b > 0);
    let wrong = if mixed_sign {
        (a.abs() - b.abs()).abs()
    } else {
        a.abs() + b.abs()
    };
    Some(
        Draft::new(json!({"task": "grid_distance", "from": [p.0, p.1], "to": [q.0, q.1]}))
            .ask(
                m.say("ask")
                    .math("one", pair(num(p.0), num(p.1)))
                    .math("two", pair(num(q.0), num(q.1))),
            )
            .whole(right)
            .hint(m.say("hint-same"))
            .hint_with(
                m.say("hint-zero"),
                grid(
                    window,
                    &[("A", p.0, p.1), ("B", q.0, q.1)],
                    Vec::new(),
                    m.say("grid")
                        .number("x1", p.0)
                        .number("y1", p.1)
                        .number("x2", q.0)
                        .number("y2", q.1),
                ),
            )
            .step(
                m.say("step-from-zero")
                    .number("one", a.abs())
                    .number("two", b.abs()),
            )
            .step(if mixed_sign {
                equal(sum([num(a.abs()), num(b.abs())]), num(right))
            } else {
                equal(
                    difference(num(a.abs().max(b.abs())), num(a.abs().min(b.abs()))),
                    num(right),
                )
            })
            .misconception(
                if mixed_sign {
                    "distances-subtracted-across-zero"
                } else {
                    "distances-added-on-one-side"
                },
                whole(wrong),
            )
            .misconception_unless_same("counted-points-not-steps", whole(right + 1)),
    )
}
