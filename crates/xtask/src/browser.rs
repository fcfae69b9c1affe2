//! `cargo xtask browser [--engine ENGINE] [NAME]`: the browser tests alone, all or those whose name
//! holds NAME, in all engines or in one.

use std::fs;

use anyhow::{Result, bail};

use crate::sh::{self, say};
use crate::site::Site;
use crate::{build, dist};

/// An engine's name, the programs that drive it, and the Debian package of each.
type Engine = (&'static str, &'static [(&'static str, &'static str)]);

const ENGINES: [Engine; 3] = [
    ("chromium", &[("chromium", "chromium"), ("chromedriver", "chromium-driver")]),
    ("firefox", &[("firefox", "firefox-esr")]),
    // Without a headless mode it needs a display, and without a desktop somebody to say what is
    // preferred: dark, still, more contrast.
    (
        "webkit",
        &[("WebKitWebDriver", "webkit2gtk-driver"), ("Xvfb", "xvfb"), ("xsettingsd", "xsettingsd")],
    ),
];

/// Pictures and text of what the browser prints.
const PAPER: (&str, &str) = ("pdftoppm", "poppler-utils");

/// For what the tests have from there.
const NPM: (&str, &str) = ("npm", "npm");

/// The accessibility rules, and a second reader of codes; each with its folder, which holds its
/// lock file.
const NPM_PACKAGES: [(&str, &str); 2] = [("axe-core", "axe"), ("jsqr", "jsqr")];

/// Firefox's driver, which Debian lacks, is a crate.
const GECKODRIVER: (&str, &str) = ("geckodriver", "0.37.1");

/// Builds the site and runs the scenarios whose names hold the word; without one, all.
///
/// # Errors
/// When a program is lacking, the site does not build, or a scenario fails.
pub(crate) fn run(words: &[&str]) -> Result<()> {
    let (engine, words) = match words {
        ["--engine", name, rest @ ..] => (Some(*name), rest),
        ["--engine"] => bail!("--engine takes a name: {}", names()),
        _ => (None, words),
    };
    install(engine)?;
    test(&Site::build()?, engine, words)
}

fn names() -> String {
    ENGINES.map(|(name, _)| name).join(", ")
}

/// Runs the scenarios on a built site, in one engine or in all.
///
/// # Errors
/// When the site cannot be written, or a scenario fails.
pub(crate) fn test(site: &Site, engine: Option<&str>, words: &[&str]) -> Result<()> {
    dist::write(site)?;
    build_probe()?;
    if words.is_empty() || words.iter().any(|word| REACT.contains(word)) {
        build_react()?;
    }
    let arguments = [&["test", "--package=hangtrue-browser", "--"], words].concat();
    sh::run(sh::cargo(&arguments).envs(engine.map(|name| ("HANGTRUE_ENGINE", name))))
}

/// The scenario that needs the React page.
const REACT: &str = "embed_host::in_a_react_page";

/// The demo's React page, from npm as its lock file has it: `target/demo-react/`.
fn build_react() -> Result<()> {
    let folder = sh::root().join("demo/hosts/react");
    for words in [&["ci", "--ignore-scripts"][..], &["run", "build"]] {
        sh::run(sh::command("npm", words).current_dir(&folder))?;
    }
    Ok(())
}

/// The patcher alone, for its scenarios: `target/patch-probe/`.
fn build_probe() -> Result<()> {
    let built = build::module("hangtrue-patch-probe")?;
    let folder = sh::root().join("target/patch-probe");
    fs::create_dir_all(&folder)?;
    fs::write(folder.join("patch.js"), built.glue)?;
    fs::write(folder.join(built.wasm_name), built.wasm)?;
    Ok(())
}

/// Installs what the tests in one engine or in all lack, when this may be done; otherwise says the
/// line to type.
///
/// # Errors
/// When it may not be done, or fails.
pub(crate) fn install(engine: Option<&str>) -> Result<()> {
    let wanted: Vec<Engine> =
        ENGINES.into_iter().filter(|(name, _)| engine.is_none_or(|it| it == *name)).collect();
    if wanted.is_empty() {
        bail!("`{}` is not an engine: use one of {}", engine.unwrap_or_default(), names());
    }
    let programs = wanted.iter().flat_map(|(_, programs)| *programs).chain([&PAPER, &NPM]);
    let lacking: Vec<&str> = programs
        .filter(|(program, _)| !sh::is_installed(program))
        .map(|(_, package)| *package)
        .collect();
    if !lacking.is_empty() {
        install_packages(&lacking)?;
    }
    if wanted.iter().any(|(name, _)| *name == "firefox") {
        install_geckodriver()?;
    }
    NPM_PACKAGES.into_iter().try_for_each(|(package, folder)| install_from_npm(package, folder))
}

/// A package of the tests, at the version that its folder's lock file holds.
fn install_from_npm(package: &str, folder: &str) -> Result<()> {
    let folder = sh::root().join("tests/browser").join(folder);
    let version = |file: &str, place: &str| {
        let text = fs::read_to_string(folder.join(file)).ok()?;
        let json: serde_json::Value = serde_json::from_str(&text).ok()?;
        json.pointer(place)?.as_str().map(str::to_owned)
    };
    let wanted = version("package.json", &format!("/dependencies/{package}"));
    let installed = version(&format!("node_modules/{package}/package.json"), "/version");
    if wanted.is_some() && installed == wanted {
        return Ok(());
    }
    let mut npm = sh::command("npm", &["ci", "--no-audit", "--no-fund", "--prefix"]);
    sh::run(npm.arg(folder))
}

/// The one program that the checks of `dist/embed/` need.
///
/// # Errors
/// When it may not be installed, or that fails.
pub(crate) fn install_npm() -> Result<()> {
    let (program, package) = NPM;
    if sh::is_installed(program) { Ok(()) } else { install_packages(&[package]) }
}

fn install_packages(lacking: &[&str]) -> Result<()> {
    // Without a font a headless browser draws no text, and no width is what it will be.
    let packages = [lacking, &["fonts-dejavu-core"]].concat();
    let is_root = sh::output(&mut sh::command("id", &["--user"])).is_ok_and(|id| id.trim() == "0");
    if !is_root || !sh::is_installed("apt-get") {
        bail!(
            "the browser tests lack {}; install them and run this again:\n  \
             sudo apt-get install --yes --no-install-recommends {}",
            lacking.join(", "),
            packages.join(" ")
        );
    }
    say!("installing {}", packages.join(", "));
    let lock = "--option=DPkg::Lock::Timeout=500";
    sh::run(&mut sh::command("apt-get", &["update", lock]))?;
    let mut words = vec!["install", "--yes", "--no-install-recommends", lock];
    words.extend(packages);
    sh::run(sh::command("apt-get", &words).env("DEBIAN_FRONTEND", "noninteractive"))
}

/// Builds it once, into `target/drivers/`, unless there is one already.
fn install_geckodriver() -> Result<()> {
    let (name, version) = GECKODRIVER;
    let root = sh::root().join("target/drivers");
    if sh::is_installed(name) || root.join("bin").join(name).is_file() {
        return Ok(());
    }
    say!("building {name} {version}, once: some two minutes");
    let mut cargo = sh::cargo(&["install", "--locked", "--debug", "--quiet", "--version", version]);
    sh::run(cargo.arg("--root").arg(root).arg(name))
}
