//! Why a limit is there: our reason, or a dealer's own.

use crate::bounds::Reason;
use crate::profile::Words;

/// Why a limit is there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Because {
    /// A reason of ours.
    Known(Reason),
    /// A dealer's, told as theirs.
    Dealer {
        /// Who says so.
        name: String,
        /// What they say.
        reason: Words,
    },
    /// The chosen door line, of this name, needs it.
    Door(Words),
}
