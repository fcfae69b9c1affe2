//! The names by which a module and its glue know one another, made short.
//!
//! `wasm-bindgen` tells imports apart by a hash in the name of each. A hash does not compress, and
//! stands twice, in the module and in the glue: some 4 KB gzip of the walk. Within one build their
//! order tells them apart as well.

use std::collections::{BTreeMap, BTreeSet};

use anyhow::{Result, ensure};
use wasm_bindgen_cli_support::Output;

use crate::embed;

/// How the exports begin that only the glue calls.
const CLOSURE: &str = "wasm_bindgen__convert__closures";

/// Gives each import of the glue and each export for it a short name in the module, and returns
/// the glue with the same names, and without comments.
///
/// # Errors
/// When the glue does not name what the module does, once: wasm-bindgen has changed.
pub(crate) fn shorten(output: &mut Output) -> Result<String> {
    let mut glue = Glue { text: embed::short(output.js()), given: 0 };
    let module = output.wasm_mut();
    let (mut sources, mut known) = (BTreeSet::new(), BTreeMap::new());
    for import in module.imports.iter_mut() {
        sources.insert(core::mem::replace(&mut import.module, "g".to_owned()));
        // A module may import one function more than once.
        let short = match known.get(&import.name) {
            Some(short) => String::clone(short),
            None => glue.rename(&import.name, |name| format!("\n{name}: "))?,
        };
        known.insert(core::mem::replace(&mut import.name, short.clone()), short);
    }
    ensure!(sources.len() <= 1, "the module imports from {sources:?}, not from its glue alone");
    for source in sources {
        glue.replace_once(&format!("\"{source}\": import0"), "\"g\": import0")?;
    }
    for export in module.exports.iter_mut() {
        if export.name.starts_with(CLOSURE) {
            export.name = glue.rename_everywhere(&export.name)?;
        }
    }
    Ok(glue.text)
}

/// The glue's text, and how many short names it has been given.
struct Glue {
    text: String,
    given: usize,
}

impl Glue {
    /// A name that nothing in the glue has.
    fn next(&mut self) -> String {
        self.given += 1;
        format!("_{}", self.given)
    }

    /// Renames what stands once, in the place that `within` makes of a name.
    fn rename(&mut self, name: &str, within: impl Fn(&str) -> String) -> Result<String> {
        let short = self.next();
        self.replace_once(&within(name), &within(&short))?;
        Ok(short)
    }

    fn rename_everywhere(&mut self, name: &str) -> Result<String> {
        let short = self.next();
        ensure!(self.text.contains(name), "the glue does not name `{name}`: see {}", file!());
        self.text = self.text.replace(name, &short);
        Ok(short)
    }

    fn replace_once(&mut self, from: &str, to: &str) -> Result<()> {
        let times = self.text.matches(from).count();
        ensure!(times == 1, "the glue has {from:?} {times} times: see {}", file!());
        self.text = self.text.replacen(from, to, 1);
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn glue() -> Glue {
        Glue { text: "{\na_b: f,\na_bc: g,\n}; function a_b() {}".into(), given: 0 }
    }

    #[test]
    fn a_name_that_begins_another_leaves_the_other_alone() {
        let mut glue = glue();
        assert_eq!(glue.rename("a_b", |name| format!("\n{name}: ")).unwrap(), "_1");
        assert_eq!(glue.text, "{\n_1: f,\na_bc: g,\n}; function a_b() {}");
    }

    #[test]
    fn a_name_that_is_not_there_is_told() {
        assert!(glue().rename("c", |name| format!("\n{name}: ")).is_err());
        assert!(glue().rename_everywhere("nothing").is_err());
    }
}
