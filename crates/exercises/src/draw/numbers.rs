//! Fractions, arrays, blocks, clocks and money.

use super::draw;
use crate::decimal::Dec;
use crate::expr::{Expr, num, rational};
use crate::figure::{
    AreaModel, Array, BaseTenBlocks, BlockPiece, Clock, CoinPile, Coins, Drawing, EqualGroups,
    Figure, FractionGrid, FractionStrips, PartShape, Ruler, Scale, ScaleShape, Strip,
};
use crate::number::Rational;
use crate::say::Say;
use num_rational::Ratio;

/// One bar in equal parts.
#[must_use]
pub fn strip(parts: i64, shaded: i64) -> Figure {
    strips(PartShape::Bar, &[(parts, shaded)])
}

/// One circle in equal parts.
#[must_use]
pub fn circle(parts: i64, shaded: i64) -> Figure {
    strips(PartShape::Circle, &[(parts, shaded)])
}

/// Bars (or circles) in equal parts, as (parts in each whole, parts shaded),
/// with as many wholes as the shading needs.
#[must_use]
pub fn strips(shape: PartShape, rows: &[(i64, i64)]) -> Figure {
    let wholes = rows
        .iter()
        .map(|(parts, shaded)| ((shaded + parts - 1) / parts).max(1))
        .max()
        .unwrap_or(1);
    let id = match (rows.len(), wholes > 1) {
        (1, false) if shape == PartShape::Circle => "figure-circle",
        (1, false) => "figure-strip",
        (1, true) => "figure-strip-wholes",
        _ => "figure-strips",
    };
    let names = [("parts", "shaded"), ("parts2", "shaded2")];
    let alt = names.into_iter().zip(rows).fold(
        Say::new(id).count("wholes", wholes),
        |say, ((parts_name, shaded_name), (parts, shaded))| {
            say.count(parts_name, *parts).count(shaded_name, *shaded)
        },
    );
    let strips = rows
        .iter()
        .map(|(parts, shaded)| Strip {
            wholes: wholes as u32,
            parts: *parts as u32,
            shaded: *shaded as u32,
            label: None,
        })
        .collect();
    draw(
        Drawing::FractionStrips(FractionStrips { shape, strips }),
        alt,
    )
}

/// A unit square with rows shaded one way and columns the other.
#[must_use]
pub fn fraction_grid(rows: i64, columns: i64, shaded_rows: i64, shaded_columns: i64) -> Figure {
    draw(
        Drawing::FractionGrid(FractionGrid {
            rows: rows as u32,
            columns: columns as u32,
            shaded_rows: shaded_rows as u32,
            shaded_columns: shaded_columns as u32,
        }),
        Say::new("figure-fraction-grid")
            .count("rows", rows)
            .count("columns", columns)
            .count("shadedrows", shaded_rows)
            .count("shadedcolumns", shaded_columns),
    )
}

/// Rows of dots.
#[must_use]
pub fn array(rows: i64, columns: i64) -> Figure {
    array_with(rows, columns, None, false)
}

/// Rows of unit squares without gaps.
#[must_use]
pub fn squares(rows: i64, columns: i64) -> Figure {
    array_with(rows, columns, None, true)
}

/// Rows of dots or squares, cut right of some columns.
#[must_use]
pub fn array_with(rows: i64, columns: i64, split_column: Option<i64>, squares: bool) -> Figure {
    let id = match (squares, split_column) {
        (false, None) => "figure-array",
        (false, Some(_)) => "figure-array-split",
        (true, None) => "figure-squares",
        (true, Some(_)) => "figure-squares-split",
    };
    draw(
        Drawing::Array(Array {
            rows: rows as u32,
            columns: columns as u32,
            split_row: None,
            split_column: split_column.map(|c| c as u32),
            squares,
        }),
        Say::new(id)
            .count("rows", rows)
            .count("columns", columns)
            .count("split", split_column.unwrap_or(0)),
    )
}

/// Equal groups of dots, and some left over.
#[must_use]
pub fn groups(groups: i64, each: i64, left_over: i64) -> Figure {
    let id = if left_over == 0 {
        "figure-groups"
    } else {
        "figure-groups-left"
    };
    draw(
        Drawing::EqualGroups(EqualGroups {
            groups: groups as u32,
            each: each as u32,
            left_over: left_over as u32,
        }),
        Say::new(id)
            .count("groups", groups)
            .count("each", each)
            .count("left", left_over),
    )
}

