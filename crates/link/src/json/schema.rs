//! What every published JSON Schema of this crate holds to.

use schemars::Schema;

/// A key may be left out; `null` in its place is refused, and the schema says so.
pub(super) fn never_null(schema: &mut Schema) {
    let Some(object) = schema.as_object_mut() else { return };
    if let Some(kinds) = object.get_mut("type").and_then(|kinds| kinds.as_array_mut()) {
        kinds.retain(|kind| kind != "null");
        if let [only] = kinds.as_slice() {
            let only = only.clone();
            object.insert("type".into(), only);
        }
    }
    if let Some(values) = object.get_mut("enum").and_then(|values| values.as_array_mut()) {
        values.retain(|value| !value.is_null());
    }
    let Some(any) = object.get_mut("anyOf").and_then(|any| any.as_array_mut()) else { return };
    any.retain(|one| one.get("type").is_none_or(|kind| kind != "null"));
    if let [only] = any.as_slice()
        && let Some(only) = only.as_object().cloned()
    {
        object.remove("anyOf");
        for (key, value) in only {
            object.entry(key).or_insert(value);
        }
    }
}
