//! Dividing fractions, factors and multiples, negative numbers, long decimals.

use crate::item::answer::{Answer, Entry};
use crate::item::decimal::Dec;
use crate::item::draw::{Line, first_quadrant, frame, grid};
use crate::item::expr::{
    Expr, Sign, absolute, difference, equal, frac, group, num, pair, product, quotient, rational,
    relation, sum,
};
use crate::item::make::{
    Draft, Generator, Make, compare, decimal, keep, mixed, point, says, shows, whole,
};
use crate::item::number::Rational;
use crate::item::say::Say;
use num_integer::{gcd, lcm};
use num_rational::Ratio;
use serde_json::json;

use super::decimals::{add_subtract_draft, divide_draft, multiply_draft};

/// The generators of the strand.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g6-fraction-divide", 1, fraction_divide),
    Generator::new("g6-divide-multi-digit", 1, divide_multi_digit),
    Generator::new("g6-decimal-add-subtract", 1, decimal_add_subtract),
    Generator::new("g6-decimal-multiply", 1, decimal_multiply),
    Generator::new("g6-decimal-divide", 1, decimal_divide),
    Generator::new("g6-greatest-common-factor", 1, greatest_common_factor),
    Generator::new("g6-least-common-multiple", 1, least_common_multiple),
    Generator::new("g6-common-factor-sum", 1, common_factor_sum),
    Generator::new("g6-signed-meaning", 1, signed_meaning),
    Generator::new("g6-opposites", 1, opposites),
    Generator::new("g6-quadrants", 1, quadrants),
    Generator::new("g6-rational-on-line", 1, rational_on_line),
    Generator::new("g6-compare-rational", 1, compare_rational),
    Generator::new("g6-order-in-context", 1, order_in_context),
    Generator::new("g6-absolute-value", 1, absolute_value),
    Generator::new("g6-absolute-vs-order", 1, absolute_vs_order),
    Generator::new("g6-coordinate-distance", 1, coordinate_distance),
];

fn fraction_divide(m: &mut Make) -> Option<Draft> {
    let b = m.dice.from(2..=m.level.pick(6, 9, 12));
    let d = m.dice.from(2..=m.level.pick(6, 9, 12));
    let (a, c) = (m.dice.from(1..=b - 1), m.dice.from(1..=d - 1));
    keep(gcd(a, b) == 1 && gcd(c, d) == 1 && (a, b) != (c, d) && c != d)?;
    let value = Ratio::new(a * d, b * c);
    keep(m.level.pick(
        value.is_integer() || b == d,
        true,
        !value.is_integer() && b != d,
    ))?;
    let work = quotient(frac(a, b), frac(c, d));
    Some(
        Draft::new(json!({"task": "divide_fractions", "left": format!("{a}/{b}"), "right": format!("{c}/{d}")}))
            .ask(Say::new("common-work-out"))
            .ask(equal(work.clone(), Expr::Blank))
            .mixed(value)
            .hint(m.say("hint-fit").math("part", frac(c, d)).math("amount", frac(a, b)))
            .hint(m.say("hint-times").math("turned", frac(d, c)))
            .step(equal(work.clone(), product([frac(a, b), frac(d, c)])))
            .step(equal(product([frac(a, b), frac(d, c)]), frac(a * d, b * c)))
            .simplified(a * d, b * c)
            .mistake("multiplied-instead-of-dividing-fractions", mixed(Ratio::new(a * c, b * d)))
            .mistake("turned-first-fraction", mixed(Ratio::new(b * c, a * d))),
    )
}

fn divide_multi_digit(m: &mut Make) -> Option<Draft> {
    let by = m.dice.from(m.level.pick(12..=49, 23..=98, 112..=389));
    let q = m.dice.from(m.level.pick(23..=199, 104..=409, 102..=256));
    let total = by * q;
    keep(by % 10 != 0 && total <= 99_999 && by != q)?;
    let without_zero: i64 = q.to_string().replace('0', "").parse().ok()?;
    let mut draft = Draft::new(json!({"task": "divide", "total": total, "by": by}))
        .ask(Say::new("common-work-out"))
        .ask(equal(quotient(num(total), num(by)), Expr::Blank))
        .whole(q)
        .hint(
            m.say("hint-multiples")
                .numbers("multiples", (1..=4).map(|k| k * by)),
        )
        .hint(m.say("hint-first"))
        .step(m.say("hint-first"));
    let mut rest = 0;
    let mut started = false;
    for digit in crate::item::make::digits(total).iter().rev() {
        rest = rest * 10 + digit;
        let part = rest / by;
        started = started || part > 0;
        if started {
            draft = draft.step(
                m.say("step-place")
                    .count("rest", rest)
                    .math("work", equal(product([num(part), num(by)]), num(part * by))),
            );
        }
        rest %= by;
    }
    Some(
        draft
            .step(equal(quotient(num(total), num(by)), num(q)))
            .mistake_if(
                without_zero != q,
                "zero-in-quotient-left-out",
                whole(without_zero),
            )
            .mistake("quotient-one-short", whole(q - 1))
            .mistake("quotient-place-wrong", whole(q * 10)),
    )
}

