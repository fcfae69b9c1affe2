//! Long work in short slices: the page answers in between.

use super::Desk;
use crate::app::App;
use gloo::events::EventListener;
use hangtrue_page::desk::{Effect, Event};
use std::cell::{Cell, OnceCell};
use std::rc::Rc;
use wasm_bindgen::JsValue;
use web_sys::MessageChannel;

/// How long a slice takes, in ms. With what it draws it is done well within the 50 ms from
/// which a person waits.
const SLICE_MS: f64 = 12.0;

thread_local! {
    /// A message to oneself comes behind whatever a person did meanwhile. A timer would do
    /// too, but browsers let those of a tab that is not in front run once a second.
    static NEXT: OnceCell<Option<Next>> = const { OnceCell::new() };
    /// Whether a slice is on its way.
    static ASKED: Cell<bool> = const { Cell::new(false) };
}

struct Next {
    channel: MessageChannel,
    _heard: EventListener,
}

/// Asks for a slice, once whatever else waits has had its turn.
pub(super) fn go_on(app: &Rc<App<Desk>>) {
    if ASKED.replace(true) {
        return;
    }
    NEXT.with(|next| {
        if let Some(next) = next.get_or_init(|| listen(app)) {
            let _ = next.channel.port2().post_message(&JsValue::NULL);
        }
    });
}

fn listen(app: &Rc<App<Desk>>) -> Option<Next> {
    let channel = MessageChannel::new().ok()?;
    let app = Rc::clone(app);
    let heard = EventListener::new(&channel.port1(), "message", move |_| slice(&app));
    channel.port1().start();
    Some(Next { channel, _heard: heard })
}

/// Works until the time is over or nothing is left to do, then shows how far it came.
fn slice(app: &Rc<App<Desk>>) {
    ASKED.set(false);
    let end = now() + SLICE_MS;
    let mut asked = Vec::new();
    loop {
        let (more, other): (Vec<_>, Vec<_>) =
            app.update(Event::Work).into_iter().partition(|effect| *effect == Effect::Work);
        asked.extend(other);
        if more.is_empty() {
            break;
        }
        if now() >= end {
            asked.extend(more);
            break;
        }
    }
    app.draw();
    app.carry_out(asked);
}

/// Milliseconds by a clock that only goes forward.
fn now() -> f64 {
    let clock = web_sys::window().and_then(|window| window.performance());
    // Without a clock every slice is one piece of work.
    clock.map_or(f64::INFINITY, |clock| clock.now())
}
