//! Why fractions are equal, and which picture shows a comparison.

use super::grade_4::{BOTTOMS, compare_any};
use super::which_equal::which_equal;
use crate::answer::{Choice, Entry};
use crate::draw::strips;
use crate::expr::{Expr, Sign, equal, frac, relation};
use crate::figure::PartShape;
use crate::make::{Draft, Generator, Make, choice, keep, two_parts, whole};
use crate::say::Say;
use num_integer::gcd;
use serde_json::json;

/// The generators of this file.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g4-fraction-equivalent", 3, equivalent),
    Generator::new("g4-fraction-compare", 3, compare),
];

fn equivalent(m: &mut Make) -> Option<Draft> {
    match m.dice.from(0..=6) {
        0 | 1 => equal_and_why(m),
        2 | 3 => which_equal(m, &BOTTOMS),
        _ => super::grade_4::equivalent(m),
    }
}

fn compare(m: &mut Make) -> Option<Draft> {
    if !m.equal && m.dice.one_in(6) {
        picture_of_comparison(m)
    } else {
        compare_any(m)
    }
}

/// The missing numerator, and why the fractions are equal (4.NF.A.1).
fn equal_and_why(m: &mut Make) -> Option<Draft> {
    let bottom = m.dice.pick(&BOTTOMS);
    let factor = m.dice.from(m.level.pick(2..=3, 2..=6, 3..=12));
    let large = bottom * factor;
    keep(BOTTOMS.contains(&large) || large == 100)?;
    let top = m.dice.from(1..=bottom - 1);
    keep(gcd(top, bottom) == 1 && (top > 1 || m.dice.one_in(4)))?;
    let (right, added) = (top * factor, large - bottom);
    let shown = |answer: Expr| equal(frac(top, bottom), frac(answer, large));
    let mut reasons = [
        (None, m.say("why-times").count("k", factor)),
        (
            Some("same-difference"),
            m.say("why-added").count("n", added),
        ),
        (
            Some("changed-bottoms-only"),
            m.say("why-parts").count("n", large),
        ),
    ];
    m.dice.shuffle(&mut reasons);
    let (mut at, mut wrong, mut choices) = (0, Vec::new(), Vec::new());
    for (place, (code, reason)) in (0..).zip(reasons) {
        choices.push(Choice {
            shows: reason.into(),
        });
        match code {
            None => at = place,
            Some(code) => wrong.push((code, choice(place))),
        }
    }
    let draft = Draft::new(json!({}))
        .ask(Say::new("common-box"))
        .ask(shown(Expr::Blank))
        .hint(Say::new("fraction-hint-multiply"))
        .hint_with(
            m.say("hint-cut"),
            strips(PartShape::Bar, &[(bottom, top), (large, 0)]),
        )
        .step(Say::new("fraction-step-multiply").count("factor", factor))
        .step_with(
            shown_step(top, bottom, right, large),
            strips(PartShape::Bar, &[(bottom, top), (large, right)]),
        );
    Some(two_parts(
        draft,
        json!({"task": "equal_and_why", "fraction": format!("{top}/{bottom}"), "given": large}),
        (
            Entry::WholeNumber {
                signed: false,
                unit: None,
            },
            whole(right),
            vec![
                ("kept-the-number", whole(top)),
                ("same-difference", whole(top + added)),
            ],
        ),
        m.say("ask-why"),
        (Entry::OneChoice { choices }, choice(at), wrong),
    ))
}

fn shown_step(top: i64, bottom: i64, right: i64, large: i64) -> Say {
    Say::new("g4-fraction-equivalent-step-same")
        .math("one", frac(top, bottom))
        .math("two", frac(right, large))
}

/// Which of three pictures shows the comparison (4.NF.A.2).
fn picture_of_comparison(m: &mut Make) -> Option<Draft> {
    let (b, d) = (m.dice.pick(&BOTTOMS), m.dice.pick(&BOTTOMS));
    let (a, c) = (m.dice.from(1..=b - 1), m.dice.from(1..=d - 1));
    keep(b != d && a * d != c * b && 2 * a != b && 2 * c != d)?;
    let sign = Sign::of((a * d).cmp(&(c * b)));
    let off = if c + 1 < d { c + 1 } else { c - 1 };
    keep(off > 0)?;
    let mut pictures = [
        ("", [(b, a), (d, c)]),
        ("counted-unshaded", [(b, b - a), (d, d - c)]),
        ("one-part-off", [(b, a), (d, off)]),
    ];
    m.dice.shuffle(&mut pictures);
    let right = pictures.iter().position(|(code, _)| code.is_empty())?;
    let shown: Vec<[[i64; 2]; 2]> = pictures
        .iter()
        .map(|(_, rows)| rows.map(|(parts, shaded)| [parts, shaded]))
        .collect();
    let mut draft = Draft::new(json!({
        "task": "picture_of_comparison", "left": format!("{a}/{b}"), "right": format!("{c}/{d}"),
        "pictures": shown,
    }))
    .ask(m.say("ask-picture"))
    .ask(relation(frac(a, b), sign, frac(c, d)));
    for (n, (_, rows)) in (1..).zip(&pictures) {
        draft = draft
            .ask(m.say("picture").count("n", n))
            .ask(strips(PartShape::Bar, rows));
    }
    let choices = (1..)
        .zip(&pictures)
        .map(|(n, (code, _))| (*code, m.say("picture").count("n", n).into()))
        .collect();
    Some(
        draft
            .one_of_listed(choices, right)
            .hint(m.say("hint-parts"))
            .hint(m.say("hint-shaded"))
            .step(m.say("hint-parts"))
            .step(m.say("step-picture").count("n", right as i64 + 1)),
    )
}
