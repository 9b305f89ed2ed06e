//! The warm-up: the same exercises on screen and paper, new ones in each pass, and what the teacher
//! chooses.

use super::{Desk, date};
use crate::{
    DeskError, Thing, WarmUp, WarmUpChoice, choose_warm_up, concept_to_show, group_page,
    import_exercises, name_seat, set_taught_from, talk, warm_up, warm_up_paper,
};
use std::collections::BTreeSet;
use surefoot_catalogue::Language;
use surefoot_catalogue::rotation::Phase;
use surefoot_exercises::bank::BankFile;
use surefoot_exercises::{Level, invented_names};
use surefoot_store::{DeskStore, Durability};

/// Day 1 of the rotation, in pass 3.
const TODAY: &str = "2026-09-28";

fn shown(desk: &Desk, on: &str) -> WarmUp {
    let language = Language::first();
    warm_up(
        &desk.store,
        &desk.open(),
        language,
        date(TODAY),
        Some(date(on)),
    )
    .unwrap()
}

fn choose(desk: &Desk, concept: &str, choice: &WarmUpChoice) -> Result<(), DeskError> {
    choose_warm_up(&desk.store, &desk.open(), date(TODAY), concept, choice)
}

/// Prompts and answers, concept by concept.
fn questions(view: &WarmUp) -> Vec<(String, String)> {
    (view.concepts.iter())
        .filter(|one| !one.choice.left_out)
        .filter_map(|one| {
            let exercise = one.exercise.as_ref()?;
            let text = serde_json::to_string(&(&exercise.item, &exercise.answer)).unwrap();
            Some((one.concept.id.clone(), text))
        })
        .collect()
}

/// The same of the paper.
fn on_paper(desk: &Desk, on: &str) -> Vec<(String, String)> {
    let language = Language::first();
    let paper = warm_up_paper(
        &desk.store,
        &desk.open(),
        language,
        date(TODAY),
        Some(date(on)),
    );
    let exercises = paper.unwrap().unwrap().exercises.into_iter();
    exercises
        .map(|one| {
            let content = (one.item.view(), one.item.worked().answer);
            (one.concept.id, serde_json::to_string(&content).unwrap())
        })
        .collect()
}

#[test]
fn screen_and_paper_have_one_exercise_of_each_concept_on_every_opening() {
    let desk = Desk::with_seats(2);
    let view = shown(&desk, TODAY);
    let concepts = desk.open().facts.rotation.days()[0].clone();
    let there: Vec<&String> = view.concepts.iter().map(|one| &one.concept.id).collect();
    assert_eq!(there, concepts.iter().collect::<Vec<_>>());
    assert_eq!((view.day, view.days.len()), (Some(1), 2));
    assert!(view.days[0].is_today && !view.days[1].is_today);
    assert!(view.concepts.iter().all(|one| {
        let exercise = one.exercise.as_ref().unwrap();
        exercise.misconception.is_none() && exercise.item.concept.as_str() == one.concept.id
    }));
    let swapped = WarmUpChoice {
        swaps: 2,
        ..WarmUpChoice::default()
    };
    choose(&desk, &concepts[1], &swapped).unwrap();
    let view = shown(&desk, TODAY);
    assert_eq!(view.concepts[1].choice, swapped);
    assert_eq!(questions(&view), on_paper(&desk, TODAY));
    // After a restart.
    let again = DeskStore::open_again(&desk.path(), Durability::Relaxed).unwrap();
    let class = crate::open_class(&again, &desk.class).unwrap();
    let language = Language::first();
    let after = warm_up(&again, &class, language, date(TODAY), None).unwrap();
    assert_eq!(after, view);
}

#[test]
fn every_pass_and_every_swap_brings_another_exercise() {
    let desk = Desk::with_seats(2);
    let facts = desk.open().facts;
    let school_days: Vec<_> = facts.year.school_days().collect();
    for day in 0..10 {
        let mut before: Vec<(String, String)> = Vec::new();
        for pass in 0..8 {
            let on = school_days[pass * 10 + day].to_string();
            let now = questions(&shown(&desk, &on));
            assert!(!now.is_empty());
            for (one, other) in now.iter().zip(&before) {
                assert_ne!(one, other, "{on}");
            }
            before = now;
        }
    }
    let concept = desk.concept(0);
    let mut seen = BTreeSet::new();
    for swaps in 0..12 {
        choose(
            &desk,
            &concept,
            &WarmUpChoice {
                swaps,
                ..WarmUpChoice::default()
            },
        )
        .unwrap();
        assert!(
            seen.insert(questions(&shown(&desk, TODAY))[0].clone()),
            "{swaps}"
        );
    }
    // The choice holds for its pass alone.
    assert_eq!(
        shown(&desk, "2026-10-12").concepts[0].choice,
        WarmUpChoice::default()
    );
}

#[test]
fn the_level_is_that_of_the_phase_unless_the_teacher_chooses_another() {
    let desk = Desk::with_seats(2);
    let concept = desk.concept(0);
    let level = |taught: Option<&str>| {
        set_taught_from(&desk.store, &desk.class, &concept, taught.map(date)).unwrap();
        let view = shown(&desk, "2026-11-09");
        let one = &view.concepts[0];
        assert_eq!(one.exercise.as_ref().unwrap().item.level, one.level);
        (one.phase, one.level)
    };
    assert_eq!(level(None), (Phase::Preview, Level::Entry));
    assert_eq!(
        level(Some("2026-11-02")),
        (Phase::Practice, Level::Expected)
    );
    assert_eq!(level(Some("2026-08-31")), (Phase::Review, Level::Stretch));
    let easier = WarmUpChoice {
        level: Some(Level::Entry),
        ..WarmUpChoice::default()
    };
    choose_warm_up(
        &desk.store,
        &desk.open(),
        date("2026-11-09"),
        &concept,
        &easier,
    )
    .unwrap();
    assert_eq!(level(Some("2026-08-31")), (Phase::Review, Level::Entry));
}

