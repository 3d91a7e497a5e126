import { CableTable } from './cable-table.js';
import { CircuitTable } from './circuit-table.js';
import type { Design } from './design-types.js';
import { DrawingFigure } from './drawing-figure.js';
import { FootingTable } from './footing-table.js';
import { HeatTable } from './heat-table.js';
import { RiserTable } from './riser-table.js';
import './design.css';

/** The design of an entry: its drawings, and the figures behind them. */
export function EntryDesignBlock({ design }: { readonly design: Design }) {
  return (
    <>
      <section className="drawings" aria-label="Drawings">
        {design.drawings.map((drawing) => (
          <DrawingFigure key={drawing.key} drawing={drawing} />
        ))}
      </section>
      {design.cables.map((cable) => (
        <CableTable key={cable.setKey} cable={cable} />
      ))}
      <HeatTable heat={design.heat} />
      <CircuitTable circuits={design.circuits} />
      {design.risers && <RiserTable risers={design.risers} />}
      {design.footing && <FootingTable footing={design.footing} />}
    </>
  );
}
