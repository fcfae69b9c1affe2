//! A picture to the texts of the codes in it. Nothing of it leaves the device.

use super::Desk;
use crate::app::App;
use crate::browser::settled;
use hangtrue_page::desk::Event;
use hangtrue_page::link::scan::Grey;
use js_sys::Function;
use std::rc::Rc;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{
    CanvasRenderingContext2d, File, HtmlCanvasElement, HtmlVideoElement, ImageBitmap, ImageData,
};

/// The longest side that is looked at: a photo of twelve megapixels has four thousand.
const LONGEST: f64 = 2000.0;

/// Opens the picture in `file`, and tells the desk what is in it.
pub(super) fn open(app: &Rc<App<Desk>>, file: &File) {
    let told = |codes: fn(&JsValue) -> Option<Vec<String>>| {
        let (app, name) = (Rc::clone(app), file.name());
        Closure::once_into_js(move |bitmap: JsValue| {
            let codes = codes(&bitmap);
            app.take(Event::Picture { name, codes });
        })
    };
    let Some(promise) =
        web_sys::window().and_then(|window| window.create_image_bitmap_with_blob(file).ok())
    else {
        app.take(Event::Picture { name: file.name(), codes: None });
        return;
    };
    settled(&promise, &told(in_bitmap), &told(|_| None));
}

fn in_bitmap(bitmap: &JsValue) -> Option<Vec<String>> {
    let bitmap = bitmap.dyn_ref::<ImageBitmap>()?;
    let (width, height) = (f64::from(bitmap.width()), f64::from(bitmap.height()));
    let scale = (LONGEST / width.max(height)).min(1.0);
    let (width, height) = (width * scale, height * scale);
    let context = canvas(width, height)?;
    let drawn = context.draw_image_with_image_bitmap_and_dw_and_dh(bitmap, 0.0, 0.0, width, height);
    drawn.ok()?;
    Some(codes(&context, width, height)?.codes())
}

/// What `video` shows at the moment, in grey, `width` wide; none before it shows anything.
pub(super) fn of_video(video: &HtmlVideoElement, width: f64) -> Option<Grey> {
    let (wide, high) = (f64::from(video.video_width()), f64::from(video.video_height()));
    if wide < 1.0 || high < 1.0 {
        return None;
    }
    let scale = (width / wide).min(1.0);
    let (width, height) = (wide * scale, high * scale);
    let context = canvas(width, height)?;
    let drawn =
        context.draw_image_with_html_video_element_and_dw_and_dh(video, 0.0, 0.0, width, height);
    drawn.ok()?;
    codes(&context, width, height)
}

fn canvas(width: f64, height: f64) -> Option<CanvasRenderingContext2d> {
    let canvas = web_sys::window()?.document()?.create_element("canvas").ok()?;
    let canvas = canvas.dyn_into::<HtmlCanvasElement>().ok()?;
    canvas.set_width(whole(width));
    canvas.set_height(whole(height));
    canvas.get_context("2d").ok()??.dyn_into().ok()
}

fn codes(context: &CanvasRenderingContext2d, width: f64, height: f64) -> Option<Grey> {
    let (width, height) = (whole(width), whole(height));
    let data: ImageData =
        context.get_image_data(0.0, 0.0, f64::from(width), f64::from(height)).ok()?;
    Grey::of_rgba(usize::try_from(width).ok()?, usize::try_from(height).ok()?, &data.data())
}

/// A side of a picture, at least one dot.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "1 to 2000")]
fn whole(side: f64) -> u32 {
    side.round().max(1.0) as u32
}

/// A function of one value that is called once, whatever comes of it.
pub(super) fn once(call: impl FnOnce(JsValue) + 'static) -> Function {
    Closure::once_into_js(call).unchecked_into()
}
