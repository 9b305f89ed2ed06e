//! What one seat sends reaches the rows of that seat and no other, and no call fails because of it.

use crate::reports::values_for;
use crate::support::{Device, date};
use proptest::prelude::*;
use proptest::strategy::ValueTree as _;
use proptest::test_runner::TestRunner;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use surefoot_app::reports::REPORTS;
use surefoot_app::{
    Assign, CallError, ClassConcept, ClassId, CreateClass, DeviceDecision, DeviceOfSeat,
    EntryAsked, GroupBoard, GroupPageAsked, JournalAsked, Language, PrintOptions, PrintPaper,
    ReportAsked, SeatId, TalkAsked,
};
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_desk::{NewAssignment, NewClass, SeatDeviceState, TalkDay, Verdict};
use surefoot_exchange::{
    HAND_IN_FORMAT, HandIn, Refusal, SealingIdentity, SigningKey, seal_hand_in,
};
use surefoot_exercises::has_misconception;
use surefoot_record::{
    AnswerCount, CheckIn, CheckInSource, ClassId as Class, DeviceId, Field, MisconceptionCode,
    Practice, Said, SeatToken,
};
use surefoot_store::desk::DeviceState;
use surefoot_store::{DeskStore, Durability};

const TODAY: &str = "2026-11-25";
/// The most of a count in an entry.
const MOST: u32 = 500;

struct Room {
    desk: Device,
    class: String,
    concepts: Vec<String>,
}

/// A device that hands in for a seat, with keys of its own choice.
#[derive(Clone)]
struct Sender {
    seat: u32,
    device: DeviceId,
    key: SigningKey,
    revision: u32,
}

impl Sender {
    fn new(seat: u32, device: u8, key: u8) -> Self {
        Self {
            seat,
            device: DeviceId::from_bytes(&[device; 16]),
            key: SigningKey::from_seed(&[key; 32]),
            revision: 0,
        }
    }
}

impl Room {
    /// Seats 1 to `seats`, of whom the odd ones rated low.
    fn with_seats(seats: u32) -> Self {
        let desk = Device::on(TODAY);
        let new = NewClass {
            title: "Room 8 (invented)".into(),
            names: (1..=seats).map(|n| format!("Name{n}x")).collect(),
            year: crate::support::school_year(),
            grades: vec![4],
            rotation_days: 10,
            concepts_a_day: 4,
        };
        let class = desk.app.desk.create_class(CreateClass { class: new });
        let class = class.unwrap().id;
        let mut room = Self {
            desk,
            class,
            concepts: Vec::new(),
        };
        let board = room.desk.app.desk.board(room.id()).unwrap();
        room.concepts = board.rows.into_iter().map(|r| r.concept.id).collect();
        for seat in 2..=seats {
            let mut sender = Sender::new(seat, u8::try_from(seat).unwrap(), 200);
            let confidence = if seat % 2 == 1 {
                Confidence::NotYet
            } else {
                Confidence::OnMyOwn
            };
            let rated: Vec<CheckIn> = (room.concepts.iter().take(8))
                .map(|concept| check_in(&sender.device, "2026-09-14", concept, 1, confidence))
                .collect();
            assert_eq!(room.send(&mut sender, rated, Vec::new()), Verdict::New);
        }
        room
    }

    fn id(&self) -> ClassId {
        ClassId {
            class: self.class.clone(),
        }
    }

    fn store(&self) -> DeskStore {
        let path = self.desk.folder.path().join("data/own/desk.sqlite");
        assert!(path.is_file(), "{path:?}");
        DeskStore::open(&path, Durability::Relaxed).unwrap()
    }

