//! One list of what is missing in a class.

use super::{Desk, date};
use crate::{
    DeskError, EntryMade, EntryValue, Import, LackingKind, WhoHasNot, close_day, decide_device,
    join_slips, make_class_pack, make_entry, who_has_not,
};
use surefoot_catalogue::Language;
use surefoot_catalogue::rating::Confidence;
use surefoot_exchange::{Refusal, open_hand_in};
use surefoot_store::{Durability, StudentStore};
use surefoot_student::NewStudent;

const FIRST: &str = "2026-09-01";

struct Class {
    desk: Desk,
    folder: tempfile::TempDir,
    pack: Vec<u8>,
}

impl Class {
    fn new(seats: usize) -> Self {
        let desk = Desk::with_seats(seats);
        let made = make_class_pack(&desk.store, &desk.open(), date(FIRST)).unwrap();
        Self {
            desk,
            folder: tempfile::tempdir().unwrap(),
            pack: made.bytes,
        }
    }

    fn join(&self, seat: u32, device: u8) -> StudentStore {
        let path = self.folder.path().join(format!("{device}.sqlite"));
        let store = StudentStore::open(&path, Durability::Relaxed).unwrap();
        let slips = join_slips(&self.desk.open()).unwrap();
        let slip = slips.iter().find(|slip| slip.seat == seat).unwrap();
        let pack = surefoot_student::read_first_pack(self.pack.as_slice()).unwrap();
        let new = NewStudent {
            device: [device; 16],
            signing_seed: [device; 32],
            sealing_seed: [device; 32],
            seat_code: &slip.code,
            nickname: "Otter",
            avatar: "otter",
            language: Language::first(),
        };
        surefoot_student::join(&store, &pack, date(FIRST), &new).unwrap();
        store
    }

    fn sealed(store: &StudentStore, on: &str) -> Vec<u8> {
        let joined = surefoot_student::joined(store).unwrap();
        let made = surefoot_student::make_hand_in(store, &joined, date(on), &[1; 4]).unwrap();
        surefoot_student::note_hand_in(store, &made).unwrap();
        made.bytes
    }

    fn import(&self, name: &str, bytes: &[u8], on: &str) {
        let import = Import::begin(&self.desk.store, date(on)).unwrap();
        let opened = open_hand_in(bytes, &import.identities());
        import.take(name, opened).unwrap();
        import.end(false).unwrap();
    }

    fn hand_in(&self, store: &StudentStore, on: &str) {
        self.import(&format!("{on}.sfhandin"), &Self::sealed(store, on), on);
    }

    fn list(&self, school_days: usize, on: &str) -> WhoHasNot {
        let class = self.desk.open();
        who_has_not(&self.desk.store, &class, school_days, date(on)).unwrap()
    }

    /// The seats that never handed in.
    fn not_joined(&self, on: &str) -> Vec<u32> {
        let list = self.list(5, on).not_joined;
        list.iter().map(|one| one.seat).collect()
    }

    /// Seat and kind of each line.
    fn kinds(&self, on: &str) -> Vec<(Option<u32>, &'static str)> {
        let kind = |what: &LackingKind| match what {
            LackingKind::Quarantined { .. } => "quarantined",
            LackingKind::Damaged { .. } => "damaged",
            LackingKind::DamagedOfNobody { .. } => "of nobody",
            LackingKind::Late { .. } => "late",
            LackingKind::OldPack { .. } => "old pack",
            LackingKind::PackWithNobody { .. } => "pack with nobody",
        };
        let list = self.list(5, on).lacking;
        list.iter().map(|one| (one.seat, kind(&one.what))).collect()
    }
}

#[test]
fn before_the_first_pack_nobody_is_waited_for() {
    let desk = Desk::with_seats(3);
    let list = who_has_not(&desk.store, &desk.open(), 5, date(FIRST)).unwrap();
    assert_eq!((list.pack_version, list.lacking.len()), (0, 0));
    assert!(list.not_joined.is_empty());
    for days in [0, 41] {
        let refused = who_has_not(&desk.store, &desk.open(), days, date(FIRST));
        assert!(matches!(refused, Err(DeskError::Invalid { .. })));
    }
}

