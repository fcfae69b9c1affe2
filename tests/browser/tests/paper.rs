//! The print sheet, as the PDF that the browser makes: counted, read, looked at.

use std::path::Path;
use std::process::Command;

use crate::orders::{Code, crowded, decoded, open, to_be_built, typical};
use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Feature, Media, Screen};
use hangtrue_core::order::Order;
use serde_json::json;

/// A sheet's name, its width and height in cm.
const SHEETS: [(&str, f64, f64); 2] = [("letter", 21.59, 27.94), ("a4", 21.0, 29.7)];
/// Dots an inch that the sheet is looked at with: a good telephone's camera sees no less.
const DENSITY: &str = "200";
/// Dots an inch that the code is read with: a camera comes as near as it must.
const NEARER: [&str; 3] = [DENSITY, "250", "300"];

pub(crate) fn output(program: &str, arguments: &[&str]) -> Result<Vec<u8>> {
    let output = Command::new(program).args(arguments).output().context(program.to_owned())?;
    let told = String::from_utf8_lossy(&output.stderr);
    ensure!(output.status.success(), "{program} {arguments:?}: {told}");
    Ok(output.stdout)
}

/// A page of the PDF as a grey picture, kept to be looked at.
pub(crate) struct Raster {
    pub(crate) width: usize,
    pub(crate) height: usize,
    pub(crate) grey: Vec<u8>,
}

impl Raster {
    pub(crate) fn of(pdf: &str, kept: &Path) -> Result<Self> {
        let root = kept.to_str().context("a path in UTF-8")?;
        output("pdftoppm", &["-r", "100", "-png", "-singlefile", pdf, root])?;
        Self::at(pdf, DENSITY, kept)
    }

    fn at(pdf: &str, density: &str, kept: &Path) -> Result<Self> {
        let root = kept.to_str().context("a path in UTF-8")?;
        output("pdftoppm", &["-r", density, "-gray", "-singlefile", pdf, root])?;
        let file = kept.with_extension("pgm");
        let bytes = std::fs::read(&file)?;
        std::fs::remove_file(file)?;
        // P5, width, height, 255, each behind white space; then a byte a pixel.
        let head: Vec<&[u8]> = bytes.splitn(4, |byte| byte.is_ascii_whitespace()).collect();
        let number = |at: usize| -> Result<usize> { Ok(std::str::from_utf8(head[at])?.parse()?) };
        let (width, height) = (number(1)?, number(2)?);
        let grey = bytes[bytes.len() - width * height..].to_vec();
        Ok(Self { width, height, grey })
    }

    /// The share of dots that are neither nearly black nor nearly white, and of black ones.
    fn grey_and_black(&self) -> (f64, f64) {
        let share = |test: fn(&u8) -> bool| {
            self.grey.iter().filter(|dot| test(dot)).count() as f64 / self.grey.len() as f64
        };
        (share(|dot| (64..192).contains(dot)), share(|dot| *dot < 64))
    }

    /// Whether the sheet's edges, 8 mm from each side, are blank.
    fn edges_are_blank(&self) -> bool {
        let edge = 8 * 200 * 10 / 254;
        self.grey.chunks(self.width).enumerate().all(|(y, row)| {
            let whole = y < edge || y >= self.height - edge;
            let (left, right) = (&row[..edge], &row[self.width - edge..]);
            let blank = |dots: &[u8]| dots.iter().all(|dot| *dot > 250);
            if whole { blank(row) } else { blank(left) && blank(right) }
        })
    }
}

/// The code that stands on a page of the PDF, if it can be read.
pub(crate) fn code(pdf: &str, kept: &Path) -> Option<Code> {
    NEARER.into_iter().find_map(|density| {
        let raster = Raster::at(pdf, density, kept).ok()?;
        decoded(raster.width, raster.height, &raster.grey).ok()
    })
}

/// A page that was printed.
pub(crate) struct Sheet {
    pub(crate) name: &'static str,
    pub(crate) text: String,
    raster: Raster,
    /// The one that stands on it, if it can be read.
    code: Option<Code>,
}

