//! Reading and changing a tree at a path of keys and places, `doors.0.track.radius`.

use hangtrue_link::json::text::{Entry, Node, Value};

/// The value at `path`.
pub(super) fn get<'t>(tree: &'t Node<'static>, path: &str) -> Option<&'t Node<'static>> {
    let mut node = tree;
    for key in path.split('.').filter(|key| !key.is_empty()) {
        node = match &node.value {
            Value::List(items) => items.get(key.parse::<usize>().ok()?)?,
            _ => node.get(key)?,
        };
    }
    Some(node)
}

/// Puts `value` at `path`, or takes away what is there. Records on the way are made; one
/// that becomes empty goes, for it would say nothing.
pub(super) fn set(tree: &mut Node<'static>, path: &str, value: Option<Node<'static>>) {
    let Some((key, rest)) = path.split_once('.') else { return put(tree, path, value) };
    if let Value::List(items) = &mut tree.value {
        // An item goes by its own button, however little it says.
        if let Some(item) = key.parse::<usize>().ok().and_then(|at| items.get_mut(at)) {
            set(item, rest, value);
        }
        return;
    }
    let mut inner = tree.get(key).cloned().unwrap_or_else(Node::object);
    set(&mut inner, rest, value);
    put(tree, key, Some(inner).filter(|inner| !is_empty(inner)));
}

/// Adds an empty record to the list at `path`.
pub(super) fn add(tree: &mut Node<'static>, path: &str) {
    let mut items = list(tree, path);
    items.push(Node::object());
    set(tree, path, Some(Value::List(items).into()));
}

/// Takes the item at `path` out of its list; a list that becomes empty goes.
pub(super) fn remove(tree: &mut Node<'static>, path: &str) {
    let Some((path, at)) = path.rsplit_once('.') else { return };
    let mut items = list(tree, path);
    match at.parse::<usize>() {
        Ok(at) if at < items.len() => items.remove(at),
        _ => return,
    };
    let list = (!items.is_empty()).then(|| Value::List(items).into());
    set(tree, path, list);
}

/// Puts `text` into the list at `path`, or takes it out.
pub(super) fn toggle(tree: &mut Node<'static>, path: &str, text: &str) {
    let mut items = list(tree, path);
    match items.iter().position(|item| item.as_text() == Some(text)) {
        Some(at) => {
            items.remove(at);
        }
        None => items.push(Node::text(text.to_owned())),
    }
    let list = (!items.is_empty()).then(|| Value::List(items).into());
    set(tree, path, list);
}

/// The items of the list at `path`; none where there is no list.
pub(super) fn list(tree: &Node<'static>, path: &str) -> Vec<Node<'static>> {
    match get(tree, path).map(|node| &node.value) {
        Some(Value::List(items)) => items.clone(),
        _ => Vec::new(),
    }
}

fn put(tree: &mut Node<'static>, key: &str, value: Option<Node<'static>>) {
    if !matches!(tree.value, Value::Object(_)) {
        *tree = Node::object();
    }
    let Value::Object(entries) = &mut tree.value else { return };
    let at = entries.iter().position(|entry| entry.key == key);
    match (at.and_then(|at| entries.get_mut(at)), value) {
        (Some(entry), Some(value)) => entry.node = value,
        (None, Some(node)) => entries.push(Entry { key: key.to_owned().into(), node }),
        (_, None) => entries.retain(|entry| entry.key != key),
    }
}

fn is_empty(node: &Node<'_>) -> bool {
    matches!(&node.value, Value::Object(entries) if entries.is_empty())
}
