//! Joining a class, and taking its newer class packs.

use super::class_days::unsettled;
use super::pin::check_own_slip;
use super::{Joined, StudentError};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use std::io::Read;
use surefoot_catalogue::rotation::Rotation;
use surefoot_catalogue::{Concept, Language, without_turns};
use surefoot_exchange::{
    Assignment, CheckedPack, ClassPack, ClassSigns, Refusal, SealingIdentity, open_pack,
    open_personal, parse_seat_code,
};
use surefoot_exercises::bank::OwnExercise;
use surefoot_practice::Assigned;
use surefoot_practice::workload::exercise_bounds;
use surefoot_record::Appearance;
use surefoot_record::Class;
use surefoot_record::{DeviceId, Field, Rule, SeatToken};
use surefoot_store::StudentStore;
use surefoot_store::student::{SaidDay, Student};

/// The most characters of a nickname.
pub const LONGEST_NICKNAME_CHARACTERS: usize = 24;

/// Minutes of an evening until the student chooses.
const USUAL_MINUTES: u32 = 8;

/// Evenings of a week until the student chooses.
const USUAL_EVENINGS: u32 = 5;

/// What a new student is made from: what was typed, and random bytes drawn by the shell.
pub struct NewStudent<'a> {
    /// 16 random bytes for the device id.
    pub device: [u8; 16],
    /// 32 random bytes for the signing key.
    pub signing_seed: [u8; 32],
    /// 32 random bytes for the sealing identity.
    pub sealing_seed: [u8; 32],
    /// The seat code, as typed.
    pub seat_code: &'a str,
    /// The nickname, as typed.
    pub nickname: &'a str,
    /// The id of the avatar.
    pub avatar: &'a str,
    /// The student's language.
    pub language: Language,
}

/// A class pack to join with, and the signs that a slip has for its keys.
pub struct FirstPack {
    pack: CheckedPack,
    signs: ClassSigns,
}

impl FirstPack {
    /// The content, to be shown before joining.
    #[must_use]
    pub fn content(&self) -> &ClassPack {
        self.pack.content()
    }
}

/// Opens a class pack to join with. Takes about a tenth of a second and 64 MiB.
///
/// # Errors
/// [`StudentError::Refused`] for a file that is no class pack.
pub fn read_first_pack(bytes: impl Read) -> Result<FirstPack, StudentError> {
    let pack = read_class_pack(bytes)?;
    let signs =
        ClassSigns::of(&pack.content().class_id).map_err(|e| StudentError::Fault(e.to_string()))?;
    Ok(FirstPack { pack, signs })
}

/// Opens a class pack and checks its signature and content.
pub(super) fn read_class_pack(bytes: impl Read) -> Result<CheckedPack, Refusal> {
    #[cfg(debug_assertions)]
    crate::for_tests::PACKS_READ.set(crate::for_tests::PACKS_READ.get() + 1);
    Ok(open_pack(bytes)?.accept_first())
}

/// Returns the seat of a seat code of the pack's class.
///
/// # Errors
/// [`StudentError::SeatCode`] if it is mistyped or of another class.
pub fn check_seat_code(pack: &FirstPack, typed: &str) -> Result<SeatToken, StudentError> {
    Ok(parse_seat_code(&pack.signs, typed)?)
}

/// Joins a class: writes the student and the class pack into a new store.
///
/// # Errors
/// [`StudentError::SeatCode`] if the seat code is mistyped or of another class,
/// [`StudentError::Invalid`] if the nickname is empty or too long.
pub fn join(
    store: &StudentStore,
    pack: &FirstPack,
    today: NaiveDate,
    new: &NewStudent<'_>,
) -> Result<Student, StudentError> {
    let seat = check_seat_code(pack, new.seat_code)?;
    let nickname = without_turns(new.nickname);
    let nickname = nickname.trim();
    let invalid = |rule| StudentError::Invalid {
        field: Field::Nickname,
        rule,
    };
    if nickname.is_empty() || nickname.chars().any(char::is_control) {
        return Err(invalid(Rule::Empty));
    }
    if nickname.chars().count() > LONGEST_NICKNAME_CHARACTERS {
        return Err(invalid(Rule::TooLong));
    }
    let content = pack.content();
    let sealing = SealingIdentity::from_bytes(&new.sealing_seed)
        .map_err(|e| StudentError::Fault(e.to_string()))?;
    let student = Student {
        device: DeviceId::from_bytes(&new.device),
        signing_seed: new.signing_seed,
        sealing_identity: sealing.to_text(),
        seat: seat.as_str().to_owned(),
        nickname: nickname.to_owned(),
        avatar: new.avatar.to_owned(),
        language: new.language,
        minutes: USUAL_MINUTES.clamp(
            content.practice.minutes_least,
            content.practice.minutes_most,
        ),
        exercises: None,
        evenings: USUAL_EVENINGS.clamp(
            content.practice.evenings_least,
            content.practice.evenings_most,
        ),
        appearance: Appearance::default(),
    };
    store.transaction(|| {
        store.put_class_pack(content.version, pack.pack.file(), today)?;
        store.put_student(&student)
    })?;
    Ok(student)
}

