//! What the teacher of the sample class did: a concept taught again, and small groups with their
//! records.

use super::sample_student::Difficulties;
use crate::error::CallError;
use chrono::NaiveDate;
use surefoot_catalogue::Language;
use surefoot_desk::{GroupChosen, GroupWishes, NewTaughtAgain, OpenClass, TaughtFromWhere};
use surefoot_store::DeskStore;

/// School days before today on which groups met. The second time leaves too little time for a
/// verdict.
const GROUP_DAYS: [usize; 2] = [12, 3];
/// Passes before today in which the class was taught again: so many are over since then.
const PASSES_SINCE: usize = 2;

/// The concept that the class is taught again, and when: the hardest of those that are not hard on
/// purpose and were taught a pass before. None if too few weeks have passed.
pub(super) fn taught_again(
    class: &OpenClass,
    difficulties: &Difficulties,
    school_days: &[NaiveDate],
) -> Option<(String, NaiveDate)> {
    let pass_days = class.facts.rotation.day_count();
    let at = school_days
        .len()
        .checked_sub(PASSES_SINCE * pass_days + 1)?;
    let on = *school_days.get(at)?;
    let before = *school_days.get(at.checked_sub(pass_days)?)?;
    let taught = class.facts.taught_from.iter();
    let known = taught
        .filter(|(_, from)| **from <= before)
        .map(|(id, _)| id.as_str());
    Some((difficulties.hardest(known)?.to_owned(), on))
}

/// Notes what was taught again, and keeps groups of earlier days with what came of them.
pub(super) fn teach(
    desk: &DeskStore,
    class: &str,
    taught_again: Option<(String, NaiveDate)>,
    school_days: &[NaiveDate],
    today: NaiveDate,
) -> Result<(), CallError> {
    let open = surefoot_desk::open_class(desk, class)?;
    if let Some((concept, date)) = taught_again {
        let entry = NewTaughtAgain {
            replaces: None,
            date,
            concept,
            came_from: TaughtFromWhere::Talk,
            seats: Vec::new(),
            note: None,
        };
        surefoot_desk::note_taught_again(desk, &open, &entry, today)?;
    }
    for (nth, before) in GROUP_DAYS.into_iter().enumerate() {
        let Some(date) = school_days
            .len()
            .checked_sub(before)
            .and_then(|at| school_days.get(at))
        else {
            continue;
        };
        groups_of(desk, &open, *date, nth)?;
    }
    Ok(())
}

/// Keeps the groups suggested on a date, and records that all but one of each have it.
fn groups_of(
    desk: &DeskStore,
    class: &OpenClass,
    date: NaiveDate,
    nth: usize,
) -> Result<(), CallError> {
    let absent = class.seats.get(nth + 1).map(|seat| seat.number);
    let wishes = GroupWishes {
        slots: 1,
        with_partner: true,
        absent: absent.into_iter().collect(),
        ..GroupWishes::default()
    };
    let plan = surefoot_desk::suggest_groups(desk, class, Language::first(), date, &wishes)?;
    let groups: Vec<GroupChosen> = (plan.groups.iter())
        .map(|group| GroupChosen {
            slot: group.slot,
            concept: group.concept.id.clone(),
            seats: group.members.iter().map(|one| one.seat).collect(),
            partners: group.partners.iter().map(|one| one.seat).collect(),
        })
        .collect();
    if groups.is_empty() {
        return Ok(());
    }
    let room = GroupWishes {
        absent: wishes.absent,
        ..GroupWishes::default()
    };
    surefoot_desk::keep_group_wishes(desk, class, date, &room)?;
    surefoot_desk::keep_groups(desk, class, date, &groups)?;
    for group in &groups {
        for (at, seat) in group.seats.iter().enumerate() {
            let has_it = Some(at > 0);
            surefoot_desk::record_group(desk, class, date, *seat, &group.concept, has_it)?;
        }
    }
    Ok(())
}
