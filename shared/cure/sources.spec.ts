import { expect, test } from '@jest/globals';
import { describeSource } from '../entry/source.js';
import { AFFINITY_SOURCE } from './hydration/affinity.js';
import { ORDINARY_HEAT_SOURCE } from './hydration/hydration-heat.js';
import { HYDRATION_SOURCE } from './hydration/hydration.js';
import { MIXING_SOURCE } from './mixing-temperature.js';
import { EVAPORATION_SOURCE } from '../weather/evaporation.js';
import { LARGEST_DIFFERENCE_SOURCE } from './rules/largest-difference.js';
import { SETTING_SOURCE } from './setting.js';
import { EDGE_SOURCE } from './thermal/edge-factor.js';
import { MATERIAL_SOURCE } from './thermal/material.js';
import { FILM_SOURCE } from './thermal/surface-film.js';

test.each(
  Object.entries({
    AFFINITY_SOURCE,
    ORDINARY_HEAT_SOURCE,
    HYDRATION_SOURCE,
    MIXING_SOURCE,
    EVAPORATION_SOURCE,
    LARGEST_DIFFERENCE_SOURCE,
    SETTING_SOURCE,
    EDGE_SOURCE,
    MATERIAL_SOURCE,
    FILM_SOURCE,
  }),
)('%s says where its method comes from and how sure that is', (_name, source) => {
  expect(source.mark).toMatch(/^[PCMT]$/);
  expect(describeSource(source).length).toBeGreaterThan(10);
});
