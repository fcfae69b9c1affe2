//! The module that comes later: what only the roots reach, and nothing of its own.

use std::collections::BTreeMap;

use anyhow::{Context as _, Result};
use walrus::GlobalKind;

use super::first::{MEMORY, STACK, TABLE, stack};
use super::{FROM, Plan};

pub(super) fn make(wasm: &[u8], plan: &Plan, names: bool) -> Result<Vec<u8>> {
    let (mut module, functions) = super::parse(wasm, names)?;
    let id = |index: u32| {
        let id = functions.get(index as usize);
        id.copied().with_context(|| format!("no function {index}"))
    };
    let exports: Vec<_> = module.exports.iter().map(walrus::Export::id).collect();
    for export in exports {
        module.exports.delete(export);
    }
    module.start = None;
    let customs: Vec<_> = module.customs.iter().map(|(id, _)| id).collect();
    for custom in customs {
        module.customs.delete(custom);
    }
    let table = crate::table::of(&module)?;
    for (function, place) in &plan.shared {
        super::call_through(&mut module, id(*function)?, table, *place);
    }
    let mut places = BTreeMap::new();
    for (place, function) in &plan.table {
        if plan.late.contains(function) && !plan.roots.contains_key(function) {
            places.insert(*place, id(*function)?);
        }
    }
    for (root, place) in &plan.roots {
        places.insert(*place, id(*root)?);
    }
    crate::table::fill(&mut module, table, &places, plan.table_size());
    let import = module.imports.add(FROM, TABLE, table);
    module.tables.get_mut(table).import = Some(import);
    let memory = module.get_memory_id()?;
    let import = module.imports.add(FROM, MEMORY, memory);
    module.memories.get_mut(memory).import = Some(import);
    let stack = stack(&module)?;
    let import = module.imports.add(FROM, STACK, stack);
    module.globals.get_mut(stack).kind = GlobalKind::Import(import);
    super::cut_data(&mut module, |from, bytes| super::pieces(from, bytes, &plan.data))?;
    walrus::passes::gc::run(&mut module);
    Ok(module.emit_wasm())
}
