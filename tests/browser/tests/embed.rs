//! The element on another site's pages, those of `demo/hosts`.

use std::path::Path;

use anyhow::{Context as _, Result, ensure};
use fantoccini::key::Key;
use hangtrue_browser::{Browser, Screen, Site};
use serde_json::{Value, json};

use crate::walk::READINGS;

pub(crate) const SCRIPT: &str = concat!("hangtrue-survey-", env!("CARGO_PKG_VERSION"), ".js");

/// The built site with the demo beside it.
pub(crate) fn demo() -> Result<Site> {
    Ok(Site::dist()?.folder("/demo/", Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo")))
}

/// A page of a test's own, with the element's script in its head.
pub(crate) fn page(body: &str) -> Result<Site> {
    let html = format!(
        "<!doctype html><html lang=en><meta charset=utf-8><title>t</title><link rel=icon href=data:,>\
         <script type=module src=/embed/{SCRIPT}></script><body>{body}"
    );
    Ok(demo()?.text("/host/index.html", &html))
}

/// What the expression says of the shadow root `s` of the first element.
pub(crate) fn inside(expression: &str) -> String {
    within("hangtrue-survey", expression)
}

/// The same of the element that `host` selects.
pub(crate) fn within(host: &str, expression: &str) -> String {
    format!("(s => s && ({expression}))(document.querySelector({})?.shadowRoot)", json!(host))
}

/// Waits for the screen of that step.
pub(crate) async fn at(browser: &Browser, host: &str, step: &str) -> Result<()> {
    browser.until(&within(host, &format!("s.querySelector('.step-{step}')"))).await?;
    Ok(())
}

/// Puts the focus on what `css` selects in the shadow root, and presses a key there: what
/// the browser then does, it does for a person.
pub(crate) async fn press(browser: &Browser, host: &str, css: &str, key: Key) -> Result<()> {
    let focus =
        format!("(s.querySelector({0}).focus(), s.activeElement?.matches({0}))", json!(css));
    browser.until(&within(host, &focus)).await?;
    browser.type_keys(&char::from(key).to_string()).await
}

/// From the first screen to the check.
pub(crate) async fn to_the_check(browser: &Browser, host: &str) -> Result<()> {
    at(browser, host, "start").await?;
    press(browser, host, "button[type=submit]", Key::Enter).await?;
    at(browser, host, "frame").await?;
    press(browser, host, "input[name=prepared][value=yes]", Key::Space).await?;
    press(browser, host, "button[type=submit]", Key::Enter).await?;
    for (field, text) in READINGS {
        at(browser, host, field.split('.').next().unwrap_or_default()).await?;
        let css = format!("[id='{field}']");
        press(browser, host, &css, Key::End).await?;
        browser.type_keys(text).await?;
        // To the next place, which is left out; from there on.
        press(browser, host, &css, Key::Enter).await?;
        browser.type_keys(&char::from(Key::Enter).to_string()).await?;
    }
    loop {
        let shown = "s.querySelector('.step-proof, .step-questions, .step-check')";
        browser.until(&within(host, shown)).await?;
        if browser.value(&within(host, "!s.querySelector('.step-proof')")).await? == true {
            return Ok(());
        }
        let heading = "s.querySelector('#heading').innerText";
        let asked = browser.value(&within(host, heading)).await?;
        press(browser, host, "[data-act=skip]", Key::Enter).await?;
        let other = format!("!s.querySelector('.step-proof') || {heading} !== {asked}");
        browser.until(&within(host, &other)).await?;
    }
}

/// From the check to the finished order.
pub(crate) async fn to_the_end(browser: &Browser, host: &str) -> Result<()> {
    at(browser, host, "check").await?;
    press(browser, host, "#main button[type=submit]", Key::Enter).await?;
    at(browser, host, "send").await
}

/// Remembers what the element tells its page.
async fn listen(browser: &Browser) -> Result<()> {
    browser
        .run(
            "window.told = [];
             for (const what of ['ready', 'change', 'complete', 'error'])
                 document.addEventListener('hangtrue-' + what, (event) =>
                     told.push([what, event.target.id, event.detail]));",
            Vec::new(),
        )
        .await?;
    Ok(())
}

pub(crate) async fn a_page_gets_an_order_and_nothing_else_happens(
    browser: &mut Browser,
) -> Result<()> {
    browser.serve(page("<hangtrue-survey id=one></hangtrue-survey>")?).await?;
    browser.open(Screen::PHONE, "/host/").await?;
    listen(browser).await?;
    let before = "[Object.keys(window).length, location.href, history.length, document.cookie,
        Object.keys(localStorage).length, document.title, document.head.innerHTML,
        document.documentElement.getAttributeNames().join()]";
    let was = browser.value(before).await?;
    let attributes = "document.querySelector('hangtrue-survey').outerHTML";
    let markup = browser.value(attributes).await?;
    to_the_check(browser, "hangtrue-survey").await?;
    to_the_end(browser, "hangtrue-survey").await?;
    let told = browser.until("told.some(([what]) => what === 'complete') && told").await?;
    let [.., last] = told.as_array().context("a list")?.as_slice() else { anyhow::bail!("{told}") };
    ensure!(last[0] == "complete" && last[1] == "one", "{last}");
    let detail = &last[2];
    ensure!(detail["line"] == "W 92 3/16 H 101 1/2 header 9 1/2 bow 1 1/4 in", "{detail}");
    ensure!(detail["order"]["format"] == "hangtrue-order/1", "{detail}");
    ensure!(detail["order"]["readings"]["height"]["center"] == READINGS[1].1, "{detail}");
    ensure!(detail["order"]["order"]["width"]["nm"] == 2_341_562_500_i64, "{detail}");
    let link = detail["link"].as_str().context("a link")?.to_owned();
    ensure!(link.starts_with(&format!("{}/#", browser.server.origin())), "{link}");
    let changes = told.as_array().into_iter().flatten().filter(|news| news[0] == "change").count();
    ensure!(changes > 4, "{told}");
    ensure!(browser.value(before).await? == was, "the page is as it was: {was}");
    ensure!(browser.value(attributes).await? == markup, "so is the author's markup");
    // The whole address opens the order on the full page.
    let path = link.strip_prefix(&browser.server.origin()).unwrap_or_default().to_owned();
    browser.goto("/demo/hosts/sent.html").await?;
    browser.goto(&path).await?;
    crate::walk::at(browser, "opened").await?;
    ensure!(crate::walk::numbers(browser).await?[0] == "92 3/16 in");
    Ok(())
}

pub(crate) async fn nothing_is_loaded_until_it_is_near(browser: &mut Browser) -> Result<()> {
    let body = "<div style='height:4000px'></div><hangtrue-survey></hangtrue-survey>";
    browser.serve(page(body)?).await?;
    browser.open(Screen::PHONE, "/host/").await?;
    browser.until("customElements.get('hangtrue-survey')").await?;
    tokio::time::sleep(std::time::Duration::from_millis(600)).await;
    let loaded = |browser: &Browser| {
        let requests = browser.server.requests();
        let of_element = requests.into_iter().filter(|line| line.contains("/embed/"));
        of_element.collect::<Vec<_>>()
    };
    let script = format!("200 /embed/{SCRIPT}");
    ensure!(loaded(browser) == [script], "{:?}", loaded(browser));
    browser.value("scrollTo(0, 3000)").await?;
    at(browser, "hangtrue-survey", "start").await?;
    let all: std::collections::BTreeSet<_> = loaded(browser).into_iter().collect();
    ensure!(all.len() == 3, "{all:?}");
    Ok(())
}

pub(crate) async fn two_on_a_page_are_two(browser: &mut Browser) -> Result<()> {
    browser.serve(demo()?).await?;
    browser.open(Screen::DESK, "/demo/hosts/two.html").await?;
    for (host, dealer) in [("#first", "Prairie Door Works"), ("#second", "Portes Boréal")] {
        let rules = format!("s.querySelector('#rules')?.innerText.includes({})", json!(dealer));
        browser.until(&within(host, &rules)).await?;
    }
    browser.shoot("embed-two").await?;
    to_the_check(browser, "#first").await?;
    at(browser, "#second", "start").await?;
    let unit = |host| within(host, "s.querySelector('[name=unit]:checked')?.value");
    ensure!(browser.value(&unit("#second")).await? == "mm", "the second has its own unit");
    Ok(())
}

pub(crate) async fn removed_and_put_back_it_goes_on(browser: &mut Browser) -> Result<()> {
    browser.serve(page("<hangtrue-survey></hangtrue-survey><div id=other></div>")?).await?;
    browser.open(Screen::PHONE, "/host/").await?;
    at(browser, "hangtrue-survey", "start").await?;
    to_the_check(browser, "hangtrue-survey").await?;
    let text = "s.querySelector('.numbers').innerText";
    let numbers = browser.value(&inside(text)).await?;
    browser
        .run(
            "window.kept = document.querySelector('hangtrue-survey'); kept.remove();
             return kept.shadowRoot.childElementCount;",
            Vec::new(),
        )
        .await?;
    // Put elsewhere, and at once moved again: no throw, one survey.
    browser
        .run("document.body.prepend(kept); document.querySelector('#other').append(kept);", vec![])
        .await?;
    at(browser, "hangtrue-survey", "check").await?;
    ensure!(browser.value(&inside(text)).await? == numbers, "what was typed is still there");
    ensure!(browser.value(&inside("s.querySelectorAll('#main').length")).await? == 1);
    Ok(())
}

pub(crate) async fn in_two_versions_the_first_stays_and_says_so(
    browser: &mut Browser,
) -> Result<()> {
    let version = env!("CARGO_PKG_VERSION");
    let script = std::fs::read_to_string(
        Path::new(env!("CARGO_MANIFEST_DIR")).join("../../dist/embed").join(SCRIPT),
    )?;
    let other = script.replace(&format!("VERSION = \"{version}\""), "VERSION = \"99.0.0\"");
    ensure!(other != script);
    let body =
        "<hangtrue-survey></hangtrue-survey><script type=module src=/embed/other.js></script>";
    browser.serve(page(body)?.text("/embed/other.js", &other)).await?;
    browser.open(Screen::PHONE, "/host/").await?;
    at(browser, "hangtrue-survey", "start").await?;
    browser
        .until("performance.getEntriesByName(location.origin + '/embed/other.js').length")
        .await?;
    let which = "customElements.get('hangtrue-survey').version";
    ensure!(browser.value(which).await? == version);
    let console = browser.take_console().await?;
    let [line] = console.as_slice() else { anyhow::bail!("{console:?}") };
    ensure!(line.contains("99.0.0") && line.contains(version), "{line}");
    Ok(())
}

pub(crate) async fn nothing_is_left_behind(browser: &mut Browser) -> Result<()> {
    let watch = "<script>
        const left = new Map(), add = EventTarget.prototype.addEventListener,
            remove = EventTarget.prototype.removeEventListener;
        window.outside = () => [...left.values()].reduce((a, b) => a + b, 0);
        const count = (target, by) => {
            if (target !== window && target !== document && !(target instanceof Element)) return;
            if (target instanceof Element && !target.isConnected) return;
            if (target.getRootNode?.() instanceof ShadowRoot) return;
            left.set(target, (left.get(target) ?? 0) + by);
        };
        EventTarget.prototype.addEventListener = function (kind, hear, options) {
            count(this, 1);
            options?.signal?.addEventListener('abort', () => count(this, -1));
            return add.call(this, kind, hear, options);
        };
        EventTarget.prototype.removeEventListener = function (...all) {
            count(this, -1);
            return remove.apply(this, all);
        };
        window.intervals = 0;
        for (const name of ['setInterval', 'requestAnimationFrame']) {
            const own = window[name];
            window[name] = (...all) => { intervals += 1; return own(...all); };
        }
        </script>";
    browser.serve(page(&format!("{watch}<hangtrue-survey></hangtrue-survey>"))?).await?;
    browser.open(Screen::PHONE, "/host/").await?;
    to_the_check(browser, "hangtrue-survey").await?;
    ensure!(browser.value("outside()").await? == 0, "while it runs, nothing listens outside of it");
    browser.value("document.querySelector('hangtrue-survey').remove()").await?;
    ensure!(browser.value("[outside(), intervals]").await? == json!([0, 0]));
    Ok(())
}

pub(crate) async fn a_form_sends_the_link(browser: &mut Browser) -> Result<()> {
    browser.serve(demo()?).await?;
    browser.open(Screen::PHONE, "/demo/hosts/form.html").await?;
    at(browser, "hangtrue-survey", "start").await?;
    let form = "document.querySelector('#order-form')";
    ensure!(browser.value(&format!("{form}.checkValidity()")).await? == false, "no order yet");
    to_the_check(browser, "hangtrue-survey").await?;
    to_the_end(browser, "hangtrue-survey").await?;
    browser.until(&format!("{form}.checkValidity()")).await?;
    let link = browser.value("document.querySelector('hangtrue-survey').value").await?;
    let data = format!("Object.fromEntries(new FormData({form}))");
    ensure!(browser.value(&data).await? == json!({ "who": "Demo", "order": link }));
    browser.tap("#send").await?;
    browser.until("location.pathname.endsWith('/sent.html')").await?;
    let sent = browser.value("new URLSearchParams(location.search).get('order')").await?;
    ensure!(sent == link, "{sent}");
    // Begin again: the survey too.
    browser.goto("/demo/hosts/form.html").await?;
    to_the_check(browser, "hangtrue-survey").await?;
    browser.tap("#reset").await?;
    at(browser, "hangtrue-survey", "start").await?;
    ensure!(browser.value("document.querySelector('hangtrue-survey').value").await? == "");
    Ok(())
}

pub(crate) async fn a_profile_that_cannot_be_used_says_where(browser: &mut Browser) -> Result<()> {
    let broken = r#"{"format":"hangtrue-profile/1","name":"D","revision":1,
        "limits":{"width":{"least":"90 in","most":"80 in","reason":"r"}}}"#;
    let body = "<script>document.addEventListener('hangtrue-error', (e) => (window.fault ??= []).push(e.detail))</script>\
        <hangtrue-survey profile=/host/broken.json></hangtrue-survey>";
    browser.serve(page(body)?.text("/host/broken.json", broken)).await?;
    browser.open(Screen::PHONE, "/host/").await?;
    at(browser, "hangtrue-survey", "start").await?;
    let fault = browser.until("window.fault").await?;
    ensure!(fault[0]["code"] == "profile", "{fault}");
    ensure!(fault[0]["message"].as_str().is_some_and(|m| m.contains("limits.width")), "{fault}");
    let shown = browser.value(&inside("s.querySelector('#rules').innerText")).await?;
    ensure!(shown.as_str().is_some_and(|text| text.contains("limits.width")), "{shown}");
    browser.shoot("embed-broken-profile").await?;
    // The object as a property takes its place; another origin's file does not.
    browser
        .run(
            "document.querySelector('hangtrue-survey').profile =
                 { format: 'hangtrue-profile/1', name: 'By Property', revision: 3 };",
            Vec::new(),
        )
        .await?;
    browser.until(&inside("s.querySelector('#rules')?.innerText.includes('By Property')")).await?;
    browser
        .value("document.querySelector('hangtrue-survey').profile = 'https://elsewhere.example/p.json'")
        .await?;
    let fault = browser.until("window.fault.length > 1 && fault").await?;
    ensure!(fault[1]["message"].as_str().is_some_and(|m| m.contains("origin")), "{fault}");
    // Nor one that is not there: what to do is said.
    browser.value("document.querySelector('hangtrue-survey').profile = '/host/gone.json'").await?;
    let fault = browser.until("window.fault.length > 2 && fault").await?;
    let told = "/host/gone.json: the server answers 404. Put the file there";
    ensure!(fault[2]["message"].as_str().is_some_and(|m| m.starts_with(told)), "{fault}");
    crate::faults::only(browser, |line| line.contains("404")).await?;
    to_the_check(browser, "hangtrue-survey").await
}

