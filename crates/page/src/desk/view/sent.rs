//! Orders that were sent: opened, compared with what is said, compared with each other.

use super::Scene;
use crate::address;
use crate::desk::event::{Action, Camera};
use crate::desk::model::Model;
use crate::desk::sent::{Sent, Trouble};
use crate::desk::update::CAMERA;
use crate::file::Format;
use crate::text::desk::Desk;
use crate::view::parts::choose_file;
use crate::view::{opened, sheet};
use hangtrue_core::check::Report;
use hangtrue_core::compare::{Item, Row, Standing, numbers, readings, values};
use hangtrue_core::say::{Speaker, capital};
use hangtrue_core::short::sort;
use hangtrue_core::{Dimension, Length, Unit};
use hangtrue_link::code::{Said, characters};
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let text = &scene.desk().sent;
    let orders: Vec<(&Sent, Report)> =
        scene.model.sent.iter().map(|sent| (sent, sent.report(&scene.model.profile))).collect();
    html! {
        section.sent aria-labelledby="sent-heading" {
            h2 #sent-heading { (text.heading) }
            (open(scene))
            @if scene.model.phone.begun() {
                @for (at, (sent, report)) in orders.iter().enumerate().filter(|(_, o)| !o.0.phoned) {
                    (phoned(scene, title(scene, orders.len(), at, sent), (sent, report)))
                }
            }
            @if let [first, second] = orders.as_slice() {
                (both(scene, first, second))
            }
            div.orders {
                @for (at, (sent, report)) in orders.iter().enumerate() {
                    (order(scene, (at, orders.len()), sent, report))
                }
            }
        }
    }
}

/// The box that takes a link, a code, a file.
fn open(scene: Scene<'_>) -> Markup {
    let text = &scene.desk().sent;
    let model = scene.model;
    html! {
        form.open data-act=(Action::Open.code()) {
            div.line {
                label for="paste" {
                    (if model.sent.is_empty() { text.paste } else { text.another })
                    " " span.hint { (text.paste_hint) }
                }
                textarea #paste name="paste" rows="3" spellcheck="false" autocomplete="off"
                    aria-describedby="paste-trouble" { (model.paste) }
            }
            div.row {
                button type="submit" { (text.open) }
                (choose_file(text.choose, true))
                @if !matches!(model.camera, Camera::Asked | Camera::On) {
                    button type="button" data-act=(Action::Look.code()) { (text.look) }
                }
            }
            (camera(scene))
            div #paste-trouble role="status" {
                @if let Some(trouble) = &model.trouble {
                    p.summary.stop { (told(scene.model, trouble)) }
                    @if let Trouble::Record(payload) = trouble {
                        p {
                            a.button href=(address::record(payload)) {
                                (scene.later().opened.to_record)
                            }
                        }
                    }
                }
            }
        }
    }
}

/// What the camera sees, while it looks; why it does not.
fn camera(scene: Scene<'_>) -> Markup {
    let text = &scene.desk().sent;
    html! {
        @match scene.model.camera {
            Camera::Off => {},
            Camera::Asked | Camera::On => {
                figure.camera {
                    video #(CAMERA) playsinline muted {}
                    figcaption {
                        (if scene.model.camera == Camera::On { text.looking } else { text.asked })
                    }
                    button type="button" data-act=(Action::LookAway.code()) { (text.look_away) }
                }
            }
            Camera::Refused => { p.summary.stop role="status" { (text.camera_refused) } }
            Camera::Missing => { p.summary.stop role="status" { (text.camera_missing) } }
        }
    }
}

/// Why a text gave no order, and what to ask the sender.
pub(super) fn told(model: &Model, trouble: &Trouble) -> String {
    let language = model.environment.language;
    let text = &Desk::of(language).sent;
    match trouble {
        Trouble::Link(error) => {
            let advice = hangtrue_link::say::link(language, *error);
            [&advice.what, " ", advice.ask].concat()
        }
        Trouble::Record(_) => {
            hangtrue_link::say::link(language, hangtrue_link::LinkError::Record).what
        }
        Trouble::Thirty(error) => hangtrue_link::say::small(language, error),
        Trouble::File(error) => hangtrue_link::say::whole_file(language, error),
        Trouble::Table(fault) => hangtrue_link::say::table(language, fault),
        Trouble::NoText => text.no_text.to_owned(),
        Trouble::NoCode => text.no_code.to_owned(),
        Trouble::Nothing => text.nothing.to_owned(),
        Trouble::TooLong { most } => (text.too_long)(*most),
    }
}

/// What an order is called.
fn title(scene: Scene<'_>, of: usize, at: usize, sent: &Sent) -> String {
    let text = &scene.desk().sent;
    let own = if sent.order.vehicle.is_empty() { &sent.name } else { &sent.order.vehicle };
    let place = if of > 1 { if at == 0 { text.first } else { text.second } } else { text.only };
    if own.is_empty() { place.to_owned() } else { [place, scene.text().colon, own].concat() }
}

/// What was said against what was sent.
fn phoned(scene: Scene<'_>, title: String, (sent, report): (&Sent, &Report)) -> Markup {
    let text = &scene.desk().sent;
    let unit = scene.model.phone.survey.unit;
    let said = scene.model.phone.said();
    // As the caller says them: of the frame as it was found, or as it will be.
    let of_sent = Dimension::ALL.map(|dimension| {
        let number = report.numbers.get(dimension)?;
        Some(if said.build { number.ordered } else { number.as_found })
    });
    let rows = values((said.numbers, unit), (of_sent, sent.order.survey.unit));
    // What the caller has not come to yet is no difference.
    let apart = rows.iter().filter(|row| row.standing == Standing::Apart).count();
    let missing = rows.iter().any(|row| row.standing == Standing::OneOnly);
    let verdict = match apart {
        0 if missing => text.agrees_so_far,
        0 => text.agrees,
        _ => text.differs,
    };
    html! {
        section.compare {
            h2 { ((text.against)(&title)) }
            p.agrees[apart == 0].differs[apart > 0] role="status" { (verdict) }
            (table(scene, [text.phoned, text.was_sent], &rows, unit))
        }
    }
}

