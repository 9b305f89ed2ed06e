//! Hands a student on to a colleague by a sealed file, and takes such a file.
//!
//! The file has the record of each accepted signing key, as one content of a hand-in, and the paper
//! entries. A colleague's desk keeps these as hand-ins, so the student's device counts there as it
//! did here. Observations, groups and assignments stay.

use super::bounds::MOST_ENTRIES;
use super::derive::{content_of, derive};
use super::import::content_hash;
use super::moves::check_seat;
use super::views::{TransferHoldings, TransferTaken, Verdict};
use crate::class::{OpenClass, checked_name, seat_student};
use crate::error::{DeskError, Field, Rule, faulty};
use chrono::NaiveDate;
use flate2::Compression;
use flate2::write::ZlibEncoder;
use std::collections::{BTreeMap, BTreeSet};
use std::io::Write as _;
use surefoot_catalogue::ConceptId;
use surefoot_exchange::{
    HAND_IN_CAPS, HandIn, PaperEntry, SigningKey, TRANSFER_FORMAT, Transfer, seal_transfer,
};
use surefoot_record::Record;
use surefoot_store::DeskStore;
use surefoot_store::desk::{DeviceRow, DeviceState, HandInKept, ImportFileRow, PaperCheckIn};

/// Counts what a transfer of a seat would hold. The screen shows it before the file is saved.
pub fn transfer_holdings(
    desk: &DeskStore,
    class: &OpenClass,
    seat: u32,
) -> Result<TransferHoldings, DeskError> {
    let transfer = transfer_of(desk, class, seat, false, NaiveDate::MIN)?;
    Ok(holdings(&transfer))
}

fn holdings(transfer: &Transfer) -> TransferHoldings {
    let (mut ratings, mut practice) = (0, 0);
    let mut dates = BTreeSet::new();
    for hand_in in &transfer.hand_ins {
        ratings += hand_in.check_ins.len();
        practice += hand_in.practice.len();
        dates.extend(hand_in.check_ins.iter().map(|entry| entry.date));
        dates.extend(hand_in.practice.iter().map(|entry| entry.date));
    }
    dates.extend(transfer.paper.iter().map(|entry| entry.date));
    TransferHoldings {
        check_ins: ratings,
        practice,
        paper: transfer.paper.len(),
        first_date: dates.first().copied(),
        last_date: dates.last().copied(),
    }
}

/// Seals what the desk has of a seat for a colleague, with the student's name only if `with_name`.
/// Nothing at this desk changes.
///
/// # Errors
/// Returns [`surefoot_exchange::Refusal`] for a passphrase that is too short.
pub fn make_transfer(
    desk: &DeskStore,
    class: &OpenClass,
    seat: u32,
    with_name: bool,
    passphrase: &str,
    today: NaiveDate,
) -> Result<Vec<u8>, DeskError> {
    let transfer = transfer_of(desk, class, seat, with_name, today)?;
    let key = SigningKey::from_seed(&class.row.signing_seed);
    Ok(seal_transfer(&transfer, &key, passphrase)?)
}

fn transfer_of(
    desk: &DeskStore,
    class: &OpenClass,
    seat: u32,
    with_name: bool,
    made_on: NaiveDate,
) -> Result<Transfer, DeskError> {
    let id = class.row.id.as_str();
    let row = check_seat(class, seat)?;
    let accepted: BTreeSet<i64> = (desk.devices_of(id, seat)?.into_iter())
        .filter(|device| device.state == DeviceState::Accepted)
        .map(|device| device.id)
        .collect();
    // The newest hand-in of each key, with the record of all of them.
    let mut by_key: BTreeMap<String, (HandIn, Record)> = BTreeMap::new();
    for kept in desk.hand_ins(id, seat)? {
        if !accepted.contains(&kept.device) {
            continue;
        }
        let mut hand_in = content_of(&kept.content)?;
        let brought = Record::from_entries(
            std::mem::take(&mut hand_in.check_ins),
            std::mem::take(&mut hand_in.practice),
        );
        let key = hand_in.device_key.as_str().to_owned();
        match by_key.get_mut(&key) {
            Some((newest, record)) => {
                record.merge(brought);
                if (hand_in.made_on, hand_in.revision) > (newest.made_on, newest.revision) {
                    *newest = hand_in;
                }
            }
            None => {
                by_key.insert(key, (hand_in, brought));
            }
        }
    }
    let hand_ins = by_key.into_values().flat_map(in_parts).collect();
    let paper = (desk.paper_of(id, seat)?.into_iter())
        .map(|entry| {
            Ok(PaperEntry {
                date: entry.date,
                concept: ConceptId::new(entry.concept).map_err(faulty)?,
                confidence: entry.confidence,
                outcome: entry.outcome,
            })
        })
        .collect::<Result<_, DeskError>>()?;
    Ok(Transfer {
        format: TRANSFER_FORMAT,
        teacher_key: SigningKey::from_seed(&class.row.signing_seed).public(),
        made_on,
        name: row.name.clone().filter(|_| with_name),
        hand_ins,
        paper,
    })
}

