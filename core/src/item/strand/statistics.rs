//! Middle, spread and shape of data.

use crate::item::decimal::Dec;
use crate::item::draw::{box_plot, dots, histogram};
use crate::item::expr::{difference, equal, group, num, quotient, sum};
use crate::item::make::{Draft, Generator, Make, decimal, keep, says, whole};
use num_rational::Ratio;
use serde_json::json;

/// The generators of the strand.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g6-statistical-questions", 1, questions),
    Generator::new("g6-distribution-shape", 1, shape),
    Generator::new("g6-measure-kind", 1, measure_kind),
    Generator::new("g6-data-displays", 1, displays),
    Generator::new("g6-count-data", 1, count_data),
    Generator::new("g6-median", 1, median),
    Generator::new("g6-mean", 1, mean),
    Generator::new("g6-interquartile-range", 1, interquartile),
    Generator::new("g6-mean-absolute-deviation", 1, deviation),
];

/// Questions with answers that vary, and questions with one answer.
const VARY: [&str; 8] = [
    "question-tall-each",
    "question-books-each",
    "question-sleep-each",
    "question-pets-each",
    "question-walk-each",
    "question-rain-each",
    "question-seeds-each",
    "question-mass-each",
];
const ONE: [&str; 8] = [
    "question-tall-one",
    "question-books-one",
    "question-sleep-one",
    "question-pets-one",
    "question-walk-one",
    "question-rain-one",
    "question-seeds-one",
    "question-mass-one",
];