#[test]
fn a_seat_is_listed_once_its_newest_hand_in_is_old_enough() {
    let class = Class::new(3);
    let tablet = class.join(1, 1);
    class.hand_in(&tablet, "2026-09-04");
    // The pack is of Tuesday 1 September: from Wednesday to Tuesday are five school days.
    for (on, seats) in [
        (FIRST, &[][..]),
        ("2026-09-08", &[]),
        ("2026-09-09", &[2, 3]),
    ] {
        assert_eq!(class.not_joined(on), seats, "{on}");
    }
    assert_eq!(class.kinds("2026-09-09"), []);
    // Seat 3 works on paper.
    let typed = EntryMade {
        seat: 3,
        concept: class.desk.concept(0),
        value: EntryValue::Rating {
            rating: Some(Confidence::NotYet),
        },
    };
    let today = date("2026-09-10");
    let open = class.desk.open();
    make_entry(&class.desk.store, &open, date("2026-09-09"), &typed, today).unwrap();
    assert_eq!(class.not_joined("2026-09-11"), [2]);
    // Friday 4 September: Monday to Friday of the next week are five school days, today is not
    // over.
    let late = |on: &str| {
        let list = class.list(5, on).lacking;
        list.into_iter().find_map(|one| match one.what {
            LackingKind::Late {
                last_on,
                school_days,
            } => Some((one.seat, one.name, last_on, school_days)),
            _ => None,
        })
    };
    assert_eq!(late("2026-09-11"), None);
    let expected = (Some(1), Some("A1".into()), date("2026-09-04"), 5);
    assert_eq!(late("2026-09-14"), Some(expected));
    // A day without school is no day to hand in on.
    close_day(
        &class.desk.store,
        &class.desk.class,
        date("2026-09-08"),
        true,
    )
    .unwrap();
    assert_eq!(late("2026-09-14"), None);
    assert_eq!(class.list(4, "2026-09-14").school_days, 4);
    // A hand-in with a clock far ahead counts from the day of its import.
    class.import(
        "b.sfhandin",
        &Class::sealed(&tablet, "2027-01-01"),
        "2026-09-15",
    );
    assert_eq!(late("2026-09-21"), None);
    assert!(late("2026-09-24").is_some());
}

#[test]
fn a_device_with_an_older_pack_is_listed_until_it_hands_in_with_the_newest() {
    let class = Class::new(1);
    let tablet = class.join(1, 1);
    class.hand_in(&tablet, "2026-09-02");
    assert_eq!(class.kinds("2026-09-02"), []);
    close_day(
        &class.desk.store,
        &class.desk.class,
        date("2026-09-03"),
        true,
    )
    .unwrap();
    let second = make_class_pack(&class.desk.store, &class.desk.open(), date("2026-09-03"));
    let third = make_class_pack(&class.desk.store, &class.desk.open(), date("2026-09-03"));
    let old = |class: &Class| {
        let list = class.list(5, "2026-09-04").lacking;
        list.into_iter().find_map(|one| match one.what {
            LackingKind::OldPack {
                version,
                newest,
                other_days,
                ..
            } => Some((version, newest, other_days)),
            _ => None,
        })
    };
    assert_eq!(old(&class), Some((1, 3, true)));
    // The second and the third have the same content.
    for (pack, expected) in [(second, None), (third, None)] {
        let joined = surefoot_student::joined(&tablet).unwrap();
        let bytes = pack.unwrap().bytes;
        let today = date("2026-09-04");
        surefoot_student::take_class_pack(&tablet, &joined, today, bytes.as_slice()).unwrap();
        class.import(
            "n.sfhandin",
            &Class::sealed(&tablet, "2026-09-04"),
            "2026-09-04",
        );
        assert_eq!(old(&class), expected);
    }
}

