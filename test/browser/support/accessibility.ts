import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** WCAG 2.2 A and AA as the engine names them, and what it calls good practice. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What the accessibility engine finds on the page as it stands; nothing is what is wanted. */
export async function findings(page: Page): Promise<string[]> {
  // Evaluated rather than added as a script, which the page's own policy refuses.
  await page.evaluate(AXE);
  const results = await page.evaluate(
    (tags) =>
      (
        globalThis as unknown as { axe: { run(node: Document, options: object): Promise<AxeResults> } }
      ).axe.run(document, {
        runOnly: tags,
      }),
    TAGS,
  );
  return results.violations.flatMap(({ id, help, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${help}: ${html.slice(0, 200)} ${failureSummary ?? ''}`),
  );
}
