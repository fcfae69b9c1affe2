//! What a person sees where something is broken: the module, the browser's permission, the
//! storage, the clock. The table in tests/browser/README.md names the scenario of each.

use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Screen, Site, root};
use serde_json::json;

use crate::walk::{READINGS, at, leave_out_the_rest, link, read_the_four, to_the_check};

/// The pages that a module draws.
const PAGES: [&str; 5] = ["/", "/desk.html", "/hang.html", "/dealer.html", "/builder.html"];
pub(crate) const WIDTH: &str = "document.getElementById('width.middle').value";
pub(crate) const FAULT: &str = "document.querySelector('#fault')?.innerText ?? ''";

/// The paths of the files in `dist/` that a test picks.
fn files(is_one: impl Fn(&str) -> bool) -> Result<Vec<String>> {
    let mut found = Vec::new();
    for folder in ["", "embed/"] {
        for file in std::fs::read_dir(root().join("dist").join(folder))? {
            let name = file?.file_name();
            let name = name.to_str().context("a file name that is no text")?;
            if is_one(name) {
                found.push(format!("/{folder}{name}"));
            }
        }
    }
    ensure!(!found.is_empty(), "dist/ has no such file");
    Ok(found)
}

/// The site as built, but that a page's glue does `instead` where it did `what`.
pub(crate) fn site_with(page: &str, what: &str, instead: &str) -> Result<Site> {
    let is_glue = |name: &str| name.starts_with(&[page, "-"].concat()) && name.ends_with(".js");
    let path = files(is_glue)?.remove(0);
    let glue = std::fs::read_to_string(root().join("dist").join(&path[1..]))?;
    ensure!(glue.contains(what), "the glue has no `{what}`");
    Ok(Site::dist()?.text(&path, &glue.replace(what, instead)).text("/worker.js", ""))
}

/// The site as built, but that the walk's glue asks `clock` where it asks for the time.
fn site_with_clock(clock: &str) -> Result<Site> {
    site_with("main", "new Date()", clock)
}

/// The walk's module traps in the middle of an event once the page sets `trap`: its glue then asks
/// the module's own allocator, while the module asks for the time, for more than there can be.
/// What follows is what follows any panic.
fn site_that_can_trap() -> Result<Site> {
    site_with_clock("(globalThis.trap && wasm.__wbindgen_malloc(-16, 8), new Date())")
}

/// Takes the console, on which nothing stands but what `is_known` knows.
pub(crate) async fn only(browser: &mut Browser, is_known: impl Fn(&str) -> bool) -> Result<()> {
    let lines = browser.take_console().await?;
    ensure!(lines.iter().all(|line| is_known(line)), "{lines:?}");
    Ok(())
}

async fn typed_and_trapped(browser: &mut Browser) -> Result<()> {
    browser.find("#app[data-ready]").await?;
    browser.run("location.hash = '#/width'", Vec::new()).await?;
    at(browser, "width").await?;
    browser.tap("[id='width.middle']").await?;
    browser.type_keys("92 3/").await?;
    browser.until(&format!("{WIDTH} === '92 3/'")).await?;
    browser.run("window.trap = true", Vec::new()).await?;
    browser.type_keys("1").await?;
    browser.find("#fault").await?;
    only(browser, traps).await
}

pub(crate) fn traps(line: &str) -> bool {
    line.contains("Error") || line.contains("unreachable")
}

/// The module traps while it takes a key in: the page says so, the draft is there after a
/// reload, and where a reload does not help there is a way that does without it.
pub(crate) async fn a_trap_is_told_and_the_draft_is_safe(browser: &mut Browser) -> Result<()> {
    browser.serve(site_that_can_trap()?).await?;
    browser.open(Screen::PHONE, "/").await?;
    typed_and_trapped(browser).await?;
    let told = browser.value(FAULT).await?.to_string();
    ensure!(told.contains("has stopped") && told.contains("is kept on this device"), "{told}");
    ensure!(browser.value("document.activeElement.localName").await? == "h1", "{told}");
    for (screen, name) in [(Screen::SMALL_PHONE, "phone"), (Screen::DESK, "desk")] {
        browser.set_screen(screen).await?;
        browser.shoot(&format!("fault-stopped-{name}")).await?;
    }
    browser.set_screen(Screen::PHONE).await?;
    browser.tap("#fault .primary").await?;
    browser.find("#app[data-ready]").await?;
    at(browser, "width").await?;
    ensure!(browser.value(WIDTH).await? == "92 3/");

    browser.run("document.querySelector('.languages [lang=fr]').click()", Vec::new()).await?;
    browser.until("document.documentElement.lang === 'fr'").await?;
    let next_event = "window.trap = true;
        document.getElementById('width.middle').dispatchEvent(new Event('input', { bubbles: true }))";
    browser.run(next_event, Vec::new()).await?;
    browser.until(&format!("({FAULT}).includes('arrêtée')")).await?;
    browser.take_console().await?;
    browser.shoot("fault-stopped-fr").await?;
    browser.tap("#fault button:last-child").await?;
    browser.find("#app[data-ready]").await?;
    at(browser, "start").await?;
    // The page was told of its end too.
    only(browser, traps).await?;
    browser.run("location.hash = '#/width'", Vec::new()).await?;
    at(browser, "width").await?;
    ensure!(browser.value(WIDTH).await? == "", "begun anew");
    browser.run("location.hash = '#/drafts'", Vec::new()).await?;
    at(browser, "drafts").await?;
    browser.tap(".drafts [data-act^='open-draft']").await?;
    at(browser, "width").await?;
    ensure!(browser.value(WIDTH).await? == "92 3/", "the old draft is in the list");
    Ok(())
}

