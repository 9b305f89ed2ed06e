//! Writes one file of each kind that travels, and reads files that another program sealed. For
//! `tests/oracle/exchange_oracle.py`.
//!
//! ```text
//! exchange_fixture write FOLDER       class.sfclass, year.sfhandin, class-identity.txt,
//!                                     student-identity.txt, mine.sfcarry, facts.json
//!                                     my.sfbackup, one.sftransfer
//! exchange_fixture read FOLDER FILE   the JSON of a hand-in, or its refusal
//! exchange_fixture backup FOLDER FILE id and kind of a backup, or its refusal; its store as `opened.sqlite`
//! ```

use chrono::{Days, NaiveDate};
use std::collections::{BTreeMap, BTreeSet};
use std::error::Error;
use std::fs;
use std::path::Path;
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_catalogue::{ConceptId, Language, Strand, Text};
use surefoot_exchange::*;
use surefoot_exercises::Level;
use surefoot_exercises::bank::{OwnExercise, OwnForm, OwnKind, OwnWrong};
use surefoot_record::{
    AnswerCount, AssignmentId, CheckIn, ClassId, DeviceId, MisconceptionCode, Practice,
    PracticeRules, Said, SeatToken,
};
use surefoot_store::Durability;

type Outcomes<T> = Result<T, Box<dyn Error>>;

const PASSPHRASE: &str = "seven quiet rivers";

struct World {
    class_id: ClassId,
    class_signs: ClassSigns,
    teacher: SigningKey,
    class: SealingIdentity,
    student: SigningKey,
    student_identity: SealingIdentity,
    device: DeviceId,
    seat: SeatToken,
    first_day: NaiveDate,
    last_day: NaiveDate,
    concepts: Vec<ConceptId>,
}

fn world() -> Outcomes<World> {
    let teacher = SigningKey::from_seed(&[12; 32]);
    let class = SealingIdentity::from_bytes(&[13; 32])?;
    let class_id = class_id_of(&teacher.public(), &class.recipient())?;
    let class_signs = ClassSigns::of(&class_id)?;
    Ok(World {
        teacher,
        class,
        student: SigningKey::from_seed(&[14; 32]),
        student_identity: SealingIdentity::from_bytes(&[15; 32])?,
        device: DeviceId::from_bytes(&[16; 16]),
        seat: draw_seat_token(&class_signs, &[17; 32], 1),
        first_day: "2026-08-24".parse()?,
        last_day: "2027-06-04".parse()?,
        concepts: (0..60)
            .map(|n| ConceptId::new(format!("g4-invented-{n}")))
            .collect::<Result<_, _>>()?,
        class_id,
        class_signs,
    })
}

fn personal(world: &World) -> Outcomes<PersonalAssignments> {
    Ok(PersonalAssignments {
        format: PERSONAL_FORMAT,
        class_id: world.class_id.clone(),
        seat: world.seat.clone(),
        device: world.device.clone(),
        pack_version: 3,
        assignments: vec![assignment(world, "for-you")?],
    })
}

/// The student's device with one assignment, and a stranger's with many.
fn sealed_for(world: &World) -> Outcomes<Vec<(PersonalAssignments, Recipient)>> {
    let own = personal(world)?;
    let many = PersonalAssignments {
        device: DeviceId::from_bytes(&[18; 16]),
        assignments: (0..60)
            .map(|n| assignment(world, &format!("for-another-{n}")))
            .collect::<Result<_, _>>()?,
        ..own.clone()
    };
    let stranger = SealingIdentity::from_bytes(&[19; 32])?;
    Ok(vec![
        (own, world.student_identity.recipient()),
        (many, stranger.recipient()),
    ])
}

fn assignment(world: &World, id: &str) -> Outcomes<Assignment> {
    Ok(Assignment {
        id: AssignmentId::new(id)?,
        concepts: world.concepts.iter().take(2).cloned().collect(),
        items_each: 4,
        from: "2026-09-14".parse()?,
        due: "2026-09-18".parse()?,
    })
}

fn one(text: &str) -> Text {
    Text::one(Language::first(), text)
}

fn own_exercises(world: &World) -> Outcomes<Vec<OwnExercise>> {
    let es = Language::tagged("es")?;
    let text = |text: &str| one(text).with(es, format!("{text} ñ"));
    let made = OwnExercise {
        concept: world.concepts[0].clone(),
        level: Level::Expected,
        kind: OwnKind::Fraction,
        question: text("What is {1/4} + {2/4}?\nWrite a fraction."),
        choices: Vec::new(),
        answer: "3/4".to_owned(),
        form: OwnForm::Any,
        unit: None,
        hints: vec![text("Fourths stay fourths.")],
        steps: vec![one("1 + 2 = 3")],
        wrong: vec![OwnWrong {
            answer: "3/8".to_owned(),
            say: text("Only the tops are added."),
        }],
    };
    let chosen = OwnExercise {
        kind: OwnKind::SeveralChoices,
        choices: vec![one("{2/4}"), one("{1/3}"), one("{3/6}")],
        question: one("Which are equal to one half?"),
        answer: "0 2".to_owned(),
        wrong: Vec::new(),
        ..made.clone()
    };
    Ok(vec![made, chosen])
}

