//! The element and its host page: what neither does to the other.

use anyhow::{Result, ensure};
use fantoccini::key::Key;
use hangtrue_browser::{Browser, Engine, Screen, Server, folder_of_target};
use serde_json::json;

use crate::embed::{SCRIPT, at, demo, inside, page, press, to_the_check, to_the_end};

/// The policy that README gives, for files of the page's own origin.
const POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; \
    connect-src 'self'; style-src 'none'; require-trusted-types-for 'script'";

/// What has moved by itself since the page was opened (the standard's cumulative layout
/// shift, without what follows an input).
const MOVED: &str = "await new Promise((done) => {
    let sum = 0;
    new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) if (!entry.hadRecentInput) sum += entry.value;
    }).observe({ type: 'layout-shift', buffered: true });
    setTimeout(() => done(sum), 300);
})";

pub(crate) async fn nothing_moves(browser: &mut Browser) -> Result<()> {
    browser.serve(demo()?).await?;
    for (screen, name) in [(Screen::PHONE, "phone"), (Screen::DESK, "desk")] {
        browser.open(screen, "/demo/hosts/plain.html").await?;
        at(browser, "hangtrue-survey", "start").await?;
        let rules = "s.querySelector('#rules')?.innerText.includes('Prairie')";
        browser.until(&inside(rules)).await?;
        browser.shoot(&format!("embed-plain-{name}")).await?;
        let moved = browser.run(&format!("return (async () => {MOVED})()"), vec![]).await?;
        ensure!(moved == 0.0 || moved == 0, "moved by {moved} while loading");
        let after = "document.querySelector('h2').getBoundingClientRect().top";
        let before = browser.value(after).await?;
        // From here on it has the height of what it shows: by the person's own doing.
        press(browser, "hangtrue-survey", "button[type=submit]", Key::Enter).await?;
        at(browser, "hangtrue-survey", "frame").await?;
        let moved = browser.run(&format!("return (async () => {MOVED})()"), vec![]).await?;
        ensure!(moved == 0.0 || moved == 0, "moved by {moved}");
        ensure!(browser.value(after).await?.as_f64() >= before.as_f64().map(|top| top - 400.0));
        browser.shoot(&format!("embed-frame-{name}")).await?;
    }
    Ok(())
}

/// Every property of every element inside, as the browser has computed it.
const COMPUTED: &str = "[...s.querySelectorAll('#app, #app *')].map((element) => {
    const style = getComputedStyle(element);
    return element.localName + ' ' + [...style].filter((name) => !name.startsWith('--'))
        .map((name) => name + ':' + style.getPropertyValue(name)).join(';');
})";

pub(crate) async fn clashing_styles_change_nothing(browser: &mut Browser) -> Result<()> {
    // The same page with and without its styles; the element as wide in both.
    let body = |link: &str| {
        format!(
            "{link}<p id=p>Ours</p><div style='width:340px !important; margin:0 !important'>\
             <hangtrue-survey style='margin:0 !important' theme=light></hangtrue-survey></div>"
        )
    };
    let mut seen = Vec::new();
    for link in ["", "<link rel=stylesheet href=/demo/hosts/clash.css>"] {
        browser.serve(page(&body(link))?).await?;
        browser.open(Screen::DESK, "/host/").await?;
        at(browser, "hangtrue-survey", "start").await?;
        press(browser, "hangtrue-survey", "button[type=submit]", Key::Enter).await?;
        at(browser, "hangtrue-survey", "frame").await?;
        seen.push(browser.value(&inside(COMPUTED)).await?);
    }
    let [plain, clash] = seen.as_slice() else { anyhow::bail!("two pages") };
    let both = plain.as_array().into_iter().flatten().zip(clash.as_array().into_iter().flatten());
    for (plain, clash) in both {
        let (plain, clash) = (plain.as_str().unwrap_or(""), clash.as_str().unwrap_or(""));
        let differ: Vec<_> =
            plain.split(';').zip(clash.split(';')).filter(|(a, b)| a != b).collect();
        ensure!(differ.is_empty(), "{differ:?} in {}", plain.split(';').next().unwrap_or(""));
    }
    ensure!(plain.as_array().map(Vec::len) == clash.as_array().map(Vec::len));

    // And the other way: the page's own elements look the same with the element and without.
    let own = "JSON.stringify([...document.querySelectorAll('body, #p')].map((element) => {
        const style = getComputedStyle(element);
        return [...style].filter((name) => !/size|width|height|origin/.test(name))
            .map((name) => style.getPropertyValue(name));
    }))";
    let with = browser.value(own).await?;
    browser.value("document.querySelector('hangtrue-survey').remove()").await?;
    ensure!(browser.value(own).await? == with);
    browser.serve(demo()?).await?;
    browser.open(Screen::PHONE, "/demo/hosts/clash.html").await?;
    at(browser, "hangtrue-survey", "start").await?;
    browser.value("document.querySelector('hangtrue-survey').scrollIntoView()").await?;
    browser.shoot("embed-clash").await
}

