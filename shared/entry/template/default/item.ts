import { COMMON_PRACTICE, type Source } from '../../source.js';
import type { TemplateItem, TemplateLimit } from '../template-hold-point.js';

/** Something to be confirmed. */
export const confirm = (id: string, label: string, source: Source = COMMON_PRACTICE): TemplateItem => ({
  id,
  label,
  unit: null,
  limit: { confirmed: true },
  required: true,
  source,
});

/** One value to be measured. */
export const measure = (
  id: string,
  label: string,
  unit: string,
  limit: TemplateLimit,
  source: Source = COMMON_PRACTICE,
): TemplateItem => ({ id, label, unit, limit, required: true, source });

/** Several values to be measured. */
export const measureMany = (
  id: string,
  label: string,
  unit: string,
  limit: TemplateLimit,
  source: Source = COMMON_PRACTICE,
): TemplateItem => ({ ...measure(id, label, unit, limit, source), many: true });
