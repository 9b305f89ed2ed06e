//! Tables for other programs: CSV and XLSX of the board and of the class summary.

mod csv;
mod xlsx;

pub use csv::to_csv;
pub use xlsx::to_xlsx;

use crate::error::ReportError;
use crate::page::phrases;
use crate::words::Words;
use surefoot_catalogue::Locale;
use surefoot_catalogue::rotation::Phase;
use surefoot_desk::Board;

/// A cell.
#[derive(Debug, Clone, PartialEq)]
pub enum GridCell {
    /// Text; never a formula.
    Text(String),
    /// A number.
    Number(f64),
    /// A share from 0 to 1.
    Share(f64),
    /// Nothing.
    Empty,
}

/// A table with names for its columns.
#[derive(Debug, Clone, PartialEq)]
pub struct Grid {
    /// Its title.
    pub title: String,
    /// Names of the columns.
    pub head: Vec<String>,
    /// Its rows, as long as the head.
    pub rows: Vec<Vec<GridCell>>,
}

fn number(count: impl Into<u32>) -> GridCell {
    GridCell::Number(f64::from(count.into()))
}

fn size(count: usize) -> GridCell {
    GridCell::Number(f64::from(u32::try_from(count).unwrap_or(u32::MAX)))
}

/// A share, rounded to thousandths.
fn share(share: Option<f64>) -> GridCell {
    share.map_or(GridCell::Empty, |s| {
        GridCell::Share((s * 1000.0).round() / 1000.0)
    })
}

/// A table of concepts by passes: how many rated, and how many of these chose Not yet or With help.
pub fn board_grid(board: &Board, locale: Locale) -> Result<Grid, ReportError> {
    let w = Words::new(locale);
    let mut head = named_head(&w)?;
    for pass in 1..=board.pass_count {
        head.push(w.say("report-grid-rated", &[("pass", pass.into())])?);
        head.push(w.say("report-grid-needs", &[("pass", pass.into())])?);
    }
    let rows = board
        .rows
        .iter()
        .map(|row| {
            let mut cells = named_cells(&w, row)?;
            for pass in 0..board.pass_count {
                match row.passes.get(pass) {
                    Some(cell) => cells.extend([number(cell.rated), number(cell.needs)]),
                    None => cells.extend([GridCell::Empty, GridCell::Empty]),
                }
            }
            Ok(cells)
        })
        .collect::<Result<_, ReportError>>()?;
    Ok(Grid {
        title: w.get("report-grid-board")?,
        head,
        rows,
    })
}

/// A table with one row for each concept: estimate, ratings, results, practice.
pub fn summary_grid(board: &Board, locale: Locale) -> Result<Grid, ReportError> {
    let w = Words::new(locale);
    let mut head = named_head(&w)?;
    for id in [
        "report-grid-rank",
        "report-col-raters",
        "report-grid-share",
        "report-grid-low",
        "report-grid-high",
        "report-col-trend",
    ] {
        head.push(w.get(id)?);
    }
    for rating in 0..4 {
        head.push(w.get(&format!("confidence-{rating}"))?);
    }
    for id in [
        "outcome-right",
        "outcome-wrong",
        "report-grid-alone",
        "report-grid-helped",
        "report-grid-wrong",
        "report-col-days",
    ] {
        head.push(w.get(id)?);
    }
    let rows = board
        .rows
        .iter()
        .map(|row| {
            let mut cells = named_cells(&w, row)?;
            cells.push(row.rank.map_or(GridCell::Empty, size));
            cells.push(size(row.reporters));
            cells.extend([share(row.has_it), share(row.low), share(row.high)]);
            cells.push(GridCell::Text(phrases::trend(&w, row.trend)?));
            cells.extend(row.latest.map(number));
            let (results, practice) = (row.results, row.practice);
            cells.extend([results.right, results.wrong].map(number));
            cells.extend([practice.alone, practice.with_help, practice.wrong].map(number));
            cells.push(
                row.newest_days
                    .and_then(|days| u32::try_from(days).ok())
                    .map_or(GridCell::Empty, number),
            );
            Ok(cells)
        })
        .collect::<Result<_, ReportError>>()?;
    Ok(Grid {
        title: w.get("report-grid-summary")?,
        head,
        rows,
    })
}

fn named_head(w: &Words) -> Result<Vec<String>, ReportError> {
    Ok(vec![
        w.get("report-grid-id")?,
        w.get("report-concept")?,
        w.get("report-col-strand")?,
        w.get("report-grid-grade")?,
        w.get("report-col-phase")?,
        w.get("report-grid-day")?,
    ])
}

fn named_cells(w: &Words, row: &surefoot_desk::BoardRow) -> Result<Vec<GridCell>, ReportError> {
    let phase = match row.phase {
        Phase::Preview => "phase-preview",
        Phase::Practice => "phase-practice",
        Phase::Review => "phase-review",
    };
    Ok(vec![
        GridCell::Text(row.concept.id.clone()),
        GridCell::Text(row.concept.title.clone()),
        GridCell::Text(w.get(&format!("strand-{}", row.concept.strand))?),
        number(row.grade),
        GridCell::Text(w.get(phase)?),
        size(row.day),
    ])
}
