//! The tape picture as an input, and what a phone does beside it.

use crate::walk::at;
use anyhow::{Result, ensure};
use fantoccini::key::Key;
use hangtrue_browser::{Browser, Screen};

const FIELD: &str = "document.getElementById('width.low')";
const SLIDER: &str = "document.querySelector('[role=slider]')";

async fn with(browser: &mut Browser, reading: &str) -> Result<()> {
    browser.open(Screen::PHONE, "/#/width").await?;
    browser.find("#app[data-ready]").await?;
    at(browser, "width").await?;
    browser.tap("[id='width.low']").await?;
    browser.type_keys(reading).await?;
    browser.find("[role=slider] svg").await?;
    Ok(())
}

/// Drags the tape by so many of its marks; to the left is to longer readings.
async fn drag(browser: &Browser, marks: f64) -> Result<()> {
    // As a finger's events come: whatever way a driver makes them, these are what the page gets.
    browser
        .run(
            "const tape = document.querySelector('[role=slider]');
             tape.scrollIntoView({ block: 'center' });
             const box = tape.getBoundingClientRect();
             const mark = box.width * tape.dataset.mark / tape.dataset.across;
             const x = box.x + box.width / 2, y = box.y + box.height / 2;
             const send = (kind, x) => tape.dispatchEvent(new PointerEvent(kind, { bubbles: true,
                 cancelable: true, pointerId: 1, isPrimary: true, clientX: x, clientY: y }));
             send('pointerdown', x);
             for (let step = 1; step <= 8; step++) send('pointermove', x - arguments[0] * mark * step / 8);
             send('pointerup', x - arguments[0] * mark);",
            vec![marks.into()],
        )
        .await?;
    Ok(())
}

pub(crate) async fn dragged_and_stepped(browser: &mut Browser) -> Result<()> {
    with(browser, "92 3/16").await?;
    ensure!(browser.role("[role=slider]").await? == "slider");
    let name = browser.label("[role=slider]").await?;
    ensure!(name.contains("low"), "{name}");
    let spoken = format!("{SLIDER}.ariaValueText");
    ensure!(browser.value(&spoken).await? == "92 3/16 in");
    drag(browser, 5.0).await?;
    browser.until(&format!("{FIELD}.value === '92 1/2'")).await?;
    ensure!(browser.value(&spoken).await? == "92 1/2 in");
    drag(browser, -12.4).await?;
    browser.until(&format!("{FIELD}.value === '91 3/4'")).await?;
    // By keys.
    browser.run(&format!("{SLIDER}.focus()"), Vec::new()).await?;
    for (key, value) in [
        (Key::Right, "91 13/16"),
        (Key::Left, "91 3/4"),
        (Key::Up, "91 13/16"),
        (Key::PageDown, "91 3/16"),
    ] {
        browser.type_keys(&char::from(key).to_string()).await?;
        browser.until(&format!("{FIELD}.value === '{value}'")).await?;
        ensure!(browser.value(&format!("document.activeElement === {SLIDER}")).await? == true);
    }
    // Typing, the keys beside the field and the tape agree.
    browser.tap("[data-act='eighths:4']").await?;
    browser.until(&format!("{SLIDER}.ariaValueText === '91 1/2 in'")).await?;
    browser.run(&format!("{FIELD}.focus(); {FIELD}.select()"), Vec::new()).await?;
    browser.type_keys("2445 mm").await?;
    drag(browser, 1.0).await?;
    // To the next mark of the tape that is shown, which is in inches.
    browser.until(&format!("{FIELD}.value === '96 5/16'")).await?;
    browser.shoot("tape-slider-phone").await?;
    Ok(())
}

/// To the millimetre where that is the unit, and told as each language writes a reading.
pub(crate) async fn in_millimetres_and_each_language(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    browser.find("#app[data-ready]").await?;
    browser.tap("input[name=unit][value=mm]").await?;
    browser.run("location.hash = '#/width'", Vec::new()).await?;
    at(browser, "width").await?;
    browser.tap("[id='width.low']").await?;
    browser.type_keys("2341").await?;
    let spoken = |text: &str| format!("{SLIDER}?.ariaValueText === '{text}'");
    browser.until(&spoken("2341 mm")).await?;
    drag(browser, 3.0).await?;
    browser.until(&format!("{FIELD}.value === '2344'")).await?;
    browser.run(&format!("{SLIDER}.focus()"), Vec::new()).await?;
    browser.type_keys(&char::from(Key::Left).to_string()).await?;
    browser.until(&format!("{FIELD}.value === '2343'")).await?;
    browser.run(&format!("{FIELD}.focus(); {FIELD}.select()"), Vec::new()).await?;
    browser.type_keys("92 1/4 in").await?;
    for (language, text) in [("fr", "2343,2\u{a0}mm"), ("es", "2343.2\u{a0}mm")] {
        browser
            .run(
                &format!("document.querySelector('.languages [lang={language}]').click()"),
                Vec::new(),
            )
            .await?;
        browser.until(&format!("document.documentElement.lang === '{language}'")).await?;
        let told = browser.value(&format!("{SLIDER}.ariaValueText")).await?;
        // Inches between two tenths of a millimetre: the tape says that it is about that.
        ensure!(told.as_str().is_some_and(|told| told.ends_with(text)), "{language}: {told}");
    }
    Ok(())
}

pub(crate) async fn the_phone_stays_awake_and_trembles(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    browser.find("#app[data-ready]").await?;
    browser
        .run(
            "window.asked = [];
             const told = (object, name, answer) => Object.defineProperty(object, name, {
                 configurable: true, value: answer });
             told(navigator, 'wakeLock', { request: kind => (asked.push(kind), Promise.resolve({})) });
             told(navigator, 'vibrate', ms => (asked.push(ms), true));",
            Vec::new(),
        )
        .await?;
    browser.tap("button[type=submit]").await?;
    at(browser, "frame").await?;
    browser.tap("button[type=submit]").await?;
    browser.until("asked.includes('screen')").await?;
    browser.run("location.hash = '#/width'", Vec::new()).await?;
    at(browser, "width").await?;
    // Nothing typed: that stops.
    browser.tap("button[type=submit]").await?;
    browser.find("#problems").await?;
    ensure!(browser.value("asked.includes(40)").await? == true);
    Ok(())
}

/// A thumb that scrolls the page begins on the tape as often as beside it.
pub(crate) async fn what_scrolls_the_page_leaves_the_reading(browser: &mut Browser) -> Result<()> {
    with(browser, "92 1/32").await?;
    for moves in [
        // More down than along, and given to the page.
        "[[8, 20], [20, 60], [60, 180], 'pointercancel']",
        // Along at first, so that the tape moved; then given to the page.
        "[[20, 4], [40, 8], 'pointercancel']",
        // A tap that trembles.
        "[[3, 0], 'pointerup']",
    ] {
        browser
            .run(
                &format!(
                    "const tape = document.querySelector('[role=slider]');
                     const send = (kind, x, y) => tape.dispatchEvent(new PointerEvent(kind, {{
                         bubbles: true, cancelable: true, pointerId: 1, isPrimary: true,
                         clientX: 200 + x, clientY: 300 + y }}));
                     send('pointerdown', 0, 0);
                     for (const move of {moves})
                         Array.isArray(move) ? send('pointermove', ...move) : send(move, 0, 0);"
                ),
                Vec::new(),
            )
            .await?;
        let reading = browser.value(&format!("{FIELD}.value")).await?;
        ensure!(reading == "92 1/32", "{moves}: {reading}");
    }
    Ok(())
}
