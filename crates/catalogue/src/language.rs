//! The languages of the program. The build script makes their table from
//! `shared/languages.json` and the folders of `shared/messages`.

use crate::language_line::{Direction, LanguageLine, NumberStyle, PaperSize, check_line};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::cmp::Ordering;
use std::fmt;
use std::hash::{Hash, Hasher};
use std::path::PathBuf;
use std::str::FromStr;
use std::sync::{OnceLock, PoisonError, RwLock};
use thiserror::Error;
use ts_rs::TS;

/// A line of the table, with the text of the language's files.
struct Known {
    place: usize,
    tag: &'static str,
    name: &'static str,
    locale: &'static str,
    numbers: NumberStyle,
    voices: &'static [&'static str],
    paper: PaperSize,
    direction: Direction,
    files: &'static [(&'static str, &'static str)],
}

include!(concat!(env!("OUT_DIR"), "/languages.rs"));

/// The language that [`register_language`] adds.
static EXTRA: RwLock<Option<&'static Known>> = RwLock::new(None);

/// The table. It does not change after its first use.
static ALL: OnceLock<Vec<Language>> = OnceLock::new();

/// A language of the program: a handle into the table. In files it is the tag.
///
/// Languages are ordered by tag, so that a map by language is written in the same order
/// everywhere. [`Language::all`] has the order of the table.
#[derive(Clone, Copy)]
pub struct Language(&'static Known);

/// A tag that is not in the table of languages.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("{tag:?} is not a language of this program, which has {}", tags())]
pub struct UnknownLanguage {
    /// The tag, cut to 40 characters.
    pub tag: String,
}

fn tags() -> String {
    let tags: Vec<&str> = Language::all().iter().map(|known| known.as_str()).collect();
    tags.join(", ")
}

impl Language {
    /// All languages, in the order of the table.
    #[must_use]
    pub fn all() -> &'static [Language] {
        ALL.get_or_init(|| {
            let extra = *EXTRA.read().unwrap_or_else(PoisonError::into_inner);
            BUILT_IN.iter().chain(extra).map(Language).collect()
        })
    }

    /// The first language of the table. The program starts in it, and new messages are
    /// written in it first.
    #[must_use]
    pub const fn first() -> Language {
        let [first, ..] = &BUILT_IN;
        Language(first)
    }

    /// The language with this tag.
    pub fn tagged(tag: &str) -> Result<Self, UnknownLanguage> {
        Self::all()
            .iter()
            .find(|known| known.0.tag == tag)
            .copied()
            .ok_or_else(|| UnknownLanguage {
                tag: tag.chars().take(40).collect(),
            })
    }

    /// The language with this tag or else with a shorter one: the last part is removed
    /// until a language fits (RFC 4647, lookup). Ignores case.
    pub fn lookup(tag: &str) -> Result<Self, UnknownLanguage> {
        let mut range = tag.trim();
        loop {
            let found = Self::all()
                .iter()
                .find(|known| known.0.tag.eq_ignore_ascii_case(range));
            match (found, range.rsplit_once('-')) {
                (Some(language), _) => return Ok(*language),
                (None, Some((shorter, _))) => range = shorter,
                (None, None) => {
                    return Err(UnknownLanguage {
                        tag: tag.chars().take(40).collect(),
                    });
                }
            }
        }
    }

    /// The tag (BCP 47), also the name of its folder under `shared/messages`.
    #[must_use]
    pub fn as_str(self) -> &'static str {
        self.0.tag
    }

    /// The language's name in the language itself.
    #[must_use]
    pub fn name(self) -> &'static str {
        self.0.name
    }

    /// The locale (BCP 47) for plurals.
    #[must_use]
    pub fn locale_tag(self) -> &'static str {
        self.0.locale
    }

    /// How the language writes numbers.
    #[must_use]
    pub fn numbers(self) -> NumberStyle {
        self.0.numbers
    }

    /// Tags of the voices that may read it aloud, the best first.
    #[must_use]
    pub fn voices(self) -> &'static [&'static str] {
        self.0.voices
    }

    /// The paper that a print starts with.
    #[must_use]
    pub fn paper(self) -> PaperSize {
        self.0.paper
    }

    /// The direction of its script.
    #[must_use]
    pub fn direction(self) -> Direction {
        self.0.direction
    }

    /// Its place in the table, from 0.
    pub(crate) fn place(self) -> usize {
        self.0.place
    }

    /// The text of one of its files, by the file's name.
    #[must_use]
    pub fn file(self, name: &str) -> Option<&'static str> {
        self.0
            .files
            .iter()
            .find(|(other, _)| *other == name)
            .map(|(_, text)| *text)
    }

    /// The message files that Rust needs: area and Fluent text of each. Files for the
    /// screens alone are not in the table.
    pub fn message_files(self) -> impl Iterator<Item = (&'static str, &'static str)> {
        self.0
            .files
            .iter()
            .filter_map(|(name, text)| Some((name.strip_suffix(".ftl")?, *text)))
    }
}

