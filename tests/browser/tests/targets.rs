//! A thumb in a glove: whatever can be tapped is 48 px high, a key of the fraction pad 56, in every
//! state of every page.

use crate::{builder, hang, states};
use anyhow::{Result, ensure};
use hangtrue_browser::{Browser, Screen};
use serde_json::json;

/// A script body: how many targets there are, and which are too low. Those of one finger's choice
/// are as large as their label; a link in a sentence is as high as its line (WCAG 2.2, 2.5.8).
const TARGETS: &str = "
    const all = [...document.querySelectorAll('a[href], button, input, select, textarea, summary, [role=slider]')]
        .filter(it => it.checkVisibility() && !it.closest('.visually-hidden, svg'))
        .filter(it => it.localName !== 'a' || !it.closest('p, li')
            || it.closest('p, li').textContent.trim() === it.textContent.trim())
        .map(it => [it, it.closest('label') ?? it]);
    const low = all.filter(([it, target]) =>
        target.getBoundingClientRect().height < (it.matches('.keys button') ? 56 : 48) - .5);
    return [all.length, low.map(([it, target]) =>
        `${target.getBoundingClientRect().height} px: ${it.outerHTML.slice(0, 120)}`)];";

async fn can_be_hit(browser: &Browser, name: &str) -> Result<()> {
    let found = browser.run(TARGETS, Vec::new()).await?;
    ensure!(found[0].as_u64() > Some(1), "{name}: no targets");
    ensure!(found[1] == json!([]), "{name}: {:#}", found[1]);
    Ok(())
}

pub(crate) async fn of_the_walk(browser: &mut Browser) -> Result<()> {
    for language in ["en", "fr"] {
        states::of_the_walk(browser, Screen::SMALL_PHONE, language, can_be_hit).await?;
    }
    states::beside_the_walk(browser, Screen::SMALL_PHONE, can_be_hit).await
}

pub(crate) async fn elsewhere(browser: &mut Browser) -> Result<()> {
    states::of_the_desk(browser, Screen::SMALL_PHONE, can_be_hit).await?;
    hang::states(browser, Screen::SMALL_PHONE, "fr", can_be_hit).await?;
    builder::states(browser, Screen::DESK, can_be_hit).await
}
