//! Displays, middles and spreads.

use super::data_sets::{halves, median_twice, plot, quartiles_twice, range, sorted};
use crate::answer::{Answer, Choice, Entry, PlotStyle};
use crate::decimal::Dec;
use crate::draw::{FiveNumbers, box_plot, histogram};
use crate::expr::{difference, equal, group, num, quotient, sum};
use crate::figure::HistogramBin;
use crate::make::{Draft, Generator, Make, decimal, keep, whole};
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g6-data-displays", 3, displays),
    Generator::new("g6-median", 3, median),
    Generator::new("g6-mean", 3, mean),
    Generator::new("g6-interquartile-range", 3, interquartile),
    Generator::new("g6-mean-absolute-deviation", 3, deviation),
];

/// A dot plot to be made of a list of values.
fn make_plot(m: &mut Make) -> Option<Draft> {
    let first = m.dice.from(0..=12);
    let data: Vec<i64> = (0..m.level.pick(8, 9, 10))
        .map(|_| first + m.dice.from(0..=4))
        .collect();
    let heights: Vec<i64> = (0..5)
        .map(|k| data.iter().filter(|v| **v == first + k).count() as i64)
        .collect();
    keep(
        heights.iter().all(|n| *n <= 4) && heights.first() > Some(&0) && heights.last() > Some(&0),
    )?;
    let plot = |heights: Vec<i64>| Answer::Plot { heights };
    let once: Vec<i64> = heights.iter().map(|n| (*n).min(1)).collect();
    let mut one_short = heights.clone();
    *one_short.get_mut(usize::try_from(data.last()? - first).ok()?)? -= 1;
    Some(
        Draft::new(
            json!({"task": "dots_of_data", "data": data, "first": first, "last": first + 4}),
        )
        .ask(m.say("ask-make").numbers("data", &data))
        .answer(
            Entry::Plot {
                style: PlotStyle::Dots,
                columns: (0..5)
                    .map(|k| Choice {
                        shows: num(first + k).into(),
                    })
                    .collect(),
                step: 1,
                top: 5,
            },
            plot(heights.clone()),
        )
        .hint(m.say("hint-dot"))
        .hint(m.say("hint-check"))
        .step(m.say("hint-dot"))
        .step(m.say("step-dots").numbers("heights", &heights))
        .misconception("repeated-length-shown-once", plot(once))
        .misconception("value-left-out-of-plot", plot(one_short)),
    )
}

fn displays(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(4) {
        return make_plot(m);
    }
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
            let middle = *data.get(data.len() / 2)?;
            let centre = first + 3;
            keep(middle != centre)?;
            let figure = plot(m, first, &counts);
            Draft::new(json!({"task": "plot_median", "first": first, "dots": counts}))
                .ask(m.say("ask-median"))
                .ask(figure)
                .whole(middle)
                .hint(m.say("hint-count"))
                .hint(m.say("hint-middle").count("place", (total + 1) / 2))
                .step(m.say("step-total").count("total", total))
                .step(m.say("hint-middle").count("place", (total + 1) / 2))
                .step(m.say("step-middle").count("middle", middle))
                .misconception("middle-of-the-axis", whole(centre))
                .misconception_unless_same(
                    "height-for-value",
                    whole(*counts.get((middle - first) as usize)?),
                )
        }
        2 => {
            let width = m.dice.pick(&[5, 10]);
            let start = m.dice.from(0..=3) * width;
            let counts: Vec<i64> = (0..5).map(|_| m.dice.from(1..=9)).collect();
            let bins: Vec<HistogramBin> = (0..)
                .zip(&counts)
                .map(|(k, count)| HistogramBin {
                    from: start + k * width,
                    to: start + (k + 1) * width - 1,
                    count: *count,
                })
                .collect();
            let from = m.dice.from(2..=3) as usize;
            let (_, asked) = counts.split_at_checked(from)?;
            let lowest = bins.get(from)?.from;
            let right: i64 = asked.iter().sum();
            let total: i64 = counts.iter().sum();
            keep(right != 5 - from as i64)?;
            Draft::new(json!({"task": "histogram_at_least", "from": start, "width": width, "counts": counts, "at_least": lowest}))
                .ask(m.say("ask-histogram").count("from", lowest))
                .ask(histogram("plot-minutes", "plot-axis-minutes", bins, 1))
                .whole(right)
                .hint(m.say("hint-bars").count("from", lowest))
                .hint(m.say("hint-heights"))
                .step(m.say("hint-bars").count("from", lowest))
                .step(equal(sum(asked.iter().map(num)), num(right)))
                .misconception("bars-counted-not-values", whole(5 - from as i64))
                .misconception("counted-all-values", whole(total))
                .misconception_unless_same("one-bar-only", whole(*asked.first()?))
        }
        _ => {
            let mut five: Vec<i64> = m.dice.different(5, 2..=38);
            five.sort_unstable();
            keep(five.is_sorted_by(|a, b| b - a >= 2))?;
            let [least, lower_quartile, median, upper_quartile, greatest] = five[..] else {
                return None;
            };
            let numbers = FiveNumbers {
                least,
                lower_quartile,
                median,
                upper_quartile,
                greatest,
            };
            let figure = box_plot("plot-minutes", "plot-axis-minutes", numbers, 0, 40, 5);
            let iqr = kind == 4;
            let quartiles = (upper_quartile, lower_quartile);
            let ends = (greatest, least);
            let ((high, low), (other_high, other_low)) = if iqr {
                (quartiles, ends)
            } else {
                (ends, quartiles)
            };
            let right = high - low;
            Draft::new(
                json!({"task": if iqr { "box_plot_iqr" } else { "box_plot_range" }, "five": five}),
            )
            .ask(m.say(if iqr { "ask-iqr" } else { "ask-range" }))
            .ask(figure)
            .whole(right)
            .hint(m.say("hint-box"))
            .hint(m.say(if iqr { "hint-iqr" } else { "hint-range" }))
            .step(m.say(if iqr { "hint-iqr" } else { "hint-range" }))
            .step(equal(difference(num(high), num(low)), num(right)))
            .misconception(
                if iqr {
                    "range-for-iqr"
                } else {
                    "iqr-for-range"
                },
                whole(other_high - other_low),
            )
            .misconception_unless_same("median-for-spread", whole(median))
        }
    })
}

