//! Self-rating charts for students without a device: a table of concepts by passes for each day
//! of the rotation, with space for a number from 0 to 3.

use crate::error::ReportError;
use crate::flow::Document;
use crate::inline::{Align, Style, bold, words};
use crate::paper::{Density, PrintOptions};
use crate::sheet::name_line;
use crate::table::{Cell, Column, Table, Width};
use crate::words::Words;
use surefoot_catalogue::Concept;

/// Passes in a compact table at most.
const PASSES_COMPACT: usize = 20;
const PASSES_ROOMY: usize = 6;

/// The content of a chart.
#[derive(Clone, Debug)]
pub struct Chart<'a> {
    /// The title of the class.
    pub class_title: &'a str,
    /// The concepts of each day of the rotation.
    pub days: Vec<Vec<&'a Concept>>,
    /// Passes in the year.
    pub pass_count: usize,
}

impl Chart<'_> {
    /// Whether it has no concept or no pass.
    pub(crate) fn is_empty(&self) -> bool {
        self.pass_count == 0 || self.days.iter().all(Vec::is_empty)
    }
}

/// Passes in one table at most.
pub(crate) fn passes_in_a_table(density: Density) -> usize {
    match density {
        Density::Compact => PASSES_COMPACT,
        Density::Roomy => PASSES_ROOMY,
    }
}

/// The numbers of the scale with their words.
pub(crate) fn scale(w: &Words) -> Result<Vec<String>, ReportError> {
    (0..4)
        .map(|n| Ok(format!("{n} {}", w.get(&format!("confidence-{n}"))?)))
        .collect()
}

/// A chart as a PDF. A compact one has one table for each day with the whole year; a roomy one
/// has six passes in a table, and the statements.
///
/// # Errors
/// Returns [`ReportError::Nothing`] without a concept or a pass.
pub fn self_rating_chart(chart: &Chart, options: &PrintOptions) -> Result<Vec<u8>, ReportError> {
    if chart.is_empty() {
        return Err(ReportError::Nothing);
    }
    let w = Words::new(options.locale);
    let title = w.get("report-chart")?;
    let compact = options.density == Density::Compact;
    let most = passes_in_a_table(options.density);
    let mut page = Document::new(*options, title.clone(), chart.class_title);
    let all: Vec<usize> = (1..=chart.pass_count).collect();
    for passes in all.chunks(most) {
        page.new_page();
        page.heading(1, &title);
        page.place(&name_line(&w, page.width())?);
        page.paragraph(&words(w.get("report-chart-how")?), Style::of(10.0));
        page.paragraph(&bold(scale(&w)?.join("   ·   ")), Style::of(10.0));
        page.paragraph(&words(w.get("report-own-view")?), Style::of(9.0));
        for (place, day) in chart.days.iter().enumerate() {
            if day.is_empty() {
                continue;
            }
            let heading = w.say("report-day", &[("day", (place + 1).into())])?;
            page.heading(2, &heading);
            page.table(&day_table(&w, &heading, day, passes, compact)?);
        }
    }
    page.finish()
}

fn day_table(
    w: &Words,
    heading: &str,
    day: &[&Concept],
    passes: &[usize],
    compact: bool,
) -> Result<Table, ReportError> {
    let language = w.locale.language;
    let size = if compact { 9.0 } else { 10.5 };
    let mut columns = vec![Column {
        width: Width::Share(if compact { 9.0 } else { 7.0 }),
        align: Align::Left,
    }];
    columns.extend(passes.iter().map(|_| Column {
        width: Width::Share(1.0),
        align: Align::Middle,
    }));
    let mut head = vec![Cell::from(bold(w.get("report-concept")?))];
    head.extend(
        passes
            .iter()
            .map(|pass| Cell::from(words(pass.to_string()))),
    );
    let rows = day
        .iter()
        .map(|concept| {
            let mut name = words(concept.title.get(language));
            if !compact {
                name = bold(format!("{}\n", concept.title.get(language)));
                name.extend(words(concept.i_can.get(language)));
            }
            vec![Cell::from(name)]
        })
        .collect();
    Ok(Table {
        summary: w.say("report-chart-summary", &[("day", heading.into())])?,
        columns,
        head,
        rows,
        row_heads: true,
        size,
        row_height: if compact { 20.0 } else { 38.0 },
    })
}
