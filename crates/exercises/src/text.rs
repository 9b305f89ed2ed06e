//! Exercises as plain text, for the terminal, for screen readers and for tests.

use super::answer::{Answer, Entry};
use super::block::Block;
use super::expr::{Expr, Sign};
use super::model::Item;
use super::needs::{Need, Shown};
use super::say::{Arg, Say};
use crate::messages::{MessageError, Piece, attribute, format_number, pieces};
use surefoot_catalogue::Locale;
use surefoot_catalogue::messages::message;

/// The sentence with mathematics as text.
pub fn say(locale: Locale, words: &Say) -> Result<String, MessageError> {
    let mut text = String::new();
    for piece in pieces(locale, words)? {
        match piece {
            Piece::Words(words) => text.push_str(&words),
            Piece::Math(name) => {
                if let Some(Arg::Math { expr }) = words.args.get(name.as_str()) {
                    text.push_str(&expr_text(locale, expr)?);
                }
            }
        }
    }
    Ok(text)
}

/// A line of mathematics as text.
pub fn expr_text(locale: Locale, expr: &Expr) -> Result<String, MessageError> {
    let text = |inner: &Expr| expr_text(locale, inner);
    let joined = |parts: &[Expr], sign: &str| -> Result<String, MessageError> {
        Ok(parts
            .iter()
            .map(text)
            .collect::<Result<Vec<_>, _>>()?
            .join(sign))
    };
    Ok(match expr {
        Expr::Number { text } => format_number(locale, text),
        Expr::Variable { name } => name.to_string(),
        Expr::Blank => "□".into(),
        Expr::Fraction { top, bottom } => {
            format!("{}/{}", part(locale, top)?, part(locale, bottom)?)
        }
        Expr::Mixed { whole, top, bottom } => {
            format!("{} {}/{}", text(whole)?, text(top)?, text(bottom)?)
        }
        Expr::Sum { terms } => joined(terms, " + ")?,
        Expr::Difference { left, right } => format!("{} − {}", text(left)?, text(right)?),
        Expr::Product {
            factors,
            side_by_side,
        } => joined(factors, if *side_by_side { "" } else { " × " })?,
        Expr::Quotient { left, right } => format!("{} ÷ {}", text(left)?, text(right)?),
        Expr::Relation { left, sign, right } => {
            format!("{} {} {}", text(left)?, sign_text(*sign), text(right)?)
        }
        Expr::Group { inner } => format!("({})", text(inner)?),
        Expr::Power { base, exponent } => format!("{}^{}", text(base)?, text(exponent)?),
        Expr::Negative { inner } => format!("−{}", text(inner)?),
        Expr::Absolute { inner } => format!("|{}|", text(inner)?),
        Expr::Ratio { left, right } => format!("{}:{}", text(left)?, text(right)?),
        Expr::Percent { inner } => format!("{}%", text(inner)?),
        Expr::Measure { amount, unit } => {
            format!("{} {}", text(amount)?, unit_words(locale, unit, amount)?)
        }
        Expr::Money { hundredths } => {
            let amount = super::decimal::Dec::new(*hundredths, 2);
            let amount = if hundredths % 100 == 0 {
                amount.trimmed()
            } else {
                amount
            };
            format!("${}", format_number(locale, &amount.to_string()))
        }
        Expr::Time { hour, minute } => format!("{hour}:{minute:02}"),
        Expr::Pair { x, y } => format!("({}{}{})", text(x)?, locale.number_break(), text(y)?),
        Expr::Degrees { inner } => format!("{}°", text(inner)?),
    })
}

/// A unit after its amount: of one, of a part of one, or of several.
pub fn unit_words(locale: Locale, unit: &str, amount: &Expr) -> Result<String, MessageError> {
    let form = match amount {
        Expr::Number { text } if text == "1" => Some("one"),
        Expr::Fraction { top, bottom } => match (top.as_ref(), bottom.as_ref()) {
            (Expr::Number { text: top }, Expr::Number { text: bottom })
                if top.parse::<i64>().ok() <= bottom.parse().ok() =>
            {
                Some("part")
            }
            _ => None,
        },
        _ => None,
    };
    match form {
        Some(form) => attribute(locale, unit, form),
        None => message(locale, unit, None),
    }
}

/// A numerator or denominator, in parentheses when it is more than one number.
fn part(locale: Locale, expr: &Expr) -> Result<String, MessageError> {
    let text = expr_text(locale, expr)?;
    Ok(match expr {
        Expr::Number { .. } | Expr::Variable { .. } | Expr::Blank => text,
        _ => format!("({text})"),
    })
}

/// The sign between two sides.
#[must_use]
pub fn sign_text(sign: Sign) -> &'static str {
    match sign {
        Sign::Less => "<",
        Sign::Equal => "=",
        Sign::Greater => ">",
        Sign::AtMost => "≤",
        Sign::AtLeast => "≥",
        Sign::NotEqual => "≠",
        Sign::About => "≈",
        Sign::Blank => "○",
    }
}

