//! What a message points at, and whether an exercise shows it.
//!
//! Feedback that names a sign, a fraction, a line or a letter may only be given where the
//! exercise has one. Each such message declares its needs here. [`told`] chooses the first
//! message of a misconception whose needs the exercise meets; without one, the exercise is
//! not made. A test compares the words of every message with what it declares.

use crate::answer::{Answer, Entry};
use crate::block::Block;
use crate::expr::{Expr, Sign};
use crate::figure::Drawing;
use crate::say::Say;
use std::borrow::Cow;

/// What a message may point at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(u32)]
pub enum Need {
    /// A plus or minus sign.
    PlusOrMinus = 1,
    /// The sign ×.
    Times = 1 << 1,
    /// The sign ÷.
    Divide = 1 << 2,
    /// A fraction or mixed number.
    Fraction = 1 << 3,
    /// An equation between a fraction and another.
    EqualFractions = 1 << 4,
    /// Numbers side by side with a letter or parentheses.
    SideBySide = 1 << 5,
    /// A letter for a number.
    Letter = 1 << 6,
    /// Parentheses.
    Parentheses = 1 << 7,
    /// A number line.
    Line = 1 << 8,
    /// A number line that starts at 0.
    LineFromZero = 1 << 9,
    /// A number below 0.
    Negative = 1 << 10,
    /// A number above 0, beside one below 0.
    BothSigns = 1 << 11,
    /// A base with an exponent.
    Power = 1 << 12,
    /// The hands of a clock.
    Clock = 1 << 13,
    /// A percentage.
    Percent = 1 << 14,
    /// Dots above a line.
    Dots = 1 << 15,
    /// Decimals.
    Decimal = 1 << 16,
    /// A sign that compares is asked for.
    Comparison = 1 << 17,
    /// An amount of money.
    Money = 1 << 18,
    /// A coordinate grid or coordinates.
    Grid = 1 << 19,
    /// A bar or a ruler, a symbol, a box plot: a drawing of data or of a length.
    Bars = 1 << 20,
    /// A scale of degrees.
    Protractor = 1 << 21,
}

/// What an exercise shows: a set of [`Need`]s that it meets.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Shown(u32);

impl Shown {
    /// What the prompt and the entry of an exercise show. Its key counts for fractions and
    /// parentheses, because the student writes one.
    #[must_use]
    pub fn of(prompt: &[Block], entry: &Entry, key: &Answer) -> Self {
        let mut shown = Self::default();
        for block in prompt {
            shown.add_block(block);
        }
        shown.add_entry(entry);
        shown.add_key(key);
        shown
    }

    fn add_key(&mut self, key: &Answer) {
        match key {
            Answer::Fraction { .. } => self.add(Need::Fraction),
            Answer::Mixed { .. } => self.add(Need::Fraction),
            Answer::Expression { text } | Answer::Equation { text } if text.contains('(') => {
                self.add(Need::Parentheses);
            }
            Answer::WholeNumber { value } if *value < 0 => self.add(Need::Negative),
            Answer::TwoParts { first, second } => {
                self.add_key(first);
                self.add_key(second);
            }
            _ => {}
        }
    }

    /// Whether all of these are shown.
    #[must_use]
    pub fn has(self, needs: &[Need]) -> bool {
        needs.iter().all(|need| self.0 & *need as u32 != 0)
    }

    fn add(&mut self, need: Need) {
        self.0 |= need as u32;
    }

    fn add_block(&mut self, block: &Block) {
        match block {
            Block::Say { say } => {
                for arg in say.args.values() {
                    match arg {
                        crate::Arg::Math { expr } => self.add_expr(expr),
                        crate::Arg::Number { text } => self.add_number(text),
                        crate::Arg::Numbers { texts } => {
                            for text in texts {
                                self.add_number(text);
                            }
                        }
                        _ => {}
                    }
                }
            }
            Block::Math { expr } => self.add_expr(expr),
            Block::Figure { figure } => self.add_drawing(&figure.drawing),
        }
    }

    fn add_number(&mut self, text: &str) {
        if text.starts_with('-') {
            self.add(Need::Negative);
        } else if text != "0" {
            // Counts only beside a negative number; the messages need both.
            self.add(Need::BothSigns);
        }
        if text.contains('.') {
            self.add(Need::Decimal);
        }
    }

