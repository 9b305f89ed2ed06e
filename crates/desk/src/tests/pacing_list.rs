//! A pasted pacing list, and a suggested rotation.

use super::{Desk, date};
use crate::PacingTrouble;
use crate::class::OpenClass;
use crate::class::pacing_concept::Concepts;
use crate::class::pacing_list::read_lines;
use crate::{DeskError, balanced_rotation, open_class, read_pacing, set_first_lessons};
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::Language;
use surefoot_record::Thing;

#[test]
fn lines_are_read_in_either_order_language_and_under_a_date() {
    let desk = Desk::with_seats(2);
    let class = desk.open();
    let ids: Vec<String> = class
        .facts
        .rotation
        .days()
        .iter()
        .flatten()
        .cloned()
        .collect();
    let title = |at: usize, language| class.facts.name(&ids[at], language).title;
    let text = format!(
        "{}\t2026-10-05\n\"{}\", 10/6/2026\n\n2026-10-12;{}\n2026-11-02\n{}\n{}\nNo such thing, 2026-10-05\n{}, 2030-01-01\n{}, 2026-10-07\n",
        title(0, Language::first()),
        title(1, Language::tagged("es").unwrap()).to_uppercase(),
        ids[2],
        title(3, Language::first()),
        title(4, Language::first()),
        title(5, Language::first()),
        title(0, Language::first()),
    );
    let read = read_pacing(&class, &text, None, Language::first()).unwrap();
    let found: Vec<(&str, String)> = read
        .found
        .iter()
        .map(|one| (one.concept.id.as_str(), one.date.to_string()))
        .collect();
    let wanted = [
        "2026-10-05",
        "2026-10-06",
        "2026-10-12",
        "2026-11-02",
        "2026-11-02",
    ];
    let wanted: Vec<(&str, String)> = ids
        .iter()
        .map(String::as_str)
        .zip(wanted.map(str::to_owned))
        .collect();
    assert_eq!(found, wanted);
    let missed: Vec<PacingTrouble> = read.missed.iter().map(|one| one.trouble).collect();
    assert_eq!(
        missed,
        [
            PacingTrouble::NoSuchConcept,
            PacingTrouble::OutsideYear,
            PacingTrouble::Twice
        ]
    );
    let alone = read_pacing(
        &class,
        &title(0, Language::first()),
        None,
        Language::first(),
    )
    .unwrap();
    assert_eq!(alone.missed[0].trouble, PacingTrouble::NoDate);
    assert_eq!(
        desk.open().facts.taught_from,
        class.facts.taught_from,
        "only read"
    );
}

#[test]
fn first_lessons_are_set_together_or_not_at_all_and_back_again() {
    let desk = Desk::with_seats(2);
    let class = desk.open();
    let before = class.facts.taught_from.clone();
    let ids: Vec<String> = class.facts.rotation.days()[0].clone();
    let lessons = |on: Option<&str>| -> BTreeMap<String, _> {
        ids.iter().map(|id| (id.clone(), on.map(date))).collect()
    };
    set_first_lessons(&desk.store, &desk.class, &lessons(Some("2026-12-01"))).unwrap();
    let after = desk.open().facts.taught_from;
    assert!(ids.iter().all(|id| after[id] == date("2026-12-01")));
    let mut bad = lessons(Some("2026-12-02"));
    bad.insert("g4-no-such".into(), None);
    assert!(matches!(
        set_first_lessons(&desk.store, &desk.class, &bad),
        Err(DeskError::NotFound(Thing::Concept))
    ));
    assert!(set_first_lessons(&desk.store, &desk.class, &lessons(Some("2030-01-01"))).is_err());
    assert_eq!(desk.open().facts.taught_from, after);
    let back = ids
        .iter()
        .map(|id| (id.clone(), before.get(id).copied()))
        .collect();
    set_first_lessons(&desk.store, &desk.class, &back).unwrap();
    assert_eq!(desk.open().facts.taught_from, before);
}

#[test]
fn a_balanced_rotation_has_every_concept_once_and_even_days_and_strands() {
    let desk = Desk::with_seats(2);
    let mut days = desk.open().facts.rotation.days().to_vec();
    let moved = days[3].split_off(0);
    days[0].extend(moved);
    crate::set_rotation(&desk.store, &desk.class, days.clone()).unwrap();
    for count in [days.len(), 7] {
        let balanced = balanced_rotation(&desk.store, &desk.class, count).unwrap();
        assert_eq!(balanced.len(), count);
        let all: Vec<&String> = balanced.iter().flatten().collect();
        let each: BTreeSet<&String> = all.iter().copied().collect();
        assert_eq!(all.len(), each.len());
        assert_eq!(each, days.iter().flatten().collect());
        let class = open_class(&desk.store, &desk.class).unwrap();
        let spread = |of: &dyn Fn(&Vec<String>) -> usize| {
            let sizes: Vec<usize> = balanced.iter().map(of).collect();
            sizes.iter().max().unwrap() - sizes.iter().min().unwrap()
        };
        assert!(spread(&Vec::len) <= 1);
        for concept in class.facts.concepts.values() {
            let strand = concept.strand;
            let of = |day: &Vec<String>| {
                day.iter()
                    .filter(|id| class.facts.concepts[*id].strand == strand)
                    .count()
            };
            assert!(spread(&of) <= 1, "{strand:?}");
        }
    }
    assert!(balanced_rotation(&desk.store, &desk.class, 21).is_err());
}

proptest::proptest! {
    // A line is compared with every title, so a case takes long.
    #![proptest_config(surefoot_test_support::fewer(20))]

    /// Every concept is found at most once, on a date of the year.
    #[test]
    fn changed_pacing_lists(changes in surefoot_test_support::any_changes()) {
        thread_local!(static CLASS: (OpenClass, Concepts) = {
            let class = Desk::with_seats(1).open();
            let concepts = Concepts::of(&class).unwrap();
            (class, concepts)
        });
        let found = CLASS.with(|(class, concepts)| {
            let [one, other] = ["g4-round", "g4-add-large"]
                .map(|concept| class.facts.name(concept, Language::first()).title);
            let text = format!("{one}\t2026-10-05\n\"{other}\", 10/6/2026\n\n2026-11-02\n{one}\n");
            let bytes = surefoot_test_support::changed(text.as_bytes(), &changes);
            let read = read_lines(class, concepts, &String::from_utf8_lossy(&bytes), None, Language::first()).unwrap();
            let all = read.found.len();
            let different: BTreeSet<_> = read.found.iter().map(|one| one.concept.id.clone()).collect();
            all == different.len() && read.found.iter().all(|one| class.facts.year.contains(one.date))
        });
        proptest::prop_assert!(found);
    }
}
