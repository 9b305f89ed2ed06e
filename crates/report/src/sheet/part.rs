//! The exercises of one concept on a sheet: generated, own, or both.

use crate::error::ReportError;
use surefoot_catalogue::Concept;
use surefoot_exercises::bank::{OWN_VERSION, OwnExercise};
use surefoot_exercises::{Item, Level, TakenNames, generate_without, has_generator};

/// Exercises of one concept on a sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SheetPart {
    /// The concept.
    pub concept: Concept,
    /// The level of the exercises.
    pub level: Level,
    /// How many. A concept with only own exercises has at most these.
    pub count: usize,
    /// The seed of the first exercise; the others have the next ones.
    pub seed: u64,
    /// The teacher's own exercises of this concept.
    pub own: Vec<OwnExercise>,
    /// Names that the people of generated exercises do not have.
    pub taken: TakenNames,
}

impl SheetPart {
    /// The exercises in their order. Own and generated ones alternate, and an own one comes first, as
    /// in practice.
    pub(super) fn exercises(&self) -> Result<Vec<Item>, ReportError> {
        let own = self.own_items()?;
        if !has_generator(self.concept.id.as_str()) {
            if own.is_empty() {
                return Err(ReportError::NoConcept {
                    id: self.concept.id.as_str().to_owned(),
                });
            }
            return Ok(own.into_iter().take(self.count).collect());
        }
        let turns = self.count.div_ceil(2).min(own.len());
        let mut made = self.made(self.count - turns)?.into_iter();
        let mut items = Vec::with_capacity(self.count);
        for item in own.into_iter().take(turns) {
            items.push(item);
            items.extend(made.next());
        }
        items.extend(made);
        Ok(items)
    }

    /// A code of the values that give the same sheet again.
    pub(super) fn mark(&self, items: &[Item]) -> String {
        let (own, made): (Vec<&Item>, Vec<&Item>) = items
            .iter()
            .partition(|item| item.generator_version == OWN_VERSION);
        let made = made
            .first()
            .map(|item| format!(" · v{}", item.generator_version));
        let own = (!own.is_empty()).then(|| format!(" · +{}", own.len()));
        format!(
            "{} · {} · {}{}{}",
            self.concept.id,
            u8::from(self.level),
            self.seed,
            made.unwrap_or_default(),
            own.unwrap_or_default()
        )
    }

    /// Own exercises, those of the level first. The seed decides which comes first.
    fn own_items(&self) -> Result<Vec<Item>, ReportError> {
        let count = self.own.len().max(1);
        let start = usize::try_from(self.seed % count as u64).unwrap_or(0);
        let mut own: Vec<(usize, &OwnExercise)> = self.own.iter().enumerate().collect();
        own.sort_by_key(|(place, exercise)| {
            let level: u8 = exercise.level.into();
            (
                level.abs_diff(self.level.into()),
                (place + count - start) % count,
            )
        });
        own.into_iter()
            .map(|(_, exercise)| {
                exercise
                    .item()
                    .map_err(|fault| ReportError::Own(format!("{fault:?}")))
            })
            .collect()
    }

    /// Generated exercises by consecutive seeds, without repeated prompts.
    fn made(&self, count: usize) -> Result<Vec<Item>, ReportError> {
        let mut items: Vec<Item> = Vec::new();
        let mut seed = self.seed;
        // A generator with few different prompts may repeat one in the end.
        let tries = count as u64 * 8 + 40;
        while items.len() < count {
            let concept = self.concept.id.as_str();
            let item = generate_without(concept, self.level, seed, self.taken)?;
            let repeated = items
                .iter()
                .any(|i| i.prompt == item.prompt && i.entry == item.entry);
            if !repeated || seed.wrapping_sub(self.seed) > tries {
                items.push(item);
            }
            seed = seed.wrapping_add(1);
        }
        Ok(items)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use surefoot_catalogue::{Catalogue, ConceptId, Language, Text};
    use surefoot_exercises::bank::{OwnForm, OwnKind};
    use surefoot_exercises::concepts_with_exercises;

    fn own(number: usize, level: Level) -> OwnExercise {
        OwnExercise {
            concept: ConceptId::new("own-tides").unwrap(),
            level,
            kind: OwnKind::WholeNumber,
            question: Text::one(
                Language::first(),
                format!("How many boats are number {number}?"),
            ),
            choices: Vec::new(),
            answer: number.to_string(),
            form: OwnForm::Any,
            unit: None,
            hints: Vec::new(),
            steps: Vec::new(),
            wrong: Vec::new(),
        }
    }

    fn part(count: usize, own: Vec<OwnExercise>) -> SheetPart {
        let id = concepts_with_exercises().next().unwrap();
        SheetPart {
            concept: Catalogue::built_in().unwrap().get(id).unwrap().clone(),
            level: Level::Expected,
            count,
            seed: 6,
            own,
            taken: TakenNames::NONE,
        }
    }

    /// True for each own exercise.
    fn turns(part: &SheetPart) -> Vec<bool> {
        let items = part.exercises().unwrap();
        items
            .iter()
            .map(|item| item.generator_version == OWN_VERSION)
            .collect()
    }

    #[test]
    fn own_and_made_exercises_take_turns() {
        let many = (0..9).map(|n| own(n, Level::Expected)).collect();
        assert_eq!(turns(&part(5, many)), [true, false, true, false, true]);
        let one = vec![own(1, Level::Expected)];
        assert_eq!(turns(&part(4, one)), [true, false, false, false]);
        assert_eq!(turns(&part(2, Vec::new())), [false, false]);
    }

    #[test]
    fn the_level_asked_for_comes_first_and_a_seed_begins_elsewhere() {
        let all = vec![
            own(0, Level::Stretch),
            own(1, Level::Expected),
            own(2, Level::Expected),
        ];
        let first = |seed| {
            let part = SheetPart {
                seed,
                ..part(3, all.clone())
            };
            let seeds: Vec<u64> = part.own_items().unwrap().iter().map(|i| i.seed).collect();
            seeds
        };
        let id = |n: usize| all[n].id().seed();
        assert_eq!(first(0), [id(1), id(2), id(0)]);
        assert_eq!(first(2), [id(2), id(1), id(0)]);
    }

    #[test]
    fn a_concept_with_own_exercises_alone_gives_as_many_as_there_are() {
        let mut part = part(5, vec![own(1, Level::Entry), own(2, Level::Entry)]);
        part.concept.id = ConceptId::new("own-tides").unwrap();
        assert_eq!(part.exercises().unwrap().len(), 2);
        assert!(
            part.mark(&part.exercises().unwrap())
                .ends_with("· 2 · 6 · +2")
        );
        part.own.clear();
        assert!(matches!(
            part.exercises(),
            Err(ReportError::NoConcept { .. })
        ));
    }
}
