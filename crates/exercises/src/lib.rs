//! Exercises: generators by strand, figures, marking, and a teacher's own question bank.
//!
//! An [`Item`] is made from concept, generator version, level and seed, and can always be
//! made again from these four. The screen gets its [`ItemView`], sends back a [`Response`],
//! and gets [`Marked`] and [`Worked`]. Everything that people read is a value ([`Say`],
//! [`Expr`] or [`Figure`]) and never markup, so that screen and paper draw the same in any
//! language.
//!
//! This crate must not know who practises, when, or what is stored. It reads no clock and
//! no file; every draw comes from the seed.
#![cfg_attr(not(test), deny(clippy::indexing_slicing))]

pub mod algebra;
pub mod answer;
pub mod bank;
pub mod block;
#[cfg(test)]
mod checks;
pub mod decimal;
pub mod dice;
pub mod draw;
pub mod expr;
pub mod figure;
pub mod generate;
#[cfg(test)]
mod guessers;
pub mod make;
pub mod mark;
pub mod messages;
mod misconceptions;
pub mod model;
pub mod needs;
pub mod number;
mod often;
pub mod say;
pub mod spell;
mod strand;
pub mod text;
pub mod typed;
#[cfg(test)]
mod variety;

pub use answer::{Answer, Choice, Entry, Response};
pub use block::Block;
pub use dice::{TakenNames, invented_names};
pub use expr::Expr;
pub use figure::{Drawing, Figure};
pub use generate::{
    ItemError, concepts_with_exercises, generate, generate_without, generator_version,
    has_generator,
};
pub use mark::{mark, response_for};
pub use misconceptions::has_misconception;
pub use model::{
    FormNote, FormRule, Item, ItemView, Level, Marked, Misconception, Noticed, Worked,
};
pub use number::Rational;
pub use say::{Arg, Say};
pub use typed::ResponseError;
