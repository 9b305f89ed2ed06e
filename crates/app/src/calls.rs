//! Makes the dispatcher, the list of names and the types of the screens from the table of calls.

use crate::error::CallError;
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::Value;

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

#[cfg(feature = "desk")]
mod declarations;
#[cfg(feature = "desk")]
pub(crate) use declarations::Declarations;

/// Expands the table into `CALLS`, `dispatch` and `typescript`. The last door is left out with its
/// feature, and so is a call that has a condition of its own.
macro_rules! calls {
    (
        $( $door:ident ($kind:ident) {
            $( $(#[$on:meta])* $name:ident ( $arg:ty ) -> $out:ty ; )*
        } )*
        #[cfg(feature = "desk")]
        $last:ident ($last_kind:ident) {
            $( $last_name:ident ( $last_arg:ty ) -> $last_out:ty ; )*
        }
    ) => {
        /// Every call with its door.
        pub const CALLS: &[Call] = &[
            $($(
                $(#[$on])*
                Call { name: stringify!($name), door: Door::$kind },
            )*)*
            $(
                #[cfg(feature = "desk")]
                Call { name: stringify!($last_name), door: Door::$last_kind },
            )*
        ];

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
                $($(
                    $(#[$on])*
                    stringify!($name) => {
                        $crate::calls::make(args, |args: $arg| -> Result<$out, CallError> {
                            app.$door.$name(args)
                        })
                    }
                )*)*
                $(
                    #[cfg(feature = "desk")]
                    stringify!($last_name) => {
                        app.$last.refuse_locked()?;
                        $crate::calls::make(args, |args: $last_arg| -> Result<$last_out, CallError> {
                            app.$last.$last_name(args)
                        })
                    }
                )*
                other => Err(CallError::UnknownCall { name: other.to_owned() }),
            }
        }

        /// The content of `ui/src/lib/backend/contract.ts`.
        #[cfg(feature = "desk")]
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
            doors += concat!("export interface ", stringify!($last_kind), "Calls {\n");
            $(
                let (args, out) = (types.add::<$last_arg>(), types.add::<$last_out>());
                doors += &format!("  {}: {{ args: {args}; out: {out} }};\n", stringify!($last_name));
            )*
            doors += "}\n";
            types.add::<CallError>();
            let all = [$(concat!(stringify!($kind), "Calls"),)* concat!(stringify!($last_kind), "Calls")]
                .join(" & ");
            format!(
                "// Written by `WRITE_CONTRACT=1 cargo test --test contract`; do not edit.\n\
                 {}{doors}export type Calls = {all};\n",
                types.text()
            )
        }
    };
}
pub(crate) use calls;