    fn sealed(
        &self,
        from: &mut Sender,
        check_ins: Vec<CheckIn>,
        practice: Vec<Practice>,
    ) -> Vec<u8> {
        from.revision += 1;
        let store = self.store();
        let row = store.class(&self.class).unwrap();
        let seats = store.seats(&self.class).unwrap();
        let seat = seats.iter().find(|seat| seat.number == from.seat).unwrap();
        let hand_in = HandIn {
            format: HAND_IN_FORMAT,
            class_id: Class::new(row.id).unwrap(),
            seat: SeatToken::new(seat.token.clone()).unwrap(),
            device: from.device.clone(),
            revision: from.revision,
            made_on: date(TODAY),
            pack_version: 1,
            check_ins,
            practice,
            device_key: from.key.public(),
            device_recipient: SealingIdentity::from_bytes(&[9; 32]).unwrap().recipient(),
        };
        let class = SealingIdentity::from_identity_file(&row.sealing_identity).unwrap();
        seal_hand_in(hand_in, &from.key, &class.recipient()).unwrap()
    }

    fn import(&self, files: &[Vec<u8>]) -> Vec<Verdict> {
        let inbox = tempfile::tempdir().unwrap();
        for (at, file) in files.iter().enumerate() {
            std::fs::write(inbox.path().join(format!("{at:03}.sfhandin")), file).unwrap();
        }
        let report = self.desk.import(inbox.path());
        report.files.into_iter().map(|file| file.verdict).collect()
    }

    fn send(&self, from: &mut Sender, check_ins: Vec<CheckIn>, practice: Vec<Practice>) -> Verdict {
        let file = self.sealed(from, check_ins, practice);
        self.import(&[file]).remove(0)
    }

    fn devices(&self, seat: u32) -> Vec<(i64, SeatDeviceState)> {
        let setup = self.desk.app.desk.class_setup(self.id()).unwrap();
        let seat = setup.seats.into_iter().find(|one| one.number == seat);
        (seat.unwrap().devices.into_iter())
            .map(|d| (d.id, d.state))
            .collect()
    }

    fn decide(&self, seat: u32, device: i64, accept: Option<bool>) -> bool {
        let decision = DeviceDecision {
            class: self.class.clone(),
            seat,
            device,
            accept,
        };
        self.desk.app.desk.decide_device(decision).is_ok()
    }

    fn discard(&self, seat: u32, device: i64) -> bool {
        let of = DeviceOfSeat {
            class: self.class.clone(),
            seat,
            device,
        };
        self.desk.app.desk.discard_device(of).is_ok()
    }

    fn reports(&self, seat: u32) -> u32 {
        let of = SeatId {
            class: self.class.clone(),
            seat,
        };
        self.desk.app.desk.seat_holdings(of).unwrap().reports
    }

    /// Every row of reports of the other seats.
    fn others(&self) -> String {
        let store = self.store();
        let mut rows = BTreeSet::new();
        store
            .each_check_in(&self.class, None, |row, said| {
                if let (true, CheckInSource::Device(rated, marked)) = (row.seat != 1, said) {
                    rows.insert(format!("{row:?} {rated:?} {marked:?}"));
                }
            })
            .unwrap();
        for row in store.practice(&self.class).unwrap() {
            if row.seat != 1 {
                rows.insert(format!("{row:?}"));
            }
        }
        let devices = store.devices(&self.class).unwrap();
        let others: Vec<_> = devices.iter().filter(|d| d.seat != 1).collect();
        assert!(others.iter().all(|d| d.state == DeviceState::Accepted));
        format!("{rows:?} {others:?}")
    }

