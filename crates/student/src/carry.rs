//! The carry file: a student's own copy for a second device.
//!
//! A new device takes the keys of the file, so both devices then hand in for the same seat with
//! the same key, each with a device id of its own. Taking a carry file unites the events of
//! both, so it can be done again at any time, in either direction.

use super::hand_in::practice_entries;
use super::join::read_class_pack;
use super::path::MOST_FOCUS;
use super::practice::MOST_SECONDS;
use super::{Joined, StudentError, goals};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
use surefoot_catalogue::{Language, steers};
use surefoot_exchange::{
    CARRY_FORMAT, CarriedStore, CarryFile, Refusal, SigningKey, open_carry, seal_carry,
};
use surefoot_practice::workload::exercise_bounds;
use surefoot_record::{Appearance, DeviceId, Goal, Record, SeatToken};
use surefoot_store::StudentStore;
use surefoot_store::student::{PracticeAnswer, Student};

/// The version of [`Body`].
const BODY_VERSION: u32 = 1;

/// How far the sequences of a carry file may be above the newest of the device: far more than
/// the events of a year.
const MOST_AHEAD: u32 = 1_000_000;

/// The check-ins and practice results of a store that took a carry file: twice those of an honest
/// year on two devices, and half of what a hand-in may hold. So nobody can bring a student so many
/// that no hand-in can be made any more.
const MOST_ENTRIES: usize = 10_000;

/// The finished exercises of a store that took a carry file.
const MOST_ANSWERS: usize = 50_000;

/// The longest first response, in bytes.
const LONGEST_RESPONSE_BYTES: usize = 4 * 1024;

/// What this crate adds to a carry file.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Body {
    nickname: String,
    avatar: String,
    language: Language,
    minutes: u32,
    evenings: u32,
    focus: Vec<String>,
    answers: Vec<PracticeAnswer>,
    appearance: Appearance,
    goals: Vec<Goal>,
    exercises: Option<u32>,
}

fn bad(at: &str) -> Refusal {
    Refusal::BadContent { at: at.to_owned() }
}

/// Seals everything of this student for a second device.
///
/// # Errors
/// [`StudentError::Refused`] if the passphrase is too short.
pub fn make_carry(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    passphrase: &str,
) -> Result<Vec<u8>, StudentError> {
    let student = &joined.student;
    let body = Body {
        nickname: student.nickname.clone(),
        avatar: student.avatar.clone(),
        language: student.language,
        minutes: student.minutes,
        exercises: student.exercises,
        evenings: student.evenings,
        focus: store.focus()?,
        answers: store.practice_answers()?,
        appearance: student.appearance,
        goals: store.goals()?,
    };
    let pack = store.class_pack()?.ok_or(StudentError::NotJoined)?;
    let carry = CarryFile {
        format: CARRY_FORMAT,
        class_id: joined.pack.class_id.clone(),
        seat: SeatToken::new(student.seat.clone()).map_err(|_| bad("seat"))?,
        from_device: student.device.clone(),
        made_on: today,
        signing_seed: SigningKey::from_seed(&student.signing_seed).to_text(),
        sealing_identity: student.sealing_identity.clone(),
        class_pack: CarryFile::class_pack_text(&pack),
        check_ins: store.check_ins()?,
        practice: practice_entries(store)?,
        store: CarriedStore {
            version: BODY_VERSION,
            body: serde_json::to_value(body).map_err(|_| bad("store.body"))?,
        },
    };
    Ok(seal_carry(&carry, passphrase)?)
}

/// An opened carry file with checked content.
pub struct Carried {
    carry: CarryFile,
    body: Body,
    pack: Vec<u8>,
    pack_version: u32,
}

