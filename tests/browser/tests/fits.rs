//! Whether all of a screen is there: nothing cut off, nothing that scrolls sideways, no number of
//! which the end stands on the next line.

use anyhow::{Result, ensure};
use hangtrue_browser::Browser;
use serde_json::json;

/// A script body: what is cut off, and by how much the page scrolls sideways.
const LOST: &str = "
    const root = document.documentElement;
    const lost = [];
    if (root.scrollWidth > root.clientWidth)
        lost.push(`scrolls sideways by ${root.scrollWidth - root.clientWidth} px`);
    for (const it of document.querySelectorAll('main *, header *')) {
        if (!it.checkVisibility() || it.closest('svg, .visually-hidden, .scroll, .paper')) continue;
        const { overflowX, overflowY } = getComputedStyle(it);
        const cut = overflowX !== 'visible' && it.scrollWidth > it.clientWidth + 1
            || overflowY !== 'visible' && it.scrollHeight > it.clientHeight + 1;
        const box = it.getBoundingClientRect();
        const out = box.width && (box.right > innerWidth + 1 || box.left < -1);
        const spills = it.matches('button, label, h1, .value, .typed, .echo, .state')
            && it.scrollWidth > it.clientWidth + 1 && it.clientWidth > 2;
        if ((cut && !it.matches('input, textarea')) || out || spills) lost.push(it.outerHTML.slice(0, 120));
    }
    const number = /\\d+\\s\\d+\\/\\d+(\\s(in|mm|po|pulg|ft)\\b)?|\\d\\s(in|mm|po|pulg|ft)\\b/g;
    const range = document.createRange();
    const texts = document.createTreeWalker(document.querySelector('main'), NodeFilter.SHOW_TEXT);
    while (texts.nextNode()) {
        const text = texts.currentNode;
        if (text.parentElement.closest('svg, .visually-hidden, .paper, pre, code, textarea, option'))
            continue;
        for (const { 0: found, index } of text.data.matchAll(number)) {
            range.setStart(text, index);
            range.setEnd(text, index + found.length);
            const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
            if (lines.size > 1) lost.push(`a line ends within ${found} of ${text.data}`);
        }
    }
    return lost;";

/// Fails with what is lost, if anything is.
pub(crate) async fn loses_nothing(browser: &Browser, name: &str) -> Result<()> {
    let lost = browser.run(LOST, Vec::new()).await?;
    ensure!(lost == json!([]), "{name}: {lost:#}");
    Ok(())
}

/// A script body: whether the page still has the text spacing of WCAG 2.2, 1.4.12. A sheet of its
/// own, which a page's policy has no say in.
const SPACING: &str = "
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`* { line-height: 1.5 !important; letter-spacing: .12em !important;
        word-spacing: .16em !important } p { margin-bottom: 2em !important }`);
    document.adoptedStyleSheets = [sheet];
    const body = getComputedStyle(document.body);
    return parseFloat(body.letterSpacing) > parseFloat(body.fontSize) / 10;";

/// Spaces the text as a person may, who reads with difficulty.
pub(crate) async fn space_the_text(browser: &Browser) -> Result<()> {
    ensure!(browser.run(SPACING, Vec::new()).await? == true, "the text is as it was");
    Ok(())
}