#[test]
fn an_exercise_is_left_out_and_an_own_one_takes_its_place() {
    let desk = Desk::with_seats(2);
    let concepts = desk.open().facts.rotation.days()[0].clone();
    let lines = format!(
        "concept,kind,question,answer,wrong_1,feedback_1\n{},whole number,What is 11 + 4?,15,,\n",
        concepts[0]
    );
    let file = BankFile {
        name: "own.csv".into(),
        bytes: lines.into_bytes(),
    };
    let main = Language::first();
    import_exercises(&desk.store, &desk.class, &[file], None, main, date(TODAY)).unwrap();
    let before = shown(&desk, TODAY);
    let own = before.concepts[0].own[0].clone();
    assert_eq!(own.question, "What is 11 + 4?");
    assert!(!questions(&before)[0].1.contains("11 + 4"));
    let put_in = WarmUpChoice {
        own: Some(own.id.clone()),
        ..WarmUpChoice::default()
    };
    choose(&desk, &concepts[0], &put_in).unwrap();
    let left_out = WarmUpChoice {
        left_out: true,
        ..WarmUpChoice::default()
    };
    choose(&desk, &concepts[1], &left_out).unwrap();
    let view = shown(&desk, TODAY);
    assert!(questions(&view)[0].1.contains("11 + 4"));
    assert!(view.concepts[1].exercise.is_some() && view.concepts[1].choice.left_out);
    assert_eq!(on_paper(&desk, TODAY), questions(&view));
    assert_eq!(questions(&view).len(), concepts.len() - 1);
    // An own exercise that was removed gives way to the usual one.
    crate::remove_own_exercise(&desk.store, &desk.class, &own.id).unwrap();
    assert_eq!(questions(&shown(&desk, TODAY))[0], questions(&before)[0]);
    assert!(matches!(
        choose(&desk, &concepts[0], &put_in),
        Err(DeskError::NotFound(Thing::Exercise))
    ));
}

#[test]
fn what_does_not_fit_the_day_is_refused_and_changes_nothing() {
    let desk = Desk::with_seats(2);
    let (today, other) = (desk.concept(0), desk.concept(1));
    let before = desk.dump();
    let usual = WarmUpChoice::default();
    assert!(matches!(
        choose(&desk, &other, &usual),
        Err(DeskError::NotFound(Thing::Concept))
    ));
    let many = WarmUpChoice {
        swaps: crate::MOST_SWAPS + 1,
        ..usual.clone()
    };
    assert!(matches!(
        choose(&desk, &today, &many),
        Err(DeskError::Invalid { .. })
    ));
    let class = desk.open();
    let sunday = date("2026-09-27");
    let language = Language::first();
    for refused in [
        choose_warm_up(&desk.store, &class, sunday, &today, &usual).err(),
        warm_up(&desk.store, &class, language, date(TODAY), Some(sunday)).err(),
        warm_up_paper(&desk.store, &class, language, date(TODAY), Some(sunday)).err(),
    ] {
        assert!(matches!(refused, Some(DeskError::Invalid { .. })));
    }
    assert_eq!(desk.dump(), before);
    // On a day without school it is for the next school day; after the year there is none.
    let monday = warm_up(&desk.store, &class, language, sunday, None).unwrap();
    assert_eq!(
        (monday.date, monday.days[0].is_today),
        (Some(date(TODAY)), false)
    );
    let over = warm_up(&desk.store, &class, language, date("2027-07-01"), None).unwrap();
    assert!(over.date.is_none() && over.days.is_empty() && over.concepts.is_empty());
}

/// The names in what the desk shows and prints of ten days: every text that is a name.
fn people(desk: &Desk) -> BTreeSet<&'static str> {
    let (class, language) = (desk.open(), Language::first());
    let mut texts = String::new();
    let days: Vec<_> = class.facts.year.school_days().take(20).collect();
    for today in days {
        let shown = warm_up(&desk.store, &class, language, today, None).unwrap();
        texts += &serde_json::to_string(&shown).unwrap();
        texts += &on_paper(desk, &today.to_string())
            .into_iter()
            .map(|(_, words)| words)
            .collect::<String>();
        let day = talk(&desk.store, &class, language, today, 4).unwrap();
        texts += &serde_json::to_string(&day.concepts).unwrap();
        for one in day.concepts {
            let id = &one.concept.id;
            let found = concept_to_show(&desk.store, &class, id, language, today).unwrap();
            texts += &serde_json::to_string(&found).unwrap();
            let page = group_page(&desk.store, &class, language, today, id, &[1]).unwrap();
            texts += &serde_json::to_string(&page.exercises).unwrap();
        }
    }
    invented_names()
        .filter(|name| texts.contains(&format!("\"{name}\"")))
        .collect()
}

#[test]
fn no_exercise_names_a_student_of_the_class() {
    let desk = Desk::with_seats(24);
    let usual: BTreeSet<&str> = invented_names().take(24).collect();
    let before = people(&desk);
    assert!(before.len() > 15 && before.is_subset(&usual), "{before:?}");
    for (seat, name) in (1..).zip(&usual) {
        let whole = format!("{} of Otter Ford", name.to_uppercase());
        name_seat(&desk.store, &desk.class, seat, Some(&whole)).unwrap();
    }
    let after = people(&desk);
    assert!(after.len() > 10 && after.is_disjoint(&usual), "{after:?}");
}
