//! Place value, rounding, comparing whole numbers, powers of ten.

use crate::Block;
use crate::answer::Answer;
use crate::decimal::Dec;
use crate::draw::Line;
use crate::expr::{Expr, Sign, equal, num, power, product, quotient, relation, sum};
use crate::make::{
    Draft, Generator, Make, compare, decimal, digit_values, digits, keep, shows, whole,
};
use crate::say::Say;
use crate::spell::spelled;
use num_rational::Ratio;
use serde_json::json;
use surefoot_catalogue::{Language, Text};

/// The generators of the strand.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g3-round-10-100", 3, g3_round),
    Generator::new("g4-place-value-tens", 3, place_value_tens),
    Generator::new("g4-read-write-numbers", 3, read_write),
    Generator::new("g4-compare-numbers", 3, compare_numbers),
    Generator::new("g4-round", 3, g4_round),
    Generator::new("g5-place-value-powers", 3, place_value_powers),
    Generator::new("g5-powers-of-ten", 3, powers_of_ten),
];

fn g3_round(m: &mut Make) -> Option<Draft> {
    let place = m.level.pick(10, 100, m.dice.pick(&[10, 100]));
    let n = m.dice.from(m.level.pick(11..=199, 101..=999, 105..=989));
    if m.level == crate::Level::Stretch {
        return unrounded(m, place);
    }
    round_draft(n, place)
}

/// Which numbers round to a given one: the rule read the other way.
fn unrounded(m: &mut Make, place: i64) -> Option<Draft> {
    let to = m.dice.step(2 * place..=900, place);
    let half = place / 2;
    // Both half way numbers, and three others.
    let mut others = vec![
        to - half - 1,
        to + half - 1,
        to + m.dice.from(1 - half..=half - 2),
        to - place + m.dice.from(0..=half - 2),
        to + m.dice.from(half + 1..=place),
    ];
    m.dice.shuffle(&mut others);
    others.truncate(3);
    let mut numbers = vec![to - half, to + half];
    numbers.append(&mut others);
    m.dice.shuffle(&mut numbers);
    let different: std::collections::BTreeSet<i64> = numbers.iter().copied().collect();
    keep(different.len() == 5)?;
    let fits = |n: i64| n >= to - half && n < to + half;
    keep((1..=4).contains(&numbers.iter().filter(|n| fits(**n)).count()))?;
    let places = |chosen: &dyn Fn(i64) -> bool| Answer::SeveralChoices {
        indexes: (0_u32..)
            .zip(&numbers)
            .filter(|(_, n)| chosen(**n))
            .map(|(index, _)| index)
            .collect(),
    };
    Some(
        Draft::new(
            json!({"task": "which_round_to", "to": to, "place": place_in_words(place), "choices": numbers}),
        )
        .ask(
            Say::new("round-ask-which")
                .number("to", to)
                .word("place", place_name(place)),
        )
        .ask(Say::new("round-rule"))
        .all_of(numbers.iter().map(|n| (fits(*n), shows(num(n)))).collect())
        .hint(Say::new("round-hint-half"))
        .hint(Line::new(to - place, to + place, place).label(to - place, num(to - place)).label(to, num(to)).label(to + place, num(to + place)).figure())
        .step(Say::new("round-step-low").number("n", to - half))
        .step(Say::new("round-step-high").number("n", to + half))
        .misconception_unless_same("half-way-up-taken-in", places(&|n| n >= to - half && n <= to + half))
        .misconception_unless_same("half-way-down-left-out", places(&|n| n > to - half && n < to + half)),
    )
}

/// The name of a place, for `the nearest …`.
fn place_name(place: i64) -> &'static str {
    match place {
        10 => "round-place-10",
        100 => "round-place-100",
        1_000 => "round-place-1000",
        10_000 => "round-place-10000",
        _ => "round-place-100000",
    }
}

/// The same for a statement, which holds no number that is not shown.
fn place_in_words(place: i64) -> &'static str {
    match place {
        10 => "ten",
        100 => "hundred",
        1_000 => "thousand",
        10_000 => "ten thousand",
        _ => "hundred thousand",
    }
}

fn g4_round(m: &mut Make) -> Option<Draft> {
    let place = m.level.pick(
        m.dice.pick(&[100, 1_000]),
        m.dice.pick(&[1_000, 10_000]),
        m.dice.pick(&[100, 1_000, 10_000, 100_000]),
    );
    let high = m.level.pick(9_949, 94_999, 949_999);
    let n = m.dice.from(1_001..=high);
    keep(n > place)?;
    round_draft(n, place)
}