pub(crate) async fn order_unit_and_theme_are_taken(browser: &mut Browser) -> Result<()> {
    let order = crate::orders::typical();
    let payload = crate::orders::payload(&order)?;
    let body = format!(
        "<hangtrue-survey id=a unit=mm theme=dark></hangtrue-survey>\
         <hangtrue-survey id=b order='{payload}' theme=light></hangtrue-survey>"
    );
    browser.serve(page(&body)?).await?;
    browser.open(Screen::DESK, "/host/").await?;
    at(browser, "#a", "start").await?;
    let unit = within("#a", "s.querySelector('[name=unit]:checked')?.value");
    ensure!(browser.value(&unit).await? == "mm");
    at(browser, "#b", "opened").await?;
    let paper = |host| within(host, "getComputedStyle(s.querySelector('#app')).backgroundColor");
    let (dark, light) = (browser.value(&paper("#a")).await?, browser.value(&paper("#b")).await?);
    ensure!(dark == "rgb(24, 28, 31)" && light == "rgb(251, 250, 244)", "{dark} {light}");
    browser.run("document.querySelector('#a').theme = 'light'", Vec::new()).await?;
    ensure!(browser.value(&paper("#a")).await? == light);
    // The language of the page around it, then its own, then another.
    ensure!(browser.value(&within("#a", "s.querySelector('#app').lang")).await? == "en");
    for (lang, word) in [("fr", "Mesur"), ("es", "Mida")] {
        browser.value(&format!("document.querySelector('#a').lang = '{lang}'")).await?;
        let heading = format!("s.querySelector('#heading').innerText.startsWith('{word}')");
        browser.until(&within("#a", &heading)).await?;
    }
    let none: Value = json!(null);
    ensure!(browser.value("document.querySelector('#a').getAttribute('name')").await? == none);
    Ok(())
}
