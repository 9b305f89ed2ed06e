//! Lays out mathematics on paper: fractions, powers, boxes to fill.

use crate::font::{Face, width};
use crate::mark::{Mark, Pen, Step, ellipse, rounded};
use surefoot_catalogue::Locale;
use surefoot_exercises::expr::{Expr, Sign};
use surefoot_exercises::messages::MessageError;
use surefoot_exercises::text::{expr_text, sign_text};

/// A line of mathematics, laid out. Its baseline is at 0.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct MathBox {
    /// Width in points.
    pub width: f32,
    /// Height above the baseline.
    pub up: f32,
    /// Depth below the baseline.
    pub down: f32,
    /// Its marks.
    pub marks: Vec<Mark>,
    /// Whether screen readers need words for it.
    pub built: bool,
}

/// Height of the bar of a fraction above the baseline in ems, as of − and =.
const AXIS_EM: f32 = 0.31;
const UP_EM: f32 = 0.74;
const DOWN_EM: f32 = 0.2;

struct Setter {
    locale: Locale,
    size: f32,
    face: Face,
    /// Signs that an empty box must hold.
    signs: usize,
}

/// Lays out a line of mathematics.
pub fn math(locale: Locale, expr: &Expr, size: f32, face: Face) -> Result<MathBox, MessageError> {
    let signs = most_signs(expr);
    let setter = Setter {
        locale,
        size,
        face,
        signs,
    };
    setter.set(expr)
}

/// Signs of the longest number that may be missing in a sentence: a sum has one more than its terms, a
/// product as many as its factors together.
fn most_signs(expr: &Expr) -> usize {
    let most = |of: &[&Expr]| of.iter().map(|one| most_signs(one)).max().unwrap_or(0);
    match expr {
        Expr::Number { text } => text.chars().count(),
        Expr::Sum { terms } => most(&terms.iter().collect::<Vec<_>>()) + 1,
        Expr::Product { factors, .. } => factors.iter().map(most_signs).sum(),
        Expr::Fraction { top, bottom } => most(&[top, bottom]),
        Expr::Mixed { whole, top, bottom } => most(&[whole, top, bottom]),
        Expr::Difference { left, right }
        | Expr::Quotient { left, right }
        | Expr::Relation { left, right, .. }
        | Expr::Ratio { left, right } => most(&[left, right]),
        Expr::Group { inner }
        | Expr::Negative { inner }
        | Expr::Absolute { inner }
        | Expr::Percent { inner }
        | Expr::Measure { amount: inner, .. } => most_signs(inner),
        _ => 0,
    }
}

/// Text as a box.
#[must_use]
pub fn text_box(text: &str, size: f32, face: Face) -> MathBox {
    MathBox {
        width: width(text, face, size),
        up: UP_EM * size,
        down: DOWN_EM * size,
        marks: vec![Mark::Text {
            x: 0.0,
            y: 0.0,
            size,
            face,
            text: text.to_string(),
        }],
        built: false,
    }
}

impl MathBox {
    fn then(mut self, other: &MathBox) -> Self {
        self.put(other, self.width, 0.0);
        self
    }

    fn put(&mut self, other: &MathBox, dx: f32, dy: f32) {
        self.marks
            .extend(other.marks.iter().map(|m| m.moved(1.0, dx, dy)));
        self.width = self.width.max(dx + other.width);
        self.up = self.up.max(other.up - dy);
        self.down = self.down.max(other.down + dy);
        self.built |= other.built;
    }
}