/// A clock face. The words say where the hands point, not the time.
#[must_use]
pub fn clock(hour: i64, minute: i64) -> Figure {
    let id = if minute == 0 {
        "figure-clock-full"
    } else {
        "figure-clock"
    };
    draw(
        Drawing::Clock(Clock {
            hour: hour as u8,
            minute: minute as u8,
        }),
        Say::new(id)
            .count("hour", hour)
            .count("next", hour % 12 + 1)
            .count("marks", minute),
    )
}

/// Base-ten blocks of a whole number below ten thousand.
#[must_use]
pub fn base_ten(n: i64) -> Figure {
    let (large_cubes, flats, rods, cubes) = (n / 1000, n / 100 % 10, n / 10 % 10, n % 10);
    draw(
        Drawing::BaseTenBlocks(BaseTenBlocks {
            large_cubes: large_cubes as u32,
            flats: flats as u32,
            rods: rods as u32,
            cubes: cubes as u32,
            one: BlockPiece::Cube,
        }),
        Say::new("figure-blocks")
            .count("large", large_cubes)
            .count("flats", flats)
            .count("rods", rods)
            .count("cubes", cubes),
    )
}

/// Blocks of hundredths: the flat counts as one.
#[must_use]
pub fn base_ten_hundredths(hundredths: i64) -> Figure {
    let (flats, rods, cubes) = (hundredths / 100, hundredths / 10 % 10, hundredths % 10);
    draw(
        Drawing::BaseTenBlocks(BaseTenBlocks {
            large_cubes: 0,
            flats: flats as u32,
            rods: rods as u32,
            cubes: cubes as u32,
            one: BlockPiece::Flat,
        }),
        Say::new("figure-blocks-hundredths")
            .count("flats", flats)
            .count("rods", rods)
            .count("cubes", cubes),
    )
}

/// A rectangle cut into labelled parts.
#[must_use]
pub fn area_model(rows: &[i64], columns: &[i64], cells: &[Vec<Option<Expr>>]) -> Figure {
    draw(
        Drawing::AreaModel(AreaModel {
            rows: rows.iter().map(num).collect(),
            columns: columns.iter().map(num).collect(),
            cells: cells.to_vec(),
        }),
        Say::new("figure-area-model")
            .numbers("rows", rows)
            .numbers("columns", columns),
    )
}

/// A ruler with a thing laid along it.
#[must_use]
pub fn ruler(
    unit: &'static str,
    length: i64,
    parts: i64,
    from: Ratio<i64>,
    to: Ratio<i64>,
) -> Figure {
    draw(
        Drawing::Ruler(Ruler {
            unit: unit.into(),
            length: length as u32,
            parts: parts as u32,
            thing_from: Rational::from(from),
            thing_to: Rational::from(to),
        }),
        Say::new("figure-ruler")
            .word(
                "unit",
                match unit {
                    "unit-in" => "figure-ruler-inch",
                    "unit-cm" => "figure-ruler-centimeter",
                    other => other,
                },
            )
            .count("parts", parts)
            .math("from", rational(from, true))
            .math("to", rational(to, true)),
    )
}

/// A jug or dial with a scale.
#[must_use]
pub fn scale(
    shape: ScaleShape,
    to: i64,
    step: i64,
    label_step: i64,
    value: i64,
    unit: &'static str,
) -> Figure {
    draw(
        Drawing::Scale(Scale {
            shape,
            to,
            step,
            label_step,
            value,
            unit: unit.into(),
        }),
        Say::new(match shape {
            ScaleShape::Jug => "figure-jug",
            ScaleShape::Dial => "figure-dial",
        })
        .number("label", value / label_step * label_step)
        .count("marks", (value % label_step) / step)
        .number("step", label_step)
        .count("parts", label_step / step)
        .word("unit", unit),
    )
}

/// Coins and notes, as (value in hundredths, how many).
#[must_use]
pub fn coins(piles: &[(i64, i64)]) -> Figure {
    let pieces = piles
        .iter()
        .filter(|(_, count)| *count > 0)
        .map(|(value, count)| CoinPile {
            value_hundredths: *value,
            count: *count as u32,
            note: *value >= 100,
        })
        .collect();
    let values = piles.iter().flat_map(|(value, count)| {
        std::iter::repeat_n(Dec::new(*value, 2).trimmed(), (*count).max(0) as usize)
    });
    draw(
        Drawing::Coins(Coins { pieces }),
        Say::new("figure-coins").numbers("values", values),
    )
}
