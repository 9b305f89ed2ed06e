//! Own exercises and concepts: imported, in the class pack, practised.

use super::{Desk, date};
use crate::{
    DeskError, Field, Rule, copy_class, import_concepts, import_exercises, make_class_pack,
    own_desk, own_exercise, read_concepts, remove_own_exercise, restore, set_rotation,
    set_taught_from, try_own_exercise, undo_own_import,
};
use surefoot_catalogue::rating::AnswerResult;
use surefoot_catalogue::{Language, Strand};
use surefoot_exchange::{CLASS_PACK_FORMAT, Refusal, open_pack, sign_pack};
use surefoot_exercises::bank::{BankFile, OWN_VERSION};
use surefoot_exercises::{Answer, Response, mark, response_for};
use surefoot_record::Thing;
use surefoot_store::{Durability, StudentStore};
use surefoot_student::practice_views::{OpenExercise, PracticeStep};
use surefoot_student::{self, Joined, NewStudent};

const TODAY: &str = "2026-09-14";

fn csv(lines: &[String]) -> BankFile {
    let mut text = String::from("concept,kind,question,answer,wrong_1,feedback_1\n");
    for line in lines {
        text.push_str(line);
        text.push('\n');
    }
    BankFile {
        name: "own.csv".into(),
        bytes: text.into_bytes(),
    }
}

/// A class with two own exercises for its first concept, and one line that is refused.
fn with_two() -> (Desk, String) {
    let desk = Desk::with_seats(2);
    let concept = desk.concept(0);
    set_taught_from(&desk.store, &desk.class, &concept, Some(date("2026-08-31"))).unwrap();
    let file = csv(&[
        format!("{concept},whole number,What is 11 + 4?,15,7,You took away."),
        format!("{concept},whole number,What is 20 + 4?,24,,"),
        format!("{concept},whole number,What is 20 + 5?,many,,"),
    ]);
    import_exercises(
        &desk.store,
        &desk.class,
        &[file],
        None,
        Language::first(),
        date(TODAY),
    )
    .unwrap();
    (desk, concept)
}

fn join(desk: &Desk, folder: &std::path::Path) -> (StudentStore, Joined) {
    let class = desk.open();
    let made = make_class_pack(&desk.store, &class, date(TODAY)).unwrap();
    let pack = surefoot_student::read_first_pack(made.bytes.as_slice()).unwrap();
    let code = crate::join_slips(&class).unwrap()[0].code.clone();
    let store = StudentStore::open(&folder.join("s.sqlite"), Durability::Relaxed).unwrap();
    surefoot_student::join(
        &store,
        &pack,
        date(TODAY),
        &NewStudent {
            device: [5; 16],
            signing_seed: [6; 32],
            sealing_seed: [7; 32],
            seat_code: &code,
            nickname: "Otter",
            avatar: "otter",
            language: Language::first(),
        },
    )
    .unwrap();
    let joined = surefoot_student::joined(&store).unwrap();
    (store, joined)
}

fn ask(store: &StudentStore, joined: &Joined, concept: &str, on: &str, seed: u64) -> OpenExercise {
    match surefoot_student::practice(store, joined, date(on), Some(concept), false, seed).unwrap() {
        PracticeStep::Exercise(open) => *open,
        other => panic!("{other:?}"),
    }
}

fn is_own(open: &OpenExercise) -> bool {
    open.exercise.contains("-own-")
}

/// Answers the open exercise right.
fn answer(store: &StudentStore, joined: &Joined, open: &OpenExercise, on: &str, seed: u64) {
    let item = if is_own(open) {
        let own = joined.facts.own_of(&open.concept.id);
        own.iter()
            .map(|own| own.item().unwrap())
            .find(|item| item.prompt == open.item.prompt)
            .unwrap()
    } else {
        surefoot_exercises::generate(&open.concept.id, open.level.try_into().unwrap(), seed)
            .unwrap()
    };
    let given = response_for(&item.answer);
    let done =
        surefoot_student::answer(store, joined, date(on), &open.exercise, &given, 20).unwrap();
    assert!(done.right && done.finished);
}