/// Prints the page that is shown on each sheet.
pub(crate) async fn printed(browser: &Browser, name: &str) -> Result<Vec<Sheet>> {
    let folder = tempfile::tempdir()?;
    let shots =
        Path::new(env!("CARGO_MANIFEST_DIR")).join("../shots").join(browser.engine().name());
    std::fs::create_dir_all(&shots)?;
    let mut all = Vec::new();
    for (sheet, width, height) in SHEETS {
        let file = folder.path().join("order.pdf");
        std::fs::write(&file, browser.print(width, height).await?)?;
        let pdf = file.to_str().context("a path in UTF-8")?;
        let about = String::from_utf8(output("pdfinfo", &[pdf])?)?;
        let line = |name: &str| {
            let line = about.lines().find_map(|line| line.strip_prefix(name));
            line.map(|line| line.trim().to_owned()).context(format!("pdfinfo: no {name}"))
        };
        let text = String::from_utf8(output("pdftotext", &["-raw", pdf, "-"])?)?;
        ensure!(line("Pages:")? == "1", "{name}: {} pages of {sheet}:\n{text}", line("Pages:")?);
        let size = line("Page size:")?;
        ensure!(size.to_lowercase().contains(sheet), "{name}: {size} instead of {sheet}");
        let kept = shots.join(format!("paper-{name}-{sheet}"));
        let raster = Raster::of(pdf, &kept)?;
        ensure!(raster.edges_are_blank(), "{name}: something lies in the margin of {sheet}");
        all.push(Sheet { name: sheet, text, raster, code: code(pdf, &kept) });
    }
    Ok(all)
}

fn holds(text: &str, wanted: &[&str], name: &str) -> Result<()> {
    // A line of the sheet may be broken anywhere between words, and an engine may set f and i as one.
    let text = text.replace('ﬁ', "fi").replace('ﬂ', "fl");
    let text: Vec<&str> = text.split_whitespace().collect();
    let text = text.join(" ");
    for wanted in wanted {
        ensure!(text.contains(wanted), "{name}: the sheet lacks `{wanted}`:\n{text}");
    }
    Ok(())
}

pub(crate) async fn one_page_in_letter_and_a4(browser: &mut Browser) -> Result<()> {
    browser.set_screen(Screen::DESK).await?;
    let typical_holds: &[&str] = &[
        "Order for a roll-up door",
        "Unit 7, blue box",
        "yard@carrier.example",
        "2026-02-03",
        "Clear",
        "Frame as it will stay",
        "Measured with the old door out",
        "92 3/16 in low 92 1/4 in middle 92 3/16 in high 92 1/4 in",
        "101 1/2 in left 101 1/2 in center 110 9/16 101 9/16 in right 101 1/2 in",
        "9 1/2 in center 9 1/2 in",
        "1 1/4 in first bow 1 1/4 in",
        "137 1/16 in",
        "109 3/4 in",
        "Liner inside: ask before cutting.",
        "What these readings cannot show",
        "Check characters",
        "Re-measured by",
        "Signature",
        "can kill",
    ];
    let built_holds: &[&str] = &[
        "Recheck",
        "To be built first",
        "Header down by 1 in",
        "Left post out by 1 in",
        "91 3/16 in",
        "100 1/2 in",
        "as found 6 in",
        "licensed practice",
    ];
    // The longest link that a code on paper is read from at this density, and the longest of all.
    let crowded_holds: &[&str] = &["Stop", "and 12 more", "the link has all of it", "Signature"];
    let orders: [(&str, Order, &[&str], bool); 4] = [
        ("typical", typical(), typical_holds, true),
        ("built", to_be_built(), built_holds, true),
        ("crowded", crowded(1), crowded_holds, false),
        ("most", crowded(4), crowded_holds, false),
    ];
    for (name, order, wanted, scanned) in orders {
        for dark in [false, true] {
            browser.set_dark(dark).await?;
            let link = open(browser, &order).await?;
            for Sheet { name: sheet, text, raster, code } in printed(browser, name).await? {
                holds(&text, wanted, name)?;
                let (grey, black) = raster.grey_and_black();
                ensure!(grey < 0.03 && black < 0.15, "{name}: {grey} is grey, {black} is black");
                if scanned {
                    let read = code.with_context(|| format!("{name} on {sheet}: no code"))?;
                    ensure!(read.text == link, "{name}: {}", read.text);
                    ensure!("QH".contains(read.level), "{name}: level {}", read.level);
                }
            }
        }
    }
    Ok(())
}

