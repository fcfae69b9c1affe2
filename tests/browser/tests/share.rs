//! Each way out of the page: what arrives is what left.

use crate::orders::{open, to_be_built, typical};
use crate::picture::draft;
use crate::walk::{at, numbers};
use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Engine, Screen};
use serde_json::{Value, json};

const LINE: &str = "W 92 3/16 H 101 1/2 header 9 1/2 bow 1 1/4 in";

/// The order behind a link is the one that was typed.
fn is_typical(link: &str) -> Result<()> {
    let payload = hangtrue_link::find(link).ok().context("a payload")?;
    let order = hangtrue_link::decode(&payload).ok().context("an order")?;
    let typed = typical();
    ensure!(order.survey == typed.survey && order.note == typed.note, "{order:?}");
    Ok(())
}

async fn text(browser: &Browser, expression: &str) -> Result<String> {
    let value = browser.until(expression).await?;
    value.as_str().map(str::to_owned).context("a text")
}

pub(crate) async fn mail_and_message_hold_the_order(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    let link = draft(browser).await?;
    is_typical(&link)?;
    // By the browser's own reader of addresses, which is what a mail program is given.
    let mail = browser
        .value(
            "(() => { const a = document.querySelector('a[href^=\"mailto:\"]');
                const query = a.href.split('?')[1].split('&').map(p => p.split('='));
                return [a.href, ...query.flatMap(p => [p[0], decodeURIComponent(p[1])])] })()",
        )
        .await?;
    let body = format!("{LINE}\r\n\r\n{link}\r\n");
    let subject = "Order for a roll-up door: Unit 7, blue box";
    ensure!(mail == json!([mail[0], "subject", subject, "body", body]), "{mail}");
    let sms = text(browser, "document.querySelector('a[href^=\"sms:\"]').href").await?;
    let query = sms.strip_prefix("sms:?&body=").context("an sms address without a number")?;
    let decoded = text(browser, &format!("decodeURIComponent({})", json!(query))).await?;
    ensure!(decoded == format!("{LINE} {link}"), "{decoded}");
    for address in [mail[0].as_str().unwrap_or_default(), &sms] {
        ensure!(!address.contains([' ', '+', '"', '<']), "{address} is not properly encoded");
    }
    Ok(())
}

pub(crate) async fn copied_by_a_press_or_by_hand(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    let link = draft(browser).await?;
    let message = format!("{LINE} {link}");
    for (act, expected) in [("copy", &message), ("copy-link", &link)] {
        browser.tap(&format!("[data-act={act}]")).await?;
        browser.until("document.querySelector('.link [role=status]').innerText").await?;
        let copied = browser.pasted().await?;
        ensure!(copied == *expected, "{act}: {copied}");
    }
    browser
        .run(
            "navigator.clipboard.writeText = () => Promise.reject(new DOMException('no'))",
            Vec::new(),
        )
        .await?;
    browser.tap("[data-act=copy]").await?;
    let by_hand = text(browser, "document.querySelector('#by-hand')?.innerText").await?;
    ensure!(by_hand == message, "{by_hand}");
    ensure!(browser.value("document.activeElement.id").await? == "by-hand");
    browser.tap("#by-hand").await?;
    let marked = text(browser, "getSelection().toString()").await?;
    ensure!(marked.trim() == message, "one touch marks all of it, not {marked}");
    browser.shoot("copy-by-hand").await
}

/// Browsers cut what is pasted into a full field, and say nothing.
pub(crate) async fn a_note_that_is_cut_says_so(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    draft(browser).await?;
    let note = "document.getElementById('note')";
    let told = "document.querySelector('#note ~ [role=status]').innerText";
    ensure!(browser.value(told).await? == "");
    browser.tap("#note").await?;
    let paste = format!("{note}.select(); document.execCommand('insertText', false, arguments[0])");
    browser.run(&paste, vec![json!("Liner inside, ask first.\n".repeat(9))]).await?;
    browser.until(&format!("{told}.includes('No more fits')")).await?;
    ensure!(
        text(browser, "document.getElementById('note-room').innerText").await?.starts_with("200")
    );
    ensure!(browser.value(&format!("{note}.value.length")).await? == 200);
    browser.shoot("note-cut-360").await?;
    // What is shortened is not told any more.
    browser.run(&paste, vec![json!("Liner inside.")]).await?;
    browser.until(&format!("{told} === ''")).await?;
    ensure!(browser.value("document.getElementById('note-room').innerText").await? == "");
    Ok(())
}

pub(crate) async fn the_share_sheet_gets_line_and_link(browser: &mut Browser) -> Result<()> {
    if browser.engine() == Engine::Chromium {
        // On this system it has none, which the page must not see.
        let exists = json!({ "source": "navigator.share = () => {}" });
        browser.devtools("Page.addScriptToEvaluateOnNewDocument", exists).await?;
    }
    browser.open(Screen::PHONE, "/").await?;
    let link = draft(browser).await?;
    let stub = "navigator.share = data => { window.shared = data; return Promise.resolve() }";
    browser.run(stub, Vec::new()).await?;
    ensure!(browser.value("document.querySelector('.primary').dataset.act").await? == "share");
    browser.shoot("order-share-360").await?;
    browser.tap("[data-act=share]").await?;
    let shared = browser.until("window.shared").await?;
    let title = Value::from("Order for a roll-up door");
    ensure!(shared == json!({ "title": title, "text": LINE, "url": link }), "{shared}");
    Ok(())
}

pub(crate) async fn an_opened_order_asks_before_it_replaces_a_draft(
    browser: &mut Browser,
) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    draft(browser).await?;
    let mine = numbers(browser).await?;
    open(browser, &to_be_built()).await?;
    let theirs = numbers(browser).await?;
    ensure!(mine != theirs);
    browser.tap("form [type=submit]").await?;
    browser.find("#replace").await?;
    ensure!(browser.value("document.activeElement.id").await? == "replace");
    ensure!(browser.text("#replace").await?.contains("92 3/16 in × 101 1/2 in"));
    browser.shoot("replace-360").await?;
    browser.tap("[data-act=keep]").await?;
    browser.until("!document.querySelector('#replace')").await?;
    browser.goto("/#/check").await?;
    at(browser, "check").await?;
    ensure!(numbers(browser).await? == mine, "the draft was kept");

    open(browser, &to_be_built()).await?;
    browser.tap("form [type=submit]").await?;
    browser.tap("[data-act=replace]").await?;
    at(browser, "check").await?;
    ensure!(numbers(browser).await? == theirs, "the draft was replaced");
    Ok(())
}
