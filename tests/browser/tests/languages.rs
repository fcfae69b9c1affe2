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
