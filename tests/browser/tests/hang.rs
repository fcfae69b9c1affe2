//! Hanging the door: from the walk's order through every screen to the sticker.

use std::path::Path;

use crate::orders::typical;
use crate::paper::{Raster, code, output};
use crate::picture::draft;
use crate::walk::at;
use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Screen};
use serde_json::json;

/// Opens a screen of the page with the typical order in it.
pub(crate) async fn open(browser: &Browser, step: &str) -> Result<()> {
    let payload = crate::orders::payload(&typical())?;
    browser.goto(&format!("/hang.html?{step}#{payload}")).await?;
    browser.find("#app[data-ready] main.hang-order").await?;
    show(browser, step).await
}

/// Goes to a screen by the list of all screens.
pub(crate) async fn show(browser: &Browser, step: &str) -> Result<()> {
    browser.tap(&format!(".steps a[href='#/{step}']")).await?;
    browser.find(&format!("main.hang-{step}")).await?;
    Ok(())
}

pub(crate) async fn fill(browser: &Browser, field: &str, text: &str) -> Result<()> {
    browser.tap(&format!("[id='{field}']")).await?;
    browser.run("document.activeElement.select()", Vec::new()).await?;
    browser.type_keys(text).await
}

async fn go_on(browser: &Browser, step: &str) -> Result<()> {
    browser.tap("form > .primary").await?;
    browser.find(&format!("main.hang-{step}")).await?;
    Ok(())
}

async fn holds(browser: &Browser, wanted: &str) -> Result<()> {
    let text = browser.text("main").await?;
    ensure!(text.contains(wanted), "the screen lacks `{wanted}`:\n{text}");
    Ok(())
}

/// The whole work with one door, from the order on the walk to its record on another day.
pub(crate) async fn from_the_walk_to_the_record(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    draft(browser).await?;
    at(browser, "send").await?;
    browser.tap("a[href*='/hang.html#']").await?;
    browser.find("#app[data-ready] main.hang-order").await?;
    ensure!(browser.value("location.hash").await? == "#/order", "the order leaves the address");
    holds(browser, "101 1/2 in").await?;
    go_on(browser, "delivery").await?;
    browser.tap(".ticks label").await?;
    holds(browser, "1 of 12 are here").await?;
    fill(browser, "again.width.low", "92 1/4").await?;
    holds(browser, "The opening takes the door").await?;
    go_on(browser, "tracks").await?;
    for (field, text) in [
        ("built.track-low", "91 3/4"),
        ("built.track-middle", "91 7/8"),
        ("built.track-high", "92"),
        ("built.track-rising", "132 1/2"),
        ("built.track-falling", "132 1/2"),
    ] {
        fill(browser, field, text).await?;
    }
    holds(browser, "Left, high: 1/8 in").await?;
    go_on(browser, "overhead").await?;
    holds(browser, "The door passes.").await?;
    go_on(browser, "spring").await?;
    fill(browser, "weight", "132 lb").await?;
    holds(browser, "joules").await?;
    fill(browser, "turns", "13 1/4").await?;
    fill(browser, "stripes", "13").await?;
    holds(browser, "The stripes say the same").await?;
    browser.tap("input[name='does.low'][value=drops]").await?;
    holds(browser, "Turns to add").await?;
    go_on(browser, "fit").await?;
    fill(browser, "built.shift", "9/16").await?;
    holds(browser, "left add 2, right add 1").await?;
    go_on(browser, "inspection").await?;
    fill(browser, "check.side-shift", "3/8").await?;
    browser.tap("input[name='check.latch'][value=yes]").await?;
    holds(browser, "2 of 18 points").await?;
    go_on(browser, "care").await?;
    fill(browser, "hung", "2026-01-05").await?;
    browser.tap("input[name='service.work'][value=lubrication]").await?;
    browser.tap("[data-act=add-service]").await?;
    holds(browser, "Take out").await?;
    go_on(browser, "record").await?;
    fill(browser, "serial", "HT-0042").await?;
    let link = browser.value("document.querySelector('a.url').href").await?;
    let link = link.as_str().context("the record has a link")?.to_owned();

    // A reload, and Back, lose nothing.
    browser.reload().await?;
    browser.find("#app[data-ready] main.hang-record").await?;
    ensure!(browser.value("document.querySelector('a.url').href").await? == link.as_str());
    browser.back().await?;
    browser.find("main.hang-care").await?;

    // Whoever services it scans the sticker.
    browser.run("localStorage.clear()", Vec::new()).await?;
    let payload = link.split_once('#').context("a payload")?.1;
    browser.goto(&format!("/hang.html?later#{payload}")).await?;
    browser.find("#app[data-ready] main.hang-care").await?;
    holds(browser, "HT-0042").await?;
    holds(browser, "Oil").await?;
    show(browser, "spring").await?;
    let turns = browser.value("document.getElementById('turns').value").await?;
    ensure!(turns == "13 1/4", "{turns}");
    Ok(())
}

