//! A module of a few functions, brought into order.

#![allow(clippy::unwrap_used, reason = "a test may fail")]

use wasm_encoder::{
    CodeSection, ConstExpr, ElementSection, Elements, ExportKind, ExportSection, Function,
    FunctionSection, ImportSection, Module, RefType, TableSection, TableType, TypeSection, ValType,
};
use wasmparser::{ExternalKind, Operator, Parser, Payload};

use super::*;

/// `ask` gives a number; `twice` is there two times over `one` and `other`, which are the same too;
/// `more` is like them and another type; `less` is no other's like.
fn module() -> Vec<u8> {
    let mut types = TypeSection::new();
    types.ty().function([], [ValType::I32]);
    types.ty().function([ValType::I32], [ValType::I32]);
    let mut imports = ImportSection::new();
    imports.import("g", "ask", wasm_encoder::EntityType::Function(0));
    let mut functions = FunctionSection::new();
    let mut code = CodeSection::new();
    let mut add = |ty: u32, write: &dyn Fn(&mut wasm_encoder::InstructionSink<'_>)| {
        let mut function = Function::new([]);
        write(&mut function.instructions());
        functions.function(ty);
        code.function(&function);
    };
    // Indices from 1: one, more, twice of one, other, less, twice of other.
    add(0, &|it| {
        it.call(0).i32_const(3).i32_add().i32_eqz().end();
    });
    add(1, &|it| {
        it.call(0).i32_const(3).i32_add().i32_eqz().end();
    });
    add(0, &|it| {
        it.call(1).call(1).i32_add().end();
    });
    add(0, &|it| {
        it.call(0).i32_const(3).i32_add().i32_eqz().end();
    });
    add(0, &|it| {
        it.call(0).i32_const(4).i32_add().i32_eqz().end();
    });
    add(0, &|it| {
        it.call(4).call(4).i32_add().end();
    });
    let mut tables = TableSection::new();
    let element_type = RefType::FUNCREF;
    let (minimum, maximum) = (8, None);
    tables.table(TableType { element_type, minimum, maximum, table64: false, shared: false });
    let mut exports = ExportSection::new();
    for (name, index) in [("twice", 3), ("again", 6), ("less", 5), ("more", 2)] {
        exports.export(name, ExportKind::Func, index);
    }
    let mut elements = ElementSection::new();
    let all = [6, 5, 4, 3, 2, 1, 0];
    elements.active(None, &ConstExpr::i32_const(1), Elements::Functions(all.as_slice().into()));
    let mut module = Module::new();
    module.section(&types).section(&imports).section(&functions).section(&tables);
    module.section(&exports).section(&elements).section(&code);
    module.finish()
}

/// What a function does: its type, and its instructions with each call as what is called does.
fn does(functions: &Functions<'_>, index: u32) -> String {
    let Some(own) = index.checked_sub(functions.imported) else { return format!("import {index}") };
    let own = own as usize;
    let mut told = format!("type {}:", functions.types[own]);
    for (operator, _) in instructions(&functions.bodies[own]).unwrap() {
        match operator {
            Operator::Call { function_index } => {
                told += &format!(" [{}]", does(functions, function_index));
            }
            other => told += &format!(" {other:?}"),
        }
    }
    told
}

/// What each export and each place in the table does.
fn told(wasm: &[u8]) -> Vec<String> {
    let functions = Functions::read(wasm).unwrap();
    let mut told = Vec::new();
    for payload in Parser::new(0).parse_all(wasm) {
        match payload.unwrap() {
            Payload::ExportSection(section) => {
                for export in section {
                    let export = export.unwrap();
                    assert_eq!(export.kind, ExternalKind::Func);
                    told.push(format!("{} {}", export.name, does(&functions, export.index)));
                }
            }
            Payload::ElementSection(section) => {
                for element in section {
                    let wasmparser::ElementItems::Functions(items) = element.unwrap().items else {
                        panic!("a table of something else");
                    };
                    told.extend(items.into_iter().map(|index| does(&functions, index.unwrap())));
                }
            }
            _ => {}
        }
    }
    told
}

#[test]
fn each_is_there_once_and_does_what_it_did() {
    let wasm = module();
    let settled = settle(&wasm).unwrap();
    assert_eq!(told(&settled), told(&wasm));
    assert_eq!(told(&wasm).len(), 11);
    // `one` and `other`, and so both of `twice`; `more` has another type, `less` another number.
    assert_eq!(Functions::read(&wasm).unwrap().bodies.len(), 6);
    assert_eq!(Functions::read(&settled).unwrap().bodies.len(), 4);
}

#[test]
fn types_are_in_runs_and_likes_side_by_side() {
    let settled = settle(&module()).unwrap();
    let functions = Functions::read(&settled).unwrap();
    assert_eq!(functions.types, [0, 0, 0, 1]);
    let at = |what: &str| (1..=3).position(|index| does(&functions, index).contains(what)).unwrap();
    let less = at("type 0: [import 0] I32Const { value: 4 }");
    let one = (1..=3)
        .position(|index| {
            does(&functions, index).starts_with("type 0: [import 0] I32Const { value: 3 }")
        })
        .unwrap();
    assert_eq!(less.abs_diff(one), 1, "{less} {one}");
}

#[test]
fn once_settled_it_stays() {
    let settled = settle(&module()).unwrap();
    assert_eq!(settle(&settled).unwrap(), settled);
}
