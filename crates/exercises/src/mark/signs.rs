//! Answers typed with a decimal comma, as marking reads them.

use crate::answer::Response;
use surefoot_catalogue::NumberStyle;

/// Exchanges point and comma, so that numbers of one notation are read by the rules of the
/// other, with the same check for two readings.
fn swapped(text: &str) -> String {
    text.chars()
        .map(|sign| match sign {
            ',' => '.',
            '.' => ',',
            other => other,
        })
        .collect()
}

impl Response {
    /// The answer as typed with a decimal point. With decimal commas, `3.5` is still three
    /// and a half, and `1.234` can be read in two ways.
    #[must_use]
    pub fn with_point(self, typed: NumberStyle) -> Self {
        if typed == NumberStyle::PointDecimal {
            return self;
        }
        match self {
            Self::WholeNumber { text } => Self::WholeNumber {
                text: swapped(&text),
            },
            Self::Decimal { text } => Self::Decimal {
                text: swapped(&text),
            },
            Self::Money { text } => Self::Money {
                text: swapped(&text),
            },
            Self::Angle { text } => Self::Angle {
                text: swapped(&text),
            },
            Self::Fraction { top, bottom } => Self::Fraction {
                top: swapped(&top),
                bottom: swapped(&bottom),
            },
            Self::Mixed { whole, top, bottom } => Self::Mixed {
                whole: swapped(&whole),
                top: swapped(&top),
                bottom: swapped(&bottom),
            },
            Self::Coordinates { x, y } => Self::Coordinates {
                x: swapped(&x),
                y: swapped(&y),
            },
            Self::QuotientRemainder {
                quotient,
                remainder,
            } => Self::QuotientRemainder {
                quotient: swapped(&quotient),
                remainder: swapped(&remainder),
            },
            Self::SeveralNumbers { texts } => Self::SeveralNumbers {
                texts: texts.iter().map(|text| swapped(text)).collect(),
            },
            Self::Boxes { texts } => Self::Boxes {
                texts: texts.iter().map(|text| swapped(text)).collect(),
            },
            Self::TwoParts { first, second } => Self::TwoParts {
                first: Box::new(first.with_point(typed)),
                second: Box::new(second.with_point(typed)),
            },
            // No marks between thousands are read here, so either sign is the decimal sign.
            Self::Expression { text } => Self::Expression {
                text: text.replace(',', "."),
            },
            Self::Equation { text } => Self::Equation {
                text: text.replace(',', "."),
            },
            other @ (Self::Time { .. }
            | Self::Duration { .. }
            | Self::Comparison { .. }
            | Self::OneChoice { .. }
            | Self::SeveralChoices { .. }
            | Self::Ordering { .. }
            | Self::NumberLinePoint { .. }
            | Self::NumberLineRay { .. }
            | Self::ShadedFraction { .. }
            | Self::Plot { .. }
            | Self::GridArea { .. }) => other,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::typed::{self, ResponseError};
    use num_rational::Ratio;

    fn decimal(text: &str) -> Result<Ratio<i64>, ResponseError> {
        let response = Response::Decimal { text: text.into() };
        match response.with_point(NumberStyle::CommaDecimal) {
            Response::Decimal { text } => typed::decimal(&text).map(|read| read.0),
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn a_comma_is_the_decimal_sign_and_a_point_is_taken_where_it_can_mean_one_thing() {
        for (typed, value) in [
            ("3,5", Ratio::new(7, 2)),
            ("3.5", Ratio::new(7, 2)),
            (",5", Ratio::new(1, 2)),
            ("1,234", Ratio::new(617, 500)),
            ("0.125", Ratio::new(1, 8)),
            ("1.234,5", Ratio::new(2469, 2)),
            ("1\u{202f}234,5", Ratio::new(2469, 2)),
            ("−2,05", Ratio::new(-41, 20)),
            ("12", Ratio::from(12)),
        ] {
            assert_eq!(decimal(typed), Ok(value), "{typed}");
        }
        assert!(matches!(
            decimal("1.234"),
            Err(ResponseError::TwoReadings { .. })
        ));
        assert!(matches!(
            decimal("3,4,5"),
            Err(ResponseError::NotANumber { .. })
        ));
    }

    #[test]
    fn every_box_and_every_expression_is_read_so() {
        let comma = |response: Response| response.with_point(NumberStyle::CommaDecimal);
        assert_eq!(
            comma(Response::Coordinates {
                x: "1,5".into(),
                y: "2".into()
            }),
            Response::Coordinates {
                x: "1.5".into(),
                y: "2".into()
            }
        );
        assert_eq!(
            comma(Response::SeveralNumbers {
                texts: vec!["0,4".into(), "0,40".into()]
            }),
            Response::SeveralNumbers {
                texts: vec!["0.4".into(), "0.40".into()]
            }
        );
        assert_eq!(
            comma(Response::Expression {
                text: "0,5x+1.5".into()
            }),
            Response::Expression {
                text: "0.5x+1.5".into()
            }
        );
        assert_eq!(
            comma(Response::TwoParts {
                first: Box::new(Response::OneChoice { index: 1 }),
                second: Box::new(Response::Boxes {
                    texts: vec!["2,5".into()]
                }),
            }),
            Response::TwoParts {
                first: Box::new(Response::OneChoice { index: 1 }),
                second: Box::new(Response::Boxes {
                    texts: vec!["2.5".into()]
                }),
            }
        );
        let money = Response::Money {
            text: "3,50".into(),
        };
        assert_eq!(money.clone().with_point(NumberStyle::PointDecimal), money);
    }
}
