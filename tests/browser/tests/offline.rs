//! Without a network, and between two builds. The server is taken away for real: what a browser
//! emulates does not reach a worker.

use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Screen, Site, root};
use serde_json::json;

use crate::walk::at;

/// The builds that are kept, in a promise.
const BUILDS: &str = "caches.keys().then(all => all.filter(name => name !== 'hangtrue-others'))";

/// Waits until the worker keeps a whole build and answers for this page.
pub(crate) async fn is_kept(browser: &Browser) -> Result<()> {
    browser.find("#app[data-ready]").await?;
    browser.until("navigator.serviceWorker.controller?.state === 'activated'").await?;
    Ok(())
}

/// The same of a page by a dealer's rules, after its first visit: the page, its script, the rules,
/// the two files of the module that reads them. Whoever leaves before may cut that short, which
/// Firefox says on the console.
pub(crate) async fn with_its_rules_is_kept(browser: &Browser) -> Result<()> {
    kept_beside(browser, 5).await
}

/// The same of a page beside the walk, which is in the build as it is: the rules alone.
pub(crate) async fn has_its_rules_kept(browser: &Browser) -> Result<()> {
    kept_beside(browser, 1).await
}

async fn kept_beside(browser: &Browser, files: u8) -> Result<()> {
    is_kept(browser).await?;
    let kept = "caches.open('hangtrue-others').then(c => c.keys()).then(all => all.length";
    browser.until(&format!("{kept} === {files})")).await?;
    Ok(())
}

/// A script that may wait, for the value it resolves to.
async fn awaited(browser: &Browser, script: &str) -> Result<serde_json::Value> {
    browser.run(&format!("return (async () => {{ {script} }})()"), Vec::new()).await
}

/// A reload from within the page: one from outside is refused without a network.
pub(crate) async fn reload(browser: &Browser) -> Result<()> {
    browser.run("window.old = true; setTimeout(() => location.reload())", Vec::new()).await?;
    browser.until("!window.old && document.querySelector('#app[data-ready]') !== null").await?;
    Ok(())
}

/// The site with another worker in the place of its own, at the same address.
fn put_in_place(browser: &mut Browser, worker: &str) -> Result<()> {
    browser.server.replace(Site::dist()?.text("/worker.js", worker))?;
    Ok(())
}

fn worker_as_built() -> Result<String> {
    let path = root().join("dist/worker.js");
    std::fs::read_to_string(&path).with_context(|| format!("cannot read {}", path.display()))
}

/// The worker as another build has it.
fn worker_of_next_build() -> Result<String> {
    let next = worker_as_built()?.replacen("\"hangtrue-", "\"hangtrue-next-", 1);
    ensure!(next != worker_as_built()?, "the worker does not say its build");
    Ok(next)
}

pub(crate) async fn all_of_it_works_without_a_network(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    is_kept(browser).await?;
    browser.server.stop();
    reload(browser).await?;
    crate::walk::past_the_frame(browser).await?;
    for (field, text) in crate::walk::READINGS {
        let step = field.split('.').next().unwrap_or_default();
        at(browser, step).await?;
        ensure!(browser.value("document.querySelectorAll('main svg').length > 0").await? == true);
        browser.tap(&format!("[id='{field}']")).await?;
        browser.type_keys(text).await?;
        browser.tap("button[type=submit]").await?;
    }
    crate::walk::leave_out_the_rest(browser).await?;
    browser.tap("button[type=submit]").await?;
    at(browser, "send").await?;
    let link = browser.value("document.querySelector('a.url').href").await?;
    browser.shoot("offline-order-phone").await?;
    browser.run("location.hash = '#/scan'", Vec::new()).await?;
    at(browser, "scan").await?;
    browser.find("main svg path").await?;
    // The link, as the dealer opens it: another page load, still without a network.
    browser
        .run(
            "const to = arguments[0].replace('#', '?sent#'); setTimeout(() => { location.href = to })",
            vec![link],
        )
        .await?;
    browser
        .until("location.search === '?sent' && document.querySelector('#app[data-ready]') !== null")
        .await?;
    at(browser, "opened").await?;
    // And printed: the sheet is there, and the button calls the browser's own print.
    browser.run("window.prints = 0; window.print = () => { window.prints += 1 }", vec![]).await?;
    browser.tap("[data-act=print]").await?;
    browser.until("window.prints === 1").await?;
    ensure!(
        browser.value("document.querySelectorAll('.paper .paper-code svg path').length").await?
            == 1
    );
    browser.run("setTimeout(() => { location.href = 'desk.html' })", Vec::new()).await?;
    browser.until("location.pathname.endsWith('desk.html') && document.querySelector('#app[data-ready]') !== null").await?;
    Ok(())
}

