//! From tree to text.

use super::{Node, Value};

/// On one line, without a space.
#[must_use]
pub fn print(node: &Node<'_>) -> String {
    let mut out = String::new();
    write(node, None, &mut out);
    out
}

/// A line an item, indented by two spaces a level: for people to read and change.
#[must_use]
pub fn pretty(node: &Node<'_>) -> String {
    let mut out = String::new();
    write(node, Some(0), &mut out);
    out
}

fn write(node: &Node<'_>, level: Option<usize>, out: &mut String) {
    let inner = level.map(|level| level.saturating_add(1));
    match &node.value {
        Value::Null => out.push_str("null"),
        Value::Bool(true) => out.push_str("true"),
        Value::Bool(false) => out.push_str("false"),
        Value::Number(number) => out.push_str(number.as_str()),
        Value::Text(text) => quoted(text, out),
        Value::List(items) => {
            out.push('[');
            for (index, item) in items.iter().enumerate() {
                begin(index, inner, out);
                write(item, inner, out);
            }
            end(items.is_empty(), level, out);
            out.push(']');
        }
        Value::Object(entries) => {
            out.push('{');
            for (index, entry) in entries.iter().enumerate() {
                begin(index, inner, out);
                quoted(&entry.key, out);
                out.push_str(if level.is_some() { ": " } else { ":" });
                write(&entry.node, inner, out);
            }
            end(entries.is_empty(), level, out);
            out.push('}');
        }
    }
}

fn begin(index: usize, level: Option<usize>, out: &mut String) {
    if index > 0 {
        out.push(',');
    }
    line(level, out);
}

fn end(is_empty: bool, level: Option<usize>, out: &mut String) {
    if !is_empty {
        line(level, out);
    }
}

fn line(level: Option<usize>, out: &mut String) {
    let Some(level) = level else { return };
    out.push('\n');
    for _ in 0..level {
        out.push_str("  ");
    }
}

/// `text` in quotation marks.
fn quoted(text: &str, out: &mut String) {
    const HEX: [char; 16] =
        ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', 'a', 'b', 'c', 'd', 'e', 'f'];
    out.push('"');
    for letter in text.chars() {
        match letter {
            '"' => out.push_str("\\\""),
            '\\' => out.push_str("\\\\"),
            '\u{8}' => out.push_str("\\b"),
            '\u{c}' => out.push_str("\\f"),
            '\n' => out.push_str("\\n"),
            '\r' => out.push_str("\\r"),
            '\t' => out.push_str("\\t"),
            '\0'..='\u{1f}' => {
                let code = usize::try_from(u32::from(letter)).unwrap_or_default();
                out.push_str("\\u00");
                out.extend(
                    [code >> 4, code & 15].map(|digit| HEX.get(digit).copied().unwrap_or('0')),
                );
            }
            letter => out.push(letter),
        }
    }
    out.push('"');
}
