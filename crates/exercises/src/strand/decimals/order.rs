//! Compare and round.

use crate::decimal::Dec;
use crate::draw::Line;
use crate::expr::{Sign, num, relation};
use crate::make::{Draft, Generator, Make, compare, decimal, keep};
use crate::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g4-decimal-compare", 3, compare_hundredths),
    Generator::new("g5-decimal-compare", 3, compare_thousandths),
    Generator::new("g5-decimal-round", 3, round),
];

fn compare_hundredths(m: &mut Make) -> Option<Draft> {
    let (a, pa) = m.level.pick(
        (m.dice.from(1..=9), 1),
        (m.dice.from(1..=99), 2),
        (m.dice.from(1..=399), 2),
    );
    let (b, pb) = m.level.pick(
        (m.dice.from(1..=99), 2),
        (m.dice.from(1..=9), 1),
        (m.dice.from(1..=39), 1),
    );
    let (a, b) = (Dec::new(a, pa), Dec::new(b, pb));
    // 0.7 and 0.70.
    let (a, b) = if m.equal {
        let tenths = m.dice.from(1..=m.level.pick(9, 9, 39));
        (Dec::new(tenths, 1), Dec::new(tenths * 10, 2))
    } else {
        keep(a.ratio() != b.ratio())?;
        (a, b)
    };
    let gap = a.ratio() - b.ratio();
    keep(gap < Ratio::from(1) && gap > Ratio::from(-1))?;
    compare_draft(m, a, b)
}

fn compare_thousandths(m: &mut Make) -> Option<Draft> {
    let pa = m.level.pick(2, 3, 3);
    let pb = m
        .level
        .pick(3, m.dice.pick(&[1, 2]), m.dice.pick(&[1, 2, 3]));
    let high = m.level.pick(1, 1, 9);
    let a = Dec::new(m.dice.from(1..=high * 10_i64.pow(pa) - 1), pa);
    let b = Dec::new(m.dice.from(1..=high * 10_i64.pow(pb) - 1), pb);
    let (a, b) = if m.equal {
        let low = m.dice.from(1..=2) as u32;
        let value = m.dice.from(1..=high * 10_i64.pow(low) - 1);
        (
            Dec::new(value, low),
            Dec::new(value * 10_i64.pow(3 - low), 3),
        )
    } else {
        keep(a.ratio() != b.ratio())?;
        (a, b)
    };
    let gap = (a.ratio() - b.ratio()) * 10;
    keep(gap < Ratio::from(2) && gap > Ratio::from(-2))?;
    compare_draft(m, a, b)
}

fn compare_draft(m: &mut Make, a: Dec, b: Dec) -> Option<Draft> {
    let same = a.ratio() == b.ratio();
    keep(same || a.units() % 10 != 0 && b.units() % 10 != 0)?;
    let (a, b) = if m.dice.one_in(2) { (a, b) } else { (b, a) };
    let sign = Sign::of(a.ratio().cmp(&b.ratio()));
    let places = a.places().max(b.places());
    let even = |d: Dec| Dec::new(d.units() * 10_i64.pow(places - d.places()), places);
    // Read as whole numbers: 0.65 taken as larger than 0.7 because 65 is larger than 7.
    let part = |d: Dec| d.units() % 10_i64.pow(d.places());
    let ones = |d: Dec| d.units() / 10_i64.pow(d.places());
    let longer = Sign::of((ones(a), part(a)).cmp(&(ones(b), part(b))));
    let draft =
        Draft::new(json!({"task": "compare", "left": a.to_string(), "right": b.to_string()}))
            .ask(m.sign_ask())
            .ask(relation(num(a), Sign::Blank, num(b)))
            .compare(sign)
            .hint(Say::new("decimal-hint-places"))
            .hint(
                // Both written out would show that they are equal.
                if same {
                    Say::new("decimal-hint-empty-place")
                } else {
                    Say::new("decimal-hint-even")
                        .math("left", num(even(a)))
                        .math("right", num(even(b)))
                },
            )
            .step(
                Say::new("decimal-hint-even")
                    .math("left", num(even(a)))
                    .math("right", num(even(b))),
            )
            .step(relation(num(a), sign, num(b)));
    Some(if sign == Sign::Equal {
        let longer = Sign::of(a.places().cmp(&b.places()));
        keep(a.places() != b.places())?;
        draft
            .misconception("longer-decimal-larger", compare(longer))
            .misconception(
                "shorter-decimal-larger",
                compare(Sign::of(b.places().cmp(&a.places()))),
            )
    } else {
        let wrong = Sign::of(b.ratio().cmp(&a.ratio()));
        let code = if longer == wrong {
            "longer-decimal-larger"
        } else if Sign::of(b.places().cmp(&a.places())) == wrong {
            "shorter-decimal-larger"
        } else {
            "sign-turned-round"
        };
        draft
            .misconception(code, compare(wrong))
            .misconception("took-as-equal", compare(Sign::Equal))
    })
}

