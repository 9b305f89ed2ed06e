//! Kept groups: the wishes, the groups of a day, their pages, and what the teacher records
//! afterwards.

use super::plan::{HAS_IT_FROM, weakest_taught};
use super::views::{
    GroupChosen, GroupPage, GroupRecord, GroupWishes, GroupsDesk, GroupsOfDay, KeptGroup,
    PageFirst, PageMember,
};
use crate::class::OpenClass;
use crate::error::{DeskError, Field, Rule, Thing};
use crate::estimate::{GroupMember, MisconceptionCount, PracticeSums, Reports};
use crate::sample::{SampleExercise, sample};
use crate::taught_again::note_group;
use chrono::{Datelike, NaiveDate};
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::Language;
use surefoot_exercises::bank::OwnExercise;
use surefoot_exercises::{Level, TakenNames};
use surefoot_store::DeskStore;
use surefoot_store::desk::{GroupRoomRow, ObservationRow, SmallGroupRow};

/// Days with kept groups that are listed.
const DAYS_LISTED: usize = 30;

/// Groups of a day at most.
const MOST_GROUPS: usize = 72;

/// Seeds tried at most to get an exercise that is not on the page yet.
const TRIES_TO_DIFFER: u64 = 6;

/// Misconceptions on a group's page at most.
const MISCONCEPTIONS_SHOWN: usize = 4;

/// What the Groups screen shows when it opens.
pub fn groups_desk(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
) -> Result<GroupsDesk, DeskError> {
    let id = class.row.id.as_str();
    let reports = Reports::read(desk, class, today)?;
    let (keep_apart, keep_together) = desk.seat_pairs(id)?;
    let mut wishes = GroupWishes {
        keep_apart,
        keep_together,
        absent: desk.absences(id, today)?,
        ..GroupWishes::default()
    };
    if let Some(room) = desk.group_room(id)? {
        wishes.slots = room.slots;
        wishes.groups_at_once = room.groups_at_once;
        wishes.size_least = room.size_least;
        wishes.size_most = room.size_most;
        wishes.with_partner = room.with_partner;
    }
    let kept = desk
        .small_group_dates(id)?
        .into_iter()
        .take(DAYS_LISTED)
        .map(|date| groups_of_day(desk, class, &reports, language, date))
        .collect::<Result<_, DeskError>>()?;
    Ok(GroupsDesk {
        today,
        seats: (0..class.seats.len())
            .filter_map(|student| reports.member(class, student, None))
            .collect(),
        wishes,
        concepts: weakest_taught(class, &reports, today)
            .into_iter()
            .filter_map(|at| reports.concepts.get(at))
            .map(|concept| class.facts.name(concept, language))
            .collect(),
        next_day: class.facts.year.next_school_day(today),
        kept,
    })
}

fn groups_of_day(
    desk: &DeskStore,
    class: &OpenClass,
    reports: &Reports,
    language: Language,
    date: NaiveDate,
) -> Result<GroupsOfDay, DeskError> {
    let groups = desk.small_groups(&class.row.id, date)?;
    let met: BTreeSet<(u32, &str)> = groups
        .iter()
        .flat_map(|g| {
            let taught = g.seats.iter().filter(|seat| !g.partners.contains(seat));
            taught.map(|seat| (*seat, g.concept.as_str()))
        })
        .collect();
    let records = desk
        .observations(&class.row.id)?
        .into_iter()
        .filter(|seen| seen.date == date && met.contains(&(seen.seat, seen.concept.as_str())))
        .map(|seen| GroupRecord {
            seat: seen.seat,
            concept: seen.concept,
            has_it: seen.has_it,
        })
        .collect();
    let absent = desk.absences(&class.row.id, date)?;
    // Who was absent missed one group in a slot: that of the seat, or the first one on a needed concept.
    let mut missing: BTreeSet<(usize, u32)> = groups
        .iter()
        .flat_map(|group| group.seats.iter().map(|seat| (group.slot, *seat)))
        .collect();
    Ok(GroupsOfDay {
        date,
        groups: groups
            .iter()
            .map(|group| {
                let at = reports.concept_at(&group.concept);
                let missed: Vec<u32> = (absent.iter().copied())
                    .filter(|seat| !group.partners.contains(seat))
                    .filter(|seat| {
                        group.seats.contains(seat)
                            || (!missing.contains(&(group.slot, *seat))
                                && needs(reports, *seat, at))
                    })
                    .collect();
                missing.extend(missed.iter().map(|seat| (group.slot, *seat)));
                let of = |seats: &mut dyn Iterator<Item = &u32>| -> Vec<GroupMember> {
                    seats
                        .filter_map(|seat| reports.student_at(*seat))
                        .filter_map(|student| reports.member(class, student, at))
                        .collect()
                };
                let is_partner = |seat: &&u32| group.partners.contains(seat);
                KeptGroup {
                    slot: group.slot,
                    concept: class.facts.name(&group.concept, language),
                    members: of(&mut group.seats.iter().filter(|seat| !is_partner(seat))),
                    partners: of(&mut group.seats.iter().filter(is_partner)),
                    missed: of(&mut missed.iter()),
                }
            })
            .collect(),
        records,
    })
}

