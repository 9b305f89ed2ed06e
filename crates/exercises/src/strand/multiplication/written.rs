//! Written multiplying and dividing.

use crate::answer::Entry;
use crate::draw::area_model;
use crate::expr::{Expr, difference, equal, num, product, quotient, sum};
use crate::make::{
    Draft, Generator, Make, digit_values, digits, division, from_digits, keep, whole,
};
use crate::say::Say;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g4-multiply-one-digit", 3, one_digit),
    Generator::new("g4-multiply-two-digit", 3, two_digit),
    Generator::new("g4-divide-one-digit", 3, divide_one_digit),
    Generator::new("g5-multiply-whole", 3, multiply_whole),
    Generator::new("g5-divide-two-digit", 3, divide_two_digit),
];

/// Each column is multiplied, and what is carried is left out; the last is written whole.
fn carry_forgotten(a: i64, b: i64) -> i64 {
    digits(a).iter().rev().fold(0, |written, digit| {
        written * 10
            + if written == 0 {
                digit * b
            } else {
                digit * b % 10
            }
    })
}

/// What is carried is added before multiplying: 27 × 4 as 7 × 4 = 28, (2 + 2) × 4 = 16.
fn carry_added_first(a: i64, b: i64) -> i64 {
    let found = digits(a);
    let mut carry = 0;
    let mut result = Vec::new();
    for (place, digit) in found.iter().enumerate() {
        let value = if place == 0 {
            digit * b
        } else {
            (digit + carry) * b
        };
        result.push(value % 10);
        carry = value / 10;
    }
    from_digits(&result) + carry * 10_i64.pow(found.len() as u32)
}

fn one_digit(m: &mut Make) -> Option<Draft> {
    let a = m.level.pick(
        m.dice.from(13..=98),
        m.dice.from(113..=987),
        m.dice.from(1_013..=9_876),
    );
    let b = m.dice.from(3..=9);
    keep(a % 10 * b >= 10 && a % 10 != 0)?;
    let pieces = digit_values(a);
    let work = product([num(a), num(b)]);
    let cells = vec![pieces.iter().map(|_| None).collect()];
    let mut draft = Draft::new(json!({"task": "multiply", "numbers": [a, b]}))
        .ask(Say::new("common-work-out"))
        .ask(equal(work.clone(), Expr::Blank))
        .whole(a * b)
        .hint(
            Say::new("written-hint-split").math("work", equal(num(a), sum(pieces.iter().map(num)))),
        )
        .hint_with(
            Say::new("written-hint-area"),
            area_model(&[b], &pieces, &cells),
        );
    for part in &pieces {
        draft = draft.step(equal(product([num(part), num(b)]), num(part * b)));
    }
    if pieces.len() > 1 {
        draft = draft.step_with(
            Say::new("written-step-add"),
            equal(sum(pieces.iter().map(|p| num(p * b))), num(a * b)),
        );
    }
    Some(
        draft
            .misconception("carry-forgotten-times", whole(carry_forgotten(a, b)))
            .misconception("carry-added-before-times", whole(carry_added_first(a, b)))
            .misconception("added-instead-of-multiplied", whole(a + b)),
    )
}

fn two_digit(m: &mut Make) -> Option<Draft> {
    let (a, b) = m.level.pick(
        (m.dice.from(11..=35), m.dice.from(11..=25)),
        (m.dice.from(21..=69), m.dice.from(21..=69)),
        (m.dice.from(56..=99), m.dice.from(56..=99)),
    );
    keep(a % 10 != 0 && b % 10 != 0 && a != b)?;
    Some(long_multiplication(a, b))
}

fn multiply_whole(m: &mut Make) -> Option<Draft> {
    let (a, b) = m.level.pick(
        (m.dice.from(112..=498), m.dice.from(12..=49)),
        (m.dice.from(203..=989), m.dice.from(23..=98)),
        if m.dice.one_in(2) {
            (m.dice.from(1_023..=9_876), m.dice.from(23..=98))
        } else {
            (m.dice.from(213..=987), m.dice.from(123..=987))
        },
    );
    keep(b % 10 != 0 && a % 10 != 0)?;
    Some(long_multiplication(a, b))
}

