//! Figures with their text alternatives, for generators.

use super::expr::{Expr, num, rational};
use super::figure::{
    Angle, AnglePart, AreaModel, Array, Balance, Bar, BarChart, BaseTenBlocks, BlockPiece, BoxPlot,
    Cell, Clock, CoinPile, Coins, CoordinateGrid, CubeBox, DataTable, DotColumn, DotPlot,
    DoubleNumberLine, Drawing, EqualGroups, Figure, FractionGrid, FractionStrips, GridFrame,
    GridPath, Histogram, HistogramBin, InnerLine, LineJump, LineLabel, LinePoint, LineRay,
    NamedPoint, NumberLine, PartShape, PictureGraph, PictureRow, Point, Polygon, Protractor,
    RatioRow, RatioTable, Ruler, Scale, ScaleShape, Strip, TapeBar, TapeDiagram, TapePart,
    UnitCubes, Weight,
};
use super::number::Rational;
use super::say::Say;
use num_rational::Ratio;

fn draw(drawing: Drawing, alt: Say) -> Figure {
    Figure { alt, drawing }
}

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
    let mut alt = Say::new(id)
        .count("wholes", wholes)
        .count("parts", rows[0].0)
        .count("shaded", rows[0].1);
    if let Some((parts, shaded)) = rows.get(1) {
        alt = alt.count("parts2", *parts).count("shaded2", *shaded);
    }
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

/// A clock face. The words tell where the hands point, as the picture does.
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

/// Builds a number line.
#[derive(Clone, Debug)]
pub struct Line {
    line: NumberLine,
}

impl Line {
    /// A line without labels.
    pub fn new(
        from: impl Into<Ratio<i64>>,
        to: impl Into<Ratio<i64>>,
        step: impl Into<Ratio<i64>>,
    ) -> Self {
        Self {
            line: NumberLine {
                from: Rational::from(from.into()),
                to: Rational::from(to.into()),
                step: Rational::from(step.into()),
                labels: Vec::new(),
                points: Vec::new(),
                jumps: Vec::new(),
                rays: Vec::new(),
                vertical: false,
            },
        }
    }

    /// Labels the whole numbers on the line.
    #[must_use]
    pub fn label_wholes(self) -> Self {
        self.label_every(Ratio::from(1))
    }

    /// Labels every multiple of a number on the line, in lowest terms.
    #[must_use]
    pub fn label_every(mut self, every: Ratio<i64>) -> Self {
        let (from, to) = (self.line.from.ratio(), self.line.to.ratio());
        let mut at = (from / every).ceil() * every;
        while at <= to {
            self = self.label(at, rational(at, true));
            at += every;
        }
        self
    }

    /// Labels one place.
    #[must_use]
    pub fn label(mut self, at: impl Into<Ratio<i64>>, label: impl Into<Expr>) -> Self {
        self.line.labels.push(LineLabel {
            at: Rational::from(at.into()),
            label: label.into(),
        });
        self
    }

    /// Draws a point, with a letter or number if given.
    #[must_use]
    pub fn point(mut self, at: impl Into<Ratio<i64>>, label: Option<Expr>) -> Self {
        self.line.points.push(LinePoint {
            at: Rational::from(at.into()),
            label,
        });
        self
    }

    /// Draws a jump.
    #[must_use]
    pub fn jump(
        mut self,
        from: impl Into<Ratio<i64>>,
        to: impl Into<Ratio<i64>>,
        label: Option<Expr>,
    ) -> Self {
        self.line.jumps.push(LineJump {
            from: Rational::from(from.into()),
            to: Rational::from(to.into()),
            label,
        });
        self
    }

    /// Draws a half-line.
    #[must_use]
    pub fn ray(mut self, from: impl Into<Ratio<i64>>, open: bool, rightward: bool) -> Self {
        self.line.rays.push(LineRay {
            from: Rational::from(from.into()),
            open,
            rightward,
        });
        self
    }

    /// Stands the line upright.
    #[must_use]
    pub fn upright(mut self) -> Self {
        self.line.vertical = true;
        self
    }

