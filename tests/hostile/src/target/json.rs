//! The reader of JSON, beside the one that everybody uses.

use hangtrue_link::json::text::{Node, Syntax, Value, parse, pretty, print};
use serde_json::Value as Outside;

/// Both read it, as the same, or neither does; what is written is read as the same.
pub(crate) fn holds(bytes: &[u8]) {
    let text = &super::text(bytes);
    match (parse(text), serde_json::from_str::<Outside>(text)) {
        (Ok(node), outside) => {
            for written in [print(&node), pretty(&node)] {
                assert_eq!(parse(&written).as_ref(), Ok(&node), "{text}");
            }
            match outside {
                Ok(value) => assert!(same(&node, &value), "{text}"),
                // A number that no double holds is still a number here.
                Err(error) => assert!(error.to_string().contains("out of range"), "{text}"),
            }
        }
        (Err(wrong), Ok(_)) => {
            let limit = matches!(wrong.what, Syntax::Deep { .. } | Syntax::Long { .. });
            assert!(limit, "{wrong:?} in {text}");
        }
        (Err(wrong), Err(_)) => assert!(wrong.at <= text.len()),
    }
}

/// A key that comes twice has its last value outside.
fn same(node: &Node<'_>, outside: &Outside) -> bool {
    match (&node.value, outside) {
        (Value::Null, Outside::Null) => true,
        (Value::Bool(ours), Outside::Bool(theirs)) => ours == theirs,
        (Value::Number(ours), theirs @ Outside::Number(_)) => {
            serde_json::from_str::<Outside>(ours.as_str()).is_ok_and(|ours| ours == *theirs)
        }
        (Value::Text(ours), Outside::String(theirs)) => ours == theirs,
        (Value::List(ours), Outside::Array(theirs)) => {
            ours.len() == theirs.len() && ours.iter().zip(theirs).all(|(a, b)| same(a, b))
        }
        (Value::Object(ours), Outside::Object(theirs)) => {
            let last = |key: &str| ours.iter().rev().find(|entry| entry.key == key);
            ours.iter().all(|entry| theirs.contains_key(entry.key.as_ref()))
                && theirs
                    .iter()
                    .all(|(key, value)| last(key).is_some_and(|entry| same(&entry.node, value)))
        }
        _ => false,
    }
}
