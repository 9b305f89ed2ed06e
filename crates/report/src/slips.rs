//! Join slips to cut apart, two side by side.

use crate::error::ReportError;
use crate::flow::Document;
use crate::inline::{Inline, Style, bold, natural_width, paragraph, words};
use crate::mark::{Mark, Pen, rectangle};
use crate::paper::PrintOptions;
use crate::slab::{Part, Role, Sense, Slab};
use crate::words::Words;
use surefoot_desk::JoinSlip;

/// Space between the cutting line and the words, in points.
const PAD: f32 = 11.0;

/// Size of a code in points, if it fits.
const CODE_SIZE: f32 = 19.0;

/// The join slips of a class as a PDF, with or without names.
///
/// # Errors
/// Returns [`ReportError::Nothing`] without a slip.
pub fn slip_pages(
    slips: &[JoinSlip],
    with_names: bool,
    options: &PrintOptions,
) -> Result<Vec<u8>, ReportError> {
    let Some(first) = slips.first() else {
        return Err(ReportError::Nothing);
    };
    let w = Words::new(options.locale);
    let mut page = Document::new(*options, w.get("report-slips")?, &first.class_title);
    let half = page.width() / 2.0;
    for pair in slips.chunks(2) {
        let set = pair
            .iter()
            .map(|slip| slip_words(&w, slip, with_names, half - 2.0 * PAD))
            .collect::<Result<Vec<Slab>, ReportError>>()?;
        let high = set.iter().map(|s| s.height).fold(0.0, f32::max) + 2.0 * PAD;
        let mut row = Slab::space(page.width(), high);
        for (x, slab) in [0.0, half].into_iter().zip(&set) {
            row.parts.push(cut_line(x, half, high));
            row.put(&slab.clone().under(Role::Division), x + PAD, PAD);
        }
        page.place(&row);
    }
    page.finish()
}

fn slip_words(
    w: &Words,
    slip: &JoinSlip,
    with_names: bool,
    width: f32,
) -> Result<Slab, ReportError> {
    let seat = w.say("report-seat", &[("seat", slip.seat.into())])?;
    let name = slip.name.clone().filter(|_| with_names);
    let line = |inlines: &[Inline], size: f32| {
        paragraph(inlines, width, Style::of(size)).under(Role::Paragraph)
    };
    // A code does not break; a long one is smaller.
    let code = bold(slip.code.clone());
    let size = CODE_SIZE * (width / natural_width(&code, CODE_SIZE)).min(1.0);
    Ok(Slab::stacked(
        &[
            line(&words(format!("{} · {seat}", slip.class_title)), 10.0),
            line(&bold(name.unwrap_or(seat)), 13.0),
            line(&code, size),
            line(&words(w.get("slips-how")?), 10.0),
            line(&bold(slip.pin_signs.clone()), 13.0),
            line(&words(w.get("slips-pin")?), 10.0),
        ],
        3.0,
    ))
}

fn cut_line(x: f32, wide: f32, high: f32) -> Part {
    Part::Content(
        Sense::Ornament,
        vec![Mark::Shape {
            path: rectangle(x, 0.0, wide, high),
            fill: None,
            pen: Some(Pen::grey(0.7, 110).dashed(4.0, 3.0)),
        }],
    )
}
