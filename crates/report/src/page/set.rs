//! Prints pages.

use super::{RatedLine, ReportPage, ReportPart, ReportTable};
use crate::entry::blocks;
use crate::error::ReportError;
use crate::flow::Document;
use crate::inline::{Align, Style, bold, paragraph, words};
use crate::mark::{Mark, Pen, Step, ellipse, rounded};
use crate::paper::PrintOptions;
use crate::slab::{Part, Role, Sense, Slab};
use crate::table::{Cell, Column, Table, Width};
use crate::words::Words;

/// Scales tried until a page fits on one sheet.
const SCALES: [f32; 4] = [1.0, 0.92, 0.84, 0.76];

/// A page as a PDF. With `on_one_page`, the text is smaller if that makes it fit on one page.
pub fn print(
    page: &ReportPage,
    options: &PrintOptions,
    on_one_page: bool,
) -> Result<Vec<u8>, ReportError> {
    let w = Words::new(options.locale);
    // A page that fits at no size is easier to read at full size.
    let scale = match on_one_page {
        true => scale_of_one_page(page, options, &w)?.unwrap_or(1.0),
        false => 1.0,
    };
    let mut document = Document::new(*options, page.title.clone(), page.under.clone());
    lay_out(&mut document, page, &w, scale)?;
    document.finish()
}

/// Pages of one kind in one PDF. Each begins on a new sheet, with smaller text if that makes it
/// fit. Returns `None` without pages.
pub fn print_each(
    title: &str,
    pages: &[ReportPage],
    options: &PrintOptions,
) -> Result<Option<Vec<u8>>, ReportError> {
    let Some(first) = pages.first() else {
        return Ok(None);
    };
    let w = Words::new(options.locale);
    let mut document = Document::new(*options, title, first.under.clone());
    for page in pages {
        let scale = scale_of_one_page(page, options, &w)?.unwrap_or(1.0);
        document.new_page();
        lay_out(&mut document, page, &w, scale)?;
    }
    document.finish().map(Some)
}

/// The largest scale at which a page fits on one sheet.
fn scale_of_one_page(
    page: &ReportPage,
    options: &PrintOptions,
    w: &Words,
) -> Result<Option<f32>, ReportError> {
    for scale in SCALES {
        let mut document = Document::new(*options, page.title.clone(), page.under.clone());
        lay_out(&mut document, page, w, scale)?;
        if document.page_count() == 1 {
            return Ok(Some(scale));
        }
    }
    Ok(None)
}

fn lay_out(
    document: &mut Document,
    page: &ReportPage,
    w: &Words,
    scale: f32,
) -> Result<(), ReportError> {
    let text = Style::of(11.0 * scale);
    document.heading(1, &page.title);
    document.paragraph(&words(page.under.clone()), Style::of(10.0 * scale));
    document.space(5.0 * scale);
    for part in &page.parts {
        match part {
            ReportPart::Heading { text } => document.heading(2, text),
            ReportPart::Words { text: said } => {
                document.paragraph(&words(said.clone()), text);
                document.space(4.0 * scale);
            }
            ReportPart::Caution { text: said } => {
                document.space(8.0 * scale);
                document.place(&framed(said, document.width(), text));
                document.space(6.0 * scale);
            }
            ReportPart::Lines { texts } => {
                document.open(Role::Bullets);
                for line in texts {
                    document.place(&listed(line, document.width(), text));
                }
                document.close();
                document.space(4.0 * scale);
            }
            ReportPart::Ratings { lines } => {
                document.open(Role::Bullets);
                for line in lines {
                    document.place(&rated(line, document.width(), text.size));
                    document.space(3.0 * scale);
                }
                document.close();
            }
            ReportPart::Table { table } => {
                document.space(3.0 * scale);
                document.table(&set(table, 9.5 * scale));
                document.space(6.0 * scale);
            }
            ReportPart::Content { blocks: of } => {
                document.space(6.0 * scale);
                document.place(&blocks(w, of, document.width() * 0.6, 11.5 * scale)?);
                document.space(3.0 * scale);
            }
            // Practice sheets have a print of their own (`sheet`).
            ReportPart::Exercise { number, item, .. } => {
                document.paragraph(&bold(format!("{number}.")), text);
                document.place(&blocks(
                    w,
                    &item.prompt,
                    document.width() * 0.6,
                    11.5 * scale,
                )?);
            }
            ReportPart::Write { label, lines } => {
                document.space(10.0 * scale);
                document.place(&to_write(label, *lines, document.width(), text.size));
            }
        }
    }
    Ok(())
}