impl Setter {
    fn set(&self, expr: &Expr) -> Result<MathBox, MessageError> {
        Ok(match expr {
            Expr::Number { .. }
            | Expr::Variable { .. }
            | Expr::Money { .. }
            | Expr::Time { .. } => self.text(&expr_text(self.locale, expr)?),
            Expr::Blank => self.blank(),
            Expr::Fraction { top, bottom } => self.fraction(top, bottom)?,
            Expr::Mixed { whole, top, bottom } => {
                let mut set = self.set(whole)?;
                set.width += 0.1 * self.size;
                set.then(&self.fraction(top, bottom)?)
            }
            Expr::Sum { terms } => self.joined(terms, " + ")?,
            Expr::Difference { left, right } => self.between(left, " − ", right)?,
            Expr::Product {
                factors,
                side_by_side,
            } => self.joined(factors, if *side_by_side { "" } else { " × " })?,
            Expr::Quotient { left, right } => self.between(left, " ÷ ", right)?,
            Expr::Relation {
                left,
                sign: Sign::Blank,
                right,
            } => self
                .set(left)?
                .then(&self.text(" "))
                .then(&self.circle())
                .then(&self.text(" "))
                .then(&self.set(right)?),
            Expr::Relation { left, sign, right } => {
                self.between(left, &format!(" {} ", sign_text(*sign)), right)?
            }
            Expr::Group { inner } => self.fenced(inner, '(', ')')?,
            Expr::Absolute { inner } => self.fenced(inner, '|', '|')?,
            Expr::Power { base, exponent } => {
                let mut set = self.set(base)?;
                let small = Setter {
                    size: self.size * 0.66,
                    ..*self
                };
                let raise = set.up - 0.42 * small.size;
                set.put(
                    &small.set(exponent)?,
                    set.width + 0.04 * self.size,
                    -raise.max(0.36 * self.size),
                );
                set.built = true;
                set
            }
            Expr::Negative { inner } => self.text("−").then(&self.set(inner)?),
            Expr::Ratio { left, right } => self.between(left, " : ", right)?,
            Expr::Percent { inner } => self.set(inner)?.then(&self.text("%")),
            Expr::Measure { amount, unit } => {
                let unit = surefoot_exercises::text::unit_words(self.locale, unit, amount)?;
                self.set(amount)?.then(&self.text(&format!(" {unit}")))
            }
            Expr::Pair { x, y } => self
                .text("(")
                .then(&self.set(x)?)
                .then(&self.text(self.locale.number_break()))
                .then(&self.set(y)?)
                .then(&self.text(")")),
            Expr::Degrees { inner } => self.set(inner)?.then(&self.text("°")),
        })
    }

    fn text(&self, text: &str) -> MathBox {
        text_box(text, self.size, self.face)
    }

    fn joined(&self, parts: &[Expr], sign: &str) -> Result<MathBox, MessageError> {
        let mut set = MathBox::default();
        for (place, part) in parts.iter().enumerate() {
            if place > 0 && !sign.is_empty() {
                set = set.then(&self.text(sign));
            }
            set = set.then(&self.set(part)?);
        }
        Ok(set)
    }

    fn between(&self, left: &Expr, sign: &str, right: &Expr) -> Result<MathBox, MessageError> {
        Ok(self
            .set(left)?
            .then(&self.text(sign))
            .then(&self.set(right)?))
    }

    fn fraction(&self, top: &Expr, bottom: &Expr) -> Result<MathBox, MessageError> {
        let small = Setter {
            size: self.size * 0.86,
            ..*self
        };
        let (top, bottom) = (small.set(top)?, small.set(bottom)?);
        let side = 0.1 * self.size;
        let air = 0.16 * self.size;
        let wide = top.width.max(bottom.width) + 2.0 * side;
        let axis = AXIS_EM * self.size;
        let mut set = MathBox::default();
        set.put(
            &top,
            (wide - top.width) / 2.0,
            -(axis + air + top.down * 0.45),
        );
        set.put(&bottom, (wide - bottom.width) / 2.0, air + bottom.up - axis);
        set.marks.push(Mark::Shape {
            path: vec![
                Step::Move(0.02 * self.size, -axis),
                Step::Line(wide - 0.02 * self.size, -axis),
            ],
            fill: None,
            pen: Some(Pen::ink(0.06 * self.size)),
        });
        set.width = wide;
        set.built = true;
        Ok(set)
    }

