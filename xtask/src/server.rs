//! `cargo xtask serve`, and the server of the browser tests: `dist/` as any static host would
//! give it, on 127.0.0.1 only.

use crate::{Outcome, build, command::DEFAULT_PORT, project::dist_folder};
use std::{
    fs::File,
    path::{Path, PathBuf},
    sync::Arc,
    thread,
};
use tiny_http::{Header, Method, Request, Response, Server};

/// How many ports above the first are tried when none was named.
const PORTS_TRIED: u16 = 50;
/// A page asks for several files at once; a slow reader must not hold the others up.
const WORKERS: usize = 4;

/// Builds (unless told not to), serves until the person stops it.
///
/// # Errors
/// A sentence when the build fails or no port is free.
pub(crate) fn run(port: Option<u16>, build: bool) -> Outcome {
    if build {
        build::run_build()?;
    }
    need_page()?;
    let server = match port {
        Some(port) => listen(port)?,
        None => listen_near(DEFAULT_PORT)?,
    };
    let threads = serve(&server);
    println!("Steadygrade is at {} (Ctrl+C ends it)", address(&server)?);
    for thread in threads {
        // Ends only when the process does.
        thread.join().map_err(|_| "the server stopped unexpectedly")?;
    }
    Ok(())
}

/// Serves `dist/` on a free port in the background, for as long as this process lives.
///
/// # Errors
/// A sentence when there is no page or no port.
pub(crate) fn start_on_free_port() -> Outcome<String> {
    need_page()?;
    let server = listen(0)?;
    serve(&server);
    address(&server)
}

fn need_page() -> Outcome {
    if dist_folder().join("index.html").is_file() {
        Ok(())
    } else {
        Err("there is no page in dist/ yet; `cargo xtask build` makes it".into())
    }
}

fn listen(port: u16) -> Outcome<Arc<Server>> {
    Server::http(("127.0.0.1", port))
        .map(Arc::new)
        .map_err(|error| format!("cannot listen on port {port}: {error}; `--port N` names another"))
}

fn listen_near(first: u16) -> Outcome<Arc<Server>> {
    let mut free = (first..first.saturating_add(PORTS_TRIED)).map(listen);
    free.find(Result::is_ok)
        .unwrap_or_else(|| Err(format!("no port from {first} on is free; `--port N` names another")))
}

fn address(server: &Server) -> Outcome<String> {
    let address = server.server_addr().to_ip();
    let address = address.ok_or("the server has no address")?;
    Ok(format!("http://{address}/"))
}

fn serve(server: &Arc<Server>) -> Vec<thread::JoinHandle<()>> {
    let start = |_| {
        let server = Arc::clone(server);
        thread::spawn(move || {
            while let Ok(request) = server.recv() {
                answer(request);
            }
        })
    };
    (0..WORKERS).map(start).collect()
}

fn answer(request: Request) {
    let known = matches!(request.method(), Method::Get | Method::Head);
    let file = match file_for(request.url()) {
        Some(path) if known => File::open(dist_folder().join(&path)).ok().map(|file| (path, file)),
        Some(_) | None => None,
    };
    // A visitor who has gone is no error of ours.
    let _ = match file {
        Some((path, file)) => request.respond(with_headers(Response::from_file(file), &path)),
        None => request.respond(Response::from_string("There is no such file.").with_status_code(404)),
    };
}

fn with_headers(mut response: Response<File>, path: &Path) -> Response<File> {
    let fields = [
        ("Content-Type", media_type(path)),
        // A page built again must be seen at once.
        ("Cache-Control", "no-cache"),
        ("X-Content-Type-Options", "nosniff"),
    ];
    for (name, value) in fields {
        if let Ok(header) = Header::from_bytes(name, value) {
            response.add_header(header);
        }
    }
    response
}

/// The file below `dist/` that an address asks for; `None` when it would lead out of it.
fn file_for(url: &str) -> Option<PathBuf> {
    let path = url.split(['?', '#']).next()?.strip_prefix('/')?;
    let plain = |part: &str| {
        let mut letters = part.chars();
        part != ".." && letters.all(|c| c.is_ascii_alphanumeric() || "-_.".contains(c))
    };
    // A second slash would make the rest an absolute path.
    if path.starts_with('/') || !path.split('/').all(plain) {
        return None;
    }
    if path.is_empty() || path.ends_with('/') {
        return Some(Path::new(path).join("index.html"));
    }
    Some(PathBuf::from(path))
}

fn media_type(path: &Path) -> &'static str {
    match path.extension().and_then(|end| end.to_str()).unwrap_or_default() {
        "html" => "text/html; charset=utf-8",
        "js" | "mjs" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "wasm" => "application/wasm",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "json" => "application/json",
        "webmanifest" => "application/manifest+json",
        "woff2" => "font/woff2",
        "gpx" => "application/gpx+xml",
        "txt" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(url: &str, expect: Option<&str>) {
        assert_eq!(file_for(url), expect.map(PathBuf::from), "{url}");
    }

    #[test]
    fn addresses_lead_into_the_folder_only() {
        check("/", Some("index.html"));
        check("/?demo#x", Some("index.html"));
        check("/app-12_bg.wasm", Some("app-12_bg.wasm"));
        check("/snippets/a/inline0.js", Some("snippets/a/inline0.js"));
        check("/../Cargo.toml", None);
        check("/a/../../Cargo.toml", None);
        check("/%2e%2e/Cargo.toml", None);
        check("//etc/passwd", None);
        check("http://127.0.0.1/", None);
    }

    #[test]
    fn a_module_is_announced_as_one() {
        assert_eq!(media_type(Path::new("a.wasm")), "application/wasm");
        assert_eq!(media_type(Path::new("a")), "application/octet-stream");
    }
}
