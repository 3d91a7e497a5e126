type Place = readonly [x: number, y: number];

/** A post on a landing: 4 in across, with its base plate. */
const post = (name: string, x: number, y: number) => ({
  name,
  centreInches: [x, y] as Place,
  radiusInches: 2.5,
  clearanceInches: 1.5,
});

/** A point of a walk's middle: feet out from the lowest riser and along the wall, from the middle of the steps. */
interface WalkPoint {
  readonly outFeet: number;
  readonly alongFeet: number;
  readonly widthInches: number;
}

/** What differs from one invented site to the next. */
export interface DrawnSite {
  readonly lengthInches: number;
  readonly widthInches: number;
  readonly treads: number;
  /** Left out where there is no walk; it begins as wide as its first point. */
  readonly walk?: readonly WalkPoint[];
  readonly walkJointsAtInches?: readonly number[];
  /** Posts at both front corners of the landing. */
  readonly posts?: boolean;
  /** A movement joint straight out from the wall, so far along it. */
  readonly jointAt?: number;
}

/** A walk straight out from the steps. */
export const straightWalk = (feet: number, widthInches: number): WalkPoint[] => [
  { outFeet: feet, alongFeet: 0, widthInches },
];

/** A plan with the landing's left corner at the wall as its origin, steps as wide as the landing, a walk from their middle. */
export function sitePlan(site: DrawnSite) {
  const { lengthInches: out, widthInches: wide, jointAt } = site;
  const joint = (at: number): Place[] => [
    [at, 0],
    [at, out],
  ];
  return {
    wallInches: [
      [-24, 0],
      [wide + 24, 0],
    ],
    penetrationInches: [8, 0],
    surfaces: [
      {
        area: 'landing',
        outlineInches: [
          [0, 0],
          [wide, 0],
          [wide, out],
          [0, out],
        ],
        setbackInches: 3,
        sideSetbacks: [1, 3].map((side) => ({ side, inches: 4 })),
        keepOuts: site.posts ? [post('Left post', 8, out - 8), post('Right post', wide - 8, out - 8)] : [],
        joints: jointAt === undefined ? [] : [joint(jointAt)],
      },
      {
        area: 'steps',
        topInches: [
          [0, out],
          [wide, out],
        ],
        nosingInches: 1,
        setbackInches: 4,
        frontSetbackInches: 3,
      },
      ...(site.walk ? [walkOf(site, site.walk)] : []),
    ],
  };
}

function walkOf(
  { lengthInches, widthInches, treads, walkJointsAtInches }: DrawnSite,
  points: readonly WalkPoint[],
) {
  const first = { outFeet: 0, alongFeet: 0, widthInches: points[0]?.widthInches ?? 0 };
  return {
    area: 'walk',
    line: [first, ...points].map((point) => ({
      atInches: [
        widthInches / 2 + point.alongFeet * 12,
        lengthInches + treads * 12 + point.outFeet * 12,
      ] satisfies Place,
      widthInches: point.widthInches,
    })),
    setbackInches: 3,
    jointsAtInches: walkJointsAtInches ?? [],
  };
}