    fn add_expr(&mut self, expr: &Expr) {
        match expr {
            Expr::Number { text } => self.add_number(text),
            Expr::Variable { .. } => self.add(Need::Letter),
            Expr::Blank | Expr::Time { .. } => {}
            Expr::Fraction { top, bottom } => {
                self.add(Need::Fraction);
                self.add_expr(top);
                self.add_expr(bottom);
            }
            Expr::Mixed { .. } => self.add(Need::Fraction),
            Expr::Sum { terms } => {
                self.add(Need::PlusOrMinus);
                terms.iter().for_each(|term| self.add_expr(term));
            }
            Expr::Difference { left, right } => {
                self.add(Need::PlusOrMinus);
                self.add_expr(left);
                self.add_expr(right);
            }
            Expr::Product {
                factors,
                side_by_side,
            } => {
                self.add(if *side_by_side {
                    Need::SideBySide
                } else {
                    Need::Times
                });
                factors.iter().for_each(|factor| self.add_expr(factor));
            }
            Expr::Quotient { left, right } => {
                self.add(Need::Divide);
                self.add_expr(left);
                self.add_expr(right);
            }
            Expr::Relation { left, sign, right } => {
                if matches!(
                    (left.as_ref(), sign, right.as_ref()),
                    (Expr::Fraction { .. }, Sign::Equal, Expr::Fraction { .. })
                ) {
                    self.add(Need::EqualFractions);
                }
                self.add_expr(left);
                self.add_expr(right);
            }
            Expr::Group { inner } => {
                self.add(Need::Parentheses);
                self.add_expr(inner);
            }
            Expr::Power { base, exponent } => {
                self.add(Need::Power);
                self.add_expr(base);
                self.add_expr(exponent);
            }
            Expr::Negative { inner } => {
                self.add(Need::Negative);
                self.add_expr(inner);
            }
            Expr::Absolute { inner } | Expr::Degrees { inner } => self.add_expr(inner),
            Expr::Ratio { left, right } => {
                self.add_expr(left);
                self.add_expr(right);
            }
            Expr::Percent { inner } => {
                self.add(Need::Percent);
                self.add_expr(inner);
            }
            Expr::Measure { amount, .. } => self.add_expr(amount),
            Expr::Money { .. } => self.add(Need::Money),
            Expr::Pair { x, y } => {
                self.add(Need::Grid);
                self.add_expr(x);
                self.add_expr(y);
            }
        }
    }

    fn add_drawing(&mut self, drawing: &Drawing) {
        match drawing {
            Drawing::NumberLine(line) => self.add_line(line.from.top()),
            Drawing::DoubleNumberLine(_) => self.add(Need::Line),
            Drawing::FractionStrips(_) | Drawing::FractionGrid(_) => self.add(Need::Fraction),
            Drawing::Clock(_) => self.add(Need::Clock),
            Drawing::Coins(_) => self.add(Need::Money),
            Drawing::Ruler(_)
            | Drawing::BarChart(_)
            | Drawing::PictureGraph(_)
            | Drawing::Histogram(_)
            | Drawing::BoxPlot(_) => self.add(Need::Bars),
            Drawing::DotPlot(_) => {
                self.add(Need::Dots);
                self.add(Need::Line);
            }
            Drawing::CoordinateGrid(_) => self.add(Need::Grid),
            Drawing::Protractor(_) => self.add(Need::Protractor),
            _ => {}
        }
    }

    fn add_line(&mut self, from: i64) {
        self.add(Need::Line);
        if from == 0 {
            self.add(Need::LineFromZero);
        }
    }

    fn add_entry(&mut self, entry: &Entry) {
        match entry {
            Entry::Fraction { .. } | Entry::ShadedFraction { .. } => self.add(Need::Fraction),
            Entry::Comparison => self.add(Need::Comparison),
            Entry::OneChoice { choices } | Entry::SeveralChoices { choices } => {
                for choice in choices {
                    self.add_block(&choice.shows);
                }
            }
            Entry::Ordering { things, .. } => {
                for thing in things {
                    self.add_block(&thing.shows);
                }
            }
            Entry::NumberLinePoint { line } | Entry::NumberLineRay { line } => {
                self.add_line(line.from.top());
            }
            Entry::Expression { letters } | Entry::Equation { letters, .. }
                if !letters.is_empty() =>
            {
                self.add(Need::Letter);
            }
            Entry::TwoParts { first, second, .. } => {
                self.add_entry(first);
                self.add_entry(second);
            }
            Entry::Coordinates { .. } => self.add(Need::Grid),
            Entry::Angle { turned: true } => self.add(Need::Protractor),
            Entry::Plot { style, .. } => self.add(match style {
                crate::answer::PlotStyle::Dots => Need::Dots,
                _ => Need::Bars,
            }),
            _ => {}
        }
    }
}

