//! Typed expressions and equations: read into a tree, compared as polynomials
//! with exact coefficients, or step by step.

mod read;
mod shown;

pub use read::{expression, statement};
pub use shown::{typed_equation, typed_expression};

use super::expr::Sign;
use super::typed::{ResponseError, plus, times};
use num_rational::Ratio;
use num_traits::{One, Zero};
use std::collections::BTreeMap;

/// An expression as typed.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Tree {
    /// A number.
    Number(Ratio<i64>),
    /// A letter.
    Letter(char),
    /// Terms, each added.
    Sum(Vec<Tree>),
    /// Factors, each multiplied.
    Product(Vec<Tree>),
    /// The opposite.
    Minus(Box<Tree>),
    /// One over it.
    Over(Box<Tree>),
    /// Base and whole exponent.
    Power(Box<Tree>, u32),
}

/// Letters with exponents, in order of the letters.
type Monomial = BTreeMap<char, u32>;

/// A polynomial: monomials with coefficients other than zero.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Default)]
pub struct Poly(BTreeMap<Monomial, Ratio<i64>>);

/// left − right against zero, scaled so that equal statements are equal values.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Statement {
    sign: Sign,
    difference: Poly,
}

impl Tree {
    /// The polynomial with the same value.
    ///
    /// # Errors
    /// [`ResponseError`] if a number does not fit, or if it is divided by a letter or by zero.
    pub fn poly(&self) -> Result<Poly, ResponseError> {
        match self {
            Tree::Number(value) => Ok(Poly::constant(*value)),
            Tree::Letter(letter) => Ok(Poly(BTreeMap::from([(
                BTreeMap::from([(*letter, 1)]),
                Ratio::one(),
            )]))),
            Tree::Sum(terms) => terms
                .iter()
                .try_fold(Poly::default(), |sum, term| sum.plus(&term.poly()?)),
            Tree::Product(factors) => factors
                .iter()
                .try_fold(Poly::constant(Ratio::one()), |product, factor| {
                    product.times(&factor.poly()?)
                }),
            Tree::Minus(inner) => inner.poly()?.times(&Poly::constant(-Ratio::one())),
            Tree::Over(inner) => {
                let value = inner.poly()?.as_constant().ok_or(ResponseError::TooLarge)?;
                if value.is_zero() {
                    return Err(ResponseError::ZeroBottom);
                }
                Ok(Poly::constant(value.recip()))
            }
            Tree::Power(base, exponent) => {
                let base = base.poly()?;
                (0..*exponent).try_fold(Poly::constant(Ratio::one()), |product, _| {
                    product.times(&base)
                })
            }
        }
    }

    /// The same steps in a fixed order: terms and factors sorted, nested sums
    /// and products joined. Two trees with equal canonical forms do the same
    /// operations on the same numbers.
    #[must_use]
    pub fn canonical(&self) -> Tree {
        match self {
            Tree::Sum(terms) => {
                let mut flat = Vec::new();
                for term in terms {
                    match term.canonical() {
                        Tree::Sum(inner) => flat.extend(inner),
                        other => flat.push(other),
                    }
                }
                flat.sort();
                Tree::Sum(flat)
            }
            Tree::Product(factors) => {
                let mut flat = Vec::new();
                for factor in factors {
                    match factor.canonical() {
                        Tree::Product(inner) => flat.extend(inner),
                        other => flat.push(other),
                    }
                }
                flat.sort();
                Tree::Product(flat)
            }
            Tree::Minus(inner) => Tree::Minus(Box::new(inner.canonical())),
            Tree::Over(inner) => Tree::Over(Box::new(inner.canonical())),
            Tree::Power(base, exponent) => Tree::Power(Box::new(base.canonical()), *exponent),
            leaf => leaf.clone(),
        }
    }

    /// Whether no sum is left to multiply out, and like terms are collected.
    #[must_use]
    pub fn is_expanded(&self) -> bool {
        fn has_bracket(tree: &Tree) -> bool {
            match tree {
                Tree::Sum(_) => true,
                Tree::Product(factors) => factors.iter().any(has_bracket),
                Tree::Minus(inner) | Tree::Over(inner) => has_bracket(inner),
                Tree::Power(base, _) => has_bracket(base),
                Tree::Number(_) | Tree::Letter(_) => false,
            }
        }
        let terms: &[Tree] = match self {
            Tree::Sum(terms) => terms,
            one => std::slice::from_ref(one),
        };
        !terms.iter().any(has_bracket)
            && self
                .poly()
                .is_ok_and(|poly| poly.0.len().max(1) == terms.len())
    }

    /// A product of a sum and the greatest number that divides all its terms.
    #[must_use]
    pub fn is_factored(&self) -> bool {
        let Tree::Product(factors) = self else {
            return false;
        };
        factors.iter().any(|factor| {
            matches!(factor, Tree::Sum(_))
                && factor.poly().is_ok_and(|poly| poly.content() == Some(1))
        })
    }
}

