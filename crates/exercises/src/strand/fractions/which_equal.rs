//! Which of some fractions are equal to a given one (3.NF.A.3.b, 4.NF.A.1).

use crate::answer::Answer;
use crate::draw::{strip, strips};
use crate::expr::{equal, frac};
use crate::figure::PartShape;
use crate::make::{Draft, Make, keep};
use crate::say::Say;
use serde_json::json;

/// Five fractions, of which one to three are equal to the given one.
pub(super) fn which_equal(m: &mut Make, bottoms: &[i64]) -> Option<Draft> {
    let b = m.dice.pick(bottoms);
    let a = m.dice.from(1..=b - 1);
    let every = || {
        bottoms
            .iter()
            .flat_map(|d| (1..*d).map(move |c| (c, *d)))
            .filter(|(c, d)| (*c, *d) != (a, b))
    };
    let mut same: Vec<(i64, i64)> = every().filter(|(c, d)| c * b == a * d).collect();
    keep(!same.is_empty())?;
    m.dice.shuffle(&mut same);
    same.truncate(m.dice.from(1..=3) as usize);
    // Near misses: the same numerator, and the same number added to both.
    let tempting = |(c, d): &(i64, i64)| *c == a || d - c == b - a;
    let mut others: Vec<(i64, i64)> = every().filter(|(c, d)| c * b != a * d).collect();
    m.dice.shuffle(&mut others);
    others.sort_by_key(|other| !tempting(other));
    others.truncate(2);
    let mut rest: Vec<(i64, i64)> = every()
        .filter(|other| other.0 * b != a * other.1 && !others.contains(other))
        .collect();
    m.dice.shuffle(&mut rest);
    let known = *same.first()?;
    let mut all: Vec<(i64, i64)> = same.into_iter().chain(others).chain(rest).collect();
    all.truncate(5);
    m.dice.shuffle(&mut all);
    let fits = |(c, d): &(i64, i64)| c * b == a * d;
    let places = |chosen: &dyn Fn(&(i64, i64)) -> bool| Answer::SeveralChoices {
        indexes: (0_u32..)
            .zip(&all)
            .filter(|(_, fraction)| chosen(fraction))
            .map(|(index, _)| index)
            .collect(),
    };
    let texts: Vec<String> = all.iter().map(|(c, d)| format!("{c}/{d}")).collect();
    let (c, d) = known;
    let mut draft = Draft::new(json!({
        "task": "which_equal_to", "fraction": format!("{a}/{b}"), "choices": texts,
    }))
    .ask(Say::new("fraction-ask-which-equal").math("fraction", frac(a, b)))
    .all_of(
        all.iter()
            .map(|(c, d)| {
                let shown = Say::new("fraction-shown").math("fraction", frac(*c, *d));
                (fits(&(*c, *d)), shown.into())
            })
            .collect(),
    )
    .hint(Say::new("fraction-hint-same"))
    .hint_with(Say::new("fraction-hint-shaded"), strip(b, a))
    .step_with(
        Say::new("fraction-step-bars"),
        strips(PartShape::Bar, &[(b, a), (d, c)]),
    )
    .step(equal(frac(a, b), frac(c, d)));
    for (code, wrong) in [
        ("same-top-number", places(&|other| other.0 == a)),
        (
            "same-difference",
            places(&|other| other.1 - other.0 == b - a && other.1 > b),
        ),
        ("one-equal-fraction-only", places(&|other| *other == known)),
    ] {
        let empty = matches!(&wrong, Answer::SeveralChoices { indexes } if indexes.is_empty());
        if !empty {
            draft = draft.misconception_unless_same(code, wrong);
        }
    }
    keep(!draft.misconceptions.is_empty())?;
    Some(draft)
}
