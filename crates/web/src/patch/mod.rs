//! Changes the live page into what the markup says, touching only what differs.
//!
//! Nodes are made with `createElementNS` and text nodes: the browser's markup parser is never asked,
//! so Trusted Types hold by construction, and text from a stranger can only ever become text.
//!
//! How a new element finds the live one it continues, in this order:
//! 1. by its own `id`, or its `data-key` among its siblings;
//! 2. having neither, by the first `id` inside it that is live in the same parent;
//! 3. by position: the next live element of that name that holds no `id` or `data-key` at all.
//!
//! So a thing whose state matters (a field, a scrolled list) has an `id`; then whatever comes or goes
//! around it, it stays the same node, and focus, caret, selection and a running IME composition stay
//! with it. Reordering moves the others around the element that has the focus.
//!
//! Each element's markup is remembered as a hash; where it is what it was, the patcher does not look
//! further, unless there is a field inside. So a keystroke costs what it changes, not what is shown;
//! and the children of the root are the patcher's alone: nobody else may change them.
//!
//! What belongs to the person:
//! * `value` of the field being typed in is set only when the model has *changed* its value since the
//!   last patch and the field does not show it already. The attribute `value` remembers what the model
//!   said last. An echo of the keystroke is therefore never written back, not even a late one, which
//!   would break a composition or move the caret. A field without the focus always shows the model.
//! * `checked` and `selected` follow the model.
//! * `open` (of `details`, `dialog`) is set when the element is made, and never again.

use wasm_bindgen::prelude::*;
use web_sys::{
    Document, Element, HtmlInputElement, HtmlOptionElement, HtmlTextAreaElement, Node, Text,
};

mod markup;

const HTML: &str = "http://www.w3.org/1999/xhtml";
const SVG: &str = "http://www.w3.org/2000/svg";

#[wasm_bindgen]
extern "C" {
    /// A document or a shadow root: what ids are unique in.
    type Scope;
    #[wasm_bindgen(method, js_name = getElementById)]
    fn by_id(this: &Scope, id: &str) -> Option<Element>;
    #[wasm_bindgen(method, getter, js_name = activeElement)]
    fn active(this: &Scope) -> Option<Element>;

    /// A `WeakMap` from an element to the hash of the markup it was last made to show.
    type Shown;
    #[wasm_bindgen(constructor, js_class = WeakMap)]
    fn new() -> Shown;
    /// Not a number, where there is none.
    #[wasm_bindgen(method)]
    fn get(this: &Shown, element: &Node) -> f64;
    #[wasm_bindgen(method)]
    fn set(this: &Shown, element: &Node, hash: f64);
}

thread_local! {
    static SHOWN: Shown = Shown::new();
}

/// Makes the children of `root` (an element or a shadow root) what `markup` says.
///
/// Markup that is not of the kind [`markup`] reads changes nothing; it is a mistake in a view, said
/// on the console, where the browser tests see it.
pub fn patch(root: &Node, markup: &str) {
    let nodes = match markup::parse(markup) {
        Ok(nodes) => nodes,
        Err(fault) => {
            let (what, at) = (JsValue::from(fault.what), JsValue::from(fault.at));
            return web_sys::console::error_3(&"the view wrote, before byte".into(), &at, &what);
        }
    };
    // Every node belongs to a document, but for the document itself.
    let Some(document) = root.owner_document() else { return };
    let scope: Scope = root.get_root_node().unchecked_into();
    let active = scope.active();
    SHOWN.with(|shown| {
        let patch = Patch { document, scope, active, shown };
        if let Err(error) = patch.children(root, &nodes, HTML) {
            web_sys::console::error_1(&error);
        }
    });
}

struct Patch<'a> {
    document: Document,
    scope: Scope,
    active: Option<Element>,
    shown: &'a Shown,
}

