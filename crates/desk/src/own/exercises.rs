//! Imports, shows, tries and removes own exercises.

use super::views::{
    OwnDesk, OwnExerciseLine, OwnExercisePage, OwnFile, OwnImport, OwnImportKind, OwnLineTaken,
    OwnTried,
};
use crate::class::concepts::with_built_in;
use crate::class::{OpenClass, open_class};
use crate::error::{DeskError, Field, Rule, Thing, faulty};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::{Concept, ConceptId, Language, missing_in};
use surefoot_exercises::bank::{
    BankFile, BankReading, ConceptFound, OwnExercise, OwnId, plain_text, read_bank,
};
use surefoot_exercises::{Block, Response, Say, mark};
use surefoot_store::DeskStore;
use surefoot_store::desk::{
    OwnConceptRow, OwnExerciseRow, OwnImportRow, OwnKindOfImport, OwnRows, RemovedRows,
};

/// Finds a concept by its id, its title in any language, or a published code that only one concept
/// covers.
fn finder(all: &BTreeMap<String, Concept>) -> impl Fn(&str) -> ConceptFound + '_ {
    move |text: &str| {
        let wanted = text.trim().to_lowercase();
        if let Some(concept) = all.get(&wanted) {
            return ConceptFound::One(concept.id.clone());
        }
        let named: BTreeSet<&ConceptId> = all
            .values()
            .filter(|c| {
                c.is_titled(&wanted)
                    || c.alignments
                        .iter()
                        .any(|code| code.to_lowercase() == wanted)
            })
            .map(|c| &c.id)
            .collect();
        let mut found = named.into_iter();
        match (found.next(), found.next()) {
            (Some(one), None) => ConceptFound::One(one.clone()),
            (Some(_), Some(_)) => ConceptFound::Several,
            _ => ConceptFound::None,
        }
    }
}

/// The lines of question banks.
pub type Reading = Vec<BankReading>;

/// Reads question banks against the concepts of the catalogue, and stores nothing.
pub fn check_exercises(
    files: &[BankFile],
    chosen: Option<&str>,
    main: Language,
) -> Result<Reading, DeskError> {
    read_against(&with_built_in(&[])?, files, chosen, &BTreeMap::new(), main)
}

fn read_against(
    all: &BTreeMap<String, Concept>,
    files: &[BankFile],
    chosen: Option<&str>,
    known: &BTreeMap<OwnId, usize>,
    main: Language,
) -> Result<Reading, DeskError> {
    let chosen = chosen
        .map(|id| {
            all.get(id)
                .map(|concept| concept.id.clone())
                .ok_or(DeskError::NotFound(Thing::Concept))
        })
        .transpose()?;
    Ok(read_bank(files, &finder(all), chosen.as_ref(), known, main))
}

/// Reads question banks for a class, and stores nothing.
pub fn read_for_class(
    desk: &DeskStore,
    class: &str,
    files: &[BankFile],
    chosen: Option<&str>,
    main: Language,
) -> Result<Reading, DeskError> {
    let class = open_class(desk, class)?;
    let known = class
        .facts
        .own_exercises
        .values()
        .flatten()
        .map(|own| (own.id(), own.json_bytes()))
        .collect();
    let all = with_built_in(&class.own_concepts)?;
    read_against(&all, files, chosen, &known, main)
}

fn report_of(reading: &[BankReading], main: Language) -> Vec<OwnFile> {
    reading
        .iter()
        .map(|file| OwnFile {
            file: file.file.clone(),
            taken: file
                .taken
                .iter()
                .map(|line| OwnLineTaken {
                    line: line.line,
                    id: line.own.id().to_string(),
                    words: plain_text(line.own.question.get(main)),
                    missing_in: missing_in(line.own.texts()),
                    left_out: line.left_out.clone(),
                })
                .collect(),
            refused: file.refused.clone(),
        })
        .collect()
}

/// Imports question banks, as a whole or not at all. Stores every valid line; the import report has
/// every other one with its reason.
pub fn import_exercises(
    desk: &DeskStore,
    class: &str,
    files: &[BankFile],
    chosen: Option<&str>,
    main: Language,
    today: NaiveDate,
) -> Result<(), DeskError> {
    let reading = read_for_class(desk, class, files, chosen, main)?;
    let report = serde_json::to_string(&report_of(&reading, main)).map_err(faulty)?;
    desk.transaction(|| -> Result<(), DeskError> {
        let number = desk.add_own_import(class, OwnKindOfImport::Exercises, today, &report)?;
        for line in reading.iter().flat_map(|file| &file.taken) {
            desk.add_own_exercise(class, &exercise_row(&line.own, number)?)?;
        }
        Ok(())
    })
}

/// Stores the exercises and concepts of a class key as one import of each kind.
pub(crate) fn put_all(
    desk: &DeskStore,
    class: &str,
    made_on: NaiveDate,
    concepts: &[Concept],
    exercises: &[OwnExercise],
) -> Result<(), DeskError> {
    if !concepts.is_empty() {
        let import = desk.add_own_import(class, OwnKindOfImport::Concepts, made_on, "[]")?;
        for concept in concepts {
            desk.add_own_concept(
                class,
                &OwnConceptRow {
                    id: concept.id.as_str().to_owned(),
                    import,
                    content: serde_json::to_string(concept).map_err(faulty)?,
                },
            )?;
        }
    }
    if !exercises.is_empty() {
        let import = desk.add_own_import(class, OwnKindOfImport::Exercises, made_on, "[]")?;
        for own in exercises {
            desk.add_own_exercise(class, &exercise_row(own, import)?)?;
        }
    }
    Ok(())
}