/// Whether a student likely needs a concept, or nothing says so.
fn needs(reports: &Reports, seat: u32, concept: Option<usize>) -> bool {
    let estimate = reports.student_at(seat).zip(concept);
    let estimate = estimate.and_then(|(student, at)| reports.estimate.student(student, at));
    !reports.estimate.level_known || estimate.is_none_or(|of| of.need(HAS_IT_FROM) >= 0.5)
}

/// Keeps the wishes: the absences for `today`, everything else from now on.
pub fn keep_group_wishes(
    desk: &DeskStore,
    class: &OpenClass,
    today: NaiveDate,
    wishes: &GroupWishes,
) -> Result<(), DeskError> {
    let pairs = wishes.keep_apart.iter().chain(&wishes.keep_together);
    let paired = pairs.clone().flat_map(|(a, b)| [a, b]);
    for seat in paired.chain(&wishes.absent) {
        class.check_seat(*seat)?;
    }
    if pairs.into_iter().any(|(a, b)| a == b) {
        return Err(DeskError::invalid(Field::Groups, Rule::Contradiction));
    }
    let id = class.row.id.as_str();
    desk.transaction(|| {
        desk.put_group_room(
            id,
            &GroupRoomRow {
                slots: wishes.slots,
                groups_at_once: wishes.groups_at_once,
                size_least: wishes.size_least,
                size_most: wishes.size_most,
                with_partner: wishes.with_partner,
            },
        )?;
        desk.put_seat_pairs(id, &wishes.keep_apart, &wishes.keep_together)?;
        desk.put_absences(id, today, &wishes.absent)?;
        Ok(())
    })
}

/// Replaces the kept groups of a day. Leaves out empty groups; an empty list removes the day.
pub fn keep_groups(
    desk: &DeskStore,
    class: &OpenClass,
    date: NaiveDate,
    groups: &[GroupChosen],
) -> Result<(), DeskError> {
    if groups.len() > MOST_GROUPS {
        return Err(DeskError::invalid(Field::Groups, Rule::TooMany));
    }
    let mut rows = Vec::new();
    for group in groups.iter().filter(|g| !g.seats.is_empty()) {
        class.check_concept(&group.concept)?;
        for seat in &group.seats {
            class.check_seat(*seat)?;
        }
        let partners = group.partners.iter().copied();
        let partners: Vec<u32> = partners
            .filter(|seat| !group.seats.contains(seat))
            .collect();
        for seat in &partners {
            class.check_seat(*seat)?;
        }
        rows.push(SmallGroupRow {
            slot: group.slot,
            concept: group.concept.clone(),
            seats: group.seats.iter().chain(&partners).copied().collect(),
            partners,
        });
    }
    rows.sort_by_key(|group| group.slot);
    desk.transaction(|| desk.put_small_groups(&class.row.id, date, &rows))?;
    Ok(())
}

/// Records after a group whether a student has the concept; `None` removes the record. The
/// estimate counts it as a result and three further answers, and a group with a record was taught
/// again.
pub fn record_group(
    desk: &DeskStore,
    class: &OpenClass,
    date: NaiveDate,
    seat: u32,
    concept: &str,
    has_it: Option<bool>,
) -> Result<(), DeskError> {
    class.check_seat(seat)?;
    class.check_concept(concept)?;
    desk.transaction(|| {
        match has_it {
            Some(has_it) => {
                desk.put_observation(
                    &class.row.id,
                    &ObservationRow {
                        seat,
                        date,
                        concept: concept.to_owned(),
                        confidence: None,
                        has_it,
                    },
                )?;
                note_group(desk, class, date, seat, concept)?;
            }
            None => desk.drop_observation(&class.row.id, seat, date, concept)?,
        }
        Ok(())
    })
}

