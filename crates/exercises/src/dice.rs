//! Random draws for generators: the same from the same seed, on every device and with any
//! version of the random-number crate.

use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{RngCore, SeedableRng};
use sha2::{Digest, Sha256};
use std::ops::RangeInclusive;

/// Draws numbers, choices and names.
pub struct Dice {
    rng: ChaCha8Rng,
    taken: TakenNames,
}

/// Given names from many places, for invented people.
const NAMES: [&str; 24] = [
    "Amara", "Bruno", "Chidi", "Dana", "Elif", "Farid", "Goran", "Hana", "Ivo", "Jaya", "Kofi",
    "Lucía", "Mei", "Nadia", "Omar", "Priya", "Quinn", "Rosa", "Sami", "Tala", "Uma", "Viktor",
    "Yara", "Zoe",
];

/// Further names, for where those are taken.
const MORE_NAMES: [&str; 24] = [
    "Adaeze", "Beto", "Cosima", "Dilan", "Emeka", "Freya", "Gita", "Hakon", "Imani", "Joaquin",
    "Kiri", "Lev", "Malik", "Nilufar", "Oskar", "Paloma", "Ravi", "Sunniva", "Tomas", "Umut",
    "Veda", "Wanjiru", "Xiang", "Yael",
];

/// Every name that an invented person can have, the usual ones first.
pub fn invented_names() -> impl Iterator<Item = &'static str> {
    NAMES.into_iter().chain(MORE_NAMES)
}

/// Names that invented people do not get, such as those of a class: one bit for each of
/// [`invented_names`].
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct TakenNames(u64);

impl TakenNames {
    /// No name is taken.
    pub const NONE: Self = Self(0);

    /// The invented names that are a word of one of these names. Case and accents do not count.
    #[must_use]
    pub fn among<'n>(names: impl IntoIterator<Item = &'n str>) -> Self {
        let plain = |word: &str| -> String {
            let small = word.chars().flat_map(char::to_lowercase);
            small.map(without_accent).collect()
        };
        let words: std::collections::BTreeSet<String> = names
            .into_iter()
            .flat_map(|name| name.split(|c: char| !c.is_alphabetic()))
            .map(plain)
            .collect();
        let bits = invented_names().enumerate();
        let taken = bits.filter(|(_, name)| words.contains(&plain(name)));
        Self(taken.fold(0, |bits, (at, _)| bits | 1 << at))
    }

    fn has(self, at: u64) -> bool {
        self.0 >> at & 1 == 1
    }
}

fn without_accent(letter: char) -> char {
    match letter {
        'á' | 'à' | 'â' | 'ä' | 'ã' | 'å' => 'a',
        'é' | 'è' | 'ê' | 'ë' => 'e',
        'í' | 'ì' | 'î' | 'ï' => 'i',
        'ó' | 'ò' | 'ô' | 'ö' | 'õ' => 'o',
        'ú' | 'ù' | 'û' | 'ü' => 'u',
        'ñ' => 'n',
        other => other,
    }
}

impl Dice {
    /// The dice of one item.
    #[must_use]
    pub fn new(concept: &str, version: u32, level: u8, seed: u64) -> Self {
        let mut hash = Sha256::new();
        hash.update(concept.as_bytes());
        hash.update([0, level]);
        hash.update(version.to_le_bytes());
        hash.update(seed.to_le_bytes());
        Self {
            rng: ChaCha8Rng::from_seed(hash.finalize().into()),
            taken: TakenNames::NONE,
        }
    }

    /// The same dice, which pass over some names. All other draws stay as they are.
    #[must_use]
    pub fn without(self, taken: TakenNames) -> Self {
        Self { taken, ..self }
    }

    /// A number from 0 to `n` − 1, all equally likely (rejection sampling); 0 if `n` is 0.
    fn below(&mut self, n: u64) -> u64 {
        if n == 0 {
            return 0;
        }
        let fair = u64::MAX - u64::MAX % n;
        loop {
            let draw = self.rng.next_u64();
            if draw < fair {
                return draw % n;
            }
        }
    }

    /// A whole number of the range.
    pub fn from(&mut self, range: RangeInclusive<i64>) -> i64 {
        let width = range.end().saturating_sub(*range.start()).max(0) as u64 + 1;
        range.start() + self.below(width) as i64
    }

    /// A multiple of `step` in the range, whose ends are multiples too.
    pub fn step(&mut self, range: RangeInclusive<i64>, step: i64) -> i64 {
        self.from(range.start() / step..=range.end() / step) * step
    }

    /// One of some things. The slice must not be empty.
    pub fn pick<T: Copy>(&mut self, things: &[T]) -> T {
        let n = self.below(things.len() as u64);
        nth(things, n)
    }

