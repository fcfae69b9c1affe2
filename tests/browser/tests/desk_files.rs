//! At the desk and on the walk: files and pictures in, files out.

use std::fs;
use std::io::BufWriter;
use std::path::Path;

use crate::desk::open;
use crate::desk_sent::paste;
use crate::orders::{to_be_built, typical};
use crate::picture::draft;
use crate::walk::at;
use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Screen};
use hangtrue_core::check;
use hangtrue_core::order::Order;
use hangtrue_core::profile::Profile;
use hangtrue_link::json::Id;
use hangtrue_link::json::order::{OrderFile, parse};
use hangtrue_link::qr::{Qr, Surface};
use serde_json::json;

pub(crate) fn link(order: &Order) -> Result<String> {
    hangtrue_link::url("https://dealer.example/door/", order).ok().context("a link")
}

pub(crate) fn json_file(order: &Order) -> String {
    let report = check(&order.survey, &Profile::default());
    OrderFile::new(Id::None, order, &report).text()
}

/// The code of a link in grey, `scale` dots a module, on white of that size.
pub(crate) fn picture(
    link: &str,
    scale: usize,
    (width, height): (usize, usize),
) -> Result<Vec<u8>> {
    let svg = Qr::new(link, Surface::Screen).context("a code")?.svg("code");
    let path = svg.split(" d=\"").nth(1).and_then(|rest| rest.split('"').next());
    let mut dots = vec![255; width * height];
    // `M4 5h3v1h-3z` is a run of three modules.
    for run in path.context("a path")?.split('M').skip(1) {
        let (x, rest) = run.split_once(' ').context("x")?;
        let (y, rest) = rest.split_once('h').context("y")?;
        let (length, _) = rest.split_once('v').context("a length")?;
        let (x, y, length): (usize, usize, usize) = (x.parse()?, y.parse()?, length.parse()?);
        for down in y * scale..(y + 1) * scale {
            for right in x * scale..(x + length) * scale {
                if down < height && right < width {
                    dots[down * width + right] = 0;
                }
            }
        }
    }
    Ok(dots)
}

pub(crate) fn write_png(path: &Path, dots: &[u8], (width, height): (usize, usize)) -> Result<()> {
    let file = BufWriter::new(fs::File::create(path)?);
    let mut encoder = png::Encoder::new(file, u32::try_from(width)?, u32::try_from(height)?);
    encoder.set_color(png::ColorType::Grayscale);
    encoder.write_header()?.write_image_data(dots)?;
    Ok(())
}

/// Chooses files, as a person does in the browser's own window.
pub(crate) async fn choose(browser: &Browser, files: &[&Path]) -> Result<()> {
    let paths: Vec<_> = files.iter().map(|path| path.to_string_lossy().into_owned()).collect();
    browser.find("input[type=file]").await?.send_keys(&paths.join("\n")).await?;
    Ok(())
}

/// A folder of this scenario; from now on the page keeps what it hands over as a file, and no
/// browser asks where to put it.
pub(crate) async fn folder(browser: &Browser) -> Result<tempfile::TempDir> {
    let keep = "const make = URL.createObjectURL;
        URL.createObjectURL = blob => { window.kept = blob; return make.call(URL, blob) };
        HTMLAnchorElement.prototype.click = function () { window.named = this.download }";
    browser.run(keep, Vec::new()).await?;
    Ok(tempfile::tempdir()?)
}

/// The file that was handed over under that name, put into the folder.
pub(crate) async fn downloaded(browser: &Browser, folder: &Path, name: &str) -> Result<String> {
    browser.until(&format!("window.named === {}", json!(name))).await?;
    // A text of a blob is without its byte order mark, as a reader of files has it.
    let text = browser.run("return window.kept.text()", Vec::new()).await?;
    let text = text.as_str().context("a text")?.to_owned();
    fs::write(folder.join(name), &text)?;
    Ok(text)
}

pub(crate) async fn an_order_is_saved_and_opened_again_whole(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    let folder = folder(browser).await?;
    paste(browser, &link(&typical())?).await?;
    browser.find("#sent-0").await?;
    for format in ["json", "csv", "txt"] {
        browser.tap(&format!("[data-act='save:0:{format}']")).await?;
        let name = format!("order-unit-7-blue-box.{format}");
        let text = downloaded(browser, folder.path(), &name).await?;
        match format {
            "json" => ensure!(parse(&text).is_ok_and(|(_, order)| order == typical()), "{text}"),
            "csv" => ensure!(text.contains(",92 3/16 in,101 1/2 in,9 1/2 in,1 1/4 in,"), "{text}"),
            _ => ensure!(text.contains("Post-to-post width: 92 3/16 in"), "{text}"),
        }
        browser.tap("[data-act='close:0']").await?;
        browser.until("!document.querySelector('.order')").await?;
        choose(browser, &[&folder.path().join(&name)]).await?;
        browser.find("#sent-0").await?;
        // Each of them holds the whole order: a struck reading and the note are there again.
        let shown = browser.text(".order").await?;
        for piece in ["110 9/16", "Liner inside", "Unit 7, blue box"] {
            ensure!(shown.contains(piece), "{format}: no {piece} in {shown}");
        }
    }
    Ok(())
}

