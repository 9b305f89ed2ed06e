//! Sequences of released rows, and a reader who adds and subtracts them exactly.

use super::*;
use num_rational::BigRational;
use num_traits::{One as _, Zero as _};
use proptest::prelude::*;
use rand::seq::SliceRandom as _;
use rand::{Rng as _, SeedableRng as _};
use rand_chacha::ChaCha8Rng;
use std::collections::{BTreeMap, BTreeSet};

const LEAST: usize = 10;

/// A student's last rating of the one concept: its date, how often it was given on that date, and
/// whether it is low.
type Ratings = BTreeMap<usize, (usize, usize, bool)>;

fn row(ratings: &Ratings) -> ReleasedRow {
    let ratings = ratings.iter().map(|(seat, (day, version, low))| {
        let rating = CountedRating {
            mark: format!("{seat} {day} {version}"),
            low: *low,
            gone: false,
        };
        ((format!("{seat}"), format!("{seat} {day}")), rating)
    });
    ReleasedRow {
        name: "c".into(),
        ratings: ratings.collect(),
    }
}

/// The first `low` of `seats` students rated low.
fn rated(seats: usize, low: usize) -> Ratings {
    (0..seats).map(|seat| (seat, (1, 0, seat < low))).collect()
}

fn turn(ratings: &Ratings, seats: impl IntoIterator<Item = usize>) -> Ratings {
    let mut after = ratings.clone();
    for seat in seats {
        let (day, version, low) = after[&seat];
        after.insert(seat, (day, version + 1, !low));
    }
    after
}

fn check(before: &[&Ratings], after: &Ratings) -> Result<(), RowFault> {
    let log: Vec<ReleasedRow> = before.iter().map(|ratings| row(ratings)).collect();
    check_row(&log, &row(after), LEAST)
}

#[test]
fn a_row_comes_again_unchanged_or_when_ten_changed_and_ten_did_not() {
    let first = rated(24, 12);
    assert_eq!(check(&[], &first), Ok(()));
    assert_eq!(check(&[&first], &first), Ok(()));
    // One late student, one who left, one who rated anew.
    let few = Err(RowFault::TooFewChanged);
    assert_eq!(check(&[&rated(23, 12)], &first), few);
    assert_eq!(check(&[&first], &rated(23, 12)), few);
    assert_eq!(check(&[&first], &turn(&first, [3])), few);
    // The same again, given anew: a reader would learn that nothing changed.
    let again = turn(&turn(&first, [3]), [3]);
    assert_eq!(check(&[&first], &again), few);
    // Of twelve that changed, half were low.
    let second = turn(&first, 6..18);
    assert_eq!(check(&[&first], &second), Ok(()));
    // Nine changed, and nine did not.
    assert_eq!(check(&[&first], &turn(&first, 8..17)), few);
    assert_eq!(check(&[&first], &turn(&first, 5..20)), few);
    // On another day, all but three rate again: who is like before is not known.
    let mut later = first.clone();
    later.values_mut().take(21).for_each(|rating| rating.0 = 2);
    assert_eq!(check(&[&first], &later), Ok(()));
    // One late rating of yesterday.
    later.insert(24, (1, 0, true));
    assert_eq!(check(&[&first], &later), Ok(()));
    let mut late = later.clone();
    late.insert(25, (1, 0, true));
    assert_eq!(check(&[&first, &later], &late), few);
    // A class without ten of its students may be shown.
    assert_eq!(check(&[&rated(24, 20)], &rated(14, 14)), Ok(()));
}

#[test]
fn a_change_of_all_in_one_direction_is_withheld() {
    let first = rated(40, 20);
    for same in 0..=5 {
        // Ten were low and are not any more; `same` went the other way.
        let after = turn(&first, (0..10).chain(20..20 + same));
        // Each of them moves the sum by two from its extreme.
        let wanted = if 2 * same > NEAR {
            Ok(())
        } else {
            Err(RowFault::SameChange)
        };
        assert_eq!(check(&[&first], &after), wanted, "{same}");
    }
    // Twelve newcomers who are all low, and ten who leave and were all high.
    assert_eq!(
        check(
            &[&rated(12, 6)],
            &(0..24)
                .map(|s| (s, (1, 0, !(6..12).contains(&s))))
                .collect()
        ),
        Err(RowFault::SameChange)
    );
    assert_eq!(
        check(&[&rated(24, 14)], &rated(14, 14)),
        Err(RowFault::SameChange)
    );
}

const NEAR: usize = 2;

#[test]
fn who_left_hides_only_what_nobody_knows_any_more() {
    let first = rated(36, 18);
    let mut log = row(&first);
    let left: Vec<_> = log.ratings.keys().take(12).cloned().collect();
    for key in &left {
        log.ratings.get_mut(key).unwrap().gone = true;
    }
    let mut after = row(&first);
    after.ratings.retain(|key, _| !left.contains(key));
    // The twelve may have been all low or all high.
    assert_eq!(check_row(&[log], &after, LEAST), Err(RowFault::SameChange));
}