#[test]
fn good_lines_are_stored_and_every_line_is_in_the_import_report() {
    let (desk, concept) = with_two();
    let own = own_desk(&desk.store, &desk.class, Language::first()).unwrap();
    assert_eq!(own.exercises.len(), 2);
    assert!(
        own.exercises
            .iter()
            .all(|line| line.in_rotation && line.concept.id == concept)
    );
    let report = &own.imports[0].files[0];
    assert_eq!(
        report.taken.iter().map(|l| l.line).collect::<Vec<_>>(),
        [2, 3]
    );
    assert_eq!(report.refused[0].line, 4);
    // The same file again adds nothing.
    let again = csv(&[format!("{concept},whole number,What is 20 + 4?,24,,")]);
    import_exercises(
        &desk.store,
        &desk.class,
        &[again],
        None,
        Language::first(),
        date(TODAY),
    )
    .unwrap();
    let own = own_desk(&desk.store, &desk.class, Language::first()).unwrap();
    assert_eq!((own.exercises.len(), own.imports.len()), (2, 2));
    // Undoing the empty import changes nothing; undoing the first one removes all.
    let before = desk.dump();
    let empty = undo_own_import(&desk.store, &desk.class, 2).unwrap();
    let held = undo_own_import(&desk.store, &desk.class, 1).unwrap();
    let own = own_desk(&desk.store, &desk.class, Language::first()).unwrap();
    assert!(own.exercises.is_empty() && own.imports.iter().all(|i| i.undone));
    // All of it can be restored.
    restore(&desk.store, &held).unwrap();
    restore(&desk.store, &empty).unwrap();
    assert_eq!(desk.dump(), before);
    undo_own_import(&desk.store, &desk.class, 1).unwrap();
    assert!(matches!(
        undo_own_import(&desk.store, &desk.class, 1),
        Err(DeskError::NotFound(Thing::Import))
    ));
}

#[test]
fn an_own_exercise_can_be_looked_at_tried_and_taken_away() {
    let (desk, _) = with_two();
    let line = own_desk(&desk.store, &desk.class, Language::first())
        .unwrap()
        .exercises;
    let first = line.iter().find(|l| l.answer == "15").unwrap();
    let page = own_exercise(&desk.store, &desk.class, &first.id, Language::first()).unwrap();
    assert!(!page.item.prompt.is_empty());
    let tried = |text: &str| {
        let response = Response::WholeNumber { text: text.into() };
        try_own_exercise(&desk.store, &desk.class, &first.id, &response)
    };
    assert!(tried("15").unwrap().right);
    let wrong = tried("7").unwrap();
    assert!(!wrong.right && wrong.says.len() == 1);
    assert!(matches!(
        tried("x"),
        Err(DeskError::Invalid {
            field: Field::Answer,
            ..
        })
    ));
    let before = desk.dump();
    let held = remove_own_exercise(&desk.store, &desk.class, &first.id).unwrap();
    assert!(tried("15").is_err());
    let own = own_desk(&desk.store, &desk.class, Language::first()).unwrap();
    assert_eq!(own.exercises.len(), 1);
    restore(&desk.store, &held).unwrap();
    assert_eq!(desk.dump(), before);
    // Restoring it a second time fails.
    assert!(restore(&desk.store, &held).is_err());
}

