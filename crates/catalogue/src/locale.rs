//! How a language writes its numbers.

use crate::Language;

/// Language and way of writing numbers.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Locale {
    /// The language.
    pub language: Language,
    /// How numbers are written.
    pub numbers: NumberStyle,
}

/// How numbers are written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum NumberStyle {
    /// 1,234.5, as in US schools in either language.
    #[default]
    PointDecimal,
    /// 1 234,5 with a narrow space that does not break.
    CommaDecimal,
}

impl Locale {
    /// The sign between ones and tenths.
    #[must_use]
    pub fn decimal_sign(self) -> &'static str {
        match self.numbers {
            NumberStyle::PointDecimal => ".",
            NumberStyle::CommaDecimal => ",",
        }
    }

    /// Between numbers in a row, where a comma could be taken for a decimal sign.
    #[must_use]
    pub fn number_break(self) -> &'static str {
        match self.numbers {
            NumberStyle::PointDecimal => ", ",
            NumberStyle::CommaDecimal => "; ",
        }
    }
}

impl From<Language> for Locale {
    fn from(language: Language) -> Self {
        Self {
            language,
            numbers: NumberStyle::default(),
        }
    }
}
