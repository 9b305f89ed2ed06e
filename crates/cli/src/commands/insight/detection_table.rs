//! How well our order finds the weak concepts of simulated classes, compared with plain
//! shares and a tick chart on the same classes.

use super::class::{self, Rows};
use super::instances::{cases, parse};
use crate::out::{CommandResult, print_json, put_line};
use serde::Deserialize;
use serde_json::{Value, json};

/// Concepts looked at from the top of an order.
const FIRST: usize = 5;

#[derive(Deserialize)]
struct Case {
    ratings: Rows,
    truth: Vec<Truth>,
}

#[derive(Deserialize)]
struct Answer {
    dates: Vec<Ours>,
}

/// Our order on a date.
#[derive(Deserialize)]
struct Ours {
    upto: usize,
    key: Vec<f64>,
}

/// What the simulation knows on a date.
#[derive(Deserialize)]
struct Truth {
    upto: usize,
    /// The truly weak concepts.
    #[serde(rename = "weakest12")]
    weak: Vec<usize>,
}

/// The orders of the concepts that are compared.
pub(super) const WAYS: [&str; 4] = [
    "Surefoot",
    "share not confident, year",
    "tick chart",
    "share not confident, this rotation",
];

/// AUC and share of the first five of each order, on one date of one class.
pub(super) type Found = [[f64; 2]; WAYS.len()];

/// Prints the table for a file of simulated classes with their truth.
///
/// # Errors
/// Fails for a file without truth.
pub fn print(file: &Value, as_json: bool) -> CommandResult {
    let (classes, found) = measure(file)?;
    let dates = found.len();
    let means: Vec<(&str, [f64; 2])> = WAYS
        .iter()
        .enumerate()
        .map(|(way, name)| {
            let mean = |part: fn(&[f64; 2]) -> f64| {
                let of_way = found.iter().filter_map(|ways| ways.get(way));
                of_way.map(part).sum::<f64>() / dates as f64
            };
            (*name, [mean(|[auc, _]| *auc), mean(|[_, first]| *first)])
        })
        .collect();
    if as_json {
        let rows: Vec<Value> = means
            .iter()
            .map(|(way, [auc, first])| json!({ "way": way, "auc": auc, "first_five": first }))
            .collect();
        return print_json(&json!({ "classes": classes, "dates": dates, "ways": rows }));
    }
    put_line!("{:<36} {:>6} {:>11}", "order by", "AUC", "first five");
    for (way, [auc, first]) in means {
        put_line!("{way:<36} {auc:>6.3} {first:>11.3}");
    }
    put_line!(
        "{classes} simulated classes, {dates} dates; no real children. AUC: probability that a truly"
    );
    put_line!("weak concept ranks above another one. First five: share of them truly weak.");
    Ok(())
}

/// The number of classes, and the measures of every order on each of their dates.
///
/// # Errors
/// Fails for a file without truth.
pub(super) fn measure(file: &Value) -> Result<(usize, Vec<Found>), String> {
    let cases = cases(file, "cases")?;
    let mut found = Vec::new();
    for case in cases {
        let Answer { dates } = parse(&class::detection(case)?)?;
        let case: Case = parse(case)?;
        for truth in &case.truth {
            let upto = truth.upto;
            let date = dates.iter().find(|date| date.upto == upto);
            let keys = [
                date.ok_or_else(|| format!("upto {upto} was not asked for"))?
                    .key
                    .clone(),
                not_confident(&case.ratings, |row| row.get(..=upto).unwrap_or(row)),
                without_tick(&case.ratings, upto),
                not_confident(&case.ratings, |row| row.get(upto..=upto).unwrap_or("")),
            ];
            found.push(keys.map(|key| [area(&key, &truth.weak), among_first(&key, &truth.weak)]));
        }
    }
    if found.is_empty() {
        return Err("no class with its truth".into());
    }
    Ok((cases.len(), found))
}

/// The share of ratings below "On my own" in a part of each row.
fn not_confident(ratings: &Rows, part: impl Fn(&str) -> &str) -> Vec<f64> {
    each_concept(ratings, |rows| {
        let (mut low, mut all) = (0.0, 0.0);
        for mark in rows
            .flat_map(|row| part(row).bytes())
            .filter(|m| *m != b'.')
        {
            all += 1.0;
            low += f64::from(u8::from(mark < b'2'));
        }
        // Without a rating a concept is neither weak nor strong.
        if all > 0.0 { low / all } else { 0.5 }
    })
}

/// The share of students without a tick on a wall chart. A student has a tick while the last
/// rating is "On my own" or "Could teach it".
fn without_tick(ratings: &Rows, upto: usize) -> Vec<f64> {
    each_concept(ratings, |rows| {
        let (mut without, mut all) = (0.0, 0.0);
        for row in rows {
            let last = row.bytes().take(upto + 1).rfind(|mark| *mark != b'.');
            all += 1.0;
            without += f64::from(u8::from(last.is_none_or(|mark| mark < b'2')));
        }
        if all > 0.0 { without / all } else { 0.5 }
    })
}

fn each_concept(ratings: &Rows, key: impl Fn(&mut dyn Iterator<Item = &str>) -> f64) -> Vec<f64> {
    let concepts = ratings.iter().map(Vec::len).max().unwrap_or(0);
    (0..concepts)
        .map(|concept| {
            key(&mut ratings
                .iter()
                .filter_map(|rows| rows.get(concept).map(String::as_str)))
        })
        .collect()
}

/// Probability that a weak concept has a larger key than another one; equal keys count half.
fn area(key: &[f64], weak: &[usize]) -> f64 {
    let (mut wins, mut pairs) = (0.0, 0.0);
    for a in weak.iter().filter_map(|at| key.get(*at)) {
        for (_, b) in key.iter().enumerate().filter(|(at, _)| !weak.contains(at)) {
            pairs += 1.0;
            wins += match a.total_cmp(b) {
                std::cmp::Ordering::Greater => 1.0,
                std::cmp::Ordering::Equal => 0.5,
                std::cmp::Ordering::Less => 0.0,
            };
        }
    }
    wins / f64::max(pairs, 1.0)
}

/// The share of the first five concepts by key that are weak. Of equal keys the earlier
/// concept comes first.
fn among_first(key: &[f64], weak: &[usize]) -> f64 {
    let mut order: Vec<(usize, f64)> = key.iter().copied().enumerate().collect();
    order.sort_by(|a, b| b.1.total_cmp(&a.1));
    let hits = order
        .iter()
        .take(FIRST)
        .filter(|(at, _)| weak.contains(at))
        .count();
    hits as f64 / FIRST as f64
}