#[test]
fn own_exercises_travel_and_take_turns_with_the_made_ones() {
    let (desk, concept) = with_two();
    assert!(surefoot_exercises::has_generator(&concept));
    let folder = tempfile::tempdir().unwrap();
    let (store, joined) = join(&desk, folder.path());
    assert_eq!(joined.pack.exercises.len(), 2);
    // An own exercise comes first, then a generated one; each own one once an evening.
    let mut turns = Vec::new();
    let mut shown = std::collections::BTreeSet::new();
    for seed in 0..6 {
        let open = ask(&store, &joined, &concept, TODAY, seed);
        turns.push(is_own(&open));
        if is_own(&open) {
            assert!(open.worked_first.is_none());
            assert!(shown.insert(format!("{:?}", open.item.prompt)));
        }
        // After a new start the same exercise is open.
        assert_eq!(ask(&store, &joined, &concept, TODAY, 99), open);
        answer(&store, &joined, &open, TODAY, seed);
    }
    assert_eq!(turns, [true, false, true, false, false, false]);
    let open = ask(&store, &joined, &concept, "2026-09-15", 7);
    assert!(is_own(&open));
    let answers = store.practice_answers().unwrap();
    let own: Vec<_> = answers
        .iter()
        .filter(|a| a.generator_version == OWN_VERSION)
        .collect();
    assert_eq!(own.len(), 2);
    assert!(
        own.iter()
            .all(|a| a.result == AnswerResult::Alone && a.seed < 1 << 60)
    );
    // The hand-in counts them like other practice of the concept.
    let preview = surefoot_student::hand_in_preview(&store, &joined, date(TODAY)).unwrap();
    assert_eq!(preview.answers, 6);
}

#[test]
fn a_wrong_answer_is_answered_by_the_teachers_words_and_counted_as_no_misconception() {
    let (desk, concept) = with_two();
    let folder = tempfile::tempdir().unwrap();
    let (store, joined) = join(&desk, folder.path());
    let open = ask(&store, &joined, &concept, TODAY, 1);
    let own = joined
        .facts
        .own_of(&concept)
        .iter()
        .find(|own| own.item().unwrap().prompt == open.item.prompt)
        .unwrap();
    let wrong = Response::WholeNumber { text: "7".into() };
    let said =
        surefoot_student::answer(&store, &joined, date(TODAY), &open.exercise, &wrong, 5).unwrap();
    assert!(!said.finished);
    assert_eq!(said.says.len(), own.wrong.len());
    let right = response_for(&own.item().unwrap().answer);
    surefoot_student::answer(&store, &joined, date(TODAY), &open.exercise, &right, 5).unwrap();
    let answers = store.practice_answers().unwrap();
    assert_eq!(answers[0].misconception, None);
    assert_eq!(answers[0].result, AnswerResult::WithHelp);
}

#[test]
fn an_open_own_exercise_that_a_newer_pack_lacks_gives_way() {
    let (desk, concept) = with_two();
    let folder = tempfile::tempdir().unwrap();
    let (store, joined) = join(&desk, folder.path());
    let open = ask(&store, &joined, &concept, TODAY, 1);
    undo_own_import(&desk.store, &desk.class, 1).unwrap();
    let newer = make_class_pack(&desk.store, &desk.open(), date(TODAY)).unwrap();
    surefoot_student::take_class_pack(&store, &joined, date(TODAY), newer.bytes.as_slice())
        .unwrap();
    let joined = surefoot_student::joined(&store).unwrap();
    assert!(matches!(
        surefoot_student::hint(&store, &joined, date(TODAY), &open.exercise),
        Err(surefoot_student::StudentError::NoSuchExercise)
    ));
    let next = ask(&store, &joined, &concept, TODAY, 2);
    assert!(!is_own(&next));
}

#[test]
fn a_concept_without_made_exercises_is_practised_by_own_ones_alone() {
    let desk = Desk::with_seats(1);
    let mut days = desk.open().facts.rotation.days().to_vec();
    let concept = "g6-describe-measuring".to_owned();
    days[0].push(concept.clone());
    set_rotation(&desk.store, &desk.class, days).unwrap();
    set_taught_from(&desk.store, &desk.class, &concept, Some(date("2026-08-31"))).unwrap();
    assert!(!desk.open().facts.has_exercises(&concept));
    let file = csv(&[
        format!("{concept},whole number,How many values?,3,,"),
        format!("{concept},whole number,How many units?,1,,"),
    ]);
    import_exercises(
        &desk.store,
        &desk.class,
        &[file],
        None,
        Language::first(),
        date(TODAY),
    )
    .unwrap();
    let folder = tempfile::tempdir().unwrap();
    let (store, joined) = join(&desk, folder.path());
    assert!(joined.facts.name(&concept, Language::first()).has_exercises);
    let mut prompts = Vec::new();
    for seed in 0..4 {
        let open = ask(&store, &joined, &concept, TODAY, seed);
        assert!(is_own(&open) && open.worked_first.is_none());
        prompts.push(open.item.prompt.clone());
        answer(&store, &joined, &open, TODAY, seed);
    }
    assert_ne!(prompts[0], prompts[1]);
    assert_eq!(prompts[0..2], prompts[2..4]);
}

