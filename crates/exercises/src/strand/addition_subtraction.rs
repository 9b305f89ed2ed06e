//! Adding and subtracting whole numbers.

use crate::expr::{Expr, difference, equal, num, sum};
use crate::figure::{ColumnSign, ColumnWork, Drawing};
use crate::make::{Draft, Generator, Make, digits, figure, from_digits, keep, whole};
use crate::say::Say;
use serde_json::json;

/// The generators of the strand.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g3-add-within-1000", 3, g3_add),
    Generator::new("g3-subtract-within-1000", 3, g3_subtract),
    Generator::new("g4-add-large", 3, g4_add),
    Generator::new("g4-subtract-large", 3, g4_subtract),
];

const PLACES: [&str; 7] = [
    "place-ones",
    "place-tens",
    "place-hundreds",
    "place-thousands",
    "place-ten-thousands",
    "place-hundred-thousands",
    "place-millions",
];

fn g3_add(m: &mut Make) -> Option<Draft> {
    let (low, high) = m.level.pick((24, 499), (125, 799), (125, 799));
    let (a, b) = (m.dice.from(low..=high), m.dice.from(low..=high));
    let carries = m.level.pick(1..=1, 2..=3, 1..=3);
    keep(a + b <= 1000 && a != b && carries.contains(&carry_count(a, b)))?;
    if m.level == crate::Level::Stretch {
        // The missing part of a sum: found by subtracting.
        let total = a + b;
        return Some(
            Draft::new(json!({"task": "missing_addend", "part": a, "total": total}))
                .ask(Say::new("common-box"))
                .ask(equal(sum([num(a), Expr::Blank]), num(total)))
                .whole(b)
                .hint(m.say("hint-part").number("total", total))
                .hint_with(
                    m.say("hint-take").number("part", a),
                    column(ColumnSign::Minus, total, a),
                )
                .step(m.say("hint-part").number("total", total))
                .step(equal(difference(num(total), num(a)), num(b)))
                .step(
                    m.say("check")
                        .math("work", equal(sum([num(a), num(b)]), num(total))),
                )
                .misconception("added-all-numbers", whole(total + a))
                .misconception(
                    "smaller-from-larger",
                    whole(columnwise(total, a, |x, y| (x - y).abs())),
                ),
        );
    }
    Some(add_draft(a, b))
}

fn g4_add(m: &mut Make) -> Option<Draft> {
    let (low, high) = m
        .level
        .pick((1_200, 8_999), (12_500, 89_999), (125_000, 899_999));
    let a = m.dice.from(low..=high);
    let b = m
        .dice
        .from(low / m.level.pick(1, 1, 10)..=high / m.level.pick(1, 1, 10));
    let carries = m.level.pick(1..=2, 2..=4, 3..=6);
    keep(a + b <= 1_000_000 && carries.contains(&carry_count(a, b)))?;
    Some(add_draft(a, b))
}

fn add_draft(a: i64, b: i64) -> Draft {
    let mut draft = Draft::new(json!({"task": "add", "numbers": [a, b]}))
        .ask(Say::new("common-work-out"))
        .ask(equal(sum([num(a), num(b)]), Expr::Blank))
        .whole(a + b)
        .hint(Say::new("column-add-start"))
        .hint_with(Say::new("column-line-up"), column(ColumnSign::Plus, a, b));
    let (da, db) = (digits(a), digits(b));
    let mut carry = 0;
    let places = PLACES.iter().enumerate().take(da.len().max(db.len()));
    for (place, place_name) in places {
        let (x, y) = (digit(&da, place), digit(&db, place));
        let total = x + y + carry;
        let mut parts = vec![num(x), num(y)];
        if carry > 0 {
            parts.push(num(carry));
        }
        let work = equal(sum(parts), num(total));
        let say = if total >= 10 {
            Say::new("column-add-carry").count("digit", total % 10)
        } else {
            Say::new("column-add").count("digit", total)
        };
        draft = draft.step(say.word("place", *place_name).math("work", work));
        carry = total / 10;
    }
    draft
        .step(equal(sum([num(a), num(b)]), num(a + b)))
        .misconception("carry-forgotten", whole(write_without_carry(a, b)))
        .misconception("carry-written-in-place", whole(write_both_digits(a, b)))
        .misconception("subtracted-instead", whole((a - b).abs()))
}

fn g3_subtract(m: &mut Make) -> Option<Draft> {
    let (a, b) = m.level.pick(
        (m.dice.from(60..=499), m.dice.from(15..=299)),
        (m.dice.from(210..=999), m.dice.from(115..=899)),
        // Across zeros.
        (
            m.dice.step(200..=900, 100) + m.dice.from(0..=9),
            m.dice.from(115..=899),
        ),
    );
    let borrows = m.level.pick(1..=1, 2..=2, 2..=3);
    keep(a - b >= 12 && borrows.contains(&borrow_count(a, b)))?;
    Some(subtract_draft(a, b))
}

