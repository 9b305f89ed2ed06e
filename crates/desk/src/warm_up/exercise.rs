//! Chooses the exercise of a concept in a pass: the same on every opening, another in each pass.

use super::views::WarmUpChoice;
use sha2::{Digest, Sha256};
use surefoot_catalogue::rotation::Phase;
use surefoot_exercises::bank::OwnExercise;
use surefoot_exercises::{Item, Level, TakenNames, generate_without, has_generator};

/// The level of a phase. Our choice; no source. The teacher can choose another level.
pub(super) fn level_of(phase: Phase) -> Level {
    match phase {
        Phase::Preview => Level::Entry,
        Phase::Practice => Level::Expected,
        Phase::Review => Level::Stretch,
    }
}

/// Seeds tried at most for an exercise that was not shown before. A concept with few different
/// exercises repeats one then.
const MOST_TRIES: u64 = 40;

/// Seeds have six digits at most, as on every sheet, so that they can be typed.
const SEEDS: u64 = 1_000_000;

/// The exercise of a concept in a pass.
pub(super) struct Wanted<'a> {
    pub class: &'a str,
    pub concept: &'a str,
    pub own: &'a [OwnExercise],
    pub level: Level,
    pub pass: usize,
    /// The names of the class.
    pub taken: TakenNames,
}

impl Wanted<'_> {
    /// The exercise after so many swaps: none of those before it in this pass, and not the usual
    /// one of the pass before.
    pub(super) fn exercise(&self, choice: &WarmUpChoice) -> Option<Item> {
        let put_in = choice.own.as_ref().and_then(|id| {
            let own = self.own.iter().find(|own| own.id().to_string() == *id)?;
            own.item().ok()
        });
        if put_in.is_some() {
            return put_in;
        }
        let swaps = u64::from(choice.swaps);
        if !has_generator(self.concept) {
            let nth = (self.pass as u64).wrapping_add(swaps);
            let place = usize::try_from(nth).ok()?.checked_rem(self.own.len())?;
            return self.own.get(place)?.item().ok();
        }
        let mut shown: Vec<Item> = Vec::new();
        let before = self.pass.checked_sub(1).map(|pass| Self { pass, ..*self });
        shown.extend(before.and_then(|before| before.exercise(&WarmUpChoice::default())));
        let before = shown.len();
        let mut seed = 0;
        loop {
            let item = self.made(seed)?;
            seed += 1;
            let again = shown
                .iter()
                .any(|one| one.prompt == item.prompt && one.entry == item.entry);
            let last = seed > swaps + MOST_TRIES;
            if again && !last {
                continue;
            }
            if last || (shown.len() - before) as u64 == swaps {
                return Some(item);
            }
            shown.push(item);
        }
    }

    /// The exercise of the nth seed of the pass.
    fn made(&self, nth: u64) -> Option<Item> {
        let seed = (self.first_seed() + nth) % SEEDS;
        generate_without(self.concept, self.level, seed, self.taken).ok()
    }

    /// The first seed of the pass. The class's id comes from its keys, so every computer of the class
    /// has the same.
    fn first_seed(&self) -> u64 {
        let mut digest = Sha256::new();
        for part in [self.class, self.concept] {
            digest.update((part.len() as u64).to_le_bytes());
            digest.update(part);
        }
        digest.update((self.pass as u64).to_le_bytes());
        let bytes = digest.finalize();
        let number = bytes
            .iter()
            .take(8)
            .fold(0_u64, |sum, byte| (sum << 8) | u64::from(*byte));
        number % SEEDS
    }
}