/// The fewest students whose ratings a combination of the rows involves, among those that the
/// elimination finds in `orders` orders of the unknowns.
fn fewest(columns: &BTreeMap<Unknown, Vec<i64>>, orders: usize) -> Option<usize> {
    let mut alike: BTreeMap<&Vec<i64>, BTreeSet<usize>> = BTreeMap::new();
    for ((seat, ..), column) in columns {
        if column.iter().any(|value| *value != 0) {
            alike.entry(column).or_default().insert(*seat);
        }
    }
    let sets: Vec<(&Vec<i64>, BTreeSet<usize>)> = alike.into_iter().collect();
    let rows = sets.first()?.0.len();
    let mut dice = ChaCha8Rng::seed_from_u64(1);
    let mut order: Vec<usize> = (0..sets.len()).collect();
    order.sort_by_key(|at| std::cmp::Reverse(sets[*at].1.len()));
    let mut least = None;
    for _ in 0..orders {
        let mut left: Vec<Vec<BigRational>> = (0..rows)
            .map(|row| {
                let values = order.iter().map(|at| sets[*at].0[row]);
                values
                    .map(|value| BigRational::from_integer(value.into()))
                    .collect()
            })
            .collect();
        let mut reduced: Vec<Vec<BigRational>> = Vec::new();
        for at in 0..order.len() {
            let Some(place) = left.iter().position(|row| !row[at].is_zero()) else {
                continue;
            };
            let mut pivot = left.swap_remove(place);
            let by = BigRational::one() / pivot[at].clone();
            pivot.iter_mut().for_each(|value| *value *= by.clone());
            for row in left.iter_mut().chain(&mut reduced) {
                let factor = row[at].clone();
                if !factor.is_zero() {
                    for (value, own) in row.iter_mut().zip(&pivot) {
                        *value -= factor.clone() * own;
                    }
                }
            }
            reduced.push(pivot);
        }
        for row in &reduced {
            let involved: BTreeSet<usize> = (row.iter().enumerate())
                .filter(|(_, value)| !value.is_zero())
                .flat_map(|(at, _)| &sets[order[at]].1)
                .copied()
                .collect();
            least = least.min(Some(involved.len())).or(Some(involved.len()));
        }
        order.shuffle(&mut dice);
    }
    least
}

/// What a reader may know: nothing but who rated when; also who gave the same rating again on a date;
/// also that all others of that date changed sides.
#[derive(Clone, Copy, Debug)]
enum Knows {
    Versions,
    SameAgain,
    Sides,
}

/// Student, date, and what else tells ratings apart.
type Unknown = (usize, usize, usize);

fn unknowns(tables: &[Ratings], knows: Knows) -> BTreeMap<Unknown, Vec<i64>> {
    let mut columns = BTreeMap::new();
    for (at, ratings) in tables.iter().enumerate() {
        for (seat, (day, version, low)) in ratings {
            let unknown = match knows {
                Knows::Versions => *version,
                Knows::SameAgain => usize::from(*low),
                Knows::Sides => 0,
            };
            let column = columns
                .entry((*seat, *day, unknown))
                .or_insert_with(|| vec![0; tables.len()]);
            column[at] = match knows {
                Knows::Sides if !low => -1,
                _ => 1,
            };
        }
    }
    if matches!(knows, Knows::Sides) {
        for column in columns.values_mut() {
            if column.iter().find(|value| **value != 0) == Some(&-1) {
                column
                    .iter_mut()
                    .for_each(|value: &mut i64| *value = -*value);
            }
        }
    }
    columns
}

/// Twenty moments of a class of 30 to 59; each time some, many or all rate again, and one may leave.
fn moments(seed: u64) -> Vec<Ratings> {
    let mut dice = ChaCha8Rng::seed_from_u64(seed);
    let seats = dice.random_range(30..60);
    let mut now: Ratings = (0..seats)
        .map(|seat| (seat, (1, 0, dice.random())))
        .collect();
    let (mut all, mut day) = (vec![now.clone()], 1);
    while all.len() < 20 {
        let share = [0.02, 0.1, 0.5, 0.9, 1.0][dice.random_range(0..5)];
        day += usize::from(dice.random_bool(0.5));
        for rating in now.values_mut() {
            if dice.random_bool(share) {
                *rating = (day, rating.1 + 1, dice.random());
            }
        }
        if dice.random_bool(0.1) {
            let gone = dice.random_range(0..seats);
            now.remove(&gone);
        }
        all.push(now.clone());
    }
    all
}

/// Whether a table follows if only the roster decides, as it would without a look at the ratings.
fn by_roster(log: &[Ratings], now: &Ratings) -> bool {
    log.iter().all(|earlier| {
        let differ = (earlier.keys())
            .filter(|seat| !now.contains_key(seat))
            .count();
        differ == 0 || differ >= LEAST
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn no_combination_of_twenty_releases_involves_fewer_than_ten(seed in 0_u64..1 << 40) {
        let mut released: Vec<Ratings> = Vec::new();
        let mut log: Vec<ReleasedRow> = Vec::new();
        for now in moments(seed) {
            let candidate = row(&now);
            if check_row(&log, &candidate, LEAST).is_ok() {
                if !log.contains(&candidate) {
                    released.push(now);
                }
                log.push(candidate);
            }
        }
        prop_assert!(!released.is_empty());
        for knows in [Knows::Versions, Knows::SameAgain, Knows::Sides] {
            let found = fewest(&unknowns(&released, knows), 12).unwrap();
            prop_assert!(found >= LEAST, "{found} of {} tables, {knows:?}", released.len());
        }
    }
}

#[test]
fn a_rule_that_looks_at_the_roster_alone_gives_students_away() {
    let given_away = (0..20)
        .filter(|seed| {
            let mut released: Vec<Ratings> = Vec::new();
            for now in moments(*seed) {
                if by_roster(&released, &now) {
                    released.push(now);
                }
            }
            fewest(&unknowns(&released, Knows::Versions), 12).unwrap() < LEAST
        })
        .count();
    assert!(given_away > 10, "{given_away} of 20");
}
