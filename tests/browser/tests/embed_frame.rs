//! The survey in a frame: its host gives it the height it tells, and hears nobody else.

use anyhow::{Context as _, Result, ensure};
use fantoccini::key::Key;
use hangtrue_browser::{Browser, Screen, Server, Site};
use serde_json::{Value, json};

use crate::embed::{at, demo, press, to_the_check};

/// A host page around `frames`, which remembers every height that its first frame is given.
fn host(frames: &str) -> Result<Site> {
    let page = format!(
        "<!doctype html><html lang=en><title>t</title><link rel=icon href=data:,>{frames}\
         <script>window.heights = []; window.told = [];
         new MutationObserver(() => heights.push(+document.querySelector('iframe').height))
             .observe(document.querySelector('iframe'), {{ attributeFilter: ['height'] }});
         addEventListener('message', ({{ origin, data }}) => told.push([origin, data]));</script>\
         <script type=module src=/embed/frame-height.js></script>"
    );
    Ok(demo()?.text("/host/index.html", &page))
}

/// The frame is as high as what is shown in it, and nothing in it is scrolled.
async fn is_fitted(browser: &Browser) -> Result<f64> {
    let inside = browser
        .until(
            "Math.ceil(document.querySelector('hangtrue-survey').getBoundingClientRect().height) \
            === innerHeight && document.documentElement.scrollHeight <= innerHeight && innerHeight",
        )
        .await?;
    inside.as_f64().context("a height")
}

pub(crate) async fn the_frame_grows_and_shrinks_with_the_walk(browser: &mut Browser) -> Result<()> {
    // Two origins, each with a server of its own.
    let survey = Server::start(demo()?)?;
    browser.serve(demo()?).await?;
    let own = browser.server.origin();
    let frame = format!(
        "<iframe data-hangtrue width=360 height=720 title=Survey \
         src='{}/embed/frame.html?unit=in&host={own}'></iframe>",
        survey.origin()
    );
    browser.server.replace(host(&frame)?)?;
    browser.open(Screen::DESK, "/host/").await?;
    browser.until("told.some(([, data]) => data.event === 'ready')").await?;
    browser.enter_frame("iframe").await?;
    at(browser, "hangtrue-survey", "start").await?;
    ensure!(is_fitted(browser).await? == 720.0, "the height that was reserved");
    // A person's first touch is a touch: until then the frame has no focus.
    browser.tap("hangtrue-survey").await?;
    press(browser, "hangtrue-survey", "button[type=submit]", Key::Enter).await?;
    at(browser, "hangtrue-survey", "frame").await?;
    let long = is_fitted(browser).await?;
    browser.leave_frame().await?;
    browser.shoot("embed-frame-long").await?;
    browser.enter_frame("iframe").await?;
    press(browser, "hangtrue-survey", "input[name=prepared][value=yes]", Key::Space).await?;
    press(browser, "hangtrue-survey", "button[type=submit]", Key::Enter).await?;
    at(browser, "hangtrue-survey", "width").await?;
    let other = is_fitted(browser).await?;
    ensure!(long != other, "{long} and {other}");
    // The whole way: whatever it shows, it is fitted.
    press(browser, "hangtrue-survey", "[data-act=back]", Key::Enter).await?;
    at(browser, "hangtrue-survey", "frame").await?;
    press(browser, "hangtrue-survey", "[data-act=back]", Key::Enter).await?;
    to_the_check(browser, "hangtrue-survey").await?;
    let check = is_fitted(browser).await?;
    browser.leave_frame().await?;
    browser.until(&format!("document.querySelector('iframe').height === '{check}'")).await?;
    let heights = browser.value("heights").await?;
    let heights: Vec<f64> =
        heights.as_array().into_iter().flatten().filter_map(Value::as_f64).collect();
    let pairs = || heights.iter().zip(heights.iter().skip(1));
    ensure!(pairs().any(|(a, b)| b > a) && pairs().any(|(a, b)| b < a), "{heights:?}");
    ensure!(heights.len() < 60, "it settles: {heights:?}");
    browser.take_requests().await?;
    Ok(())
}

