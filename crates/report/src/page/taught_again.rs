//! What was taught again, and what came of it: of a class by concept, or of one student.

use super::group::name;
use super::{Draft, Drafted, ReportColumn, ReportPage, ReportPart, ReportTable, phrases};
use crate::words::Words;
use surefoot_catalogue::Locale;
use surefoot_desk::{
    HelpNumbers, HelpSays, HelpView, TaughtAgainEntry, TaughtAgainLog, TaughtFromWhere,
};

/// The page of a class, or of the student on one seat. A student's page names no other student.
pub fn taught_again_page(
    log: &TaughtAgainLog,
    seat: Option<u32>,
    class_title: &str,
    locale: Locale,
) -> Drafted<ReportPage> {
    let student = log.seats.iter().find(|one| Some(one.seat) == seat);
    let mut draft = Draft::new(
        locale,
        |w| {
            Ok(match student {
                None => w.get("report-taught-title")?,
                Some(one) => {
                    let name = match &one.name {
                        Some(name) => name.clone(),
                        None => w.say("report-seat", &[("seat", one.seat.into())])?,
                    };
                    w.say("report-taught-title-of", &[("name", name.into())])?
                }
            })
        },
        class_title,
        log.today,
    )?;
    let mut entries: Vec<&TaughtAgainEntry> = (log.entries.iter())
        .filter(|entry| {
            seat.is_none_or(|seat| entry.members.iter().any(|member| member.seat == seat))
        })
        .collect();
    if entries.is_empty() {
        draft.words("report-taught-none", &[])?;
        return Ok(draft.page);
    }
    // By concept, oldest first: what was tried one after the other.
    entries.sort_by(|a, b| (&a.concept.title, a.date, a.id).cmp(&(&b.concept.title, b.date, b.id)));
    let w = &draft.w;
    let columns = vec![
        ReportColumn::words(w.get("report-concept")?, 25),
        ReportColumn::words(w.get("report-taught-date")?, 12),
        ReportColumn::words(w.get("report-taught-whom")?, 18),
        ReportColumn::words(w.get("report-taught-did")?, 15),
        ReportColumn::words(w.get("report-taught-came")?, 40),
    ];
    let rows = (entries.iter())
        .map(|entry| {
            Ok(vec![
                entry.concept.title.clone(),
                phrases::date(w, entry.date)?,
                whom(&draft, entry, seat)?,
                note(entry, seat),
                came_of_it(w, entry, seat)?,
            ])
        })
        .collect::<Drafted<_>>()?;
    let summary = w.get("report-taught-title")?;
    draft.put(ReportPart::Table {
        table: ReportTable {
            summary,
            columns,
            rows,
        },
    });
    draft.caution("taught-caution")?;
    Ok(draft.page)
}

fn whom(draft: &Draft, entry: &TaughtAgainEntry, seat: Option<u32>) -> Drafted<String> {
    if entry.whole_class {
        return Ok(draft.w.get("taught-whole-class")?);
    }
    if seat.is_some() {
        let from = match entry.came_from {
            TaughtFromWhere::Talk => "taught-from-talk",
            TaughtFromWhere::Group => "taught-from-group",
            TaughtFromWhere::Assignment => "taught-from-assignment",
            TaughtFromWhere::Hand => "taught-from-hand",
        };
        return Ok(draft.w.get(from)?);
    }
    let who = (entry.members.iter())
        .map(|member| name(draft, member.name.as_deref(), member.seat))
        .collect::<Drafted<Vec<_>>>()?;
    Ok(who.join(", "))
}

/// Whether a page has the numbers and the note of an entry. A page of one student has them only where
/// they are about nobody else: with the student's own results, those of others could be worked out.
fn tells_all(entry: &TaughtAgainEntry, seat: Option<u32>) -> bool {
    seat.is_none() || entry.members.len() == 1
}

