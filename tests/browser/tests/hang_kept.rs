//! A door being hung on a device that fails: the module stops, the network is gone.

use crate::faults::{FAULT, only, site_with, traps};
use crate::hang::{fill, open, show};
use crate::offline::{is_kept, reload};
use anyhow::{Result, ensure};
use hangtrue_browser::{Browser, Screen};

/// The module traps while it draws what a key changed: the page says so, the door is there after
/// a reload, and where a reload does not help it is set aside and can be taken up again.
pub(crate) async fn a_trap_leaves_a_way_out(browser: &mut Browser) -> Result<()> {
    let next = "arg0.childNodes";
    let trap = format!("(globalThis.trap && wasm.__wbindgen_malloc(-16, 8), {next})");
    browser.serve(site_with("hang", next, &trap)?).await?;
    browser.open(Screen::PHONE, "/hang.html").await?;
    open(browser, "spring").await?;
    fill(browser, "weight", "145").await?;
    let stop = "window.trap = true; const field = document.getElementById('weight');
        field.value = '1450'; field.dispatchEvent(new Event('input', { bubbles: true }))";
    browser.run(stop, Vec::new()).await?;
    browser.find("#fault").await?;
    let told = browser.value(FAULT).await?.to_string();
    ensure!(told.contains("has stopped") && told.contains("is kept on this device"), "{told}");
    only(browser, traps).await?;
    browser.shoot("fault-hang").await?;
    browser.tap("#fault .primary").await?;
    browser.find("#app[data-ready] main.hang-spring").await?;
    ensure!(browser.value("document.getElementById('weight').value").await? == "145");

    browser.run(stop, Vec::new()).await?;
    browser.find("#fault").await?;
    browser.take_console().await?;
    browser.tap("#fault button:last-child").await?;
    browser.find("#app[data-ready] main.hang-order #paste").await?;
    only(browser, traps).await?;
    let listed = browser.text("main .aside").await?;
    ensure!(listed.contains("Go on with Unit 7, blue box"), "{listed}");
    for screen in [Screen::SMALL_PHONE, Screen::DESK] {
        browser.set_screen(screen).await?;
        browser.shoot(&format!("hang-aside-{}", screen.width)).await?;
    }
    browser.set_screen(Screen::PHONE).await?;
    // Another door in between keeps both.
    open(browser, "spring").await?;
    fill(browser, "weight", "120").await?;
    show(browser, "order").await?;
    browser.tap("main .aside [data-act^='take-up']").await?;
    browser.find("main.hang-spring").await?;
    ensure!(browser.value("document.getElementById('weight').value").await? == "145");
    browser.reload().await?;
    browser.find("#app[data-ready] main.hang-spring").await?;
    ensure!(browser.value("document.getElementById('weight').value").await? == "145");
    // The other was left on this screen, so here it goes on.
    show(browser, "order").await?;
    browser.tap("main .aside [data-act^='take-up']").await?;
    show(browser, "spring").await?;
    ensure!(browser.value("document.getElementById('weight').value").await? == "120");
    Ok(())
}

/// Whoever services a door scans its sticker where there is no network: the server is gone.
pub(crate) async fn a_record_opens_without_a_network(browser: &mut Browser) -> Result<()> {
    browser.set_screen(Screen::PHONE).await?;
    open(browser, "record").await?;
    fill(browser, "serial", "HT-0042").await?;
    fill(browser, "hung", "2026-02-20").await?;
    let link = browser.value("document.querySelector('a.url').href").await?;
    is_kept(browser).await?;
    browser.run("localStorage.clear()", Vec::new()).await?;
    browser.server.stop();
    let scan = "const to = arguments[0].replace('#', '?scanned#');
        setTimeout(() => { location.href = to })";
    browser.run(scan, vec![link]).await?;
    let is_there = "location.search === '?scanned'
        && document.querySelector('#app[data-ready] main.hang-care') !== null";
    browser.until(is_there).await?;
    let told = browser.text("main").await?;
    for said in
        ["HT-0042", "What is due", "2027\u{2011}02\u{2011}20", "Sizes to order", "92 3/16 in"]
    {
        ensure!(told.contains(said), "without a network the record lacks `{said}`:\n{told}");
    }
    browser.shoot("hang-offline-phone").await?;
    // A service is added there, and makes a link that opens there.
    browser.tap("input[name='service.work'][value=lubrication]").await?;
    browser.tap("[data-act=add-service]").await?;
    reload(browser).await?;
    ensure!(browser.text("main").await?.contains("Take out"));
    Ok(())
}