fn pack(world: &World) -> Outcomes<ClassPack> {
    let es = Language::tagged("es")?;
    Ok(ClassPack {
        format: CLASS_PACK_FORMAT,
        class_id: world.class_id.clone(),
        version: 3,
        issued_on: "2026-09-13".parse()?,
        title: "Room 12 — “mathematics” ≤ ñ".to_owned(),
        year: SchoolYear::new(
            world.first_day,
            world.last_day,
            BTreeSet::from([1, 2, 3, 4, 5]),
            BTreeSet::from(["2026-11-26".parse()?]),
        )?,
        rotation: world
            .concepts
            .chunks(6)
            .map(<[ConceptId]>::to_vec)
            .collect(),
        taught_from: BTreeMap::from([(world.concepts[0].clone(), "2026-09-07".parse()?)]),
        concepts: world
            .concepts
            .iter()
            .map(|id| PackConcept {
                id: id.clone(),
                strand: Strand::Fractions,
                grade: 4,
                title: one(&format!("Title of {id}")).with(es, format!("Título de {id}")),
                i_can: one("I can do it.").with(es, "Puedo hacerlo."),
                prerequisites: Vec::new(),
            })
            .collect(),
        assignments: vec![assignment(world, "for-all")?],
        sealed: seal_personal(&sealed_for(world)?, &world.teacher)?,
        exercises: own_exercises(world)?,
        practice: PracticeRules {
            minutes_least: 5,
            minutes_most: 15,
            ..PracticeRules::USUAL
        },
        class_recipient: world.class.recipient(),
        class_folder: true,
        teacher_key: world.teacher.public(),
    })
}

/// Numbers that do not compress (the mixer of MurmurHash3).
fn mixed(number: u32) -> usize {
    let mut bits = number.wrapping_mul(0x9e37_79b9);
    bits = (bits ^ (bits >> 16)).wrapping_mul(0x85eb_ca6b);
    bits = (bits ^ (bits >> 13)).wrapping_mul(0xc2b2_ae35);
    (bits >> 16) as usize
}

/// A full year: six concepts each school day, practice on each of them.
fn hand_in(world: &World) -> Outcomes<HandIn> {
    let mut check_ins = Vec::new();
    let mut practice = Vec::new();
    let mut sequence = 0;
    for day in 0..180_usize {
        let date = world.first_day + Days::new(day as u64 * 3 / 2);
        for place in 0..6 {
            let concept = world.concepts[(day * 6 + place) % world.concepts.len()].clone();
            sequence += 1;
            check_ins.push(CheckIn {
                device: world.device.clone(),
                date,
                concept: concept.clone(),
                confidence: Some(Said {
                    at: sequence,
                    value: Confidence::ALL.get(mixed(sequence) % 5).copied(),
                }),
                outcome: [Some(Outcome::Right), Some(Outcome::Wrong), None]
                    [mixed(sequence + 1) % 3]
                    .map(|outcome| Said {
                        at: sequence,
                        value: Some(outcome),
                    }),
            });
            sequence += 1;
            practice.push(Practice {
                device: world.device.clone(),
                date,
                concept,
                sequence,
                answers: vec![AnswerCount {
                    confidence: Some(Confidence::OnMyOwn),
                    alone: u32::try_from(mixed(sequence) % 6)?,
                    with_help: u32::try_from(mixed(sequence + 1) % 4)?,
                    wrong: u32::try_from(mixed(sequence + 2) % 3)?,
                }],
                misconceptions: BTreeMap::from([(
                    MisconceptionCode::new("added-denominators")?,
                    1,
                )]),
            });
        }
    }
    Ok(HandIn {
        format: HAND_IN_FORMAT,
        class_id: world.class_id.clone(),
        seat: world.seat.clone(),
        device: world.device.clone(),
        revision: 40,
        made_on: "2027-05-28".parse()?,
        pack_version: 3,
        check_ins,
        practice,
        device_key: world.student.public(),
        device_recipient: world.student_identity.recipient(),
    })
}

fn transfer(world: &World, hand_in: &HandIn) -> Outcomes<Transfer> {
    Ok(Transfer {
        format: TRANSFER_FORMAT,
        teacher_key: world.teacher.public(),
        made_on: hand_in.made_on,
        name: None,
        hand_ins: vec![hand_in.clone()],
        paper: vec![PaperEntry {
            date: hand_in.made_on,
            concept: ConceptId::new("g4-angle-measure")?,
            confidence: None,
            outcome: Some(Outcome::Right),
        }],
    })
}

