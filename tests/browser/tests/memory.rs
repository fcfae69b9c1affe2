//! A device that has no more memory: the module's own is given an end, as an engine would.

use std::path::Path;

use anyhow::{Context as _, Result, ensure};
use hangtrue_browser::{Browser, Screen, Site, root};

use crate::faults::{FAULT, WIDTH, only, traps};
use crate::walk::at;

/// A number in LEB128 (WebAssembly Core Specification 2.0, 5.2.2), and what stands behind it.
fn number(bytes: &[u8]) -> Result<(usize, &[u8])> {
    let end = bytes.iter().position(|byte| byte & 0x80 == 0).context("a number without an end")?;
    let (own, rest) = bytes.split_at(end + 1);
    let value = own.iter().rev().fold(0, |value, byte| value << 7 | usize::from(byte & 0x7f));
    Ok((value, rest))
}

fn written(mut value: usize) -> Vec<u8> {
    let mut bytes = Vec::new();
    loop {
        let low = (value & 0x7f) as u8;
        value >>= 7;
        bytes.push(if value == 0 { low } else { low | 0x80 });
        if value == 0 {
            return bytes;
        }
    }
}

/// The module, its memory never larger than `more` pages of 64 KiB above what it begins with.
fn limited(module: &[u8], more: usize) -> Result<Vec<u8>> {
    const MEMORY: u8 = 5;
    let (mut out, mut rest) = (module[..8].to_vec(), &module[8..]);
    let mut found = false;
    while let [id, behind @ ..] = rest {
        let (length, behind) = number(behind)?;
        let (section, next) = behind.split_at(length);
        let mut section = section.to_vec();
        if *id == MEMORY {
            let [1, 0, least @ ..] = section.as_slice() else {
                anyhow::bail!("not one memory without an end: {section:?}")
            };
            let (least, _) = number(least)?;
            section = [vec![1, 1], written(least), written(least + more)].concat();
            found = true;
        }
        out.push(*id);
        out.extend(written(section.len()));
        out.extend(section);
        rest = next;
    }
    ensure!(found, "the module has no memory of its own");
    Ok(out)
}

/// The site as built, but that the walk's module has that much memory.
fn site(folder: &Path, more: usize) -> Result<Site> {
    for file in std::fs::read_dir(root().join("dist"))? {
        let file = file?;
        let name = file.file_name();
        let name = name.to_str().context("a file name that is no text")?;
        if name.starts_with("hangtrue-web-bg-") {
            std::fs::write(folder.join(name), limited(&std::fs::read(file.path())?, more)?)?;
        } else if file.file_type()?.is_file() {
            std::fs::copy(file.path(), folder.join(name))?;
        }
    }
    Ok(Site::default().folder("/", folder.to_owned()).text("/worker.js", ""))
}

/// More is typed than the device can hold: the page says that it has stopped, and the draft is
/// there again.
pub(crate) async fn its_end_is_told_and_the_draft_is_safe(browser: &mut Browser) -> Result<()> {
    let folder = tempfile::tempdir()?;
    browser.serve(site(folder.path(), 16)?).await?;
    browser.open(Screen::PHONE, "/#/width").await?;
    browser.find("#app[data-ready]").await?;
    browser.tap("[id='width.middle']").await?;
    browser.type_keys("92 3/16").await?;
    browser.until(&format!("{WIDTH} === '92 3/16'")).await?;
    let flood = "const field = document.getElementById('width.low');
        field.value = '9'.repeat(4e6);
        field.dispatchEvent(new Event('input', { bubbles: true }))";
    browser.run(flood, Vec::new()).await?;
    browser.find("#fault").await?;
    only(browser, traps).await?;
    let told = browser.value(FAULT).await?.to_string();
    ensure!(told.contains("has stopped") && told.contains("is kept on this device"), "{told}");
    browser.shoot("fault-memory").await?;
    browser.tap("#fault .primary").await?;
    browser.find("#app[data-ready]").await?;
    at(browser, "width").await?;
    ensure!(browser.value(WIDTH).await? == "92 3/16");
    // The page was told of its end too, and what had stopped could not hear it.
    only(browser, traps).await
}
