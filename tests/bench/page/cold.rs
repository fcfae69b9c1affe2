//! From an address to the first reading accepted, and what Lighthouse says of every page: Chromium,
//! the processor slowed four times, the network as slow 4G. `cargo xtask bench cold` and
//! `cargo xtask bench pages` build what is needed and run this; it prints rows as JSON.
//!
//! The person in `cold` needs no time: each field is filled and each button pressed as soon as the
//! page listens, so that what is measured is the page's part. A first visit is to an origin that
//! the browser has never seen; the visit after it finds everything on the device. What the worker
//! brings for later visits the protocol does not slow.

#![allow(clippy::print_stdout, clippy::indexing_slicing)]

use std::process::Command;
use std::time::Duration;

use anyhow::{Context as _, Result, bail, ensure};
use hangtrue_browser::{Browser, Engine, Screen, Server, Site, root};
use serde_json::{Value, json};

/// Visits of each kind.
const ROUNDS: usize = 9;
/// Times that Lighthouse looks at a page.
const RUNS: usize = 3;
/// The pages, and the file of rules that one of them goes by.
const PAGES: [(&str, &str); 5] = [
    ("index", "/index.html"),
    ("dealer", "/dealer.html?profile=profile.json"),
    ("desk", "/desk.html"),
    ("hang", "/hang.html"),
    ("builder", "/builder.html"),
];
const CATEGORIES: [&str; 3] = ["performance", "accessibility", "best-practices"];

/// From the first screen to the height, which comes once a width is accepted.
const PERSON: &str = "
    const press = (css) => document.querySelector(css).click();
    const marks = {};
    const steps = [
        ['#app[data-ready] main.step-start', () => {
            marks.ready = performance.now();
            press('button[type=submit]');
        }],
        ['main.step-frame', () => {
            press('input[name=prepared][value=yes]');
            press('button[type=submit]');
        }],
        ['main.step-width', () => {
            const field = document.getElementById('width.middle');
            field.value = '92 3/16';
            field.dispatchEvent(new InputEvent('input', { bubbles: true }));
            press('button[type=submit]');
        }],
        ['main.step-height', () => {
            marks.accepted = performance.now();
            const paints = performance.getEntriesByName('first-contentful-paint');
            globalThis.cold = { ...marks, seen: paints[0]?.startTime ?? null };
        }],
    ];
    const look = () => {
        while (steps.length > 0 && document.querySelector(steps[0][0])) steps.shift()[1]();
        if (steps.length > 0) requestAnimationFrame(look);
    };
    requestAnimationFrame(look);";

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<()> {
    let rows = match std::env::args().nth(1).as_deref() {
        Some("cold") => cold().await?,
        Some("pages") => pages()?,
        _ => bail!("usage: bench-cold cold | pages"),
    };
    println!("{}", Value::from(rows));
    Ok(())
}

async fn cold() -> Result<Vec<Value>> {
    let site = Site::dist()?.compressed();
    let mut browser = Browser::start(Engine::Chromium, &[]).await?;
    let mut visits = [("first visit", Vec::new()), ("visit after it", Vec::new())];
    for round in 0..ROUNDS {
        browser.serve(site.clone()).await?;
        slow(&browser, true).await?;
        let person = json!({ "source": PERSON });
        let there = browser.devtools("Page.addScriptToEvaluateOnNewDocument", person).await?;
        browser.open(Screen::PHONE, "/").await?;
        visits[0].1.push(browser.until("window.cold").await?);
        slow(&browser, false).await?;
        browser.until("navigator.serviceWorker.controller?.state === 'activated'").await?;
        // Nothing has been begun, as on the first visit.
        browser.run("localStorage.clear(); sessionStorage.clear()", Vec::new()).await?;
        let before = browser.server.requests().len();
        slow(&browser, true).await?;
        browser.goto("/?again").await?;
        visits[1].1.push(browser.until("window.cold").await?);
        // What came of the network is the browser's own look whether there is a newer build.
        tokio::time::sleep(Duration::from_millis(200)).await;
        let asked = browser.server.requests().split_off(before);
        ensure!(asked.iter().all(|line| line == "200 /worker.js"), "round {round}: {asked:?}");
        browser.devtools("Page.removeScriptToEvaluateOnNewDocument", there).await?;
    }
    browser.close().await;
    let marks =
        [("seen", "first view"), ("ready", "it listens"), ("accepted", "first reading accepted")];
    let rows = visits.iter().flat_map(|(visit, seen)| {
        marks.iter().map(move |(mark, what)| {
            let values: Vec<f64> = seen.iter().filter_map(|visit| visit[*mark].as_f64()).collect();
            json!({ "what": format!("slow 4G, processor /4, {visit}"), "who": what, "unit": "ms",
                    "values": values })
        })
    });
    Ok(rows.collect())
}

