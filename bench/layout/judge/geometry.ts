import IndexedPointInAreaLocator from 'jsts/org/locationtech/jts/algorithm/locate/IndexedPointInAreaLocator.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import Envelope from 'jsts/org/locationtech/jts/geom/Envelope.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import LineSegment from 'jsts/org/locationtech/jts/geom/LineSegment.js';
import Location from 'jsts/org/locationtech/jts/geom/Location.js';
import STRtree from 'jsts/org/locationtech/jts/index/strtree/STRtree.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import IndexedFacetDistance from 'jsts/org/locationtech/jts/operation/distance/IndexedFacetDistance.js';
import IsSimpleOp from 'jsts/org/locationtech/jts/operation/IsSimpleOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';

/* What the judge asks of the geometry library, with the types that the library does not say. */

/** A place as the judge sees it, from above. */
export interface Flat {
  readonly x: number;
  readonly y: number;
}

/** A shape of the library's. */
export interface Shape {
  getLength(): number;
  isEmpty(): boolean;
  getCoordinates(): readonly Flat[];
}

interface Maker {
  createPoint(at: unknown): Shape;
  createLineString(through: readonly unknown[]): Shape;
  createLinearRing(through: readonly unknown[]): Shape;
  createPolygon(ring: Shape): Shape;
}

const maker = new GeometryFactory() as unknown as Maker;
const coordinate = ({ x, y }: Flat) => new Coordinate(x, y);

export const point = (p: Flat): Shape => maker.createPoint(coordinate(p));
export const line = (points: readonly Flat[]): Shape => maker.createLineString(points.map(coordinate));
export const polygon = (points: readonly Flat[]): Shape =>
  maker.createPolygon(maker.createLinearRing([...points, points[0]!].map(coordinate)));

/** An operation of the library with the types it has in truth. */
const typed = <F>(operation: unknown): F => operation as F;
const buffers = typed<{ bufferOp(shape: Shape, by: number): Shape }>(BufferOp);
const overlays = typed<{ difference(one: Shape, other: Shape): Shape }>(OverlayOp);
const gaps = typed<{ distance(one: Shape, other: Shape): number }>(DistanceOp);

export const widened = (shape: Shape, by: number): Shape => buffers.bufferOp(shape, by);
export const without = (one: Shape, other: Shape): Shape => overlays.difference(one, other);
export const between = (one: Shape, other: Shape): number => gaps.distance(one, other);
export const isSimple = (shape: Shape): boolean =>
  typed<{ isSimple(): boolean }>(new IsSimpleOp(typed<never>(shape))).isSimple();

/** Says of places whether a shape holds them. */
export function holder(shape: Shape): (p: Flat) => boolean {
  const locator = typed<{ locate(at: unknown): number }>(new IndexedPointInAreaLocator(typed<never>(shape)));
  return (p) => locator.locate(coordinate(p)) !== typed<number>(Location.EXTERIOR);
}

/** Says of places how far they are from a shape. */
export function distances(shape: Shape): (p: Flat) => number {
  const facets = typed<{ distance(to: Shape): number }>(new IndexedFacetDistance(typed<never>(shape)));
  return (p) => facets.distance(point(p));
}

/** A straight part of something, and what it says of it. */
export interface Part<T> {
  readonly a: Flat;
  readonly b: Flat;
  readonly of: T;
}

/** Every two parts that come within a distance, with how near; each pair in both orders. */
export function* nearPairs<T>(parts: readonly Part<T>[], within: number): Generator<[T, T, number]> {
  const tree = typed<{
    insert(box: unknown, item: number): void;
    query(box: unknown): { toArray(): number[] };
  }>(new STRtree());
  const segments = parts.map(({ a, b }) =>
    typed<{ distance(to: unknown): number }>(new LineSegment(coordinate(a), coordinate(b))),
  );
  const box = ({ a, b }: Part<T>) =>
    typed<{ expandBy(by: number): void }>(new Envelope(coordinate(a), coordinate(b)));
  for (const [i, part] of parts.entries()) tree.insert(box(part), i);
  for (const [i, part] of parts.entries()) {
    const around = box(part);
    around.expandBy(within);
    for (const j of tree.query(around).toArray())
      yield [part.of, parts[j]!.of, segments[i]!.distance(segments[j])];
  }
}