/// A page on which nothing happens.
const LEFT: &str = "<!doctype html><title>t</title><link rel=icon href=data:,>";

/// A page without its module says so, and does not look as if it could be used.
async fn could_not_start(browser: &mut Browser, name: &str) -> Result<()> {
    for page in PAGES {
        browser.open(Screen::PHONE, page).await?;
        browser.find("#fault").await.with_context(|| format!("{page}, {name}"))?;
        let told = browser.value(FAULT).await?.to_string();
        ensure!(told.contains("could not start") && told.contains("another browser"), "{told}");
        ensure!(browser.value("document.querySelectorAll('form, input').length").await? == 0);
        ensure!(browser.value("document.querySelectorAll('#fault button').length").await? == 1);
        only(browser, |line| !line.is_empty()).await?;
    }
    browser.shoot(&format!("fault-{name}")).await?;
    // The element on the builder's page finds its own module broken a little later: only a page
    // that was left has said all.
    browser.goto("/left.html").await?;
    only(browser, |line| !line.is_empty()).await
}

pub(crate) async fn where_wasm_may_not_run_the_page_says_so(browser: &mut Browser) -> Result<()> {
    let policy = "script-src 'self'; require-trusted-types-for 'script'";
    let site = Site::dist()?.text("/left.html", LEFT);
    browser.serve(site.header("Content-Security-Policy", policy)).await?;
    could_not_start(browser, "wasm-blocked").await
}

pub(crate) async fn a_module_that_is_not_whole_is_told(browser: &mut Browser) -> Result<()> {
    for (name, text) in [("wasm-corrupt", "\0asm\u{1}\0\0\0\u{1}"), ("wasm-not-wasm", "<html>")] {
        let mut site = Site::dist()?.text("/left.html", LEFT);
        for path in files(|name| name.ends_with(".wasm"))? {
            site = site.text(&path, text);
        }
        browser.serve(site).await?;
        could_not_start(browser, name).await?;
    }
    Ok(())
}

/// The whole walk where the browser has really no storage and no worker: in a frame of an
/// opaque origin both throw.
pub(crate) async fn without_storage_and_worker_the_order_is_made(
    browser: &mut Browser,
) -> Result<()> {
    let frame = "<!doctype html><title>t</title><link rel=icon href=data:,>\
         <iframe sandbox='allow-scripts allow-forms' src=/index.html width=360 height=640></iframe>";
    let site = Site::dist()?.text("/host.html", frame).header("Access-Control-Allow-Origin", "*");
    browser.serve(site).await?;
    browser.open(Screen::DESK, "/host.html").await?;
    browser.enter_frame("iframe").await?;
    browser.find("#app[data-ready]").await?;
    for storage in ["localStorage", "sessionStorage", "navigator.serviceWorker.controller"] {
        let denied =
            format!("(() => {{ try {{ return {storage} == null }} catch {{ return true }} }})()");
        ensure!(browser.value(&denied).await? == true, "{storage} is there");
    }
    browser.tap("button[type=submit]").await?;
    at(browser, "frame").await?;
    browser.tap("input[name=prepared][value=yes]").await?;
    browser.find(".notice [data-act=noted]").await?;
    browser.shoot("fault-storage-denied").await?;
    browser.tap(".notice [data-act=noted]").await?;
    browser.tap("button[type=submit]").await?;
    read_the_four(browser).await?;
    leave_out_the_rest(browser).await?;
    browser.tap("button[type=submit]").await?;
    link(browser).await?;
    ensure!(browser.value("document.querySelector('.notice')").await?.is_null(), "said once");
    browser.leave_frame().await
}