fn decimal_add_subtract(m: &mut Make) -> Option<Draft> {
    let (pa, pb) = m.level.pick(
        (2, 1),
        (3, 2),
        m.dice.pick(&[(1, 4), (4, 2), (0, 3), (3, 1)]),
    );
    let value = |m: &mut Make, places: u32| {
        Dec::new(
            m.dice
                .from(111..=m.level.pick(90, 400, 900) * 10_i64.pow(places)),
            places,
        )
    };
    let (a, b) = (value(m, pa), value(m, pb));
    keep((pa == 0 || a.units() % 10 != 0) && (pb == 0 || b.units() % 10 != 0))?;
    add_subtract_draft(m, a, b)
}

fn decimal_multiply(m: &mut Make) -> Option<Draft> {
    let a = Dec::new(
        m.dice.from(m.level.pick(12..=99, 112..=999, 112..=4_999)),
        m.dice.pick(&[1, 2]),
    );
    let b = Dec::new(
        m.dice.from(m.level.pick(2..=9, 12..=99, 12..=199)),
        m.dice.pick(&[1, 2, 3]),
    );
    keep(a.places() + b.places() <= m.level.pick(3, 4, 5))?;
    multiply_draft(a, b)
}

fn decimal_divide(m: &mut Make) -> Option<Draft> {
    let q = Dec::new(
        m.dice.from(m.level.pick(11..=199, 21..=999, 101..=2_499)),
        m.dice.from(0..=2) as u32,
    );
    let by = Dec::new(
        m.dice.from(m.level.pick(2..=12, 12..=48, 12..=125)),
        m.dice.from(1..=2) as u32,
    );
    divide_draft(q, by, 4)
}

fn factors(n: i64) -> Vec<i64> {
    (1..=n).filter(|d| n % d == 0).collect()
}

fn greatest_common_factor(m: &mut Make) -> Option<Draft> {
    let g = m.dice.from(m.level.pick(2..=9, 3..=15, 6..=24));
    let (a, b) = (g * m.dice.from(2..=9), g * m.dice.from(2..=9));
    let right = gcd(a, b);
    keep(a < b && b <= m.level.pick(40, 80, 100) && b % a != 0)?;
    let common: Vec<i64> = factors(right);
    let smaller_common = common[common.len() - 2];
    Some(
        Draft::new(json!({"task": "greatest_common_factor", "numbers": [a, b]}))
            .ask(m.say("ask").count("a", a).count("b", b))
            .whole(right)
            .hint(
                m.say("hint-list")
                    .count("n", a)
                    .numbers("factors", factors(a)),
            )
            .hint(m.say("hint-common"))
            .step(
                m.say("step-list")
                    .count("n", a)
                    .numbers("factors", factors(a)),
            )
            .step(
                m.say("step-list")
                    .count("n", b)
                    .numbers("factors", factors(b)),
            )
            .step(
                m.say("step-common")
                    .numbers("common", &common)
                    .count("right", right),
            )
            .mistake("multiple-for-factor", whole(lcm(a, b)))
            .mistake("not-the-greatest-factor", whole(smaller_common))
            .mistake_unless_same("difference-for-common-factor", whole(b - a)),
    )
}

fn least_common_multiple(m: &mut Make) -> Option<Draft> {
    let (a, b) = (
        m.dice.from(2..=m.level.pick(6, 10, 12)),
        m.dice.from(3..=m.level.pick(8, 12, 12)),
    );
    let right = lcm(a, b);
    keep(a < b && b % a != 0 && (m.level != crate::item::Level::Stretch || gcd(a, b) > 1))?;
    let list = |n: i64| (1..=right / n).map(|k| k * n).collect::<Vec<_>>();
    Some(
        Draft::new(json!({"task": "least_common_multiple", "numbers": [a, b]}))
            .ask(m.say("ask").count("a", a).count("b", b))
            .whole(right)
            .hint(
                m.say("hint-list")
                    .count("n", b)
                    .numbers("multiples", (1..=3).map(|k| k * b)),
            )
            .hint(m.say("hint-first").count("n", a))
            .step(
                m.say("step-list")
                    .count("n", a)
                    .numbers("multiples", list(a)),
            )
            .step(
                m.say("step-list")
                    .count("n", b)
                    .numbers("multiples", list(b)),
            )
            .step(m.say("step-first").count("right", right))
            .mistake("factor-for-multiple", whole(gcd(a, b)))
            .mistake_if(a * b != right, "product-for-least-multiple", whole(a * b))
            .mistake_if(a * b == right, "not-the-least-multiple", whole(2 * right)),
    )
}