    /// An empty box, large enough to write the longest number of the sentence in.
    fn blank(&self) -> MathBox {
        /// A sign by hand, in multiples of the size of the type: 3 mm where that is usual.
        const SIGN: f32 = 0.7;
        /// Of very long numbers, so that a sentence stays on its line.
        const MOST_SIGNS: usize = 8;
        let side = 1.35 * self.size;
        let signs = self.signs.min(MOST_SIGNS) as f32;
        let wide = ((signs * SIGN + 0.4) * self.size).max(side);
        let axis = AXIS_EM * self.size;
        MathBox {
            width: wide + 0.16 * self.size,
            up: side / 2.0 + axis,
            down: side / 2.0 - axis,
            marks: vec![Mark::Shape {
                path: rounded(
                    0.08 * self.size,
                    -axis - side / 2.0,
                    wide,
                    side,
                    0.15 * self.size,
                ),
                fill: None,
                pen: Some(Pen::ink(0.06 * self.size)),
            }],
            built: true,
        }
    }

    /// An empty circle for a sign.
    fn circle(&self) -> MathBox {
        let r = 0.68 * self.size;
        let axis = AXIS_EM * self.size;
        MathBox {
            width: 2.0 * r,
            up: r + axis,
            down: r - axis,
            marks: vec![Mark::Shape {
                path: ellipse(r, -axis, r, r),
                fill: None,
                pen: Some(Pen::ink(0.06 * self.size)),
            }],
            built: true,
        }
    }

    /// Brackets as tall as their content.
    fn fenced(&self, inner: &Expr, open: char, close: char) -> Result<MathBox, MessageError> {
        let inner = self.set(inner)?;
        let plain = inner.up <= UP_EM * self.size + 0.01 && !inner.built;
        if plain {
            let set = self
                .text(&open.to_string())
                .then(&inner)
                .then(&self.text(&close.to_string()));
            return Ok(MathBox {
                built: open == '|',
                ..set
            });
        }
        let (up, down) = (inner.up + 0.06 * self.size, inner.down + 0.06 * self.size);
        let deep = if open == '(' { 0.2 * self.size } else { 0.0 };
        let wide = 0.34 * self.size;
        let fence = |x: f32, bend: f32| Mark::Shape {
            path: vec![
                Step::Move(x, -up),
                Step::Curve(
                    x - bend,
                    -up + (up + down) * 0.3,
                    x - bend,
                    down - (up + down) * 0.3,
                    x,
                    down,
                ),
            ],
            fill: None,
            pen: Some(Pen::ink(0.065 * self.size)),
        };
        let mut set = MathBox {
            up,
            down,
            built: true,
            ..MathBox::default()
        };
        set.marks.push(fence(0.7 * wide, deep));
        set.put(&inner, wide, 0.0);
        let right = wide + inner.width;
        set.marks.push(fence(right + 0.3 * wide, -deep));
        set.width = right + wide;
        Ok(set)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use surefoot_exercises::expr::{frac, mixed, num, power};

    fn set(expr: &Expr) -> MathBox {
        math(Locale::default(), expr, 10.0, Face::Regular).unwrap()
    }

    #[test]
    fn a_fraction_stands_taller_than_a_number_and_keeps_its_parts_off_the_bar() {
        let fraction = set(&frac(3, 4));
        assert!(fraction.up > set(&num(3)).up && fraction.built);
        let mut ys = fraction.marks.iter().filter_map(|m| match m {
            Mark::Text { y, .. } => Some(*y),
            Mark::Shape { .. } => None,
        });
        let bar = -AXIS_EM * 10.0;
        let (top, bottom) = (ys.next().unwrap(), ys.next().unwrap());
        assert!(top < bar - 1.5, "the top number touches the bar");
        assert!(
            bottom - 0.64 * 8.6 > bar + 0.9,
            "the lower number touches the bar"
        );
        assert!(set(&mixed(2, 3, 4)).width > fraction.width);
    }

    #[test]
    fn a_power_is_raised_and_a_blank_can_be_written_in() {
        assert!(set(&power(5, 2)).up > set(&num(5)).up);
        assert!(set(&Expr::Blank).width > 12.0);
        let missing = |sum: i64| {
            set(&Expr::Difference {
                left: Box::new(Expr::Blank),
                right: Box::new(num(sum)),
            })
        };
        let box_of = |sum: i64| missing(sum).width - set(&num(sum)).width;
        assert!(box_of(35_410) > 5.0 * 7.0 && box_of(35_410) > 1.5 * box_of(5));
    }
}