/// Opens a carry file and checks its content. Minutes, exercises and evenings are put within
/// the teacher's bounds.
pub fn read_carry(bytes: &[u8], passphrase: &str) -> Result<Carried, Refusal> {
    let carry = open_carry(bytes, passphrase)?;
    if carry.store.version > BODY_VERSION {
        return Err(Refusal::NewerFormat {
            found: carry.store.version,
            known: BODY_VERSION,
        });
    }
    let body = body_of(carry.store.body.clone())?;
    let pack = carry.class_pack_file()?;
    let checked = read_class_pack(pack.as_slice())?;
    if checked.content().class_id != carry.class_id {
        return Err(Refusal::WrongClass);
    }
    let bounds = checked.content().practice;
    let minutes = body
        .minutes
        .clamp(bounds.minutes_least, bounds.minutes_most);
    let (least, most) = exercise_bounds(bounds.minutes_least, bounds.minutes_most);
    let exercises = body.exercises.map(|of| of.clamp(least, most));
    let evenings = body
        .evenings
        .clamp(bounds.evenings_least, bounds.evenings_most);
    let pack_version = checked.content().version;
    Ok(Carried {
        body: Body {
            minutes,
            exercises,
            evenings,
            ..body
        },
        pack,
        pack_version,
        carry,
    })
}

/// Reads and checks what this crate adds to a carry file.
fn body_of(value: serde_json::Value) -> Result<Body, Refusal> {
    let body: Body = serde_json::from_value(value).map_err(|_| bad("store.body"))?;
    let nickname = body.nickname.trim();
    if nickname.is_empty()
        || nickname.chars().count() > super::LONGEST_NICKNAME_CHARACTERS
        || nickname.chars().any(steers)
    {
        return Err(bad("store.body.nickname"));
    }
    for (place, answer) in body.answers.iter().enumerate() {
        let fault = match answer {
            a if !(1..=3).contains(&a.level) => "level",
            a if a.sequence == 0 => "sequence",
            a if i64::try_from(a.seed).is_err() => "seed",
            a if a.seconds > MOST_SECONDS => "seconds",
            a if a.response.len() > LONGEST_RESPONSE_BYTES => "response",
            _ => continue,
        };
        return Err(bad(&format!("store.body.answers[{place}].{fault}")));
    }
    if body.focus.len() > MOST_FOCUS {
        return Err(bad("store.body.focus"));
    }
    if !body.appearance.is_offered() {
        return Err(bad("store.body.appearance"));
    }
    let goals = goals::checked(&body.goals).map_err(|_| bad("store.body.goals"))?;
    Ok(Body { goals, ..body })
}

impl Carried {
    /// Returns whether the student who has joined has the same seat of the same class.
    #[must_use]
    pub fn is_of(&self, joined: &Joined) -> bool {
        joined.pack.class_id == self.carry.class_id
            && joined.student.seat == self.carry.seat.as_str()
    }

    /// Refuses sequences far above `newest`. A file with the last sequence would leave the
    /// student none for a later tap.
    fn check_sequences(&self, newest: u32) -> Result<(), Refusal> {
        let most = newest.saturating_add(MOST_AHEAD);
        for (place, entry) in self.carry.check_ins.iter().enumerate() {
            for (field, at) in [
                ("confidence", entry.confidence.map(|said| said.at)),
                ("outcome", entry.outcome.map(|said| said.at)),
            ] {
                if at.is_some_and(|at| at > most) {
                    return Err(bad(&format!("check_ins[{place}].{field}.at")));
                }
            }
        }
        let sequences = self.body.answers.iter().map(|answer| answer.sequence);
        match { sequences }.position(|sequence| sequence > most) {
            None => Ok(()),
            Some(place) => Err(bad(&format!("store.body.answers[{place}].sequence"))),
        }
    }
}

/// How much a carry file brought.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CarryTaken {
    /// New check-ins.
    pub check_ins: usize,
    /// New finished exercises.
    pub answers: usize,
}

