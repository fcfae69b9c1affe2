//! Room overhead: the door in motion.

use super::parts;
use crate::hang::model::Model;
use crate::hang::work::BOWS;
use hangtrue_core::Length;
use hangtrue_core::hang::overhead::{Assumed, BOW_WIDTH, Bows, Fit, Room, Swept, Tight, sweep};
use hangtrue_draw::Sheet;
use maud::{Markup, PreEscaped, html};

/// The fields of the door's own figures.
const OWN: [&str; 7] = ["radius", "rise", "slope", "offset", "thickness", "panel", "gap"];

pub(super) fn view(model: &Model) -> Markup {
    let text = &model.words().overhead;
    html! {
        form data-act="next" {
            (parts::heading(text.heading))
            p.lede { (text.lede) }
            (parts::caution(text.caution))
            // Whether a door passes is not said by the usual in place of what was typed.
            @match (OWN.iter().find_map(|name| parts::amiss(model, name)), model.room()) {
                (Some(why), _) => (parts::verdict("stop", &why)),
                (None, Some(room)) => (answer(model, &room)),
                (None, None) => (parts::verdict("stop", text.no_door)),
            }
            (bows(model))
            (figures(model))
            (parts::go_on(model))
        }
    }
}

fn answer(model: &Model, room: &Room) -> Markup {
    let text = &model.words().overhead;
    let swept = sweep(room);
    let open = model.fields.get("open");
    html! {
        div.columns {
            section {
                figure.picture {
                    @let sheet = Sheet { id: "overhead", speaker: model.speaker() };
                    (PreEscaped(hangtrue_draw::hang::overhead(sheet, room, &swept, model.lift(room))))
                }
                label.slider {
                    span aria-hidden="true" { (text.ends[0]) }
                    input #open type="range" name="open" min="0" max="100" step="1"
                        aria-label=(text.slider)
                        value=(if open.is_empty() { "0" } else { open });
                    span aria-hidden="true" { (text.ends[1]) }
                }
            }
            section { (told(model, room, &swept)) }
        }
    }
}

fn told(model: &Model, room: &Room, swept: &Swept) -> Markup {
    let text = &model.words().overhead;
    let fit = swept.fit();
    let kind = match fit {
        Fit::Passes => "clear",
        Fit::Tight => "recheck",
        Fit::Strikes => "stop",
    };
    html! {
        (parts::verdict(kind, (text.fit)(fit)))
        ul.rows {
            @for tight in &swept.tight {
                li.stop[tight.left <= Length::ZERO] .tagged[swept.tightest() == Some(tight)] {
                    (one(model, tight))
                }
            }
        }
        p { ((text.reach)(&model.told(swept.reach))) }
        @if room.bow.is_some() { p { (stand(model, room.bows)) } }
        p.hint { (text.how) }
    }
}

fn one(model: &Model, tight: &Tight) -> String {
    let text = &model.words().overhead;
    let left = model.speaker().length(tight.told(model.unit().step()).abs());
    let lift = model.told(tight.lift);
    if tight.left > Length::ZERO {
        (text.left)(tight.against, &left, &lift)
    } else {
        (text.strikes)(tight.against, &left, &lift)
    }
}

/// Where the bows were taken to hang.
fn stand(model: &Model, bows: Bows) -> String {
    let text = &model.words().overhead;
    match bows {
        Bows::Anywhere => text.bows_anywhere.to_owned(),
        Bows::From(first) => (text.bows_from)(&model.told(first)),
        Bows::Every { first, spacing, .. } => {
            (text.bows_every)(&model.told(first), &model.told(spacing))
        }
    }
}

/// Where the bows hang, if somebody looks.
fn bows(model: &Model) -> Markup {
    let text = &model.words().overhead;
    let assumed = (text.assumed_as)(&model.speaker().length(BOW_WIDTH));
    html! {
        section {
            h2 { (text.bows) }
            p.hint { (text.bows_how) }
            div.fields {
                @for ((name, label), hint) in
                    BOWS.into_iter().zip(text.bow).zip(["", "", assumed.as_str()])
                {
                    @let hint = if model.fields.get(name).is_empty() { hint } else { "" };
                    (parts::field(model, name, label, hint))
                }
            }
        }
    }
}

/// The door's own figures, to be typed over.
fn figures(model: &Model) -> Markup {
    let text = &model.words().overhead;
    let room = model.room();
    let all = [
        ("radius", Assumed::Radius),
        ("rise", Assumed::Rise),
        ("offset", Assumed::Offset),
        ("thickness", Assumed::Thickness),
        ("panel", Assumed::Panel),
        ("gap", Assumed::Gap),
    ];
    html! {
        section {
            h2 { (text.figures) }
            p.hint { (text.assumed) }
            div.fields {
                @for (name, figure) in all {
                    @let assumed = room.as_ref().and_then(|room| assumed(room, figure));
                    @let hint = assumed.map_or_else(String::new, |by| {
                        (text.assumed_as)(&model.speaker().length(by))
                    });
                    (parts::field(model, name, (text.figure)(figure), &hint))
                }
                (parts::field(model, "slope", text.slope, text.degrees))
            }
        }
    }
}

/// What stands in place of a figure that nobody gave.
fn assumed(room: &Room, figure: Assumed) -> Option<Length> {
    room.assumed.contains(&figure).then_some(match figure {
        Assumed::Radius => room.radius,
        Assumed::Rise => room.rise,
        Assumed::Offset => room.offset,
        Assumed::Thickness => room.thickness,
        Assumed::Panel => room.panel,
        Assumed::Gap => room.gap,
        Assumed::BowWidth => BOW_WIDTH,
    })
}
