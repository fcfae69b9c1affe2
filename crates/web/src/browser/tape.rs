//! The tape picture as an input: a thumb drags it, arrow keys step it.
//!
//! The picture says how much tape it shows and how far its marks lie apart; here that
//! becomes a number of marks, and the page says what they mean.

use super::events::{at, target};
use crate::app::{App, Program};
use hangtrue_page::Event;
use std::cell::Cell;
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlInputElement, PointerEvent};

/// A tape under a thumb.
struct Drag {
    /// The reading's field.
    name: String,
    /// What stood there.
    before: String,
    /// The pointer.
    id: i32,
    /// Where it came down, in CSS px.
    from: [f64; 2],
    /// CSS px between two marks.
    mark: f64,
    /// The marks told so far; none until the thumb goes along the tape.
    told: Option<i64>,
}

/// How far along the tape a thumb goes, in CSS px, before it is no longer one that scrolls the page.
const ALONG: f64 = 6.0;

/// Listens at the root.
pub(super) fn listen<P: Program>(app: &Rc<App<P>>) {
    let root = app.root();
    let drag: Rc<Cell<Option<Drag>>> = Rc::default();
    let begun = Rc::clone(&drag);
    at(app, root, "pointerdown", move |app, event| {
        let (Some(tape), Some(pointer)) = (tape(event), event.dyn_ref::<PointerEvent>()) else {
            return;
        };
        let begin = || {
            let (mark, name) = (mark_px(&tape)?, tape.get_attribute("data-tape")?);
            let before = app.browser().element(&name)?.unchecked_into::<HtmlInputElement>().value();
            let (id, from) = (pointer.pointer_id(), place(pointer));
            // The thumb may leave the picture and still holds the tape.
            let _ = tape.set_pointer_capture(id);
            Some(Drag { name, before, id, from, mark, told: None })
        };
        begun.set(begin());
    });
    let moved = Rc::clone(&drag);
    at(app, root, "pointermove", move |app, event| {
        let (Some(pointer), Some(mut now)) = (event.dyn_ref::<PointerEvent>(), moved.take()) else {
            return;
        };
        let slide = (pointer.pointer_id() == now.id).then(|| now.slide(place(pointer))).flatten();
        let name = now.name.clone();
        moved.set(Some(now));
        if let Some(marks) = slide {
            app.take(Event::Slide { name, marks });
        }
    });
    let ended = Rc::clone(&drag);
    at(app, root, "pointerup", move |_, _| ended.set(None));
    // The browser has taken it for scrolling: the reading is what it was.
    at(app, root, "pointercancel", move |app, _| {
        if let Some(Drag { name, before, told: Some(_), .. }) = drag.take() {
            app.take(Event::Input { name, value: before });
        }
    });
}

impl Drag {
    /// By how many marks the tape has moved since it was told, with the thumb at `to`.
    fn slide(&mut self, to: [f64; 2]) -> Option<i64> {
        let ([x, y], [from_x, from_y]) = (to, self.from);
        // The tape goes left, longer readings come under the arrow.
        let along = from_x - x;
        let told = match self.told {
            None if along.abs() < ALONG.max((from_y - y).abs()) => return None,
            told => told.unwrap_or(0),
        };
        let off = along / self.mark;
        #[expect(clippy::cast_possible_truncation, reason = "a screen has few marks")]
        let marks = (off + if off < 0.0 { -0.5 } else { 0.5 }) as i64;
        self.told = Some(marks);
        Some(marks.saturating_sub(told)).filter(|by| *by != 0)
    }
}

/// What a key does to the tape that has the focus.
pub(super) fn step(on: &Element, key: &str) -> Option<Event> {
    let marks = match key {
        "ArrowRight" | "ArrowUp" => 1,
        "ArrowLeft" | "ArrowDown" => -1,
        "PageUp" => 10,
        "PageDown" => -10,
        _ => return None,
    };
    Some(Event::Slide { name: on.get_attribute("data-tape")?, marks })
}

/// Where a pointer is, in CSS px.
fn place(pointer: &PointerEvent) -> [f64; 2] {
    [pointer.client_x(), pointer.client_y()].map(f64::from)
}

/// The tape picture around the event's target.
fn tape(event: &web_sys::Event) -> Option<Element> {
    target(event)?.closest("[data-tape]").ok()?
}

/// CSS px between two marks, by the picture's present width.
fn mark_px(tape: &Element) -> Option<f64> {
    // Whole nanometres: the reader of floats alone is 10 KB.
    let number = |name| tape.get_attribute(name)?.parse::<u32>().ok().map(f64::from);
    let (across, mark) = (number("data-across")?, number("data-mark")?);
    let px = tape.get_bounding_client_rect().width() * mark / across;
    (px.is_finite() && px > 0.0).then_some(px)
}