fn round_draft(n: i64, place: i64) -> Option<Draft> {
    let down = n / place * place;
    let up = down + place;
    let half = down + place / 2;
    keep(n != down)?;
    let (right, wrong) = if n >= half { (up, down) } else { (down, up) };
    // Rounding to the next smaller place instead.
    let finer = place / 10;
    let other_place = (n + finer / 2) / finer * finer;
    let line = Line::new(down, up, place / 10)
        .label(down, num(down))
        .label(half, num(half))
        .label(up, num(up))
        .point(n, Some(num(n)))
        .figure_as(
            Say::new("round-line")
                .number("down", down)
                .number("up", up)
                .number("n", n),
        );
    Some(
        Draft::new(json!({"task": "round", "number": n, "place": place_in_words(place)}))
            .ask(
                Say::new("round-ask")
                    .number("n", n)
                    .word("place", place_name(place)),
            )
            .ask(Say::new("round-rule"))
            .whole(right)
            .hint(Say::new("round-hint-ends").word("place", place_name(place)))
            .hint_with(Say::new("round-hint-line"), line)
            .step(
                Say::new("round-hint-between")
                    .number("down", down)
                    .number("up", up),
            )
            .step(Say::new("round-step-half").number("half", half))
            .step(
                Say::new(if n >= half {
                    "round-step-up"
                } else {
                    "round-step-down"
                })
                .number("n", n)
                .number("right", right),
            )
            .misconception(
                if n >= half {
                    "rounded-down"
                } else {
                    "rounded-up"
                },
                whole(wrong),
            )
            .misconception_unless_same(
                if other_place == n {
                    "not-rounded"
                } else {
                    "rounded-to-other-place"
                },
                whole(other_place),
            )
            .misconception_unless_same("rounded-place-digit-only", whole(right / place)),
    )
}

fn place_value_tens(m: &mut Make) -> Option<Draft> {
    let digit = m.dice.from(2..=9);
    let low_places = m.level.pick(0..=2, 0..=3, 0..=3);
    let low = m.dice.from(low_places);
    let gap = m.level.pick(1, 1, 2);
    let (small, large) = (
        digit * 10_i64.pow(low as u32),
        digit * 10_i64.pow((low + gap) as u32),
    );
    keep(large <= 1_000_000)?;
    let factor = 10_i64.pow(gap as u32);
    let ask_factor = m.dice.one_in(6);
    let (factor_ask, value_ask) = (m.wording("ask-factor", 3), m.wording("ask-value", 3));
    let work = equal(product([num(factor), num(small)]), num(large));
    let draft = if ask_factor {
        Draft::new(json!({"task": "times_as_much", "large": large, "small": small}))
            .ask(factor_ask.number("large", large).number("small", small))
            .whole(factor)
            .misconception(
                "place-gap-off-by-one",
                whole(if gap == 1 { 100 } else { 10 }),
            )
            .misconception("subtracted-instead-of-compared", whole(large - small))
    } else {
        Draft::new(json!({"task": "scale_up", "small": small, "factor": factor}))
            .ask(value_ask.number("factor", factor).number("small", small))
            .whole(large)
            .misconception(
                "place-gap-off-by-one",
                whole(if gap == 1 { large * 10 } else { large / 10 }),
            )
            .misconception("added-instead-of-multiplied", whole(small + factor))
    };
    Some(
        draft
            .hint(m.say("hint-left"))
            .hint(m.say("hint-count").count("gap", gap))
            .step(m.say("hint-left"))
            .step(
                m.say("step-moved")
                    .count("gap", gap)
                    .number("factor", factor),
            )
            .step(work),
    )
}

fn read_write(m: &mut Make) -> Option<Draft> {
    let high = m.level.pick(9_999, 99_999, 999_999);
    let n = m.dice.from(high / 9..=high);
    let zeros = digits(n).iter().filter(|d| **d == 0).count();
    keep(zeros >= 1 && n % 10 != 0 || zeros >= 2)?;
    let parts = digit_values(n);
    keep(parts.len() >= 2)?;
    let as_choices = m.level != crate::Level::Entry && m.dice.one_in(3);
    let squeezed = parts.iter().fold(0, |n, part| {
        n * 10 + digits(*part).last().copied().unwrap_or(0)
    });
    let lost_zero = drop_one_zero(n)?;
    let expanded = sum(parts.iter().map(num));
    if as_choices {
        return name_in_words(m, n, squeezed, lost_zero);
    }
    let in_words = m.dice.one_in(2);
    let draft = if in_words {
        let words = spelled(n);
        Draft::new(json!({"task": "from_words", "words": words.get(Language::first())}))
            .ask(m.say("ask-words").words("words", words))
    } else {
        Draft::new(json!({"task": "from_parts", "parts": parts}))
            .ask(m.say("ask-parts"))
            .ask(equal(expanded.clone(), Expr::Blank))
    };
    Some(
        draft
            .whole(n)
            .hint(m.say("hint-places"))
            .hint(m.say("hint-zero"))
            .step(m.say("step-parts"))
            .step(equal(expanded, num(n)))
            .step(m.say("step-zeros").number("n", n))
            .misconception("zeros-left-out", whole(squeezed))
            .misconception_unless_same("one-zero-left-out", whole(lost_zero)),
    )
}

