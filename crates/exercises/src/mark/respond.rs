//! The response that enters a given answer.

use crate::answer::{Answer, Response};
use num_rational::Ratio;

/// The response of a student who enters exactly this answer. For tests of marking and for
/// simulated students.
#[must_use]
pub fn response_for(answer: &Answer) -> Response {
    let text = |n: i64| n.to_string();
    match answer {
        Answer::WholeNumber { value } => Response::WholeNumber { text: text(*value) },
        Answer::Decimal { text } => Response::Decimal { text: text.clone() },
        Answer::Fraction { top, bottom } => Response::Fraction {
            top: text(*top),
            bottom: text(*bottom),
        },
        Answer::Mixed {
            negative,
            whole,
            top,
            bottom,
        } => {
            let minus = |n: i64, here: bool| {
                if *negative && here {
                    format!("-{n}")
                } else {
                    text(n)
                }
            };
            Response::Mixed {
                whole: if *whole == 0 && *top != 0 {
                    String::new()
                } else {
                    minus(*whole, true)
                },
                top: if *top == 0 {
                    String::new()
                } else {
                    minus(*top, *whole == 0)
                },
                bottom: if *top == 0 {
                    String::new()
                } else {
                    text(*bottom)
                },
            }
        }
        Answer::Money { hundredths } => Response::Money {
            text: crate::decimal::Dec::new(*hundredths, 2).to_string(),
        },
        Answer::Time {
            hour,
            minute,
            half_day,
        } => Response::Time {
            hour: hour.to_string(),
            minute: format!("{minute:02}"),
            half_day: *half_day,
        },
        Answer::Duration { minutes } => Response::Duration {
            hours: String::new(),
            minutes: text(*minutes),
        },
        Answer::Comparison { sign } => Response::Comparison { sign: *sign },
        Answer::OneChoice { index } => Response::OneChoice { index: *index },
        Answer::SeveralChoices { indexes } => Response::SeveralChoices {
            indexes: indexes.clone(),
        },
        Answer::Ordering { order } => Response::Ordering {
            order: order.clone(),
        },
        Answer::Expression { text } => Response::Expression { text: text.clone() },
        Answer::Equation { text } => Response::Equation { text: text.clone() },
        Answer::Coordinates { x, y } => Response::Coordinates {
            x: decimal_text(x.ratio()),
            y: decimal_text(y.ratio()),
        },
        Answer::NumberLinePoint { at } => Response::NumberLinePoint { at: *at },
        Answer::NumberLineRay {
            from,
            open,
            rightward,
        } => Response::NumberLineRay {
            from: *from,
            open: *open,
            rightward: *rightward,
        },
        Answer::Angle { degrees, .. } => Response::Angle {
            text: text(*degrees),
        },
        Answer::ShadedFraction { count } => Response::ShadedFraction {
            parts: (0..*count).collect(),
        },
        Answer::Plot { heights } => Response::Plot {
            heights: heights.clone(),
        },
        Answer::GridArea { rows, columns } => Response::GridArea {
            cells: (0..*rows)
                .flat_map(|row| (0..*columns).map(move |column| (row, column)))
                .collect(),
        },
        Answer::QuotientRemainder {
            quotient,
            remainder,
        } => Response::QuotientRemainder {
            quotient: text(*quotient),
            remainder: text(*remainder),
        },
        Answer::SeveralNumbers { texts } => Response::SeveralNumbers {
            texts: texts.clone(),
        },
        Answer::Boxes { texts, .. } => Response::Boxes {
            texts: texts.clone(),
        },
        Answer::TwoParts { first, second } => Response::TwoParts {
            first: Box::new(response_for(first)),
            second: Box::new(response_for(second)),
        },
    }
}

fn decimal_text(value: Ratio<i64>) -> String {
    crate::decimal::Dec::exact(value).map_or_else(String::new, |dec| dec.to_string())
}
