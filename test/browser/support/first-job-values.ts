/** An invented site, by the labels of its fields. */
export const SITE_VALUES: Readonly<Record<string, string>> = {
  'Street address': '9 Larch Street',
  Town: 'Alder Bend',
  'Frost depth': '42',
  'Who gave the frost depth': 'Rule of the building department, 2019 (invented)',
};

/** An invented job, by the labels of its fields; the rest is left as usual. A cable of 12 W per foot at 240 V. */
export const JOB_VALUES: Readonly<Record<string, string>> = {
  'Name of the job': 'Larch Street',
  'Owner of the house': 'R. Alder',
  'Landing, out from the wall': '54',
  'Landing, along the wall': '72',
  'Landing, finished top above the finished walk': '14',
  'Number of risers': '2',
  'Riser height': '7',
  'Width of the steps': '72',
  'Length of the footing': '22',
  Watts: '1176',
  'Resistance on the label': '48.98',
  'Heated length': '98',
  'Cold lead, length': '13',
  'Cold lead, from the sleeve to the box': '9',
};
