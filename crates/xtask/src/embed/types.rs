//! TypeScript types: those of orders and profiles from their JSON Schemas, those of the
//! element from `web/embed/survey.d.ts`.

use std::fmt::Write as _;

use anyhow::{Context as _, Result};
use hangtrue_link::json::{order, profile};
use serde_json::{Map, Value};

use crate::sh;
use crate::site::read;

/// The whole declaration file.
pub(crate) fn declarations() -> Result<String> {
    let mut out = read(&sh::root().join("web"), "embed/survey.d.ts")?;
    for (name, schema) in
        [("Order", order::schema().to_value()), ("Profile", profile::schema().to_value())]
    {
        out.push('\n');
        out.push_str(&of_schema(name, &schema)?);
    }
    Ok(out)
}

/// `name` and its parts in a namespace of their own.
fn of_schema(name: &str, schema: &Value) -> Result<String> {
    let root = schema.as_object().context("a schema is an object")?;
    let mut out = String::new();
    doc(&mut out, root, "");
    writeln!(out, "export interface Hangtrue{name} {}", object(name, root, ""))?;
    writeln!(out, "\nexport namespace Hangtrue{name}Parts {{")?;
    for (part, schema) in root.get("$defs").and_then(Value::as_object).into_iter().flatten() {
        let schema = schema.as_object().context("a schema is an object")?;
        doc(&mut out, schema, "  ");
        writeln!(out, "  export type {part} = {};", kind(name, schema, "  "))?;
    }
    out.push_str("}\n");
    Ok(out)
}

fn doc(out: &mut String, schema: &Map<String, Value>, indent: &str) {
    if let Some(text) = schema.get("description").and_then(Value::as_str) {
        let text = text.replace('\n', " ");
        let _ = writeln!(out, "{indent}/** {text} */");
    }
}

fn object(name: &str, schema: &Map<String, Value>, indent: &str) -> String {
    let required: Vec<&str> = schema
        .get("required")
        .and_then(Value::as_array)
        .into_iter()
        .flatten()
        .filter_map(Value::as_str)
        .collect();
    let inner = format!("{indent}  ");
    let mut out = String::from("{\n");
    for (key, value) in schema.get("properties").and_then(Value::as_object).into_iter().flatten() {
        let Some(value) = value.as_object() else { continue };
        doc(&mut out, value, &inner);
        let mark = if required.contains(&key.as_str()) { "" } else { "?" };
        let _ = writeln!(out, "{inner}{key}{mark}: {};", kind(name, value, &inner));
    }
    out.push_str(indent);
    out.push('}');
    out
}

fn kind(name: &str, schema: &Map<String, Value>, indent: &str) -> String {
    let schemas = |value: &Value| -> Vec<String> {
        let one = |one: &Value| one.as_object().map(|one| kind(name, one, indent));
        value.as_array().into_iter().flatten().filter_map(one).collect()
    };
    if let Some(reference) = schema.get("$ref").and_then(Value::as_str) {
        let part = reference.rsplit('/').next().unwrap_or_default();
        return format!("Hangtrue{name}Parts.{part}");
    }
    if let Some(constant) = schema.get("const") {
        return constant.to_string();
    }
    if let Some(values) = schema.get("enum").and_then(Value::as_array) {
        return values.iter().map(Value::to_string).collect::<Vec<_>>().join(" | ");
    }
    if let Some(any) = schema.get("anyOf").or_else(|| schema.get("oneOf")) {
        return schemas(any).join(" | ");
    }
    match schema.get("type") {
        Some(Value::Array(kinds)) => {
            kinds.iter().filter_map(Value::as_str).map(plain).collect::<Vec<_>>().join(" | ")
        }
        Some(Value::String(one)) if one == "object" => object(name, schema, indent),
        Some(Value::String(one)) if one == "array" => {
            let items = schema.get("items").and_then(Value::as_object);
            format!("({})[]", items.map_or("unknown".to_owned(), |items| kind(name, items, indent)))
        }
        Some(Value::String(one)) => plain(one).to_owned(),
        _ => "unknown".to_owned(),
    }
}

fn plain(kind: &str) -> &str {
    match kind {
        "integer" => "number",
        kind => kind,
    }
}
