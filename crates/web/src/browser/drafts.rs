//! The drafts, in the browser's storage: each under a number of its own, and which of them is
//! open in this tab.
//!
//! Two tabs may have the same draft open. Before anything is written it is looked whether what
//! stands there is what this tab saw last; if not, both are kept.

use super::Browser;
use crate::app::{App, Program};
use hangtrue_page::Event;
use hangtrue_page::core::short::digits;
use hangtrue_page::event::Trouble;
use std::cell::{Cell, RefCell};
use std::rc::Rc;
use web_sys::{Storage, StorageEvent};

/// A draft is kept under this and its number.
const DRAFT: &str = "hangtrue-draft-";
/// The number of the draft that was written last, in any tab.
const LAST: &str = "hangtrue-last";
/// The number of the draft that is open in this tab: there as long as the tab is. Empty: the
/// page had stopped, and the person began anew (`web/fault.js`).
const HERE: &str = "hangtrue-here";
/// Where older builds kept their one draft.
const OLD: &str = "hangtrue-draft";

/// The draft that is open in this tab.
#[derive(Default)]
pub(super) struct Here {
    id: Cell<Option<u32>>,
    /// What stood there when this tab last looked.
    seen: RefCell<Option<String>>,
    /// Whether it was told that nothing can be kept: that is said once.
    told: Cell<bool>,
}

fn name(id: u32) -> String {
    [DRAFT, &digits(id)].concat()
}

fn numbers(storage: &Storage) -> Vec<u32> {
    let names = (0..storage.length().unwrap_or(0)).filter_map(|at| storage.key(at).ok()?);
    names.filter_map(|name| name.strip_prefix(DRAFT)?.parse().ok()).collect()
}

fn read(storage: &Storage, name: &str) -> Option<String> {
    storage.get_item(name).ok()?
}

impl Browser {
    fn tab(&self) -> Option<Storage> {
        self.window.session_storage().ok().flatten()
    }

    /// The draft to begin with: this tab's, else the one that was written last.
    pub(crate) fn draft(&self) -> Option<String> {
        let storage = self.storage()?;
        if let Some(old) = read(&storage, OLD) {
            // Only once the draft stands in its new place may it go from the old one.
            if storage.set_item(&name(self.free(&storage)), &old).is_ok() {
                let _ = storage.remove_item(OLD);
            }
        }
        let here = self.tab().and_then(|tab| read(&tab, HERE));
        if here.as_deref() == Some("") {
            return None;
        }
        let number = |text: String| text.parse().ok();
        let known = |id: &u32| read(&storage, &name(*id)).is_some();
        let id = here
            .and_then(number)
            .filter(known)
            .or_else(|| read(&storage, LAST).and_then(number).filter(known))
            .or_else(|| numbers(&storage).into_iter().max())?;
        self.open_here(&storage, id)
    }

    /// Makes the draft of that number the one that is open in this tab.
    fn open_here(&self, storage: &Storage, id: u32) -> Option<String> {
        let text = read(storage, &name(id))?;
        self.is_here(id, text.clone());
        Some(text)
    }

    /// The draft of that number is open in this tab, and that is what stands there.
    fn is_here(&self, id: u32, text: String) {
        self.here.seen.replace(Some(text));
        // A key writes as little as it can: a store tells every other tab what was written.
        if self.here.id.replace(Some(id)) != Some(id)
            && let Some(tab) = self.tab()
        {
            let _ = tab.set_item(HERE, &digits(id));
        }
    }

    fn free(&self, storage: &Storage) -> u32 {
        numbers(storage).into_iter().max().unwrap_or(0).saturating_add(1)
    }

    /// Keeps the draft that is open here.
    pub(super) fn save<P: Program>(&self, app: &Rc<App<P>>, text: &str) {
        let Some(storage) = self.storage() else { return self.tell_once(app, Trouble::Blocked) };
        let (mut id, mut trouble) = (self.here.id.get(), None);
        if let Some(known) = id {
            let stands = read(&storage, &name(known));
            if stands.is_none() {
                trouble = Some(Trouble::Emptied);
            } else if stands != *self.here.seen.borrow() {
                trouble = Some(Trouble::Split);
                id = None;
            }
        }
        let id = id.unwrap_or_else(|| self.free(&storage));
        if storage.set_item(&name(id), text).is_err() {
            return self.tell_once(app, Trouble::Full);
        }
        let number = digits(id);
        if read(&storage, LAST).as_ref() != Some(&number) {
            let _ = storage.set_item(LAST, &number);
        }
        self.is_here(id, text.to_owned());
        if let Some(trouble) = trouble {
            app.take_unasked(Event::Trouble(trouble));
        }
    }

    fn tell_once<P: Program>(&self, app: &Rc<App<P>>, trouble: Trouble) {
        if !self.here.told.replace(true) {
            app.take_unasked(Event::Trouble(trouble));
        }
    }

    /// What is kept from now on is another draft.
    pub(super) fn fresh(&self) {
        self.here.id.set(None);
        self.here.seen.replace(None);
        if let Some(tab) = self.tab() {
            let _ = tab.remove_item(HERE);
        }
        if let Some(storage) = self.storage() {
            let _ = storage.remove_item(LAST);
        }
    }

    /// Throws a draft away.
    pub(super) fn forget(&self, id: u32) {
        if let Some(storage) = self.storage() {
            let _ = storage.remove_item(&name(id));
        }
        if self.here.id.get() == Some(id) {
            self.fresh();
        }
    }

    /// Opens a draft here.
    pub(super) fn load<P: Program>(&self, app: &Rc<App<P>>, id: Option<u32>) {
        let id = id.or(self.here.id.get());
        let text = self.storage().zip(id).and_then(|(storage, id)| self.open_here(&storage, id));
        if let Some(text) = text {
            app.take(Event::Loaded(text));
        }
    }

    /// Tells the drafts that are kept.
    pub(super) fn list<P: Program>(&self, app: &Rc<App<P>>) {
        let Some(storage) = self.storage() else { return };
        let kept = numbers(&storage).into_iter();
        let kept = kept.filter_map(|id| Some((id, read(&storage, &name(id))?))).collect();
        app.take(Event::Drafts(kept));
    }

    /// Another tab wrote something.
    pub(super) fn elsewhere<P: Program>(&self, app: &Rc<App<P>>, event: &StorageEvent) {
        let Some(here) = self.here.id.get().filter(|id| event.key() == Some(name(*id))) else {
            return;
        };
        let stands = self.storage().and_then(|storage| read(&storage, &name(here)));
        if stands.is_none() {
            self.fresh();
            app.take_unasked(Event::Trouble(Trouble::Gone));
        } else if stands != *self.here.seen.borrow() {
            app.take_unasked(Event::Trouble(Trouble::Changed));
        }
    }
}
