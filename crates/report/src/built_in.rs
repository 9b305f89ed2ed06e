//! The fonts that are built in.

use crate::glyph::Glyph;
use std::ops::Range;
use std::sync::OnceLock;
use ttf_parser::{Face as Parsed, GlyphId};
use unicode_script::{Script, UnicodeScript};

/// Regular or bold.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Face {
    /// Weight 400.
    #[default]
    Regular,
    /// Weight 700.
    Bold,
    /// Signs that the font for words lacks.
    Signs,
}

impl Face {
    /// The font file.
    #[must_use]
    pub fn bytes(self) -> &'static [u8] {
        match self {
            Face::Regular => include_bytes!("../fonts/atkinson-hyperlegible-next-regular.ttf"),
            Face::Bold => include_bytes!("../fonts/atkinson-hyperlegible-next-bold.ttf"),
            Face::Signs => include_bytes!("../fonts/stix-two-math-signs.ttf"),
        }
    }

    fn parsed(self) -> Option<&'static Parsed<'static>> {
        static REGULAR: OnceLock<Option<Parsed<'static>>> = OnceLock::new();
        static BOLD: OnceLock<Option<Parsed<'static>>> = OnceLock::new();
        static SIGNS: OnceLock<Option<Parsed<'static>>> = OnceLock::new();
        let font = match self {
            Face::Regular => &REGULAR,
            Face::Bold => &BOLD,
            Face::Signs => &SIGNS,
        };
        font.get_or_init(|| Parsed::parse(self.bytes(), 0).ok())
            .as_ref()
    }

    fn glyph(self, character: char) -> Option<GlyphId> {
        self.parsed()?.glyph_index(character)
    }
}

/// Finds a character in the font asked for, or in the signs.
pub(crate) fn find(face: Face, character: char) -> Option<(Face, GlyphId)> {
    let character = match character {
        // Spaces of other widths are not in the fonts.
        '\u{a0}' | '\u{202f}' | '\u{2009}' | '\n' | '\t' => ' ',
        '\u{2010}' | '\u{2011}' => '-',
        other => other,
    };
    // Without layout tables, the built-in fonts cannot place a mark over a letter.
    if character.script() == Script::Inherited {
        return None;
    }
    [face, Face::Signs]
        .into_iter()
        .find_map(|face| Some((face, face.glyph(character)?)))
}

/// A glyph of a built-in font, for the bytes `text` of a text.
pub(crate) fn built_in(face: Face, glyph: GlyphId, text: Range<usize>) -> (Face, Glyph) {
    let advance = face.parsed().map_or(0.5, |font| {
        f32::from(font.glyph_hor_advance(glyph).unwrap_or(500)) / f32::from(font.units_per_em())
    });
    let glyph = Glyph {
        id: u32::from(glyph.0),
        advance,
        right: 0.0,
        up: 0.0,
        text,
    };
    (face, glyph)
}
