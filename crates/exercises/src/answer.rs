//! Three types with the same kinds: what the student fills in ([`Entry`]), what the screen
//! sends back ([`Response`]), and the exact key ([`Answer`]).

use super::block::Block;
use super::expr::{Expr, Sign};
use super::figure::{GridFrame, NumberLine, PartShape};
use super::number::Rational;
use super::say::Say;
use serde::{Deserialize, Serialize};
use std::borrow::Cow;
use ts_rs::TS;

/// What the student fills in. The screen gets it with the prompt; it does not show the key.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Entry {
    /// A whole number, or an integer when `signed`.
    WholeNumber {
        /// The minus key is offered.
        signed: bool,
        /// Words after the box, such as a unit.
        unit: Option<Say>,
    },
    /// A decimal.
    Decimal {
        /// The minus key is offered.
        signed: bool,
        /// Words after the box.
        unit: Option<Say>,
    },
    /// A fraction: two boxes and a bar.
    Fraction {
        /// The minus key is offered.
        signed: bool,
        /// Words after the boxes.
        unit: Option<Say>,
    },
    /// A mixed number: three boxes. Empty whole or empty fraction are both allowed.
    Mixed {
        /// The minus key is offered.
        signed: bool,
        /// Words after the boxes.
        unit: Option<Say>,
    },
    /// An amount of money.
    Money,
    /// A time of day: hour and minute.
    Time {
        /// Morning or afternoon is asked too.
        half_day: bool,
    },
    /// A length of time.
    Duration {
        /// A box for hours beside the box for minutes.
        hours: bool,
    },
    /// One of <, = and >.
    Comparison,
    /// One of some choices.
    OneChoice {
        /// In the order shown.
        choices: Vec<Choice>,
    },
    /// All that fit of some choices.
    SeveralChoices {
        /// In the order shown.
        choices: Vec<Choice>,
    },
    /// Things to put in order.
    Ordering {
        /// In the order shown at first.
        things: Vec<Choice>,
        /// Words at the first place, such as "least".
        first: Say,
        /// Words at the last place, such as "greatest".
        last: Say,
    },
    /// An expression in letters.
    Expression {
        /// The letters offered.
        #[ts(type = "Array<string>")]
        letters: Vec<Cow<'static, str>>,
    },
    /// An equation or inequality in letters.
    Equation {
        /// The letters offered.
        #[ts(type = "Array<string>")]
        letters: Vec<Cow<'static, str>>,
        /// The signs offered.
        signs: Vec<Sign>,
    },
    /// A point of the grid, typed as two numbers or tapped on the grid.
    Coordinates {
        /// The grid to tap, if any.
        frame: Option<GridFrame>,
    },
    /// A point on a number line.
    NumberLinePoint {
        /// The line; taps go to the nearest tick.
        line: NumberLine,
    },
    /// An inequality drawn on a number line.
    NumberLineRay {
        /// The line; taps go to the nearest tick.
        line: NumberLine,
    },
    /// The size of an angle, typed or turned.
    Angle {
        /// The student turns a side on a protractor; else types the number.
        turned: bool,
    },
    /// Parts to shade.
    ShadedFraction {
        /// Bars or circles.
        shape: PartShape,
        /// Wholes in a row.
        wholes: u32,
        /// Parts in each.
        parts: u32,
    },
    /// A graph to build.
    Plot {
        /// Bars, dots or symbols.
        style: PlotStyle,
        /// Under each column.
        columns: Vec<Choice>,
        /// What one step of a column counts for.
        #[ts(type = "number")]
        step: i64,
        /// Top of the scale.
        #[ts(type = "number")]
        top: i64,
    },
    /// Squares to mark on a grid.
    GridArea {
        /// Rows of the grid.
        rows: u32,
        /// Columns of the grid.
        columns: u32,
    },
    /// A quotient and what is left over.
    QuotientRemainder,
    /// Several numbers, each in its own box.
    SeveralNumbers {
        /// Words before each box.
        fields: Vec<Say>,
        /// Decimal key offered.
        decimals: bool,
        /// Minus key offered.
        signed: bool,
    },
    /// Numbers for the boxes of the sentence in the prompt. All numbers that make it true are
    /// right.
    Boxes {
        /// How many boxes the sentence has.
        boxes: u32,
        /// The numbers that a box can take.
        numbers: BoxNumbers,
    },
    /// Two parts, neither of which has parts itself. The second counts only if the first is
    /// right.
    TwoParts {
        /// The first part.
        first: Box<Entry>,
        /// The question of the second part.
        ask: Say,
        /// The second part.
        second: Box<Entry>,
    },
}