/// Two orders for one truck: what is ordered, and every reading. No two readings stand apart where
/// none was taken at the same place: then the numbers do.
fn both(scene: Scene<'_>, first: &(&Sent, Report), second: &(&Sent, Report)) -> Markup {
    let text = &scene.desk().sent;
    let [one, other] = [&first.0.order, &second.0.order];
    let (unit, other_unit) = (one.survey.unit, other.survey.unit);
    let mut rows = numbers((&first.1, unit), (&second.1, other_unit));
    let number_differs = rows.iter().any(|row| row.standing >= Standing::OneOnly);
    rows.extend(readings(&one.survey, &other.survey));
    // Stable: what differs stands first, of that what is ordered.
    sort(&mut rows, |a, b| a.standing > b.standing);
    let differ = number_differs
        || rows.iter().any(|row| row.standing == Standing::Apart)
        || (one.survey.prepared, &one.answers) != (other.survey.prepared, &other.answers)
        || first.1.verdict != second.1.verdict;
    html! {
        section.compare {
            h2 { (text.both) }
            p.agrees[!differ].differs[differ] {
                (if differ { text.both_differ } else { text.both_agree })
            }
            (table(scene, [text.first, text.second], &rows, unit))
        }
    }
}

fn table(scene: Scene<'_>, names: [&str; 2], rows: &[Row], unit: Unit) -> Markup {
    let text = &scene.desk().sent;
    let speaker = Speaker { unit, ..scene.model.speaker() };
    let value =
        |value: Option<Length>| value.map_or(text.none.to_owned(), |length| speaker.length(length));
    html! {
        div.scroll tabindex="0" role="group" aria-label=(text.table) {
            // On a phone its rows are no table's to the browser: the roles say that they are.
            table role="table" {
                thead role="rowgroup" {
                    tr role="row" {
                        th.name scope="col" role="columnheader" { (text.what) }
                        @for name in names { th scope="col" role="columnheader" { (name) } }
                        th.difference scope="col" role="columnheader" { (text.difference) }
                        th.name scope="col" role="columnheader" { (text.likely) }
                    }
                }
                tbody role="rowgroup" {
                    @for row in rows {
                        tr class=(standing(row.standing)) role="row" {
                            th scope="row" role="rowheader" { (item(scene, row.item)) }
                            td role="cell" { (value(row.first)) }
                            td role="cell" { (value(row.second)) }
                            td role="cell" { (difference(row, speaker)) }
                            td.slip role="cell" {
                                (match (row.standing, row.slip) {
                                    (Standing::Same, _) => text.same,
                                    (Standing::Close, _) => text.close,
                                    (Standing::OneOnly, _) => text.one_only,
                                    (Standing::Apart, Some(slip)) => (scene.desk().slip)(slip),
                                    (Standing::Apart, None) => text.unexplained,
                                })
                            }
                        }
                    }
                }
            }
        }
    }
}

const fn standing(standing: Standing) -> &'static str {
    match standing {
        Standing::Same => "same",
        Standing::Close => "close",
        Standing::OneOnly => "one-only",
        Standing::Apart => "apart",
    }
}

fn item(scene: Scene<'_>, item: Item) -> String {
    let speaker = scene.model.speaker();
    match item {
        Item::Number(dimension) => capital(speaker.dimension(dimension)),
        Item::Reading(spot, 0) => capital(speaker.spot(spot)),
        Item::Reading(spot, _) => {
            [&capital(speaker.spot(spot)), " ", scene.desk().phone.again].concat()
        }
    }
}

/// With its sign; nothing where there is none.
fn difference(row: &Row, speaker: Speaker) -> String {
    match row.difference() {
        Some(by) if by > Length::ZERO => ["+", &speaker.length(by)].concat(),
        Some(by) if by < Length::ZERO => ["−", &speaker.length(by.abs())].concat(),
        _ => String::new(),
    }
}

/// One order as it was sent, with every rule run again.
fn order(scene: Scene<'_>, (at, of): (usize, usize), sent: &Sent, report: &Report) -> Markup {
    let text = &scene.desk().sent;
    let page = sent.page(&scene.model.environment, &scene.model.profile);
    let id = ["sent-", &at.to_string()].concat();
    let check = characters(&Said::of(report, sent.order.survey.unit));
    html! {
        article.order data-key=(id) {
            h2 #(id) tabindex="-1" { (title(scene, of, at, sent)) }
            @if !sent.corrected.is_empty() {
                p.summary { ((text.corrected)(&sent.corrected)) }
            }
            (opened(&page, sent.judged))
            @if let Some(letters) = check {
                p { (text.characters) " " b.letters { (letters) } }
            }
            div.row {
                button type="button" data-act=(Action::Print(at).code()) { (scene.text().button.print) }
                @for (format, word) in Format::ALL.into_iter().zip(scene.later().handover.save) {
                    button type="button" data-act=(Action::Save(at, format).code()) { (word) }
                }
                button.quiet type="button" data-act=(Action::Close(at).code()) { (text.close_order) }
            }
        }
    }
}

/// The order that goes onto paper.
pub(super) fn paper(scene: Scene<'_>) -> Markup {
    let model = scene.model;
    html! {
        @if let Some(sent) = model.sent.get(model.printed) {
            (sheet(&sent.page(&model.environment, &model.profile)))
        }
    }
}