/// The storage is filled to its last byte, really.
pub(crate) async fn a_full_storage_is_told(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/#/width").await?;
    browser.find("#app[data-ready]").await?;
    browser
        .run(
            "let n = 0; for (let size = 1 << 22; size >= 1; size >>= 1) {
                try { for (;;) { localStorage.setItem('fill' + n, 'x'.repeat(size)); n += 1; } }
                catch {}
            }",
            Vec::new(),
        )
        .await?;
    browser.tap("[id='width.middle']").await?;
    browser.type_keys("92 3/16").await?;
    browser.find(".notice [data-act=noted]").await?;
    ensure!(browser.value(WIDTH).await? == "92 3/16");
    browser.tap(".notice [data-act=noted]").await?;
    browser.run("location.hash = '#/height'", Vec::new()).await?;
    at(browser, "height").await?;
    browser.run("location.hash = '#/width'", Vec::new()).await?;
    at(browser, "width").await?;
    ensure!(browser.value(WIDTH).await? == "92 3/16", "it goes on without");
    Ok(())
}

/// A clock that stands at 1970 or in 2300 gives an order without a day, not a wrong one.
pub(crate) async fn a_clock_wrong_by_years_dates_nothing(browser: &mut Browser) -> Result<()> {
    browser.serve(site_with_clock("new Date(globalThis.clock ?? Date.now())")?).await?;
    to_the_check(browser).await?;
    for (year, dated) in [(1970, false), (2026, true), (2300, false)] {
        browser.run(&format!("window.clock = Date.UTC({year}, 5, 1)"), Vec::new()).await?;
        browser.run("location.hash = '#/check'", Vec::new()).await?;
        at(browser, "check").await?;
        browser.tap("button[type=submit]").await?;
        let url = link(browser).await?;
        let payload = url.split_once('#').context("a fragment")?.1;
        let order = hangtrue_link::decode(payload).ok().context("an order")?;
        ensure!(order.date.is_some() == dated, "{year}: {:?}", order.date);
        ensure!(order.date.is_none_or(|date| date.year == year), "{year}: {:?}", order.date);
    }
    Ok(())
}

/// A browser that speaks what there is no catalogue for gets English, and the others by a tap.
pub(crate) async fn an_unknown_language_is_english(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    browser.set_languages("tlh,de-CH").await?;
    browser.goto("/?again").await?;
    browser.find("#app[data-ready]").await?;
    ensure!(browser.value("document.documentElement.lang").await? == "en");
    browser.tap(".languages [lang=es]").await?;
    browser.until("document.documentElement.lang === 'es'").await.map(drop)
}

/// The page itself says in three languages that it needs a script.
pub(crate) async fn without_javascript_the_page_says_so(browser: &mut Browser) -> Result<()> {
    browser.devtools("Emulation.setScriptExecutionDisabled", json!({ "value": true })).await?;
    for page in PAGES {
        browser.open(Screen::PHONE, page).await?;
        let text = browser.text("body").await?;
        let told = ["Turn JavaScript on", "Active JavaScript", "Activez JavaScript"];
        ensure!(told.iter().all(|words| text.contains(words)), "{page}: {text}");
        let left =
            browser.value("document.querySelector('noscript p').getBoundingClientRect().left");
        ensure!(left.await?.as_f64() >= Some(16.0), "{page}: the words stand at the edge");
    }
    for (screen, name) in [(Screen::PHONE, "phone"), (Screen::DESK, "desk")] {
        browser.set_screen(screen).await?;
        browser.shoot(&format!("fault-no-script-{name}")).await?;
    }
    browser.devtools("Emulation.setScriptExecutionDisabled", json!({ "value": false })).await?;
    Ok(())
}

/// The tab is closed at every step, in the middle of a text; the next one stands where it was.
pub(crate) async fn a_tab_killed_at_every_step(browser: &mut Browser) -> Result<()> {
    async fn killed(browser: &Browser, step: &str) -> Result<()> {
        browser.in_a_new_tab().await?;
        browser.goto("/").await?;
        browser.find("#app[data-ready]").await?;
        at(browser, step).await.with_context(|| format!("killed at {step}"))
    }
    browser.open(Screen::PHONE, "/").await?;
    browser.find("#app[data-ready]").await?;
    browser.tap("button[type=submit]").await?;
    at(browser, "frame").await?;
    browser.tap("input[name=prepared][value=yes]").await?;
    killed(browser, "frame").await?;
    ensure!(
        browser.value("document.querySelector('[name=prepared][value=yes]').checked").await?
            == true
    );
    browser.tap("button[type=submit]").await?;
    for (field, text) in READINGS {
        let step = field.split('.').next().unwrap_or_default();
        at(browser, step).await?;
        browser.tap(&format!("[id='{field}']")).await?;
        browser.type_keys(text).await?;
        killed(browser, step).await?;
        let kept = browser.value(&format!("document.getElementById('{field}').value")).await?;
        ensure!(kept == text, "{step}: {kept}");
        browser.tap("button[type=submit]").await?;
    }
    browser.find("main.step-proof").await?;
    killed(browser, "proof").await?;
    leave_out_the_rest(browser).await?;
    killed(browser, "check").await?;
    browser.tap("button[type=submit]").await?;
    let before = link(browser).await?;
    killed(browser, "send").await?;
    ensure!(link(browser).await? == before);
    Ok(())
}