    /// The line, to be filled in by the student.
    #[must_use]
    pub fn into_line(self) -> NumberLine {
        self.line
    }

    /// The line as a figure, with its general text alternative.
    #[must_use]
    pub fn figure(self) -> Figure {
        let (from, to) = (self.line.from.ratio(), self.line.to.ratio());
        let parts = (Ratio::from(1) / self.line.step.ratio()).to_integer();
        let id = if parts > 1 && self.line.step.ratio() == Ratio::new(1, parts) {
            "figure-line-parts"
        } else {
            "figure-line"
        };
        let alt = Say::new(id)
            .math("from", rational(from, true))
            .math("to", rational(to, true))
            .count("parts", parts);
        self.figure_as(alt)
    }

    /// The line as a figure, with words of its own.
    #[must_use]
    pub fn figure_as(self, alt: Say) -> Figure {
        draw(Drawing::NumberLine(self.line), alt)
    }
}

/// A point of the plane by whole numbers.
#[must_use]
pub fn at(x: i64, y: i64) -> Point {
    Point {
        x: Rational::from(x),
        y: Rational::from(y),
    }
}

/// A rectangle with its width and height written at two sides (`None`: not written).
#[must_use]
pub fn rectangle(width: i64, height: i64, labels: [Option<Expr>; 2], alt: Say) -> Figure {
    let [across, up] = labels;
    polygon(
        vec![at(0, 0), at(width, 0), at(width, height), at(0, height)],
        vec![across, up, None, None],
        vec![0, 1, 2, 3],
        alt,
    )
}

/// A polygon with words of its own.
#[must_use]
pub fn polygon(
    corners: Vec<Point>,
    side_labels: Vec<Option<Expr>>,
    right_angles: Vec<u32>,
    alt: Say,
) -> Figure {
    draw(
        Drawing::Polygon(Polygon {
            corners,
            side_labels,
            right_angles,
            inner_lines: Vec::new(),
            on_grid: false,
        }),
        alt,
    )
}

/// A polygon with lines inside, such as a height or a fold line.
#[must_use]
pub fn polygon_with_lines(
    corners: Vec<Point>,
    side_labels: Vec<Option<Expr>>,
    inner_lines: Vec<InnerLine>,
    alt: Say,
) -> Figure {
    draw(
        Drawing::Polygon(Polygon {
            corners,
            side_labels,
            right_angles: Vec::new(),
            inner_lines,
            on_grid: false,
        }),
        alt,
    )
}

/// A polygon on unit squares.
#[must_use]
pub fn polygon_on_squares(corners: Vec<Point>, alt: Say) -> Figure {
    let sides = corners.len();
    draw(
        Drawing::Polygon(Polygon {
            corners,
            side_labels: vec![None; sides],
            right_angles: Vec::new(),
            inner_lines: Vec::new(),
            on_grid: true,
        }),
        alt,
    )
}

/// One box of unit cubes.
#[must_use]
pub fn cubes(width: i64, depth: i64, height: i64, show_cubes: bool) -> Figure {
    draw(
        Drawing::UnitCubes(UnitCubes {
            boxes: vec![CubeBox {
                x: 0,
                y: 0,
                z: 0,
                width: width as u32,
                depth: depth as u32,
                height: height as u32,
            }],
            show_cubes,
            labels: vec![if show_cubes {
                [None, None, None]
            } else {
                [Some(num(width)), Some(num(depth)), Some(num(height))]
            }],
        }),
        Say::new(if show_cubes {
            "figure-cubes"
        } else {
            "figure-box"
        })
        .count("width", width)
        .count("depth", depth)
        .count("height", height),
    )
}

/// An angle in one or more parts, as (degrees, label).
#[must_use]
pub fn angle(parts: Vec<(i64, Option<Expr>)>, whole_label: Option<Expr>, alt: Say) -> Figure {
    draw(
        Drawing::Angle(Angle {
            parts: parts
                .into_iter()
                .map(|(degrees, label)| AnglePart {
                    degrees: degrees as u16,
                    label,
                })
                .collect(),
            turn_degrees: 0,
            whole_label,
        }),
        alt,
    )
}

