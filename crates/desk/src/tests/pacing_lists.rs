//! Pacing lists in the shapes that teachers have, made up. In a list, what is understood follows
//! after "=====". The year begins on Monday, 2026-08-31.

use super::lists::each;
use super::{Desk, date};
use crate::{PacingFound, PacingList, read_pacing};
use std::collections::BTreeMap;
use surefoot_catalogue::Language;
use surefoot_catalogue::rotation::Phase;

fn found(one: &PacingFound) -> String {
    let last_year = if one.last_year { " (last year)" } else { "" };
    format!("{} {}{last_year}", one.date, one.concept.id)
}

/// What is understood, as the lists write it: each line at its place.
fn written(list: &str, read: &PacingList) -> Vec<String> {
    let mut by_line: BTreeMap<&str, Vec<String>> = BTreeMap::new();
    for one in &read.found {
        by_line.entry(&one.line).or_default().push(found(one));
    }
    for one in &read.near {
        let first = format!("~ {}", found(&one.choices[0]));
        by_line.entry(&one.line).or_default().push(first);
    }
    for one in &read.missed {
        let trouble = serde_json::to_value(one.trouble).unwrap();
        let (name, _) = one.line.split_once('\t').unwrap_or((&one.line, ""));
        let line = format!("! {} {name}", trouble.as_str().unwrap());
        by_line.entry(&one.line).or_default().push(line);
    }
    let both = read.day_first.map(|_| "both ways".to_owned());
    let lines = list
        .lines()
        .filter_map(|line| by_line.remove(line))
        .flatten();
    both.into_iter().chain(lines).collect()
}

#[test]
fn every_list_is_understood() {
    let desk = Desk::with_seats(2);
    let class = desk.open();
    let mut count = 0;
    for (name, list, wanted) in each("pacing-") {
        let read = read_pacing(&class, &list, None, Language::first()).unwrap();
        let wanted: Vec<&str> = wanted.lines().collect();
        assert_eq!(written(&list, &read), wanted, "{name}");
        count += 1;
    }
    assert_eq!(count, 16);
    assert_eq!(
        desk.open().facts.taught_from,
        class.facts.taught_from,
        "only read"
    );
}

#[test]
fn a_date_that_can_be_read_both_ways_is_read_as_the_teacher_says() {
    let desk = Desk::with_seats(2);
    let class = desk.open();
    let read = |text: &str, day_first| {
        let list = read_pacing(&class, text, day_first, Language::first()).unwrap();
        (list.found[0].date, list.day_first)
    };
    let both = "Round large numbers\t9/10";
    assert_eq!(read(both, None), (date("2026-09-10"), Some(false)));
    assert_eq!(read(both, Some(true)), (date("2026-10-09"), Some(true)));
    // No month has the number 14.
    let one_way = "Round large numbers\t9/14";
    assert_eq!(read(one_way, Some(true)), (date("2026-09-14"), None));
}

#[test]
fn a_concept_of_an_earlier_grade_that_is_added_counts_as_taught() {
    let desk = Desk::with_seats(2);
    let mut days = desk.open().facts.rotation.days().to_vec();
    let dropped = days[0].remove(0);
    let date_before = desk.open().facts.taught_from[&dropped];
    days[0].push("g3-time-tell".into());
    let higher = surefoot_catalogue::Catalogue::built_in()
        .unwrap()
        .concepts();
    let higher = higher.iter().find(|c| c.grade == 5).unwrap().id.as_str();
    days[1].push(higher.to_owned());
    crate::set_rotation(&desk.store, &desk.class, days.clone()).unwrap();
    let facts = desk.open().facts;
    assert_eq!(facts.taught_from["g3-time-tell"], date("2026-08-31"));
    assert_eq!(
        facts.phase("g3-time-tell", date("2027-03-01")),
        Phase::Review
    );
    assert!(!facts.taught_from.contains_key(higher));
    // A concept that was dropped comes back with its date.
    days[2].push(dropped.clone());
    crate::set_rotation(&desk.store, &desk.class, days).unwrap();
    assert_eq!(desk.open().facts.taught_from[&dropped], date_before);
}
