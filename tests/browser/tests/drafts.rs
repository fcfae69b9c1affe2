//! What is typed is never lost: tabs that are killed, tabs beside each other, storage that fails.

use crate::walk::at;
use anyhow::{Result, ensure};
use hangtrue_browser::{Browser, Screen};

const FIELD: &str = "document.getElementById('width.low')";

async fn ready(browser: &Browser) -> Result<()> {
    browser.find("#app[data-ready]").await?;
    Ok(())
}

async fn typed(browser: &mut Browser, text: &str) -> Result<()> {
    browser.open(Screen::PHONE, "/#/width").await?;
    ready(browser).await?;
    browser.tap("[id='width.low']").await?;
    browser.type_keys(text).await?;
    browser.until(&format!("{FIELD}.value.endsWith({})", serde_json::json!(text))).await?;
    Ok(())
}

/// How many drafts the device keeps.
const KEPT: &str =
    "Object.keys(localStorage).filter(name => /^hangtrue-draft-[0-9]+$/.test(name)).length";

pub(crate) async fn a_killed_tab_comes_back_as_it_was(browser: &mut Browser) -> Result<()> {
    typed(browser, "92 3/").await?;
    // Another tab, the first one closed: nothing of the first but what it had stored.
    browser.in_a_new_tab().await?;
    browser.goto("/").await?;
    ready(browser).await?;
    at(browser, "width").await?;
    ensure!(browser.value(&format!("{FIELD}.value")).await? == "92 3/");
    Ok(())
}

pub(crate) async fn several_by_truck_opened_and_deleted(browser: &mut Browser) -> Result<()> {
    typed(browser, "92 3/16").await?;
    browser.goto("/#/send").await?;
    at(browser, "send").await?;
    browser.goto("/#/drafts").await?;
    at(browser, "drafts").await?;
    browser.tap("main > [data-act=restart]").await?;
    at(browser, "start").await?;
    browser.goto("/#/width").await?;
    at(browser, "width").await?;
    ensure!(browser.value(&format!("{FIELD}.value")).await? == "");
    browser.tap("[id='width.low']").await?;
    browser.type_keys("88 1/2").await?;
    browser.goto("/#/drafts").await?;
    browser.until("document.querySelectorAll('.drafts > li').length === 2").await?;
    for (screen, name) in [
        (Screen::PHONE, "drafts-phone"),
        (Screen::SMALL_PHONE, "drafts-small-phone"),
        (Screen::DESK, "drafts-desk"),
    ] {
        browser.set_screen(screen).await?;
        browser.shoot(name).await?;
    }
    browser.tap(".drafts > li:last-child [data-act^='open-draft']").await?;
    // Where it was left.
    at(browser, "send").await?;
    browser.goto("/#/width").await?;
    at(browser, "width").await?;
    ensure!(browser.value(&format!("{FIELD}.value")).await? == "92 3/16");
    browser.goto("/#/drafts").await?;
    at(browser, "drafts").await?;
    browser.tap(".drafts > li:last-child [data-act^='delete:']").await?;
    browser.find("#delete").await?;
    browser.shoot("drafts-delete-desk").await?;
    browser.tap("[data-act='delete-indeed']").await?;
    browser.until("document.querySelectorAll('.drafts > li').length === 1").await?;
    ensure!(browser.value(KEPT).await? == 1);
    let all = "JSON.stringify([{...localStorage}, {...sessionStorage}])";
    browser.tap("[data-act^='delete:']").await?;
    browser.tap("[data-act='delete-indeed']").await?;
    browser.until("document.querySelectorAll('.drafts > li').length === 0").await?;
    let left = browser.value(all).await?;
    ensure!(!left.as_str().unwrap_or_default().contains("hangtrue-draft-"), "{left}");
    Ok(())
}

pub(crate) async fn two_tabs_keep_both(browser: &mut Browser) -> Result<()> {
    typed(browser, "92").await?;
    // What another tab would do: it writes, and the event comes here.
    let other = "const name = Object.keys(localStorage).find(name => /^hangtrue-draft-[0-9]+$/.test(name));
        const text = localStorage.getItem(name).replace('/width', '/height');
        localStorage.setItem(name, text);
        if (arguments[0]) dispatchEvent(new StorageEvent('storage', { key: name, newValue: text }));";
    browser.run(other, vec![true.into()]).await?;
    browser.find(".notice [data-act='take-theirs']").await?;
    browser.shoot("changed-elsewhere-phone").await?;
    browser.tap("[data-act='take-theirs']").await?;
    at(browser, "height").await?;
    ensure!(browser.value("document.querySelector('.notice')").await?.is_null());
    // Both write before either hears: both are kept.
    browser
        .run(&other.replace("'/width', '/height'", "'/height', '/header'"), vec![false.into()])
        .await?;
    browser.tap("[id='height.left']").await?;
    browser.type_keys("101").await?;
    browser.find(".notice [data-act=noted]").await?;
    ensure!(browser.value(KEPT).await? == 2);
    browser.shoot("split-phone").await?;
    browser.reload().await?;
    ready(browser).await?;
    ensure!(browser.value("document.getElementById('height.left').value").await? == "101");
    Ok(())
}

pub(crate) async fn storage_that_fails_is_told_once(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/#/width").await?;
    ready(browser).await?;
    browser
        .run(
            "Storage.prototype.setItem = () => { throw new DOMException('', 'QuotaExceededError') }",
            Vec::new(),
        )
        .await?;
    browser.tap("[id='width.low']").await?;
    browser.type_keys("9").await?;
    browser.find(".notice [data-act=noted]").await?;
    browser.shoot("storage-full-phone").await?;
    browser.tap(".notice [data-act=noted]").await?;
    browser.tap("[id='width.low']").await?;
    browser.type_keys("2").await?;
    browser.until(&format!("{FIELD}.value === '92'")).await?;
    let told = browser.value("document.querySelector('.notice')?.innerText").await?;
    ensure!(told.is_null(), "told again: {told}");
    Ok(())
}

pub(crate) async fn what_the_browser_threw_away_is_kept_again(browser: &mut Browser) -> Result<()> {
    typed(browser, "9").await?;
    browser.run("localStorage.clear()", Vec::new()).await?;
    browser.type_keys("2").await?;
    browser.find(".notice [data-act=noted]").await?;
    ensure!(browser.value(KEPT).await? == 1);
    Ok(())
}
