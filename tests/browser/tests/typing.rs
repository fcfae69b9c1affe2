//! A field while it is typed in: the caret stays, the wheel changes nothing, keys help.

use crate::walk::at;
use anyhow::{Result, ensure};
use fantoccini::key::Key;
use hangtrue_browser::{Browser, Screen};

const FIELD: &str = "document.getElementById('width.low')";

async fn open(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/#/width").await?;
    browser.find("#app[data-ready]").await?;
    at(browser, "width").await?;
    browser.tap("[id='width.low']").await
}

pub(crate) async fn the_caret_survives(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    browser.type_keys("92 1/4").await?;
    browser.value(&format!("{FIELD}.isTheSame = true")).await?;
    // Into the middle, one key at a time: each one draws the screen anew.
    for _ in 0..4 {
        browser.type_keys(&char::from(Key::Left).to_string()).await?;
    }
    browser.type_keys("51").await?;
    ensure!(browser.value(&format!("{FIELD}.value")).await? == "9251 1/4");
    ensure!(browser.value(&format!("{FIELD}.selectionStart")).await? == 4);
    ensure!(browser.value(&format!("{FIELD}.isTheSame")).await? == true, "the node was replaced");
    ensure!(browser.value(&format!("document.activeElement === {FIELD}")).await? == true);
    browser.run(&format!("{FIELD}.setSelectionRange(1, 3)"), Vec::new()).await?;
    browser.type_keys("0").await?;
    ensure!(browser.value(&format!("{FIELD}.value")).await? == "901 1/4");
    ensure!(browser.value(&format!("{FIELD}.selectionStart")).await? == 2);
    Ok(())
}

pub(crate) async fn echo_and_tape_follow_each_key(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    browser.type_keys("92 3/16").await?;
    let echo = browser.text("[id='width.low-echo']").await?;
    ensure!(echo.contains("92 3/16 in") && echo.contains("mm"), "{echo}");
    browser.find("figure.tape svg").await?;
    // Held back, then spoken once.
    browser.until("document.getElementById('spoken').innerText.includes('92\u{a0}3/16')").await?;
    Ok(())
}

pub(crate) async fn the_fraction_keys_keep_the_focus(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    browser.type_keys("92").await?;
    browser.tap("[data-act='eighths:2']").await?;
    browser.until(&format!("{FIELD}.value === '92 1/4'")).await?;
    browser.tap("[data-act='nudge:-1587500']").await?;
    browser.until(&format!("{FIELD}.value === '92 3/16'")).await?;
    ensure!(browser.value(&format!("document.activeElement === {FIELD}")).await? == true);
    browser.tap("[data-act=letters]").await?;
    browser.until(&format!("{FIELD}.inputMode === 'text'")).await?;
    let small = browser
        .value(
            "[...document.querySelectorAll('button, input:not([type=radio]), a, label:has(input)')]
                .filter(e => e.getClientRects().length)
                .map(e => [e.outerHTML.slice(0, 80), e.getBoundingClientRect().height,
                    e.matches('.keys button') ? 56 : 48])
                .filter(([, height, least]) => height < least)",
        )
        .await?;
    ensure!(small == serde_json::json!([]), "lower than 48 px, or a key than 56: {small}");
    ensure!(browser.value("document.querySelectorAll('.keys button').length > 7").await? == true);
    Ok(())
}

pub(crate) async fn a_lost_space_is_offered_back(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    browser.type_keys("961/4").await?;
    ensure!(browser.value("document.querySelector('.problem')").await?.is_null());
    browser.tap("button[type=submit]").await?;
    browser.until("document.activeElement.id === 'problems'").await?;
    let told = browser.text("#problems li").await?;
    ensure!(browser.text(".problem .what").await? == told, "the same words twice");
    ensure!(browser.value(&format!("{FIELD}.value")).await? == "961/4", "what was typed is kept");
    browser.shoot("width-lost-space").await?;
    browser.tap(".problem button").await?;
    browser.until(&format!("{FIELD}.value === '96 1/4 in'")).await?;
    browser.tap("button[type=submit]").await?;
    at(browser, "height").await
}

/// The keys and the tape leave the field before, which stands above: what the thumb is on does not move.
pub(crate) async fn a_field_that_is_touched_stays_where_it_is(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    browser.type_keys("92 3/16").await?;
    browser.find("figure.tape svg").await?;
    let moved = browser
        .value(
            "(() => {
                const field = document.getElementById('width.high');
                scrollBy(0, field.getBoundingClientRect().top - 200);
                const before = field.getBoundingClientRect().top;
                field.focus({ preventScroll: true });
                return [document.querySelector('.reading.active input') === field,
                    Math.abs(field.getBoundingClientRect().top - before)];
            })()",
        )
        .await?;
    ensure!(moved[0] == true, "its keys are there");
    ensure!(moved[1].as_f64().is_some_and(|px| px < 2.0), "{moved}");
    Ok(())
}

pub(crate) async fn enter_leads_to_the_next_place(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    let enter = char::from(Key::Enter).to_string();
    let hint =
        |field: &str| format!("document.getElementById('{field}').getAttribute('enterkeyhint')");
    ensure!(browser.value(&hint("width.low")).await? == "next");
    ensure!(browser.value(&hint("width.high")).await? == "go");
    browser.type_keys("92 1/4").await?;
    browser.type_keys(&enter).await?;
    browser.until("document.activeElement.id === 'width.middle'").await?;
    browser.type_keys("92 3/16").await?;
    browser.type_keys(&enter).await?;
    browser.until("document.activeElement.id === 'width.high'").await?;
    // Left blank: one place is enough to go on.
    browser.type_keys(&enter).await?;
    at(browser, "height").await
}
