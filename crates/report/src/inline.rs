//! Words and mathematics in lines.

use crate::font::{Face, width};
use crate::mark::Mark;
use crate::math::{MathBox, math};
use crate::slab::{Part, Sense, Slab};
use surefoot_catalogue::Locale;
use surefoot_exercises::messages::{MessageError, Piece, pieces};
use surefoot_exercises::text::expr_text;
use surefoot_exercises::{Arg, Expr, Say};

/// A piece of a line.
#[derive(Clone, Debug, PartialEq)]
pub enum Inline {
    /// Words; they break at spaces.
    Words(String, Face),
    /// Mathematics with its words for screen readers; it never breaks.
    Math(MathBox, String),
}

/// The style of lines.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Style {
    /// Size in points.
    pub size: f32,
    /// Least distance of baselines, in multiples of the size.
    pub leading: f32,
    /// The alignment of the lines.
    pub align: Align,
}

/// The alignment of a line.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Align {
    /// At the left.
    #[default]
    Left,
    /// In the middle.
    Middle,
    /// At the right.
    Right,
}

impl Style {
    /// Left-aligned text of a size.
    #[must_use]
    pub const fn of(size: f32) -> Self {
        Self {
            size,
            leading: 1.32,
            align: Align::Left,
        }
    }

    /// The same style, centred.
    #[must_use]
    pub const fn middle(self) -> Self {
        Self {
            size: self.size,
            leading: self.leading,
            align: Align::Middle,
        }
    }
}

/// Plain words.
#[must_use]
pub fn words(text: impl Into<String>) -> Vec<Inline> {
    vec![Inline::Words(text.into(), Face::Regular)]
}

/// Bold words.
#[must_use]
pub fn bold(text: impl Into<String>) -> Vec<Inline> {
    vec![Inline::Words(text.into(), Face::Bold)]
}

/// A sentence with its mathematics.
pub fn sentence(locale: Locale, say: &Say, size: f32) -> Result<Vec<Inline>, MessageError> {
    pieces(locale, say)?
        .into_iter()
        .map(|piece| match piece {
            Piece::Words(text) => Ok(Inline::Words(text, Face::Regular)),
            Piece::Math(name) => match say.args.get(name.as_str()) {
                Some(Arg::Math { expr }) => mathematics(locale, expr, size),
                _ => Ok(Inline::Words(String::new(), Face::Regular)),
            },
        })
        .collect()
}

/// Mathematics as a piece of a line.
pub fn mathematics(locale: Locale, expr: &Expr, size: f32) -> Result<Inline, MessageError> {
    Ok(Inline::Math(
        math(locale, expr, size, Face::Regular)?,
        expr_text(locale, expr)?,
    ))
}

/// A piece of a line that does not break.
enum Atom {
    Word { text: String, face: Face, wide: f32 },
    Space { face: Face, wide: f32 },
    Math { set: MathBox, reads: String },
    Break,
}

impl Atom {
    fn wide(&self) -> f32 {
        match self {
            Atom::Word { wide, .. } | Atom::Space { wide, .. } => *wide,
            Atom::Math { set, .. } => set.width,
            Atom::Break => 0.0,
        }
    }
}

fn atoms(inlines: &[Inline], most: f32, size: f32) -> Vec<Atom> {
    let mut all = Vec::new();
    for inline in inlines {
        match inline {
            Inline::Math(set, reads) => all.push(Atom::Math {
                set: set.clone(),
                reads: reads.clone(),
            }),
            Inline::Words(text, face) => {
                let mut word = String::new();
                for c in text.chars() {
                    if c == ' ' || c == '\n' {
                        push_word(&mut all, &mut word, *face, most, size);
                        all.push(if c == ' ' {
                            Atom::Space {
                                face: *face,
                                wide: width(" ", *face, size),
                            }
                        } else {
                            Atom::Break
                        });
                    } else {
                        word.push(c);
                    }
                }
                push_word(&mut all, &mut word, *face, most, size);
            }
        }
    }
    all
}

