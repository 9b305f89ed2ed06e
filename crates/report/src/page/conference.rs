//! The page for a conference with one student: reports, and lines for what they agree.

use super::{Draft, Drafted, ReportColumn, ReportPage, ReportPart, ReportTable, phrases};
use crate::words::Words;
use chrono::NaiveDate;
use surefoot_catalogue::Locale;
use surefoot_catalogue::rating::Confidence;
use surefoot_catalogue::rotation::Phase;
use surefoot_desk::{PracticeSums, StudentConcept, StudentPage};

/// Concepts in each of the two lists at most.
const MOST_NEEDED: usize = 5;
const MOST_BEST: usize = 4;
/// The probability of having a concept from which it is not needed, as on the board. Our choice; no
/// source.
const ENOUGH: f64 = 0.7;

/// The page of one student.
pub fn conference_page(
    page: &StudentPage,
    class_title: &str,
    date: NaiveDate,
    locale: Locale,
) -> Drafted<ReportPage> {
    let mut draft = Draft::new(
        locale,
        |w| {
            Ok(match &page.student.name {
                Some(name) => {
                    w.say("report-conference-title", &[("name", name.as_str().into())])?
                }
                None => w.say(
                    "report-conference-title-seat",
                    &[("seat", page.student.seat.into())],
                )?,
            })
        },
        class_title,
        date,
    )?;
    let taught: Vec<&StudentConcept> = page
        .concepts
        .iter()
        .filter(|c| c.phase != Phase::Preview)
        .collect();
    if taught.is_empty() {
        draft.words("report-no-reports", &[])?;
    } else {
        draft.words("report-conference-what", &[])?;
        let texts = how_to_read(&draft.w, &taught)?;
        draft.put(ReportPart::Lines { texts });
        // Those needed most come first; no concept is in both lists.
        let (needed, rest): (Vec<_>, Vec<_>) = taught.into_iter().partition(|c| is_needed(c));
        let best: Vec<&StudentConcept> = rest.into_iter().rev().take(MOST_BEST).collect();
        let needed = needed.get(..MOST_NEEDED).unwrap_or(&needed);
        if needed.is_empty() {
            draft.heading("report-conference-needed")?;
            draft.words("report-conference-no-need", &[])?;
        } else {
            table(&mut draft, "report-conference-needed", needed)?;
        }
        if !best.is_empty() {
            table(&mut draft, "report-conference-best", &best)?;
        }
    }
    draft.heading("report-conference-believe")?;
    let verdict = phrases::calibration(&draft.w, page.calibration.verdict)?;
    draft.words(
        "report-conference-answers",
        &[
            ("verdict", verdict.into()),
            ("count", page.calibration.answers.into()),
        ],
    )?;
    draft.write("report-conference-agreed", 3)?;
    draft.caution("report-caution")?;
    Ok(draft.page)
}

/// Whether the student needs work on a concept: likely, or while no level is known, by the student's
/// own rating.
fn is_needed(concept: &StudentConcept) -> bool {
    match concept.has_it {
        Some(has_it) => has_it < ENOUGH,
        None => concept.rating.is_some_and(Confidence::needs_help),
    }
}

/// What the numbers mean, with the first ones of the page as examples.
fn how_to_read(w: &Words, taught: &[&StudentConcept]) -> Drafted<Vec<String>> {
    let mut texts = Vec::new();
    let practised = taught.iter().map(|c| c.practice);
    if let Some(sums) = practised
        .into_iter()
        .find(|sums| *sums != PracticeSums::default())
    {
        texts.push(w.say(
            "report-conference-practice",
            &[
                ("shown", phrases::practice(sums).into()),
                ("alone", sums.alone.into()),
                ("helped", sums.with_help.into()),
                ("wrong", sums.wrong.into()),
            ],
        )?);
    }
    if let Some(likely) = taught.iter().find_map(|c| c.has_it) {
        let shown = phrases::percent(likely);
        let count = shown.trim_end_matches('%').to_owned();
        texts.push(w.say(
            "report-conference-likely",
            &[("shown", shown.clone().into()), ("count", count.into())],
        )?);
    }
    texts.push(w.get("report-conference-days")?);
    Ok(texts)
}

fn table(draft: &mut Draft, heading: &str, concepts: &[&StudentConcept]) -> Drafted {
    draft.heading(heading)?;
    let w = &draft.w;
    let columns = vec![
        ReportColumn::words(w.get("report-concept")?, 34),
        ReportColumn::words(w.get("report-col-rating")?, 17),
        ReportColumn::words(w.get("report-col-result")?, 11),
        ReportColumn::figures(w.get("report-col-practice")?, 16),
        ReportColumn::words(w.get("report-col-seen")?, 12),
        ReportColumn::figures(w.get("report-col-likely")?, 11),
        ReportColumn::figures(w.get("report-col-days")?, 9),
    ];
    let rows = concepts
        .iter()
        .map(|c| {
            Ok(vec![
                c.concept.title.clone(),
                phrases::rating(w, c.rating)?,
                phrases::outcome(w, c.outcome)?,
                phrases::practice(c.practice),
                match c.seen {
                    Some(true) => w.get("report-has-it")?,
                    Some(false) => w.get("report-needs-more")?,
                    None => phrases::NONE.to_string(),
                },
                c.has_it.map_or(phrases::NONE.to_string(), phrases::percent),
                c.newest_days.to_string(),
            ])
        })
        .collect::<Drafted<_>>()?;
    let summary = w.get(heading)?;
    draft.put(ReportPart::Table {
        table: ReportTable {
            summary,
            columns,
            rows,
        },
    });
    Ok(())
}