/// Slow 4G as the DevTools of Chromium have it: 562.5 ms a request, 1.44 Mbit/s.
async fn slow(browser: &Browser, is_slow: bool) -> Result<()> {
    let (rate, latency, down, up) =
        if is_slow { (4, 562.5, 180_000, 84_375) } else { (1, 0.0, -1, -1) };
    browser.devtools("Network.enable", json!({})).await?;
    let network = json!({ "offline": false, "latency": latency, "downloadThroughput": down,
                          "uploadThroughput": up });
    browser.devtools("Network.emulateNetworkConditions", network).await?;
    browser.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": rate })).await?;
    Ok(())
}

/// Points of 100, each page in turn; what costs points is told on the way.
fn pages() -> Result<Vec<Value>> {
    let profile = std::fs::read_to_string(root().join("demo/profiles/prairie.json"))?;
    let server = Server::start(Site::dist()?.compressed().text("/profile.json", &profile))?;
    let mut points = PAGES.map(|_| CATEGORIES.map(|_| Vec::new()));
    for _ in 0..RUNS {
        for ((name, path), points) in PAGES.iter().zip(&mut points) {
            let report = look_at(&format!("{}{path}", server.origin()))
                .with_context(|| format!("Lighthouse on {name}"))?;
            for (category, points) in CATEGORIES.iter().zip(points) {
                let category = &report["categories"][*category];
                let score = category["score"].as_f64().context("no score")?;
                points.push((score * 100.0).round());
                if score < 1.0 {
                    tell(name, category, &report["audits"]);
                }
            }
        }
    }
    let rows = PAGES.iter().zip(&points).flat_map(|((name, _), points)| {
        CATEGORIES.iter().zip(points).map(move |(category, points)| {
            json!({ "what": format!("{name}.html"), "who": category, "unit": "points",
                    "values": points })
        })
    });
    Ok(rows.collect())
}

/// Lighthouse with what it sets itself: a phone, the processor slowed four times, slow 4G.
fn look_at(address: &str) -> Result<Value> {
    let mut node = Command::new("node");
    node.arg(root().join("tests/bench/node_modules/lighthouse/cli/index.js"));
    node.args([address, "--quiet", "--output=json", "--no-enable-error-reporting"]);
    node.arg(format!("--only-categories={}", CATEGORIES.join(",")));
    node.arg("--chrome-flags=--headless=new --no-sandbox --disable-gpu --disable-dev-shm-usage");
    let output = node.env("CHROME_PATH", "/usr/bin/chromium").output()?;
    let told = String::from_utf8_lossy(&output.stderr);
    ensure!(output.status.success(), "{}: {told}", output.status);
    let report: Value = serde_json::from_slice(&output.stdout)?;
    ensure!(report["runtimeError"].is_null(), "{}", report["runtimeError"]);
    Ok(report)
}

/// Which audits of a category cost points.
fn tell(page: &str, category: &Value, audits: &Value) {
    for part in category["auditRefs"].as_array().into_iter().flatten() {
        let audit = &audits[part["id"].as_str().unwrap_or_default()];
        let costs = audit["score"].as_f64().is_some_and(|score| score < 1.0);
        if costs && part["weight"].as_f64().unwrap_or_default() > 0.0 {
            eprintln!("{page}: {} {} {}", part["id"], audit["score"], audit["displayValue"]);
        }
    }
}
