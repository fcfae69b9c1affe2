//! In which order functions compress best.

use std::collections::{BTreeMap, BTreeSet};

use super::Functions;

/// `kept` by type, so that the list of types is runs, and within a type each after the one it is
/// most like, the longest first.
pub(super) fn by_likeness(functions: &Functions<'_>, kept: Vec<usize>) -> Vec<usize> {
    let mut pairs = BTreeMap::new();
    let mut of_type: BTreeMap<u32, Vec<Function>> = BTreeMap::new();
    for at in kept {
        let (Some(body), Some(code), Some(ty)) =
            (functions.bodies.get(at), functions.code.get(at), functions.types.get(at))
        else {
            continue;
        };
        let following = code.iter().zip(code.iter().skip(1));
        let pairs: BTreeSet<usize> = following
            .map(|((_, one), (_, next))| {
                let new = pairs.len();
                *pairs.entry((*one, *next)).or_insert(new)
            })
            .collect();
        let function =
            Function { at, length: body.range().len(), pairs: pairs.into_iter().collect() };
        of_type.entry(*ty).or_default().push(function);
    }
    of_type.into_values().flat_map(chain).collect()
}

struct Function {
    at: usize,
    length: usize,
    /// Which instructions follow one another in it, by number and in order.
    pairs: Vec<usize>,
}

impl Function {
    /// How much of both is in both, from 0 to 1.
    fn likeness(&self, other: &Self) -> f64 {
        let mut shared = 0_usize;
        let mut others = other.pairs.iter().peekable();
        for pair in &self.pairs {
            while others.next_if(|other| *other < pair).is_some() {}
            shared += usize::from(others.next_if_eq(&pair).is_some());
        }
        // Nothing is not like nothing.
        shared as f64 / (1 + self.pairs.len() + other.pairs.len() - shared) as f64
    }
}

fn chain(mut left: Vec<Function>) -> Vec<usize> {
    left.sort_by_key(|function| (core::cmp::Reverse(function.length), function.at));
    let mut order = Vec::with_capacity(left.len());
    let mut next = 0;
    while next < left.len() {
        let last = left.remove(next);
        order.push(last.at);
        next = 0;
        let mut most = f64::NEG_INFINITY;
        for (at, function) in left.iter().enumerate() {
            let likeness = last.likeness(function);
            if likeness > most {
                (next, most) = (at, likeness);
            }
        }
    }
    order
}
