//! A tree among what `serde` writes.

use serde::ser::{Serialize, SerializeMap as _, Serializer};

use super::{Node, Number, Value};

impl Serialize for Node<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match &self.value {
            Value::Null => serializer.serialize_unit(),
            Value::Bool(value) => serializer.serialize_bool(*value),
            Value::Number(number) => number.serialize(serializer),
            Value::Text(text) => serializer.serialize_str(text),
            Value::List(items) => serializer.collect_seq(items),
            Value::Object(entries) => {
                let mut map = serializer.serialize_map(Some(entries.len()))?;
                for entry in entries {
                    map.serialize_entry(&entry.key, &entry.node)?;
                }
                map.end()
            }
        }
    }
}

impl Serialize for Number<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self.as_str().parse::<serde_json::Number>() {
            Ok(number) => number.serialize(serializer),
            // No double holds it: the digits are handed on all the same.
            Err(_) => serializer.serialize_str(self.as_str()),
        }
    }
}