/// Returns a record as contents of hand-ins, each with as many entries as one may have.
fn in_parts((head, record): (HandIn, Record)) -> Vec<HandIn> {
    let most = usize::try_from(HAND_IN_CAPS.list_entries).unwrap_or(usize::MAX);
    let (check_ins, practice) = record.into_entries();
    let mut parts: Vec<HandIn> = Vec::new();
    for some in check_ins.chunks(most) {
        parts.push(HandIn {
            check_ins: some.to_vec(),
            ..head.clone()
        });
    }
    let mut rest = practice.as_slice();
    // The last part may have room for entries of practice.
    if let Some(last) = parts.last_mut() {
        let (fitting, left) = rest.split_at(rest.len().min(most - last.check_ins.len()));
        last.practice = fitting.to_vec();
        rest = left;
    }
    for some in rest.chunks(most) {
        parts.push(HandIn {
            practice: some.to_vec(),
            ..head.clone()
        });
    }
    if parts.is_empty() {
        parts.push(head);
    }
    parts
}

/// Takes a transfer: adds a seat with its name, its hand-ins and its paper entries. The shell draws
/// `seed` for the token. The journal gets a line for the file. Removing the seat undoes it.
///
/// # Errors
/// Returns [`DeskError::Invalid`] if a device of the student is accepted at this desk already, for a
/// full class, a name that is too long, or more entries than a seat can have.
pub fn take_transfer(
    desk: &DeskStore,
    class: &OpenClass,
    transfer: &Transfer,
    file_name: &str,
    seed: &[u8; 32],
    today: NaiveDate,
) -> Result<TransferTaken, DeskError> {
    let id = class.row.id.as_str();
    let name = checked_name(transfer.name.as_deref().unwrap_or_default())?;
    let year = &class.facts.year;
    desk.transaction(|| {
        for hand_in in &transfer.hand_ins {
            if desk.is_accepted(hand_in.device.as_str(), hand_in.device_key.as_str())? {
                return Err(DeskError::invalid(Field::Student, Rule::AlreadyHere));
            }
        }
        let seat = seat_student(desk, class, name.clone(), seed)?;
        let import = desk.begin_transfer(today)?;
        for hand_in in &transfer.hand_ins {
            keep(desk, class, seat, import, hand_in, today)?;
        }
        desk.note_first_of_moved(id, seat)?;
        if derive(desk, id, seat)? > MOST_ENTRIES {
            return Err(DeskError::invalid(Field::Seats, Rule::TooMany));
        }
        for entry in &transfer.paper {
            desk.put_paper(
                id,
                &PaperCheckIn {
                    seat,
                    date: entry.date,
                    concept: entry.concept.as_str().to_owned(),
                    confidence: entry.confidence,
                    outcome: entry.outcome,
                },
            )?;
        }
        let holds = holdings(transfer);
        let new_entries = holds.check_ins + holds.practice + holds.paper;
        desk.add_import_file(
            import,
            &ImportFileRow {
                file_name: file_name.to_owned(),
                verdict: serde_json::to_string(&Verdict::New).map_err(faulty)?,
                class: Some(id.to_owned()),
                seat: Some(seat),
                new_entries,
                flags: "[]".into(),
            },
        )?;
        let entries = (transfer.hand_ins.iter()).flat_map(|hand_in| {
            let check_ins = hand_in.check_ins.iter().map(|e| (e.date, &e.concept));
            check_ins.chain(hand_in.practice.iter().map(|e| (e.date, &e.concept)))
        });
        let all: Vec<_> = entries
            .chain(transfer.paper.iter().map(|e| (e.date, &e.concept)))
            .collect();
        let outside = |date: NaiveDate| !year.contains(date) || date > today;
        Ok(TransferTaken {
            seat,
            name,
            outside_year: all.iter().filter(|(date, _)| outside(*date)).count(),
            other_concepts: (all.iter())
                .filter(|(_, concept)| !class.facts.concepts.contains_key(concept.as_str()))
                .map(|(_, concept)| concept)
                .collect::<BTreeSet<_>>()
                .len(),
            holds,
        })
    })
}

/// Keeps a content of a transfer as a hand-in of an accepted device.
fn keep(
    desk: &DeskStore,
    class: &OpenClass,
    seat: u32,
    import: i64,
    hand_in: &HandIn,
    today: NaiveDate,
) -> Result<(), DeskError> {
    let id = class.row.id.as_str();
    let device = desk.put_device(
        id,
        &DeviceRow {
            id: 0,
            seat,
            device: hand_in.device.as_str().to_owned(),
            signing_key: hand_in.device_key.as_str().to_owned(),
            recipient: hand_in.device_recipient.as_str().to_owned(),
            state: DeviceState::Accepted,
            first_seen_on: today,
        },
    )?;
    let json = serde_json::to_vec(hand_in).map_err(faulty)?;
    let content_hash = content_hash(class, &json);
    if desk.has_hand_in(device, &content_hash)? {
        return Ok(());
    }
    let mut packed = ZlibEncoder::new(Vec::new(), Compression::default());
    packed.write_all(&json).map_err(faulty)?;
    desk.keep_hand_in(
        id,
        &HandInKept {
            import,
            seat,
            device,
            revision: hand_in.revision,
            made_on: hand_in.made_on,
            entries: hand_in.check_ins.len() + hand_in.practice.len(),
            // Its device had the pack of another class.
            pack_version: 0,
            content_hash,
            content: packed.finish().map_err(faulty)?,
        },
    )?;
    Ok(())
}
