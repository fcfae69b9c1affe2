//! The static site: every file, its bytes and its name.
//!
//! Sources are `web/` and the built page. A file refers to another by its quoted source name
//! (`"main.js"`, `"style.css"`, `"icons/icon.svg"`); the build puts the hashed name there, so a file
//! is only ever fetched in the version its referrer was built with. The pages keep their names and
//! have two more places each: `{{policy}}` and `{{screen}}`. `worker.js` keeps its own for ever; it
//! gets the name of the build and the list of its files.

use std::fs;
use std::path::Path;

use anyhow::{Context as _, Result, bail};
use sha2::{Digest as _, Sha256};

use hangtrue_page::Environment;
use hangtrue_page::builder::{self, Given};

use crate::build::{self, Built};
use crate::sh::{self, say};
use crate::{embed, reproduce, style};

/// What the page may load and do. `'wasm-unsafe-eval'` lets it compile its own module, nothing else.
/// The browser never parses markup; the one Trusted Types policy is for the address of the worker.
const POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; \
    img-src 'self' data:; connect-src 'self'; manifest-src 'self'; worker-src 'self'; \
    base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; \
    trusted-types hangtrue-worker";

/// The second module of the walk.
const REST: &str = "hangtrue_rest.wasm";
/// The pages beside the walk: the name of each, the feature it is built with, and its own
/// style sheets, which come with it only.
const BESIDE: [(&str, &[&str]); 2] = [
    ("desk", &["style/desk.css", "style/many.css"]),
    ("hang", &["style/drawing-hang.css", "style/hang.css"]),
];
/// Starts each of them.
const BESIDE_SCRIPT: &str = "beside.js";
const DEALER_SCRIPT: &str = "dealer.js";
/// Comes with every page but the builder's, which is used where there is a network.
const OFFLINE_SCRIPT: &str = "offline.js";
/// Comes with every page, first: what is said where the module cannot say it.
const FAULT_SCRIPT: &str = "fault.js";
/// Comes with the pages that a dealer's rules can be given to.
const RULES_SCRIPT: &str = "rules.js";
const RULED: [&str; 2] = [DEALER_SCRIPT, BESIDE_SCRIPT];
const BUILDER_SCRIPT: &str = "builder.js";
const BUILDER_STYLE: &str = "style/builder.css";
/// What every screen is built of, and its drawings.
const FIRST_STYLES: [&str; 2] = ["style/base.css", "style/drawing.css"];
/// What the screens behind the four dimensions show. The walk asks for it with its second
/// module; see web/main.js.
const LATER_STYLES: [&str; 2] = ["style/handover.css", "style/later.css"];
/// Colours on paper, and the sheet of an order. Browsers bring them behind all that the screen needs.
pub(crate) const PRINT_STYLE: &str = "style/print.css";
const PAPER_STYLE: &str = "style/paper.css";

/// A file of the site.
pub(crate) struct File {
    /// Path inside the site, `/` between folders.
    pub(crate) name: String,
    /// What the browser gets.
    pub(crate) bytes: Vec<u8>,
}

impl File {
    /// The name's ending, without the dot.
    pub(crate) fn extension(&self) -> &str {
        self.name.rsplit_once('.').map_or("", |(_, end)| end)
    }

    /// The media type to serve it as.
    pub(crate) fn media_type(&self) -> &'static str {
        match self.extension() {
            "html" => "text/html; charset=utf-8",
            "css" => "text/css; charset=utf-8",
            "js" => "text/javascript; charset=utf-8",
            "wasm" => "application/wasm",
            "svg" => "image/svg+xml",
            "png" => "image/png",
            "webmanifest" => "application/manifest+json",
            "json" => "application/json",
            _ => "application/octet-stream",
        }
    }
}

/// All files of the site.
pub(crate) struct Site {
    files: Vec<File>,
}

impl Site {
    /// Builds the page and lays the site out.
    ///
    /// # Errors
    /// When the page does not compile, or a file under `web/` is missing or names one that is.
    pub(crate) fn build() -> Result<Self> {
        let (walk, rest) = build::halves("hangtrue-web")?;
        let mut beside = Vec::new();
        for (page, _) in BESIDE {
            let name = format!("hangtrue_{page}");
            beside.push(build::variant("hangtrue-web", Some(page), &name)?);
        }
        let survey = build::variant("hangtrue-web", Some("embed"), "hangtrue_survey")?;
        let builder = build::variant("hangtrue-web", Some("builder"), "hangtrue_builder")?;
        say!("laying out the site");
        let web = sh::root().join("web");
        let mut press = lay_out(&web, &walk, rest, &beside)?;
        press.files.extend(embed::files(&web, &survey)?);
        press.add_dealer(&web)?;
        press.add_builder(&web, &builder)?;
        reproduce::names_no_folder(&press.files)?;
        Ok(Self { files: press.files })
    }

