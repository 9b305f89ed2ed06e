//! Exercises: structured prompt, figure, exact answer, steps, hints, misconceptions.
//!
//! An [`Item`] is made from (concept, generator version, level, seed) and can
//! be made again from those four. The screen gets its [`ItemView`], sends back
//! a [`Response`], and gets [`Marked`] and [`Worked`]. Everything people read
//! is a [`Say`], an [`Expr`] or a [`Figure`]: values, never markup.

pub mod answer;
pub mod expr;
pub mod figure;
pub mod model;
pub mod number;
pub mod say;

pub use answer::{Answer, Choice, Entry, Response};
pub use expr::Expr;
pub use figure::{Drawing, Figure};
pub use model::{
    Block, FormNote, FormRule, Item, ItemView, Level, Marked, Mistake, Noticed, Worked,
};
pub use number::Rational;
pub use say::{Arg, Say};
