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
use web_sys::{Element, KeyboardEvent, PointerEvent};

/// A tape under a thumb.
#[derive(Clone, Copy)]
struct Drag {
    /// The pointer.
    id: i32,
    /// Where it came down, in CSS px.
    from: f64,
    /// CSS px between two marks.
    mark: f64,
    /// The marks told so far.
    told: i64,
}

/// Listens at the root.
pub(super) fn listen<P: Program>(app: &Rc<App<P>>) {
    let root = app.root();
    let drag: Rc<Cell<Option<Drag>>> = Rc::default();
    let begun = Rc::clone(&drag);
    at(app, root, "pointerdown", move |_, event| {
        let (Some(tape), Some(pointer)) = (tape(event), event.dyn_ref::<PointerEvent>()) else {
            return;
        };
        if let Some(mark) = mark_px(&tape) {
            let (id, from) = (pointer.pointer_id(), f64::from(pointer.client_x()));
            begun.set(Some(Drag { id, from, mark, told: 0 }));
            // The thumb may leave the picture and still holds the tape.
            let _ = tape.set_pointer_capture(id);
        }
    });
    let moved = Rc::clone(&drag);
    at(app, root, "pointermove", move |app, event| {
        let (Some(pointer), Some(now)) = (event.dyn_ref::<PointerEvent>(), moved.get()) else {
            return;
        };
        let Some(name) = tape(event).and_then(|tape| tape.get_attribute("data-tape")) else {
            return;
        };
        if pointer.pointer_id() != now.id {
            return;
        }
        // The tape goes left, longer readings come under the arrow.
        let off = (now.from - f64::from(pointer.client_x())) / now.mark;
        #[expect(clippy::cast_possible_truncation, reason = "a screen has few marks")]
        let marks = (off + if off < 0.0 { -0.5 } else { 0.5 }) as i64;
        if marks != now.told {
            moved.set(Some(Drag { told: marks, ..now }));
            app.take(Event::Slide { name, marks: marks.saturating_sub(now.told) });
        }
    });
    for end in ["pointerup", "pointercancel"] {
        let ended = Rc::clone(&drag);
        at(app, root, end, move |_, _| ended.set(None));
    }
    at(app, root, "keydown", |app, event| {
        let (Some(tape), Some(key)) = (tape(event), event.dyn_ref::<KeyboardEvent>()) else {
            return;
        };
        let marks = match key.key().as_str() {
            "ArrowRight" | "ArrowUp" => 1,
            "ArrowLeft" | "ArrowDown" => -1,
            "PageUp" => 10,
            "PageDown" => -10,
            _ => return,
        };
        if let Some(name) = tape.get_attribute("data-tape") {
            event.prevent_default();
            app.take(Event::Slide { name, marks });
        }
    });
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