/// A caution in its frame.
fn framed(said: &str, wide: f32, style: Style) -> Slab {
    const PAD: f32 = 8.0;
    let inner = paragraph(&words(said), wide - 2.0 * PAD, style).under(Role::Paragraph);
    let mut slab = Slab::space(wide, inner.height + 2.0 * PAD);
    slab.parts.push(Part::Content(
        Sense::Ornament,
        vec![Mark::Shape {
            path: rounded(0.5, 0.5, wide - 1.0, inner.height + 2.0 * PAD - 1.0, 5.0),
            fill: None,
            pen: Some(Pen::ink(1.0)),
        }],
    ));
    slab.put(&inner, PAD, PAD);
    slab
}

/// A line of a list with its dash.
fn listed(line: &str, wide: f32, style: Style) -> Slab {
    let lead = style.size * 1.2;
    let mut slab = Slab::default();
    slab.put(
        &paragraph(&words("– "), lead, style).under(Role::ItemLabel),
        0.0,
        0.0,
    );
    slab.put(
        &paragraph(&words(line), wide - lead, style).under(Role::ItemBody),
        lead,
        0.0,
    );
    slab.under(Role::Item)
}

/// A concept with its stones: one to four filled, and the words.
fn rated(line: &RatedLine, wide: f32, size: f32) -> Slab {
    let right = wide * 0.3;
    let left = wide - right - 10.0;
    let mut named = bold(format!("{}\n", line.title));
    named.extend(words(line.i_can.clone()));
    let name = paragraph(&named, left, Style::of(size)).under(Role::ItemBody);
    let mut side = Slab::space(right, size * 2.6);
    let filled = line.rating.map_or(0, |rating| u8::from(rating) + 1);
    let radius = size * 0.42;
    for stone in 0..4_u8 {
        let x = radius + 1.5 + f32::from(stone) * radius * 3.2;
        side.parts.push(Part::Content(
            Sense::Ornament,
            vec![Mark::Shape {
                path: ellipse(x, size * 0.72, radius * 1.1, radius * 0.8),
                fill: (stone < filled).then_some(70),
                pen: Some(Pen::ink(0.8)),
            }],
        ));
    }
    let said = paragraph(&words(line.words.clone()), right, Style::of(size * 0.92));
    side.put(&said.under(Role::Paragraph), 0.0, size * 1.35);
    let mut slab = Slab::default();
    slab.put(&name, 0.0, 0.0);
    slab.put(&side, left + 10.0, 0.0);
    slab.under(Role::Item)
}

/// A label and lines to write on.
fn to_write(label: &str, lines: u32, wide: f32, size: f32) -> Slab {
    let mut slab = paragraph(&bold(label), wide, Style::of(size)).under(Role::Paragraph);
    for _ in 0..lines {
        let y = slab.height + 22.0;
        slab.parts.push(Part::Content(
            Sense::Ornament,
            vec![Mark::Shape {
                path: vec![Step::Move(0.0, y), Step::Line(wide, y)],
                fill: None,
                pen: Some(Pen::grey(0.7, 110)),
            }],
        ));
        slab.height = y + 1.0;
    }
    slab
}

