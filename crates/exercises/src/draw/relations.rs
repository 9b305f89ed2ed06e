//! Balances, ratios and tapes.

use super::draw;
use crate::expr::Expr;
use crate::figure::{
    Balance, DoubleNumberLine, Drawing, Figure, RatioRow, RatioTable, TapeBar, TapeDiagram,
    TapePart, Weight,
};
use crate::say::Say;

/// A balance; pans as (label, how many).
#[must_use]
pub fn balance(left: Vec<(Expr, i64)>, right: Vec<(Expr, i64)>, equation: Expr) -> Figure {
    let pan = |things: Vec<(Expr, i64)>| {
        things
            .into_iter()
            .map(|(label, count)| Weight {
                label,
                count: count as u32,
            })
            .collect()
    };
    draw(
        Drawing::Balance(Balance {
            left: pan(left),
            right: pan(right),
        }),
        Say::new("figure-balance").math("equation", equation),
    )
}

/// A row of a ratio table or double number line.
#[must_use]
pub fn ratio_row(label: &'static str, cells: Vec<Expr>) -> RatioRow {
    RatioRow {
        label: Say::new(label),
        cells,
    }
}

/// A ratio table.
#[must_use]
pub fn ratio_table(rows: Vec<RatioRow>, alt: Say) -> Figure {
    draw(Drawing::RatioTable(RatioTable { rows }), alt)
}

/// A double number line.
#[must_use]
pub fn double_line(upper: RatioRow, lower: RatioRow, alt: Say) -> Figure {
    draw(
        Drawing::DoubleNumberLine(DoubleNumberLine { upper, lower }),
        alt,
    )
}

/// A bar of a tape diagram; parts as (length, label, shaded).
#[must_use]
pub fn tape_bar(
    label: Option<&'static str>,
    parts: Vec<(i64, Option<Expr>, bool)>,
    whole_label: Option<Expr>,
) -> TapeBar {
    TapeBar {
        label: label.map(Say::new),
        parts: parts
            .into_iter()
            .map(|(length, label, shaded)| TapePart {
                length: length as u32,
                label,
                shaded,
            })
            .collect(),
        whole_label,
    }
}

/// A tape diagram with words of its own.
#[must_use]
pub fn tape(bars: Vec<TapeBar>, alt: Say) -> Figure {
    draw(Drawing::TapeDiagram(TapeDiagram { bars }), alt)
}

/// One bar in equal parts, of which some are shaded, with the whole written over it.
#[must_use]
pub fn tape_parts(
    parts: i64,
    shaded: i64,
    part_label: Option<Expr>,
    whole: Option<Expr>,
) -> Figure {
    let all = (0..parts)
        .map(|i| (1, part_label.clone(), i < shaded))
        .collect();
    tape(
        vec![tape_bar(None, all, whole)],
        Say::new("figure-tape")
            .count("parts", parts)
            .count("shaded", shaded),
    )
}
