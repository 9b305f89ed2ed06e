//! Self-rating charts for students without a device: a table of concepts by passes for each day
//! of the rotation, with space for a number from 0 to 3. The usual year of 18 passes and 60
//! concepts takes one sheet, printed on both sides, or two sheets with the statements.

use crate::error::ReportError;
use crate::flow::Document;
use crate::inline::{Align, Style, bold, words};
use crate::paper::{Density, PrintOptions};
use crate::sheet::name_line;
use crate::table::{Cell, Column, Table, Width};
use crate::words::Words;
use surefoot_catalogue::Concept;

/// Passes in one table at most, so that a digit fits into a cell.
const MOST_PASSES: usize = 20;

/// The greatest width of the cell of a pass in points, and their greatest share of the page.
const MOST_CELL: f32 = 24.0;
const MOST_CELLS_SHARE: f32 = 0.56;

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

    /// Passes in one table. Tables are as wide as one another.
    pub(crate) fn passes_in_a_table(&self) -> usize {
        let tables = self.pass_count.div_ceil(MOST_PASSES).max(1);
        self.pass_count.div_ceil(tables)
    }
}

/// The numbers of the scale with their words.
pub(crate) fn scale(w: &Words) -> Result<Vec<String>, ReportError> {
    (0..4)
        .map(|n| Ok(format!("{n} {}", w.get(&format!("confidence-{n}"))?)))
        .collect()
}

/// A chart as a PDF. A roomy one has the statements, and higher rows.
///
/// # Errors
/// Returns [`ReportError::Nothing`] without a concept or a pass.
pub fn self_rating_chart(chart: &Chart, options: &PrintOptions) -> Result<Vec<u8>, ReportError> {
    if chart.is_empty() {
        return Err(ReportError::Nothing);
    }
    let w = Words::new(options.locale);
    let title = w.get("report-chart")?;
    let most = chart.passes_in_a_table();
    let mut page = Document::new(*options, title.clone(), chart.class_title);
    let all: Vec<usize> = (1..=chart.pass_count).collect();
    for passes in all.chunks(most) {
        page.new_page();
        page.heading(1, &title);
        page.place(&name_line(&w, page.width(), true)?);
        page.paragraph(&words(w.get("report-chart-how")?), Style::of(10.0));
        page.paragraph(&bold(scale(&w)?.join("   ·   ")), Style::of(10.0));
        page.paragraph(&words(w.get("report-own-view")?), Style::of(9.0));
        page.space(4.0);
        for (place, day) in chart.days.iter().enumerate() {
            if day.is_empty() {
                continue;
            }
            page.table(&day_table(&w, options, place + 1, day, passes)?);
            page.space(5.0);
        }
    }
    page.finish()
}

fn day_table(
    w: &Words,
    options: &PrintOptions,
    number: usize,
    day: &[&Concept],
    passes: &[usize],
) -> Result<Table, ReportError> {
    let language = w.locale.language;
    let compact = options.density == Density::Compact;
    let heading = w.say("report-day", &[("day", number.into())])?;
    let cell = options.width() * MOST_CELLS_SHARE / passes.len().max(1) as f32;
    let mut columns = vec![Column {
        width: Width::Share(1.0),
        align: Align::Left,
    }];
    columns.extend(passes.iter().map(|_| Column {
        width: Width::Points(cell.min(MOST_CELL)),
        align: Align::Middle,
    }));
    let mut head = vec![Cell::from(bold(heading.clone()))];
    head.extend(
        passes
            .iter()
            .map(|pass| Cell::from(words(pass.to_string()))),
    );
    let rows = day
        .iter()
        .map(|concept| {
            let title = concept.title.get(language);
            let name = match compact {
                true => words(title),
                false => {
                    let mut name = bold(format!("{title}. "));
                    name.extend(words(concept.i_can.get(language)));
                    name
                }
            };
            vec![Cell::from(name)]
        })
        .collect();
    Ok(Table {
        summary: w.say("report-chart-summary", &[("day", heading.into())])?,
        columns,
        head,
        rows,
        row_heads: true,
        size: if compact { 8.5 } else { 9.0 },
        row_height: if compact { 15.5 } else { 28.0 },
        pad: if compact { 2.0 } else { 2.5 },
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::paper::Paper;
    use surefoot_catalogue::{Catalogue, Language, Locale};

    /// Sixty concepts on ten days.
    fn pages(pass_count: usize, options: &PrintOptions) -> usize {
        let catalogue = Catalogue::built_in().unwrap();
        let of_grade = catalogue
            .concepts()
            .iter()
            .filter(|concept| matches!(concept.grade, 4 | 5));
        let concepts: Vec<&Concept> = of_grade.take(60).collect();
        let chart = Chart {
            class_title: "Room 9 (invented)",
            days: concepts.chunks(6).map(<[&Concept]>::to_vec).collect(),
            pass_count,
        };
        let pdf = self_rating_chart(&chart, options).unwrap();
        let text = String::from_utf8_lossy(&pdf).into_owned();
        let count = text.split("/Count ").nth(1).unwrap();
        count
            .split(|c: char| !c.is_ascii_digit())
            .next()
            .unwrap()
            .parse()
            .unwrap()
    }

    #[test]
    fn a_year_takes_few_pages_in_every_language_on_every_paper() {
        for language in Language::all() {
            for paper in [Paper::A4, Paper::Letter] {
                for (density, most) in [(Density::Compact, 2), (Density::Roomy, 4)] {
                    let options = PrintOptions {
                        locale: Locale::from(*language),
                        paper,
                        density,
                    };
                    let count = pages(18, &options);
                    assert!(
                        count <= most,
                        "{count} pages, {language:?} {paper:?} {density:?}"
                    );
                    assert!(pages(36, &options) <= 2 * most);
                }
            }
        }
    }
}
