//! Questions, shapes of data, and what a measure tells.

use super::data_sets::{halves, median_twice, plot, quartiles_twice, range, sorted};
use crate::decimal::Dec;
use crate::expr::{equal, num, sum};
use crate::make::{Draft, Generator, Make, keep, says, whole};
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g6-statistical-questions", 1, questions),
    Generator::new("g6-distribution-shape", 1, shape),
    Generator::new("g6-measure-kind", 1, measure_kind),
    Generator::new("g6-count-data", 1, count_data),
];

/// A question whose answers vary, and one on the same topic with one answer.
const QUESTIONS: [(&str, &str); 8] = [
    ("question-tall-each", "question-tall-one"),
    ("question-books-each", "question-books-one"),
    ("question-sleep-each", "question-sleep-one"),
    ("question-pets-each", "question-pets-one"),
    ("question-walk-each", "question-walk-one"),
    ("question-rain-each", "question-rain-one"),
    ("question-seeds-each", "question-seeds-one"),
    ("question-mass-each", "question-mass-one"),
];

fn questions(m: &mut Make) -> Option<Draft> {
    let (right, twin) = m.dice.pick(&QUESTIONS);
    let mut others = QUESTIONS.map(|(_, one_answer)| one_answer);
    m.dice.shuffle(&mut others);
    let wrong_count = m.level.pick(2, 3, 3);
    let mut wrong: Vec<&'static str> = others
        .into_iter()
        .filter(|q| *q != twin)
        .take(wrong_count)
        .collect();
    // At stretch, a wrong choice has the topic of the right one.
    if m.level == crate::Level::Stretch {
        *wrong.first_mut()? = twin;
    }
    let names: Vec<&str> = wrong.iter().chain([&right]).copied().collect();
    let codes = [
        "one-answer-question-as-statistical",
        "fact-question-as-statistical",
        "count-question-as-statistical",
    ];
    let wrong_choices = wrong
        .iter()
        .zip(codes)
        .map(|(q, code)| (code, says(q)))
        .collect();
    Some(
        Draft::new(json!({"task": "statistical_question", "choices": names}))
            .ask(m.say("ask"))
            .one_of(&mut m.dice, says(right), wrong_choices)
            .hint(m.say("hint-vary"))
            .hint(m.say("hint-one"))
            .step(m.say("hint-vary"))
            .step(m.say("step-answer").word("question", right)),
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
                .misconception("counted-marks-not-steps", whole(first + at + 1)),
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
    // In an even plot both wrong choices would have the same code; the second gets its own.
    let code = |k: usize| {
        if right == 0 && k == 2 {
            "tail-on-the-wrong-side"
        } else {
            code(k)
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

fn measure_kind(m: &mut Make) -> Option<Draft> {
    let n = m.level.pick(5, 6, 7);
    let data: Vec<i64> = (0..n).map(|_| m.dice.from(1..=20)).collect();
    let order = sorted(&data);
    let total: i64 = data.iter().sum();
    let kind = m.dice.from(m.level.pick(0..=2, 0..=3, 0..=3)) as usize;
    let range = range(&order)?;
    keep(range != 0)?;
    let value = match kind {
        0 => halves(median_twice(&order)?),
        1 => Dec::exact(Ratio::new(total, n)).filter(|d| d.places() <= 1)?,
        2 => Dec::new(range, 0),
        _ => {
            let (low, high) = quartiles_twice(&order)?;
            halves(high - low)
        }
    };
    let (name, task_name, step) = *[
        ("measure-median", "median", "step-median"),
        ("measure-mean", "mean", "step-mean"),
        ("measure-range", "range", "step-range"),
        ("measure-iqr", "interquartile", "step-iqr"),
    ]
    .get(kind)?;
    let middle = kind <= 1;
    Some(
        Draft::new(json!({"task": "measure_kind", "measure": task_name, "data": data, "value": value.to_string()}))
            .ask(m.say("ask").numbers("data", &data).word("measure", name).number("value", value))
            .one_of_listed(vec![("middle-and-spread-mixed-up", says("kind-middle")), ("middle-and-spread-mixed-up", says("kind-spread")), ("measure-taken-as-count", says("kind-count"))], usize::from(!middle))
            .hint(m.say("hint-middle"))
            .hint(m.say("hint-spread"))
            .step(m.say(step))
            .step(m.say(if middle { "step-so-middle" } else { "step-so-spread" })),
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
