//! What a spot says: its reading in words, and the spots it is drawn with.

use crate::glyph::{Size, text_width};
use crate::shape::Shape;
use crate::sheet::Sheet;
use crate::text::{self, Together, Words};
use hangtrue_core::{Group, Length, Spot, Survey};

/// What is drawn in place of a reading that is asked for and not there yet.
pub(crate) const OPEN: &str = "?";

impl Sheet<'_> {
    /// The words it speaks with.
    pub(crate) fn words(self) -> &'static Words {
        text::words(self.speaker.language)
    }

    /// The same for all readings together.
    pub(crate) const fn together(self) -> &'static Together {
        text::together(self.speaker.language)
    }

    /// `length` as it is lettered.
    pub(crate) fn drawn(self, length: Length) -> String {
        (self.words().drawn)(self.speaker.length(length))
    }

    /// `length` written out if it takes no more than `room` units; without its unit, if that does
    /// not (`≈ 101 13/16`).
    pub(crate) fn length(self, length: Length, size: Size, room: f64) -> String {
        let mut text = self.drawn(length);
        if text_width(&text, size) > room {
            text.truncate(text.rfind([' ', '\u{a0}']).unwrap_or(text.len()));
        }
        if text_width(&text, size) > room { self.words().off_scale.to_owned() } else { text }
    }

    /// The last reading that counts at `spot`, written out.
    pub(crate) fn reading(self, survey: &Survey, spot: Spot, room: f64) -> Option<String> {
        survey.lengths(spot).last().map(|length| self.length(length, Size::Value, room))
    }

    /// What the `asked` spots are and read, for the description.
    pub(crate) fn account(self, survey: &Survey, asked: &[Spot]) -> String {
        let words = self.words();
        let mut out = String::new();
        for &spot in asked {
            out.push(' ');
            let name = (words.spot)(spot);
            out.push_str(&match survey.lengths(spot).last() {
                Some(length) => (words.reads)(name, &self.speaker.length(length)),
                None => (words.unread)(name),
            });
        }
        out
    }

    /// What is not drawn to scale from a reading, for the description.
    pub(crate) fn caveats(self, shape: &Shape) -> String {
        let words = self.words();
        let mut out = String::new();
        for (holds, caveat) in
            [(shape.guessed(), words.assumed), (shape.limited(), words.not_to_scale)]
        {
            if holds {
                out.push(' ');
                out.push_str(caveat);
            }
        }
        out
    }
}

/// How a spot appears.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Role {
    /// It is being asked for: a tape.
    Asked,
    /// Another place of the same group: a thin line.
    Beside,
}

/// The spots that appear when `asked` are asked for, those asked for last, so
/// that they lie on top.
pub(crate) fn cast(asked: &[Spot]) -> Vec<(Spot, Role)> {
    let mut cast = Vec::with_capacity(Spot::ALL.len());
    for role in [Role::Beside, Role::Asked] {
        for spot in Spot::ALL {
            let here = match role {
                Role::Asked => asked.contains(&spot),
                Role::Beside => {
                    !asked.contains(&spot)
                        && asked.iter().any(|other| other.group() == spot.group())
                }
            };
            if here {
                cast.push((spot, role));
            }
        }
    }
    cast
}

/// Whether a group is seen from behind the truck rather than in the section.
pub(crate) const fn seen_from_behind(group: Group) -> bool {
    match group {
        Group::Width | Group::Height | Group::Diagonal | Group::Post => true,
        Group::Header | Group::Bow | Group::Loop => false,
    }
}
