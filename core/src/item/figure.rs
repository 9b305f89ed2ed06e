//! Pictures as values. The screen draws them as SVG, paper draws them again;
//! each has its words for those who do not see it.

use super::expr::Expr;
use super::number::Rational;
use super::say::Say;
use serde::{Deserialize, Serialize};
use std::borrow::Cow;
use ts_rs::TS;

/// A picture and its text alternative.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Figure {
    /// What the picture shows, in words. Says no more than the picture does.
    pub alt: Say,
    /// What to draw.
    pub drawing: Drawing,
}

/// What to draw.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Drawing {
    /// A number line.
    NumberLine(NumberLine),
    /// Bars or circles cut into equal parts, some shaded.
    FractionStrips(FractionStrips),
    /// A rectangle cut into labelled parts (partial products).
    AreaModel(AreaModel),
    /// A unit square cut both ways, for a fraction of a fraction.
    FractionGrid(FractionGrid),
    /// Base-ten blocks.
    BaseTenBlocks(BaseTenBlocks),
    /// Rows and columns of things.
    Array(Array),
    /// Equal groups of things.
    EqualGroups(EqualGroups),
    /// A clock face.
    Clock(Clock),
    /// Coins and notes.
    Coins(Coins),
    /// A ruler with a thing laid along it.
    Ruler(Ruler),
    /// A protractor on an angle.
    Protractor(Protractor),
    /// An angle, whole or in parts.
    Angle(Angle),
    /// A flat shape with straight sides.
    Polygon(Polygon),
    /// Points, segments, rays and lines.
    Lines(Lines),
    /// Boxes built of unit cubes.
    UnitCubes(UnitCubes),
    /// A solid unfolded flat.
    Net(Net),
    /// A coordinate grid.
    CoordinateGrid(CoordinateGrid),
    /// A bar graph.
    BarChart(BarChart),
    /// A picture graph with a key.
    PictureGraph(PictureGraph),
    /// A dot plot (line plot).
    DotPlot(DotPlot),
    /// A histogram.
    Histogram(Histogram),
    /// A box plot.
    BoxPlot(BoxPlot),
    /// A balance for equations.
    Balance(Balance),
    /// A ratio table.
    RatioTable(RatioTable),
    /// Two number lines side by side.
    DoubleNumberLine(DoubleNumberLine),
    /// Bars in parts (tape diagram).
    TapeDiagram(TapeDiagram),
    /// A table of data.
    DataTable(DataTable),
    /// Numbers written one above the other, as for column addition.
    ColumnWork(ColumnWork),
    /// A container with a scale, part full.
    Scale(Scale),
}

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
    /// Standing upright, as a thermometer.
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
    /// How many wholes stand in a row.
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
    /// What stands in each cell, row by row; `None` is empty, `Blank` is asked for.
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

/// A protractor laid on an angle.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Protractor {
    /// Size of the angle.
    pub degrees: u16,
    /// The fixed side points right (read the inner scale), else left.
    pub from_right: bool,
}

/// An angle, whole or in parts that lie side by side.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Angle {
    /// The parts, turning on from the first side; one part is a plain angle.
    pub parts: Vec<AnglePart>,
    /// How far the first side is turned from pointing right, anticlockwise.
    pub turn_degrees: u16,
    /// What is written at the whole angle, when there are parts.
    pub whole_label: Option<Expr>,
}

/// One part of an angle.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct AnglePart {
    /// Its size.
    pub degrees: u16,
    /// What is written in it.
    pub label: Option<Expr>,
}

/// A point of the plane.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Point {
    /// Across.
    pub x: Rational,
    /// Up.
    pub y: Rational,
}

/// A flat shape with straight sides.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Polygon {
    /// Corners in order around the shape.
    pub corners: Vec<Point>,
    /// What is written at the side from each corner to the next.
    pub side_labels: Vec<Option<Expr>>,
    /// Corners (by place in the list) marked with a small square.
    pub right_angles: Vec<u32>,
    /// Lines inside, such as a height or a line of symmetry.
    pub inner_lines: Vec<InnerLine>,
    /// Drawn on unit squares.
    pub on_grid: bool,
}

/// A line drawn in a shape.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct InnerLine {
    /// One end.
    pub from: Point,
    /// The other.
    pub to: Point,
    /// What is written beside it.
    pub label: Option<Expr>,
    /// Broken rather than drawn through.
    pub dashed: bool,
}

/// Points, segments, rays and lines.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Lines {
    /// The parts of the drawing.
    pub strokes: Vec<Stroke>,
    /// Points with letters.
    pub points: Vec<NamedPoint>,
    /// Places with a right-angle mark.
    pub right_angles: Vec<Point>,
}

/// One straight stroke.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Stroke {
    /// Segment, ray (arrow at `to`) or line (arrow at both ends).
    pub stroke: StrokeKind,
    /// One end.
    pub from: Point,
    /// The other.
    pub to: Point,
}

/// What a stroke stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum StrokeKind {
    /// Two ends.
    Segment,
    /// One end.
    Ray,
    /// No end.
    Line,
}

/// A point with a letter.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NamedPoint {
    /// Where.
    pub at: Point,
    /// Its letter.
    #[ts(type = "string")]
    pub name: Cow<'static, str>,
}

/// Boxes built of unit cubes.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct UnitCubes {
    /// Boxes that touch without overlapping.
    pub boxes: Vec<CubeBox>,
    /// Draw each unit cube; else only the edges of the boxes.
    pub show_cubes: bool,
    /// What is written at width, depth and height of each box.
    pub labels: Vec<[Option<Expr>; 3]>,
}

/// One box of unit cubes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CubeBox {
    /// Left front bottom corner: across.
    pub x: u32,
    /// Into the picture.
    pub y: u32,
    /// Up.
    pub z: u32,
    /// Cubes across.
    pub width: u32,
    /// Cubes into the picture.
    pub depth: u32,
    /// Cubes up.
    pub height: u32,
}

/// A solid unfolded flat.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Net {
    /// Its faces, side by side.
    pub faces: Vec<NetFace>,
}

/// One face of a net.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NetFace {
    /// Corners in order.
    pub corners: Vec<Point>,
    /// What is written at the side from each corner to the next.
    pub side_labels: Vec<Option<Expr>>,
}

/// A coordinate grid.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CoordinateGrid {
    /// Edges and steps.
    pub frame: GridFrame,
    /// Points with letters.
    pub points: Vec<NamedPoint>,
    /// Straight strokes through points, in order.
    pub paths: Vec<GridPath>,
}

/// Edges and steps of a coordinate grid.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GridFrame {
    /// Left edge.
    #[ts(type = "number")]
    pub x_from: i64,
    /// Right edge.
    #[ts(type = "number")]
    pub x_to: i64,
    /// Lower edge.
    #[ts(type = "number")]
    pub y_from: i64,
    /// Upper edge.
    #[ts(type = "number")]
    pub y_to: i64,
    /// Distance between grid lines across.
    #[ts(type = "number")]
    pub x_step: i64,
    /// Distance between grid lines up.
    #[ts(type = "number")]
    pub y_step: i64,
    /// Words at the axis across.
    pub x_title: Option<Say>,
    /// Words at the axis up.
    pub y_title: Option<Say>,
}

/// A stroke through points of a grid.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GridPath {
    /// In order.
    pub points: Vec<Point>,
    /// Back to the first point.
    pub closed: bool,
}

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
    /// What one whole symbol stands for.
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

/// Two number lines whose marks stand above each other.
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
    /// Where it stands.
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