fn note(entry: &TaughtAgainEntry, seat: Option<u32>) -> String {
    let note = entry.note.clone();
    note.filter(|_| tells_all(entry, seat)).unwrap_or_default()
}

fn came_of_it(w: &Words, entry: &TaughtAgainEntry, seat: Option<u32>) -> Drafted<String> {
    let mut sentences = vec![says(w, &entry.help)?];
    if let Some(numbers) = entry.help.numbers.filter(|_| tells_all(entry, seat)) {
        sentences.extend(numbers_told(w, &numbers)?);
    }
    if entry.help.once_more > 0 && entry.help.says != HelpSays::TaughtOnceMore && seat.is_none() {
        sentences.push(w.say(
            "taught-once-more",
            &[
                ("count", entry.help.once_more.into()),
                ("of", entry.members.len().into()),
            ],
        )?);
    }
    match seat {
        Some(seat) => {
            let own = entry.members.iter().find(|member| member.seat == seat);
            match own.and_then(|member| member.recorded) {
                Some(true) => sentences.push(w.get("report-has-it")?),
                Some(false) => sentences.push(w.get("report-needs-more")?),
                None => {}
            }
        }
        None => {
            let recorded: Vec<bool> = entry.members.iter().filter_map(|m| m.recorded).collect();
            if !recorded.is_empty() {
                let has = recorded.iter().filter(|has_it| **has_it).count();
                let number = |count: usize| u32::try_from(count).unwrap_or(u32::MAX);
                sentences.push(w.say(
                    "taught-recorded",
                    &[
                        ("has", number(has).into()),
                        ("of", number(recorded.len()).into()),
                    ],
                )?);
            }
        }
    }
    Ok(sentences.join(" "))
}

fn says(w: &Words, help: &HelpView) -> Drafted<String> {
    let waits = help.next_on.is_some();
    let says = w.get(match help.says {
        HelpSays::RoseMore => "taught-says-rose-more",
        HelpSays::LikelyRoseMore => "taught-says-likely-rose-more",
        HelpSays::CannotTell if waits => "taught-says-cannot-tell",
        HelpSays::CannotTell => "taught-says-cannot-tell-ever",
        HelpSays::NoSign => "taught-says-no-sign",
        HelpSays::TooSoon => "taught-says-too-soon",
        HelpSays::NoAnswers => "taught-says-no-answers",
        HelpSays::FewOthers => "taught-says-few-others",
        HelpSays::TaughtOnceMore => "taught-says-taught-once-more",
    })?;
    Ok(match (help.says, help.next_on) {
        (HelpSays::CannotTell | HelpSays::TooSoon | HelpSays::NoAnswers, Some(on)) => {
            let next = w.say("taught-next", &[("date", phrases::date(w, on)?.into())])?;
            format!("{says} {next}")
        }
        _ => says,
    })
}

/// What was right, how many more that is than expected, and the likely range.
fn numbers_told(w: &Words, numbers: &HelpNumbers) -> Drafted<[String; 3]> {
    let more = i64::from(numbers.right) - numbers.expected;
    let way = match more {
        1.. => "more",
        0 => "same",
        _ => "fewer",
    };
    let (low, high) = (numbers.more_low, numbers.more_high);
    let (range, low, high) = match (low, high) {
        (0.., _) => ("more", low, high),
        (_, ..=0) => ("fewer", -high, -low),
        _ => ("mixed", -low, high),
    };
    Ok([
        w.say(
            "taught-answers",
            &[
                ("answers", numbers.answers.into()),
                ("right", numbers.right.into()),
            ],
        )?,
        w.say(
            "taught-difference",
            &[
                ("way", way.into()),
                ("count", w.number(more.abs()).into()),
                ("expected", w.number(numbers.expected).into()),
            ],
        )?,
        w.say(
            "taught-range",
            &[
                ("way", range.into()),
                ("low", w.number(low).into()),
                ("high", w.number(high).into()),
            ],
        )?,
    ])
}
