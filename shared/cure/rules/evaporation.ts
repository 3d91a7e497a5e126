import type { Finding } from '../../entry/rules/finding.js';
import { published } from '../../entry/source.js';
import { evaporationUs, type SurfaceAirUs } from '../../weather/evaporation.js';

/** Above 0.2 lb/ft²/h (1.0 kg/m²/h) a fresh surface needs care against drying, also in cold dry wind. */
export function evaporationFinding(surface: SurfaceAirUs): Finding {
  const rate = evaporationUs(surface);
  const ok = rate <= 0.2;
  return {
    rule: 'evaporation',
    ok,
    measured: `${rate.toFixed(3)} lb/ft²/h`,
    limit: 'at most 0.2 lb/ft²/h (1.0 kg/m²/h) without precautions',
    source: published('UFGS 03 30 00, rate by Uno 1998'),
    text: ok ? 'Dries slowly enough' : 'Dries too fast: windbreak, fog or cover it at once after finishing',
  };
}
