//! The table that a module's functions are called through.

use std::collections::BTreeMap;

use anyhow::{Context as _, Result, ensure};
use walrus::ir::Value;
use walrus::{ConstExpr, ElementId, ElementItems, ElementKind, FunctionId, Module, TableId};

/// The table of a module.
///
/// # Errors
/// When there is none, or more than one.
pub(crate) fn of(module: &Module) -> Result<TableId> {
    module.tables.main_function_table()?.context("the module has no table of functions")
}

/// The functions in `table`, by place.
fn places(module: &Module, table: TableId) -> Result<BTreeMap<u32, FunctionId>> {
    let mut places = BTreeMap::new();
    for segment in segments(module, table) {
        let segment = module.elements.get(segment);
        let ElementKind::Active { offset: ConstExpr::Value(Value::I32(from)), .. } = &segment.kind
        else {
            anyhow::bail!("a segment of the table without an address of its own");
        };
        let ElementItems::Functions(functions) = &segment.items else {
            anyhow::bail!("a segment of the table that names no functions");
        };
        places.extend((from.cast_unsigned()..).zip(functions.iter().copied()));
    }
    Ok(places)
}

/// Puts functions into `table` in place of what was in it, which has `size` places at least: as few
/// segments as have no gap.
pub(crate) fn fill(
    module: &mut Module,
    table: TableId,
    places: &BTreeMap<u32, FunctionId>,
    size: u64,
) {
    for segment in segments(module, table) {
        module.elements.delete(segment);
    }
    let functions = module.tables.get_mut(table);
    functions.initial = functions.initial.max(size);
    functions.maximum = functions.maximum.map(|most| most.max(size));
    functions.elem_segments.clear();
    let mut runs: Vec<(u32, Vec<FunctionId>)> = Vec::new();
    for (place, function) in places {
        match runs.last_mut() {
            Some((from, run)) if u64::from(*from) + run.len() as u64 == u64::from(*place) => {
                run.push(*function);
            }
            _ => runs.push((*place, vec![*function])),
        }
    }
    for (from, run) in runs {
        let offset = ConstExpr::Value(Value::I32(from.cast_signed()));
        let kind = ElementKind::Active { table, offset };
        let element = module.elements.add(kind, ElementItems::Functions(run));
        module.tables.get_mut(table).elem_segments.insert(element);
    }
}

fn segments(module: &Module, table: TableId) -> Vec<ElementId> {
    let of_table =
        |kind: &ElementKind| matches!(kind, ElementKind::Active { table: it, .. } if *it == table);
    let segments = module.elements.iter().filter(|segment| of_table(&segment.kind));
    segments.map(walrus::Element::id).collect()
}

/// Takes out of the table what `wasm-bindgen` leaves in it and nothing calls through it, and with it
/// what only that needs: a closure that the browser calls is called through an export. The table
/// names the shim of every kind of closure that an import could take, so that the tool can look them
/// up while it binds.
///
/// A module that takes no closure has none. Should `wasm-bindgen` name them otherwise one day, they
/// stay, and the sizes tell.
///
/// # Errors
/// When no function has a name: then nothing tells a shim.
pub(crate) fn without_shims(module: &mut Module) -> Result<()> {
    ensure!(module.funcs.iter().any(|function| function.name.is_some()), "no function has a name");
    let table = of(module)?;
    let mut places = places(module, table)?;
    places.retain(|_, function| !module.funcs.get(*function).name.as_deref().is_some_and(is_shim));
    fill(module, table, &places, 0);
    walrus::passes::gc::run(module);
    Ok(())
}

/// Whether a function of this name, a hash behind it or not, is what an export for a closure calls.
fn is_shim(name: &str) -> bool {
    name.starts_with("wasm_bindgen::convert::closures::") && name.contains("::invoke")
}

#[cfg(test)]
mod tests {
    use super::*;
    use walrus::{FunctionBuilder, RefType};

    /// A module with a function of each name in its table, from place 1 on.
    fn module(names: &[&str]) -> Module {
        let mut module = Module::default();
        let table = module.tables.add_local(false, 8, None, RefType::FUNCREF);
        module.exports.add("table", table);
        let mut functions = BTreeMap::new();
        for (at, name) in (1..).zip(names) {
            let mut function = FunctionBuilder::new(&mut module.types, &[], &[]);
            function.name((*name).to_owned());
            functions.insert(at, function.finish(vec![], &mut module.funcs));
        }
        fill(&mut module, table, &functions, 8);
        module
    }

    fn left(names: &[&str]) -> Vec<u32> {
        let mut module = module(names);
        without_shims(&mut module).unwrap();
        let table = of(&module).unwrap();
        places(&module, table).unwrap().into_keys().collect()
    }

    #[test]
    fn shims_leave_the_table_and_nothing_else_moves() {
        let shim = "wasm_bindgen::convert::closures::_::invoke::h0123456789abcdef";
        assert_eq!(left(&["core::fmt", shim, "core::ops"]), [1, 3]);
    }

    /// As what `cargo xtask bench pack` measures.
    #[test]
    fn a_module_that_takes_no_closure_is_as_it_was() {
        assert_eq!(left(&["core::fmt", "core::ops"]), [1, 2]);
    }

    #[test]
    fn without_names_nothing_tells_a_shim() {
        let mut module = module(&["core::fmt"]);
        for function in module.funcs.iter_mut() {
            function.name = None;
        }
        assert!(without_shims(&mut module).is_err());
    }
}