/// The page of a group: members, missing prerequisites, common misconceptions,
/// exercises from entry to stretch level.
pub fn group_page(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
    concept: &str,
    seats: &[u32],
) -> Result<GroupPage, DeskError> {
    let reports = Reports::read(desk, class, today)?;
    let at = reports
        .concept_at(concept)
        .ok_or(DeskError::NotFound(Thing::Concept))?;
    let known = class
        .facts
        .concepts
        .get(concept)
        .ok_or(DeskError::NotFound(Thing::Concept))?;
    let students: Vec<usize> = seats
        .iter()
        .map(|seat| {
            let found = reports.student_at(*seat);
            found.ok_or(DeskError::NotFound(Thing::Seat))
        })
        .collect::<Result<_, _>>()?;
    let mut misconceptions: BTreeMap<String, u32> = BTreeMap::new();
    for found in crate::estimate::misconceptions(desk, class, today)? {
        if found.concept == concept && seats.contains(&found.seat) {
            let sum = misconceptions.entry(found.code).or_default();
            *sum = sum.saturating_add(found.times);
        }
    }
    let mut misconceptions: Vec<MisconceptionCount> = misconceptions
        .into_iter()
        .map(|(code, count)| MisconceptionCount { code, count })
        .collect();
    misconceptions.sort_by(|a, b| b.count.cmp(&a.count).then(a.code.cmp(&b.code)));
    misconceptions.truncate(MISCONCEPTIONS_SHOWN);
    let wished: Vec<String> = misconceptions.iter().map(|m| m.code.clone()).collect();
    let first = known
        .prerequisites
        .iter()
        .filter(|_| reports.estimate.level_known)
        .filter_map(|before| {
            let place = reports.concept_at(before.as_str())?;
            let lacking: Vec<GroupMember> = students
                .iter()
                .filter(|student| {
                    let estimate = reports.estimate.student(**student, place);
                    estimate.is_some_and(|e| e.need(HAS_IT_FROM) >= 0.5)
                })
                .filter_map(|student| reports.member(class, *student, Some(place)))
                .collect();
            (!lacking.is_empty()).then(|| PageFirst {
                concept: class.facts.name(before.as_str(), language),
                lacking,
            })
        })
        .collect();
    let seed = u64::from(today.num_days_from_ce().unsigned_abs());
    let own = class.facts.own_of(concept);
    let exercises = exercises(class.taken_names(), own, concept, seed, &wished);
    Ok(GroupPage {
        concept: class.facts.name(concept, language),
        grade: known.grade,
        members: students
            .iter()
            .filter_map(|student| page_member(class, &reports, *student, at))
            .collect(),
        misconceptions,
        first,
        exercises,
    })
}

/// Exercises from entry to stretch level, all different if the generator allows it.
fn exercises(
    taken: TakenNames,
    own: &[OwnExercise],
    concept: &str,
    seed: u64,
    wished: &[String],
) -> Vec<SampleExercise> {
    let mut found: Vec<SampleExercise> = Vec::new();
    for (level, nth) in [
        Level::Entry,
        Level::Expected,
        Level::Expected,
        Level::Stretch,
    ]
    .into_iter()
    .zip(0_u64..)
    {
        let made = (0..TRIES_TO_DIFFER).filter_map(|at| {
            sample(
                taken,
                own,
                concept,
                level,
                seed * 1000 + nth * 200 + at * 25,
                wished,
            )
        });
        let mut last = None;
        for exercise in made {
            if !found.iter().any(|f| f.item.prompt == exercise.item.prompt) {
                last = Some(exercise);
                break;
            }
            last.get_or_insert(exercise);
        }
        found.extend(last);
    }
    found
}

fn page_member(
    class: &OpenClass,
    reports: &Reports,
    student: usize,
    concept: usize,
) -> Option<PageMember> {
    let seat = class.seats.get(student)?;
    let id = reports.concepts.get(concept)?;
    let own = || {
        reports
            .check_ins
            .iter()
            .filter(|r| r.seat == seat.number && r.concept == *id)
    };
    let mut practice = PracticeSums::default();
    for count in reports
        .practice
        .iter()
        .filter(|r| r.seat == seat.number && r.concept == *id)
    {
        practice.add(count);
    }
    Some(PageMember {
        seat: seat.number,
        name: seat.name.clone(),
        has_it: reports.has_it(student, concept),
        rating: own().filter_map(|r| r.confidence).next_back(),
        outcome: own()
            .filter_map(|r| r.outcome)
            .rfind(|outcome| outcome.is_right().is_some()),
        practice,
    })
}
