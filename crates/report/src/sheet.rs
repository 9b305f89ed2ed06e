//! Practice sheets: exercises of one or several concepts, with the answer key on a page of its own.

use crate::drawing::figure;
use crate::entry::{answer_place, blocks, key_inlines};
use crate::error::ReportError;
use crate::flow::{BETWEEN_PARTS, Document};
use crate::inline::{Align, Style, bold, paragraph, words};
use crate::mark::{Mark, Pen, rounded};
use crate::paper::{Density, PrintOptions};
use crate::slab::{Part, Role, Sense, Slab};
use crate::table::{Cell, Column, Table, Width};
use crate::words::Words;
use surefoot_catalogue::Concept;
use surefoot_exercises::answer::Entry;
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
    let mut page = Document::new(*options, title.clone(), marks.join(BETWEEN_PARTS));
    page.heading(1, &title);
    page.place(&name_line(&w, page.width(), true)?);
    if let Some(whom) = &wish.for_whom {
        page.paragraph(&words(whom.clone()), Style::of(10.5));
    }
    let one = sets.len() == 1;
    let mut number = 0;
    for (concept, _, items) in &sets {
        if !one {
            // A heading stays with the first exercise under it.
            let first = items.get(..1).unwrap_or_default();
            let first = rows(&w, options.density, page.width(), first, &mut 0)?;
            page.need(first.first().map_or(0.0, |row| row.height(0.0)) + 58.0);
            page.heading(2, concept.title.get(language));
        }
        page.paragraph(&words(concept.i_can.get(language)), Style::of(10.5));
        page.space(6.0);
        let rows = rows(&w, options.density, page.width(), items, &mut number)?;
        place_rows(&mut page, &rows, options.density, one);
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

/// "Name ____", with "Date ____" after it if it is dated by hand.
pub(crate) fn name_line(w: &Words, width: f32, dated: bool) -> Result<Slab, ReportError> {
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
    if dated {
        label(w.get("report-name")?, 0.0, width * 0.62);
        label(w.get("report-date")?, width * 0.66, width);
    } else {
        label(w.get("report-name")?, 0.0, width);
    }
    Ok(row.under(Role::Paragraph))
}

/// Lays out exercises, two in a row if both stay legible and short.
fn rows(
    w: &Words,
    density: Density,
    width: f32,
    items: &[Item],
    number: &mut usize,
) -> Result<Vec<Row>, ReportError> {
    let half = (width - BETWEEN) / 2.0;
    let mut set = |item: &Item, wide: f32| {
        *number += 1;
        exercise(w, item, *number, wide, density)
    };
    let mut all: Vec<Row> = Vec::new();
    // The last row has space for another exercise.
    let mut open = false;
    for item in items {
        if wants_room(w, item, half, density)? {
            all.push(Row::of(set(item, width)?));
            open = false;
            continue;
        }
        let placed = set(item, half)?;
        match all.last_mut().filter(|_| open) {
            Some(row) => row.cells.push((half + BETWEEN, placed)),
            // A last single exercise is as wide as those above it.
            None => all.push(Row::of(placed)),
        }
        open = !open;
    }
    Ok(all)
}

/// Between two exercises side by side, in points.
const BETWEEN: f32 = 22.0;

/// Whether an exercise takes the whole width: one with a figure that would be illegible in half of
/// it, and on a roomy sheet also a long one.
fn wants_room(w: &Words, item: &Item, half: f32, density: Density) -> Result<bool, ReportError> {
    /// The height of a long exercise, without its space to work in.
    const LONG: f32 = 150.0;
    if too_narrow(w, item, half - LEAD)? {
        return Ok(true);
    }
    if density == Density::Compact {
        return Ok(false);
    }
    Ok(exercise(w, item, 1, half, density)?.body.height > LONG)
}

/// Whether a figure of the exercise would be illegible at this width.
pub(crate) fn too_narrow(w: &Words, item: &Item, wide: f32) -> Result<bool, ReportError> {
    /// Labels have 9 points at full scale; below 7 points they are hard to read for children.
    const LEAST_SCALE: f32 = 0.75;
    for block in &item.prompt {
        if let Block::Figure { figure: of } = block
            && wide < figure(w.locale, of, f32::MAX)?.width * LEAST_SCALE
        {
            return Ok(true);
        }
    }
    Ok(false)
}

/// Space for the number of an exercise.
const LEAD: f32 = 26.0;

/// A laid-out exercise.
struct Placed {
    number: Slab,
    body: Slab,
    /// Height of the space to work in; none without one.
    work: Option<f32>,
    wide: f32,
}

/// Exercises side by side, each with its place across.
struct Row {
    cells: Vec<(f32, Placed)>,
}

/// Above a space to work in, in points.
const ABOVE_WORK: f32 = 7.0;

impl Row {
    fn of(placed: Placed) -> Self {
        Self {
            cells: vec![(0.0, placed)],
        }
    }

    fn has_work(&self) -> bool {
        self.cells.iter().any(|(_, placed)| placed.work.is_some())
    }

    /// Its height with so much more space to work in.
    fn height(&self, more: f32) -> f32 {
        let heights = self.cells.iter().map(|(_, placed)| {
            let work = placed.work.map_or(0.0, |work| work + more + ABOVE_WORK);
            placed.body.height + work
        });
        heights.fold(0.0, f32::max)
    }

    fn slab(&self, more: f32) -> Slab {
        let high = self.height(more);
        let mut row = Slab::default();
        for (x, placed) in &self.cells {
            let mut body = placed.body.clone();
            if placed.work.is_some() {
                // Its lower edge is that of its neighbour.
                let free = high - body.height - ABOVE_WORK;
                let space = working_space(placed.wide - LEAD, free);
                body.put(&space, 0.0, body.height + ABOVE_WORK);
            }
            let mut set = Slab::default();
            set.put(&placed.number.clone().under(Role::ItemLabel), 0.0, 0.0);
            set.put(&body.under(Role::ItemBody), LEAD, 0.0);
            set.width = placed.wide;
            row.put(&set.under(Role::Item), *x, 0.0);
        }
        row
    }
}

/// Places rows. Those of a full page share the space that is left on it, as space to work in.
fn place_rows(page: &mut Document, rows: &[Row], density: Density, last_of_all: bool) {
    /// The most that a row gets at the end of a sheet, in points.
    const MOST_AT_END: f32 = 40.0;
    let gap = match density {
        Density::Compact => 9.0,
        Density::Roomy => 12.0,
    };
    page.open(Role::List);
    let mut left = rows;
    while let Some(first) = left.first() {
        page.need(first.height(0.0));
        let (mut count, mut used) = (0, 0.0);
        for row in left {
            let high = row.height(0.0);
            if count > 0 && used + high > page.left() {
                break;
            }
            used += high + gap;
            count += 1;
        }
        let (here, rest) = left.split_at(count);
        let growing = here.iter().filter(|row| row.has_work()).count();
        // Less a point, so that rounding does not move the last row to the next page.
        let share = (page.left() - used - 1.0).max(0.0) / growing.max(1) as f32;
        let more = match (rest.is_empty(), last_of_all) {
            (false, _) => share,
            (true, true) => share.min(MOST_AT_END),
            (true, false) => 0.0,
        };
        for row in here {
            page.place(&row.slab(more));
            page.space(gap);
        }
        left = rest;
        if !left.is_empty() {
            page.new_page();
        }
    }
    page.close();
}

fn exercise(
    w: &Words,
    item: &Item,
    number: usize,
    wide: f32,
    density: Density,
) -> Result<Placed, ReportError> {
    let size = match density {
        Density::Compact => 11.0,
        Density::Roomy => 12.5,
    };
    let label = paragraph(&bold(format!("{number}. ")), LEAD, Style::of(size));
    Ok(Placed {
        number: label,
        body: question(w, item, wide - LEAD, size)?,
        work: space_needed(item).filter(|_| density == Density::Roomy),
        wide,
    })
}

/// The prompt of an exercise and the place for its answer.
pub(crate) fn question(w: &Words, item: &Item, wide: f32, size: f32) -> Result<Slab, ReportError> {
    let prompt = blocks(w, &item.prompt, wide, size)?;
    let place = answer_place(w, &item.entry, wide, size)?;
    Ok(Slab::stacked(&[prompt, place], 3.0))
}

/// The height of the space to work in that an exercise needs, in points: the more steps its
/// solution has, the more. One that is answered by a mark or a drawing and solved in few steps
/// needs none. Our choice; no source.
pub(crate) fn space_needed(item: &Item) -> Option<f32> {
    let steps = item.worked().steps.len();
    let written = matches!(
        item.entry,
        Entry::WholeNumber { .. }
            | Entry::Decimal { .. }
            | Entry::Fraction { .. }
            | Entry::Mixed { .. }
            | Entry::Money
            | Entry::Time { .. }
            | Entry::Duration { .. }
            | Entry::Expression { .. }
            | Entry::Equation { .. }
            | Entry::QuotientRemainder
            | Entry::SeveralNumbers { .. }
            | Entry::Boxes { .. }
            | Entry::TwoParts { .. }
    );
    match (written, steps) {
        (false, 0..=2) => None,
        (false, _) => Some(26.0),
        (true, 0..=1) => Some(26.0),
        (true, 2) => Some(36.0),
        (true, _) => Some(52.0),
    }
}

/// An empty frame to work in.
pub(crate) fn working_space(wide: f32, high: f32) -> Slab {
    let mut slab = Slab::space(wide, high);
    slab.parts.push(Part::Content(
        Sense::Ornament,
        vec![Mark::Shape {
            path: rounded(0.5, 0.0, wide - 1.0, high, 5.0),
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
        pad: 4.0,
    })
}
