//! The order on one sheet of paper: only the browser's own print shows it.
//!
//! `web/style/print.css` gives the sheet its size, which fits Letter and A4 alike. What
//! can grow without bound (note, readings, findings) is counted in lines here and cut
//! where the room ends, and the sheet says that it was.

use super::{Scene, check, picture, qr, voice};
use crate::answers::told;
use crate::message::number;
use hangtrue_core::order::Order;
use hangtrue_core::say::capital;
use hangtrue_core::{Dimension, Entry, Finding, Length, Severity, Spot};
use hangtrue_link::code::{Said, characters, small, spell};
use hangtrue_link::qr::Surface;
use maud::{Markup, html};

/// The sheet of the order in `scene`, written as `order` on that day.
pub(super) fn sheet(scene: Scene<'_>, order: &Order) -> Markup {
    let text = &scene.later().paper;
    let note = shorten(&order.note, NOTE_MOST);
    let options = shorten(&options(scene, order), NOTE_MOST);
    let differs = differs(scene, order);
    let taken = [
        lines(&note, SHEET_LINE),
        lines(&options, SHEET_LINE),
        lines(&differs, COLUMN_LINE),
        extra_lines(scene),
    ];
    let room = taken.into_iter().fold(ROOM, usize::saturating_sub);
    html! {
        section.paper {
            (head(scene, order))
            div.paper-top {
                (picture::paper(scene))
                div {
                    (code(scene, order))
                    (build(scene))
                }
            }
            (table(scene))
            @if !options.is_empty() {
                p.paper-note { strong { (text.options) (scene.text().colon) } (options) }
            }
            @if !note.is_empty() {
                p.paper-note {
                    strong { (text.note) (scene.text().colon) } (note)
                    @if note != order.note { " " em { (text.cut) } }
                }
            }
            div.paper-columns {
                div {
                    h2 { (text.findings) }
                    @if !differs.is_empty() { p { b { (differs) } } }
                    (findings(scene, room))
                }
                div {
                    h2 { (scene.later().judge.unseen) }
                    p { (text.unseen) " " (scene.later().judge.never) }
                }
            }
            p.paper-caution { (text.cautions) }
            ul.paper-sign { @for what in text.signature { li { (what) } } }
        }
    }
}

/// The link as a picture, and the check characters; in a PDF the picture is a link too.
fn code(scene: Scene<'_>, order: &Order) -> Markup {
    let text = &scene.later().paper;
    let link = hangtrue_link::url(&scene.model.environment.base, order).ok();
    let picture = link.as_deref().and_then(|link| qr::picture(scene, link, Surface::Paper));
    let scannable = picture.is_some();
    let unit = scene.model.order.survey.unit;
    html! {
        div.paper-code {
            @if let Some(picture) = picture {
                a href=[&link] aria-label=(text.scan) { (picture) }
            } @else {
                div {}
            }
            div {
                @if let Some(letters) = characters(&Said::of(scene.report, unit)) {
                    h2 { (text.check) }
                    p.characters { (letters) }
                    p { (spell(&letters, scene.model.speaker().language).join(", ")) }
                }
                @if let Some(letters) = small(order) {
                    h2 { (text.thirty) }
                    p.paper-thirty { @for group in voice::groups(&letters) { (group) " " } }
                }
                p { (if scannable { text.scan } else { text.too_long }) }
            }
        }
    }
}

/// The door line and the answers to the dealer's questions, in the dealer's words where
/// the profile is at hand, else by their keys.
fn options(scene: Scene<'_>, order: &Order) -> String {
    let mut text = String::new();
    for answer in &order.answers {
        let [ask, shown] = told(&scene.model.profile, scene.model.speaker(), answer);
        let between = if ask.ends_with('?') { " " } else { scene.text().colon };
        for piece in [if text.is_empty() { "" } else { "; " }, &ask, between, &shown] {
            text.push_str(piece);
        }
    }
    text
}

/// Characters in a line across the sheet, of one of its two columns, and of the readings
/// of an ordered number or of another row.
const SHEET_LINE: usize = 115;
const COLUMN_LINE: usize = 54;
const READ_LINE: usize = 36;
const OTHER_LINE: usize = 80;
/// Lines that the note, rows of readings beyond two lines each, and the findings share.
const ROOM: usize = 16;
/// The most characters of the note, of another line of text, of one reading. The page's
/// own field for a note takes 200.
const NOTE_MOST: usize = 200;
const LINE_MOST: usize = 60;
const READING_MOST: usize = 16;
/// The most readings of an ordered number, and in another row.
const NUMBER_MOST: usize = 6;
const OTHER_MOST: usize = 4;

