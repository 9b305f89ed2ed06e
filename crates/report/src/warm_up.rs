//! The warm-up on paper: a sheet of one page where that is possible, or two half-sheets a page to
//! cut apart, with the answer key on a page of its own.

use crate::entry::key_inlines;
use crate::error::ReportError;
use crate::flow::{Document, as_ornament};
use crate::inline::{Align, Style, bold, paragraph, words};
use crate::mark::{Mark, Pen, Step};
use crate::page::phrases;
use crate::paper::{FOOT, MARGIN, PrintOptions};
use crate::sheet::{name_line, question, space_needed, too_narrow, working_space};
use crate::slab::{Part, Role, Sense, Slab};
use crate::table::{Cell, Column, Table, Width};
use crate::words::Words;
use surefoot_desk::{WarmUpExercise, WarmUpPaper};

/// What the print should have.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct WarmUpWish {
    /// Whether a page has two half-sheets with the same exercises.
    pub halves: bool,
    /// Whether the answer key is left out.
    pub without_key: bool,
}

/// Sizes tried until a sheet has all exercises, in multiples of the usual size.
const SCALES: [f32; 3] = [1.0, 0.92, 0.84];

/// The same of a half-sheet, on which the usual size of the type is so many points. The least is 9.
const SCALES_OF_HALF: [f32; 4] = [1.0, 0.92, 0.84, 0.78];
const USUAL_ON_HALF: f32 = 11.5;

/// Between two exercises side by side, and between two rows, in points.
const BESIDE: f32 = 20.0;
const BELOW: f32 = 9.0;

/// Above the space to work in, in points.
const ABOVE_WORK: f32 = 4.0;

/// From the end of a half-sheet to the line to cut along, in points.
const TO_CUT: f32 = 16.0;

/// The most space to work in that an exercise gets on a whole sheet, in points.
const MOST_WORK: f32 = 120.0;

/// A warm-up as a PDF.
///
/// # Errors
/// Returns [`ReportError::Nothing`] without an exercise.
pub fn warm_up_sheet(
    paper: &WarmUpPaper,
    wish: WarmUpWish,
    options: &PrintOptions,
) -> Result<Vec<u8>, ReportError> {
    if paper.exercises.is_empty() {
        return Err(ReportError::Nothing);
    }
    let w = Words::new(options.locale);
    let title = w.get("report-warm-up")?;
    let date = phrases::date(&w, paper.date)?;
    let day = w.say("report-day", &[("day", paper.day.into())])?;
    let under = format!("{} · {date} · {day}", paper.class_title);
    let mut page = Document::new(*options, title.clone(), under.clone());
    if wish.halves {
        half_sheets(&mut page, &w, &title, &date, paper)?;
    } else {
        whole_sheet(&mut page, &w, &title, &date, paper)?;
    }
    if !wish.without_key {
        page.new_page();
        page.heading(2, &w.say("report-key", &[("title", title.into())])?);
        page.paragraph(&words(under), Style::of(10.5));
        page.space(6.0);
        page.table(&key(&w, paper)?);
    }
    page.finish()
}

/// "Warm-up" and the date at the left, space for a name at the right.
fn head(w: &Words, title: &str, date: &str, wide: f32, size: f32) -> Result<Slab, ReportError> {
    let mut said = bold(format!("{title}   "));
    said.extend(words(date));
    let said = paragraph(&said, wide * 0.5, Style::of(size * 1.1));
    let name = name_line(w, wide * 0.48, false)?;
    let mut slab = Slab::space(wide, 26.0);
    slab.put(
        &said.clone().under(Role::Heading(1, title.to_owned())),
        0.0,
        (22.0 - said.height).max(0.0),
    );
    slab.put(&name, wide * 0.52, 0.0);
    Ok(slab)
}

/// An exercise under the title of its concept.
fn titled(
    w: &Words,
    one: &WarmUpExercise,
    wide: f32,
    size: f32,
    work: f32,
) -> Result<Slab, ReportError> {
    let title = paragraph(
        &bold(one.concept.title.clone()),
        wide,
        Style::of(size * 0.88),
    );
    let mut parts = vec![
        title.under(Role::Heading(2, one.concept.title.clone())),
        question(w, &one.item, wide, size)?,
    ];
    if work > 0.0 {
        parts.push(working_space(wide, work));
    }
    Ok(Slab::stacked(&parts, ABOVE_WORK))
}