fn questions(m: &mut Make) -> Option<Draft> {
    let right = m.dice.pick(&VARY);
    let mut others = ONE.to_vec();
    m.dice.shuffle(&mut others);
    let wrong_count = m.level.pick(2, 3, 3);
    // At stretch, the same topic stands among the wrong choices.
    let twin = ONE[VARY.iter().position(|q| *q == right)?];
    let mut wrong: Vec<&'static str> = others
        .into_iter()
        .filter(|q| *q != twin)
        .take(wrong_count)
        .collect();
    if m.level == crate::item::Level::Stretch {
        wrong[0] = twin;
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

/// Title and words under the line.
const TOPICS: [(&str, &str); 4] = [
    ("plot-pages", "plot-axis-pages"),
    ("plot-goals", "plot-axis-goals"),
    ("plot-days", "plot-axis-days"),
    ("plot-siblings", "plot-axis-people"),
];

fn plot(m: &mut Make, first: i64, counts: &[i64]) -> crate::item::Figure {
    let (title, axis) = m.dice.pick(&TOPICS);
    let columns: Vec<(Ratio<i64>, i64)> = counts
        .iter()
        .enumerate()
        .map(|(k, n)| (Ratio::from(first + k as i64), *n))
        .collect();
    dots(
        title,
        axis,
        Ratio::from(first),
        Ratio::from(first + counts.len() as i64 - 1),
        Ratio::from(1),
        &columns,
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
    if m.level == crate::item::Level::Entry && m.dice.one_in(2) {
        let most = counts.iter().copied().max()?;
        let at = counts.iter().position(|n| *n == most)? as i64;
        keep(most != first + at)?;
        let picture = plot(m, first, &counts);
        return Some(
            Draft::new(json!({"task": "plot_peak", "first": first, "dots": counts}))
                .ask(m.say("ask-peak"))
                .ask(picture)
                .whole(first + at)
                .hint(m.say("hint-tall"))
                .hint(m.say("hint-line"))
                .step(m.say("hint-tall"))
                .step(
                    m.say("step-peak")
                        .count("value", first + at)
                        .count("dots", most),
                )
                .mistake("height-for-value", whole(most))
                .mistake("counted-marks-not-steps", whole(first + at + 1)),
        );
    }
    let picture = plot(m, first, &counts);
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
    // Two wrong choices in an even plot are the same thought on two sides; one is left without a code.
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
            .ask(picture)
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
            .step(m.say(["step-even", "step-right", "step-left"][right])),
    )
}

fn sorted(data: &[i64]) -> Vec<i64> {
    let mut data = data.to_vec();
    data.sort_unstable();
    data
}

/// Twice the middle value, so that halves stay whole.
fn median_twice(sorted: &[i64]) -> i64 {
    let n = sorted.len();
    sorted[(n - 1) / 2] + sorted[n / 2]
}

/// Medians of the lower and upper half, the middle value left out of both, twice each.
fn quartiles_twice(sorted: &[i64]) -> (i64, i64) {
    let half = sorted.len() / 2;
    (
        median_twice(&sorted[..half]),
        median_twice(&sorted[sorted.len() - half..]),
    )
}

fn halves(twice: i64) -> Dec {
    if twice % 2 == 0 {
        Dec::new(twice / 2, 0)
    } else {
        Dec::new(twice * 5, 1)
    }
}

fn measure_kind(m: &mut Make) -> Option<Draft> {
    let n = m.level.pick(5, 6, 7);
    let data: Vec<i64> = (0..n).map(|_| m.dice.from(1..=20)).collect();
    let order = sorted(&data);
    let total: i64 = data.iter().sum();
    let kind = m.dice.from(m.level.pick(0..=2, 0..=3, 0..=3)) as usize;
    keep(order[0] != order[order.len() - 1])?;
    let value = match kind {
        0 => halves(median_twice(&order)),
        1 => Dec::exact(Ratio::new(total, n)).filter(|d| d.places() <= 1)?,
        2 => Dec::new(order[order.len() - 1] - order[0], 0),
        _ => {
            let (low, high) = quartiles_twice(&order);
            halves(high - low)
        }
    };
    let name = [
        "measure-median",
        "measure-mean",
        "measure-range",
        "measure-iqr",
    ][kind];
    let middle = kind <= 1;
    let task_name = ["median", "mean", "range", "interquartile"][kind];
    Some(
        Draft::new(json!({"task": "measure_kind", "measure": task_name, "data": data, "value": value.to_string()}))
            .ask(m.say("ask").numbers("data", &data).word("measure", name).number("value", value))
            .one_of_listed(vec![("middle-and-spread-mixed-up", says("kind-middle")), ("middle-and-spread-mixed-up", says("kind-spread")), ("measure-taken-as-count", says("kind-count"))], usize::from(!middle))
            .hint(m.say("hint-middle"))
            .hint(m.say("hint-spread"))
            .step(m.say(["step-median", "step-mean", "step-range", "step-iqr"][kind]))
            .step(m.say(if middle { "step-so-middle" } else { "step-so-spread" })),
    )
}

fn displays(m: &mut Make) -> Option<Draft> {
    let kind = m
        .level
        .pick(m.dice.from(1..=2), m.dice.from(2..=3), m.dice.from(3..=4));
    Some(match kind {
        1 => {
            let first = m.dice.from(0..=8);
            let counts: Vec<i64> = (0..6).map(|_| m.dice.from(0..=4)).collect();
            let total: i64 = counts.iter().sum();
            keep(total % 2 == 1 && total >= 5)?;
            let data: Vec<i64> = counts
                .iter()
                .enumerate()
                .flat_map(|(k, n)| std::iter::repeat_n(first + k as i64, *n as usize))
                .collect();
            let middle = data[data.len() / 2];
            let centre = first + 3;
            keep(middle != centre)?;
            let picture = plot(m, first, &counts);
            Draft::new(json!({"task": "plot_median", "first": first, "dots": counts}))
                .ask(m.say("ask-median"))
                .ask(picture)
                .whole(middle)
                .hint(m.say("hint-count"))
                .hint(m.say("hint-middle").count("place", (total + 1) / 2))
                .step(m.say("step-total").count("total", total))
                .step(m.say("hint-middle").count("place", (total + 1) / 2))
                .step(m.say("step-middle").count("middle", middle))
                .mistake("middle-of-the-axis", whole(centre))
                .mistake_unless_same("height-for-value", whole(counts[(middle - first) as usize]))
        }
        2 => {
            let width = m.dice.pick(&[5, 10]);
            let start = m.dice.from(0..=3) * width;
            let counts: Vec<i64> = (0..5).map(|_| m.dice.from(1..=9)).collect();
            let bins: Vec<(i64, i64, i64)> = counts
                .iter()
                .enumerate()
                .map(|(k, n)| {
                    (
                        start + k as i64 * width,
                        start + (k as i64 + 1) * width - 1,
                        *n,
                    )
                })
                .collect();
            let from = m.dice.from(2..=3) as usize;
            let right: i64 = counts[from..].iter().sum();
            let total: i64 = counts.iter().sum();
            keep(right != 5 - from as i64)?;
            Draft::new(json!({"task": "histogram_at_least", "from": start, "width": width, "counts": counts, "at_least": bins[from].0}))
                .ask(m.say("ask-histogram").count("from", bins[from].0))
                .ask(histogram("plot-minutes", "plot-axis-minutes", &bins, 1))
                .whole(right)
                .hint(m.say("hint-bars").count("from", bins[from].0))
                .hint(m.say("hint-heights"))
                .step(m.say("hint-bars").count("from", bins[from].0))
                .step(equal(sum(counts[from..].iter().map(num)), num(right)))
                .mistake("bars-counted-not-values", whole(5 - from as i64))
                .mistake("counted-all-values", whole(total))
                .mistake_unless_same("one-bar-only", whole(counts[from]))
        }
        _ => {
            let mut five: Vec<i64> = m.dice.different(5, 2..=38);
            five.sort_unstable();
            keep(five.windows(2).all(|pair| pair[1] - pair[0] >= 2))?;
            let five: [i64; 5] = [five[0], five[1], five[2], five[3], five[4]];
            let picture = box_plot("plot-minutes", "plot-axis-minutes", five, 0, 40, 5);
            let iqr = kind == 4;
            let (right, wrong) = if iqr {
                (five[3] - five[1], five[4] - five[0])
            } else {
                (five[4] - five[0], five[3] - five[1])
            };
            Draft::new(
                json!({"task": if iqr { "box_plot_iqr" } else { "box_plot_range" }, "five": five}),
            )
            .ask(m.say(if iqr { "ask-iqr" } else { "ask-range" }))
            .ask(picture)
            .whole(right)
            .hint(m.say("hint-box"))
            .hint(m.say(if iqr { "hint-iqr" } else { "hint-range" }))
            .step(m.say(if iqr { "hint-iqr" } else { "hint-range" }))
            .step(equal(
                difference(
                    num(if iqr { five[3] } else { five[4] }),
                    num(if iqr { five[1] } else { five[0] }),
                ),
                num(right),
            ))
            .mistake(
                if iqr {
                    "range-for-iqr"
                } else {
                    "iqr-for-range"
                },
                whole(wrong),
            )
            .mistake_unless_same("median-for-spread", whole(five[2]))
        }
    })
}

fn count_data(m: &mut Make) -> Option<Draft> {
    let first = m.dice.from(0..=9);
    let columns = m.level.pick(3, 5, 6);
    let counts: Vec<i64> = (0..columns)
        .map(|_| {
            m.dice.from(if m.level == crate::item::Level::Entry {
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
    let picture = plot(m, first, &counts);
    Some(
        Draft::new(json!({"task": "plot_count", "dots": counts}))
            .ask(m.say("ask"))
            .ask(picture)
            .whole(total)
            .hint(m.say("hint-dot"))
            .hint(m.say("hint-add"))
            .step(m.say("hint-dot"))
            .step(equal(
                sum(counts.iter().filter(|n| **n > 0).map(num)),
                num(total),
            ))
            .mistake("columns-counted-not-values", whole(used))
            .mistake_unless_same("values-added-instead-of-counted", whole(weighted)),
    )
}

fn median(m: &mut Make) -> Option<Draft> {
    let n = m.level.pick(5, m.dice.pick(&[6, 7]), 8);
    let high = m.level.pick(15, 30, 60);
    let data: Vec<i64> = (0..n).map(|_| m.dice.from(1..=high)).collect();
    let order = sorted(&data);
    let right = median_twice(&order);
    let unsorted = median_twice(&data);
    let total: i64 = data.iter().sum();
    keep(right != unsorted && 2 * total != right * n && data != order)?;
    keep(m.level != crate::item::Level::Stretch || right % 2 == 1)?;
    let range = order[order.len() - 1] - order[0];
    Some(
        Draft::new(json!({"task": "median", "data": data}))
            .ask(m.say("ask").numbers("data", &data))
            .decimal(halves(right))
            .hint(m.say("hint-order"))
            .hint(m.say(if n % 2 == 1 {
                "hint-middle"
            } else {
                "hint-two"
            }))
            .step(m.say("step-order").numbers("order", &order))
            .step(if n % 2 == 1 {
                m.say("step-middle")
                    .number("middle", order[order.len() / 2])
                    .into()
            } else {
                crate::item::Block::from(equal(
                    quotient(
                        group(sum([
                            num(order[order.len() / 2 - 1]),
                            num(order[order.len() / 2]),
                        ])),
                        num(2),
                    ),
                    num(halves(right)),
                ))
            })
            .mistake("middle-without-ordering", decimal(halves(unsorted)))
            .mistake("range-for-median", decimal(Dec::new(range, 0))),
    )
}

fn mean(m: &mut Make) -> Option<Draft> {
    let n = m.level.pick(
        m.dice.from(3..=4),
        m.dice.from(4..=6),
        m.dice.pick(&[4, 5, 8]),
    );
    let high = m.level.pick(12, 25, 60);
    let data: Vec<i64> = (0..n).map(|_| m.dice.from(1..=high)).collect();
    let total: i64 = data.iter().sum();
    let value = Dec::exact(Ratio::new(total, n))?;
    keep(
        value.places() <= m.level.pick(0, 1, 3)
            && (m.level != crate::item::Level::Stretch || value.places() > 0),
    )?;
    let middle = median_twice(&sorted(&data));
    Some(
        Draft::new(json!({"task": "mean", "data": data}))
            .ask(m.say("ask").numbers("data", &data))
            .decimal(value)
            .hint(m.say("hint-share"))
            .hint(m.say("hint-add").count("n", n))
            .step(equal(sum(data.iter().map(num)), num(total)))
            .step(equal(quotient(num(total), num(n)), num(value)))
            .mistake("sum-for-mean", decimal(Dec::new(total, 0)))
            .mistake("median-for-mean", decimal(halves(middle))),
    )
}

fn interquartile(m: &mut Make) -> Option<Draft> {
    let n = m.level.pick(7, m.dice.pick(&[7, 8]), m.dice.pick(&[9, 10]));
    let high = m.level.pick(20, 30, 50);
    let mut data: Vec<i64> = (0..n).map(|_| m.dice.from(1..=high)).collect();
    if m.level == crate::item::Level::Entry {
        data.sort_unstable();
    }
    let order = sorted(&data);
    let (low, high) = quartiles_twice(&order);
    let right = high - low;
    let range = order[order.len() - 1] - order[0];
    keep(right > 0 && 2 * range != right)?;
    Some(
        Draft::new(json!({"task": "interquartile_range", "data": data}))
            .ask(m.say("ask").numbers("data", &data))
            .ask(m.say("rule"))
            .decimal(halves(right))
            .hint(m.say("hint-order"))
            .hint(m.say("hint-halves"))
            .step(m.say("step-order").numbers("order", &order))
            .step(
                m.say("step-quartiles")
                    .number("low", halves(low))
                    .number("high", halves(high)),
            )
            .step(equal(
                difference(num(halves(high)), num(halves(low))),
                num(halves(right)),
            ))
            .mistake("range-for-iqr", decimal(Dec::new(range, 0)))
            .mistake("upper-quartile-for-iqr", decimal(halves(high))),
    )
}

fn deviation(m: &mut Make) -> Option<Draft> {
    let n = m.level.pick(4, m.dice.pick(&[4, 5]), m.dice.pick(&[5, 8]));
    let high = m.level.pick(10, 20, 30);
    let data: Vec<i64> = (0..n).map(|_| m.dice.from(1..=high)).collect();
    let total: i64 = data.iter().sum();
    keep(total % n == 0)?;
    let mean = total / n;
    let gaps: Vec<i64> = data.iter().map(|v| (v - mean).abs()).collect();
    let gap_total: i64 = gaps.iter().sum();
    let value = Dec::exact(Ratio::new(gap_total, n))?;
    keep(
        gap_total > 0
            && value.places() <= m.level.pick(1, 1, 3)
            && value.ratio() != Ratio::from(mean),
    )?;
    Some(
        Draft::new(json!({"task": "mean_absolute_deviation", "data": data}))
            .ask(m.say("ask").numbers("data", &data))
            .decimal(value)
            .hint(m.say("hint-mean"))
            .hint(m.say("hint-gaps").count("mean", mean))
            .step(
                m.say("step-mean")
                    .math("work", equal(quotient(num(total), num(n)), num(mean))),
            )
            .step(m.say("step-gaps").numbers("gaps", &gaps))
            .step(equal(quotient(num(gap_total), num(n)), num(value)))
            .mistake("gaps-added-not-averaged", decimal(Dec::new(gap_total, 0)))
            .mistake("mean-for-deviation", decimal(Dec::new(mean, 0))),
    )
}
