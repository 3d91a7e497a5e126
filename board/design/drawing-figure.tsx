import type { Design } from './design-types.js';

/**
 * A drawing at its size on paper: on a screen it shrinks to what there is, a print keeps every inch. It is shown as a
 * picture, so that its styles stay its own.
 */
export function DrawingFigure({ drawing }: { readonly drawing: Design['drawings'][number] }) {
  const { title, scale, width, height, svg } = drawing;
  return (
    <figure className="drawing">
      <div className="drawing-scroll" tabIndex={0} role="group" aria-label={`${title}, drawing`}>
        <img
          src={`data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`}
          alt={`${title}; its figures stand in the tables.`}
          style={{ width: `${width}in`, height: `${height}in` }}
        />
      </div>
      <figcaption>
        {title}, 1 : {scale} on paper
      </figcaption>
    </figure>
  );
}
