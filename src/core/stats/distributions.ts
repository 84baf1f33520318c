/**
 * The few special functions that small trials need: binomial and beta distributions and the normal
 * quantile. Written here because a statistics package would be most of what the page loads; each is
 * checked against R and against a package in the tests.
 */
import { mustBeWithin } from '../base/result';

/** Lanczos coefficients, g = 7, n = 9: about 15 digits. From memory; checked against R's lgamma. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/** ln Γ(x) for x > 0. */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const shifted = x - 1;
  const base = shifted + 7.5;
  const series = LANCZOS.reduce((sum, c, i) => (i === 0 ? c : sum + c / (shifted + i)), 0);
  return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(base) - base + Math.log(series);
}

const logFactorials: number[] = [0];

/** ln n!, summed exactly term by term and remembered; n whole, 0–100 000. */
export function logFactorial(n: number): number {
  for (let k = logFactorials.length; k <= n; k += 1) logFactorials.push(logFactorials[k - 1]! + Math.log(k));
  return logFactorials[n]!;
}

/** Logarithm of the number of ways to choose k of n; whole numbers, 0 ≤ k ≤ n. */
export const logChoose = (n: number, k: number): number => logFactorial(n) - logFactorial(k) - logFactorial(n - k);

/** Chance of exactly `k` passes in `n` when each passes with chance `p`. */
export function binomialChance(k: number, n: number, p: number): number {
  if (p <= 0) return k === 0 ? 1 : 0;
  if (p >= 1) return k === n ? 1 : 0;
  return Math.exp(logChoose(n, k) + k * Math.log(p) + (n - k) * Math.log(1 - p));
}

/** Continued fraction of the incomplete beta function (modified Lentz). */
function betaFraction(x: number, a: number, b: number): number {
  const least = 1e-300;
  const safe = (value: number) => (Math.abs(value) < least ? least : value);
  let c = 1;
  let d = 1 / safe(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m <= 500; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / safe(1 + even * d);
    c = safe(1 + even / c);
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / safe(1 + odd * d);
    c = safe(1 + odd / c);
    fraction *= d * c;
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return fraction;
}

/** Share of a beta(a, b) distribution that lies below `x`. Throws RangeError unless a, b > 0. */
export function betaBelow(x: number, a: number, b: number): number {
  mustBeWithin('a', a, Number.MIN_VALUE, 1e7);
  mustBeWithin('b', b, Number.MIN_VALUE, 1e7);
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x));
  if (x < (a + 1) / (a + b + 2)) return (front * betaFraction(x, a, b)) / a;
  return 1 - (front * betaFraction(1 - x, b, a)) / b;
}

/** Where a falling or rising function crosses zero between `low` and `high`, by bisection to full precision. */
export function crossing(of: (x: number) => number, low: number, high: number): number {
  const rising = of(high) > of(low);
  let [from, to] = [low, high];
  for (let step = 0; step < 80; step += 1) {
    const middle = (from + to) / 2;
    if (of(middle) > 0 === rising) to = middle;
    else from = middle;
  }
  return (from + to) / 2;
}

/** The value below which a share `q` of a beta(a, b) distribution lies. */
export function betaQuantile(q: number, a: number, b: number): number {
  mustBeWithin('q', q, 0, 1);
  if (q === 0 || q === 1) return q;
  return crossing((x) => betaBelow(x, a, b) - q, 0, 1);
}

/**
 * Normal quantile, about seven digits. Published: M. J. Wichura, "Algorithm AS 241", Applied Statistics
 * 37 (1988) 477, routine PPND7 (coefficients from memory; checked against R's qnorm).
 */
export function normalQuantile(p: number): number {
  mustBeWithin('p', p, 1e-15, 1 - 1e-15);
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    const top = ((59.10937472 * r + 159.29113202) * r + 50.434271938) * r + 3.3871327179;
    return (q * top) / (((67.1875636 * r + 78.757757664) * r + 17.895169469) * r + 1);
  }
  const r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  const near = r <= 5;
  const s = near ? r - 1.6 : r - 5;
  const value = near
    ? (((0.17023821103 * s + 1.3067284816) * s + 2.75681539) * s + 1.4234372777) /
      ((0.12021132975 * s + 0.7370016425) * s + 1)
    : (((0.017337203997 * s + 0.42868294337) * s + 3.081226386) * s + 6.657905115) /
      ((0.012258202635 * s + 0.24197894225) * s + 1);
  return q < 0 ? -value : value;
}

/** Half-width, in standard errors, of a two-sided interval: 1.96 at 0.95. */
export function zFor(confidence: number): number {
  mustBeWithin('confidence', confidence, 0.5, 0.9999);
  return normalQuantile(1 - (1 - confidence) / 2);
}
