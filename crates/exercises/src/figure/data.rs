//! Graphs, ratios and tables.

use super::numbers::LineLabel;
use crate::expr::Expr;
use crate::number::Rational;
use crate::say::Say;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A bar graph.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct BarChart {
    /// What it is about.
    pub title: Say,
    /// Its bars.
    pub bars: Vec<Bar>,
    /// Distance between marks of the scale.
    #[ts(type = "number")]
    pub scale_step: i64,
    /// Top of the scale.
    #[ts(type = "number")]
    pub scale_to: i64,
    /// Words at the scale.
    pub axis: Say,
}

/// One bar.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Bar {
    /// Its name.
    pub label: Say,
    /// Its height.
    #[ts(type = "number")]
    pub value: i64,
}

/// A picture graph.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PictureGraph {
    /// What it is about.
    pub title: Say,
    /// Its rows.
    pub rows: Vec<PictureRow>,
    /// What one whole symbol counts for.
    #[ts(type = "number")]
    pub each: i64,
    /// Words for the key, such as "each circle stands for 4 books".
    pub key: Say,
}

/// One row of a picture graph.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PictureRow {
    /// Its name.
    pub label: Say,
    /// Symbols, counted in halves.
    pub half_symbols: u32,
}

/// A dot plot.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DotPlot {
    /// What it is about.
    pub title: Say,
    /// Left end of the line.
    pub from: Rational,
    /// Right end.
    pub to: Rational,
    /// Distance between ticks.
    pub step: Rational,
    /// Ticks that carry a label.
    pub labels: Vec<LineLabel>,
    /// Columns of dots.
    pub columns: Vec<DotColumn>,
    /// Words under the line.
    pub axis: Say,
}

/// Dots above one value.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DotColumn {
    /// The value.
    pub at: Rational,
    /// How many dots.
    pub count: u32,
}

/// A histogram.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Histogram {
    /// What it is about.
    pub title: Say,
    /// Intervals from the left.
    pub bins: Vec<HistogramBin>,
    /// Distance between marks of the scale.
    #[ts(type = "number")]
    pub scale_step: i64,
    /// Words under the intervals.
    pub axis: Say,
}

/// One interval of a histogram.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct HistogramBin {
    /// Smallest value in it.
    #[ts(type = "number")]
    pub from: i64,
    /// Greatest value in it.
    #[ts(type = "number")]
    pub to: i64,
    /// How many values.
    #[ts(type = "number")]
    pub count: i64,
}

/// A box plot.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct BoxPlot {
    /// What it is about.
    pub title: Say,
    /// Smallest value.
    pub least: Rational,
    /// Lower quartile.
    pub lower_quartile: Rational,
    /// Median.
    pub median: Rational,
    /// Upper quartile.
    pub upper_quartile: Rational,
    /// Greatest value.
    pub greatest: Rational,
    /// Left end of the line.
    pub from: Rational,
    /// Right end.
    pub to: Rational,
    /// Distance between labelled ticks.
    pub step: Rational,
    /// Words under the line.
    pub axis: Say,
}

/// A balance.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Balance {
    /// Weights on the left pan.
    pub left: Vec<Weight>,
    /// Weights on the right pan.
    pub right: Vec<Weight>,
}

/// Equal weights on a pan.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Weight {
    /// What is written on each.
    pub label: Expr,
    /// How many.
    pub count: u32,
}

/// A ratio table.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RatioTable {
    /// Two or more rows of the same length.
    pub rows: Vec<RatioRow>,
}

/// One row of a ratio table.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RatioRow {
    /// What it counts.
    pub label: Say,
    /// Its cells; `Blank` is asked for.
    pub cells: Vec<Expr>,
}

/// Two number lines with their marks above each other.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DoubleNumberLine {
    /// Upper line.
    pub upper: RatioRow,
    /// Lower line, as many marks.
    pub lower: RatioRow,
}

/// Bars in parts.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TapeDiagram {
    /// One below the other, starting at the same place.
    pub bars: Vec<TapeBar>,
}

/// One bar of a tape diagram.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TapeBar {
    /// Its name.
    pub label: Option<Say>,
    /// Its parts.
    pub parts: Vec<TapePart>,
    /// What is written over the whole bar.
    pub whole_label: Option<Expr>,
}

/// One part of a bar.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TapePart {
    /// Its length beside the others.
    pub length: u32,
    /// What is written in it.
    pub label: Option<Expr>,
    /// Shaded.
    pub shaded: bool,
}

/// A table of data.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DataTable {
    /// Words over the columns.
    pub header: Vec<Say>,
    /// Rows of cells.
    pub rows: Vec<Vec<Cell>>,
}

/// One cell of a table.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Cell {
    /// Words.
    Say {
        /// The words.
        say: Say,
    },
    /// Mathematics.
    Math {
        /// What to set.
        expr: Expr,
    },
}