#[test]
fn a_quarantined_device_is_listed_until_the_teacher_decides() {
    let class = Class::new(1);
    class.hand_in(&class.join(1, 1), "2026-09-02");
    class.hand_in(&class.join(1, 2), "2026-09-03");
    let list = class.list(5, "2026-09-03").lacking;
    let [one] = list.as_slice() else {
        panic!("{list:?}")
    };
    assert_eq!(one.seat, Some(1));
    let LackingKind::Quarantined { hand_ins: 1, .. } = one.what else {
        panic!("{one:?}")
    };
    let (store, open) = (&class.desk.store, class.desk.open());
    let device = store.devices_of(&class.desk.class, 1).unwrap()[1].id;
    decide_device(store, &open, 1, device, Some(false)).unwrap();
    assert_eq!(class.kinds("2026-09-03"), []);
}

#[test]
fn a_damaged_file_is_listed_by_the_seat_of_its_name_until_a_good_one_comes() {
    let class = Class::new(2);
    let (one, two) = (class.join(1, 1), class.join(2, 2));
    class.hand_in(&two, "2026-09-02");
    let good = Class::sealed(&one, "2026-09-02");
    let mut broken = good.clone();
    broken.truncate(good.len() - 20);
    class.import("kept.sfhandin", &good, "2026-09-02");
    assert_eq!(class.kinds("2026-09-02"), []);
    class.import("kept.sfhandin", &broken, "2026-09-03");
    class.import("unknown.sfhandin", &broken, "2026-09-03");
    class.import("unknown.sfhandin", &broken, "2026-09-03");
    assert_eq!(
        class.kinds("2026-09-03"),
        [(Some(1), "damaged"), (None, "of nobody")]
    );
    let list = class.list(5, "2026-09-03").lacking;
    assert!(matches!(
        &list[0].what,
        LackingKind::Damaged { file_name, refusal: Refusal::Damaged, .. }
            if file_name == "kept.sfhandin"
    ));
    // The same file, whole again; and a hand-in of the seat under another name.
    class.import("unknown.sfhandin", &good, "2026-09-04");
    assert_eq!(class.kinds("2026-09-04"), [(None, "of nobody")]);
    class.import(
        "other.sfhandin",
        &Class::sealed(&one, "2026-09-04"),
        "2026-09-04",
    );
    assert_eq!(class.kinds("2026-09-04"), []);
    // After a month it is not missed any more.
    class.import("late.sfhandin", &broken, "2026-09-07");
    let damaged = |on| {
        let kinds = class.kinds(on);
        kinds
            .iter()
            .filter(|(_, kind)| *kind == "of nobody")
            .count()
    };
    assert_eq!([damaged("2026-10-07"), damaged("2026-10-08")], [1, 0]);
}

#[test]
fn a_copy_that_is_spoiled_later_blames_nobody_whatever_its_name() {
    for name in ["A copy.sfhandin", "zz.sfhandin"] {
        let class = Class::new(2);
        let good = Class::sealed(&class.join(1, 1), "2026-09-02");
        let mut files = [(name, &good), ("hand-in-1.sfhandin", &good)];
        // The desk reads them in the order of their names.
        files.sort_by_key(|(name, _)| *name);
        for (name, bytes) in files {
            class.import(name, bytes, "2026-09-02");
        }
        class.import(name, b"spoiled", "2026-09-03");
        assert_eq!(class.kinds("2026-09-03"), [(None, "of nobody")], "{name}");
    }
    // A device that waits for a decision names a seat of its choice.
    let class = Class::new(1);
    class.hand_in(&class.join(1, 1), "2026-09-02");
    let forged = Class::sealed(&class.join(1, 2), "2026-09-02");
    class.import("forged.sfhandin", &forged, "2026-09-02");
    class.import("forged.sfhandin", b"spoiled", "2026-09-03");
    let kinds = class.kinds("2026-09-03");
    assert_eq!(kinds, [(Some(1), "quarantined"), (None, "of nobody")]);
}

#[test]
fn thousands_of_damaged_files_have_one_line() {
    let class = Class::new(1);
    for number in 0..200 {
        class.import(&format!("{number:03}.sfhandin"), b"junk", FIRST);
    }
    let list = class.list(5, FIRST).lacking;
    let [one] = list.as_slice() else {
        panic!("{list:?}")
    };
    assert!(matches!(
        &one.what,
        LackingKind::DamagedOfNobody { files: 200, file_name, .. } if file_name == "199.sfhandin"
    ));
}
