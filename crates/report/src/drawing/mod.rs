//! Figures on paper, from the values that the screens draw. Each file has a family of figures.
//! Sizes are in pixels of the screen; the whole figure is then scaled for paper.

mod charts;
mod lines;
mod numbers;
mod parts;
mod shapes;
mod sketch;

pub(crate) use charts::grid_face;
pub(crate) use lines::number_line;
pub(crate) use parts::strips;
pub(crate) use shapes::protractor_face;
pub(crate) use sketch::{Anchor, Sketch};

use crate::mark::reach;
use crate::slab::{Part, Role, Sense, Slab};
use surefoot_catalogue::Locale;
use surefoot_exercises::messages::MessageError;
use surefoot_exercises::text::say;
use surefoot_exercises::{Drawing, Figure};

/// Points on paper for a pixel of the screen.
pub const SCALE: f32 = 0.56;

/// A figure no wider than `most`, with its text alternative.
pub fn figure(locale: Locale, figure: &Figure, most: f32) -> Result<Slab, MessageError> {
    let alt = say(locale, &figure.alt)?;
    let sketch = drawing(locale, &figure.drawing)?;
    Ok(on_paper(sketch, alt, most))
}

/// A sketch as a slab with its text alternative.
pub(crate) fn on_paper(sketch: Sketch, alt: String, most: f32) -> Slab {
    // The figure ends where its ink ends, which saves paper.
    let (left, top, right, bottom) =
        reach(&sketch.marks).unwrap_or((0.0, 0.0, sketch.width, sketch.height));
    let air = 4.0;
    Slab {
        width: right - left + 2.0 * air,
        height: bottom - top + 2.0 * air,
        parts: vec![Part::Content(
            Sense::Graphic,
            sketch
                .marks
                .iter()
                .map(|mark| mark.moved(1.0, air - left, air - top))
                .collect(),
        )],
    }
    .scaled(SCALE)
    .within(most, 420.0)
    .under(Role::Figure(alt))
}

fn drawing(locale: Locale, drawing: &Drawing) -> Result<Sketch, MessageError> {
    match drawing {
        Drawing::NumberLine(of) => lines::number_line(locale, of),
        Drawing::DoubleNumberLine(of) => lines::double_number_line(locale, of),
        Drawing::TapeDiagram(of) => lines::tape_diagram(locale, of),
        Drawing::Ruler(of) => lines::ruler(locale, of),
        Drawing::Scale(of) => lines::scale(locale, of),
        Drawing::FractionStrips(of) => parts::strips(locale, of),
        Drawing::AreaModel(of) => parts::area_model(locale, of),
        Drawing::FractionGrid(of) => Ok(parts::fraction_grid(locale, of)),
        Drawing::BaseTenBlocks(of) => Ok(parts::blocks(locale, of)),
        Drawing::Array(of) => Ok(parts::array(locale, of)),
        Drawing::EqualGroups(of) => Ok(parts::groups(locale, of)),
        Drawing::Coins(of) => parts::coins(locale, of),
        Drawing::Clock(of) => Ok(shapes::clock(locale, of)),
        Drawing::Protractor(of) => Ok(shapes::protractor(locale, of)),
        Drawing::Angle(of) => shapes::angle(locale, of),
        Drawing::Polygon(of) => shapes::polygon(locale, of),
        Drawing::Lines(of) => Ok(shapes::strokes(locale, of)),
        Drawing::UnitCubes(of) => shapes::cubes(locale, of),
        Drawing::Net(of) => shapes::net(locale, of),
        Drawing::CoordinateGrid(of) => charts::coordinate_grid(locale, of),
        Drawing::BarChart(of) => charts::bar_chart(locale, of),
        Drawing::PictureGraph(of) => charts::picture_graph(locale, of),
        Drawing::DotPlot(of) => charts::dot_plot(locale, of),
        Drawing::Histogram(of) => charts::histogram(locale, of),
        Drawing::BoxPlot(of) => charts::box_plot(locale, of),
        Drawing::Balance(of) => numbers::balance(locale, of),
        Drawing::RatioTable(of) => numbers::ratio_table(locale, of),
        Drawing::DataTable(of) => numbers::data_table(locale, of),
        Drawing::ColumnWork(of) => Ok(numbers::column_work(locale, of)),
    }
}
