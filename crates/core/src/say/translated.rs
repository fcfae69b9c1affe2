//! What is said in another language than English.
//!
//! In functions of their own, never inlined: the page may load them after the rest
//! (`crates/xtask/src/split`), for whoever speaks English does not need them.

use super::spoken::{Aloud, Parts};
use super::{Language, Message, Speaker, en, es, fr};
use crate::bounds::Reason;
use crate::length::ReadError;
use crate::spot::{Dimension, Spot};

#[inline(never)]
pub(super) fn say(speaker: Speaker, message: &Message) -> String {
    match speaker.language {
        Language::English => en::say(message, speaker.unit),
        Language::Spanish => es::say(message, speaker.unit),
        Language::French => fr::say(message, speaker.unit),
    }
}

#[inline(never)]
pub(super) fn dimension(speaker: Speaker, dimension: Dimension) -> &'static str {
    match speaker.language {
        Language::English => en::names::dimension(dimension),
        Language::Spanish => es::names::dimension(dimension),
        Language::French => fr::names::dimension(dimension),
    }
}

#[inline(never)]
pub(super) fn place(speaker: Speaker, spot: Spot) -> &'static str {
    match speaker.language {
        Language::English => en::names::place(spot),
        Language::Spanish => es::names::place(spot),
        Language::French => fr::names::place(spot),
    }
}

#[inline(never)]
pub(super) fn spot(speaker: Speaker, spot: Spot) -> &'static str {
    match speaker.language {
        Language::English => en::names::spot(spot),
        Language::Spanish => es::names::spot(spot),
        Language::French => fr::names::spot(spot),
    }
}

#[inline(never)]
pub(super) fn the_dimension(speaker: Speaker, dimension: Dimension) -> String {
    match speaker.language {
        Language::English => ["the ", en::names::dimension(dimension)].concat(),
        Language::Spanish => es::names::the_dimension(dimension),
        Language::French => fr::names::the_dimension(dimension),
    }
}

#[inline(never)]
pub(super) fn the_spot(speaker: Speaker, spot: Spot) -> String {
    match speaker.language {
        Language::English => ["the ", en::names::spot(spot)].concat(),
        Language::Spanish => es::names::the_spot(spot),
        Language::French => fr::names::the_spot(spot),
    }
}

#[inline(never)]
pub(super) fn reason(speaker: Speaker, reason: Reason) -> &'static str {
    match speaker.language {
        Language::English => en::rule::reason(reason),
        Language::Spanish => es::rule::reason(reason),
        Language::French => fr::rule::reason(reason),
    }
}

#[inline(never)]
pub(super) fn read_error(speaker: Speaker, error: &ReadError, text: &str) -> String {
    match speaker.language {
        Language::English => en::reading::refused(error.kind, text.trim(), speaker.unit),
        Language::Spanish => es::reading::refused(error.kind, text.trim(), speaker.unit),
        Language::French => fr::reading::refused(error.kind, text.trim(), speaker.unit),
    }
}

#[inline(never)]
pub(super) fn aloud(speaker: Speaker, parts: Parts, aloud: Aloud) -> String {
    match speaker.language {
        Language::English => en::spoken::aloud(parts, aloud),
        Language::Spanish => es::spoken::aloud(parts, aloud),
        Language::French => fr::spoken::aloud(parts, aloud),
    }
}
