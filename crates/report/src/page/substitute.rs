//! The page for a substitute: the day, its concepts, the groups, and what to do with tablets.

use super::group::name;
use super::{Draft, Drafted, ReportPage, ReportPart, phrases};
use chrono::NaiveDate;
use surefoot_catalogue::Locale;
use surefoot_desk::{GroupsOfDay, TalkConcept, TalkView, TalkWay};
use surefoot_record::ConceptName;

/// The review of the school day after.
pub struct NextReview {
    /// The day.
    pub date: NaiveDate,
    /// Its concepts, in order.
    pub concepts: Vec<ConceptName>,
}

/// What the class uses, for the lines on what to do.
#[derive(Debug, Clone, Copy)]
pub struct Ways {
    /// Whether the page has names.
    pub names: bool,
    /// Whether hand-ins travel through a class folder.
    pub class_folder: bool,
    /// Whether the desk has a lock, below which the day can be shown.
    pub projector: bool,
}

/// The page for a substitute. `groups` are those that the teacher kept last.
pub fn substitute_page(
    talk: &TalkView,
    groups: Option<&GroupsOfDay>,
    next: Option<&NextReview>,
    ways: &Ways,
    locale: Locale,
) -> Drafted<ReportPage> {
    let mut draft = Draft::new(
        locale,
        |w| Ok(w.get("report-substitute-title")?),
        &talk.class_title,
        talk.date,
    )?;
    match talk.day {
        Some(day) => {
            let day = u32::try_from(day).unwrap_or(u32::MAX);
            draft.words("report-substitute-day", &[("day", day.into())])?;
        }
        None => draft.words("report-substitute-no-day", &[])?,
    }
    let mut concepts: Vec<&TalkConcept> = talk.concepts.iter().collect();
    concepts.sort_by_key(|concept| !concept.chosen);
    let texts = concepts
        .iter()
        .map(|one| concept_line(&draft, one))
        .collect::<Drafted<_>>()?;
    draft.put(ReportPart::Lines { texts });

    draft.heading("report-substitute-groups")?;
    match groups {
        None => draft.words("report-substitute-no-groups", &[])?,
        Some(kept) => {
            let kept_on = phrases::date(&draft.w, kept.date)?;
            draft.words("report-substitute-kept", &[("date", kept_on.into())])?;
            let texts = (kept.groups.iter())
                .map(|group| {
                    let who = (group.members.iter())
                        .map(|member| name(&draft, member.name.as_deref(), member.seat))
                        .collect::<Drafted<Vec<_>>>()?;
                    let slot = u32::try_from(group.slot + 1).unwrap_or(u32::MAX);
                    let who = who.join(", ");
                    Ok(draft.w.say(
                        "report-substitute-group",
                        &[
                            ("slot", slot.into()),
                            ("concept", group.concept.title.as_str().into()),
                            ("who", who.as_str().into()),
                        ],
                    )?)
                })
                .collect::<Drafted<_>>()?;
            draft.put(ReportPart::Lines { texts });
        }
    }

    draft.heading("report-substitute-tablets")?;
    let texts = [
        "report-substitute-rate",
        "report-substitute-practise",
        if ways.class_folder {
            "report-substitute-folder"
        } else {
            "report-substitute-hand-in"
        },
        "report-substitute-pin",
        "report-substitute-none",
    ]
    .into_iter()
    .chain(ways.projector.then_some("report-substitute-projector"))
    .map(|id| Ok(draft.w.get(id)?))
    .collect::<Drafted<_>>()?;
    draft.put(ReportPart::Lines { texts });
    draft.caution(if ways.names {
        "report-substitute-caution"
    } else {
        "report-substitute-caution-seats"
    })?;

    if let Some(next) = next {
        let date = phrases::date(&draft.w, next.date)?;
        let text = draft
            .w
            .say("report-substitute-next", &[("date", date.into())])?;
        draft.put(ReportPart::Heading { text });
        let titles: Vec<&str> = next.concepts.iter().map(|one| one.title.as_str()).collect();
        draft.put(ReportPart::Words {
            text: titles.join(" · "),
        });
    }
    draft.write("report-substitute-noticed", 4)?;
    Ok(draft.page)
}

/// A concept with its statement, and how to talk about it if it is chosen.
fn concept_line(draft: &Draft, one: &TalkConcept) -> Drafted<String> {
    let ConceptName { title, i_can, .. } = &one.concept;
    let said = format!("{title}: {i_can}");
    let way = match one.way.filter(|_| one.chosen) {
        None => return Ok(said),
        Some(TalkWay::TeachAgain) => "report-talk-teach-again",
        Some(TalkWay::PairTalk) => "report-talk-pair-talk",
        Some(TalkWay::ShortLook) => "report-talk-short-look",
    };
    let way = draft.w.get(way)?;
    let way = draft.w.say(
        "report-talk-way",
        &[("way", way.into()), ("minutes", one.minutes.into())],
    )?;
    Ok(format!("{said} ({way})"))
}
