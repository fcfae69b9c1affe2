//! Where the values of a JSON document stand.

use serde_json::Value;

/// The address of every value in a document, outer ones first.
pub(crate) fn places(value: &Value, here: &str, found: &mut Vec<String>) {
    let children: Vec<(String, &Value)> = match value {
        Value::Object(map) => map.iter().map(|(key, inner)| (key.clone(), inner)).collect(),
        Value::Array(list) => {
            list.iter().enumerate().map(|(at, inner)| (at.to_string(), inner)).collect()
        }
        _ => Vec::new(),
    };
    for (key, inner) in children {
        let place = format!("{here}/{key}");
        found.push(place.clone());
        places(inner, &place, found);
    }
}
