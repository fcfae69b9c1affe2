//! The page as a guest in another's page: it has screens and a way back, but no address
//! of its own, and it prints and navigates nothing that is not its own.

use crate::address::Address;
use crate::draft;
use crate::effect::Effect;
use crate::event::{Action, Event};
use crate::message::Message;
use crate::model::{Environment, Model};
use crate::step::Step;
use crate::update::update;
use hangtrue_core::check::Report;
use hangtrue_core::order::Order;
use hangtrue_core::profile::Profile;
use hangtrue_link::json::Id;
use hangtrue_link::json::order::OrderFile;

/// The screens gone through; what is more than that is forgotten, oldest first.
const PAST: usize = 100;

/// The page, and the way that led here.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Guest {
    /// What is shown.
    pub page: Model,
    past: Vec<Address>,
    now: Address,
    told: Option<Order>,
    completed: Option<String>,
}

/// What the host page is to be told.
#[derive(Clone, Debug, PartialEq)]
pub struct News {
    /// The order as it stands, as `hangtrue-order/1`.
    pub order: String,
    /// The order's message and link; none while something stands against sending it.
    pub message: Option<Message>,
    /// The order has come to where it is handed over, and was not told before as it is.
    pub complete: bool,
}

impl Guest {
    /// A new survey, or the one of `draft`.
    #[must_use]
    pub fn new(environment: Environment, draft: Option<&str>) -> Self {
        let mut page = Model::new(environment);
        if let Some(draft) = draft {
            // One that cannot be opened is left out: the element begins anew.
            let _ = draft::restore(&mut page, draft);
        }
        let (now, told) = (page.address(), Some(page.order.clone()));
        Self { page, now, told, ..Self::default() }
    }

    /// Begins again with nothing typed.
    pub fn restart(&mut self) -> Vec<Effect> {
        self.past.clear();
        self.update(Event::Press(Action::Restart.code()))
    }

    /// Takes a dealer's rules, or what was wrong with them; none for the built-in ones.
    pub fn rule_by(&mut self, rules: Option<Result<Profile, String>>) {
        self.page.rule_by(rules.unwrap_or_else(|| Ok(Profile::default())));
    }

    /// Takes `event` in. Of the effects none touches the host page's address, history or
    /// print.
    pub fn update(&mut self, event: Event) -> Vec<Effect> {
        let effects = update(&mut self.page, event);
        let mut own = Vec::with_capacity(effects.len());
        for effect in effects {
            match effect {
                Effect::Push(address) => self.push(address),
                Effect::Replace(address, _) => self.now = address,
                Effect::Back => own.extend(self.back()),
                // The guest's page is the host's: it prints from a page of its own.
                Effect::Print => own.extend(self.link().map(Effect::Open)),
                Effect::Visit(_) => {}
                effect => own.push(effect),
            }
        }
        own
    }

    /// Goes where a link of the page leads, `/check`.
    pub fn follow(&mut self, address: &str) -> Vec<Effect> {
        let Some(to) = Address::from_text(address) else { return Vec::new() };
        self.push(to);
        self.update(Event::Navigate(address.to_owned()))
    }

    /// Where an address of the page leads that is not one of its screens: another page of
    /// the site is beside the page that links open. None where the browser knows itself
    /// what to do (a telephone number, a mail).
    #[must_use]
    pub fn outside(&self, address: &str) -> Option<String> {
        if address.starts_with("https:") || address.starts_with("http:") {
            return Some(address.to_owned());
        }
        let base = self.page.environment.base.split(['?', '#']).next().unwrap_or_default();
        let (folder, _) = base.rsplit_once('/')?;
        (!address.contains(':')).then(|| [folder, "/", address].concat())
    }

    /// What the host page is to be told, if the order is another than when it was last told.
    pub fn news(&mut self) -> Option<News> {
        let changed = self.told.as_ref() != Some(&self.page.order);
        if !changed && self.page.step != Step::Send {
            return None;
        }
        let report = self.page.report();
        let message = self.message(&report);
        let link = message.as_ref().map(|message| &message.link);
        let complete =
            self.page.step == Step::Send && link.is_some() && link != self.completed.as_ref();
        if complete {
            self.completed = link.cloned();
        }
        self.told = Some(self.page.order.clone());
        (changed || complete).then(|| {
            let sent = self.page.sent(report.verdict);
            let order = OrderFile::new(Id::None, &sent, &report).text();
            News { order, message, complete }
        })
    }

    fn push(&mut self, address: Address) {
        if self.past.len() >= PAST {
            self.past.remove(0);
        }
        self.past.push(core::mem::replace(&mut self.now, address));
    }

    fn back(&mut self) -> Vec<Effect> {
        let before = self.past.pop().or_else(|| self.page.step.back().map(Address::of));
        let Some(before) = before else { return Vec::new() };
        self.now = before;
        self.update(Event::Navigate(before.text()))
    }

