//! The page of a small group: members, misconceptions, exercises, lines for notes.

use super::{Draft, Drafted, ReportColumn, ReportPage, ReportPart, ReportTable, phrases};
use chrono::NaiveDate;
use surefoot_catalogue::Locale;
use surefoot_desk::{GroupPage, SampleExercise};

/// The page of a group.
pub fn group_plan(
    page: &GroupPage,
    class_title: &str,
    date: NaiveDate,
    locale: Locale,
) -> Drafted<ReportPage> {
    let mut draft = Draft::new(
        locale,
        |w| {
            Ok(w.say(
                "report-group-title",
                &[("concept", page.concept.title.as_str().into())],
            )?)
        },
        class_title,
        date,
    )?;
    draft.put(ReportPart::Words {
        text: page.concept.i_can.clone(),
    });
    let table = members(&draft, page)?;
    draft.put(ReportPart::Table { table });
    if !page.first.is_empty() {
        draft.heading("report-group-first")?;
        let texts = page
            .first
            .iter()
            .map(|first| {
                let who: Vec<String> = first
                    .lacking
                    .iter()
                    .map(|member| name(&draft, member.name.as_deref(), member.seat))
                    .collect::<Drafted<_>>()?;
                Ok(format!("{}: {}", first.concept.title, who.join(", ")))
            })
            .collect::<Drafted<_>>()?;
        draft.put(ReportPart::Lines { texts });
    }
    if !page.misconceptions.is_empty() {
        draft.heading("report-misconceptions")?;
        let texts = phrases::misconceptions(&draft.w, &page.misconceptions)?;
        draft.put(ReportPart::Lines { texts });
    }
    draft.heading("report-exercises")?;
    for exercise in &page.exercises {
        put_exercise(&mut draft, exercise)?;
    }
    draft.write("report-group-noticed", 3)?;
    Ok(draft.page)
}

pub(super) fn name(draft: &Draft, name: Option<&str>, seat: u32) -> Drafted<String> {
    Ok(match name {
        Some(name) => name.to_string(),
        None => draft.w.say("report-seat", &[("seat", seat.into())])?,
    })
}

fn members(draft: &Draft, page: &GroupPage) -> Drafted<ReportTable> {
    let w = &draft.w;
    let rows = page
        .members
        .iter()
        .map(|member| {
            Ok(vec![
                name(draft, member.name.as_deref(), member.seat)?,
                phrases::rating(w, member.rating)?,
                phrases::outcome(w, member.outcome)?,
                phrases::practice(member.practice),
                // Boxes to tick afterwards.
                String::new(),
                String::new(),
            ])
        })
        .collect::<Drafted<_>>()?;
    Ok(ReportTable {
        summary: w.get("report-group-members")?,
        columns: vec![
            ReportColumn::words(w.get("report-group-who")?, 24),
            ReportColumn::words(w.get("report-col-rating")?, 18),
            ReportColumn::words(w.get("report-col-result")?, 12),
            ReportColumn::figures(w.get("report-col-practice")?, 18),
            ReportColumn::figures(w.get("report-has-it")?, 13),
            ReportColumn::figures(w.get("report-needs-more")?, 15),
        ],
        rows,
    })
}

/// An exercise with its answer, and the misconception to talk about.
pub(super) fn put_exercise(draft: &mut Draft, exercise: &SampleExercise) -> Drafted {
    draft.put(ReportPart::Content {
        blocks: exercise.item.prompt.clone(),
    });
    let label = draft.w.get("report-answer")?;
    let answer = phrases::reads(&draft.w, &exercise.answer)?;
    let mut texts = vec![format!("{label}: {answer}")];
    if let Some(misconception) = &exercise.misconception {
        let wrong = phrases::reads(&draft.w, &misconception.answer)?;
        texts.push(format!(
            "{}: {wrong}",
            phrases::misconception(&draft.w, &misconception.code)?
        ));
    }
    draft.put(ReportPart::Lines { texts });
    Ok(())
}
