//! The language of the page: the browser's, or the one that was chosen; changed at any moment.

use crate::walk::at;
use anyhow::{Result, ensure};
use fantoccini::key::Key;
use hangtrue_browser::{Browser, Screen};

const FIELD: &str = "document.getElementById('width.low')";
const LANG: &str = "document.documentElement.lang";

pub(crate) async fn a_change_in_the_middle_keeps_text_caret_and_draft(
    browser: &mut Browser,
) -> Result<()> {
    browser.open(Screen::PHONE, "/#/width").await?;
    browser.find("#app[data-ready]").await?;
    at(browser, "width").await?;
    ensure!(browser.value(LANG).await? == "en");
    browser.tap("[id='width.low']").await?;
    browser.type_keys("92 1/4").await?;
    for _ in 0..4 {
        browser.type_keys(&char::from(Key::Left).to_string()).await?;
    }
    for (language, heading, title) in
        [("fr", "Largeur de poteau à poteau", "mesurez"), ("es", "Ancho de poste a poste", "mida")]
    {
        browser.tap(&format!(".languages [lang={language}]")).await?;
        browser.until(&format!("{LANG} === '{language}'")).await?;
        ensure!(browser.text("h1").await? == heading);
        ensure!(browser.value("document.title").await?.to_string().contains(title));
        ensure!(browser.value(&format!("{FIELD}.value")).await? == "92 1/4");
        ensure!(browser.value(&format!("{FIELD}.selectionStart")).await? == 2);
        ensure!(browser.value(&format!("document.activeElement === {FIELD}")).await? == true);
    }
    browser.type_keys("5").await?;
    ensure!(browser.value(&format!("{FIELD}.value")).await? == "925 1/4");
    browser.reload().await?;
    browser.find("#app[data-ready]").await?;
    at(browser, "width").await?;
    ensure!(browser.value(LANG).await? == "es", "what was chosen is remembered");
    ensure!(browser.value(&format!("{FIELD}.value")).await? == "925 1/4");
    let echo = browser.text("[id='width.low-echo']").await?;
    // WebDriver gives a no-break space as a space.
    ensure!(echo.contains("925 1/4 pulg"), "{echo}");
    Ok(())
}

/// One link, whatever its writer spoke: each reads it in a language of their own, and it stays as
/// it was sent.
pub(crate) async fn an_order_is_read_in_its_readers_language(browser: &mut Browser) -> Result<()> {
    let mut order = crate::orders::typical();
    order.language = "es".to_owned();
    let payload = crate::orders::payload(&order)?;
    browser.open(Screen::PHONE, "/").await?;
    for (language, width) in [
        ("en", "post-to-post width"),
        ("fr", "largeur de poteau à poteau"),
        ("es", "ancho de poste a poste"),
    ] {
        crate::states::speak(browser, language).await?;
        browser.goto(&format!("/?{language}#{payload}")).await?;
        browser.find("#app[data-ready] main.step-opened").await?;
        ensure!(browser.value(LANG).await? == language);
        let shown =
            browser.value("document.querySelector('main').textContent.toLowerCase()").await?;
        ensure!(shown.as_str().is_some_and(|shown| shown.contains(width)), "{language}: {shown}");
        // On the sheet too; the code on it is the link that came.
        let paper =
            browser.value("document.querySelector('.paper').textContent.toLowerCase()").await?;
        ensure!(paper.as_str().is_some_and(|paper| paper.contains(width)), "{language}: {paper}");
        let link = browser.value("document.querySelector('.paper a').href.split('#')[1]").await?;
        ensure!(link == payload.as_str(), "{language}: {link}");
        for (name, screen) in [("phone", Screen::PHONE), ("desk", Screen::DESK)] {
            browser.set_screen(screen).await?;
            browser.shoot(&format!("opened-{language}-{name}")).await?;
        }
        browser.goto(&format!("/desk.html?{language}#{payload}")).await?;
        browser.find("#sent-0").await?;
        let desk =
            browser.value("document.querySelector('main').textContent.toLowerCase()").await?;
        ensure!(desk.as_str().is_some_and(|desk| desk.contains(width)), "{language}: {desk}");
        for (name, screen) in [("phone", Screen::PHONE), ("desk", Screen::DESK)] {
            browser.set_screen(screen).await?;
            crate::fits::loses_nothing(browser, &format!("desk in {language}, {name}")).await?;
            browser.shoot(&format!("desk-sent-{language}-{name}")).await?;
        }
    }
    Ok(())
}

pub(crate) async fn the_browser_s_own_comes_first(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    browser.set_languages("de-CH,fr-CA,en").await?;
    browser.goto("/?again").await?;
    browser.find("#app[data-ready]").await?;
    browser.until(&format!("{LANG} === 'fr'")).await?;
    let pressed = browser.text(".languages [aria-pressed=true]").await?;
    ensure!(pressed == "Français", "{pressed}");
    // It was not chosen here: nothing is remembered.
    ensure!(browser.value("localStorage.getItem('hangtrue-language')").await?.is_null());
    browser.goto("/desk.html").await?;
    browser.find("#app[data-ready]").await?;
    browser.until(&format!("{LANG} === 'fr'")).await?;
    ensure!(browser.text("h1").await? == "Comptoir");
    browser.tap(".languages [lang=es]").await?;
    browser.until("document.title === 'Hangtrue: Mostrador'").await?;
    Ok(())
}
