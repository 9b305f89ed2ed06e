//! Exact decimals for generators: a whole number of tenths, hundredths and so on.

use num_rational::Ratio;
use std::fmt;

/// `units` × 10^−`places`, shown with exactly `places` digits after the point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Dec {
    units: i64,
    places: u32,
}

impl Dec {
    /// `units` of the last place.
    #[must_use]
    pub fn new(units: i64, places: u32) -> Self {
        Self { units, places }
    }

    /// The number without zeros at the end.
    #[must_use]
    pub fn trimmed(mut self) -> Self {
        while self.places > 0 && self.units % 10 == 0 {
            self.units /= 10;
            self.places -= 1;
        }
        self
    }

    /// The decimal equal to a ratio, or `None` if its digits do not end within nine places.
    #[must_use]
    pub fn exact(value: Ratio<i64>) -> Option<Self> {
        let mut scaled = value;
        for places in 0..=9 {
            if scaled.is_integer() {
                return Some(Self::new(*scaled.numer(), places));
            }
            scaled = Ratio::new(scaled.numer().checked_mul(10)?, *scaled.denom());
        }
        None
    }

    /// Digits after the point.
    #[must_use]
    pub fn places(self) -> u32 {
        self.places
    }

    /// The number in units of its last place.
    #[must_use]
    pub fn units(self) -> i64 {
        self.units
    }

    /// As a ratio.
    #[must_use]
    pub fn ratio(self) -> Ratio<i64> {
        Ratio::new(self.units, 10_i64.pow(self.places.min(18)))
    }
}

impl fmt::Display for Dec {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let sign = if self.units < 0 { "-" } else { "" };
        let digits = self.units.unsigned_abs();
        if self.places == 0 {
            return write!(f, "{sign}{digits}");
        }
        let width = self.places as usize + 1;
        let padded = format!("{digits:0>width$}");
        let (whole, part) = padded.split_at(padded.len() - self.places as usize);
        write!(f, "{sign}{whole}.{part}")
    }
}

impl From<Dec> for super::expr::Expr {
    fn from(value: Dec) -> Self {
        super::expr::num(value)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn shows_every_place() {
        assert_eq!(Dec::new(5, 2).to_string(), "0.05");
        assert_eq!(Dec::new(-1250, 2).to_string(), "-12.50");
        assert_eq!(Dec::new(1250, 2).trimmed().to_string(), "12.5");
        assert_eq!(Dec::new(7, 0).to_string(), "7");
        assert_eq!(Dec::exact(Ratio::new(3, 8)), Some(Dec::new(375, 3)));
        assert_eq!(Dec::exact(Ratio::new(1, 3)), None);
    }
}
