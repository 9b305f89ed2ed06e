//! Handing in: the student's whole record of the year, sealed for the class.

use super::evening::answers_on;
use super::views::HandInPreview;
use super::{Joined, StudentError};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::{AnswerResult, Confidence};
use surefoot_exchange::{
    HAND_IN_FORMAT, HandIn, Refusal, SealingIdentity, SigningKey, seal_hand_in,
};
use surefoot_record::{AnswerCount, Practice, what_counts};
use surefoot_record::{DeviceId, MisconceptionCode, SeatToken};
use surefoot_store::StudentStore;
use surefoot_store::student::HandInRow;

/// A sealed hand-in that is not yet saved.
pub struct SealedHandIn {
    /// The suggested name of the file: seat, date and revision.
    pub file_name: String,
    /// The file.
    pub bytes: Vec<u8>,
    /// Check-ins in it that count, as in the preview.
    pub check_ins: usize,
    /// Finished exercises in it that count.
    pub answers: usize,
    row: HandInRow,
}

/// Returns what a hand-in would hold now.
pub fn hand_in_preview(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
) -> Result<HandInPreview, StudentError> {
    let last = store.last_hand_in()?;
    let check_ins = store.check_ins()?;
    let dates = joined.counted_dates(today);
    let counted = what_counts(&check_ins, dates);
    let answers = answers_on(store, dates)?;
    let since = last.map_or(0, |row| row.last_sequence);
    let new_check_ins = (check_ins.iter())
        .filter(|entry| dates.contains(entry.date) && entry.sequence() > since)
        .count();
    Ok(HandInPreview {
        class_title: joined.facts.title.clone(),
        check_ins: counted.len(),
        answers: answers.len(),
        last_made_on: last.map(|row| row.made_on),
        new_since: new_check_ins + answers.iter().filter(|a| a.sequence > since).count(),
        days: counted
            .iter()
            .map(|counted| counted.date)
            .collect::<BTreeSet<_>>()
            .len(),
    })
}

/// Makes a sealed hand-in. Call [`note_hand_in`] once it is saved or shared.
///
/// # Errors
/// [`StudentError::Refused`] if the record breaks a limit of the format.
pub fn make_hand_in(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
) -> Result<SealedHandIn, StudentError> {
    let student = &joined.student;
    let bad = |at: &str| Refusal::BadContent { at: at.to_owned() };
    let key = SigningKey::from_seed(&student.signing_seed);
    let identity = SealingIdentity::from_identity_file(&student.sealing_identity)?;
    let check_ins = store.check_ins()?;
    let practice = practice_entries(store)?;
    let revision = store.last_hand_in()?.map_or(0, |row| row.revision) + 1;
    let holds = hand_in_preview(store, joined, today)?;
    let hand_in = HandIn {
        format: HAND_IN_FORMAT,
        class_id: joined.pack.class_id.clone(),
        seat: SeatToken::new(student.seat.clone()).map_err(|_| bad("seat"))?,
        device: student.device.clone(),
        revision,
        made_on: today,
        pack_version: joined.pack.version,
        device_key: key.public(),
        device_recipient: identity.recipient(),
        check_ins,
        practice,
    };
    let bytes = seal_hand_in(&hand_in, &key, &joined.pack.class_recipient)?;
    Ok(SealedHandIn {
        file_name: format!(
            "{}-{today}-{revision}.sfhandin",
            hand_in.seat.as_str().to_lowercase()
        ),
        bytes,
        check_ins: holds.check_ins,
        answers: holds.answers,
        row: HandInRow {
            revision,
            made_on: today,
            last_sequence: store.next_sequence()? - 1,
        },
    })
}

/// Notes that a hand-in was saved or shared.
pub fn note_hand_in(store: &StudentStore, made: &SealedHandIn) -> Result<(), StudentError> {
    store.put_hand_in(made.row)?;
    Ok(())
}

#[derive(Default)]
struct Sums {
    sequence: u32,
    answers: BTreeMap<Option<Confidence>, AnswerCount>,
    misconceptions: BTreeMap<MisconceptionCode, u32>,
}

/// Returns the practice results by device, date and concept.
pub(super) fn practice_entries(store: &StudentStore) -> Result<Vec<Practice>, StudentError> {
    let mut sums: BTreeMap<(DeviceId, NaiveDate, ConceptId), Sums> = BTreeMap::new();
    for answer in store.practice_answers()? {
        let sum = sums
            .entry((answer.device, answer.date, answer.concept))
            .or_default();
        sum.sequence = sum.sequence.max(answer.sequence);
        let count = sum.answers.entry(answer.sure).or_insert(AnswerCount {
            sure: answer.sure,
            alone: 0,
            with_help: 0,
            wrong: 0,
        });
        match answer.result {
            AnswerResult::Alone => count.alone += 1,
            AnswerResult::WithHelp => count.with_help += 1,
            AnswerResult::Wrong => count.wrong += 1,
        }
        if let Some(code) = answer.misconception {
            *sum.misconceptions.entry(code).or_default() += 1;
        }
    }
    let entries = sums
        .into_iter()
        .map(|((device, date, concept), sum)| Practice {
            device,
            date,
            concept,
            sequence: sum.sequence,
            answers: sum.answers.into_values().collect(),
            misconceptions: sum.misconceptions,
        });
    Ok(entries.collect())
}
