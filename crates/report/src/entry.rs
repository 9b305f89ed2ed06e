//! The space for the answer on paper, for each kind of answer.

use crate::drawing::{Anchor, figure};
use crate::drawing::{Sketch, grid_face, number_line, on_paper, protractor_face, strips};
use crate::inline::{Inline, Style, mathematics, paragraph, sentence, words};
use crate::mark::{Mark, Pen, Step, rectangle};
use crate::slab::{Part, Role, Sense, Slab};
use crate::words::Words;
use surefoot_exercises::answer::{Choice, Entry};
use surefoot_exercises::figure::{FractionStrips, Strip};
use surefoot_exercises::messages::MessageError;
use surefoot_exercises::text::{say, sign_text};
use surefoot_exercises::{Block, Say};

/// A block no wider than `most`.
pub fn block(words: &Words, block: &Block, most: f32, size: f32) -> Result<Slab, MessageError> {
    let locale = words.locale;
    Ok(match block {
        Block::Say { say } => {
            paragraph(&sentence(locale, say, size)?, most, Style::of(size)).under(Role::Paragraph)
        }
        Block::Math { expr } => {
            let inline = mathematics(locale, expr, size * 1.12)?;
            paragraph(&[inline], most, Style::of(size * 1.12)).under(Role::Paragraph)
        }
        Block::Figure { figure: of } => figure(locale, of, most)?,
    })
}

/// Blocks one below the other.
pub fn blocks(words: &Words, all: &[Block], most: f32, size: f32) -> Result<Slab, MessageError> {
    let slabs: Vec<Slab> = all
        .iter()
        .map(|one| block(words, one, most, size))
        .collect::<Result<_, _>>()?;
    Ok(Slab::stacked(&slabs, 0.35 * size))
}

/// A line to write on with words around it, such as `$ ____` or `____ cm`.
fn line(before: &str, after: &str, wide: f32, most: f32, size: f32) -> Slab {
    let mut all = Slab::space(0.0, size * 2.1);
    let base = size * 1.7;
    let mut x = 0.0;
    let text = |all: &mut Slab, x: &mut f32, text: &str| {
        if !text.is_empty() {
            all.parts.push(Part::Content(
                Sense::Text,
                vec![Mark::Text {
                    x: *x,
                    y: base,
                    size,
                    face: crate::font::Face::Regular,
                    text: format!("{text} "),
                }],
            ));
            *x += crate::font::width(text, crate::font::Face::Regular, size) + 0.4 * size;
        }
    };
    text(&mut all, &mut x, before);
    let free = most - x - crate::font::width(after, crate::font::Face::Regular, size) - size;
    let wide = wide.min(free.max(30.0));
    all.parts.push(rule(x, base + 2.0, wide));
    x += wide + 0.4 * size;
    text(&mut all, &mut x, after);
    all.width = x;
    all.under(Role::Paragraph)
}

fn rule(x: f32, y: f32, wide: f32) -> Part {
    Part::Content(
        Sense::Ornament,
        vec![Mark::Shape {
            path: vec![Step::Move(x, y), Step::Line(x + wide, y)],
            fill: None,
            pen: Some(Pen::ink(0.7)),
        }],
    )
}

/// Choices, each with a box to mark before it.
fn choices(
    words: &Words,
    all: &[Choice],
    most: f32,
    size: f32,
    tick: bool,
) -> Result<Slab, MessageError> {
    let lead = if tick { size * 1.7 } else { size * 2.4 };
    let mut slabs = Vec::new();
    for choice in all {
        let shown = block(words, &choice.shows, most - lead, size)?;
        let mut row = Slab::space(lead, size * 1.5);
        let side = size * 0.95;
        let high = shown.height.max(size * 1.5);
        if tick {
            row.parts.push(Part::Content(
                Sense::Ornament,
                vec![Mark::Shape {
                    path: rectangle(0.5, (high - side) / 2.0, side, side),
                    fill: None,
                    pen: Some(Pen::ink(0.8)),
                }],
            ));
        } else {
            row.parts
                .push(rule(0.0, high * 0.5 + 0.45 * size, size * 1.8));
        }
        row.put(&shown, lead, (high - shown.height) / 2.0);
        slabs.push(row);
    }
    // Short choices are side by side.
    let widest = slabs.iter().map(natural).fold(0.0, f32::max) + 14.0;
    let across = ((most / widest.max(1.0)) as usize).clamp(1, all.len().max(1));
    let step = most / across as f32;
    let mut rows = Vec::new();
    for group in slabs.chunks(across) {
        let mut row = Slab::default();
        for (n, slab) in group.iter().enumerate() {
            row.put(slab, n as f32 * step, 0.0);
        }
        rows.push(row);
    }
    Ok(Slab::stacked(&rows, 2.0))
}

