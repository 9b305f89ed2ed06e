//! Small groups: suggested, edited, kept and recorded; a record changes the estimate.

use super::{Desk, date};
use crate::{
    DeskError, GroupEffort, board, concept_reports, group_page, groups_desk, keep_group_wishes,
    keep_groups, plan_groups, record_group, remove_seat, score_groups, set_taught_from,
};
use crate::{GroupChosen, GroupFaultKind, GroupWishes, GroupsFirst, GroupsView};
use surefoot_catalogue::Language;
use surefoot_record::Thing;

const TODAY: &str = "2026-10-01";

/// Ten seats; the low half rates the first concepts Not yet and is wrong, the other half
/// rates Could teach it and is right.
fn desk() -> (Desk, Vec<String>) {
    let desk = Desk::with_seats(10);
    desk.mark_enough(6);
    let concepts: Vec<String> = (0..3).map(|day| desk.concept(day)).collect();
    for concept in &concepts {
        let first = Some(date("2026-08-31"));
        set_taught_from(&desk.store, &desk.class, concept, first).unwrap();
        for on in ["2026-09-01", "2026-09-15", "2026-09-29"] {
            for seat in 1..=10 {
                let rating = if seat <= 5 { 0 } else { 3 };
                desk.rate_and_mark(seat, on, concept, rating, seat > 5);
            }
        }
    }
    (desk, concepts)
}

fn wishes() -> GroupWishes {
    GroupWishes {
        slots: 2,
        groups_at_once: 2,
        ..GroupWishes::default()
    }
}

fn suggest(desk: &Desk, wishes: &GroupWishes) -> GroupsView {
    let effort = GroupEffort::Proven;
    plan_groups(
        &desk.store,
        &desk.open(),
        Language::first(),
        date(TODAY),
        wishes,
        None,
        effort,
    )
    .unwrap()
}

fn weigh(desk: &Desk, wishes: &GroupWishes, groups: &[GroupChosen], best: u64) -> GroupsView {
    let class = desk.open();
    score_groups(
        &desk.store,
        &class,
        Language::first(),
        date(TODAY),
        wishes,
        groups,
        best,
    )
    .unwrap()
}

fn chosen(view: &GroupsView) -> Vec<GroupChosen> {
    view.groups
        .iter()
        .map(|group| GroupChosen {
            slot: group.slot,
            concept: group.concept.id.clone(),
            seats: group.members.iter().map(|m| m.seat).collect(),
            partners: Vec::new(),
        })
        .collect()
}

#[test]
fn a_suggestion_breaks_no_rule_and_says_how_good_it_is() {
    let (desk, _) = desk();
    let wishes = GroupWishes {
        absent: vec![2],
        keep_apart: vec![(1, 3)],
        keep_together: vec![(4, 5)],
        ..wishes()
    };
    let view = suggest(&desk, &wishes);
    assert!(!view.groups.is_empty());
    assert!(view.faults.is_empty());
    assert!(view.proven_gap < 0.25, "{}", view.proven_gap);
    assert!(view.best_at_most >= view.value);
    for group in &view.groups {
        let seats: Vec<u32> = group.members.iter().map(|m| m.seat).collect();
        assert!((2..=5).contains(&seats.len()));
        assert!(!seats.contains(&2) && seats.iter().all(|s| *s <= 5));
        assert!(!(seats.contains(&1) && seats.contains(&3)));
        assert_eq!(seats.contains(&4), seats.contains(&5));
    }
    // Scored without a change, it has the same value.
    let again = weigh(&desk, &wishes, &chosen(&view), view.best_at_most);
    assert_eq!((again.value, again.faults.len()), (view.value, 0));
}

/// The concept of a sentence is on the board, whatever else would be worth more.
#[test]
fn groups_that_come_first_have_their_concept_and_students() {
    let (desk, concepts) = desk();
    let few = GroupWishes {
        slots: 1,
        groups_at_once: 1,
        ..wishes()
    };
    for (concept, seats) in [(&concepts[1], vec![1, 3, 4]), (&concepts[2], vec![2, 5])] {
        for wishes in [&few, &wishes()] {
            let view = plan_groups(
                &desk.store,
                &desk.open(),
                Language::first(),
                date(TODAY),
                wishes,
                Some(&GroupsFirst {
                    concept: concept.clone(),
                    seats: seats.clone(),
                }),
                GroupEffort::Proven,
            )
            .unwrap();
            let on_it = view.groups.iter().filter(|g| g.concept.id == *concept);
            let there: Vec<u32> = on_it.flat_map(|g| &g.members).map(|m| m.seat).collect();
            assert!(seats.iter().all(|seat| there.contains(seat)), "{view:?}");
            assert!(view.faults.is_empty());
            assert_eq!(view.groups[0].slot, 0);
            // Told as any other plan: it is scored alike.
            let again = weigh(&desk, wishes, &chosen(&view), view.best_at_most);
            assert_eq!(
                (again.value, again.best_at_most),
                (view.value, view.best_at_most)
            );
        }
    }
    let unknown = GroupsFirst {
        concept: concepts[0].clone(),
        seats: vec![77],
    };
    let found = plan_groups(
        &desk.store,
        &desk.open(),
        Language::first(),
        date(TODAY),
        &wishes(),
        Some(&unknown),
        GroupEffort::Quick,
    );
    assert!(matches!(found, Err(DeskError::NotFound(Thing::Seat))));
}

