// Invented roads for the browser tests, as GPX files.

/**
 * A straight road of `pieces`, each [length in metres, grade as a fraction], with points
 * 20 m apart. It lies in the open ocean, where no road is. options: `start`, its first height;
 * `from`, how many metres north it begins of where such roads do; `homewards`: recorded from its
 * other end; `uneven`: heights are off by up to as many metres; `aside`: how many metres east.
 */
export function roadFile(name, pieces, { fileName = `${name}.gpx`, ...how } = {}) {
  return { name: fileName, bytes: Buffer.from(gpx([track(name, pieces, how)])) };
}

/** One file with several such roads. */
export function roadsFile(fileName, roads) {
  return { name: fileName, bytes: Buffer.from(gpx(roads.map(([name, pieces]) => track(name, pieces)))) };
}

function gpx(tracks) {
  return `<?xml version="1.0" encoding="UTF-8"?>
<gpx version="1.1" creator="test" xmlns="http://www.topografix.com/GPX/1/1">${tracks.join("")}</gpx>`;
}

function track(name, pieces, { start = 900, from = 0, homewards = false, uneven = 0, aside = 0 } = {}) {
  const points = [];
  let height = start;
  let at = from;
  // The same unevenness each time, and none that repeats soon.
  const off = () => uneven * (((points.length * 37) % 101) / 50 - 1);
  const lon = aside === 0 ? "-20" : (-20 + aside / 85_000).toFixed(7);
  const put = () =>
    points.push(
      `<trkpt lat="${(-40 + at / 111_000).toFixed(7)}" lon="${lon}"><ele>${(height + off()).toFixed(2)}</ele></trkpt>`,
    );
  put();
  for (const [length, grade] of pieces) {
    for (let done = 0; done < length; done += 20) {
      at += 20;
      height += 20 * grade;
      put();
    }
  }
  if (homewards) points.reverse();
  return `<trk><name>${name}</name><trkseg>${points.join("")}</trkseg></trk>`;
}

/** 2 km level, 5 km of 8 % down, 2 km level. */
export const hill = roadFile("Test hill", [[2000, 0], [5000, -0.08], [2000, 0]]);

/** A steep hill that goes on gently: the gear is changed up on it. */
export const easing = roadFile("Steep, then easing", [[1000, 0], [4000, -0.08], [5000, -0.035], [1000, 0]]);

/** Two descents with a climb between them, the second the worse. */
export const twoHills = roadFile("Two hills", [[1000, 0], [3000, -0.05], [1500, 0.05], [3000, -0.08], [1000, 0]]);

/** Seventeen descents with climbs between them; on the 2nd, 9th and 11th the gear is changed. */
export const manyHills = roadFile(
  "Seventeen hills",
  Array.from({ length: 17 }, (_, index) =>
    [2, 9, 11].includes(index + 1)
      ? [[1000, 0.03], [4000, -0.08], [5000, -0.035], [1600, 0.06]]
      : [[1000, 0.03], [1200 + 200 * (index % 5), -0.05 - 0.01 * (index % 4)], [1600, 0.05]],
  ).flat(),
);

/** A web page saved in place of a track. */
export const webPage = {
  name: "track.gpx",
  bytes: Buffer.from("<!DOCTYPE html><html><head><title>Log in</title></head><body>Log in</body></html>"),
};

/** Points, but no heights. */
export const flatFile = {
  name: "flat.gpx",
  bytes: Buffer.from(
    gpx([
      `<trk><name>Flat</name><trkseg>${Array.from({ length: 400 }, (_, i) => `<trkpt lat="${(-40 + i / 5000).toFixed(5)}" lon="-20"/>`).join("")}</trkseg></trk>`,
    ]),
  ),
};
