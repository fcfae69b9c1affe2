//! The numbers of the rules that a person can have confirmed.
//!
//! A code that is not here travels as text.

use super::text;
use crate::bits::{Reader, Short, Writer};

const CODES: [&str; 19] = [
    "unreadable",
    "missing",
    "not-positive",
    "exchanged-width-height",
    "exchanged-header-bow",
    "too-wide",
    "too-tall",
    "no-such-opening",
    "bow-fills-header",
    "spread",
    "repeats",
    "header-to-bow",
    "room-under-bow",
    "unusual-opening",
    "unusual-bow",
    "shallow-header",
    "narrow-post",
    "closing",
    "slip",
];
const BITS: u32 = 5;
const AS_TEXT: u32 = 31;

pub(super) fn write(code: &str, out: &mut Writer) {
    let known = CODES.iter().position(|&known| known == code).and_then(|at| u32::try_from(at).ok());
    match known {
        Some(number) => out.put(number, BITS),
        None => {
            out.put(AS_TEXT, BITS);
            text::write(code, out);
        }
    }
}

pub(super) fn read(from: &mut Reader<'_>) -> Result<String, Short> {
    match from.take(BITS)? {
        AS_TEXT => text::read(from),
        number => CODES.get(number as usize).map(|&code| code.to_owned()).ok_or(Short),
    }
}