fn exercise_row(own: &OwnExercise, import: u32) -> Result<OwnExerciseRow, DeskError> {
    Ok(OwnExerciseRow {
        id: own.id().to_string(),
        concept: own.concept.as_str().to_owned(),
        import,
        content: serde_json::to_string(own).map_err(faulty)?,
    })
}

/// Undoes an import: removes its exercises or concepts and keeps its report. Returns the
/// removed rows for [`crate::restore`].
///
/// # Errors
/// Returns [`DeskError::NotFound`] for an unknown import, [`DeskError::Invalid`] if one of its
/// concepts is in the rotation.
pub fn undo_own_import(
    desk: &DeskStore,
    class: &str,
    number: u32,
) -> Result<RemovedRows, DeskError> {
    let class = open_class(desk, class)?;
    let id = &class.row.id;
    let import = desk
        .own_imports(id)?
        .into_iter()
        .find(|import| import.number == number && !import.undone)
        .ok_or(DeskError::NotFound(Thing::Import))?;
    let in_use = desk
        .own_concepts(id)?
        .iter()
        .any(|row| row.import == number && class.facts.concepts.contains_key(&row.id));
    if import.kind == OwnKindOfImport::Concepts && in_use {
        return Err(DeskError::invalid(Field::Concepts, Rule::InRotation));
    }
    desk.transaction(|| -> Result<RemovedRows, DeskError> {
        let held = desk.own_rows_to_remove(id, OwnRows::Import(number))?;
        desk.remove_own_of_import(id, number)?;
        desk.mark_own_import_undone(id, number)?;
        Ok(held)
    })
}

/// Removes one own exercise. Returns the removed rows for [`crate::restore`].
pub fn remove_own_exercise(
    desk: &DeskStore,
    class: &str,
    id: &str,
) -> Result<RemovedRows, DeskError> {
    let class = open_class(desk, class)?;
    desk.transaction(|| {
        let held = desk.own_rows_to_remove(&class.row.id, OwnRows::Exercise(id))?;
        desk.remove_own_exercise(&class.row.id, id)?;
        Ok(held)
    })
}

fn import_view(row: OwnImportRow) -> Result<OwnImport, DeskError> {
    Ok(OwnImport {
        number: row.number,
        kind: match row.kind {
            OwnKindOfImport::Exercises => OwnImportKind::Exercises,
            OwnKindOfImport::Concepts => OwnImportKind::Concepts,
        },
        made_on: row.made_on,
        undone: row.undone,
        files: serde_json::from_str(&row.report).map_err(faulty)?,
    })
}

/// The own exercises and concepts of a class.
pub fn own_desk(desk: &DeskStore, class: &str, language: Language) -> Result<OwnDesk, DeskError> {
    let class = open_class(desk, class)?;
    let facts = class.facts_with_all()?;
    let exercises = facts
        .own_exercises
        .iter()
        .flat_map(|(concept, all)| all.iter().map(move |own| (concept, own)))
        .map(|(concept, own)| OwnExerciseLine {
            id: own.id().to_string(),
            concept: facts.name(concept, language),
            in_rotation: class.facts.concepts.contains_key(concept),
            level: own.level.into(),
            kind: own.kind,
            question: plain_text(own.question.get(language)),
            shown_in: own.question.substitute(language),
            answer: plain_text(&own.key_in_words()),
        })
        .collect();
    Ok(OwnDesk {
        exercises,
        concepts: super::concepts::own_concept_lines(&class, &facts, language),
        imports: desk
            .own_imports(&class.row.id)?
            .into_iter()
            .map(import_view)
            .collect::<Result<_, _>>()?,
    })
}

fn found(desk: &DeskStore, class: &str, id: &str) -> Result<(OpenClass, OwnExercise), DeskError> {
    let class = open_class(desk, class)?;
    let own = class
        .facts
        .own_exercises
        .values()
        .flatten()
        .find(|own| own.id().to_string() == id)
        .cloned()
        .ok_or(DeskError::NotFound(Thing::Exercise))?;
    Ok((class, own))
}

/// An own exercise as the student sees it.
pub fn own_exercise(
    desk: &DeskStore,
    class: &str,
    id: &str,
    language: Language,
) -> Result<OwnExercisePage, DeskError> {
    let (class, own) = found(desk, class, id)?;
    let item = own.item().map_err(faulty)?;
    Ok(OwnExercisePage {
        id: id.to_owned(),
        concept: class.facts_with_all()?.name(own.concept.as_str(), language),
        item: item.view(),
        hints: item.hints,
    })
}

/// Marks an answer to an own exercise, and counts nothing.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for an answer that cannot be read.
pub fn try_own_exercise(
    desk: &DeskStore,
    class: &str,
    id: &str,
    response: &Response,
) -> Result<OwnTried, DeskError> {
    let (_, own) = found(desk, class, id)?;
    let item = own.item().map_err(faulty)?;
    let marked =
        mark(&item, response).map_err(|_| DeskError::invalid(Field::Answer, Rule::Unreadable))?;
    let mut says: Vec<Block> = marked
        .noticed
        .map(|noticed| noticed.say.into())
        .into_iter()
        .collect();
    says.extend(
        marked
            .form_note
            .map(|note| Block::from(Say::new(note.message_id()))),
    );
    let worked = item.worked();
    Ok(OwnTried {
        right: marked.right,
        says,
        answer: worked.answer,
        steps: worked.steps,
    })
}
