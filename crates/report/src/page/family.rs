//! The page for the family of one student, in plain words.

use super::{Draft, Drafted, RatedLine, ReportPage, ReportPart, phrases};
use chrono::NaiveDate;
use surefoot_catalogue::Locale;
use surefoot_catalogue::rotation::Phase;
use surefoot_desk::{PracticeSums, StudentConcept, StudentPage};

/// Concepts in the list of those that go well, and of those that need time.
const MOST_WELL: usize = 5;
const MOST_TIME: usize = 4;

/// The page of one student, without any other student.
pub fn family_page(
    page: &StudentPage,
    class_title: &str,
    date: NaiveDate,
    locale: Locale,
) -> Drafted<ReportPage> {
    let name = page.student.name.as_deref();
    let mut draft = Draft::new(
        locale,
        |w| {
            Ok(match name {
                Some(name) => w.say("report-family-title", &[("name", name.into())])?,
                None => w.get("report-family-title-no-name")?,
            })
        },
        class_title,
        date,
    )?;
    draft.words("report-family-what", &[])?;
    let taught = || page.concepts.iter().filter(|c| c.phase != Phase::Preview);
    let well = |c: &StudentConcept| {
        c.rating.is_some_and(|r| !r.needs_help()) && c.has_it.is_none_or(|share| share >= 0.5)
    };
    let time = |c: &StudentConcept| {
        c.rating
            .is_some_and(surefoot_catalogue::rating::Confidence::needs_help)
    };
    let going: Vec<&StudentConcept> = taught().rev().filter(|c| well(c)).take(MOST_WELL).collect();
    let needing: Vec<&StudentConcept> = taught().filter(|c| time(c)).take(MOST_TIME).collect();
    let strand = needing.first().or(going.first());
    let strand = strand.map(|c| c.concept.strand.clone());
    for (heading, empty, concepts) in [
        ("report-family-well", "report-family-well-none", going),
        ("report-family-time", "report-family-time-none", needing),
    ] {
        draft.heading(heading)?;
        if concepts.is_empty() {
            draft.words(empty, &[])?;
            continue;
        }
        let lines = concepts
            .into_iter()
            .map(|c| {
                Ok(RatedLine {
                    title: c.concept.title.clone(),
                    i_can: c.concept.i_can.clone(),
                    rating: c.rating,
                    words: phrases::rating(&draft.w, c.rating)?,
                })
            })
            .collect::<Drafted<_>>()?;
        draft.put(ReportPart::Ratings { lines });
    }
    draft.heading("report-family-practice")?;
    let sum = |of: fn(&PracticeSums) -> u32| -> u32 {
        page.concepts.iter().map(|c| of(&c.practice)).sum()
    };
    let (alone, helped) = (
        sum(|practice| practice.alone),
        sum(|practice| practice.with_help),
    );
    let wrong = sum(|practice| practice.wrong);
    if alone + helped + wrong == 0 {
        draft.words("report-family-practice-none", &[])?;
    } else {
        draft.words(
            "report-family-practised",
            &[
                ("count", (alone + helped + wrong).into()),
                ("alone", alone.into()),
                ("helped", helped.into()),
                ("wrong", wrong.into()),
            ],
        )?;
    }
    draft.heading("report-family-help")?;
    let texts = (1..=3)
        .map(|n| Ok(draft.w.get(&format!("report-family-help-{n}"))?))
        .collect::<Drafted<_>>()?;
    draft.put(ReportPart::Lines { texts });
    // One thing to do, from the strand that needs time most.
    if let Some(strand) = strand {
        draft.heading("report-family-try")?;
        draft.words(&format!("report-family-try-{strand}"), &[])?;
    }
    draft.write("report-family-note", 2)?;
    draft.caution("report-family-caution")?;
    Ok(draft.page)
}
