//! Invented names for an invented class.

use super::seeds::number;

/// The title of the class.
pub(super) const CLASS_TITLE: &str = "Room 7, Otter Ford School (invented)";

/// Given names from many places.
const NAMES: [&str; 40] = [
    "Amara", "Bao", "Carmen", "Dmitri", "Esi", "Farid", "Greta", "Hiro", "Inés", "Jamal", "Kalani",
    "Leila", "Mateo", "Noor", "Olu", "Priya", "Quinn", "Rosa", "Santi", "Talia", "Ulla", "Viktor",
    "Wren", "Ximena", "Yusuf", "Zadie", "Anouk", "Bela", "Chidi", "Daria", "Elio", "Fatou",
    "Goran", "Hana", "Ilse", "Jonah", "Keiko", "Luca", "Maren", "Nia",
];

/// As many names as asked for, in an order drawn from the seed.
pub(super) fn names(count: usize, seed: u64) -> Vec<String> {
    let mut order: Vec<(u64, &str)> = NAMES
        .iter()
        .map(|name| (number(seed, &format!("name {name}")), *name))
        .collect();
    order.sort_unstable();
    (0..count)
        .map(|at| {
            let name = order.get(at % order.len()).map_or("", |(_, name)| *name);
            match at / order.len() {
                0 => name.to_owned(),
                round => format!("{name} {}", round + 1),
            }
        })
        .collect()
}