    fn message(&self, report: &Report) -> Option<Message> {
        let ready = self.page.against(report).is_empty();
        if ready { Message::of(&self.page, report).ok() } else { None }
    }

    fn link(&self) -> Option<String> {
        if let (Step::Opened, Some(Ok(order))) = (self.page.step, &self.page.opened) {
            return hangtrue_link::url(&self.page.environment.base, order).ok();
        }
        self.message(&self.page.report()).map(|message| message.link)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn guest() -> Guest {
        Guest::new(Environment { base: "https://d.example/".into(), ..Default::default() }, None)
    }

    fn press(guest: &mut Guest, code: &str) -> Vec<Effect> {
        guest.update(Event::Press(code.into()))
    }

    fn type_in(guest: &mut Guest, name: &str, value: &str) {
        guest.update(Event::Input { name: name.into(), value: value.into() });
    }

    fn filled() -> Guest {
        let mut guest = guest();
        press(&mut guest, "next");
        type_in(&mut guest, "prepared", "yes");
        press(&mut guest, "next");
        for (name, value) in [
            ("width.middle", "92 3/16"),
            ("height.center", "101 1/2"),
            ("header.center", "9 1/2"),
            ("bow.first", "1 1/4"),
        ] {
            type_in(&mut guest, name, value);
            press(&mut guest, "next");
        }
        while guest.page.step == Step::Proof {
            press(&mut guest, "skip");
        }
        guest
    }

    #[test]
    fn it_goes_back_by_itself_and_never_asks_for_an_address() {
        let mut guest = guest();
        for step in [Step::Frame, Step::Width] {
            let effects = press(&mut guest, "next");
            assert_eq!(guest.page.step, step);
            let outside = |effect: &Effect| {
                matches!(effect, Effect::Push(_) | Effect::Replace(..) | Effect::Back)
            };
            assert!(!effects.iter().any(outside), "{effects:?}");
        }
        press(&mut guest, "back");
        assert_eq!(guest.page.step, Step::Frame);
        press(&mut guest, "back");
        assert_eq!(guest.page.step, Step::Start);
        // A draft that begins in the middle has no past: the walk's own order leads back.
        let mut later = Guest::default();
        later.page.step = Step::Height;
        press(&mut later, "back");
        assert_eq!(later.page.step, Step::Width);
    }

    #[test]
    fn a_link_of_the_page_is_followed_inside_and_leads_back() {
        let mut guest = filled();
        guest.follow("/check");
        guest.follow("/scan");
        assert_eq!(guest.page.step, Step::Scan);
        press(&mut guest, "back");
        assert_eq!(guest.page.step, Step::Check);
        assert!(guest.follow("https://elsewhere.example").is_empty());
    }

    #[test]
    fn news_is_told_once_and_complete_with_the_link() {
        let mut guest = guest();
        assert_eq!(guest.news(), None);
        type_in(&mut guest, "width.low", "92");
        let news = guest.news().unwrap();
        assert!(news.message.is_none() && !news.complete);
        assert!(news.order.contains(r#""width":{"low":"92"}"#), "{}", news.order);
        assert_eq!(guest.news(), None);
        let mut guest = filled();
        assert!(guest.news().is_some_and(|news| news.message.is_some() && !news.complete));
        press(&mut guest, "next");
        assert_eq!(guest.page.step, Step::Send);
        let news = guest.news().unwrap();
        assert!(news.complete && news.message.unwrap().link.starts_with("https://d.example/#"));
        assert_eq!(guest.news(), None);
        type_in(&mut guest, "note", "blue truck");
        assert!(guest.news().is_some_and(|news| news.complete));
    }

    #[test]
    fn a_page_of_the_site_is_beside_the_one_that_links_open() {
        let mut guest = guest();
        guest.page.environment.base = "https://d.example/a/?profile=/p.json".into();
        let beside = Some("https://d.example/a/desk.html".to_owned());
        assert_eq!(guest.outside("desk.html"), beside);
        assert_eq!(guest.outside("https://e.example/"), Some("https://e.example/".to_owned()));
        for left in ["tel:+15550100140", "mailto:a@b.example", "sms:1", "javascript:alert(1)"] {
            assert_eq!(guest.outside(left), None);
        }
    }

    #[test]
    fn it_begins_again() {
        let mut guest = filled();
        guest.restart();
        assert_eq!(guest.page.step, Step::Start);
        assert!(!guest.page.has_draft());
    }

    #[test]
    fn it_prints_from_a_page_of_its_own() {
        let mut guest = filled();
        press(&mut guest, "next");
        let effects = press(&mut guest, "print");
        let [Effect::Open(link)] = effects.as_slice() else { panic!("{effects:?}") };
        assert!(link.starts_with("https://d.example/#"));
    }
}