/// A block as text; a figure by its text alternative.
pub fn block_text(locale: Locale, block: &Block) -> Result<String, MessageError> {
    match block {
        Block::Say { say: words } => say(locale, words),
        Block::Math { expr } => expr_text(locale, expr),
        Block::Figure { figure } => Ok(format!("[{}]", say(locale, &figure.alt)?)),
    }
}

/// Blocks as text, a line each.
pub fn blocks_text(locale: Locale, blocks: &[Block]) -> Result<String, MessageError> {
    Ok(blocks
        .iter()
        .map(|block| block_text(locale, block))
        .collect::<Result<Vec<_>, _>>()?
        .join("\n"))
}

/// What the entry shows: choices, fields, units. Empty when it shows nothing.
pub fn entry_text(locale: Locale, entry: &Entry) -> Result<String, MessageError> {
    let lines = match entry {
        Entry::OneChoice { choices }
        | Entry::SeveralChoices { choices }
        | Entry::Plot {
            columns: choices, ..
        } => choices
            .iter()
            .map(|choice| block_text(locale, &choice.shows))
            .collect::<Result<Vec<_>, _>>()?,
        Entry::Ordering {
            things,
            first,
            last,
        } => {
            let mut lines = vec![say(locale, first)?, say(locale, last)?];
            for thing in things {
                lines.push(block_text(locale, &thing.shows)?);
            }
            lines
        }
        Entry::SeveralNumbers { fields, .. } => fields
            .iter()
            .map(|field| say(locale, field))
            .collect::<Result<Vec<_>, _>>()?,
        Entry::WholeNumber { unit, .. }
        | Entry::Decimal { unit, .. }
        | Entry::Fraction { unit, .. }
        | Entry::Mixed { unit, .. } => unit
            .iter()
            .map(|unit| say(locale, unit))
            .collect::<Result<Vec<_>, _>>()?,
        Entry::TwoParts { first, ask, second } => {
            let parts = [
                entry_text(locale, first)?,
                say(locale, ask)?,
                entry_text(locale, second)?,
            ];
            parts.into_iter().filter(|text| !text.is_empty()).collect()
        }
        _ => Vec::new(),
    };
    Ok(lines.join("\n"))
}

/// The key of an item as blocks to be shown.
#[must_use]
pub fn answer_blocks(item: &Item) -> Vec<Block> {
    shown_answer(&item.prompt, &item.entry, &item.answer)
}

/// An answer, the key or another, as blocks to be shown.
pub(crate) fn shown_answer(prompt: &[Block], entry: &Entry, answer: &Answer) -> Vec<Block> {
    use super::expr::{frac, mixed, negative, num, pair, rational};
    let chosen = |index: u32| match entry {
        Entry::OneChoice { choices } | Entry::SeveralChoices { choices } => {
            choices.get(index as usize).map(|c| c.shows.clone())
        }
        Entry::Ordering { things, .. } => things.get(index as usize).map(|c| c.shows.clone()),
        _ => None,
    };
    let unit = match entry {
        Entry::WholeNumber { unit, .. }
        | Entry::Decimal { unit, .. }
        | Entry::Fraction { unit, .. }
        | Entry::Mixed { unit, .. } => unit.clone(),
        _ => None,
    };
    let with_unit = |expr: Expr| match &unit {
        Some(unit) if unit.args.is_empty() => Expr::Measure {
            amount: Box::new(expr),
            unit: unit.id.clone(),
        },
        _ => expr,
    };
    let math = |expr: Expr| vec![Block::from(expr)];
    match answer {
        Answer::WholeNumber { value } => math(with_unit(num(value))),
        Answer::Decimal { text } => math(with_unit(num(text))),
        Answer::Fraction { top, bottom } => math(with_unit(if *top < 0 {
            negative(frac(-top, *bottom))
        } else {
            frac(*top, *bottom)
        })),
        Answer::Mixed {
            negative: minus,
            whole,
            top,
            bottom,
        } => {
            let size = match (*whole, *top) {
                (whole, 0) => num(whole),
                (0, top) => frac(top, *bottom),
                (whole, top) => mixed(whole, top, *bottom),
            };
            math(with_unit(if *minus { negative(size) } else { size }))
        }
        Answer::Money { hundredths } => math(Expr::Money {
            hundredths: *hundredths,
        }),
        Answer::Time {
            hour,
            minute,
            half_day,
        } => {
            let mut blocks = math(Expr::Time {
                hour: *hour,
                minute: *minute,
            });
            if let Some(half) = half_day {
                blocks.push(Block::from(Say::new(match half {
                    super::answer::HalfDay::Am => "half-day-am",
                    super::answer::HalfDay::Pm => "half-day-pm",
                })));
            }
            blocks
        }
        Answer::Duration { minutes } => vec![Block::from(
            if *minutes >= 60 && matches!(entry, Entry::Duration { hours: true }) {
                Say::new("answer-hours-minutes")
                    .count("hours", minutes / 60)
                    .count("minutes", minutes % 60)
            } else {
                Say::new("answer-minutes").count("minutes", *minutes)
            },
        )],
        Answer::Comparison { sign } => vec![Block::from(Say::new("answer-sign").text(
            "sign",
            match sign {
                Sign::Less => "<",
                Sign::Greater => ">",
                _ => "=",
            },
        ))],
        Answer::OneChoice { index } => chosen(*index).into_iter().collect(),
        Answer::SeveralChoices { indexes: places } | Answer::Ordering { order: places } => {
            places.iter().filter_map(|index| chosen(*index)).collect()
        }
        Answer::Expression { text } | Answer::Equation { text } => {
            let letters = super::mark::letters_of(entry);
            let read = match answer {
                Answer::Equation { .. } => super::algebra::typed_equation(text, &letters),
                _ => super::algebra::typed_expression(text, &letters),
            };
            match read {
                Some(expr) => math(expr),
                None => vec![Block::from(
                    Say::new("answer-typed").text("text", text.clone()),
                )],
            }
        }
        Answer::Coordinates { x, y } => {
            math(pair(rational(x.ratio(), false), rational(y.ratio(), false)))
        }
        Answer::NumberLinePoint { at } => math(line_number(prompt, entry, answer, at.ratio())),
        Answer::NumberLineRay {
            from,
            open,
            rightward,
        } => vec![Block::from(
            Say::new(match (open, rightward) {
                (true, true) => "answer-ray-greater",
                (true, false) => "answer-ray-less",
                (false, true) => "answer-ray-at-least",
                (false, false) => "answer-ray-at-most",
            })
            .math("from", rational(from.ratio(), false)),
        )],
        Answer::Angle { degrees, .. } => math(super::expr::degrees(num(degrees))),
        Answer::ShadedFraction { count } => {
            vec![Block::from(
                Say::new("answer-shaded").count("count", i64::from(*count)),
            )]
        }
        Answer::Plot { heights } => vec![Block::from(
            Say::new("answer-heights").numbers("heights", heights),
        )],
        Answer::GridArea { rows, columns } => vec![Block::from(
            Say::new("answer-rectangle")
                .count("rows", i64::from(*rows))
                .count("columns", i64::from(*columns)),
        )],
        Answer::QuotientRemainder {
            quotient: q,
            remainder,
        } => vec![Block::from(
            Say::new("answer-remainder")
                .number("quotient", q)
                .number("remainder", remainder),
        )],
        Answer::SeveralNumbers { texts } => {
            vec![Block::from(
                Say::new("answer-several").numbers("numbers", texts),
            )]
        }
        Answer::Boxes { texts, sentence } => {
            vec![Block::from(
                Say::new("answer-boxes").math("sentence", super::mark::filled(sentence, texts)),
            )]
        }
        Answer::TwoParts { first, second } => match entry {
            Entry::TwoParts {
                first: first_entry,
                second: second_entry,
                ..
            } => {
                let mut blocks = shown_answer(prompt, first_entry, first);
                blocks.extend(shown_answer(prompt, second_entry, second));
                blocks
            }
            _ => Vec::new(),
        },
    }
}

