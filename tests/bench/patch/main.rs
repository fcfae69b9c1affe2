//! The DOM patcher against `morphdom`: milliseconds a keystroke, in Chromium, on a form of a walk's
//! size. Both patch the same markup in the same page, in turn, so that a noisy machine is noisy for
//! both: compare, do not quote.
//!
//! ```text
//! npm ci --prefix tests/bench/patch
//! cargo xtask browser harness            # builds the patcher's probe
//! cargo run --release --package hangtrue-browser --example bench-patch
//! ```

#![allow(clippy::print_stdout, clippy::indexing_slicing)]

use std::fmt::Write as _;
use std::path::Path;

use anyhow::{Result, ensure};
use hangtrue_browser::{Browser, Engine, Screen, Site, folder_of_target};
use serde_json::{Value, json};

const PAGE: &str = "<!doctype html><meta charset=utf-8><title>bench</title>
<link rel=icon href=data:,><div id=ours></div><div id=theirs></div>
<script src=/morphdom/morphdom-umd.min.js></script>
<script type=module>
  import init, { patch } from '/probe/patch.js';
  await init();
  const ours = document.getElementById('ours');
  const run = {
    ours(markup) { patch(ours, markup) },
    theirs(markup) {
      morphdom(document.getElementById('theirs'), `<div id=theirs>${markup}</div>`, {
        onBeforeElUpdated: (live, made) => !live.isEqualNode(made),
      });
    },
  };
  // Ids are unique in a page, so each side has the page to itself while it runs.
  window.bench = (side, markups, rounds) => {
    ours.replaceChildren();
    document.getElementById('theirs').replaceChildren();
    run[side](markups[0][1]);
    const input = document.querySelector('input');
    input.focus();
    const times = [];
    for (let round = 0; round < rounds; round += 1)
      for (const [typed, markup] of markups) {
        input.value = typed;
        const start = performance.now();
        run[side](markup);
        times.push(performance.now() - start);
      }
    if (document.activeElement !== input) throw new Error(`${side} lost the focus`);
    return times.sort((a, b) => a - b);
  };
  window.nodes = () => document.querySelectorAll('#ours *').length;
</script>";

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<()> {
    let modules = Path::new(env!("CARGO_MANIFEST_DIR")).join("../bench/patch/node_modules");
    ensure!(modules.is_dir(), "run `npm ci --prefix tests/bench/patch` first");
    let site = Site::default()
        .folder("/probe/", folder_of_target("patch-probe")?)
        .folder("/morphdom/", modules.join("morphdom/dist"))
        .text("/index.html", PAGE)
        // Isolated pages get a clock of 5 µs instead of 100 µs.
        .header("Cross-Origin-Opener-Policy", "same-origin")
        .header("Cross-Origin-Embedder-Policy", "require-corp");
    let mut browser = Browser::start(Engine::Chromium, &[]).await?;
    browser.serve(site).await?;
    browser.open(Screen::PHONE, "/").await?;
    browser.until("window.bench && crossOriginIsolated").await?;
    let typed = ["9", "96", "96 ", "96 1", "96 1/", "96 1/4"];
    let markups: Vec<Value> = typed.iter().map(|text| json!([text, form(text)])).collect();
    println!("cpu  patcher     p50 ms  p99 ms");
    for slower in [1, 4] {
        browser.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": slower })).await?;
        for _ in 0..3 {
            for side in ["ours", "theirs"] {
                let arguments = vec![json!(side), json!(markups), json!(150)];
                let times = browser.run("return bench(...arguments)", arguments).await?;
                let times: Vec<f64> =
                    times.as_array().into_iter().flatten().filter_map(Value::as_f64).collect();
                let at = |share: usize| times[times.len() * share / 100];
                let name = if side == "ours" { "patch" } else { "morphdom" };
                println!("/{slower}   {name:10} {:7.3} {:7.3}", at(50), at(99));
            }
        }
    }
    browser.run("bench('ours', arguments[0], 1)", vec![json!(markups)]).await?;
    println!("{} elements", browser.value("nodes()").await?);
    browser.check().await?;
    browser.close().await;
    Ok(())
}

/// A screen of the walk in size and kind: three fields with echo and error, keys for fractions, a
/// drawing, a stretch of tape whose arrow follows the reading.
fn form(typed: &str) -> String {
    let mut out = String::from(
        "<header class=\"top\"><a href=\"#back\">Back</a><p>Step 3 of 8</p></header><main>\
         <h1 id=\"title\" tabindex=\"-1\">Post-to-post width</h1><p class=\"lead\">Clear opening \
         between the door posts, taken low, middle and high.</p>\
         <svg class=\"drawing\" viewBox=\"0 0 320 200\" role=\"img\" aria-labelledby=\"d1 d2\">\
         <title id=\"d1\">Rear elevation</title><desc id=\"d2\">Posts and header from behind</desc>",
    );
    for at in 0..24 {
        let _ = write!(out, "<path class=\"line\" d=\"M{at} 10V190\" stroke-width=\"1.5\"/>");
    }
    out += "</svg><form novalidate>";
    for (id, label) in [("low", "Low"), ("middle", "Middle"), ("high", "High")] {
        let value = if id == "low" { typed } else { "" };
        let _ = write!(
            out,
            "<div class=\"field\"><label for=\"{id}\">{label}</label><p class=\"hint\" \
             id=\"{id}-hint\">For example 96 3/16</p><input id=\"{id}\" name=\"{id}\" type=\"text\" \
             inputmode=\"decimal\" spellcheck=\"false\" autocomplete=\"off\" \
             aria-describedby=\"{id}-hint {id}-echo\" value=\"{value}\">\
             <p class=\"echo\" id=\"{id}-echo\">{value} in &middot; {} mm</p></div>",
            value.len() * 407,
        );
    }
    out += "<div class=\"keys\" role=\"group\" aria-label=\"Fractions\">";
    for at in 1..16 {
        let _ = write!(
            out,
            "<button type=\"button\" class=\"key\" data-key=\"k{at}\" value=\"{at}\">{at}/16</button>"
        );
    }
    out += "</div><svg class=\"tape\" viewBox=\"0 0 320 60\" role=\"img\" aria-label=\"Tape\"><g>";
    for at in 0..64 {
        let height = [30, 10, 15, 10, 20, 10, 15, 10][at % 8];
        let _ = write!(out, "<path d=\"M{} 0v{height}\"/>", at * 5);
    }
    let _ =
        write!(out, "</g><path class=\"arrow\" d=\"M{} 40l5 10h-10z\"/></svg>", typed.len() * 20);
    out += "<button type=\"submit\" class=\"go\">Continue</button></form></main>";
    // The reader of markup knows no names for characters but the five of XML.
    out.replace("&middot;", "·")
}