/// An exercise, laid out for a half-sheet.
struct Half {
    set: Slab,
    /// Whether it takes the whole width.
    is_wide: bool,
}

/// The exercises of a half-sheet that is so wide, in one size of type.
fn laid_out(w: &Words, paper: &WarmUpPaper, wide: f32) -> Result<Vec<Half>, ReportError> {
    let half = (wide - BESIDE) / 2.0;
    (paper.exercises.iter())
        .map(|one| {
            let is_wide = too_narrow(w, &one.item, half)?;
            let of = if is_wide { wide } else { half };
            let set = titled(w, one, of, USUAL_ON_HALF, 0.0)?;
            Ok(Half { set, is_wide })
        })
        .collect()
}

/// Exercises in two columns as even as can be, each in the order of the review; those of the whole width
/// are below.
fn arranged(all: &[Half], wide: f32) -> Slab {
    /// More are not tried in every way.
    const MOST_TRIED: usize = 10;
    let narrow: Vec<&Slab> = all
        .iter()
        .filter(|one| !one.is_wide)
        .map(|one| &one.set)
        .collect();
    let side = |ways: usize, right: bool| -> Slab {
        let of = narrow.iter().enumerate();
        let of = of.filter(|(at, _)| (ways >> at & 1 == 1) == right);
        let of: Vec<Slab> = of.map(|(_, set)| (*set).clone()).collect();
        Slab::stacked(&of, BELOW)
    };
    let high = |ways: usize, right: bool| -> f32 {
        let of = narrow.iter().enumerate();
        let of = of.filter(|(at, _)| (ways >> at & 1 == 1) == right);
        of.map(|(_, set)| set.height + BELOW).sum()
    };
    let tried = narrow.len().min(MOST_TRIED);
    // Every other exercise at the right, where there are too many.
    let usual = (0..narrow.len())
        .filter(|at| at % 2 == 1)
        .map(|at| 1_usize << at)
        .sum();
    let best = (0..1_usize << tried)
        .filter(|_| tried == narrow.len())
        .chain([usual])
        .min_by(|a, b| {
            let most = |ways: usize| high(ways, false).max(high(ways, true));
            most(*a).total_cmp(&most(*b))
        })
        .unwrap_or(usual);
    let mut columns = Slab::space(wide, 0.0);
    columns.put(&side(best, false), 0.0, 0.0);
    columns.put(&side(best, true), (wide + BESIDE) / 2.0, 0.0);
    let mut parts = vec![columns];
    parts.extend(
        all.iter()
            .filter(|one| one.is_wide)
            .map(|one| one.set.clone()),
    );
    Slab::stacked(&parts, BELOW)
}

/// Two half-sheets a page. What does not fit on one goes to those of the next page.
fn half_sheets(
    page: &mut Document,
    w: &Words,
    title: &str,
    date: &str,
    paper: &WarmUpPaper,
) -> Result<(), ReportError> {
    let wide = page.width();
    // The line to cut along is in the middle of the paper.
    let cut = (page.height() + MARGIN + FOOT) / 2.0 - MARGIN;
    let second = cut + TO_CUT;
    let high = (cut - TO_CUT).min(page.height() - second);
    let head = head(w, title, date, wide, 11.0)?;
    let mut panels: Vec<Slab> = Vec::new();
    for scale in SCALES_OF_HALF {
        let smaller = fill(&head, &laid_out(w, paper, wide / scale)?, wide, high, scale);
        // Smaller type must save a page.
        if panels.is_empty() || smaller.len() < panels.len() {
            panels = smaller;
        }
        if panels.len() == 1 {
            break;
        }
    }
    for panel in panels {
        page.new_page();
        let mut both = Slab::default();
        both.put(&panel, 0.0, 0.0);
        both.parts.push(cut_line(cut, wide));
        // The same again, which a screen reader need not read twice.
        both.put(&as_ornament(&panel), 0.0, second);
        page.place(&both);
    }
    Ok(())
}

