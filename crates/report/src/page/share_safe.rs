//! The share-safe table for the school.

use super::{Draft, Drafted, ReportColumn, ReportPage, ReportPart, ReportTable};
use crate::words::Words;
use surefoot_catalogue::Locale;
use surefoot_desk::{ShareRelease, ShareRow, ShareShown, ShareStep, ShareTable};

/// The page of a share-safe table.
pub fn share_page(table: &ShareTable, locale: Locale) -> Drafted<ReportPage> {
    let mut draft = Draft::new(
        locale,
        |w| Ok(w.get("report-share-title")?),
        &table.class_title,
        table.date,
    )?;
    draft.words("report-share-what", &[])?;
    if table.release == ShareRelease::Nothing {
        draft.words(
            "report-share-nothing",
            &[("least", table.smallest_group.into())],
        )?;
        draft.caution("report-caution")?;
        return Ok(draft.page);
    }
    match table.release {
        ShareRelease::TooFewChanged { unchanged, least } => {
            let args = [("rows", unchanged.into()), ("least", least.into())];
            let text = draft.w.say("report-share-too-few-changed", &args)?;
            draft.put(ReportPart::Caution { text });
        }
        ShareRelease::Allowed { unchanged, .. } if unchanged > 0 => {
            let least = table.smallest_group;
            let args = [("rows", unchanged.into()), ("least", least.into())];
            let text = draft.w.say("report-share-unchanged", &args)?;
            draft.put(ReportPart::Caution { text });
        }
        ShareRelease::Allowed { .. } | ShareRelease::Nothing => {}
    }
    let set = rows(&draft.w, table)?;
    draft.put(ReportPart::Table { table: set });
    draft.heading("report-share-rules")?;
    let mut texts = vec![draft.w.say(
        "report-share-rule-group",
        &[("least", table.smallest_group.into())],
    )?];
    if table.totals.is_some() {
        texts.push(draft.w.get("report-share-rule-further")?);
    } else {
        texts.push(draft.w.get("report-share-rule-bands")?);
    }
    texts.push(draft.w.say(
        "report-share-audit",
        &[
            ("withheld", table.audit.withheld.into()),
            ("possible", number(table.audit.least_possible).into()),
        ],
    )?);
    draft.put(ReportPart::Lines { texts });
    draft.caution("report-caution")?;
    Ok(draft.page)
}

fn number(count: u64) -> usize {
    usize::try_from(count).unwrap_or(usize::MAX)
}

fn rows(w: &Words, table: &ShareTable) -> Drafted<ReportTable> {
    let counts = table.step == ShareStep::ConceptCounts;
    let by_concept = matches!(
        table.step,
        ShareStep::ConceptCounts | ShareStep::ConceptBands
    );
    let first = match table.step {
        ShareStep::StrandBands => "report-col-strand",
        ShareStep::ClassOnly => "report-col-class",
        _ => "report-concept",
    };
    let mut columns = vec![ReportColumn::words(w.get(first)?, 30)];
    if by_concept {
        columns.push(ReportColumn::words(w.get("report-col-strand")?, 22));
    }
    columns.push(ReportColumn::figures(w.get("report-col-raters")?, 14));
    columns.push(ReportColumn::figures(w.get("report-col-low")?, 18));
    if counts {
        columns.push(ReportColumn::figures(w.get("report-col-high")?, 18));
    }
    let withheld = w.get("report-withheld")?;
    let mut rows: Vec<Vec<String>> = table
        .rows
        .iter()
        .map(|row| {
            let mut cells = vec![named(w, row)?];
            if by_concept {
                cells.push(strand(w, row)?);
            }
            match row.shown {
                ShareShown::Withheld => {
                    cells.push(withheld.clone());
                    cells.push(withheld.clone());
                    if counts {
                        cells.push(withheld.clone());
                    }
                }
                ShareShown::Counts {
                    low,
                    high,
                    reporters,
                } => {
                    cells.push(reporters.to_string());
                    for count in [low, high] {
                        cells.push(count.map_or_else(|| withheld.clone(), |n| n.to_string()));
                    }
                }
                ShareShown::Band {
                    from_percent,
                    to_percent,
                    to_included,
                    fewest_reporters,
                    most_reporters,
                } => {
                    cells.push(match most_reporters {
                        Some(most) => format!("{fewest_reporters}–{most}"),
                        None => format!("≥ {fewest_reporters}"),
                    });
                    cells.push(band(from_percent, to_percent, to_included));
                }
            }
            Ok(cells)
        })
        .collect::<Drafted<_>>()?;
    if let Some([low, high]) = table.totals {
        let mut cells = vec![w.get("report-total")?, String::new()];
        cells.push((low + high).to_string());
        cells.push(low.to_string());
        cells.push(high.to_string());
        rows.push(cells);
    }
    Ok(ReportTable {
        summary: w.get("report-share-title")?,
        columns,
        rows,
    })
}

/// "≤ 20%", "21–39%", "≥ 80%". The bands at the ends are open, so that they never show nobody or
/// everybody.
fn band(from: u32, to: u32, to_included: bool) -> String {
    if from == 0 {
        format!("{} {to}%", if to_included { "≤" } else { "<" })
    } else if to >= 100 {
        format!("≥ {from}%")
    } else {
        // The lowest band includes its upper end, so the next band begins above it.
        let step = to - from;
        let low = if from == step && step < 50 {
            from + 1
        } else {
            from
        };
        format!("{low}–{}%", to - 1)
    }
}

fn named(w: &Words, row: &ShareRow) -> Drafted<String> {
    Ok(match (&row.concept, &row.strand) {
        (Some(concept), _) => concept.title.clone(),
        (None, Some(_)) => strand(w, row)?,
        (None, None) => w.get("report-whole-class")?,
    })
}

fn strand(w: &Words, row: &ShareRow) -> Drafted<String> {
    Ok(match &row.strand {
        Some(strand) => w.get(&format!("strand-{strand}"))?,
        None => String::new(),
    })
}
