//! Turns, winding, balance.

use super::parts;
use crate::hang::model::Model;
use crate::hang::work::{behaves, turns_text};
use crate::view::parts::pick;
use hangtrue_core::hang::spring::{
    A229, Advice, Balance, Behaves, DIVISOR, FRICTION, HAND_MOST, Height, Point, Rule, Turns,
    stripes_agree,
};
use hangtrue_core::hang::{Scale, Weight};
use hangtrue_core::{Length, Unit};
use hangtrue_draw::Sheet;
use maud::{Markup, PreEscaped, html};

pub(super) fn view(model: &Model) -> Markup {
    let text = &model.words().spring;
    let balance = model.balance();
    html! {
        form data-act="next" {
            (parts::heading(text.heading))
            p.lede { (text.lede) }
            div.caution.danger {
                p { b {
                    @match &balance {
                        Some(balance) => (energy(model, balance)),
                        None => (text.danger),
                    }
                } }
                p { (text.trained) }
            }
            div.columns {
                @if let Some(turns) = model.turns() { (rule(model, &turns)) }
                (figures(model))
            }
            @let forces = Forces::of(model, balance.as_ref());
            (steps(model, balance.as_ref(), &forces))
            (plot(model, &forces))
            (test(model))
            (measures(model, balance.as_ref()))
            (parts::go_on(model))
        }
    }
}

/// The stored energy as a fall: in the unit that the reader thinks in.
fn energy(model: &Model, balance: &Balance) -> String {
    let joules = model.speaker().decimal(balance.energy(), 0);
    let weight = HAND_MOST;
    let fall = balance.falls_from(weight);
    let height = match model.unit() {
        Unit::Inch => {
            let feet = [&model.speaker().decimal(fall.to_inches() / 12.0, 0), " ft"].concat();
            model.speaker().language.written(&feet)
        }
        Unit::Millimetre => [&model.speaker().decimal(fall.to_mm() / 1e3, 1), " m"].concat(),
    };
    (model.words().spring.energy)(&joules, &model.told_weight(weight), &height)
}

fn rule(model: &Model, turns: &Turns) -> Markup {
    let text = &model.words().spring;
    let drum = model.told(turns.drum);
    html! {
        section.numbers {
            h2 { (text.turns) }
            p.value { ((text.count)(&turns_text(turns.to_wind()))) }
            p {
                (match turns.rule {
                    Rule::Usual => text.rule,
                    Rule::Door => text.own,
                })
            }
            p { ((text.means)(&drum, &model.speaker().decimal(turns.travelled(), 1), &model.speaker().decimal(turns.preload, 1))) }
        }
    }
}

fn figures(model: &Model) -> Markup {
    let text = &model.words().spring;
    let typed = model.weight("weight").is_some();
    html! {
        section {
            div.fields {
                (parts::field(model, "weight", text.weight, text.weight_hint))
                @if let (false, Some(weight)) = (typed, model.door_weight()) {
                    p { ((text.by_area)(&model.told_weight(weight))) }
                }
                (parts::field(model, "drum", text.drum, ""))
                (parts::field(model, "preload", text.preload, ""))
            }
            @if model.door_weight().is_some_and(|weight| weight > HAND_MOST) {
                (parts::verdict("recheck", &(text.heavy)(&model.told_weight(HAND_MOST))))
            }
        }
    }
}

/// The steps that end with a wound and fixed spring. Those after them let the door go, so what the
/// count says stands between the two.
const WINDING: usize = 6;

/// Each step with what to mind before it.
fn steps(model: &Model, balance: Option<&Balance>, forces: &Forces<'_>) -> Markup {
    let text = &model.words().spring;
    let (wind, go) = text.steps.split_at(WINDING);
    let step = |(at, (mind, step)): (usize, &(&str, &str))| {
        html! {
            li {
                // The fourth is the first that puts energy into the spring.
                @if let (3, Some(balance)) = (at, balance) {
                    (parts::caution(&[&energy(model, balance), " ", mind].concat()))
                } @else {
                    (parts::caution(mind))
                }
                p.step { (step) }
            }
        }
    };
    html! {
        section {
            h2 { (text.steps_heading) }
            ol.work { @for each in wind.iter().enumerate() { (step(each)) } }
            (count(model, forces))
            ol.work start=(WINDING + 1) { @for each in (WINDING..).zip(go) { (step(each)) } }
        }
    }
}

