//! Makes the dispatcher, the list of names and the types of the screens from the table of calls.

use crate::error::CallError;
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::Value;
use std::any::TypeId;
use std::collections::{BTreeMap, BTreeSet};
use ts_rs::{Config, TS, TypeVisitor};

/// A group of calls with a state of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Door {
    /// Start, settings, jobs, copies, backups, removal and voice.
    Device,
    /// The student's screens.
    Student,
    /// The teacher's desk.
    Desk,
}

/// A row of the table of calls.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Call {
    /// Its name for shells and screens.
    pub name: &'static str,
    /// The door it belongs to.
    pub door: Door,
}

/// Decodes the arguments, makes the call and encodes its result.
pub(crate) fn make<A: DeserializeOwned, R: Serialize>(
    args: Value,
    call: impl FnOnce(A) -> Result<R, CallError>,
) -> Result<Value, CallError> {
    let args = serde_json::from_value(args).map_err(|e| CallError::BadArguments {
        detail: e.to_string(),
    })?;
    serde_json::to_value(call(args)?).map_err(|e| CallError::Internal {
        detail: e.to_string(),
    })
}

/// TypeScript declarations of types and of the types in them.
#[derive(Default)]
pub(crate) struct Declarations {
    config: Config,
    by_name: BTreeMap<String, String>,
    seen: BTreeSet<TypeId>,
}

impl Declarations {
    /// Adds a type and returns its name.
    pub(crate) fn add<T: TS + 'static + ?Sized>(&mut self) -> String {
        self.visit::<T>();
        T::name(&self.config)
    }

    pub(crate) fn text(&self) -> String {
        let lines = self.by_name.values().map(|text| format!("export {text}\n"));
        lines.collect()
    }
}

impl TypeVisitor for Declarations {
    fn visit<T: TS + 'static + ?Sized>(&mut self) {
        // Expressions hold expressions: a second visit would not end.
        if !self.seen.insert(TypeId::of::<T>()) {
            return;
        }
        if T::output_path().is_some() {
            let name = T::ident(&self.config);
            if self.by_name.contains_key(&name) {
                return;
            }
            let declaration = T::decl(&self.config);
            self.by_name.insert(name, declaration);
        }
        T::visit_dependencies(self);
        T::visit_generics(self);
    }
}

/// Expands the table into `CALLS`, `dispatch` and `typescript`.
macro_rules! calls {
    ($( $door:ident ($kind:ident) { $( $name:ident ( $arg:ty ) -> $out:ty ; )* } )*) => {
        /// Every call with its door.
        pub const CALLS: &[Call] = &[$($(
            Call { name: stringify!($name), door: Door::$kind },
        )*)*];

        /// Makes the call of this name.
        ///
        /// # Errors
        /// Returns the error of the call, [`CallError::UnknownCall`], or [`CallError::BadArguments`].
        pub fn dispatch(
            app: &App,
            name: &str,
            args: serde_json::Value,
        ) -> Result<serde_json::Value, CallError> {
            match name {
                $($( stringify!($name) => {
                    if Door::$kind == Door::Desk {
                        app.desk.refuse_locked()?;
                    }
                    $crate::calls::make(args, |args: $arg| -> Result<$out, CallError> {
                        app.$door.$name(args)
                    })
                } )*)*
                other => Err(CallError::UnknownCall { name: other.to_owned() }),
            }
        }

        /// The content of `ui/src/lib/backend/contract.ts`.
        #[must_use]
        pub fn typescript() -> String {
            let mut types = $crate::calls::Declarations::default();
            let mut doors = String::new();
            $(
                doors += concat!("export interface ", stringify!($kind), "Calls {\n");
                $(
                    let (args, out) = (types.add::<$arg>(), types.add::<$out>());
                    doors += &format!("  {}: {{ args: {args}; out: {out} }};\n", stringify!($name));
                )*
                doors += "}\n";
            )*
            types.add::<CallError>();
            let all = [$(concat!(stringify!($kind), "Calls")),*].join(" & ");
            format!(
                "// Written by `WRITE_CONTRACT=1 cargo test --test contract`; do not edit.\n\
                 {}{doors}export type Calls = {all};\n",
                types.text()
            )
        }
    };
}
pub(crate) use calls;