/// A protractor on an angle.
#[must_use]
pub fn protractor(degrees: i64, from_right: bool) -> Figure {
    let marks = if from_right { degrees } else { 180 - degrees };
    draw(
        Drawing::Protractor(Protractor {
            degrees: degrees as u16,
            from_right,
        }),
        Say::new(if from_right {
            "figure-protractor-right"
        } else {
            "figure-protractor-left"
        })
        .count("inner", marks)
        .count("outer", 180 - marks),
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
            .word("unit", unit)
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
    draw(Drawing::Coins(Coins { pieces }), Say::new("figure-coins"))
}

/// Edges of a grid from 0 to `to` in steps of 1.
#[must_use]
pub fn first_quadrant(to: i64) -> GridFrame {
    frame(0, to, 0, to, 1)
}

/// Edges of a grid.
#[must_use]
pub fn frame(x_from: i64, x_to: i64, y_from: i64, y_to: i64, step: i64) -> GridFrame {
    GridFrame {
        x_from,
        x_to,
        y_from,
        y_to,
        x_step: step,
        y_step: step,
        x_title: None,
        y_title: None,
    }
}

/// A coordinate grid with lettered points, and strokes through points.
#[must_use]
pub fn grid(
    frame: GridFrame,
    points: &[(&'static str, i64, i64)],
    paths: Vec<GridPath>,
    alt: Say,
) -> Figure {
    draw(
        Drawing::CoordinateGrid(CoordinateGrid {
            frame,
            points: points
                .iter()
                .map(|(name, x, y)| NamedPoint {
                    at: at(*x, *y),
                    name: (*name).into(),
                })
                .collect(),
            paths,
        }),
        alt,
    )
}

/// A closed stroke through points.
#[must_use]
pub fn outline(points: &[(i64, i64)]) -> GridPath {
    GridPath {
        points: points.iter().map(|(x, y)| at(*x, *y)).collect(),
        closed: true,
    }
}

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
            super::decimal::Dec::new(halves * 5, 1)
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
        Say::new("figure-dots")
            .word("title", title)
            .math("from", rational(from, true))
            .math("to", rational(to, true))
            .numbers("counts", counts),
    )
}

/// A histogram; bins as (from, to, count).
#[must_use]
pub fn histogram(
    title: &'static str,
    axis: &'static str,
    bins: &[(i64, i64, i64)],
    scale_step: i64,
) -> Figure {
    let counts: Vec<i64> = bins.iter().map(|bin| bin.2).collect();
    let first = bins.first().map_or(0, |bin| bin.0);
    let last = bins.last().map_or(0, |bin| bin.1);
    draw(
        Drawing::Histogram(Histogram {
            title: Say::new(title),
            bins: bins
                .iter()
                .map(|(from, to, count)| HistogramBin {
                    from: *from,
                    to: *to,
                    count: *count,
                })
                .collect(),
            scale_step,
            axis: Say::new(axis),
        }),
        Say::new("figure-histogram")
            .word("title", title)
            .number("from", first)
            .number("to", last)
            .count("width", bins.first().map_or(0, |bin| bin.1 - bin.0 + 1))
            .numbers("counts", counts),
    )
}

/// A box plot of [least, lower quartile, median, upper quartile, greatest].
#[must_use]
pub fn box_plot(
    title: &'static str,
    axis: &'static str,
    five: [i64; 5],
    from: i64,
    to: i64,
    step: i64,
) -> Figure {
    draw(
        Drawing::BoxPlot(BoxPlot {
            title: Say::new(title),
            least: five[0].into(),
            lower_quartile: five[1].into(),
            median: five[2].into(),
            upper_quartile: five[3].into(),
            greatest: five[4].into(),
            from: from.into(),
            to: to.into(),
            step: step.into(),
            axis: Say::new(axis),
        }),
        Say::new("figure-box-plot")
            .word("title", title)
            .number("least", five[0])
            .number("lower", five[1])
            .number("median", five[2])
            .number("upper", five[3])
            .number("greatest", five[4]),
    )
}

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