pub(crate) async fn a_second_visit_asks_the_network_for_nothing(
    browser: &mut Browser,
) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    is_kept(browser).await?;
    ensure!(!browser.server.requests().is_empty(), "nothing came from the server at all");
    for page in ["/", "/desk.html", "/hang.html"] {
        let before = browser.server.requests().len();
        browser.goto(&format!("{page}?again")).await?;
        browser.find("#app[data-ready]").await?;
        let asked = browser.server.requests().split_off(before);
        // The browser's own look whether there is a newer build: nothing waits for it.
        ensure!(asked.iter().all(|line| line == "200 /worker.js"), "{page} asks for {asked:?}");
    }
    Ok(())
}

/// A page that is still on its way when the worker comes up is passed over by it, as the standard
/// has it; this worker passes over every one.
pub(crate) async fn a_page_that_was_passed_over_asks(browser: &mut Browser) -> Result<()> {
    let claims = "await clients.claim();";
    let worker = worker_as_built()?.replacen(claims, "", 1);
    ensure!(worker != worker_as_built()?, "the worker does not claim");
    browser.serve(Site::dist()?.text("/worker.js", &worker)).await?;
    browser.open(Screen::PHONE, "/").await?;
    is_kept(browser).await?;
    browser.server.stop();
    reload(browser).await
}

/// The dealer's own file is not in the build's list: the newest that was seen is kept beside it.
pub(crate) async fn a_dealers_rules_hold_without_a_network(browser: &mut Browser) -> Result<()> {
    browser.serve(crate::embed::demo()?).await?;
    let page = "/?profile=/demo/profiles/prairie.json";
    browser.open(Screen::PHONE, page).await?;
    let rules = "document.querySelector('#rules')?.innerText.includes('Prairie Door Works')";
    browser.until(rules).await?;
    with_its_rules_is_kept(browser).await?;
    browser.server.stop();
    reload(browser).await?;
    browser.until(rules).await?;
    ensure!(browser.value("location.search").await? == "?profile=/demo/profiles/prairie.json");
    // They are not only named: this dealer asks what the built-in rules do not.
    browser.run("location.hash = '#/frame'", Vec::new()).await?;
    browser.find("main.step-frame .doors").await?;
    // The pages beside the walk come with the build, and read the same file.
    for page in ["hang", "desk"] {
        browser.serve(crate::embed::demo()?).await?;
        let page = format!("/{page}.html?profile=/demo/profiles/prairie.json");
        browser.open(Screen::PHONE, &page).await?;
        browser.until(rules).await?;
        has_its_rules_kept(browser).await?;
        browser.server.stop();
        reload(browser).await?;
        browser.until(rules).await?;
    }
    Ok(())
}

/// What a phone reads before it puts the page among its programs, and where that leads.
pub(crate) async fn from_the_home_screen_with_the_dealers_rules(
    browser: &mut Browser,
) -> Result<()> {
    browser.serve(crate::embed::demo()?).await?;
    browser.open(Screen::PHONE, "/").await?;
    browser.find("#app[data-ready]").await?;
    let read = "const link = document.querySelector('link[rel=manifest]').href;
        const manifest = await (await fetch(link)).json();
        const at = (address) => new URL(address, link).href;
        const icons = await Promise.all(manifest.icons.map(async ({ src, purpose, sizes }) => {
            const image = new Image();
            image.src = at(src);
            await image.decode();
            return [purpose, sizes, image.naturalWidth > 0 && image.naturalWidth === image.naturalHeight];
        }));
        return [manifest.name, manifest.display, at(manifest.scope), at(manifest.start_url), icons];";
    let found = awaited(browser, read).await?;
    let root = format!("{}/", browser.server.origin());
    let start = format!("{root}?installed");
    let icons = json!([["any", "any", true], ["maskable", "any", true]]);
    ensure!(found == json!(["Hangtrue", "standalone", root, start, icons]), "{found}");

    browser.goto("/?installed").await?;
    browser.find("#app[data-ready]").await?;
    ensure!(browser.value("location.pathname").await? == "/", "no dealer is known yet");
    browser.goto("/?profile=/demo/profiles/prairie.json").await?;
    let rules = "document.querySelector('#rules')?.innerText.includes('Prairie Door Works')";
    browser.until(rules).await?;
    browser.goto("/").await?;
    browser.find("#app[data-ready]").await?;
    ensure!(browser.value(rules).await? != true, "who asks for the plain page gets it");
    browser.goto("/?installed").await?;
    browser.until(rules).await?;
    ensure!(browser.value("location.pathname").await? == "/dealer.html");
    Ok(())
}

