//! Number lines, fractions, blocks, arrays, clocks, money and written sums.

use crate::expr::Expr;
use crate::number::Rational;
use serde::{Deserialize, Serialize};
use std::borrow::Cow;
use ts_rs::TS;

/// A number line from `from` to `to`.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NumberLine {
    /// Left (or lower) end.
    pub from: Rational,
    /// Right (or upper) end.
    pub to: Rational,
    /// Distance between tick marks.
    pub step: Rational,
    /// Ticks that carry a label.
    pub labels: Vec<LineLabel>,
    /// Points drawn on the line.
    pub points: Vec<LinePoint>,
    /// Arcs above the line.
    pub jumps: Vec<LineJump>,
    /// Half-lines drawn thick, for inequalities.
    pub rays: Vec<LineRay>,
    /// Upright, as a thermometer.
    pub vertical: bool,
}

/// A labelled tick.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct LineLabel {
    /// Where.
    pub at: Rational,
    /// What is written there.
    pub label: Expr,
}

/// A point on a number line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct LinePoint {
    /// Where.
    pub at: Rational,
    /// A letter or number above it.
    pub label: Option<Expr>,
}

/// A jump along a number line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct LineJump {
    /// Start.
    pub from: Rational,
    /// End.
    pub to: Rational,
    /// What is written above the arc.
    pub label: Option<Expr>,
}

/// A half-line.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct LineRay {
    /// The end point.
    pub from: Rational,
    /// An empty circle at the end point: it does not belong.
    pub open: bool,
    /// Towards greater numbers.
    pub rightward: bool,
}

/// Equal parts, some shaded.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct FractionStrips {
    /// Bars or circles.
    pub shape: PartShape,
    /// One strip below the other, all of the same length per whole.
    pub strips: Vec<Strip>,
}

/// Shape of a whole.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum PartShape {
    /// A bar cut across.
    Bar,
    /// A circle cut into sectors.
    Circle,
}

/// One or more wholes in equal parts.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Strip {
    /// Wholes in a row.
    pub wholes: u32,
    /// Equal parts in each whole.
    pub parts: u32,
    /// Parts shaded, from the left, over all the wholes.
    pub shaded: u32,
    /// What is written beside it.
    pub label: Option<Expr>,
}

/// A rectangle cut into parts.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct AreaModel {
    /// Along the left side, from the top.
    pub rows: Vec<Expr>,
    /// Along the top, from the left.
    pub columns: Vec<Expr>,
    /// What each cell holds, row by row; `None` is empty, `Blank` is asked for.
    pub cells: Vec<Vec<Option<Expr>>>,
}

/// A unit square cut both ways.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct FractionGrid {
    /// Rows in the whole.
    pub rows: u32,
    /// Columns in the whole.
    pub columns: u32,
    /// Rows shaded one way, from the top.
    pub shaded_rows: u32,
    /// Columns shaded the other way, from the left.
    pub shaded_columns: u32,
}

/// Base-ten blocks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct BaseTenBlocks {
    /// Large cubes (ten flats each).
    pub large_cubes: u32,
    /// Flats (ten rods each).
    pub flats: u32,
    /// Rods (ten small cubes each).
    pub rods: u32,
    /// Small cubes.
    pub cubes: u32,
    /// Which block counts as one.
    pub one: BlockPiece,
}

/// A kind of base-ten block.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum BlockPiece {
    /// Small cube.
    Cube,
    /// Rod.
    Rod,
    /// Flat.
    Flat,
    /// Large cube.
    LargeCube,
}

/// Rows and columns of dots or squares.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[ts(rename = "ArrayFigure")]
pub struct Array {
    /// Rows.
    pub rows: u32,
    /// Things in each row.
    pub columns: u32,
    /// A cut below this many rows.
    pub split_row: Option<u32>,
    /// A cut right of this many columns.
    pub split_column: Option<u32>,
    /// Squares without gaps (an area) rather than dots.
    pub squares: bool,
}

/// Equal groups of things, or groups with some left over.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct EqualGroups {
    /// Groups.
    pub groups: u32,
    /// Things in each.
    pub each: u32,
    /// Things outside the groups.
    pub left_over: u32,
}

/// A clock face with hands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Clock {
    /// 1 to 12.
    pub hour: u8,
    /// 0 to 59.
    pub minute: u8,
}

/// Coins and notes of the class's currency.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Coins {
    /// Largest first.
    pub pieces: Vec<CoinPile>,
}

/// Some pieces of one value.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CoinPile {
    /// Value of one piece, in hundredths.
    #[ts(type = "number")]
    pub value_hundredths: i64,
    /// How many.
    pub count: u32,
    /// A note rather than a coin.
    pub note: bool,
}

/// A ruler and a thing laid along it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Ruler {
    /// Message id of the unit's sign.
    #[ts(type = "string")]
    pub unit: Cow<'static, str>,
    /// Whole units shown.
    pub length: u32,
    /// Marks per unit.
    pub parts: u32,
    /// Where the thing starts.
    pub thing_from: Rational,
    /// Where it ends.
    pub thing_to: Rational,
}

/// Numbers written one above the other.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ColumnWork {
    /// The sign before the last number.
    pub sign: ColumnSign,
    /// The numbers as exact decimals, aligned at the decimal point.
    pub numbers: Vec<String>,
    /// Small digits over each column, as text from the left; empty when none.
    pub carries: Vec<String>,
    /// Under the line; `None` while it is asked for.
    pub result: Option<String>,
}

/// The sign of column work.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum ColumnSign {
    /// +
    Plus,
    /// −
    Minus,
    /// ×
    Times,
}

/// A container or dial with a scale.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Scale {
    /// A jug filled from below, or a weighing dial.
    pub shape: ScaleShape,
    /// Top of the scale.
    #[ts(type = "number")]
    pub to: i64,
    /// Distance between marks.
    #[ts(type = "number")]
    pub step: i64,
    /// Distance between marks with numbers.
    #[ts(type = "number")]
    pub label_step: i64,
    /// The value that it shows.
    #[ts(type = "number")]
    pub value: i64,
    /// Message id of the unit's sign.
    #[ts(type = "string")]
    pub unit: Cow<'static, str>,
}

/// Kind of scale.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum ScaleShape {
    /// A jug.
    Jug,
    /// A dial.
    Dial,
}
