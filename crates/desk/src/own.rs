//! The teacher's own exercises: taking files in, looking, trying, taking back.

use super::own_views::{
    OwnDesk, OwnExerciseLine, OwnExercisePage, OwnFile, OwnImport, OwnImportKind, OwnLineTaken,
    OwnTried,
};
use super::{OpenClass, TeacherError, open_class};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::{Catalogue, Concept, ConceptId, Language, missing_in};
use surefoot_exercises::bank::{
    BankFile, BankReading, ConceptFound, OwnExercise, OwnId, plain_text, read_bank,
};
use surefoot_exercises::{Block, Response, Say, mark};
use surefoot_record::Class;
use surefoot_store::DeskStore;
use surefoot_store::desk::{
    HeldRows, OwnConceptRow, OwnExerciseRow, OwnImportRow, OwnKindOfImport, OwnRows,
};

fn faulty(error: impl std::fmt::Display) -> TeacherError {
    TeacherError::Faulty(error.to_string())
}

/// Every concept that a class can have: the built-in ones and its own.
pub(super) fn with_built_in(own: &[Concept]) -> Result<BTreeMap<String, Concept>, TeacherError> {
    let catalogue = Catalogue::built_in().map_err(faulty)?;
    Ok(catalogue
        .concepts()
        .iter()
        .chain(own)
        .cloned()
        .map(|concept| (concept.id.as_str().to_owned(), concept))
        .collect())
}

fn stored(row: &OwnExerciseRow) -> Result<OwnExercise, TeacherError> {
    serde_json::from_str(&row.content).map_err(faulty)
}

/// The own exercises of a class by concept.
pub(super) fn by_concept(
    desk: &DeskStore,
    class: &str,
) -> Result<BTreeMap<String, Vec<OwnExercise>>, TeacherError> {
    let mut all: BTreeMap<String, Vec<OwnExercise>> = BTreeMap::new();
    for row in desk.own_exercises(class)? {
        all.entry(row.concept.clone())
            .or_default()
            .push(stored(&row)?);
    }
    Ok(all)
}

/// Stands in a class pack's stamp for what is the teacher's own; empty without any.
pub(super) fn stamp_part(facts: &Class) -> Result<Vec<u8>, TeacherError> {
    let exercises: Vec<String> = facts
        .own_exercises
        .iter()
        .filter(|(concept, _)| facts.concepts.contains_key(*concept))
        .flat_map(|(_, all)| all.iter().map(|own| own.id().to_string()))
        .collect();
    let catalogue = Catalogue::built_in().map_err(faulty)?;
    let concepts: Vec<&Concept> = facts
        .concepts
        .values()
        .filter(|concept| catalogue.get(concept.id.as_str()).is_none())
        .collect();
    if exercises.is_empty() && concepts.is_empty() {
        return Ok(Vec::new());
    }
    serde_json::to_vec(&(exercises, concepts)).map_err(faulty)
}

/// What a class says to a concept's name in a file: its id, its title in any
/// language, or a published code that one concept alone covers.
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

/// What files say, line by line; nothing is stored.
pub type Reading = Vec<BankReading>;

/// Reads question banks against the built-in catalogue alone; nothing is stored.
///
/// # Errors
/// [`TeacherError::NotFound`] for the chosen concept.
pub fn check_exercises(
    files: &[BankFile],
    chosen: Option<&str>,
    main: Language,
) -> Result<Reading, TeacherError> {
    read_against(&with_built_in(&[])?, files, chosen, &BTreeMap::new(), main)
}

fn read_against(
    all: &BTreeMap<String, Concept>,
    files: &[BankFile],
    chosen: Option<&str>,
    held: &BTreeMap<OwnId, usize>,
    main: Language,
) -> Result<Reading, TeacherError> {
    let chosen = chosen
        .map(|id| {
            all.get(id)
                .map(|concept| concept.id.clone())
                .ok_or(TeacherError::NotFound("concept"))
        })
        .transpose()?;
    Ok(read_bank(files, &finder(all), chosen.as_ref(), held, main))
}

/// Reads question banks for a class; nothing is stored.
///
/// # Errors
/// [`TeacherError::NotFound`] for the class or the chosen concept, or the store's.
pub fn read_for_class(
    desk: &DeskStore,
    class: &str,
    files: &[BankFile],
    chosen: Option<&str>,
    main: Language,
) -> Result<Reading, TeacherError> {
    let class = open_class(desk, class)?;
    let held = class
        .facts
        .own_exercises
        .values()
        .flatten()
        .map(|own| (own.id(), own.json_bytes()))
        .collect();
    let all = with_built_in(&class.own_concepts)?;
    read_against(&all, files, chosen, &held, main)
}

