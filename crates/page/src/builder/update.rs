//! What an event makes of the profile.

use super::schema::{Kind, at, kind};
use super::{Effect, Model, PROFILE, text, tree};
use crate::event::{Action, Event};
use hangtrue_link::json::profile::{MOST, parse};
use hangtrue_link::json::text::{self as json, Node, Value, print};
use hangtrue_link::say;

/// Takes `event` into `model`; the effects are to be carried out after drawing.
pub fn update(model: &mut Model, event: Event) -> Vec<Effect> {
    let mut effects = happened(model, event);
    let asks = model.tree != model.saved;
    if asks != model.asks_before_leaving {
        model.asks_before_leaving = asks;
        effects.push(Effect::AskBeforeLeaving(asks));
    }
    effects
}

fn happened(model: &mut Model, event: Event) -> Vec<Effect> {
    match event {
        Event::Input { name, value } => fill(model, &name, &value),
        Event::Press(code) => {
            if let Some(Action::Speak(language)) = Action::from_code(&code) {
                model.environment.language = language;
                return vec![model.speak(), Effect::Page(crate::Effect::Remember(language))];
            }
            return press(model, &code);
        }
        Event::Open(text) => open(model, &text),
        Event::File { text, .. } => open(model, &text.unwrap_or_default()),
        // What only the walk has to do with.
        Event::Focus(_)
        | Event::Navigate(_)
        | Event::Settled
        | Event::Copied(_)
        | Event::Slide { .. }
        | Event::Newer
        | Event::Whole
        | Event::Missing
        | Event::Loaded(_)
        | Event::Drafts(_)
        | Event::Trouble(_) => return Vec::new(),
    }
    judged(model)
}

/// The profile is read as it will be by whoever gets it.
fn judged(model: &mut Model) -> Vec<Effect> {
    let file = print(&model.tree);
    model.begun |= model.tree != super::blank();
    model.profile = parse(&file);
    if model.profile.is_ok() { vec![Effect::Show(file)] } else { Vec::new() }
}

/// The field at `path` holds `text`.
fn fill(model: &mut Model, path: &str, text: &str) {
    let Some(schema) = at(&model.schema, path).filter(|_| !path.is_empty()) else { return };
    let node = |text: &str| match kind(&model.schema, schema) {
        Kind::YesNo => Value::Bool(text == "true").into(),
        Kind::Number => match json::parse(text.trim()) {
            Ok(Node { value: value @ Value::Number(_), .. }) => Node::from(value).into_owned(),
            // What is no number stays as it was typed, for its error to be about it.
            _ => Node::text(text.to_owned()),
        },
        _ => Node::text(text.to_owned()),
    };
    let value = (!text.is_empty()).then(|| node(text));
    tree::set(&mut model.tree, path, value);
}

/// A button was pressed: what it does, a colon, and where.
fn press(model: &mut Model, code: &str) -> Vec<Effect> {
    let Some((act, path)) = code.split_once(':') else { return Vec::new() };
    let focus = |id: String| Effect::Page(crate::Effect::Focus(id));
    let then = match act {
        "add" => {
            tree::add(&mut model.tree, path);
            unfold(model, path);
            let last = tree::list(&model.tree, path).len().saturating_sub(1);
            Some(focus([path, ".", &last.to_string()].concat()))
        }
        "remove" => {
            tree::remove(&mut model.tree, path);
            path.rsplit_once('.').map(|(list, _)| focus(list.to_owned()))
        }
        "toggle" => {
            let Some((path, text)) = path.split_once(':') else { return Vec::new() };
            tree::toggle(&mut model.tree, path, text);
            None
        }
        // One text becomes a text of the first language, and back.
        "split" => {
            let first = [path, ".", text::FIRST].concat();
            let text = tree::get(&model.tree, path).and_then(Node::as_text).map(str::to_owned);
            tree::set(&mut model.tree, path, None);
            tree::set(&mut model.tree, &first, Some(Node::text(text.unwrap_or_default())));
            Some(focus(first))
        }
        "join" => {
            let text = match tree::get(&model.tree, path).map(|node| &node.value) {
                Some(Value::Object(entries)) => {
                    entries.first().and_then(|entry| entry.node.as_text()).map(str::to_owned)
                }
                _ => None,
            };
            tree::set(&mut model.tree, path, text.map(Node::text));
            Some(focus(path.to_owned()))
        }
        // The browser downloads it.
        "downloaded" => {
            if path == PROFILE {
                model.saved = model.tree.clone();
            }
            return Vec::new();
        }
        "fold" => {
            let at = model.open.iter().position(|open| open == path);
            match at {
                Some(at) => {
                    model.open.remove(at);
                }
                None => model.open.push(path.to_owned()),
            }
            return Vec::new();
        }
        "go" => {
            unfold(model, path);
            return vec![focus(path.to_owned())];
        }
        _ => return Vec::new(),
    };
    judged(model).into_iter().chain(then).collect()
}

/// Unfolds every group around `path`, and the one at it.
fn unfold(model: &mut Model, path: &str) {
    let ends = path.match_indices('.').map(|(at, _)| at).chain([path.len()]);
    for group in ends.filter_map(|end| path.get(..end)) {
        if !model.open.iter().any(|open| open == group) {
            model.open.push(group.to_owned());
        }
    }
}

/// Takes the profile of a file. One that is no JSON changes nothing; one that is not as
/// the format says is shown with what is wrong with it.
fn open(model: &mut Model, text: &str) {
    model.unread = None;
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let node = if text.len() > MOST { None } else { json::parse(text).ok() };
    match node {
        Some(node) if matches!(node.value, Value::Object(_)) => {
            model.tree = node.into_owned();
            model.saved = model.tree.clone();
        }
        _ => {
            let language = model.language();
            let told = |error| say::profile(language, &error);
            model.unread = parse(text).err().map(told);
        }
    }
}
