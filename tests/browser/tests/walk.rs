//! The whole walk by touch and by keyboard alone, and the order that comes of it.

use anyhow::{Context as _, Result, ensure};
use fantoccini::key::Key;
use hangtrue_browser::{Browser, Screen};

/// The readings of an invented truck: field, and what is typed there.
pub(crate) const READINGS: [(&str, &str); 4] = [
    ("width.middle", "92 3/16"),
    ("height.center", "8' 5 1/2\""),
    ("header.center", "9 1/2"),
    ("bow.first", "1 1/4"),
];

/// Waits for the screen of that step.
pub(crate) async fn at(browser: &Browser, step: &str) -> Result<()> {
    browser.find(&format!("main.step-{step}")).await?;
    Ok(())
}

/// From the first screen to the check, by touch.
pub(crate) async fn to_the_check(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    browser.find("#app[data-ready]").await?;
    past_the_frame(browser).await?;
    read_the_four(browser).await?;
    leave_out_the_rest(browser).await
}

/// From the first screen to the width: the frame is as it will stay.
pub(crate) async fn past_the_frame(browser: &Browser) -> Result<()> {
    browser.tap("button[type=submit]").await?;
    at(browser, "frame").await?;
    browser.tap("input[name=prepared][value=yes]").await?;
    browser.tap("button[type=submit]").await?;
    Ok(())
}

/// From the width to what comes after the four dimensions.
pub(crate) async fn read_the_four(browser: &Browser) -> Result<()> {
    for (field, text) in READINGS {
        let step = field.split('.').next().unwrap_or_default();
        at(browser, step).await?;
        browser.tap(&format!("[id='{field}']")).await?;
        browser.type_keys(text).await?;
        browser.tap("button[type=submit]").await?;
    }
    Ok(())
}

/// Leaves out every further reading that is offered, up to the check.
pub(crate) async fn leave_out_the_rest(browser: &mut Browser) -> Result<()> {
    loop {
        browser.until("document.querySelector('main.step-proof, main.step-check')").await?;
        if browser.value("!document.querySelector('main.step-proof')").await? == true {
            return at(browser, "check").await;
        }
        let asked = browser.text("#heading").await?;
        browser.tap("[data-act=skip]").await?;
        let asked = serde_json::json!(asked);
        browser.until(&format!("document.querySelector('#heading').innerText !== {asked}")).await?;
    }
}

/// The link on the last screen.
pub(crate) async fn link(browser: &mut Browser) -> Result<String> {
    at(browser, "send").await?;
    let url = browser.value("document.querySelector('a.url').href").await?;
    url.as_str().map(str::to_owned).context("the order has a link")
}

/// The numbers that the screen shows, large.
pub(crate) async fn numbers(browser: &Browser) -> Result<Vec<String>> {
    let numbers = browser
        .value("[...document.querySelectorAll('.numbers .value')].map(e => e.innerText)")
        .await?;
    let numbers: Vec<String> = serde_json::from_value(numbers)?;
    Ok(numbers.iter().map(|number| spaced(number)).collect())
}

/// A text as it was written, whose numbers are set so that no line ends within them.
pub(crate) fn spaced(set: &str) -> String {
    set.replace('\u{a0}', " ")
}

pub(crate) async fn by_touch(browser: &mut Browser) -> Result<()> {
    to_the_check(browser).await?;
    browser.tap("button[type=submit]").await?;
    let url = link(browser).await?;
    let sent = numbers(browser).await?;
    ensure!(sent == ["92 3/16 in", "101 1/2 in", "9 1/2 in", "1 1/4 in"], "{sent:?}");

    // The dealer's browser: another origin has none of this one's storage.
    let payload = url.split_once('#').context("a fragment")?.1.to_owned();
    browser.serve(hangtrue_browser::Site::dist()?).await?;
    browser.open(Screen::DESK, &format!("/#{payload}")).await?;
    at(browser, "opened").await?;
    ensure!(numbers(browser).await? == sent);
    ensure!(browser.value("location.hash").await? == "#/opened", "the address is cleared");
    browser.reload().await?;
    at(browser, "opened").await?;
    ensure!(numbers(browser).await? == sent, "a reload shows the order again");
    Ok(())
}

pub(crate) async fn by_keyboard_alone(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::DESK, "/").await?;
    browser.find("#app[data-ready]").await?;
    tab_to(browser, "button[type=submit]").await?;
    press(browser, Key::Enter).await?;
    at(browser, "frame").await?;
    tab_to(browser, "input[name=prepared]").await?;
    press(browser, Key::Up).await?;
    tab_to(browser, "button[type=submit]").await?;
    press(browser, Key::Enter).await?;
    for (field, text) in READINGS {
        let step = field.split('.').next().unwrap_or_default();
        at(browser, step).await?;
        tab_to(browser, &format!("[id='{field}']")).await?;
        browser.type_keys(text).await?;
        // To the next place, which is left out.
        press(browser, Key::Enter).await?;
        press(browser, Key::Enter).await?;
    }
    loop {
        browser.until("document.querySelector('main.step-proof, main.step-check')").await?;
        if browser.value("!document.querySelector('main.step-proof')").await? == true {
            break;
        }
        let asked = serde_json::json!(browser.text("#heading").await?);
        tab_to(browser, "[data-act=skip]").await?;
        press(browser, Key::Enter).await?;
        browser.until(&format!("document.querySelector('#heading').innerText !== {asked}")).await?;
    }
    tab_to(browser, "button[type=submit]").await?;
    press(browser, Key::Enter).await?;
    link(browser).await?;
    let sent = numbers(browser).await?;
    ensure!(sent == ["92 3/16 in", "101 1/2 in", "9 1/2 in", "1 1/4 in"], "{sent:?}");
    Ok(())
}

async fn press(browser: &Browser, key: Key) -> Result<()> {
    browser.type_keys(&char::from(key).to_string()).await
}

/// Presses Tab until the focus is on an element that `css` matches.
async fn tab_to(browser: &Browser, css: &str) -> Result<()> {
    let matches = format!("document.activeElement.matches({})", serde_json::json!(css));
    for _ in 0..60 {
        if browser.value(&matches).await? == true {
            return Ok(());
        }
        press(browser, Key::Tab).await?;
    }
    anyhow::bail!("sixty Tabs do not come to `{css}`")
}