pub(crate) async fn under_the_strictest_policy(browser: &mut Browser) -> Result<()> {
    browser.serve(demo()?.header("Content-Security-Policy", POLICY)).await?;
    browser.open(Screen::PHONE, "/demo/hosts/strict.html").await?;
    // The style sheet is there, though the page may have none.
    let accent = "getComputedStyle(s.querySelector('.primary') ?? s.host).backgroundColor";
    at(browser, "hangtrue-survey", "start").await?;
    browser.until(&inside(&format!("{accent} === 'rgb(31, 107, 58)'"))).await?;
    to_the_check(browser, "hangtrue-survey").await?;
    browser.shoot("embed-strict").await
    // The scenario's end: nothing on the console, so nothing was refused.
}

pub(crate) async fn where_wasm_may_not_run(browser: &mut Browser) -> Result<()> {
    let policy = POLICY.replace(" 'wasm-unsafe-eval'", "");
    browser.serve(demo()?.header("Content-Security-Policy", &policy)).await?;
    browser.open(Screen::PHONE, "/demo/hosts/strict.html").await?;
    browser.until(&inside("s.querySelector('slot[name=blocked]')")).await?;
    let shown = "[...document.querySelectorAll('hangtrue-survey > *')]
        .map((element) => element.checkVisibility() && element.innerText.split(/[.,]/)[0])";
    let shown = browser.value(shown).await?;
    ensure!(shown == json!([false, "It does not run here", "Call us: +1 555 010 0140"]), "{shown}");
    browser.shoot("embed-blocked").await?;
    let console = browser.take_console().await?;
    ensure!(console.iter().all(|line| line.contains("WebAssembly")), "{console:?}");
    Ok(())
}

pub(crate) async fn what_is_not_what_it_was_does_not_run(browser: &mut Browser) -> Result<()> {
    let stem = SCRIPT.trim_end_matches(".js");
    let body = "<script>document.addEventListener('hangtrue-error', (e) => window.fault = e.detail)\
        </script><hangtrue-survey>Call us</hangtrue-survey>";
    for (file, other) in [
        (
            format!("/embed/{stem}.glue.js"),
            "export class Survey {}; export default () => { window.ran = 1 }",
        ),
        (format!("/embed/{stem}.wasm"), "\0asm\u{1}\0\0\0"),
    ] {
        browser.serve(page(body)?.text(&file, other)).await?;
        browser.open(Screen::PHONE, "/host/").await?;
        let fault = browser.until("window.fault").await?;
        ensure!(fault["code"] == "load", "{fault}");
        ensure!(browser.value("window.ran").await?.is_null(), "{file} ran");
        browser.until(&inside("s.querySelector('slot[name=blocked]')")).await?;
        let console = browser.take_console().await?;
        // WebKit says it on a console that no page can hear.
        let is_told = console.iter().any(|line| line.contains("integrity"));
        ensure!(is_told || browser.engine() == Engine::WebKit, "{console:?}");
    }
    Ok(())
}

