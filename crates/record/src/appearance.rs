//! The appearance of the screens for one student, on every device.

use serde::{Deserialize, Serialize};
use surefoot_catalogue::{Language, Locale, NumberStyle};
use ts_rs::TS;

/// The text sizes that a student can choose, in percent of the usual size.
pub const TEXT_PERCENTS: [u32; 5] = [100, 125, 150, 175, 200];

/// The colours of a student's screens.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum AppearanceTheme {
    /// As set for the device.
    #[default]
    Device,
    /// Dark on light.
    Light,
    /// Light on dark.
    Dark,
    /// High contrast, black on white.
    Contrast,
    /// High contrast, white on black.
    ContrastDark,
}

/// The sign between a number's ones and tenths.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum DecimalSign {
    /// That of the student's language.
    #[default]
    Language,
    /// 3,5
    Comma,
    /// 3.5
    Point,
}

/// The appearance of the screens for one student.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct Appearance {
    /// Colours.
    pub theme: AppearanceTheme,
    /// Size of the text in percent, one of [`TEXT_PERCENTS`].
    pub text_percent: u32,
    /// The decimal sign.
    pub decimal_sign: DecimalSign,
    /// Whether nothing moves; if not, the system decides.
    pub less_motion: bool,
    /// Whether an exercise is read aloud when it opens.
    pub reads_aloud: bool,
}

impl Default for Appearance {
    fn default() -> Self {
        Self {
            theme: AppearanceTheme::default(),
            text_percent: 100,
            decimal_sign: DecimalSign::default(),
            less_motion: false,
            reads_aloud: false,
        }
    }
}

impl Appearance {
    /// Whether the size of the text is one of [`TEXT_PERCENTS`].
    #[must_use]
    pub fn is_offered(&self) -> bool {
        TEXT_PERCENTS.contains(&self.text_percent)
    }
}

impl DecimalSign {
    /// Language and way of writing numbers of a student who chose this sign.
    #[must_use]
    pub fn locale(self, language: Language) -> Locale {
        let usual = Locale::from(language);
        match self {
            Self::Language => usual,
            Self::Comma => Locale {
                numbers: NumberStyle::CommaDecimal,
                ..usual
            },
            Self::Point => Locale {
                numbers: NumberStyle::PointDecimal,
                ..usual
            },
        }
    }
}