pub(crate) async fn a_newer_build_waits_for_a_tap(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/#/width").await?;
    is_kept(browser).await?;
    browser.tap("[id='width.middle']").await?;
    browser.type_keys("92 3/1").await?;
    a_newer_one_comes(browser).await?;
    browser.shoot("newer-phone").await?;
    let kept = awaited(browser, &format!("return {BUILDS}")).await?;
    ensure!(kept.as_array().is_some_and(|kept| kept.len() == 2), "{kept}");
    // Nothing has changed, and typing goes on.
    browser.type_keys("6").await?;
    it_takes_over(browser).await?;
    at(browser, "width").await?;
    ensure!(browser.value("document.getElementById('width.middle').value").await? == "92 3/16");
    let kept = browser.until(&format!("{BUILDS}.then(kept => kept.length === 1 && kept)")).await?;
    ensure!(kept[0].as_str().is_some_and(|name| name.starts_with("hangtrue-next-")), "{kept}");
    ensure!(browser.value("document.querySelector('.notice')").await? == json!(null));
    Ok(())
}

/// Looks for a newer build. A look that is under way, WebKit's own after a visit, answers for one
/// that is asked for meanwhile.
async fn look_for_one(browser: &Browser) -> Result<()> {
    awaited(browser, "(await navigator.serviceWorker.ready).update()").await?;
    Ok(())
}

async fn a_newer_one_comes(browser: &mut Browser) -> Result<()> {
    look_for_one(browser).await?;
    put_in_place(browser, &worker_of_next_build()?)?;
    look_for_one(browser).await?;
    browser.find(".notice [data-act=take-over]").await?;
    Ok(())
}

async fn it_takes_over(browser: &mut Browser) -> Result<()> {
    browser.run("window.old = true", Vec::new()).await?;
    browser.tap("[data-act=take-over]").await?;
    browser.until("!window.old && document.querySelector('#app[data-ready]') !== null").await?;
    // WebKit's own look after a visit may be cut off by the change, and says so on the console.
    let lines = browser.take_console().await?;
    let of_a_look = |line: &String| line.contains("/worker.js load failed");
    ensure!(lines.iter().all(of_a_look), "{lines:?}");
    Ok(())
}

/// A counter has the desk open all day, and a reload alone leaves it the old build.
pub(crate) async fn a_newer_build_waits_at_the_desk(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::DESK, "/desk.html").await?;
    is_kept(browser).await?;
    browser.tap("[id='width.middle']").await?;
    browser.type_keys("92 3/1").await?;
    a_newer_one_comes(browser).await?;
    browser.shoot("newer-desk-1280").await?;
    browser.set_screen(Screen::PHONE).await?;
    browser.shoot("newer-desk-phone").await?;
    // The call goes on.
    browser.type_keys("6").await?;
    ensure!(browser.text("[id='width.middle-echo']").await?.starts_with("92 3/16 in"));
    let told = browser.text(".notice").await?;
    ensure!(told.contains("clears this desk"), "{told}");
    it_takes_over(browser).await?;
    ensure!(browser.value("document.getElementById('width.middle').value").await? == "");
    ensure!(browser.value("document.querySelector('.notice')").await? == json!(null));
    Ok(())
}

pub(crate) async fn a_newer_build_waits_where_a_door_is_hung(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/hang.html").await?;
    is_kept(browser).await?;
    browser.tap("[id='order.width']").await?;
    browser.type_keys("92 3/1").await?;
    a_newer_one_comes(browser).await?;
    browser.shoot("newer-hang-phone").await?;
    browser.type_keys("6").await?;
    it_takes_over(browser).await?;
    let typed = "document.getElementById('order.width').value";
    ensure!(browser.value(typed).await? == "92 3/16", "what was typed stays");
    ensure!(browser.value("document.querySelector('.notice')").await? == json!(null));
    Ok(())
}

