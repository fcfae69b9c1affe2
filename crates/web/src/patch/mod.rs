//! Changes the live page into what the markup says, touching only what differs.
//!
//! Nodes are made with `createElementNS` and text nodes: the browser's markup parser is never asked,
//! so Trusted Types hold by construction, and text from a stranger can only ever become text.
//!
//! What was shown last is remembered as a tree, and the new tree is compared with it: the page is
//! written to and, but for what a person does in it, never read. So a keystroke costs what it
//! changes, not what is shown. The children of the root are the patcher's alone. Who else changes
//! them (a translator, an extension) is noticed where something has to be written: then everything is
//! made anew.
//!
//! How a new element finds the one that it continues, in this order:
//! 1. by its own `id`, or its `data-key` among its siblings;
//! 2. having neither, by the first `id` inside it that one in the same parent has, or holds;
//! 3. by position: the next element of that name that holds no `id` or `data-key` at all.
//!
//! So a thing whose state matters (a field, a scrolled list) has an `id`; then whatever comes or goes
//! around it, it stays the same node, and focus, caret, selection and a running IME composition stay
//! with it. Reordering moves the others around the element that has the focus.
//!
//! A text is shown as `Patcher` is told to set it, but where it is to be taken as it is: in `code`,
//! `pre`, `option` and `textarea`.
//!
//! What belongs to the person:
//! * `value` of the field being typed in is set only when the model has *changed* its value since the
//!   last patch and the field does not show it already. An echo of the keystroke is therefore never
//!   written back, not even a late one, which would break a composition or move the caret. A field
//!   without the focus always shows the model.
//! * `checked` and `selected` follow the model.
//! * `open` (of `details`, `dialog`) is set when the element is made, and never again.

use std::borrow::Cow;
use std::cell::RefCell;

use wasm_bindgen::prelude::*;
use web_sys::{
    Document, Element, HtmlInputElement, HtmlOptionElement, HtmlTextAreaElement, Node, NodeList,
    Text,
};

use markup::{Nodes, Tree, decode};

mod markup;

const HTML: &str = "http://www.w3.org/1999/xhtml";
const SVG: &str = "http://www.w3.org/2000/svg";

#[wasm_bindgen]
extern "C" {
    /// A document, an element or a shadow root.
    type Part;
    #[wasm_bindgen(method, getter, js_name = activeElement)]
    fn active(this: &Part) -> Option<Element>;
    #[wasm_bindgen(method, getter, js_name = innerHTML)]
    fn markup(this: &Part) -> String;
}

/// How a text is set before it is shown.
pub type Set = fn(Cow<'_, str>) -> Cow<'_, str>;

/// Elements whose text is to be taken as it is.
const AS_IT_IS: [&str; 4] = ["code", "option", "pre", "textarea"];

/// The page was changed by somebody else.
const LOST: JsValue = JsValue::NULL;

/// What shows markup in one place of the page.
pub struct Patcher {
    root: Node,
    set: Set,
    /// What was shown last. Taken while the page is being changed.
    shown: RefCell<Option<Tree>>,
    /// What a change of the page asked to be shown, by the events that it caused.
    next: RefCell<Option<String>>,
}

impl Patcher {
    /// For the children of `root` (an element or a shadow root), which may have some already: the
    /// first screen is in the document before any script runs.
    pub fn new(root: Node, set: Set) -> Self {
        root.normalize();
        let shown = markup::parse(root.unchecked_ref::<Part>().markup()).unwrap_or_else(|_| {
            root.set_text_content(None);
            Tree::default()
        });
        Self { root, set, shown: RefCell::new(Some(shown)), next: RefCell::default() }
    }

    /// Makes the children of the root what `markup` says.
    ///
    /// Markup that is not of the kind [`markup`] reads changes nothing; it is a mistake in a view,
    /// said on the console, where the browser tests see it.
    pub fn show(&self, markup: String) {
        let Some(mut shown) = self.shown.take() else {
            self.next.replace(Some(markup));
            return;
        };
        let mut next = Some(markup);
        while let Some(markup) = next {
            match markup::parse(markup) {
                Ok(new) => {
                    self.change(&shown, &new);
                    shown = new;
                }
                Err(fault) => {
                    let (what, at) = (JsValue::from(fault.what), JsValue::from(fault.at));
                    web_sys::console::error_3(&"the view wrote, before byte".into(), &at, &what);
                }
            }
            next = self.next.take();
        }
        self.shown.replace(Some(shown));
    }

    fn change(&self, old: &Tree, new: &Tree) {
        // Every node belongs to a document, but for the document itself.
        let Some(document) = self.root.owner_document() else { return };
        let active = self.root.get_root_node().unchecked_ref::<Part>().active();
        let patch = Patch { document, active };
        let within = Within { space: HTML, set: self.set };
        if patch.children(&self.root, old.nodes(), new.nodes(), within).is_err() {
            self.root.set_text_content(None);
            if let Err(error) =
                patch.children(&self.root, Tree::default().nodes(), new.nodes(), within)
            {
                web_sys::console::error_1(&error);
            }
        }
    }
}

struct Patch {
    document: Document,
    active: Option<Element>,
}

/// What holds of all that is in an element.
#[derive(Clone, Copy)]
struct Within {
    /// The namespace of what is made there.
    space: &'static str,
    set: Set,
}

/// The children of a live element, those that no new node has claimed yet among them.
struct Row<'a> {
    parent: &'a Node,
    live: NodeList,
    /// How many stand before the others: new ones, and old ones that are claimed.
    done: u32,
    /// What was shown last by those that stand behind, the next of them last.
    rest: Vec<markup::Node<'a>>,
}

