//! The order and the ways to hand it over.

use super::{Scene, dealer, judge, order, parts, picture, print, summary};
use crate::address::HANG_PAGE;
use crate::event::Action;
use crate::message::Message;
use crate::problems::problems;
use crate::step::Step;
use hangtrue_core::profile::dialled;
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let text = &scene.later().send;
    let model = scene.model;
    let ready = model.against(scene.report).is_empty();
    html! {
        form {
            (parts::heading(text.heading))
            @if ready {
                p.lede { (text.lede) }
                (dealer::says(scene, &model.profile.send))
                div.columns {
                    (order::numbers(scene))
                    (picture::order(scene))
                }
                div.columns {
                    div.lines {
                        (parts::line(scene, "vehicle", text.vehicle, &model.order.vehicle))
                        (parts::line(scene, "note", text.note, &model.order.note))
                        (parts::line(scene, "contact", text.contact, &model.order.contact))
                    }
                    (ways(scene))
                }
                (order::found(scene))
                (judge::unseen(scene))
            } @else {
                (not_yet(scene))
            }
            p { (parts::quiet(&Action::Restart.code(), scene.text().button.restart)) }
        }
        @if ready { (print::sheet(scene, &model.sent(scene.report.verdict))) }
    }
}

/// That there is no link yet, and the ways to what stands against it.
pub(super) fn not_yet(scene: Scene<'_>) -> Markup {
    let against = problems(scene.model, scene.report);
    html! {
        p.lede { (scene.later().send.not_yet) }
        (summary(Scene { problems: &against, ..scene }))
        a.button.primary href={ "#/" (Step::Check.slug()) } { (scene.later().check.heading) }
    }
}

/// The message of the order, or why there is none.
pub(super) fn message(scene: Scene<'_>) -> Result<Message, Markup> {
    let model = scene.model;
    if !model.against(scene.report).is_empty() {
        return Err(not_yet(scene));
    }
    Message::of(model, scene.report).map_err(|error| {
        let advice = hangtrue_link::say::encode(model.speaker().language, error);
        html! { p.summary.stop { (advice.what) " " (advice.ask) } }
    })
}

fn ways(scene: Scene<'_>) -> Markup {
    let text = &scene.later().handover;
    let model = scene.model;
    let message = match message(scene) {
        Ok(message) => message,
        Err(why) => return why,
    };
    let to = &model.profile.contact;
    let heading = if to.is_empty() {
        text.ways.to_owned()
    } else {
        (scene.later().dealer.send_to)(&model.profile.name)
    };
    let (first, second) = if model.environment.can_share {
        (Action::Share, Some(Action::Copy))
    } else {
        (Action::Copy, None)
    };
    html! {
        section.link {
            h2 { (heading) }
            @if let Some(number) = &message.number {
                p { ((scene.later().dealer.number)(number)) }
            }
            @if let Some(page) = message.page(to) {
                a.button.primary href=(page) { ((scene.later().dealer.page)(&model.profile.name)) }
            }
            // No submit button: Enter in a line above must not send anything.
            button.primary[to.page.is_empty()] type="button" data-act=(first.code()) {
                (word(scene, &first))
            }
            div.actions {
                @if let Some(second) = second { (parts::button(&second, word(scene, &second))) }
                a.button href=(message.mailto(to, &model.order.vehicle)) { (text.mail) }
                a.button href=(message.sms(to)) { (text.sms) }
                @if !to.phone.is_empty() {
                    a.button href={ "tel:" (dialled(&to.phone)) } { ((scene.later().dealer.call)(&to.phone)) }
                }
                a.button href={ "#/" (Step::Scan.slug()) } { (text.scan) }
                a.button href={ "#/" (Step::Voice.slug()) } { (text.say) }
                (parts::button(&Action::Print, scene.text().button.print))
                (parts::button(&Action::SaveFile, text.save_file))
            }
            p.hint role="status" {
                @match model.copied {
                    Some(true) => (scene.later().send.copied),
                    Some(false) => (text.by_hand),
                    None => {},
                }
            }
            @if model.copied == Some(false) {
                // Taken as it is: what is copied is what is sent.
                p.url #by-hand tabindex="0" { code { (message.text()) } }
            }
            p { a.url href=(message.link) { (message.link) } }
            (parts::quiet(&Action::CopyLink.code(), text.copy_link))
            p.hint { (scene.later().send.lasting) }
            @if let Some(address) = hanging(&message.link) {
                p { a.alone href=(address) { (text.hang) } }
            }
        }
    }
}

/// The order's link in the page that hangs the door: beside the walk, where that stands in
/// a folder of its own; none where it is a guest in another page.
fn hanging(link: &str) -> Option<String> {
    let (base, payload) = link.split_once('#')?;
    let folder = base.strip_suffix("index.html").unwrap_or(base);
    folder.ends_with('/').then(|| [folder, HANG_PAGE, "#", payload].concat())
}

fn word(scene: Scene<'_>, action: &Action) -> &'static str {
    match action {
        Action::Share => scene.text().button.share,
        _ => scene.later().handover.copy,
    }
}