/// Who needs a concept is a question of the level. Without one, the weaker half of the pairs of
/// student and concept may join, and no chance is shown.
#[test]
fn by_ratings_alone_groups_go_by_order_and_show_no_chance() {
    // Everyone rates high: by the usual values of ratings hardly anybody would need a group.
    let desk = Desk::with_seats(8);
    let concept = desk.concept(0);
    set_taught_from(&desk.store, &desk.class, &concept, Some(date("2026-08-31"))).unwrap();
    for on in ["2026-09-01", "2026-09-15", "2026-09-29"] {
        for seat in 1..=8 {
            desk.rate(seat, on, &concept, if seat <= 4 { 2 } else { 3 });
        }
    }
    let view = suggest(&desk, &wishes());
    assert!(!view.level_known);
    let seats = |view: &GroupsView| -> Vec<u32> {
        let groups = view.groups.iter();
        let mut seats: Vec<u32> = groups
            .flat_map(|group| group.members.iter().map(|m| m.seat))
            .collect();
        seats.sort_unstable();
        seats
    };
    assert_eq!((seats(&view), view.in_need), (vec![1, 2, 3, 4], 4));
    let members = |view: &GroupsView| -> Vec<Option<f64>> {
        let groups = view.groups.iter();
        groups
            .flat_map(|group| group.members.iter().map(|m| m.has_it))
            .collect()
    };
    assert!(members(&view).iter().all(Option::is_none));
    // Nobody can be said not to need it.
    let other = [GroupChosen {
        slot: 0,
        concept: concept.clone(),
        seats: vec![4, 8],
        partners: Vec::new(),
    }];
    let edited = weigh(&desk, &wishes(), &other, view.best_at_most);
    assert_eq!((edited.faults.len(), edited.level_known), (0, false));
    let page = |desk: &Desk| {
        let (class, language) = (desk.open(), Language::first());
        group_page(
            &desk.store,
            &class,
            language,
            date(TODAY),
            &concept,
            &[1, 8],
        )
        .unwrap()
    };
    assert!(page(&desk).members.iter().all(|m| m.has_it.is_none()));
    assert!(page(&desk).first.is_empty());

    desk.mark_enough(1);
    let known = suggest(&desk, &wishes());
    assert!(known.level_known && members(&known).iter().all(Option::is_some));
    assert!(page(&desk).members.iter().all(|m| m.has_it.is_some()));
}

#[test]
fn an_edit_by_hand_shows_its_effect_and_the_rules_it_breaks() {
    let (desk, concepts) = desk();
    let wishes = GroupWishes {
        absent: vec![2],
        keep_apart: vec![(1, 3)],
        ..wishes()
    };
    let view = suggest(&desk, &wishes);
    let edited = [GroupChosen {
        slot: 0,
        concept: concepts[0].clone(),
        seats: vec![1, 2, 3, 9],
        partners: Vec::new(),
    }];
    let seen = weigh(&desk, &wishes, &edited, view.best_at_most);
    let kinds: Vec<GroupFaultKind> = seen.faults.iter().map(|f| f.kind).collect();
    for kind in [
        GroupFaultKind::Apart,
        GroupFaultKind::Absent,
        GroupFaultKind::NotNeeded,
    ] {
        assert!(kinds.contains(&kind), "{kind:?} in {kinds:?}");
    }
    assert!(seen.value < view.value && seen.proven_gap > 0.0);
    assert!(seen.unplaced.iter().any(|m| m.seat == 4));
    let class = desk.open();
    let unknown = [GroupChosen {
        slot: 0,
        concept: concepts[0].clone(),
        seats: vec![99],
        partners: Vec::new(),
    }];
    assert!(matches!(
        score_groups(
            &desk.store,
            &class,
            Language::first(),
            date(TODAY),
            &wishes,
            &unknown,
            0
        ),
        Err(DeskError::NotFound(Thing::Seat))
    ));
    for bad in [
        GroupWishes {
            slots: 0,
            ..wishes.clone()
        },
        GroupWishes {
            size_least: 6,
            size_most: 5,
            ..wishes.clone()
        },
        GroupWishes {
            groups_at_once: 99,
            ..wishes.clone()
        },
    ] {
        assert!(matches!(
            plan_groups(
                &desk.store,
                &class,
                Language::first(),
                date(TODAY),
                &bad,
                None,
                GroupEffort::Quick
            ),
            Err(DeskError::Invalid { .. })
        ));
    }
}

