//! Questions, shapes of data, and what a measure tells.

use super::data_sets::{median_twice, plot, quartiles_twice, range, sorted};
use crate::answer::Answer;
use crate::expr::{difference, equal, num, sum};
use crate::make::{Draft, Generator, Make, keep, says, whole};
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g6-statistical-questions", 3, questions),
    Generator::new("g6-distribution-shape", 3, shape),
    Generator::new("g6-measure-kind", 3, measure_kind),
    Generator::new("g6-count-data", 4, count_data),
];

/// Questions whose answers vary.
const VARYING: [&str; 8] = [
    "question-tall-vary",
    "question-books-vary",
    "question-sleep-vary",
    "question-pets-vary",
    "question-walk-vary",
    "question-rain-vary",
    "question-seeds-vary",
    "question-mass-vary",
];

/// Questions with one answer.
const ONE_ANSWER: [&str; 10] = [
    "question-tall-one",
    "question-books-one",
    "question-sleep-one",
    "question-pets-one",
    "question-walk-one",
    "question-rain-one",
    "question-week-one",
    "question-triangle-one",
    "question-bike-one",
    "question-mass-one",
];

/// All statistical questions among several.
fn questions(m: &mut Make) -> Option<Draft> {
    let count = m.level.pick(4, 5, 6);
    let mut all: Vec<&'static str> = VARYING.into_iter().chain(ONE_ANSWER).collect();
    m.dice.shuffle(&mut all);
    all.truncate(count);
    let varies = |question: &str| question.ends_with("-vary");
    let right = all.iter().filter(|question| varies(question)).count();
    keep((1..count).contains(&right))?;
    // At stretch two questions share their topic.
    let topic = |question: &'static str| question.rsplit_once('-').map_or("", |(topic, _)| topic);
    let shared = all.iter().filter(|q| varies(q)).any(|q| {
        all.iter()
            .any(|other| !varies(other) && topic(other) == topic(q))
    });
    keep(m.level != crate::Level::Stretch || shared)?;
    let places = |wanted: &dyn Fn(&str) -> bool| Answer::SeveralChoices {
        indexes: (0_u32..)
            .zip(&all)
            .filter(|(_, question)| wanted(question))
            .map(|(index, _)| index)
            .collect(),
    };
    let example = *all.iter().find(|question| varies(question))?;
    Some(
        Draft::new(json!({"task": "statistical_questions", "choices": all}))
            .ask(m.say("ask"))
            .all_of(all.iter().map(|q| (varies(q), says(q))).collect())
            .hint(m.say("hint-vary"))
            .hint(m.say("hint-one"))
            .step(m.say("hint-vary"))
            .step(m.say("step-answer").word("question", example))
            .misconception("one-answer-question-as-statistical", places(&|_| true))
            .misconception_unless_same(
                "fact-question-as-statistical",
                places(&|question| !varies(question)),
            ),
    )
}