/// Whether a student has the seat of a seat code in the pack's class.
#[must_use]
pub fn is_at_seat(joined: &Joined, pack: &FirstPack, seat: &SeatToken) -> bool {
    joined.pack.class_id == pack.content().class_id && joined.student.seat == seat.as_str()
}

/// What is typed to take another slip.
#[derive(Debug, Clone, Copy)]
pub struct NewSlip<'a> {
    /// The seat code of the new slip.
    pub seat_code: &'a str,
    /// Of the slip that the student has now: the PIN signs, or the seat code if the device keeps no
    /// hash of the PIN signs.
    pub earlier: &'a str,
}

/// Gives a student another slip, of the same class or another one, for whoever moved or joined with
/// the wrong slip. The record, the device id and the keys stay, so the desk knows the device again.
/// A PIN belongs to the earlier slip and is removed. The hashed PIN signs of an earlier class stay,
/// so that its slip goes on opening the pages; those of another seat of the class are removed,
/// because that slip is somebody else's.
///
/// `earlier` is what only the owner of the pages knows, so that nobody else can give them away: the
/// PIN signs of the slip that the student has now, or its seat code if the device keeps no hash of
/// the PIN signs.
///
/// # Errors
/// [`StudentError::Invalid`] of [`Field::EarlierSlip`] if `earlier` is mistyped or of another slip,
/// [`StudentError::SeatCode`] if the seat code is mistyped or of another class than the pack,
/// [`StudentError::Refused`] with [`Refusal::NotNewer`] for a pack of the same class that is older
/// than that of the device.
pub fn change_slip(
    store: &StudentStore,
    joined: &Joined,
    pack: &FirstPack,
    slip: NewSlip<'_>,
    today: NaiveDate,
) -> Result<(), StudentError> {
    let seat = check_seat_code(pack, slip.seat_code)?;
    check_own_slip(store, joined, slip.earlier).map_err(|error| match error {
        StudentError::SeatCode(_) => StudentError::Invalid {
            field: Field::EarlierSlip,
            rule: Rule::Missing,
        },
        other => other,
    })?;
    let (content, held) = (pack.content(), &joined.pack);
    let same_class = content.class_id == held.class_id;
    if same_class && content.version < held.version {
        return Err(Refusal::NotNewer {
            found: content.version,
            held: held.version,
        }
        .into());
    }
    let student = Student {
        seat: seat.as_str().to_owned(),
        ..joined.student.clone()
    };
    store.transaction(|| {
        if !same_class {
            store.remove_class_packs()?;
        }
        store.put_class_pack(content.version, pack.pack.file(), today)?;
        store.put_student(&student)?;
        if joined.student.seat != student.seat {
            store.remove_pin()?;
            if same_class {
                store.remove_pin_signs(&joined.student.seat)?;
            }
        }
        Ok(())
    })
}

/// Takes a newer class pack and returns its version.
///
/// # Errors
/// [`StudentError::Refused`] if it is no class pack, of another class, or not newer.
pub fn take_class_pack(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    bytes: impl Read,
) -> Result<u32, StudentError> {
    let pack = open_pack(bytes)?.accept_update(&joined.pack)?;
    store.put_class_pack(pack.content().version, pack.file(), today)?;
    Ok(pack.content().version)
}