fn account_of(reading: &[BankReading], main: Language) -> Vec<OwnFile> {
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

/// Takes question banks in: every good line is stored, every other one is in the
/// account with its reason. All of it is on disk afterwards, or nothing.
///
/// # Errors
/// As [`read_for_class`].
pub fn import_exercises(
    desk: &DeskStore,
    class: &str,
    files: &[BankFile],
    chosen: Option<&str>,
    main: Language,
    today: NaiveDate,
) -> Result<(), TeacherError> {
    let reading = read_for_class(desk, class, files, chosen, main)?;
    let account = serde_json::to_string(&account_of(&reading, main)).map_err(faulty)?;
    desk.together(|| -> Result<(), TeacherError> {
        let number = desk.add_own_import(class, OwnKindOfImport::Exercises, today, &account)?;
        for line in reading.iter().flat_map(|file| &file.taken) {
            desk.add_own_exercise(class, &exercise_row(&line.own, number)?)?;
        }
        Ok(())
    })
}

/// Puts what came with a class key file: one import of each kind, without lines.
pub(super) fn put_all(
    desk: &DeskStore,
    class: &str,
    made_on: NaiveDate,
    concepts: &[Concept],
    exercises: &[OwnExercise],
) -> Result<(), TeacherError> {
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

fn exercise_row(own: &OwnExercise, import: u32) -> Result<OwnExerciseRow, TeacherError> {
    Ok(OwnExerciseRow {
        id: own.id().to_string(),
        concept: own.concept.as_str().to_owned(),
        import,
        content: serde_json::to_string(own).map_err(faulty)?,
    })
}

/// Takes an import back: what it brought goes, its account stays. Gives what goes,
/// for [`super::bring_back`].
///
/// # Errors
/// [`TeacherError::NotFound`] for no such import, [`TeacherError::Invalid`] when one of
/// its concepts stands in the rotation, or the store's.
pub fn undo_own_import(
    desk: &DeskStore,
    class: &str,
    number: u32,
) -> Result<HeldRows, TeacherError> {
    let class = open_class(desk, class)?;
    let id = &class.row.id;
    let import = desk
        .own_imports(id)?
        .into_iter()
        .find(|import| import.number == number && !import.undone)
        .ok_or(TeacherError::NotFound("import"))?;
    let in_use = desk
        .own_concepts(id)?
        .iter()
        .any(|row| row.import == number && class.facts.concepts.contains_key(&row.id));
    if import.kind == OwnKindOfImport::Concepts && in_use {
        return Err(TeacherError::invalid("concepts", "in_rotation"));
    }
    desk.together(|| -> Result<HeldRows, TeacherError> {
        let held = desk.hold_own(id, OwnRows::Import(number))?;
        desk.remove_own_of_import(id, number)?;
        desk.mark_own_import_undone(id, number)?;
        Ok(held)
    })
}

/// Takes one own exercise away. Gives what goes, for [`super::bring_back`].
///
/// # Errors
/// [`TeacherError::NotFound`], or the store's.
pub fn remove_own_exercise(
    desk: &DeskStore,
    class: &str,
    id: &str,
) -> Result<HeldRows, TeacherError> {
    let class = open_class(desk, class)?;
    desk.together(|| {
        let held = desk.hold_own(&class.row.id, OwnRows::Exercise(id))?;
        desk.remove_own_exercise(&class.row.id, id)
            .map_err(|error| match error {
                surefoot_store::StoreError::Missing(what) => TeacherError::NotFound(what),
                other => other.into(),
            })?;
        Ok(held)
    })
}

fn import_view(row: OwnImportRow) -> Result<OwnImport, TeacherError> {
    Ok(OwnImport {
        number: row.number,
        kind: match row.kind {
            OwnKindOfImport::Exercises => OwnImportKind::Exercises,
            OwnKindOfImport::Concepts => OwnImportKind::Concepts,
        },
        made_on: row.made_on,
        undone: row.undone,
        files: serde_json::from_str(&row.account).map_err(faulty)?,
    })
}

/// Facts that name every concept of the catalogue and the class's own.
pub(super) fn facts_with_all(class: &OpenClass) -> Result<Class, TeacherError> {
    Ok(Class {
        concepts: with_built_in(&class.own_concepts)?,
        ..class.facts.clone()
    })
}

/// Everything of the teacher's own in a class.
///
/// # Errors
/// [`TeacherError::NotFound`], or the store's.
pub fn own_desk(
    desk: &DeskStore,
    class: &str,
    language: Language,
) -> Result<OwnDesk, TeacherError> {
    let class = open_class(desk, class)?;
    let facts = facts_with_all(&class)?;
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
        concepts: super::own_concept_lines(&class, &facts, language),
        imports: desk
            .own_imports(&class.row.id)?
            .into_iter()
            .map(import_view)
            .collect::<Result<_, _>>()?,
    })
}

fn found(
    desk: &DeskStore,
    class: &str,
    id: &str,
) -> Result<(OpenClass, OwnExercise), TeacherError> {
    let class = open_class(desk, class)?;
    let own = class
        .facts
        .own_exercises
        .values()
        .flatten()
        .find(|own| own.id().to_string() == id)
        .cloned()
        .ok_or(TeacherError::NotFound("exercise"))?;
    Ok((class, own))
}

/// An own exercise as the student sees it.
///
/// # Errors
/// [`TeacherError::NotFound`], or the store's.
pub fn own_exercise(
    desk: &DeskStore,
    class: &str,
    id: &str,
    language: Language,
) -> Result<OwnExercisePage, TeacherError> {
    let (class, own) = found(desk, class, id)?;
    let item = own.item().map_err(faulty)?;
    Ok(OwnExercisePage {
        id: id.to_owned(),
        concept: facts_with_all(&class)?.name(own.concept.as_str(), language),
        item: item.view(),
        hints: item.hints,
    })
}

/// Marks an answer to an own exercise, as a student's would be; nothing is counted.
///
/// # Errors
/// [`TeacherError::NotFound`], [`TeacherError::Invalid`] for an answer that cannot be
/// read, or the store's.
pub fn try_own_exercise(
    desk: &DeskStore,
    class: &str,
    id: &str,
    response: &Response,
) -> Result<OwnTried, TeacherError> {
    let (_, own) = found(desk, class, id)?;
    let item = own.item().map_err(faulty)?;
    let marked =
        mark(&item, response).map_err(|_| TeacherError::invalid("answer", "unreadable"))?;
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