/// Moves the slider a little past its middle.
const SLIDE: &str = "const slider = document.getElementById('open');
    slider.value = 55;
    slider.dispatchEvent(new Event('input', { bubbles: true }));";

/// Every screen, with errors showing; calls `visit` with each one's name.
pub(crate) async fn states(
    browser: &mut Browser,
    screen: Screen,
    language: &str,
    visit: impl AsyncFn(&Browser, &str) -> Result<()>,
) -> Result<()> {
    browser.open(screen, "/hang.html").await?;
    browser.run("localStorage.clear()", Vec::new()).await?;
    browser.goto("/hang.html?again").await?;
    browser.find("#app[data-ready]").await?;
    browser.tap(&format!(".languages [lang={language}]")).await?;
    browser.until(&format!("document.documentElement.lang === '{language}'")).await?;
    fill(browser, "paste", "https://dealer.example/#1V8009500Q1GSC02C").await?;
    browser.tap("[data-act=open]").await?;
    visit(browser, "order-damaged").await?;
    open(browser, "order").await?;
    visit(browser, "order").await?;
    show(browser, "delivery").await?;
    fill(browser, "again.width.high", "92").await?;
    fill(browser, "again.height.left", "102 7/8").await?;
    fill(browser, "again.bow.first", "11/4").await?;
    visit(browser, "delivery").await?;
    show(browser, "tracks").await?;
    for (field, text) in [
        ("built.track-low", "91 3/4"),
        ("built.track-high", "92 1/16"),
        ("built.track-rising", "132 3/4"),
        ("built.track-falling", "132 1/4"),
        ("built.upper-front", "92 1/4"),
        ("built.square-left", "60 1/4"),
    ] {
        fill(browser, field, text).await?;
    }
    visit(browser, "tracks").await?;
    show(browser, "overhead").await?;
    browser.run(SLIDE, Vec::new()).await?;
    visit(browser, "overhead").await?;
    fill(browser, "bow.first", "24").await?;
    fill(browser, "bow.spacing", "24").await?;
    fill(browser, "slope", "2").await?;
    visit(browser, "overhead-bows").await?;
    fill(browser, "radius", "9").await?;
    fill(browser, "bow.width", "wide").await?;
    visit(browser, "overhead-strikes").await?;
    show(browser, "spring").await?;
    visit(browser, "spring-empty").await?;
    fill(browser, "weight", "145").await?;
    fill(browser, "turns", "12").await?;
    fill(browser, "stripes", "10").await?;
    fill(browser, "pull.up.low", "lots").await?;
    browser.tap("input[name='does.low'][value=drops]").await?;
    browser.tap("main details summary").await?;
    for (field, text) in [("wire", "1/4"), ("coil", "2 1/4"), ("coils", "110")] {
        fill(browser, field, text).await?;
    }
    visit(browser, "spring").await?;
    show(browser, "fit").await?;
    fill(browser, "built.latch-left", "46 1/4").await?;
    fill(browser, "built.latch-right", "45 15/16").await?;
    fill(browser, "built.shift", "5/8").await?;
    visit(browser, "fit").await?;
    show(browser, "inspection").await?;
    fill(browser, "check.gap-left", "1 1/4").await?;
    fill(browser, "check.pull", "20 lb").await?;
    browser.tap("input[name='check.cables'][value=no]").await?;
    visit(browser, "inspection").await?;
    show(browser, "care").await?;
    fill(browser, "hung", "2026-02-30").await?;
    visit(browser, "care-empty").await?;
    fill(browser, "hung", "2026-02-20").await?;
    browser.tap("main details summary").await?;
    visit(browser, "care").await?;
    show(browser, "record").await?;
    visit(browser, "record").await?;
    Ok(())
}

