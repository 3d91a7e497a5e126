export function HookupPage(_: { readonly number?: number; readonly id?: string }) {
  return <main />;
}
