//! A line of `shared/languages.json`. The build script reads it with the same code.

use serde::Deserialize;

/// What the program knows about a language besides its messages.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LanguageLine {
    /// Its tag (BCP 47), also the name of its folder of messages.
    pub tag: String,
    /// Its name in the language itself.
    pub name: String,
    /// The locale (BCP 47) for dates, plurals and lists.
    pub locale: String,
    /// How it writes numbers.
    pub decimal_sign: NumberStyle,
    /// Tags of the voices that may read it aloud, the best first.
    pub voices: Vec<String>,
    /// The paper that a print starts with.
    pub paper: PaperSize,
    /// The direction of its script.
    pub direction: Direction,
    /// The sentence that the screens show when no messages can be loaded.
    pub no_words: String,
    /// The sentences that the page shows where the engine is too old for the screens.
    pub too_old: String,
}

/// How numbers are written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
pub enum NumberStyle {
    /// 1,234.5
    #[default]
    #[serde(rename = "point")]
    PointDecimal,
    /// 1 234,5 with a narrow no-break space.
    #[serde(rename = "comma")]
    CommaDecimal,
}

/// A size of paper, upright.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PaperSize {
    /// 210 mm × 297 mm (ISO 216).
    A4,
    /// 8.5 in × 11 in (US Letter, ANSI/ASME Y14.1).
    #[default]
    Letter,
}

impl PaperSize {
    /// Width and height in points, 1/72 inch.
    #[must_use]
    pub fn size(self) -> (f32, f32) {
        match self {
            PaperSize::A4 => (595.28, 841.89),
            PaperSize::Letter => (612.0, 792.0),
        }
    }
}

/// The direction of a script.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Direction {
    /// Left to right.
    Ltr,
    /// Right to left.
    Rtl,
}

/// Checks the rules that the types of a line do not express. The error names the fault.
pub fn check_line(line: &LanguageLine) -> Result<(), String> {
    let is_tag = |text: &str| {
        text.split('-').all(|part| {
            (1..=8).contains(&part.len()) && part.bytes().all(|b| b.is_ascii_alphanumeric())
        })
    };
    for text in [&line.tag, &line.locale].into_iter().chain(&line.voices) {
        if !is_tag(text) {
            return Err(format!("{text:?} is not a language tag (BCP 47)"));
        }
    }
    if line.voices.is_empty() {
        return Err(format!("{:?} has no voices", line.tag));
    }
    Ok(())
}