#[test]
fn a_pack_without_own_exercises_does_not_name_them() {
    let (desk, _) = with_two();
    let with = make_class_pack(&desk.store, &desk.open(), date(TODAY)).unwrap();
    let opened = open_pack(with.bytes.as_slice()).unwrap();
    assert_eq!(opened.content().exercises.len(), 2);
    undo_own_import(&desk.store, &desk.class, 1).unwrap();
    let plain = make_class_pack(&desk.store, &desk.open(), date(TODAY)).unwrap();
    let pack = open_pack(plain.bytes.as_slice()).unwrap();
    let json = serde_json::to_string(pack.content()).unwrap();
    assert!(!json.contains("exercises"));
}

#[test]
fn a_pack_of_another_format_or_with_a_wrong_key_is_not_signed() {
    let (desk, _) = with_two();
    let class = desk.open();
    let made = make_class_pack(&desk.store, &class, date(TODAY)).unwrap();
    let pack = open_pack(made.bytes.as_slice()).unwrap();
    let key = surefoot_exchange::SigningKey::from_seed(&class.row.signing_seed);
    for format in [0, CLASS_PACK_FORMAT + 1] {
        let wrong = surefoot_exchange::ClassPack {
            format,
            ..pack.content().clone()
        };
        assert!(matches!(
            sign_pack(&wrong, &key),
            Err(Refusal::BadContent { .. } | Refusal::NewerFormat { .. })
        ));
    }
    // A tampered exercise, whose key is no number, is refused.
    let mut wrong = pack.content().clone();
    wrong.exercises[0].answer = "many".into();
    assert!(
        matches!(sign_pack(&wrong, &key), Err(Refusal::BadContent { at }) if at == "exercises[0]")
    );
}

#[test]
fn an_own_exercise_makes_the_pack_outdated_and_a_plain_class_keeps_its_stamp() {
    let desk = Desk::with_seats(1);
    make_class_pack(&desk.store, &desk.open(), date(TODAY)).unwrap();
    let outdated = || crate::classes(&desk.store, date(TODAY)).unwrap()[0].pack_outdated;
    assert!(!outdated());
    let file = csv(&[format!("{},whole number,How many?,3,,", desk.concept(0))]);
    import_exercises(
        &desk.store,
        &desk.class,
        &[file],
        None,
        Language::first(),
        date(TODAY),
    )
    .unwrap();
    assert!(outdated());
    undo_own_import(&desk.store, &desk.class, 1).unwrap();
    assert!(!outdated());
}