#[test]
fn wishes_and_groups_are_kept_and_a_removed_seat_goes_from_both() {
    let (desk, concepts) = desk();
    let today = date(TODAY);
    let wishes = GroupWishes {
        slots: 3,
        size_most: 4,
        absent: vec![2],
        keep_apart: vec![(1, 3), (4, 6)],
        keep_together: vec![(4, 5)],
        ..wishes()
    };
    keep_group_wishes(&desk.store, &desk.open(), today, &wishes).unwrap();
    let groups = [GroupChosen {
        slot: 1,
        concept: concepts[0].clone(),
        seats: vec![1, 3, 4],
        partners: Vec::new(),
    }];
    keep_groups(&desk.store, &desk.open(), today, &groups).unwrap();
    let open = |day| groups_desk(&desk.store, &desk.open(), Language::first(), date(day)).unwrap();
    assert_eq!(open(TODAY).wishes, wishes);
    assert!(
        open("2026-10-02").wishes.absent.is_empty(),
        "absent that day only"
    );
    assert_eq!(open(TODAY).kept[0].groups[0].members.len(), 3);

    remove_seat(&desk.store, &desk.class, 3, &[7; 32]).unwrap();
    let after = open(TODAY);
    assert_eq!(after.wishes.keep_apart, [(4, 6)]);
    assert_eq!(after.kept[0].groups[0].members.len(), 2);
    keep_groups(&desk.store, &desk.open(), today, &[]).unwrap();
    assert!(open(TODAY).kept.is_empty());
    let itself = GroupWishes {
        keep_apart: vec![(1, 1)],
        ..wishes
    };
    assert!(keep_group_wishes(&desk.store, &desk.open(), today, &itself).is_err());
}

#[test]
fn who_has_it_after_a_group_moves_the_estimate_and_can_be_taken_back() {
    let (desk, concepts) = desk();
    let today = date(TODAY);
    let groups = [GroupChosen {
        slot: 0,
        concept: concepts[0].clone(),
        seats: vec![1, 4],
        partners: Vec::new(),
    }];
    keep_groups(&desk.store, &desk.open(), today, &groups).unwrap();
    let has_it = |seat: u32| {
        let reports = concept_reports(
            &desk.store,
            &desk.open(),
            &concepts[0],
            Language::first(),
            today,
        )
        .unwrap();
        let student = reports.students.iter().find(|s| s.seat == seat).unwrap();
        (student.has_it.unwrap(), student.seen.len())
    };
    let before = (has_it(1), has_it(4));
    let record = |seat, has_it| {
        record_group(&desk.store, &desk.open(), today, seat, &concepts[0], has_it).unwrap();
    };
    record(1, Some(true));
    record(4, Some(false));
    let after = (has_it(1), has_it(4));
    assert!(after.0.0 > before.0.0 + 0.02, "{before:?} {after:?}");
    assert!(after.1.0 < after.0.0);
    assert_eq!(after.0.1, 1);
    let kept = groups_desk(&desk.store, &desk.open(), Language::first(), today).unwrap();
    assert_eq!(kept.kept[0].records.len(), 2);
    record(1, None);
    record(4, None);
    assert_eq!((has_it(1), has_it(4)), before);
}

#[test]
fn a_group_has_its_page_with_members_first_things_and_exercises() {
    let (desk, concepts) = desk();
    let class = desk.open();
    let with_exercises = concepts
        .iter()
        .find(|c| surefoot_exercises::has_generator(c))
        .unwrap();
    let page = group_page(
        &desk.store,
        &class,
        Language::first(),
        date(TODAY),
        with_exercises,
        &[1, 2],
    )
    .unwrap();
    assert_eq!(page.members.len(), 2);
    assert!(
        page.members
            .iter()
            .all(|m| m.rating == Some(0.try_into().unwrap()))
    );
    assert_eq!(page.exercises.len(), 4);
    assert_ne!(page.exercises[1].item.prompt, page.exercises[2].item.prompt);
    assert!(
        group_page(
            &desk.store,
            &class,
            Language::first(),
            date(TODAY),
            "none",
            &[1]
        )
        .is_err()
    );
}

#[test]
fn the_board_of_a_group_counts_only_its_seats() {
    let (desk, concepts) = desk();
    let class = desk.open();
    let today = date(TODAY);
    let row = |group: &[u32]| {
        let board = board(&desk.store, &class, group, Language::first(), today).unwrap();
        board
            .rows
            .into_iter()
            .find(|r| r.concept.id == concepts[0])
            .unwrap()
    };
    let (low, high, all) = (row(&[1, 2, 3]), row(&[8, 9, 10]), row(&[]));
    assert_eq!(low.latest, [3, 0, 0, 0]);
    assert_eq!(high.latest, [0, 0, 0, 3]);
    assert_eq!(all.latest, [5, 0, 0, 5]);
    assert_eq!(low.passes.iter().map(|p| p.rated).sum::<u32>(), 9);
    assert!(low.has_it.unwrap() < all.has_it.unwrap());
    assert!(high.has_it.unwrap() > all.has_it.unwrap());
    assert!(low.low.unwrap() <= low.has_it.unwrap() && low.has_it.unwrap() <= low.high.unwrap());
    assert!(board(&desk.store, &class, &[77], Language::first(), today).is_err());
}