/// What was wound, and whether the door may be let go on it.
fn count(model: &Model, forces: &Forces<'_>) -> Markup {
    let text = &model.words().spring;
    let wound = model.record.turns;
    let stripes = model.fields.get("stripes").trim().parse::<u32>().ok();
    html! {
        div.fields {
            (parts::field(model, "turns", text.wound, ""))
            (parts::field(model, "stripes", text.stripes, ""))
        }
        @if let (Some(stripes), Some(wound)) = (stripes, wound) {
            @if stripes_agree(stripes, wound.turns()) {
                (parts::verdict("clear", text.agree[0]))
            } @else {
                (parts::verdict("stop", text.agree[1]))
            }
        }
        @match forces {
            Forces::Unread(why) => (parts::verdict("stop", why)),
            Forces::Known { hand, .. } => (too_much_for_the_hand(model, hand)),
            Forces::Unknown => {}
        }
    }
}

/// What pulls at the door on its way.
enum Forces<'b> {
    /// Why one of the figures that were typed is not understood: nobody knows how this spring is
    /// wound.
    Unread(String),
    /// Without a weight, or a room to move in.
    Unknown,
    Known {
        balance: &'b Balance,
        points: Vec<Point>,
        hand: Hand,
    },
}

impl<'b> Forces<'b> {
    fn of(model: &Model, balance: Option<&'b Balance>) -> Self {
        let typed = ["turns", "drum", "preload", "weight"];
        if let Some(why) = typed.iter().find_map(|name| parts::amiss(model, name)) {
            return Self::Unread(why);
        }
        let (Some(balance), Some(room)) = (balance, model.room()) else { return Self::Unknown };
        let points = balance.points(&room.curtain(), POINTS);
        let hand = Hand::of(balance, &points);
        Self::Known { balance, points, hand }
    }
}

/// How many heights of the door the forces are reckoned at.
const POINTS: u32 = 96;

/// The plot, and what it says.
fn plot(model: &Model, forces: &Forces<'_>) -> Markup {
    let text = &model.words().balance;
    let (balance, points, hand) = match forces {
        // Said at the count.
        Forces::Unread(_) => return html! {},
        Forces::Unknown => {
            return html! { section { h2 { (text.heading) } p { (text.no_weight) } } };
        }
        Forces::Known { balance, points, hand } => (balance, points, hand),
    };
    let told = |newtons: f64| model.told_weight(Weight::from_newtons(newtons));
    html! {
        section {
            h2 { (text.heading) }
            div.columns {
                figure.picture {
                    @let sheet = Sheet { id: "balance", speaker: model.speaker() };
                    (PreEscaped(hangtrue_draw::hang::balance(sheet, points)))
                }
                div {
                    p { ((text.open)(&told(balance.open()))) }
                    p { ((text.quarter)(&told(0.25 * balance.per_turn()))) }
                    (left_for_the_hand(model, hand))
                }
            }
        }
    }
}

/// What is left for the hand on the whole way, in newtons.
struct Hand {
    /// The most that it lifts; below nought where the spring always pulls up.
    lift: f64,
    /// The most that the spring pulls up beyond the door's weight, and where.
    pull: f64,
    up: Length,
    /// The closed door does not stay down once it is unclamped.
    flies: bool,
}

impl Hand {
    fn of(balance: &Balance, points: &[Point]) -> Self {
        let mut hand = Self { lift: 0.0, pull: 0.0, up: Length::ZERO, flies: false };
        let by_hand = |a: &&Point, b: &&Point| a.hand().total_cmp(&b.hand());
        if let (Some(closed), Some(heaviest), Some(lightest)) =
            (points.first(), points.iter().max_by(by_hand), points.iter().min_by(by_hand))
        {
            (hand.lift, hand.pull, hand.up) = (heaviest.hand(), -lightest.hand(), lightest.lift);
            // Friction holds a closed door down against a little, and it is unclamped closed.
            hand.flies = closed.hand() < -FRICTION * balance.door.newtons();
        }
        hand
    }

    fn over(newtons: f64) -> bool {
        Weight::from_newtons(newtons) > HAND_MOST
    }
}

/// Less than this, in newtons, is nothing to tell of: a luggage scale hardly shows it.
const NOTHING: f64 = 2.0;

/// What forbids to let the door go, or to move it by hand.
fn too_much_for_the_hand(model: &Model, hand: &Hand) -> Markup {
    let text = &model.words().balance;
    let told = |newtons: f64| model.told_weight(Weight::from_newtons(newtons));
    let (up, one) = (model.told(hand.up), model.told_weight(HAND_MOST));
    html! {
        @if hand.flies {
            (parts::verdict("stop", &(text.flies_up)(&told(hand.pull), &up)))
        } @else if Hand::over(hand.pull) {
            (parts::verdict("stop", &(text.pulls_up_over)(&told(hand.pull), &up, &one)))
        }
        @if Hand::over(hand.lift) {
            (parts::verdict("stop", &(text.hand_over)(&told(hand.lift), &one)))
        }
    }
}

