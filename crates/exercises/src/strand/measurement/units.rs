//! Changing units, and stories with measures and money.

use crate::answer::Entry;
use crate::decimal::Dec;
use crate::draw::{coins, ratio_row, ratio_table};
use crate::expr::{Expr, difference, equal, measure, num, product, quotient, sum};
use crate::make::{Draft, Generator, Make, decimal, keep, money, whole};
use crate::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g4-units-convert", 4, convert_down),
    Generator::new("g4-measure-stories", 3, stories),
    Generator::new("g4-money-stories", 3, money_stories),
    Generator::new("g5-units-convert", 3, convert_both),
];

/// (larger unit, smaller unit, how many of the smaller in the larger).
const PAIRS: [(&str, &str, i64); 12] = [
    ("unit-m", "unit-cm", 100),
    ("unit-kg", "unit-g", 1000),
    ("unit-l", "unit-ml", 1000),
    ("unit-km", "unit-m", 1000),
    ("unit-ft", "unit-in", 12),
    ("unit-yd", "unit-ft", 3),
    ("unit-lb", "unit-oz", 16),
    ("unit-h", "unit-min", 60),
    ("unit-min", "unit-s", 60),
    ("unit-weeks", "unit-days", 7),
    ("unit-gal", "unit-qt", 4),
    ("unit-cm", "unit-mm", 10),
];

/// The unit's name in a statement, without numbers.
pub(super) fn name(unit: &str) -> &str {
    unit.strip_prefix("unit-").unwrap_or(unit)
}

fn convert_down(m: &mut Make) -> Option<Draft> {
    let (large, small, factor) = m
        .dice
        .pick(m.level.pick(&PAIRS[..8], &PAIRS[..11], &PAIRS[..12]));
    let n = m.dice.from(m.level.pick(2..=10, 2..=12, 3..=15));
    let extra = m.level.pick(0, 0, m.dice.from(1..=factor - 1));
    let total = n * factor + extra;
    let wrong_factor = match factor {
        1000 => 100,
        100 => 10,
        10 => 100,
        12 => 10,
        16 => 10,
        60 => 100,
        7 => 10,
        3 => 12,
        _ => 8,
    };
    let left = if extra == 0 {
        measure(num(n), large)
    } else {
        sum([measure(num(n), large), measure(num(extra), small)])
    };
    let statement = if extra == 0 {
        json!({"task": "convert", "amount": n, "from": name(large), "to": name(small)})
    } else {
        json!({"task": "convert_and_add", "amount": n, "from": name(large), "to": name(small), "more": extra})
    };
    // The pair for 2 is shown unless it is asked for.
    let two = (n != 2).then_some(2);
    let figure = ratio_table(
        vec![
            ratio_row(
                large,
                [Some(1), two, Some(n)]
                    .into_iter()
                    .flatten()
                    .map(num)
                    .collect(),
            ),
            ratio_row(
                small,
                [
                    Some(num(factor)),
                    two.map(|n| num(n * factor)),
                    Some(Expr::Blank),
                ]
                .into_iter()
                .flatten()
                .collect(),
            ),
        ],
        m.say(if n == 2 { "table-short" } else { "table" })
            .math("one", measure(num(1), large))
            .math("small", measure(num(factor), small))
            .math("two", measure(num(2), large))
            .math("double", measure(num(2 * factor), small))
            .math("asked", measure(num(n), large)),
    );
    Some(
        Draft::new(statement)
            .ask(Say::new("common-box"))
            .ask(equal(left, measure(Expr::Blank, small)))
            .whole_unit(total, small)
            .hint(m.say("hint-one").math(
                "one",
                equal(measure(num(1), large), measure(num(factor), small)),
            ))
            .hint(figure)
            .step(m.say("hint-one").math(
                "one",
                equal(measure(num(1), large), measure(num(factor), small)),
            ))
            .step(equal(product([num(n), num(factor)]), num(n * factor)))
            .step(if extra == 0 {
                equal(measure(num(n), large), measure(num(total), small))
            } else {
                equal(sum([num(n * factor), num(extra)]), num(total))
            })
            .misconception("wrong-unit-factor", whole(n * wrong_factor + extra))
            .misconception_if(extra == 0, "added-instead-of-multiplied", whole(n + factor))
            .misconception_if(extra > 0, "part-in-small-unit-left-out", whole(n * factor)),
    )
}

