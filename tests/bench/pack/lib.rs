//! Pack and QR code of an order alone, callable from a page: for `cargo xtask bench page`.

use hangtrue_core::order::Order;
use hangtrue_link::json;
use hangtrue_link::qr::{Qr, Surface};
use wasm_bindgen::prelude::wasm_bindgen;

/// An order as the page holds it.
#[derive(Debug)]
#[wasm_bindgen]
pub struct Packer {
    order: Order,
}

#[wasm_bindgen]
impl Packer {
    /// The order of a survey file's text; [`None`] when it is none.
    #[must_use]
    pub fn read(survey: &str, vehicle: &str, note: &str) -> Option<Self> {
        let survey = json::parse(survey).ok()?.survey;
        let (vehicle, note) = (vehicle.to_owned(), note.to_owned());
        Some(Self { order: Order { survey, vehicle, note, ..Order::default() } })
    }

    /// Its link in the page at `base`; empty when it cannot be written.
    #[must_use]
    pub fn link(&self, base: &str) -> String {
        hangtrue_link::url(base, &self.order).unwrap_or_default()
    }

    /// Its link's QR code for a screen, as SVG; empty when there is none.
    #[must_use]
    pub fn picture(&self, base: &str) -> String {
        let code = Qr::new(&self.link(base), Surface::Screen);
        code.map_or_else(String::new, |code| code.svg("Order"))
    }
}
