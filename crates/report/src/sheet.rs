//! Practice sheets: exercises of one or several concepts, with the answer key on a page of its own.

use crate::drawing::figure;
use crate::entry::{answer_place, blocks, key_inlines};
use crate::error::ReportError;
use crate::flow::Document;
use crate::inline::{Align, Style, bold, paragraph, words};
use crate::mark::{Mark, Pen, rounded};
use crate::paper::{Density, PrintOptions};
use crate::slab::{Part, Role, Sense, Slab};
use crate::table::{Cell, Column, Table, Width};
use crate::words::Words;
use surefoot_catalogue::Concept;
use surefoot_exercises::{Block, Item};

mod part;

pub use part::SheetPart;

/// Exercises of a sheet at most.
pub const MOST_EXERCISES: usize = 120;

/// What a sheet should have.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct SheetWish {
    /// A line under the title, such as the name of a group.
    pub for_whom: Option<String>,
    /// The concepts in their order.
    pub parts: Vec<SheetPart>,
    /// Whether the answer key is left out.
    pub without_key: bool,
}

/// A sheet as a PDF.
///
/// # Errors
/// Returns [`ReportError::Nothing`] for no exercises, [`ReportError::TooMany`] for more than
/// [`MOST_EXERCISES`], [`ReportError::NoConcept`] for a concept without exercises.
pub fn practice_sheet(wish: &SheetWish, options: &PrintOptions) -> Result<Vec<u8>, ReportError> {
    let sets = sets(wish)?;
    let w = Words::new(options.locale);
    let language = options.locale.language;
    let title = title(&sets, &w)?;
    let marks: Vec<String> = sets
        .iter()
        .map(|(_, part, items)| part.mark(items))
        .collect();
    let mut page = Document::new(*options, title.clone(), marks.join("   "));
    page.heading(1, &title);
    page.place(&name_line(&w, page.width())?);
    if let Some(whom) = &wish.for_whom {
        page.paragraph(&words(whom.clone()), Style::of(10.5));
    }
    let one = sets.len() == 1;
    let mut number = 0;
    for (concept, _, items) in &sets {
        if !one {
            // A heading stays with the first exercise under it.
            let first = rows(
                &w,
                options,
                page.width(),
                items.get(..1).unwrap_or_default(),
                &mut 0,
            )?;
            page.need(first.first().map_or(0.0, |row| row.height) + 58.0);
            page.heading(2, concept.title.get(language));
        }
        page.paragraph(&words(concept.i_can.get(language)), Style::of(10.5));
        page.space(6.0);
        place_items(&mut page, &w, options, items, &mut number)?;
    }
    if !wish.without_key {
        page.new_page();
        let heading = w.say("report-key", &[("title", title.clone().into())])?;
        page.heading(2, &heading);
        number = 0;
        for (concept, _, items) in &sets {
            if !one {
                page.heading(3, concept.title.get(language));
            }
            page.table(&key(&w, concept.title.get(language), items, &mut number)?);
        }
    }
    page.finish()
}

/// The title of a sheet, with the concept if it is the only one.
pub(crate) fn title(sets: &[Set<'_>], w: &Words) -> Result<String, ReportError> {
    Ok(match sets {
        [(concept, ..)] => concept.title.get(w.locale.language).to_string(),
        _ => w.get("report-practice")?,
    })
}

/// A concept with its part of the sheet and the exercises.
pub(crate) type Set<'w> = (&'w Concept, &'w SheetPart, Vec<Item>);

/// The exercises of each concept asked for.
pub(crate) fn sets(wish: &SheetWish) -> Result<Vec<Set<'_>>, ReportError> {
    let asked: usize = wish.parts.iter().map(|part| part.count).sum();
    if asked == 0 {
        return Err(ReportError::Nothing);
    }
    if asked > MOST_EXERCISES {
        return Err(ReportError::TooMany {
            asked,
            most: MOST_EXERCISES,
        });
    }
    (wish.parts.iter())
        .filter(|part| part.count > 0)
        .map(|part| Ok((&part.concept, part, part.exercises()?)))
        .collect()
}

/// "Name ____ Date ____".
pub(crate) fn name_line(w: &Words, width: f32) -> Result<Slab, ReportError> {
    let mut row = Slab::space(width, 26.0);
    let size = 10.5;
    let mut label = |text: String, x: f32, to: f32| {
        let start = x + crate::font::width(&text, crate::font::Face::Regular, size) + 5.0;
        row.parts.push(Part::Content(
            Sense::Text,
            vec![Mark::Text {
                x,
                y: 18.0,
                size,
                face: crate::font::Face::Regular,
                text: format!("{text} "),
            }],
        ));
        row.parts.push(Part::Content(
            Sense::Ornament,
            vec![Mark::Shape {
                path: vec![
                    crate::mark::Step::Move(start, 20.0),
                    crate::mark::Step::Line(to, 20.0),
                ],
                fill: None,
                pen: Some(Pen::ink(0.7)),
            }],
        ));
    };
    label(w.get("report-name")?, 0.0, width * 0.62);
    label(w.get("report-date")?, width * 0.66, width);
    Ok(row.under(Role::Paragraph))
}