/// Pictures of every screen at three sizes, light and dark.
pub(crate) async fn every_screen(browser: &mut Browser) -> Result<()> {
    for screen in [Screen::SMALL_PHONE, Screen::PHONE, Screen::DESK] {
        let visit = async |browser: &Browser, name: &str| look(browser, screen, name).await;
        states(browser, screen, "en", visit).await?;
    }
    Ok(())
}

/// Pictures of every screen on a phone in the other languages, whose words are longest there.
pub(crate) async fn every_screen_in_spanish_and_french(browser: &mut Browser) -> Result<()> {
    for language in ["es", "fr"] {
        let visit = async |browser: &Browser, name: &str| {
            look(browser, Screen::SMALL_PHONE, &[language, "-", name].concat()).await
        };
        states(browser, Screen::SMALL_PHONE, language, visit).await?;
    }
    Ok(())
}

/// A picture of the whole screen, and what can be measured of it.
async fn look(browser: &Browser, screen: Screen, name: &str) -> Result<()> {
    let wide = browser
        .value("document.documentElement.scrollWidth - document.documentElement.clientWidth")
        .await?;
    ensure!(wide == 0, "{name} scrolls sideways by {wide} px at {} px", screen.width);
    let clipped = browser
        .value(
            "[...document.querySelectorAll('button, .value, h1, h2, label, .echo, b')]
                .filter(e => e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 2
                    && getComputedStyle(e).display !== 'inline')
                .map(e => e.outerHTML.slice(0, 100))",
        )
        .await?;
    ensure!(clipped == json!([]), "{name} clips {clipped} at {} px", screen.width);
    let small = browser
        .value(
            "[...document.querySelectorAll('main button, main input, .steps a')]
                .filter(e => e.checkVisibility())
                .map(e => [e, (e.closest('label') ?? e).getBoundingClientRect()])
                .filter(([, box]) => box.height < 47.5)
                .map(([e]) => e.outerHTML.slice(0, 100))",
        )
        .await?;
    ensure!(small == json!([]), "{name}: below 48 px: {small}");
    let height = browser.value("document.documentElement.scrollHeight").await?;
    let height = height.as_u64().and_then(|height| u32::try_from(height).ok()).unwrap_or(800);
    browser.set_screen(Screen { height: height.min(9000), ..screen }).await?;
    browser.shoot(&format!("hang-{name}-{}", screen.width)).await?;
    browser.set_screen(screen).await
}

pub(crate) async fn the_slider_moves_the_door_in_the_drawing(browser: &mut Browser) -> Result<()> {
    browser.set_screen(Screen::PHONE).await?;
    open(browser, "overhead").await?;
    let lowest = "Math.max(...[...document.querySelectorAll('.panel')]
        .map(panel => panel.getBBox().y + panel.getBBox().height))";
    let closed = browser.value(lowest).await?.as_f64().context("a place")?;
    browser.tap("#open").await?;
    let half = browser.value(lowest).await?.as_f64().context("a place")?;
    ensure!(half < closed - 50.0, "touched in its middle, the slider lifts the door: {half}");
    // By the keyboard, one step.
    browser.run("document.getElementById('open').focus()", Vec::new()).await?;
    browser.type_keys("\u{e014}").await?;
    let more = browser.value(lowest).await?.as_f64().context("a place")?;
    ensure!(more < half, "the arrow key opens it further: {more}");
    let label = browser.label("#open").await?;
    ensure!(label == "Open the door", "the slider is called `{label}`");
    Ok(())
}

