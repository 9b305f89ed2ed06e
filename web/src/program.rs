//! The opened program, as the worker knows it.

use crate::person::{Dialogs, Person};
use serde_json::{Value, json};
use std::path::Path;
use std::sync::Arc;
use surefoot_app::{App, CallError, DeviceClock, NoVoice, WorldPaths};
use wasm_bindgen::prelude::*;

/// The folder of the data. There is one for each place that a page comes from.
const DATA: &str = "data";

/// The opened program.
#[wasm_bindgen]
pub struct Program {
    app: App,
    person: Arc<Person>,
}

#[wasm_bindgen]
impl Program {
    /// Opens the program on the browser's storage. `shares` says whether the page has a share
    /// sheet for files, `prints` whether the program that prints lies beside this one.
    ///
    /// # Errors
    /// The error of a call, as JSON.
    pub async fn open(shares: bool, prints: bool) -> Result<Program, String> {
        surefoot_app::open_storage().await.map_err(words)?;
        surefoot_app::make_room().await.map_err(words)?;
        let person = Arc::new(Person::new(shares, prints));
        let app = App::open(
            Path::new(DATA),
            Box::new(Dialogs(Arc::clone(&person))),
            Box::new(DeviceClock),
            Box::new(NoVoice),
        )
        .map_err(words)?;
        Ok(Self { app, person })
    }

    /// Makes a call. Returns JSON with one field: `done` with its result, `failed` with its error,
    /// `pick` with the extensions of the files that it asks for, or `share` with the name of the
    /// file that it asks to share, which [`Program::take_files`] then has.
    ///
    /// [`make_room`] must have ended before.
    pub fn call(&self, name: &str, args: &str) -> String {
        let args = serde_json::from_str(args).map_err(|error| CallError::BadArguments {
            detail: error.to_string(),
        });
        let made = args.and_then(|args| surefoot_app::dispatch(&self.app, name, args));
        let answer = match (self.person.asked(), made) {
            (Some(asked), Err(_)) => asked,
            (_, Ok(result)) => json!({ "done": result }),
            (_, Err(error)) => json!({ "failed": error }),
        };
        answer.to_string()
    }

    /// Gives the file that the next call asks for.
    pub fn give(&self, name: String, bytes: Vec<u8>) {
        self.person.give(Some((name, bytes)));
    }

    /// Says that the person picks no file for the next call.
    pub fn give_none(&self) {
        self.person.give(None);
    }

    /// Says what came of sharing the file that the next call asks to share.
    pub fn shared(&self, how: Shared) {
        self.person.answer_share(how);
    }

    /// Says in words where a saved file is.
    pub fn saves_to(&self, place: String) {
        self.person.saves_to(place);
    }

    /// Opens a file that was dropped on the page, or that a link named.
    pub fn open_file(&self, name: String, bytes: Vec<u8>) {
        self.person.open_file(name, bytes);
    }

    /// Takes the files that the last call saved or asks to share: objects with `name`, `type` and
    /// `bytes`.
    pub fn take_files(&self) -> js_sys::Array {
        self.person
            .take_files()
            .into_iter()
            .map(|file| {
                let object = js_sys::Object::new();
                let fields: [(&str, JsValue); 3] = [
                    ("name", file.name.into()),
                    ("type", file.media_type.into()),
                    (
                        "bytes",
                        js_sys::Uint8Array::from(file.bytes.as_slice()).into(),
                    ),
                ];
                for (field, value) in fields {
                    // A new object refuses nothing.
                    let _ = js_sys::Reflect::set(&object, &field.into(), &value);
                }
                object
            })
            .collect()
    }
}

/// What came of sharing a file.
#[wasm_bindgen]
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shared {
    /// It went to another program.
    Went,
    /// The person cancelled.
    Cancelled,
    /// The browser shares no file of this kind.
    Cannot,
}

/// Makes room for the files of the next call.
///
/// # Errors
/// The error of a call, as JSON.
#[wasm_bindgen]
pub async fn make_room() -> Result<(), String> {
    surefoot_app::make_room().await.map_err(words)
}

/// Puts the store of a student into the empty storage, to show the program. Must come before
/// [`Program::open`].
///
/// # Errors
/// The error of a call, as JSON.
#[wasm_bindgen]
pub async fn show_student(id: &str, store: Vec<u8>) -> Result<(), String> {
    surefoot_app::open_storage().await.map_err(words)?;
    surefoot_app::make_room().await.map_err(words)?;
    let own = WorldPaths::new(&Path::new(DATA).join("own"));
    surefoot_app::put_file(&own.student(id), &store).map_err(words)
}

fn words(error: CallError) -> String {
    serde_json::to_value(error)
        .unwrap_or(Value::Null)
        .to_string()
}