impl Default for Language {
    fn default() -> Self {
        Self::first()
    }
}

impl PartialEq for Language {
    fn eq(&self, other: &Self) -> bool {
        self.0.tag == other.0.tag
    }
}

impl Eq for Language {}

impl Ord for Language {
    fn cmp(&self, other: &Self) -> Ordering {
        self.0.tag.cmp(other.0.tag)
    }
}

impl PartialOrd for Language {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Hash for Language {
    fn hash<H: Hasher>(&self, state: &mut H) {
        self.0.tag.hash(state);
    }
}

impl fmt::Debug for Language {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.0.tag)
    }
}

impl fmt::Display for Language {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.0.tag)
    }
}

impl FromStr for Language {
    type Err = UnknownLanguage;
    fn from_str(tag: &str) -> Result<Self, Self::Err> {
        Self::tagged(tag)
    }
}

impl Serialize for Language {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.0.tag)
    }
}

impl<'de> Deserialize<'de> for Language {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let tag = String::deserialize(deserializer)?;
        Self::tagged(&tag).map_err(serde::de::Error::custom)
    }
}

/// In TypeScript the union of the tags.
impl TS for Language {
    type WithoutGenerics = Self;
    type OptionInnerType = Self;

    fn name(_: &ts_rs::Config) -> String {
        "Language".into()
    }

    fn inline(_: &ts_rs::Config) -> String {
        let tags: Vec<String> = BUILT_IN.iter().map(|k| format!("\"{}\"", k.tag)).collect();
        tags.join(" | ")
    }

    fn decl(config: &ts_rs::Config) -> String {
        format!("type Language = {};", Self::inline(config))
    }

    fn decl_concrete(config: &ts_rs::Config) -> String {
        Self::decl(config)
    }

    fn output_path() -> Option<PathBuf> {
        Some("Language.ts".into())
    }
}

/// A language that is not part of the program.
#[derive(Clone, Debug)]
pub struct ExtraLanguage {
    /// Its line, as in `shared/languages.json`.
    pub line: LanguageLine,
    /// Its files: name and text of each.
    pub files: Vec<(String, String)>,
}

/// Adds a language to the table. Only the test bridge calls this, at its start.
///
/// # Errors
/// Fails if the line is faulty, if the table has its tag already, or if the table was used
/// before.
pub fn register_language(extra: ExtraLanguage) -> Result<(), String> {
    fn kept(text: String) -> &'static str {
        Box::leak(text.into_boxed_str())
    }
    let ExtraLanguage { line, files } = extra;
    check_line(&line)?;
    if BUILT_IN.iter().any(|known| known.tag == line.tag) {
        return Err(format!("the program has {:?} already", line.tag));
    }
    let voices: Vec<&'static str> = line.voices.into_iter().map(kept).collect();
    let files: Vec<_> = files
        .into_iter()
        .map(|(name, text)| (kept(name), kept(text)))
        .collect();
    let known = Known {
        place: BUILT_IN.len(),
        tag: kept(line.tag),
        name: kept(line.name),
        locale: kept(line.locale),
        numbers: line.decimal_sign,
        voices: Vec::leak(voices),
        paper: line.paper,
        direction: line.direction,
        files: Vec::leak(files),
    };
    *EXTRA.write().unwrap_or_else(PoisonError::into_inner) = Some(Box::leak(Box::new(known)));
    match Language::all().last() {
        Some(last) if last.place() == BUILT_IN.len() => Ok(()),
        _ => Err("the table of languages is in use already".into()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tag_becomes_a_language_and_an_unknown_one_is_named() {
        for language in Language::all() {
            assert_eq!(language.as_str().parse(), Ok(*language));
            let json = serde_json::to_string(language).unwrap();
            assert_eq!(json, format!("\"{language}\""));
            assert_eq!(serde_json::from_str::<Language>(&json).unwrap(), *language);
        }
        let es = Language::tagged("es").unwrap();
        assert_eq!(Language::lookup("ES-mx"), Ok(es));
        assert!(Language::lookup("e").is_err() && Language::lookup("").is_err());
        let error = serde_json::from_str::<Language>("\"xx\"").unwrap_err();
        assert!(
            error
                .to_string()
                .starts_with("\"xx\" is not a language of this program"),
            "{error}"
        );
    }

    #[test]
    fn every_folder_has_the_same_files() {
        let names = |language: &Language| -> Vec<&str> {
            language.0.files.iter().map(|(name, _)| *name).collect()
        };
        let first = names(&Language::first());
        assert!(first.len() > 15);
        for language in Language::all() {
            assert_eq!(names(language), first, "{language}");
        }
    }
}
