/**
 * Random numbers by their names: the same seed, sample and key give the same number, whatever else is drawn. Two runs that differ in one
 * thing so share all other chance (common random numbers), and their difference is the effect of that thing.
 */
export class Draws {
  constructor(
    private readonly seed: number,
    private readonly sample: number,
  ) {}

  /** Evenly between 0 and 1, both left out. */
  uniform(key: string): number {
    let h = (2_166_136_261 ^ Math.imul(this.seed + 1, 0x9e37_79b1)) | 0;
    for (let i = 0; i < key.length; i++) h = Math.imul(h ^ key.charCodeAt(i), 16_777_619);
    h = mix(h ^ Math.imul(this.sample + 1, 0x85eb_ca6b));
    const low = mix(h ^ 0x27d4_eb2f);
    // 53 bits: one hash gives the high ones, a second the low ones.
    return ((h >>> 5) * 67_108_864 + (low >>> 6) + 0.5) / 9_007_199_254_740_992;
  }

  /** Standard normal (Box and Muller 1958). */
  normal(key: string): number {
    return (
      Math.sqrt(-2 * Math.log(this.uniform(`${key}/r`))) * Math.cos(2 * Math.PI * this.uniform(`${key}/t`))
    );
  }
}

/** Finalizer of the MurmurHash3 family (public domain): every bit of the input moves half of the output. */
function mix(value: number): number {
  let h = value;
  h = Math.imul(h ^ (h >>> 16), 0x85eb_ca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2_ae35);
  return h ^ (h >>> 16);
}
