//! Answers by kind.

use crate::answer::Answer;
use crate::decimal::Dec;
use crate::expr::Sign;
use crate::number::Rational;
use num_rational::Ratio;

/// A whole number.
#[must_use]
pub fn whole(value: i64) -> Answer {
    Answer::WholeNumber { value }
}

/// A decimal, without zeros at the end.
#[must_use]
pub fn decimal(value: Dec) -> Answer {
    Answer::Decimal {
        text: value.trimmed().to_string(),
    }
}

/// A fraction with just these numbers.
#[must_use]
pub fn fraction(top: i64, bottom: i64) -> Answer {
    Answer::Fraction { top, bottom }
}

/// A mixed number in lowest terms.
#[must_use]
pub fn mixed(value: Ratio<i64>) -> Answer {
    let (top, bottom) = (value.numer().abs(), *value.denom());
    Answer::Mixed {
        negative: *value.numer() < 0,
        whole: top / bottom,
        top: top % bottom,
        bottom,
    }
}

/// A sign.
#[must_use]
pub fn compare(sign: Sign) -> Answer {
    Answer::Comparison { sign }
}

/// A choice by its place.
#[must_use]
pub fn choice(index: u32) -> Answer {
    Answer::OneChoice { index }
}

/// An amount of money.
#[must_use]
pub fn money(hundredths: i64) -> Answer {
    Answer::Money { hundredths }
}

/// A time of day without half of the day.
#[must_use]
pub fn time(hour: i64, minute: i64) -> Answer {
    Answer::Time {
        hour: hour as u8,
        minute: minute as u8,
        half_day: None,
    }
}

/// A length of time.
#[must_use]
pub fn duration(minutes: i64) -> Answer {
    Answer::Duration { minutes }
}

/// An expression in the notation of typed responses.
#[must_use]
pub fn expression(text: impl Into<String>) -> Answer {
    Answer::Expression { text: text.into() }
}

/// An equation in the notation of typed responses.
#[must_use]
pub fn equation(text: impl Into<String>) -> Answer {
    Answer::Equation { text: text.into() }
}

/// A point of the grid.
#[must_use]
pub fn point(x: i64, y: i64) -> Answer {
    Answer::Coordinates {
        x: Rational::from(x),
        y: Rational::from(y),
    }
}

/// A quotient and remainder.
#[must_use]
pub fn division(quotient: i64, remainder: i64) -> Answer {
    Answer::QuotientRemainder {
        quotient,
        remainder,
    }
}

/// Several numbers.
#[must_use]
pub fn several<T: ToString>(values: impl IntoIterator<Item = T>) -> Answer {
    Answer::SeveralNumbers {
        texts: values.into_iter().map(|v| v.to_string()).collect(),
    }
}
