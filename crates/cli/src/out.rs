//! Printing that ends quietly when the reader has seen enough, as in
//! `surefoot board … | head`.

use std::fmt::Arguments;
use std::io::{ErrorKind, Write as _, stdout};
use std::process::exit;

/// Prints a line to standard output.
macro_rules! put_line {
    () => { $crate::out::put(format_args!("\n")) };
    ($($words:tt)*) => { $crate::out::put(format_args!("{}\n", format_args!($($words)*))) };
}

pub(crate) use put_line;

/// Prints; ends the program when nobody reads any more, or nothing can be written.
pub fn put(words: Arguments<'_>) {
    let Err(error) = stdout().lock().write_fmt(words) else {
        return;
    };
    if error.kind() == ErrorKind::BrokenPipe {
        exit(0);
    }
    eprintln!("surefoot: {error}");
    exit(1);
}
