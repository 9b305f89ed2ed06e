//! Figures as values. The screen and the paper each draw them. Every figure has a text
//! alternative.

mod data;
mod numbers;
mod shapes;

pub use data::{
    Balance, Bar, BarChart, BoxPlot, Cell, DataTable, DotColumn, DotPlot, DoubleNumberLine,
    Histogram, HistogramBin, PictureGraph, PictureRow, RatioRow, RatioTable, TapeBar, TapeDiagram,
    TapePart, Weight,
};
pub use numbers::{
    AreaModel, Array, BaseTenBlocks, BlockPiece, Clock, CoinPile, Coins, ColumnSign, ColumnWork,
    EqualGroups, FractionGrid, FractionStrips, LineJump, LineLabel, LinePoint, LineRay, NumberLine,
    PartShape, Ruler, Scale, ScaleShape, Strip,
};
pub use shapes::{
    Angle, AnglePart, CoordinateGrid, CubeBox, GridFrame, GridPath, InnerLine, Lines, NamedPoint,
    Net, NetFace, Point, Polygon, Protractor, Stroke, StrokeKind, UnitCubes,
};

use super::say::Say;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A figure: a drawing and its text alternative.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Figure {
    /// What the drawing shows, in words, and no more than it shows.
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
