//! Who has not: one list of what is missing in a class, each line with what to do.

use super::views::{Lacking, LackingKind, Verdict, WhoHasNot};
use crate::class::heard::heard_devices;
use crate::class::{NamedSeat, OpenClass};
use crate::error::{DeskError, Field, Rule, faulty};
use chrono::{Days, NaiveDate};
use std::collections::BTreeMap;
use surefoot_exchange::{PublicKey, Refusal, fingerprint};
use surefoot_record::DeviceId;
use surefoot_store::DeskStore;
use surefoot_store::desk::{DeviceState, SeatRow};

/// School days without a hand-in until a seat is listed, unless the teacher chooses.
pub const USUAL_LATE_SCHOOL_DAYS: usize = 5;

/// The most school days that the teacher can choose.
pub const MOST_LATE_SCHOOL_DAYS: usize = 40;

/// Calendar days for which a damaged file is listed. Each hand-in holds the whole year, so an
/// older one is not missed.
const DAMAGED_DAYS: u64 = 30;

/// Returns what is missing on `today`: quarantined devices, damaged files, seats whose newest
/// hand-in is `school_days` school days old, devices with a class pack of other content (in one line
/// while no device has the newest), and seats without a hand-in so many school days after the first
/// class pack. A seat that is on paper counts
/// as reporting, and before the first class pack nobody is waited for.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for a number of days out of range.
pub fn who_has_not(
    desk: &DeskStore,
    class: &OpenClass,
    school_days: usize,
    today: NaiveDate,
) -> Result<WhoHasNot, DeskError> {
    if !(1..=MOST_LATE_SCHOOL_DAYS).contains(&school_days) {
        return Err(DeskError::invalid(Field::Dates, Rule::Range));
    }
    let heard = heard_devices(desk, class)?;
    let mut lacking = quarantined(desk, class)?;
    lacking.extend(damaged(desk, class, today)?);
    let reports = class.newest_reports(desk, today)?;
    let year = &class.facts.year;
    // Today is not over, so a hand-in of today is expected tomorrow.
    let days_since = |date: NaiveDate| {
        let tomorrow = date.succ_opt().unwrap_or(date);
        let (until, from) = (
            year.school_days_before(today),
            year.school_days_before(tomorrow),
        );
        until.saturating_sub(from)
    };
    let (mut not_joined, mut late, mut old) = (Vec::new(), Vec::new(), Vec::new());
    let mut devices_used = 0_usize;
    let given_out = class.row.pack_version > 0;
    let packs = desk.packs_made(&class.row.id)?;
    for seat in class.seats.iter().filter(|_| given_out) {
        let line = |what| line(Some(seat), what);
        let devices = heard.get(&seat.number).map_or(&[][..], Vec::as_slice);
        let Some(newest) = devices.first() else {
            let on_paper = reports.get(&seat.number);
            let last = on_paper.map_or(packs.first_on, |date| packs.first_on.max(*date));
            if days_since(last) >= school_days {
                not_joined.push(NamedSeat {
                    seat: seat.number,
                    name: seat.name.clone(),
                });
            }
            continue;
        };
        let since = days_since(newest.last_on);
        if since >= school_days {
            late.push(line(LackingKind::Late {
                last_on: newest.last_on,
                school_days: since,
            }));
        }
        for device in devices {
            // A device that fell silent while another one hands in is not used any more.
            let used = device.last_on == newest.last_on || days_since(device.last_on) < school_days;
            devices_used += usize::from(used);
            if used && device.pack_version < packs.content_version {
                old.push(line(LackingKind::OldPack {
                    version: device.pack_version,
                    newest: class.row.pack_version,
                    handed_in_on: device.last_on,
                    other_days: !device.knows_days,
                }));
            }
        }
    }
    lacking.extend(late);
    if old.len() > 1 && old.len() == devices_used {
        let what = LackingKind::PackWithNobody {
            newest: class.row.pack_version,
            devices: old.len(),
        };
        lacking.push(self::line(None, what));
    } else {
        lacking.extend(old);
    }
    Ok(WhoHasNot {
        today,
        school_days,
        pack_version: class.row.pack_version,
        lacking,
        not_joined,
    })
}

fn line(seat: Option<&SeatRow>, what: LackingKind) -> Lacking {
    Lacking {
        seat: seat.map(|seat| seat.number),
        name: seat.and_then(|seat| seat.name.clone()),
        what,
    }
}

fn seat_of(class: &OpenClass, number: u32) -> Option<&SeatRow> {
    class.seats.iter().find(|seat| seat.number == number)
}