fn head(scene: Scene<'_>, order: &Order) -> Markup {
    let text = &scene.later().paper;
    html! {
        header.paper-head {
            div {
                h1 { (scene.text().order) }
                @if !order.vehicle.is_empty() {
                    p.paper-vehicle { (shorten(&order.vehicle, LINE_MOST)) }
                }
                @if !order.contact.is_empty() {
                    p { ((text.contact)(&shorten(&order.contact, LINE_MOST))) }
                }
            }
            div {
                p.paper-verdict { (check::word(scene.later(), scene.report.verdict)) }
                @if let Some(number) = number(&scene.model.profile, order, scene.report) {
                    p { b { ((scene.later().dealer.number)(&number)) } }
                }
                @if let Some(date) = order.date { p { (date.text()) } }
                p { ((scene.later().opened.frame)(order.survey.prepared)) }
                @if let Some(still_in) = order.old_door_in {
                    p { ((scene.later().opened.old_door)(still_in)) }
                }
                p {
                    @match &order.profile {
                        Some((name, revision)) => ((text.profile)(&shorten(name, 30), *revision)),
                        None => (text.built_in),
                    }
                }
            }
        }
    }
}

/// The ordered numbers, what was read for each, what would not be seen in it, and a blank
/// to measure it again; then the readings that are no number of the order.
fn table(scene: Scene<'_>) -> Markup {
    let text = &scene.later().paper;
    let speaker = scene.model.speaker();
    html! {
        table {
            thead { tr { @for column in text.columns { th scope="col" { (column) } } } }
            tbody {
                @for (dimension, unseen) in
                    Dimension::ALL.into_iter().zip(scene.report.judgement.unseen)
                {
                    tr {
                        th scope="row" { (capital(speaker.dimension(dimension))) }
                        (ordered(scene, dimension, unseen))
                        td.paper-blank {}
                    }
                }
                @for (name, spots) in text.rows.iter().zip(OTHERS) {
                    @let row = Row::of(scene, &spots, OTHER_MOST);
                    @if !row.shown.is_empty() {
                        tr { th scope="row" { (name) } td colspan="4" { (row.markup(scene)) } }
                    }
                }
            }
        }
    }
}

fn ordered(scene: Scene<'_>, dimension: Dimension, unseen: Option<Length>) -> Markup {
    let text = &scene.later().paper;
    let Some(number) = scene.report.numbers.get(dimension) else {
        return html! { td.paper-number { (scene.later().check.not_read) } td {} td {} };
    };
    html! {
        td.paper-number { (scene.model.speaker().length(number.ordered)) }
        td {
            (Row::of(scene, &dimension.spots(), NUMBER_MOST).markup(scene))
            @if scene.report.preparation.change(dimension) != Length::ZERO {
                br;
                em { ((text.as_found)(&scene.model.speaker().length(number.as_found))) }
            }
        }
        td {
            @match unseen {
                Some(least) => ((text.unseen_below)(&scene.model.speaker().length(least))),
                None => (text.unseen_any),
            }
        }
    }
}

/// The spots that are no number of the order, in the rows of [`crate::text::Paper::rows`].
const OTHERS: [[Spot; 2]; 3] = [
    [Spot::DiagonalRising, Spot::DiagonalFalling],
    [Spot::LoopSillToRoof, Spot::LoopSillToBow],
    [Spot::PostLeft, Spot::PostRight],
];

/// The readings of one row, in the order they were taken.
struct Row<'a> {
    /// Each spot's place, and the readings of it that there is room for.
    shown: Vec<(&'static str, &'a [Entry])>,
    /// How many readings there is no room for.
    more: usize,
}

impl<'a> Row<'a> {
    fn of(scene: Scene<'a>, spots: &[Spot], most: usize) -> Self {
        let mut row = Self { shown: Vec::new(), more: 0 };
        let mut left = most;
        for spot in spots {
            let entries = scene.model.order.survey.entries(*spot);
            let (now, rest) = entries.split_at(entries.len().min(left));
            left = left.saturating_sub(now.len());
            row.more = row.more.wrapping_add(rest.len());
            if !now.is_empty() {
                row.shown.push((scene.model.speaker().place(*spot), now));
            }
        }
        row
    }

    /// Lines of `width` characters that it takes.
    fn lines(&self, scene: Scene<'_>, width: usize) -> usize {
        let mut count = 0_usize;
        for (place, entries) in &self.shown {
            count = count.wrapping_add(place.len()).wrapping_add(2);
            for entry in *entries {
                count = count.wrapping_add(reading(scene, entry).chars().count()).wrapping_add(1);
            }
        }
        if self.more > 0 {
            count = count.wrapping_add((scene.later().paper.more_readings)(self.more).len());
        }
        count.div_ceil(width)
    }