/// Adds a word. Cuts a word that is wider than the line.
fn push_word(all: &mut Vec<Atom>, word: &mut String, face: Face, most: f32, size: f32) {
    let whole = width(word, face, size);
    if whole <= most {
        if !word.is_empty() {
            all.push(Atom::Word {
                text: std::mem::take(word),
                face,
                wide: whole,
            });
        }
        return;
    }
    let mut part = String::new();
    for c in word.drain(..) {
        let mut longer = part.clone();
        longer.push(c);
        if !part.is_empty() && width(&longer, face, size) > most {
            let text = std::mem::take(&mut part);
            let wide = width(&text, face, size);
            all.push(Atom::Word { text, face, wide });
            part.push(c);
        } else {
            part = longer;
        }
    }
    if !part.is_empty() {
        let wide = width(&part, face, size);
        all.push(Atom::Word {
            text: part,
            face,
            wide,
        });
    }
}

/// The width of the widest piece that does not break, in points.
#[must_use]
pub fn widest_word(inlines: &[Inline], size: f32) -> f32 {
    let (mut widest, mut run) = (0.0_f32, 0.0);
    for atom in atoms(inlines, f32::MAX, size) {
        run = match atom {
            Atom::Space { .. } | Atom::Break => 0.0,
            Atom::Word { .. } | Atom::Math { .. } => run + atom.wide(),
        };
        widest = widest.max(run);
    }
    widest
}

/// Breaks pieces into lines, each a slab of width `most`. Scales down mathematics that is wider than
/// a line.
#[must_use]
pub fn lines(inlines: &[Inline], most: f32, style: Style) -> Vec<Slab> {
    let mut lines: Vec<Vec<Atom>> = vec![Vec::new()];
    // Words and mathematics without a space between them stay together.
    let mut run: Vec<Atom> = Vec::new();
    let mut at = 0.0;
    let place = |lines: &mut Vec<Vec<Atom>>, run: &mut Vec<Atom>, at: &mut f32| {
        let wide: f32 = run.iter().map(Atom::wide).sum();
        if *at > 0.0 && *at + wide > most {
            lines.push(Vec::new());
            *at = 0.0;
        }
        for atom in run.drain(..) {
            // A run that is longer than a line breaks between its parts.
            if *at > 0.0 && *at + atom.wide() > most + 0.01 {
                lines.push(Vec::new());
                *at = 0.0;
            }
            *at += atom.wide();
            if let Some(line) = lines.last_mut() {
                line.push(atom);
            }
        }
    };
    for atom in atoms(inlines, most, style.size) {
        match atom {
            Atom::Space { .. } => {
                place(&mut lines, &mut run, &mut at);
                // The space stays at the end of its line, also beyond the margin.
                at += atom.wide();
                if let Some(line) = lines.last_mut() {
                    line.push(atom);
                }
            }
            Atom::Break => {
                place(&mut lines, &mut run, &mut at);
                lines.push(Vec::new());
                at = 0.0;
            }
            other => run.push(other),
        }
    }
    place(&mut lines, &mut run, &mut at);
    lines
        .into_iter()
        .map(|line| set_line(line, most, style))
        .collect()
}

