//! The fields that are typed in while the caller speaks.

use super::Scene;
use crate::desk::ask::said_as;
use crate::desk::event::Action;
use crate::field::Field;
use crate::view::in_the_other_unit;
use crate::view::parts::pick;
use hangtrue_core::{Entry, Unit};
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let phone = &scene.model.phone;
    let text = &scene.desk().phone;
    let units = [("in", text.inches), ("mm", text.millimetres)];
    let built = [("no", text.as_it_is), ("yes", text.as_it_will_be)];
    html! {
        form.phone data-act="next" aria-labelledby="phone-heading" {
            h2 #phone-heading { (text.heading) }
            div.picks {
                (pick("unit", text.unit, &units, phone.survey.unit.key()))
                (pick("built", text.frame, &built, if phone.survey.prepared { "yes" } else { "no" }))
            }
            div.fields {
                @for field in phone.fields(scene.ask) { (line(scene, field)) }
            }
            div.row {
                // Enter in a field sends the form: the button says where to.
                button type="submit" { (text.next) }
                @if phone.begun() {
                    button type="button" data-act=(Action::Keep.code()) { (text.keep) }
                }
                button.quiet type="button" data-act=(Action::Fresh.code()) { (text.fresh) }
                @if scene.model.can_go_back() {
                    button.quiet type="button" data-act=(Action::Before.code()) { (text.before) }
                }
            }
            p.hint {
                (match phone.survey.unit {
                    Unit::Inch => scene.text().field.hint_inch,
                    Unit::Millimetre => scene.text().field.hint_millimetre,
                })
            }
        }
    }
}

/// The name of a field: the dimension where it is said without a place.
pub(super) fn name(scene: Scene<'_>, field: Field) -> &'static str {
    let speaker = scene.model.speaker();
    match said_as(field.spot) {
        Some(dimension) => speaker.dimension(dimension),
        None => speaker.spot(field.spot),
    }
}

/// A field with its name before it and its echo behind it.
fn line(scene: Scene<'_>, field: Field) -> Markup {
    let id = field.name();
    let phone = &scene.model.phone;
    let entry = phone.survey.entries(field.spot).get(field.index);
    let bad = entry.is_some_and(|entry| !entry.is_blank() && entry.read.is_err());
    let wanted = phone.wanted(scene.ask) == Some(field);
    html! {
        div.field.bad[bad].wanted[wanted] data-key=(id) {
            label for=(id) {
                (name(scene, field))
                @if field.index > 0 { " " (scene.desk().phone.again) }
            }
            div.entry {
                input id=(id) name=(id) value=(phone.typed(field)) type="text" inputmode="text"
                    spellcheck="false" autocomplete="off" autocapitalize="off" autocorrect="off"
                    enterkeyhint="next" maxlength="120" aria-describedby={ (id) "-echo" }
                    aria-invalid=[bad.then_some("true")];
                span.unit aria-hidden="true" { (scene.model.speaker().language.unit(phone.survey.unit)) }
            }
            p.echo id={ (id) "-echo" } { (echo(scene, entry)) }
        }
    }
}

/// The reading in both units, as it is understood; or that it is not.
fn echo(scene: Scene<'_>, entry: Option<&Entry>) -> Markup {
    let speaker = scene.model.speaker();
    html! {
        @match entry.map(|entry| &entry.read) {
            Some(Ok(length)) => {
                b { (speaker.length(*length)) } (in_the_other_unit(speaker, *length))
            },
            Some(Err(_)) if entry.is_some_and(|entry| !entry.is_blank()) => (scene.desk().phone.unread),
            _ => {},
        }
    }
}
