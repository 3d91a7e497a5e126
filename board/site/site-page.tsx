export function SitePage(_: { readonly number?: number; readonly id?: string }) {
  return <main />;
}
