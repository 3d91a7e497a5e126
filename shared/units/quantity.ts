declare const unit: unique symbol;

/**
 * A number that carries its unit in its type only. Two quantities of different units are not assignable to
 * each other, and a bare number is not a quantity: it has to pass one of the makers of this folder first.
 */
export type Quantity<U extends string> = number & { readonly [unit]: U };

/** Gives a bare number its unit. Throws on NaN and infinities: no quantity of the trade is either. */
export function quantity<U extends string>(value: number, name: U): Quantity<U> {
  if (!Number.isFinite(value)) throw new RangeError(`${name} must be a finite number, got ${value}`);
  return value as Quantity<U>;
}
