//! Functions that are the same, told by what they do and not by where they came from.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;

use anyhow::{Context as _, Result};
use wasmparser::Operator;

use super::Functions;

/// Of each function the first that is the same. Two are the same when they are of one type and have
/// the same instructions, where calls of what is the same are the same: so that is asked again as
/// long as it finds one more.
pub(super) fn firsts(functions: &Functions<'_>) -> Result<Vec<usize>> {
    let mut firsts: Vec<usize> = (0..functions.bodies.len()).collect();
    loop {
        let mut known = BTreeMap::new();
        let mut next = firsts.clone();
        for (at, ty) in functions.types.iter().enumerate() {
            let same = match known.entry((ty, text(functions, at, &firsts)?)) {
                Entry::Occupied(first) => *first.get(),
                Entry::Vacant(new) => *new.insert(at),
            };
            if let Some(next) = next.get_mut(at) {
                *next = same;
            }
        }
        if next == firsts {
            return Ok(firsts);
        }
        firsts = next;
    }
}

/// A body with each call as a call of the first that is the same.
fn text(functions: &Functions<'_>, at: usize, firsts: &[usize]) -> Result<Vec<u8>> {
    let (body, code) = functions.bodies.get(at).zip(functions.code.get(at)).context("no body")?;
    let head = body.get_operators_reader()?.original_position() - body.range().start;
    let mut text = body.as_bytes().get(..head).unwrap_or_default().to_vec();
    for (operator, bytes) in code {
        let own = match operator {
            Operator::Call { function_index } => function_index.checked_sub(functions.imported),
            _ => None,
        };
        match own.and_then(|own| firsts.get(own as usize)) {
            Some(first) => {
                // No length is told: nothing else begins with this byte, and all are as long.
                text.push(0x10);
                text.extend_from_slice(&first.to_le_bytes());
            }
            None => text.extend_from_slice(bytes),
        }
    }
    Ok(text)
}