    /// The files, in the order they were laid out.
    pub(crate) fn files(&self) -> &[File] {
        &self.files
    }

    /// The file of that name.
    pub(crate) fn file(&self, name: &str) -> Option<&File> {
        self.files.iter().find(|file| file.name == name)
    }
}

fn lay_out(web: &Path, walk: &Built, rest: Vec<u8>, beside: &[Built]) -> Result<Press> {
    let mut press = Press::default();
    for name in names_in(web, "icons")? {
        let bytes = fs::read(web.join(&name)).with_context(|| format!("cannot read web/{name}"))?;
        press.add(&name, bytes);
    }
    let offline = read(web, OFFLINE_SCRIPT)?;
    let boot_of = |name: &str| anyhow::Ok(with_fault(web, name)? + &offline);
    let (boot, boot_beside) = (boot_of("main.js")?, boot_of(BESIDE_SCRIPT)?);
    for ((page, sheets), built) in BESIDE.iter().zip(beside) {
        press.add(&built.wasm_name, built.wasm.clone());
        press.add_text(&format!("{page}.js"), &script(&built.glue, &boot_beside, "hangtrue_web")?);
        press.add_style(web, &format!("{page}.css"), sheets)?;
    }
    press.add(&walk.wasm_name, walk.wasm.clone());
    press.add(REST, rest);
    press.add_style(web, "style.css", &FIRST_STYLES)?;
    press.add_style(web, "later.css", &LATER_STYLES)?;
    press.add_text("main.js", &script(&walk.glue, &boot, "hangtrue_web")?);
    press.add_style(web, "print.css", &[PRINT_STYLE, PAPER_STYLE])?;
    press.add_text("manifest.webmanifest", &read(web, "manifest.webmanifest")?);
    // The page refers to those beside it, and they to the page's folder.
    press.add_page(web, "desk.html", &hangtrue_page::desk::first_screen())?;
    press.add_page(web, "hang.html", &hangtrue_page::hang::first_screen())?;
    press.add_page(web, "index.html", &hangtrue_page::first_screen())?;
    press.add_worker(web)?;
    Ok(press)
}

/// Gives files their hashed names and remembers them.
#[derive(Default)]
struct Press {
    files: Vec<File>,
    names: Vec<(String, String)>,
}

impl Press {
    /// Adds a text, in which the names of files added before become their hashed names.
    fn add_text(&mut self, source: &str, text: &str) {
        let text = self.with_hashed_names(text);
        self.add(source, text.into_bytes());
    }

    /// Adds style sheets as one.
    fn add_style(&mut self, web: &Path, name: &str, sheets: &[&str]) -> Result<()> {
        let sheets = sheets.iter().map(|name| read(web, name)).collect::<Result<Vec<String>>>()?;
        self.add_text(name, &style::minify(&sheets.join("\n")));
        Ok(())
    }

    fn add(&mut self, source: &str, bytes: Vec<u8>) {
        let (stem, end) = source.rsplit_once('.').unwrap_or((source, ""));
        let stem = stem.replace(['/', '_'], "-");
        let name = format!("{stem}-{}.{end}", short_hash(&Sha256::digest(&bytes)));
        self.names.push((source.to_owned(), name.clone()));
        self.files.push(File { name, bytes });
    }

    /// Adds the page by a dealer's rules: the walk's page with the element's module.
    fn add_dealer(&mut self, web: &Path) -> Result<()> {
        let file = |end| format!("{}/{}", embed::FOLDER, embed::script_name().replace(".js", end));
        let script = embed::short(&(with_fault(web, DEALER_SCRIPT)? + &read(web, OFFLINE_SCRIPT)?))
            .replace("{{glue}}", &format!("./{}", file(".glue.js")))
            .replace("{{wasm}}", &file(".wasm"));
        self.add_text(DEALER_SCRIPT, &script);
        self.add_page(web, "dealer.html", &hangtrue_page::first_screen())
    }

    /// Adds the builder's page, whose form is drawn before any script has run, beside the
    /// element that it shows.
    fn add_builder(&mut self, web: &Path, built: &Built) -> Result<()> {
        self.add(&built.wasm_name, built.wasm.clone());
        let boot = with_fault(web, BUILDER_SCRIPT)?;
        self.add_text(BUILDER_SCRIPT, &script(&built.glue, &boot, "hangtrue_builder")?);
        self.add_text("builder.css", &style::minify(&read(web, BUILDER_STYLE)?));
        let text = |name: &str| {
            let name = format!("{}/{name}", embed::FOLDER);
            let found = self.files.iter().find(|file| file.name == name);
            let found = found.with_context(|| format!("{name} is not laid out"))?;
            Ok::<_, anyhow::Error>(String::from_utf8(found.bytes.clone())?)
        };
        let schema = text(embed::PROFILE_SCHEMA)?;
        let snippet = text(embed::SNIPPET)?;
        let element = embed::script_name();
        let integrity = embed::integrity(text(&element)?.as_bytes());
        let given = Given { schema, snippet };
        let screen = builder::view(&builder::Model::new(Environment::default(), &given));
        let places =
            [("{{element}}", format!("{}/{element}", embed::FOLDER)), ("{{integrity}}", integrity)];
        self.add_page_with(web, "builder.html", &screen, &places)
    }