fn place_items(
    page: &mut Document,
    w: &Words,
    options: &PrintOptions,
    items: &[Item],
    number: &mut usize,
) -> Result<(), ReportError> {
    let gap = if options.density == Density::Compact {
        9.0
    } else {
        12.0
    };
    page.open(Role::List);
    for row in rows(w, options, page.width(), items, number)? {
        page.place(&row);
        page.space(gap);
    }
    page.close();
    Ok(())
}

/// Lays out exercises, two in a row if the sheet is compact and both stay legible.
fn rows(
    w: &Words,
    options: &PrintOptions,
    width: f32,
    items: &[Item],
    number: &mut usize,
) -> Result<Vec<Slab>, ReportError> {
    const GAP: f32 = 22.0;
    let compact = options.density == Density::Compact;
    let half = (width - GAP) / 2.0;
    let alone = items
        .iter()
        .map(|item| Ok(!compact || wants_room(w, item, half)?))
        .collect::<Result<Vec<bool>, ReportError>>()?;
    let mut all = Vec::new();
    let mut next = 0;
    while let (Some(item), Some(single)) = (items.get(next), alone.get(next)) {
        *number += 1;
        // A last single exercise is as wide as those above it.
        let wide = if *single { width } else { half };
        let mut slab = Slab::default();
        slab.put(&exercise(w, item, *number, wide, compact)?, 0.0, 0.0);
        next += 1;
        if let (false, Some(item), Some(false)) = (single, items.get(next), alone.get(next)) {
            *number += 1;
            let beside = exercise(w, item, *number, half, compact)?;
            slab.put(&beside, half + GAP, 0.0);
            next += 1;
        }
        all.push(slab);
    }
    Ok(all)
}

/// Whether a figure of the exercise would be illegible at this width.
fn wants_room(w: &Words, item: &Item, wide: f32) -> Result<bool, ReportError> {
    /// Labels have 9 points at full scale; below 7 points they are hard to read for children.
    const LEAST_SCALE: f32 = 0.75;
    for block in &item.prompt {
        if let Block::Figure { figure: of } = block
            && (wide - LEAD) < figure(w.locale, of, f32::MAX)?.width * LEAST_SCALE
        {
            return Ok(true);
        }
    }
    Ok(false)
}

/// Space for the number of an exercise.
const LEAD: f32 = 26.0;

fn exercise(
    w: &Words,
    item: &Item,
    number: usize,
    wide: f32,
    compact: bool,
) -> Result<Slab, ReportError> {
    let size = if compact { 11.0 } else { 12.5 };
    let inner = wide - LEAD;
    let label = paragraph(&bold(format!("{number}. ")), LEAD, Style::of(size));
    let prompt = blocks(w, &item.prompt, inner, size)?;
    let place = answer_place(w, &item.entry, inner, size)?;
    let mut parts = vec![prompt, place];
    if !compact {
        parts.push(working_space(inner, 64.0));
    }
    let body = Slab::stacked(&parts, 3.0).under(Role::ItemBody);
    let mut set = Slab::default();
    set.put(&label.under(Role::ItemLabel), 0.0, 0.0);
    set.put(&body, LEAD, 0.0);
    set.width = wide;
    Ok(set.under(Role::Item))
}

/// An empty frame to work in.
fn working_space(wide: f32, high: f32) -> Slab {
    let mut slab = Slab::space(wide, high + 4.0);
    slab.parts.push(Part::Content(
        Sense::Ornament,
        vec![Mark::Shape {
            path: rounded(0.5, 4.0, wide - 1.0, high, 5.0),
            fill: None,
            pen: Some(Pen::grey(0.6, 150)),
        }],
    ));
    slab
}

fn key(w: &Words, title: &str, items: &[Item], number: &mut usize) -> Result<Table, ReportError> {
    let size = 11.0;
    let mut rows = Vec::new();
    for item in items {
        *number += 1;
        rows.push(vec![
            Cell::from(bold(format!("{number}. "))),
            Cell::from(key_inlines(w, &item.worked().answer, size)?),
        ]);
    }
    Ok(Table {
        summary: w.say("report-key", &[("title", title.to_string().into())])?,
        columns: vec![
            Column {
                width: Width::Points(48.0),
                align: Align::Right,
            },
            Column {
                width: Width::Share(1.0),
                align: Align::Left,
            },
        ],
        head: vec![
            Cell::from(bold(w.get("report-number")?)),
            Cell::from(bold(w.get("report-answer")?)),
        ],
        rows,
        row_heads: true,
        size,
        row_height: 18.0,
    })
}
