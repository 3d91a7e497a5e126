import type { DesignedEntry } from '../../../shared/entry/design/design-entry.js';
import type { Finding } from '../../../shared/entry/rules/finding.js';
import { describeSource } from '../../../shared/entry/source.js';

/** The whole design of an entry in words, for a terminal: every figure with its unit, every rule with its source. */
export function designWords(designed: DesignedEntry): string {
  return [
    part('Heat asked for and given, W/ft²', heat(designed)),
    part('Cable', cable(designed)),
    part('Circuits', circuits(designed)),
    part('Finished risers, from the walk up', risers(designed)),
    part('Footing', footing(designed)),
    part(
      'To buy',
      designed.buyList.map((line) => `${line.pieces} × ${line.soldAs}: ${line.label}`),
    ),
    part('Rules', [...designed.findings].sort((a, b) => Number(a.ok) - Number(b.ok)).map(finding)),
  ].join('\n');
}

const part = (title: string, lines: readonly string[]): string =>
  [title, ...(lines.length > 0 ? lines : ['nothing known']).map((line) => `  ${line}`), ''].join('\n');

const round = (value: number, digits = 1): string => String(Number(value.toFixed(digits)));

function heat({ heat: areas }: DesignedEntry): string[] {
  return areas.map(({ areaName, demand, given, warmUp }) => {
    const parts = [
      `warming the snow ${round(demand.sensible)}`,
      `melting it ${round(demand.melting)}`,
      `wind and sky ${round(demand.convectionAndRadiation)}`,
      `drying ${round(demand.evaporation)}`,
      `to the ground ${round(demand.back)}`,
      `at the edge ${round(demand.edge)}`,
    ].join(' + ');
    const warm = warmUp === null ? 'never warm in that air' : `above freezing after ${round(warmUp)} h`;
    return `${areaName}: ${parts} = ${round(demand.total)}; given ${round(given)}; ${warm}`;
  });
}

function cable({ sets }: DesignedEntry): string[] {
  return sets.flatMap(({ setName, layout, instead }) => {
    const shown = layout ?? instead?.layout;
    if (!shown) return [`${setName}: cannot be laid`];
    const { measure, coldLeadOutside } = shown;
    const head = layout ? setName : `${instead?.length} ft in place of ${setName}`;
    return [
      `${head}: ${round(measure.length / 12)} ft, runs no closer than ${round(measure.closest, 2)} in, tightest bend ${round(measure.tightestBend, 2)} in, ${round(coldLeadOutside)} in of cold lead outside`,
      ...measure.fields.map(
        (field) =>
          `  ${field.key}: ${round(field.length / 12)} ft at ${round(field.meanSpacing, 2)} in, ${round(field.wattsPerSquareFoot)} W/ft², widest gap ${round(field.widestGap.across)} in`,
      ),
    ];
  });
}

function circuits({ circuits: plan }: DesignedEntry): string[] {
  return (plan?.zones ?? []).map(({ sets, watts, load, size }) => {
    const drawn = `${sets.join(', ')}: ${round(watts)} W, ${round(load)} A`;
    if (!size) return `${drawn}: above these tables; a licensed electrician designs it`;
    return `${drawn}, ${round(size.design)} A as a continuous load: ${size.breaker} A breaker, ${size.conductorAwg} AWG copper at ${size.terminals} °C (${describeSource(size.source)}). ${size.caution}`;
  });
}

const risers = ({ risers: plan }: DesignedEntry): string[] =>
  (plan?.steps ?? []).map(
    ({ finished, riser, blockTop, courses }, i) =>
      `${i + 1}: ${round(riser, 2)} in, finished at ${round(finished, 2)} in; block to ${round(blockTop, 2)} in: ${courses.say}`,
  );

function footing({ footing: under, measurement }: DesignedEntry): string[] {
  const measured = measurement.footing;
  if (!under || !measured) return [];
  const { concrete, checklist } = under;
  const air = concrete.air ? `, ${concrete.air.least} to ${concrete.air.most} % air` : '';
  return [
    `${measured.width} in wide, ${measured.thickness} in thick, bottom ${measured.bottom} in down; frost ${measurement.frost.depth} in (${measurement.frost.source})`,
    `concrete in the weather: ${concrete.strength} psi${air} (${describeSource(concrete.source)})`,
    ...checklist.map(({ text, source }) => `before the pour: ${text} (${describeSource(source)})`),
  ];
}

function finding({ ok, text, measured, limit, source, caution, blocks }: Finding): string {
  const waits = blocks && blocks.length > 0 ? ` Must wait: ${blocks.join(', ')}.` : '';
  const mind = caution && !ok ? ` Caution: ${caution}` : '';
  return `${ok ? 'kept  ' : 'BROKEN'} ${text}. Found ${measured}, limit ${limit}, by ${describeSource(source)}.${waits}${mind}`;
}
