//! A dealer's texts that try to be more than text, where the dealer's rules are brought along: in
//! the element on another site, and at the counter desk.

use anyhow::Result;
use fantoccini::key::Key;
use hangtrue_browser::{Browser, Screen, Site, root};
use hangtrue_core::Spot;
use hangtrue_core::order::Order;
use serde_json::{Value, json};

use crate::desk_sent::say;
use crate::embed::{at, demo, page, press};
use crate::injection::{holds, plain};
use crate::offline::has_its_rules_kept;
use crate::orders::{payload, typical};

const HOST: &str = "hangtrue-survey";

/// Rules with `texts` in all places that come before the end, and no demand that stops earlier.
fn rules(site: Site, texts: [&str; 3]) -> Result<Site> {
    let prairie = std::fs::read_to_string(root().join("demo/profiles/prairie.json"))?;
    let mut profile: Value = serde_json::from_str(&prairie)?;
    profile["name"] = json!(texts[0]);
    profile["texts"]["start"] = json!(texts[1]);
    profile["limits"]["width"]["reason"] = json!(texts[1]);
    profile["doors"][0]["name"] = json!(texts[2]);
    profile["doors"][1]["note"] = json!(texts[0]);
    profile["questions"] = json!([]);
    profile["closing"] = json!([]);
    Ok(site.text("/hostile.json", &profile.to_string()))
}

pub(crate) async fn in_the_element(browser: &mut Browser) -> Result<()> {
    let mut order = typical();
    order.survey.add(Spot::WidthHigh, "97 1/4");
    for texts in plain() {
        let order = Order { profile: Some((texts[0].to_owned(), 4)), ..order.clone() };
        let payload = payload(&order)?;
        let body = format!("<{HOST} profile=/hostile.json");
        browser.serve(rules(page(&format!("{body}></{HOST}>"))?, texts)?).await?;
        browser.open(Screen::PHONE, "/host/").await?;
        browser.until(&crate::embed::inside("s.querySelector('#rules')")).await?;
        holds(browser, "the element's start", &texts[..2]).await?;
        press(browser, HOST, "button[type=submit]", Key::Enter).await?;
        at(browser, HOST, "frame").await?;
        holds(browser, "the element's frame", &[texts[2], texts[0]]).await?;
        let opens = page(&format!("{body} order={payload}></{HOST}>"))?;
        browser.serve(rules(opens, texts)?).await?;
        browser.goto("/host/").await?;
        at(browser, HOST, "opened").await?;
        holds(browser, "opened in the element", &[texts[0], texts[1]]).await?;
        press(browser, HOST, "#main button[type=submit]", Key::Enter).await?;
        at(browser, HOST, "check").await?;
        holds(browser, "the element's check", &[texts[0], texts[1]]).await?;
    }
    Ok(())
}

pub(crate) async fn at_the_desk(browser: &mut Browser) -> Result<()> {
    for texts in plain() {
        browser.serve(rules(demo()?, texts)?).await?;
        browser.open(Screen::PHONE, "/desk.html?profile=/hostile.json").await?;
        browser.find("#app[data-ready] #rules").await?;
        say(browser, ["97", "101 1/2", "9 1/2", "1 1/4"]).await?;
        holds(browser, "said by a profile", &[texts[0], texts[1]]).await?;
        browser.tap("[data-act=keep]").await?;
        browser.find("#sent-0").await?;
        holds(browser, "kept by a profile", &texts[..2]).await?;
        has_its_rules_kept(browser).await?;
    }
    Ok(())
}