fn shape(m: &mut Make) -> Option<Draft> {
    let first = m.dice.from(0..=6);
    let kind = m.dice.from(0..=2);
    let mut counts: Vec<i64> = match kind {
        0 => {
            let (a, b, c) = (m.dice.from(1..=2), m.dice.from(3..=4), m.dice.from(5..=7));
            vec![a, b, c, b, a]
        }
        _ => {
            let a = m.dice.from(5..=7);
            let b = m.dice.from(3..=4);
            vec![a, b, m.dice.from(1..=2), 1, m.dice.from(0..=1), 1]
        }
    };
    if kind == 2 {
        counts.reverse();
    }
    if m.level == crate::Level::Entry && m.dice.one_in(2) {
        let most = counts.iter().copied().max()?;
        let at = counts.iter().position(|n| *n == most)? as i64;
        keep(most != first + at)?;
        let figure = plot(m, first, &counts);
        return Some(
            Draft::new(json!({"task": "plot_peak", "first": first, "dots": counts}))
                .ask(m.say("ask-peak"))
                .ask(figure)
                .whole(first + at)
                .hint(m.say("hint-tall"))
                .hint(m.say("hint-line"))
                .step(m.say("hint-tall"))
                .step(
                    m.say("step-peak")
                        .count("value", first + at)
                        .count("dots", most),
                )
                .misconception("height-for-value", whole(most))
                .misconception("counted-the-next-column", whole(first + at + 1)),
        );
    }
    let figure = plot(m, first, &counts);
    let right = kind as usize;
    let code = |k: usize| {
        if right == 0 {
            "saw-a-tail-in-even-data"
        } else if k == 0 {
            "saw-even-data-in-a-tail"
        } else {
            "tail-on-the-wrong-side"
        }
    };
    Some(
        Draft::new(json!({"task": "plot_shape", "dots": counts}))
            .ask(m.say("ask"))
            .ask(figure)
            .one_of_listed(
                vec![
                    (code(0), says("shape-even")),
                    (code(1), says("shape-tail-right")),
                    (code(2), says("shape-tail-left")),
                ],
                right,
            )
            .hint(m.say("hint-peak"))
            .hint(m.say("hint-tail"))
            .step(m.say("hint-peak"))
            .step(m.say(["step-even", "step-right", "step-left"].get(right)?)),
    )
}

/// Which measures change when one value grows or all do: what each of them tells.
fn measure_kind(m: &mut Make) -> Option<Draft> {
    let n = m.level.pick(5, 6, 7);
    let data: Vec<i64> = (0..n).map(|_| m.dice.from(1..=20)).collect();
    let order = sorted(&data);
    let all_grow = m.dice.one_in(2);
    let by = m.dice.from(2..=30);
    let greatest = *order.last()?;
    keep(order.iter().filter(|v| **v == greatest).count() == 1 && !order.contains(&by))?;
    let changed: Vec<i64> = order
        .iter()
        .map(|v| {
            if all_grow || *v == greatest {
                v + by
            } else {
                *v
            }
        })
        .collect();
    let values = |order: &[i64]| -> Option<[Ratio<i64>; 4]> {
        let (low, high) = quartiles_twice(order)?;
        Some([
            Ratio::from(median_twice(order)?),
            Ratio::new(order.iter().sum(), n),
            Ratio::from(range(order)?),
            Ratio::from(high - low),
        ])
    };
    let (before, after) = (values(&order)?, values(&changed)?);
    const NAMES: [&str; 4] = [
        "measure-median",
        "measure-mean",
        "measure-range",
        "measure-iqr",
    ];
    let changes: Vec<bool> = before.iter().zip(&after).map(|(a, b)| a != b).collect();
    // Asked at random for those that change, or for those that stay.
    let asks_change = m.dice.one_in(2);
    let fits: Vec<bool> = changes
        .iter()
        .map(|changes| *changes == asks_change)
        .collect();
    keep(fits.contains(&true) && fits.contains(&false))?;
    let mut order_shown = [0, 1, 2, 3];
    m.dice.shuffle(&mut order_shown);
    let places = |wanted: &[bool]| Answer::SeveralChoices {
        indexes: (0_u32..)
            .zip(order_shown)
            .filter(|(_, at)| wanted.get(*at) == Some(&true))
            .map(|(index, _)| index)
            .collect(),
    };
    let shown = order_shown
        .into_iter()
        .filter_map(|at| Some((*fits.get(at)?, says(NAMES.get(at)?))))
        .collect();
    let turned: Vec<bool> = fits.iter().map(|fits| !fits).collect();
    Some(
        Draft::new(json!({
            "task": "measures_after_change", "data": data, "by": by,
            "grows": if all_grow { "all" } else { "greatest" },
            "asked": if asks_change { "change" } else { "stay" }
        }))
        .ask(
            m.say(if all_grow { "ask-all" } else { "ask-greatest" })
                .numbers("data", &data)
                .count("by", by),
        )
        .ask(m.say(if asks_change {
            "ask-change"
        } else {
            "ask-stay"
        }))
        .all_of(shown)
        .hint(m.say("hint-middle"))
        .hint(m.say("hint-spread"))
        .step(m.say(if all_grow {
            "step-all-center"
        } else {
            "step-one-center"
        }))
        .step(m.say(if all_grow {
            "step-all-spread"
        } else {
            "step-one-spread"
        }))
        .misconception("measures-turned-round", places(&turned))
        .misconception_unless_same(
            "middle-and-spread-mixed-up",
            places(&[true, true, false, false]),
        )
        .misconception_unless_same("all-measures-taken-alike", places(&[true; 4])),
    )
}

