//! Two ways to work something out: which of them lead to the right answer?

use super::parts::two_parts;
use super::sentence::as_text;
use crate::answer::{Answer, Choice, Entry};
use crate::dice::Dice;
use crate::expr::{Expr, difference, equal, group, num, product, quotient, sum};
use crate::make::{Draft, choice, keep};
use crate::mark::known_value;
use crate::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// Two children's ways; the second part is the answer.
pub(super) fn compare_two_ways(draft: &Draft, dice: &mut Dice) -> Option<Draft> {
    let (entry, key) = draft.answer.as_ref()?;
    let value = match (entry, key) {
        (Entry::WholeNumber { unit: None, .. }, Answer::WholeNumber { value }) => {
            Ratio::from(*value)
        }
        _ => return None,
    };
    let (work, mut right, mut wrong) = ways_of(draft)?;
    if known_value(&work)? != value || right.iter().any(|way| known_value(way) != Some(value)) {
        return None;
    }
    wrong.retain(|way| known_value(way).is_some_and(|other| other != value));
    dice.shuffle(&mut right);
    dice.shuffle(&mut wrong);
    // Only the first is right, only the second, both, or neither.
    let at = dice.from(0..=3);
    let mut take = |good: bool| if good { right.pop() } else { wrong.pop() };
    let one = take(matches!(at, 0 | 2))?;
    let two = take(matches!(at, 1 | 2))?;
    let (first, second) = dice.two_names();
    let says = |id: &'static str| Choice {
        shows: Say::new(id)
            .text("first", first)
            .text("second", second)
            .into(),
    };
    let choices = vec![
        says("ways-first"),
        says("ways-second"),
        says("ways-both"),
        says("ways-neither"),
    ];
    let wrong_choices = (0..4)
        .filter(|place| i64::from(*place) != at)
        .map(|place| ("way-not-checked", choice(place)))
        .collect();
    let wrong_answers = draft.misconceptions.clone();
    let statement = json!({
        "task": "two_ways", "inner": draft.statement, "work": as_text(&work)?, "names": [first, second],
        "ways": [as_text(&one)?, as_text(&two)?],
    });
    let mut new = Draft::new(statement.clone())
        .ask(
            Say::new("ways-ask")
                .text("first", first)
                .text("second", second)
                .math("work", work.clone()),
        )
        .ask(
            Say::new("ways-says")
                .text("name", first)
                .math("way", one.clone()),
        )
        .ask(
            Say::new("ways-says")
                .text("name", second)
                .math("way", two.clone()),
        )
        .hint(Say::new("ways-hint-picture"))
        .hint(Say::new("ways-hint-small"));
    for (name, way) in [(first, &one), (second, &two)] {
        let result = known_value(way)?;
        let step = Say::new("ways-step").text("name", name);
        new = match super::sentence::text_of(result) {
            Some(text) => new.step_with(step, equal(way.clone(), num(text))),
            None => return None,
        };
    }
    new.steps.extend(draft.steps.clone());
    Some(two_parts(
        new,
        statement,
        (
            Entry::OneChoice { choices },
            choice(at as u32),
            wrong_choices,
        ),
        Say::new("ways-compute").math("work", work),
        (entry.clone(), key.clone(), wrong_answers),
    ))
}

/// What is worked out, ways that are right, and ways that are not.
fn ways_of(draft: &Draft) -> Option<(Expr, Vec<Expr>, Vec<Expr>)> {
    let field = |name: &str| draft.statement.get(name);
    let whole = |name: &str| field(name).and_then(serde_json::Value::as_i64);
    let pair = || -> Option<(i64, i64)> {
        let numbers = field("numbers")?.as_array()?;
        match numbers.as_slice() {
            [a, b] => Some((a.as_i64()?, b.as_i64()?)),
            _ => None,
        }
    };
    let inside = |left: Expr, right: Expr| group(sum([left, right]));
    match field("task")?.as_str()? {
        "add" => {
            let (a, b) = pair()?;
            let up = 10 - b % 10;
            keep(up < 10 && a > 20 && b > 20 && up < a)?;
            Some((
                sum([num(a), num(b)]),
                vec![
                    difference(sum([num(a), num(b + up)]), num(up)),
                    sum([num(a - up), num(b + up)]),
                ],
                vec![
                    sum([num(a), num(b + up), num(up)]),
                    sum([num(a + up), num(b + up)]),
                ],
            ))
        }
        "subtract" => {
            let (a, b) = (whole("from")?, whole("take")?);
            let up = 10 - b % 10;
            keep(up < 10 && b > 20 && a > b + 2 * up)?;
            Some((
                difference(num(a), num(b)),
                vec![
                    sum([difference(num(a), num(b + up)), num(up)]),
                    difference(num(a + up), num(b + up)),
                ],
                vec![
                    difference(difference(num(a), num(b + up)), num(up)),
                    difference(num(a - up), num(b + up)),
                ],
            ))
        }
        "multiply" => {
            let (a, b) = pair()?;
            let (a, b) = if a > b { (a, b) } else { (b, a) };
            keep(a > 5 && b > 1 && a % 10 > 0)?;
            let (one, two) = if a > 10 {
                (a / 10 * 10, a % 10)
            } else {
                (5, a - 5)
            };
            keep(two > 0)?;
            let up = 10 - a % 10;
            let mut right = vec![sum([
                product([num(one), num(b)]),
                product([num(two), num(b)]),
            ])];
            let mut wrong = vec![
                sum([product([num(one), num(b)]), num(two)]),
                product([num(a + up), num(b - 1)]),
            ];
            if up <= 3 {
                right.push(difference(
                    product([num(a + up), num(b)]),
                    product([num(up), num(b)]),
                ));
                wrong.push(difference(product([num(a + up), num(b)]), num(up)));
            } else if a % 2 == 0 {
                right.push(product([num(a / 2), num(b * 2)]));
            } else if b % 2 == 0 {
                right.push(product([num(a * 2), num(b / 2)]));
            } else {
                right.push(product([inside(num(one), num(two)), num(b)]));
            }
            Some((product([num(a), num(b)]), right, wrong))
        }
        "divide" => {
            let (total, by) = (whole("total")?, whole("by")?);
            keep(by > 1 && total % by == 0 && total / by > 5)?;
            let most = total / by;
            let tens = if most > 10 { most / 10 * 10 } else { 5 } * by;
            keep(total > tens)?;
            Some((
                quotient(num(total), num(by)),
                vec![
                    sum([
                        quotient(num(tens), num(by)),
                        quotient(num(total - tens), num(by)),
                    ]),
                    quotient(num(total * 2), num(by * 2)),
                ],
                vec![
                    quotient(num(total * 2), num(by)),
                    sum([quotient(num(tens), num(by)), num(total - tens)]),
                ],
            ))
        }
        _ => None,
    }
}
