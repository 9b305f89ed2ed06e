//! The student's program in a browser: the table of calls, in a worker beside the page.
//!
//! The page sends a call by its name with its arguments as JSON, and gets JSON back. A browser
//! shows no dialog while a call waits, so a call that asks for a file ends with what it asked for;
//! the page lets the person pick, gives the file, and makes the call again.

#![deny(clippy::indexing_slicing)]

#[cfg(target_family = "wasm")]
mod person;
#[cfg(target_family = "wasm")]
mod program;