pub(crate) async fn without_javascript(browser: &mut Browser) -> Result<()> {
    browser.serve(demo()?).await?;
    browser.devtools("Emulation.setScriptExecutionDisabled", json!({ "value": true })).await?;
    browser.open(Screen::PHONE, "/demo/hosts/no-script.html").await?;
    let text = browser.text("body").await?;
    browser.devtools("Emulation.setScriptExecutionDisabled", json!({ "value": false })).await?;
    ensure!(text.contains("Call us: +1 555 010 0140") && !text.contains("One moment"), "{text}");
    Ok(())
}

pub(crate) async fn in_a_frame(browser: &mut Browser) -> Result<()> {
    // The frame's page and the host page are of two origins.
    let frame = Server::start(demo()?)?;
    let host = |origin: &str, extra: &str| {
        format!(
            "<!doctype html><title>t</title><link rel=icon href=data:,>\
             <iframe data-hangtrue width=340 height=720 title=Survey \
             src='{}/embed/frame.html?unit=mm&profile=/demo/profiles/boreal.json&host={origin}'></iframe>\
             <script type=module src=/embed/frame-height.js></script>{extra}",
            frame.origin()
        )
    };
    let told = "<script>window.told = []; addEventListener('message', (e) => told.push([e.origin, e.data]))</script>";
    browser.serve(demo()?).await?;
    let page = host(&browser.server.origin(), told);
    browser.server.replace(demo()?.text("/host/index.html", &page))?;
    browser.open(Screen::DESK, "/host/").await?;
    let ready = browser.until("told.find(([, data]) => data.event === 'ready')").await?;
    ensure!(ready[0] == frame.origin(), "{ready}");
    browser.until("document.querySelector('iframe').height === '720'").await?;
    // A height from anyone else is not taken.
    browser
        .value("window.postMessage({ from: 'hangtrue-survey', height: 3000 }, location.origin)")
        .await?;
    browser.until("told.some(([, data]) => data.height === 3000)").await?;
    ensure!(browser.value("document.querySelector('iframe').height").await? == "720");
    browser.shoot("embed-in-frame").await?;
    // A host page of another origin than the frame was told hears nothing.
    let elsewhere = host("https://elsewhere.example", told);
    browser.serve(demo()?.text("/host/index.html", &elsewhere)).await?;
    browser.open(Screen::DESK, "/host/").await?;
    tokio::time::sleep(std::time::Duration::from_secs(2)).await;
    let heard = browser.value("told.filter(([, data]) => data.from === 'hangtrue-survey').length");
    ensure!(heard.await? == 0);
    browser.take_requests().await?;
    browser.take_console().await?;
    Ok(())
}

pub(crate) async fn in_a_react_page(browser: &mut Browser) -> Result<()> {
    let built = folder_of_target("demo-react")?;
    browser.serve(demo()?.folder("/demo/hosts/react/built/", built)).await?;
    browser.open(Screen::PHONE, "/demo/hosts/react/").await?;
    let rules = inside("s.querySelector('#rules')?.innerText.includes('React Doors')");
    for _ in 0..3 {
        browser.until(&rules).await?;
        browser.tap("#toggle").await?;
        browser.until("!document.querySelector('hangtrue-survey')").await?;
        browser.tap("#toggle").await?;
    }
    browser.until(&rules).await?;
    to_the_check(browser, "hangtrue-survey").await?;
    to_the_end(browser, "hangtrue-survey").await?;
    browser.until("document.querySelector('#line').innerText.startsWith('W 92 3/16')").await?;
    Ok(())
}

