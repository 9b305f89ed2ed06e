//! Graphs and line plots.

use crate::item::answer::{Answer, Choice, Entry, PlotStyle};
use crate::item::draw::{bars, cell, dots, pictures, ruler, table, words};
use crate::item::expr::{difference, equal, num, product, quotient, rational, sum};
use crate::item::make::{Draft, Generator, Make, keep, mixed, says, whole};
use num_rational::Ratio;
use serde_json::json;

/// The generators of the strand.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g3-scaled-graphs", 1, scaled_graphs),
    Generator::new("g3-build-bar-graph", 1, build_bar_graph),
    Generator::new("g3-measure-line-plot", 1, measure_line_plot),
    Generator::new("g4-line-plot", 1, line_plot),
    Generator::new("g5-line-plot", 1, redistribute),
];

/// Title, words at the scale, and four names.
const GRAPHS: [(&str, &str, [&str; 4]); 3] = [
    (
        "graph-fruit",
        "graph-count-fruit",
        ["fruit-apples", "fruit-pears", "fruit-plums", "fruit-figs"],
    ),
    (
        "graph-travel",
        "graph-count-students",
        ["travel-walk", "travel-bus", "travel-bike", "travel-car"],
    ),
    (
        "graph-birds",
        "graph-count-birds",
        ["bird-doves", "bird-ducks", "bird-owls", "bird-wrens"],
    ),
];