fn convert_both(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(3) {
        return super::steps::convert_stories(m);
    }
    let metric = m.level.pick(m.dice.one_in(2), true, m.dice.one_in(2));
    let (large, small, factor) = if metric {
        m.dice.pick(&[
            ("unit-m", "unit-cm", 100),
            ("unit-kg", "unit-g", 1000),
            ("unit-l", "unit-ml", 1000),
            ("unit-km", "unit-m", 1000),
            ("unit-cm", "unit-mm", 10),
        ])
    } else {
        m.dice.pick(&PAIRS[4..11])
    };
    let up = m.level.pick(true, m.dice.one_in(2), true);
    if metric {
        let places = match factor {
            10 => 1,
            100 => 2,
            _ => m.level.pick(1, 2, 3),
        };
        let big = Dec::new(m.dice.from(11..=m.level.pick(99, 499, 4999)), places);
        keep(big.units() % 10 != 0 && m.level.pick(true, true, true))?;
        let little = Dec::exact(big.ratio() * factor)?;
        keep(little.places() == 0)?;
        let (from, to, fu, tu) = if up {
            (little, big, small, large)
        } else {
            (big, little, large, small)
        };
        let wrong = Dec::exact(if up {
            from.ratio() * factor
        } else {
            from.ratio() / factor
        })?;
        let off = Dec::exact(if up { to.ratio() * 10 } else { to.ratio() / 10 })?;
        return Some(
            Draft::new(json!({"task": "convert", "amount": from.to_string(), "from": name(fu), "to": name(tu)}))
                .ask(Say::new("common-box"))
                .ask(equal(measure(num(from), fu), measure(Expr::Blank, tu)))
                .decimal_unit(to, tu)
                .hint(m.say("hint-one").math("one", equal(measure(num(1), large), measure(num(factor), small))))
                .hint(m.say(if up { "hint-divide" } else { "hint-multiply" }))
                .step(m.say(if up { "hint-divide" } else { "hint-multiply" }))
                .step(if up { equal(quotient(num(from), num(factor)), num(to)) } else { equal(product([num(from), num(factor)]), num(to)) })
                .misconception("converted-the-wrong-way", decimal(wrong))
                .misconception("place-gap-off-by-one", decimal(off)),
        );
    }
    // Customary: an amount of the small unit in the large one, with a fraction.
    let little = m.dice.from(factor + 1..=factor * m.level.pick(6, 9, 12));
    let value = Ratio::new(little, factor);
    keep(m.level.pick(value.is_integer(), true, !value.is_integer()))?;
    Some(
        Draft::new(
            json!({"task": "convert", "amount": little, "from": name(small), "to": name(large)}),
        )
        .ask(Say::new("common-box"))
        .ask(equal(
            measure(num(little), small),
            measure(Expr::Blank, large),
        ))
        .mixed_unit(value, large)
        .hint(m.say("hint-one").math(
            "one",
            equal(measure(num(1), large), measure(num(factor), small)),
        ))
        .hint(m.say("hint-divide"))
        .step(m.say("hint-divide"))
        .step(equal(
            quotient(num(little), num(factor)),
            crate::expr::rational(value, true),
        ))
        .misconception(
            "converted-the-wrong-way",
            crate::make::mixed(Ratio::from(little * factor)),
        )
        .misconception(
            "subtracted-instead-of-divided",
            crate::make::mixed(Ratio::from(little - factor)),
        ),
    )
}

fn stories(m: &mut Make) -> Option<Draft> {
    // 1: m less cm; 2: kg in g shared; 3: hours and minutes; 4: L and mL cups.
    let story = m.dice.from(1..=4);
    let n = m.dice.from(m.level.pick(2..=4, 2..=8, 3..=12));
    let (large, small, factor) = *[
        ("unit-m", "unit-cm", 100),
        ("unit-kg", "unit-g", 1000),
        ("unit-h", "unit-min", 60),
        ("unit-l", "unit-ml", 1000),
    ]
    .get((story - 1) as usize)?;
    let person = m.dice.name();
    let ask = m
        .say(&format!("ask-{story}"))
        .text("name", person)
        .count("n", n);
    let one = equal(measure(num(1), large), measure(num(factor), small));
    let total = n * factor;
    let draft = match story {
        1 | 3 => {
            let b = m.dice.from(m.level.pick(5..=50, 15..=95, 25..=99));
            keep(story == 1 || b < 60)?;
            Draft::new(json!({"task": if story == 1 { "convert_then_subtract" } else { "convert_and_add" }, "amount": n, "from": name(large), "to": name(small), "more": b}))
                .ask(ask.count("b", b))
                .whole_unit(if story == 1 { total - b } else { total + b }, small)
                .step(equal(product([num(n), num(factor)]), num(total)))
                .step(if story == 1 { equal(difference(num(total), num(b)), num(total - b)) } else { equal(sum([num(total), num(b)]), num(total + b)) })
                .misconception("units-not-changed", whole(if story == 1 { (n - b).abs() } else { n + b }))
                .misconception("second-step-turned-round", whole(if story == 1 { total + b } else { total - b }))
        }
        _ => {
            let k = m.dice.pick(&[2, 4, 5, 8, 10]);
            keep(total % k == 0 && k != n)?;
            Draft::new(json!({"task": "convert_then_share", "amount": n, "from": name(large), "to": name(small), "shares": k}))
                .ask(ask.count("k", k))
                .whole_unit(total / k, small)
                .step(equal(product([num(n), num(factor)]), num(total)))
                .step(equal(quotient(num(total), num(k)), num(total / k)))
                .misconception("stopped-after-one-step", whole(total))
                .misconception("wrong-unit-factor", whole(n * if factor == 1000 { 100 } else { 1000 } / k))
        }
    };
    Some(
        draft
            .hint(m.say(if matches!(story, 1 | 3) {
                "hint-same"
            } else {
                "hint-small"
            }))
            .hint(m.say("hint-one").math("one", one)),
    )
}