/// A message of a misconception: the ending of its id, and what it points at.
type Message = (&'static str, &'static [Need]);

/// The messages of a misconception, the most telling first. One without needs fits anywhere.
fn messages(code: &str) -> &'static [Message] {
    use Need::*;
    match code {
        "subtracted-instead" | "added-instead" => &[("-sign", &[PlusOrMinus]), ("", &[])],
        "added-instead-of-multiplied" => {
            &[("-beside", &[SideBySide]), ("-sign", &[Times]), ("", &[])]
        }
        "subtracted-instead-of-divided" => &[
            ("-sign", &[Divide]),
            ("-fraction", &[EqualFractions]),
            ("", &[]),
        ],
        "counted-marks-not-steps" => &[("-line", &[LineFromZero]), ("", &[])],
        "kept-the-number" => &[("-fraction", &[EqualFractions]), ("", &[])],
        "compared-sizes-without-signs" => &[("-mixed", &[Negative, BothSigns]), ("", &[Negative])],
        "took-as-different" => &[("-sides", &[Comparison]), ("", &[])],
        "sign-turned-round" => &[("", &[Comparison])],
        "fraction-turned-over"
        | "part-to-part"
        | "counted-parts-of-all-wholes"
        | "shaded-all-parts"
        | "same-top-number"
        | "one-equal-fraction-only"
        | "took-top-only"
        | "took-bottom-only"
        | "larger-bottom-larger-fraction"
        | "compared-tops-only"
        | "compared-bottoms-only"
        | "added-tops-and-bottoms"
        | "subtracted-tops-and-bottoms"
        | "kept-first-fraction"
        | "new-whole-forgotten"
        | "added-wholes-only"
        | "subtracted-wholes-only"
        | "smaller-fraction-from-larger"
        | "fraction-kept-from-whole"
        | "top-and-bottom-swapped"
        | "multiplied-top-and-bottom"
        | "multiplied-bottom"
        | "changed-bottoms-only"
        | "cross-multiplied"
        | "kept-bottom"
        | "thought-product-is-less"
        | "fractions-always-make-smaller"
        | "compared-factor-to-wrong-number"
        | "multiplied-wholes-and-parts-apart"
        | "multiplied-parts-only"
        | "divided-bottom"
        | "one-part-of-turn-only"
        | "multiplied-instead-of-dividing-fractions"
        | "turned-first-fraction"
        | "top-point-bottom" => &[("", &[Fraction])],
        "counted-from-one" => &[("", &[LineFromZero])],
        "counted-from-wrong-end" | "sign-ignored-on-line" | "negative-part-counted-wrong-way" => {
            &[("", &[Line])]
        }
        "brackets-not-seen"
        | "expression-misread"
        | "stopped-after-brackets"
        | "factor-left-inside"
        | "brackets-left-out" => &[("", &[Parentheses])],
        "factor-and-letter-side-by-side"
        | "did-not-undo-the-times"
        | "right-side-taken-as-solution"
        | "letters-swapped-in-equation"
        | "letter-not-multiplied"
        | "constant-for-coefficient"
        | "term-number-for-coefficient"
        | "coefficient-for-constant"
        | "counted-terms-for-constant"
        | "sum-for-constant"
        | "called-parts-coefficients"
        | "coefficients-called-otherwise"
        | "thought-equal-for-some"
        | "unlike-terms-joined" => &[("", &[Letter])],
        "base-times-exponent" | "base-and-exponent-swapped" | "multiplied-before-power" => {
            &[("", &[Power])]
        }
        "clock-hands-swapped" | "next-hour-taken" | "minute-hand-read-as-hour-number" => {
            &[("", &[Clock])]
        }
        "percent-taken-away"
        | "percent-as-the-amount"
        | "percent-of-ten"
        | "percent-added-to-part" => &[("", &[Percent])],
        "counted-the-next-column"
        | "counted-all-dots"
        | "count-and-value-added"
        | "divided-by-number-of-columns"
        | "height-for-value"
        | "middle-of-the-axis"
        | "columns-counted-not-values"
        | "repeated-length-shown-once" => &[("", &[Dots])],
        "scale-not-used"
        | "bars-swapped"
        | "rows-swapped"
        | "one-symbol-short"
        | "bar-one-mark-short"
        | "fraction-part-left-out"
        | "end-mark-read-as-length"
        | "mark-taken-as-tenth"
        | "bars-counted-not-values"
        | "counted-all-values"
        | "one-bar-only"
        | "iqr-for-range" => &[("", &[Bars])],
        "cents-not-carried-to-dollars"
        | "trade-not-taken-away-money"
        | "dollars-multiplied-only" => &[("", &[Money])],
        "signs-left-out-of-distance" => &[("", &[Negative])],
        "coordinates-swapped"
        | "coordinates-added"
        | "corner-on-the-wrong-side"
        | "read-the-point-beside" => &[("", &[Grid])],
        "other-protractor-scale" => &[("", &[Protractor])],
        _ => &[("", &[])],
    }
}

