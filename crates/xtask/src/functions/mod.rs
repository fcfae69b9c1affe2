//! The functions of a module, each once, in the order in which they compress best.
//!
//! Generic code for two types of one size is the same code twice; the linker keeps both. What a
//! compressor finds again lies no further back than its window: what is alike goes side by side.

mod fold;
mod order;

use std::convert::Infallible;

use anyhow::{Context as _, Result};
use wasm_encoder::reencode::{self, Reencode};
use wasm_encoder::{CodeSection, FunctionSection, Module};
use wasmparser::{
    CodeSectionReader, FunctionBody, FunctionSectionReader, Operator, Parser, Payload, TypeRef,
};

/// The same module without functions that are there twice, and the others in order.
///
/// # Errors
/// When it cannot be read.
pub(crate) fn settle(wasm: &[u8]) -> Result<Vec<u8>> {
    let functions = Functions::read(wasm)?;
    let first = fold::firsts(&functions)?;
    let kept = (0..functions.bodies.len()).filter(|at| first.get(*at) == Some(at)).collect();
    let order = order::by_likeness(&functions, kept);
    let mut place = vec![0; functions.bodies.len()];
    for (to, from) in (functions.imported..).zip(&order) {
        *place.get_mut(*from).context("a function that is not there")? = to;
    }
    let new = first.iter().filter_map(|first| place.get(*first).copied()).collect();
    let mut writer = Writer { imported: functions.imported, new, order };
    let mut module = Module::new();
    writer.parse_core_module(&mut module, Parser::new(0), wasm)?;
    Ok(module.finish())
}

/// What a module defines itself, in its order.
#[derive(Default)]
struct Functions<'a> {
    /// How many there are before, which it imports.
    imported: u32,
    types: Vec<u32>,
    bodies: Vec<FunctionBody<'a>>,
    /// The instructions of each body.
    code: Vec<Vec<Instruction<'a>>>,
}

/// An instruction, and how it is written.
type Instruction<'a> = (Operator<'a>, &'a [u8]);

impl<'a> Functions<'a> {
    fn read(wasm: &'a [u8]) -> Result<Self> {
        let mut functions = Self::default();
        for payload in Parser::new(0).parse_all(wasm) {
            match payload? {
                Payload::ImportSection(section) => {
                    for import in section.into_imports() {
                        functions.imported += u32::from(matches!(import?.ty, TypeRef::Func(_)));
                    }
                }
                Payload::FunctionSection(section) => {
                    for ty in section {
                        functions.types.push(ty?);
                    }
                }
                Payload::CodeSectionEntry(body) => {
                    functions.code.push(instructions(&body)?);
                    functions.bodies.push(body);
                }
                _ => {}
            }
        }
        Ok(functions)
    }
}

fn instructions<'a>(body: &FunctionBody<'a>) -> Result<Vec<Instruction<'a>>> {
    let (bytes, start) = (body.as_bytes(), body.range().start);
    let mut operators = body.get_operators_reader()?;
    let mut found = Vec::new();
    while !operators.eof() {
        let from = operators.original_position() - start;
        let operator = operators.read()?;
        let to = operators.original_position() - start;
        found.push((operator, bytes.get(from..to).context("an instruction beyond its body")?));
    }
    Ok(found)
}

struct Writer {
    imported: u32,
    /// The index that each function has from now on.
    new: Vec<u32>,
    /// The functions that stay, in order.
    order: Vec<usize>,
}

type Written = Result<(), reencode::Error<Infallible>>;

impl Reencode for Writer {
    type Error = Infallible;

    fn function_index(&mut self, function: u32) -> Result<u32, reencode::Error<Infallible>> {
        let own = function.checked_sub(self.imported).and_then(|own| self.new.get(own as usize));
        Ok(own.copied().unwrap_or(function))
    }

    fn parse_function_section(
        &mut self,
        out: &mut FunctionSection,
        section: FunctionSectionReader<'_>,
    ) -> Written {
        let types = section.into_iter().collect::<Result<Vec<_>, _>>()?;
        for ty in self.order.iter().filter_map(|from| types.get(*from)) {
            out.function(*ty);
        }
        Ok(())
    }

    fn parse_code_section(
        &mut self,
        out: &mut CodeSection,
        section: CodeSectionReader<'_>,
    ) -> Written {
        let bodies = section.into_iter().collect::<Result<Vec<_>, _>>()?;
        for body in core::mem::take(&mut self.order).iter().filter_map(|from| bodies.get(*from)) {
            self.parse_function_body(out, body.clone())?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests;
