//! The link as a picture: for another phone's camera, and on the print sheet.

use super::{Scene, parts, send};
use hangtrue_link::qr::{Qr, Surface};
use maud::{Markup, PreEscaped, html};

/// The picture as large as the screen allows.
pub(super) fn view(scene: Scene<'_>) -> Markup {
    let text = &scene.later().handover.picture;
    html! {
        (parts::heading(text.heading))
        @match send::message(scene) {
            Ok(message) => {
                @match picture(scene, &message.link, Surface::Screen) {
                    Some(svg) => { figure.qr { (svg) } p.lede { (text.lede) } }
                    None => { p.lede { (text.too_long) } }
                }
            }
            Err(why) => (why),
        }
    }
}

/// Black on white in any colour scheme; none where the link is too long for a picture.
pub(super) fn picture(scene: Scene<'_>, link: &str, surface: Surface) -> Option<Markup> {
    let qr = Qr::new(link, surface)?;
    Some(PreEscaped(qr.svg(scene.later().handover.picture.title)))
}