/// In WebKit a first build may already be the page's controller while it still waits: once in three
/// hundred first visits. Here it is, in every engine, with a container that is made to.
pub(crate) async fn a_first_build_is_no_newer_one(browser: &mut Browser) -> Result<()> {
    let page = std::fs::read_to_string(root().join("dist/index.html"))?;
    let main = page.split('"').find(|part| part.starts_with("main-"));
    let main = main.context("the page has a script")?;
    let script = std::fs::read_to_string(root().join("dist").join(main))?;
    let made = "const first = new EventTarget();
        window.known = Object.assign(new EventTarget(), { first, installing: first });
        navigator.serviceWorker.register = async () => known;
        Object.defineProperty(navigator.serviceWorker, 'controller', { get: () => first });
        addEventListener('whole', () => { window.whole = true; }, true);\n";
    let site = Site::dist()?.text(&format!("/{main}"), &[made, &script].concat());
    browser.serve(site).await?;
    browser.open(Screen::PHONE, "/").await?;
    // What is told of a newer build comes with the second module.
    browser.until("window.whole === true").await?;
    let tells = "known.dispatchEvent(new Event('updatefound'));
        known.installing.dispatchEvent(new Event('statechange'));
        return document.querySelector('.notice') !== null";
    for (state, is_newer) in [
        ("known.waiting = known.first", false),
        ("known.active = known.first", false),
        ("known.waiting = known.installing = new EventTarget()", true),
    ] {
        let told = browser.run(&format!("{state}; {tells}"), Vec::new()).await?;
        ensure!(told == is_newer, "{state}: {told}");
    }
    Ok(())
}

/// Nobody has asked for that notice: it must not move what a finger is about to touch.
pub(crate) async fn a_newer_build_moves_nothing(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    crate::orders::open(browser, &crate::orders::typical()).await?;
    let place = "const at = document.querySelector('form [type=submit]');
        if (scrolls) at.scrollIntoView({ block: 'center' });
        await new Promise(requestAnimationFrame);
        await new Promise(requestAnimationFrame);
        return [scrollY > 0, at.getBoundingClientRect().top]";
    let place = |scroll: bool| format!("const scrolls = {scroll}; {place}");
    let before = awaited(browser, &place(true)).await?;
    ensure!(before[0] == true, "the page is too short to scroll");
    browser.run("document.getElementById('app').dispatchEvent(new Event('newer'))", vec![]).await?;
    browser.find(".notice").await?;
    let after = awaited(browser, &place(false)).await?;
    let moved = after[1].as_f64().zip(before[1].as_f64()).map(|(after, before)| after - before);
    ensure!(moved.is_some_and(|px| px.abs() < 1.0), "moved by {moved:?} px");
    Ok(())
}

pub(crate) async fn a_build_that_is_not_whole_leaves_the_old_one(
    browser: &mut Browser,
) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    is_kept(browser).await?;
    let broken = worker_of_next_build()?.replacen("FILES = \"", "FILES = \"gone.js ", 1);
    put_in_place(browser, &broken)?;
    let refused = "const known = await navigator.serviceWorker.ready;
        await known.update().catch(() => null);
        const worker = known.installing;
        if (worker) await new Promise((done) => {
            const seen = () => worker.state === 'redundant' && done();
            worker.addEventListener('statechange', seen); seen();
        });
        return [known.waiting === null, await BUILDS]";
    let after = awaited(browser, &refused.replace("BUILDS", BUILDS)).await?;
    ensure!(after[0] == true && after[1].as_array().is_some_and(|kept| kept.len() == 1), "{after}");
    ensure!(!after[1][0].as_str().unwrap_or_default().contains("next"), "{after}");
    browser.take_console().await?;
    browser.server.stop();
    reload(browser).await?;
    ensure!(browser.value("document.querySelector('.notice')").await? == json!(null));
    Ok(())
}

pub(crate) async fn the_worker_that_removes_itself(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    is_kept(browser).await?;
    let path = root().join("web/worker/retire.js");
    let retire = std::fs::read_to_string(&path)?;
    put_in_place(browser, &retire)?;
    browser
        .run("window.old = true; navigator.serviceWorker.ready.then(r => r.update())", Vec::new())
        .await?;
    // The page comes again, from the network; it then registers what the host has: the same.
    browser.until("!window.old && document.querySelector('#app[data-ready]') !== null").await?;
    browser.until("caches.keys().then(kept => kept.length === 0)").await?;
    Ok(())
}
