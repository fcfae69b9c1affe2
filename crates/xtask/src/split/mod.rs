//! A module cut in two: what the first screens run, and the rest, which comes while they are used.
//!
//! One program stays one program: both halves share the memory, the function table and the stack,
//! and nothing is in both. They call one another through the table. What [`ROOTS`] name, and a
//! function or a piece of data that only they reach, goes into the second module. That is seen from
//! the relocations which the linker leaves (`--emit-relocs`): they say of every address in code and
//! data what it is the address of. Until the second module is there a call of a root traps, so
//! whoever names a root sees to it that nobody calls it before (`crates/page/src/rest.rs`).
//!
//! The cut comes before `wasm-bindgen`, which then knows the first module only. Hence what goes
//! into the second may not call the browser.

mod first;
mod graph;
mod rest;

use std::collections::{BTreeMap, BTreeSet};

use anyhow::{Context as _, Result, ensure};
use walrus::ir::Value;
use walrus::{
    ConstExpr, DataKind, FunctionBuilder, FunctionId, FunctionKind, Module, ModuleConfig, TableId,
};

use graph::{Graph, Node};

/// The functions by which the first module calls the second: how their names begin.
const ROOTS: [&str; 6] = [
    "hangtrue_page::rest::",
    "hangtrue_core::say::translated::",
    "hangtrue_core::length::amount::named::named",
    "hangtrue_core::length::amount::spoken::number",
    "hangtrue_core::length::worded::read",
    "hangtrue_draw::text::translated",
];
/// The same, where they are called at all: what is said of a panic before the program ends. It
/// ends all the same if that is not there.
const OF_PANICS: [&str; 10] = [
    "core::panicking::",
    "core::cell::panic_already_",
    "core::option::expect_failed",
    "core::option::unwrap_failed",
    "core::result::unwrap_failed",
    "core::slice::copy_from_slice_impl::len_mismatch_fail",
    "core::slice::index::slice_index_fail",
    "core::str::slice_error_fail",
    "std::thread::local::panic_access_error",
    "alloc::raw_vec::handle_error",
];
/// What the second module imports from the first comes under this name.
const FROM: &str = "a";

/// The two modules.
pub(crate) struct Halves {
    /// What starts, still to be bound.
    pub(crate) first: Vec<u8>,
    /// What is instantiated with the first module's exports as its imports.
    pub(crate) rest: Vec<u8>,
}

/// Cuts a module that was linked with `--emit-relocs`. The rest keeps the names of its functions
/// if that is wished; of the first half `wasm-bindgen` decides.
///
/// # Errors
/// When a root is not there, or the second module would call the browser.
pub(crate) fn split(wasm: &[u8], names: bool) -> Result<Halves> {
    let plan = Plan::of(wasm)?;
    Ok(Halves { first: first::make(wasm, &plan)?, rest: rest::make(wasm, &plan, names)? })
}

/// What goes where. Functions are told by their index in the module as it was linked.
struct Plan {
    /// The functions that are called through the table, with the place they have in it.
    roots: BTreeMap<u32, u32>,
    /// All functions of the second module, the roots among them.
    late: BTreeSet<u32>,
    /// The functions of the first module that the second calls, with the place they have in it.
    shared: BTreeMap<u32, u32>,
    /// The addresses of the data that go with the second module, as ranges.
    data: Vec<core::ops::Range<u32>>,
    /// What stands in the function table, by place.
    table: BTreeMap<u32, u32>,
}