fn scaled_graphs(m: &mut Make) -> Option<Draft> {
    let (title, axis, names) = m.dice.pick(&GRAPHS);
    let step = m
        .dice
        .pick(m.level.pick(&[2, 5][..], &[2, 5, 10][..], &[4, 5, 10][..]));
    let count = m.level.pick(3, 4, 4);
    let marks: Vec<i64> = (0..count).map(|_| m.dice.from(2..=9)).collect();
    let as_pictures = m.dice.one_in(2);
    let halves = as_pictures && step % 2 == 0 && m.level != crate::item::Level::Entry;
    let values: Vec<i64> = marks
        .iter()
        .map(|n| n * step + if halves && n % 3 == 0 { step / 2 } else { 0 })
        .collect();
    let rows: Vec<(&'static str, i64)> =
        names.iter().copied().zip(values.iter().copied()).collect();
    let (i, j) = (
        m.dice.from(0..=count - 1) as usize,
        m.dice.from(0..=count - 1) as usize,
    );
    keep(
        values[i] > values[j]
            && (values[i] - values[j]) != step
            && values[i] % step == 0
            && values[j] % step == 0,
    )?;
    let (large, small) = (values[i], values[j]);
    let kind = m.level.pick(1, m.dice.from(1..=2), m.dice.from(2..=3));
    let third = (0..count as usize).find(|k| *k != i && *k != j)?;
    let picture = if as_pictures {
        let halves: Vec<(&'static str, i64)> = names
            .iter()
            .copied()
            .zip(values.iter().map(|v| v * 2 / step))
            .collect();
        pictures(title, &halves, step)
    } else {
        bars(title, axis, &rows, step)
    };
    let marks_of = |v: i64| v / step;
    // A picture graph is read by symbols and key, a bar graph by its heights.
    let with_task = |task: &str| {
        if as_pictures {
            json!({"task": task, "step": step, "large": marks_of(large), "small": marks_of(small)})
        } else {
            json!({"task": task, "large": large, "small": small})
        }
    };
    let draft = match kind {
        1 => Draft::new(with_task("graph_difference"))
            .ask(
                m.say("ask-more")
                    .word("one", names[i])
                    .word("two", names[j]),
            )
            .ask(picture)
            .whole(large - small)
            .mistake("scale-not-used", whole((large - small) / step))
            .mistake("added-instead", whole(large + small)),
        2 => Draft::new(with_task("graph_total"))
            .ask(
                m.say("ask-both")
                    .word("one", names[i])
                    .word("two", names[j]),
            )
            .ask(picture)
            .whole(large + small)
            .mistake("scale-not-used", whole((large + small) / step))
            .mistake("subtracted-instead", whole(large - small)),
        _ => {
            let rest = values[third];
            keep(large + rest > small && values[third] % step == 0)?;
            let mut statement = with_task("graph_two_step");
            statement["other"] = json!(if as_pictures { marks_of(rest) } else { rest });
            Draft::new(statement)
                .ask(
                    m.say("ask-two")
                        .word("one", names[i])
                        .word("two", names[third])
                        .word("three", names[j]),
                )
                .ask(picture)
                .whole(large + rest - small)
                .mistake("scale-not-used", whole((large + rest - small) / step))
                .mistake("stopped-after-one-step", whole(large + rest))
        }
    };
    let draft = draft
        .hint(m.say("hint-scale"))
        .hint(
            m.say(if as_pictures {
                "hint-picture"
            } else {
                "hint-bar"
            })
            .count("step", step),
        )
        .step(m.say("step-value").word("name", names[i]).math(
            "work",
            if as_pictures {
                equal(product([num(marks_of(large)), num(step)]), num(large))
            } else {
                num(large)
            },
        ))
        .step(m.say("step-value").word("name", names[j]).math(
            "work",
            if as_pictures {
                equal(product([num(marks_of(small)), num(step)]), num(small))
            } else {
                num(small)
            },
        ));
    Some(match kind {
        1 => draft.step(equal(
            difference(num(large), num(small)),
            num(large - small),
        )),
        2 => draft.step(equal(sum([num(large), num(small)]), num(large + small))),
        _ => draft.step(equal(
            difference(sum([num(large), num(values[third])]), num(small)),
            num(large + values[third] - small),
        )),
    })
}

fn build_bar_graph(m: &mut Make) -> Option<Draft> {
    let (_, axis, names) = m.dice.pick(&GRAPHS);
    let step = m
        .dice
        .pick(m.level.pick(&[1, 2][..], &[2, 5][..], &[5, 10][..]));
    let count = m.level.pick(3, 4, 4);
    let heights: Vec<i64> = (0..count).map(|_| m.dice.from(1..=9) * step).collect();
    let mut swapped = heights.clone();
    swapped.swap(0, 1);
    let all_same: std::collections::BTreeSet<i64> = heights.iter().copied().collect();
    keep(all_same.len() >= 3 && heights[0] != heights[1])?;
    let rows = names[..count]
        .iter()
        .zip(&heights)
        .map(|(name, h)| vec![words(name), cell(num(h))])
        .collect();
    let alt = (0..count).fold(
        m.say(if count == 3 { "table-3" } else { "table-4" }),
        |say, k| {
            say.word(["a", "b", "c", "d"][k], names[k])
                .count(["va", "vb", "vc", "vd"][k], heights[k])
        },
    );
    let plot = |heights: Vec<i64>| Answer::Plot { heights };
    let one_short: Vec<i64> = heights
        .iter()
        .enumerate()
        .map(|(k, h)| if k == count - 1 { h - step } else { *h })
        .collect();
    Some(
        Draft::new(json!({"task": "bar_heights", "values": heights}))
            .ask(m.say("ask").count("step", step))
            .ask(table(&["graph-kind", axis], rows, alt))
            .answer(
                Entry::Plot {
                    style: PlotStyle::Bars,
                    columns: names[..count]
                        .iter()
                        .map(|name| Choice { shows: says(name) })
                        .collect(),
                    step,
                    top: 10 * step,
                },
                plot(heights.clone()),
            )
            .hint(m.say("hint-scale").count("step", step))
            .hint(m.say("hint-each"))
            .step(m.say("hint-scale").count("step", step))
            .step(
                m.say("step-first")
                    .word("name", names[0])
                    .count("value", heights[0])
                    .count("marks", heights[0] / step),
            )
            .mistake("bars-swapped", plot(swapped))
            .mistake("bar-one-mark-short", plot(one_short)),
    )
}

fn quarter(n: i64) -> Ratio<i64> {
    Ratio::new(n, 4)
}

fn measure_line_plot(m: &mut Make) -> Option<Draft> {
    if m.level == crate::item::Level::Entry || m.dice.one_in(2) {
        let bottom = m.level.pick(m.dice.pick(&[2, 4]), 4, 4);
        let from = m.level.pick(0, 0, m.dice.from(1..=2));
        let length = Ratio::new(m.dice.from(bottom + 1..=5 * bottom), bottom);
        keep(!length.is_integer())?;
        let end = length + from;
        return Some(
            Draft::new(json!({"task": "ruler_length", "from": from, "whole": end.to_integer(), "parts": bottom, "marks": (end.fract() * bottom).to_integer()}))
                .ask(m.say("ask-ruler"))
                .ask(ruler("unit-in", 8, bottom, Ratio::from(from), end))
                .mixed_unit(length, "unit-in")
                .hint(m.say("hint-parts").count("parts", bottom))
                .hint(m.say(if from == 0 { "hint-whole" } else { "hint-start" }))
                .step(m.say("step-whole").count("whole", end.to_integer()))
                .step(m.say("step-part").math("length", rational(length, true)))
                .mistake("fraction-part-left-out", mixed(Ratio::from(length.to_integer())))
                .mistake_if(from > 0, "end-mark-read-as-length", mixed(end))
                .mistake_if(from == 0, "mark-taken-as-tenth", mixed(Ratio::from(end.to_integer()) + Ratio::new((end.fract() * bottom).to_integer(), 10))),
        );
    }
    let start = m.dice.from(1..=4) * 4;
    let counts: Vec<i64> = (0..6).map(|_| m.dice.from(0..=4)).collect();
    let columns: Vec<(Ratio<i64>, i64)> = counts
        .iter()
        .enumerate()
        .map(|(k, n)| (quarter(start + k as i64), *n))
        .collect();
    let at = m.dice.from(1..=4) as usize;
    let longer = m.level == crate::item::Level::Stretch;
    let right: i64 = if longer {
        counts[at + 1..].iter().sum()
    } else {
        counts[at]
    };
    keep(
        right > 0
            && counts.iter().sum::<i64>() >= 6
            && right != counts[at] + 1
            && (counts[at] > 0 || !longer),
    )?;
    let pairs: Vec<(String, i64)> = columns.iter().map(|(v, n)| (text_of(*v), *n)).collect();
    let value = columns[at].0;
    Some(
        Draft::new(json!({"task": if longer { "dots_above" } else { "dots_at" }, "at": text_of(value), "dots": counts, "first": text_of(columns[0].0), "step": "1/4"}))
            .ask(m.say(if longer { "ask-longer" } else { "ask-dots" }).math("value", rational(value, true)).math("step", crate::item::expr::frac(1, 4)))
            .ask(dots("plot-leaves", "plot-inches", columns[0].0, columns[5].0, quarter(1), &columns))
            .whole(right)
            .hint(m.say("hint-dot"))
            .hint(m.say("hint-find").math("value", rational(value, true)))
            .step(m.say("hint-find").math("value", rational(value, true)))
            .step(m.say("step-count").count("right", right))
            .mistake(if longer { "value-itself-counted-in" } else { "counted-the-next-column" }, whole(if longer { right + counts[at] } else { counts[at + 1] }))
            .mistake_unless_same("counted-all-dots", whole(pairs.iter().map(|p| p.1).sum())),
    )
}

/// A mixed number as text, `2 1/4`.
fn text_of(value: Ratio<i64>) -> String {
    let (w, t) = (value.to_integer(), value.fract());
    if *t.numer() == 0 {
        w.to_string()
    } else if w == 0 {
        format!("{}/{}", t.numer(), t.denom())
    } else {
        format!("{w} {}/{}", t.numer(), t.denom())
    }
}

fn line_plot(m: &mut Make) -> Option<Draft> {
    let bottom = m.level.pick(4, 8, 8);
    let start = m.dice.from(1..=4) * bottom + m.dice.from(0..=bottom - 1);
    let counts: Vec<i64> = (0..m.level.pick(5, 6, 7))
        .map(|_| m.dice.from(0..=3))
        .collect();
    let columns: Vec<(Ratio<i64>, i64)> = counts
        .iter()
        .enumerate()
        .map(|(k, n)| (Ratio::new(start + k as i64, bottom), *n))
        .collect();
    let used: Vec<&(Ratio<i64>, i64)> = columns.iter().filter(|c| c.1 > 0).collect();
    keep(used.len() >= 3)?;
    let (shortest, longest) = (used[0].0, used[used.len() - 1].0);
    let kind = m.level.pick(1, m.dice.from(1..=2), m.dice.from(1..=2));
    let statement = |task: &str| json!({"task": task, "first": text_of(columns[0].0), "step": format!("1/{bottom}"), "dots": counts});
    let plot = dots(
        "plot-shells",
        "plot-inches",
        columns[0].0,
        columns[columns.len() - 1].0,
        Ratio::new(1, bottom),
        &columns,
    );
    let (most_at, most) = used.iter().map(|c| (c.0, c.1)).max_by_key(|c| c.1)?;
    keep(kind == 1 || used.iter().filter(|c| c.1 == most).count() == 1 && most > 1)?;
    let part = crate::item::expr::frac(1, bottom);
    Some(if kind == 1 {
        let value = longest - shortest;
        Draft::new(statement("plot_range"))
            .ask(m.say("ask-range").math("step", part))
            .ask(plot)
            .mixed_unit(value, "unit-in")
            .hint(m.say("hint-ends"))
            .hint(m.say("hint-difference"))
            .step(
                m.say("step-ends")
                    .math("long", rational(longest, true))
                    .math("short", rational(shortest, true)),
            )
            .step(equal(
                difference(rational(longest, true), rational(shortest, true)),
                rational(value, true),
            ))
            .mistake("added-instead", mixed(longest + shortest))
            .mistake("gave-the-longest-only", mixed(longest))
    } else {
        let value = most_at * most;
        Draft::new(statement("plot_total_of_most"))
            .ask(m.say("ask-total").math("step", part))
            .ask(plot)
            .mixed_unit(value, "unit-in")
            .hint(m.say("hint-most"))
            .hint(m.say("hint-times"))
            .step(
                m.say("step-most")
                    .count("count", most)
                    .math("value", rational(most_at, true)),
            )
            .step(equal(
                product([num(most), rational(most_at, true)]),
                rational(value, true),
            ))
            .mistake("used-one-only", mixed(most_at))
            .mistake("count-and-value-added", mixed(most_at + most))
    })
}

fn redistribute(m: &mut Make) -> Option<Draft> {
    let bottom = m.level.pick(4, m.dice.pick(&[4, 8]), 8);
    let counts: Vec<i64> = (0..bottom - 1)
        .map(|_| m.dice.from(0..=m.level.pick(2, 2, 2)))
        .collect();
    let columns: Vec<(Ratio<i64>, i64)> = counts
        .iter()
        .enumerate()
        .map(|(k, n)| (Ratio::new(k as i64 + 1, bottom), *n))
        .collect();
    let total_count: i64 = counts.iter().sum();
    let total: Ratio<i64> = columns.iter().fold(Ratio::from(0), |t, c| t + c.0 * c.1);
    let used = counts.iter().filter(|n| **n > 0).count() as i64;
    keep((3..=10).contains(&total_count) && used >= 2 && used < total_count)?;
    let value = total / total_count;
    keep(m.level.pick(
        *value.denom() <= 8,
        *value.denom() <= 16,
        *value.denom() <= 40,
    ))?;
    let wrong = total / used;
    Some(
        Draft::new(json!({"task": "equal_share_of_plot", "first": format!("1/{bottom}"), "step": format!("1/{bottom}"), "dots": counts}))
            .ask(m.say("ask").math("step", crate::item::expr::frac(1, bottom)))
            .ask(dots("plot-jars", "plot-cups", columns[0].0, columns[columns.len() - 1].0, Ratio::new(1, bottom), &columns))
            .mixed_unit(value, "unit-cup")
            .hint(m.say("hint-total"))
            .hint(m.say("hint-count").count("count", total_count))
            .step(m.say("step-total").math("total", rational(total, true)))
            .step(equal(quotient(rational(total, true), num(total_count)), rational(value, true)))
            .mistake("stopped-after-one-step", mixed(total))
            .mistake("divided-by-number-of-columns", mixed(wrong)),
    )
}
