//! Number lines.

use super::draw;
use crate::expr::{Expr, rational};
use crate::figure::{Drawing, Figure, LineJump, LineLabel, LinePoint, LineRay, NumberLine};
use crate::number::Rational;
use crate::say::Say;
use num_rational::Ratio;

/// Builds a number line.
#[derive(Clone, Debug)]
pub struct Line {
    line: NumberLine,
}

impl Line {
    /// A line without labels.
    pub fn new(
        from: impl Into<Ratio<i64>>,
        to: impl Into<Ratio<i64>>,
        step: impl Into<Ratio<i64>>,
    ) -> Self {
        Self {
            line: NumberLine {
                from: Rational::from(from.into()),
                to: Rational::from(to.into()),
                step: Rational::from(step.into()),
                labels: Vec::new(),
                points: Vec::new(),
                jumps: Vec::new(),
                rays: Vec::new(),
                vertical: false,
            },
        }
    }

    /// Labels the whole numbers on the line.
    #[must_use]
    pub fn label_wholes(self) -> Self {
        self.label_every(Ratio::from(1))
    }

    /// Labels every multiple of a number on the line, in lowest terms.
    #[must_use]
    pub fn label_every(mut self, every: Ratio<i64>) -> Self {
        let (from, to) = (self.line.from.ratio(), self.line.to.ratio());
        let mut at = (from / every).ceil() * every;
        while at <= to {
            self = self.label(at, rational(at, true));
            at += every;
        }
        self
    }

    /// Labels one place.
    #[must_use]
    pub fn label(mut self, at: impl Into<Ratio<i64>>, label: impl Into<Expr>) -> Self {
        self.line.labels.push(LineLabel {
            at: Rational::from(at.into()),
            label: label.into(),
        });
        self
    }

    /// Draws a point, with a letter or number if given.
    #[must_use]
    pub fn point(mut self, at: impl Into<Ratio<i64>>, label: Option<Expr>) -> Self {
        self.line.points.push(LinePoint {
            at: Rational::from(at.into()),
            label,
        });
        self
    }

    /// Draws a jump.
    #[must_use]
    pub fn jump(
        mut self,
        from: impl Into<Ratio<i64>>,
        to: impl Into<Ratio<i64>>,
        label: Option<Expr>,
    ) -> Self {
        self.line.jumps.push(LineJump {
            from: Rational::from(from.into()),
            to: Rational::from(to.into()),
            label,
        });
        self
    }

    /// Draws a half-line.
    #[must_use]
    pub fn ray(mut self, from: impl Into<Ratio<i64>>, open: bool, rightward: bool) -> Self {
        self.line.rays.push(LineRay {
            from: Rational::from(from.into()),
            open,
            rightward,
        });
        self
    }

    /// Turns the line upright.
    #[must_use]
    pub fn upright(mut self) -> Self {
        self.line.vertical = true;
        self
    }

    /// The line, to be filled in by the student.
    #[must_use]
    pub fn into_line(self) -> NumberLine {
        self.line
    }

    /// The line as a figure, with its general text alternative.
    #[must_use]
    pub fn figure(self) -> Figure {
        let (from, to) = (self.line.from.ratio(), self.line.to.ratio());
        let parts = (Ratio::from(1) / self.line.step.ratio()).to_integer();
        let id = if parts > 1 && self.line.step.ratio() == Ratio::new(1, parts) {
            "figure-line-parts"
        } else {
            "figure-line"
        };
        let alt = Say::new(id)
            .math("from", rational(from, true))
            .math("to", rational(to, true))
            .count("parts", parts);
        self.figure_as(alt)
    }

    /// The line as a figure, with words of its own.
    #[must_use]
    pub fn figure_as(self, alt: Say) -> Figure {
        draw(Drawing::NumberLine(self.line), alt)
    }
}
