//! What the heights of a road say before its plan does: that a part of it is blank, and that it
//! climbs the way it is driven.

use workers::message::RoadFacts;

/// A road that ends so much higher than it starts is said to climb, m. Assumed: less is no hill
/// that somebody would come down it for.
const CLIMBS_FROM_M: f64 = 100.0;

/// The most that a climb may fall on the way, as a share of what it rises. Assumed.
const MOST_FALL: f64 = 0.25;

/// What was not assessed of a road, taken together.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Blank {
    /// Length, m.
    pub length_m: f64,
    /// How much lower the road is behind such stretches, m. Each counts for itself: a stretch that ends
    /// higher takes nothing off.
    pub drop_m: f64,
}

impl Blank {
    /// Of a road with the heights of its grid points, m; `None` where all of it was assessed.
    #[must_use]
    pub fn of(road: &RoadFacts, heights_m: &[f32]) -> Option<Self> {
        let height =
            |index: usize| heights_m.get(index).or(heights_m.last()).map_or(0.0, |it| f64::from(*it));
        let spans = &road.unassessed;
        (!spans.is_empty()).then(|| Self {
            length_m: spans.iter().map(|it| (it.to - it.from) as f64 * road.step_m).sum(),
            drop_m: spans.iter().map(|it| (height(it.from) - height(it.to)).max(0.0)).sum(),
        })
    }
}

/// Whether a road climbs as a whole, so that whoever comes down it has to turn it. A tour that goes up and
/// down does not, however much higher it ends. Given are the heights of its ends and all of its fall, m.
#[must_use]
pub fn climbs((start_m, end_m): (f64, f64), fall_m: f64) -> bool {
    let gained = end_m - start_m;
    gained >= CLIMBS_FROM_M && fall_m <= MOST_FALL * (gained + fall_m)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::entries::Entries;
    use crate::format::Units::{Imperial, Metric};
    use crate::words::words;
    use ::tests::plain_roads::{hill, road};
    use solver::road::{Span, Unassessed};
    use solver::truck::Preset;
    use workers::desk::Desk;
    use workers::message::{Given, Reply, Request, Task};

    fn surveyed(file: Vec<u8>) -> (RoadFacts, Vec<f32>) {
        let Entries { truck, day, .. } = Entries::of(Preset::FiveAxle36);
        let task = Task::whole(truck, day);
        let mut found = None;
        Desk::new().answer(
            Request::Open(task, Given::joined(vec![false])),
            vec![file],
            &mut |reply, arrays| match reply {
                Reply::Surveyed(facts) => found = Some((*facts, arrays.floats[0].clone())),
                Reply::Failed(error) => panic!("{error}"),
                _ => {}
            },
        );
        found.expect("a road")
    }

    #[test]
    fn what_lies_in_the_blank_is_told_with_its_drop() {
        let (mut road, heights) = surveyed(hill());
        assert_eq!(Blank::of(&road, &heights), None);
        // All of the hill, and a level piece before it.
        let at = |metres: f64| (metres / road.step_m).round() as usize;
        let span = |from, to| Span { from: at(from), to: at(to), why: Unassessed::Sliver };
        road.unassessed = vec![span(0.0, 1_000.0), span(1_900.0, 7_100.0)];
        let blank = Blank::of(&road, &heights).expect("two stretches");
        assert!((blank.length_m - 6_200.0).abs() < 20.0, "{blank:?}");
        assert!((blank.drop_m - 400.0).abs() < 10.0, "{blank:?}");
        let text = words().blank(&Blank { length_m: 6_200.0, drop_m: 400.0 }, Metric);
        assert_eq!(
            text.replace('\u{a0}', " "),
            "Heights missing or wrong on 6.2 km (400 m of drop). No advice there."
        );
        // A drop that is none is not told.
        let text = words().blank(&Blank { length_m: 6_200.0, drop_m: 0.4 }, Metric);
        assert_eq!(text.replace('\u{a0}', " "), "Heights missing or wrong on 6.2 km. No advice there.");
    }

    #[test]
    fn a_hill_without_heights_lies_in_the_blank() {
        let text =
            String::from_utf8(road("Holed", &[(100, -0.06), (250, -1.6), (100, -0.06)])).expect("text");
        // The 5 km of 8 % and a little on either side.
        let without = |(index, point): (usize, &str)| match (95..355).contains(&index) {
            true => format!("{}</trkpt>", point.split("<ele>").next().unwrap_or_default()),
            false => point.to_owned(),
        };
        let file: String = text.split_inclusive("</trkpt>").enumerate().map(without).collect();
        let (road, heights) = surveyed(file.into_bytes());
        let blank = Blank::of(&road, &heights).expect("a stretch");
        assert!((blank.length_m - 5_200.0).abs() < 100.0, "{blank:?}");
        assert!((blank.drop_m - 400.0).abs() < 10.0, "{blank:?}");
    }

    #[test]
    fn a_rise_in_the_blank_is_not_set_off_against_a_drop() {
        let (mut facts, heights) = surveyed(road("Down and up", &[(100, -3.0), (50, 0.0), (100, 3.0)]));
        let (half, last) = (heights.len() / 2, heights.len() - 1);
        facts.unassessed =
            [(0, half), (half, last)].map(|(from, to)| Span { from, to, why: Unassessed::Sliver }).to_vec();
        let blank = Blank::of(&facts, &heights).expect("two stretches");
        assert!((blank.drop_m - 300.0).abs() < 15.0, "{blank:?}");
    }

    #[test]
    fn a_road_recorded_uphill_is_told_from_one_that_only_ends_a_little_higher() {
        assert!(climbs((313.0, 1_878.0), 200.0));
        assert!(climbs((0.0, 100.0), 0.0));
        assert!(!climbs((0.0, 99.0), 0.0));
        assert!(!climbs((1_878.0, 313.0), 1_565.0));
        // A tour over several hills that ends higher than it starts.
        assert!(!climbs((313.0, 513.0), 1_400.0));
        let text = words().climbs(313.0, 1_878.0, Metric);
        assert!(text.replace('\u{a0}', " ").contains("from 313 m to 1,878 m"), "{text}");
        assert!(words().climbs(313.0, 1_878.0, Imperial).contains("ft"));
    }
}
