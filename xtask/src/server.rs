//! `cargo xtask serve`, and the server of the browser tests: serves `dist/` as any static host would, on
//! 127.0.0.1 only.

mod packing;

use crate::{Outcome, build, command::DEFAULT_PORT, project::dist_folder};
use oxhttp::{
    ListeningServer, Server,
    model::{Body, HeaderMap, Method, Request, Response, StatusCode, header, header::HeaderValue},
};
use packing::Packing;
use std::{
    fs,
    net::{Ipv4Addr, SocketAddr, TcpListener},
    path::{Path, PathBuf},
};

/// Number of ports above the first that are tried when none was named.
const PORTS_TRIED: u16 = 50;

/// Builds (unless told not to) and serves until the person stops it.
///
/// # Errors
/// A sentence when the build fails or no port is free.
pub(crate) fn run(port: Option<u16>, build: bool) -> Outcome {
    if build {
        build::run_build()?;
    }
    need_page()?;
    let (server, address) = match port {
        Some(port) => listen(port)?,
        None => listen_near(DEFAULT_PORT)?,
    };
    println!("Steadygrade is at {address} (Ctrl+C ends it)");
    // Returns only when the server fails.
    server.join().map_err(|error| format!("the server stopped unexpectedly: {error}"))
}

/// Serves `dist/` on a free port in the background, for as long as this process lives.
///
/// # Errors
/// A sentence when there is no page or no port.
pub(crate) fn start_on_free_port() -> Outcome<String> {
    need_page()?;
    // The port is free again before the server takes it; another program is unlikely to take it in between.
    let free = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).and_then(|probe| probe.local_addr());
    let free = free.map_err(|error| format!("no port is free: {error}"))?;
    let (_, address) = listen(free.port())?;
    Ok(address)
}

fn need_page() -> Outcome {
    if dist_folder().join("index.html").is_file() {
        Ok(())
    } else {
        Err("there is no page in dist/ yet; `cargo xtask build` makes it".into())
    }
}

/// The server has a thread for each connection: a browser opens several at once and keeps them.
fn listen(port: u16) -> Outcome<(ListeningServer, String)> {
    let server = Server::new(answer).bind(SocketAddr::from((Ipv4Addr::LOCALHOST, port)));
    let listening = server
        .spawn()
        .map_err(|error| format!("cannot listen on port {port}: {error}; `--port N` names another"))?;
    Ok((listening, format!("http://127.0.0.1:{port}/")))
}

fn listen_near(first: u16) -> Outcome<(ListeningServer, String)> {
    let mut free = (first..first.saturating_add(PORTS_TRIED)).map(listen);
    free.find(Result::is_ok)
        .unwrap_or_else(|| Err(format!("no port from {first} on is free; `--port N` names another")))
}

fn answer(request: &mut Request<Body>) -> Response<Body> {
    let path = file_for(request.uri().path()).filter(|_| *request.method() == Method::GET);
    let found = path.and_then(|path| fs::read(dist_folder().join(&path)).ok().map(|bytes| (path, bytes)));
    let Some((path, bytes)) = found else {
        let mut missing = Response::new(Body::from("There is no such file."));
        *missing.status_mut() = StatusCode::NOT_FOUND;
        return missing;
    };
    let changed = fs::metadata(dist_folder().join(&path)).and_then(|data| data.modified());
    let how = changed.ok().zip(packing_for(&path, request.headers()));
    let packed = how.and_then(|(changed, how)| Some((packing::packed(&path, changed, &bytes, how)?, how)));
    let (bytes, how) = packed.map_or((bytes, None), |(packed, how)| (packed, Some(how)));
    let mut response = Response::new(Body::from(bytes));
    put_headers(response.headers_mut(), &path, how);
    response
}

/// How a file is packed for the browser that sent these headers.
fn packing_for(path: &Path, headers: &HeaderMap) -> Option<Packing> {
    let accepted = headers.get(header::ACCEPT_ENCODING)?.to_str().ok()?;
    Packing::accepted(accepted).filter(|_| packing::is_packed(path))
}

fn put_headers(headers: &mut HeaderMap, path: &Path, how: Option<Packing>) {
    headers.insert(header::CONTENT_TYPE, HeaderValue::from_static(media_type(path)));
    // A rebuilt page must be seen at the next load; the service worker then offers it.
    headers.insert(header::CACHE_CONTROL, HeaderValue::from_static("no-cache"));
    headers.insert(header::X_CONTENT_TYPE_OPTIONS, HeaderValue::from_static("nosniff"));
    // Also of what goes as it is: a cache on the way must not give it to the next who would take it packed.
    if packing::is_packed(path) {
        headers.insert(header::VARY, HeaderValue::from_static("Accept-Encoding"));
    }
    if let Some(how) = how {
        headers.insert(header::CONTENT_ENCODING, HeaderValue::from_static(how.name()));
    }
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
    fn a_module_goes_packed_to_who_takes_it_and_caches_are_told_so() {
        let path = Path::new("a.wasm");
        let mut asked = HeaderMap::new();
        assert_eq!(packing_for(path, &asked), None);
        asked.insert(header::ACCEPT_ENCODING, HeaderValue::from_static("gzip, br"));
        assert_eq!(packing_for(path, &asked), Some(Packing::Brotli));
        assert_eq!(packing_for(Path::new("a.woff2"), &asked), None);
        let told = |path: &str, how| {
            let mut headers = HeaderMap::new();
            put_headers(&mut headers, Path::new(path), how);
            [header::CONTENT_TYPE, header::CONTENT_ENCODING, header::VARY]
                .map(|name| headers.get(name).map(|value| value.to_str().expect("letters").to_owned()))
        };
        let some = |text: &str| Some(text.to_owned());
        let varies = some("Accept-Encoding");
        assert_eq!(
            told("a.wasm", Some(Packing::Brotli)),
            [some("application/wasm"), some("br"), varies.clone()]
        );
        assert_eq!(told("a.svg", None), [some("image/svg+xml"), None, varies]);
        assert_eq!(told("a.woff2", None), [some("font/woff2"), None, None]);
    }

    #[test]
    fn a_module_is_announced_as_one() {
        assert_eq!(media_type(Path::new("a.wasm")), "application/wasm");
        assert_eq!(media_type(Path::new("a")), "application/octet-stream");
    }
}