    /// Makes every look and every print of the class; fails if one fails.
    fn look_at_everything(&self) {
        let (app, class) = (&self.desk.app.desk, self.class.clone());
        let concept = self.concepts[0].clone();
        app.class_setup(self.id()).unwrap();
        app.imports(JournalAsked { before: None }).unwrap();
        let board = app.board(self.id()).unwrap();
        for row in &board.rows {
            for found in &row.misconceptions {
                assert!(
                    found.code == "other" || has_misconception(&row.concept.id, &found.code),
                    "{found:?}"
                );
            }
        }
        app.comparison(self.id()).unwrap();
        app.groups_desk(self.id()).unwrap();
        app.assignments(self.id()).unwrap();
        let group = vec![1, 2];
        app.group_board(GroupBoard {
            class: class.clone(),
            group: group.clone(),
        })
        .unwrap();
        app.concept_reports(ClassConcept {
            class: class.clone(),
            concept: concept.clone(),
        })
        .unwrap();
        app.group_page(GroupPageAsked {
            class: class.clone(),
            concept: concept.clone(),
            seats: group.clone(),
        })
        .unwrap();
        app.entry_day(EntryAsked {
            class: class.clone(),
            date: None,
        })
        .unwrap();
        for seat in [1, 2] {
            let of = SeatId {
                class: class.clone(),
                seat,
            };
            app.student_page(of.clone()).unwrap();
            app.seat_holdings(of).unwrap();
        }
        let talk = TalkAsked {
            class: class.clone(),
            minutes: 5,
            day: TalkDay::First,
        };
        app.talk(talk).unwrap();
        app.class_now(self.id()).unwrap();
        app.concept_to_show(ClassConcept {
            class: class.clone(),
            concept: concept.clone(),
        })
        .unwrap();
        for report in REPORTS {
            let asked = ReportAsked {
                class: class.clone(),
                report: report.name.into(),
                values: values_for(report.fields, &concept, 1, &[1, 2]),
                options: PrintOptions {
                    language: Language::first(),
                    paper: PrintPaper::Letter,
                    roomy: true,
                },
            };
            if let Err(error) = app.print(asked) {
                let field = match &error {
                    CallError::Invalid { field, .. } => Some(*field),
                    _ => None,
                };
                assert_eq!(field, Some(Field::ShareTable), "{}: {error:?}", report.name);
            }
        }
        self.desk.pack_of(&class);
    }
}

fn check_in(device: &DeviceId, on: &str, concept: &str, at: u32, rated: Confidence) -> CheckIn {
    CheckIn {
        device: device.clone(),
        date: date(on),
        concept: ConceptId::new(concept).unwrap(),
        confidence: Some(Said {
            at,
            value: Some(rated),
        }),
        outcome: Some(Said {
            at,
            value: Some(Outcome::Wrong),
        }),
    }
}

/// Entries of any device, date and concept, with sequences and counts up to the bounds.
fn entries(concepts: Vec<String>) -> impl Strategy<Value = (Vec<CheckIn>, Vec<Practice>)> {
    let date = prop_oneof![
        Just("2026-09-14"),
        Just("2026-11-25"),
        Just("1999-12-31"),
        Just("2099-01-01")
    ];
    let concept = prop_oneof![
        4 => prop::sample::select(concepts),
        1 => Just("no-such-concept".to_owned())
    ];
    let at = prop_oneof![
        Just(1_u32),
        Just(u32::MAX),
        any::<u32>().prop_map(|at| at.max(1))
    ];
    let key = (any::<u8>(), date, concept, at);
    let rated = (key.clone(), 0_u8..4).prop_map(|((device, on, concept, at), rated)| {
        let device = DeviceId::from_bytes(&[device; 16]);
        check_in(&device, on, &concept, at, rated.try_into().unwrap())
    });
    let code = prop_oneof![
        Just("ask-mia-whom-she-copies-from"),
        Just("other"),
        Just("only-one-factor-found")
    ];
    let count = || prop_oneof![Just(0), Just(MOST), 0..=MOST];
    let practised = (
        key,
        count(),
        count(),
        prop::collection::btree_map(code, 1..=MOST, 0..3),
    )
        .prop_map(
            |((device, on, concept, at), alone, wrong, codes)| Practice {
                device: DeviceId::from_bytes(&[device; 16]),
                date: crate::support::date(on),
                concept: ConceptId::new(concept).unwrap(),
                sequence: at,
                answers: [None, Some(Confidence::NotYet), Some(Confidence::CouldTeach)]
                    .map(|confidence| AnswerCount {
                        confidence,
                        alone,
                        with_help: MOST,
                        wrong,
                    })
                    .to_vec(),
                misconceptions: codes
                    .into_iter()
                    .map(|(code, times)| (MisconceptionCode::new(code).unwrap(), times))
                    .collect(),
            },
        );
    (
        prop::collection::vec(rated, 0..400),
        prop::collection::vec(practised, 0..400),
    )
}

