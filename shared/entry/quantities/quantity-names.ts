/** Quantities that production rates and equipment may count. Each is 0 where it does not occur. */
export const QUANTITY_NAMES = [
  'demoSquareFeet',
  'digCubicYards',
  'footingFeet',
  'footingCubicYards',
  'blocks',
  'groutCubicYards',
  'topSquareFeet',
  'veneerSquareFeet',
  'baseSquareFeet',
  'baseCubicYards',
  'bedCubicYards',
  'mortarSacks',
  'sandCubicFeet',
  'meshSquareFeet',
  'stoneSquareFeet',
  'heatedSquareFeet',
  'cableFeet',
  'heatingSets',
  'sleeves',
  'risers',
] as const;

/** See {@link QUANTITY_NAMES}; the unit is in the name. */
export type QuantityName = (typeof QUANTITY_NAMES)[number];

/** How much there is of everything, in an area or in the whole job. */
export type Quantities = Readonly<Record<QuantityName, number>>;

/** Nothing of anything. */
export const noQuantities = (): Record<QuantityName, number> =>
  Object.fromEntries(QUANTITY_NAMES.map((name) => [name, 0])) as Record<QuantityName, number>;
