//! The lists beside this file.

use std::path::Path;

/// Each list whose name begins so: its name, the list, and what is understood.
pub(super) fn each(start: &str) -> Vec<(String, String, String)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/tests/lists");
    #[expect(clippy::disallowed_methods, reason = "a test reads its own lists")]
    let mut paths: Vec<_> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .collect();
    paths.sort();
    let named = |path: &Path| path.file_name().unwrap().to_str().unwrap().to_owned();
    (paths.iter())
        .filter(|path| named(path).starts_with(start))
        .map(|path| {
            #[expect(clippy::disallowed_methods, reason = "a test reads its own lists")]
            let text = std::fs::read_to_string(path).unwrap();
            let (list, understood) = text.split_once("=====\n").unwrap();
            (named(path), list.to_owned(), understood.to_owned())
        })
        .collect()
}
