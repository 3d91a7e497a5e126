const ENTITIES: Record<string, string> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text that stands for itself inside HTML. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? sign);
}
