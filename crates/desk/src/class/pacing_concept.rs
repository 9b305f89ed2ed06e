//! Finds the concept that a line of a pacing list names.

use super::open::OpenClass;
use crate::error::DeskError;
use std::collections::BTreeSet;
use surefoot_catalogue::Language;
use surefoot_record::Class;

/// Near titles that are offered at most.
const MOST_NEAR: usize = 3;

/// How alike a title must be to be offered, from 0 to 1. Chosen by trying the lists of the tests.
const LEAST_ALIKE: f64 = 0.6;

/// What a line names.
#[derive(Debug, PartialEq)]
pub(super) enum Named {
    /// These concepts of the rotation; several for a standard.
    Sure(Vec<String>),
    /// Perhaps one of these concepts of the rotation, the likeliest first.
    Near(Vec<String>),
    /// A concept that the class can have, outside the rotation.
    NotInRotation,
    Nothing,
}

/// The concepts of a class with the words that name them.
pub(crate) struct Concepts {
    /// With every concept that the class can have.
    pub facts: Class,
    all: Vec<Known>,
}

struct Known {
    id: String,
    in_rotation: bool,
    /// Id, titles and statements as [`plain`] words.
    exact: BTreeSet<String>,
    titles: BTreeSet<String>,
    codes: BTreeSet<String>,
}

/// Words of small letters and digits, with single spaces between them.
fn plain(text: &str) -> String {
    // The comma of 1,000 is no space.
    let joined = text.replace([',', '\'', '’'], "").to_lowercase();
    let words = joined.split(|c: char| !c.is_alphanumeric() && c != '×' && c != '÷');
    let words: Vec<&str> = words.filter(|word| !word.is_empty()).collect();
    words.join(" ")
}

/// A code of a standard without prefix and cluster: `CCSS.MATH.CONTENT.4.NBT.A.1` and `4.NBT.1`
/// are the same; `None` for other words. Source: the notation of the Common Core State Standards,
/// grade, domain, cluster, standard, letter.
fn code(word: &str) -> Option<String> {
    let word = word
        .trim_matches(|c: char| !c.is_alphanumeric())
        .to_uppercase();
    let parts: Vec<&str> = word.split(['.', '-']).collect();
    let from = parts.iter().position(|part| {
        let digits = !part.is_empty() && part.chars().all(|c| c.is_ascii_digit());
        digits || *part == "K" || part.starts_with("KS")
    })?;
    let code = parts.get(from..)?;
    let [first, second, ..] = code else {
        return None;
    };
    if !second.chars().all(char::is_alphabetic) && !first.starts_with("KS") {
        return None;
    }
    let kept: Vec<String> = (code.iter().enumerate())
        // The cluster is a letter between domain and number.
        .filter(|(at, part)| {
            !(*at == 2 && part.len() == 1 && part.chars().all(char::is_alphabetic))
        })
        .map(|(_, part)| split_letter(part))
        .collect();
    (kept.len() > 2).then(|| kept.join("."))
}

/// `3A` is `3.A`.
fn split_letter(part: &str) -> String {
    let digits = part.trim_end_matches(char::is_alphabetic);
    let letters = part.strip_prefix(digits).unwrap_or_default();
    if digits.is_empty() || letters.len() != 1 {
        return part.to_owned();
    }
    format!("{digits}.{letters}")
}

impl Concepts {
    pub fn of(class: &OpenClass) -> Result<Self, DeskError> {
        let facts = class.facts_with_all()?;
        let all = (facts.concepts.iter())
            .map(|(id, concept)| {
                let names: Vec<_> = (Language::all().iter())
                    .map(|language| facts.name(id, *language))
                    .collect();
                let titles: BTreeSet<String> =
                    names.iter().map(|name| plain(&name.title)).collect();
                let statements = names.iter().map(|name| plain(&name.i_can));
                Known {
                    id: id.clone(),
                    in_rotation: class.facts.concepts.contains_key(id),
                    exact: (statements.chain([plain(id)]))
                        .chain(titles.iter().cloned())
                        .collect(),
                    titles,
                    codes: concept
                        .alignments
                        .iter()
                        .filter_map(|one| code(one))
                        .collect(),
                }
            })
            .collect();
        Ok(Self { facts, all })
    }