/// The numbers that the boxes of a sentence can take.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum BoxNumbers {
    /// These numbers, each at most once.
    Cards {
        /// Exact decimal texts with a point, in the order shown.
        cards: Vec<String>,
    },
    /// Whole numbers.
    Range {
        /// The least.
        #[ts(type = "number")]
        least: i64,
        /// The greatest.
        #[ts(type = "number")]
        greatest: i64,
    },
}

impl Entry {
    /// Whether a tap answers it, or a part of it: a choice of several, or a sign. A wrong one
    /// may be a slip of the finger.
    #[must_use]
    pub fn is_tapped(&self) -> bool {
        match self {
            Entry::OneChoice { .. } | Entry::Comparison => true,
            Entry::TwoParts { first, second, .. } => first.is_tapped() || second.is_tapped(),
            _ => false,
        }
    }
}

impl Response {
    /// Whether it was tapped, or a part of it was: a choice of several, or a sign.
    #[must_use]
    pub fn is_tapped(&self) -> bool {
        match self {
            Response::OneChoice { .. } | Response::Comparison { .. } => true,
            Response::TwoParts { first, second } => first.is_tapped() || second.is_tapped(),
            _ => false,
        }
    }
}

/// One choice.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Choice {
    /// What it shows.
    pub shows: Block,
}

/// How a graph is built.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum PlotStyle {
    /// Bars.
    Bars,
    /// Dots over a line.
    Dots,
    /// Rows of symbols.
    Pictures,
}

/// Before or after noon.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum HalfDay {
    /// Before noon.
    Am,
    /// From noon on.
    Pm,
}

/// What comes back from the screen: typed text as typed, taps as places.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Response {
    /// Typed digits.
    WholeNumber {
        /// As typed.
        text: String,
    },
    /// Typed decimal, point or comma.
    Decimal {
        /// As typed.
        text: String,
    },
    /// Typed fraction. An empty bottom with a filled top is a whole number.
    Fraction {
        /// As typed.
        top: String,
        /// As typed.
        bottom: String,
    },
    /// Typed mixed number. Any of the three may be empty where that makes sense.
    Mixed {
        /// As typed.
        whole: String,
        /// As typed.
        top: String,
        /// As typed.
        bottom: String,
    },
    /// Typed amount.
    Money {
        /// As typed, without the currency sign.
        text: String,
    },
    /// Typed time.
    Time {
        /// As typed.
        hour: String,
        /// As typed.
        minute: String,
        /// When asked.
        half_day: Option<HalfDay>,
    },
    /// Typed length of time.
    Duration {
        /// As typed; empty is none.
        hours: String,
        /// As typed; empty is none.
        minutes: String,
    },
    /// A sign.
    Comparison {
        /// Which.
        sign: Sign,
    },
    /// A choice, by its place.
    OneChoice {
        /// From 0.
        index: u32,
    },
    /// Choices, by their places.
    SeveralChoices {
        /// From 0, any order.
        indexes: Vec<u32>,
    },
    /// Places of the things, in the order given to them.
    Ordering {
        /// Each place once.
        order: Vec<u32>,
    },
    /// Typed expression.
    Expression {
        /// As typed, such as `3(x+2)`.
        text: String,
    },
    /// Typed equation or inequality.
    Equation {
        /// As typed, such as `c=9t`.
        text: String,
    },
    /// A point of the grid.
    Coordinates {
        /// As typed or tapped.
        x: String,
        /// As typed or tapped.
        y: String,
    },
    /// A point on the line.
    NumberLinePoint {
        /// Where, on a tick.
        at: Rational,
    },
    /// A half-line on the line.
    NumberLineRay {
        /// The end point.
        from: Rational,
        /// Empty circle.
        open: bool,
        /// Towards greater numbers.
        rightward: bool,
    },
    /// An angle in degrees.
    Angle {
        /// As typed or turned.
        text: String,
    },
    /// Parts shaded, by place over all wholes.
    ShadedFraction {
        /// From 0, each once.
        parts: Vec<u32>,
    },
    /// Heights of the columns.
    Plot {
        /// One for each column.
        #[ts(type = "Array<number>")]
        heights: Vec<i64>,
    },
    /// Squares marked.
    GridArea {
        /// (row, column) from 0, each once.
        cells: Vec<(u32, u32)>,
    },
    /// A quotient and what is left over.
    QuotientRemainder {
        /// As typed.
        quotient: String,
        /// As typed; empty is none.
        remainder: String,
    },
    /// Several numbers.
    SeveralNumbers {
        /// As typed, one for each field.
        texts: Vec<String>,
    },
    /// Numbers in the boxes of a sentence.
    Boxes {
        /// As typed, one for each box.
        texts: Vec<String>,
    },
    /// Two parts.
    TwoParts {
        /// The first part.
        first: Box<Response>,
        /// The second part.
        second: Box<Response>,
    },
}