/// Returns the student of a store, with the class as its newest class pack describes it.
///
/// # Errors
/// [`StudentError::NotJoined`] if the store is empty.
pub fn joined(store: &StudentStore) -> Result<Joined, StudentError> {
    let mut student = store.student()?.ok_or(StudentError::NotJoined)?;
    let file = store.class_pack()?.ok_or(StudentError::NotJoined)?;
    let pack = read_class_pack(file.as_slice())?.into_content();
    // A newer pack may have narrower bounds than when the student chose.
    let bounds = pack.practice;
    student.minutes = student
        .minutes
        .clamp(bounds.minutes_least, bounds.minutes_most);
    let (least, most) = exercise_bounds(bounds.minutes_least, bounds.minutes_most);
    student.exercises = student.exercises.map(|of| of.clamp(least, most));
    student.evenings = student
        .evenings
        .clamp(bounds.evenings_least, bounds.evenings_most);
    let facts = facts_of(&pack)?;
    let said = unsettled(store, &pack)?;
    let mut assignments: Vec<Assigned> = pack.assignments.iter().map(assigned).collect();
    assignments.extend(personal(&pack, &student).iter().map(assigned));
    Ok(Joined {
        student,
        facts,
        assignments,
        pack,
        said,
    })
}

/// Keeps the class and the student of one opened store, so that the class pack is not
/// verified at every call.
#[derive(Default)]
pub struct JoinedCache {
    kept: Option<(Mark, Joined)>,
}

/// What [`Joined`] is made from, as far as it can be compared without opening the pack.
#[derive(PartialEq)]
struct Mark {
    student: Option<Student>,
    pack: (Option<(u32, usize)>, u32),
    said: Vec<SaidDay>,
}

impl JoinedCache {
    /// Returns the same as [`joined`]. The pack is verified only if the student or the pack
    /// may have changed since the last call. `store` must be the same at every call.
    ///
    /// # Errors
    /// [`StudentError::NotJoined`] if the store is empty.
    pub fn get(&mut self, store: &StudentStore) -> Result<&Joined, StudentError> {
        // The mark is read before the pack, so that the next call sees a change in between.
        let mark = Mark {
            student: store.student()?,
            pack: store.class_pack_mark()?,
            said: store.said_days()?,
        };
        let kept = match self.kept.take() {
            Some((of, kept)) if of == mark => kept,
            _ => joined(store)?,
        };
        Ok(&self.kept.insert((mark, kept)).1)
    }
}

/// Returns the assignments that are sealed for this device. One that cannot be opened is left
/// out: the teacher sees that it is not done, and the next pack holds it again.
fn personal(pack: &ClassPack, student: &Student) -> Vec<Assignment> {
    let (Ok(seat), Ok(identity)) = (
        SeatToken::new(student.seat.clone()),
        SealingIdentity::from_identity_file(&student.sealing_identity),
    ) else {
        return Vec::new();
    };
    open_personal(pack, &seat, &student.device, &identity)
}

fn assigned(assignment: &Assignment) -> Assigned {
    Assigned {
        concepts: assignment
            .concepts
            .iter()
            .map(|c| c.as_str().to_owned())
            .collect(),
        items_each: assignment.items_each,
        from: assignment.from,
        due: assignment.due,
    }
}

fn facts_of(pack: &ClassPack) -> Result<Class, StudentError> {
    let days = pack
        .rotation
        .iter()
        .map(|day| day.iter().map(|c| c.as_str().to_owned()).collect())
        .collect();
    let mut own_exercises: BTreeMap<String, Vec<OwnExercise>> = BTreeMap::new();
    for own in &pack.exercises {
        own_exercises
            .entry(own.concept.as_str().to_owned())
            .or_default()
            .push(own.clone());
    }
    Ok(Class {
        title: pack.title.clone(),
        own_exercises,
        year: pack.year.clone(),
        rotation: Rotation::new(days).map_err(|_| Refusal::BadContent {
            at: "rotation".into(),
        })?,
        taught_from: pack
            .taught_from
            .iter()
            .map(|(c, d)| (c.as_str().to_owned(), *d))
            .collect(),
        concepts: pack
            .concepts
            .iter()
            .map(|c| {
                (
                    c.id.as_str().to_owned(),
                    Concept {
                        id: c.id.clone(),
                        strand: c.strand,
                        grade: c.grade,
                        title: c.title.clone(),
                        i_can: c.i_can.clone(),
                        prerequisites: c.prerequisites.clone(),
                        alignments: Vec::new(),
                    },
                )
            })
            .collect(),
    })
}
