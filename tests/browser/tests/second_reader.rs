//! The codes that the page shows and prints, read by a second reader that shares nothing with the
//! first (npm `jsqr`; the first is crate `rqrr`): as drawn, blurred, turned, stained.

use crate::desk_files::link;
use crate::orders::{open, typical};
use crate::picture::draft;
use crate::walk::at;
use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Screen, Site};
use hangtrue_core::order::Order;
use hangtrue_link::qr::{QUIET_ZONE, Qr, Surface};
use serde_json::{Value, json};

/// A script body: what it is read from, and what jsQR reads.
const READ: &str = include_str!("second_reader.js");

/// The degrees that the first reader is tried at, too.
const TURNS: [u16; 9] = [15, 30, 45, 60, 90, 135, 180, 210, 300];

/// A code as it is drawn.
struct Code {
    link: String,
    /// Its `path`, and how many modules wide it is with its border.
    drawn: Value,
}

impl Code {
    /// The one that the page shows.
    async fn shown(browser: &Browser, css: &str, link: String) -> Result<Self> {
        let drawn = browser
            .until(&format!(
                "(svg => svg && [svg.querySelector('path').getAttribute('d'),
                    svg.viewBox.baseVal.width])(document.querySelector({}))",
                json!(css)
            ))
            .await?;
        Ok(Self { link, drawn })
    }

    /// The order's, by the same drawing as the page's. Its link is the same on every day: the page
    /// of a scenario is at a port that is not, and another link is another picture.
    fn of(order: &Order, surface: Surface) -> Result<Self> {
        let link = link(order)?;
        let qr = Qr::new(&link, surface).context("a code")?;
        let svg = qr.svg("");
        let path = svg.split(" d=\"").nth(1).and_then(|rest| rest.split('"').next());
        let drawn = json!([path.context("a path")?, qr.size() + 2 * QUIET_ZONE]);
        Ok(Self { link, drawn })
    }

    /// By ISO/IEC 18004's format information: the first two modules of the row below the finder
    /// pattern, the first of them inverted.
    fn level(&self) -> Result<char> {
        let path = self.drawn[0].as_str().context("a path")?;
        // A run of dark modules in the row: `M4 12h3`; four are the border's.
        let dark = |x: usize| {
            path.split('M').filter_map(|run| run.split_once(" 12h")).any(|(left, rest)| {
                let width = rest.split('v').next().and_then(|width| width.parse::<usize>().ok());
                let left = left.parse::<usize>().ok();
                left.zip(width).is_some_and(|(left, width)| (left..left + width).contains(&x))
            })
        };
        let bits = (usize::from(!dark(4)) << 1) | usize::from(dark(5));
        Ok(['M', 'L', 'H', 'Q'][bits])
    }
}

/// Where jsQR is alone.
fn reader() -> Result<Site> {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("jsqr/node_modules");
    let script = folder.join("jsqr/dist/jsQR.js");
    ensure!(script.is_file(), "{}: `cargo xtask browser` installs it", script.display());
    let page = "<!doctype html><title>t</title><link rel=icon href=data:,>
        <script src=npm/jsqr/dist/jsQR.js></script>";
    Ok(Site::default().folder("/npm/", folder).text("/index.html", page))
}

impl Code {
    /// Fails with the first picture in which jsQR reads something else or nothing.
    async fn is_read(&self, browser: &Browser, pictures: &[Value]) -> Result<()> {
        // Some at a time: a script has its time.
        for pictures in pictures.chunks(12) {
            let read = browser.run(READ, vec![self.drawn.clone(), json!(pictures)]).await?;
            let read = read.as_array().context("a text or null for each picture")?;
            ensure!(read.len() == pictures.len(), "{read:?}");
            for (picture, read) in pictures.iter().zip(read) {
                let Self { link, drawn } = self;
                ensure!(read == link, "{read} from {picture} of {} modules, not {link}", drawn[1]);
            }
        }
        Ok(())
    }
}

async fn reading(browser: &mut Browser) -> Result<()> {
    browser.serve(reader()?).await?;
    browser.open(Screen::DESK, "/").await?;
    browser.until("window.jsQR !== undefined").await?;
    Ok(())
}

pub(crate) async fn reads_what_the_page_shows(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    let link = draft(browser).await?;
    browser.goto("/#/scan").await?;
    at(browser, "scan").await?;
    let screen = Code::shown(browser, ".qr svg", link).await?;
    let link = open(browser, &typical()).await?;
    let paper = Code::shown(browser, ".paper-code svg", link).await?;
    reading(browser).await?;
    for code in [screen, paper] {
        code.is_read(browser, &[json!({ "scale": 4 }), json!({ "scale": 9 })]).await?;
    }
    Ok(())
}

pub(crate) async fn reads_each_level_blurred_turned_and_stained(
    browser: &mut Browser,
) -> Result<()> {
    let mut talkative = typical();
    talkative.note = talkative.note.repeat(3);
    reading(browser).await?;
    for (level, order, surface, blur, stain) in [
        ('M', typical(), Surface::Screen, 2, None),
        ('H', typical(), Surface::Paper, 2, Some(0.15)),
        // Too long for level H. It stands less, and jsQR does not read one that large at a blur of
        // a third of a module.
        ('Q', talkative, Surface::Paper, 1, Some(0.1)),
    ] {
        let code = Code::of(&order, surface)?;
        ensure!(code.level()? == level, "of level {}, not {level}", code.level()?);
        let mut pictures = vec![json!({ "scale": 4 }), json!({ "scale": 8, "blur": blur })];
        pictures.extend(TURNS.map(|turn| json!({ "scale": 8, "blur": 1, "turn": turn })));
        if let Some(share) = stain {
            for (right, down) in [-3, 0, 3].into_iter().flat_map(|x| [-3, 0, 3].map(|y| (x, y))) {
                let stain = |grey: u8| json!({ "scale": 4, "stain": [share, right, down, grey] });
                pictures.extend([0, 90, 255].map(stain));
            }
        }
        code.is_read(browser, &pictures).await?;
    }
    Ok(())
}

/// What is no code is not read, so that the above can fail; nor one under a stain that is too large.
pub(crate) async fn reads_nothing_where_there_is_no_code(browser: &mut Browser) -> Result<()> {
    let code = Code::of(&typical(), Surface::Paper)?;
    reading(browser).await?;
    let pictures = json!([
        { "scale": 4 },
        { "scale": 4, "stain": [0.6, 0, 0, 90] },
        { "scale": 4, "blur": 12 },
    ]);
    let read = browser.run(READ, vec![code.drawn, pictures]).await?;
    ensure!(read == json!([code.link, null, null]), "{read}");
    Ok(())
}