fn set_line(atoms: Vec<Atom>, most: f32, style: Style) -> Slab {
    let (mut up, mut down) = (0.74 * style.size, 0.26 * style.size);
    let mut parts = Vec::new();
    let mut x = 0.0;
    let mut ink = 0.0;
    let mut text: Option<(f32, Face, String)> = None;
    let flush = |text: &mut Option<(f32, Face, String)>, parts: &mut Vec<Part>| {
        if let Some((x, face, text)) = text.take() {
            parts.push(Part::Content(
                Sense::Text,
                vec![Mark::Text {
                    x,
                    y: 0.0,
                    size: style.size,
                    face,
                    text,
                }],
            ));
        }
    };
    for atom in atoms {
        let wide = atom.wide();
        match atom {
            Atom::Word {
                text: word, face, ..
            } => {
                match &mut text {
                    Some((_, same, run)) if *same == face => run.push_str(&word),
                    _ => {
                        flush(&mut text, &mut parts);
                        text = Some((x, face, word));
                    }
                }
                ink = x + wide;
            }
            Atom::Space { face, .. } => match &mut text {
                Some((_, same, run)) if *same == face => run.push(' '),
                _ => {
                    flush(&mut text, &mut parts);
                    text = Some((x, face, " ".into()));
                }
            },
            Atom::Math { set, reads } => {
                flush(&mut text, &mut parts);
                let scale = (most / set.width.max(0.01)).min(1.0);
                up = up.max(set.up * scale);
                down = down.max(set.down * scale);
                let marks: Vec<Mark> = set.marks.iter().map(|m| m.moved(scale, x, 0.0)).collect();
                let sense = if set.built {
                    Sense::ReadAs(reads)
                } else {
                    Sense::Text
                };
                parts.push(Part::Content(sense, marks));
                x += set.width * scale;
                ink = x;
                continue;
            }
            Atom::Break => {}
        }
        x += wide;
    }
    flush(&mut text, &mut parts);
    let dx = match style.align {
        Align::Left => 0.0,
        Align::Middle => (most - ink) / 2.0,
        Align::Right => most - ink,
    };
    let extra = (style.leading * style.size - up - down).max(0.12 * style.size);
    let height = up + down + extra;
    let bare = Slab {
        width: most,
        height,
        parts,
    };
    let mut line = Slab::space(most, height);
    line.put(&bare, dx.max(0.0), up + extra / 2.0);
    line.width = most;
    line.height = height;
    line
}

/// A paragraph as one slab.
#[must_use]
pub fn paragraph(inlines: &[Inline], most: f32, style: Style) -> Slab {
    Slab::stacked(&lines(inlines, most, style), 0.0)
}

/// The width of pieces on one line.
#[must_use]
pub fn natural_width(inlines: &[Inline], size: f32) -> f32 {
    inlines
        .iter()
        .map(|inline| match inline {
            Inline::Words(text, face) => width(text, *face, size),
            Inline::Math(set, _) => set.width,
        })
        .sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn texts(slab: &Slab) -> String {
        fn walk(parts: &[Part], out: &mut String) {
            for part in parts {
                match part {
                    Part::Group(_, parts) => walk(parts, out),
                    Part::Content(_, marks) => {
                        for mark in marks {
                            if let Mark::Text { text, .. } = mark {
                                out.push_str(text);
                            }
                        }
                    }
                }
            }
        }
        let mut out = String::new();
        walk(&slab.parts, &mut out);
        out
    }

    #[test]
    fn lines_keep_every_character_and_stay_in_their_width() {
        let text = "A rather long sentence about eleven paper boats on a stream.";
        let set = lines(&words(text), 90.0, Style::of(10.0));
        assert!(set.len() > 3);
        let together: String = set.iter().map(texts).collect();
        assert_eq!(together, text);
        for line in &set {
            assert!(width(texts(line).trim_end(), Face::Regular, 10.0) <= 90.01);
        }
    }

    #[test]
    fn a_word_wider_than_the_line_is_cut_and_nothing_is_lost() {
        let word = "Donaudampfschifffahrtsgesellschaft".repeat(3);
        let set = lines(&words(word.clone()), 60.0, Style::of(10.0));
        let together: String = set.iter().map(texts).collect();
        assert_eq!(together, word);
        assert!(
            set.iter()
                .all(|l| width(&texts(l), Face::Regular, 10.0) <= 60.01)
        );
    }

    #[test]
    fn a_full_stop_stays_with_the_fraction_before_it() {
        let locale = Locale::default();
        let half = mathematics(locale, &surefoot_exercises::expr::frac(1, 2), 10.0).unwrap();
        let pieces = vec![
            Inline::Words("It is ".into(), Face::Regular),
            half,
            Inline::Words(".".into(), Face::Regular),
        ];
        let narrow = lines(&pieces, 30.0, Style::of(10.0));
        assert!(!texts(narrow.last().unwrap()).eq("."));
    }
}