pub(crate) async fn the_page_itself_goes_by_a_profile(browser: &mut Browser) -> Result<()> {
    browser.serve(demo()?).await?;
    let address = "/?profile=/demo/profiles/prairie.json";
    browser.open(Screen::PHONE, address).await?;
    browser.find("#app[data-ready]").await?;
    browser
        .until("document.querySelector('#rules')?.innerText.includes('Prairie Door Works')")
        .await?;
    let paper = "getComputedStyle(document.documentElement).backgroundColor";
    ensure!(browser.value(paper).await? == "rgb(247, 250, 244)");
    browser.shoot("page-by-profile").await?;
    let query = "location.search === '?profile=/demo/profiles/prairie.json'";
    browser.tap("button[type=submit]").await?;
    browser.find("main.step-frame").await?;
    ensure!(browser.value(query).await? == true, "the address keeps the profile");
    browser.reload().await?;
    browser.find("main.step-frame .doors").await?;
    // A link opened here is judged by the same rules, and links made here say so.
    let order = crate::orders::typical();
    let payload = crate::orders::payload(&order)?;
    browser.goto(&format!("{address}#{payload}")).await?;
    browser.find("main.step-opened").await?;
    ensure!(browser.value(query).await? == true);
    // What is not of this origin is not asked for, and the page says so.
    browser.goto("/dealer.html?profile=https://elsewhere.example/p.json#/start").await?;
    browser
        .until(
            "document.querySelector('#app[data-ready]') && \
        document.querySelector('#rules')?.innerText.includes('origin')",
        )
        .await?;
    Ok(())
}

pub(crate) async fn the_hanging_page_goes_by_a_profile(browser: &mut Browser) -> Result<()> {
    browser.serve(demo()?).await?;
    let mut order = crate::orders::typical();
    for (question, answer) in [("door", "rail"), ("side-seal", "bulb")] {
        let (question, answer) = (question.to_owned(), answer.to_owned());
        order.answers.push(hangtrue_core::order::Answer { question, answer });
    }
    let payload = crate::orders::payload(&order)?;
    let address = "/hang.html?profile=/demo/profiles/prairie.json";
    browser.open(Screen::PHONE, &format!("{address}#{payload}")).await?;
    browser.find("#app[data-ready]").await?;
    ensure!(browser.text("#rules").await?.contains("Prairie Door Works"), "whose rules");
    ensure!(browser.value("location.search").await? == "?profile=/demo/profiles/prairie.json");
    for (screen, size) in [(Screen::PHONE, "phone"), (Screen::DESK, "desk")] {
        browser.set_screen(screen).await?;
        for (step, said) in [
            ("delivery", "Bulb seal"),
            ("overhead", "The door passes."),
            ("spring", "lb"),
            ("care", "Prairie"),
        ] {
            browser.value(&format!("location.hash = '/{step}'")).await?;
            browser
                .until(&format!(
                    "document.querySelector('main.hang-{step}')?.innerText.includes('{said}')"
                ))
                .await?;
            browser.value("scrollTo(0, 0)").await?;
            browser.shoot(&format!("hang-profile-{step}-{size}")).await?;
        }
    }
    crate::offline::has_its_rules_kept(browser).await?;
    // The draft goes on under the same rules; those of another origin are not asked for.
    browser.reload().await?;
    browser.find("main.hang-care").await?;
    ensure!(browser.text("#rules").await?.contains("Prairie Door Works"));
    browser.goto("/hang.html?profile=https://elsewhere.example/p.json").await?;
    browser
        .until("document.querySelector('#app[data-ready] #rules')?.innerText.includes('origin')")
        .await?;
    browser.goto("/hang.html?profile=gone.json").await?;
    browser
        .until(
            "document.querySelector('#app[data-ready] #rules')?.innerText
                .includes('gone.json: the server answers 404. Put the file there')",
        )
        .await?;
    crate::faults::only(browser, |line| line.contains("404")).await
}

