//! How numbers are written for people.

use crate::{Language, NumberStyle};

/// Language and way of writing numbers.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Locale {
    /// The language.
    pub language: Language,
    /// How numbers are written.
    pub numbers: NumberStyle,
}

impl NumberStyle {
    /// The sign between groups of three digits, and the decimal sign.
    fn signs(self) -> (&'static str, &'static str) {
        match self {
            NumberStyle::PointDecimal => (",", "."),
            NumberStyle::CommaDecimal => ("\u{202f}", ","),
        }
    }

    /// Writes an exact decimal, such as `-1234.50`, in this style: digits in groups of
    /// three, the decimal sign, and a minus sign (U+2212) in place of a hyphen.
    #[must_use]
    pub fn written(self, text: &str) -> String {
        let (group, point) = self.signs();
        let (minus, body) = match text.strip_prefix('-') {
            Some(body) => ("−", body),
            None => ("", text),
        };
        let (whole, part) = body.split_once('.').unwrap_or((body, ""));
        let mut shown = String::from(minus);
        for (index, digit) in whole.chars().enumerate() {
            if index > 0 && (whole.len() - index).is_multiple_of(3) {
                shown.push_str(group);
            }
            shown.push(digit);
        }
        if !part.is_empty() {
            shown.push_str(point);
            shown.push_str(part);
        }
        shown
    }
}

impl Locale {
    /// The sign between ones and tenths.
    #[must_use]
    pub fn decimal_sign(self) -> &'static str {
        self.numbers.signs().1
    }

    /// The separator of numbers in a row: a semicolon where the decimal sign is a comma.
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
            numbers: language.numbers(),
        }
    }
}

/// Writes an exact decimal for people; see [`NumberStyle::written`].
#[must_use]
pub fn format_number(locale: Locale, text: &str) -> String {
    locale.numbers.written(text)
}

/// Rewrites the numbers in a sentence of the program, such as `1,000` and `3.5`, for people
/// who write numbers in another way than the language of the sentence.
#[must_use]
pub fn prose(locale: Locale, text: &str) -> String {
    if locale.numbers == locale.language.numbers() {
        return text.to_owned();
    }
    let (group, point) = locale.language.numbers().signs();
    let mut shown = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(start) = rest.find(|c: char| c.is_ascii_digit()) {
        let (before, from) = rest.split_at(start);
        let end = from
            .find(|c: char| !c.is_ascii_digit() && c != ',' && c != '.' && !group.contains(c))
            .unwrap_or(from.len());
        // A comma or a full stop behind a number belongs to the sentence.
        let number = from.get(..end).unwrap_or(from).trim_end_matches([',', '.']);
        shown.push_str(before);
        let plain = number.replace(group, "").replace(point, ".");
        shown.push_str(&format_number(locale, &plain));
        rest = from.get(number.len()..).unwrap_or_default();
    }
    shown.push_str(rest);
    shown
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_written_in_the_chosen_style() {
        let us = Locale::default();
        let comma = Locale {
            numbers: NumberStyle::CommaDecimal,
            ..us
        };
        assert_eq!(format_number(us, "1234567.50"), "1,234,567.50");
        assert_eq!(format_number(us, "-999"), "−999");
        assert_eq!(format_number(us, "1000"), "1,000");
        assert_eq!(format_number(comma, "1234.5"), "1\u{202f}234,5");
        assert_eq!(
            prose(comma, "Hasta 1,000, con 3.5 y 2."),
            "Hasta 1\u{202f}000, con 3,5 y 2."
        );
        assert_eq!(prose(us, "Within 1,000."), "Within 1,000.");
    }
}
