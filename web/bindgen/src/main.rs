//! `surefoot-bindgen PROGRAM.wasm FOLDER`: writes `program.js` and `program_bg.wasm` into a folder.

use std::env::args;
use std::process::ExitCode;
use wasm_bindgen_cli_support::Bindgen;

fn main() -> ExitCode {
    let (Some(program), Some(folder)) = (args().nth(1), args().nth(2)) else {
        eprintln!("surefoot-bindgen PROGRAM.wasm FOLDER");
        return ExitCode::from(2);
    };
    let mut bindgen = Bindgen::new();
    let written = bindgen
        .input_path(program)
        .out_name("program")
        .typescript(false)
        .remove_name_section(true)
        .remove_producers_section(true)
        .omit_default_module_path(true)
        .web(true)
        .and_then(|bindgen| bindgen.generate(folder));
    match written {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("surefoot-bindgen: {error:#}");
            ExitCode::FAILURE
        }
    }
}