impl Item {
    /// What the screen gets after the answer.
    #[must_use]
    pub fn worked(&self) -> super::model::Worked {
        super::model::Worked {
            steps: self.steps.clone(),
            answer: answer_blocks(self),
            key: self.answer.clone(),
        }
    }
}

/// A place on the line in the form that the exercise uses: a decimal where the prompt or the
/// labels of the line have decimals, else a fraction; a mixed number where the line has
/// negative numbers.
fn line_number(
    prompt: &[Block],
    entry: &Entry,
    answer: &Answer,
    at: num_rational::Ratio<i64>,
) -> Expr {
    use super::expr::{num, rational};
    // A fraction as the prompt writes it, or in the parts of the line: 4/6, not 2/3.
    if let Some(same) = fractions_in(prompt).find(|expr| crate::mark::known_value(expr) == Some(at))
    {
        return same.clone();
    }
    let shown = Shown::of(prompt, entry, answer);
    let labelled = matches!(entry, Entry::NumberLinePoint { line } if line.labels.iter().any(
        |label| matches!(&label.label, Expr::Number { text } if text.contains('.')),
    ));
    if (labelled || shown.has(&[Need::Decimal]))
        && let Some(decimal) = super::decimal::Dec::exact(at)
    {
        return num(decimal);
    }
    match entry {
        Entry::NumberLinePoint { line }
            if at > num_rational::Ratio::from(0) && !at.is_integer() =>
        {
            let parts = *line.step.ratio().denom();
            let top = at * parts;
            if top.is_integer() {
                super::expr::frac(top.to_integer(), parts)
            } else {
                rational(at, false)
            }
        }
        _ => rational(at, at < num_rational::Ratio::from(0)),
    }
}

/// The fractions that the prompt shows by themselves or in a sentence.
fn fractions_in(prompt: &[Block]) -> impl Iterator<Item = &Expr> {
    let shown = prompt.iter().flat_map(|block| match block {
        Block::Math { expr } => vec![expr],
        Block::Say { say } => say
            .args
            .values()
            .filter_map(|arg| match arg {
                Arg::Math { expr } => Some(expr),
                _ => None,
            })
            .collect(),
        Block::Figure { .. } => Vec::new(),
    });
    shown.filter(|expr| matches!(expr, Expr::Fraction { .. }))
}
