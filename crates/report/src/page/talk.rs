//! The talk plan of a day, without names.

use super::group::put_exercise;
use super::{Draft, Drafted, ReportPage, ReportPart, phrases};
use surefoot_catalogue::Locale;
use surefoot_desk::{TalkConcept, TalkView, TalkWay};

/// The page of a talk plan.
pub fn talk_page(talk: &TalkView, locale: Locale) -> Drafted<ReportPage> {
    let mut draft = Draft::new(
        locale,
        |w| Ok(w.get("report-talk-title")?),
        &talk.class_title,
        talk.date,
    )?;
    let (chosen, other): (Vec<&TalkConcept>, Vec<&TalkConcept>) =
        talk.concepts.iter().partition(|concept| concept.chosen);
    if chosen.is_empty() {
        draft.words("report-talk-none", &[])?;
    }
    for concept in chosen {
        draft.put(ReportPart::Heading {
            text: concept.concept.title.clone(),
        });
        let way = match concept.way {
            Some(TalkWay::TeachAgain) => "report-talk-teach-again",
            Some(TalkWay::PairTalk) => "report-talk-pair-talk",
            Some(TalkWay::ShortLook) | None => "report-talk-short-look",
        };
        let way = draft.w.get(way)?;
        draft.words(
            "report-talk-way",
            &[("way", way.into()), ("minutes", concept.minutes.into())],
        )?;
        if !concept.misconceptions.is_empty() {
            draft.words("report-misconceptions", &[])?;
            let texts = phrases::misconceptions(&draft.w, &concept.misconceptions)?;
            draft.put(ReportPart::Lines { texts });
        }
        if let Some(exercise) = &concept.exercise {
            put_exercise(&mut draft, exercise)?;
        }
    }
    if !other.is_empty() {
        draft.heading("report-talk-other")?;
        let texts = other.iter().map(|c| c.concept.title.clone()).collect();
        draft.put(ReportPart::Lines { texts });
    }
    Ok(draft.page)
}
