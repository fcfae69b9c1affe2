//! What every picture is told.

use hangtrue_core::say::Speaker;

/// What every picture is told: a name of its own within the document, and whom it speaks to.
#[derive(Clone, Copy, Debug)]
pub struct Sheet<'a> {
    /// Prefix of the ids of the title (`{id}-title`) and description (`{id}-desc`);
    /// no other element of the document may use them.
    pub id: &'a str,
    /// The language of the words and the unit of the lengths.
    pub speaker: Speaker,
}
