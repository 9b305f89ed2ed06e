//! The print of My path: every concept with its rating in each pass, and the practice. It has no
//! nickname, because students write their names by hand.

use crate::error::ReportError;
use crate::flow::Document;
use crate::inline::{Align, Style, bold, words};
use crate::paper::PrintOptions;
use crate::sheet::name_line;
use crate::table::{Cell, Column, Table, Width};
use crate::words::Words;
use surefoot_student::views::{MyPath, PathConcept};

/// Passes in a table at most.
const MOST_PASSES: usize = 20;

/// The path as a PDF.
///
/// # Errors
/// Returns [`ReportError::Nothing`] without a concept or a pass.
pub fn path_pages(
    path: &MyPath,
    class_title: &str,
    options: &PrintOptions,
) -> Result<Vec<u8>, ReportError> {
    if path.concepts.is_empty() || path.pass_count == 0 {
        return Err(ReportError::Nothing);
    }
    let w = Words::new(options.locale);
    let title = w.get("report-path")?;
    let mut page = Document::new(*options, title.clone(), class_title);
    page.heading(1, &title);
    page.place(&name_line(&w, page.width(), true)?);
    page.paragraph(
        &words(w.say(
            "report-path-counts",
            &[
                ("rated", path.rated.into()),
                ("practised", path.practised.into()),
            ],
        )?),
        Style::of(10.5),
    );
    let scale: Vec<String> = (0..4)
        .map(|n| Ok(format!("{n} {}", w.get(&format!("confidence-{n}"))?)))
        .collect::<Result<_, ReportError>>()?;
    page.paragraph(&bold(scale.join("   ·   ")), Style::of(10.0));
    page.paragraph(&words(w.get("report-path-how")?), Style::of(9.5));
    page.paragraph(&words(w.get("report-own-view")?), Style::of(9.5));
    goals(&mut page, &w, path)?;
    let passes: Vec<usize> = (0..path.pass_count).collect();
    for passes in passes.chunks(MOST_PASSES) {
        for strand in path
            .concepts
            .chunk_by(|a, b| a.concept.strand == b.concept.strand)
        {
            let Some(first) = strand.first() else {
                continue;
            };
            let heading = w.get(&format!("strand-{}", first.concept.strand))?;
            page.heading(2, &heading);
            page.table(&strand_table(&w, &heading, strand, passes)?);
        }
    }
    page.finish()
}

/// The goals, each with a box to tick.
fn goals(page: &mut Document, w: &Words, path: &MyPath) -> Result<(), ReportError> {
    if path.goals.is_empty() {
        return Ok(());
    }
    page.heading(2, &w.get("report-path-goals")?);
    for goal in &path.goals {
        let id = if goal.reached {
            "report-path-goal-reached"
        } else {
            "report-path-goal"
        };
        let line = w.say(id, &[("goal", goal.words.clone().into())])?;
        page.paragraph(&words(line), Style::of(10.5));
    }
    Ok(())
}

fn strand_table(
    w: &Words,
    heading: &str,
    strand: &[PathConcept],
    passes: &[usize],
) -> Result<Table, ReportError> {
    let middle = |share: f32| Column {
        width: Width::Share(share),
        align: Align::Middle,
    };
    let mut columns = vec![Column {
        width: Width::Share(7.4),
        align: Align::Left,
    }];
    columns.extend(passes.iter().map(|_| middle(1.0)));
    columns.push(middle(2.4));
    let mut head = vec![Cell::from(bold(w.get("report-concept")?))];
    head.extend(
        passes
            .iter()
            .map(|pass| Cell::from(words((pass + 1).to_string()))),
    );
    head.push(Cell::from(bold(w.get("report-path-practice")?)));
    let rows = strand
        .iter()
        .map(|one| {
            let mut cells = vec![Cell::from(words(one.concept.title.clone()))];
            cells.extend(passes.iter().map(|pass| {
                let rating = one.ratings.get(*pass).copied().flatten();
                Cell::from(words(
                    rating.map_or(String::new(), |r| u8::from(r).to_string()),
                ))
            }));
            cells.push(Cell::from(words(if one.answered == 0 {
                String::new()
            } else {
                format!("{} / {}", one.alone, one.answered)
            })));
            cells
        })
        .collect();
    Ok(Table {
        summary: w.say("report-chart-summary", &[("day", heading.into())])?,
        columns,
        head,
        rows,
        row_heads: true,
        size: 8.5,
        row_height: 18.0,
        pad: 4.0,
    })
}
