//! One table of calls: yields the dispatcher and the TypeScript contract.

/// Expands a table of calls into `CALL_NAMES`, `dispatch` and `typescript`.
macro_rules! calls {
    ($state:ty, $err:ty; $( $(#[$doc:meta])* $name:ident ( $arg:ty ) -> $out:ty ; )*) => {
        /// The names of all calls.
        pub const CALL_NAMES: &[&str] = &[$(stringify!($name)),*];

        /// Decodes the arguments, makes the call, encodes what it gave.
        ///
        /// # Errors
        /// The call's own error, or what was wrong with the name or the arguments.
        pub fn dispatch(
            state: &$state,
            name: &str,
            args: serde_json::Value,
        ) -> Result<serde_json::Value, $err> {
            match name {
                $( stringify!($name) => {
                    let a: $arg = serde_json::from_value(args)
                        .map_err(|e| CallError::BadArguments { detail: e.to_string() })?;
                    let out: $out = state.$name(a)?;
                    serde_json::to_value(out)
                        .map_err(|e| CallError::Storage { detail: e.to_string() })
                } )*
                other => Err(CallError::UnknownCall { name: other.to_owned() }),
            }
        }

        /// The whole TypeScript contract as text.
        #[must_use]
        pub fn typescript() -> String {
            use std::collections::BTreeMap;
            use std::fmt::Write as _;
            use ts_rs::{Config, TS, TypeVisitor};
            struct Seen<'a>(BTreeMap<String, String>, &'a Config, std::collections::BTreeSet<std::any::TypeId>);
            impl Seen<'_> {
                fn take<T: TS + 'static + ?Sized>(&mut self) {
                    // Expressions hold boxed expressions, so every type is walked once.
                    if !self.2.insert(std::any::TypeId::of::<T>()) {
                        return;
                    }
                    if T::output_path().is_some() {
                        let name = T::ident(self.1);
                        if self.0.contains_key(&name) {
                            return;
                        }
                        self.0.insert(name, T::decl(self.1));
                    }
                    T::visit_dependencies(self);
                    T::visit_generics(self);
                }
            }
            impl TypeVisitor for Seen<'_> {
                fn visit<T: TS + 'static + ?Sized>(&mut self) {
                    self.take::<T>();
                }
            }
            let cfg = Config::default();
            let mut seen = Seen(BTreeMap::new(), &cfg, std::collections::BTreeSet::new());
            $( seen.take::<$arg>(); seen.take::<$out>(); )*
            seen.take::<$err>();
            let mut text = String::from(
                "// Written by `WRITE_CONTRACT=1 cargo test -p surefoot-app --test contract`; do not edit.\n",
            );
            for declaration in seen.0.values() {
                text += "export ";
                text += declaration;
                text += "\n";
            }
            text += "export interface Calls {\n";
            $( let _ = writeln!(text, "  {}: {{ args: {}; out: {} }};", stringify!($name),
                <$arg as TS>::name(&cfg), <$out as TS>::name(&cfg)); )*
            text += "}\n";
            text
        }
    };
}
pub(crate) use calls;
