//! Mathematics as a tree, for screen, paper and terminal.

use super::number::Rational;
use num_rational::Ratio;
use serde::{Deserialize, Serialize};
use std::borrow::Cow;
use ts_rs::TS;

/// A piece of mathematics, shown as it is written; nothing is computed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Expr {
    /// An exact decimal with a point, such as `-0.50`.
    Number {
        /// The number as text.
        text: String,
    },
    /// A letter.
    Variable {
        /// The letter.
        #[ts(type = "string")]
        name: Cow<'static, str>,
    },
    /// An empty box to fill.
    Blank,
    /// A fraction with a bar.
    Fraction {
        /// Numerator.
        top: Box<Expr>,
        /// Denominator.
        bottom: Box<Expr>,
    },
    /// A whole number and a fraction.
    Mixed {
        /// The whole number.
        whole: Box<Expr>,
        /// Numerator.
        top: Box<Expr>,
        /// Denominator.
        bottom: Box<Expr>,
    },
    /// Terms joined by +.
    Sum {
        /// Two or more.
        terms: Vec<Expr>,
    },
    /// left − right.
    Difference {
        /// Taken from.
        left: Box<Expr>,
        /// Taken away.
        right: Box<Expr>,
    },
    /// Factors joined by the multiplication sign, or written side by side (`6y`).
    Product {
        /// Two or more.
        factors: Vec<Expr>,
        /// Without a sign between them.
        side_by_side: bool,
    },
    /// left ÷ right.
    Quotient {
        /// Dividend.
        left: Box<Expr>,
        /// Divisor.
        right: Box<Expr>,
    },
    /// Two sides and the sign between them.
    Relation {
        /// Left side.
        left: Box<Expr>,
        /// The sign.
        sign: Sign,
        /// Right side.
        right: Box<Expr>,
    },
    /// In brackets.
    Group {
        /// What is inside.
        inner: Box<Expr>,
    },
    /// Base and exponent.
    Power {
        /// Base.
        base: Box<Expr>,
        /// Exponent.
        exponent: Box<Expr>,
    },
    /// The opposite of a number.
    Negative {
        /// Of what.
        inner: Box<Expr>,
    },
    /// Absolute value.
    Absolute {
        /// Of what.
        inner: Box<Expr>,
    },
    /// A ratio written `3 : 4`.
    Ratio {
        /// First amount.
        left: Box<Expr>,
        /// Second amount.
        right: Box<Expr>,
    },
    /// A percentage.
    Percent {
        /// How many of each hundred.
        inner: Box<Expr>,
    },
    /// A number with a unit, the unit being a message id such as `unit-cm`.
    Measure {
        /// The number.
        amount: Box<Expr>,
        /// Message id of the unit's sign.
        #[ts(type = "string")]
        unit: Cow<'static, str>,
    },
    /// An amount of money in the class's currency.
    Money {
        /// In hundredths.
        #[ts(type = "number")]
        hundredths: i64,
    },
    /// A time of day on a 12-hour clock, `4:05`.
    Time {
        /// 1 to 12.
        hour: u8,
        /// 0 to 59.
        minute: u8,
    },
    /// A point of the coordinate grid.
    Pair {
        /// Across.
        x: Box<Expr>,
        /// Up.
        y: Box<Expr>,
    },
    /// An angle in degrees.
    Degrees {
        /// How many.
        inner: Box<Expr>,
    },
}

impl Expr {
    /// Whether this number, without its sign, is written in the expression.
    #[must_use]
    pub fn says_number(&self, number: &str) -> bool {
        let one = |inner: &Expr| inner.says_number(number);
        match self {
            Expr::Number { text } => text.trim_start_matches('-') == number,
            Expr::Variable { .. } | Expr::Blank | Expr::Money { .. } | Expr::Time { .. } => false,
            Expr::Fraction { top, bottom } => one(top) || one(bottom),
            Expr::Mixed { whole, top, bottom } => one(whole) || one(top) || one(bottom),
            Expr::Sum { terms } => terms.iter().any(one),
            Expr::Product { factors, .. } => factors.iter().any(one),
            Expr::Difference { left, right }
            | Expr::Quotient { left, right }
            | Expr::Relation { left, right, .. }
            | Expr::Ratio { left, right } => one(left) || one(right),
            Expr::Power { base, exponent } => one(base) || one(exponent),
            Expr::Group { inner }
            | Expr::Negative { inner }
            | Expr::Absolute { inner }
            | Expr::Percent { inner }
            | Expr::Degrees { inner } => one(inner),
            Expr::Measure { amount, .. } => one(amount),
            Expr::Pair { x, y } => one(x) || one(y),
        }
    }
}

/// The sign between two sides.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum Sign {
    /// <
    Less,
    /// =
    Equal,
    /// >
    Greater,
    /// ≤
    AtMost,
    /// ≥
    AtLeast,
    /// ≠
    NotEqual,
    /// ≈
    About,
    /// An empty circle: the sign is asked for.
    Blank,
}

