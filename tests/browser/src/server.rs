//! A static file server that can be taken away.
//!
//! One request a connection: a server that is stopped must be gone at once, and a connection kept
//! alive would outlive it.

use std::collections::BTreeMap;
use std::io::{BufRead as _, BufReader, Write as _};
use std::net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream};
use std::path::{Component, Path, PathBuf};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex, PoisonError};
use std::thread::JoinHandle;
use std::time::Duration;

use anyhow::{Context as _, Result, bail};
use flate2::Compression;
use flate2::write::GzEncoder;

/// What to serve.
#[derive(Clone, Debug, Default)]
pub struct Site {
    folders: Vec<(String, PathBuf)>,
    texts: BTreeMap<String, String>,
    headers: Vec<(String, String)>,
    collects: bool,
    compresses: bool,
}

/// Put first into every page, where an engine's console can be heard only from inside: what it
/// would say is kept in the tab. Before the page's own policy, so no policy stops it.
const COLLECTOR: &str = "<script nonce=collector>{
    const key = 'console', own = sessionStorage;
    const get = own.getItem.bind(own), set = own.setItem.bind(own);
    const keep = line => set(key, JSON.stringify([...JSON.parse(get(key) ?? '[]'), `${line}`]));
    for (const level of ['error', 'warn']) {
        const say = console[level].bind(console);
        console[level] = (...words) => { keep(words.join(' ')); say(...words); };
    }
    // What a page no longer loads because it is left is no fault of it.
    let left = false;
    addEventListener('beforeunload', () => { left = true; });
    addEventListener('error', ({ message, target }) => {
        if (message || !left) keep(message ?? `not loaded: ${target.src ?? target.href}`);
    }, true);
    addEventListener('unhandledrejection', ({ reason }) => keep(reason));
    addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => {
        // The icon that a browser asks for by itself.
        if (!blockedURI.endsWith('/favicon.ico')) keep(`Content-Security-Policy: ${violatedDirective} stopped ${blockedURI}`);
    });
    globalThis.isCollected = true;
}</script>";

/// A script body that takes what [`COLLECTOR`] has kept.
pub(crate) const TAKE_COLLECTED: &str = "
    if (location.protocol !== 'http:') return [];
    const kept = JSON.parse(sessionStorage.getItem('console') ?? '[]');
    sessionStorage.removeItem('console');
    return window.isCollected ? kept : [...kept, 'nothing collects what this page says'];";

impl Site {
    /// The site as `cargo xtask dist` wrote it.
    ///
    /// # Errors
    /// When it has not been written.
    pub fn dist() -> Result<Self> {
        let folder = root().join("dist");
        if !folder.join("index.html").is_file() {
            bail!("dist/ is not there: run `cargo xtask test`, which builds it first");
        }
        Ok(Self::default().folder("/", folder))
    }

    /// Serves a folder's files under a path that begins and ends with `/`.
    #[must_use]
    pub fn folder(mut self, path: &str, folder: PathBuf) -> Self {
        self.folders.push((path.to_owned(), folder));
        self
    }

    /// Serves a text at a path (`/host/index.html`); the path's ending says its type.
    #[must_use]
    pub fn text(mut self, path: &str, text: &str) -> Self {
        self.texts.insert(path.to_owned(), text.to_owned());
        self
    }

    /// Sends a header with every answer, for example `Content-Security-Policy`.
    #[must_use]
    pub fn header(mut self, name: &str, value: &str) -> Self {
        self.headers.push((name.to_owned(), value.to_owned()));
        self
    }

    /// Sends what is asked for with gzip where the browser takes it, as hosts do.
    #[must_use]
    pub fn compressed(mut self) -> Self {
        self.compresses = true;
        self
    }

    /// Puts [`COLLECTOR`] into every page.
    #[must_use]
    pub(crate) fn collecting(mut self, collects: bool) -> Self {
        self.collects = collects;
        for (name, value) in &mut self.headers {
            if collects && name.eq_ignore_ascii_case("Content-Security-Policy") {
                *value = value.replace("script-src", "script-src 'nonce-collector'");
            }
        }
        self
    }

    /// `path` names a file, never a folder.
    fn read(&self, path: &str) -> Option<Vec<u8>> {
        if let Some(text) = self.texts.get(path) {
            return Some(text.clone().into_bytes());
        }
        self.folders.iter().find_map(|(start, folder)| {
            let name = Path::new(path.strip_prefix(start.as_str())?);
            let stays_inside = name.components().all(|part| matches!(part, Component::Normal(_)));
            stays_inside.then(|| std::fs::read(folder.join(name)).ok())?
        })
    }
}

/// A running server; it stops when dropped.
#[derive(Debug)]
pub struct Server {
    site: Arc<Site>,
    address: SocketAddr,
    stopping: Arc<AtomicBool>,
    thread: Option<JoinHandle<()>>,
    seen: Arc<Mutex<Vec<String>>>,
}

impl Server {
    /// Serves at a port of its own.
    ///
    /// # Errors
    /// When no port can be had.
    pub fn start(site: Site) -> Result<Self> {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?;
        let mut server = Self {
            site: Arc::new(site),
            address: listener.local_addr()?,
            stopping: Arc::default(),
            thread: None,
            seen: Arc::default(),
        };
        server.listen(listener);
        Ok(server)
    }