/// Puts exercises below a head, on as many panels as they need.
fn fill(head: &Slab, all: &[Half], wide: f32, high: f32, scale: f32) -> Vec<Slab> {
    let room = (high - head.height - BELOW) / scale;
    let mut panels = Vec::new();
    let mut left = all;
    while !left.is_empty() {
        let fitting = (2..=left.len()).rev().find(|count| {
            let these = left.get(..*count).unwrap_or_default();
            arranged(these, wide / scale).height <= room
        });
        let (these, rest) = left.split_at(fitting.unwrap_or(1));
        let set = arranged(these, wide / scale).within(wide / scale, room);
        let mut panel = head.clone();
        panel.put(&set.scaled(scale), 0.0, head.height + BELOW);
        panels.push(panel);
        left = rest;
    }
    panels
}

/// A dashed line across the paper.
fn cut_line(y: f32, wide: f32) -> Part {
    const DASH: f32 = 6.0;
    let mut path = Vec::new();
    let mut x = -MARGIN;
    while x < wide + MARGIN {
        path.push(Step::Move(x, y));
        path.push(Step::Line(x + DASH, y));
        x += 2.0 * DASH;
    }
    Part::Content(
        Sense::Ornament,
        vec![Mark::Shape {
            path,
            fill: None,
            pen: Some(Pen::grey(0.6, 130)),
        }],
    )
}

/// One sheet a page, with space to work in. Smaller text before a second page.
fn whole_sheet(
    page: &mut Document,
    w: &Words,
    title: &str,
    date: &str,
    paper: &WarmUpPaper,
) -> Result<(), ReportError> {
    /// The usual size of the text, and the least space to work in, in points.
    const USUAL: f32 = 12.5;
    const LEAST_WORK: f32 = 20.0;
    let wide = page.width();
    let head = head(w, title, date, wide, 13.0)?;
    let needy = (paper.exercises.iter()).filter(|one| space_needed(&one.item).is_some());
    let needy = needy.count().max(1) as f32;
    let mut fits = None;
    for scale in SCALES {
        let size = USUAL * scale;
        let sets = paper
            .exercises
            .iter()
            .map(|one| titled(w, one, wide, size, 0.0));
        let used: f32 = sets
            .collect::<Result<Vec<Slab>, ReportError>>()?
            .iter()
            .map(|set| set.height + 2.0 * BELOW)
            .sum();
        let left = page.height() - head.height - used - 2.0;
        let share = (left / needy - ABOVE_WORK).min(MOST_WORK);
        if share > LEAST_WORK {
            fits = Some((size, share));
            break;
        }
    }
    page.place(&head);
    for one in &paper.exercises {
        page.space(2.0 * BELOW);
        // What does not fit on one page at any size is easier to read at the usual size.
        let (size, work) = match (fits, space_needed(&one.item)) {
            (Some((size, share)), Some(_)) => (size, share),
            (Some((size, _)), None) => (size, 0.0),
            (None, needed) => (USUAL, needed.unwrap_or(0.0)),
        };
        page.place(&titled(w, one, wide, size, work)?);
    }
    Ok(())
}

fn key(w: &Words, paper: &WarmUpPaper) -> Result<Table, ReportError> {
    let size = 11.0;
    let rows = (paper.exercises.iter())
        .map(|one| {
            let answer = key_inlines(w, &one.item.worked().answer, size)?;
            let title = words(one.concept.title.clone());
            Ok(vec![Cell::from(title), Cell::from(answer)])
        })
        .collect::<Result<_, ReportError>>()?;
    let column = |share| Column {
        width: Width::Share(share),
        align: Align::Left,
    };
    Ok(Table {
        summary: w.say("report-key", &[("title", w.get("report-warm-up")?.into())])?,
        columns: vec![column(0.45), column(0.55)],
        head: vec![
            Cell::from(bold(w.get("report-concept")?)),
            Cell::from(bold(w.get("report-answer")?)),
        ],
        rows,
        row_heads: true,
        size,
        row_height: 18.0,
        pad: 4.0,
    })
}