fn common_factor_sum(m: &mut Make) -> Option<Draft> {
    let g = m.dice.from(m.level.pick(2..=6, 3..=9, 4..=12));
    let (x, y) = (m.dice.from(2..=9), m.dice.from(2..=9));
    let (a, b) = (g * x, g * y);
    keep(gcd(x, y) == 1 && x != y && b <= 100 && a <= 100 && a != b && a % b != 0 && b % a != 0)?;
    let other = factors(g).into_iter().rev().find(|f| *f < g && *f > 1);
    let draft = Draft::new(json!({"task": "factor_out", "numbers": [a, b]}))
        .ask(m.say("ask"))
        .ask(sum([num(a), num(b)]))
        .expression(format!("{g}({x}+{y})"), &[])
        .form(crate::item::FormRule::SameSteps)
        .hint(m.say("hint-factor").count("a", a).count("b", b))
        .hint(m.say("hint-form").math(
            "form",
            product([Expr::Blank, group(sum([Expr::Blank, Expr::Blank]))]),
        ))
        .step(m.say("step-factor").count("g", g))
        .step(equal(num(a), product([num(g), num(x)])))
        .step(equal(num(b), product([num(g), num(y)])))
        .step(equal(
            sum([num(a), num(b)]),
            product([num(g), group(sum([num(x), num(y)]))]),
        ))
        .mistake(
            "factor-taken-from-first-only",
            crate::item::make::expression(format!("{g}({x}+{b})")),
        );
    Some(match other {
        Some(f) => draft.mistake(
            "not-the-greatest-factor",
            crate::item::make::expression(format!("{f}({}+{})", a / f, b / f)),
        ),
        None => draft.mistake(
            "factor-left-inside",
            crate::item::make::expression(format!("{g}({a}+{b})")),
        ),
    })
}

fn signed_meaning(m: &mut Make) -> Option<Draft> {
    let n = m.dice.from(m.level.pick(2..=30, 5..=300, 12..=1_500));
    // Odd stories are below zero, even ones above.
    let story = m.dice.from(1..=8);
    let below = story % 2 == 1;
    let value = if below { -n } else { n };
    let ask = m
        .say(&format!("ask-{story}"))
        .text("name", m.dice.name())
        .count("n", n);
    let draft = if m.level == crate::item::Level::Stretch && m.dice.one_in(3) {
        // What zero means.
        let kind = (story + 1) / 2;
        let setting = ["temperature", "sea", "money", "floor"][(kind - 1) as usize];
        let right = m.say(&format!("zero-{kind}-right"));
        let wrong = vec![
            ("zero-as-nothing-at-all", m.say("zero-nothing").into()),
            ("zero-as-least", m.say("zero-least").into()),
        ];
        return Some(
            Draft::new(json!({"task": "meaning_of_zero", "setting": setting, "value": value}))
                .ask(m.say(&format!("zero-{kind}")).number("value", value))
                .one_of(&mut m.dice, right, wrong)
                .hint(m.say("hint-zero"))
                .hint_with(m.say("hint-line"), sign_line(value))
                .step(m.say("hint-zero"))
                .step(m.say(&format!("zero-{kind}-right"))),
        );
    } else {
        Draft::new(json!({"task": "signed_number", "size": n, "side": if below { "below" } else { "above" }}))
            .ask(ask)
            .integer(value)
            .mistake("sign-left-out-or-added", Answer::WholeNumber { value: -value })
            .mistake("zero-for-signed-number", Answer::WholeNumber { value: 0 })
    };
    Some(
        draft
            .hint(m.say("hint-zero"))
            .hint_with(m.say("hint-line"), sign_line(value))
            .step(m.say(if below { "step-below" } else { "step-above" }))
            .step(m.say("step-number").number("value", value)),
    )
}

fn sign_line(value: i64) -> crate::item::Figure {
    let size = value.abs();
    Line::new(-size, size, size)
        .label(-size, num(-size))
        .label(0, num(0))
        .label(size, num(size))
        .figure()
}

