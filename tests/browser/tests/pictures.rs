//! A picture of every screen, on a phone and on a desk, light and dark: to be looked at.
//! What can be measured of them is measured here: no sideways scroll, nothing clipped.

use crate::walk::at;
use anyhow::{Result, ensure};
use hangtrue_browser::{Browser, Screen};

async fn look(browser: &Browser, screen: Screen, name: &str) -> Result<()> {
    let wide = browser
        .value("document.documentElement.scrollWidth - document.documentElement.clientWidth")
        .await?;
    ensure!(wide == 0, "{name} scrolls sideways by {wide} px at {} px", screen.width);
    let clipped = browser
        .value(
            "[...document.querySelectorAll('button, .value, .typed, h1, label, .echo')]
                .filter(e => e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 2)
                .map(e => e.outerHTML.slice(0, 100))",
        )
        .await?;
    ensure!(clipped == serde_json::json!([]), "{name} clips {clipped} at {} px", screen.width);
    let language = browser.value("document.documentElement.lang").await?;
    let language = match language.as_str() {
        Some("en") | None => String::new(),
        Some(other) => format!("{other}-"),
    };
    browser.shoot(&format!("{language}{name}-{}", screen.width)).await
}

async fn fill(browser: &Browser, field: &str, text: &str) -> Result<()> {
    browser.tap(&format!("[id='{field}']")).await?;
    browser.run("document.activeElement.select()", Vec::new()).await?;
    browser.type_keys(text).await
}

pub(crate) async fn every_screen(browser: &mut Browser) -> Result<()> {
    screens(browser, "en").await
}

pub(crate) async fn every_screen_in_spanish(browser: &mut Browser) -> Result<()> {
    screens(browser, "es").await
}

pub(crate) async fn every_screen_in_french(browser: &mut Browser) -> Result<()> {
    screens(browser, "fr").await
}

async fn screens(browser: &mut Browser, language: &str) -> Result<()> {
    for screen in [Screen::SMALL_PHONE, Screen::PHONE, Screen::DESK] {
        browser.open(screen, "/").await?;
        let forget = format!(
            "localStorage.clear(); localStorage.setItem('hangtrue-language', '{language}')"
        );
        browser.run(&forget, Vec::new()).await?;
        browser.goto("/?again").await?;
        browser.find("#app[data-ready]").await?;
        at(browser, "start").await?;
        look(browser, screen, "start").await?;

        browser.goto("/#/frame").await?;
        at(browser, "frame").await?;
        browser.tap("input[name='old-door'][value=yes]").await?;
        fill(browser, "post.left", "2 1/8").await?;
        look(browser, screen, "frame").await?;

        browser.goto("/#/width").await?;
        at(browser, "width").await?;
        browser.tap("button[type=submit]").await?;
        look(browser, screen, "width-missing").await?;
        fill(browser, "width.low", "92 1/4").await?;
        fill(browser, "width.middle", "92 3/16").await?;
        look(browser, screen, "width").await?;
        fill(browser, "width.high", "921/4").await?;
        browser.tap("button[type=submit]").await?;
        look(browser, screen, "width-refused").await?;
        fill(browser, "width.high", "93 1/4").await?;
        browser.tap("button[type=submit]").await?;
        look(browser, screen, "width-question").await?;

        for (step, field, text) in [
            ("height", "height.left", "101 1/2"),
            ("header", "header.center", "6 1/2"),
            ("bow", "bow.first", "2 1/4"),
        ] {
            browser.goto(&format!("/#/{step}")).await?;
            at(browser, step).await?;
            fill(browser, field, text).await?;
            look(browser, screen, step).await?;
        }
        browser.goto("/#/check").await?;
        at(browser, "check").await?;
        look(browser, screen, "check").await?;
        browser.tap("button[type=submit]").await?;
        look(browser, screen, "check-question").await?;
        browser.goto("/#/send").await?;
        at(browser, "send").await?;
        look(browser, screen, "send-not-yet").await?;

        browser.goto("/#/check").await?;
        at(browser, "check").await?;
        while browser
            .value("document.querySelector('.confirm input:not(:checked)')")
            .await?
            .is_object()
        {
            browser.tap(".confirm:has(input:not(:checked))").await?;
        }
        browser.tap("button[type=submit]").await?;
        at(browser, "send").await?;
        look(browser, screen, "send").await?;
    }
    Ok(())
}
