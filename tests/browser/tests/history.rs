//! The browser's own Back, a reload, a change that comes back.

use crate::walk::{at, numbers, to_the_check};
use anyhow::{Result, ensure};
use hangtrue_browser::{Browser, Screen};

pub(crate) async fn back_loses_nothing(browser: &mut Browser) -> Result<()> {
    to_the_check(browser).await?;
    let before = numbers(browser).await?;
    while browser.value("!document.querySelector('main.step-width')").await? == true {
        let here = browser.value("location.hash").await?;
        browser.back().await?;
        browser.until(&format!("location.hash !== {here}")).await?;
    }
    at(browser, "width").await?;
    ensure!(browser.value("document.getElementById('width.middle').value").await? == "92 3/16");
    browser.run("history.forward()", Vec::new()).await?;
    at(browser, "height").await?;
    browser.goto("/#/check").await?;
    at(browser, "check").await?;
    ensure!(numbers(browser).await? == before);
    Ok(())
}

pub(crate) async fn a_reload_brings_back_the_same_screen_and_text(
    browser: &mut Browser,
) -> Result<()> {
    browser.open(Screen::PHONE, "/#/height").await?;
    browser.find("#app[data-ready]").await?;
    browser.tap("[id='height.left']").await?;
    browser.type_keys("101 1/").await?;
    browser.reload().await?;
    browser.find("#app[data-ready]").await?;
    at(browser, "height").await?;
    ensure!(browser.value("document.getElementById('height.left').value").await? == "101 1/");
    // The bare address: the draft goes on where it was left.
    browser.goto("/?").await?;
    at(browser, "height").await?;
    ensure!(browser.value("document.getElementById('height.left').value").await? == "101 1/");
    Ok(())
}

pub(crate) async fn a_change_comes_back_to_the_check(browser: &mut Browser) -> Result<()> {
    to_the_check(browser).await?;
    browser.tap("[data-act='change:header.center']").await?;
    at(browser, "header").await?;
    browser.until("document.activeElement.id === 'header.center'").await?;
    browser.run("document.activeElement.select()", Vec::new()).await?;
    browser.type_keys("9 3/4").await?;
    browser.tap("button[type=submit]").await?;
    at(browser, "check").await?;
    ensure!(numbers(browser).await?[2] == "9 3/4 in");
    Ok(())
}