/// A number in digits, to be read in words.
fn name_in_words(m: &mut Make, n: i64, squeezed: i64, lost_zero: i64) -> Option<Draft> {
    keep(squeezed != lost_zero && lost_zero > 99 && squeezed > 9)?;
    let named = |words: &Text| -> Block {
        Say::new("number-in-words")
            .words("words", words.clone())
            .into()
    };
    // Two digits that have changed places.
    let turned = (0..3)
        .map(|place| swap_digits(n, place))
        .find(|other| *other != n && *other > 99)?;
    keep(turned != squeezed && turned != lost_zero)?;
    let choices = [n, squeezed, lost_zero, turned].map(spelled);
    let words = choices.each_ref().map(|words| words.get(Language::first()));
    let [right, zeros_left_out, zero_left_out, swapped] = choices.each_ref().map(named);
    Some(
        Draft::new(json!({"task": "name_of_number", "number": n, "id": words}))
            .ask(m.say("ask-name").number("n", n))
            .one_of(
                &mut m.dice,
                right,
                vec![
                    ("zeros-left-out", zeros_left_out),
                    ("one-zero-left-out", zero_left_out),
                    ("digits-swapped", swapped),
                ],
            )
            .hint(m.say("hint-groups"))
            .hint(m.say("hint-places"))
            .step(m.say("step-parts"))
            .step(equal(num(n), sum(digit_values(n).iter().map(num)))),
    )
}

/// The number without its first inner zero; `None` when it has no zero.
fn drop_one_zero(n: i64) -> Option<i64> {
    let text = n.to_string();
    let at = text.find('0')?;
    let (before, after) = text.split_at_checked(at)?;
    format!("{before}{}", after.strip_prefix('0')?).parse().ok()
}

fn compare_numbers(m: &mut Make) -> Option<Draft> {
    let high = m.level.pick(9_999, 99_999, 999_999);
    let a = m.dice.from(high / 10 + 1..=high);
    if m.equal {
        keep(digit_values(a).len() >= 3)?;
        return Some(equal_numbers(m, a));
    }
    let b = match m.dice.from(1..=3) {
        // Same leading digits.
        1 => a / 100 * 100 + m.dice.from(0..=99),
        // Two digits swapped.
        2 => swap_digits(a, m.dice.from(0..=2) as usize),
        // One digit fewer, starting higher.
        _ => m.dice.from(high / 11..=high / 10),
    };
    keep(a != b && b > 99)?;
    let (a, b) = if m.dice.one_in(2) { (a, b) } else { (b, a) };
    let sign = Sign::of(a.cmp(&b));
    let wrong = Sign::of(b.cmp(&a));
    let (da, db) = (digits(a), digits(b));
    let step = if da.len() == db.len() {
        let (left, right) = da.iter().zip(&db).rev().find(|(a, b)| a != b)?;
        m.say("step-first-different")
            .count("left", *left)
            .count("right", *right)
    } else {
        m.say("step-more-digits")
            .count("left", da.len() as i64)
            .count("right", db.len() as i64)
    };
    Some(
        Draft::new(json!({"task": "compare", "left": a, "right": b}))
            .ask(Say::new("common-sign"))
            .ask(relation(num(a), Sign::Blank, num(b)))
            .compare(sign)
            .hint(m.say("hint-digits"))
            .hint(m.say("hint-left"))
            .step(step)
            .step(relation(num(a), sign, num(b)))
            .misconception("sign-turned-round", compare(wrong))
            .misconception("took-as-equal", compare(Sign::Equal)),
    )
}

/// A number beside its expanded form, its parts in any order: equal.
fn equal_numbers(m: &mut Make, a: i64) -> Draft {
    let mut parts = digit_values(a);
    m.dice.shuffle(&mut parts);
    let expanded = || sum(parts.iter().map(num));
    let flipped = m.dice.one_in(2);
    let shown = |sign: Sign| {
        if flipped {
            relation(expanded(), sign, num(a))
        } else {
            relation(num(a), sign, expanded())
        }
    };
    Draft::new(json!({"task": "compare_with_parts", "number": a, "parts": parts}))
        .ask(Say::new("common-sign"))
        .ask(shown(Sign::Blank))
        .compare(Sign::Equal)
        .hint(m.say("hint-parts"))
        .hint(m.say("hint-left"))
        .step(equal(expanded(), num(a)))
        .step(shown(Sign::Equal))
        .misconception("sign-turned-round", compare(Sign::Less))
        .misconception("took-as-different", compare(Sign::Greater))
}

