//! Printing that ends quietly when the reader has seen enough, as in
//! `surefoot board … | head`. Names of files and other text of others cannot steer the terminal.

use std::fmt::Arguments;
use std::io::{ErrorKind, Write as _, stdout};
use std::process::exit;
use surefoot_app::escaped;

/// What structures the output.
const KEPT: [char; 2] = ['\n', '\t'];

/// Prints a line to standard output.
macro_rules! put_line {
    () => { $crate::out::put(format_args!("\n")) };
    ($($words:tt)*) => { $crate::out::put(format_args!("{}\n", format_args!($($words)*))) };
}

pub(crate) use put_line;

/// Prints; ends the program when nobody reads any more, or nothing can be written.
pub fn put(words: Arguments<'_>) {
    let words = words.to_string();
    let words = escaped(&words, &KEPT);
    let Err(error) = stdout().lock().write_all(words.as_bytes()) else {
        return;
    };
    if error.kind() == ErrorKind::BrokenPipe {
        exit(0);
    }
    eprintln!("surefoot: {error}");
    exit(1);
}

/// Prints why a command failed.
pub fn put_error(words: &str) {
    eprintln!("surefoot: {}", escaped(words, &KEPT));
}