pub(crate) async fn files_are_dropped_anywhere(browser: &mut Browser) -> Result<()> {
    open(browser).await?;
    let files = [json_file(&typical()), format!("see {}", link(&to_be_built())?)];
    let drop = "const data = new DataTransfer();
        arguments[0].forEach((text, at) => data.items.add(new File([text], at + '.txt')));
        const over = new DragEvent('dragover', { dataTransfer: data, bubbles: true, cancelable: true });
        document.querySelector('h1').dispatchEvent(over);
        const drop = new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true });
        document.querySelector('h1').dispatchEvent(drop);
        return [over.defaultPrevented, drop.defaultPrevented]";
    let prevented = browser.run(drop, vec![json!(files)]).await?;
    ensure!(prevented == json!([true, true]), "the browser would leave the page");
    browser.find("#sent-1").await?;
    ensure!(browser.text(".compare h2").await?.contains("reading by reading"));

    open(browser).await?;
    browser.run(drop, vec![json!(["{\"format\":\"hangtrue-order/1\",\"unit\":\"ft\"}"])]).await?;
    let told = browser.text("#paste-trouble .summary").await?;
    ensure!(told.contains("unit is \"ft\". It can be: in, mm."), "{told}");
    browser.shoot("desk-file-refused-1280").await
}

pub(crate) async fn a_code_in_a_picture(browser: &mut Browser) -> Result<()> {
    let folder = tempfile::tempdir()?;
    open(browser).await?;
    let size = (900, 700);
    for (name, dots) in [
        ("code.png", picture(&link(&typical())?, 7, size)?),
        ("reversed.png", picture(&link(&typical())?, 7, size)?.iter().map(|d| 255 - d).collect()),
    ] {
        let path = folder.path().join(name);
        write_png(&path, &dots, size)?;
        choose(browser, &[&path]).await?;
        browser.find("#sent-0").await?;
        ensure!(browser.text("#sent-0").await?.contains("Unit 7"));
        browser.tap("[data-act='close:0']").await?;
        browser.until("!document.querySelector('.order')").await?;
    }
    let blank = folder.path().join("blank.png");
    write_png(&blank, &vec![200; size.0 * size.1], size)?;
    choose(browser, &[&blank]).await?;
    let told = browser.text("#paste-trouble .summary").await?;
    ensure!(told.contains("no code in this picture"), "{told}");
    let broken = folder.path().join("broken.png");
    fs::write(&broken, "not a picture")?;
    choose(browser, &[&broken]).await?;
    browser
        .until("document.querySelector('#paste-trouble')?.innerText.includes('neither a text')")
        .await?;
    Ok(())
}

pub(crate) async fn the_walk_saves_and_opens_a_file(browser: &mut Browser) -> Result<()> {
    browser.open(Screen::PHONE, "/").await?;
    draft(browser).await?;
    let folder = folder(browser).await?;
    browser.tap("[data-act=save-file]").await?;
    let saved = downloaded(browser, folder.path(), "order-unit-7-blue-box.txt").await?;
    ensure!(saved.starts_with("W 92 3/16 H 101 1/2 header 9 1/2 bow 1 1/4 in\r\n"), "{saved}");

    browser.tap("[data-act=restart]").await?;
    at(browser, "start").await?;
    browser.run("document.querySelector('.file').scrollIntoView()", Vec::new()).await?;
    browser.shoot("start-file-360").await?;

    choose(browser, &[&folder.path().join("order-unit-7-blue-box.txt")]).await?;
    at(browser, "opened").await?;
    let shown = browser.text("main").await?;
    for piece in ["92 3/16 in", "110 9/16", "Liner inside"] {
        ensure!(shown.contains(piece), "no {piece} in {shown}");
    }
    browser.back().await?;
    at(browser, "start").await?;
    let broken = folder.path().join("broken.json");
    fs::write(&broken, "{\"format\":\"hangtrue-order/1\"}")?;
    choose(browser, &[&broken]).await?;
    at(browser, "opened").await?;
    let told = browser.text("main").await?;
    ensure!(told.contains("This file cannot be opened") && told.contains("counter desk"), "{told}");
    browser.shoot("file-refused-360").await
}
