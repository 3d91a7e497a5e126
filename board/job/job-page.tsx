export function JobPage(_: { readonly number?: number; readonly id?: string }) {
  return <main />;
}
