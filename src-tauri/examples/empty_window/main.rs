//! A window with one heading, made with the libraries of the program. `tests/window/start_run.py`
//! compares the program with it.

fn main() {
    if let Err(error) = tauri::Builder::default().run(tauri::generate_context!(
        "examples/empty_window/tauri.conf.json"
    )) {
        eprintln!("empty window: {error}");
        std::process::exit(1);
    }
}
