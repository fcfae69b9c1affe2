//! What the page asks of the browser.

use crate::address::Address;
use hangtrue_core::say::Language;

/// One thing for the browser to do, after the screen has been drawn.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Effect {
    /// Show this address, as a new entry in the history.
    Push(Address),
    /// Show this address in place of the present one, and keep this text with it for
    /// [`crate::boot`].
    Replace(Address, Option<String>),
    /// Go to another page of the site, in place of this one.
    Visit(&'static str),
    /// Go back one entry in the history.
    Back,
    /// Put the focus on the element of this id and show it.
    Focus(String),
    /// Go to the top of the page, with the focus on its heading.
    Top,
    /// Keep this text as the draft that is open here, a new one where none is.
    Save(String),
    /// The draft that is open here stays as it is: what is kept from now on is another.
    Fresh,
    /// Throw away the draft of this number.
    Forget(u32),
    /// Open the draft of this number, or the one that is open here as it is kept now;
    /// answered by [`crate::Event::Loaded`].
    Load(Option<u32>),
    /// Tell the drafts that are kept, by [`crate::Event::Drafts`].
    List,
    /// Send [`crate::Event::Settled`] once the person has stopped typing.
    Settle,
    /// Put this text on the clipboard, then send [`crate::Event::Copied`].
    Copy(String),
    /// Hand this over by the system's share sheet.
    Share {
        /// Its heading.
        title: String,
        /// One line of text.
        text: String,
        /// The link.
        url: String,
    },
    /// Hand this text over as a file.
    Download {
        /// The file's name.
        name: String,
        /// Its media type.
        media: &'static str,
        /// What is in it.
        text: String,
    },
    /// Open this address beside the page.
    Open(String),
    /// Print the page.
    Print,
    /// Mark the document as being in this language, with this title.
    Speak(Language, String),
    /// Remember that this language was chosen.
    Remember(Language),
    /// Keep the screen awake from now on, where the browser can.
    StayAwake,
    /// A light tremble of the device, where it has one.
    Tremble,
    /// Let the newer build of the page take over.
    TakeOver,
}
