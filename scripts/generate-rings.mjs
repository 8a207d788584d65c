// Writes tests/fixtures/rings-long-coils.csv by even points alone, every distance at every time: node scripts/generate-rings.mjs
// It shares nothing with the library: no crowded points, no sums kept over distances, its own error function, images by mirrored points. Some minutes.
import { writeFileSync } from 'node:fs';

/** erfc by its power series below 2.5 and its continued fraction, from the inside out, above. */
function erfc(x) {
  if (x > 6) return 0;
  if (x < 2.5) {
    let term = x;
    let sum = x;
    for (let n = 1; Math.abs(term) > 1e-17 * sum; n += 1) {
      term *= (2 * x * x) / (2 * n + 1);
      sum += term;
    }
    return 1 - (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
  }
  let tail = x;
  for (let n = 60; n >= 1; n -= 1) tail = x + n / 2 / tail;
  return Math.exp(-x * x) / Math.sqrt(Math.PI) / tail;
}

const K = 1.2;
const ALPHA = 6e-7;
const TIMES = [
  ['1h', 3600],
  ['24h', 86400],
  ['7d', 604800],
  ['30.4375d', 2629800],
  ['182.625d', 15778800],
  ['1y', 31557600],
  ['10y', 315576000],
];
const COILS = [
  { kind: 'flat', diameter: 0.9144, pitch: 0.254, radius: 0.0134, depth: 1.8288 },
  { kind: 'upright', diameter: 0.9144, pitch: 0.4318, radius: 0.0134, depth: 1.3716 },
];

/** Sum over sources and walls of erfc/d, sources moved along by a distance, mirrored or not, at every time. */
function pair({ kind, diameter, radius, depth }, along, mirrored, points) {
  const ring = diameter / 2;
  const sums = TIMES.map(() => 0);
  const scales = TIMES.map(([, time]) => 0.5 / Math.sqrt(ALPHA * time));
  const place = (size, angle, shift) => {
    const side = size * Math.sin(angle);
    return kind === 'flat' ? [shift + size * Math.cos(angle), side, depth] : [shift + size * Math.cos(angle), 0, depth + side];
  };
  const angle = (index) => (2 * Math.PI * (index + 0.5)) / points;
  const sources = Array.from({ length: points }, (_, i) => place(ring, angle(i), along)).map(([x, y, z]) => [x, y, mirrored ? -z : z]);
  for (let i = 0; i < points; i += 1) {
    const [a, b] = [place(ring - radius, angle(i), 0), place(ring + radius, angle(i), 0)];
    for (const [x, y, z] of sources) {
      const inner = Math.sqrt((x - a[0]) ** 2 + (y - a[1]) ** 2 + (z - a[2]) ** 2);
      const outer = Math.sqrt((x - b[0]) ** 2 + (y - b[1]) ** 2 + (z - b[2]) ** 2);
      const d = (inner + outer) / 2;
      for (let t = 0; t < scales.length; t += 1) sums[t] += erfc(d * scales[t]) / d;
    }
  }
  return sums.map((sum) => (sum * 2 * Math.PI * ring) / points ** 2);
}

/** The ring's own heat: one turn of even points, half a millimetre and less apart. */
function itself({ diameter, radius }) {
  const ring = diameter / 2;
  const points = 200_000;
  return TIMES.map(([, time]) => {
    const scale = 0.5 / Math.sqrt(ALPHA * time);
    let sum = 0;
    for (let i = 0; i < points; i += 1) {
      const angle = (2 * Math.PI * (i + 0.5)) / points;
      const to = (size) => Math.sqrt(size * size + ring * ring - 2 * size * ring * Math.cos(angle));
      const d = (to(ring - radius) + to(ring + radius)) / 2;
      sum += erfc(d * scale) / d;
    }
    return (sum * 2 * Math.PI * ring) / points;
  });
}

const rows = COILS.flatMap((coil) => {
  const offsets = Array.from({ length: 40 }, (_, m) => {
    const along = m * coil.pitch;
    const crossing = along < 1.2 * coil.diameter;
    const direct = m === 0 ? itself(coil) : pair(coil, along, false, crossing ? 1536 : 128);
    const image = pair(coil, along, true, 96);
    console.log(coil.kind, m);
    return direct.map((value, t) => value - image[t]);
  });
  return [4, 12, 40].flatMap((rings) =>
    TIMES.map(([label, time], t) => {
      const sum = offsets.slice(0, rings).reduce((total, each, m) => total + ((m === 0 ? 1 : 2) * (rings - m) * each[t]) / rings, 0);
      const { kind, diameter, pitch, radius, depth } = coil;
      return [kind, diameter, pitch, radius, rings, depth, K, ALPHA, label, time, sum / (4 * Math.PI * K)].join(',');
    }),
  );
});
const header = 'kind,coil_diameter_m,pitch_m,tube_outer_radius_m,n_rings,centre_depth_m,k_W_mK,alpha_m2_s,label,t_s,mean_ring_wall_per_W_per_m_pipe';
writeFileSync(new URL('../tests/fixtures/rings-long-coils.csv', import.meta.url), `${header}\n${rows.join('\n')}\n`);
console.log(`${rows.length} rows`);
