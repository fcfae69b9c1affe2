//! The order and its link.

use super::{Scene, judge, order, parts, picture, print};
use crate::event::Action;
use crate::step::Step;
use crate::text::TEXT;
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let text = &TEXT.send;
    let model = scene.model;
    let ready = model.against(scene.report).is_empty();
    html! {
        form data-act="copy" {
            (parts::heading(text.heading))
            @if ready {
                p.lede { (text.lede) }
                div.columns {
                    (order::numbers(scene))
                    (picture::order(scene))
                }
                div.lines {
                    (parts::line("vehicle", text.vehicle, text.optional, &model.order.vehicle))
                    (parts::line("note", text.note, text.optional, &model.order.note))
                    (parts::line("contact", text.contact, text.optional, &model.order.contact))
                }
                (link(scene))
                (order::findings(scene, false))
                (judge::unseen(scene))
            } @else {
                p.lede { (text.not_yet) }
                p { (parts::to(Step::Check, TEXT.check.heading)) }
            }
            p { (parts::quiet(&Action::Restart.code(), TEXT.button.restart)) }
        }
        @if ready { (print::sheet(scene, &model.sent(scene.report.verdict))) }
    }
}

fn link(scene: Scene<'_>) -> Markup {
    let text = &TEXT.send;
    let model = scene.model;
    let sent = model.sent(scene.report.verdict);
    let url = match hangtrue_link::url(&model.environment.base, &sent) {
        Ok(url) => url,
        Err(error) => {
            let advice = hangtrue_link::say::encode(model.speaker().language, error);
            return html! { p.summary.stop { (advice.what) " " (advice.ask) } };
        }
    };
    html! {
        section.link {
            h2 { (text.link) }
            p { a.url href=(url) { (url) } }
            div.actions {
                button.primary type="submit" { (TEXT.button.copy) }
                @if model.environment.can_share {
                    (parts::button(&Action::Share, TEXT.button.share))
                }
                (parts::button(&Action::Print, TEXT.button.print))
            }
            p.hint role="status" {
                @match model.copied {
                    Some(true) => (text.copied),
                    Some(false) => (TEXT.handover.by_hand),
                    None => {},
                }
            }
            p.hint { (text.lasting) }
        }
    }
}
