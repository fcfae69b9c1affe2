//! `dist/embed/`: the walk as an element for other sites, and all that a webmaster needs
//! to use it: types, manifest, hashes, schemas, the lines to paste.

mod papers;
pub(crate) mod style;
pub(crate) mod tools;
mod types;

use std::path::Path;

use anyhow::Result;
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use hangtrue_link::json::{order, profile};
use sha2::{Digest as _, Sha384};

use crate::build::Built;
use crate::site::{File, PRINT_STYLE, read, sheets};
use crate::style::minify;

/// The folder in the site.
pub(crate) const FOLDER: &str = "embed";

/// The version that stands in the script's name.
pub(crate) const VERSION: &str = env!("CARGO_PKG_VERSION");

/// The schema of profiles, from which the builder is made.
pub(crate) const PROFILE_SCHEMA: &str = "hangtrue-profile-1.schema.json";

/// The lines to paste.
pub(crate) const SNIPPET: &str = "snippet.html";

/// The element's script.
pub(crate) fn script_name() -> String {
    format!("hangtrue-survey-{VERSION}.js")
}

/// What the host page of the element allows at least: nothing of it is `unsafe-inline`.
/// `HOST` stands for where the files are served from.
pub(crate) const HOST_POLICY: &str = "default-src 'none'; script-src HOST 'wasm-unsafe-eval'; \
    connect-src HOST; style-src 'none'; require-trusted-types-for 'script'";

/// A file's name and its hash, as `integrity` wants it.
pub(crate) struct Hashed {
    pub(crate) name: String,
    pub(crate) integrity: String,
}

/// The hash of `bytes`, as `integrity` wants it.
pub(crate) fn integrity(bytes: &[u8]) -> String {
    format!("sha384-{}", STANDARD.encode(Sha384::digest(bytes)))
}

/// All files of the folder.
///
/// # Errors
/// When a file under `web/embed/` is missing, or the glue is not what it was.
pub(crate) fn files(web: &Path, built: &Built) -> Result<Vec<File>> {
    let sheet = [read(web, "embed/survey.css")?, sheet_of(web)?].concat();
    let wasm = with_section(&built.wasm, "style", minify(&sheet).as_bytes());
    let wasm_hash = integrity(&wasm);
    let wasm_name = format!("hangtrue-survey-{VERSION}.wasm");
    let glue = built.glue.as_str();
    let glue_name = format!("hangtrue-survey-{VERSION}.glue.js");
    let glue_hash = integrity(glue.as_bytes());
    let script = short(&read(web, "embed/survey.js")?)
        .replace("{{version}}", VERSION)
        .replace("{{glue}}", &glue_name)
        .replace("{{glue-integrity}}", &glue_hash)
        .replace("{{wasm}}", &wasm_name)
        .replace("{{integrity}}", &wasm_hash);
    let script_name = script_name();
    let hashes = [
        Hashed { integrity: integrity(script.as_bytes()), name: script_name.clone() },
        Hashed { integrity: glue_hash, name: glue_name.clone() },
        Hashed { integrity: wasm_hash, name: wasm_name.clone() },
    ];
    let schemas = [
        ("hangtrue-order-1.schema.json", order::schema().to_value()),
        (PROFILE_SCHEMA, profile::schema().to_value()),
    ];
    let mut files = vec![
        (wasm_name, wasm),
        (glue_name, glue.as_bytes().to_vec()),
        (script_name.clone(), script.into_bytes()),
        ("custom-elements.json".to_owned(), papers::manifest(&script_name)?.into_bytes()),
        ("hangtrue-survey.d.ts".to_owned(), types::declarations()?.into_bytes()),
        ("package.json".to_owned(), papers::package(&script_name)?.into_bytes()),
        ("integrity.json".to_owned(), papers::hashes(&hashes)?.into_bytes()),
        (SNIPPET.to_owned(), papers::snippet(&hashes).into_bytes()),
    ];
    for (name, schema) in schemas {
        files.push((name.to_owned(), serde_json::to_vec_pretty(&schema)?));
    }
    let frame_script = short(&read(web, "embed/frame.js")?);
    let frame = read(web, "embed/frame.html")?
        .replace(
            "{{policy}}",
            &HOST_POLICY.replace("HOST", "'self'").replace(
                "style-src 'none'",
                "style-src 'self'; img-src data:; base-uri 'none'; form-action 'none'",
            ),
        )
        .replace("{{script}}", &script_name)
        .replace("{{integrity}}", &hashes[0].integrity);
    files.push(("frame.html".to_owned(), frame.into_bytes()));
    files.push(("frame.js".to_owned(), frame_script.into_bytes()));
    files.push(("frame.css".to_owned(), minify(&read(web, "embed/frame.css")?).into_bytes()));
    files.push((
        "frame-height.js".to_owned(),
        short(&read(web, "embed/frame-height.js")?).into_bytes(),
    ));
    let named = |(name, bytes)| File { name: format!("{FOLDER}/{name}"), bytes };
    Ok(files.into_iter().map(named).collect())
}

/// The page's sheets, for a shadow root, without the sheet of an order: an element prints none.
fn sheet_of(web: &Path) -> Result<String> {
    Ok(style::for_shadow(&(sheets(web)?.join("\n") + "\n" + &read(web, PRINT_STYLE)?)))
}

/// Without comments of their own line, and without indentation.
pub(crate) fn short(script: &str) -> String {
    let mut out = String::with_capacity(script.len());
    let mut comment = false;
    for line in script.lines() {
        let line = line.trim();
        comment |= line.starts_with("/*");
        if !comment && !line.is_empty() && !line.starts_with("//") {
            out.push_str(line);
            out.push('\n');
        }
        comment &= !line.ends_with("*/");
    }
    out
}

/// `module` with a custom section of `name` behind it (WebAssembly core, 5.5.3).
fn with_section(module: &[u8], name: &str, contents: &[u8]) -> Vec<u8> {
    let mut body = leb128(name.len());
    body.extend_from_slice(name.as_bytes());
    body.extend_from_slice(contents);
    let mut out = module.to_vec();
    out.push(0);
    out.extend(leb128(body.len()));
    out.extend(body);
    out
}

fn leb128(mut number: usize) -> Vec<u8> {
    let mut bytes = Vec::new();
    loop {
        let low = u8::try_from(number & 0x7f).unwrap_or_default();
        number >>= 7;
        if number == 0 {
            bytes.push(low);
            return bytes;
        }
        bytes.push(low | 0x80);
    }
}