#[test]
fn own_concepts_join_the_rotation_and_travel() {
    let desk = Desk::with_seats(1);
    let bytes = include_bytes!("../../../../shared/samples/catalogue/stream-lab.csv");
    let reading = read_concepts(
        &desk.store,
        &desk.class,
        "stream-lab.csv",
        bytes,
        Language::first(),
    )
    .unwrap();
    assert_eq!((reading.drafts.len(), reading.refused.len()), (3, 0));
    import_concepts(
        &desk.store,
        &desk.class,
        &reading.file,
        &reading.drafts,
        &reading.refused,
        Language::first(),
        date(TODAY),
    )
    .unwrap();
    let own = own_desk(&desk.store, &desk.class, Language::first()).unwrap();
    assert_eq!(own.concepts.len(), 3);
    assert!(
        own.concepts
            .iter()
            .all(|line| !line.in_rotation && !line.concept.has_exercises)
    );
    let spare = crate::unscheduled_concepts(&desk.store, &desk.class, Language::first()).unwrap();
    assert!(spare.iter().any(|c| c.concept.id == "own-water-level"));
    // Read again, all drafts are refused.
    let again = read_concepts(
        &desk.store,
        &desk.class,
        "stream-lab.csv",
        bytes,
        Language::first(),
    )
    .unwrap();
    assert_eq!((again.drafts.len(), again.refused.len()), (0, 3));
    let mut days = desk.open().facts.rotation.days().to_vec();
    days[1].push("own-water-level".into());
    set_rotation(&desk.store, &desk.class, days).unwrap();
    // The import cannot be undone while its concept is in the rotation.
    assert!(matches!(
        undo_own_import(&desk.store, &desk.class, 1),
        Err(DeskError::Invalid {
            field: Field::Concepts,
            rule: Rule::InRotation
        })
    ));
    set_taught_from(
        &desk.store,
        &desk.class,
        "own-water-level",
        Some(date("2026-08-31")),
    )
    .unwrap();
    let file = csv(&[
        "Read a water gauge,whole number,How many half inches are 3 inches?,6,3,".to_owned()
            + "Half inches.",
    ]);
    import_exercises(
        &desk.store,
        &desk.class,
        &[file],
        None,
        Language::first(),
        date(TODAY),
    )
    .unwrap();
    let folder = tempfile::tempdir().unwrap();
    let (store, joined) = join(&desk, folder.path());
    let name = joined
        .facts
        .name("own-water-level", Language::tagged("es").unwrap());
    assert_eq!(name.title, "Leer un medidor de agua");
    assert_eq!(name.strand, Strand::Measurement.as_str());
    let open = ask(&store, &joined, "own-water-level", TODAY, 1);
    assert!(is_own(&open));
    // The practice queue treats it like any other concept.
    let evening = surefoot_student::practice(&store, &joined, date(TODAY), None, false, 5).unwrap();
    assert!(matches!(evening, PracticeStep::Exercise(_)));
    // A second computer and next year's class have it too.
    let sealed = crate::export_class(&desk.open(), "seven otters swim", false).unwrap();
    let key = crate::read_class_key(&sealed, "seven otters swim").unwrap();
    let other = tempfile::tempdir().unwrap();
    let second =
        surefoot_store::DeskStore::open(&other.path().join("d.sqlite"), Durability::Relaxed)
            .unwrap();
    let id = crate::import_class(&second, &key).unwrap();
    let there = own_desk(&second, &id, Language::first()).unwrap();
    assert_eq!((there.concepts.len(), there.exercises.len()), (3, 1));
    let secrets = crate::ClassSecrets {
        sealing: [92; 32],
        signing: [93; 32],
        seats: [94; 32],
    };
    let year = desk.open().facts.year.clone();
    let copied = copy_class(
        &desk.store,
        &crate::CopyClass {
            from: desk.class.clone(),
            title: "Next year".into(),
            names: vec!["B".into()],
            year,
        },
        &secrets,
        date(TODAY),
    )
    .unwrap();
    let next = own_desk(&desk.store, &copied.id, Language::first()).unwrap();
    assert_eq!((next.concepts.len(), next.exercises.len()), (3, 1));
    assert!(next.concepts.iter().any(|line| line.in_rotation));
}

#[test]
fn marking_takes_equal_forms_as_everywhere() {
    let (desk, concept) = with_two();
    let file = csv(&[format!(
        "{concept},decimal,Write one half as a decimal.,0.5,,"
    )]);
    import_exercises(
        &desk.store,
        &desk.class,
        &[file],
        None,
        Language::first(),
        date(TODAY),
    )
    .unwrap();
    let facts = desk.open().facts;
    let own = facts
        .own_of(&concept)
        .iter()
        .find(|o| o.answer == "0.5")
        .unwrap();
    let item = own.item().unwrap();
    assert_eq!(item.answer, Answer::Decimal { text: "0.5".into() });
    let marked = mark(
        &item,
        &Response::Decimal {
            text: "0,50".into(),
        },
    )
    .unwrap();
    assert!(marked.right && marked.form_note.is_some());
}