impl Sign {
    /// The sign of a comparison.
    #[must_use]
    pub fn of(ordering: std::cmp::Ordering) -> Self {
        match ordering {
            std::cmp::Ordering::Less => Sign::Less,
            std::cmp::Ordering::Equal => Sign::Equal,
            std::cmp::Ordering::Greater => Sign::Greater,
        }
    }
}

/// A number as text.
pub fn num(value: impl ToString) -> Expr {
    Expr::Number {
        text: value.to_string(),
    }
}

/// A letter.
pub fn var(name: &'static str) -> Expr {
    Expr::Variable { name: name.into() }
}

/// A fraction of two whole numbers, not reduced.
pub fn frac(top: impl Into<Expr>, bottom: impl Into<Expr>) -> Expr {
    Expr::Fraction {
        top: Box::new(top.into()),
        bottom: Box::new(bottom.into()),
    }
}

/// A mixed number, not reduced.
pub fn mixed(whole: impl Into<Expr>, top: impl Into<Expr>, bottom: impl Into<Expr>) -> Expr {
    Expr::Mixed {
        whole: Box::new(whole.into()),
        top: Box::new(top.into()),
        bottom: Box::new(bottom.into()),
    }
}

/// A rational number as whole number, fraction or (when `as_mixed`) mixed number.
#[must_use]
pub fn rational(value: Ratio<i64>, as_mixed: bool) -> Expr {
    let (top, bottom) = (*value.numer(), *value.denom());
    if bottom == 1 {
        num(top)
    } else if as_mixed && top.abs() > bottom {
        mixed(top / bottom, top.abs() % bottom, bottom)
    } else if top < 0 {
        negative(frac(-top, bottom))
    } else {
        frac(top, bottom)
    }
}

/// left + right.
pub fn sum(terms: impl IntoIterator<Item = impl Into<Expr>>) -> Expr {
    Expr::Sum {
        terms: terms.into_iter().map(Into::into).collect(),
    }
}

/// left − right.
pub fn difference(left: impl Into<Expr>, right: impl Into<Expr>) -> Expr {
    Expr::Difference {
        left: Box::new(left.into()),
        right: Box::new(right.into()),
    }
}

/// left × right.
pub fn product(factors: impl IntoIterator<Item = impl Into<Expr>>) -> Expr {
    Expr::Product {
        factors: factors.into_iter().map(Into::into).collect(),
        side_by_side: false,
    }
}

/// A number (or letter) and letters written side by side, `6y`.
pub fn side_by_side(factors: impl IntoIterator<Item = impl Into<Expr>>) -> Expr {
    Expr::Product {
        factors: factors.into_iter().map(Into::into).collect(),
        side_by_side: true,
    }
}

/// left ÷ right.
pub fn quotient(left: impl Into<Expr>, right: impl Into<Expr>) -> Expr {
    Expr::Quotient {
        left: Box::new(left.into()),
        right: Box::new(right.into()),
    }
}

/// left sign right.
pub fn relation(left: impl Into<Expr>, sign: Sign, right: impl Into<Expr>) -> Expr {
    Expr::Relation {
        left: Box::new(left.into()),
        sign,
        right: Box::new(right.into()),
    }
}

/// left = right.
pub fn equal(left: impl Into<Expr>, right: impl Into<Expr>) -> Expr {
    relation(left, Sign::Equal, right)
}

/// (inner).
pub fn group(inner: impl Into<Expr>) -> Expr {
    Expr::Group {
        inner: Box::new(inner.into()),
    }
}

/// base to the exponent.
pub fn power(base: impl Into<Expr>, exponent: impl Into<Expr>) -> Expr {
    Expr::Power {
        base: Box::new(base.into()),
        exponent: Box::new(exponent.into()),
    }
}

/// −inner.
pub fn negative(inner: impl Into<Expr>) -> Expr {
    Expr::Negative {
        inner: Box::new(inner.into()),
    }
}

/// |inner|.
pub fn absolute(inner: impl Into<Expr>) -> Expr {
    Expr::Absolute {
        inner: Box::new(inner.into()),
    }
}

/// (x, y).
pub fn pair(x: impl Into<Expr>, y: impl Into<Expr>) -> Expr {
    Expr::Pair {
        x: Box::new(x.into()),
        y: Box::new(y.into()),
    }
}

/// left : right.
pub fn ratio(left: impl Into<Expr>, right: impl Into<Expr>) -> Expr {
    Expr::Ratio {
        left: Box::new(left.into()),
        right: Box::new(right.into()),
    }
}

/// inner %.
pub fn percent(inner: impl Into<Expr>) -> Expr {
    Expr::Percent {
        inner: Box::new(inner.into()),
    }
}

/// inner °.
pub fn degrees(inner: impl Into<Expr>) -> Expr {
    Expr::Degrees {
        inner: Box::new(inner.into()),
    }
}

/// A number with a unit, named by the unit's message id.
pub fn measure(amount: impl Into<Expr>, unit: &'static str) -> Expr {
    Expr::Measure {
        amount: Box::new(amount.into()),
        unit: unit.into(),
    }
}

impl From<i64> for Expr {
    fn from(value: i64) -> Self {
        num(value)
    }
}

impl From<Rational> for Expr {
    fn from(value: Rational) -> Self {
        rational(value.ratio(), false)
    }
}
