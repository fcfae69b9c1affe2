//! A keystroke, and an order's link and QR code, beside two stacks from npm: in Chromium, in one
//! page, in turn, so that a noisy machine is noisy for all. `cargo xtask bench pack` and
//! `cargo xtask bench keystroke` build what is needed and run this; it prints rows as JSON.
//!
//! Of a keystroke all is measured that runs before the event is over. Ours is the built site itself:
//! the text is read, the whole survey checked with all rules, the screen rendered and patched, the
//! draft kept. The judge is not asked, and the frame not drawn anew, until the typing rests for half
//! a second, which no key here waits for; a key where a fault is told is measured by itself. What the
//! peers do and do not stands at the head of their scripts.

#![allow(clippy::print_stdout, clippy::indexing_slicing)]

use anyhow::{Context as _, Result, bail, ensure};
use hangtrue_browser::{Browser, Engine, Screen, Site, folder_of_target, root};
use hangtrue_core::order::Order;
use hangtrue_core::{Spot, Survey, Unit};
use serde_json::{Value, json};

/// Rounds of each side, in turn, after one that is not counted: engines compile what runs often.
const ROUNDS: usize = 10;

/// Sides and what each is, ours first: the others are compared with it.
type Sides<'a> = &'a [(&'static str, &'static str)];

const PACK: &str =
    "<!doctype html><meta charset=utf-8><title>bench</title><link rel=icon href=data:,>
<script type=module>
  import init, { Packer } from '/pack/pack.js';
  import * as peers from '/peers/peers.js';
  await init();
  const readings = {};
  for (const [name, text] of Object.entries(peers.READINGS)) {
    const [group, place] = name.split('.');
    (readings[group] ??= {})[place] = text;
  }
  const [vehicle, note] = ['Unit 207', 'The old door stays until the new one is here.'];
  const survey = { format: 'hangtrue-survey/1', unit: 'in', prepared: true, readings };
  const packer = Packer.read(JSON.stringify(survey), vehicle, note);
  const order = { ...survey, vehicle, note };
  const base = 'https://doors.example/order/';
  const run = {
    ours: () => packer.picture(base),
    usual: () => peers.usualPicture(order, base),
    lean: () => peers.leanPicture(order, base),
  };
  window.lengths = () => [packer.link(base).length, peers.link(order, base).length];
  window.bench = (side, times) => Array.from({ length: times }, () => {
    const start = performance.now();
    const svg = run[side]();
    const time = performance.now() - start;
    if (!svg.includes('<path')) throw new Error(`${side} draws nothing`);
    return time;
  });
</script>";

/// Put into the page of the walk.
const KEYSTROKE: &str = "<div id=usual></div><div id=lean></div><script type=module>
  import { READINGS, lean, usual } from '/peers/peers.js';
  window.READINGS = READINGS;
  const typed = ['9', '92', '92 ', '92 1', '92 1/', '92 1/4'];
  window.begin = () => {
    const input = document.getElementById('width.low');
    const sides = {
      ours: {
        input,
        echo: () => document.getElementById('width.low-echo').textContent.replaceAll('\u{a0}', ' '),
        set: (text) => { input.value = text; },
        key: () => input.dispatchEvent(new InputEvent('input', { bubbles: true })),
      },
      usual: usual(document.getElementById('usual')),
      lean: lean(document.getElementById('lean')),
    };
    window.bench = (name, rounds) => {
      const side = sides[name];
      side.input.focus();
      const times = [];
      for (let round = 0; round < rounds; round += 1)
        for (const text of typed) {
          side.set(text);
          const start = performance.now();
          side.key();
          times.push(performance.now() - start);
          if (text === '92' && !side.echo().includes('92')) throw new Error(`${name} reads nothing`);
        }
      if (document.activeElement !== side.input) throw new Error(`${name} lost the focus`);
      if (!side.echo().includes('92 1/4')) throw new Error(`${name} shows ${side.echo()}`);
      return times;
    };
    // Continue, on a width of nine inches: from then on the screen tells what is wrong at each key.
    window.tell = () => {
      const { set, key } = sides.ours;
      set('9');
      key();
      document.querySelector('button[type=submit]').click();
      return document.querySelector('#problems') !== null;
    };
    // Keys one a frame, so that the browser lays out after each.
    window.type = async (rounds) => {
      for (let round = 0; round < rounds; round += 1)
        for (const text of typed) {
          sides.ours.set(text);
          sides.ours.key();
          await new Promise(requestAnimationFrame);
        }
      return rounds * typed.length;
    };
    return document.querySelectorAll('#app *').length;
  };
