//! The gpx crate is the second opinion on the contents of a file.

use proptest::prelude::*;
use solver::road::{Road, bounds, read, survey, track};
use std::fmt::Write;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(256))]

    /// Wherever the gpx crate reads a file, both readers agree on its contents.
    #[test]
    fn agrees_with_the_gpx_crate(file in any_file()) {
        let theirs = gpx::read(file.as_bytes()).expect("the generated file is valid");
        let ours = read(file.as_bytes(), &mut |_| true);
        let tracks: Vec<&gpx::Track> = theirs.tracks.iter().filter(|t| t.segments.iter().any(|s| !s.points.is_empty())).collect();
        let routes: Vec<&gpx::Route> = theirs.routes.iter().filter(|r| !r.points.is_empty()).collect();
        if tracks.is_empty() && routes.is_empty() {
            prop_assert!(ours.is_err());
            return Ok(());
        }
        let ours = ours.expect("read by the other reader");
        prop_assert_eq!(ours.findings(), &[]);
        let tracks = tracks.iter().map(|t| (t.name.clone(), t.segments.iter().flat_map(|s| s.points.clone()).collect::<Vec<_>>()));
        let routes = routes.iter().map(|r| (r.name.clone(), r.points.clone()));
        let theirs: Vec<_> = tracks.chain(routes).collect();
        prop_assert_eq!(ours.courses().len(), theirs.len());
        for (index, (course, (name, points))) in ours.courses().iter().zip(&theirs).enumerate() {
            prop_assert_eq!(&course.name, name.as_deref().unwrap_or("whole file"));
            prop_assert_eq!(course.points, points.len());
            prop_assert_eq!(course.heights, points.iter().filter(|p| p.elevation.is_some()).count());
            let length = along(points).last().copied().unwrap_or(0.0);
            // Before cleaning, lengths are good to a thousandth.
            prop_assert!((course.length_m - length).abs() <= 1e-3 * length, "{} m and {length} m", course.length_m);
            if length > 1.1 * bounds::SHORTEST_ROAD_M && has_heights_throughout(points) {
                assert_through(&survey(&ours, index, &mut |_| true).expect("a road"), points);
            }
        }
    }
}

/// The next point of a drive.
#[derive(Debug, Clone, Copy)]
struct Onward {
    /// Steps north and east, degrees. Each is far above the last digit written; together they are no more
    /// than the spacing that a road needs.
    by_deg: (f64, f64),
    /// Distance of the height from an even grade, metres.
    bump_m: f64,
    has_height: bool,
    /// Number of the further element of GPX 1.1 that stands in the point.
    more: usize,
}

fn onward() -> impl Strategy<Value = Onward> {
    (1e-4..9e-4, 1e-4..9e-4, -0.4..0.4, proptest::bool::weighted(0.95), 0..4usize).prop_map(
        |(north, east, bump_m, has_height, more)| Onward { by_deg: (north, east), bump_m, has_height, more },
    )
}

/// A drive of up to some eighty points, each with a position and height of its own.
fn any_points(tag: &'static str) -> impl Strategy<Value = String> {
    let start = (-60.0..60.0, -179.0..179.0, 0.0..4_000.0);
    let ways = (prop_oneof![Just(1.0), Just(-1.0)], prop_oneof![Just(1.0), Just(-1.0)], -0.08..0.08);
    (start, ways, proptest::collection::vec(onward(), 0..80)).prop_map(
        move |((mut lat, mut lon, mut height), (north, east, grade), points): (_, (f64, f64, f64), _)| {
            let mut text = String::new();
            for Onward { by_deg, bump_m, has_height, more } in points {
                let (from_lat, from_lon): (f64, f64) = (lat, lon);
                lat += north * by_deg.0;
                lon += east * by_deg.1;
                height += grade * track::step_m(from_lat, from_lon, lat, lon);
                let ele =
                    if has_height { format!("<ele>{:.2}</ele>", height + bump_m) } else { String::new() };
                let more = [
                    "",
                    "<time>2026-05-01T10:00:00Z</time>",
                    "<name>p &amp; q</name>",
                    "<extensions><x:a><x:ele>7</x:ele></x:a></extensions>",
                ][more];
                let _ = writeln!(text, "<{tag} lat=\"{lat:.6}\" lon=\"{lon:.6}\">{ele}{more}</{tag}>");
            }
            text
        },
    )
}

