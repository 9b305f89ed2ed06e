//! Graphs of data.

use super::draw;
use crate::expr::{Expr, rational};
use crate::figure::{
    Bar, BarChart, BoxPlot, Cell, DataTable, DotColumn, DotPlot, Drawing, Figure, Histogram,
    HistogramBin, LineLabel, PictureGraph, PictureRow,
};
use crate::number::Rational;
use crate::say::Say;
use num_rational::Ratio;

/// A bar graph; bars as (label's message id, value).
#[must_use]
pub fn bars(
    title: &'static str,
    axis: &'static str,
    bars: &[(&'static str, i64)],
    scale_step: i64,
) -> Figure {
    let top = bars.iter().map(|bar| bar.1).max().unwrap_or(0);
    let scale_to = (top + scale_step - 1) / scale_step * scale_step + scale_step;
    let values: Vec<i64> = bars.iter().map(|bar| bar.1).collect();
    draw(
        Drawing::BarChart(BarChart {
            title: Say::new(title),
            bars: bars
                .iter()
                .map(|(label, value)| Bar {
                    label: Say::new(*label),
                    value: *value,
                })
                .collect(),
            scale_step,
            scale_to,
            axis: Say::new(axis),
        }),
        labelled("figure-bars", bars)
            .word("title", title)
            .numbers("values", values)
            .number("step", scale_step),
    )
}

/// A picture graph; rows as (label's message id, halves of a symbol).
#[must_use]
pub fn pictures(title: &'static str, rows: &[(&'static str, i64)], each: i64) -> Figure {
    let symbols: Vec<String> = rows
        .iter()
        .map(|(_, halves)| {
            crate::decimal::Dec::new(halves * 5, 1)
                .trimmed()
                .to_string()
        })
        .collect();
    draw(
        Drawing::PictureGraph(PictureGraph {
            title: Say::new(title),
            rows: rows
                .iter()
                .map(|(label, halves)| PictureRow {
                    label: Say::new(*label),
                    half_symbols: *halves as u32,
                })
                .collect(),
            each,
            key: Say::new("figure-picture-key").count("each", each),
        }),
        labelled("figure-pictures", rows)
            .word("title", title)
            .numbers("symbols", symbols)
            .count("each", each),
    )
}

/// The names of up to four bars or rows as arguments `a` to `d`.
fn labelled(id: &'static str, rows: &[(&'static str, i64)]) -> Say {
    let id = match rows.len() {
        3 => format!("{id}-3"),
        _ => format!("{id}-4"),
    };
    ["a", "b", "c", "d"]
        .into_iter()
        .zip(rows)
        .fold(Say::new(id), |say, (name, (label, _))| {
            say.word(name, *label)
        })
}

/// A dot plot; columns as (value, dots).
#[must_use]
pub fn dots(
    title: &'static str,
    axis: &'static str,
    from: Ratio<i64>,
    to: Ratio<i64>,
    step: Ratio<i64>,
    columns: &[(Ratio<i64>, i64)],
) -> Figure {
    let mut labels = Vec::new();
    let mut tick = from;
    while tick <= to {
        labels.push(LineLabel {
            at: Rational::from(tick),
            label: rational(tick, true),
        });
        tick += step;
    }
    let counts: Vec<i64> = columns.iter().map(|column| column.1).collect();
    draw(
        Drawing::DotPlot(DotPlot {
            title: Say::new(title),
            from: Rational::from(from),
            to: Rational::from(to),
            step: Rational::from(step),
            labels,
            columns: columns
                .iter()
                .map(|(at, count)| DotColumn {
                    at: Rational::from(*at),
                    count: *count as u32,
                })
                .collect(),
            axis: Say::new(axis),
        }),
        Say::new(match title {
            // Grades 3 to 5 call it a line plot.
            "plot-leaves" | "plot-shells" | "plot-jars" => "figure-line-plot",
            _ => "figure-dots",
        })
        .word("title", title)
        .math("from", rational(from, true))
        .math("to", rational(to, true))
        .numbers("counts", counts),
    )
}

/// A histogram.
#[must_use]
pub fn histogram(
    title: &'static str,
    axis: &'static str,
    bins: Vec<HistogramBin>,
    scale_step: i64,
) -> Figure {
    let counts: Vec<i64> = bins.iter().map(|bin| bin.count).collect();
    let first = bins.first().map_or(0, |bin| bin.from);
    let last = bins.last().map_or(0, |bin| bin.to);
    let width = bins.first().map_or(0, |bin| bin.to - bin.from + 1);
    draw(
        Drawing::Histogram(Histogram {
            title: Say::new(title),
            bins,
            scale_step,
            axis: Say::new(axis),
        }),
        Say::new("figure-histogram")
            .word("title", title)
            .number("from", first)
            .number("to", last)
            .count("width", width)
            .numbers("counts", counts),
    )
}

/// The five numbers that a box plot shows.
#[derive(Clone, Copy)]
pub struct FiveNumbers {
    /// The least value.
    pub least: i64,
    /// The lower quartile.
    pub lower_quartile: i64,
    /// The median.
    pub median: i64,
    /// The upper quartile.
    pub upper_quartile: i64,
    /// The greatest value.
    pub greatest: i64,
}

/// A box plot.
#[must_use]
pub fn box_plot(
    title: &'static str,
    axis: &'static str,
    five: FiveNumbers,
    from: i64,
    to: i64,
    step: i64,
) -> Figure {
    draw(
        Drawing::BoxPlot(BoxPlot {
            title: Say::new(title),
            least: five.least.into(),
            lower_quartile: five.lower_quartile.into(),
            median: five.median.into(),
            upper_quartile: five.upper_quartile.into(),
            greatest: five.greatest.into(),
            from: from.into(),
            to: to.into(),
            step: step.into(),
            axis: Say::new(axis),
        }),
        Say::new("figure-box-plot")
            .word("title", title)
            .number("least", five.least)
            .number("lower", five.lower_quartile)
            .number("median", five.median)
            .number("upper", five.upper_quartile)
            .number("greatest", five.greatest),
    )
}

/// A cell of words.
#[must_use]
pub fn words(id: &'static str) -> Cell {
    Cell::Say { say: Say::new(id) }
}

/// A cell of mathematics.
#[must_use]
pub fn cell(expr: impl Into<Expr>) -> Cell {
    Cell::Math { expr: expr.into() }
}

/// A table of data.
#[must_use]
pub fn table(header: &[&'static str], rows: Vec<Vec<Cell>>, alt: Say) -> Figure {
    draw(
        Drawing::DataTable(DataTable {
            header: header.iter().map(|id| Say::new(*id)).collect(),
            rows,
        }),
        alt,
    )
}
