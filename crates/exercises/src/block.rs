//! A piece of what an exercise shows.

use super::expr::Expr;
use super::figure::Figure;
use super::say::Say;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A piece of what is shown.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
#[expect(
    clippy::large_enum_variant,
    reason = "an exercise has a handful of blocks; boxing would show in every generator"
)]
pub enum Block {
    /// A sentence.
    Say {
        /// The sentence.
        say: Say,
    },
    /// Mathematics on a line of its own.
    Math {
        /// What to set.
        expr: Expr,
    },
    /// A figure.
    Figure {
        /// The figure.
        figure: Figure,
    },
}

impl From<Say> for Block {
    fn from(say: Say) -> Self {
        Block::Say { say }
    }
}

impl From<Expr> for Block {
    fn from(expr: Expr) -> Self {
        Block::Math { expr }
    }
}

impl From<Figure> for Block {
    fn from(figure: Figure) -> Self {
        Block::Figure { figure }
    }
}