    /// Adds a page under its own name, with its first screen in it.
    fn add_page(&mut self, web: &Path, name: &str, screen: &str) -> Result<()> {
        self.add_page_with(web, name, screen, &[])
    }

    fn add_page_with(
        &mut self,
        web: &Path,
        name: &str,
        screen: &str,
        places: &[(&str, String)],
    ) -> Result<()> {
        let mut html = self
            .with_hashed_names(&read(web, name)?)
            .replace("{{policy}}", POLICY)
            .replace("{{screen}}", screen);
        for (place, text) in places {
            html = html.replace(place, text);
        }
        every_reference_is_there(&html, name, self)?;
        self.files.push(File { name: name.to_owned(), bytes: html.into_bytes() });
        Ok(())
    }

    /// Adds the worker that keeps all files added before.
    fn add_worker(&mut self, web: &Path) -> Result<()> {
        let mut build = Sha256::new();
        for file in &self.files {
            build.update(&file.name);
            build.update(&file.bytes);
        }
        let build = short_hash(&build.finalize());
        let files: Vec<&str> = self.files.iter().map(|file| file.name.as_str()).collect();
        let worker = embed::short(&read(web, "worker/worker.js")?)
            .replace("{{build}}", &format!("hangtrue-{build}"))
            .replace("{{files}}", &files.join(" "));
        self.files.push(File { name: "worker.js".to_owned(), bytes: worker.into_bytes() });
        Ok(())
    }

    fn with_hashed_names(&self, text: &str) -> String {
        let mut text = text.to_owned();
        for (source, name) in &self.names {
            for quote in ['"', '\''] {
                text = text
                    .replace(&format!("{quote}{source}{quote}"), &format!("{quote}{name}{quote}"));
            }
        }
        text
    }
}

/// The first eight bytes of a hash, in hexadecimal: enough to tell two versions of a file apart.
fn short_hash(hash: &[u8]) -> String {
    hash.iter().take(8).map(|byte| format!("{byte:02x}")).collect()
}

/// The boot lines behind the glue of a module, as one module: one request fewer, no bundler.
fn script(glue: &str, boot: &str, module: &str) -> Result<String> {
    let from = format!(" from \"./{module}.js\";");
    let import = boot.lines().find(|line| line.ends_with(&from)).unwrap_or(&from);
    let export = "export { initSync, __wbg_init as default };";
    if glue.matches(export).count() != 1 {
        bail!("the glue does not end in `{export}`: wasm-bindgen has changed, see xtask's site.rs");
    }
    if boot.matches(import).count() != 1 {
        bail!("the boot script must import once from: {from}");
    }
    let glue = glue.replace(export, "const init = __wbg_init;");
    Ok(embed::short(&format!("{glue}{}", boot.replace(import, ""))))
}

/// Every `href` and `src` must be a file of the site, its folder or a fragment: a 404 is found here.
fn every_reference_is_there(html: &str, page: &str, press: &Press) -> Result<()> {
    for attribute in [" href=\"", " src=\""] {
        for part in html.split(attribute).skip(1) {
            let target = part.split('"').next().unwrap_or_default();
            let known = target.starts_with('#')
                || target == "./"
                || target.starts_with("data:")
                || press.files.iter().any(|file| file.name == target);
            if !known {
                bail!("web/{page} refers to `{target}`, which is not a file of the site");
            }
        }
    }
    Ok(())
}

/// The walk's style sheets for the screen, in order.
pub(crate) fn sheets(web: &Path) -> Result<Vec<String>> {
    FIRST_STYLES.iter().chain(&LATER_STYLES).map(|name| read(web, name)).collect()
}

fn with_fault(web: &Path, script: &str) -> Result<String> {
    let mut all = read(web, FAULT_SCRIPT)?;
    if RULED.contains(&script) {
        all += &read(web, RULES_SCRIPT)?;
    }
    Ok(all + &read(web, script)?)
}

pub(crate) fn read(web: &Path, name: &str) -> Result<String> {
    fs::read_to_string(web.join(name)).with_context(|| format!("cannot read web/{name}"))
}

/// The names of a folder's files, as `folder/file`, in order.
fn names_in(web: &Path, folder: &str) -> Result<Vec<String>> {
    let mut names = Vec::new();
    let path = web.join(folder);
    for entry in fs::read_dir(&path).with_context(|| format!("cannot read web/{folder}"))? {
        let name = entry?.file_name();
        names.push(format!("{folder}/{}", name.to_string_lossy()));
    }
    names.sort();
    Ok(names)
}
