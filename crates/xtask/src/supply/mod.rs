//! What others wrote: which of it ships, and what that must be like.

mod audit;
mod policy;
pub(crate) mod sbom;

pub(crate) use audit::run;

use anyhow::{Context as _, Result};

use crate::sh;

/// A crate in the graph of one that ships.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Package {
    /// Its name.
    pub(crate) name: String,
    /// Its version.
    pub(crate) version: String,
    /// Its licence, as it says.
    pub(crate) licence: String,
    /// Whether it runs while compiling and is in nothing that ships.
    pub(crate) compiles: bool,
    /// Whether it is ours.
    pub(crate) ours: bool,
    /// The names and versions of what it needs.
    pub(crate) needs: Vec<(String, String)>,
}

/// `package` and all that it is built from for `platform`, without what only tests need.
///
/// # Errors
/// When cargo cannot tell.
pub(crate) fn shipped(package: &str, platform: Option<&str>) -> Result<Vec<Package>> {
    let mut cargo =
        sh::cargo(&["tree", "--quiet", "--locked", "--edges=normal,build", "--all-features"]);
    cargo.args(["--prefix=depth", "--format=|{p}|{l}|", "--package", package]);
    cargo.args(platform.map(|platform| format!("--target={platform}")));
    read(&sh::output(&mut cargo)?)
}

/// Lines of `DEPTH|NAME vVERSION (WHERE)|LICENCE|`, depth first.
fn read(tree: &str) -> Result<Vec<Package>> {
    let mut packages: Vec<Package> = Vec::new();
    // The way from the root to the line before, and whether it went through a macro.
    let mut way: Vec<(usize, bool)> = Vec::new();
    for line in tree.lines() {
        let told = || format!("`cargo tree` says `{line}`");
        let mut fields = line.split('|');
        let mut next = || fields.next().with_context(told);
        let (depth, about, licence) = (next()?.parse::<usize>()?, next()?, next()?);
        way.truncate(depth);
        let (name, about) = about.split_once(" v").with_context(told)?;
        let (version, about) = about.split_once(' ').unwrap_or((about, ""));
        let compiles = about.contains("(proc-macro)") || way.last().is_some_and(|above| above.1);
        let known = packages.iter().position(|it| it.name == name && it.version == version);
        let at = known.unwrap_or(packages.len());
        if known.is_none() {
            packages.push(Package {
                name: name.to_owned(),
                version: version.to_owned(),
                licence: licence.to_owned(),
                compiles,
                ours: about.starts_with("(/"),
                needs: Vec::new(),
            });
        }
        let above = way.last().and_then(|(above, _)| packages.get_mut(*above));
        let need = (name.to_owned(), version.to_owned());
        if let Some(above) = above.filter(|above| !above.needs.contains(&need)) {
            above.needs.push(need);
        }
        if let Some(package) = packages.get_mut(at) {
            package.compiles &= compiles;
        }
        way.push((at, compiles));
    }
    packages.sort();
    packages.iter_mut().for_each(|package| package.needs.sort());
    Ok(packages)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tree_is_read_with_what_only_compiles() {
        let tree = "0|ours v0.1.0 (/ours)|MIT|\n1|a v1.0.0|MIT|\n2|m v2.0.0 (proc-macro)|MIT|\n\
            3|q v1.1.0|MIT OR ISC|\n1|q v1.1.0|MIT OR ISC| (*)\n";
        let packages = read(tree).unwrap();
        let told: Vec<_> =
            packages.iter().map(|it| (it.name.as_str(), it.compiles, it.needs.len())).collect();
        // `q` is in what ships too, by another way.
        assert_eq!(told, [("a", false, 1), ("m", true, 1), ("ours", false, 2), ("q", false, 0)]);
        assert!(packages.iter().all(|it| it.ours == (it.name == "ours")));
    }
}