#[test]
fn every_call_answers_and_the_other_seats_keep_their_numbers() {
    let room = Room::with_seats(12);
    let assignment = NewAssignment {
        concepts: vec![room.concepts[0].clone()],
        items_each: 3,
        from: date(TODAY),
        due: date("2026-12-01"),
        seats: vec![1],
    };
    (room.desk.app.desk)
        .assign(Assign {
            class: room.class.clone(),
            assignment,
        })
        .unwrap();
    let before = room.others();
    let mut runner = TestRunner::deterministic();
    let any = entries(room.concepts.clone());
    for round in 0..6_u8 {
        let mut files = Vec::new();
        for at in 0..8_u8 {
            // Device ids of others, own devices, own keys and foreign ones.
            let (device, key) = (at % 4, if at % 3 == 0 { 7 } else { at + round });
            let mut sender = Sender::new(1, device, key);
            sender.revision = u32::from(round) * 8 + u32::from(at);
            let (check_ins, practice) = any.new_tree(&mut runner).unwrap().current();
            files.push(room.sealed(&mut sender, check_ins, practice));
        }
        for verdict in room.import(&files) {
            assert!(
                !matches!(&verdict, Verdict::Refused { refusal } if *refusal != Refusal::SeatFull),
                "{verdict:?}"
            );
        }
        // The teacher accepts and rejects without a look.
        for (place, (device, _)) in room.devices(1).into_iter().enumerate() {
            room.decide(
                1,
                device,
                [Some(true), Some(false), None][(place + usize::from(round)) % 3],
            );
        }
        assert_eq!(room.others(), before);
        room.look_at_everything();
    }
}

#[test]
fn five_files_of_the_highest_counts_fill_a_seat_and_overflow_nothing() {
    let room = Room::with_seats(3);
    let mut sender = Sender::new(1, 1, 7);
    let answers: Vec<AnswerCount> = (0..4_u8)
        .map(|confidence| AnswerCount {
            confidence: Some(confidence.try_into().unwrap()),
            alone: MOST,
            with_help: MOST,
            wrong: MOST,
        })
        .collect();
    let mut verdicts = Vec::new();
    for file in 0..5_u8 {
        let practice = (0..15_000_u32)
            .map(|n| {
                let mut id = [file; 16];
                id[..4].copy_from_slice(&n.to_be_bytes());
                Practice {
                    device: DeviceId::from_bytes(&id),
                    date: date("2026-09-14"),
                    concept: ConceptId::new(room.concepts[0].clone()).unwrap(),
                    sequence: 1,
                    answers: answers.clone(),
                    misconceptions: BTreeMap::new(),
                }
            })
            .collect();
        verdicts.push(room.send(&mut sender, Vec::new(), practice));
    }
    let full = Verdict::Refused {
        refusal: Refusal::SeatFull,
    };
    assert_eq!(verdicts[..2], [Verdict::New, Verdict::Updated]);
    assert_eq!(verdicts[2..], [full.clone(), full.clone(), full]);
    room.look_at_everything();
}

