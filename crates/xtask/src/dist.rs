//! `cargo xtask dist`: writes the static site to `dist/`.

use std::fs;
use std::path::PathBuf;

use anyhow::{Context as _, Result};

use crate::sh::{self, say};
use crate::site::Site;
use crate::supply::sbom;

/// The folder's name in the tree.
pub(crate) const NAME: &str = "dist";

/// Where the site is written. Wiped first: a hashed name of an earlier build must not stay.
pub(crate) fn folder() -> PathBuf {
    sh::root().join(NAME)
}

/// Builds the site and writes it.
///
/// # Errors
/// When the build fails or the folder cannot be written.
pub(crate) fn run(arguments: &[&str]) -> Result<()> {
    crate::no_arguments(arguments)?;
    write(&Site::build()?)
}

/// Writes a built site.
pub(crate) fn write(site: &Site) -> Result<()> {
    let folder = folder();
    if folder.exists() {
        fs::remove_dir_all(&folder)
            .with_context(|| format!("cannot empty {}", folder.display()))?;
    }
    for file in site.files() {
        let path = folder.join(&file.name);
        if let Some(parent) = path.parent() {
            fs::create_dir_all(parent)
                .with_context(|| format!("cannot make {}", parent.display()))?;
        }
        fs::write(&path, &file.bytes)
            .with_context(|| format!("cannot write {}", path.display()))?;
    }
    let bill = folder.join(sbom::NAME);
    fs::write(&bill, sbom::text(site.files())?)
        .with_context(|| format!("cannot write {}", bill.display()))?;
    say!(
        "wrote {} files to dist/, and {} that says what is in them",
        site.files().len(),
        sbom::NAME
    );
    Ok(())
}