fn write(folder: &Path) -> Outcomes<()> {
    let world = world()?;
    let pack_file = sign_pack(&pack(&world)?, &world.teacher)?;
    let hand_in = hand_in(&world)?;
    let record = hand_in.record();
    let transfer = transfer(&world, &hand_in)?;
    let made_on = hand_in.made_on;
    let sealed = seal_hand_in(hand_in, &world.student, &world.class.recipient())?;
    let carry = CarryFile {
        format: CARRY_FORMAT,
        class_id: world.class_id.clone(),
        seat: world.seat.clone(),
        from_device: world.device.clone(),
        made_on,
        signing_seed: world.student.to_text(),
        sealing_identity: world.student_identity.to_text(),
        class_pack: CarryFile::class_pack_text(&pack_file),
        check_ins: record.check_ins().to_vec(),
        practice: record.practice().to_vec(),
        store: CarriedStore {
            version: 1,
            body: serde_json::json!({ "minutes": 10 }),
        },
    };
    fs::create_dir_all(folder)?;
    fs::write(folder.join("class.sfclass"), &pack_file)?;
    fs::write(folder.join("year.sfhandin"), &sealed)?;
    fs::write(folder.join("mine.sfcarry"), seal_carry(&carry, PASSPHRASE)?)?;
    let transfer = seal_transfer(&transfer, &world.teacher, PASSPHRASE)?;
    fs::write(folder.join("one.sftransfer"), transfer)?;
    let store = folder.join("store.sqlite");
    surefoot_store::DeskStore::open(&folder.join("desk.sqlite"), Durability::Full)?
        .copy_into(&store)?;
    let backup = BackupFile {
        kind: BackupKind::Desk,
        id: "desk".to_owned(),
        store: fs::read(&store)?,
    };
    fs::write(
        folder.join("my.sfbackup"),
        seal_backup(&backup, PASSPHRASE)?,
    )?;
    fs::write(
        folder.join("class-identity.txt"),
        world.class.to_identity_file(),
    )?;
    fs::write(
        folder.join("student-identity.txt"),
        format!("{}\n", world.student_identity.to_text()),
    )?;
    let slip = make_seat_code(&world.class_signs, &world.seat).ok_or("no seat code")?;
    let pin_signs = pin_signs_of(&world.teacher, &world.class_id, &world.seat);
    let facts = serde_json::json!({
        "class_id": world.class_id,
        "seat": world.seat,
        "device": world.device,
        "slip": slip,
        "pin_signs": pin_signs.in_groups(),
        "signing_seed": world.teacher.to_text(),
        "fingerprint": fingerprint(&world.student.public(), &world.device),
        "class_recipient": world.class.recipient(),
        "check_ins": record.check_ins().len(),
        "practice": record.practice().len(),
        "passphrase": PASSPHRASE,
    });
    fs::write(folder.join("facts.json"), facts.to_string())?;
    Ok(())
}

fn read(folder: &Path, file: &str) -> Outcomes<()> {
    let world = world()?;
    let identity = SealingIdentity::from_identity_file(&fs::read_to_string(
        folder.join("class-identity.txt"),
    )?)?;
    let concepts = world.concepts.iter().cloned().collect();
    let checked =
        open_hand_in(fs::File::open(folder.join(file))?, [&identity]).and_then(|opened| {
            let keys = BTreeSet::from([opened.device_key().clone()]);
            let seats = BTreeMap::from([(world.seat.clone(), keys)]);
            let facts = HandInExpectations {
                class_id: &world.class_id,
                first_day: world.first_day,
                last_day: world.last_day,
                seats: &seats,
                concepts: &concepts,
            };
            opened.check(&facts, world.last_day)
        });
    let answer = match checked {
        Ok(Checked::Accepted(checked)) => serde_json::json!({
            "taken": serde_json::from_slice::<serde_json::Value>(checked.json())?,
            "flags": checked.flags(),
        }),
        Ok(Checked::Quarantined(_)) => serde_json::json!({ "quarantined": true }),
        Err(refusal) => serde_json::json!({ "refused": refusal }),
    };
    println!("{answer}");
    Ok(())
}

fn backup(folder: &Path, file: &str) -> Outcomes<()> {
    let opened = open_backup(fs::File::open(folder.join(file))?, PASSPHRASE);
    let answer = match opened {
        Ok(backup) => {
            fs::write(folder.join("opened.sqlite"), &backup.store)?;
            serde_json::json!({ "id": backup.id, "kind": format!("{:?}", backup.kind) })
        }
        Err(refusal) => serde_json::json!({ "refused": refusal }),
    };
    println!("{answer}");
    Ok(())
}

fn main() -> Outcomes<()> {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    match arguments.iter().map(String::as_str).collect::<Vec<_>>()[..] {
        ["write", folder] => write(Path::new(folder)),
        ["read", folder, file] => read(Path::new(folder), file),
        ["backup", folder, file] => backup(Path::new(folder), file),
        _ => Err("exchange_fixture write FOLDER | read FOLDER FILE | backup FOLDER FILE".into()),
    }
}
