import type { HookupOfSheet } from './hookup-of-sheet.js';

/** The circuit that the label asks for, as figures and in words. */
export function CircuitBlock({ circuit }: { readonly circuit: HookupOfSheet['circuit'] }) {
  const { watts, volts, amperes, breakerAmperes, text, source } = circuit;
  const figures = [
    ['Power', `${watts} W`],
    ['Potential', `${volts} V`],
    ['Current', `${amperes.toFixed(1)} A`],
    ['Breaker, at least', breakerAmperes === null ? 'beyond the tables' : `${breakerAmperes} A`],
  ] as const;
  return (
    <section aria-label="Circuit">
      <h2>Circuit</h2>
      <dl className="figures">
        {figures.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <p>{text}</p>
      <p>
        Source: {source}. The local code, the authority having jurisdiction and the licensed electrician
        decide.
      </p>
    </section>
  );
}