/// The exact key. The screen does not get it before the answer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Answer {
    /// A whole number or integer.
    WholeNumber {
        /// The number.
        #[ts(type = "number")]
        value: i64,
    },
    /// A decimal.
    Decimal {
        /// Exact decimal text with a point.
        text: String,
    },
    /// A fraction, in the form to be shown.
    Fraction {
        /// Numerator; carries the sign.
        #[ts(type = "number")]
        top: i64,
        /// Denominator, above zero.
        #[ts(type = "number")]
        bottom: i64,
    },
    /// A mixed number, in the form to be shown; `top` 0 is a whole number.
    Mixed {
        /// The number is below zero.
        negative: bool,
        /// Whole part without sign.
        #[ts(type = "number")]
        whole: i64,
        /// Numerator.
        #[ts(type = "number")]
        top: i64,
        /// Denominator, above zero.
        #[ts(type = "number")]
        bottom: i64,
    },
    /// An amount of money.
    Money {
        /// In hundredths.
        #[ts(type = "number")]
        hundredths: i64,
    },
    /// A time of day.
    Time {
        /// 1 to 12.
        hour: u8,
        /// 0 to 59.
        minute: u8,
        /// When asked.
        half_day: Option<HalfDay>,
    },
    /// A length of time.
    Duration {
        /// In minutes.
        #[ts(type = "number")]
        minutes: i64,
    },
    /// A sign.
    Comparison {
        /// Which.
        sign: Sign,
    },
    /// A choice.
    OneChoice {
        /// From 0.
        index: u32,
    },
    /// Choices.
    SeveralChoices {
        /// From 0, ascending.
        indexes: Vec<u32>,
    },
    /// Places of the things in the right order.
    Ordering {
        /// Each place once.
        order: Vec<u32>,
    },
    /// An expression; any equal expression is right unless the form rule says otherwise.
    Expression {
        /// In the notation of a typed response.
        text: String,
    },
    /// An equation or inequality.
    Equation {
        /// In the notation of a typed response.
        text: String,
    },
    /// A point of the grid.
    Coordinates {
        /// Across.
        x: Rational,
        /// Up.
        y: Rational,
    },
    /// A point on the line.
    NumberLinePoint {
        /// Where.
        at: Rational,
    },
    /// A half-line on the line.
    NumberLineRay {
        /// The end point.
        from: Rational,
        /// Empty circle.
        open: bool,
        /// Towards greater numbers.
        rightward: bool,
    },
    /// An angle.
    Angle {
        /// In degrees.
        #[ts(type = "number")]
        degrees: i64,
        /// How far off is still right, in degrees. If above 0, the prompt says so.
        #[ts(type = "number")]
        within: i64,
    },
    /// How many parts to shade.
    ShadedFraction {
        /// Any of the parts, this many.
        count: u32,
    },
    /// Heights of the columns.
    Plot {
        /// One for each column.
        #[ts(type = "Array<number>")]
        heights: Vec<i64>,
    },
    /// A rectangle of squares of these sides, anywhere and either way round.
    GridArea {
        /// Squares along one side.
        rows: u32,
        /// Squares along the other.
        columns: u32,
    },
    /// A quotient and what is left over.
    QuotientRemainder {
        /// Quotient.
        #[ts(type = "number")]
        quotient: i64,
        /// Remainder.
        #[ts(type = "number")]
        remainder: i64,
    },
    /// Several numbers.
    SeveralNumbers {
        /// Exact decimal texts with a point.
        texts: Vec<String>,
    },
    /// Numbers that make a sentence true. In a misconception, the sentence is another one: it
    /// says which wrong numbers show the misconception.
    Boxes {
        /// An example. Exact decimal texts with a point, one for each box.
        texts: Vec<String>,
        /// The sentence; each `Blank` is a box, in reading order.
        sentence: Expr,
    },
    /// Two parts. A misconception is in one of them: its other part is the key's, and is not
    /// compared where the first part is wrong.
    TwoParts {
        /// The first part.
        first: Box<Answer>,
        /// The second part.
        second: Box<Answer>,
    },
}
