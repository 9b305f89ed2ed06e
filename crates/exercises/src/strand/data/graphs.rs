//! Picture and bar graphs.

use crate::answer::{Answer, Choice, Entry, PlotStyle};
use crate::draw::{bars, cell, pictures, table, words};
use crate::expr::{difference, equal, num, product, sum};
use crate::make::{Draft, Generator, Make, keep, says, whole};
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g3-scaled-graphs", 3, scaled_graphs),
    Generator::new("g3-build-bar-graph", 3, build_bar_graph),
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
    let halves = as_pictures && step % 2 == 0 && m.level != crate::Level::Entry;
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
    let (&(large_name, large), &(small_name, small)) = (rows.get(i)?, rows.get(j)?);
    keep(large > small && large - small != step && large % step == 0 && small % step == 0)?;
    let kind = m.level.pick(1, m.dice.from(1..=2), m.dice.from(2..=3));
    let third = (0..count as usize).find(|k| *k != i && *k != j)?;
    let &(third_name, rest) = rows.get(third)?;
    let figure = if as_pictures {
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
    let with_task = |task: &str, other: Option<i64>| {
        let mut statement = if as_pictures {
            json!({"task": task, "step": step, "large": marks_of(large), "small": marks_of(small)})
        } else {
            json!({"task": task, "large": large, "small": small})
        };
        if let (Some(other), Some(fields)) = (other, statement.as_object_mut()) {
            fields.insert("other".to_owned(), other.into());
        }
        statement
    };
    let draft = match kind {
        1 => Draft::new(with_task("graph_difference", None))
            .ask(
                m.say("ask-more")
                    .word("one", large_name)
                    .word("two", small_name),
            )
            .ask(figure)
            .whole(large - small)
            .misconception("scale-not-used", whole((large - small) / step))
            .misconception("added-instead", whole(large + small)),
        2 => Draft::new(with_task("graph_total", None))
            .ask(
                m.say("ask-both")
                    .word("one", large_name)
                    .word("two", small_name),
            )
            .ask(figure)
            .whole(large + small)
            .misconception("scale-not-used", whole((large + small) / step))
            .misconception("subtracted-instead", whole(large - small)),
        _ => {
            keep(large + rest > small && rest % step == 0)?;
            let other = if as_pictures { marks_of(rest) } else { rest };
            Draft::new(with_task("graph_two_step", Some(other)))
                .ask(
                    m.say("ask-two")
                        .word("one", large_name)
                        .word("two", third_name)
                        .word("three", small_name),
                )
                .ask(figure)
                .whole(large + rest - small)
                .misconception("scale-not-used", whole((large + rest - small) / step))
                .misconception("stopped-after-one-step", whole(large + rest))
        }
    };
    let draft = draft.hint(m.say("hint-scale")).hint(
        m.say(if as_pictures {
            "hint-picture"
        } else {
            "hint-bar"
        })
        .count("step", step),
    );
    // The values in the order in which they are asked for.
    let mut read = vec![(large_name, large), (small_name, small)];
    if kind == 3 {
        read.insert(1, (third_name, rest));
    }
    let draft = read.into_iter().fold(draft, |draft, (name, value)| {
        let work = if as_pictures {
            equal(product([num(marks_of(value)), num(step)]), num(value))
        } else {
            num(value)
        };
        draft.step(m.say("step-value").word("name", name).math("work", work))
    });
    Some(match kind {
        1 => draft.step(equal(
            difference(num(large), num(small)),
            num(large - small),
        )),
        2 => draft.step(equal(sum([num(large), num(small)]), num(large + small))),
        _ => draft.step(equal(
            difference(sum([num(large), num(rest)]), num(small)),
            num(large + rest - small),
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
    let different: std::collections::BTreeSet<i64> = heights.iter().copied().collect();
    let &[first, second, ..] = heights.as_slice() else {
        return None;
    };
    keep(different.len() >= 3 && first != second)?;
    let bars = || names.into_iter().zip(&heights);
    let rows = bars()
        .map(|(name, height)| vec![words(name), cell(num(height))])
        .collect();
    let places = [("a", "va"), ("b", "vb"), ("c", "vc"), ("d", "vd")];
    let alt = places.into_iter().zip(bars()).fold(
        m.say(if count == 3 { "table-3" } else { "table-4" }),
        |say, ((name_place, height_place), (name, height))| {
            say.word(name_place, name).count(height_place, *height)
        },
    );
    // Above the entry level, now and then a picture graph.
    let as_pictures = m.level != crate::Level::Entry && m.dice.one_in(2);
    let plot = |heights: Vec<i64>| Answer::Plot { heights };
    let one_short: Vec<i64> = heights
        .iter()
        .enumerate()
        .map(|(k, h)| if k == count - 1 { h - step } else { *h })
        .collect();
    let scale = if as_pictures {
        "hint-symbol"
    } else {
        "hint-scale"
    };
    Some(
        Draft::new(json!({"task": "bar_heights", "values": heights}))
            .ask(
                m.say(if as_pictures { "ask-pictures" } else { "ask" })
                    .count("step", step),
            )
            .ask(table(&["graph-kind", axis], rows, alt))
            .answer(
                Entry::Plot {
                    style: if as_pictures {
                        PlotStyle::Pictures
                    } else {
                        PlotStyle::Bars
                    },
                    columns: bars()
                        .map(|(name, _)| Choice { shows: says(name) })
                        .collect(),
                    step,
                    top: 10 * step,
                },
                plot(heights.clone()),
            )
            .hint(m.say(scale).count("step", step))
            .hint(m.say(if as_pictures {
                "hint-each-row"
            } else {
                "hint-each"
            }))
            .step(m.say(scale).count("step", step))
            .step(
                m.say(if as_pictures {
                    "step-first-row"
                } else {
                    "step-first"
                })
                .word("name", names[0])
                .count("value", first)
                .count("marks", first / step),
            )
            .misconception(
                if as_pictures {
                    "rows-swapped"
                } else {
                    "bars-swapped"
                },
                plot(swapped),
            )
            .misconception(
                if as_pictures {
                    "one-symbol-short"
                } else {
                    "bar-one-mark-short"
                },
                plot(one_short),
            ),
    )
}
