import { NumberField, numberIn } from './number-field.js';

/** How a placement is kept warm, as the service tells it. */
export interface ProtectionNow {
  readonly blanketLayers: number;
  readonly blanketR: number;
  readonly enclosureF: number | null;
  readonly heatHours: number;
}

/** Fields that say how a placement is kept warm: as it is now, or one layer of blanket to begin with. */
export function ProtectionFields({ now }: { readonly now?: ProtectionNow }) {
  const tent = now?.enclosureF ?? null;
  return (
    <fieldset className="cure-protection">
      <legend>Protection</legend>
      <NumberField
        name="blanketLayers"
        label="Layers of insulated blanket"
        unit="layers"
        value={String(now?.blanketLayers ?? 1)}
      />
      <NumberField
        name="blanketR"
        label="R of one layer (may be left out)"
        unit="h·ft²·°F/Btu"
        value={now ? String(now.blanketR) : ''}
      />
      <label className="confirm">
        <input type="checkbox" name="enclosure" defaultChecked={tent !== null} />
        Heated enclosure
      </label>
      <NumberField
        name="enclosureF"
        label="Kept inside at (may be left out)"
        unit="°F"
        value={tent === null ? '' : String(tent)}
      />
      <NumberField
        name="heatHours"
        label="Heated for, from placing (may be left out)"
        unit="h"
        value={now && tent !== null ? String(now.heatHours) : ''}
      />
      <p className="limit">
        Left out: R 4 [common practice], 60 °F [common practice], 12 h [rule of the trade]. Unvented heaters
        give off carbon monoxide and soften fresh surfaces: fresh air, 10 ft from tarpaulins (29 CFR
        1926.154).
      </p>
    </fieldset>
  );
}

/** The protection as it was filled in. */
export function protectionIn(form: FormData) {
  return {
    blanketLayers: Math.round(numberIn(form, 'blanketLayers') ?? 0),
    blanketR: numberIn(form, 'blanketR'),
    enclosure: form.get('enclosure') === 'on',
    enclosureF: numberIn(form, 'enclosureF'),
    heatHours: numberIn(form, 'heatHours'),
  };
}