fn round(m: &mut Make) -> Option<Draft> {
    let keep_places = m.level.pick(
        m.dice.from(0..=1) as u32,
        m.dice.from(1..=2) as u32,
        m.dice.from(0..=2) as u32,
    );
    let places = m.level.pick(keep_places + 1, keep_places + 1, 3);
    let n = Dec::new(m.dice.from(1..=99 * 10_i64.pow(places)), places);
    keep(n.units() % 10 != 0 && places > keep_places)?;
    let unit = 10_i64.pow(places - keep_places);
    let down = n.units() / unit;
    let rest = n.units() % unit;
    keep(rest != 0 && down > 0)?;
    let goes_up = 2 * rest >= unit;
    let right = Dec::new(if goes_up { down + 1 } else { down }, keep_places);
    let wrong = Dec::new(if goes_up { down } else { down + 1 }, keep_places);
    let place = *[
        "decimal-place-whole",
        "decimal-place-tenth",
        "decimal-place-hundredth",
    ]
    .get(keep_places as usize)?;
    let finer = Dec::new(1, keep_places).ratio();
    let other_places = if keep_places == 0 { 1 } else { keep_places - 1 };
    let other_unit = 10_i64.pow(places - other_places);
    let other = Dec::new(
        (2 * n.units() + other_unit) / (2 * other_unit),
        other_places,
    );
    let low = Dec::new(down, keep_places);
    let high = Dec::new(down + 1, keep_places);
    let line = Line::new(low.ratio(), high.ratio(), finer / 10)
        .label(low.ratio(), num(low))
        .label(high.ratio(), num(high))
        .point(n.ratio(), Some(num(n)))
        .figure_as(
            Say::new("round-line")
                .number("down", low)
                .number("up", high)
                .number("n", n),
        );
    Some(
        Draft::new(
            json!({"task": "round", "number": n.to_string(), "place": place.trim_start_matches("decimal-place-")}),
        )
        .ask(
            m.say("ask").number("n", n).word("place", place),
        )
        .ask(Say::new("round-rule"))
        .decimal(right)
        .hint(m.say("hint-ends").word("place", place))
        .hint_with(Say::new("round-hint-line"), line)
        .step(
            Say::new("round-hint-between")
                .number("down", low)
                .number("up", high),
        )
        .step(
            Say::new(if goes_up {
                "round-step-up"
            } else {
                "round-step-down"
            })
            .number("n", n)
            .number("right", right),
        )
        .misconception(
            if goes_up {
                "rounded-down"
            } else {
                "rounded-up"
            },
            decimal(wrong),
        )
        .misconception(
            if keep_places > 0 {
                "rounded-to-larger-place"
            } else if other.ratio() == n.ratio() {
                "not-rounded"
            } else {
                "rounded-to-other-place"
            },
            decimal(other),
        ),
    )
}
