//! A dealer's colours, as custom properties of the element the survey stands in.
//!
//! They are set through the object model, which no `style-src` forbids. The sheet takes
//! the host page's own properties before these.

use hangtrue_page::core::profile::{Colour, Palette, Profile};
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement};

/// Sets the colours of `profile` on `root`; takes away those it does not have.
pub(super) fn colour(root: &Element, profile: &Profile) {
    let Some(root) = root.dyn_ref::<HtmlElement>() else { return };
    for (scheme, palette) in [("light", &profile.light), ("dark", &profile.dark)] {
        for (name, colour) in named(palette.as_ref()) {
            let property = ["--dealer-", scheme, "-", name].concat();
            let _ = match colour {
                Some(colour) => root.style().set_property(&property, &colour.to_string()),
                None => root.style().remove_property(&property).map(|_| ()),
            };
        }
    }
}

fn named(palette: Option<&Palette>) -> [(&'static str, Option<Colour>); 5] {
    [
        ("ink", palette.map(|palette| palette.ink)),
        ("paper", palette.map(|palette| palette.paper)),
        ("accent", palette.map(|palette| palette.accent)),
        ("on-accent", palette.map(|palette| palette.on_accent)),
        ("stop", palette.map(|palette| palette.stop.unwrap_or(palette.ink))),
    ]
}