fn money_stories(m: &mut Make) -> Option<Draft> {
    let price = |m: &mut Make| {
        m.dice.from(m.level.pick(205..=895, 325..=1595, 445..=1995)) / m.level.pick(5, 1, 1)
            * m.level.pick(5, 1, 1)
    };
    let (a, b) = (price(m), price(m));
    let cash = |h: i64| Expr::Money { hundredths: h };
    let text = |h: i64| Dec::new(h, 2).to_string();
    let name = m.dice.name();
    let kind = m.dice.from(m.level.pick(1..=2, 1..=3, 2..=3));
    keep(a != b && (a % 100 != 0) && (b % 100 != 0))?;
    // The estimate of the hint is not the answer.
    keep((a + 50) / 100 * 100 + (b + 50) / 100 * 100 != a + b)?;
    Some(match kind {
        1 => Draft::new(json!({"task": "add", "numbers": [text(a), text(b)]}))
            .ask(
                m.say("ask-total")
                    .text("name", name)
                    .math("a", cash(a))
                    .math("b", cash(b)),
            )
            .answer(Entry::Money, money(a + b))
            .hint(m.say("hint-line-up"))
            .hint(
                m.say("hint-estimate")
                    .math("about", cash((a + 50) / 100 * 100 + (b + 50) / 100 * 100)),
            )
            .step(m.say("hint-line-up"))
            .step(equal(sum([cash(a), cash(b)]), cash(a + b)))
            .misconception("subtracted-instead", money((a - b).abs()))
            .misconception(
                "cents-not-carried-to-dollars",
                money(
                    a / 100 * 100 + b / 100 * 100 + (a + b) % 100
                        - if (a % 100 + b % 100) >= 100 { 0 } else { 100 },
                )
                .clone(),
            ),
        2 => {
            let paid = [500, 1000, 2000, 5000].into_iter().find(|p| *p > a)?;
            let change = paid - a;
            Draft::new(json!({"task": "subtract", "from": text(paid), "take": text(a)}))
                .ask(
                    m.say("ask-change")
                        .text("name", name)
                        .math("price", cash(a))
                        .math("paid", cash(paid)),
                )
                .ask(coins(&[(paid, 1)]))
                .answer(Entry::Money, money(change))
                .hint(m.say("hint-count-up"))
                .hint(m.say("hint-next").math("next", cash((a + 99) / 100 * 100)))
                .step(
                    m.say("step-up")
                        .math("next", cash((a + 99) / 100 * 100))
                        .math("gap", cash(100 - a % 100)),
                )
                .step(equal(difference(cash(paid), cash(a)), cash(change)))
                .misconception("trade-not-taken-away-money", money(change + 100))
                .misconception("added-instead", money(paid + a))
        }
        _ => {
            let n = m.dice.from(2..=6);
            Draft::new(json!({"task": "multiply", "numbers": [n, text(a)]}))
                .ask(
                    m.say("ask-each")
                        .text("name", name)
                        .count("n", n)
                        .math("price", cash(a)),
                )
                .answer(Entry::Money, money(n * a))
                .hint(m.say("hint-times"))
                .hint(
                    m.say("hint-apart")
                        .math("dollars", cash(a / 100 * 100))
                        .math("cents", cash(a % 100)),
                )
                .step(m.say("step-dollars").math(
                    "work",
                    equal(
                        product([num(n), cash(a / 100 * 100)]),
                        cash(n * (a / 100 * 100)),
                    ),
                ))
                .step(m.say("step-cents").math(
                    "work",
                    equal(product([num(n), cash(a % 100)]), cash(n * (a % 100))),
                ))
                .step(equal(product([num(n), cash(a)]), cash(n * a)))
                .misconception("used-one-only", money(a))
                .misconception(
                    "dollars-multiplied-only",
                    money(n * (a / 100 * 100) + a % 100),
                )
        }
    })
}
