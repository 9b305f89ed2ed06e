//! The class chart of one day: a row for each seat, in the order of the entry grid, and a column for
//! each concept.

use super::{Draft, Drafted, ReportColumn, ReportPage, ReportPart, ReportTable};
use crate::chart::scale;
use crate::error::ReportError;
use chrono::NaiveDate;
use surefoot_catalogue::Locale;

/// What the chart of a day has.
#[derive(Clone, Debug)]
pub struct DayChart<'a> {
    /// The title of the class.
    pub class_title: &'a str,
    /// The school day.
    pub date: NaiveDate,
    /// Day of the rotation, from 1.
    pub day: usize,
    /// The titles of its concepts in the order of the review.
    pub concepts: Vec<String>,
    /// Seats with their names, in the order of the entry grid.
    pub seats: Vec<(u32, Option<&'a str>)>,
}

/// The page of a day.
///
/// # Errors
/// Returns [`ReportError::Nothing`] without a concept or a seat.
pub fn day_chart(chart: &DayChart, locale: Locale) -> Drafted<ReportPage> {
    if chart.concepts.is_empty() || chart.seats.is_empty() {
        return Err(ReportError::Nothing);
    }
    let mut draft = Draft::new(
        locale,
        |w| Ok(w.say("report-day-chart", &[("day", chart.day.into())])?),
        chart.class_title,
        chart.date,
    )?;
    draft.words("report-day-chart-how", &[])?;
    let text = scale(&draft.w)?.join("   ·   ");
    draft.put(ReportPart::Words { text });
    let mut columns = vec![ReportColumn::words(draft.w.get("report-group-who")?, 20)];
    let of_concept = chart
        .concepts
        .iter()
        .map(|title| ReportColumn::figures(title, 13));
    columns.extend(of_concept);
    let rows = chart
        .seats
        .iter()
        .map(|(seat, name)| {
            let who = match name {
                Some(name) => (*name).to_owned(),
                None => draft.w.say("report-seat", &[("seat", (*seat).into())])?,
            };
            let mut row = vec![who];
            row.resize(columns.len(), String::new());
            Ok(row)
        })
        .collect::<Drafted<_>>()?;
    let summary = draft.w.get("report-day-chart-summary")?;
    draft.put(ReportPart::Table {
        table: ReportTable {
            summary,
            columns,
            rows,
        },
    });
    Ok(draft.page)
}