fn median(m: &mut Make) -> Option<Draft> {
    let n = m.level.pick(5, m.dice.pick(&[6, 7]), 8);
    let high = m.level.pick(15, 30, 60);
    let data: Vec<i64> = (0..n).map(|_| m.dice.from(1..=high)).collect();
    let order = sorted(&data);
    let right = median_twice(&order)?;
    let unsorted = median_twice(&data)?;
    let total: i64 = data.iter().sum();
    keep(right != unsorted && 2 * total != right * n && data != order)?;
    keep(m.level != crate::Level::Stretch || right % 2 == 1)?;
    let range = range(&order)?;
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
                    .number("middle", *order.get(order.len() / 2)?)
                    .into()
            } else {
                crate::Block::from(equal(
                    quotient(
                        group(sum([
                            num(order.get(order.len() / 2 - 1)?),
                            num(order.get(order.len() / 2)?),
                        ])),
                        num(2),
                    ),
                    num(halves(right)),
                ))
            })
            .misconception("middle-without-ordering", decimal(halves(unsorted)))
            .misconception("range-for-median", decimal(Dec::new(range, 0))),
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
            && (m.level != crate::Level::Stretch || value.places() > 0),
    )?;
    let middle = median_twice(&sorted(&data))?;
    Some(
        Draft::new(json!({"task": "mean", "data": data}))
            .ask(m.say("ask").numbers("data", &data))
            .decimal(value)
            .hint(m.say("hint-share"))
            .hint(m.say("hint-add").count("n", n))
            .step(equal(sum(data.iter().map(num)), num(total)))
            .step(equal(quotient(num(total), num(n)), num(value)))
            .misconception("sum-for-mean", decimal(Dec::new(total, 0)))
            .misconception("median-for-mean", decimal(halves(middle))),
    )
}

fn interquartile(m: &mut Make) -> Option<Draft> {
    let n = m.level.pick(7, m.dice.pick(&[7, 8]), m.dice.pick(&[9, 10]));
    let high = m.level.pick(20, 30, 50);
    let mut data: Vec<i64> = (0..n).map(|_| m.dice.from(1..=high)).collect();
    if m.level == crate::Level::Entry {
        data.sort_unstable();
    }
    let order = sorted(&data);
    let (low, high) = quartiles_twice(&order)?;
    let right = high - low;
    let range = range(&order)?;
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
            .misconception("range-for-iqr", decimal(Dec::new(range, 0)))
            .misconception("upper-quartile-for-iqr", decimal(halves(high))),
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
            .misconception("gaps-added-not-averaged", decimal(Dec::new(gap_total, 0)))
            .misconception("mean-for-deviation", decimal(Dec::new(mean, 0))),
    )
}