#[test]
fn a_forged_device_id_is_another_device_and_goes_with_what_it_brought() {
    let room = Room::with_seats(3);
    let concepts = room.concepts.clone();
    let of = |sender: &Sender, many: usize, at: u32| -> Vec<CheckIn> {
        (concepts.iter().take(many))
            .map(|c| check_in(&sender.device, "2026-09-14", c, at, Confidence::OnMyOwn))
            .collect()
    };
    let (mut genuine, mut forger) = (Sender::new(1, 1, 7), Sender::new(1, 1, 8));
    let four = of(&genuine, 4, 1);
    assert_eq!(room.send(&mut genuine, four, vec![]), Verdict::New);
    let flood = of(&forger, 20, u32::MAX);
    assert_eq!(
        room.send(&mut forger, flood.clone(), vec![]),
        Verdict::Quarantined
    );
    // The same device id for another seat too: no two devices share a number.
    let mut elsewhere = Sender::new(2, 1, 8);
    let other = of(&elsewhere, 2, 1);
    assert_eq!(
        room.send(&mut elsewhere, other, vec![]),
        Verdict::Quarantined
    );
    let all: Vec<i64> = [1, 2, 3]
        .iter()
        .flat_map(|s| room.devices(*s))
        .map(|d| d.0)
        .collect();
    assert_eq!(all.iter().collect::<BTreeSet<_>>().len(), all.len());
    assert_eq!(room.reports(1), 4);
    let [(first, _), (forged, _)] = room.devices(1)[..] else {
        panic!("two devices");
    };
    assert!(room.decide(1, forged, Some(true)));
    assert_eq!(room.reports(1), 4 + 20);
    assert!(room.decide(1, forged, Some(false)));
    assert_eq!(room.reports(1), 4);
    // The first device goes too, and then no key is taken unasked.
    assert!(room.decide(1, first, Some(false)));
    assert_eq!(room.reports(1), 0);
    let mut next = Sender::new(1, 3, 9);
    let entries = of(&next, 5, 1);
    assert_eq!(room.send(&mut next, entries, vec![]), Verdict::Quarantined);
    assert!(room.decide(1, first, Some(true)));
    assert_eq!(room.reports(1), 4);
}

#[test]
fn eight_devices_count_eight_wait_and_discarding_makes_room() {
    let room = Room::with_seats(3);
    let concept = room.concepts[0].clone();
    let entry = |sender: &Sender| {
        vec![check_in(
            &sender.device,
            "2026-09-14",
            &concept,
            1,
            Confidence::NotYet,
        )]
    };
    let send = |sender: &mut Sender| {
        let entries = entry(sender);
        room.send(sender, entries, vec![])
    };
    // With an accepted key, eight devices count and the ninth waits.
    for device in 1..=8 {
        assert_eq!(send(&mut Sender::new(1, device, 7)), Verdict::New);
    }
    assert_eq!(send(&mut Sender::new(1, 9, 7)), Verdict::Quarantined);
    let ninth = room.devices(1)[8].0;
    assert!(!room.decide(1, ninth, Some(true)), "eight count");
    // Seven more wait, and no other.
    for key in 10..17 {
        assert_eq!(send(&mut Sender::new(1, 1, key)), Verdict::Quarantined);
    }
    let full = Verdict::Refused {
        refusal: Refusal::SeatFull,
    };
    let mut late = Sender::new(1, 2, 30);
    assert_eq!(send(&mut late), full);
    assert_eq!(room.devices(1).len(), 16);
    // Those that count or wait still hand in.
    let mut again = Sender::new(1, 1, 10);
    again.revision = 5;
    assert_eq!(send(&mut again), Verdict::Quarantined);
    let mut counts = Sender::new(1, 1, 7);
    counts.revision = 5;
    assert_eq!(send(&mut counts), Verdict::Updated);
    assert!(room.discard(1, ninth));
    assert!(!room.discard(1, room.devices(1)[0].0), "it counts");
    assert_eq!(send(&mut late), Verdict::Quarantined);
    // Of a device that waits, the two newest hand-ins are kept.
    for _ in 0..3 {
        assert_eq!(send(&mut late), Verdict::Quarantined);
    }
    let store = room.store();
    let last = room.devices(1).last().unwrap().0;
    let kept = store.hand_ins(&room.class, 1).unwrap();
    let revisions: Vec<u32> = (kept.iter().filter(|k| k.device == last))
        .map(|k| k.revision)
        .collect();
    assert_eq!(revisions, [late.revision - 1, late.revision]);
    assert!(Path::new(&room.desk.pack_of(&room.class)).is_file());
}
