/** The fields of a reach as `Type.field`, from a list of names for each type. */
export function fieldsOf(types: Readonly<Record<string, string>>): ReadonlySet<string> {
  return new Set(
    Object.entries(types).flatMap(([type, names]) => names.split(' ').map((name) => `${type}.${name}`)),
  );
}