/// The width of the ink of a slab.
fn natural(slab: &Slab) -> f32 {
    fn reach(part: &Part) -> f32 {
        match part {
            Part::Group(_, parts) => parts.iter().map(reach).fold(0.0, f32::max),
            Part::Content(_, marks) => marks
                .iter()
                .map(|mark| match mark {
                    Mark::Text {
                        x,
                        size,
                        face,
                        text,
                        ..
                    } => x + crate::font::width(text.trim_end(), *face, *size),
                    Mark::Shape { path, .. } => path
                        .iter()
                        .map(|step| match *step {
                            Step::Move(x, _) | Step::Line(x, _) => x,
                            Step::Curve(a, _, c, _, e, _) => a.max(c).max(e),
                            Step::Close => 0.0,
                        })
                        .fold(0.0, f32::max),
                })
                .fold(0.0, f32::max),
        }
    }
    slab.parts.iter().map(reach).fold(0.0, f32::max)
}

/// The space for the answer, no wider than `most`.
pub fn answer_place(w: &Words, entry: &Entry, most: f32, size: f32) -> Result<Slab, MessageError> {
    let locale = w.locale;
    let told =
        |text: String| paragraph(&words(text), most, Style::of(size * 0.92)).under(Role::Paragraph);
    let unit = |unit: &Option<Say>| -> Result<String, MessageError> {
        unit.as_ref().map_or(Ok(String::new()), |u| say(locale, u))
    };
    let answer = w.get("report-answer")?;
    Ok(match entry {
        Entry::WholeNumber { unit: u, .. }
        | Entry::Decimal { unit: u, .. }
        | Entry::Fraction { unit: u, .. }
        | Entry::Mixed { unit: u, .. } => line(&answer, &unit(u)?, 96.0, most, size),
        Entry::Money => line(&format!("{answer} $"), "", 90.0, most, size),
        Entry::Time { half_day } => {
            let time = line(&answer, "", 90.0, most, size);
            if *half_day {
                let halves = [w_say(locale, "half-day-am")?, w_say(locale, "half-day-pm")?];
                let all = halves.map(|text| Choice {
                    shows: Block::from(Say::new(text)),
                });
                Slab::stacked(&[time, choices(w, &all, most, size, true)?], 2.0)
            } else {
                time
            }
        }
        Entry::Duration { hours } => {
            let minutes = w_text(locale, "unit-min")?;
            if *hours {
                let mut row = line(&answer, &w_text(locale, "unit-h")?, 50.0, most, size);
                let x = row.width + 6.0;
                row.put(&line("", &minutes, 50.0, most, size), x, 0.0);
                row
            } else {
                line(&answer, &minutes, 90.0, most, size)
            }
        }
        Entry::Comparison => told(w.get("report-write-sign")?),
        Entry::OneChoice { choices: all } | Entry::SeveralChoices { choices: all } => {
            choices(w, all, most, size, true)?
        }
        Entry::Ordering {
            things,
            first,
            last,
        } => {
            let hint = w.say(
                "report-order",
                &[
                    ("count", things.len().into()),
                    ("first", say(locale, first)?.into()),
                    ("last", say(locale, last)?.into()),
                ],
            )?;
            Slab::stacked(&[told(hint), choices(w, things, most, size, false)?], 3.0)
        }
        Entry::Expression { .. } => line(&answer, "", 180.0, most, size),
        Entry::Equation { .. } => line(&answer, "", 180.0, most, size),
        Entry::Coordinates { frame: Some(frame) } => {
            let (sketch, _) = grid_face(locale, frame)?;
            let words = w.get("report-mark-grid")?;
            Slab::stacked(&[told(words.clone()), on_paper(sketch, words, most)], 3.0)
        }
        Entry::Coordinates { frame: None } => line(&answer, "", 96.0, most, size),
        Entry::NumberLinePoint { line } | Entry::NumberLineRay { line } => {
            let id = if matches!(entry, Entry::NumberLinePoint { .. }) {
                "report-mark-line"
            } else {
                "report-draw-line"
            };
            let words = w.get(id)?;
            let sketch = number_line(locale, line)?;
            Slab::stacked(&[told(words.clone()), on_paper(sketch, words, most)], 3.0)
        }
        Entry::Angle { turned: true } => {
            let words = w.get("report-draw-side")?;
            let sketch = protractor_face(locale, &[0.0]);
            Slab::stacked(&[told(words.clone()), on_paper(sketch, words, most)], 3.0)
        }
        Entry::Angle { turned: false } => line(&answer, "°", 70.0, most, size),
        Entry::ShadedFraction {
            shape,
            wholes,
            parts,
        } => {
            let of = FractionStrips {
                shape: *shape,
                strips: vec![Strip {
                    wholes: *wholes,
                    parts: *parts,
                    shaded: 0,
                    label: None,
                }],
            };
            let words = w.get("report-shade")?;
            on_paper(strips(locale, &of)?, words, most)
        }
        Entry::Plot {
            columns, step, top, ..
        } => {
            let words = w.get("report-draw-graph")?;
            let sketch = empty_plot(w, columns, *step, *top)?;
            Slab::stacked(&[told(words.clone()), on_paper(sketch, words, most)], 3.0)
        }
        Entry::GridArea { rows, columns } => {
            let words = w.get("report-draw-squares")?;
            let mut sketch = Sketch::new(
                locale,
                *columns as f32 * 34.0 + 8.0,
                *rows as f32 * 34.0 + 8.0,
            );
            for r in 0..*rows {
                for c in 0..*columns {
                    let (x, y) = (4.0 + c as f32 * 34.0, 4.0 + r as f32 * 34.0);
                    sketch.shape(rectangle(x, y, 34.0, 34.0), None, Some(Pen::grey(1.2, 90)));
                }
            }
            Slab::stacked(&[told(words.clone()), on_paper(sketch, words, most)], 3.0)
        }
        Entry::QuotientRemainder => {
            let mut row = line(&answer, &w.get("report-remainder")?, 60.0, most, size);
            let x = row.width + 4.0;
            row.put(&line("", "", 50.0, most, size), x, 0.0);
            row
        }
        Entry::SeveralNumbers { fields, .. } => {
            let lines: Vec<Slab> = fields
                .iter()
                .map(|field| Ok(line(&say(locale, field)?, "", 80.0, most, size)))
                .collect::<Result<_, MessageError>>()?;
            Slab::stacked(&lines, 0.0)
        }
        Entry::Boxes { .. } => told(w.get("report-fill-boxes")?),
        Entry::TwoParts { first, ask, second } => {
            let asked = block(w, &Block::from(ask.clone()), most, size)?;
            let parts = [
                answer_place(w, first, most, size)?,
                asked,
                answer_place(w, second, most, size)?,
            ];
            Slab::stacked(&parts, 0.5 * size)
        }
    })
}

