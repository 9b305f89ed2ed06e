//! Exact rational numbers, as the screen and files have them.

use num_rational::Ratio;
use serde::{Deserialize, Serialize};
use std::fmt;
use ts_rs::TS;

/// An exact rational number, always in lowest terms with `bottom > 0`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, TS)]
#[serde(try_from = "RawRational", into = "RawRational")]
pub struct Rational {
    /// The numerator; carries the sign.
    #[ts(type = "number")]
    top: i64,
    /// The denominator, greater than zero.
    #[ts(type = "number")]
    bottom: i64,
}

#[derive(Serialize, Deserialize)]
struct RawRational {
    top: i64,
    bottom: i64,
}

impl TryFrom<RawRational> for Rational {
    type Error = String;
    fn try_from(raw: RawRational) -> Result<Self, String> {
        if raw.bottom == 0 || raw.bottom == i64::MIN || raw.top == i64::MIN {
            return Err("a rational number needs a denominator other than 0".into());
        }
        Ok(Ratio::new(raw.top, raw.bottom).into())
    }
}

impl From<Rational> for RawRational {
    fn from(value: Rational) -> Self {
        Self {
            top: value.top,
            bottom: value.bottom,
        }
    }
}

impl From<Ratio<i64>> for Rational {
    fn from(value: Ratio<i64>) -> Self {
        Self {
            top: *value.numer(),
            bottom: *value.denom(),
        }
    }
}

impl From<i64> for Rational {
    fn from(value: i64) -> Self {
        Self {
            top: value,
            bottom: 1,
        }
    }
}

impl From<Rational> for Ratio<i64> {
    fn from(value: Rational) -> Self {
        Ratio::new_raw(value.top, value.bottom)
    }
}

impl Rational {
    /// The numerator in lowest terms.
    #[must_use]
    pub fn top(self) -> i64 {
        self.top
    }

    /// The denominator in lowest terms.
    #[must_use]
    pub fn bottom(self) -> i64 {
        self.bottom
    }

    /// The number as `num-rational` knows it.
    #[must_use]
    pub fn ratio(self) -> Ratio<i64> {
        self.into()
    }
}

impl fmt::Display for Rational {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.bottom == 1 {
            write!(f, "{}", self.top)
        } else {
            write!(f, "{}/{}", self.top, self.bottom)
        }
    }
}
