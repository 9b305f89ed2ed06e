//! An invented class for the tests of this crate.

use crate::*;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::LazyLock;
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rating::Confidence;
use surefoot_catalogue::{ConceptId, Language, Strand, Text};
use surefoot_record::*;
pub use surefoot_test_support::record::{CONCEPTS, check_in, concept, date, device};

pub fn teacher() -> SigningKey {
    SigningKey::from_seed(&[1; 32])
}

pub fn class_identity() -> SealingIdentity {
    SealingIdentity::from_bytes(&[2; 32]).unwrap()
}

pub fn other_class_identity() -> SealingIdentity {
    SealingIdentity::from_bytes(&[3; 32]).unwrap()
}

pub fn student() -> SigningKey {
    SigningKey::from_seed(&[4; 32])
}

pub fn student_identity() -> SealingIdentity {
    SealingIdentity::from_bytes(&[5; 32]).unwrap()
}

pub fn class_id() -> ClassId {
    class_id_of(&teacher().public(), &class_identity().recipient()).unwrap()
}

/// The id of another class.
pub fn other_class_id() -> ClassId {
    class_id_of(&teacher().public(), &other_class_identity().recipient()).unwrap()
}

/// The signs of the class, computed once because that takes a tenth of a second.
pub fn class_signs() -> &'static ClassSigns {
    static SIGNS: LazyLock<ClassSigns> = LazyLock::new(|| ClassSigns::of(&class_id()).unwrap());
    &SIGNS
}

pub fn seat() -> SeatToken {
    draw_seat_token(class_signs(), &[7; 32], 1)
}

pub fn pack() -> ClassPack {
    let [en, es] = ["en", "es"].map(|tag| Language::tagged(tag).unwrap());
    ClassPack {
        format: CLASS_PACK_FORMAT,
        class_id: class_id(),
        version: 1,
        issued_on: date("2026-08-20"),
        title: "Room 12, mathematics".into(),
        year: SchoolYear::new(
            date("2026-08-24"),
            date("2027-06-04"),
            BTreeSet::from([1, 2, 3, 4, 5]),
            BTreeSet::from([date("2026-11-26"), date("2026-11-27")]),
        )
        .unwrap(),
        rotation: vec![
            vec![concept(CONCEPTS[0]), concept(CONCEPTS[1])],
            vec![concept(CONCEPTS[2])],
        ],
        taught_from: BTreeMap::from([(concept(CONCEPTS[0]), date("2026-09-07"))]),
        concepts: CONCEPTS
            .iter()
            .map(|id| PackConcept {
                id: concept(id),
                strand: Strand::Fractions,
                grade: 4,
                title: Text::one(en, "A title").with(es, "Un título"),
                i_can: Text::one(en, "I can do this.").with(es, "Puedo hacer esto."),
                prerequisites: vec![concept("g3-unit-fractions")],
            })
            .collect(),
        assignments: vec![assignment("a1")],
        sealed: Vec::new(),
        exercises: Vec::new(),
        practice: PracticeRules {
            minutes_least: 5,
            minutes_most: 15,
            evenings_least: 2,
            evenings_most: 6,
            test_on: Some(date("2026-11-13")),
        },
        class_recipient: class_identity().recipient(),
        class_folder: true,
        teacher_key: teacher().public(),
    }
}

pub fn class_key() -> ClassKeyFile {
    let pack = pack();
    ClassKeyFile {
        format: 1,
        class_id: class_id(),
        title: pack.title,
        made_on: pack.issued_on,
        sealing_identity: class_identity().to_identity_file(),
        signing_seed: SigningKey::from_seed(&[1; 32]).to_text(),
        year: pack.year,
        rotation: vec![CONCEPTS.map(str::to_owned).to_vec()],
        taught_from: BTreeMap::from([(CONCEPTS[0].to_owned(), date("2026-09-07"))]),
        seats: vec![KeySeat {
            number: 1,
            token: seat(),
            name: Some("Given".into()),
        }],
        practice: pack.practice,
        own_concepts: Vec::new(),
        own_exercises: Vec::new(),
        pack_version: 1,
        saves_packs: false,
    }
}

pub fn transfer() -> Transfer {
    Transfer {
        format: TRANSFER_FORMAT,
        teacher_key: teacher().public(),
        made_on: date("2026-09-12"),
        name: Some("Given".into()),
        hand_ins: vec![hand_in()],
        paper: vec![PaperEntry {
            date: date("2026-09-10"),
            concept: concept(CONCEPTS[0]),
            confidence: Some(Confidence::NotYet),
            outcome: None,
        }],
    }
}

pub fn assignment(id: &str) -> Assignment {
    Assignment {
        id: AssignmentId::new(id).unwrap(),
        concepts: vec![concept(CONCEPTS[0])],
        items_each: 4,
        from: date("2026-09-14"),
        due: date("2026-09-18"),
    }
}

pub fn hand_in() -> HandIn {
    HandIn {
        format: HAND_IN_FORMAT,
        class_id: class_id(),
        seat: seat(),
        device: device(8),
        revision: 1,
        made_on: date("2026-09-11"),
        pack_version: 1,
        check_ins: vec![
            check_in(8, "2026-09-08", CONCEPTS[1], 2, 1),
            check_in(8, "2026-09-08", CONCEPTS[0], 1, 3),
        ],
        practice: vec![Practice {
            device: device(8),
            date: date("2026-09-08"),
            concept: concept(CONCEPTS[0]),
            sequence: 6,
            answers: vec![
                AnswerCount {
                    confidence: Some(Confidence::OnMyOwn),
                    alone: 2,
                    with_help: 1,
                    wrong: 0,
                },
                AnswerCount {
                    confidence: None,
                    alone: 0,
                    with_help: 0,
                    wrong: 1,
                },
            ],
            misconceptions: BTreeMap::from([(
                MisconceptionCode::new("added-denominators").unwrap(),
                1,
            )]),
        }],
        device_key: student().public(),
        device_recipient: student_identity().recipient(),
    }
}

pub fn carry() -> CarryFile {
    let hand_in = hand_in();
    CarryFile {
        format: CARRY_FORMAT,
        class_id: class_id(),
        seat: seat(),
        from_device: device(8),
        made_on: date("2026-09-11"),
        signing_seed: student().to_text(),
        sealing_identity: student_identity().to_text(),
        class_pack: CarryFile::class_pack_text(&sign_pack(&pack(), &teacher()).unwrap()),
        check_ins: hand_in.check_ins,
        practice: hand_in.practice,
        store: CarriedStore {
            version: 1,
            body: serde_json::json!({"language": "en", "minutes": 10}),
        },
    }
}

/// What the desk knows of the class.
pub struct Facts {
    pub class_id: ClassId,
    pub seats: BTreeMap<SeatToken, BTreeSet<PublicKey>>,
    pub concepts: BTreeSet<ConceptId>,
}

impl Facts {
    pub fn with_keys(keys: impl IntoIterator<Item = PublicKey>) -> Self {
        Self {
            class_id: class_id(),
            seats: BTreeMap::from([(seat(), keys.into_iter().collect())]),
            concepts: CONCEPTS.iter().map(|id| concept(id)).collect(),
        }
    }

    pub fn get(&self) -> HandInExpectations<'_> {
        HandInExpectations {
            class_id: &self.class_id,
            first_day: date("2026-08-24"),
            last_day: date("2027-06-04"),
            seats: &self.seats,
            concepts: &self.concepts,
        }
    }
}
