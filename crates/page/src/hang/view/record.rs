//! The record: what it holds, its link, its sticker.

use super::care::all_due;
use super::parts;
use super::{inspection, paper};
use crate::hang::event::Action;
use crate::hang::model::Model;
use crate::hang::work::turns_text;
use crate::view::parts::pick;
use hangtrue_core::Dimension;
use hangtrue_link::qr::{Qr, Surface};
use hangtrue_link::record::url;
use maud::{Markup, PreEscaped, html};

pub(super) fn view(model: &Model) -> Markup {
    let text = &model.words().record;
    let link = url(&model.environment.base, &model.record);
    html! {
        form {
            (parts::heading(text.heading))
            p.lede { (text.lede) }
            div.fields {
                (parts::field(model, "serial", text.serial, ""))
                (parts::field(model, "hung", model.words().care.hung, model.words().care.day_hint))
            }
            div.columns {
                section {
                    h2 { (text.holds) }
                    (rows(model))
                    (inspection::outcome(model))
                }
                @match &link {
                    Ok(link) => {
                        (ways(model, link))
                    }
                    Err(error) => {
                        @let advice = hangtrue_link::say::encode(model.speaker().language, *error);
                        div.summary.stop { p { (advice.what) " " (advice.ask) } }
                    }
                }
            }
        }
        @if let Ok(link) = &link { (paper::printed(model, link)) }
    }
}

/// What the record says, a row each; what was not noted says so.
pub(super) fn rows(model: &Model) -> Markup {
    let text = &model.words().record;
    let record = &model.record;
    let numbers = model.numbers();
    let opening: Vec<String> = [Dimension::Width, Dimension::Height]
        .into_iter()
        .filter_map(|dimension| numbers.ordered(dimension))
        .map(|length| model.speaker().length(length))
        .collect();
    let due = all_due(model).and_then(|all| {
        all.first()
            .map(|one| [(model.words().care.work)(one.work), ", ", &parts::whole(one.day)].concat())
    });
    let done = record.inspection.done();
    let values = [
        Some(record.order.vehicle.clone()),
        Some(opening.join(" × ")),
        record.turns.map(|turns| turns_text(turns.turns())),
        record.weight.map(|weight| model.told_weight(weight)),
        record.hung.map(parts::whole),
        (done > 0).then(|| (model.words().inspection.done)(done, record.inspection.0.len())),
        due,
    ];
    html! {
        ul.rows {
            @for (name, value) in text.rows.into_iter().zip(values) {
                @let value = value.filter(|value| !value.is_empty());
                li {
                    span { (name) }
                    b { (value.as_deref().unwrap_or(text.none)) }
                }
            }
        }
    }
}

fn ways(model: &Model, link: &str) -> Markup {
    let text = &model.words().record;
    let chosen = paper::chosen(model);
    let options: Vec<(&str, &str)> = paper::FORMS.into_iter().zip(text.forms).collect();
    html! {
        section {
            h2 { (text.code) }
            @match code(model, link, Surface::Screen) {
                Some(code) => { figure.record-code { (code) } }
                None => { p { (text.too_long) } }
            }
            p { (text.stick) }
            div.picks { (pick("print", text.what, &options, chosen)) }
            button.primary type="button" data-act=(Action::Print.code()) { (text.print) }
            div.actions {
                @if model.environment.can_share {
                    (parts::button(&Action::Share, text.share))
                }
                (parts::button(&Action::Copy, text.copy))
                a.button download="door-record.json" href=(file(model)) { (text.file) }
            }
            p.hint role="status" {
                @match model.copied {
                    Some(true) => (text.copied[0]),
                    Some(false) => (text.copied[1]),
                    None => {},
                }
            }
            h2 { (text.link) }
            p { a.url href=(link) { (link) } }
            p.hint { (text.lasting) }
        }
    }
}

/// The record's file in an address: downloading it asks nothing of any server.
fn file(model: &Model) -> String {
    let mut address = "data:application/json,".to_owned();
    for byte in hangtrue_link::json::record::text(&model.record).bytes() {
        if byte.is_ascii_alphanumeric() || b"-_.~".contains(&byte) {
            address.push(char::from(byte));
        } else {
            address.push('%');
            for half in [byte >> 4, byte & 15] {
                address.extend(char::from_digit(u32::from(half), 16));
            }
        }
    }
    address
}

/// The link as a picture; none where it is too long for one.
pub(super) fn code(model: &Model, link: &str, surface: Surface) -> Option<Markup> {
    Some(PreEscaped(Qr::new(link, surface)?.svg(model.words().record.code)))
}
