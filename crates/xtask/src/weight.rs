//! `cargo xtask weight`: what the bytes of the walk's module are, by crate and by function.
//!
//! Read from the module as it is built, with its names left in: code is counted by the crate that
//! a function's name says, generic code by the crate that wrote it. Data is one line: it has no
//! names.

use std::collections::BTreeMap;
use std::io::Write as _;

use anyhow::{Context as _, Result};
use wasmparser::{KnownCustom, Name, Parser, Payload};

use crate::build;

/// How many functions are listed.
const FUNCTIONS: usize = 60;

/// Prints the tables. `cargo xtask weight [FEATURE]`: of the walk, its first screens and the rest;
/// or of another page's module.
///
/// # Errors
/// When the module does not compile, or is not what a compiler writes.
pub(crate) fn run(words: &[&str]) -> Result<()> {
    const PACKAGE: &str = "hangtrue-web";
    let modules = match words.first() {
        Some(feature) => vec![(*feature, build::named(PACKAGE, feature)?)],
        None => ["the first screens", "the rest"]
            .into_iter()
            .zip(build::named_halves(PACKAGE)?)
            .collect(),
    };
    for (of, wasm) in modules {
        print(of, &Module::read(&wasm)?)?;
    }
    Ok(())
}

fn print(of: &str, module: &Module) -> Result<()> {
    let mut out = std::io::stdout().lock();
    writeln!(out, "\n{of}")?;
    writeln!(out, "{:>9} bytes, with names left out", module.code() + module.data)?;
    writeln!(out, "\n{:>9}  crate", "bytes")?;
    writeln!(out, "{:>9}  (data)", module.data)?;
    for (name, bytes) in largest(module.by(crate_of)) {
        writeln!(out, "{bytes:>9}  {name}")?;
    }
    writeln!(out, "\n{:>9}  function, the {FUNCTIONS} largest", "bytes")?;
    for (name, bytes) in largest(module.by(str::to_owned)).into_iter().take(FUNCTIONS) {
        writeln!(out, "{bytes:>9}  {name}")?;
    }
    Ok(())
}

/// Sizes by name, the largest first.
fn largest(sums: BTreeMap<String, usize>) -> Vec<(String, usize)> {
    let mut list: Vec<_> = sums.into_iter().collect();
    list.sort_by_key(|(_, bytes)| core::cmp::Reverse(*bytes));
    list
}

/// A module's functions and data, in bytes.
#[derive(Default)]
struct Module {
    functions: Vec<(String, usize)>,
    data: usize,
}

impl Module {
    fn read(wasm: &[u8]) -> Result<Self> {
        let (mut module, mut sizes, mut imported) = (Self::default(), Vec::new(), 0_u32);
        let mut names: BTreeMap<u32, String> = BTreeMap::new();
        for payload in Parser::new(0).parse_all(wasm) {
            match payload.context("the module cannot be read")? {
                Payload::ImportSection(section) => {
                    for import in section.into_imports() {
                        let is_function = matches!(import?.ty, wasmparser::TypeRef::Func(_));
                        imported += u32::from(is_function);
                    }
                }
                Payload::CodeSectionEntry(body) => sizes.push(body.range().len()),
                Payload::DataSection(section) => module.data = section.range().len(),
                Payload::CustomSection(section) => {
                    let KnownCustom::Name(section) = section.as_known() else { continue };
                    for subsection in section {
                        let Name::Function(map) = subsection? else { continue };
                        for naming in map {
                            let naming = naming?;
                            let name = format!("{:#}", rustc_demangle::demangle(naming.name));
                            names.insert(naming.index, name);
                        }
                    }
                }
                _ => {}
            }
        }
        for (index, bytes) in (imported..).zip(sizes) {
            let name = names.remove(&index).unwrap_or_else(|| "(no name)".to_owned());
            module.functions.push((name, bytes));
        }
        Ok(module)
    }

    fn code(&self) -> usize {
        self.functions.iter().map(|(_, bytes)| bytes).sum()
    }

    fn by(&self, key: impl Fn(&str) -> String) -> BTreeMap<String, usize> {
        let mut sums = BTreeMap::new();
        for (name, bytes) in &self.functions {
            *sums.entry(key(name)).or_default() += bytes;
        }
        sums
    }
}

/// The crate that a function's code is from: `<alloc::vec::Vec<T> as X>::f` is alloc's. In the
/// standard library's own names a hash stands behind the crate's.
fn crate_of(name: &str) -> String {
    let name = name.trim_start_matches(['<', '&', '*', '[']).trim_start_matches("mut ");
    let end = name.find(|c: char| !(c.is_alphanumeric() || c == '_')).unwrap_or(name.len());
    let (start, rest) = name.split_at(end);
    if rest.starts_with("::") || rest.starts_with('[') {
        start.to_owned()
    } else {
        "(glue)".to_owned()
    }
}