    fn markup(&self, scene: Scene<'_>) -> Markup {
        let [open, close] = scene.text().quotes;
        html! {
            @for (place, entries) in &self.shown {
                i { (place) }
                @for (at, entry) in entries.iter().enumerate() {
                    // A place is not parted from its first reading.
                    (if at == 0 { "\u{a0}" } else { " " })
                    @if entry.struck {
                        del { (reading(scene, entry)) }
                    } @else if entry.read.is_ok() {
                        b { (reading(scene, entry)) }
                    } @else {
                        (open) (reading(scene, entry)) (close)
                    }
                }
                " "
            }
            @if self.more > 0 { em { ((scene.later().paper.more_readings)(self.more)) } }
        }
    }
}

/// A reading as the order writes it; a struck or unreadable one as it was typed.
fn reading(scene: Scene<'_>, entry: &Entry) -> String {
    match (&entry.read, entry.struck) {
        (Ok(length), false) => scene.model.speaker().length(*length),
        _ => shorten(&entry.text, READING_MOST),
    }
}

/// Lines that the rows of readings take beyond two for an ordered number and none for
/// another row.
fn extra_lines(scene: Scene<'_>) -> usize {
    let mut lines = 0_usize;
    for dimension in Dimension::ALL {
        let built = scene.report.preparation.change(dimension) != Length::ZERO;
        let row = Row::of(scene, &dimension.spots(), NUMBER_MOST).lines(scene, READ_LINE);
        lines = lines.wrapping_add(row.wrapping_add(usize::from(built)).saturating_sub(2));
    }
    for spots in OTHERS {
        let row = Row::of(scene, &spots, OTHER_MOST).lines(scene, OTHER_LINE);
        // The rules between the rows and the room about them.
        lines = lines.wrapping_add(row).wrapping_add(usize::from(row > 0));
    }
    lines
}

/// The findings, worst first, as many as `room` lines hold.
fn findings(scene: Scene<'_>, room: usize) -> Markup {
    let all = &scene.report.findings;
    let speaker = scene.model.speaker();
    let mut left = room;
    let mut shown = Vec::new();
    for finding in all {
        let said = speaker.say(&finding.message);
        let confirmed = finding.severity == Severity::Recheck && scene.model.confirmed(finding);
        let extra = if confirmed { scene.later().paper.confirmed } else { "" };
        let needs = lines(&said, COLUMN_LINE).wrapping_add(lines(extra, COLUMN_LINE));
        let Some(rest) = left.checked_sub(needs) else { break };
        left = rest;
        shown.push((finding, said, confirmed));
    }
    let more = all.len().saturating_sub(shown.len());
    html! {
        @if all.is_empty() { p { (scene.later().check.clear) } }
        ul {
            @for (finding, said, confirmed) in &shown {
                li {
                    @if let Some(word) = word(scene, finding) { b { (word) (scene.text().colon) } }
                    (said)
                    @if *confirmed { " " em { (scene.later().paper.confirmed) } }
                }
            }
        }
        @if more > 0 { p { em { ((scene.later().paper.more_findings)(more)) } } }
    }
}

/// That the writer was shown another verdict than the one found here; empty where not.
fn differs(scene: Scene<'_>, order: &Order) -> String {
    let (claimed, found) = (order.claimed, scene.report.verdict);
    if claimed == found {
        return String::new();
    }
    (scene.later().opened.disagrees)(
        check::word(scene.later(), claimed),
        check::word(scene.later(), found),
    )
}

/// The verdict that a finding brings; a note brings none.
fn word(scene: Scene<'_>, finding: &Finding) -> Option<&'static str> {
    (finding.severity != Severity::Note)
        .then(|| check::word(scene.later(), finding.severity.into()))
}

fn build(scene: Scene<'_>) -> Markup {
    let text = &scene.later().paper;
    let build = &scene.report.preparation;
    html! {
        @if build.needed() {
            h2 { (text.build) }
            ul {
                @for (say, by) in
                    text.build_by.iter().zip([build.header_down, build.left_out, build.right_out])
                {
                    @if by != Length::ZERO { li { b { (say(&scene.model.speaker().length(by))) } } }
                }
            }
            p { (text.build_then) }
        }
    }
}

/// `text` in at most `most` characters, cut at a space where one is near.
fn shorten(text: &str, most: usize) -> String {
    let Some((cut, _)) = text.char_indices().nth(most) else { return text.to_owned() };
    let kept = text.get(..cut).unwrap_or_default();
    let kept = match kept.rsplit_once(char::is_whitespace) {
        Some((whole, part)) if part.len() < most / 4 => whole,
        _ => kept,
    };
    [kept.trim_end(), "…"].concat()
}

/// Lines of `width` characters that `text` takes.
fn lines(text: &str, width: usize) -> usize {
    if text.is_empty() {
        0
    } else {
        text.chars().count().checked_div(width).unwrap_or(0).saturating_add(1)
    }
}