/// Distance of each point along the line through all, metres.
fn along(points: &[gpx::Waypoint]) -> Vec<f64> {
    let mut along = vec![0.0];
    for pair in points.windows(2) {
        let (a, b) = (pair[0].point(), pair[1].point());
        along.push(along[along.len() - 1] + track::step_m(a.y(), a.x(), b.y(), b.x()));
    }
    along
}

/// Whether both ends have heights, and neighbours with heights are near enough for the gaps to be filled.
/// Then every height of the road is known.
fn has_heights_throughout(points: &[gpx::Waypoint]) -> bool {
    let has = |point: Option<&gpx::Waypoint>| point.is_some_and(|point| point.elevation.is_some());
    let known: Vec<f64> =
        along(points).iter().zip(points).filter(|(_, point)| has(Some(point))).map(|(s, _)| *s).collect();
    has(points.first())
        && has(points.last())
        && known.windows(2).all(|pair| pair[1] - pair[0] < bounds::FILL_M)
}

/// Our road has the positions and heights of these points. Each of its grid points lies on the line through
/// them, at its own distance, and has the height of the straight line between its neighbours.
fn assert_through(road: &Road, points: &[gpx::Waypoint]) {
    let along = along(points);
    let length = along[along.len() - 1];
    assert!((road.length_m() - length).abs() < 1e-6, "{} m and {length} m", road.length_m());
    let places: Vec<(f64, f64)> = points.iter().map(|p| (p.point().y(), p.point().x())).collect();
    let heights: Vec<(f64, f64)> =
        along.iter().zip(points).filter_map(|(s, p)| p.elevation.map(|height| (*s, height))).collect();
    for (k, (lat, lon)) in road.positions().iter().enumerate() {
        let s = k as f64 * road.step_m();
        // The first point at or behind this place, and the share of the way to it from the point before.
        let next = along.partition_point(|there| *there < s).clamp(1, along.len() - 1);
        let t = (s - along[next - 1]) / (along[next] - along[next - 1]);
        let (a, b) = (places[next - 1], places[next]);
        let off = (lat - (a.0 + (b.0 - a.0) * t)).abs().max((lon - (a.1 + (b.1 - a.1) * t)).abs());
        assert!(off < 1e-9, "grid point {k} lies {off}° off");
        let recorded = road.recorded_m()[k];
        let next = heights.partition_point(|(there, _)| *there < s).clamp(1, heights.len() - 1);
        let ((sa, ha), (sb, hb)) = (heights[next - 1], heights[next]);
        let height = ha + (hb - ha) * (s - sa) / (sb - sa);
        assert!((recorded - height).abs() < 1e-6, "grid point {k}: {recorded} m and {height} m");
    }
}

fn any_file() -> impl Strategy<Value = String> {
    let name = || proptest::option::of("[A-Za-z][A-Za-z0-9 ]{0,10}[a-z]");
    let track = (name(), any_points("trkpt"));
    let route = (name(), any_points("rtept"));
    (proptest::collection::vec(track, 0..4), proptest::collection::vec(route, 0..3)).prop_map(|(tracks, routes)| {
        let mut text = String::from("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\"1.1\" creator=\"x\" xmlns=\"http://www.topografix.com/GPX/1/1\" xmlns:x=\"http://example.invalid/x\"><metadata><name>whole file</name></metadata>");
        let named = |name: &Option<String>| name.as_ref().map_or(String::new(), |name| format!("<name>{name}</name>"));
        for (name, points) in &tracks {
            let _ = write!(text, "<trk>{}<trkseg>{points}</trkseg></trk>", named(name));
        }
        for (name, points) in &routes {
            let _ = write!(text, "<rte>{}{points}</rte>", named(name));
        }
        text.push_str("</gpx>");
        text
    })
}