/// What to tell a student with this misconception in an exercise that shows this; `None` if
/// each of its messages points at something that is not there.
#[must_use]
pub fn told(code: &str, shown: Shown) -> Option<Say> {
    let (ending, _) = messages(code).iter().find(|(_, needs)| shown.has(needs))?;
    Some(Say::new(Cow::Owned(format!(
        "misconception-{code}{ending}"
    ))))
}

#[cfg(test)]
mod tests {
    use super::*;
    use surefoot_catalogue::Language;

    /// A line of `pointing.txt` in the folder of a language: words that point at something, and
    /// the needs of which one must be declared.
    fn pointing(line: &str) -> (&str, Vec<&str>) {
        let (words, needs) = line.split_once("\" = ").unwrap();
        (words.strip_prefix('"').unwrap(), needs.split(' ').collect())
    }

    /// Codes whose words point at something that each of their exercises has by its kind.
    const BY_THEIR_KIND: &[&str] = &[
        // An angle is typed; the drawing is of the two sides.
        "protractor-read-by-ten-off",
        // Said of the parentheses in the sum to be written.
        "factor-taken-to-first-only",
        // The jumps of a scale, not of a line.
        "mark-taken-as-ten",
        "pattern-by-one",
        // Both signs of a point are read.
        "both-signs-misread",
        // Quantities in a picture of parts.
        "took-one-whole",
        // The given amounts are named in the words of the exercise.
        "percent-of-the-part",
        // A product is to be written as a power.
        "base-and-exponent-exchanged",
        "exponent-one-short",
        // Choices name the fraction.
        "term-number-for-coefficient",
    ];

    #[test]
    fn a_message_that_points_at_something_declares_it() {
        let mut wrong = Vec::new();
        let first: String = [
            "misconceptions.ftl",
            "items-decimals.ftl",
            "items-expressions.ftl",
            "items-fractions.ftl",
            "items-geometry.ftl",
        ]
        .iter()
        .map(|name| Language::first().file(name).unwrap())
        .collect();
        let listed = include_str!("misconceptions.txt");
        let of_a_concept: std::collections::BTreeSet<&str> = listed.split_whitespace().collect();
        let mut codes: Vec<&str> = first
            .lines()
            .filter_map(|line| line.strip_prefix("misconception-"))
            .filter_map(|line| line.split_once(" = ").map(|(code, _)| code))
            .collect();
        codes.retain(|code| of_a_concept.contains(code));
        assert!(codes.len() > 300, "{}", codes.len());
        let mut words = Vec::new();
        for language in Language::all() {
            let tag = language.as_str();
            let file = language.file("pointing.txt");
            let file = file.unwrap_or_else(|| panic!("{tag} has no pointing.txt"));
            let lines = file.lines().filter(|line| !line.starts_with('#'));
            let all: Vec<(&str, Vec<&str>)> = lines.map(pointing).collect();
            assert!(all.len() >= 10, "{tag}: {} lines", all.len());
            words.push((*language, all));
        }
        for code in codes {
            if BY_THEIR_KIND.contains(&code) {
                continue;
            }
            for (ending, needs) in messages(code) {
                let needs: Vec<String> = needs.iter().map(|need| format!("{need:?}")).collect();
                let id = format!("misconception-{code}{ending}");
                for (language, all) in &words {
                    let text = surefoot_catalogue::messages::message((*language).into(), &id, None)
                        .unwrap();
                    for (words, one_of) in all {
                        if text.contains(words)
                            && !needs.iter().any(|need| one_of.contains(&need.as_str()))
                        {
                            let tag = language.as_str();
                            wrong.push(format!("{id} ({tag}): {words:?} in {text:?}"));
                        }
                    }
                }
            }
        }
        assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    }
}
