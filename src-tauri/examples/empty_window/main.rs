//! A window with one heading and nothing else, made of the same parts as the
//! program's own: what `tests/window/start_run.py` measures the program against.

fn main() {
    if let Err(error) = tauri::Builder::default().run(tauri::generate_context!(
        "examples/empty_window/tauri.conf.json"
    )) {
        eprintln!("empty window: {error}");
        std::process::exit(1);
    }
}
