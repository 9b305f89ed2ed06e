//! Negative numbers, opposites and sizes.

use super::order::{dec, rational_number, zero_line};
use crate::answer::Answer;
use crate::decimal::Dec;
use crate::draw::Line;
use crate::expr::{Expr, absolute, equal, num};
use crate::make::{Draft, Generator, Make, decimal, keep, says};
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g6-signed-meaning", 3, signed_meaning),
    Generator::new("g6-opposites", 3, opposites),
    Generator::new("g6-absolute-value", 3, absolute_value),
    Generator::new("g6-absolute-vs-order", 3, absolute_vs_order),
];

/// Least and greatest size of each story. Odd stories are below zero, even ones above.
const SIZES: [(i64, i64); 8] = [
    (2, 40),
    (2, 110),
    (5, 130),
    (200, 9_000),
    (5, 900),
    (5, 900),
    (1, 5),
    (2, 40),
];

fn signed_meaning(m: &mut Make) -> Option<Draft> {
    if m.level != crate::Level::Entry && m.dice.one_in(2) {
        return which_are_signed(m);
    }
    let story = m.dice.from(1..=8);
    let below = story % 2 == 1;
    let (low, high) = *SIZES.get((story - 1) as usize)?;
    let n = m.dice.from(low..=high);
    let value = if below { -n } else { n };
    let kind = (story + 1) / 2;
    if m.level == crate::Level::Stretch && m.dice.one_in(2) {
        // What zero means.
        let setting = ["temperature", "sea", "money", "floor"].get((kind - 1) as usize)?;
        let others = [1, 2, 3, 4].into_iter().filter(|other| *other != kind);
        let mut wrong: Vec<(&'static str, crate::Block)> = others
            .map(|other| {
                (
                    "zero-of-another-scale",
                    m.say(&format!("zero-{other}-right")).into(),
                )
            })
            .collect();
        m.dice.shuffle(&mut wrong);
        wrong.truncate(2);
        wrong.push(("zero-as-least", m.say("zero-least").into()));
        let right = m.say(&format!("zero-{kind}-right"));
        return Some(
            Draft::new(json!({"task": "meaning_of_zero", "setting": setting, "value": value}))
                .ask(m.say(&format!("zero-{kind}")).number("value", value))
                .one_of(&mut m.dice, right, wrong)
                .hint(m.say("hint-zero"))
                .hint_with(m.say("hint-line"), sign_line(value))
                .step(m.say("hint-zero"))
                .step(m.say(&format!("zero-{kind}-right"))),
        );
    }
    let ask = m
        .say(&format!("ask-{story}"))
        .text("name", m.dice.name())
        .count("n", n);
    Some(
        Draft::new(json!({"task": "signed_number", "size": n, "side": if below { "below" } else { "above" }}))
            .ask(ask)
            .integer(value)
            .misconception("sign-left-out-or-added", Answer::WholeNumber { value: -value })
            .misconception("zero-for-signed-number", Answer::WholeNumber { value: 0 })
            .hint(m.say("hint-zero"))
            .hint(m.say("hint-line"))
            .step(m.say(if below { "step-below" } else { "step-above" }))
            .step(m.say("step-number").number("value", value)),
    )
}

/// The meanings of signed numbers: the message, and whether the number is below zero.
const MEANINGS: [(&str, bool); 12] = [
    ("owes", true),
    ("below-zero", true),
    ("below-sea", true),
    ("spends", true),
    ("colder", true),
    ("loses", true),
    ("saves", false),
    ("above-zero", false),
    ("above-sea", false),
    ("earns", false),
    ("warmer", false),
    ("wins", false),
];

/// All meanings of a signed number among five.
fn which_are_signed(m: &mut Make) -> Option<Draft> {
    let n = m.dice.from(3..=40);
    let below = m.dice.one_in(2);
    let mut meanings = MEANINGS;
    m.dice.shuffle(&mut meanings);
    let (chosen, _) = meanings.split_at_checked(5)?;
    let right = chosen.iter().filter(|(_, side)| *side == below).count();
    keep((1..=4).contains(&right))?;
    let shown = |id: &str| -> crate::Block { m.say(&format!("means-{id}")).count("n", n).into() };
    let places = |wanted: bool| Answer::SeveralChoices {
        indexes: (0_u32..)
            .zip(chosen)
            .filter(|(_, (_, side))| *side == wanted)
            .map(|(index, _)| index)
            .collect(),
    };
    let names: Vec<&str> = chosen.iter().map(|(id, _)| *id).collect();
    let value = if below { -n } else { n };
    Some(
        Draft::new(json!({"task": "which_are_signed", "value": value, "choices": names}))
            .ask(m.say("ask-which").number("value", value))
            .all_of(
                chosen
                    .iter()
                    .map(|(id, side)| (*side == below, shown(id)))
                    .collect(),
            )
            .hint(m.say("hint-zero"))
            .hint(m.say("hint-which"))
            .step(m.say("step-less"))
            .step(m.say("step-more"))
            .misconception("signs-of-all-turned-round", places(!below)),
    )
}

fn sign_line(value: i64) -> crate::Figure {
    let size = value.abs();
    Line::new(-size, size, size)
        .label(-size, num(-size))
        .label(0, num(0))
        .label(size, num(size))
        .figure()
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
        let draft = Draft::new(json!({"task": "opposite", "number": d.to_string()}));
        let plain = [m.say("ask").number("value", d).into()];
        m.asked(draft, plain, 3, |say| say.number("value", d))
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
        .misconception("opposite-sign-kept", decimal(zero_to));
    Some(match over_one {
        Some(r) if r.ratio() != value && r.ratio() != -value => {
            draft.misconception("reciprocal-for-opposite", decimal(r))
        }
        _ => draft.misconception("zero-for-opposite", decimal(Dec::new(0, 0))),
    })
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
        let plain = [
            m.say("ask").into(),
            equal(absolute(num(d)), Expr::Blank).into(),
        ];
        m.asked(draft, plain, 3, |say| say.number("value", d))
    };
    Some(
        draft
            .signed_decimal(dec(size)?)
            .hint(m.say("hint-distance"))
            .hint_with(m.say("hint-line"), zero_line(value, Ratio::from(0))?)
            .step(m.say("hint-distance"))
            .step(equal(absolute(num(d)), num(dec(size)?)))
            .misconception("absolute-value-kept-sign", decimal(dec(-size)?))
            .misconception("absolute-value-doubled", decimal(dec(size * 2)?)),
    )
}

fn absolute_vs_order(m: &mut Make) -> Option<Draft> {
    let n = m.dice.from(m.level.pick(10..=50, 15..=95, 40..=300));
    // Now and then the two amounts are the same.
    let gap = if m.dice.one_in(3) {
        0
    } else {
        m.dice.from(3..=n / 2)
    };
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
                if gap == 0 {
                    vec![("took-as-different", says("absolute-more")), ("took-as-different", says("absolute-less")), ("", says("absolute-same"))]
                } else {
                    vec![("size-and-order-mixed-up", says("absolute-more")), ("size-and-order-mixed-up", says("absolute-less")), ("took-as-equal", says("absolute-same"))]
                },
                if gap == 0 { 2 } else { usize::from(!greater) },
            )
            .hint(m.say("hint-zero"))
            .hint(m.say("hint-left"))
            .step(m.say("step-size").number("one", n).number("two", other))
            .step(m.say(if gap == 0 { "step-same" } else if lower { "step-lower" } else { "step-higher" }).number("one", -n).number("two", -other)),
    )
}
