//! A picture of every screen, on a phone and on a desk, light and dark: to be looked at.
//! What can be measured of them is measured here: no sideways scroll, nothing clipped.

use crate::states;
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
        let visit = async |browser: &Browser, name: &str| look(browser, screen, name).await;
        states::of_the_walk(browser, screen, language, visit).await?;
    }
    Ok(())
}

/// The counter's list, in each language: its words are longest there.
pub(crate) async fn many_orders(browser: &mut Browser) -> Result<()> {
    for (language, screens) in [
        ("en", &[Screen::SMALL_PHONE, Screen::PHONE, Screen::DESK][..]),
        ("es", &[Screen::PHONE, Screen::DESK][..]),
        ("fr", &[Screen::PHONE, Screen::DESK][..]),
    ] {
        for screen in screens {
            let visit = async |browser: &Browser, name: &str| look(browser, *screen, name).await;
            states::of_many_orders(browser, *screen, language, visit).await?;
        }
    }
    Ok(())
}
