//! The camera, until it has seen a code.

use super::Desk;
use super::picture::{of_video, once};
use crate::app::App;
use crate::browser::settled;
use gloo::timers::callback::Timeout;
use hangtrue_page::desk::{Camera, Event};
use js_sys::{Object, Promise, Reflect};
use std::cell::RefCell;
use std::rc::Rc;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{
    DomException, HtmlVideoElement, MediaStream, MediaStreamConstraints, MediaStreamTrack,
};

/// Between two looks: a code is found at once, and the page stays awake.
const LOOK_MS: u32 = 200;
/// How wide the picture is that is looked at.
const WIDTH: f64 = 800.0;

thread_local! {
    /// What is running: the camera's stream, and the next look.
    static RUNNING: RefCell<Option<Running>> = const { RefCell::new(None) };
}

struct Running {
    stream: MediaStream,
    _next: Timeout,
}

/// Asks for the camera, shows it in the `video` of this id, and looks for codes.
pub(super) fn look(app: &Rc<App<Desk>>, video: &'static str) {
    let Some(promise) = ask() else {
        app.take(Event::Camera(Camera::Missing));
        return;
    };
    let (looks, refused) = (Rc::clone(app), Rc::clone(app));
    let granted = once(move |stream: JsValue| {
        if let Ok(stream) = stream.dyn_into::<MediaStream>() {
            begin(&looks, video, stream);
        }
    });
    let failed = once(move |error: JsValue| {
        let name = error.dyn_ref::<DomException>().map(DomException::name).unwrap_or_default();
        let refusal = matches!(name.as_str(), "NotAllowedError" | "SecurityError");
        let camera = if refusal { Camera::Refused } else { Camera::Missing };
        refused.take(Event::Camera(camera));
    });
    settled(&promise, &granted, &failed);
}

/// None where there is nothing to ask: no camera is offered where a page is not served
/// securely.
fn ask() -> Option<Promise> {
    let navigator = web_sys::window()?.navigator();
    let has = Reflect::get(&navigator, &JsValue::from_str("mediaDevices")).ok()?;
    if !has.is_object() {
        return None;
    }
    let back = Object::new();
    Reflect::set(&back, &"facingMode".into(), &"environment".into()).ok()?;
    let constraints = MediaStreamConstraints::new();
    constraints.set_video(&back);
    navigator.media_devices().ok()?.get_user_media_with_constraints(&constraints).ok()
}

fn begin(app: &Rc<App<Desk>>, id: &'static str, stream: MediaStream) {
    let video = app.browser().element(id).and_then(|v| v.dyn_into::<HtmlVideoElement>().ok());
    let Some(video) = video else {
        // The clerk has turned away while the browser asked.
        stop(&stream);
        return;
    };
    video.set_src_object(Some(&stream));
    if let Ok(playing) = video.play() {
        settled(&playing, &once(|_| ()), &once(|_| ()));
    }
    app.take(Event::Camera(Camera::On));
    again(app, id, stream);
}

fn again(app: &Rc<App<Desk>>, id: &'static str, stream: MediaStream) {
    // The same stream: a method of that name would open a second one.
    let (app, looked_at) = (Rc::clone(app), Clone::clone(&stream));
    let next = Timeout::new(LOOK_MS, move || {
        let video = app.browser().element(id).and_then(|v| v.dyn_into::<HtmlVideoElement>().ok());
        let Some(video) = video else {
            look_away();
            return;
        };
        let codes = of_video(&video, WIDTH).map(|picture| picture.codes()).unwrap_or_default();
        if codes.is_empty() {
            again(&app, id, looked_at);
        } else {
            look_away();
            app.take(Event::Picture { name: String::new(), codes: Some(codes) });
        }
    });
    RUNNING.replace(Some(Running { stream, _next: next }));
}

/// Lets go of the camera.
pub(super) fn look_away() {
    if let Some(running) = RUNNING.take() {
        stop(&running.stream);
    }
}

fn stop(stream: &MediaStream) {
    for track in stream.get_tracks() {
        if let Ok(track) = track.dyn_into::<MediaStreamTrack>() {
            track.stop();
        }
    }
}
