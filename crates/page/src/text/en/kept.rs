//! English: what is kept on the device.

use crate::draft::Unopened;
use crate::event::Trouble;
use crate::text::Kept;
use hangtrue_core::short::digits;

pub(in crate::text) const KEPT: Kept = Kept {
    newer: "A newer version of this page is ready. What you have typed stays.",
    take_over: "Use the newer version",
    trouble,
    noted: "OK",
    take_theirs: "Show it as it is there",
    list: |count| match count {
        1 => "1 survey on this device".to_owned(),
        count => [&digits(count as u64), " surveys on this device"].concat(),
    },
    heading: "Surveys on this device",
    lede: "A browser may throw away what it keeps. The order's link is the lasting record: \
           send it, if only to yourself.",
    none: "There is none.",
    nameless: "No truck named",
    numbers: ["Width", "Height", "Header", "Bow"],
    unopened: |why| match why {
        Unopened::Newer => "A newer version of this page wrote it. Reload the page to open it.",
        Unopened::Damaged => "It is damaged and cannot be opened.",
    },
    open: "Open",
    delete: "Delete",
    indeed: "Delete this survey from the device? It cannot be brought back.",
    delete_indeed: "Delete it",
    spare: "Keep it",
    another: "Measure another opening",
};

fn trouble(trouble: Trouble) -> &'static str {
    match trouble {
        Trouble::Full => {
            "This device has no room left to keep the survey. Go on, and send the order's link \
             before you leave this page; or delete surveys that are done."
        }
        Trouble::Blocked => {
            "This browser does not let the page keep the survey. Go on, and send the order's link \
             before you leave this page."
        }
        Trouble::Emptied => {
            "The browser had thrown away what it kept of this survey. It is kept again from now \
             on; the order's link is the lasting record."
        }
        Trouble::Newer => {
            "The survey on this device was written by a newer version of this page and is left \
             as it is. Reload the page to open it; what you type now is another survey."
        }
        Trouble::Changed => "This survey has been changed in another tab.",
        Trouble::Split => {
            "This survey was changed in another tab as well. Both are kept: what you see here is \
             now a survey of its own."
        }
        Trouble::Gone => {
            "This survey was deleted in another tab. If you go on typing, it is kept again."
        }
    }
}
