//! The summary of a class, without names.

use super::{Draft, Drafted, ReportColumn, ReportPage, ReportPart, ReportTable, phrases};
use std::collections::BTreeMap;
use surefoot_catalogue::Locale;
use surefoot_catalogue::rotation::Phase;
use surefoot_desk::{Board, BoardRow};

/// Misconceptions listed at most.
const MOST_MISCONCEPTIONS: usize = 8;

/// The page of a class.
pub fn class_summary(board: &Board, locale: Locale) -> Drafted<ReportPage> {
    let mut draft = Draft::new(
        locale,
        |w| Ok(w.get("report-summary-title")?),
        &board.class_title,
        board.today,
    )?;
    draft.words(
        "report-summary-what",
        &[
            ("reporting", board.seats_reporting.into()),
            ("seats", board.seats.into()),
        ],
    )?;
    draft.caution("report-summary-caution")?;
    let (shown, other): (Vec<&BoardRow>, Vec<&BoardRow>) = board
        .rows
        .iter()
        .partition(|row| row.reporters > 0 && row.phase != Phase::Preview);
    if shown.is_empty() {
        draft.words("report-no-reports", &[])?;
    } else {
        draft.words("report-summary-range", &[])?;
        let table = concepts(&draft, &shown)?;
        draft.put(ReportPart::Table { table });
    }
    if !other.is_empty() {
        draft.words("report-summary-other", &[("count", other.len().into())])?;
    }
    let mut misconceptions: BTreeMap<&str, u32> = BTreeMap::new();
    for found in board.rows.iter().flat_map(|row| &row.misconceptions) {
        let sum = misconceptions.entry(&found.code).or_default();
        *sum = sum.saturating_add(found.count);
    }
    if !misconceptions.is_empty() {
        let mut most: Vec<(&str, u32)> = misconceptions.into_iter().collect();
        most.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
        draft.heading("report-misconceptions")?;
        let texts = most
            .into_iter()
            .take(MOST_MISCONCEPTIONS)
            .map(|(code, count)| {
                let name = phrases::misconception(&draft.w, code)?;
                Ok(format!("{name} ({count})"))
            })
            .collect::<Drafted<_>>()?;
        draft.put(ReportPart::Lines { texts });
    }
    Ok(draft.page)
}

fn concepts(draft: &Draft, rows: &[&BoardRow]) -> Drafted<ReportTable> {
    let w = &draft.w;
    let mut columns = vec![
        ReportColumn::words(w.get("report-concept")?, 29),
        ReportColumn::figures(w.get("report-col-share")?, 17),
        ReportColumn::words(w.get("report-col-trend")?, 21),
    ];
    for rating in 0..4 {
        columns.push(ReportColumn::figures(
            w.get(&format!("confidence-{rating}"))?,
            8,
        ));
    }
    columns.push(ReportColumn::figures(w.get("report-col-practice")?, 16));
    let rows = rows
        .iter()
        .map(|row| {
            let share = match (row.has_it, row.low, row.high) {
                (Some(share), Some(low), Some(high)) => format!(
                    "{} ({:.0}–{:.0})",
                    phrases::percent(share),
                    low * 100.0,
                    high * 100.0
                ),
                _ => phrases::NONE.to_string(),
            };
            let mut cells = vec![
                row.concept.title.clone(),
                share,
                phrases::trend(w, row.trend)?,
            ];
            cells.extend(row.latest.iter().map(u32::to_string));
            cells.push(phrases::practice(row.practice));
            Ok(cells)
        })
        .collect::<Drafted<_>>()?;
    Ok(ReportTable {
        summary: w.get("report-summary-title")?,
        columns,
        rows,
    })
}
