//! What a command prints and returns. Printing ends quietly when nobody reads any more, as
//! in `surefoot board … | head`. What others wrote, such as file names, cannot control the
//! terminal.

use std::fmt::Arguments;
use std::io::{ErrorKind, Write as _, stdout};
use std::process::exit;
use surefoot_app::escaped;

/// Control characters that structure the output.
const KEPT: [char; 2] = ['\n', '\t'];

/// What a command returns; an error is the sentence for the terminal's error stream.
pub type CommandResult = Result<(), String>;

/// Prints a line to standard output.
macro_rules! put_line {
    () => { $crate::out::put(format_args!("\n")) };
    ($($words:tt)*) => { $crate::out::put(format_args!("{}\n", format_args!($($words)*))) };
}

pub(crate) use put_line;

/// Prints. Ends the program if nobody reads any more, or if nothing can be written.
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

/// Prints a value as JSON.
pub fn print_json(value: &impl serde::Serialize) -> CommandResult {
    let text = serde_json::to_string_pretty(value).map_err(|error| error.to_string())?;
    put_line!("{text}");
    Ok(())
}

/// Prints why a command failed.
pub fn put_error(words: &str) {
    eprintln!("surefoot: {}", escaped(words, &KEPT));
}
