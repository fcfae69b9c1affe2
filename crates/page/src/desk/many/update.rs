//! What an event makes of the screen of many orders.

use super::{Action, Kind, List, Many, Sort, Source, State, Step, change, column, unit};
use crate::desk::effect::Effect;
use crate::desk::model::{Model, Screen};
use crate::desk::sent::{MOST, Trouble};
use crate::desk::update::{open_or_say, opened, say};
use crate::text::desk::Desk;
use hangtrue_core::Unit;
use hangtrue_link::csv::{Measure, What};

/// The heading of the screen, by its id.
const HEADING: &str = "many-heading";

/// Begins with `source`, in place of the list that was open.
pub(in crate::desk) fn begin(model: &mut Model, name: &str, source: Source) -> Vec<Effect> {
    model.screen = Screen::Many;
    model.paste.clear();
    model.trouble = None;
    let list = List::new(name, source);
    let busy = list.is_busy();
    model.many = Many { list: Some(list), ..Many::default() };
    // A table waits for a press of the button that says so.
    let focus = Effect::focus(if busy { HEADING } else { "list-check" });
    [focus].into_iter().chain(busy.then_some(Effect::Work)).collect()
}

/// Takes in the text of a file, or one that was pasted here, while this screen is shown:
/// what is no list may still be one order.
pub(in crate::desk) fn take(model: &mut Model, name: &str, text: String) -> Vec<Effect> {
    match Source::open(name, text) {
        Ok(source) => begin(model, name, source),
        Err((_, Some(fault))) => say(model, Trouble::Table(fault)),
        Err((text, None)) if text.trim().is_empty() => say(model, Trouble::Nothing),
        Err((text, None)) => open_or_say(model, name, &text),
    }
}

/// A field of the screen holds something else. [`None`] where it is none of them.
pub(in crate::desk) fn input(model: &mut Model, name: &str, value: &str) -> Option<Vec<Effect>> {
    if name == "orders" {
        return Some(pasted(model, value));
    }
    let (what, at) = name.split_once(':').unwrap_or((name, ""));
    let at = at.parse::<usize>();
    let list = model.many.list.as_mut();
    match (what, at) {
        ("list-filter", _) => {
            let list = list?;
            value.clone_into(&mut list.filter.text);
            list.show();
            return Some(vec![Effect::Work]);
        }
        ("list-unit", _) => unit(&mut list?.source, Unit::from_key(value)?),
        ("column", Ok(at)) => column(&mut list?.source, at, What::from_key(value)?),
        ("measure", Ok(at)) => {
            let measure = Measure::from_name(value);
            change(&mut list?.source, at, |column| column.measure = measure);
        }
        _ => return None,
    }
    Some(Vec::new())
}

/// Something was typed or pasted into the box. A list beyond doubt is begun with at once.
fn pasted(model: &mut Model, value: &str) -> Vec<Effect> {
    model.many.trouble = None;
    match Source::find("", value.to_owned()) {
        Ok(source) => begin(model, "", source),
        Err(text) if text.len() > MOST => {
            model.many.paste.clear();
            take(model, "", text)
        }
        Err(text) => {
            model.many.paste = text;
            Vec::new()
        }
    }
}

/// A button was pressed.
pub(in crate::desk) fn act(model: &mut Model, action: Action) -> Vec<Effect> {
    match action {
        Action::One | Action::Many => {
            model.screen = if action == Action::One { Screen::One } else { Screen::Many };
            return Vec::new();
        }
        Action::Open => {
            let text = model.many.paste.clone();
            return take(model, "", text);
        }
        Action::Close => {
            model.many = Many::default();
            return vec![Effect::focus("orders")];
        }
        Action::Look(at) => return look(model, at),
        _ => {}
    }
    let Some(list) = &mut model.many.list else { return Vec::new() };
    let mut effects = Vec::new();
    match action {
        Action::Check => {
            list.check();
            effects.push(Effect::focus(HEADING));
        }
        Action::Columns if matches!(list.source.kind, Kind::Table(_)) => {
            list.state = State::Columns;
            effects.push(Effect::focus("list-check"));
        }
        Action::Stop => {
            list.stop();
            effects.push(Effect::focus(HEADING));
        }
        Action::Resume => {
            list.resume();
            effects.push(Effect::focus(HEADING));
        }
        Action::Verdict(verdict) => {
            list.filter.verdict = verdict;
            list.show();
        }
        Action::Rule(rule) => {
            let shown = list.filter.rule.as_ref() == Some(&rule);
            list.filter.rule = (!shown).then_some(rule);
            list.show();
        }
        Action::Sort(by) => {
            list.sort = Sort { by, reversed: list.sort.by == by && !list.sort.reversed };
            list.show();
        }
        Action::Page(page) => {
            list.page = page.min(list.pages().saturating_sub(1));
            effects.push(Effect::focus("list-rows"));
        }
        Action::Save(export) => list.save(export),
        _ => {}
    }
    if list.is_busy() {
        effects.push(Effect::Work);
    }
    effects
}

/// Opens an order of the list beside the call.
fn look(model: &mut Model, at: usize) -> Vec<Effect> {
    let Some(list) = &model.many.list else { return Vec::new() };
    let sent = list.found.get(at).and_then(|found| list.source.sent(found.mark));
    let Some(sent) = sent else { return Vec::new() };
    opened(model, sent)
}

/// A few milliseconds of work; asks for more until there is none.
pub(in crate::desk) fn work(model: &mut Model) -> Vec<Effect> {
    let language = model.environment.language;
    let text = &Desk::of(language).many;
    let Some(list) = &mut model.many.list else { return Vec::new() };
    let mut effects = Vec::new();
    match list.step(&model.profile, language) {
        Step::Quiet => {}
        Step::Checked => model.spoken = (text.summary)(&list.counts),
        Step::Sorted if list.shown.len() == list.found.len() => {}
        Step::Sorted => model.spoken = (text.so_many)(list.shown.len()),
        Step::Saved(effect) => effects.push(Effect::Page(effect)),
    }
    if list.is_busy() {
        effects.push(Effect::Work);
    }
    effects
}