/// An integer, half, quarter or tenth, not zero, by level.
fn rational_number(m: &mut Make) -> Ratio<i64> {
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
fn dec(value: Ratio<i64>) -> Option<Dec> {
    Dec::exact(value)
}

fn opposites(m: &mut Make) -> Option<Draft> {
    let value = rational_number(m);
    let d = dec(value)?;
    let twice = m.level.pick(false, m.dice.one_in(3), m.dice.one_in(2));
    let right = if twice { value } else { -value };
    let zero_to = Dec::exact(if twice { -value } else { value })?;
    let draft = if twice {
        Draft::new(json!({"task": "opposite_twice", "number": d.to_string()}))
            .ask(m.say("ask-twice").number("value", d))
    } else {
        Draft::new(json!({"task": "opposite", "number": d.to_string()}))
            .ask(m.say("ask").number("value", d))
    };
    let size = if value < Ratio::from(0) {
        -value
    } else {
        value
    };
    let over_one = Dec::exact(Ratio::from(1) / value).filter(|r| r.places() <= 4);
    let draft = draft
        .signed_decimal(dec(right)?)
        .hint(m.say("hint-side"))
        .hint_with(
            m.say("hint-line"),
            Line::new(-size, size, size)
                .label(-size, num(dec(-size)?))
                .label(0, num(0))
                .label(size, num(dec(size)?))
                .figure_as(m.say("line").number("size", dec(size)?)),
        )
        .step(m.say(if twice { "step-twice" } else { "step-once" }))
        .step(m.say("step-answer").number("right", dec(right)?))
        .mistake("opposite-sign-kept", decimal(zero_to));
    Some(match over_one {
        Some(r) if r.ratio() != value && r.ratio() != -value => {
            draft.mistake("reciprocal-for-opposite", decimal(r))
        }
        _ => draft.mistake("zero-for-opposite", decimal(Dec::new(0, 0))),
    })
}

fn quadrants(m: &mut Make) -> Option<Draft> {
    let (x, y) = (m.dice.from(-9..=9), m.dice.from(-9..=9));
    keep(x != 0 && y != 0 && x != y && x != -y)?;
    if m.level == crate::item::Level::Entry {
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
        // Two wrong quadrants may share a code's thought, but each has its own place.
        return Some(
            Draft::new(json!({"task": "quadrant_of", "x": x, "y": y}))
                .ask(m.say("ask-quadrant").math("point", pair(num(x), num(y))))
                .one_of_listed(
                    (0..4)
                        .map(|i| {
                            (
                                code(i),
                                says(["quadrant-1", "quadrant-2", "quadrant-3", "quadrant-4"][i]),
                            )
                        })
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
    let both = m.level == crate::item::Level::Stretch && m.dice.one_in(2);
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
            .mistake("reflected-across-other-axis", point(wrong.0, wrong.1))
            .mistake("coordinates-swapped", point(ry, rx)),
    )
}

fn rational_on_line(m: &mut Make) -> Option<Draft> {
    let bottom = m.level.pick(1, m.dice.pick(&[2, 4]), m.dice.pick(&[4, 10]));
    let reach = m.level.pick(8, 4, 2);
    let top = m.dice.from(-reach * bottom + 1..=-1);
    let value = Ratio::new(top, bottom);
    keep(bottom == 1 || !value.is_integer())?;
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
            .ask(m.say("ask").math("value", shown))
            .answer(
                Entry::NumberLinePoint {
                    line: line.clone().into_line(),
                },
                spot(value),
            )
            .hint(m.say("hint-left"))
            .hint_with(m.say("hint-parts").count("parts", bottom), line.figure())
            .step(m.say("hint-left"))
            .step(
                m.say("step-between")
                    .number("low", value.floor().to_integer())
                    .number("high", value.floor().to_integer() + 1),
            )
            .mistake("sign-ignored-on-line", spot(-value));
    Some(if bottom > 1 && floor_side >= Ratio::from(-reach) {
        // −2.5 put between −2 and −1, or counted onward from −3 the wrong way.
        draft.mistake_unless_same(
            "negative-part-counted-wrong-way",
            spot(value.ceil() * 2 - value),
        )
    } else {
        draft.mistake(
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
            .mistake(
                if by_size == wrong {
                    "compared-sizes-without-signs"
                } else {
                    "sign-turned-round"
                },
                compare(wrong),
            )
            .mistake("took-as-equal", compare(Sign::Equal)),
    )
}

fn zero_line(a: Ratio<i64>, b: Ratio<i64>) -> Option<crate::item::Figure> {
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

fn order_in_context(m: &mut Make) -> Option<Draft> {
    let count = m.level.pick(3, 4, 4);
    let reach = m.level.pick(12, 20, 30);
    let mut values = m.dice.different(count, -reach..=reach);
    keep(values.iter().filter(|v| **v < 0).count() >= 2 && values.iter().any(|v| *v > 0))?;
    let sizes: std::collections::BTreeSet<i64> = values.iter().map(|v| v.abs()).collect();
    keep(sizes.len() == count)?;
    m.dice.shuffle(&mut values);
    let story = m.dice.from(1..=3);
    let order_by = |key: &dyn Fn(i64) -> i64| {
        let mut places: Vec<u32> = (0..count as u32).collect();
        places.sort_by_key(|place| key(values[*place as usize]));
        Answer::Ordering { order: places }
    };
    let right = order_by(&|v| v);
    let unit = ["unit-degrees", "unit-m", "unit-dollars"][(story - 1) as usize];
    let things = values
        .iter()
        .map(|v| crate::item::Choice {
            shows: shows(crate::item::expr::measure(num(v), unit)),
        })
        .collect();
    let (first, last) = [
        ("order-coldest", "order-warmest"),
        ("order-lowest", "order-highest"),
        ("order-least", "order-greatest"),
    ][(story - 1) as usize];
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
            .mistake("compared-sizes-without-signs", order_by(&|v| v.abs()))
            .mistake("ordered-from-greatest", order_by(&|v| -v))
            .mistake_unless_same(
                "negatives-ordered-by-size",
                order_by(&|v| if v < 0 { -100 - v } else { v }),
            ),
    )
}

fn absolute_value(m: &mut Make) -> Option<Draft> {
    let value = rational_number(m);
    keep(value < Ratio::from(0) || m.dice.one_in(4))?;
    let d = dec(value)?;
    let size = if value < Ratio::from(0) {
        -value
    } else {
        value
    };
    let story = m.level.pick(false, m.dice.one_in(3), m.dice.one_in(2));
    let draft = Draft::new(json!({"task": "absolute_value", "number": d.to_string()}));
    let draft = if story {
        draft.ask(m.say("ask-distance").number("value", d))
    } else {
        draft
            .ask(m.say("ask"))
            .ask(equal(absolute(num(d)), Expr::Blank))
    };
    Some(
        draft
            .signed_decimal(dec(size)?)
            .hint(m.say("hint-distance"))
            .hint_with(m.say("hint-line"), zero_line(value, Ratio::from(0))?)
            .step(m.say("hint-distance"))
            .step(equal(absolute(num(d)), num(dec(size)?)))
            .mistake("absolute-value-kept-sign", decimal(dec(-size)?))
            .mistake("absolute-value-doubled", decimal(dec(size * 2)?)),
    )
}

fn absolute_vs_order(m: &mut Make) -> Option<Draft> {
    let n = m.dice.from(m.level.pick(10..=50, 15..=95, 40..=300));
    let gap = m.dice.from(3..=n / 2);
    let story = m.dice.from(1..=4);
    // The second amount lies below or above the first (both below zero).
    let lower = m.dice.one_in(2);
    let other = if lower { n + gap } else { n - gap };
    let asks_size = m.dice.one_in(2);
    // "greater": the second has the greater size, or the greater number.
    let greater = if asks_size { lower } else { !lower };
    let kind = (story - 1) / 2 + 1;
    let ask = m
        .say(&format!(
            "ask-{kind}-{}",
            if asks_size { "size" } else { "number" }
        ))
        .number("one", -n)
        .number("two", -other);
    Some(
        Draft::new(json!({"task": if asks_size { "greater_size" } else { "greater_number" }, "one": -n, "two": -other}))
            .ask(ask)
            .one_of_listed(
                vec![("size-and-order-mixed-up", says("absolute-more")), ("size-and-order-mixed-up", says("absolute-less")), ("took-as-equal", says("absolute-same"))],
                usize::from(!greater),
            )
            .hint(m.say("hint-zero"))
            .hint(m.say("hint-left"))
            .step(m.say("step-size").number("one", n).number("two", other))
            .step(m.say(if lower { "step-lower" } else { "step-higher" }).number("one", -n).number("two", -other)),
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
            .mistake(
                if mixed_sign {
                    "distances-subtracted-across-zero"
                } else {
                    "distances-added-on-one-side"
                },
                whole(wrong),
            )
            .mistake_unless_same("counted-points-not-steps", whole(right + 1)),
    )
}
