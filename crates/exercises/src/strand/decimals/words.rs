//! Decimals in words (5.NBT.A.3.a).

use crate::decimal::Dec;
use crate::expr::num;
use crate::make::{Draft, Make, decimal, keep, shows};
use crate::spell::spelled;
use serde_json::json;

/// A decimal from its words, or the decimal that words name.
pub(super) fn in_words(m: &mut Make) -> Option<Draft> {
    let places = m.level.pick(2, 3, 3);
    let ones = m.dice.from(m.level.pick(2..=9, 2..=99, 2..=199));
    let part = m.dice.from(m.level.pick(2..=99, 2..=199, 2..=99));
    // After a number that ends in one, Spanish words change; ten and more of a part are named
    // by the smaller part.
    let ends_in_one = |n: i64| n % 10 == 1 && n % 100 != 11;
    keep(!ends_in_one(ones) && !ends_in_one(part) && part % 10 != 0 && ones != part)?;
    let size = 10_i64.pow(places);
    let value = Dec::new(ones * size + part, places);
    let words = m
        .say(if places == 2 {
            "words-hundredths"
        } else {
            "words-thousandths"
        })
        .words("ones", spelled(ones))
        .words("part", spelled(part));
    let digits = part.to_string().len() as u32;
    // Written without the zeros before the part.
    let squeezed = Dec::new(ones * 10_i64.pow(digits) + part, digits);
    let statement = json!({
        "task": "decimal_of_words", "words": words_of(ones, part, places),
    });
    // Where the part fills its places there is no zero to leave out.
    let (shown_code, shown) = if digits < places {
        ("zeros-left-out", squeezed)
    } else {
        let far = Dec::new(ones * size * 10 + part, places + 1);
        ("place-gap-off-by-one", far)
    };
    let joined = Dec::new(ones * size + part, 0);
    let draft = Draft::new(statement).ask(m.say("ask-words")).ask(words);
    let draft = if m.dice.one_in(2) {
        draft
            .decimal(value)
            .misconception(shown_code, decimal(shown))
            .misconception("decimal-point-left-out", decimal(joined))
    } else {
        draft.one_of(
            &mut m.dice,
            shows(num(value)),
            vec![
                (shown_code, shows(num(shown))),
                if digits < places {
                    // One place too far.
                    let far = Dec::new(ones * size * 10 + part, places + 1);
                    ("place-gap-off-by-one", shows(num(far)))
                } else {
                    ("decimal-point-left-out", shows(num(joined)))
                },
            ],
        )
    };
    Some(
        draft
            .hint(m.say("hint-and"))
            .hint(m.say(if places == 2 {
                "hint-two-places"
            } else {
                "hint-three-places"
            }))
            .step(m.say("hint-and"))
            .step(m.say(if places == 2 {
                "hint-two-places"
            } else {
                "hint-three-places"
            }))
            .step(num(value)),
    )
}

/// The words for the statement, in English: the oracle reads them.
fn words_of(ones: i64, part: i64, places: u32) -> String {
    let english = surefoot_catalogue::Language::first();
    let of = |n: i64| spelled(n).get(english).to_owned();
    let name = if places == 2 {
        "hundredths"
    } else {
        "thousandths"
    };
    format!("{} and {} {name}", of(ones), of(part))
}
