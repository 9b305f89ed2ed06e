//! Texts that people read, by language.

use crate::Language;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;
use thiserror::Error;
use ts_rs::{TS, TypeVisitor};

/// A text in one or more languages. In files it is an object from language tags to texts.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(
    try_from = "BTreeMap<Language, String>",
    into = "BTreeMap<Language, String>"
)]
pub struct Text {
    /// Not empty.
    texts: BTreeMap<Language, String>,
}

/// A [`Text`] has no language.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
#[error("a text needs at least one language")]
pub struct NoText;

impl Text {
    /// Makes a text in one language.
    #[must_use]
    pub fn one(language: Language, text: impl Into<String>) -> Self {
        Self {
            texts: BTreeMap::from([(language, text.into())]),
        }
    }

    /// Adds a language, or replaces its text.
    #[must_use]
    pub fn with(mut self, language: Language, text: impl Into<String>) -> Self {
        self.texts.insert(language, text.into());
        self
    }

    /// Returns the text in a language or, if it is missing, in [`Text::substitute`].
    #[must_use]
    pub fn get(&self, language: Language) -> &str {
        let language = self.substitute(language).unwrap_or(language);
        self.texts.get(&language).map_or("", String::as_str)
    }

    /// If there is no text in `language`, returns the language that is shown instead: the
    /// first of the table that has a text.
    #[must_use]
    pub fn substitute(&self, language: Language) -> Option<Language> {
        if self.texts.contains_key(&language) {
            return None;
        }
        Language::all()
            .iter()
            .find(|other| self.texts.contains_key(other))
            .copied()
    }

    /// The languages of the program that are missing.
    #[must_use]
    pub fn missing(&self) -> Vec<Language> {
        let mut all = Language::all().to_vec();
        all.retain(|language| !self.texts.contains_key(language));
        all
    }

    /// Its languages with their texts, in the order of the tags.
    pub fn iter(&self) -> impl Iterator<Item = (Language, &str)> {
        self.texts
            .iter()
            .map(|(language, text)| (*language, text.as_str()))
    }
}

/// Returns the languages in which at least one of the texts is missing.
pub fn missing_in<'a>(texts: impl IntoIterator<Item = &'a Text>) -> Vec<Language> {
    let missing: BTreeSet<Language> = texts.into_iter().flat_map(Text::missing).collect();
    missing.into_iter().collect()
}

impl TryFrom<BTreeMap<Language, String>> for Text {
    type Error = NoText;
    fn try_from(texts: BTreeMap<Language, String>) -> Result<Self, NoText> {
        if texts.is_empty() {
            return Err(NoText);
        }
        Ok(Self { texts })
    }
}

impl From<Text> for BTreeMap<Language, String> {
    fn from(text: Text) -> Self {
        text.texts
    }
}

impl TS for Text {
    type WithoutGenerics = Self;
    type OptionInnerType = Self;

    fn name(_: &ts_rs::Config) -> String {
        "Text".into()
    }

    fn inline(_: &ts_rs::Config) -> String {
        "{ [tag in Language]?: string }".into()
    }

    fn decl(config: &ts_rs::Config) -> String {
        format!("type Text = {};", Self::inline(config))
    }

    fn decl_concrete(config: &ts_rs::Config) -> String {
        Self::decl(config)
    }

    fn visit_dependencies(visitor: &mut impl TypeVisitor) {
        visitor.visit::<Language>();
    }

    fn output_path() -> Option<PathBuf> {
        Some("Text.ts".into())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_missing_text_is_replaced_and_the_replacement_named() {
        let [en, es] = ["en", "es"].map(|tag| Language::tagged(tag).unwrap());
        let text = Text::one(es, "Hola");
        assert_eq!(text.get(en), "Hola");
        assert_eq!(text.substitute(en), Some(es));
        assert_eq!(text.substitute(es), None);
        assert_eq!(text.missing(), [en]);
        let both = text.with(en, "Hello");
        assert_eq!((both.get(en), both.substitute(en)), ("Hello", None));
        let json = serde_json::to_string(&both).unwrap();
        assert_eq!(json, r#"{"en":"Hello","es":"Hola"}"#);
        assert_eq!(serde_json::from_str::<Text>(&json).unwrap(), both);
        assert!(serde_json::from_str::<Text>("{}").is_err());
        assert!(serde_json::from_str::<Text>(r#"{"xx":"?"}"#).is_err());
    }
}
