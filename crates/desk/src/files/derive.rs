//! The reports of a seat, derived from the hand-ins of its accepted devices.
//!
//! The tables of reports hold the union of those hand-ins: of each (device,
//! school date, concept) the entry with the highest sequence. So a new hand-in
//! is compared with the tables and only what it adds is written; the hand-ins
//! before it are opened again only when one of them goes or a device is decided
//! about.

use crate::error::DeskError;
use chrono::NaiveDate;
use flate2::read::ZlibDecoder;
use std::collections::BTreeSet;
use std::io::Read;
use surefoot_catalogue::ConceptId;
use surefoot_exchange::{HAND_IN_CAPS, HandIn};
use surefoot_record::{AnswerCount, CheckInState, Key, PracticeState, Record};
use surefoot_record::{DeviceId, MistakeCode};
use surefoot_store::DeskStore;
use surefoot_store::desk::{DeviceState, HandInKept, ReportPlace};

fn faulty(error: impl std::fmt::Display) -> DeskError {
    DeskError::Faulty(error.to_string())
}

fn content_of(kept: &HandInKept) -> Result<HandIn, DeskError> {
    let mut json = Vec::new();
    ZlibDecoder::new(kept.content.as_slice())
        .take(HAND_IN_CAPS.unpacked_bytes)
        .read_to_end(&mut json)
        .map_err(faulty)?;
    serde_json::from_slice(&json).map_err(faulty)
}

/// Derives the reports of a seat anew from the hand-ins of its accepted devices.
pub(crate) fn derive(desk: &DeskStore, class: &str, seat: u32) -> Result<(), DeskError> {
    let accepted: BTreeSet<(String, String)> = desk
        .devices_of(class, seat)?
        .into_iter()
        .filter(|d| d.state == DeviceState::Accepted)
        .map(|d| (d.device, d.signing_key))
        .collect();
    let mut record = Record::default();
    for kept in desk.hand_ins(class, seat)? {
        if accepted.contains(&(kept.device.clone(), kept.signing_key.clone())) {
            record.merge(content_of(&kept)?.into_record());
        }
    }
    desk.clear_reports(class, seat)?;
    write(desk, class, seat, &record)
}

/// Adds what a hand-in of an accepted device brings; gives how many entries
/// are new or newer.
pub(crate) fn add(
    desk: &DeskStore,
    class: &str,
    seat: u32,
    brought: Record,
) -> Result<usize, DeskError> {
    let here = read(desk, class, seat)?;
    let added = here.newer_in(brought);
    for key in added.check_ins.keys() {
        if here.check_ins.contains_key(key) {
            desk.drop_check_in(
                class,
                seat,
                key.device.as_str(),
                key.date,
                key.concept.as_str(),
            )?;
        }
    }
    for key in added.practice.keys() {
        if here.practice.contains_key(key) {
            desk.drop_practice(
                class,
                seat,
                key.device.as_str(),
                key.date,
                key.concept.as_str(),
            )?;
        }
    }
    write(desk, class, seat, &added)?;
    Ok(added.entries())
}

fn key(device: String, date: NaiveDate, concept: String) -> Result<Key, DeskError> {
    Ok(Key {
        device: DeviceId::new(device).map_err(faulty)?,
        date,
        concept: ConceptId::new(concept).map_err(faulty)?,
    })
}

/// What the tables hold of a seat.
pub(crate) fn read(desk: &DeskStore, class: &str, seat: u32) -> Result<Record, DeskError> {
    let mut record = Record::default();
    for row in desk.check_ins_of(class, seat)? {
        record.check_ins.insert(
            key(row.device, row.date, row.concept)?,
            CheckInState {
                sequence: u32::try_from(row.sequence).map_err(faulty)?,
                confidence: row.confidence,
                outcome: row.outcome,
            },
        );
    }
    for row in desk.practice_of(class, seat)? {
        let state = record
            .practice
            .entry(key(row.device, row.date, row.concept)?)
            .or_insert_with(|| PracticeState {
                sequence: row.sequence,
                answers: Vec::new(),
                mistakes: std::collections::BTreeMap::new(),
            });
        // "Not said" comes first, as in the entry itself.
        state.answers.push(AnswerCount {
            sure: row.sure,
            alone: row.alone,
            with_help: row.with_help,
            wrong: row.wrong,
        });
    }
    for row in desk.mistakes_of(class, seat)? {
        if let Some(state) = record
            .practice
            .get_mut(&key(row.device, row.date, row.concept)?)
        {
            let code = MistakeCode::new(row.code).map_err(faulty)?;
            state.mistakes.insert(code, row.times);
        }
    }
    Ok(record)
}

fn write(desk: &DeskStore, class: &str, seat: u32, record: &Record) -> Result<(), DeskError> {
    let mut writer = desk.report_writer(class, seat)?;
    for (key, state) in &record.check_ins {
        writer.check_in(place_of(key), *state)?;
    }
    for (key, state) in &record.practice {
        // An entry that counts nothing still has its row, which keeps its sequence.
        let nothing = [AnswerCount {
            sure: None,
            alone: 0,
            with_help: 0,
            wrong: 0,
        }];
        let counts: &[AnswerCount] = if state.answers.is_empty() {
            &nothing
        } else {
            &state.answers
        };
        for count in counts {
            writer.practice(place_of(key), state.sequence, *count)?;
        }
        for (code, times) in &state.mistakes {
            writer.mistake(place_of(key), code.as_str(), *times)?;
        }
    }
    Ok(())
}

fn place_of(key: &Key) -> ReportPlace<'_> {
    ReportPlace {
        device: key.device.as_str(),
        date: key.date,
        concept: key.concept.as_str(),
    }
}