/// The sticker of 50 × 30 mm, the card of A6 and the whole record, printed, and their codes read.
pub(crate) async fn sticker_and_card_are_read_from_paper(browser: &mut Browser) -> Result<()> {
    browser.set_screen(Screen::DESK).await?;
    open(browser, "record").await?;
    fill(browser, "serial", "HT-0042").await?;
    let link = browser.value("document.querySelector('a.url').href").await?;
    let folder = tempfile::tempdir()?;
    let shots =
        Path::new(env!("CARGO_MANIFEST_DIR")).join("../shots").join(browser.engine().name());
    std::fs::create_dir_all(&shots)?;
    for (form, width, height) in
        [("sticker", 5.0, 3.0), ("card", 10.5, 14.8), ("sheet", 21.0, 29.7)]
    {
        browser.tap(&format!("input[name=print][value={form}]")).await?;
        let file = folder.path().join("record.pdf");
        std::fs::write(&file, browser.print_edge_to_edge(width, height).await?)?;
        let pdf = file.to_str().context("a path in UTF-8")?;
        let about = String::from_utf8(output("pdfinfo", &[pdf])?)?;
        let pages = about.lines().find_map(|line| line.strip_prefix("Pages:"));
        ensure!(pages.map(str::trim) == Some("1"), "{form}: {about}");
        let kept = shots.join(format!("hang-{form}"));
        Raster::of(pdf, &kept)?;
        let read = code(pdf, &kept).with_context(|| format!("no code on the {form}"))?;
        ensure!(link == read.text.as_str(), "{form}: {}", read.text);
        ensure!("QH".contains(read.level), "{form}: level {}", read.level);
        let text = String::from_utf8(output("pdftotext", &["-raw", pdf, "-"])?)?;
        for wanted in ["HT-0042", "Trained people only"] {
            let flat = text.split_whitespace().collect::<Vec<_>>().join(" ");
            ensure!(flat.contains(wanted), "{form} lacks `{wanted}`: {flat}");
        }
    }
    // In no language is a word of the sticker cut off: a line of its box is in points.
    browser.tap("input[name=print][value=sticker]").await?;
    for language in ["en", "es", "fr"] {
        browser.tap(&format!(".languages [lang={language}]")).await?;
        browser.until(&format!("document.documentElement.lang === '{language}'")).await?;
        let file = folder.path().join("sticker.pdf");
        std::fs::write(&file, browser.print_edge_to_edge(5.0, 3.0).await?)?;
        let pdf = file.to_str().context("a path in UTF-8")?;
        let boxes = String::from_utf8(output("pdftotext", &["-bbox", pdf, "-"])?)?;
        let lowest = 29.5 / 25.4 * 72.0;
        for word in boxes.lines().filter(|line| line.trim_start().starts_with("<word")) {
            let at = |name: &str| {
                let rest = word.split_once(name).map(|(_, rest)| rest);
                rest.and_then(|rest| rest.split('"').nth(1)?.parse::<f64>().ok())
            };
            let (Some(top), Some(foot)) = (at("yMin="), at("yMax=")) else {
                anyhow::bail!("no box: {word}")
            };
            ensure!(top >= 0.0 && foot <= lowest, "{language}: cut off: {word}");
        }
        let all =
            "[...document.querySelectorAll('.print-sticker p')].map(p => p.textContent).join(' ')";
        let all = browser.value(all).await?;
        let all = all.as_str().context("a text")?.split_whitespace().count();
        ensure!(boxes.matches("<word").count() == all, "{language}: {all} words, of which {boxes}");
    }
    Ok(())
}
