//! Makes the table of languages, which `src/language.rs` includes, from
//! `shared/languages.json` and the folders of `shared/messages`.

#![expect(
    clippy::disallowed_methods,
    reason = "a build script reads and writes files"
)]

#[path = "src/language_line.rs"]
#[allow(dead_code, reason = "the program uses the rest")]
mod language_line;

use language_line::{LanguageLine, check_line};
use std::error::Error;
use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};

/// How the names of files for the screens alone begin. The build of the screens reads them.
const SCREENS_PREFIX: &str = "screens-";

fn main() -> Result<(), Box<dyn Error>> {
    let shared = PathBuf::from(std::env::var("CARGO_MANIFEST_DIR")?).join("../../shared");
    let table = shared.join("languages.json");
    println!("cargo::rerun-if-changed={}", table.display());
    let lines = lines_of(&fs::read_to_string(&table)?)?;
    let mut code = format!("static BUILT_IN: [Known; {}] = [", lines.len());
    for (place, line) in lines.iter().enumerate() {
        write_language(
            &mut code,
            place,
            line,
            &shared.join("messages").join(&line.tag),
        )?;
    }
    code.push_str("];\n");
    let made = Path::new(&std::env::var("OUT_DIR")?).join("languages.rs");
    // Clippy runs this script again. A new file time would have every crate built again.
    if fs::read_to_string(&made).ok().as_deref() != Some(code.as_str()) {
        fs::write(made, code)?;
    }
    Ok(())
}

/// Reads the table and checks it.
fn lines_of(json: &str) -> Result<Vec<LanguageLine>, String> {
    let lines: Vec<LanguageLine> =
        serde_json::from_str(json).map_err(|error| format!("languages.json: {error}"))?;
    if lines.is_empty() {
        return Err("languages.json has no language".into());
    }
    for (place, line) in lines.iter().enumerate() {
        check_line(line)?;
        if lines.iter().take(place).any(|other| other.tag == line.tag) {
            return Err(format!("languages.json has {:?} twice", line.tag));
        }
    }
    Ok(lines)
}

fn write_language(
    code: &mut String,
    place: usize,
    line: &LanguageLine,
    folder: &Path,
) -> Result<(), Box<dyn Error>> {
    println!("cargo::rerun-if-changed={}", folder.display());
    write!(
        code,
        "Known {{ place: {place}, tag: {:?}, name: {:?}, locale: {:?}, numbers: NumberStyle::{:?}, \
         voices: &{:?}, paper: PaperSize::{:?}, direction: Direction::{:?}, files: &[",
        line.tag,
        line.name,
        line.locale,
        line.decimal_sign,
        line.voices,
        line.paper,
        line.direction
    )?;
    let mut files = fs::read_dir(folder)
        .map_err(|error| format!("{}: {error}", folder.display()))?
        .map(|entry| Ok(entry?.path()))
        .collect::<Result<Vec<_>, std::io::Error>>()?;
    files.sort();
    for path in files {
        let name = path.file_name().and_then(|name| name.to_str());
        let name = name.ok_or_else(|| format!("{}: not UTF-8", path.display()))?;
        if !name.starts_with(SCREENS_PREFIX) {
            println!("cargo::rerun-if-changed={}", path.display());
            write!(
                code,
                "({name:?}, include_str!({:?})),",
                path.display().to_string()
            )?;
        }
    }
    code.push_str("] },\n");
    Ok(())
}
