//! The preview of a self-rating chart.

use super::{Drafted, ReportColumn, ReportPage, ReportPart, ReportTable};
use crate::ReportError;
use crate::chart::{Chart, scale};
use crate::paper::Density;
use crate::words::Words;
use surefoot_catalogue::Locale;

/// The first table of each day of the rotation. Only the print has the tables of later passes.
///
/// # Errors
/// Returns [`ReportError::Nothing`] without a concept or a pass.
pub fn chart_page(chart: &Chart, density: Density, locale: Locale) -> Drafted<ReportPage> {
    if chart.is_empty() {
        return Err(ReportError::Nothing);
    }
    let w = Words::new(locale);
    let shown = chart.passes_in_a_table();
    let mut parts = vec![
        ReportPart::Words {
            text: w.get("report-chart-how")?,
        },
        ReportPart::Lines { texts: scale(&w)? },
        ReportPart::Words {
            text: w.get("report-own-view")?,
        },
    ];
    for (place, day) in chart.days.iter().enumerate() {
        if day.is_empty() {
            continue;
        }
        let text = w.say("report-day", &[("day", (place + 1).into())])?;
        let summary = w.say("report-chart-summary", &[("day", text.clone().into())])?;
        parts.push(ReportPart::Heading { text });
        let mut columns = vec![ReportColumn::words(w.get("report-concept")?, 30)];
        columns.extend((1..=shown).map(|pass| ReportColumn::figures(pass.to_string(), 3)));
        let rows = day
            .iter()
            .map(|concept| {
                let title = concept.title.get(locale.language);
                let mut row = vec![match density {
                    Density::Compact => title.to_string(),
                    Density::Roomy => format!("{title}: {}", concept.i_can.get(locale.language)),
                }];
                row.resize(shown + 1, String::new());
                row
            })
            .collect();
        parts.push(ReportPart::Table {
            table: ReportTable {
                summary,
                columns,
                rows,
            },
        });
    }
    if shown < chart.pass_count {
        let args = [
            ("from", (shown + 1).into()),
            ("to", chart.pass_count.into()),
        ];
        parts.push(ReportPart::Words {
            text: w.say("report-chart-more", &args)?,
        });
    }
    Ok(ReportPage {
        title: w.get("report-chart")?,
        under: chart.class_title.to_owned(),
        parts,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use surefoot_catalogue::{Catalogue, Language};

    #[test]
    fn every_concept_has_its_row_and_what_follows_on_paper_is_told() {
        let catalogue = Catalogue::built_in().unwrap();
        let concepts: Vec<_> = catalogue.concepts().iter().take(5).collect();
        let chart = Chart {
            class_title: "Room 9 (invented)",
            days: vec![concepts[..3].to_vec(), Vec::new(), concepts[3..].to_vec()],
            pass_count: 36,
        };
        let locale = Locale::from(Language::first());
        let tables = |density| -> Vec<ReportTable> {
            let page = chart_page(&chart, density, locale).unwrap();
            let told = page.parts.last();
            let more =
                matches!(told, Some(ReportPart::Words { text }) if text.contains("19 to 36"));
            assert!(more);
            (page.parts.into_iter())
                .filter_map(|part| match part {
                    ReportPart::Table { table } => Some(table),
                    _ => None,
                })
                .collect()
        };
        let sizes = |tables: Vec<ReportTable>| -> Vec<(usize, usize)> {
            (tables.iter())
                .map(|table| (table.rows.len(), table.columns.len()))
                .collect()
        };
        assert_eq!(sizes(tables(Density::Roomy)), [(3, 19), (2, 19)]);
        assert_eq!(sizes(tables(Density::Compact)), [(3, 19), (2, 19)]);
        let nothing = Chart {
            pass_count: 0,
            ..chart.clone()
        };
        assert!(chart_page(&nothing, Density::Roomy, locale).is_err());
    }
}