    /// What the cells of a line name. A title counts more than a code, and a code more than a title
    /// that is only near.
    pub(super) fn named(&self, cells: &[String]) -> Named {
        let whole = cells.join(" ");
        let mut texts = vec![plain(&whole)];
        texts.extend(cells.iter().map(|cell| plain(cell)));
        texts.extend(cells.iter().map(|cell| plain(without_unit(cell))));
        let exact = |known: &&Known| texts.iter().any(|text| known.exact.contains(text));
        if let Some(named) = placed(self.all.iter().filter(exact)) {
            return named;
        }
        let codes: Vec<String> = whole
            .split(|c: char| c.is_whitespace() || matches!(c, ',' | '(' | ')' | '/' | ';'))
            .filter_map(code)
            .collect();
        let of_code = |known: &&Known| {
            codes.iter().any(|code| {
                let of_part = |own: &String| own == code || own.starts_with(&format!("{code}."));
                known.codes.iter().any(of_part)
            })
        };
        if let Some(named) = placed(self.all.iter().filter(of_code)) {
            return named;
        }
        let mut near: Vec<(f64, &Known)> = (self.all.iter())
            .map(|known| {
                let alike = texts
                    .iter()
                    .flat_map(|text| known.titles.iter().map(move |title| likeness(text, title)));
                (alike.fold(0.0, f64::max), known)
            })
            .filter(|(alike, _)| *alike >= LEAST_ALIKE)
            .collect();
        near.sort_by(|a, b| b.0.total_cmp(&a.0));
        let ids: Vec<String> = (near.iter())
            .filter(|(_, known)| known.in_rotation)
            .take(MOST_NEAR)
            .map(|(_, known)| known.id.clone())
            .collect();
        match (ids.is_empty(), near.is_empty()) {
            (false, _) => Named::Near(ids),
            (true, false) => Named::NotInRotation,
            (true, true) => Named::Nothing,
        }
    }
}

fn placed<'k>(found: impl Iterator<Item = &'k Known>) -> Option<Named> {
    let found: Vec<&Known> = found.collect();
    let ids: Vec<String> = (found.iter())
        .filter(|known| known.in_rotation)
        .map(|known| known.id.clone())
        .collect();
    match (found.is_empty(), ids.is_empty()) {
        (true, _) => None,
        (false, true) => Some(Named::NotInRotation),
        (false, false) => Some(Named::Sure(ids)),
    }
}

/// A line without "Unit 3:" and the like before it.
fn without_unit(cell: &str) -> &str {
    match cell.split_once([':', '–', '—']) {
        Some((before, after)) if before.chars().any(|c| c.is_ascii_digit()) => after.trim(),
        _ => cell,
    }
}

/// How alike two texts are, from 0 to 1: by letters, or by the words that they share.
fn likeness(text: &str, title: &str) -> f64 {
    let stem = |word: &str| word.strip_suffix('s').unwrap_or(word).to_owned();
    let words = |of: &str| -> BTreeSet<String> {
        (of.split(' ').filter(|word| word.chars().count() > 2))
            .map(stem)
            .collect()
    };
    let (one, other) = (words(text), words(title));
    let shared = one.intersection(&other).count();
    #[expect(clippy::cast_precision_loss, reason = "a few words")]
    let by_words = if shared < 2 {
        0.0
    } else {
        2.0 * shared as f64 / (one.len() + other.len()) as f64
    };
    #[expect(clippy::cast_precision_loss, reason = "lengths of texts")]
    let (short, long) = {
        let (one, other) = (text.chars().count() as f64, title.chars().count() as f64);
        (one.min(other), one.max(other))
    };
    // So much shorter or longer, a text cannot be alike; long ones would take long to compare.
    if short < LEAST_ALIKE * long {
        return by_words;
    }
    strsim::normalized_damerau_levenshtein(text, title).max(by_words)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn codes_are_the_same_with_and_without_prefix_and_cluster() {
        for (word, wanted) in [
            ("4.NBT.A.1", Some("4.NBT.1")),
            ("CCSS.MATH.CONTENT.4.NBT.A.1", Some("4.NBT.1")),
            ("4.nbt.1", Some("4.NBT.1")),
            ("4-NF-3a", Some("4.NF.3.A")),
            ("4.NF.B.3.a", Some("4.NF.3.A")),
            ("(4.NF.B.3)", Some("4.NF.3")),
            ("KS2.Y4.4", Some("KS2.Y4.4")),
            ("9/8", None),
            ("1,000", None),
            ("9.8", None),
            ("Fractions", None),
        ] {
            assert_eq!(code(word).as_deref(), wanted, "{word}");
        }
    }
}