fn long_multiplication(a: i64, b: i64) -> Draft {
    let (left, right) = (digit_values(a), digit_values(b));
    let work = product([num(a), num(b)]);
    let cells = right
        .iter()
        .map(|_| left.iter().map(|_| None).collect())
        .collect::<Vec<_>>();
    let mut draft = Draft::new(json!({"task": "multiply", "numbers": [a, b]}))
        .ask(Say::new("common-work-out"))
        .ask(equal(work.clone(), Expr::Blank))
        .whole(a * b)
        .hint(
            Say::new("written-hint-split").math("work", equal(num(b), sum(right.iter().map(num)))),
        )
        .hint_with(
            Say::new("written-hint-area"),
            area_model(&right, &left, &cells),
        );
    for part in right.iter().rev() {
        draft = draft.step(equal(product([num(a), num(part)]), num(a * part)));
    }
    let not_shifted: i64 = digits(b).iter().map(|d| a * d).sum();
    let place_by_place = {
        (0..)
            .zip(digits(a).iter().zip(&digits(b)))
            .map(|(place, (x, y))| x * y * 100_i64.pow(place))
            .sum()
    };
    draft
        .step_with(
            Say::new("written-step-add"),
            equal(sum(right.iter().rev().map(|p| num(a * p))), num(a * b)),
        )
        .misconception("second-row-not-shifted", whole(not_shifted))
        .misconception("multiplied-place-by-place", whole(place_by_place))
        .misconception_unless_same("one-row-only", whole(a * (b % 10)))
}

/// Long division: at each place the multiple, and what is left when it is taken away. The
/// next digit joins what is left.
pub(in crate::strand) fn division_steps(total: i64, by: i64) -> Vec<Say> {
    let mut steps = Vec::new();
    let mut rest = 0;
    let mut started = false;
    for digit in digits(total).iter().rev() {
        rest = rest * 10 + digit;
        let q = rest / by;
        started = started || q > 0;
        if started {
            steps.push(
                Say::new("written-step-divide")
                    .count("rest", rest)
                    .count("by", by)
                    .count("quotient", q)
                    .math("times", equal(product([num(q), num(by)]), num(q * by)))
                    .math(
                        "left",
                        equal(difference(num(rest), num(q * by)), num(rest - q * by)),
                    ),
            );
        }
        rest %= by;
    }
    steps
}

fn divide_one_digit(m: &mut Make) -> Option<Draft> {
    let by = m.dice.from(m.level.pick(2..=6, 3..=9, 3..=9));
    let total = m.level.pick(
        m.dice.from(23..=99),
        m.dice.from(103..=999),
        m.dice.from(1_003..=9_999),
    );
    let (q, r) = (total / by, total % by);
    keep(q >= 3 && (r > 0 || m.level.pick(false, m.dice.one_in(4), m.dice.one_in(4))))?;
    let without_zero = from_digits(
        &digits(q)
            .into_iter()
            .filter(|d| *d != 0)
            .collect::<Vec<_>>(),
    );
    let has_zero = without_zero != q;
    keep(m.level.pick(true, true, has_zero || m.dice.one_in(3)))?;
    let mut draft = Draft::new(json!({"task": "divide_with_remainder", "total": total, "by": by}))
        .ask(m.say("ask"))
        .ask(equal(quotient(num(total), num(by)), Expr::Blank))
        .answer(Entry::QuotientRemainder, division(q, r))
        .hint(m.say("hint-left"))
        .hint(m.say("hint-smaller").count("by", by))
        .step(m.say("hint-left"));
    for step in division_steps(total, by) {
        draft = draft.step(step);
    }
    Some(
        draft
            .step(m.say("step-check").math(
                "work",
                equal(sum([product([num(q), num(by)]), num(r)]), num(total)),
            ))
            .misconception("remainder-too-large", division(q - 1, r + by))
            .misconception_if(r > 0, "remainder-left-out-of-answer", division(q, 0))
            .misconception_if(
                has_zero,
                "zero-in-quotient-left-out",
                division(without_zero, r),
            ),
    )
}

fn divide_two_digit(m: &mut Make) -> Option<Draft> {
    let by = m.dice.from(m.level.pick(11..=25, 12..=49, 21..=98));
    let q = m.dice.from(m.level.pick(4..=40, 12..=99, 21..=409));
    let total = by * q;
    keep((100..=9_999).contains(&total) && q != by && by % 10 != 0)?;
    let without_zero = from_digits(
        &digits(q)
            .into_iter()
            .filter(|d| *d != 0)
            .collect::<Vec<_>>(),
    );
    let mut draft = Draft::new(json!({"task": "divide", "total": total, "by": by}))
        .ask(Say::new("common-work-out"))
        .ask(equal(quotient(num(total), num(by)), Expr::Blank))
        .whole(q)
        .hint(m.say("hint-round").number("round", (by + 5) / 10 * 10))
        .hint(
            m.say("hint-tens")
                .math("ten", equal(product([num(by), num(10)]), num(by * 10))),
        )
        .step(m.say("step-left"));
    for step in division_steps(total, by) {
        draft = draft.step(step);
    }
    Some(
        draft
            .step(
                m.say("step-check")
                    .math("work", equal(product([num(q), num(by)]), num(total))),
            )
            .misconception_if(
                without_zero != q,
                "zero-in-quotient-left-out",
                whole(without_zero),
            )
            .misconception("quotient-one-short", whole(q - 1))
            .misconception("quotient-place-wrong", whole(q * 10)),
    )
}
