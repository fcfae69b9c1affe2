//! The module that starts: without the rest, with a way to it.

use core::ops::Range;

use anyhow::{Context as _, Result};
use walrus::{GlobalId, Module, ValType};

use super::Plan;

/// The name of the function table among the exports.
pub(super) const TABLE: &str = "table";
/// The name of the stack's end.
pub(super) const STACK: &str = "stack";
/// The name of the memory.
pub(super) const MEMORY: &str = "memory";

pub(super) fn make(wasm: &[u8], plan: &Plan) -> Result<Vec<u8>> {
    let (mut module, functions) = super::parse(wasm, true)?;
    let id = |index: u32| {
        let id = functions.get(index as usize);
        id.copied().with_context(|| format!("no function {index}"))
    };
    let table = crate::table::of(&module)?;
    for (root, place) in &plan.roots {
        super::call_through(&mut module, id(*root)?, table, *place);
    }
    let mut places = std::collections::BTreeMap::new();
    for (place, function) in &plan.table {
        if !plan.late.contains(function) || plan.roots.contains_key(function) {
            places.insert(*place, id(*function)?);
        }
    }
    for (function, place) in &plan.shared {
        places.insert(*place, id(*function)?);
    }
    crate::table::fill(&mut module, table, &places, plan.table_size());
    module.exports.add(TABLE, table);
    let stack = stack(&module)?;
    module.exports.add(STACK, stack);
    super::cut_data(&mut module, |from, bytes| without(&plan.data, from, bytes))?;
    let of_linker = |name: &str| name == "linking" || name.starts_with("reloc.");
    let customs: Vec<_> = module.customs.iter().collect();
    let gone: Vec<_> =
        customs.iter().filter(|(_, it)| of_linker(it.name())).map(|(id, _)| *id).collect();
    for custom in gone {
        module.customs.delete(custom);
    }
    Ok(module.emit_wasm())
}

/// The global by which both halves know where the stack ends: the first that changes.
pub(super) fn stack(module: &Module) -> Result<GlobalId> {
    let found = module.globals.iter().find(|global| global.mutable && global.ty == ValType::I32);
    let found = found.context("the module has no stack pointer")?;
    let named = found.name.as_deref().is_none_or(|name| name == "__stack_pointer");
    anyhow::ensure!(named, "the first global that changes is {:?}", found.name);
    Ok(found.id())
}

/// A segment without the data that go with the rest. What lies between two pieces, and is shorter
/// than the head of a segment, stays as zeros.
fn without(gone: &[Range<u32>], from: u32, bytes: &[u8]) -> Vec<(u32, Vec<u8>)> {
    let mut bytes = bytes.to_vec();
    for address in gone.iter().cloned().flatten() {
        let at = address.checked_sub(from).map(|at| at as usize);
        if let Some(byte) = at.and_then(|at| bytes.get_mut(at)) {
            *byte = 0;
        }
    }
    without_zeros(from, &bytes)
}

/// A segment as segments without long runs of zeros: a memory is zero to begin with.
fn without_zeros(from: u32, bytes: &[u8]) -> Vec<(u32, Vec<u8>)> {
    const GAP: usize = 12;
    let mut pieces: Vec<(usize, usize)> = Vec::new();
    for (at, _) in bytes.iter().enumerate().filter(|(_, byte)| **byte != 0) {
        match pieces.last_mut() {
            Some((_, end)) if at - *end < GAP => *end = at + 1,
            _ => pieces.push((at, at + 1)),
        }
    }
    pieces
        .into_iter()
        .filter_map(|(start, end)| Some((from + start as u32, bytes.get(start..end)?.to_vec())))
        .collect()
}