/// A frame that is not the survey: it says everything that its host must not take, and then
/// one height that it must.
const LIAR: &str = "<!doctype html><title>t</title><link rel=icon href=data:,><script>
    const say = (data) => parent.postMessage(data, '*');
    for (const data of [
        null, 7, 'hangtrue-survey', [], {}, { height: 1000 },
        { from: 'hangtrue-survey' },
        { from: 'hangtrue', height: 1001 },
        { from: 'hangtrue-survey', height: '1002' },
        { from: 'hangtrue-survey', height: NaN },
        { from: 'hangtrue-survey', height: Infinity },
        { from: 'hangtrue-survey', height: { valueOf: 1003 } },
        { from: ['hangtrue-survey'], height: 1004 },
        { from: 'hangtrue-survey', Height: 1005 },
    ]) say(data);
    say({ from: 'hangtrue-survey', height: 1e9 });
    say({ from: 'hangtrue-survey', height: -1 });
    say({ from: 'hangtrue-survey', height: 777 });
    say('done');
</script>";

pub(crate) async fn nobody_else_is_heard(browser: &mut Browser) -> Result<()> {
    let liar = Server::start(demo()?.text("/embed/liar.html", LIAR))?;
    // Of another origin; and one that leads a frame there from the right one.
    let elsewhere = Server::start(demo()?.text("/embed/liar.html", LIAR))?;
    let away = format!(
        "<!doctype html><title>t</title><link rel=icon href=data:,><script>\
        location.replace('{}/embed/liar.html')</script>",
        elsewhere.origin()
    );
    let leads_away = Server::start(demo()?.text("/embed/liar.html", &away))?;
    let frame = |server: &Server, marked: &str| {
        format!(
            "<iframe {marked} width=300 height=500 title=t src='{}/embed/liar.html'></iframe>",
            server.origin()
        )
    };
    let done = |origin: &str| {
        format!("told.filter(([from, data]) => data === 'done' && from === '{origin}').length")
    };

    // From the frame's own origin, by the frame itself: what has the shape, within bounds.
    browser.serve(host(&frame(&liar, "data-hangtrue"))?).await?;
    browser.open(Screen::DESK, "/host/").await?;
    browser.until(&done(&liar.origin())).await?;
    browser.until("heights.at(-1) === 777").await?;
    ensure!(browser.value("heights").await? == json!([20000, 200, 777]));

    // The right frame, but another origin is in it now.
    browser.serve(host(&frame(&leads_away, "data-hangtrue"))?).await?;
    browser.open(Screen::DESK, "/host/").await?;
    browser.until(&done(&elsewhere.origin())).await?;
    ensure!(browser.value("heights").await? == json!([]));

    // The right origin, but another frame; and one of another origin beside it.
    let quiet = Server::start(demo()?.text("/embed/liar.html", "<!doctype html><title>t</title>"))?;
    let three = [frame(&quiet, "data-hangtrue"), frame(&quiet, "id=same"), frame(&elsewhere, "")];
    browser.serve(host(&three.concat())?).await?;
    browser.open(Screen::DESK, "/host/").await?;
    browser.until(&done(&elsewhere.origin())).await?;
    browser
        .run(
            "window.postMessage({ from: 'hangtrue-survey', height: 900 }, location.origin);
             window.postMessage('done', location.origin);",
            Vec::new(),
        )
        .await?;
    browser.until(&done(&browser.server.origin())).await?;
    browser.enter_frame("#same").await?;
    let tell = "parent.postMessage({ from: 'hangtrue-survey', height: 901 }, '*'); parent.postMessage('done', '*')";
    browser.run(tell, Vec::new()).await?;
    browser.leave_frame().await?;
    browser.until(&done(&quiet.origin())).await?;
    ensure!(browser.value("heights").await? == json!([]));
    browser.take_requests().await?;
    Ok(())
}
