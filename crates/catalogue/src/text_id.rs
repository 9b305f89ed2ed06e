//! Ids: texts that are checked when they are made.

use thiserror::Error;

/// The longest id of hyphenated words, in characters.
pub(crate) const LONGEST_CHARS: usize = 64;

/// A text is not an id of a kind.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("not a {kind}: {rule}")]
pub struct IdError {
    /// The kind.
    pub kind: &'static str,
    /// How ids of this kind are written.
    pub rule: &'static str,
}

/// Whether a text is lower-case letters and digits joined by single hyphens, at most 64
/// characters.
#[must_use]
pub fn is_hyphenated(text: &str) -> bool {
    let is_word = |word: &str| {
        !word.is_empty()
            && word
                .bytes()
                .all(|b| b.is_ascii_lowercase() || b.is_ascii_digit())
    };
    text.len() <= LONGEST_CHARS && text.split('-').all(is_word)
}

/// Defines a type of text that is checked when it is made, with its constructor,
/// conversions and display.
#[macro_export]
macro_rules! text_id {
    ($(#[$doc:meta])* $name:ident, $kind:literal, $rule:literal, $check:expr) => {
        $(#[$doc])*
        #[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, TS)]
        #[serde(try_from = "String", into = "String")]
        #[ts(type = "string")]
        pub struct $name(String);

        impl $name {
            /// Checks the text.
            pub fn new(text: impl Into<String>) -> Result<Self, $crate::IdError> {
                let text = text.into();
                let fits: fn(&str) -> bool = $check;
                if fits(&text) {
                    Ok(Self(text))
                } else {
                    Err($crate::IdError { kind: $kind, rule: $rule })
                }
            }

            /// The id as text.
            #[must_use]
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        impl TryFrom<String> for $name {
            type Error = $crate::IdError;
            fn try_from(text: String) -> Result<Self, $crate::IdError> {
                Self::new(text)
            }
        }

        impl std::str::FromStr for $name {
            type Err = $crate::IdError;
            fn from_str(text: &str) -> Result<Self, $crate::IdError> {
                Self::new(text)
            }
        }

        impl From<$name> for String {
            fn from(id: $name) -> Self {
                id.0
            }
        }

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.write_str(&self.0)
            }
        }
    };
}
