//! An order's link, and whatever it is pasted with.

use hangtrue_core::say::Language;
use hangtrue_link::{LinkError, PAYLOAD_MOST, decode, encode, find, say};

use crate::forge;

/// A payload is refused or is an order, and an order has one payload; contents that were
/// forged behind a sound envelope are an order of exactly that payload, or refused as such.
pub(crate) fn holds(bytes: &[u8]) {
    let text = &super::text(bytes);
    match find(text) {
        Ok(payload) => one_order(&payload),
        Err(error) => said(error),
    }
    match decode(text) {
        // Case and letters that look alike make no difference.
        Ok(order) => one_order(&encode(&order).expect("what was read is written")),
        Err(error) => said(error),
    }
    let symbols: Vec<u8> = bytes.iter().map(|byte| byte & 31).collect();
    let forged = forge::sealed(forge::ORDER, &symbols);
    if forged.len() > PAYLOAD_MOST {
        return assert!(matches!(decode(&forged), Err(LinkError::TooLong { .. })));
    }
    match decode(&forged) {
        Ok(order) => assert_eq!(encode(&order), Ok(forged)),
        Err(error) => assert_eq!(error, LinkError::Contents),
    }
}

fn one_order(payload: &str) {
    if let Ok(order) = decode(payload) {
        assert_eq!(encode(&order).as_deref(), Ok(payload));
    }
}

fn said(error: LinkError) {
    for language in Language::ALL {
        let advice = say::link(language, error);
        assert!(!advice.what.is_empty());
    }
}