fn count_data(m: &mut Make) -> Option<Draft> {
    let first = m.dice.from(0..=9);
    let columns = m.level.pick(3, 5, 6);
    let counts: Vec<i64> = (0..columns)
        .map(|_| {
            m.dice.from(if m.level == crate::Level::Entry {
                1..=4
            } else {
                0..=6
            })
        })
        .collect();
    let total: i64 = counts.iter().sum();
    let used = counts.iter().filter(|n| **n > 0).count() as i64;
    keep(total >= 5 && used != total && total <= 20)?;
    let weighted: i64 = counts
        .iter()
        .enumerate()
        .map(|(k, n)| (first + k as i64) * n)
        .sum();
    let figure = plot(m, first, &counts);
    match m.dice.from(m.level.pick(0..=3, 0..=5, 1..=5)) {
        0..=2 => {}
        3 => {
            // Values that are not on the plot yet.
            let missing = m.dice.from(2..=9);
            keep(missing != total)?;
            return Some(
                Draft::new(
                    json!({"task": "plot_missing", "dots": counts, "collected": total + missing}),
                )
                .ask(m.say("ask-missing").count("collected", total + missing))
                .ask(figure)
                .whole(missing)
                .hint(m.say("hint-dot"))
                .hint(m.say("hint-missing"))
                .step(m.say("hint-dot"))
                .step(equal(
                    difference(num(total + missing), num(total)),
                    num(missing),
                ))
                .misconception_unless_same("gave-what-is-there", whole(total))
                .misconception_unless_same(
                    "columns-counted-not-values",
                    whole(total + missing - used),
                ),
            );
        }
        _ => {
            // Values from a number on.
            let from = first + m.dice.from(1..=columns - 1);
            let at = usize::try_from(from - first).ok()?;
            let (count, exactly): (i64, i64) = (counts.iter().skip(at).sum(), *counts.get(at)?);
            keep(exactly > 0 && count > exactly && count < total)?;
            return Some(
                Draft::new(
                    json!({"task": "plot_from", "dots": counts, "first": first, "from": from}),
                )
                .ask(m.say("ask-from").number("from", from))
                .ask(figure)
                .whole(count)
                .hint(m.say("hint-dot"))
                .hint(m.say("hint-from"))
                .step(m.say("hint-dot"))
                .step(equal(
                    sum(counts.iter().skip(at).filter(|n| **n > 0).map(num)),
                    num(count),
                ))
                .misconception("value-itself-left-out", whole(count - exactly))
                .misconception_unless_same("counted-all-dots", whole(total))
                .misconception_unless_same("one-column-only", whole(exactly)),
            );
        }
    }
    Some(
        Draft::new(json!({"task": "plot_count", "dots": counts}))
            .ask(m.say("ask"))
            .ask(figure)
            .whole(total)
            .hint(m.say("hint-dot"))
            .hint(m.say("hint-add"))
            .step(m.say("hint-dot"))
            .step(equal(
                sum(counts.iter().filter(|n| **n > 0).map(num)),
                num(total),
            ))
            .misconception("columns-counted-not-values", whole(used))
            .misconception_unless_same("values-added-instead-of-counted", whole(weighted)),
    )
}
