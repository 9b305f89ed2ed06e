//! The types of the calls in TypeScript.

use std::any::TypeId;
use std::collections::{BTreeMap, BTreeSet};
use ts_rs::{Config, TS, TypeVisitor};

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
