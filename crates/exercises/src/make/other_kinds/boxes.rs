//! Fill the boxes so that a sentence becomes true. Several fillings do so, and each is right.

use super::sentence::{as_text, fraction, number, text_of};
use crate::answer::{Answer, BoxNumbers, Entry};
use crate::block::Block;
use crate::dice::Dice;
use crate::expr::{
    Expr, Sign, absolute, difference, equal, frac, group, num, percent, product, quotient, ratio,
    relation, sum,
};
use crate::make::Draft;
use crate::mark::{filled, holds, known_value};
use crate::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// Most fillings with numbers of a range that are looked through.
const MOST_TRIED: i64 = 2_000;

/// A sentence with boxes.
struct Filling {
    /// What the sentence is about, if it is not only numbers.
    about: Option<Say>,
    sentence: Expr,
    numbers: BoxNumbers,
    /// Two fillings that are true.
    solutions: [Vec<String>; 2],
    /// A misconception's code, the sentence that it makes true, and an example.
    wrong: (&'static str, Expr, Vec<String>),
    hint: &'static str,
}

/// The same numbers with boxes to fill, if the draft's sentence allows it.
pub(super) fn fill_the_boxes(draft: &Draft, grade: u8, dice: &mut Dice) -> Option<Draft> {
    let found = match sentence_of(draft) {
        Some((left, sign, right)) => of_sentence(left, sign, right, grade, dice),
        None => None,
    };
    made(found.or_else(|| of_task(draft, dice))?)
}

/// The only relation in the prompt.
pub(super) fn sentence_of(draft: &Draft) -> Option<(&Expr, Sign, &Expr)> {
    let mut found = None;
    for block in &draft.prompt {
        match block {
            Block::Math {
                expr: Expr::Relation { left, sign, right },
            } if found.is_none() => found = Some((left.as_ref(), *sign, right.as_ref())),
            Block::Say { say } if say.id.starts_with("common-") => {}
            _ => return None,
        }
    }
    found
}

fn made(filling: Filling) -> Option<Draft> {
    let Filling {
        about,
        sentence,
        numbers,
        solutions: [one, other],
        wrong: (code, wrong_sentence, wrong_texts),
        hint,
    } = filling;
    let mut statement = json!({"task": "fill_boxes", "sentence": as_text(&sentence)?});
    let fields = statement.as_object_mut()?;
    let rule = match &numbers {
        BoxNumbers::Cards { cards } => {
            fields.insert("cards".into(), json!(cards));
            Say::new("boxes-cards").numbers("cards", cards)
        }
        BoxNumbers::Range { least, greatest } => {
            fields.insert("least".into(), json!(least));
            fields.insert("greatest".into(), json!(greatest));
            Say::new("boxes-range")
                .number("least", least)
                .number("greatest", greatest)
        }
    };
    let mut draft = Draft::new(statement);
    if let Some(about) = about {
        draft = draft.ask(about);
    }
    let boxes = u32::try_from(one.len()).ok()?;
    Some(
        draft
            .ask(Say::new("boxes-ask"))
            .ask(sentence.clone())
            .ask(rule)
            .hint(Say::new(hint))
            .hint(Say::new("boxes-hint-try"))
            .step_with(Say::new("boxes-step-one"), filled(&sentence, &one))
            .step_with(Say::new("boxes-step-other"), filled(&sentence, &other))
            .answer(
                Entry::Boxes { boxes, numbers },
                Answer::Boxes {
                    texts: one,
                    sentence,
                },
            )
            .misconception(
                code,
                Answer::Boxes {
                    texts: wrong_texts,
                    sentence: wrong_sentence,
                },
            ),
    )
}

/// The texts of some numbers.
fn texts(values: &[Ratio<i64>]) -> Option<Vec<String>> {
    values.iter().copied().map(text_of).collect()
}

/// A sentence whose boxes take cards: those of the solutions and of the wrong filling.
fn with_cards(
    sentence: Expr,
    solutions: [&[Ratio<i64>]; 2],
    wrong: (&'static str, Expr, &[Ratio<i64>]),
    hint: &'static str,
    dice: &mut Dice,
) -> Option<Filling> {
    let [one, other] = solutions;
    let mut cards: Vec<Ratio<i64>> = Vec::new();
    for value in one.iter().chain(other).chain(wrong.2) {
        if !cards.contains(value) {
            cards.push(*value);
        }
    }
    if cards.iter().any(|card| *card == Ratio::from(0)) {
        return None;
    }
    dice.shuffle(&mut cards);
    Some(Filling {
        about: None,
        sentence,
        numbers: BoxNumbers::Cards {
            cards: texts(&cards)?,
        },
        solutions: [texts(one)?, texts(other)?],
        wrong: (wrong.0, wrong.1, texts(wrong.2)?),
        hint,
    })
}

/// A sentence whose boxes take whole numbers of a range, if it has two solutions or more.
fn with_range(
    sentence: Expr,
    boxes: usize,
    (least, greatest): (i64, i64),
    wrong: (&'static str, Expr),
    hint: &'static str,
) -> Option<Filling> {
    let width = greatest - least + 1;
    let all = width.checked_pow(u32::try_from(boxes).ok()?)?;
    if !(1..=MOST_TRIED).contains(&all) {
        return None;
    }
    let (mut solutions, mut wrong_one) = (Vec::new(), None);
    let mut numbers = Vec::new();
    for nth in 0..all {
        numbers.clear();
        let mut rest = nth;
        for _ in 0..boxes {
            numbers.push(Ratio::from(least + rest % width));
            rest /= width;
        }
        if holds(&sentence, &numbers) {
            solutions.push(numbers.clone());
        } else if wrong_one.is_none() && holds(&wrong.1, &numbers) {
            wrong_one = Some(numbers.clone());
        }
    }
    // Not two that only change places.
    let one = solutions.first()?;
    let sorted = |numbers: &[Ratio<i64>]| {
        let mut numbers = numbers.to_vec();
        numbers.sort();
        numbers
    };
    let other = solutions
        .iter()
        .rev()
        .find(|other| sorted(other) != sorted(one))?;
    // Where half of all fillings are right, there is nothing to think about.
    if solutions.len() as i64 * 3 > all {
        return None;
    }
    Some(Filling {
        about: None,
        numbers: BoxNumbers::Range { least, greatest },
        solutions: [texts(one)?, texts(other)?],
        wrong: (wrong.0, wrong.1, texts(&wrong_one?)?),
        sentence,
        hint,
    })
}

fn of_sentence(
    left: &Expr,
    sign: Sign,
    right: &Expr,
    grade: u8,
    dice: &mut Dice,
) -> Option<Filling> {
    match (sign, right) {
        (Sign::Equal, Expr::Blank) => {
            let value = known_value(left)?;
            match left {
                Expr::Sum { terms } => match terms.as_slice() {
                    [a, b] => of_sum(a, b, value, dice),
                    _ => None,
                },
                Expr::Difference { left, right } => of_difference(left, right, value, dice),
                Expr::Product { factors, .. } => match factors.as_slice() {
                    [a, b] => of_product(a, b, value, dice),
                    _ => None,
                },
                Expr::Quotient { left, right } => {
                    of_quotient(number(left)?, number(right)?, value, dice)
                }
                _ => None,
            }
            .or_else(|| of_steps(left, value))
        }
        (Sign::Equal, Expr::Fraction { .. }) => of_equal_fractions(left, right, grade),
        // Grade 3 compares fractions of the same numerator or denominator only.
        (Sign::Blank, Expr::Fraction { .. }) if grade == 3 => None,
        (Sign::Blank, _) => of_comparison(left, right, dice),
        _ => None,
    }
}

fn boxed() -> Expr {
    Expr::Blank
}

/// The last place of two numbers, as a unit.
fn unit(a: Ratio<i64>, b: Ratio<i64>) -> Option<Ratio<i64>> {
    let places = |value| Some(crate::decimal::Dec::exact(value)?.places());
    Some(Ratio::new(
        1,
        10_i64.checked_pow(places(a)?.max(places(b)?))?,
    ))
}

fn of_sum(a: &Expr, b: &Expr, total: Ratio<i64>, dice: &mut Dice) -> Option<Filling> {
    if let (Some((a, c)), Some((b, d))) = (fraction(a), fraction(b)) {
        return of_fractions((a, c), (b, d), total, true);
    }
    let (a, b) = (number(a)?, number(b)?);
    let shift = unit(a, b)? * dice.from(2..=9);
    let (c, d) = (a + shift, b - shift);
    if d <= Ratio::from(0) || a <= Ratio::from(0) || [a, b].contains(&c) || c == d {
        return None;
    }
    with_cards(
        equal(sum([boxed(), boxed()]), num(text_of(total)?)),
        [&[a, b], &[c, d]],
        (
            "subtracted-instead",
            equal(difference(boxed(), boxed()), num(text_of(total)?)),
            &[total + b, b],
        ),
        "boxes-hint-last-digits",
        dice,
    )
}

fn of_difference(a: &Expr, b: &Expr, rest: Ratio<i64>, dice: &mut Dice) -> Option<Filling> {
    if let (Some((a, c)), Some((b, d))) = (fraction(a), fraction(b)) {
        return of_fractions((a, c), (b, d), rest, false);
    }
    let (a, b) = (number(a)?, number(b)?);
    let shift = unit(a, b)? * dice.from(2..=9);
    let (c, d) = (a + shift, b + shift);
    // Two that make the difference when they are added.
    let added = if rest > b {
        (b, rest - b)
    } else {
        let unit = unit(a, b)?;
        let part = (rest / unit / 3).floor() * unit;
        (part, rest - part)
    };
    if b <= Ratio::from(0) || added.0 <= Ratio::from(0) || c == b || d == a {
        return None;
    }
    with_cards(
        equal(difference(boxed(), boxed()), num(text_of(rest)?)),
        [&[a, b], &[c, d]],
        (
            "added-instead",
            equal(sum([boxed(), boxed()]), num(text_of(rest)?)),
            &[added.0, added.1],
        ),
        "boxes-hint-last-digits",
        dice,
    )
}

/// □/c + □/d or □/c − □/d.
fn of_fractions(
    (_, c): (i64, i64),
    (_, d): (i64, i64),
    value: Ratio<i64>,
    plus: bool,
) -> Option<Filling> {
    let bottom = num_integer::lcm(c, d);
    let top = (value * bottom).to_integer();
    let (one, two) = (frac(boxed(), num(c)), frac(boxed(), num(d)));
    let sentence = equal(
        if plus {
            sum([one, two])
        } else {
            difference(one, two)
        },
        frac(top, bottom),
    );
    let wrong = match (plus, c == d) {
        (true, true) => (
            "added-tops-and-bottoms",
            equal(frac(sum([boxed(), boxed()]), num(2 * c)), frac(top, bottom)),
        ),
        (true, false) => (
            "changed-bottoms-only",
            equal(sum([boxed(), boxed()]), num(top)),
        ),
        (false, true) => ("added-instead", equal(sum([boxed(), boxed()]), num(top))),
        (false, false) => (
            "changed-bottoms-only",
            equal(difference(boxed(), boxed()), num(top)),
        ),
    };
    let hint = if c == d {
        "boxes-hint-numerators"
    } else {
        "boxes-hint-same-parts"
    };
    with_range(sentence, 2, (1, 12.max(top.min(20))), wrong, hint)
}

fn of_product(a: &Expr, b: &Expr, value: Ratio<i64>, dice: &mut Dice) -> Option<Filling> {
    let fractions = (fraction(a), fraction(b));
    let wrong = "added-instead-of-multiplied";
    if let (Some((a, c)), Some((b, d))) = fractions {
        let top = a * b;
        return with_range(
            equal(
                product([frac(boxed(), num(c)), frac(boxed(), num(d))]),
                frac(top, c * d),
            ),
            2,
            (1, 12),
            (wrong, equal(sum([boxed(), boxed()]), num(top))),
            "boxes-hint-numerators",
        );
    }
    if let (Some(whole), Some((top, bottom))) =
        (number(a).or_else(|| number(b)), fractions.0.or(fractions.1))
    {
        let top = (whole * top).to_integer();
        return with_range(
            equal(
                product([boxed(), frac(boxed(), num(bottom))]),
                frac(top, bottom),
            ),
            2,
            (2, 12),
            (wrong, equal(sum([boxed(), boxed()]), num(top))),
            "boxes-hint-numerators",
        );
    }
    let (a, b) = (number(a)?, number(b)?);
    let (a, b) = if dice.one_in(2) { (a, b) } else { (b, a) };
    let parts: Vec<i64> = [2, 3, 4, 5]
        .into_iter()
        .filter(|part| a.is_integer() && a.to_integer() % part == 0 && a.to_integer() > *part)
        .collect();
    if parts.is_empty() {
        return None;
    }
    let part = dice.pick(&parts);
    let (c, d) = (a / part, b * part);
    if c == b || value <= a + 1 {
        return None;
    }
    with_cards(
        equal(product([boxed(), boxed()]), num(text_of(value)?)),
        [&[a, b], &[c, d]],
        (
            wrong,
            equal(sum([boxed(), boxed()]), num(text_of(value)?)),
            &[a, value - a],
        ),
        "boxes-hint-factor",
        dice,
    )
}

fn of_quotient(
    a: Ratio<i64>,
    b: Ratio<i64>,
    value: Ratio<i64>,
    dice: &mut Dice,
) -> Option<Filling> {
    let factor = dice.pick(&[2, 3]);
    let (c, d) = (a * factor, b * factor);
    if a == b || c == b || d == a || value == Ratio::from(1) {
        return None;
    }
    with_cards(
        equal(quotient(boxed(), boxed()), num(text_of(value)?)),
        [&[a, b], &[c, d]],
        (
            "subtracted-instead-of-divided",
            equal(difference(boxed(), boxed()), num(text_of(value)?)),
            &[value + b, b],
        ),
        "boxes-hint-quotient",
        dice,
    )
}

/// Two numbers of a longer expression become boxes: the first and the last.
fn of_steps(left: &Expr, value: Ratio<i64>) -> Option<Filling> {
    let text = num(text_of(value)?);
    let one_digit =
        |expr: &Expr| number(expr).filter(|n| n.is_integer() && (2..=12).contains(&n.to_integer()));
    // A sum or difference and a number times it; a product and a number added to it.
    let (sentence, wrong) = match left {
        Expr::Product { factors, .. } => match factors.as_slice() {
            [Expr::Group { inner }, times] | [times, Expr::Group { inner }] => {
                one_digit(times)?;
                let Expr::Sum { .. } = inner.as_ref() else {
                    return None;
                };
                (
                    product([group(sum([boxed(), boxed()])), times.clone()]),
                    sum([boxed(), product([boxed(), times.clone()])]),
                )
            }
            _ => return None,
        },
        Expr::Sum { terms } => match terms.as_slice() {
            [first, Expr::Product { factors, .. }] => {
                let [times, _] = factors.as_slice() else {
                    return None;
                };
                number(first)?;
                one_digit(times)?;
                (
                    sum([boxed(), product([times.clone(), boxed()])]),
                    product([group(sum([boxed(), times.clone()])), boxed()]),
                )
            }
            [Expr::Product { factors, .. }, last] => {
                let [times, _] = factors.as_slice() else {
                    return None;
                };
                number(last)?;
                one_digit(times)?;
                (
                    sum([product([times.clone(), boxed()]), boxed()]),
                    product([times.clone(), group(sum([boxed(), boxed()]))]),
                )
            }
            _ => return None,
        },
        _ => return None,
    };
    with_range(
        equal(sentence, text.clone()),
        2,
        (1, 20),
        ("steps-in-wrong-order", equal(wrong, text)),
        "boxes-hint-order",
    )
}

/// a/b = □/□, without a/b itself. Grade 3 has denominators up to 8.
fn of_equal_fractions(left: &Expr, right: &Expr, grade: u8) -> Option<Filling> {
    let known = fraction(left).or_else(|| fraction(right))?;
    let (a, b) = known;
    if a < 1 || a >= b {
        return None;
    }
    with_range(
        equal(frac(a, b), frac(boxed(), boxed())),
        2,
        (a + 1, if grade == 3 { 8 } else { (b * 4).min(a + 40) }),
        (
            "same-difference",
            equal(sum([boxed(), num(b - a)]), boxed()),
        ),
        "boxes-hint-equal-parts",
    )
}

fn of_comparison(left: &Expr, right: &Expr, dice: &mut Dice) -> Option<Filling> {
    if let (Some((_, b)), Some((c, d))) = (fraction(left), fraction(right)) {
        return with_range(
            relation(
                relation(frac(boxed(), num(b)), Sign::Less, frac(c, d)),
                Sign::Less,
                frac(boxed(), num(b)),
            ),
            2,
            (1, 12),
            (
                "compared-tops-only",
                relation(relation(boxed(), Sign::Less, num(c)), Sign::Less, boxed()),
            ),
            "boxes-hint-between",
        )
        .filter(|_| b != d);
    }
    let (a, b) = (number(left)?, number(right)?);
    let unit = unit(a, b)?;
    let zero = Ratio::from(0);
    let mut four = if a < zero || b < zero {
        let near = a + unit * dice.from(1..=3);
        vec![a, b, near, -near]
    } else {
        vec![
            a,
            b,
            a + unit * dice.from(1..=9),
            b + unit * 10 * dice.from(1..=9),
        ]
    };
    four.sort();
    four.dedup();
    let [p, q, r, s] = four.as_slice() else {
        return None;
    };
    let ordered = |sign| relation(relation(boxed(), sign, boxed()), sign, boxed());
    if *p < zero {
        let size = |value: Ratio<i64>| if value < zero { -value } else { value };
        let mut by_size = [*p, *q, *r, *s];
        by_size.sort_by_key(|value| size(*value));
        let mut three: Vec<Ratio<i64>> = Vec::new();
        for value in by_size {
            if three.last().is_none_or(|last| size(*last) < size(value)) {
                three.push(value);
            }
        }
        three.truncate(3);
        let wrong = relation(
            relation(absolute(boxed()), Sign::Less, absolute(boxed())),
            Sign::Less,
            absolute(boxed()),
        );
        if three.is_sorted() || three.len() < 3 {
            return None;
        }
        return with_cards(
            ordered(Sign::Less),
            [&[*p, *q, *r], &[*p, *r, *s]],
            ("compared-sizes-without-signs", wrong, &three),
            "boxes-hint-from-left",
            dice,
        );
    }
    with_cards(
        ordered(Sign::Less),
        [&[*p, *q, *r], &[*p, *r, *s]],
        (
            "ordered-from-greatest",
            ordered(Sign::Greater),
            &[*s, *q, *p],
        ),
        "boxes-hint-order-least",
        dice,
    )
}

/// Sentences of tasks that show no sentence: sides, edges, ratios, places, means.
fn of_task(draft: &Draft, dice: &mut Dice) -> Option<Filling> {
    let field = |name: &str| draft.statement.get(name);
    let whole = |name: &str| field(name).and_then(serde_json::Value::as_i64);
    let list = |name: &str| -> Option<Vec<i64>> {
        field(name)?
            .as_array()?
            .iter()
            .map(serde_json::Value::as_i64)
            .collect()
    };
    let about = |filling: Filling, about: Say| Filling {
        about: Some(about),
        ..filling
    };
    match field("task")?.as_str()? {
        "rectangle_area" | "side_from_area" | "rectangle_of_area" => {
            let area = whole("area").or_else(|| Some(whole("width")? * whole("height")?))?;
            let filling = with_range(
                equal(product([boxed(), boxed()]), num(area)),
                2,
                (2, 20.max(area / 2).min(40)),
                (
                    "perimeter-for-area",
                    equal(product([num(2), group(sum([boxed(), boxed()]))]), num(area)),
                ),
                "boxes-hint-factor",
            )?;
            Some(about(filling, Say::new("boxes-area").count("area", area)))
        }
        "rectangle_perimeter" | "side_from_perimeter" => {
            let perimeter =
                whole("perimeter").or_else(|| Some(2 * (whole("width")? + whole("height")?)))?;
            let filling = with_range(
                equal(
                    product([num(2), group(sum([boxed(), boxed()]))]),
                    num(perimeter),
                ),
                2,
                (1, (perimeter / 2).min(40)),
                (
                    "two-sides-only",
                    equal(sum([boxed(), boxed()]), num(perimeter)),
                ),
                "boxes-hint-half-way",
            )?;
            Some(about(
                filling,
                Say::new("boxes-perimeter").count("perimeter", perimeter),
            ))
        }
        "box_volume" | "edge_from_volume" => {
            let volume = whole("volume").or_else(|| Some(list("edges")?.iter().product()))?;
            let filling = with_range(
                equal(product([boxed(), boxed(), boxed()]), num(volume)),
                3,
                (2, 12),
                (
                    "added-sides",
                    equal(sum([boxed(), boxed(), boxed()]), num(volume)),
                ),
                "boxes-hint-factor",
            )?;
            Some(about(
                filling,
                Say::new("boxes-volume").count("volume", volume),
            ))
        }
        "equal_ratio" => {
            let two = list("ratio")?;
            let [a, b] = two.as_slice() else {
                return None;
            };
            let gap = if a < b {
                equal(sum([boxed(), num(b - a)]), boxed())
            } else {
                equal(difference(boxed(), num(a - b)), boxed())
            };
            with_range(
                equal(ratio(boxed(), boxed()), ratio(num(a), num(b))),
                2,
                (a.max(b) + 1, (a.max(b) * 4).min(a.max(b) + 43)),
                ("same-difference-in-ratio", gap),
                "boxes-hint-ratio",
            )
        }
        "mean" => {
            let data = list("data")?;
            let [first, second, ..] = data.as_slice() else {
                return None;
            };
            let mean = Ratio::new(data.iter().sum::<i64>(), data.len() as i64);
            let mean = mean.is_integer().then(|| mean.to_integer())?;
            let of = |sum| equal(quotient(group(sum), num(4)), num(mean));
            let filling = with_range(
                of(sum([num(first), num(second), boxed(), boxed()])),
                2,
                (1, (mean * 2).clamp(4, 40)),
                (
                    "two-given-left-out",
                    equal(quotient(group(sum([boxed(), boxed()])), num(2)), num(mean)),
                ),
                "boxes-hint-mean",
            )?;
            Some(about(filling, Say::new("boxes-mean").number("mean", mean)))
        }
        "percent_of" => {
            let (p, amount) = (whole("percent")?, whole("amount")?);
            let (p, amount) = (Ratio::from(p), Ratio::from(amount));
            let value = p * amount / 100;
            let (q, other) = (p * 2, amount / 2);
            if q > Ratio::from(100) || other == p || q == amount || value == p {
                return None;
            }
            let filling = with_cards(
                equal(product([frac(boxed(), 100), boxed()]), num(text_of(value)?)),
                [&[p, amount], &[q, other]],
                (
                    "percent-taken-away",
                    equal(difference(boxed(), boxed()), num(text_of(value)?)),
                    &[value + p, p],
                ),
                "boxes-hint-percent",
                dice,
            )?;
            Some(about(
                filling,
                Say::new("boxes-percent")
                    .math("one", percent(num(1)))
                    .math("part", frac(1, 100))
                    .number("value", text_of(value)?),
            ))
        }
        "from_parts" | "name_of_number" | "from_words" => {
            let tens = dice.from(11..=98);
            let number = tens * 10;
            with_range(
                equal(
                    sum([product([boxed(), num(100)]), product([boxed(), num(10)])]),
                    num(number),
                ),
                2,
                (1, 40),
                (
                    "places-exchanged",
                    equal(
                        sum([product([boxed(), num(10)]), product([boxed(), num(100)])]),
                        num(number),
                    ),
                ),
                "boxes-hint-places",
            )
        }
        _ => None,
    }
}
