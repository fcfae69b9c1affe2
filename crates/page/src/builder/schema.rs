//! What a JSON Schema says of a place, as far as a form needs it.

use hangtrue_link::json::text::{Node, Value};

/// What stands at a place.
pub(super) enum Kind<'s> {
    /// Always the same text; there is nothing to fill in.
    Fixed,
    /// A record: its keys, and the schema of each.
    Record(Vec<(&'s str, &'s Node<'static>)>),
    /// A list of records or texts, each of this schema.
    List(&'s Node<'static>),
    /// Any of these texts.
    Several(Vec<&'s str>),
    /// One of these texts.
    One(Vec<&'s str>),
    /// Yes or no.
    YesNo,
    /// A number.
    Number,
    /// A text, in one language or by language: the languages.
    Spoken(Vec<&'s str>),
    /// A text.
    Text {
        /// Whether it is a colour.
        is_color: bool,
        /// How it may look.
        example: Option<&'s str>,
    },
}

/// `schema`, or what it refers to.
pub(super) fn resolved<'s>(
    root: &'s Node<'static>,
    schema: &'s Node<'static>,
) -> &'s Node<'static> {
    let reference = schema.get("$ref").and_then(Node::as_text);
    let name = reference.and_then(|text| text.rsplit('/').next());
    let found = name.and_then(|name| root.get("$defs")?.get(name));
    found.unwrap_or(schema)
}

/// What `schema` says of its place, or what it refers to does.
pub(super) fn about<'s>(root: &'s Node<'static>, schema: &'s Node<'static>) -> &'s str {
    let own = schema.get("description").and_then(Node::as_text);
    let of_kind = || resolved(root, schema).get("description").and_then(Node::as_text);
    own.or_else(of_kind).unwrap_or_default()
}

/// The kind of `schema`.
pub(super) fn kind<'s>(root: &'s Node<'static>, schema: &'s Node<'static>) -> Kind<'s> {
    let schema = resolved(root, schema);
    if let Some(values) = schema.get("enum") {
        let values = texts(values);
        return if values.len() == 1 { Kind::Fixed } else { Kind::One(values) };
    }
    if schema.get("anyOf").is_some() {
        return Kind::Spoken(properties(schema).map(keys).unwrap_or_default());
    }
    match schema.get("type").and_then(Node::as_text) {
        Some("object") => {
            let entries = match schema.get("properties").map(|properties| &properties.value) {
                Some(Value::Object(entries)) => entries.as_slice(),
                _ => &[],
            };
            Kind::Record(entries.iter().map(|entry| (&*entry.key, &entry.node)).collect())
        }
        Some("array") => match schema.get("items") {
            None => Kind::Fixed,
            Some(items) => match kind(root, items) {
                Kind::One(values) => Kind::Several(values),
                _ => Kind::List(items),
            },
        },
        Some("boolean") => Kind::YesNo,
        Some("integer" | "number") => Kind::Number,
        _ => Kind::Text {
            is_color: schema.get("format").and_then(Node::as_text) == Some("color"),
            example: schema.get("examples").and_then(|list| texts(list).first().copied()),
        },
    }
}

/// Whether the record of `schema` must have `key`.
pub(super) fn must_have(root: &Node<'static>, schema: &Node<'static>, key: &str) -> bool {
    resolved(root, schema).get("required").is_some_and(|list| texts(list).contains(&key))
}

/// The schema of the place at `path`.
pub(super) fn at<'s>(root: &'s Node<'static>, path: &str) -> Option<&'s Node<'static>> {
    let mut schema = root;
    for key in path.split('.').filter(|key| !key.is_empty()) {
        let here = resolved(root, schema);
        schema = match properties(here).and_then(|properties| properties.get(key)) {
            Some(inner) => inner,
            None => here.get("items")?,
        };
    }
    Some(schema)
}

/// The properties of a record, or of the record that is one of several things.
fn properties<'s>(schema: &'s Node<'static>) -> Option<&'s Node<'static>> {
    let any = match schema.get("anyOf").map(|any| &any.value) {
        Some(Value::List(any)) => any.as_slice(),
        _ => &[],
    };
    let mut several = any.iter().filter_map(|one| one.get("properties"));
    schema.get("properties").or_else(|| several.next())
}

fn texts<'s>(list: &'s Node<'static>) -> Vec<&'s str> {
    let Value::List(items) = &list.value else { return Vec::new() };
    items.iter().filter_map(Node::as_text).collect()
}

fn keys<'s>(object: &'s Node<'static>) -> Vec<&'s str> {
    let Value::Object(entries) = &object.value else { return Vec::new() };
    entries.iter().map(|entry| &*entry.key).collect()
}