fn quarantined(desk: &DeskStore, class: &OpenClass) -> Result<Vec<Lacking>, DeskError> {
    let brought = desk.brought(&class.row.id)?;
    let mut found = Vec::new();
    for row in desk.devices(&class.row.id)? {
        if row.state == DeviceState::Quarantined {
            let key = PublicKey::new(row.signing_key).map_err(faulty)?;
            let device = DeviceId::new(row.device).map_err(faulty)?;
            found.push(line(
                seat_of(class, row.seat),
                LackingKind::Quarantined {
                    fingerprint: fingerprint(&key, &device),
                    first_seen_on: row.first_seen_on,
                    hand_ins: brought.get(&row.id).map_or(0, |(hand_ins, _)| *hand_ins),
                },
            ));
        }
    }
    Ok(found)
}

/// What became of a file name.
#[derive(Default)]
struct FileStory {
    /// Class and seat of the newest hand-in that counts and was first read under this name.
    from: Option<(String, u32)>,
    /// The newest reading, if that was refused: its place among all, its date, and why.
    refused: Option<(usize, NaiveDate, Refusal)>,
}

/// Returns the damaged files of the last [`DAMAGED_DAYS`]. A whole file is not damaged. One is
/// listed under a seat if the seat's newest whole file had its name, and the seat has not handed in
/// since: a copy of another's file, spoiled later, blames nobody. The others may belong to any class
/// of the desk, and have one line.
fn damaged(
    desk: &DeskStore,
    class: &OpenClass,
    today: NaiveDate,
) -> Result<Vec<Lacking>, DeskError> {
    let since = today
        .checked_sub_days(Days::new(DAMAGED_DAYS))
        .unwrap_or(today);
    let mut stories: BTreeMap<String, FileStory> = BTreeMap::new();
    // The place of the newest file of each seat of the class that was newer than what was here.
    let mut news: BTreeMap<u32, usize> = BTreeMap::new();
    // The name of the newest whole file of each seat of the class.
    let mut whole: BTreeMap<u32, String> = BTreeMap::new();
    for (place, read) in desk.lines_of_files(since)?.into_iter().enumerate() {
        let verdict = serde_json::from_str(&read.verdict).map_err(faulty)?;
        let from = read.class.zip(read.seat);
        let counts = !matches!(verdict, Verdict::Refused { .. } | Verdict::Quarantined);
        if let Some((_, seat)) = from
            .as_ref()
            .filter(|(id, _)| counts && *id == class.row.id)
        {
            if matches!(verdict, Verdict::New | Verdict::Updated) {
                news.insert(*seat, place);
            }
            whole.insert(*seat, read.file_name.clone());
        }
        // The same content under a second name is a copy.
        let from = from.filter(|_| counts && !matches!(verdict, Verdict::Known));
        let story = stories.entry(read.file_name).or_default();
        match verdict {
            Verdict::Refused { refusal } => story.refused = Some((place, read.read_on, refusal)),
            _ => {
                story.refused = None;
                story.from = from.or(story.from.take());
            }
        }
    }
    let mut found = Vec::new();
    let mut of_nobody: Option<(usize, usize, String, NaiveDate)> = None;
    for (file_name, story) in stories {
        let Some((place, read_on, refusal)) = story.refused else {
            continue;
        };
        match &story.from {
            Some((id, _)) if *id != class.row.id => {}
            Some((_, seat)) if news.get(seat).is_some_and(|newer| *newer > place) => {}
            Some((_, seat)) if !is_of_others(&refusal) && whole.get(seat) == Some(&file_name) => {
                let what = LackingKind::Damaged {
                    file_name,
                    read_on,
                    refusal,
                };
                found.push(line(seat_of(class, *seat), what));
            }
            _ if is_damage(&refusal) => {
                let files = of_nobody.as_ref().map_or(1, |(files, ..)| files + 1);
                of_nobody = match of_nobody {
                    Some((_, last, name, date)) if last > place => Some((files, last, name, date)),
                    _ => Some((files, place, file_name, read_on)),
                };
            }
            _ => {}
        }
    }
    found.extend(of_nobody.map(|(files, _, file_name, read_on)| {
        let what = LackingKind::DamagedOfNobody {
            files,
            file_name,
            read_on,
        };
        line(None, what)
    }));
    Ok(found)
}

/// Whether a file that was refused for this reason is whole: of another class or seat, of a newer
/// program, or more than the desk keeps. A new hand-in would not help.
fn is_of_others(refusal: &Refusal) -> bool {
    matches!(
        refusal,
        Refusal::WrongClass
            | Refusal::SeatUnknown
            | Refusal::NewerFormat { .. }
            | Refusal::SeatFull
    )
}

/// Whether a file that was refused for this reason may be a hand-in of the class that broke.
fn is_damage(refusal: &Refusal) -> bool {
    matches!(
        refusal,
        Refusal::Damaged
            | Refusal::BadSignature
            | Refusal::BadContent { .. }
            | Refusal::Unreadable
            | Refusal::NotOurs
    )
}
