//! Lengths on a ruler and on line plots.

use crate::answer::{Answer, Choice, Entry, PlotStyle};
use crate::draw::{dots, ruler};
use crate::expr::{difference, equal, num, product, quotient, rational};
use crate::make::{Draft, Generator, Make, keep, mixed, whole};
use crate::say::Say;
use num_rational::Ratio;
use serde_json::json;

/// The generators.
pub const GENERATORS: &[Generator] = &[
    Generator::new("g3-measure-line-plot", 4, measure_line_plot),
    Generator::new("g4-line-plot", 3, line_plot),
    Generator::new("g5-line-plot", 3, redistribute),
];

fn quarter(n: i64) -> Ratio<i64> {
    Ratio::new(n, 4)
}

/// A length in inches.
fn inches(value: Ratio<i64>) -> crate::Expr {
    crate::expr::measure(rational(value, true), "unit-in")
}

fn measure_line_plot(m: &mut Make) -> Option<Draft> {
    if m.level != crate::Level::Entry && m.dice.one_in(3) {
        return build_dot_plot(m);
    }
    if m.level == crate::Level::Entry || m.dice.one_in(2) {
        let bottom = m.level.pick(m.dice.pick(&[2, 4]), 4, 4);
        let from = m.level.pick(0, 0, m.dice.from(1..=2));
        let thing = m.dice.from(1..=4);
        let length = Ratio::new(m.dice.from(bottom + 1..=5 * bottom), bottom);
        keep(!length.is_integer())?;
        let end = length + from;
        return Some(
            Draft::new(json!({"task": "ruler_length", "from": from, "whole": end.to_integer(), "parts": bottom, "marks": (end.fract() * bottom).to_integer()}))
                .ask(m.say(&format!("ask-ruler-{thing}")))
                .ask(ruler("unit-in", 8, bottom, Ratio::from(from), end))
                .mixed_unit(length, "unit-in")
                .hint(m.say("hint-parts").count("parts", bottom))
                .hint(m.say(if from == 0 { "hint-whole" } else { "hint-start" }))
                .step(m.say("step-whole").count("whole", end.to_integer()))
                .step(m.say("step-part").math("length", inches(length)))
                .misconception("fraction-part-left-out", mixed(Ratio::from(length.to_integer())))
                .misconception_if(from > 0, "end-mark-read-as-length", mixed(end))
                .misconception_if(from == 0, "mark-taken-as-tenth", mixed(Ratio::from(end.to_integer()) + Ratio::new((end.fract() * bottom).to_integer(), 10))),
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
    let longer = m.level == crate::Level::Stretch;
    let [first, .., last] = *columns.as_slice() else {
        return None;
    };
    let (_, from_value_on) = columns.split_at_checked(at)?;
    let ((value, at_value), above) = from_value_on.split_first()?;
    let right: i64 = if longer {
        above.iter().map(|(_, dots)| dots).sum()
    } else {
        *at_value
    };
    let all_dots = counts.iter().sum::<i64>();
    // The prompt says 1/4: who takes its 4 for the count is not to be right often.
    keep(right != 4 || m.dice.one_in(4))?;
    keep(right > 0 && all_dots >= 6 && right != at_value + 1 && (*at_value > 0 || !longer))?;
    let value = *value;
    let next = above.first()?.1;
    Some(
        Draft::new(json!({"task": if longer { "dots_above" } else { "dots_at" }, "at": text_of(value), "dots": counts, "first": text_of(first.0), "step": "1/4"}))
            .ask(m.say(if longer { "ask-longer" } else { "ask-dots" }).math("value", inches(value)).math("step", inches(Ratio::new(1, 4))))
            .ask(dots("plot-leaves", "plot-inches", first.0, last.0, quarter(1), &columns))
            .whole(right)
            .hint(m.say("hint-dot"))
            .hint(m.say("hint-find").math("value", rational(value, true)))
            .step(m.say("hint-find").math("value", rational(value, true)))
            .step(m.say("step-count").count("right", right))
            .misconception(if longer { "value-itself-counted-in" } else { "counted-the-next-column" }, whole(if longer { right + at_value } else { next }))
            .misconception_unless_same("counted-all-dots", whole(all_dots)),
    )
}

/// Eight lengths to be set as dots over a line.
fn build_dot_plot(m: &mut Make) -> Option<Draft> {
    // Halves and quarters in grade 3, eighths in grades 4 and 5.
    let parts = if m.concept.starts_with("g3") {
        m.level.pick(2, m.dice.pick(&[2, 4]), 4)
    } else {
        8
    };
    let say = |suffix: &str| Say::new(format!("g3-measure-line-plot-{suffix}"));
    let start = m.dice.from(2..=5) * parts + m.dice.from(0..=parts - 1);
    let places: Vec<i64> = (0..8).map(|_| m.dice.from(0..=4)).collect();
    let count_at = |place: i64| places.iter().filter(|p| **p == place).count() as i64;
    let heights: Vec<i64> = (0..5).map(count_at).collect();
    let at = |place: i64| Ratio::new(start + place, parts);
    keep(heights.iter().filter(|n| **n > 0).count() >= 4 && heights.iter().all(|n| *n <= 4))?;
    let plot = |heights: Vec<i64>| Answer::Plot { heights };
    let once = heights.iter().map(|n| (*n).min(1)).collect();
    // The last length of the list has no dot.
    let mut one_short = heights.clone();
    *one_short.get_mut(usize::try_from(*places.last()?).ok()?)? -= 1;
    let most = *heights.iter().max()?;
    let names = ["a", "b", "c", "d", "e", "f", "g", "h"];
    let ask = names
        .iter()
        .zip(&places)
        .fold(say("ask-build"), |say, (name, place)| {
            say.math(name, rational(at(*place), true))
        });
    let lengths: Vec<String> = places.iter().map(|place| text_of(at(*place))).collect();
    let first_at = at(*places.first()?);
    let first_count = count_at(*places.first()?);
    Some(
        Draft::new(json!({
            "task": "dot_heights", "lengths": lengths,
            "first": text_of(at(0)), "last": text_of(at(4)),
        }))
        .ask(ask)
        .answer(
            Entry::Plot {
                style: PlotStyle::Dots,
                columns: (0..5)
                    .map(|place| Choice {
                        shows: rational(at(place), true).into(),
                    })
                    .collect(),
                step: 1,
                top: 5,
            },
            plot(heights.clone()),
        )
        .hint(say("hint-one-dot"))
        .hint(say("hint-how-many").math("value", inches(first_at)))
        .step(
            say("step-column")
                .math("value", inches(first_at))
                .count("count", first_count),
        )
        .step(say("step-all").numbers("heights", &heights))
        .misconception_if(most > 1, "repeated-length-shown-once", plot(once))
        .misconception_unless_same("last-length-left-out", plot(one_short)),
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
    if m.level != crate::Level::Entry && m.dice.one_in(3) {
        return build_dot_plot(m);
    }
    let bottom = m.level.pick(4, 8, 8);
    let start = m.dice.from(1..=4) * bottom + m.dice.from(0..=bottom - 1);
    let counts: Vec<i64> =
        (0..m
            .level
            .pick(m.dice.from(5..=8), m.dice.from(5..=8), m.dice.from(6..=9)))
            .map(|_| m.dice.from(0..=3))
            .collect();
    let columns: Vec<(Ratio<i64>, i64)> = counts
        .iter()
        .enumerate()
        .map(|(k, n)| (Ratio::new(start + k as i64, bottom), *n))
        .collect();
    let used: Vec<&(Ratio<i64>, i64)> = columns.iter().filter(|c| c.1 > 0).collect();
    keep(used.len() >= 3)?;
    let (shortest, longest) = (used.first()?.0, used.last()?.0);
    let (first, last) = (columns.first()?.0, columns.last()?.0);
    let kind = m.level.pick(1, m.dice.from(1..=2), m.dice.from(1..=2));
    let statement = |task: &str| json!({"task": task, "first": text_of(first), "step": format!("1/{bottom}"), "dots": counts});
    let plot = dots(
        "plot-shells",
        "plot-inches",
        first,
        last,
        Ratio::new(1, bottom),
        &columns,
    );
    let (most_at, most) = used.iter().map(|c| (c.0, c.1)).max_by_key(|c| c.1)?;
    keep(kind == 1 || used.iter().filter(|c| c.1 == most).count() == 1 && most > 1)?;
    let part = inches(Ratio::new(1, bottom));
    Some(if kind == 1 {
        let value = longest - shortest;
        keep(!value.is_integer() || m.dice.one_in(2))?;
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
            .misconception("added-instead", mixed(longest + shortest))
            .misconception("gave-the-longest-only", mixed(longest))
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
                    .math("value", inches(most_at)),
            )
            .step(equal(
                product([num(most), rational(most_at, true)]),
                rational(value, true),
            ))
            .misconception("used-one-only", mixed(most_at))
            .misconception("count-and-value-added", mixed(most_at + most))
    })
}

fn redistribute(m: &mut Make) -> Option<Draft> {
    if m.dice.one_in(5) {
        return build_dot_plot(m);
    }
    let bottom = m.level.pick(4, m.dice.pick(&[4, 8]), 8);
    let counts: Vec<i64> = (0..bottom - 1).map(|_| m.dice.from(0..=4)).collect();
    let columns: Vec<(Ratio<i64>, i64)> = counts
        .iter()
        .enumerate()
        .map(|(k, n)| (Ratio::new(k as i64 + 1, bottom), *n))
        .collect();
    let total_count: i64 = counts.iter().sum();
    let total: Ratio<i64> = columns.iter().fold(Ratio::from(0), |t, c| t + c.0 * c.1);
    let used = counts.iter().filter(|n| **n > 0).count() as i64;
    keep((3..=12).contains(&total_count) && used >= 2 && used < total_count)?;
    // A whole number shared, or a unit fraction shared, as far as the grade goes.
    keep(total.is_integer() || *total.numer() == 1)?;
    let value = total / total_count;
    keep(value != Ratio::new(1, 2) || m.dice.one_in(3))?;
    keep(m.level.pick(
        *value.denom() <= 8,
        *value.denom() <= 16,
        *value.denom() <= 40,
    ))?;
    let wrong = total / used;
    Some(
        Draft::new(json!({"task": "equal_share_of_plot", "first": format!("1/{bottom}"), "step": format!("1/{bottom}"), "dots": counts}))
            .ask(m.say("ask").math("step", crate::expr::measure(crate::expr::frac(1, bottom), "unit-cup")))
            .ask(dots("plot-jars", "plot-cups", columns.first()?.0, columns.last()?.0, Ratio::new(1, bottom), &columns))
            .mixed_unit(value, "unit-cup")
            .hint(m.say("hint-total"))
            .hint(m.say("hint-count").count("count", total_count))
            .step(m.say("step-total").math("total", crate::expr::measure(rational(total, true), "unit-cup")))
            .step(equal(quotient(rational(total, true), num(total_count)), rational(value, true)))
            .misconception("stopped-after-one-step", mixed(total))
            .misconception("divided-by-number-of-columns", mixed(wrong)),
    )
}