</script>";

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<()> {
    let what = std::env::args().nth(1).unwrap_or_default();
    let mut browser = Browser::start(Engine::Chromium, &[]).await?;
    let rows = match what.as_str() {
        "pack" => pack(&mut browser).await?,
        "keystroke" => keystroke(&mut browser).await?,
        _ => bail!("usage: bench-page pack | keystroke"),
    };
    browser.close().await;
    println!("{}", Value::from(rows));
    Ok(())
}

/// Isolated pages get a clock of 5 µs instead of 100 µs.
fn isolated(site: Site) -> Result<Site> {
    Ok(site
        .folder("/peers/", folder_of_target("bench/page")?)
        .folder("/pack/", folder_of_target("bench/page")?)
        .header("Cross-Origin-Opener-Policy", "same-origin")
        .header("Cross-Origin-Embedder-Policy", "require-corp"))
}

async fn pack(browser: &mut Browser) -> Result<Vec<Value>> {
    browser.serve(isolated(Site::default().text("/index.html", PACK))?).await?;
    browser.open(Screen::PHONE, "/").await?;
    browser.until("window.bench && crossOriginIsolated").await?;
    let lengths = browser.value("lengths()").await?;
    eprintln!("links of {} characters, and of {} by lz-string", lengths[0], lengths[1]);
    let sides = [
        ("ours", "Hangtrue, wasm"),
        ("usual", "JSON, lz-string, qrcode"),
        ("lean", "JSON, lz-string, lean-qr"),
    ];
    measure(browser, "a full order as link and QR code", &sides, 30).await
}

async fn keystroke(browser: &mut Browser) -> Result<Vec<Value>> {
    let page = std::fs::read_to_string(root().join("dist/index.html"))?;
    // The policy allows no script but the page's own.
    let page = page.replace("http-equiv=\"Content-Security-Policy\"", "name=\"policy\"");
    browser.serve(isolated(Site::dist()?)?.text("/bench.html", &(page + KEYSTROKE))).await?;
    browser.open(Screen::PHONE, "/bench.html").await?;
    let readings = browser.until("window.READINGS").await?;
    let mut survey = Survey::new(Unit::Inch);
    survey.prepared = true;
    for (name, text) in readings.as_object().context("readings")? {
        let spot = Spot::from_key(name).with_context(|| format!("{name} is no spot"))?;
        survey.add(spot, text.as_str().context("a text")?);
    }
    let order = Order { survey, ..Order::default() };
    let payload = hangtrue_link::encode(&order).map_err(|error| anyhow::anyhow!("{error:?}"))?;
    browser.goto("/peers/none.html").await?;
    // The draft as the first builds kept it: it opens for ever.
    let keep = "localStorage.setItem('hangtrue-draft', `/width ${arguments[0]}`)";
    browser.run(keep, vec![json!(payload)]).await?;
    browser.goto("/bench.html#/width").await?;
    browser.find("#app[data-ready]").await?;
    browser.until("document.getElementById('width.low')?.value === '92 1/4'").await?;
    browser.until("crossOriginIsolated && window.begin").await?;
    browser.tap("[id='width.low']").await?;
    eprintln!("{} elements in ours", browser.value("begin()").await?);
    let sides = [
        ("ours", "Hangtrue, with all rules, drawings and draft"),
        ("usual", "fraction.js, mathjs, zod, React"),
        ("lean", "numeric-quantity, valibot, plain DOM"),
    ];
    let mut rows = measure(browser, "a keystroke in a full survey", &sides, 10).await?;
    rows.extend(parts(browser).await?);
    ensure!(browser.value("tell()").await? == true, "nothing is told of nine inches");
    let told = [("ours", "Hangtrue; the judge once the typing rests")];
    rows.extend(measure(browser, "a keystroke where a fault is told", &told, 10).await?);
    Ok(rows)
}