impl Plan {
    fn of(wasm: &[u8]) -> Result<Self> {
        let graph = Graph::read(wasm)?;
        let is_root = |function: u32| {
            let name = graph.name(function);
            ROOTS.iter().chain(&OF_PANICS).any(|root| name.starts_with(root))
        };
        let mut found = BTreeSet::new();
        let mut first = graph.reach(graph.exported(), |function| {
            let root = is_root(function);
            if root {
                found.insert(function);
            }
            !root
        });
        for root in ROOTS {
            let there = found.iter().any(|function| graph.name(*function).starts_with(root));
            ensure!(there, "nothing calls {root}: was it inlined, or renamed?");
        }
        let mut rest = graph
            .reach(found.iter().copied(), |function| !first.contains(&Node::Function(function)));
        // What is said of a panic is not there before the second module either.
        for place in graph.places() {
            if first.remove(&place) {
                rest.insert(place);
            }
        }
        let late: BTreeSet<u32> =
            functions(&rest).filter(|node| !first.contains(&Node::Function(*node))).collect();
        let called: BTreeSet<u32> = late
            .iter()
            .flat_map(|function| graph.from(Node::Function(*function)))
            .filter_map(|node| match node {
                Node::Function(function) if !late.contains(function) => Some(*function),
                _ => None,
            })
            .collect();
        for function in &called {
            ensure!(
                !graph.is_imported(*function),
                "the second module calls the browser: {}",
                graph.name(*function),
            );
        }
        let table = graph.table().clone();
        let end = table.keys().next_back().map_or(1, |last| last + 1);
        let roots: BTreeMap<_, _> = found.into_iter().zip(end..).collect();
        let shared = called.into_iter().zip(end + roots.len() as u32..).collect();
        let data = graph.only_in(&rest, &first);
        Ok(Self { roots, late, shared, data, table })
    }

    /// The places in the table after all of them.
    fn table_size(&self) -> u64 {
        let last = self.roots.values().chain(self.shared.values()).chain(self.table.keys()).max();
        u64::from(last.map_or(0, |last| last + 1))
    }
}

fn functions(nodes: &BTreeSet<Node>) -> impl Iterator<Item = u32> {
    nodes.iter().filter_map(|node| match node {
        Node::Function(function) => Some(*function),
        Node::Data(_) => None,
    })
}

/// Makes of a function of the other half one that calls what stands at `place` of the table with
/// what it is called with.
fn call_through(module: &mut Module, function: FunctionId, table: TableId, place: u32) {
    let ty = module.funcs.get(function).ty();
    let (takes, gives) = {
        let ty = module.types.get(ty);
        (ty.params().to_vec(), ty.results().to_vec())
    };
    let arguments: Vec<_> = takes.iter().map(|ty| module.locals.add(*ty)).collect();
    let mut way = FunctionBuilder::new(&mut module.types, &takes, &gives);
    let mut body = way.func_body();
    for argument in &arguments {
        body.local_get(*argument);
    }
    body.i32_const(place.cast_signed()).call_indirect(ty, table);
    module.funcs.get_mut(function).kind = FunctionKind::Local(way.local_func(arguments));
}

/// The module, and its functions in the order of their indices.
fn parse(wasm: &[u8], names: bool) -> Result<(Module, Vec<FunctionId>)> {
    let module = ModuleConfig::new()
        .strict_validate(false)
        .generate_producers_section(false)
        .generate_name_section(names)
        .parse(wasm)
        .context("the module cannot be read")?;
    let functions = module.funcs.iter().map(|function| function.id()).collect();
    Ok((module, functions))
}

/// Puts in the place of each data segment what `cut` makes of it: addresses, and bytes there.
fn cut_data(module: &mut Module, cut: impl Fn(u32, &[u8]) -> Vec<(u32, Vec<u8>)>) -> Result<()> {
    let memory = module.get_memory_id()?;
    let mut segments = Vec::new();
    for data in module.data.iter() {
        let DataKind::Active { offset: ConstExpr::Value(Value::I32(from)), .. } = &data.kind else {
            anyhow::bail!("a data segment without an address of its own");
        };
        segments.push((data.id(), cut(from.cast_unsigned(), &data.value)));
    }
    for (id, pieces) in segments {
        module.data.delete(id);
        module.memories.get_mut(memory).data_segments.remove(&id);
        for (from, bytes) in pieces {
            let offset = ConstExpr::Value(Value::I32(from.cast_signed()));
            let data = module.data.add(DataKind::Active { memory, offset }, bytes);
            module.memories.get_mut(memory).data_segments.insert(data);
        }
    }
    Ok(())
}

/// Keeps of a segment at `from` what lies within `ranges`, as segments of their own.
fn pieces(from: u32, bytes: &[u8], ranges: &[core::ops::Range<u32>]) -> Vec<(u32, Vec<u8>)> {
    let end = from + bytes.len() as u32;
    ranges
        .iter()
        .map(|range| range.start.max(from)..range.end.min(end))
        .filter(|range| range.start < range.end)
        .filter_map(|range| {
            let at = |address: u32| (address - from) as usize;
            Some((range.start, bytes.get(at(range.start)..at(range.end))?.to_vec()))
        })
        .collect()
}
