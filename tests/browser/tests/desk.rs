//! The counter desk: a phoned-in order, what was sent beside it, many at once.

use anyhow::{Context as _, Result, ensure};
use fantoccini::key::Key;
use hangtrue_browser::{Browser, Screen};

/// Opens the desk, ready to be typed in.
pub(crate) async fn open(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::DESK, "/desk.html").await?;
    browser.find("#app[data-ready]").await?;
    Ok(())
}

/// Whether the browser would ask before the page is left, as the page answers it.
pub(crate) async fn asks_before_leaving(browser: &Browser) -> Result<bool> {
    let left = "window.dispatchEvent(new Event('beforeunload', { cancelable: true }))";
    Ok(browser.value(left).await? == false)
}

/// A call that stands nowhere else is not left without the browser's question.
pub(crate) async fn a_call_is_not_left_without_a_question(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    ensure!(!asks_before_leaving(browser).await?, "nothing was typed");
    browser.type_keys("92 3/16").await?;
    browser.until("document.getElementById('width.middle-echo').innerText").await?;
    ensure!(asks_before_leaving(browser).await?, "a reading would be lost");
    browser.tap("[data-act=fresh]").await?;
    browser.until("document.getElementById('width.middle').value === ''").await?;
    ensure!(!asks_before_leaving(browser).await?, "the call is over");
    Ok(())
}

/// The question to put to the caller.
async fn question(browser: &Browser) -> Result<String> {
    browser.text(".question .sentence").await
}

async fn focused(browser: &Browser) -> Result<String> {
    let id = browser.value("document.activeElement.id").await?;
    Ok(id.as_str().context("no id")?.to_owned())
}

pub(crate) async fn a_phoned_in_order_by_keyboard_alone(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    ensure!(focused(browser).await? == "width.middle", "the first field has the focus");
    browser.shoot("desk-empty").await?;
    let enter = char::from(Key::Enter).to_string();
    for (field, text) in [
        ("width.middle", "ninety-two and three sixteenths"),
        ("height.center", "8' 5 1/2\""),
        ("header.center", "6 1/4"),
        ("bow.first", "1 1/4"),
    ] {
        ensure!(focused(browser).await? == field, "Enter leads to {field}");
        browser.type_keys(text).await?;
        browser.type_keys(&enter).await?;
    }
    ensure!(
        question(browser).await?
            == "Ask whether the header was measured to the roof or to the bow."
    );
    let echo = browser.text("[id='width.middle-echo']").await?;
    ensure!(echo.starts_with("92 3/16 in"), "{echo}");
    browser.shoot("desk-header-to-bow").await?;

    // It was to the bow: the clerk types what the caller says now.
    browser.tap("[id='header.center']").await?;
    browser.run("document.activeElement.select()", Vec::new()).await?;
    browser.type_keys("7 1/2").await?;
    let question = question(browser).await?;
    ensure!(question.starts_with("Ask for one more reading"), "{question}");
    browser.type_keys(&enter).await?;
    // The field of the reading that was asked for.
    let asked = focused(browser).await?;
    ensure!(asked.starts_with("loop.") || asked.starts_with("diagonal."), "{asked}");
    browser.shoot("desk-one-more").await?;
    browser.set_screen(Screen::PHONE).await?;
    let overflow = browser
        .value("document.documentElement.scrollWidth > document.documentElement.clientWidth")
        .await?;
    ensure!(overflow == false, "the desk scrolls sideways on a phone");
    browser.shoot("desk-phone").await?;
    Ok(())
}

pub(crate) async fn the_walk_knows_the_way(browser: &mut Browser) -> Result<()> {
    for path in ["/#/desk", "/"] {
        browser.open(Screen::DESK, path).await?;
        if path == "/" {
            browser.find("#app[data-ready]").await?;
            browser.tap("a[href='desk.html']").await?;
        }
        browser.find("main.desk").await?;
        browser.find("#app[data-ready]").await?;
        ensure!(browser.value("location.pathname").await? == "/desk.html");
        browser.tap(".top a").await?;
        browser.find("main.step-start").await?;
    }
    Ok(())
}
