//! Whether the frame can take a door.

use super::{Scene, parts, picture, reading};
use crate::field::Field;
use crate::rest;
use crate::step::Step;
use crate::text::Text;
use hangtrue_core::check::Report;
use hangtrue_core::profile::{End, Limited, Profile};
use hangtrue_core::say::Speaker;
use hangtrue_core::{Length, Survey};
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let text = &scene.text().frame;
    let model = scene.model;
    let yes_no = |answer: bool| if answer { "yes" } else { "no" };
    let spots = Step::Frame.spots();
    html! {
        form.two data-act="next" {
            div.ask {
                (parts::heading(text.heading))
                p.lede { (text.lede) }
                (parts::problems(scene))
                @if scene.ruled() { (rest::doors(scene)) }
                (parts::choice(
                    "old-door",
                    text.old_door,
                    &[("yes", text.yes), ("no", text.no)],
                    model.order.old_door_in.map(yes_no),
                ))
                @if model.order.old_door_in == Some(true) {
                    (parts::caution(text.old_door_caution))
                }
                (parts::choice(
                    "prepared",
                    text.prepared,
                    &[("yes", text.prepared_yes), ("no", text.prepared_no)],
                    Some(yes_no(model.order.survey.prepared)),
                ))
                p.hint {
                    (if scene.ruled() {
                        rest::minimums(scene)
                    } else {
                        minimums(scene, &model.profile, text.common_practice)
                    })
                }
            }
            (picture::spots(scene, &spots))
            div.readings {
                @for spot in &spots {
                    @let field = Field::first(*spot);
                    (reading::field(scene, field, model.active == Some(field)))
                }
            }
            (building(scene))
            (parts::submit(scene.text().button.next))
        }
    }
}

/// What a frame must have at least, and by whose word.
fn minimums(scene: Scene<'_>, profile: &Profile, source: &str) -> String {
    let [post, header] = LEAST.map(|what| least(scene, profile, what));
    (scene.text().frame.minimums)(source, &post, &header)
}

/// What has a minimum here.
const LEAST: [Limited; 2] = [Limited::Post, Limited::Header];

fn least(scene: Scene<'_>, profile: &Profile, what: Limited) -> String {
    scene.model.speaker().length(profile.limit(what).least().unwrap_or(Length::ZERO))
}

/// The same by a dealer's rules: theirs where they have moved one, common practice where not.
pub(crate) fn minimums_by_rules(scene: Scene<'_>) -> String {
    let profile = scene.model.profile.chosen(&scene.model.order.answers);
    let common = scene.text().frame.common_practice;
    let moved = LEAST.map(|what| {
        profile.rulings.iter().any(|ruling| (ruling.what, ruling.end) == (what, End::Least))
    });
    if moved == [false, false] {
        return minimums(scene, &profile, common);
    }
    let [post, header] = [(LEAST[0], moved[0]), (LEAST[1], moved[1])].map(|(what, is_theirs)| {
        let told = least(scene, &profile, what);
        if is_theirs { told } else { [&told, " (", &common.to_ascii_lowercase(), ")"].concat() }
    });
    let theirs = (scene.later().dealer.rules)(&profile.name, profile.revision);
    (scene.text().frame.minimums)(&theirs, &post, &header)
}

/// What has to be built, if anything has; told once the second module is there.
pub(super) fn building(scene: Scene<'_>) -> Markup {
    if !scene.report.preparation.needed() || scene.model.environment.partial {
        return html! {};
    }
    rest::to_be_built(scene)
}

/// What has to be built, and which ordered numbers that changes.
pub(crate) fn to_be_built(scene: Scene<'_>) -> Markup {
    to_build(scene.model.speaker(), &scene.model.order.survey, scene.report)
}

/// The same of any survey and what was made of it; the caution before the work.
pub(crate) fn to_build(speaker: Speaker, survey: &Survey, report: &Report) -> Markup {
    let text = &Text::of(speaker.language).frame;
    let notes = report.findings.iter().filter(|finding| {
        matches!(finding.rule, "shallow-header" | "narrow-post") && !survey.prepared
    });
    html! {
        section.build {
            h2 { (text.build_heading) }
            (parts::caution(text.weld_caution))
            @for finding in notes {
                p { (speaker.say(&finding.message)) }
                @for hint in &finding.hints { p { (speaker.say(hint)) } }
            }
        }
    }
}