/// In the language of who prints it: as long as it may be, one page still.
pub(crate) async fn one_page_in_each_language(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::DESK, "/").await?;
    for (language, words) in [
        ("es", ["Pedido de puerta", "umbral", "dintel", "arco", "Firma"]),
        ("fr", ["Commande", "seuil", "linteau", "arceau", "Signature"]),
    ] {
        crate::states::speak(browser, language).await?;
        for (name, order) in
            [("typical", typical()), ("built", to_be_built()), ("crowded", crowded(1))]
        {
            let link = open(browser, &order).await?;
            for sheet in printed(browser, &format!("{name}-{language}")).await? {
                holds(&sheet.text, &words, language)?;
                if name != "crowded" {
                    let read =
                        sheet.code.with_context(|| format!("{name}, {language}: no code"))?;
                    ensure!(read.text == link, "{name}, {language}: {}", read.text);
                }
            }
        }
    }
    Ok(())
}

/// What the page says of itself belongs to the screen: here that the storage is full.
pub(crate) async fn a_notice_is_not_printed(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/#/width").await?;
    browser.find("#app[data-ready]").await?;
    let full =
        "Storage.prototype.setItem = () => { throw new DOMException('', 'QuotaExceededError') }";
    browser.run(full, Vec::new()).await?;
    browser.tap("[id='width.low']").await?;
    browser.type_keys("9").await?;
    browser.find(".notice [data-act=noted]").await?;
    let payload = crate::orders::payload(&typical())?;
    browser.run(&format!("location.hash = '{payload}'"), Vec::new()).await?;
    browser.find("main.step-opened").await?;
    ensure!(!browser.value("document.querySelector('.notice')").await?.is_null(), "no notice");
    for sheet in printed(browser, "noticed").await? {
        ensure!(!sheet.text.contains("full"), "{}: the notice is on paper", sheet.name);
        holds(&sheet.text, &["Order for a roll-up door", "Signature"], "noticed")?;
    }
    Ok(())
}

/// Shows the page as it is on paper.
pub(crate) async fn on_paper(browser: &Browser) -> Result<()> {
    if browser.engine().lacks(Feature::PrintMedia).is_none() {
        return browser.set_media(Media { print: true, ..browser.media() }).await;
    }
    // The next best: the rules for paper hold everywhere, until the next page is loaded.
    let script = "
        const everywhere = ({ media }) => {
            if (media?.mediaText === 'print') media.mediaText = 'all';
        };
        for (const sheet of document.styleSheets) {
            everywhere(sheet);
            for (const rule of sheet.cssRules) everywhere(rule);
        }";
    browser.run(script, Vec::new()).await?;
    Ok(())
}

async fn off_paper(browser: &Browser) -> Result<()> {
    browser.set_media(Media { print: false, ..browser.media() }).await
}

/// The sheet itself never hides anything: what has no room was left out, and told, before.
pub(crate) async fn what_has_no_room_is_cut_by_the_page_not_by_the_paper(
    browser: &mut Browser,
) -> Result<()> {
    for (name, order) in [
        ("typical", typical()),
        ("built", to_be_built()),
        ("crowded", crowded(1)),
        ("most", crowded(4)),
    ] {
        browser.set_screen(Screen { width: 703, height: 964, touch: false }).await?;
        open(browser, &order).await?;
        on_paper(browser).await?;
        let hidden = browser
            .value(
                "[...document.querySelectorAll('.paper, .paper-top, .paper-note, .paper-columns')]
                    .filter(e => e.scrollHeight > e.clientHeight + 1)
                    .map(e => e.className + ': ' + e.scrollHeight + ' > ' + e.clientHeight)",
            )
            .await?;
        off_paper(browser).await?;
        ensure!(hidden == json!([]), "{name}: {hidden}");
    }
    Ok(())
}

pub(crate) async fn the_button_prints(browser: &mut Browser) -> Result<()> {
    browser.set_screen(Screen::PHONE).await?;
    open(browser, &typical()).await?;
    browser.run("window.prints = 0; window.print = () => { window.prints += 1 }", vec![]).await?;
    browser.tap("[data-act=print]").await?;
    browser.until("window.prints === 1").await?;
    Ok(())
}