fn w_text(locale: surefoot_catalogue::Locale, id: &'static str) -> Result<String, MessageError> {
    say(locale, &Say::new(id))
}

/// The id itself, once it is known to be there.
fn w_say(
    locale: surefoot_catalogue::Locale,
    id: &'static str,
) -> Result<&'static str, MessageError> {
    w_text(locale, id).map(|_| id)
}

fn empty_plot(w: &Words, columns: &[Choice], step: i64, top: i64) -> Result<Sketch, MessageError> {
    const HIGH: f32 = 24.0;
    const WIDE: f32 = 74.0;
    const LEFT: f32 = 48.0;
    let locale = w.locale;
    let rows = (top / step.max(1)).max(1);
    let foot = 12.0 + rows as f32 * HIGH;
    let right = LEFT + columns.len() as f32 * WIDE;
    let mut sketch = Sketch::new(locale, right + 8.0, foot + 46.0);
    for n in 0..=rows {
        let y = foot - n as f32 * HIGH;
        sketch.thin((LEFT, y), (right, y));
        let text = sketch.number(n * step);
        sketch.text(&text, (LEFT - 8.0, y), 16.0, Anchor::End);
    }
    for (n, column) in columns.iter().enumerate() {
        let at = (LEFT + (n as f32 + 0.5) * WIDE, foot + 22.0);
        match &column.shows {
            Block::Say { say } => sketch.say(say, at, 16.0, Anchor::Middle)?,
            Block::Math { expr } => sketch.label(expr, at, Anchor::Middle)?,
            Block::Figure { figure } => sketch.say(&figure.alt, at, 14.0, Anchor::Middle)?,
        }
    }
    sketch.segment((LEFT, 6.0), (LEFT, foot));
    sketch.segment((LEFT, foot), (right, foot));
    Ok(sketch)
}

/// The signs that a student may write in a comparison.
#[must_use]
pub fn signs() -> [&'static str; 3] {
    use surefoot_exercises::expr::Sign;
    [Sign::Less, Sign::Equal, Sign::Greater].map(sign_text)
}

/// Answers in one line, for the answer key.
pub fn key_inlines(w: &Words, all: &[Block], size: f32) -> Result<Vec<Inline>, MessageError> {
    let mut inlines = Vec::new();
    for (n, one) in all.iter().enumerate() {
        if n > 0 {
            inlines.extend(words("; "));
        }
        match one {
            Block::Say { say } => inlines.extend(sentence(w.locale, say, size)?),
            Block::Math { expr } => inlines.push(mathematics(w.locale, expr, size)?),
            Block::Figure { figure } => inlines.extend(sentence(w.locale, &figure.alt, size)?),
        }
    }
    Ok(inlines)
}
