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
use surefoot_exercises::expr::Sign;
use surefoot_exercises::text::{expr_text, sign_text};
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
            let first = laid_out(&w, options.density, page.width(), first, &mut 0)?;
            page.need(first.first().map_or(0.0, Placed::height) + 58.0);
            page.heading(2, concept.title.get(language));
        }
        page.paragraph(&words(concept.i_can.get(language)), Style::of(10.5));
        page.space(6.0);
        let all = laid_out(&w, options.density, page.width(), items, &mut number)?;
        place_all(&mut page, &all, options.density, one);
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

/// Lays out exercises, half as wide as the page if they stay legible and short.
fn laid_out(
    w: &Words,
    density: Density,
    width: f32,
    items: &[Item],
    number: &mut usize,
) -> Result<Vec<Placed>, ReportError> {
    let half = (width - BETWEEN) / 2.0;
    items
        .iter()
        .map(|item| {
            *number += 1;
            let wide = match wants_room(w, item, (half, width), density)? {
                true => width,
                false => half,
            };
            exercise(w, item, *number, wide, density)
        })
        .collect()
}

/// Between two exercises side by side, in points.
const BETWEEN: f32 = 22.0;

/// Whether an exercise takes the whole width: one with a figure that would be illegible in half of
/// it, and on a roomy sheet also one that needs less paper so.
fn wants_room(
    w: &Words,
    item: &Item,
    (half, whole): (f32, f32),
    density: Density,
) -> Result<bool, ReportError> {
    if too_narrow(w, item, half - LEAD)? {
        return Ok(true);
    }
    if density == Density::Compact {
        return Ok(false);
    }
    let high = |wide| Ok::<f32, ReportError>(exercise(w, item, 1, wide, density)?.height());
    Ok(2.0 * high(whole)? < high(half)?)
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

/// Above a space to work in, in points.
const ABOVE_WORK: f32 = 4.0;

impl Placed {
    fn height(&self) -> f32 {
        self.body.height + self.work.map_or(0.0, |work| work + ABOVE_WORK)
    }

    /// The exercise with so much more space to work in.
    fn slab(&self, more: f32) -> Slab {
        let mut body = self.body.clone();
        if let Some(work) = self.work {
            let space = working_space(self.wide - LEAD, work + more);
            body.put(&space, 0.0, self.body.height + ABOVE_WORK);
        }
        let mut set = Slab::default();
        set.put(&self.number.clone().under(Role::ItemLabel), 0.0, 0.0);
        set.put(&body.under(Role::ItemBody), LEAD, 0.0);
        set.width = self.wide;
        set.under(Role::Item)
    }
}

/// Splits exercises into columns that are at most so high, from the first on. Returns how many are
/// in each; the first column has at least one.
fn columns(all: &[Placed], count: usize, high: f32, gap: f32) -> Vec<usize> {
    let mut left = all;
    (0..count)
        .map(|column| {
            let mut used = 0.0;
            let mut taken = 0;
            for one in left {
                used += one.height() + if taken > 0 { gap } else { 0.0 };
                if used > high && (column > 0 || taken > 0) {
                    break;
                }
                taken += 1;
            }
            left = left.split_at(taken).1;
            taken
        })
        .collect()
}

/// The least height at which all exercises are in so many columns.
fn even_height(all: &[Placed], count: usize, high: f32, gap: f32) -> f32 {
    let (mut low, mut high) = (0.0, high);
    for _ in 0..12 {
        let middle = (low + high) / 2.0;
        let fits = columns(all, count, middle, gap).iter().sum::<usize>() == all.len()
            && all.iter().all(|one| one.height() <= middle);
        if fits {
            high = middle;
        } else {
            low = middle;
        }
    }
    high
}

/// Places exercises: those half as wide as the page in two columns, read one after the other. The
/// spaces to work in share what is left of a full page.
fn place_all(page: &mut Document, all: &[Placed], density: Density, last_of_all: bool) {
    /// The most that a space to work in grows, on a full page and at the end, in points.
    const MOST_ON_FULL: f32 = 60.0;
    const MOST_AT_END: f32 = 30.0;
    let gap = match density {
        Density::Compact => 9.0,
        Density::Roomy => 8.0,
    };
    page.open(Role::List);
    let mut left = all;
    while let Some(first) = left.first() {
        page.need(first.height());
        let full = first.wide >= page.width();
        let alike = left
            .iter()
            .take_while(|one| (one.wide >= page.width()) == full);
        let run = left.split_at(alike.count()).0;
        let count = if full { 1 } else { 2 };
        // Less a point, so that rounding moves nothing to the next page.
        let room = page.left() - 1.0;
        let taken: usize = columns(run, count, room, gap).iter().sum();
        let here = run.split_at(taken).0;
        let rest = left.split_at(taken).1;
        let (high, most) = match (taken < run.len(), rest.is_empty() && last_of_all) {
            (true, _) => (room, MOST_ON_FULL),
            (false, true) => (room, MOST_AT_END),
            (false, false) => (even_height(here, count, room, gap), MOST_ON_FULL),
        };
        // At the end of a sheet the columns are even too.
        let even = match taken < run.len() {
            true => room,
            false => even_height(here, count, room, gap),
        };
        let mut block = Slab::default();
        let mut x = 0.0;
        let mut of_column = here;
        for count in columns(here, count, even, gap) {
            let (these, others) = of_column.split_at(count);
            let used: f32 = these.iter().map(|one| one.height() + gap).sum::<f32>() - gap;
            let growing = these.iter().filter(|one| one.work.is_some()).count().max(1);
            let more = ((high - used) / growing as f32).clamp(0.0, most);
            let mut y = 0.0;
            for one in these {
                let slab = one.slab(more);
                block.put(&slab, x, y);
                y += slab.height + gap;
            }
            x += first.wide + BETWEEN;
            of_column = others;
        }
        page.place(&block);
        page.space(gap);
        left = rest;
        if taken < run.len() {
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
        Density::Roomy => 11.5,
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
    let mut parts = vec![blocks(w, &item.prompt, wide, size)?];
    if !is_answered_in_the_prompt(w, item)? {
        parts.push(answer_place(w, &item.entry, wide, size)?);
    }
    Ok(Slab::stacked(&parts, 3.0))
}

/// Whether the answer is a number in the one box of the prompt, or a sign in its one circle. A line
/// beside it would be a second place for it.
fn is_answered_in_the_prompt(w: &Words, item: &Item) -> Result<bool, ReportError> {
    let place = match item.entry {
        Entry::WholeNumber { .. } | Entry::Decimal { .. } => EMPTY_BOX,
        Entry::Comparison => sign_text(Sign::Blank),
        _ => return Ok(false),
    };
    let mut places = 0;
    for block in &item.prompt {
        if let Block::Math { expr } = block {
            places += expr_text(w.locale, expr)?.matches(place).count();
        }
    }
    Ok(places == 1)
}

/// How text writes a box to fill.
const EMPTY_BOX: &str = "□";

/// The height of the space to work in that an exercise needs, in points: the more steps its
/// solution has, the more. One that is answered by a mark or a drawing and solved in few steps
/// needs none. Our choice; no source.
pub(crate) fn space_needed(item: &Item) -> Option<f32> {
    let steps = item.worked().steps.len();
    match (is_written(&item.entry), steps) {
        (false, 0..=2) => None,
        (false, _) | (true, 0..=1) => Some(22.0),
        (true, 2) => Some(30.0),
        (true, _) => Some(42.0),
    }
}

/// Whether an answer is written, not marked or drawn: of two parts, whether one is.
fn is_written(entry: &Entry) -> bool {
    if let Entry::TwoParts { first, second, .. } = entry {
        return is_written(first) || is_written(second);
    }
    matches!(
        entry,
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
    )
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
