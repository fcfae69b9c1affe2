//! For everyone: the axe rules, and contrast measured from what is rendered, in every state and
//! both colour schemes.

use crate::orders::{crowded, open, to_be_built, typical};
use crate::paper::on_paper;
use crate::{builder, states};
use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Screen};
use serde_json::json;

/// All that WCAG 2.2 at level AA has a rule for, and what is good practice beside it.
const TAGS: [&str; 6] = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/// Level AAA of WCAG 2.2, 1.4.6, for text of any size.
const CONTRAST: f64 = 7.0;

/// A script body: the texts whose contrast is below `arguments[0]`, each with both colours.
const CONTRASTS: &str = include_str!("contrast.js");

async fn breaks_no_rule(browser: &Browser, name: &str) -> Result<()> {
    if browser.value("!window.axe").await? == true {
        let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("axe");
        let script = folder.join("node_modules/axe-core/axe.min.js");
        let script = std::fs::read_to_string(&script)
            .with_context(|| format!("{}: `cargo xtask browser` installs it", script.display()))?;
        browser.run(&script, Vec::new()).await?;
    }
    let broken = browser
        .run(
            "return axe.run(document, { resultTypes: ['violations'], runOnly: arguments[0] })
                 .then(({ violations, passes }) => [passes.length, violations.flatMap(
                     ({ id, nodes }) => nodes.map(({ html, failureSummary }) =>
                         `${id}: ${html.slice(0, 200)}\\n${failureSummary}`))])",
            vec![json!(TAGS)],
        )
        .await?;
    ensure!(broken[0].as_u64() > Some(10), "{name}: axe looked at next to nothing: {broken}");
    ensure!(broken[1] == json!([]), "{name}: {:#}", broken[1]);
    Ok(())
}

/// Fails if a text's contrast is too low; `least` are the texts that must have been measured.
pub(crate) async fn can_be_read(browser: &Browser, name: &str, least: u64) -> Result<()> {
    let [measured, low] = {
        let found = browser.run(CONTRASTS, vec![json!(CONTRAST)]).await?;
        [found[0].clone(), found[1].clone()]
    };
    ensure!(measured.as_u64() >= Some(least), "{name}: only {measured} texts were measured");
    ensure!(low == json!([]), "{name}: {low:#}");
    Ok(())
}

pub(crate) async fn is_for_everyone(browser: &Browser, name: &str) -> Result<()> {
    for dark in [true, false] {
        browser.set_dark(dark).await?;
        let name = format!("{name}, {}", if dark { "dark" } else { "light" });
        breaks_no_rule(browser, &name).await?;
        can_be_read(browser, &name, 5).await?;
    }
    Ok(())
}

pub(crate) async fn the_walk(browser: &mut Browser) -> Result<()> {
    states::of_the_walk(browser, Screen::PHONE, "en", is_for_everyone).await
}

pub(crate) async fn beside_the_walk(browser: &mut Browser) -> Result<()> {
    states::beside_the_walk(browser, Screen::PHONE, is_for_everyone).await
}

pub(crate) async fn the_desk(browser: &mut Browser) -> Result<()> {
    states::of_the_desk(browser, Screen::DESK, is_for_everyone).await
}

pub(crate) async fn hanging_the_door(browser: &mut Browser) -> Result<()> {
    crate::hang::states(browser, Screen::PHONE, "en", is_for_everyone).await
}

pub(crate) async fn the_builder(browser: &mut Browser) -> Result<()> {
    builder::states(browser, Screen::DESK, is_for_everyone).await
}

pub(crate) async fn the_print_sheet(browser: &mut Browser) -> Result<()> {
    browser.set_screen(Screen { width: 816, height: 1056, touch: false }).await?;
    for dark in [true, false] {
        for (name, order) in
            [("typical", typical()), ("built", to_be_built()), ("crowded", crowded(1))]
        {
            browser.set_dark(dark).await?;
            open(browser, &order).await?;
            on_paper(browser).await?;
            ensure!(
                browser.value("!document.querySelector('.paper').checkVisibility()").await?
                    == false
            );
            let name = format!("{name} on paper");
            breaks_no_rule(browser, &name).await?;
            can_be_read(browser, &name, 40).await?;
        }
    }
    Ok(())
}

/// The measure itself: known pairs, from the definition of relative luminance in WCAG 2.2.
pub(crate) async fn the_measure_measures(browser: &mut Browser) -> Result<()> {
    let page = "<!doctype html><html lang=en><title>t</title><link rel=icon href=data:,>
        <body style='background:#fff'>
        <p style='color:#595959'>seven</p><p style='color:#5a5a5a'>under</p>
        <div style='background:#000'><p style='color:#fff8'>faint</p></div>
        <div style='opacity:.5'><p style='color:#000'>half</p></div>
        <svg width=99 height=30><rect width=99 height=30 fill='#777'/><text y=20 x=9>shape</text></svg>
        <input value=typed style='color:#888;background:#fff'>
        <p style='visibility:hidden;color:#fff'>hidden</p>";
    browser.serve(hangtrue_browser::Site::default().text("/index.html", page)).await?;
    browser.open(Screen::DESK, "/").await?;
    let found = browser.run(CONTRASTS, vec![json!(CONTRAST)]).await?;
    let low: Vec<&str> =
        found[1].as_array().into_iter().flatten().filter_map(|it| it["text"].as_str()).collect();
    ensure!(low == ["under", "faint", "half", "shape", "typed"], "{found:#}");
    ensure!(found[0] == 6, "{found:#}");
    Ok(())
}