    fn listen(&mut self, listener: TcpListener) {
        self.stopping = Arc::default();
        let (site, stop) = (Arc::clone(&self.site), Arc::clone(&self.stopping));
        let log = Arc::clone(&self.seen);
        self.thread = Some(std::thread::spawn(move || {
            for stream in listener.incoming().flatten() {
                if stop.load(Ordering::SeqCst) {
                    return;
                }
                let (site, log, stop) = (Arc::clone(&site), Arc::clone(&log), Arc::clone(&stop));
                // A client that goes away is no concern of the server.
                std::thread::spawn(move || drop(answer(&site, &log, &stop, &stream)));
            }
        }));
    }

    /// Comes back, at the same port, after [`Server::stop`].
    ///
    /// # Errors
    /// When somebody has taken the port meanwhile.
    pub fn resume(&mut self) -> Result<()> {
        self.stop();
        self.listen(TcpListener::bind(self.address)?);
        Ok(())
    }

    /// Serves another site from now on, at the same port: a new build put up by the dealer.
    ///
    /// # Errors
    /// When somebody has taken the port meanwhile.
    pub fn replace(&mut self, site: Site) -> Result<()> {
        let collects = self.site.collects;
        self.site = Arc::new(site.collecting(collects));
        self.resume()
    }

    /// The origin, without a slash at the end.
    #[must_use]
    pub fn origin(&self) -> String {
        format!("http://{}", self.address)
    }

    /// The port.
    #[must_use]
    pub fn port(&self) -> u16 {
        self.address.port()
    }

    /// The requests answered so far, as `200 /path`.
    #[must_use]
    pub fn requests(&self) -> Vec<String> {
        self.seen.lock().unwrap_or_else(PoisonError::into_inner).clone()
    }

    /// Takes the server away: from here on a connection is refused.
    pub fn stop(&mut self) {
        self.stopping.store(true, Ordering::SeqCst);
        // The thread waits for a connection; this is the last one.
        let _ = TcpStream::connect(self.address);
        if let Some(thread) = self.thread.take() {
            let _ = thread.join();
        }
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        self.stop();
    }
}

fn answer(
    site: &Site,
    log: &Mutex<Vec<String>>,
    stop: &AtomicBool,
    mut stream: &TcpStream,
) -> Result<()> {
    stream.set_read_timeout(Some(Duration::from_secs(10)))?;
    let mut lines = BufReader::new(stream).lines();
    let first = lines.next().context("an empty request")??;
    // All of the request must be read, or closing the connection resets it.
    let mut gzip = false;
    for line in lines {
        let line = line?.to_ascii_lowercase();
        if line.is_empty() {
            break;
        }
        gzip |= site.compresses && line.starts_with("accept-encoding:") && line.contains("gzip");
    }
    // Browsers open connections ahead of need; one of those must not outlive the server.
    if stop.load(Ordering::SeqCst) {
        return Ok(());
    }
    let target = first.split(' ').nth(1).unwrap_or_default();
    let path = target.split('?').next().unwrap_or_default();
    let file = if path.ends_with('/') { format!("{path}index.html") } else { path.to_owned() };
    let (status, body) = match site.read(&file) {
        Some(body) if site.collects && media_type(&file).starts_with("text/html") => {
            ("200 OK", with_collector(&body))
        }
        Some(body) => ("200 OK", body),
        None => ("404 Not Found", b"no such file".to_vec()),
    };
    log.lock()
        .unwrap_or_else(PoisonError::into_inner)
        .push(format!("{} {path}", status.get(..3).unwrap_or_default()));
    let body = if gzip { compressed(&body)? } else { body };
    let mut head = format!(
        "HTTP/1.1 {status}\r\nContent-Type: {}\r\nContent-Length: {}\r\nConnection: close\r\n\
         Cache-Control: no-cache\r\n",
        media_type(&file),
        body.len(),
    );
    if gzip {
        head += "Content-Encoding: gzip\r\n";
    }
    for (name, value) in &site.headers {
        head += &format!("{name}: {value}\r\n");
    }
    stream.write_all(head.as_bytes())?;
    stream.write_all(b"\r\n")?;
    stream.write_all(&body)?;
    Ok(())
}

fn compressed(body: &[u8]) -> std::io::Result<Vec<u8>> {
    let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
    encoder.write_all(body)?;
    encoder.finish()
}

/// A page with [`COLLECTOR`] in it, behind its doctype.
fn with_collector(page: &[u8]) -> Vec<u8> {
    let doctype = b"<!doctype html>";
    let has_one = page.get(..doctype.len()).is_some_and(|it| it.eq_ignore_ascii_case(doctype));
    let (before, behind) = page.split_at(if has_one { doctype.len() } else { 0 });
    [before, COLLECTOR.as_bytes(), behind].concat()
}

fn media_type(file: &str) -> &'static str {
    match file.rsplit_once('.').map_or("", |(_, end)| end) {
        "html" => "text/html; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "js" | "mjs" => "text/javascript; charset=utf-8",
        "json" => "application/json",
        "wasm" => "application/wasm",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "webmanifest" => "application/manifest+json",
        _ => "application/octet-stream",
    }
}

/// A folder that `cargo xtask test` makes under `target/`.
///
/// # Errors
/// When it has not been made.
pub fn folder_of_target(name: &str) -> Result<PathBuf> {
    let folder = root().join("target").join(name);
    if !folder.is_dir() {
        bail!("target/{name} is not there: run `cargo xtask test`, which builds it first");
    }
    Ok(folder)
}

/// The workspace's folder.
#[must_use]
pub fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).ancestors().nth(2).map(PathBuf::from).unwrap_or_default()
}