fn set(table: &ReportTable, size: f32) -> Table {
    Table {
        summary: table.summary.clone(),
        columns: table
            .columns
            .iter()
            .map(|column| Column {
                width: Width::Share(f32::from(column.share)),
                align: if column.figures {
                    Align::Middle
                } else {
                    Align::Left
                },
            })
            .collect(),
        head: table
            .columns
            .iter()
            .map(|column| Cell::from(bold(column.title.clone())))
            .collect(),
        rows: table
            .rows
            .iter()
            .map(|row| {
                row.iter()
                    .map(|cell| Cell::from(words(cell.clone())))
                    .collect()
            })
            .collect(),
        row_heads: true,
        size,
        row_height: size * 1.9,
        pad: 4.0,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::page::{conference, family};
    use crate::paper::{Density, Paper};
    use surefoot_catalogue::Locale;
    use surefoot_catalogue::rating::{Confidence, Outcome};
    use surefoot_catalogue::rotation::Phase;
    use surefoot_catalogue::{Catalogue, Language};
    use surefoot_desk::{
        CalibrationVerdict, GroupMember, PracticeSums, StudentCalibration, StudentConcept,
        StudentPage,
    };
    use surefoot_record::ConceptName;

    /// A student with a report on every concept, the longest titles and the longest name.
    fn fullest(language: Language) -> StudentPage {
        let catalogue = Catalogue::built_in().unwrap();
        let mut all: Vec<_> = catalogue.concepts().iter().collect();
        all.sort_by_key(|c| {
            std::cmp::Reverse(c.title.get(language).len() + c.i_can.get(language).len())
        });
        let student = GroupMember {
            seat: 60,
            name: Some("Maximiliana-Wilhelmina ".repeat(2).trim().into()),
            has_it: None,
        };
        // The pages show the beginning and the end of the list.
        let half = all.len() / 2;
        let (longest, rest) = all.split_at(half.min(12));
        let ordered = longest
            .iter()
            .step_by(2)
            .chain(rest)
            .chain(longest.iter().skip(1).step_by(2));
        let count = all.len();
        StudentPage {
            student: student.clone(),
            calibration: StudentCalibration {
                student,
                answers: 999,
                verdict: CalibrationVerdict::Near,
                bias: None,
                low: None,
                high: None,
                gamma: None,
                brier: None,
            },
            concepts: ordered
                .enumerate()
                .map(|(place, c)| StudentConcept {
                    concept: ConceptName {
                        id: c.id.to_string(),
                        strand: c.strand.as_str().into(),
                        title: c.title.get(language).into(),
                        i_can: c.i_can.get(language).into(),
                        shown_in: None,
                        has_exercises: true,
                    },
                    phase: Phase::Review,
                    has_it: Some(if place * 2 < count { 0.2 } else { 0.9 }),
                    rating: Some(if place * 2 < count {
                        Confidence::WithHelp
                    } else {
                        Confidence::CouldTeach
                    }),
                    outcome: Some(Outcome::Wrong),
                    practice: PracticeSums {
                        alone: 123,
                        with_help: 45,
                        wrong: 67,
                    },
                    seen: Some(false),
                    newest_days: 100,
                })
                .collect(),
            without_report: 0,
        }
    }

    #[test]
    fn a_family_page_and_a_conference_page_are_one_page_at_their_fullest() {
        for &language in Language::all() {
            let locale = Locale::from(language);
            let student = fullest(language);
            let date = "2026-11-24".parse().unwrap();
            let title = "A class with a title of sixty characters, which is the most, x";
            for page in [
                family::family_page(&student, title, date, locale).unwrap(),
                conference::conference_page(&student, title, date, locale).unwrap(),
            ] {
                for paper in [Paper::A4, Paper::Letter] {
                    let options = PrintOptions {
                        locale,
                        paper,
                        density: Density::Roomy,
                    };
                    let w = Words::new(locale);
                    let fits = scale_of_one_page(&page, &options, &w).unwrap();
                    assert!(fits.is_some(), "{} {paper:?} {language:?}", page.title);
                    assert!(print(&page, &options, true).unwrap().starts_with(b"%PDF-"));
                    let three = [page.clone(), page.clone(), page.clone()];
                    let pdf = print_each("x", &three, &options).unwrap().unwrap();
                    assert!(String::from_utf8_lossy(&pdf).contains("/Count 3"));
                    assert_eq!(print_each("x", &[], &options).unwrap(), None);
                }
            }
        }
    }
}