fn g4_subtract(m: &mut Make) -> Option<Draft> {
    let (a, b) = m.level.pick(
        (m.dice.from(2_000..=9_999), m.dice.from(1_000..=8_999)),
        (m.dice.from(20_000..=99_999), m.dice.from(2_500..=89_999)),
        (
            m.dice.step(10_000..=900_000, 10_000) + m.dice.from(0..=9),
            m.dice.from(2_500..=89_999),
        ),
    );
    let borrows = m.level.pick(1..=2, 2..=3, 3..=5);
    keep(a - b >= 100 && borrows.contains(&borrow_count(a, b)))?;
    Some(subtract_draft(a, b))
}

fn subtract_draft(a: i64, b: i64) -> Draft {
    let mut draft = Draft::new(json!({"task": "subtract", "from": a, "take": b}))
        .ask(Say::new("common-work-out"))
        .ask(equal(difference(num(a), num(b)), Expr::Blank))
        .whole(a - b)
        .hint(Say::new("column-subtract-start"))
        .hint_with(Say::new("column-line-up"), column(ColumnSign::Minus, a, b));
    let (da, db) = (digits(a), digits(b));
    let mut borrowed = 0;
    for (place, place_name) in PLACES.iter().enumerate().take(da.len()) {
        let (x, y) = (digit(&da, place) - borrowed, digit(&db, place));
        let short = x < y;
        let top = if short { x + 10 } else { x };
        let result = top - y;
        let id = match (borrowed, short) {
            (0, false) => "column-subtract",
            (0, true) => "column-subtract-trade",
            (_, false) => "column-subtract-lent",
            (_, true) => "column-subtract-lent-trade",
        };
        draft = draft.step(
            Say::new(id)
                .word("place", *place_name)
                .count("left", top)
                .math("work", equal(difference(num(top), num(y)), num(result))),
        );
        borrowed = i64::from(short);
    }
    draft
        .step(equal(difference(num(a), num(b)), num(a - b)))
        .misconception(
            "smaller-from-larger",
            whole(columnwise(a, b, |x, y| (x - y).abs())),
        )
        .misconception("trade-not-taken-away", whole(trade_not_taken(a, b)))
        .misconception("added-instead", whole(a + b))
}

fn digit(digits: &[i64], place: usize) -> i64 {
    digits.get(place).copied().unwrap_or(0)
}

fn columnwise(a: i64, b: i64, work: impl Fn(i64, i64) -> i64) -> i64 {
    let (da, db) = (digits(a), digits(b));
    let results: Vec<i64> = (0..da.len().max(db.len()))
        .map(|place| work(digit(&da, place), digit(&db, place)))
        .collect();
    from_digits(&results)
}

fn carry_count(a: i64, b: i64) -> i64 {
    let (da, db) = (digits(a), digits(b));
    let mut carry = 0;
    let mut count = 0;
    for place in 0..da.len().max(db.len()) {
        carry = i64::from(digit(&da, place) + digit(&db, place) + carry >= 10);
        count += carry;
    }
    count
}

fn borrow_count(a: i64, b: i64) -> i64 {
    let (da, db) = (digits(a), digits(b));
    let mut borrowed = 0;
    let mut count = 0;
    for place in 0..da.len() {
        borrowed = i64::from(digit(&da, place) - borrowed < digit(&db, place));
        count += borrowed;
    }
    count
}

/// 58 + 67 as 115: nothing is carried, and the last column is written whole.
fn write_without_carry(a: i64, b: i64) -> i64 {
    let (da, db) = (digits(a), digits(b));
    (0..da.len().max(db.len())).rev().fold(0, |written, place| {
        let total = digit(&da, place) + digit(&db, place);
        written * 10 + if written == 0 { total } else { total % 10 }
    })
}

/// 58 + 67 as 1115: both digits of each column's sum are written.
fn write_both_digits(a: i64, b: i64) -> i64 {
    let (da, db) = (digits(a), digits(b));
    (0..da.len().max(db.len())).rev().fold(0, |written, place| {
        let total = digit(&da, place) + digit(&db, place);
        written * if total >= 10 { 100 } else { 10 } + total
    })
}

/// Ten is added to a column, but the next column is not reduced.
fn trade_not_taken(a: i64, b: i64) -> i64 {
    columnwise(a, b, |x, y| if x < y { x + 10 - y } else { x - y })
}

fn column(sign: ColumnSign, a: i64, b: i64) -> crate::Figure {
    let alt = match sign {
        ColumnSign::Plus => "figure-column-plus",
        ColumnSign::Minus => "figure-column-minus",
        ColumnSign::Times => "figure-column-times",
    };
    figure(
        Drawing::ColumnWork(ColumnWork {
            sign,
            numbers: vec![a.to_string(), b.to_string()],
            carries: Vec::new(),
            result: None,
        }),
        Say::new(alt).number("top", a).number("bottom", b),
    )
}
