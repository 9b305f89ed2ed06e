//! Handing in: the student's whole record of the year, sealed for the class.

use super::evening::answers_on;
use super::noticed::Seen;
use super::views::HandInPreview;
use super::{Joined, StudentError};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::{AnswerResult, Confidence};
use surefoot_exchange::{
    HAND_IN_FORMAT, HandIn, MOST_COUNT, MOST_MISCONCEPTIONS, Refusal, SealingIdentity, SigningKey,
    file_signs, folder_hand_in_name, seal_hand_in,
};
use surefoot_record::{AnswerCount, Practice, what_counts};
use surefoot_record::{DeviceId, MisconceptionCode, SeatToken};
use surefoot_store::StudentStore;
use surefoot_store::student::HandInRow;

/// A sealed hand-in that is not yet saved.
pub struct SealedHandIn {
    /// The suggested name of the file: date and random signs, nothing of the student.
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

/// Makes a sealed hand-in. Call [`note_hand_in`] once it is saved or shared. The shell draws
/// the random bytes for the name of the file.
///
/// # Errors
/// [`StudentError::Refused`] if the record breaks a limit of the format.
pub fn make_hand_in(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    name: &[u8; 4],
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
    let bytes = seal_hand_in(hand_in, &key, &joined.pack.class_recipient)?;
    Ok(SealedHandIn {
        file_name: format!("hand-in-{today}-{}.sfhandin", file_signs(name)),
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

/// The name of the student's hand-in in a class folder. It stays, so that a newer one takes the
/// place of the older, and says nothing of the student.
#[must_use]
pub fn folder_name(joined: &Joined) -> String {
    let student = &joined.student;
    folder_hand_in_name(
        &student.signing_seed,
        &joined.pack.class_id,
        &student.device,
    )
}

/// Forgets that hand-ins were saved, for a student whose next one goes to another seat or class.
/// Their numbers stay.
pub fn forget_handed_in(store: &StudentStore) -> Result<(), StudentError> {
    Ok(store.forget_handed_in()?)
}

/// The sequence of the newest event of the student; 0 without any.
pub fn newest_event(store: &StudentStore) -> Result<u32, StudentError> {
    Ok(store.next_sequence()? - 1)
}

/// Whether the newest event is in a hand-in that was saved, shared or left in a class folder.
pub fn is_handed_in(store: &StudentStore) -> Result<bool, StudentError> {
    let newest = newest_event(store)?;
    Ok((store.last_hand_in()?).is_some_and(|row| row.last_sequence == newest))
}

impl SealedHandIn {
    /// Its number on its device.
    #[must_use]
    pub fn revision(&self) -> u32 {
        self.row.revision
    }

    /// The school date on which it was made.
    #[must_use]
    pub fn made_on(&self) -> NaiveDate {
        self.row.made_on
    }

    /// The sequence of the newest event in it.
    #[must_use]
    pub fn last_sequence(&self) -> u32 {
        self.row.last_sequence
    }
}

/// Notes that a hand-in was saved, shared or left in a class folder, unless a later one was noted
/// meanwhile.
pub fn note_hand_in(store: &StudentStore, made: &SealedHandIn) -> Result<(), StudentError> {
    let last = store.last_hand_in()?.map_or(0, |row| row.revision);
    if made.row.revision > last {
        store.put_hand_in(made.row)?;
    }
    Ok(())
}

#[derive(Default)]
struct Sums {
    sequence: u32,
    answers: BTreeMap<Option<Confidence>, AnswerCount>,
    misconceptions: BTreeMap<MisconceptionCode, u32>,
}

/// Counts one more, up to the most that a hand-in may hold.
fn one_more(count: &mut u32) {
    *count = (*count + 1).min(MOST_COUNT);
}

/// Returns the practice results by device, date and concept.
pub(super) fn practice_entries(store: &StudentStore) -> Result<Vec<Practice>, StudentError> {
    let mut sums: BTreeMap<(DeviceId, NaiveDate, ConceptId), Sums> = BTreeMap::new();
    let mut seen = Seen::default();
    for answer in store.practice_answers()? {
        let counted = seen.counts(&answer).cloned();
        let sum = sums
            .entry((answer.device, answer.date, answer.concept))
            .or_default();
        sum.sequence = sum.sequence.max(answer.sequence);
        let count = sum.answers.entry(answer.confidence).or_insert(AnswerCount {
            confidence: answer.confidence,
            alone: 0,
            with_help: 0,
            wrong: 0,
        });
        match answer.result {
            AnswerResult::Alone => one_more(&mut count.alone),
            AnswerResult::WithHelp => one_more(&mut count.with_help),
            AnswerResult::Wrong => one_more(&mut count.wrong),
        }
        let room = sum.misconceptions.len() < MOST_MISCONCEPTIONS;
        if let Some(code) = counted
            && (room || sum.misconceptions.contains_key(&code))
        {
            one_more(sum.misconceptions.entry(code).or_default());
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

#[cfg(test)]
mod tests {
    use super::*;
    use surefoot_store::Durability;
    use surefoot_store::student::PracticeAnswer;

    #[test]
    fn counts_stop_at_the_most_that_a_hand_in_may_hold() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.sqlite");
        let store = StudentStore::open(&path, Durability::Relaxed).unwrap();
        for sequence in 1..=MOST_COUNT + 1 {
            store
                .add_practice_answer(&PracticeAnswer {
                    device: DeviceId::from_bytes(&[1; 16]),
                    sequence,
                    date: "2026-09-08".parse().unwrap(),
                    concept: ConceptId::new("g4-angle-measure").unwrap(),
                    level: 2,
                    generator_version: 1,
                    seed: u64::from(sequence),
                    confidence: None,
                    result: AnswerResult::Wrong,
                    misconception: Some(MisconceptionCode::new("read-other-scale").unwrap()),
                    seconds: 10,
                    response: "{}".into(),
                })
                .unwrap();
        }
        let entries = practice_entries(&store).unwrap();
        assert_eq!(entries.len(), 1);
        assert_eq!(entries[0].sequence, MOST_COUNT + 1);
        assert_eq!(entries[0].answers[0].wrong, MOST_COUNT);
        assert_eq!(
            entries[0]
                .misconceptions
                .values()
                .copied()
                .collect::<Vec<_>>(),
            [MOST_COUNT]
        );
    }
}
