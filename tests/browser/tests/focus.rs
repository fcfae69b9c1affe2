//! A ring at whatever the keyboard has reached, in sight and covered by nothing (WCAG 2.2, 2.4.7
//! and 2.4.11). In every state.

use crate::{builder, hang, states};
use anyhow::{Result, ensure};
use fantoccini::key::Key;
use hangtrue_browser::{Browser, Screen};

/// A script body: null where the keyboard has reached nothing of the page; else what has the focus,
/// and what is wrong with its ring. The ring may be around a box that holds the field. An engine may
/// take some frames to scroll there and to draw it, and Firefox brings what was typed into view with
/// the next frame, wherever the keyboard has gone by then: so two frames pass first.
const RING: &str = "
    let it = document.activeElement;
    if (!it || it === document.body) return null;
    while (it.shadowRoot?.activeElement) it = it.shadowRoot.activeElement;
    const name = it.outerHTML.slice(0, 140);
    const holders = [it, it.nextElementSibling, it.closest('label'), it.closest('.entry'), it.closest('.field')];
    const wrong = () => {
        const ringed = holders.find(holder => holder && (style =>
            style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2
                && !style.outlineColor.endsWith(' 0)'))(getComputedStyle(holder)));
        if (!ringed) return 'no ring';
        const box = ringed.getClientRects()[0];
        if (!box || box.bottom <= 0 || box.top >= innerHeight || box.right <= 0 || box.left >= innerWidth)
            return `out of view: ${JSON.stringify(box)}`;
        const [x, y] = [(Math.max(box.left, 0) + Math.min(box.right, innerWidth)) / 2,
            (Math.max(box.top, 0) + Math.min(box.bottom, innerHeight)) / 2];
        const over = it.getRootNode().elementFromPoint(x, y);
        if (!over || !ringed.contains(over) && !over.contains(ringed) && !over.contains(it))
            return `covered by ${over?.outerHTML.slice(0, 100)}`;
        return null;
    };
    const frame = () => new Promise(requestAnimationFrame);
    const settled = left => wrong() && left ? frame().then(() => settled(left - 1)) : wrong();
    return frame().then(frame).then(() => settled(60)).then(wrong => [name, wrong]);";

/// A script body: begins before the first stop, whatever had the focus, and finds the last: one
/// step further the keyboard is in the browser's own bars, and the page has no ring to show.
/// Two frames pass first, as in [`RING`].
const BEGIN: &str = "
    const frame = () => new Promise(requestAnimationFrame);
    const begin = () => {
        window.focus();
        document.activeElement.blur(); getSelection().removeAllRanges();
        const start = document.getElementById('app');
        start.tabIndex = -1; start.focus(); start.removeAttribute('tabindex');
        const stops = 'a[href], button, input, select, textarea, summary, [tabindex=\"0\"]';
        const all = [...document.querySelectorAll(`${stops}, hangtrue-survey`)]
            .flatMap(it => it.shadowRoot ? [...it.shadowRoot.querySelectorAll(stops)] : it)
            .filter(it => it.checkVisibility() && !it.disabled);
        window.last = all.pop();
        window.stops = new Set();
    };
    return frame().then(frame).then(begin);";

/// A script body: whether the keyboard is at a stop it has been at.
const AGAIN: &str = "
    let it = document.activeElement;
    while (it.shadowRoot?.activeElement) it = it.shadowRoot.activeElement;
    const again = window.stops.has(it); window.stops.add(it);
    return again";

/// From the top by Tab through all there is.
async fn is_ringed(browser: &Browser, name: &str) -> Result<()> {
    browser.run(BEGIN, Vec::new()).await?;
    let mut stops = 0;
    loop {
        browser.type_keys(&char::from(Key::Tab).to_string()).await?;
        let again = browser.run(AGAIN, Vec::new()).await? == true;
        let ring = browser.run(RING, Vec::new()).await?;
        if ring.is_null() || again {
            break;
        }
        ensure!(ring[1].is_null(), "{name}: {ring:#}");
        stops += 1;
        ensure!(stops < 400, "{name}: the keyboard goes on and on");
        if browser.value("window.stops.has(window.last)").await? == true {
            return Ok(());
        }
    }
    let reached = "[...window.stops].map(it => it.outerHTML.slice(0, 140))";
    anyhow::bail!("{name}: the keyboard reaches only {:#}", browser.value(reached).await?)
}

pub(crate) async fn at_every_stop_of_the_walk(browser: &mut Browser) -> Result<()> {
    states::of_the_walk(browser, Screen::DESK, "en", is_ringed).await?;
    states::beside_the_walk(browser, Screen::DESK, is_ringed).await
}

pub(crate) async fn at_every_stop_of_the_desk(browser: &mut Browser) -> Result<()> {
    states::of_the_desk(browser, Screen::DESK, is_ringed).await
}

pub(crate) async fn at_every_stop_of_hanging(browser: &mut Browser) -> Result<()> {
    hang::states(browser, Screen::DESK, "en", is_ringed).await
}

pub(crate) async fn at_every_stop_of_the_builder(browser: &mut Browser) -> Result<()> {
    builder::states(browser, Screen::DESK, is_ringed).await
}
