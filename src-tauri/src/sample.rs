//! Starts on the sample class (`--sample`), and prints the progress to the terminal.

use std::io::{self, IsTerminal as _, Write as _};
use std::time::Duration;
use surefoot_app::{App, CallError, JobResult, Nothing};

/// The argument for it.
pub const FLAG: &str = "--sample";

/// Makes the sample class unless it exists, and opens it. If that fails, the window opens
/// on the start screen.
pub fn enter(program: &App) {
    if let Err(error) = try_enter(program) {
        eprintln!("surefoot: the sample class could not be made: {error}");
    }
}

fn try_enter(program: &App) -> Result<(), CallError> {
    if !program.device.start(Nothing {})?.sample_ready {
        eprintln!("Making the sample class");
        let shows_progress = io::stderr().is_terminal();
        let job = program.device.make_sample(Nothing {})?;
        loop {
            let state = program.device.job(job)?;
            match state.result {
                None => {
                    if shows_progress {
                        eprint!("\r{} of {} ", state.done, state.total);
                        let _ = io::stderr().flush();
                    }
                    std::thread::sleep(Duration::from_millis(200));
                }
                Some(JobResult::Failed { error }) => return Err(error),
                Some(_) => break,
            }
        }
        if shows_progress {
            eprintln!();
        }
    }
    program.device.enter_sample(Nothing {}).map(|_| ())
}