impl<'a> Row<'a> {
    fn new(parent: &'a Node, old: Nodes<'a>) -> Result<Self, JsValue> {
        let (live, mut rest) = (parent.child_nodes(), old.collect::<Vec<_>>());
        rest.reverse();
        if live.length() as usize == rest.len() {
            Ok(Self { parent, live, done: 0, rest })
        } else {
            Err(LOST)
        }
    }

    /// The live node behind those that are done, and `further` ones.
    fn live(&self, further: usize) -> Option<Node> {
        self.live.item(self.done.saturating_add(u32::try_from(further).ok()?))
    }

    /// The same, if it is of the kind that was shown there last.
    fn of_kind(&self, further: usize, kind: u16) -> Result<Node, JsValue> {
        self.live(further).filter(|live| live.node_type() == kind).ok_or(LOST)
    }

    /// The next, if it is what is asked for.
    fn take_if(&mut self, is_it: impl Fn(markup::Node) -> bool) -> Option<markup::Node<'a>> {
        self.rest.pop_if(|old| is_it(*old))
    }

    /// Takes one of the rest out, counted from the next. `Vec::remove` brings the formatter with it.
    fn take(&mut self, at: usize) -> Option<markup::Node<'a>> {
        let mut before: Vec<_> = (0..at).filter_map(|_| self.rest.pop()).collect();
        let taken = self.rest.pop();
        before.reverse();
        self.rest.append(&mut before);
        taken
    }

    fn insert(&self, made: &Node) -> Result<(), JsValue> {
        self.parent.insert_before(made, self.live(0).as_ref()).map(drop)
    }

    fn remove_next(&mut self) -> Result<(), JsValue> {
        self.parent.remove_child(&self.live(0).ok_or(LOST)?).map(drop)
    }

    /// Brings one of the rest to the front of them. A node that is moved loses the focus inside it,
    /// so the one with the focus stays and those before it go round to the end.
    fn bring(
        &mut self,
        at: usize,
        active: Option<&Element>,
    ) -> Result<Option<markup::Node<'a>>, JsValue> {
        let live = self.of_kind(at, Node::ELEMENT_NODE)?;
        if at == 0 || !live.contains(active.map(AsRef::as_ref)) {
            if at > 0 {
                self.insert(&live)?;
            }
            return Ok(self.take(at));
        }
        let mut moved = Vec::new();
        for _ in 0..at {
            self.parent.append_child(&self.live(0).ok_or(LOST)?)?;
            moved.extend(self.rest.pop());
        }
        moved.reverse();
        moved.append(&mut self.rest);
        self.rest = moved;
        Ok(self.take_if(|_| true))
    }

    /// Which of the rest says of itself that it is `new`.
    fn by_identity(&self, new: markup::Node) -> Option<usize> {
        let fits = |old: &markup::Node| {
            old.name() == new.name()
                && old.named() == new.named()
                && old.attribute("id") == new.attribute("id")
        };
        if new.named().is_some() {
            return self.rest.iter().rev().position(fits);
        }
        if !new.holds_names() {
            return None;
        }
        let holds = |id: &str| {
            self.rest.iter().rev().position(|old| old.holds_names() && ids(*old).any(|it| it == id))
        };
        let at = ids(new).find_map(holds)?;
        self.rest.iter().rev().nth(at).is_some_and(fits).then_some(at)
    }

    /// The next element, if nothing says that it is another one. Text before it is dropped: it has no
    /// state, and is made anew where it is needed.
    fn by_position(&mut self, new: markup::Node) -> Result<Option<markup::Node<'a>>, JsValue> {
        while self.take_if(|old| old.text().is_some()).is_some() {
            self.remove_next()?;
        }
        let fits = |old: markup::Node| old.name() == new.name() && !old.holds_names();
        Ok(if new.named().is_some() { None } else { self.take_if(fits) })
    }
}

