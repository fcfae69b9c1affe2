//! Every state a screen can be in, one after the other: empty, filled, refused, asked back.

use crate::desk_many::{LIST, drop_file};
use crate::orders::{crowded, open, to_be_built, typical};
use crate::walk::at;
use anyhow::Result;
use hangtrue_browser::{Browser, Screen};

async fn fill(browser: &Browser, field: &str, text: &str) -> Result<()> {
    browser.tap(&format!("[id='{field}']")).await?;
    browser.run("document.activeElement.select()", Vec::new()).await?;
    browser.type_keys(text).await
}

/// As if this language had been chosen: the next page speaks it.
pub(crate) async fn speak(browser: &Browser, language: &str) -> Result<()> {
    let remember = format!("localStorage.setItem('hangtrue-language', '{language}')");
    browser.run(&remember, Vec::new()).await?;
    Ok(())
}

async fn fresh(browser: &Browser, language: &str) -> Result<()> {
    browser.run("localStorage.clear()", Vec::new()).await?;
    speak(browser, language).await?;
    browser.goto("/?again").await?;
    browser.find("#app[data-ready]").await?;
    Ok(())
}

/// Walks, and calls `visit` with each state's name.
pub(crate) async fn of_the_walk(
    browser: &mut Browser,
    screen: Screen,
    language: &str,
    visit: impl AsyncFn(&Browser, &str) -> Result<()>,
) -> Result<()> {
    browser.open(screen, "/").await?;
    fresh(browser, language).await?;
    at(browser, "start").await?;
    visit(browser, "start").await?;

    browser.goto("/#/frame").await?;
    at(browser, "frame").await?;
    browser.tap("input[name='old-door'][value=yes]").await?;
    fill(browser, "post.left", "2 1/8").await?;
    visit(browser, "frame").await?;

    browser.goto("/#/width").await?;
    at(browser, "width").await?;
    browser.tap("button[type=submit]").await?;
    visit(browser, "width-missing").await?;
    fill(browser, "width.low", "92 1/4").await?;
    fill(browser, "width.middle", "92 3/16").await?;
    visit(browser, "width").await?;
    fill(browser, "width.high", "921/4").await?;
    browser.tap("button[type=submit]").await?;
    visit(browser, "width-refused").await?;
    fill(browser, "width.high", "94").await?;
    browser.tap("button[type=submit]").await?;
    browser.find("#problems li").await?;
    visit(browser, "width-question").await?;

    for (step, field, text) in [
        ("height", "height.left", "101 1/2"),
        ("header", "header.center", "6 1/2"),
        ("bow", "bow.first", "2 1/4"),
    ] {
        browser.goto(&format!("/#/{step}")).await?;
        at(browser, step).await?;
        fill(browser, field, text).await?;
        visit(browser, step).await?;
    }
    browser.goto("/#/check").await?;
    at(browser, "check").await?;
    visit(browser, "check").await?;
    browser.tap("button[type=submit]").await?;
    visit(browser, "check-question").await?;
    browser.goto("/#/send").await?;
    at(browser, "send").await?;
    visit(browser, "send-not-yet").await?;

    browser.goto("/#/check").await?;
    at(browser, "check").await?;
    while browser.value("document.querySelector('.confirm input:not(:checked)')").await?.is_object()
    {
        browser.tap(".confirm:has(input:not(:checked))").await?;
    }
    browser.tap("button[type=submit]").await?;
    at(browser, "send").await?;
    visit(browser, "send").await?;
    fill(browser, "note", &"Liner inside, ask first. ".repeat(8)).await?;
    visit(browser, "send-note-full").await
}

/// The states beside the walk: an extra reading asked for, the code and the script, an order that
/// was sent, a link that was damaged.
pub(crate) async fn beside_the_walk(
    browser: &mut Browser,
    screen: Screen,
    visit: impl AsyncFn(&Browser, &str) -> Result<()>,
) -> Result<()> {
    browser.open(screen, "/").await?;
    fresh(browser, "en").await?;
    for (name, order) in [("built", to_be_built()), ("crowded", crowded(1)), ("typical", typical())]
    {
        open(browser, &order).await?;
        visit(browser, &format!("opened-{name}")).await?;
    }
    browser.tap("form [type=submit]").await?;
    at(browser, "check").await?;
    visit(browser, "check-clear").await?;
    browser.goto("/#/proof/diagonal.falling").await?;
    at(browser, "proof").await?;
    visit(browser, "proof").await?;
    for step in ["send", "scan", "voice"] {
        browser.goto(&format!("/#/{step}")).await?;
        at(browser, step).await?;
        visit(browser, step).await?;
    }
    open(browser, &to_be_built()).await?;
    browser.tap("form [type=submit]").await?;
    browser.find("#replace").await?;
    visit(browser, "replace").await?;
    browser.goto("/?damaged#1HELLO").await?;
    at(browser, "opened").await?;
    visit(browser, "link-damaged").await
}

/// The counter desk: empty, and with a question.
pub(crate) async fn of_the_desk(
    browser: &mut Browser,
    screen: Screen,
    visit: impl AsyncFn(&Browser, &str) -> Result<()>,
) -> Result<()> {
    browser.open(screen, "/desk.html").await?;
    browser.find("#app[data-ready]").await?;
    visit(browser, "desk-empty").await?;
    for (field, text) in [
        ("width.middle", "92 3/16"),
        ("height.center", "101 1/2"),
        ("header.center", "6 1/4"),
        ("bow.first", "1 1/4"),
    ] {
        fill(browser, field, text).await?;
    }
    visit(browser, "desk-question").await?;
    fill(browser, "width.middle", "921/4").await?;
    visit(browser, "desk-refused").await?;
    of_many_orders(browser, screen, "en", visit).await
}

/// Many at once: nothing yet, refused, a table's columns, what was found, nothing that is so.
pub(crate) async fn of_many_orders(
    browser: &mut Browser,
    screen: Screen,
    language: &str,
    visit: impl AsyncFn(&Browser, &str) -> Result<()>,
) -> Result<()> {
    browser.open(screen, "/desk.html").await?;
    speak(browser, language).await?;
    browser.goto("/desk.html?again").await?;
    browser.find("#app[data-ready]").await?;
    browser.tap("[data-act=many]").await?;
    browser.find("#orders").await?;
    visit(browser, "many-empty").await?;
    browser.tap("#orders").await?;
    browser.type_keys("Friday").await?;
    browser.tap(".open [type=submit]").await?;
    browser.find("#orders-trouble .summary").await?;
    visit(browser, "many-refused").await?;
    drop_file(
        browser,
        "friday.csv",
        &LIST.replace("Bow,", "Steel,").replace("Second bow", "Rear steel"),
    )
    .await?;
    browser.find("#list-check").await?;
    visit(browser, "many-columns").await?;
    drop_file(browser, "friday.csv", LIST).await?;
    browser.until("!document.querySelector('.many .summary')").await?;
    browser.tap("#list-check").await?;
    browser.find("table.found tbody tr").await?;
    visit(browser, "many-found").await?;
    browser.tap("#list-filter").await?;
    browser.type_keys("zz").await?;
    browser.find(".many > .summary").await?;
    visit(browser, "many-none").await
}