impl Poly {
    fn constant(value: Ratio<i64>) -> Self {
        let mut poly = Self::default();
        if !value.is_zero() {
            poly.0.insert(Monomial::new(), value);
        }
        poly
    }

    /// Its value, if it has no letters.
    #[must_use]
    pub fn as_constant(&self) -> Option<Ratio<i64>> {
        match self.0.len() {
            0 => Some(Ratio::zero()),
            1 => self.0.get(&Monomial::new()).copied(),
            _ => None,
        }
    }

    /// The greatest whole number that divides all coefficients, when all are whole.
    fn content(&self) -> Option<i64> {
        self.0.values().try_fold(0, |common, coefficient| {
            coefficient
                .is_integer()
                .then(|| num_integer::gcd(common, *coefficient.numer()))
        })
    }

    fn plus(mut self, other: &Poly) -> Result<Poly, ResponseError> {
        for (monomial, coefficient) in &other.0 {
            let sum = plus(
                self.0.get(monomial).copied().unwrap_or_else(Ratio::zero),
                *coefficient,
            )?;
            if sum.is_zero() {
                self.0.remove(monomial);
            } else {
                self.0.insert(monomial.clone(), sum);
            }
        }
        Ok(self)
    }

    fn times(&self, other: &Poly) -> Result<Poly, ResponseError> {
        let mut product = Poly::default();
        if self.0.len() * other.0.len() > 400 {
            return Err(ResponseError::TooLarge);
        }
        for (left, a) in &self.0 {
            for (right, b) in &other.0 {
                let mut monomial = left.clone();
                for (letter, exponent) in right {
                    *monomial.entry(*letter).or_insert(0) += exponent;
                }
                let term = Poly(BTreeMap::from([(monomial, times(*a, *b)?)]));
                product = product.plus(&term)?;
            }
        }
        Ok(product)
    }
}

impl Statement {
    fn new(left: Poly, sign: Sign, right: Poly) -> Result<Self, ResponseError> {
        let minus = right.times(&Poly::constant(-Ratio::one()))?;
        let difference = left.plus(&minus)?;
        // Scale so that the last coefficient is 1; a negative scale turns an inequality round.
        let Some(last) = difference.0.values().next_back().copied() else {
            return Ok(Self { sign, difference });
        };
        let turned = match sign {
            Sign::Less => Sign::Greater,
            Sign::Greater => Sign::Less,
            Sign::AtMost => Sign::AtLeast,
            Sign::AtLeast => Sign::AtMost,
            same => same,
        };
        Ok(Self {
            sign: if last < Ratio::zero() { turned } else { sign },
            difference: difference.times(&Poly::constant(last.recip()))?,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn poly(text: &str) -> Poly {
        expression(text, &['x', 'y', 'n'])
            .and_then(|tree| tree.poly())
            .unwrap()
    }

    #[test]
    fn equal_expressions_are_equal_polynomials() {
        assert_eq!(poly("3(x+2)"), poly("6 + 3x"));
        assert_eq!(poly("n/5"), poly("0.2n"));
        assert_eq!(poly("x*x"), poly("x²"));
        assert_eq!(poly("(x+1)^2"), poly("x^2+2x+1"));
        assert_ne!(poly("n-7"), poly("7-n"));
        assert_eq!(poly("2x-x-x"), poly("0"));
    }

    #[test]
    fn equal_statements_are_equal() {
        let read = |text| statement(text, &['c', 't']).unwrap();
        assert_eq!(read("c=9t"), read("t = c/9"));
        assert_eq!(read("c>48"), read("48<c"));
        assert_ne!(read("c>48"), read("c<48"));
        assert_ne!(read("c>48"), read("c>=48"));
        assert_eq!(read("c≥48"), read("c>=48"));
    }

    #[test]
    fn steps_are_compared_up_to_order() {
        let steps = |text| expression(text, &[]).unwrap().canonical();
        assert_eq!(steps("3×(6+5)"), steps("(5+6)×3"));
        assert_ne!(steps("3×(6+5)"), steps("33"));
        assert_ne!(steps("3×6+5"), steps("3×(6+5)"));
        assert_ne!(steps("8-2"), steps("2-8"));
    }

    #[test]
    fn knows_expanded_and_factored() {
        let tree = |text| expression(text, &['x']).unwrap();
        assert!(tree("12+8x").is_expanded());
        assert!(!tree("4(3+2x)").is_expanded());
        assert!(!tree("12+4x+4x").is_expanded());
        assert!(tree("4(3+2x)").is_factored());
        assert!(!tree("2(6+4x)").is_factored());
    }

    #[test]
    fn says_where_it_cannot_read() {
        assert_eq!(
            expression("3+", &[]).unwrap_err(),
            ResponseError::NotAnExpression {
                text: "3+".into(),
                at: 2
            }
        );
        assert_eq!(
            expression("3q", &['x']).unwrap_err(),
            ResponseError::UnknownLetter { letter: 'q' }
        );
        assert!(expression(&"(".repeat(30), &[]).is_err());
        assert!(expression("9999999999^9", &[]).unwrap().poly().is_err());
        assert!(statement("x", &['x']).is_err());
    }
}