fn swap_digits(n: i64, place: usize) -> i64 {
    let mut found = digits(n);
    if place + 1 < found.len() {
        found.swap(place, place + 1);
    }
    crate::make::from_digits(&found)
}

fn place_value_powers(m: &mut Make) -> Option<Draft> {
    let digit = m.dice.from(2..=9);
    // In thousandths: the value of the digit in two places.
    let low = m.dice.from(m.level.pick(1..=3, 0..=4, 0..=4));
    let gap = m.level.pick(1, 1, m.dice.from(2..=3));
    let unit = |place: i64| Dec::new(digit * 10_i64.pow(place as u32), 3).trimmed();
    let (small, large) = (unit(low), unit(low + gap));
    keep(large.ratio() <= Ratio::from(9_000_000) && low < 3)?;
    let factor = 10_i64.pow(gap as u32);
    // The factor is mostly 10.
    if m.dice.one_in(6) {
        Some(
            Draft::new(json!({"task": "times_as_much", "large": large.to_string(), "small": small.to_string()}))
                .ask(m.wording("ask-factor", 2).number("large", large).number("small", small))
                .whole(factor)
                .hint(m.say("hint-left"))
                .hint(m.say("hint-count").count("gap", gap))
                .step(m.say("hint-left"))
                .step(m.say("step-moved").count("gap", gap).number("factor", factor))
                .step(equal(product([num(factor), num(small)]), num(large)))
                .misconception("place-gap-off-by-one", whole(if gap == 1 { 100 } else { factor / 10 }))
                .misconception("place-gap-too-many", whole(factor * if gap == 1 { 100 } else { 10 })),
        )
    } else {
        let tenth = Dec::new(1, gap as u32);
        Some(
            Draft::new(json!({"task": "scale_by", "value": large.to_string(), "factor": tenth.to_string()}))
                .ask(m.wording("ask-tenth", 2).number("large", large).number("part", tenth))
                .decimal(small)
                .hint(m.say("hint-right"))
                .hint(m.say("hint-count").count("gap", gap))
                .step(m.say("hint-right"))
                .step(m.say("step-right").count("gap", gap))
                .step(equal(product([num(tenth), num(large)]), num(small)))
                .misconception("moved-left-instead", decimal(Dec::exact(large.ratio() * factor)?))
                .misconception("place-gap-off-by-one", decimal(Dec::exact(large.ratio() / (factor * 10))?)),
        )
    }
}

fn powers_of_ten(m: &mut Make) -> Option<Draft> {
    let exponent = m.dice.from(m.level.pick(1..=3, 1..=4, 2..=6));
    let places = m.level.pick(0, m.dice.from(1..=2), m.dice.from(1..=3)) as u32;
    let value = Dec::new(m.dice.from(11..=9_999) / m.level.pick(10, 1, 1), places);
    keep(value.units() % 10 != 0 && value.units() > 1)?;
    let places_most = 3;
    let divide = m.level.pick(false, m.dice.one_in(2), m.dice.one_in(2));
    let ten = 10_i64.pow(exponent as u32);
    let result = Dec::exact(if divide {
        value.ratio() / ten
    } else {
        value.ratio() * ten
    })?;
    keep(result.places() <= places_most && result.ratio() <= Ratio::from(100_000_000))?;
    let other = Dec::exact(if divide {
        value.ratio() * ten
    } else {
        value.ratio() / ten
    })?;
    let one_short = Dec::exact(if divide {
        value.ratio() * 10 / ten
    } else {
        value.ratio() * ten / 10
    })?;
    let one_far = Dec::exact(if divide {
        value.ratio() / ten / 10
    } else {
        value.ratio() * ten * 10
    })?;
    let shown = |right: Expr| {
        if divide {
            equal(quotient(num(value), power(10, exponent)), right)
        } else {
            equal(product([num(value), power(10, exponent)]), right)
        }
    };
    Some(
        Draft::new(json!({
            "task": if divide { "divide_by_power" } else { "times_power" },
            "value": value.to_string(), "base": 10, "exponent": exponent
        }))
        .ask(Say::new("common-work-out"))
        .ask(shown(Expr::Blank))
        .decimal(result)
        .hint(
            m.say("hint-power")
                .count("exponent", exponent)
                .number("ten", ten),
        )
        .hint(
            m.say(if divide { "hint-right" } else { "hint-left" })
                .count("exponent", exponent),
        )
        .step(
            m.say("hint-power")
                .count("exponent", exponent)
                .number("ten", ten),
        )
        .step(
            m.say(if divide { "hint-right" } else { "hint-left" })
                .count("exponent", exponent),
        )
        .step(shown(num(result)))
        .misconception("moved-wrong-way", decimal(other))
        .misconception("place-gap-off-by-one", decimal(one_short))
        .misconception("place-gap-too-many", decimal(one_far)),
    )
}