/// What the README promises to a page that has a look of its own: each part and each property
/// reaches what it names.
pub(crate) async fn the_promised_parts_and_properties(browser: &mut Browser) -> Result<()> {
    let parts = ["survey", "heading", "button", "primary", "field"];
    let rules: String = parts
        .iter()
        .map(|part| format!("hangtrue-survey::part({part}) {{ letter-spacing: 7px }}"))
        .collect();
    let body = format!(
        "<style>{rules} hangtrue-survey {{ --hangtrue-accent: rgb(1, 2, 3); --hangtrue-ink: rgb(4, 5, 6);
            --hangtrue-paper: rgb(250, 251, 252); --hangtrue-on-accent: rgb(253, 254, 255);
            --hangtrue-radius: 11px; --hangtrue-font: monospace }}</style>\
         <hangtrue-survey theme=light></hangtrue-survey>"
    );
    browser.serve(page(&body)?).await?;
    browser.open(Screen::DESK, "/host/").await?;
    at(browser, "hangtrue-survey", "start").await?;
    press(browser, "hangtrue-survey", "button[type=submit]", Key::Enter).await?;
    at(browser, "hangtrue-survey", "frame").await?;
    press(browser, "hangtrue-survey", "input[name=prepared][value=yes]", Key::Space).await?;
    press(browser, "hangtrue-survey", "button[type=submit]", Key::Enter).await?;
    at(browser, "hangtrue-survey", "width").await?;
    for part in parts {
        let spaced = format!(
            "(all => all.length > 0 && all.every((one) => getComputedStyle(one).letterSpacing === '7px'))\
             ([...s.querySelectorAll('[part~={part}]')])"
        );
        ensure!(browser.value(&inside(&spaced)).await? == true, "::part({part})");
    }
    let look = "(app => { const primary = getComputedStyle(s.querySelector('[part~=primary]'));
        const style = getComputedStyle(app);
        return [style.backgroundColor, style.color, style.fontFamily, primary.borderTopLeftRadius] })
        (s.querySelector('#app'))";
    let seen = browser.value(&inside(look)).await?;
    let meant = serde_json::json!(["rgb(250, 251, 252)", "rgb(4, 5, 6)", "monospace", "11px"]);
    ensure!(seen == meant, "{seen}");
    // The reading's field has the accent, or a part of the drawing has.
    let accent = "[...s.querySelectorAll('*')].some((one) => { const style = getComputedStyle(one);
        return [style.backgroundColor, style.borderTopColor, style.fill, style.stroke]
            .includes('rgb(1, 2, 3)') })";
    ensure!(browser.value(&inside(accent)).await? == true, "--hangtrue-accent");
    // A caution stays as a caution is known.
    let stripes = "getComputedStyle(s.querySelector('.caution')).borderImageSource";
    let stripes = browser.value(&inside(stripes)).await?.to_string();
    ensure!(
        stripes.contains("rgb(255, 201, 20)") && !stripes.contains("rgb(1, 2, 3)"),
        "{stripes}"
    );
    browser.shoot("embed-own-look").await
}

/// A file that is larger than a profile may be is refused with both sizes, and the built-in rules
/// hold.
pub(crate) async fn too_large_a_profile_is_refused(browser: &mut Browser) -> Result<()> {
    let long = "x".repeat(256 * 1024);
    let profile = format!(r#"{{"format":"hangtrue-profile/1","name":"{long}","revision":1}}"#);
    let body = "<script>document.addEventListener('hangtrue-error', (e) => (window.fault ??= []).push(e.detail))</script>\
        <hangtrue-survey profile=/host/large.json></hangtrue-survey>";
    browser.serve(page(body)?.text("/host/large.json", &profile)).await?;
    browser.open(Screen::PHONE, "/host/").await?;
    at(browser, "hangtrue-survey", "start").await?;
    let fault = browser.until("window.fault").await?;
    ensure!(fault[0]["code"] == "profile", "{fault}");
    ensure!(fault[0]["message"].as_str().is_some_and(|text| text.contains("262144")), "{fault}");
    press(browser, "hangtrue-survey", "button[type=submit]", Key::Enter).await?;
    at(browser, "hangtrue-survey", "frame").await
}
