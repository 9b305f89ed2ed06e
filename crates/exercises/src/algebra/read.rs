//! From typed text to a tree.

use super::{Statement, Tree};
use crate::expr::Sign;
use crate::typed::ResponseError;

/// Longest typed expression, in characters.
const LONGEST_CHARS: usize = 80;

/// Deepest nesting of brackets.
const DEEPEST: usize = 12;

/// Greatest exponent.
const GREATEST_EXPONENT: u32 = 12;

/// Reads an expression. `letters` are those allowed.
///
/// # Errors
/// [`ResponseError`] with the place that cannot be read.
pub fn expression(text: &str, letters: &[char]) -> Result<Tree, ResponseError> {
    let mut reader = Reader::new(text, letters)?;
    let tree = reader.sum(0)?;
    if reader.at < reader.chars.len() {
        return Err(reader.trouble());
    }
    Ok(tree)
}

/// Reads an equation or inequality.
///
/// # Errors
/// [`ResponseError`] with the place that cannot be read.
pub fn statement(text: &str, letters: &[char]) -> Result<Statement, ResponseError> {
    let plain = text.replace("<=", "≤").replace(">=", "≥");
    let mut reader = Reader::new(&plain, letters)?;
    let left = reader.sum(0)?.poly()?;
    let sign = match reader.next() {
        Some('=') => Sign::Equal,
        Some('<') => Sign::Less,
        Some('>') => Sign::Greater,
        Some('≤') => Sign::AtMost,
        Some('≥') => Sign::AtLeast,
        _ => {
            reader.at = reader.at.saturating_sub(1);
            return Err(reader.trouble());
        }
    };
    let right = reader.sum(0)?.poly()?;
    if reader.at < reader.chars.len() {
        return Err(reader.trouble());
    }
    Statement::new(left, sign, right)
}

struct Reader<'a> {
    text: &'a str,
    chars: Vec<char>,
    at: usize,
    letters: &'a [char],
}

impl<'a> Reader<'a> {
    fn new(text: &'a str, letters: &'a [char]) -> Result<Self, ResponseError> {
        let chars: Vec<char> = text.chars().filter(|c| !c.is_whitespace()).collect();
        if chars.is_empty() {
            return Err(ResponseError::Empty);
        }
        if chars.len() > LONGEST_CHARS {
            return Err(ResponseError::TooLarge);
        }
        Ok(Self {
            text,
            chars,
            at: 0,
            letters,
        })
    }

    fn trouble(&self) -> ResponseError {
        ResponseError::NotAnExpression {
            text: self.text.chars().take(80).collect(),
            at: u32::try_from(self.at).unwrap_or(u32::MAX),
        }
    }

    fn peek(&self) -> Option<char> {
        self.chars.get(self.at).copied()
    }

    fn next(&mut self) -> Option<char> {
        let c = self.peek();
        self.at += 1;
        c
    }

    fn sum(&mut self, depth: usize) -> Result<Tree, ResponseError> {
        let mut terms = Vec::new();
        let mut minus = match self.peek() {
            Some('-' | '−' | '–') => {
                self.at += 1;
                true
            }
            _ => false,
        };
        loop {
            let term = self.product(depth)?;
            terms.push(if minus {
                Tree::Minus(Box::new(term))
            } else {
                term
            });
            match self.peek() {
                Some('+') => minus = false,
                Some('-' | '−' | '–') => minus = true,
                _ => break,
            }
            self.at += 1;
        }
        Ok(if terms.len() == 1 {
            terms.remove(0)
        } else {
            Tree::Sum(terms)
        })
    }

    fn product(&mut self, depth: usize) -> Result<Tree, ResponseError> {
        let mut factors = vec![self.power(depth)?];
        loop {
            match self.peek() {
                Some('*' | '×' | '·' | '⋅') => {
                    self.at += 1;
                    factors.push(self.power(depth)?);
                }
                Some('/' | '÷' | ':') => {
                    self.at += 1;
                    factors.push(Tree::Over(Box::new(self.power(depth)?)));
                }
                Some(c) if c.is_ascii_digit() || c.is_alphabetic() || c == '(' => {
                    factors.push(self.power(depth)?);
                }
                _ => break,
            }
        }
        Ok(if factors.len() == 1 {
            factors.remove(0)
        } else {
            Tree::Product(factors)
        })
    }

    fn power(&mut self, depth: usize) -> Result<Tree, ResponseError> {
        let base = self.atom(depth)?;
        let exponent = match self.peek() {
            Some('^') => {
                self.at += 1;
                let digits = self.digits();
                digits.parse().map_err(|_| self.trouble())?
            }
            Some('²') => {
                self.at += 1;
                2
            }
            Some('³') => {
                self.at += 1;
                3
            }
            _ => return Ok(base),
        };
        if exponent > GREATEST_EXPONENT {
            return Err(ResponseError::TooLarge);
        }
        Ok(Tree::Power(Box::new(base), exponent))
    }

    fn digits(&mut self) -> String {
        let mut digits = String::new();
        while let Some(c) = self.peek().filter(char::is_ascii_digit) {
            digits.push(c);
            self.at += 1;
        }
        digits
    }

    fn atom(&mut self, depth: usize) -> Result<Tree, ResponseError> {
        match self.peek() {
            Some('(') if depth < DEEPEST => {
                self.at += 1;
                let inner = self.sum(depth + 1)?;
                if self.next() != Some(')') {
                    self.at = self.at.saturating_sub(1);
                    return Err(self.trouble());
                }
                Ok(inner)
            }
            Some(c) if c.is_ascii_digit() || c == '.' => {
                let mut number = self.digits();
                if matches!(self.peek(), Some('.' | ',')) {
                    self.at += 1;
                    number.push('.');
                    number.push_str(&self.digits());
                }
                crate::typed::decimal(&number).map(|(value, _)| Tree::Number(value))
            }
            Some(c) if c.is_alphabetic() => {
                if !self.letters.contains(&c) {
                    return Err(ResponseError::UnknownLetter { letter: c });
                }
                self.at += 1;
                Ok(Tree::Letter(c))
            }
            _ => Err(self.trouble()),
        }
    }
}
