//! Every state a screen can be in, one after the other: empty, filled, refused, asked back.

use crate::walk::at;
use anyhow::Result;
use hangtrue_browser::{Browser, Screen};

async fn fill(browser: &Browser, field: &str, text: &str) -> Result<()> {
    browser.tap(&format!("[id='{field}']")).await?;
    browser.run("document.activeElement.select()", Vec::new()).await?;
    browser.type_keys(text).await
}

async fn fresh(browser: &Browser, language: &str) -> Result<()> {
    let forget =
        format!("localStorage.clear(); localStorage.setItem('hangtrue-language', '{language}')");
    browser.run(&forget, Vec::new()).await?;
    browser.goto("/?again").await?;
    browser.find("#app[data-ready]").await?;
    Ok(())
}

/// Walks, and calls `visit` with each state's name.
pub(crate) async fn of_the_walk(
    browser: &mut Browser,
    screen: Screen,
    language: &str,
    visit: impl AsyncFn(&Browser, &str) -> Result<()>,
) -> Result<()> {
    browser.open(screen, "/").await?;
    fresh(browser, language).await?;
    at(browser, "start").await?;
    visit(browser, "start").await?;

    browser.goto("/#/frame").await?;
    at(browser, "frame").await?;
    browser.tap("input[name='old-door'][value=yes]").await?;
    fill(browser, "post.left", "2 1/8").await?;
    visit(browser, "frame").await?;

    browser.goto("/#/width").await?;
    at(browser, "width").await?;
    browser.tap("button[type=submit]").await?;
    visit(browser, "width-missing").await?;
    fill(browser, "width.low", "92 1/4").await?;
    fill(browser, "width.middle", "92 3/16").await?;
    visit(browser, "width").await?;
    fill(browser, "width.high", "921/4").await?;
    browser.tap("button[type=submit]").await?;
    visit(browser, "width-refused").await?;
    fill(browser, "width.high", "93 1/4").await?;
    browser.tap("button[type=submit]").await?;
    visit(browser, "width-question").await?;

    for (step, field, text) in [
        ("height", "height.left", "101 1/2"),
        ("header", "header.center", "6 1/2"),
        ("bow", "bow.first", "2 1/4"),
    ] {
        browser.goto(&format!("/#/{step}")).await?;
        at(browser, step).await?;
        fill(browser, field, text).await?;
        visit(browser, step).await?;
    }
    browser.goto("/#/check").await?;
    at(browser, "check").await?;
    visit(browser, "check").await?;
    browser.tap("button[type=submit]").await?;
    visit(browser, "check-question").await?;
    browser.goto("/#/send").await?;
    at(browser, "send").await?;
    visit(browser, "send-not-yet").await?;

    browser.goto("/#/check").await?;
    at(browser, "check").await?;
    while browser.value("document.querySelector('.confirm input:not(:checked)')").await?.is_object()
    {
        browser.tap(".confirm:has(input:not(:checked))").await?;
    }
    browser.tap("button[type=submit]").await?;
    at(browser, "send").await?;
    visit(browser, "send").await
}