/// What one person can lift or hold.
fn left_for_the_hand(model: &Model, hand: &Hand) -> Markup {
    let text = &model.words().balance;
    let told = |newtons: f64| model.told_weight(Weight::from_newtons(newtons));
    let held = !hand.flies && !Hand::over(hand.pull) && hand.pull > NOTHING;
    html! {
        @if !Hand::over(hand.lift) && (hand.lift > NOTHING || hand.pull <= NOTHING) {
            p { ((text.hand)(&told(hand.lift.max(0.0)))) }
        }
        @if held { p { ((text.pulls_up)(&told(hand.pull), &model.told(hand.up))) } }
    }
}

fn test(model: &Model) -> Markup {
    let text = &model.words().balance;
    let names = ["pull.up.low", "pull.down.low", "pull.up.half", "pull.down.half"];
    let does = [Behaves::Drops, Behaves::Stays, Behaves::Rises];
    let keys = ["drops", "stays", "rises"];
    let options: Vec<(&str, &str)> =
        keys.into_iter().zip(does).map(|(key, does)| (key, (text.does)(does))).collect();
    html! {
        section {
            h2 { (text.test) }
            (parts::caution(text.caution))
            p { (text.scale) }
            div.fields {
                @for (name, label) in names.into_iter().zip(text.pulls) {
                    (parts::field(model, name, label, ""))
                }
            }
            p { (text.behaves) }
            div.picks {
                @for height in Height::ALL {
                    @let name = behaves(height);
                    (pick(name, (text.height)(height), &options, model.fields.get(name)))
                }
            }
            @if model.pulls_contradict() { (parts::verdict("stop", text.contradict)) }
            @if let Some(advice) = model.advice() { (advised(model, &advice)) }
        }
    }
}

fn advised(model: &Model, advice: &Advice) -> Markup {
    let text = &model.words().balance;
    let give = model.speaker().decimal(advice.uncertainty, 1);
    let turns = turns_text(advice.turns.abs());
    html! {
        @if let Some(mismatch) = advice.mismatch {
            (parts::verdict("stop", (text.mismatch)(mismatch)))
        } @else if advice.holds() {
            (parts::verdict("clear", &(text.holds)(&give)))
        } @else {
            (parts::verdict("recheck", &if advice.turns > 0.0 {
                (text.add)(&turns, &give)
            } else {
                (text.take)(&turns, &give)
            }))
            (parts::caution(text.again))
        }
    }
}

/// The spring by wire and coil.
fn measures(model: &Model, balance: Option<&Balance>) -> Markup {
    let text = &model.words().spring;
    let names = ["wire", "coil", "coils"];
    let typed = names.iter().all(|name| !model.fields.get(name).is_empty());
    html! {
        details.working {
            summary { (text.measures) }
            div.fields {
                @for (name, label) in names.into_iter().zip(text.wire) {
                    (parts::field(model, name, label, ""))
                }
            }
            @match model.wire() {
                Some(wire) => {
                    @let rate = wire.rate(DIVISOR);
                    @let wound = model.record.turns.map(|turns| turns.turns());
                    @let wound = wound.or_else(|| model.turns().map(|turns| turns.to_wind()));
                    @let torque = rate * wound.unwrap_or(0.0);
                    @let stress = wire.stress(torque);
                    p { ((text.rate)(&told_torque(model, rate), &told_torque(model, torque))) }
                    @if let Some(balance) = balance.filter(|balance| balance.rate > 0.0) {
                        @let off = 100.0 * (rate / balance.rate - 1.0);
                        p { ((text.rate_off)(&model.speaker().decimal(off.abs(), 0), off > 0.0)) }
                    }
                    @let share = 100.0 * stress / wire.strength(A229);
                    @let said = (text.stress)(&told_stress(model, stress), &model.speaker().decimal(share, 0));
                    @if share > YIELD {
                        (parts::verdict("stop", &said))
                    } @else {
                        p { (said) }
                    }
                }
                None if typed => (parts::verdict("stop", text.no_spring)),
                None => {}
            }
            p.hint { (text.formula) }
        }
    }
}

/// Oil-tempered wire yields in bending at this share of its strength, in percent (from
/// memory, Shigley, section 10-12).
const YIELD: f64 = 87.0;

/// A pound-force inch in N·m, and a pound to the square inch in Pa.
const LBF_IN: f64 = 0.112_984_829;
const KPSI: f64 = 6_894_757.293;

fn told_torque(model: &Model, torque: f64) -> String {
    match model.scale() {
        Scale::Pound => [&model.speaker().decimal(torque / LBF_IN, 1), " lbf·in"].concat(),
        Scale::Kilogram => [&model.speaker().decimal(torque, 2), " N·m"].concat(),
    }
}

fn told_stress(model: &Model, stress: f64) -> String {
    match model.scale() {
        Scale::Pound => [&model.speaker().decimal(stress / KPSI, 0), " kpsi"].concat(),
        Scale::Kilogram => [&model.speaker().decimal(stress / 1e6, 0), " MPa"].concat(),
    }
}