    /// True once in `n`.
    pub fn one_in(&mut self, n: u64) -> bool {
        self.below(n) == 0
    }

    /// Puts things in random order.
    pub fn shuffle<T>(&mut self, things: &mut [T]) {
        for last in (1..things.len()).rev() {
            let other = self.below(last as u64 + 1) as usize;
            things.swap(last, other);
        }
    }

    /// `n` different whole numbers of the range, in the order drawn; fewer if
    /// the range is too small.
    pub fn different(&mut self, n: usize, range: RangeInclusive<i64>) -> Vec<i64> {
        let mut all: Vec<i64> = range.collect();
        self.shuffle(&mut all);
        all.truncate(n);
        all
    }

    /// An invented given name.
    pub fn name(&mut self) -> &'static str {
        self.name_beside(&[])
    }

    /// An invented given name that is not one of these.
    pub fn name_beside(&mut self, used: &[&str]) -> &'static str {
        let places: Vec<u64> = (0..NAMES.len() as u64)
            .filter(|at| !used.contains(&nth(&NAMES, *at)))
            .collect();
        let drawn = self.pick(&places);
        self.free_name(drawn, used)
    }

    /// Two different invented given names.
    pub fn two_names(&mut self) -> (&'static str, &'static str) {
        let first = self.below(NAMES.len() as u64);
        let second = first + 1 + self.below(NAMES.len() as u64 - 1);
        let one = self.free_name(first, &[]);
        (one, self.free_name(second, &[one]))
    }

    /// The name that was drawn. If it is taken: the further name of the same place, then the next ones.
    fn free_name(&self, drawn: u64, used: &[&str]) -> &'static str {
        let count = NAMES.len() as u64;
        let mut all = (0..count).flat_map(|n| {
            let at = (drawn + n) % count;
            [(at, nth(&NAMES, at)), (at + count, nth(&MORE_NAMES, at))]
        });
        let free = all.find(|(at, name)| !self.taken.has(*at) && !used.contains(name));
        free.map_or_else(|| nth(&NAMES, drawn), |(_, name)| name)
    }
}

/// The `n`-th of some things; counting goes on from the first after the last.
#[expect(
    clippy::indexing_slicing,
    reason = "a remainder by the length is a place; no generator picks from nothing"
)]
fn nth<T: Copy>(things: &[T], n: u64) -> T {
    things[(n % things.len() as u64) as usize]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn draws_are_fixed_for_good() {
        let mut dice = Dice::new("g3-facts-multiply", 1, 2, 7);
        let draws: Vec<i64> = (0..6).map(|_| dice.from(0..=99)).collect();
        let mut again = Dice::new("g3-facts-multiply", 1, 2, 7);
        assert_eq!(
            draws,
            (0..6).map(|_| again.from(0..=99)).collect::<Vec<_>>()
        );
        let mut other = Dice::new("g3-facts-multiply", 1, 2, 8);
        assert_ne!(
            draws,
            (0..6).map(|_| other.from(0..=99)).collect::<Vec<_>>()
        );
    }

    #[test]
    fn a_taken_name_is_passed_over_and_nothing_else_changes() {
        let taken = TakenNames::among(["Lucia Pérez", "ANNE-MEI", "Dana", "Amaranta", ""]);
        let count = taken.0.count_ones();
        assert_eq!(count, 3);
        let everybody = TakenNames::among(invented_names());
        let most = TakenNames::among(invented_names().take(46));
        for seed in 0..200 {
            let dice = || Dice::new("g3-facts-multiply", 1, 2, seed);
            let drawn = |mut dice: Dice| (dice.name(), dice.two_names(), dice.from(0..=999));
            let (usual, found) = (drawn(dice()), drawn(dice().without(taken)));
            assert_eq!(usual.2, found.2);
            for name in [found.0, found.1.0, found.1.1] {
                assert!(!["Lucía", "Mei", "Dana"].contains(&name));
            }
            for (a, b) in [(usual.0, found.0), (usual.1.0, found.1.0)] {
                assert!(a == b || ["Lucía", "Mei", "Dana"].contains(&a));
            }
            assert_eq!(drawn(dice().without(everybody)), usual);
            let (one, two) = drawn(dice().without(most)).1;
            assert!(
                one != two
                    && [one, two]
                        .iter()
                        .all(|name| ["Xiang", "Yael"].contains(name))
            );
        }
    }

    #[test]
    fn every_number_comes_up() {
        let mut dice = Dice::new("x", 1, 1, 1);
        let mut seen = [0; 6];
        for _ in 0..6000 {
            seen[dice.from(0..=5) as usize] += 1;
        }
        assert!(seen.iter().all(|n| (850..1150).contains(n)), "{seen:?}");
        let (one, two) = dice.two_names();
        assert_ne!(one, two);
    }
}