/// What a key takes until its frame, by what the browser does meanwhile, as it accounts for it.
async fn parts(browser: &mut Browser) -> Result<Vec<Value>> {
    browser.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": 4 })).await?;
    browser.devtools("Performance.enable", json!({ "timeDomain": "timeTicks" })).await?;
    let parts = [
        ("TaskDuration", "all that the browser's main thread does"),
        ("ScriptDuration", "script and module"),
        ("RecalcStyleDuration", "style"),
        ("LayoutDuration", "layout"),
    ];
    let mut all = parts.map(|_| Vec::new());
    for _ in 0..ROUNDS {
        let before = metrics(browser).await?;
        let keys = browser.run("return type(...arguments)", vec![json!(10)]).await?;
        let after = metrics(browser).await?;
        for ((name, _), values) in parts.iter().zip(&mut all) {
            let took = seconds(&after, name)? - seconds(&before, name)?;
            values.push(took * 1000.0 / keys.as_f64().context("keys")?);
        }
    }
    let rows = parts.iter().zip(all).map(|((_, who), values)| {
        json!({ "what": "a key to its frame, processor /4", "who": who, "unit": "p50",
                "values": values })
    });
    Ok(rows.collect())
}

async fn metrics(browser: &Browser) -> Result<Value> {
    browser.devtools("Performance.getMetrics", json!({})).await
}

fn seconds(metrics: &Value, name: &str) -> Result<f64> {
    let all = metrics["metrics"].as_array().into_iter().flatten();
    let mut found = all.filter(|metric| metric["name"] == name);
    found.find_map(|metric| metric["value"].as_f64()).with_context(|| format!("no {name}"))
}

/// Rows of the middle of each round, and of the slowest hundredth of all rounds.
async fn measure(
    browser: &mut Browser,
    what: &str,
    sides: Sides<'_>,
    times: usize,
) -> Result<Vec<Value>> {
    let mut rows = Vec::new();
    for slower in [1, 4] {
        browser.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": slower })).await?;
        let mut all = vec![(Vec::new(), Vec::new()); sides.len()];
        for round in 0..=ROUNDS {
            for ((side, _), (middles, pooled)) in sides.iter().zip(&mut all) {
                let seen =
                    browser.run("return bench(...arguments)", vec![json!(side), json!(times)]);
                let seen = seen.await?;
                let mut seen: Vec<f64> =
                    seen.as_array().into_iter().flatten().filter_map(Value::as_f64).collect();
                ensure!(seen.len() >= times, "{side} was not measured");
                if round > 0 {
                    seen.sort_by(f64::total_cmp);
                    middles.push(seen[seen.len() / 2]);
                    pooled.extend(seen);
                }
            }
        }
        let what = format!("{what}, processor /{slower}");
        for ((_, who), (middles, _)) in sides.iter().zip(&all) {
            rows.push(json!({ "what": what, "who": who, "unit": "p50", "values": middles }));
        }
        for ((_, who), (_, pooled)) in sides.iter().zip(&mut all) {
            pooled.sort_by(f64::total_cmp);
            let slow = pooled[pooled.len() * 99 / 100];
            rows.push(json!({ "what": what, "who": who, "unit": "p99", "values": [slow] }));
        }
    }
    Ok(rows)
}
