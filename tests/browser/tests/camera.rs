//! At the desk: the code before the camera.

use crate::desk::open;
use crate::desk_files::{link, picture};
use crate::orders::typical;
use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Camera, Frame, Screen};

const WIDTH: usize = 640;
const HEIGHT: usize = 480;

/// A wall, lit from one side; `code` held before it by hand: tilted, and in that light.
fn scene(code: Option<&[u8]>) -> Frame {
    let (sin, cos) = (6.0_f64).to_radians().sin_cos();
    let dots = (0..WIDTH * HEIGHT).map(|at| {
        let (x, y) = ((at % WIDTH) as f64, (at / WIDTH) as f64);
        let light = 0.55 + 0.35 * x / WIDTH as f64;
        let (left, top) = (x - 120.0, y - 20.0);
        let (left, top) = (left * cos + top * sin, top * cos - left * sin);
        let held = code.filter(|_| left >= 0.0 && top >= 0.0).and_then(|code| {
            let (left, top) = (left as usize, top as usize);
            (left < WIDTH && top < HEIGHT).then(|| code[top * WIDTH + left])
        });
        (light * (35.0 + 0.8 * f64::from(held.unwrap_or(140)))) as u8
    });
    Frame { width: WIDTH, height: HEIGHT, dots: dots.collect() }
}

const LOOKS: &str =
    "document.querySelector('.camera figcaption')?.innerText.includes('Hold the code')
    && document.getElementById('camera').videoWidth > 0";

/// Whether the browser has let go of the stream that `window.seen` was.
const LET_GO: &str = "window.seen.getTracks().every(track => track.readyState === 'ended')";

async fn look(browser: &Browser) -> Result<()> {
    browser.tap("[data-act=look]").await
}

pub(crate) async fn a_code_held_before_it_is_read(browser: &mut Browser) -> Result<()> {
    let code = picture(&link(&typical())?, 7, (WIDTH, HEIGHT))?;
    // It is brought before the camera only after a while.
    let mut film = vec![scene(None); 20];
    film.extend(vec![scene(Some(&code)); 20]);
    browser.set_camera(Camera::Sees(&film)).await?;
    open(browser).await?;
    look(browser).await?;
    browser.until(LOOKS).await?;
    ensure!(browser.value("document.querySelector('.order')").await?.is_null(), "read too soon");
    browser.run("window.seen = document.getElementById('camera').srcObject", Vec::new()).await?;
    browser.find("#sent-0").await?;
    let shown = browser.text(".order").await?;
    for piece in ["Unit 7, blue box", "92 3/16 in", "Liner inside"] {
        ensure!(shown.contains(piece), "no {piece} in {shown}");
    }
    ensure!(browser.value("document.getElementById('camera')").await?.is_null());
    ensure!(browser.value(LET_GO).await? == true, "the camera is still on");
    Ok(())
}

pub(crate) async fn without_a_code_it_goes_on_looking_until_told(
    browser: &mut Browser,
) -> Result<()> {
    browser.set_camera(Camera::Anything).await?;
    open(browser).await?;
    for screen in [Screen::DESK, Screen::PHONE] {
        browser.set_screen(screen).await?;
        look(browser).await?;
        browser.until(LOOKS).await?;
        // It has looked at several pictures by then: five a second.
        let time = "document.getElementById('camera').currentTime > 1.5";
        browser.until(time).await?;
        ensure!(browser.value(LOOKS).await? == true, "it looks no more");
        ensure!(
            browser.value("document.querySelector('.order, #paste-trouble p')").await?.is_null()
        );
        let seen = "window.seen = document.getElementById('camera').srcObject;
            document.querySelector('.camera').scrollIntoView({ block: 'center' })";
        browser.run(seen, Vec::new()).await?;
        let wide = browser.value("document.documentElement.scrollWidth > innerWidth").await?;
        ensure!(wide == false, "the camera's picture is too wide at {} px", screen.width);
        browser.shoot(&format!("desk-camera-{}", screen.width)).await?;
        browser.tap("[data-act=look-away]").await?;
        browser.until("!document.getElementById('camera')").await?;
        browser.until(LET_GO).await.context("the camera is still on")?;
        ensure!(browser.value("document.activeElement.id").await? == "paste");
    }
    Ok(())
}

pub(crate) async fn that_there_is_none_is_told(browser: &mut Browser) -> Result<()> {
    browser.set_camera(Camera::Missing).await?;
    open(browser).await?;
    look(browser).await?;
    let told = browser.text(".open .stop").await?;
    ensure!(told.contains("There is no camera") && told.contains("Take a photo"), "{told}");
    Ok(())
}

pub(crate) async fn a_refusal_says_what_else_can_be_done(browser: &mut Browser) -> Result<()> {
    browser.set_camera(Camera::Refused).await?;
    open(browser).await?;
    look(browser).await?;
    let told = browser.text(".open .stop").await?;
    ensure!(told.contains("may not use the camera") && told.contains("take a photo"), "{told}");
    browser.run("document.querySelector('.open').scrollIntoView()", Vec::new()).await?;
    browser.shoot("desk-camera-refused-1280").await?;
    // Let after all, the same button looks.
    browser.set_camera(Camera::Anything).await?;
    look(browser).await?;
    browser.until(LOOKS).await?;
    ensure!(browser.value("document.querySelector('.open .stop')").await?.is_null());
    Ok(())
}
