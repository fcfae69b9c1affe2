//! Links that were damaged, that are hostile, or that come while a draft is open.

use crate::walk::{at, link, numbers, to_the_check};
use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Screen};

pub(crate) async fn a_damaged_link_says_so_and_the_draft_stays(
    browser: &mut Browser,
) -> Result<()> {
    to_the_check(browser).await?;
    let before = numbers(browser).await?;
    browser.tap("button[type=submit]").await?;
    let url = link(browser).await?;
    let payload = url.split_once('#').context("a fragment")?.1.to_owned();
    let middle = payload.len() / 2;
    let changed = if &payload[middle..=middle] == "7" { "8" } else { "7" };
    let damaged = [&payload[..middle], changed, &payload[middle + 1..]].concat();
    for (name, payload) in [
        ("damaged", damaged.as_str()),
        ("cut", &payload[..payload.len() - 2]),
        ("nonsense", "1HELLO"),
    ] {
        browser.goto(&format!("/#{payload}")).await?;
        at(browser, "opened").await?;
        ensure!(
            browser.value("document.querySelector('.numbers')").await?.is_null(),
            "{name}: nothing is half applied"
        );
        browser.shoot(&format!("link-{name}")).await?;
    }
    browser.goto("/#/check").await?;
    at(browser, "check").await?;
    ensure!(numbers(browser).await? == before);
    Ok(())
}

pub(crate) async fn a_hostile_fragment_stays_text(browser: &mut Browser) -> Result<()> {
    for fragment in [
        "<img src=x onerror=window.ran=1>",
        "javascript:window.ran=1",
        "%3Cscript%3Ewindow.ran=1%3C/script%3E",
        "__proto__",
        "/../../etc",
    ] {
        browser.open(Screen::PHONE, &format!("/#{fragment}")).await?;
        browser.reload().await?;
        browser.find("#app[data-ready]").await?;
        at(browser, "opened").await?;
        ensure!(browser.value("window.ran").await?.is_null(), "{fragment}");
        ensure!(browser.value("document.querySelector('main img, main script')").await?.is_null());
    }
    Ok(())
}

/// A sticker's link that came to the walk or to the desk leads to the page that reads it.
pub(crate) async fn a_doors_record_leads_to_its_own_page(browser: &mut Browser) -> Result<()> {
    let record = hangtrue_core::hang::record::Record {
        order: crate::orders::typical(),
        serial: "HT-0042".to_owned(),
        ..Default::default()
    };
    let payload = hangtrue_link::record::encode(&record).ok().context("a payload")?;
    let lead = format!("a.button[href='hang.html#{payload}']");

    browser.open(Screen::PHONE, &format!("/#{payload}")).await?;
    at(browser, "opened").await?;
    let told = browser.text("main").await?;
    ensure!(told.contains("record of a hung door"), "{told}");
    browser.shoot("link-record").await?;
    browser.tap(&lead).await?;
    browser.find("#app[data-ready] main.hang-care").await?;
    let told = browser.text("main").await?;
    ensure!(told.contains("HT-0042"), "{told}");

    browser.open(Screen::PHONE, "/desk.html").await?;
    browser.find("#app[data-ready]").await?;
    crate::desk_sent::paste(browser, &payload).await?;
    browser.tap(".open button[type=submit]").await?;
    browser.find(&lead).await?;
    browser.shoot("desk-record").await
}
