//! Invented names for an invented class.

use super::seeds::number;

/// The title of the class.
pub(super) const CLASS_TITLE: &str = "Room 7, Otter Ford School (invented)";

/// Given names from many places. None of them is a name in an exercise.
const NAMES: [&str; 40] = [
    "Asha", "Bao", "Carmen", "Dmitri", "Esi", "Faisal", "Greta", "Hiro", "Inés", "Jamal", "Kalani",
    "Leila", "Mateo", "Noor", "Olu", "Pilar", "Quentin", "Rania", "Santi", "Talia", "Ulla",
    "Vesna", "Wren", "Ximena", "Yusuf", "Zadie", "Anouk", "Bela", "Chike", "Daria", "Elio",
    "Fatou", "Gorka", "Hilda", "Ilse", "Jonah", "Keiko", "Luca", "Maren", "Nia",
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

#[cfg(test)]
mod tests {
    use super::*;
    use surefoot_exercises::{TakenNames, invented_names};

    #[test]
    fn no_exercise_has_a_name_of_the_sample_class() {
        assert_eq!(TakenNames::among(NAMES), TakenNames::NONE);
        assert_ne!(
            TakenNames::among(invented_names().take(1)),
            TakenNames::NONE
        );
    }
}