/// Takes a carry file into a store. An empty store becomes that of the student's second device
/// with the new id `device` and the keys of the file. In a store of the same seat the events of
/// both are united, and the store keeps its own keys: whoever knows the seat's token could make
/// a carry file with other keys.
///
/// # Errors
/// [`StudentError::Refused`] with [`Refusal::WrongClass`] if the store is of another seat, or
/// with [`Refusal::BadContent`] at a sequence that is more than a million above the newest of
/// the store, or with [`Refusal::TooManyEntries`] if the store would then have too many.
pub fn take_carry(
    store: &StudentStore,
    joined: Option<&Joined>,
    carried: &Carried,
    device: &[u8; 16],
    today: NaiveDate,
) -> Result<CarryTaken, StudentError> {
    if joined.is_some_and(|joined| !carried.is_of(joined)) {
        return Err(Refusal::WrongClass.into());
    }
    carried.check_sequences(store.next_sequence()? - 1)?;
    let carry = &carried.carry;
    let body = &carried.body;
    let student = match joined {
        Some(_) => None,
        None => Some(Student {
            device: DeviceId::from_bytes(device),
            signing_seed: carry.signing_key()?.seed(),
            sealing_identity: carry.sealing_identity.clone(),
            seat: carry.seat.as_str().to_owned(),
            nickname: body.nickname.trim().to_owned(),
            avatar: body.avatar.clone(),
            language: body.language,
            minutes: body.minutes,
            exercises: body.exercises,
            evenings: body.evenings,
            appearance: body.appearance,
        }),
    };
    if student.is_some() {
        // These have transactions of their own. If the next one fails, the store still has no
        // student and counts as empty.
        store.put_focus(&body.focus)?;
        store.put_goals(&body.goals)?;
    }
    store.transaction(|| {
        if joined.is_none_or(|joined| joined.pack.version < carried.pack_version) {
            store.put_class_pack(carried.pack_version, &carried.pack, today)?;
        }
        if let Some(student) = &student {
            store.put_student(student)?;
        }
        unite(store, carried)
    })
}

fn unite(store: &StudentStore, carried: &Carried) -> Result<CarryTaken, StudentError> {
    let here = store.check_ins()?;
    let mut record = Record::from_entries(here, []);
    let brought = record.merge(Record::from_entries(carried.carry.check_ins.clone(), []));
    for entry in brought.check_ins() {
        store.add_check_in(entry)?;
    }
    let mut taken = CarryTaken {
        check_ins: brought.check_ins().len(),
        answers: 0,
    };
    let answered: BTreeSet<(DeviceId, u32)> = store
        .practice_answers()?
        .into_iter()
        .map(|answer| (answer.device, answer.sequence))
        .collect();
    for answer in &carried.body.answers {
        if !answered.contains(&(answer.device.clone(), answer.sequence)) {
            store.add_practice_answer(answer)?;
            taken.answers += 1;
        }
    }
    let practice = practice_entries(store)?.len();
    for (found, most) in [
        (record.entries() + practice, MOST_ENTRIES),
        (answered.len() + taken.answers, MOST_ANSWERS),
    ] {
        if found > most {
            let most = most as u64;
            return Err(Refusal::TooManyEntries { most }.into());
        }
    }
    Ok(taken)
}

/// Gives the student of a store a new device id after an older copy was restored. Otherwise
/// new events could have the device and sequence of events that the copy lacks.
///
/// # Errors
/// [`StudentError::NotJoined`] if the store is empty.
pub fn renew_device(store: &StudentStore, device: &[u8; 16]) -> Result<(), StudentError> {
    let mut student = store.student()?.ok_or(StudentError::NotJoined)?;
    student.device = DeviceId::from_bytes(device);
    store.put_student(&student)?;
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use surefoot_test_support::{any_changes, changed, long};

    const BODY: &str = r#"{"nickname":"Wren","avatar":"heron","language":"en","minutes":8,
        "evenings":4,"focus":["g4-round"],"answers":[{"device":"AAAAAAAAAAAAAAAAAAAAAA",
        "sequence":5,"date":"2026-11-25","concept":"g4-round","level":2,"generator_version":1,
        "seed":7,"confidence":1,"result":"wrong","misconception":"rounded-down","seconds":20,
        "response":"null"}],"appearance":{"theme":"device","text_percent":100,"less_motion":false,
        "reads_aloud":false,"decimal_sign":"language"},"goals":[{"words":"Round","reached":false}],"exercises":null}"#;

    fn read(json: &[u8]) -> Option<Body> {
        body_of(serde_json::from_slice(json).ok()?).ok()
    }

    #[test]
    fn the_body_that_is_changed_below_is_read() {
        assert_eq!(read(BODY.as_bytes()).unwrap().answers.len(), 1);
    }

    proptest! {
        #![proptest_config(long())]

        /// What is read can be written and read again.
        #[test]
        fn changed_carry_bodies(changes in any_changes()) {
            if let Some(body) = read(&changed(BODY.as_bytes(), &changes)) {
                let again = read(&serde_json::to_vec(&body).unwrap()).unwrap();
                prop_assert_eq!(again.answers, body.answers);
                prop_assert_eq!(again.goals, body.goals);
            }
        }
    }
}
