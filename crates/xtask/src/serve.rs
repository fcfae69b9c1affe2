//! `cargo xtask serve [--port N]`: builds the page and serves it on this machine.

use anyhow::{Context as _, Result, anyhow, bail};
use tiny_http::{Header, Request, Response, Server};

use crate::sh::say;
use crate::site::Site;

const PORT: u16 = 8080;

/// Serves the very files that `dist` writes, from memory, until interrupted.
///
/// # Errors
/// When the build fails or the port is taken.
pub(crate) fn run(arguments: &[&str]) -> Result<()> {
    let port = match arguments {
        [] => PORT,
        ["--port", number] => number.parse().map_err(|_| {
            anyhow!("`{number}` is not a port: use a whole number from 0 to {}", u16::MAX)
        })?,
        _ => bail!("serve takes only --port N"),
    };
    let site = Site::build()?;
    let server = Server::http(("127.0.0.1", port))
        .map_err(|error| anyhow!("cannot listen on port {port}: {error}; try --port N"))?;
    let address = server.server_addr().to_ip().context("the server has no address")?;
    say!("serving http://{address} (Ctrl-C ends it)");
    for request in server.incoming_requests() {
        answer(&site, request);
    }
    Ok(())
}

fn answer(site: &Site, request: Request) {
    let path = request.url().split(['?', '#']).next().unwrap_or_default();
    let name = match path.trim_start_matches('/') {
        "" => "index.html",
        name => name,
    };
    let found = site.file(name);
    say!("{} {path} {}", request.method(), if found.is_some() { 200 } else { 404 });
    // A browser that goes away before the answer is no concern of ours.
    let _ = match found {
        Some(file) => {
            let mut response = Response::from_data(file.bytes.clone());
            for header in [("Content-Type", file.media_type()), ("Cache-Control", "no-store")] {
                if let Ok(header) = Header::from_bytes(header.0, header.1) {
                    response.add_header(header);
                }
            }
            request.respond(response)
        }
        None => request.respond(Response::from_string("no such file").with_status_code(404)),
    };
}
