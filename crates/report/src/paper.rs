//! The options of a print, and its margins. Lengths are points, 1/72 inch.

use surefoot_catalogue::Locale;
pub use surefoot_catalogue::PaperSize as Paper;

/// How much space there is to work or write in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Density {
    /// Two columns, a line to answer on.
    Compact,
    /// One column, with space to work in.
    #[default]
    Roomy,
}

/// The options of a print.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct PrintOptions {
    /// Language and way of writing numbers.
    pub locale: Locale,
    /// The paper.
    pub paper: Paper,
    /// The space to work or write in.
    pub density: Density,
}

/// Left, right and top margin.
pub const MARGIN: f32 = 50.0;
/// From the lower edge to the lowest line of content.
pub const FOOT: f32 = 58.0;
/// From the lower edge to the page number.
pub const FOOT_LINE: f32 = 34.0;

impl PrintOptions {
    /// Width between the margins.
    #[must_use]
    pub fn width(&self) -> f32 {
        self.paper.size().0 - 2.0 * MARGIN
    }

    /// Height between the margins.
    #[must_use]
    pub fn height(&self) -> f32 {
        self.paper.size().1 - MARGIN - FOOT
    }
}
