//! From screen to screen.

use super::dealer::after_the_readings;
use super::drafts;
use crate::address::{Address, DESK, DESK_PAGE};
use crate::draft::keep;
use crate::effect::Effect;
use crate::field::Field;
use crate::model::{Model, Unopened, confirmation};
use crate::problems::{Problem, found, problems};
use crate::step::Step;
use hangtrue_core::{Entry, Spot};
use hangtrue_link::LinkError;

/// Continue: to the next screen, or to what stands against it.
pub(super) fn next(model: &mut Model) -> Vec<Effect> {
    if let Some(effects) = held_back(model) {
        return effects;
    }
    if let Some(step) = model.back_to.take() {
        return go(model, step);
    }
    if model.step == Step::Bow || model.step == Step::Proof {
        return prove(model);
    }
    model.step.next().map_or_else(Vec::new, |step| go(model, step))
}

/// Continue, before the second module is there: to the next of the four dimensions, if nothing stands
/// against it.
pub(super) fn on(model: &mut Model) -> Option<Vec<Effect>> {
    let step = model.step.next().filter(|step| step.is_first())?;
    let stands = found(model, &model.report()).next().is_some();
    (!stands).then(|| go(model, step))
}

/// Tells what stands against leaving this screen; none where nothing does.
fn held_back(model: &mut Model) -> Option<Vec<Effect>> {
    let problems = problems(model, &model.report());
    let blocked = problems.iter().any(Problem::blocks) || model.step == Step::Check;
    let blank = model.step == Step::Proof
        && model.proof.is_some_and(|field| model.typed(field).trim().is_empty());
    // A question is put once; Continue again is the answer that it is right.
    let questions: Vec<_> = problems.iter().map(|one| confirmation(&one.finding)).collect();
    let answered = !blocked && questions.iter().all(|question| model.asked.contains(question));
    if blank || !(problems.is_empty() || answered) {
        model.told = true;
        model.asked = questions;
        return Some(vec![Effect::Tremble, Effect::Focus("problems".to_owned())]);
    }
    None
}

/// To the next reading that is worth taking, or to the check where none is.
fn prove(model: &mut Model) -> Vec<Effect> {
    model.proof = next_proof(model);
    let step = if model.proof.is_some() { Step::Proof } else { after_the_readings(model) };
    go(model, step)
}

/// The next reading that a dealer asks for, or that is worth its minute, and that has
/// not been left out.
fn next_proof(model: &Model) -> Option<Field> {
    let unread = |spot: &Spot| model.order.survey.lengths(*spot).next().is_none();
    let asked = model.profile.closing.iter().copied().filter(unread);
    let next = model.report().judgement.next;
    let mut spots = asked.chain(next.into_iter().map(|next| next.spot));
    let spot = spots.find(|spot| !model.skipped.contains(spot))?;
    Some(blank(model, spot))
}

/// The field of one more reading at `spot`.
fn blank(model: &Model, spot: Spot) -> Field {
    Field { spot, index: model.order.survey.entries(spot).len() }
}

/// Takes the offered reading at `spot` now.
pub(super) fn take(model: &mut Model, spot: Spot) -> Vec<Effect> {
    let field = blank(model, spot);
    change(model, field)
}

/// Leaves out the reading that is offered.
pub(super) fn skip(model: &mut Model) -> Vec<Effect> {
    model.skipped.extend(model.proof.take().map(|field| field.spot));
    match model.back_to.take() {
        Some(step) => go(model, step),
        None => prove(model),
    }
}

/// To `step`, as a new entry in the history.
pub(super) fn go(model: &mut Model, step: Step) -> Vec<Effect> {
    show(model, step);
    let awake = step.spots().first().map(|_| Effect::StayAwake);
    [Effect::Push(model.address()), Effect::Top]
        .into_iter()
        .chain(awake)
        .chain(list(step))
        .chain(keep(model))
        .collect()
}

fn show(model: &mut Model, step: Step) {
    model.step = step;
    model.told = false;
    model.asked = Vec::new();
    model.copied = None;
    model.replacing = false;
    model.deleting = None;
    model.spoken = String::new();
    model.replaces = None;
    model.active = match step {
        Step::Proof => model.proof,
        _ => None,
    };
}

/// Back is the browser's own back: it never loses anything.
pub(super) fn back(_model: &mut Model) -> Vec<Effect> {
    vec![Effect::Back]
}

/// To the field, and Continue from there comes back here.
pub(super) fn change(model: &mut Model, field: Field) -> Vec<Effect> {
    let here = model.step;
    let step = Step::of(field.spot);
    if step == here {
        return vec![Effect::Focus(field.name())];
    }
    // A repeat is taken on a screen that hides the first reading.
    let counts = |entry: &Entry| !entry.struck;
    let entries = model.order.survey.entries(field.spot);
    let before = entries.get(..field.index).unwrap_or(entries);
    let proof = step == Step::Proof || before.iter().any(counts);
    if proof {
        model.proof = Some(field);
    }
    show(model, if proof { Step::Proof } else { step });
    model.back_to = Some(here);
    model.active = Some(field);
    [Effect::Push(model.address()), Effect::Focus(field.name())]
        .into_iter()
        .chain(keep(model))
        .collect()
}