impl Patch<'_> {
    fn children(&self, parent: &Node, new: &[markup::Node], space: &str) -> Result<(), JsValue> {
        // The first live child that no new node has claimed yet.
        let mut here = parent.first_child();
        for node in new {
            match node {
                markup::Node::Text(text) => match here.take_if(|live| is_text(live)) {
                    Some(live) => {
                        here = live.next_sibling();
                        let live = live.unchecked_ref::<Text>();
                        if live.data() != *text {
                            live.set_data(text);
                        }
                    }
                    None => {
                        let made = self.document.create_text_node(text);
                        parent.insert_before(&made, here.as_ref())?;
                    }
                },
                markup::Node::Element(new) => {
                    let space = if new.name == "svg" { SVG } else { space };
                    if let Some(live) = here.take_if(|live| self.shows(live, new)) {
                        here = live.next_sibling();
                        if new.has_state {
                            self.element(live.unchecked_ref(), new, space)?;
                        }
                    } else if let Some(live) = self.claim(parent, &mut here, new)? {
                        self.element(&live, new, space)?;
                    } else {
                        let made = self.document.create_element_ns(Some(space), new.name)?;
                        self.element(&made, new, space)?;
                        parent.insert_before(&made, here.as_ref())?;
                    }
                }
            }
        }
        while let Some(gone) = here {
            here = gone.next_sibling();
            parent.remove_child(&gone)?;
        }
        Ok(())
    }

    fn shows(&self, live: &Node, new: &markup::Element) -> bool {
        self.shown.get(live).total_cmp(&new.hash.to_number()).is_eq()
    }

    /// The live child that `new` continues, brought to `here`; `here` then points behind it.
    fn claim(
        &self,
        parent: &Node,
        here: &mut Option<Node>,
        new: &markup::Element,
    ) -> Result<Option<Element>, JsValue> {
        let claimed = match self.by_identity(parent, here.as_ref(), new) {
            Some(live) => {
                self.bring(parent, here.take(), &live)?;
                Some(live)
            }
            None => by_position(parent, here, new)?,
        };
        if let Some(live) = &claimed {
            *here = live.next_sibling();
        }
        Ok(claimed)
    }

    fn by_identity(
        &self,
        parent: &Node,
        here: Option<&Node>,
        new: &markup::Element,
    ) -> Option<Element> {
        let fits = |live: &Element| {
            live.local_name() == new.name
                && live.get_attribute("id").as_deref() == new.attribute("id")
                && live.get_attribute("data-key").as_deref() == new.attribute("data-key")
        };
        if let Some(id) = new.attribute("id") {
            return self.child_with(parent, id).filter(fits);
        }
        if new.attribute("data-key").is_some() {
            let mut next = here.cloned();
            while let Some(live) = next {
                next = live.next_sibling();
                if let Some(live) = as_element(live).filter(fits) {
                    return Some(live);
                }
            }
            return None;
        }
        self.child_with_any(parent, &new.children).filter(fits)
    }

    /// The child of `parent` that holds the first live `id` of these nodes.
    fn child_with_any(&self, parent: &Node, nodes: &[markup::Node]) -> Option<Element> {
        nodes.iter().find_map(|node| match node {
            markup::Node::Text(_) => None,
            markup::Node::Element(new) => new
                .attribute("id")
                .and_then(|id| self.child_with(parent, id))
                .or_else(|| self.child_with_any(parent, &new.children)),
        })
    }

    /// The child of `parent` that has this `id` or holds the element that has.
    fn child_with(&self, parent: &Node, id: &str) -> Option<Element> {
        let mut live = self.scope.by_id(id)?;
        loop {
            let above = live.parent_node()?;
            if above == *parent {
                return Some(live);
            }
            live = as_element(above)?;
        }
    }

    /// Puts `live` where `here` is. A node that is moved loses the focus inside it, so the one with
    /// the focus stays and those before it go round to the end.
    fn bring(&self, parent: &Node, here: Option<Node>, live: &Node) -> Result<(), JsValue> {
        if here.as_ref() == Some(live) {
            return Ok(());
        }
        if !live.contains(self.active.as_deref()) {
            return parent.insert_before(live, here.as_ref()).map(drop);
        }
        let mut next = here;
        while let Some(other) = next.filter(|other| other != live) {
            next = other.next_sibling();
            parent.append_child(&other)?;
        }
        Ok(())
    }

    fn element(&self, live: &Element, new: &markup::Element, space: &str) -> Result<(), JsValue> {
        let said = match new.name {
            "input" => live.get_attribute("value"),
            "textarea" => live.text_content(),
            _ => None,
        };
        if !self.shows(live, new) {
            attributes(live, new)?;
            self.shown.set(live, new.hash.to_number());
        } else if !new.has_state {
            return Ok(());
        }
        let space = if new.name == "foreignObject" { HTML } else { space };
        self.children(live, &new.children, space)?;
        // What the model says is written over what the person typed only if it says something new.
        let may_write =
            |value: &str| said.as_deref() != Some(value) || self.active.as_ref() != Some(live);
        match new.name {
            "input" => {
                let live = live.unchecked_ref::<HtmlInputElement>();
                if let Some(value) = new.attribute("value")
                    && live.value() != value
                    && may_write(value)
                {
                    live.set_value(value);
                }
                let checked = new.attribute("checked").is_some();
                if live.checked() != checked {
                    live.set_checked(checked);
                }
            }
            "textarea" => {
                let value = live.text_content().unwrap_or_default();
                let live = live.unchecked_ref::<HtmlTextAreaElement>();
                if live.value() != value && may_write(&value) {
                    live.set_value(&value);
                }
            }
            "option" => {
                let live = live.unchecked_ref::<HtmlOptionElement>();
                let selected = new.attribute("selected").is_some();
                if live.selected() != selected {
                    live.set_selected(selected);
                }
            }
            _ => {}
        }
        Ok(())
    }
}

fn attributes(live: &Element, new: &markup::Element) -> Result<(), JsValue> {
    let is_made = live.parent_node().is_none();
    for (name, value) in &new.attributes {
        if (*name != "open" || is_made) && live.get_attribute(name).as_deref() != Some(value) {
            live.set_attribute(name, value)?;
        }
    }
    if live.attributes().length() as usize == new.attributes.len() {
        return Ok(());
    }
    for name in live.get_attribute_names() {
        if let Some(name) = name.as_string()
            && name != "open"
            && new.attribute(&name).is_none()
        {
            live.remove_attribute(&name)?;
        }
    }
    Ok(())
}

/// The next live element, if nothing says that it is another one. Text before it is dropped: it has
/// no state, and is made anew where it is needed.
fn by_position(
    parent: &Node,
    here: &mut Option<Node>,
    new: &markup::Element,
) -> Result<Option<Element>, JsValue> {
    while let Some(text) = here.take_if(|live| !is_element(live)) {
        *here = text.next_sibling();
        parent.remove_child(&text)?;
    }
    let named = "[id], [data-key]";
    let is_named = new.attribute("id").or(new.attribute("data-key")).is_some();
    let Some(live) = here.clone().and_then(as_element).filter(|_| !is_named) else {
        return Ok(None);
    };
    let fits = live.local_name() == new.name
        && !live.matches(named)?
        && live.query_selector(named)?.is_none();
    Ok(fits.then_some(live))
}

fn as_element(node: Node) -> Option<Element> {
    is_element(&node).then(|| node.unchecked_into())
}

fn is_element(node: &Node) -> bool {
    node.node_type() == Node::ELEMENT_NODE
}

fn is_text(node: &Node) -> bool {
    node.node_type() == Node::TEXT_NODE
}