impl Patch {
    /// Makes the children of `parent`, which show `old`, show `new`.
    fn children(
        &self,
        parent: &Node,
        old: Nodes,
        new: Nodes,
        within: Within,
    ) -> Result<(), JsValue> {
        let mut row = Row::new(parent, old)?;
        for new in new {
            if let Some(text) = new.text() {
                self.text(&mut row, new, text, within.set)?;
            } else if let Some(old) = row.take_if(|old| old.is_like(new)) {
                if new.has_state() {
                    let live = row.of_kind(0, Node::ELEMENT_NODE)?;
                    self.element(live.unchecked_ref(), Some(old), new, within)?;
                }
            } else {
                let claimed = match row.by_identity(new) {
                    Some(at) => row.bring(at, self.active.as_ref())?,
                    None => row.by_position(new)?,
                };
                let space = if new.name() == Some("svg") { SVG } else { within.space };
                let within = Within { space, ..within };
                if claimed.is_some() {
                    let live = row.of_kind(0, Node::ELEMENT_NODE)?;
                    self.element(live.unchecked_ref(), claimed, new, within)?;
                } else {
                    let name = new.name().unwrap_or_default();
                    let made = self.document.create_element_ns(Some(space), name)?;
                    self.element(&made, None, new, within)?;
                    row.insert(&made)?;
                }
            }
            row.done = row.done.saturating_add(1);
        }
        while row.take_if(|_| true).is_some() {
            row.remove_next()?;
        }
        Ok(())
    }

    fn text(&self, row: &mut Row, new: markup::Node, text: &str, set: Set) -> Result<(), JsValue> {
        let text = decode(text).unwrap_or_default();
        let Some(old) = row.take_if(|old| old.text().is_some()) else {
            return row.insert(&self.document.create_text_node(&set(text)));
        };
        let before = old.text().and_then(|text| decode(text).ok());
        if !old.is_like(new) && before.is_none_or(|before| before != text) {
            row.of_kind(0, Node::TEXT_NODE)?.unchecked_ref::<Text>().set_data(&set(text));
        }
        Ok(())
    }

    /// Makes a live element, which shows `old` or nothing yet, show `new`.
    fn element(
        &self,
        live: &Element,
        old: Option<markup::Node>,
        new: markup::Node,
        within: Within,
    ) -> Result<(), JsValue> {
        if old.is_none_or(|old| !old.is_like(new)) {
            attributes(live, old, new)?;
        }
        let name = new.name().unwrap_or_default();
        let space = if name == "foreignObject" { HTML } else { within.space };
        let set: Set = if AS_IT_IS.contains(&name) { |text| text } else { within.set };
        let children = old.map_or_else(|| new.none(), markup::Node::children);
        self.children(live, children, new.children(), Within { space, set })?;
        self.state(live, old, new);
        Ok(())
    }

    /// What a person can change: what the model says is written over what the person typed only if
    /// it says something new.
    fn state(&self, live: &Element, old: Option<markup::Node>, new: markup::Node) {
        let may_write = |value: &str| {
            old.and_then(said).is_none_or(|said| said != value)
                || self.active.as_ref() != Some(live)
        };
        match new.name() {
            Some("input") => {
                let live = live.unchecked_ref::<HtmlInputElement>();
                if let Some(value) = said(new)
                    && may_write(&value)
                    && live.value() != *value
                {
                    live.set_value(&value);
                }
                let checked = new.attribute("checked").is_some();
                if live.checked() != checked {
                    live.set_checked(checked);
                }
            }
            Some("textarea") => {
                let value = said(new).unwrap_or_default();
                let live = live.unchecked_ref::<HtmlTextAreaElement>();
                if may_write(&value) && live.value() != *value {
                    live.set_value(&value);
                }
            }
            Some("option") => {
                let live = live.unchecked_ref::<HtmlOptionElement>();
                let selected = new.attribute("selected").is_some();
                if live.selected() != selected {
                    live.set_selected(selected);
                }
            }
            _ => {}
        }
    }
}

/// What the model says that a field holds.
fn said(field: markup::Node<'_>) -> Option<Cow<'_, str>> {
    let said = match field.name() {
        Some("textarea") => {
            field.children().next().and_then(markup::Node::text).unwrap_or_default()
        }
        _ => field.attribute("value")?,
    };
    decode(said).ok()
}

fn attributes(live: &Element, old: Option<markup::Node>, new: markup::Node) -> Result<(), JsValue> {
    for (name, value) in new.attributes() {
        let before = old.and_then(|old| old.attribute(name));
        // Only what the browser's own writer wrote, at the very first, can mean the same otherwise.
        let is_same = before == Some(value) || before.is_some_and(|it| decode(it) == decode(value));
        if !is_same && (name != "open" || old.is_none()) {
            live.set_attribute(name, &decode(value).unwrap_or_default())?;
        }
    }
    for (name, _) in old.iter().flat_map(|old| old.attributes()) {
        if name != "open" && new.attribute(name).is_none() {
            live.remove_attribute(name)?;
        }
    }
    Ok(())
}

/// Those of an element and of all that is in it.
fn ids<'a>(node: markup::Node<'a>) -> impl Iterator<Item = &'a str> {
    node.all().filter_map(|inner| inner.attribute("id"))
}