/// Asks for another reading at the spot of `field`; its own is struck once that is typed.
pub(super) fn reread(model: &mut Model, field: Field) -> Vec<Effect> {
    let effects = take(model, field.spot);
    model.replaces = Some(field);
    effects
}

/// The browser went to `fragment`.
pub(super) fn navigate(model: &mut Model, fragment: &str) -> Vec<Effect> {
    if fragment == DESK {
        return vec![Effect::Visit(DESK_PAGE)];
    }
    let Some(address) = Address::from_text(fragment) else {
        if !fragment.is_empty() {
            return open(model, fragment);
        }
        show(model, Step::Start);
        return vec![Effect::Top];
    };
    let nothing_there = match address.step {
        Step::Opened => model.opened.is_none(),
        Step::Questions => after_the_readings(model) != Step::Questions,
        _ => false,
    };
    if nothing_there {
        show(model, Step::Check);
        return vec![Effect::Replace(model.address(), None), Effect::Top];
    }
    if let Some(field) = address.proof {
        // Back at a reading that was left out: it is offered again.
        model.skipped.retain(|spot| *spot != field.spot);
        model.proof = Some(field);
    }
    come_to(model, address.step)
}

/// The browser went to `step`.
pub(super) fn come_to(model: &mut Model, step: Step) -> Vec<Effect> {
    show(model, step);
    model.back_to = None;
    [Effect::Top].into_iter().chain(list(step)).chain(keep(model)).collect()
}

/// The list of drafts is told anew whenever it is come to.
fn list(step: Step) -> Option<Effect> {
    (step == Step::Drafts).then_some(Effect::List)
}

/// Opens an order that was sent. The draft is not touched.
pub(super) fn open(model: &mut Model, text: &str) -> Vec<Effect> {
    let payload = hangtrue_link::find(text);
    let kept = payload.as_ref().map_or_else(|_| text.to_owned(), Clone::clone);
    let order = payload.and_then(|payload| hangtrue_link::decode(&payload));
    let opened = order.map_err(|error| match error {
        LinkError::Record => Unopened::Record(kept.clone()),
        error => Unopened::Link(error),
    });
    model.opened = Some(opened);
    show(model, Step::Opened);
    // The address is cleared, so that nobody shares it by accident; the history
    // entry keeps the payload for a reload.
    vec![Effect::Replace(model.address(), Some(kept)), Effect::Top]
}

/// Opens the order in a file; `text` is none where it holds no text that is read.
pub(super) fn file(model: &mut Model, name: &str, text: Option<&str>) -> Vec<Effect> {
    let text = text.map(|text| text.trim_start_matches(['\u{feff}', ' ', '\r', '\n']));
    // A file without a link in it is for the counter desk, and so is one with more in it.
    let Some(text) = text.filter(|text| {
        hangtrue_link::find(text) != Err(LinkError::NotFound)
            && !text.starts_with(['{', '['])
            && !is_table(name, text)
    }) else {
        model.opened = Some(Err(Unopened::File));
        show(model, Step::Opened);
        return vec![Effect::Push(model.address()), Effect::Top];
    };
    let mut effects = open(model, text);
    // Back leads to where the file was chosen.
    effects.insert(0, Effect::Push(model.address()));
    effects
}

/// Whether it is a table: by its name, or as its first line has two marks between cells, none with
/// a space behind it as in a sentence, and what follows as many.
fn is_table(name: &str, text: &str) -> bool {
    let tail = name.get(name.len().saturating_sub(4)..).unwrap_or_default();
    if [".csv", ".tsv", ".tab"].iter().any(|known| tail.eq_ignore_ascii_case(known)) {
        return true;
    }
    let text = text.as_bytes();
    let end = text.iter().position(|byte| *byte == b'\n').unwrap_or(text.len());
    let (first, rest) = text.split_at_checked(end).unwrap_or_default();
    b"\t;,".iter().any(|mark| {
        let marks = |part: &[u8]| part.iter().filter(|byte| *byte == mark).count();
        let prose = first.windows(2).any(|pair| pair == [*mark, b' ']);
        !prose && marks(first) > 1 && marks(rest) >= marks(first)
    })
}

/// Begins again with nothing typed.
pub(super) fn restart(model: &mut Model) -> Vec<Effect> {
    let unit = model.order.survey.unit;
    *model = drafts::fresh(model);
    model.order.survey.unit = unit;
    show(model, Step::Start);
    // What was typed stays in the list of drafts.
    vec![Effect::Fresh, Effect::List, Effect::Push(model.address()), Effect::Top]
}

/// What the live region says of the field that has the focus.
pub(super) fn spoken(model: &Model) -> String {
    let Some(field) = model.active else { return String::new() };
    let Some(length) = model.read(field) else { return String::new() };
    let speaker = model.speaker();
    [speaker.place(field.spot), ": ", &speaker.length(length)].concat()
}
